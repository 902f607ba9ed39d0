//! Charts of an answer: which curves, under which words, as SVG.
//!
//! `chart` says where things are and knows no words; here curves get names,
//! takeaways and events from a plan's answer. The page shows these drawings,
//! `share` hands them out: one drawing, two faces.

mod bank;
mod claims;
mod day;
mod flows;
pub mod log;
mod logged;
mod markup;
mod night;
mod refill;
mod ribbon;
mod wiring;

pub use crate::text::value::Text;
pub use bank::{bank_diagram, leave};
pub use claims::{claim_rows, claims_diagram};
pub use day::DayChart;
pub use flows::{energy_balance, energy_flows, heat_balance, heat_flows};
pub use logged::LoggedChart;
pub use markup::{HEIGHT_PX, lay_out, markup};
pub use night::{NIGHT, Nightly};
pub use refill::RefillChart;
pub use ribbon::night_ribbon;
pub use wiring::wiring_diagram;

use crate::text::day::Calendar;
use crate::view::{
    chart::{
        frame::{XKind, YRange},
        marks::Mark,
        scrub::{Reading, Value},
        series::Series,
        svg::escaped,
    },
    diagram::Picture,
};

/// A picture with its words: what it is, what to see in it, and all of it in words for
/// those who do not see it.
#[derive(Clone, Debug, PartialEq)]
pub struct Shown {
    pub title: &'static str,
    pub caption: String,
    pub told: String,
    pub picture: Picture,
}

/// How wide a picture on paper is, px.
pub const PAPER_PX: f64 = 660.0;

impl Shown {
    /// The picture as an SVG that is read out.
    #[must_use]
    pub fn markup(&self) -> String {
        let told = escaped(&self.told);
        self.picture
            .markup(&format!(r#"role="img" aria-label="{told}""#))
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
    /// Several days: midnights carry the name of the day that begins.
    pub calendar: Option<Calendar>,
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
