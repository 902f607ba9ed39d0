//! Which charts the page shows of the first two questions.

use super::{
    chart::{ChartView, Plot},
    kit::Fold,
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::view::drawing::NIGHT;
use leptos::prelude::*;
use std::sync::Arc;

/// The four charts, behind a fold: the sentence and the ribbon come first.
#[component]
pub fn Curves() -> impl IntoView {
    let state = State::here();
    let charts = move || {
        state.curves.set(true);
        let plots = NIGHT.iter().map(|chart| Plot {
            titles: (chart.titles)(formatter()),
            draw: Arc::new(move || {
                state.with_plan(|plan| {
                    state.with_answer(|answer| chart.draw(formatter(), plan, answer))
                })
            }),
        });
        plots
            .map(|plot| view! { <ChartView plot=plot /> })
            .collect_view()
    };
    view! { <Fold title=|| say(m::Curves)>{charts()}</Fold> }
}
