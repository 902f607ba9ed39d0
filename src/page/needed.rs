//! "How big a bank?": any one unknown, the others given.

use super::{
    field::{Choice, NumberField},
    kit::anew,
    outcome::StaleMark,
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::{
        Plan, Unknown,
        path::{NightField as N, Path},
    },
    study::sizing::{Found, NeededBank},
    text::{self, words},
};
use leptos::prelude::*;

const UNKNOWNS: [Unknown; 4] = [Unknown::Bank, Unknown::Hours, Unknown::Draw, Unknown::Depth];

/// The question, its answer, and the reserve it rests on.
#[component]
pub fn Needed() -> impl IntoView {
    let state = State::here();
    let unknown = move || state.with_plan(|plan| plan.night.unknown);
    let choose = move |place: usize| {
        state.edit(|plan| plan.night.unknown = UNKNOWNS.get(place).copied().unwrap_or_default());
    };
    let fields = |unknown| {
        let fields = given(unknown).iter();
        let field = |&field| view! { <NumberField path=Path::Night(field) /> };
        fields.map(field).collect_view().into_any()
    };
    view! {
        <div class="outcome" class:stale=move || state.is_stale()>
            <div role="status" aria-live="polite">
                <Answers />
            </div>
            <StaleMark />
            <Tables />
        </div>
        <div class="grid">
            <Choice
                id="unknown"
                label=say(m::AskFor)
                names=|| words::unknowns(formatter()).map(str::to_owned).to_vec()
                chosen=move || UNKNOWNS.iter().position(|&one| one == unknown()).unwrap_or(0)
                choose=choose
            />
            <ModeChoice />
        </div>
        <div class="grid">{anew(unknown, fields)}</div>
    }
}

/// What is given where something else is asked for.
const fn given(unknown: Unknown) -> &'static [N] {
    match unknown {
        Unknown::Hours => &[],
        Unknown::Bank => &[N::WantedH, N::AgeingPercent, N::MarginPercent],
        Unknown::Draw | Unknown::Depth => &[N::WantedH],
    }
}

#[component]
fn Answers() -> impl IntoView {
    let state = State::here();
    let sentences = Memo::new(move |_| {
        state.with_plan(|plan| {
            state.with_answer(|answer| {
                let all = answer.sizing.iter();
                all.map(|sizing| text::sizing_answer(formatter(), plan, sizing))
                    .collect::<Vec<_>>()
            })
        })
    });
    move || {
        let sentences = sentences.get().into_iter();
        let one = |text| view! { <p class="answer">{text}</p> };
        sentences.map(one).collect_view()
    }
}

/// Each unit's modes, by address.
fn places(plan: &Plan) -> Vec<(usize, usize)> {
    let units = plan.units.iter().enumerate();
    units
        .flat_map(|(unit, the_unit)| (0..the_unit.modes.len()).map(move |mode| (unit, mode)))
        .collect()
}

/// Which mode is asked about; it also leads the first answer.
#[component]
fn ModeChoice() -> impl IntoView {
    let state = State::here();
    let names = move || {
        state.with_plan(|plan| {
            let places = places(plan).into_iter();
            places
                .map(|(unit, mode)| text::full_mode_name(formatter(), plan, unit, mode))
                .collect()
        })
    };
    let chosen = move || {
        state.with_plan(|plan| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            let place = places(plan).iter().position(|&place| place == asked);
            place.unwrap_or(0)
        })
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(&(unit, mode)) = places(plan).get(index) {
                (plan.night.asked_unit, plan.night.asked_mode) = (unit, mode);
            }
        });
    };
    view! {
        <Choice id="asked-mode" label=say(m::AskMode) names=names chosen=chosen choose=choose />
    }
}

/// What a needed bank is made of, for each bank asked about.
#[component]
fn Tables() -> impl IntoView {
    let state = State::here();
    let tables = move |_| {
        state.with_answer(|answer| {
            let banks = answer
                .sizing
                .iter()
                .filter_map(|sizing| match &sizing.found {
                    Found::Bank(needed) => Some(table(needed)),
                    _ => None,
                });
            banks.collect_view().into_any()
        })
    };
    // Whatever else the plan says may change the bank that is needed.
    view! { <div>{anew(move || state.turn(), tables)}</div> }
}

fn table(needed: &NeededBank) -> impl IntoView + use<> {
    let both = |ah, wh| {
        [
            formatter().with_unit(ah, "Ah"),
            formatter().with_unit(wh, "Wh"),
        ]
    };
    let needs = [
        (say(m::JustEnough), both(needed.needed_ah, needed.needed_wh)),
        (
            say(m::WithReserve),
            both(needed.with_reserve_ah, needed.with_reserve_wh),
        ),
    ];
    let needs = needs.map(|(head, [ah, wh])| {
        view! {
            <tr>
                <th scope="row">{head}</th>
                <td>{ah}</td>
                <td>{wh}</td>
            </tr>
        }
    });
    let hours = text::new_and_aged(formatter(), needed.hours_new_h, needed.hours_aged_h);
    let says = [
        (
            say(m::Batteries),
            text::batteries_in_words(formatter(), needed),
        ),
        (say(m::TheyRun), hours),
    ];
    let says = says.map(|(head, cell)| {
        view! {
            <tr>
                <th scope="row">{head}</th>
                <td colspan="2">{cell}</td>
            </tr>
        }
    });
    view! {
        <table class="terms">
            <tbody>{needs.collect_view()} {says.collect_view()}</tbody>
        </table>
    }
}
