//! "How big a bank?": any one unknown, the others given.

use super::{
    dom::{El, h},
    field::{choice, number_field},
    outcome::stale_mark,
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

const UNKNOWNS: [Unknown; 4] = [Unknown::Bank, Unknown::Hours, Unknown::Draw, Unknown::Depth];

/// The question, its answer, and the reserve it rests on.
pub fn needed(state: State) -> El {
    let sentences = move || {
        state.with_plan(|plan| {
            state.with_answer(|answer| {
                let all = answer
                    .sizing
                    .iter()
                    .map(|sizing| wording::sizing_answer(plan, sizing));
                all.collect::<Vec<_>>()
            })
        })
    };
    let said = h("div", "")
        .attr("role", "status")
        .attr("aria-live", "polite")
        .live_children(
            move || sentences().join("\n"),
            move || {
                sentences()
                    .iter()
                    .map(|text| h("p", "answer").text(text))
                    .collect()
            },
        );
    let unknown = move || state.with_plan(|plan| plan.night.unknown);
    let fields = move || {
        let paths: &[N] = match unknown() {
            Unknown::Hours => &[],
            Unknown::Bank => &[N::WantedH, N::AgeingPercent, N::MarginPercent],
            Unknown::Draw | Unknown::Depth => &[N::WantedH],
        };
        paths
            .iter()
            .map(|&field| number_field(state, Path::Night(field)))
            .collect()
    };
    let choices = h("div", "grid")
        .child(choice(
            "unknown",
            words::ASK_FOR,
            || words::UNKNOWNS.map(str::to_owned).to_vec(),
            move || {
                UNKNOWNS
                    .iter()
                    .position(|&other| other == unknown())
                    .unwrap_or(0)
            },
            move |index| {
                state.edit(|plan| {
                    plan.night.unknown = UNKNOWNS.get(index).copied().unwrap_or_default()
                })
            },
        ))
        .child(mode_choice(state));
    h("div", "")
        .child(
            h("div", "outcome")
                .live_class("stale", move || state.is_stale())
                .child(said)
                .child(stale_mark(state))
                .child(tables(state)),
        )
        .child(choices)
        .child(h("div", "grid").live_children(move || (unknown() as u8).to_string(), fields))
}

/// Each unit's modes, by address.
fn places(plan: &Plan) -> Vec<(usize, usize)> {
    let units = plan.units.iter().enumerate();
    units
        .flat_map(|(unit, the_unit)| (0..the_unit.modes.len()).map(move |mode| (unit, mode)))
        .collect()
}

/// Which mode is asked about; it also leads the first answer.
fn mode_choice(state: State) -> El {
    let names = move || {
        state.with_plan(|plan| {
            places(plan)
                .into_iter()
                .map(|(unit, mode)| wording::full_mode_name(plan, unit, mode))
                .collect()
        })
    };
    let chosen = move || {
        state.with_plan(|plan| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            places(plan)
                .iter()
                .position(|&place| place == asked)
                .unwrap_or(0)
        })
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(&(unit, mode)) = places(plan).get(index) {
                (plan.night.asked_unit, plan.night.asked_mode) = (unit, mode);
            }
        });
    };
    choice("asked-mode", words::ASK_MODE, names, chosen, choose)
}

/// What a needed bank is made of, for each bank asked about.
fn tables(state: State) -> El {
    let needed = move || {
        state.with_answer(|answer| {
            let banks = answer
                .sizing
                .iter()
                .filter_map(|sizing| match sizing.found {
                    Found::Bank(needed) => Some(needed),
                    _ => None,
                });
            banks.collect::<Vec<NeededBank>>()
        })
    };
    h("div", "").live_children(
        // Whatever else the plan says may change the bank that is needed.
        move || state.turn(),
        move || needed().iter().map(table).collect(),
    )
}

fn table(needed: &NeededBank) -> El {
    let row = |head: &str, cells: &[String]| {
        let span = if cells.len() == 1 { "2" } else { "1" };
        h("tr", "")
            .child(h("th", "").attr("scope", "row").text(head))
            .children(
                cells
                    .iter()
                    .map(|cell| h("td", "").attr("colspan", span).text(cell)),
            )
    };
    let both = |ah, wh| [number::with_unit(ah, "Ah"), number::with_unit(wh, "Wh")];
    let rows = [
        row(
            words::JUST_ENOUGH,
            &both(needed.needed_ah, needed.needed_wh),
        ),
        row(
            words::WITH_RESERVE,
            &both(needed.with_reserve_ah, needed.with_reserve_wh),
        ),
        row(words::BLOCKS, &[wording::blocks_in_words(needed)]),
        row(
            words::THEY_RUN,
            &[wording::new_and_aged(
                needed.hours_new_h,
                needed.hours_aged_h,
            )],
        ),
    ];
    h("table", "terms").child(h("tbody", "").children(rows))
}
