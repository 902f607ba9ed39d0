//! The night ribbon's place in the page.

use super::{
    dom::{El, h},
    reactive::*,
    state::State,
};
use crate::{drawing, wording::words};

/// Bars for all runs, with their names and hours, on one clock.
pub fn night_ribbon(state: State) -> El {
    let drawing = h("div", "").live_markup(move || {
        let width = state.width.get();
        state.with_plan(|plan| {
            state.with_answer(|answer| drawing::night_ribbon(plan, answer, width))
        })
    });
    h("figure", "ribbon")
        .child(drawing)
        .child(h("figcaption", "").text(words::RIBBON_CAPTION))
}
