//! The wiring as a picture: in the question, and on the electrician's sheet.

use super::Answered;
use crate::page::locale::{formatter, say};
use crate::{
    answer::wiring::WiringAnswer,
    page::{diagram::Diagram, state::State},
    plan::Plan,
    text::m,
    view::drawing::{PAPER_PX, bank_diagram, wiring_diagram},
};
use leptos::prelude::*;

/// The diagram; each of its cables opens that cable's row.
#[component]
pub fn WiringDiagram(answer: Answered) -> impl IntoView {
    let state = State::here();
    let shown = move || {
        let width = state.width.get();
        state.with_plan(|plan| {
            answer.with(|answer| {
                let answer = answer.as_ref()?;
                Some(wiring_diagram(formatter(), plan, answer, width))
            })
        })
    };
    let opens = |key: &str| format!("circuit-{key}");
    view! { <Diagram shown=shown hint=say(m::PictureWiringHint) opens=opens /> }
}

/// The bank, battery by battery.
#[component]
pub fn BankDiagram(answer: Answered) -> impl IntoView {
    let state = State::here();
    let shown = move || {
        let width = state.width.get();
        state.with_plan(|plan| {
            answer.with(|answer| bank_diagram(formatter(), plan, answer.as_ref()?, width))
        })
    };
    view! { <Diagram shown=shown /> }
}

/// The wiring on paper, as wide as that.
pub fn on_paper(plan: &Plan, answer: &WiringAnswer) -> AnyView {
    let shown = wiring_diagram(formatter(), plan, answer, PAPER_PX);
    view! {
        <div class="scroll" tabindex="0" role="group" aria-label=shown.title>
            // Its texts are escaped by the drawing.
            <div class="picture on-paper" inner_html=shown.markup()></div>
        </div>
    }
    .into_any()
}
