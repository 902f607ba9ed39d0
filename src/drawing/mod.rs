//! Charts of an answer: which curves, under which words, as SVG.
//!
//! `chart` says where things are and knows no words; here curves get names,
//! takeaways and events from a plan's answer. The page shows these drawings,
//! `pass_on` hands them out: one drawing, two faces.

mod day;
mod markup;
mod night;
mod refill;
mod ribbon;

pub use day::DayChart;
pub use markup::{HEIGHT_PX, lay_out, markup};
pub use night::{NIGHT, Nightly};
pub use refill::RefillChart;
pub use ribbon::{RibbonWords, night_ribbon, night_ribbon_in};

use crate::{
    chart::{
        frame::{XKind, YRange},
        marks::Mark,
        scrub::{Reading, Value},
        series::Series,
    },
    wording::{self, number},
};

/// How a value is written in a read-out and in a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Text {
    /// A duration in hours and minutes.
    Hours,
    AmpHours,
    Percent,
    Volts,
    Watts,
    Celsius,
    /// Degrees Fahrenheit of a value in Celsius.
    Fahrenheit,
    Amps,
    /// The clock time so many hours after a clock minute.
    Clock {
        start_min: f64,
    },
    /// The same, with the day counted from the first start.
    DayClock {
        start_min: f64,
    },
    /// What stands on a chart in Fahrenheit already.
    FahrenheitAsIs,
}

impl Text {
    /// A value with its unit.
    #[must_use]
    pub fn of(self, value: f64) -> String {
        match self {
            Self::Hours => number::duration_fine(value),
            Self::AmpHours => number::with_unit(value, "Ah"),
            Self::Percent => number::percent(value),
            Self::Volts => number::volts(value),
            Self::Watts => number::with_unit(value, "W"),
            Self::Celsius => number::with_unit(value, "°C"),
            Self::Fahrenheit => {
                let temperature = crate::quantity::celsius(value);
                number::with_unit(crate::quantity::in_fahrenheit(temperature), "°F")
            }
            Self::Amps => number::with_unit(value, "A"),
            Self::Clock { start_min } => number::clock(start_min + 60.0 * value),
            Self::DayClock { start_min } => format!(
                "Day {}, {}",
                wording::day::day_number(value),
                number::clock(start_min + 60.0 * value)
            ),
            Self::FahrenheitAsIs => number::with_unit(value, "°F"),
        }
    }
}

/// The words that stand around a chart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Titles {
    pub title: &'static str,
    pub x_label: &'static str,
    pub y_label: &'static str,
    pub x_text: Text,
    pub y_text: Text,
}

/// What a chart shows: names and curves in the same order, and what it says.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawing {
    /// One sentence: what to see.
    pub takeaway: String,
    pub names: Vec<String>,
    pub series: Vec<Series>,
    pub x_kind: XKind,
    pub y_range: YRange,
    /// Curves are the tops of areas that stand on one another.
    pub stacked: bool,
    /// Stretches along x to darken: the night.
    pub shades: Vec<(f64, f64)>,
    /// Events along x, with their words.
    pub marks: Vec<Event>,
    /// One of several, one above another: lower than a chart by itself.
    pub is_low: bool,
    /// Several days: midnights carry their day's number.
    pub counts_days: bool,
    /// Letters to leave room for at both sides, so that those share their x axis.
    pub least_chars: (usize, usize),
}

impl Drawing {
    /// Each series' own value in a reading: a layer's thickness where they stand
    /// on one another, else the height of the curve.
    #[must_use]
    pub fn values(&self, reading: &Reading) -> Vec<Option<f64>> {
        let own = |value: &Value| match value.low_high {
            Some((low, high)) if self.stacked => {
                value.y.map(|y| y - if y > low { low } else { high })
            }
            _ => value.y,
        };
        reading.values.iter().map(own).collect()
    }
}

/// Something that happens at a place along x.
#[derive(Clone, Debug, PartialEq)]
pub struct Event {
    pub x: f64,
    pub text: String,
}

impl Event {
    /// Its place and length, for `chart`.
    #[must_use]
    pub fn mark(&self) -> Mark {
        Mark {
            x: self.x,
            chars: self.text.chars().count(),
        }
    }
}
