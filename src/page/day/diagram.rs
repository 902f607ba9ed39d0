//! The books of the day as pictures.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::text::Formatter;
use crate::{
    answer::DayAnswer,
    page::diagram::Diagram,
    view::drawing::{Shown, energy_flows, heat_flows},
};
use leptos::prelude::*;

/// Where the energy goes, and where the heat comes from.
#[component]
pub fn Flows() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let shown = move |draw: fn(Formatter, &DayAnswer, f64) -> Shown| {
        move || {
            let width = state.width.get();
            told.of(state, |_, day| Some(draw(formatter(), day, width)))
        }
    };
    view! {
        <Diagram shown=shown(energy_flows) />
        <Diagram shown=shown(heat_flows) />
    }
}
