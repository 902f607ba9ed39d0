//! The cooling unit: what feeds it, and a second one to lay beside.

use super::{
    field::{Choice, NameField, NumberField},
    state::State,
};
use crate::{
    plan::{
        Feed,
        check::MOST_UNITS,
        path::{Path, UnitField as U},
    },
    wording::words,
};
use leptos::prelude::*;

/// The button for another unit, and those to remove one.
#[component]
pub fn Units() -> impl IntoView {
    let state = State::get();
    let count = Memo::new(move |_| state.plan.with(|plan| plan.units.len()));
    let add = move |_| {
        state.edit(|plan| {
            if let Some(last) = plan.units.last().cloned() {
                plan.units.push(last);
            }
        })
    };
    view! {
        {move || (count.get() < MOST_UNITS).then(|| view! {
            <button type="button" class="quiet" on:click=add>{words::ADD_UNIT}</button>
        })}
        {move || (count.get() > 1).then(|| (0..count.get()).map(|unit| view! {
            <button type="button" class="quiet"
                on:click=move |_| state.change(|draft| draft.remove(Path::Units, unit))>
                {format!("{} {}", words::REMOVE_UNIT, unit + 1)}
            </button>
        }).collect_view())}
    }
}

/// How a unit is fed, for *What was assumed*.
#[component]
pub fn UnitRest(unit: usize) -> impl IntoView {
    let state = State::get();
    let kind = Memo::new(move |_| {
        state
            .plan
            .with(|plan| match plan.units.get(unit).map(|unit| unit.feed) {
                Some(Feed::DcDc { .. }) => 1,
                Some(Feed::Inverter { .. }) => 2,
                _ => 0,
            })
    });
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                unit.feed = match index {
                    1 => Feed::usual_dc_dc(),
                    2 => Feed::usual_inverter(),
                    _ => Feed::Direct,
                };
            }
        })
    };
    let fields = move || match kind.get() {
        1 => &[U::OutputV, U::EfficiencyPercent, U::IdleW, U::LimitA][..],
        2 => &[
            U::NoLoadW,
            U::ProportionalLossPercent,
            U::SquareLossPercentPerKw,
            U::LimitW,
            U::InverterCutoffV,
        ][..],
        _ => &[U::SupplyV, U::CutoffV][..],
    };
    let feeds = words::FEEDS.map(str::to_owned).to_vec();
    view! {
        <div class="grid">
            <NameField
                id=format!("unit-name-{unit}")
                label=words::NAME
                get=move |plan| plan.units.get(unit).map_or_else(String::new, |unit| unit.name.clone())
                set=move |plan, name| if let Some(unit) = plan.units.get_mut(unit) { unit.name = name; }
            />
            <Choice id=format!("feed-{unit}") label=words::FEED options=feeds chosen=kind on_choice=choose/>
            {move || fields().iter().map(|&field| view! {
                <NumberField path=Path::Unit(unit, field)/>
            }).collect_view()}
            <NumberField path=Path::Unit(unit, U::CableLengthM)/>
            <NumberField path=Path::Unit(unit, U::CableAreaMm2)/>
            <NumberField path=Path::Unit(unit, U::CableTemperatureC)/>
            <NumberField path=Path::Unit(unit, U::ConnectionsMohm)/>
        </div>
    }
}
