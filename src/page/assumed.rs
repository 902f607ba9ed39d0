//! *What was assumed*: everything the answer rests on, a tap away.

use super::{
    banks::BankRest,
    field::NumberField,
    modes::{Loads, ModeRest},
    outcome::is_open,
    state::State,
    units::UnitRest,
};
use crate::{
    plan::path::{NightField, Path},
    wording::{self, words},
};
use leptos::prelude::*;

/// The night, the loads, and a fold for each bank, unit and mode.
#[component]
pub fn Assumed() -> impl IntoView {
    let state = State::get();
    let banks = Memo::new(move |_| state.plan.with(|plan| plan.banks.len()));
    let modes = Memo::new(move |_| {
        state.plan.with(|plan| {
            plan.units
                .iter()
                .map(|unit| unit.modes.len())
                .collect::<Vec<_>>()
        })
    });
    view! {
        <p class="hint">{words::ASSUMED_HINT}</p>
        <div class="grid"><NumberField path=Path::Night(NightField::StartClockMin)/></div>
        <Fold title=move || words::LOADS.to_owned()><Loads/></Fold>
        {move || (0..banks.get()).map(|bank| view! {
            <Fold title=move || state.plan.with(|plan| wording::bank_in_words(plan, bank))><BankRest bank/></Fold>
        }).collect_view()}
        {move || modes.get().into_iter().enumerate().map(|(unit, modes)| view! {
            <Fold title=move || wording::feed_title(&state.plan.with(|plan| wording::unit_name(plan, unit)))>
                <UnitRest unit/>
            </Fold>
            {(0..modes).map(|mode| view! {
                <Fold title=move || wording::duty_title(&state.plan.with(|plan| wording::mode_name(plan, unit, mode)))>
                    <ModeRest unit mode/>
                </Fold>
            }).collect_view()}
        }).collect_view()}
    }
}

/// A fold whose inside is built when it is first opened.
#[component]
fn Fold(title: impl Fn() -> String + Send + Sync + 'static, children: ChildrenFn) -> impl IntoView {
    let open = RwSignal::new(false);
    view! {
        <details class="fold" on:toggle=move |event| if is_open(&event) { open.set(true) }>
            <summary>{title}</summary>
            {move || open.get().then(|| children())}
        </details>
    }
}
