//! The questions that are folded at first: built when one is opened.
//!
//! All of them are reached through [`inside`] alone, and what only they need is a
//! part of the wasm by itself (`.tools/split`), fetched once the first answer
//! stands. `offline/later.js` brings it and says by signs how far it is; in the
//! one-file page and in tests there is no such part, and nothing to wait for.

use super::{
    browser::{document, listen, window},
    dom::{El, button, fold, h},
    hand_on::hand_on,
    reactive::*,
    state::State,
};
use crate::wording::words;

/// A question that is built when it is opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// Will it last a hot day?
    Day,
    /// Can the wiring carry it, and can it be filled again?
    Carry,
    /// Does it do what it claims?
    Claims,
    /// What is handed on to others.
    HandOn,
}

impl Question {
    pub const ALL: [Self; 4] = [Self::Day, Self::Carry, Self::Claims, Self::HandOn];

    const fn id(self) -> &'static str {
        match self {
            Self::Day => "question-3",
            Self::Carry => "question-4",
            Self::Claims => "question-5",
            Self::HandOn => "question-6",
        }
    }

    const fn title(self) -> &'static str {
        match self {
            Self::Day => words::QUESTION_DAY,
            Self::Carry => words::QUESTION_CARRY,
            Self::Claims => words::QUESTION_CLAIMS,
            Self::HandOn => words::QUESTION_HAND_ON,
        }
    }
}

/// How far the later part is: `coming`, `missing`, or empty once it is there.
fn part() -> String {
    let root = document().document_element();
    root.and_then(|root| root.get_attribute("data-later"))
        .unwrap_or_default()
}

/// Asks for the part, now or again.
fn bring() {
    if let Ok(event) = web_sys::Event::new("till-morning-bring") {
        let _ = window().dispatch_event(&event);
    }
}

/// The folded questions, their titles always in sight.
pub fn questions(state: State) -> Vec<El> {
    let moved = RwSignal::new(false);
    listen("till-morning-later", move || moved.set(true));
    let all = Question::ALL;
    all.map(|question| later(state, question, moved)).into()
}

fn later(state: State, question: Question, moved: RwSignal<bool>) -> El {
    let title = h("h2", "").attr("id", question.id()).text(question.title());
    let summary = h("summary", "").child(title);
    h("section", "question")
        .attr("aria-labelledby", question.id())
        .child(fold("later", summary, move || {
            bring();
            vec![place(state, question, moved)]
        }))
}

/// The question's inside; until the part is there, a line on how far it is.
fn place(state: State, question: Question, moved: RwSignal<bool>) -> El {
    let how_far = move || {
        moved.get();
        part()
    };
    h("div", "").live_children(how_far, move || match part().as_str() {
        "" => inside(state, question),
        "missing" => vec![
            say(words::PART_MISSING),
            button("quiet", words::PART_AGAIN, bring),
        ],
        _ => vec![say(words::PART_COMING)],
    })
}

fn say(words: &str) -> El {
    h("p", "hint").attr("role", "status").text(words)
}

/// The door: what stands under a question's title. Called from here alone, and
/// only once the part behind it is there.
#[inline(never)]
fn inside(state: State, question: Question) -> Vec<El> {
    match question {
        Question::Day | Question::Carry | Question::Claims => Vec::new(),
        Question::HandOn => hand_on(state),
    }
}
