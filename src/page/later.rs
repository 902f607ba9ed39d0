//! The questions that are folded at first: built when one is opened.
//!
//! All of them are reached through [`inside`] alone, which is in the later part of the
//! wasm with what only they need.

use super::{
    claims::ClaimsQuestion, day::DayQuestion, hand_on::HandOnQuestion, kit::Fold, margin::Cautions,
    part, wiring::WiringQuestion,
};
use crate::page::locale::say;
use crate::text::m;
use leptos::prelude::*;

/// A question that is built when it is opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// Will it last a hot day?
    Day,
    /// Can the wiring carry it, and can it be filled again?
    Wiring,
    /// Does it do what it claims?
    Claims,
    /// What is handed on to others.
    HandOn,
    /// What can hurt: open, at the page's foot.
    Cautions,
}

impl Question {
    /// The folded ones, in their order.
    pub const ALL: [Self; 4] = [Self::Day, Self::Wiring, Self::Claims, Self::HandOn];

    const fn id(self) -> &'static str {
        match self {
            Self::Day => "question-3",
            Self::Wiring => "question-4",
            Self::Claims => "question-5",
            Self::HandOn => "question-6",
            Self::Cautions => "cautions",
        }
    }

    fn title(self) -> &'static str {
        match self {
            Self::Day => say(m::QuestionDay),
            Self::Wiring => say(m::QuestionWiring),
            Self::Claims => say(m::QuestionClaims),
            Self::HandOn => say(m::QuestionHandOn),
            Self::Cautions => say(m::CautionsTitle),
        }
    }
}

/// A folded question, its title always in sight.
#[component]
pub fn LaterQuestion(question: Question) -> impl IntoView {
    let is_open = RwSignal::new(false);
    let title = move || view! { <h2 id=question.id()>{question.title()}</h2> };
    let build = move || part::place(move |later| (later.inside)(question, is_open));
    view! {
        <section class="question" aria-labelledby=question.id()>
            <Fold class="later" title=title open=is_open>
                {build()}
            </Fold>
        </section>
    }
}

/// What stands under a question's title.
pub fn inside(question: Question, is_open: RwSignal<bool>) -> AnyView {
    match question {
        Question::Claims => view! { <ClaimsQuestion /> }.into_any(),
        Question::Day => view! { <DayQuestion is_open=is_open /> }.into_any(),
        Question::Wiring => view! { <WiringQuestion is_open=is_open /> }.into_any(),
        Question::HandOn => view! { <HandOnQuestion /> }.into_any(),
        Question::Cautions => view! { <Cautions /> }.into_any(),
    }
}
