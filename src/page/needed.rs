//! "How big a bank?": any one unknown, the others given.

use super::{
    field::{Choice, NumberField},
    state::State,
};
use crate::{
    plan::{
        Plan, Unknown,
        path::{NightField as N, Path},
    },
    sizing::{Found, NeededBank},
    wording::{self, number, words},
};
use leptos::prelude::*;

const UNKNOWNS: [Unknown; 4] = [Unknown::Bank, Unknown::Hours, Unknown::Draw, Unknown::Depth];

/// The question, its answer, and the reserve it rests on.
#[component]
pub fn Needed() -> impl IntoView {
    let state = State::get();
    let sentences = move || {
        state.plan.with(|plan| {
            state.answer.with(|answer| {
                answer.sizing.iter().map(|sizing| {
                    let several = plan.banks.len() > 1;
                    let bank = several.then(|| format!("{}: ", wording::bank_in_words(plan, sizing.bank)));
                    view! { <p class="answer">{bank}{wording::sizing_sentence(plan, sizing)}</p> }
                }).collect_view()
            })
        })
    };
    let tables = move || {
        state.answer.with(|answer| {
            answer
                .sizing
                .iter()
                .filter_map(|sizing| match sizing.found {
                    Found::Bank(needed) => Some(table(&needed)),
                    _ => None,
                })
                .collect_view()
        })
    };
    let unknown = Memo::new(move |_| {
        let asked = state.plan.with(|plan| plan.night.unknown);
        UNKNOWNS
            .iter()
            .position(|&other| other == asked)
            .unwrap_or(0)
    });
    let for_bank = move || UNKNOWNS[unknown.get()] == Unknown::Bank;
    view! {
        <div class="outcome" class:stale=move || state.stale.get()>
            <div role="status" aria-live="polite">{sentences}</div>
            {tables}
        </div>
        <div class="grid">
            <Choice id="unknown" label=words::ASK_FOR options=words::UNKNOWNS.map(str::to_owned).to_vec()
                chosen=unknown
                on_choice=move |index| state.edit(|plan| {
                    plan.night.unknown = UNKNOWNS.get(index).copied().unwrap_or_default();
                })/>
            <ModeChoice/>
            {move || (UNKNOWNS[unknown.get()] != Unknown::Hours).then(|| view! {
                <NumberField path=Path::Night(N::WantedH)/>
            })}
            {move || for_bank().then(|| view! {
                <NumberField path=Path::Night(N::AgeingPercent)/>
                <NumberField path=Path::Night(N::MarginPercent)/>
            })}
        </div>
    }
}

/// Which mode is asked about; it also leads the first answer.
#[component]
fn ModeChoice() -> impl IntoView {
    let state = State::get();
    let all = |plan: &Plan| -> Vec<(usize, usize)> {
        plan.units
            .iter()
            .enumerate()
            .flat_map(|(unit, the_unit)| (0..the_unit.modes.len()).map(move |mode| (unit, mode)))
            .collect()
    };
    let names = Memo::new(move |_| {
        state.plan.with(|plan| {
            all(plan)
                .into_iter()
                .map(|(unit, mode)| {
                    let name = wording::mode_name(plan, unit, mode);
                    if plan.units.len() > 1 {
                        format!("{}, {name}", wording::unit_name(plan, unit))
                    } else {
                        name
                    }
                })
                .collect::<Vec<_>>()
        })
    });
    let chosen = Memo::new(move |_| {
        state.plan.with(|plan| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            all(plan)
                .iter()
                .position(|&place| place == asked)
                .unwrap_or(0)
        })
    });
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(&(unit, mode)) = all(plan).get(index) {
                plan.night.asked_unit = unit;
                plan.night.asked_mode = mode;
            }
        })
    };
    view! { <Choice id="asked-mode" label=words::ASK_MODE options=names chosen on_choice=choose/> }
}

fn table(needed: &NeededBank) -> impl IntoView + use<> {
    let both = |ah: f64, wh: f64| (number::with_unit(ah, "Ah"), number::with_unit(wh, "Wh"));
    let (just_ah, just_wh) = both(needed.needed_ah, needed.needed_wh);
    let (all_ah, all_wh) = both(needed.with_reserve_ah, needed.with_reserve_wh);
    let hours = number::duration_fine;
    view! {
        <table class="terms">
            <tbody>
                <tr><th scope="row">{words::JUST_ENOUGH}</th><td>{just_ah}</td><td>{just_wh}</td></tr>
                <tr><th scope="row">{words::WITH_RESERVE}</th><td>{all_ah}</td><td>{all_wh}</td></tr>
                <tr><th scope="row">{words::BLOCKS}</th>
                    <td colspan="2">{wording::blocks_in_words(needed)}</td></tr>
                <tr><th scope="row">{words::THEY_RUN}</th>
                    <td colspan="2">{wording::new_and_aged(&hours(needed.hours_new_h), &hours(needed.hours_aged_h))}</td></tr>
            </tbody>
        </table>
    }
}
