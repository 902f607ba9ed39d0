//! Place, date and weather; one's own position at a tap.

use super::{El, State, forms::grid, h};
use crate::{
    page::{
        browser::window,
        choose::{Chosen, choose},
        dom::{button, named_fold},
        field::number_field,
        reactive::*,
    },
    plan::{Path, day::DayField as D},
    wording::day_words as words,
};
use js_sys::{Function, Reflect};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// The fold's inside.
pub fn weather(state: State) -> Vec<El> {
    let field = move |field| number_field(state, Path::Day(field));
    let said = RwSignal::new("");
    let climate = Chosen {
        label: words::CLIMATE,
        name: words::climate_name,
        assumed: crate::plan::day::Climate::SaltLakePlain,
    };
    let rest = move || {
        let fields = [
            D::DewPointC,
            D::LinkeTurbidity,
            D::WindMS,
            D::GroundAlbedoPercent,
        ];
        vec![grid(fields.map(field))]
    };
    vec![
        h("p", "hint").text(words::WEATHER_HINT),
        grid([choose(state, "climate", climate, |plan| {
            Some(&mut plan.day.climate)
        })]),
        h("div", "buttons")
            .child(button("", words::MY_PLACE, move || locate(state, said)))
            .child(button("", words::TODAY, move || today(state))),
        h("p", "log-said")
            .attr("role", "status")
            .attr("id", "place-said")
            .live_text(move || said.get().into()),
        grid(
            [
                D::LatitudeDeg,
                D::LongitudeDeg,
                D::AltitudeM,
                D::UtcOffsetMin,
            ]
            .map(field),
        ),
        grid([D::DayOfMonth, D::Month, D::Year].map(field)),
        grid([D::HumidityPercent, D::CloudPercent].map(field)),
        named_fold("fold small", words::WEATHER_REST, rest),
        super::import::import(state),
    ]
}

/// The device's date and clock.
fn today(state: State) {
    let now = js_sys::Date::new_0();
    state.edit(|plan| {
        plan.day
            .set_date(now.get_full_year(), now.get_month() + 1, now.get_date());
        plan.day.set_clock_behind_utc(now.get_timezone_offset());
    });
}

/// The device's own position, if it gives one.
fn locate(state: State, said: RwSignal<&'static str>) {
    let geolocation = Reflect::get(&window().navigator(), &"geolocation".into())
        .ok()
        .filter(|it| !it.is_undefined() && !it.is_null());
    let Some(geolocation) = geolocation else {
        return said.set(words::PLACE_MISSING);
    };
    let ask = Reflect::get(&geolocation, &"getCurrentPosition".into());
    let Some(ask) = ask.ok().and_then(|ask| ask.dyn_into::<Function>().ok()) else {
        return said.set(words::PLACE_MISSING);
    };
    said.set(words::PLACE_ASKED);
    let found = Closure::once_into_js(move |position: JsValue| {
        said.set(match coordinates(&position) {
            Some((latitude_deg, longitude_deg, altitude_m)) => {
                state.edit(|plan| {
                    plan.day.set_place(latitude_deg, longitude_deg, altitude_m);
                    let now = js_sys::Date::new_0();
                    plan.day.set_clock_behind_utc(now.get_timezone_offset());
                });
                words::PLACE_TAKEN
            }
            None => words::PLACE_MISSING,
        });
    });
    let failed = Closure::once_into_js(move |error: JsValue| {
        // 1: refused, 2: no position, 3: too late.
        let code = Reflect::get(&error, &"code".into()).ok();
        said.set(if code.and_then(|code| code.as_f64()) == Some(1.0) {
            words::PLACE_REFUSED
        } else {
            words::PLACE_MISSING
        });
    });
    let options = js_sys::Object::new();
    let _ = Reflect::set(&options, &"timeout".into(), &15_000.into());
    let _ = Reflect::set(&options, &"maximumAge".into(), &600_000.into());
    if ask.call3(&geolocation, &found, &failed, &options).is_err() {
        said.set(words::PLACE_MISSING);
    }
}

/// Latitude, longitude and, where the device knows it, altitude.
fn coordinates(position: &JsValue) -> Option<(f64, f64, Option<f64>)> {
    let coords = Reflect::get(position, &"coords".into()).ok()?;
    let number = |key: &str| Reflect::get(&coords, &key.into()).ok()?.as_f64();
    Some((
        number("latitude")?,
        number("longitude")?,
        number("altitude"),
    ))
}
