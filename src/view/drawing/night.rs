//! The four charts of runs at constant draw: one curve for each run.

use super::{Drawing, Text, Titles};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{Answer, RunAnswer},
    plan::Plan,
    text::{self},
    view::chart::{
        frame::{XKind, YRange},
        series::{Sample, Series},
    },
};

/// One of the charts of runs.
#[derive(Clone, Copy)]
pub struct Nightly {
    pub titles: fn(Formatter) -> Titles,
    points: fn(&RunAnswer) -> Vec<(f64, f64)>,
    takeaway: fn(Formatter, &Plan, &Answer) -> String,
    on_clock: bool,
    y_range: YRange,
}

/// Hours by size and by depth; charge and voltage along the night.
pub const NIGHT: [Nightly; 4] = [
    Nightly {
        titles: |f| Titles {
            title: f.say(m::ByBank),
            x_label: f.say(m::AxisBank),
            y_label: f.say(m::AxisHours),
            x_text: Text::AmpHours,
            y_text: Text::Hours,
        },
        points: |run| run.by_bank.iter().map(|p| (p.bank_ah, p.hours_h)).collect(),
        takeaway: text::by_bank_takeaway,
        on_clock: false,
        y_range: YRange::WithZero,
    },
    Nightly {
        titles: |f| Titles {
            title: f.say(m::ByDepth),
            x_label: f.say(m::AxisDepth),
            y_label: f.say(m::AxisHours),
            x_text: Text::Percent,
            y_text: Text::Hours,
        },
        points: |run| {
            let points = run.by_depth.iter();
            points.map(|p| (p.depth_percent, p.hours_h)).collect()
        },
        takeaway: text::by_depth_takeaway,
        on_clock: false,
        y_range: YRange::WithZero,
    },
    Nightly {
        titles: |f| Titles {
            title: f.say(m::ChargeAlong),
            x_label: f.say(m::AxisClock),
            y_label: f.say(m::AxisCharge),
            x_text: Text::Hours,
            y_text: Text::Percent,
        },
        points: |run| {
            let points = run.trace.iter();
            points.map(|p| (p.hours_h, p.charge_percent)).collect()
        },
        takeaway: text::charge_takeaway,
        on_clock: true,
        y_range: YRange::Fixed(0.0, 100.0),
    },
    Nightly {
        titles: |f| Titles {
            title: f.say(m::VoltsAlong),
            x_label: f.say(m::AxisClock),
            y_label: f.say(m::AxisVolts),
            x_text: Text::Hours,
            y_text: Text::Volts,
        },
        points: |run| {
            let points = run.trace.iter();
            points.map(|p| (p.hours_h, p.terminal_v)).collect()
        },
        takeaway: text::volts_takeaway,
        on_clock: true,
        y_range: YRange::Data,
    },
];

impl Nightly {
    /// The drawing of an answer: one series per run, with its name.
    #[must_use]
    pub fn draw(&self, f: Formatter, plan: &Plan, answer: &Answer) -> Drawing {
        let runs = answer.runs.iter();
        let names: Vec<String> = runs
            .map(|run| text::run_title(f, plan, answer, run))
            .collect();
        let series = answer.runs.iter().zip(&names).map(|(run, name)| Series {
            samples: (self.points)(run)
                .into_iter()
                .map(|(x, y)| Sample { x, y: Some(y) })
                .collect(),
            label_chars: name.chars().count(),
            ..Series::default()
        });
        let start_min = f64::from(plan.night.start_clock_min);
        Drawing {
            takeaway: (self.takeaway)(f, plan, answer),
            series: series.collect(),
            names,
            x_kind: if self.on_clock {
                XKind::Clock { start_min }
            } else {
                XKind::Number
            },
            y_range: self.y_range,
            ..Drawing::default()
        }
    }
}
