//! The hot day in numbers: whether it lasts, how warm it gets, how sure that is.
//!
//! Hours count from the start of the first night, by the clock of the plan.
//! Watts into the bank's bars are positive where a name does not say which way.

mod bedtime;
mod change;
mod check_in;
mod fit;
pub mod import;
mod longest;
mod make;
mod rank;
mod readings;
mod switching;
mod trial;

pub use bedtime::{Bedtime, BedtimeLine, Latest, bedtime_lines};
pub use change::Change;
pub use check_in::{Advice, CheckInAnswer, CheckInWork, Onward, check_in};
pub use fit::{Fit, FittedFactor};
pub use longest::{CoolPlan, Longest, LongestNight, ModeFrom, longest_night};
pub use make::{can_be_run, day, day_with_odds};
pub use rank::{MoreHours, RankedChange, Ranker, Worth, more_hours};
pub use trial::{Chances, Ground};

use crate::{finding::Finding, simulate::Stop, spread::Band};
pub use crate::{
    simulate::day::{COLDEST_C, DayEvent, DayPoint, DaySum, EnergySum, Happening, HeatSum, ModeAt},
    sizing::day::{DayFound, DaySizing, DayUnknown, size_day},
    spread::{Sampled, Sampler},
};
use serde::{Deserialize, Serialize};

/// Everything about one to seven days of the plan's first bank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayAnswer {
    pub start_clock_min: u32,
    /// How long the days here last, all together.
    pub span_h: f64,
    /// When the night should be over.
    pub wanted_h: f64,
    pub set_point_c: f64,
    /// Until the bank is first empty; absent if it is not in all that time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub empty_h: Option<f64>,
    /// What made it so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub empty_by: Option<Stop>,
    /// Until the set point is first lost with a mode on; absent if it never is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost_h: Option<f64>,
    /// Warmest cabin while a mode is planned, until the wanted hour.
    pub warmest_c: f64,
    /// The least charge on the way.
    pub least_charge_percent: f64,
    /// What the drawn nights say; absent where none was drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odds: Option<Odds>,
    pub trace: Vec<DayPoint>,
    /// Bands of the curves, at the same hours as every so many-th point.
    pub bands: Vec<BandPoint>,
    pub events: Vec<DayEvent>,
    pub sun: Vec<SunUp>,
    /// One for each day, from start to start.
    pub days: Vec<DaySum>,
    pub energy: EnergySum,
    pub heat: HeatSum,
    pub findings: Vec<Finding>,
}

/// Counted over the drawn nights. Raw shares: to be rounded where they are said.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Odds {
    pub samples_count: u32,
    /// Of the bank not being empty before the wanted hour.
    pub lasting_percent: f64,
    /// Of that, and the set point held wherever a mode was planned.
    pub holding_percent: f64,
    /// Of the bank not being empty in the whole span.
    pub never_empty_percent: f64,
    /// Hours until empty, never more than the span: 2.5, 50 and 97.5 % of the nights.
    pub hours_h: Band,
    /// Warmest cabin until the wanted hour, a mode planned.
    pub warmest_c: Band,
}

/// Low (2.5 %), middle and high (97.5 %) of the drawn nights at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BandPoint {
    pub hours_h: f64,
    pub charge_percent: Band,
    pub cabin_c: Band,
    pub outdoor_c: Band,
    pub solar_w: Band,
    pub unit_w: Band,
}

/// From sunrise to sunset.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SunUp {
    pub rise_h: f64,
    pub set_h: f64,
}
