//! The cooler from its air side: readings, and the budget they make.

use super::{Answered, editor::list_field};
use crate::{
    page::{
        dom::{El, h, named_fold},
        field::{choice, number_field},
        reactive::*,
        state::State,
    },
    plan::{
        Path,
        claims::{AirBasis, AirField, MOST_POINTS},
    },
    range,
    wording::claims::{self as say, words},
};

const BASES: [AirBasis; 3] = [AirBasis::AtOutlet, AirBasis::AtInlet, AirBasis::Standard];

/// The readings and what they make.
pub fn air(state: State, answer: Answered) -> El {
    named_fold("fold", words::AIR, move || {
        let fields = AirField::ALL.iter();
        let fields = fields.map(|&field| number_field(state, Path::Air(field)));
        let basis = choice(
            "air-basis",
            words::BASIS,
            || words::BASES.map(str::to_owned).to_vec(),
            move || {
                let basis = state.with_plan(|plan| plan.air.basis);
                BASES
                    .iter()
                    .position(|&one| Some(one) == basis)
                    .unwrap_or(0)
            },
            move |at| state.edit(|plan| plan.air.basis = BASES.get(at).copied()),
        );
        let vane = list_field(
            state,
            "air-vane",
            (words::VANE, words::VANE_HINT),
            (range::VANE_M_S, MOST_POINTS),
            move || state.with_plan(|plan| plan.air.vane_m_s.clone()),
            move |points| state.edit(|plan| plan.air.vane_m_s = points),
        );
        let said = move || {
            answer.with(|answer| match (&answer.air, answer.air_refused) {
                (Some(air), _) => say::air_sentence(air, state.with_plan(|plan| plan.show)),
                (None, Some(refusal)) => say::air_refusal(refusal).into(),
                (None, None) => String::new(),
            })
        };
        vec![
            h("p", "hint").text(words::AIR_HINT),
            h("div", "grid").children(fields).child(basis),
            vane,
            h("p", "detail").attr("role", "status").live_text(said),
            budget(answer),
        ]
    })
}

fn budget(answer: Answered) -> El {
    let rows = move || {
        answer.with(|answer| {
            let budget = answer.air.as_ref().map(|air| air.budget.clone());
            budget.unwrap_or_default()
        })
    };
    let key = move || {
        let texts: Vec<String> = rows().iter().map(|row| format!("{row:?}")).collect();
        texts.join("\n")
    };
    h("div", "").live_children(key, move || {
        let rows = rows();
        if rows.is_empty() {
            return Vec::new();
        }
        let heads = words::BUDGET_HEADS.map(|text| h("th", "").attr("scope", "col").text(text));
        let rows = rows.iter().map(|row| {
            h("tr", "")
                .child(
                    h("th", "")
                        .attr("scope", "row")
                        .text(say::budget_name(row.by)),
                )
                .child(h("td", "").text(&say::watts_text(row.standard_w)))
                .child(h("td", "").text(&say::whole_percent(row.share_percent)))
        });
        vec![
            h("table", "")
                .child(h("thead", "").child(h("tr", "").children(heads)))
                .child(h("tbody", "").children(rows)),
        ]
    })
}
