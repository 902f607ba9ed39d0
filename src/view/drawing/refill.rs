//! Filling the bank: charge and amps over the hours, a curve for each charger.

use super::{Drawing, Text, Titles};
use crate::text::{Formatter, m};
use crate::{
    answer::{RefillAnswer, refill::FillPoint},
    plan::Plan,
    range::Unit,
    text::wiring::refill as say,
    view::chart::{
        frame::{XKind, YRange},
        series::{Sample, Series},
    },
};

/// One of the two charts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RefillChart {
    Charge,
    Amps,
}

impl RefillChart {
    pub const ALL: [Self; 2] = [Self::Charge, Self::Amps];

    #[must_use]
    pub fn titles(self, f: Formatter) -> Titles {
        let (title, y_label, y_text) = match self {
            Self::Charge => (
                f.say(m::ChargingChartCharge),
                f.say(m::ChargingAxisCharge),
                Text::Percent,
            ),
            Self::Amps => (
                f.say(m::ChargingChartCurrent),
                f.sign(Unit::Amp),
                Text::Amps,
            ),
        };
        Titles {
            title,
            x_label: f.say(m::ChargingAxisHours),
            y_label,
            x_text: Text::Hours,
            y_text,
        }
    }

    /// A curve for each charger that puts anything in, the cooler off.
    #[must_use]
    pub fn draw(self, f: Formatter, plan: &Plan, answer: &RefillAnswer) -> Drawing {
        let charged = || {
            answer
                .chargers
                .iter()
                .filter(|one| one.idle.curve.len() > 1)
        };
        let names: Vec<String> = charged()
            .map(|one| say::charger_name(f, plan, one))
            .collect();
        let value = |point: &FillPoint| match self {
            Self::Charge => point.charge_percent,
            Self::Amps => point.bank_a,
        };
        let series = charged().zip(&names).map(|(one, name)| Series {
            samples: (one.idle.curve.iter())
                .map(|point| Sample {
                    x: point.hours_h,
                    y: Some(value(point)),
                })
                .collect(),
            label_chars: name.chars().count(),
            ..Series::default()
        });
        Drawing {
            takeaway: match self {
                Self::Charge => say::charge_takeaway(f, plan, answer),
                Self::Amps => say::amps_takeaway(f, answer),
            },
            series: series.collect(),
            names,
            x_kind: XKind::Number,
            y_range: match self {
                Self::Charge => YRange::Fixed(0.0, 100.0),
                Self::Amps => YRange::WithZero,
            },
            ..Drawing::default()
        }
    }
}
