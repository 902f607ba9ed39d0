//! What would buy more hours, and when to change to a lower mode.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::day::{Change, MoreHours, RankedChange},
    page::kit::{Fold, Press, Sentences},
    plan::Plan,
    text::day as say,
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
            say(m::DayChangesComing)
        } else if late.get().is_none_or(|ranked| ranked.changes.is_empty()) {
            say(m::DayChangesNone)
        } else {
            ""
        }
    };
    view! {
        <div class:behind=move || late.is_behind()>
            <h3>{say(m::DayChanges)}</h3>
            <p class="band-said" id="day-changes">
                {said}
            </p>
            <Ranked from=0 most=FIRST />
            <Fold class="fold small" title=|| say(m::DayChangesRest)>
                <Ranked from=FIRST most=usize::MAX />
            </Fold>
            <p class="hint">{say(m::DayChangesHint)}</p>
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
            what: say::change_name(formatter(), plan, &change),
            gain: say::change_gain(formatter(), ranked, one),
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
    let label = formatter().say(m::DayTryChangeOf { what: &what });
    let take = move || state.edit(|plan| *plan = change.applied_to(plan));
    view! {
        <li>
            <span class="change">
                <b>{what}</b>
                <span class="gain">{gain}</span>
            </span>
            <Press class="quiet" words=say(m::DayTryChange) label=label press=take />
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
                let lines = say::bedtime_sentences(formatter(), plan, day, &lines);
                lines.into_iter().collect()
            })
        })
    };
    let waiting = move || {
        if late.is_coming() {
            say(m::DayBedtimeComing)
        } else if late.get().is_none() {
            say(m::DayBedtimeNone)
        } else {
            ""
        }
    };
    view! {
        <div class:behind=move || late.is_behind()>
            <h3>{say(m::DayBedtime)}</h3>
            <p class="band-said" id="day-bedtime">
                {waiting}
            </p>
            <Sentences class="findings" all=said />
        </div>
    }
}
