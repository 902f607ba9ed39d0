//! Three charts one above another, read under one pointer.

use super::{El, State, h, told::Told};
use crate::{
    drawing::{DayChart, Drawing},
    page::{
        chart::{Plot, chart_column},
        reactive::*,
    },
    wording::day_words as words,
};
use std::rc::Rc;

/// The charts; built anew only when their words change, not with the numbers.
pub fn charts(state: State, told: Told) -> El {
    let words_of = move || {
        let span_h = told.day.get().map(|day| day.span_h);
        let (us_units, start) =
            state.with_plan(|plan| (plan.show.us_units, plan.night.start_clock_min));
        span_h.map_or_else(String::new, |span_h| format!("{span_h} {us_units} {start}"))
    };
    let build = move || {
        let Some(span_h) = told.day.get_untracked().map(|day| day.span_h) else {
            return Vec::new();
        };
        let plots = DayChart::ALL.map(|chart| {
            let drawn = Memo::new_with_compare(
                move |_| {
                    let read = told.bands.check_in.get();
                    told.of(state, |plan, day| {
                        let onward = read.as_ref().map(|read| read.onward.trace.as_slice());
                        chart.draw_from(plan, day, onward.unwrap_or_default())
                    })
                },
                |_: Option<&Drawing>, _| true,
            );
            Plot {
                titles: state.with_plan(|plan| chart.titles(plan, span_h)),
                draw: Rc::new(move || drawn.get()),
            }
        });
        chart_column(state, plots.into(), words::CHARTS_HINT)
    };
    let band = move || {
        if told.bands.drawn.is_behind() {
            words::BAND_STALE
        } else {
            told.bands.word()
        }
    };
    h("div", "day-charts")
        .live_class("behind", move || told.bands.drawn.is_behind())
        .live_class("stale", move || state.is_stale())
        .child(
            h("p", "band-said")
                .attr("id", "day-band")
                .live_text(move || band().into()),
        )
        .child(h("div", "").live_children(words_of, build))
}
