//! The page from top to bottom: answer first, then what it rests on.

use super::{
    assumed::assumed,
    banks::banks,
    curves::curves,
    dom::{El, h},
    keep,
    keeping::keeping,
    later::{Question, inside, later},
    margin::notices,
    modes::modes,
    needed::needed,
    outcome::outcome,
    part,
    state::State,
    units::units,
};
use super::{
    browser::{document, language, listen, window},
    reactive::*,
};
use crate::{
    plan::{Plan, Show, draft::Draft},
    wording::{self, Notice, words},
};

/// The widest the column gets.
const COLUMN_PX: f64 = 720.0;
/// What the page keeps free at both sides together.
const SIDES_PX: f64 = 32.0;

/// What a first visit opens with, in the units that the browser's language asks for.
pub fn example() -> Plan {
    Plan::demo().shown_as(Show::of_tag(&language()))
}

/// Builds the whole page.
pub fn app() -> Vec<El> {
    let state = State::new(Draft::of(example()));
    part::once_there(move |there| keep::open(there, state));
    if part::there().is_none() && keep::has_something() {
        state.notice.set(Some(Notice::PartNotThere));
    }
    follow_width(state);
    follow_update(state);
    let head = h("header", "masthead")
        .child(h("h1", "").text(words::NAME_OF_PAGE))
        .child(h("p", "strap").text(words::STRAP));
    let main = h("main", "")
        .child(notices(state))
        .child(
            question("question-1", words::QUESTION_RUN)
                .child(outcome(state))
                .child(banks(state))
                .child(modes(state))
                .child(units(state))
                .child(curves(state)),
        )
        .child(question("question-2", words::QUESTION_BANK).child(needed(state)))
        .children(Question::ALL.map(|question| later(state, question)))
        .child(question("assumed", words::ASSUMED).child(assumed(state)))
        .child(question("keeping", words::KEEPING).child(keeping(state)))
        .child(
            question("cautions", words::CAUTIONS_TITLE)
                .child(h("p", "").text(wording::ESTIMATES))
                .child(part::extra(move |there| {
                    inside(there, state, Question::Cautions)
                })),
        );
    vec![
        head,
        main,
        h("footer", "foot").child(h("p", "").text(words::FOOT)),
    ]
}

fn question(id: &str, title: &str) -> El {
    h("section", "question")
        .attr("aria-labelledby", id)
        .child(h("h2", "").attr("id", id).text(title))
}

/// Charts are drawn for the width there is.
pub(super) fn follow_width(state: State) {
    let measure = move || {
        let inner = window()
            .inner_width()
            .ok()
            .and_then(|width| width.as_f64())
            .unwrap_or(360.0);
        state.width.set((inner - SIDES_PX).clamp(240.0, COLUMN_PX));
    };
    measure();
    listen("resize", measure);
}

/// The service worker's sign that a newer version waits.
fn follow_update(state: State) {
    let waits = document()
        .document_element()
        .is_some_and(|root| root.has_attribute("data-update"));
    state.update.set(waits);
    listen("till-morning-update", move || state.update.set(true));
}
