//! The night ribbon's place in the page.

use super::state::State;
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::view::drawing;
use leptos::prelude::*;

/// Bars for all runs, with their names and hours, on one clock.
#[component]
pub fn NightRibbon() -> impl IntoView {
    let state = State::here();
    let drawn = Memo::new(move |_| {
        let width = state.width.get();
        state.with_plan(|plan| {
            state.with_answer(|answer| drawing::night_ribbon(formatter(), plan, answer, width))
        })
    });
    view! {
        <figure class="ribbon">
            // Its texts are escaped by the drawing.
            <div inner_html=move || drawn.get()></div>
            <figcaption>{say(m::RibbonCaption)}</figcaption>
        </figure>
    }
}
