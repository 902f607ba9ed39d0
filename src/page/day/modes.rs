//! The mode plan by the clock: from when on which mode, every day alike.

use super::State;
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::page::rows::{AddRow, Row, alike, rows};
use crate::text::m;
use crate::{
    page::{
        field::{Choice, NumberField},
        kit::{Press, anew},
    },
    plan::{ModeRow, Path, Plan, check::MOST_MODE_ROWS, day::ModeRowField},
    text::{self},
};
use leptos::prelude::*;

/// The rows, or what is taken without any.
#[component]
pub fn ModePlan() -> impl IntoView {
    let state = State::here();
    let count = |plan: &Plan| plan.mode_plan.len();
    let clear = move || state.edit(|plan| plan.mode_plan.clear());
    let add = move || state.edit(add_row);
    let row = |row: Row| view! { <PlanRow at=row.at /> }.into_any();
    let has_room = move |plan: &Plan| count(plan) < MOST_MODE_ROWS;
    let has_rows = move || state.with_plan(|plan| count(plan) > 0);
    let clear = move |has_rows: bool| {
        has_rows
            .then(|| view! { <Press class="quiet" words=say(m::DayClearModePlan) press=clear /> })
            .into_any()
    };
    let taken = move || {
        state.with_plan(|plan| {
            if plan.mode_plan.is_empty() {
                text::day::mode_plan_taken(formatter(), plan)
            } else {
                String::new()
            }
        })
    };
    view! {
        <p class="hint">{say(m::DayModePlanHint)}</p>
        <p class="facts">{taken}</p>
        <div>{rows(Path::ModePlan, move |plan| alike(count(plan)), row)}</div>
        <AddRow words=say(m::DayAddModeRow) has_room=has_room press=add />
        <div>{anew(has_rows, clear)}</div>
    }
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

#[component]
fn PlanRow(at: usize) -> impl IntoView {
    let state = State::here();
    let names = move || {
        state.with_plan(|plan| {
            let places = places(plan).into_iter();
            places
                .map(|(unit, mode)| match mode {
                    Some(mode) => text::full_mode_name(formatter(), plan, unit, mode),
                    None => say(m::DayModeOff).into(),
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
    let remove = move || state.remove_row(Path::ModePlan, at);
    view! {
        <div class="row mode-row">
            <NumberField path=Path::ModeRow(at, ModeRowField::FromClockMin) />
            <Choice
                id=format!("mode-row-{at}")
                label=say(m::DayModeRow)
                names=names
                chosen=chosen
                choose=choose
            />
            <Press class="remove" words="×" label=say(m::DayRemoveModeRow) press=remove />
        </div>
    }
}
