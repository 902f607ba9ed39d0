//! Can it be filled again: hours by each charger and by the sun, whether
//! tomorrow's sun repays tonight, and where the days lead.
//!
//! Of the plan's first bank. Chargers are followed at steady loads
//! ([`crate::simulate::charge`]); sun and days by the hot day's engine, with its
//! weather, thermostat and panels. Hours of a charger count from when it starts;
//! hours of the days from the start of the first night.

mod chargers;
mod days;
mod make;
mod notes;
mod setting;
mod sky;
mod watch;

pub use make::refill;

use crate::{
    plan::supply::ChargerKind,
    simulate::{Stop, charge::FillEnd},
    study::spread::{Band, Share},
};
use serde::{Deserialize, Serialize};

/// Everything about filling the first bank again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RefillAnswer {
    /// Charge that it is filled from, share of what the bank holds, 0 to 100. Stated: without a
    /// band.
    pub from_percent: Band,
    /// Where that comes from.
    pub from: FilledFrom,
    /// Charge asked for, 0 to 100.
    pub to_percent: f64,
    /// Cells' charge between both; 0 where there is nothing to fill.
    pub missing_ah: f64,
    /// Kept by the cells between both, by their open-circuit volts.
    pub missing_wh: f64,
    /// On the bars beside the unit, all the time: loads and the bank's own electronics.
    pub beside_w: f64,
    /// One for each of the plan's chargers, in its order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub chargers: Vec<ChargerRefill>,
    /// By the sun alone; absent without panels, or where the day cannot be run.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sun: Option<SunRefill>,
    /// Where the days lead with all that feeds the bank as planned.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub days: Option<DaysBalance>,
    /// Worst first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<RefillNote>,
}

/// Where the charge that it is filled from comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FilledFrom {
    /// The plan says so.
    Stated,
    /// What the first night leaves at the wanted hour (a day on at the most), by
    /// the hot day's engine and without chargers.
    Night,
    /// The same at the asked mode's constant draw, where the day cannot be run.
    ConstantDraw,
}

/// One charger.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ChargerRefill {
    /// Its place in the plan.
    pub charger: usize,
    /// What feeds it.
    pub kind: ChargerKind,
    /// Amps that it starts with, hot derating taken off.
    pub most_a: f64,
    /// Share of its amps that heat leaves it, 0 to 100.
    pub hot_percent: f64,
    /// Volts at the bars that it holds at the end.
    pub hold_v: f64,
    /// The bank's current at which it calls it full.
    pub end_a: f64,
    /// Of what it takes from its source, what reaches the bars.
    pub efficiency_percent: f64,
    /// The unit off, everything else on.
    pub idle: Fill,
    /// The asked mode running beside; absent where there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cooling: Option<Fill>,
    /// Whose spread makes the band of the idle hours, largest first.
    pub spread_from: Vec<Share>,
}

/// A filling in numbers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Fill {
    /// Whether it gets there: as asked, or to what the charger calls full, no more than 1.5 % of
    /// the bank below it.
    pub is_filled: bool,
    /// Why it ends.
    pub end: FillEnd,
    /// Until its end, wherever that is; the likely value is the run's own.
    pub hours_h: Band,
    /// Charge at its end, 0 to 100.
    pub reached_percent: f64,
    /// Of the hours those at constant current, or at all that the source gives.
    pub constant_current_h: f64,
    /// Into the bank's terminals.
    pub into_ah: f64,
    /// Out of the charger into the bars: what stays, is lost and runs beside, together.
    pub charger_wh: f64,
    /// What ran beside.
    pub loads_wh: f64,
    /// In the bank's resistance, and charge that does not stay.
    pub lost_wh: f64,
    /// Taken from shore, engine or generator.
    pub taken_wh: f64,
    /// Fuel for it; absent where the charger burns none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fuel_l: Option<f64>,
    /// In the plan's own currency, where a price is stated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price_number: Option<f64>,
    /// In the order of time; empty where nothing was to be done or nothing may be.
    pub curve: Vec<FillPoint>,
}

/// The state at a moment of a filling.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FillPoint {
    /// From when the charger starts.
    pub hours_h: f64,
    /// Share of what the bank holds, 0 to 100.
    pub charge_percent: f64,
    /// At the bars.
    pub terminal_v: f64,
    /// Into the bank.
    pub bank_a: f64,
    /// Out of the charger.
    pub charger_a: f64,
}

/// By the sun alone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SunRefill {
    /// The first night and the day after it, under the plan's own sky.
    pub tomorrow: SkyDay,
    /// The charge at that day's end, with its spread.
    pub end_percent: Band,
    /// Whose spread makes that band, largest first.
    pub spread_from: Vec<Share>,
    /// The same day under other skies; empty where a weather file says.
    pub skies: Vec<SkyDay>,
    /// Hours of days and nights until the charge asked for, from the wanted hour
    /// on, the unit off; absent where a week does not do it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub idle_h: Option<f64>,
}

/// A night and the day after it under one sky, fed by the sun alone. Charges are shares of
/// what the bank holds, 0 to 100; hours count from the plan's start.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SkyDay {
    /// Cover of cloud, 0 to 100.
    pub cloud_percent: f64,
    /// At the start.
    pub start_percent: f64,
    /// At its lowest.
    pub lowest_percent: f64,
    /// When that is.
    pub lowest_h: f64,
    /// 24 hours after the start.
    pub end_percent: f64,
    /// The most after the lowest.
    pub highest_percent: f64,
    /// When the charge of the start is back; absent if it is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub repaid_h: Option<f64>,
    /// Of what was taken down to the lowest, what came back; 100 where next to nothing was
    /// taken.
    pub repaid_percent: f64,
    /// From the panels, past the controller, as far as it was taken.
    pub solar_wh: f64,
    /// Offered by the panels and taken by nothing.
    pub spilled_wh: f64,
    /// Unit and everything else.
    pub used_wh: f64,
    /// When the bank was empty; absent if it was not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub empty_h: Option<f64>,
}

/// Where the days lead, each alike but for the date.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DaysBalance {
    /// Where they lead.
    pub course: Course,
    /// By which the charge differs from one day's end to the next, mean of the last two days,
    /// per cent of what the bank holds.
    pub change_percent: f64,
    /// Charge at the end of each of the seven days, 0 to 100.
    pub end_percent: Vec<f64>,
    /// From panels and chargers in a day, over the days before the bank is empty.
    pub fed_daily_wh: f64,
    /// Of the unit and the other loads, likewise.
    pub used_daily_wh: f64,
}

/// Where the days lead.
///
/// Hours count from the plan's start.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "to", rename_all = "snake_case")]
pub enum Course {
    /// Empty after so many hours, within those that were run.
    Empty { after_h: f64, by: Stop },
    /// Falling: empty after so many hours, if it goes on so.
    Falling { after_h: f64 },
    /// Back at the charge asked for after so many hours, and on each day after.
    Full { after_h: f64 },
    /// Rising: at the charge asked for after so many hours, if it goes on so.
    Rising { after_h: f64 },
    /// Every day ends as the one before, within 0.2 % of the bank; or what the change leads to
    /// is more than a year away.
    Level,
}

/// Something to know, typed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RefillNote {
    /// How much it matters.
    pub severity: crate::plan::finding::Severity,
    /// What it is, with its numbers.
    #[serde(flatten)]
    pub matter: RefillMatter,
}

/// What a note is about.
///
/// `charger` is a place in the plan.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "matter", rename_all = "snake_case")]
pub enum RefillMatter {
    /// Neither panels nor a charger: nothing fills it.
    NoSource,
    /// Nothing stands in the plan that could be switched on after a dark day.
    NoCharger,
    /// No panels: nothing is said of the sun.
    NoPanels,
    /// What runs beside takes all that the charger gives, with the unit off.
    TooWeak {
        charger: usize,
        charger_a: f64,
        beside_a: f64,
    },
    /// The same, but with the unit running only.
    TooWeakForCooling {
        charger: usize,
        reached_percent: f64,
    },
    /// It holds no volts at which the charge asked for is reached.
    EndsBelow {
        charger: usize,
        reached_percent: f64,
    },
    /// It would take longer than ten days.
    TakesTooLong { charger: usize },
    /// The fuel at hand does not do it.
    FuelRunsOut {
        charger: usize,
        needed_l: f64,
        at_hand_l: f64,
    },
    /// The charger is on for less than it takes, every day.
    WindowTooShort {
        charger: usize,
        daily_h: f64,
        needed_h: f64,
    },
    /// The bank is too cold to be charged all day.
    TooCold { bank_c: f64, least_c: f64 },
    /// It is so for a part of the day.
    ColdAtTimes { bank_c: f64, least_c: f64 },
    /// It is too hot to be charged for a part of the day at least.
    TooHot { bank_c: f64, most_c: f64 },
    /// Heat takes some of the charger's amps.
    Derated {
        charger: usize,
        air_c: f64,
        left_percent: f64,
    },
    /// The source and not the charger is the limit.
    SourceLimits {
        charger: usize,
        source_w: f64,
        charger_a: f64,
    },
    /// More amps than the bank's own limit, where one is stated.
    AboveBankLimit {
        charger: usize,
        most_a: f64,
        limit_a: f64,
    },
    /// The charge to fill up to is not above the one to fill up from.
    NothingToFill { from_percent: f64, to_percent: f64 },
    /// The day cannot be run: no sun, and the start by constant draw.
    NoDay,
}
