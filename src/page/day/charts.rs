//! Three charts one above another, read under one pointer.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{
        chart::{ChartColumn, Plot},
        kit::anew,
    },
    text::day::Calendar,
    view::drawing::{DayChart, Drawing},
};
use leptos::prelude::*;
use std::sync::Arc;

/// The charts; built anew only when their words change, not with the numbers.
#[component]
pub fn Charts() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    // What their words hang on; a clock of other hours or dates is another axis.
    let words_of = move || {
        let day = told.day.get()?;
        let calendar = state.with_plan(Calendar::of);
        Some((
            state.with_plan(|plan| plan.show.us_units),
            calendar,
            day.span_h,
        ))
    };
    let build = move |words_of: Option<(bool, Calendar, f64)>| {
        let Some((_, _, span_h)) = words_of else {
            return ().into_any();
        };
        let plots = DayChart::ALL.map(|chart| plot(state, told, chart, span_h));
        view! { <ChartColumn plots=plots.into() hint=say(m::DayChartsHint) /> }.into_any()
    };
    let band = move || {
        if told.bands.drawn.is_behind() {
            say(m::DayBandStale)
        } else {
            told.bands.word()
        }
    };
    view! {
        <div
            class="day-charts"
            class:behind=move || told.bands.drawn.is_behind()
            class:stale=move || state.is_stale()
        >
            <p class="band-said" id="day-band">
                {band}
            </p>
            <div>{anew(words_of, build)}</div>
        </div>
    }
}

fn plot(state: State, told: Told, chart: DayChart, span_h: f64) -> Plot {
    let drawn = Memo::new_with_compare(
        move |_| {
            let read = told.bands.check_in.get();
            told.of(state, |plan, day| {
                let onward = read.as_ref().map(|read| read.onward.trace.as_slice());
                chart.draw_from(formatter(), plan, day, onward.unwrap_or_default())
            })
        },
        |_: Option<&Drawing>, _| true,
    );
    Plot {
        titles: state.plan_now(|plan| chart.titles(formatter(), plan, span_h)),
        draw: Arc::new(move || drawn.get()),
    }
}
