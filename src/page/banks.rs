//! The bank: the numbers to start from, and the rest behind a fold.

use super::{
    dom::{El, button, h},
    field::{choice, large_field, name_field, number_field},
    state::State,
};
use crate::{
    bank::Chemistry,
    plan::{
        check::MOST_BANKS,
        path::{BankField as B, Path},
    },
    wording::{self, words},
};

/// All banks, one under another.
///
/// Rows hold no state of their own, everything in them is derived from the
/// draft by place: they are built anew only when their number changes.
pub fn banks(state: State) -> El {
    let count = move || state.with_plan(|plan| plan.banks.len());
    h("div", "").live_children(
        move || count().to_string(),
        move || {
            let cards = (0..count()).map(|bank| card(state, bank, count()));
            let add = (count() < MOST_BANKS).then(|| {
                button("quiet", words::ADD_BANK, move || {
                    state.edit(|plan| plan.banks.extend(plan.banks.last().cloned()));
                })
            });
            cards.chain(add).collect()
        },
    )
}

fn card(state: State, bank: usize, count: usize) -> El {
    let path = move |field| Path::Bank(bank, field);
    let facts = h("p", "facts").live_text(move || {
        state.with_answer(|answer| {
            let facts = answer.banks.iter().find(|facts| facts.bank == bank);
            facts.map_or_else(String::new, wording::bank_sentence)
        })
    });
    let several = (count > 1).then(|| {
        h("div", "")
            .child(name_field(
                state,
                &format!("bank-name-{bank}"),
                words::NAME,
                move |plan| plan.banks.get_mut(bank).map(|bank| &mut bank.name),
            ))
            .child(button("quiet", words::REMOVE_BANK, move || {
                state.change(|draft| draft.remove(Path::Banks, bank));
            }))
    });
    h("fieldset", "card")
        .child(h("legend", "").text(&wording::numbered(words::BANK, bank, count)))
        .child(
            h("div", "grid start")
                .child(large_field(state, path(B::BlockRatedAh)))
                .child(large_field(state, path(B::DepthPercent))),
        )
        .child(
            h("div", "grid")
                .child(chemistry_choice(state, bank))
                .children(
                    [B::BlockNominalV, B::SeriesCount, B::ParallelCount]
                        .map(|f| number_field(state, path(f))),
                ),
        )
        .child(facts)
        .children(several)
}

fn chemistry_choice(state: State, bank: usize) -> El {
    let names = || {
        Chemistry::ALL
            .map(|kind| wording::chemistry_name(kind).to_owned())
            .to_vec()
    };
    let chosen = move || {
        let kind = state.with_plan(|plan| plan.banks.get(bank).map(|bank| bank.chemistry));
        Chemistry::ALL
            .iter()
            .position(|&other| Some(other) == kind)
            .unwrap_or(0)
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let (Some(bank), Some(&kind)) = (plan.banks.get_mut(bank), Chemistry::ALL.get(index))
            {
                bank.chemistry = kind;
            }
        });
    };
    choice(
        &format!("chemistry-{bank}"),
        words::CHEMISTRY,
        names,
        chosen,
        choose,
    )
}

/// Everything else about a bank, for *What was assumed*.
pub fn bank_rest(state: State, bank: usize) -> Vec<El> {
    let fields = move |fields: &[B]| {
        h("div", "grid").children(
            fields
                .iter()
                .map(|&field| number_field(state, Path::Bank(bank, field))),
        )
    };
    let is_lead = move || {
        state.with_plan(|plan| {
            plan.banks
                .get(bank)
                .is_some_and(|bank| bank.chemistry.is_lead_acid())
        })
    };
    vec![
        fields(&[
            B::StartChargePercent,
            B::HealthPercent,
            B::CutoffV,
            B::BlockCurrentLimitA,
            B::BlockResistanceMohm,
            B::AlwaysOnW,
        ]),
        h("div", "").live_children(
            move || is_lead().to_string(),
            move || {
                is_lead()
                    .then(|| fields(&[B::RatedHoursH, B::PeukertExponent]))
                    .into_iter()
                    .collect()
            },
        ),
        h("h3", "").text(words::MEASURED_TITLE),
        fields(&[B::MeasuredAh, B::MeasuredWh, B::MeasuredLoadW]),
    ]
}
