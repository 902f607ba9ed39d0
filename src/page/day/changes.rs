//! What would buy more hours, and when to change to a lower mode.

use super::{El, State, h, told::Told};
use crate::{
    answer::day::MoreHours,
    page::dom::{button, named_fold},
    wording::{day as say, day_words as words},
};
use std::sync::Arc;

/// Changes in sight before the rest folds away.
const FIRST: usize = 3;

/// The ranked changes; each can be tried at a tap.
pub fn changes(state: State, told: Told) -> El {
    let late = told.bands.changes;
    let rows = move |from: usize, most: usize| {
        let key = move || {
            let ranked = late.get();
            ranked.map_or_else(String::new, |ranked| {
                state.with_plan(|plan| {
                    let said = ranked.changes.iter().skip(from).take(most);
                    let said = said.map(|one| say::change_sentence(plan, &ranked, one));
                    said.collect::<Vec<_>>().join("\n")
                })
            })
        };
        let build = move || {
            let ranked = late.get();
            ranked.map_or_else(Vec::new, |ranked| list(state, &ranked, from, most))
        };
        h("ol", "changes").live_children(key, build)
    };
    let said = move || {
        if late.is_coming() {
            words::CHANGES_COMING.into()
        } else if late.get().is_none_or(|ranked| ranked.changes.is_empty()) {
            words::CHANGES_NONE.into()
        } else {
            String::new()
        }
    };
    h("div", "")
        .live_class("behind", move || late.is_behind())
        .child(h("h3", "").text(words::CHANGES))
        .child(
            h("p", "band-said")
                .attr("id", "day-changes")
                .live_text(said),
        )
        .child(rows(0, FIRST))
        .child(named_fold("fold small", words::CHANGES_REST, move || {
            vec![rows(FIRST, usize::MAX)]
        }))
        .child(h("p", "hint").text(words::CHANGES_HINT))
}

fn list(state: State, ranked: &Arc<MoreHours>, from: usize, most: usize) -> Vec<El> {
    let rows = ranked.changes.iter().skip(from).take(most);
    rows.map(|one| {
        let change = one.change;
        let (what, gain) = state.plan_now(|plan| {
            (
                say::change_name(plan, &change),
                say::change_gain(plan, ranked, one),
            )
        });
        let take = button("quiet", words::TRY_CHANGE, move || {
            state.edit(|plan| *plan = change.applied_to(plan));
        })
        .attr("aria-label", &say::try_change(&what));
        h("li", "")
            .child(
                h("span", "change")
                    .child(h("b", "").text(&what))
                    .child(h("span", "gain").text(&gain)),
            )
            .child(take)
    })
    .collect()
}

/// The latest time for each lower mode.
pub fn bedtime(state: State, told: Told) -> El {
    let late = told.bands.bedtime;
    let said = move || {
        let lines = late.get();
        lines.map_or_else(Vec::new, |lines| {
            told.of(state, |plan, day| {
                let lines = say::bedtime_sentences(plan, day, &lines);
                lines.into_iter().collect::<Vec<_>>()
            })
        })
    };
    let waiting = move || {
        if late.is_coming() {
            words::BEDTIME_COMING.into()
        } else if late.get().is_none() {
            words::BEDTIME_NONE.into()
        } else {
            String::new()
        }
    };
    h("div", "")
        .live_class("behind", move || late.is_behind())
        .child(h("h3", "").text(words::BEDTIME))
        .child(
            h("p", "band-said")
                .attr("id", "day-bedtime")
                .live_text(waiting),
        )
        .child(h("ul", "findings").live_children(
            move || said().join("\n"),
            move || said().iter().map(|text| h("li", "").text(text)).collect(),
        ))
}
