//! 'Pass it on': the answer as a sentence, a code, a report, figures and tables.
//!
//! What takes work is made when its fold is opened or its button pressed, not
//! while someone types above.

mod files;
mod reader_maker;
mod report;
mod save;
mod share;

use super::{
    kit::{Fold, anew},
    state::State,
};
use crate::{
    answer::{self, Answer},
    plan::Plan,
};
use files::{Figures, Tables, Whole};
use leptos::prelude::*;
use reader_maker::ReaderMaker;
use report::Report;
use share::{LinkCode, Sentence};

/// What stands under the sixth question.
#[component]
pub fn HandOnQuestion() -> impl IntoView {
    let said = Said::new(String::new());
    view! {
        <Sentence said=said />
        <LinkCode said=said />
        <p class="said" role="status">
            {said}
        </p>
        <ReaderMaker />
        <Report said=said />
        <Figures said=said />
        <Tables said=said />
        <Whole said=said />
    }
}

/// A line that says what came of a press, for eyes and screen readers.
type Said = RwSignal<String>;

/// A fold whose inside is there while it is open, and follows the plan.
#[component]
fn MadeWhileOpen(
    title: &'static str,
    make: impl Fn(&Plan, &Answer) -> AnyView + Clone + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let open = RwSignal::new(false);
    let turn = move || open.get().then(|| state.turn());
    let build = move |turn: Option<String>| match turn {
        Some(_) => state.with_plan(|plan| make(plan, &answer::answer(plan))),
        None => ().into_any(),
    };
    view! {
        <Fold title=move || title open=open>
            {anew(turn, build.clone())}
        </Fold>
    }
}
