//! Modes of the cooling unit, and the other loads: rows to add and remove.

use super::{
    field::{Look, NumberField, TextField, Tick},
    kit::{Press, anew},
    state::State,
};
use crate::page::locale::say;
use crate::page::rows::{AddRow, Row, alike, rows};
use crate::plan::{
    Draw, Figure, Load, Mode, Plan,
    check::{MOST_LOADS, MOST_MODES},
    path::{ModeField as M, Path},
};
use crate::text::m;
use leptos::prelude::*;

/// The modes of every unit, with their draws.
#[component]
pub fn Modes() -> impl IntoView {
    let card = |row| view! { <UnitModes row=row /> }.into_any();
    view! { <div>{rows(Path::Units, |plan| alike(plan.units.len()), card)}</div> }
}

fn mode_mut(plan: &mut Plan, unit: usize, mode: usize) -> Option<&mut Mode> {
    plan.units.get_mut(unit)?.modes.get_mut(mode)
}

#[component]
fn UnitModes(row: Row) -> impl IntoView {
    let state = State::here();
    let unit = row.at;
    let count = move |plan: &Plan| plan.units.get(unit).map_or(0, |unit| unit.modes.len());
    let add = move || state.edit(|plan| add_mode(plan, unit));
    let mode = move |row| view! { <ModeRow unit=unit row=row /> }.into_any();
    let has_room = move |plan: &Plan| count(plan) < MOST_MODES;
    let title = if row.has_others {
        say(m::Unit)
    } else {
        say(m::Modes)
    };
    view! {
        <fieldset class="card">
            <legend>{row.title(title)}</legend>
            <div>{rows(Path::Modes(unit), move |plan| alike(count(plan)), mode)}</div>
            <AddRow words=say(m::AddMode) has_room=has_room press=add />
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
fn ModeRow(unit: usize, row: Row) -> impl IntoView {
    let mode = row.at;
    let remove = row.has_others.then(|| {
        view! { <Remove words=say(m::RemoveMode) list=Path::Modes(unit) row=mode /> }
    });
    // The draw of one mode alone stands on the first screen. One field for watts and
    // amps: it stays while one becomes the other in it.
    let state = State::here();
    let is_elsewhere = move || {
        state.with_plan(|plan| {
            plan.units
                .iter()
                .map(|unit| unit.modes.len())
                .sum::<usize>()
                == 1
        })
    };
    let draw = move |is_elsewhere: bool| {
        (!is_elsewhere)
            .then(
                || view! { <NumberField path=Path::Mode(unit, mode, M::PowerW) look=Look::Row /> },
            )
            .into_any()
    };
    view! {
        <div class="row">
            <TextField
                id=format!("mode-name-{unit}-{mode}")
                label=say(m::ModeName)
                place=move |plan| mode_mut(plan, unit, mode).map(|mode| &mut mode.name)
            />
            <div class="row-draw">{anew(is_elsewhere, draw)}</div>
            {remove}
        </div>
    }
}

/// Takes a row out of its list.
#[component]
fn Remove(words: &'static str, list: Path, row: usize) -> impl IntoView {
    let state = State::here();
    let press = move || state.remove_row(list, row);
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
    let count = |plan: &Plan| plan.loads.len();
    let add = move || {
        let load = Load {
            name: String::new(),
            power_w: Figure::guess(20.0),
        };
        state.edit(|plan| plan.loads.push(load));
    };
    let row = |row: Row| view! { <LoadRow load=row.at /> }.into_any();
    let has_room = move |plan: &Plan| count(plan) < MOST_LOADS;
    view! {
        <div>{rows(Path::Loads, move |plan| alike(count(plan)), row)}</div>
        <AddRow words=say(m::AddLoad) has_room=has_room press=add />
    }
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
