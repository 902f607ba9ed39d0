//! *What was assumed*: everything the answer rests on, a tap away.

use super::{
    banks::bank_rest,
    dom::{El, fold, h},
    field::number_field,
    modes::{loads, mode_rest},
    state::State,
    units::unit_rest,
};
use crate::{
    plan::path::{NightField, Path},
    wording::{self, words},
};

/// The night, the loads, and a fold for each bank, unit and mode.
pub fn assumed(state: State) -> El {
    // Banks, then the modes of each unit: what there is to unfold.
    let shape = move || {
        state.with_plan(|plan| {
            let modes: Vec<usize> = plan.units.iter().map(|unit| unit.modes.len()).collect();
            (plan.banks.len(), modes)
        })
    };
    let folds = move || {
        let (banks, modes) = shape();
        let mut folds: Vec<El> = (0..banks)
            .map(|bank| {
                let title = move || state.with_plan(|plan| wording::bank_in_words(plan, bank));
                titled(title, move || bank_rest(state, bank))
            })
            .collect();
        for (unit, &count) in modes.iter().enumerate() {
            let title = move || {
                state.with_plan(|plan| wording::feed_title(&wording::unit_name(plan, unit)))
            };
            folds.push(titled(title, move || unit_rest(state, unit)));
            folds.extend((0..count).map(|mode| {
                let title = move || {
                    state.with_plan(|plan| {
                        wording::duty_title(&wording::full_mode_name(plan, unit, mode))
                    })
                };
                titled(title, move || mode_rest(state, unit, mode))
            }));
        }
        folds
    };
    h("div", "")
        .child(h("p", "hint").text(words::ASSUMED_HINT))
        .child(h("div", "grid").child(number_field(state, Path::Night(NightField::StartClockMin))))
        .child(titled(
            || words::LOADS.to_owned(),
            move || vec![loads(state)],
        ))
        .child(h("div", "").live_children(
            move || {
                let (banks, modes) = shape();
                modes
                    .iter()
                    .fold(banks.to_string(), |key, count| format!("{key} {count}"))
            },
            folds,
        ))
}

fn titled(title: impl Fn() -> String + 'static, inside: impl Fn() -> Vec<El> + 'static) -> El {
    fold("fold", h("summary", "").live_text(title), inside)
}
