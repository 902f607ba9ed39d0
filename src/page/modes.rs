//! Modes of the cooling unit, and the other loads: rows to add and remove.

use super::{
    field::{NameField, NumberField},
    state::State,
};
use crate::{
    plan::{
        Draw, Figure, Load, Mode,
        check::{MOST_LOADS, MOST_MODES},
        path::{ModeField as M, Path},
    },
    wording::words,
};
use leptos::prelude::*;

/// The modes of every unit, with their draws.
#[component]
pub fn Modes() -> impl IntoView {
    let state = State::get();
    let units = Memo::new(move |_| state.plan.with(|plan| plan.units.len()));
    view! {
        // By place: see `Banks`.
        <For each=move || 0..units.get() key=|unit| *unit let:unit><UnitModes unit units/></For>
    }
}

#[component]
fn UnitModes(unit: usize, units: Memo<usize>) -> impl IntoView {
    let state = State::get();
    let count = Memo::new(move |_| {
        state
            .plan
            .with(|plan| plan.units.get(unit).map_or(0, |unit| unit.modes.len()))
    });
    let title = move || {
        if units.get() > 1 {
            format!("{} {}", words::UNIT, unit + 1)
        } else {
            words::MODES.to_owned()
        }
    };
    let add = move |_| {
        state.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                let mode = unit.modes.last().cloned();
                let mut mode = mode.unwrap_or_else(|| Mode::of_power("", Figure::guess(300.0)));
                mode.name = String::new();
                unit.modes.push(mode);
            }
        })
    };
    view! {
        <fieldset class="card">
            <legend>{title}</legend>
            <For each=move || 0..count.get() key=|mode| *mode let:mode><ModeRow unit mode count/></For>
            {move || (count.get() < MOST_MODES).then(|| view! {
                <button type="button" class="quiet" on:click=add>{words::ADD_MODE}</button>
            })}
        </fieldset>
    }
}

#[component]
fn ModeRow(unit: usize, mode: usize, count: Memo<usize>) -> impl IntoView {
    let state = State::get();
    let draw = Memo::new(move |_| state.plan.with(|plan| plan.draw_path(unit, mode)));
    view! {
        <div class="row">
            <NameField
                id=format!("mode-name-{unit}-{mode}")
                label=words::MODE_NAME
                get=move |plan| plan.mode(unit, mode).map_or_else(String::new, |mode| mode.name.clone())
                set=move |plan, name| {
                    if let Some(mode) = plan.units.get_mut(unit).and_then(|unit| unit.modes.get_mut(mode)) {
                        mode.name = name;
                    }
                }
            />
            {move || draw.get().map(|path| view! { <NumberField path bare=true large=true/> })}
            {move || (count.get() > 1).then(|| view! {
                <button type="button" class="remove" aria-label=words::REMOVE_MODE title=words::REMOVE_MODE
                    on:click=move |_| state.change(|draft| draft.remove(Path::Modes(unit), mode))>"×"</button>
            })}
        </div>
    }
}

/// Everything else about a mode, for *What was assumed*.
#[component]
pub fn ModeRest(unit: usize, mode: usize) -> impl IntoView {
    let state = State::get();
    let path = move |field| Path::Mode(unit, mode, field);
    let is_current = Memo::new(move |_| {
        state.plan.with(|plan| {
            plan.mode(unit, mode)
                .is_some_and(|mode| matches!(mode.draw, Draw::Current { .. }))
        })
    });
    let toggle = move |_| state.edit(|plan| switch_draw(plan, unit, mode));
    view! {
        <div class="grid">
            <NumberField path=path(M::DutyPercent)/>
            <NumberField path=path(M::StandbyW)/>
            {move || is_current.get().then(|| view! { <NumberField path=path(M::MeasuredAtV)/> })}
        </div>
        <label class="check">
            <input type="checkbox" prop:checked=move || is_current.get() on:change=toggle/>
            {words::AMPS_STAY}
        </label>
    }
}

/// Watts that stay become amps that stay, or back, at the bank's nominal volts.
fn switch_draw(plan: &mut crate::plan::Plan, unit: usize, mode: usize) {
    let nominal_v = plan.banks.first().map_or(12.0, |bank| bank.nominal_v());
    if let Some(mode) = plan
        .units
        .get_mut(unit)
        .and_then(|unit| unit.modes.get_mut(mode))
    {
        mode.draw = mode.draw.switched(nominal_v);
    }
}

/// Other loads that run all night.
#[component]
pub fn Loads() -> impl IntoView {
    let state = State::get();
    let count = Memo::new(move |_| state.plan.with(|plan| plan.loads.len()));
    let add = move |_| {
        state.edit(|plan| {
            plan.loads.push(Load {
                name: String::new(),
                power_w: Figure::guess(20.0),
            });
        })
    };
    view! {
        <For each=move || 0..count.get() key=|load| *load let:load>
            <div class="row">
                <NameField
                    id=format!("load-name-{load}")
                    label=words::LOAD_NAME
                    get=move |plan| plan.loads.get(load).map_or_else(String::new, |load| load.name.clone())
                    set=move |plan, name| if let Some(load) = plan.loads.get_mut(load) { load.name = name; }
                />
                <NumberField path=Path::Load(load) bare=true/>
                <button type="button" class="remove" aria-label=words::REMOVE_LOAD title=words::REMOVE_LOAD
                    on:click=move |_| state.change(|draft| draft.remove(Path::Loads, load))>"×"</button>
            </div>
        </For>
        {move || (count.get() < MOST_LOADS).then(|| view! {
            <button type="button" class="quiet" on:click=add>{words::ADD_LOAD}</button>
        })}
    }
}
