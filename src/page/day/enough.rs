//! The longest cool night, and how much of one thing is enough.

use super::{El, State, h, told::Told};
use crate::{
    answer::day::DayUnknown,
    page::{dom::button, field::choice, reactive::*},
    wording::{day as say, day_words as words},
};

/// The mode plan that holds longest, beside what each mode does alone.
pub fn longest(state: State, told: Told) -> El {
    let late = told.bands.longest;
    let of = move |say: fn(&crate::plan::Plan, &crate::answer::day::LongestNight) -> String| {
        let night = late.get();
        night.map_or_else(String::new, |night| {
            state.with_plan(|plan| say(plan, &night))
        })
    };
    let alone = move || {
        let night = late.get();
        night.map_or_else(Vec::new, |night| {
            state.with_plan(|plan| say::alone_sentences(plan, &night))
        })
    };
    let waiting = move || {
        if late.is_coming() {
            words::LONGEST_COMING.into()
        } else if late.get().is_none() {
            words::LONGEST_NONE.into()
        } else {
            String::new()
        }
    };
    let take = button("quiet", words::TAKE_LONGEST, move || {
        if let Some(night) = late.get() {
            state.edit(|plan| *plan = night.best.applied_to(plan));
        }
    })
    .live_flag("hidden", move || late.get().is_none());
    h("div", "")
        .live_class("behind", move || late.is_behind())
        .child(h("h3", "").text(words::LONGEST))
        .child(
            h("p", "band-said")
                .attr("id", "day-longest")
                .live_text(waiting),
        )
        .child(h("p", "detail").live_text(move || of(say::longest_sentence)))
        .child(h("ul", "findings").live_children(
            move || alone().join("\n"),
            move || alone().iter().map(|text| h("li", "").text(text)).collect(),
        ))
        .child(take)
        .child(h("p", "hint").live_text(move || {
            late.get()
                .map_or_else(String::new, |night| say::longest_stands(&night))
        }))
}

/// One unknown asked for, all else given; looked for while its fold is open.
pub fn enough(state: State, told: Told) -> Vec<El> {
    let late = told.bands.enough;
    let asked = told.bands.asked;
    asked.set(Some(DayUnknown::PanelW));
    let names = || {
        let all = DayUnknown::ALL.iter();
        all.map(|&one| say::unknown_name(one).to_owned()).collect()
    };
    let chosen = move || {
        let now = asked.get();
        let at = DayUnknown::ALL.iter().position(|&one| Some(one) == now);
        at.unwrap_or(0)
    };
    let choose = move |index: usize| asked.set(DayUnknown::ALL.get(index).copied());
    let said = move || match late.get() {
        _ if late.is_coming() && !late.is_behind() => words::ENOUGH_COMING.into(),
        Some(sizing) => state.with_plan(|plan| say::enough_sentence(plan, &sizing)),
        None => words::ENOUGH_NONE.into(),
    };
    let take = button("quiet", words::TAKE_ENOUGH, move || {
        if let Some(sizing) = late.get() {
            state.edit(|plan| {
                if let Some(next) = sizing.applied_to(plan) {
                    *plan = next;
                }
            });
        }
    })
    .live_flag("hidden", move || {
        !late
            .get()
            .is_some_and(|sizing| state.with_plan(|plan| sizing.applied_to(plan).is_some()))
    });
    vec![
        choice(
            "day-unknown",
            crate::wording::words::ASK_FOR,
            names,
            chosen,
            choose,
        ),
        h("div", "")
            .live_class("behind", move || late.is_behind())
            .child(
                h("p", "answer")
                    .attr("role", "status")
                    .attr("id", "day-enough")
                    .live_text(said),
            )
            .child(take),
    ]
}
