//! Claimed and measured as a picture.

use super::Answered;
use crate::page::locale::formatter;
use crate::{
    page::{diagram::Diagram, state::State},
    view::drawing::claims_diagram,
};
use leptos::prelude::*;

/// The picture; nothing while nothing is claimed.
#[component]
pub fn ClaimsDiagram(answer: Answered) -> impl IntoView {
    let state = State::here();
    let shown = move || {
        let width = state.width.get();
        state.with_plan(|plan| {
            answer.with(|answer| claims_diagram(formatter(), plan, answer, width))
        })
    };
    view! { <Diagram shown=shown /> }
}
