//! The hot day in numbers: whether it lasts, how warm it gets, how sure that is.
//!
//! Hours count from the start of the first night, by the clock of the plan.
//! Watts into the bank's bars are positive where a name does not say which way.

use crate::{finding::Finding, simulate::Stop, spread::Band};
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
    /// Hours until empty, never more than the span: 2.5, 50 and 97.5 % of the nights.
    pub hours_h: Band,
    /// Warmest cabin until the wanted hour, a mode planned.
    pub warmest_c: Band,
}

/// What is on at a moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ModeAt {
    pub unit: usize,
    pub mode: usize,
}

/// One moment. Charge, volts and outdoors are those of the moment; watts, and
/// the cabin's air, are means over the step that ends here, so that a
/// thermostat's sawtooth does not alias.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayPoint {
    pub hours_h: f64,
    pub charge_percent: f64,
    pub terminal_v: f64,
    /// Out of the bank; negative while it is charged.
    pub bank_a: f64,
    pub cabin_c: f64,
    pub outdoor_c: f64,
    /// Relative humidity of the cabin air.
    pub humidity_percent: f64,
    /// Panels, past the controller, as far as it was taken.
    pub solar_w: f64,
    pub charger_w: f64,
    /// Everything electric but the unit.
    pub loads_w: f64,
    /// The unit with what feeds it.
    pub unit_w: f64,
    /// Sensible heat that the unit took out of the cabin.
    pub cooling_w: f64,
    /// Irradiance on the ground.
    pub global_w_m2: f64,
    /// The mode on; absent: none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mode: Option<ModeAt>,
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

/// Something that happened, and when.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayEvent {
    pub hours_h: f64,
    #[serde(flatten)]
    pub what: Happening,
}

/// What can happen on a day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum Happening {
    /// The bank gives no more: everything on it is off.
    Empty {
        stop: Stop,
    },
    /// Charged far enough again: loads and unit come back.
    BackOn,
    /// As full as it gets.
    Full,
    /// The unit alone was stopped, by its own or its feed's limit.
    UnitStopped {
        stop: Stop,
    },
    /// The cabin is warmer than the set point, a mode on or planned.
    SetPointLost,
    SetPointRegained,
    /// The mode plan came to another mode, or to none.
    ModeChanged {
        #[serde(default, skip_serializing_if = "Option::is_none")]
        mode: Option<ModeAt>,
    },
    /// The bank is too cold or too hot to be charged.
    ChargingRefused {
        bank_c: f64,
    },
    ChargingResumed,
    /// A generator's fuel is used up.
    FuelGone {
        charger: usize,
    },
}

/// From sunrise to sunset.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SunUp {
    pub rise_h: f64,
    pub set_h: f64,
}

/// One day summed up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DaySum {
    pub solar_wh: f64,
    pub charger_wh: f64,
    pub loads_wh: f64,
    pub unit_wh: f64,
    pub least_charge_percent: f64,
    /// At the end of the day.
    pub end_charge_percent: f64,
    /// Warmest cabin with a mode planned.
    pub warmest_c: f64,
    /// Time without the current that was asked for.
    pub dark_h: f64,
    /// Time above the set point's band, a mode planned.
    pub lost_h: f64,
}

/// Where the energy went over the whole span. The book closes:
/// solar + charger + out of the bank's store = loads + unit + lost.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct EnergySum {
    pub solar_wh: f64,
    /// What the panels offered and nothing took.
    pub spilled_wh: f64,
    pub charger_wh: f64,
    pub loads_wh: f64,
    /// The unit with its feed and cable.
    pub unit_wh: f64,
    /// Heat in the bank, and charge that did not go in.
    pub lost_wh: f64,
    /// By which the bank's store fell; negative if it rose.
    pub from_store_wh: f64,
    /// The same in charge.
    pub from_store_ah: f64,
    pub fuel_l: f64,
    /// What the book is out by; rounding.
    pub gap_wh: f64,
}

/// Where the cabin's sensible heat came from over the whole span; into the
/// cabin is positive. The book closes: the ways in = the unit + stored.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct HeatSum {
    pub glass_wh: f64,
    pub shell_wh: f64,
    pub air_change_wh: f64,
    pub sun_glass_wh: f64,
    pub sun_shell_wh: f64,
    pub people_wh: f64,
    pub gains_wh: f64,
    /// Taken out by the unit.
    pub unit_wh: f64,
    /// Stayed in air, contents and shell.
    pub stored_wh: f64,
    /// Water that the unit shed, and its latent heat.
    pub condensed_kg: f64,
    pub latent_wh: f64,
    pub gap_wh: f64,
}
