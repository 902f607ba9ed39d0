//! What would buy more hours, and when to change to a lower mode.

use super::{State, told::Told};
use crate::{
    answer::day::{Change, MoreHours, RankedChange},
    page::kit::{Fold, Press, Sentences},
    plan::Plan,
    text::{day as say, day_words as words},
};
use leptos::prelude::*;

/// Changes in sight before the rest folds away.
const FIRST: usize = 3;

/// The ranked changes; each can be tried at a tap.
#[component]
pub fn Changes() -> impl IntoView {
    let late = Told::here().bands.changes;
    let said = move || {
        if late.is_coming() {
            words::CHANGES_COMING
        } else if late.get().is_none_or(|ranked| ranked.changes.is_empty()) {
            words::CHANGES_NONE
        } else {
            ""
        }
    };
    view! {
        <div class:behind=move || late.is_behind()>
            <h3>{words::CHANGES}</h3>
            <p class="band-said" id="day-changes">
                {said}
            </p>
            <Ranked from=0 most=FIRST />
            <Fold class="fold small" title=|| words::CHANGES_REST>
                <Ranked from=FIRST most=usize::MAX />
            </Fold>
            <p class="hint">{words::CHANGES_HINT}</p>
        </div>
    }
}

/// A change as it stands in the list.
#[derive(Clone, PartialEq)]
struct Row {
    change: Change,
    what: String,
    gain: String,
}

impl Row {
    fn of(plan: &Plan, ranked: &MoreHours, one: &RankedChange) -> Self {
        let change = one.change;
        Self {
            change,
            what: say::change_name(plan, &change),
            gain: say::change_gain(plan, ranked, one),
        }
    }
}

/// Some of the ranking: rows that read as before stay as they are.
#[component]
fn Ranked(from: usize, most: usize) -> impl IntoView {
    let state = State::here();
    let late = Told::here().bands.changes;
    let rows = Memo::new(move |_| {
        let ranked = late.get();
        ranked.map_or_else(Vec::new, |ranked| {
            state.with_plan(|plan| {
                let rows = ranked.changes.iter().skip(from).take(most);
                rows.map(|one| Row::of(plan, &ranked, one)).collect()
            })
        })
    });
    let list = move || {
        let rows = rows.get().into_iter();
        rows.map(|row| view! { <ChangeRow row=row /> })
            .collect_view()
    };
    view! { <ol class="changes">{list}</ol> }
}

#[component]
fn ChangeRow(row: Row) -> impl IntoView {
    let state = State::here();
    let Row { change, what, gain } = row;
    let label = say::try_change(&what);
    let take = move || state.edit(|plan| *plan = change.applied_to(plan));
    view! {
        <li>
            <span class="change">
                <b>{what}</b>
                <span class="gain">{gain}</span>
            </span>
            <Press class="quiet" words=words::TRY_CHANGE label=label press=take />
        </li>
    }
}

/// The latest time for each lower mode.
#[component]
pub fn BedtimeLines() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let late = told.bands.bedtime;
    let said = move || {
        let lines = late.get();
        lines.map_or_else(Vec::new, |lines| {
            told.of(state, |plan, day| {
                let lines = say::bedtime_sentences(plan, day, &lines);
                lines.into_iter().collect()
            })
        })
    };
    let waiting = move || {
        if late.is_coming() {
            words::BEDTIME_COMING
        } else if late.get().is_none() {
            words::BEDTIME_NONE
        } else {
            ""
        }
    };
    view! {
        <div class:behind=move || late.is_behind()>
            <h3>{words::BEDTIME}</h3>
            <p class="band-said" id="day-bedtime">
                {waiting}
            </p>
            <Sentences class="findings" all=said />
        </div>
    }
}
