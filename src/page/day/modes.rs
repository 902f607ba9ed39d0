//! The mode plan by the clock: from when on which mode, every day alike.

use super::{El, State, h};
use crate::{
    page::{
        dom::button,
        field::{choice, number_field},
    },
    plan::{ModeRow, Path, Plan, check::MOST_MODE_ROWS, day::ModeRowField},
    wording::{self, day_words as words},
};

/// The rows, or what is taken without any.
pub fn modes(state: State) -> Vec<El> {
    let count = move || state.with_plan(|plan| plan.mode_plan.len());
    let rows = move || {
        let rows = (0..count()).map(|at| row(state, at));
        let add = (count() < MOST_MODE_ROWS)
            .then(|| button("quiet", words::ADD_MODE_ROW, move || state.edit(add_row)));
        let clear = (count() > 0).then(|| {
            button("quiet", words::CLEAR_MODE_PLAN, move || {
                state.edit(|plan| plan.mode_plan.clear());
            })
        });
        rows.chain(add).chain(clear).collect()
    };
    let taken = move || {
        state.with_plan(|plan| {
            if plan.mode_plan.is_empty() {
                wording::day::mode_plan_taken(plan)
            } else {
                String::new()
            }
        })
    };
    vec![
        h("p", "hint").text(words::MODE_PLAN_HINT),
        h("p", "facts").live_text(taken),
        h("div", "").live_children(move || count().to_string(), rows),
    ]
}

/// Another row. The first two are the plan that was taken without any.
fn add_row(plan: &mut Plan) {
    if plan.mode_plan.is_empty() {
        plan.mode_plan = plan.mode_rows_stated();
    } else {
        let like = plan.mode_plan.last().cloned().unwrap_or_default();
        plan.mode_plan.push(ModeRow {
            from_clock_min: None,
            ..like
        });
    }
}

/// What a row may switch to: nothing, or any unit's mode.
fn places(plan: &Plan) -> Vec<(usize, Option<usize>)> {
    let units = plan.units.iter().enumerate();
    let modes =
        units.flat_map(|(unit, one)| (0..one.modes.len()).map(move |mode| (unit, Some(mode))));
    std::iter::once((0, None)).chain(modes).collect()
}

fn row(state: State, at: usize) -> El {
    let names = move || {
        state.with_plan(|plan| {
            let places = places(plan).into_iter();
            places
                .map(|(unit, mode)| match mode {
                    Some(mode) => wording::full_mode_name(plan, unit, mode),
                    None => words::MODE_OFF.into(),
                })
                .collect()
        })
    };
    let chosen = move || {
        state.with_plan(|plan| {
            let row = plan.mode_plan.get(at);
            let now = row.map(|row| (if row.mode.is_some() { row.unit } else { 0 }, row.mode));
            let same = |place: &(usize, Option<usize>)| Some(*place) == now;
            places(plan).iter().position(same).unwrap_or(0)
        })
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(&(unit, mode)) = places(plan).get(index)
                && let Some(row) = plan.mode_plan.get_mut(at)
            {
                (row.unit, row.mode) = (unit, mode);
            }
        });
    };
    let remove = button("remove", "×", move || {
        state.change(|draft| draft.remove(Path::ModePlan, at));
    })
    .attr("aria-label", words::REMOVE_MODE_ROW)
    .attr("title", words::REMOVE_MODE_ROW);
    h("div", "row mode-row")
        .child(number_field(
            state,
            Path::ModeRow(at, ModeRowField::FromClockMin),
        ))
        .child(choice(
            &format!("mode-row-{at}"),
            words::MODE_ROW,
            names,
            chosen,
            choose,
        ))
        .child(remove)
}
