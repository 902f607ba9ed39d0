//! Place, date and weather; one's own position at a tap.

use super::{State, import::Import};
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{
        browser::window,
        choose::{Chosen, OpenChoice},
        field::NumberField,
        kit::{Fold, Press},
    },
    plan::{
        Path,
        day::{Climate, DayField as D},
    },
    text::day_words as words,
};
use js_sys::{Function, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

const CLIMATE: Chosen<Climate> = Chosen {
    label: |f| f.say(m::DayClimate),
    name: words::climate_name,
    assumed: Climate::SaltLakePlain,
};

/// The fold's inside.
#[component]
pub fn Weather() -> impl IntoView {
    let state = State::here();
    let said = RwSignal::new("");
    let field = |field| view! { <NumberField path=Path::Day(field) /> };
    let grid = move |fields: &[D]| {
        let fields = fields.iter().copied().map(field).collect_view();
        view! { <div class="grid">{fields}</div> }
    };
    let rest = move || {
        grid(&[
            D::DewPointC,
            D::LinkeTurbidity,
            D::WindMS,
            D::GroundAlbedoPercent,
        ])
    };
    view! {
        <p class="hint">{say(m::DayWeatherHint)}</p>
        <div class="grid">
            <OpenChoice id="climate" chosen=CLIMATE place=|plan| Some(&mut plan.day.climate) />
        </div>
        <div class="buttons">
            <Press words=say(m::DayMyPlace) press=move || locate(state, said) />
            <Press words=say(m::DayToday) press=move || today(state) />
        </div>
        <p class="log-said" role="status" id="place-said">
            {said}
        </p>
        {grid(&[D::LatitudeDeg, D::LongitudeDeg, D::AltitudeM, D::UtcOffsetMin])}
        {grid(&[D::DayOfMonth, D::Month, D::Year])}
        {grid(&[D::HumidityPercent, D::CloudPercent])}
        <Fold class="fold small" title=|| say(m::DayWeatherRest)>
            {rest()}
        </Fold>
        <Import />
    }
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
        return said.set(say(m::DayPlaceMissing));
    };
    let ask = Reflect::get(&geolocation, &"getCurrentPosition".into());
    let Some(ask) = ask.ok().and_then(|ask| ask.dyn_into::<Function>().ok()) else {
        return said.set(say(m::DayPlaceMissing));
    };
    said.set(say(m::DayPlaceAsked));
    let found = Closure::once_into_js(move |position: JsValue| {
        said.set(match coordinates(&position) {
            Some((latitude_deg, longitude_deg, altitude_m)) => {
                state.edit(|plan| {
                    plan.day.set_place(latitude_deg, longitude_deg, altitude_m);
                    let now = js_sys::Date::new_0();
                    plan.day.set_clock_behind_utc(now.get_timezone_offset());
                });
                say(m::DayPlaceTaken)
            }
            None => say(m::DayPlaceMissing),
        });
    });
    let failed = Closure::once_into_js(move |error: JsValue| {
        // 1: refused, 2: no position, 3: too late.
        let code = Reflect::get(&error, &"code".into()).ok();
        said.set(if code.and_then(|code| code.as_f64()) == Some(1.0) {
            say(m::DayPlaceRefused)
        } else {
            say(m::DayPlaceMissing)
        });
    });
    let options = js_sys::Object::new();
    let _ = Reflect::set(&options, &"timeout".into(), &15_000.into());
    let _ = Reflect::set(&options, &"maximumAge".into(), &600_000.into());
    if ask.call3(&geolocation, &found, &failed, &options).is_err() {
        said.set(say(m::DayPlaceMissing));
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
