//! Which curves the page draws of an answer.

use super::{
    chart::{ChartView, Drawing, Text},
    outcome::is_open,
    state::State,
};
use crate::{
    answer::{Answer, RunAnswer},
    chart::{
        frame::{XKind, YRange},
        series::{Sample, Series},
    },
    plan::Plan,
    wording::{self, words},
};
use leptos::prelude::*;

/// The four charts, behind a fold: the sentence and the ribbon come first.
#[component]
pub fn Curves() -> impl IntoView {
    let open = RwSignal::new(false);
    view! {
        <details class="fold" on:toggle=move |event| open.set(is_open(&event))>
            <summary>{words::CURVES}</summary>
            {move || open.get().then(|| view! {
                <ChartView drawing=drawing(by_bank)/>
                <ChartView drawing=drawing(by_depth)/>
                <ChartView drawing=drawing(charge)/>
                <ChartView drawing=drawing(volts)/>
            })}
        </details>
    }
}

fn drawing(of: fn(&Plan, &Answer) -> Option<Drawing>) -> Memo<Option<Drawing>> {
    let state = State::get();
    Memo::new(move |_| {
        state
            .plan
            .with(|plan| state.answer.with(|answer| of(plan, answer)))
    })
}

/// One series per run, and their names.
fn series<'a, P: 'a>(
    plan: &Plan,
    answer: &'a Answer,
    points: impl Fn(&'a RunAnswer) -> &'a [P],
    xy: impl Fn(&P) -> (f64, f64),
) -> Option<(Vec<String>, Vec<Series>)> {
    if answer.runs.is_empty() {
        return None;
    }
    let names: Vec<String> = answer
        .runs
        .iter()
        .map(|run| wording::run_title(plan, answer, run))
        .collect();
    let series = answer
        .runs
        .iter()
        .zip(&names)
        .map(|(run, name)| Series {
            samples: points(run)
                .iter()
                .map(|point| {
                    let (x, y) = xy(point);
                    Sample { x, y: Some(y) }
                })
                .collect(),
            label_chars: name.chars().count(),
            ..Series::default()
        })
        .collect();
    Some((names, series))
}

fn by_bank(plan: &Plan, answer: &Answer) -> Option<Drawing> {
    let (names, series) = series(
        plan,
        answer,
        |run| &run.by_bank,
        |point| (point.bank_ah, point.hours_h),
    )?;
    Some(Drawing {
        title: words::BY_BANK,
        takeaway: wording::by_bank_takeaway(plan, answer),
        names,
        series,
        x_kind: XKind::Number,
        y_range: YRange::WithZero,
        x_label: words::AXIS_BANK,
        y_label: words::AXIS_HOURS,
        x_text: Text::AmpHours,
        y_text: Text::Hours,
    })
}

fn by_depth(plan: &Plan, answer: &Answer) -> Option<Drawing> {
    let (names, series) = series(
        plan,
        answer,
        |run| &run.by_depth,
        |point| (point.depth_percent, point.hours_h),
    )?;
    Some(Drawing {
        title: words::BY_DEPTH,
        takeaway: wording::by_depth_takeaway(plan, answer),
        names,
        series,
        x_kind: XKind::Number,
        y_range: YRange::WithZero,
        x_label: words::AXIS_DEPTH,
        y_label: words::AXIS_HOURS,
        x_text: Text::Percent,
        y_text: Text::Hours,
    })
}

fn charge(plan: &Plan, answer: &Answer) -> Option<Drawing> {
    let (names, series) = series(
        plan,
        answer,
        |run| &run.trace,
        |point| (point.hours_h, point.charge_percent),
    )?;
    Some(Drawing {
        title: words::CHARGE_ALONG,
        takeaway: wording::charge_takeaway(plan, answer),
        names,
        series,
        x_kind: XKind::Clock {
            start_min: f64::from(plan.night.start_clock_min),
        },
        y_range: YRange::Fixed(0.0, 100.0),
        x_label: words::AXIS_CLOCK,
        y_label: words::AXIS_CHARGE,
        x_text: Text::Hours,
        y_text: Text::Percent,
    })
}

fn volts(plan: &Plan, answer: &Answer) -> Option<Drawing> {
    let (names, series) = series(
        plan,
        answer,
        |run| &run.trace,
        |point| (point.hours_h, point.terminal_v),
    )?;
    Some(Drawing {
        title: words::VOLTS_ALONG,
        takeaway: wording::volts_takeaway(plan, answer),
        names,
        series,
        x_kind: XKind::Clock {
            start_min: f64::from(plan.night.start_clock_min),
        },
        y_range: YRange::Data,
        x_label: words::AXIS_CLOCK,
        y_label: words::AXIS_VOLTS,
        x_text: Text::Hours,
        y_text: Text::Volts,
    })
}
