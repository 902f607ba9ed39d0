//! The questions that are folded at first: built when one is opened.
//!
//! All of them are reached through [`inside`] alone: it is a door to the later
//! part of the wasm, and what only they need is there.

use super::{
    dom::{El, fold, h},
    hand_on::hand_on,
    part::{self, AllThere},
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
    /// What can hurt: open, at the page's foot.
    Cautions,
}

impl Question {
    /// The folded ones, in their order.
    pub const ALL: [Self; 4] = [Self::Day, Self::Carry, Self::Claims, Self::HandOn];

    const fn id(self) -> &'static str {
        match self {
            Self::Day => "question-3",
            Self::Carry => "question-4",
            Self::Claims => "question-5",
            Self::HandOn => "question-6",
            Self::Cautions => "cautions",
        }
    }

    const fn title(self) -> &'static str {
        match self {
            Self::Day => words::QUESTION_DAY,
            Self::Carry => words::QUESTION_CARRY,
            Self::Claims => words::QUESTION_CLAIMS,
            Self::HandOn => words::QUESTION_HAND_ON,
            Self::Cautions => words::CAUTIONS_TITLE,
        }
    }
}

/// A folded question, its title always in sight.
pub fn later(state: State, question: Question) -> El {
    let title = h("h2", "").attr("id", question.id()).text(question.title());
    let summary = h("summary", "").child(title);
    h("section", "question")
        .attr("aria-labelledby", question.id())
        .child(fold("later", summary, move || {
            vec![part::place(move |there| inside(there, state, question))]
        }))
}

/// A door: what stands under a question's title.
#[inline(never)]
pub(super) fn inside(AllThere(there): AllThere, state: State, question: Question) -> Vec<El> {
    match question {
        Question::Claims => super::claims::claims(state),
        Question::Day => super::day::day(state),
        Question::Carry => super::carry::carry(state),
        Question::HandOn => hand_on(there, state),
        Question::Cautions => super::margin::cautions(state),
    }
}
