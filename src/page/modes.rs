//! Modes of the cooling unit, and the other loads: rows to add and remove.

use super::{
    field::{Look, NumberField, TextField, Tick},
    kit::{Press, anew},
    state::State,
};
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::{
        Draw, Figure, Load, Mode, Plan,
        check::{MOST_LOADS, MOST_MODES},
        path::{ModeField as M, Path},
    },
    text::{self},
};
use leptos::prelude::*;

/// The modes of every unit, with their draws.
#[component]
pub fn Modes() -> impl IntoView {
    let state = State::here();
    let units = move || state.with_plan(|plan| plan.units.len());
    let cards = |units: usize| {
        let cards = (0..units).map(|unit| view! { <UnitModes unit=unit units=units /> });
        cards.collect_view().into_any()
    };
    view! { <div>{anew(units, cards)}</div> }
}

fn mode_mut(plan: &mut Plan, unit: usize, mode: usize) -> Option<&mut Mode> {
    plan.units.get_mut(unit)?.modes.get_mut(mode)
}

#[component]
fn UnitModes(unit: usize, units: usize) -> impl IntoView {
    let state = State::here();
    let count =
        move || state.with_plan(|plan| plan.units.get(unit).map_or(0, |unit| unit.modes.len()));
    let add = move || state.edit(|plan| add_mode(plan, unit));
    let rows = move |count: usize| {
        let rows = 0..count;
        let row = |mode| view! { <ModeRow unit=unit mode=mode count=count /> };
        view! {
            {rows.map(row).collect_view()}
            {(count < MOST_MODES)
                .then(|| view! { <Press class="quiet" words=say(m::AddMode) press=add /> })}
        }
        .into_any()
    };
    let title = if units > 1 {
        say(m::Unit)
    } else {
        say(m::Modes)
    };
    view! {
        <fieldset class="card">
            <legend>{text::numbered(title, unit, units)}</legend>
            <div>{anew(count, rows)}</div>
        </fieldset>
    }
}

fn add_mode(plan: &mut Plan, unit: usize) {
    if let Some(unit) = plan.units.get_mut(unit) {
        let like = unit.modes.last().cloned();
        let like = like.unwrap_or_else(|| Mode::of_power("", Figure::guess(300.0)));
        unit.modes.push(Mode {
            name: String::new(),
            ..like
        });
    }
}

#[component]
fn ModeRow(unit: usize, mode: usize, count: usize) -> impl IntoView {
    let remove = (count > 1).then(|| {
        view! { <Remove words=say(m::RemoveMode) list=Path::Modes(unit) row=mode /> }
    });
    view! {
        <div class="row">
            <TextField
                id=format!("mode-name-{unit}-{mode}")
                label=say(m::ModeName)
                place=move |plan| mode_mut(plan, unit, mode).map(|mode| &mut mode.name)
            />
            // The draw of one mode alone stands on the first screen. One field for watts
            // and amps: it stays while one becomes the other in it.
            {(count > 1)
                .then(|| {
                    view! { <NumberField path=Path::Mode(unit, mode, M::PowerW) look=Look::Row /> }
                })}
            {remove}
        </div>
    }
}

/// Takes a row out of its list.
#[component]
fn Remove(words: &'static str, list: Path, row: usize) -> impl IntoView {
    let state = State::here();
    let press = move || state.change(|draft| draft.remove(list, row));
    view! { <Press class="remove" words="×" label=words press=press /> }
}

/// Everything else about a mode, for *What was assumed*.
#[component]
pub fn ModeRest(unit: usize, mode: usize) -> impl IntoView {
    let state = State::here();
    let path = move |field| Path::Mode(unit, mode, field);
    let is_current = move || {
        state.with_plan(|plan| {
            let mode = plan.mode(unit, mode);
            mode.is_some_and(|mode| matches!(mode.draw, Draw::Current { .. }))
        })
    };
    let switch = move || {
        state.edit(|plan| {
            let nominal_v = plan.banks.first().map_or(12.0, |bank| bank.nominal_v());
            if let Some(mode) = mode_mut(plan, unit, mode) {
                mode.draw = mode.draw.switched(nominal_v);
            }
        });
    };
    let measured_at = move |is_current: bool| {
        is_current
            .then(|| view! { <NumberField path=path(M::MeasuredAtV) /> })
            .into_any()
    };
    view! {
        <div class="grid">
            <NumberField path=path(M::DutyPercent) />
            <NumberField path=path(M::StandbyW) />
        </div>
        <div>{anew(is_current, measured_at)}</div>
        <Tick
            id=format!("amps-{unit}-{mode}")
            label=say(m::AmpsStay)
            on=is_current
            toggle=switch
        />
    }
}

/// Other loads that run all night.
#[component]
pub fn Loads() -> impl IntoView {
    let state = State::here();
    let count = move || state.with_plan(|plan| plan.loads.len());
    let add = move || {
        let load = Load {
            name: String::new(),
            power_w: Figure::guess(20.0),
        };
        state.edit(|plan| plan.loads.push(load));
    };
    let rows = move |count: usize| {
        let rows = (0..count).map(|load| view! { <LoadRow load=load /> });
        view! {
            {rows.collect_view()}
            {(count < MOST_LOADS)
                .then(|| view! { <Press class="quiet" words=say(m::AddLoad) press=add /> })}
        }
        .into_any()
    };
    view! { <div>{anew(count, rows)}</div> }
}

#[component]
fn LoadRow(load: usize) -> impl IntoView {
    view! {
        <div class="row">
            <TextField
                id=format!("load-name-{load}")
                label=say(m::LoadName)
                place=move |plan| plan.loads.get_mut(load).map(|load| &mut load.name)
            />
            <NumberField path=Path::Load(load) look=Look::Row />
            <Remove words=say(m::RemoveLoad) list=Path::Loads row=load />
        </div>
    }
}
