//! Which charts the page shows of the first two questions.

use super::{
    chart::{ChartView, Plot},
    kit::Fold,
    state::State,
};
use crate::{text::words, view::drawing::NIGHT};
use leptos::prelude::*;
use std::sync::Arc;

/// The four charts, behind a fold: the sentence and the ribbon come first.
#[component]
pub fn Curves() -> impl IntoView {
    let state = State::here();
    let charts = move || {
        state.curves.set(true);
        let plots = NIGHT.iter().map(|chart| Plot {
            titles: chart.titles,
            draw: Arc::new(move || {
                state.with_plan(|plan| state.with_answer(|answer| chart.draw(plan, answer)))
            }),
        });
        plots
            .map(|plot| view! { <ChartView plot=plot /> })
            .collect_view()
    };
    view! { <Fold title=|| words::CURVES>{charts()}</Fold> }
}
