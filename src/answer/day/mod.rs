//! The hot day in numbers: whether it lasts, how warm it gets, how sure that is.
//!
//! Hours count from the start of the first night, by the clock of the plan.
//! Watts into the bank's bars are positive where a name does not say which way.

mod further;
pub mod import;
mod make;

pub use further::{Further, further};
pub use make::{day, day_with_odds};

use crate::{plan::finding::Finding, simulate::Stop};
pub use crate::{
    simulate::day::{
        COLDEST_C, DayEvent, DayPoint, DaySum, EnergySum, Happening, HeatSum, ModeAt, can_be_run,
    },
    study::night::{
        Advice, Bedtime, BedtimeLine, Chances, Change, CheckInAnswer, CheckInWork, CoolPlan, Fit,
        FittedFactor, Latest, Longest, LongestNight, ModeFrom, MoreHours, Onward, RankedChange,
        Ranker, SearchScenario, Worth, bedtime_lines, check_in, longest_night, more_hours,
    },
    study::sizing::day::{DayFound, DaySizing, DayUnknown, size_day},
    study::spread::{BandPoint, Odds, Sampled, Sampler},
};
use serde::{Deserialize, Serialize};

/// Everything about one to seven days of the plan's first bank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayAnswer {
    /// Clock at the start, minutes after midnight.
    pub start_clock_min: u32,
    /// How long the days here last, all together: 24 to 168 h.
    pub span_h: f64,
    /// When the night should be over.
    pub wanted_h: f64,
    /// The middle of the thermostat's band.
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
    /// Warmest cabin while a mode is planned, once cooled down, until the wanted hour; where
    /// that never is, the cabin at the end.
    pub warmest_c: f64,
    /// Least share of what the bank holds on the way, 0 to 100.
    pub least_charge_percent: f64,
    /// What the drawn nights say; absent where none was drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odds: Option<Odds>,
    /// The curves: at the start, at the end of every step, and where a step is cut.
    pub trace: Vec<DayPoint>,
    /// Bands of the curves, every 20 minutes of one day or every hour of more; empty where no
    /// night was drawn.
    pub bands: Vec<BandPoint>,
    /// What happened, in the order of time.
    pub events: Vec<DayEvent>,
    /// When it is up, cut to the span.
    pub sun: Vec<SunUp>,
    /// One for each day, from start to start.
    pub days: Vec<DaySum>,
    /// Where the electricity of the whole span went.
    pub energy: EnergySum,
    /// Where the cabin's heat of the whole span came from.
    pub heat: HeatSum,
    /// What there is to say of the day's own fields, worst first; no errors.
    pub findings: Vec<Finding>,
    /// What the day is asked beside; absent where it was not worked out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub further: Option<Further>,
}

/// From sunrise to sunset.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SunUp {
    /// Hours from the start; 0 where it was up then.
    pub rise_h: f64,
    /// Hours from the start; the span where it is still up then.
    pub set_h: f64,
}
