//! The cooling unit: what feeds it, and another to lay beside.

use super::{
    field::{Choice, NumberField, TextField},
    kit::{Press, anew},
    state::State,
};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    plan::{
        Feed,
        check::MOST_UNITS,
        path::{Path, UnitField as U},
    },
    text::{self, words},
};
use leptos::prelude::*;

/// The button for another unit, and those to remove one.
#[component]
pub fn Units() -> impl IntoView {
    let state = State::here();
    let count = move || state.with_plan(|plan| plan.units.len());
    let add = move || state.edit(|plan| plan.units.extend(plan.units.last().cloned()));
    let remove = move |unit| state.remove_row(Path::Units, unit);
    let another = |count: usize| {
        if count > 1 {
            say(m::AddAnotherUnit)
        } else {
            say(m::AddUnit)
        }
    };
    let buttons = move |count: usize| {
        let removable = if count > 1 { count } else { 0 };
        let remove = (0..removable).map(|unit| {
            let words = text::numbered(say(m::RemoveUnit), unit, removable);
            view! { <Press class="quiet" words=words press=move || remove(unit) /> }
        });
        view! {
            {(count < MOST_UNITS)
                .then(|| view! { <Press class="quiet" words=another(count) press=add /> })}
            {remove.collect_view()}
        }
        .into_any()
    };
    view! { <div>{anew(count, buttons)}</div> }
}

/// The kinds of feed, in the order of their names.
pub fn feed_place(feed: Option<Feed>) -> usize {
    match feed {
        Some(Feed::DcDc { .. }) => 1,
        Some(Feed::Inverter { .. }) => 2,
        _ => 0,
    }
}

pub fn feed_at(place: usize) -> Feed {
    match place {
        1 => Feed::usual_dc_dc(),
        2 => Feed::usual_inverter(),
        _ => Feed::Direct,
    }
}

const fn feed_fields(place: usize) -> &'static [U] {
    match place {
        1 => &[U::OutputV, U::EfficiencyPercent, U::IdleW, U::LimitA],
        2 => &[
            U::NoLoadW,
            U::ProportionalLossPercent,
            U::SquareLossPercentPerKw,
            U::LimitW,
            U::InverterCutoffV,
        ],
        _ => &[U::SupplyV, U::CutoffV],
    }
}

/// How a unit is fed, for *What was assumed*.
#[component]
pub fn UnitRest(unit: usize) -> impl IntoView {
    let state = State::here();
    let kind =
        move || state.with_plan(|plan| feed_place(plan.units.get(unit).map(|unit| unit.feed)));
    let choose = move |place: usize| {
        state.change(|draft| draft.feed(unit, feed_at(place)));
    };
    let field = move |&field: &U| view! { <NumberField path=Path::Unit(unit, field) /> };
    let fed = move |place: usize| {
        feed_fields(place)
            .iter()
            .map(field)
            .collect_view()
            .into_any()
    };
    let cable = [
        U::CableLengthM,
        U::CableAreaMm2,
        U::CableTemperatureC,
        U::ConnectionsMohm,
    ];
    view! {
        <div class="grid">
            <TextField
                id=format!("unit-name-{unit}")
                label=say(m::Name)
                place=move |plan| plan.units.get_mut(unit).map(|unit| &mut unit.name)
            />
            <Choice
                id=format!("feed-{unit}")
                label=say(m::Feed)
                names=|| words::feeds(formatter()).map(str::to_owned).to_vec()
                chosen=kind
                choose=choose
            />
        </div>
        <div class="grid">{anew(kind, fed)}</div>
        <div class="grid">{cable.iter().map(field).collect_view()}</div>
    }
}
