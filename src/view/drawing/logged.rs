//! A logged night: what was measured, and what was predicted of its last third.

use super::{Drawing, Event, Text, Titles};
use crate::{
    answer::log::{Ahead, AheadPoint},
    quantity::{celsius, in_fahrenheit},
    text::{Formatter, claims as say, m},
    view::chart::{
        frame::{XKind, YRange},
        series::{Sample, Series},
    },
};

/// One of the charts of a logged night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoggedChart {
    Cabin,
    Used,
    Volts,
}

type Part = fn(&AheadPoint) -> Option<f64>;

impl LoggedChart {
    pub const ALL: [Self; 3] = [Self::Cabin, Self::Used, Self::Volts];

    /// Whether there is anything measured to be shown.
    #[must_use]
    pub fn is_in(self, ahead: &Ahead) -> bool {
        match self {
            Self::Cabin => ahead.cabin_k.is_some(),
            Self::Used => true,
            Self::Volts => ahead.volts_v.is_some(),
        }
    }

    /// The words around it, on the log's own clock.
    #[must_use]
    pub fn titles(self, f: Formatter, start_clock_min: u32) -> Titles {
        let (title, y_label, y_text) = match self {
            Self::Cabin if f.units.us_units => (
                f.say(m::LogNightCabin),
                f.say(m::DayAxisFahrenheit),
                Text::FahrenheitAsIs,
            ),
            Self::Cabin => (
                f.say(m::LogNightCabin),
                f.say(m::DayAxisCelsius),
                Text::Celsius,
            ),
            Self::Used => (f.say(m::LogNightUsed), "Ah", Text::AmpHours),
            Self::Volts => (f.say(m::LogNightVolts), "V", Text::Volts),
        };
        Titles {
            title,
            x_label: f.say(m::AxisClock),
            y_label,
            x_text: Text::Clock {
                start_min: f64::from(start_clock_min),
            },
            y_text,
        }
    }

    /// Measured along the night, predicted along its last third.
    #[must_use]
    pub fn draw(self, f: Formatter, start_clock_min: u32, ahead: &Ahead) -> Drawing {
        let (measured, predicted): (Part, Part) = match self {
            Self::Cabin => (|p| p.cabin_c, |p| p.predicted_c),
            Self::Used => (|p| Some(p.used_ah), |p| p.predicted_ah),
            Self::Volts => (|p| p.volts, |p| p.predicted_v),
        };
        let in_fahrenheit = self == Self::Cabin && f.units.us_units;
        let names = [f.say(m::LogNightMeasured), f.say(m::LogNightPredicted)];
        let series = names
            .iter()
            .zip([measured, predicted])
            .map(|(name, part)| Series {
                samples: samples(&ahead.points, part, in_fahrenheit),
                label_chars: name.chars().count(),
                ..Series::default()
            });
        Drawing {
            takeaway: match self {
                Self::Cabin => say::night_cabin(f, ahead),
                Self::Used => say::night_used(f, ahead),
                Self::Volts => say::night_volts(f, ahead),
            },
            series: series.collect(),
            names: names.map(str::to_owned).to_vec(),
            x_kind: XKind::Clock {
                start_min: f64::from(start_clock_min),
            },
            y_range: YRange::Data,
            marks: vec![Event {
                x: ahead.from_h,
                text: f.say(m::LogNightFromHere).into(),
            }],
            is_low: true,
            ..Drawing::default()
        }
    }
}

fn samples(points: &[AheadPoint], part: Part, as_fahrenheit: bool) -> Vec<Sample> {
    let of = |value: f64| {
        if as_fahrenheit {
            in_fahrenheit(celsius(value))
        } else {
            value
        }
    };
    let all = points.iter().map(|point| Sample {
        x: point.hours_h,
        y: part(point).map(of),
    });
    all.collect()
}
