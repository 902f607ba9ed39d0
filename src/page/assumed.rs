//! *What was assumed*: everything the answer rests on, a tap away.

use super::{
    banks::BankRest,
    field::NumberField,
    kit::{Fold, anew},
    modes::{Loads, ModeRest},
    state::State,
    units::UnitRest,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::path::{NightField, Path},
    text::{self},
};
use leptos::prelude::*;

/// The night, the loads, and a fold for each bank, unit and mode.
#[component]
pub fn Assumed() -> impl IntoView {
    let state = State::here();
    // Banks, then the modes of each unit: what there is to unfold.
    let shape = move || {
        state.with_plan(|plan| {
            let modes: Vec<usize> = plan.units.iter().map(|unit| unit.modes.len()).collect();
            (plan.banks.len(), modes)
        })
    };
    let folds = |(banks, modes): (usize, Vec<usize>)| {
        let banks = (0..banks).map(|bank| view! { <BankFold bank=bank /> });
        let units = modes.into_iter().enumerate();
        let units = units.map(|(unit, modes)| view! { <UnitFolds unit=unit modes=modes /> });
        view! {
            {banks.collect_view()}
            {units.collect_view()}
        }
        .into_any()
    };
    view! {
        <div>
            <p class="hint">{say(m::AssumedHint)}</p>
            <div class="grid">
                <NumberField path=Path::Night(NightField::StartClockMin) />
            </div>
            <Fold title=|| say(m::Loads)>
                <Loads />
            </Fold>
            <div>{anew(shape, folds)}</div>
        </div>
    }
}

#[component]
fn BankFold(bank: usize) -> impl IntoView {
    let state = State::here();
    let title = move || state.with_plan(|plan| text::bank_in_words(formatter(), plan, bank));
    view! {
        <Fold title=move || title>
            <BankRest bank=bank />
        </Fold>
    }
}

/// How a unit is fed, and the rest of each of its modes.
#[component]
fn UnitFolds(unit: usize, modes: usize) -> impl IntoView {
    let state = State::here();
    let feed = move || {
        state.with_plan(|plan| {
            text::feed_title(formatter(), &text::unit_name(formatter(), plan, unit))
        })
    };
    let duty = move |mode| {
        move || {
            state.with_plan(|plan| {
                text::duty_title(
                    formatter(),
                    &text::full_mode_name(formatter(), plan, unit, mode),
                )
            })
        }
    };
    let modes = (0..modes).map(|mode| {
        view! {
            <Fold title=move || duty(mode)>
                <ModeRest unit=unit mode=mode />
            </Fold>
        }
    });
    view! {
        <Fold title=move || feed>
            <UnitRest unit=unit />
        </Fold>
        {modes.collect_view()}
    }
}
