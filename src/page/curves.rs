//! Which curves the page draws of an answer.

use super::{
    chart::{Drawing, Plot, Text, chart_view},
    dom::{El, named_fold},
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

/// The four charts, behind a fold: the sentence and the ribbon come first.
pub fn curves(state: State) -> El {
    named_fold("fold", words::CURVES, move || {
        PLOTS.map(|plot| chart_view(state, plot)).into()
    })
}

const PLOTS: [Plot; 4] = [
    Plot {
        title: words::BY_BANK,
        x_label: words::AXIS_BANK,
        y_label: words::AXIS_HOURS,
        x_text: Text::AmpHours,
        y_text: Text::Hours,
        draw: |state| {
            let points =
                |run: &RunAnswer| run.by_bank.iter().map(|p| (p.bank_ah, p.hours_h)).collect();
            drawing(
                state,
                points,
                wording::by_bank_takeaway,
                false,
                YRange::WithZero,
            )
        },
    },
    Plot {
        title: words::BY_DEPTH,
        x_label: words::AXIS_DEPTH,
        y_label: words::AXIS_HOURS,
        x_text: Text::Percent,
        y_text: Text::Hours,
        draw: |state| {
            let points = |run: &RunAnswer| {
                run.by_depth
                    .iter()
                    .map(|p| (p.depth_percent, p.hours_h))
                    .collect()
            };
            drawing(
                state,
                points,
                wording::by_depth_takeaway,
                false,
                YRange::WithZero,
            )
        },
    },
    Plot {
        title: words::CHARGE_ALONG,
        x_label: words::AXIS_CLOCK,
        y_label: words::AXIS_CHARGE,
        x_text: Text::Hours,
        y_text: Text::Percent,
        draw: |state| {
            let points = |run: &RunAnswer| {
                run.trace
                    .iter()
                    .map(|p| (p.hours_h, p.charge_percent))
                    .collect()
            };
            drawing(
                state,
                points,
                wording::charge_takeaway,
                true,
                YRange::Fixed(0.0, 100.0),
            )
        },
    },
    Plot {
        title: words::VOLTS_ALONG,
        x_label: words::AXIS_CLOCK,
        y_label: words::AXIS_VOLTS,
        x_text: Text::Hours,
        y_text: Text::Volts,
        draw: |state| {
            let points = |run: &RunAnswer| {
                run.trace
                    .iter()
                    .map(|p| (p.hours_h, p.terminal_v))
                    .collect()
            };
            drawing(state, points, wording::volts_takeaway, true, YRange::Data)
        },
    },
];

/// One series per run, with its name.
fn drawing(
    state: State,
    points: fn(&RunAnswer) -> Vec<(f64, f64)>,
    takeaway: fn(&Plan, &Answer) -> String,
    on_clock: bool,
    y_range: YRange,
) -> Drawing {
    state.with_plan(|plan| {
        state.with_answer(|answer| {
            let names: Vec<String> = answer
                .runs
                .iter()
                .map(|run| wording::run_title(plan, answer, run))
                .collect();
            let series = answer.runs.iter().zip(&names).map(|(run, name)| Series {
                samples: points(run)
                    .into_iter()
                    .map(|(x, y)| Sample { x, y: Some(y) })
                    .collect(),
                label_chars: name.chars().count(),
                ..Series::default()
            });
            let start_min = f64::from(plan.night.start_clock_min);
            Drawing {
                takeaway: takeaway(plan, answer),
                series: series.collect(),
                names,
                x_kind: if on_clock {
                    XKind::Clock { start_min }
                } else {
                    XKind::Number
                },
                y_range,
            }
        })
    })
}
