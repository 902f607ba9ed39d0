//! The longest cool night, and how much of one thing is enough.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::day::{DayUnknown, LongestNight},
    page::{
        field::Choice,
        kit::{Press, Sentences},
    },
    plan::Plan,
    text::day as say,
};
use leptos::prelude::*;

/// The mode plan that holds longest, beside what each mode does alone.
#[component]
pub fn LongestCoolNight() -> impl IntoView {
    let state = State::here();
    let late = Told::here().bands.longest;
    let of = move |say: fn(Formatter, &Plan, &LongestNight) -> String| {
        let night = late.get();
        night.map_or_else(String::new, |night| {
            state.with_plan(|plan| say(formatter(), plan, &night))
        })
    };
    let alone = move || {
        let night = late.get();
        night.map_or_else(Vec::new, |night| {
            state.with_plan(|plan| say::alone_sentences(formatter(), plan, &night))
        })
    };
    let waiting = move || {
        if late.is_coming() {
            say(m::DayLongestComing)
        } else if late.get().is_none() {
            say(m::DayLongestNone)
        } else {
            ""
        }
    };
    let stands = move || {
        let night = late.get();
        night.map_or_else(String::new, |night| {
            say::longest_stands(formatter(), &night)
        })
    };
    let take = move || {
        if let Some(night) = late.get_now() {
            state.edit(|plan| *plan = night.best.applied_to(plan));
        }
    };
    let none = Signal::derive(move || late.get().is_none());
    view! {
        <div class:behind=move || late.is_behind()>
            <h3>{say(m::DayLongest)}</h3>
            <p class="band-said" id="day-longest">
                {waiting}
            </p>
            <p class="detail">{move || of(say::longest_sentence)}</p>
            <Sentences class="findings" all=alone />
            <Press class="quiet" words=say(m::DayTakeLongest) hidden=none press=take />
            <p class="hint">{stands}</p>
        </div>
    }
}

/// One unknown asked for, all else given; looked for while its fold is open.
#[component]
pub fn Enough() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let late = told.bands.enough;
    let asked = told.bands.asked;
    asked.set(Some(DayUnknown::PanelW));
    let names = || {
        let all = DayUnknown::ALL.iter();
        all.map(|&one| say::unknown_name(formatter(), one).to_owned())
            .collect()
    };
    let chosen = move || {
        let now = asked.get();
        let at = DayUnknown::ALL.iter().position(|&one| Some(one) == now);
        at.unwrap_or(0)
    };
    let choose = move |index: usize| asked.set(DayUnknown::ALL.get(index).copied());
    let said = move || match late.get() {
        _ if late.is_coming() && !late.is_behind() => say(m::DayEnoughComing).into(),
        Some(sizing) => state.with_plan(|plan| say::enough_sentence(formatter(), plan, &sizing)),
        None => say(m::DayEnoughNone).into(),
    };
    let take = move || {
        if let Some(sizing) = late.get_now() {
            state.edit(|plan| {
                if let Some(next) = sizing.applied_to(plan) {
                    *plan = next;
                }
            });
        }
    };
    let none = Signal::derive(move || {
        let sizing = late.get();
        !sizing.is_some_and(|sizing| state.with_plan(|plan| sizing.applied_to(plan).is_some()))
    });
    view! {
        <Choice
            id="day-unknown"
            label=say(m::AskFor)
            names=names
            chosen=chosen
            choose=choose
        />
        <div class:behind=move || late.is_behind()>
            <p class="answer" role="status" id="day-enough">
                {said}
            </p>
            <Press class="quiet" words=say(m::DayTakeEnough) hidden=none press=take />
        </div>
    }
}
