//! The plan: the one versioned document that a person edits.
//!
//! Everything the engine answers from stands in it; there is no other input.
//! Keys end in their unit. A missing key takes the default that the page shows
//! under *What was assumed*.

pub mod assumed;
pub mod cabin;
pub mod check;
pub mod claims;
pub mod cooling;
pub mod day;
pub mod demo;
pub mod draft;
pub mod entry;
pub mod fields;
pub mod figure;
pub mod finding;
mod flat;
pub mod open;
pub mod part;
pub mod path;
pub mod reader;
pub mod rows;
mod slot;
pub mod supply;
pub mod tabs;
mod units;
pub mod wiring;

pub use cabin::Cabin;
pub use claims::{AirReading, Claim, Price};
pub use cooling::UnitCooling;
pub use day::{CheckIn, Day, ModeRow};
pub use figure::{Figure, Provenance};
pub use path::Path;
pub use reader::Reader;
pub use supply::Supply;
pub use wiring::Wiring;

use crate::physics::battery::Chemistry;
use serde::{Deserialize, Serialize};

/// The version that this engine writes. See [`open`] for how others are met.
pub const VERSION: u32 = 1;

/// Everything a person says about a night on a bank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Plan {
    pub version: u32,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub title: String,
    /// One bank, or more to lay side by side (see [`check::MOST_BANKS`]).
    pub banks: Vec<Bank>,
    /// One cooling unit, or more to lay side by side.
    pub units: Vec<Unit>,
    /// Other loads, on all night at the bank's terminals.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub loads: Vec<Load>,
    #[serde(default)]
    pub night: Night,
    /// The hot day, for the third question.
    #[serde(default, skip_serializing_if = "is_default")]
    pub day: Day,
    #[serde(default, skip_serializing_if = "is_default")]
    pub cabin: Cabin,
    #[serde(default, skip_serializing_if = "is_default")]
    pub supply: Supply,
    /// Cables, fuses and what the batteries bear, for the fourth question.
    #[serde(default, skip_serializing_if = "is_default")]
    pub wiring: Wiring,
    /// By clock, every day alike. Left out: the asked mode for the hours wanted.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub mode_plan: Vec<ModeRow>,
    /// What was read off in the night so far.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub check_ins: Vec<CheckIn>,
    /// What is claimed of the gear, for the fifth question.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub claims: Vec<Claim>,
    /// The cooler read from its air side.
    #[serde(default, skip_serializing_if = "is_default")]
    pub air: AirReading,
    #[serde(default, skip_serializing_if = "is_default")]
    pub price: Price,
    #[serde(default, skip_serializing_if = "is_default")]
    pub show: Show,
    /// There: this plan is a reader's page, with a few numbers left open.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reader: Option<Reader>,
}

/// Batteries of one kind, wired in series and parallel.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Bank {
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    pub chemistry: Chemistry,
    /// Nominal volts of one battery, as said: 12 is read by the chemistry. Left out:
    /// nobody has said, and [`demo::USUAL_SYSTEM_V`] stands in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub battery_nominal_v: Option<f64>,
    pub battery_rated_ah: Figure,
    /// Hours over which the rated Ah was counted (by chemistry if absent).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_hours_h: Option<f64>,
    #[serde(default = "one")]
    pub series_count: u32,
    #[serde(default = "one")]
    pub parallel_count: u32,
    /// Share of the rated capacity that is left (100 if absent).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub health_percent: Option<Figure>,
    /// Charge at the start, as a share of what the bank holds (100 if absent).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start_charge_percent: Option<Figure>,
    /// How far down the bank may be taken, as a share of what it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub depth_percent: Option<f64>,
    /// Terminal volts at which the battery's own electronics open.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cutoff_v: Option<Figure>,
    /// Continuous amps that one battery may give.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub battery_current_limit_a: Option<Figure>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub battery_resistance_mohm: Option<Figure>,
    /// What the cells drop beyond their resistance while they are discharged (charge
    /// transfer and diffusion), of what is usual for them (100 if absent). 0 where the
    /// resistance stated is all of it, as from a load test of minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub polarisation_percent: Option<Figure>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub peukert_exponent: Option<Figure>,
    /// The battery's own electronics and the monitor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub parasitic_w: Option<Figure>,
    /// One battery's own open-circuit voltage against charge, instead of the chemistry's.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub battery_open_circuit: Vec<OpenCircuitPoint>,
    /// What a bench run of the whole bank gave. It replaces rated Ah and health.
    #[serde(default, skip_serializing_if = "is_default")]
    pub measured: Measured,
}

/// A row of an own open-circuit table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OpenCircuitPoint {
    pub charge_percent: f64,
    pub open_circuit_v: f64,
}

/// A bench run of the whole bank, from full until its own end.
///
/// The model is calibrated so that the same run gives these numbers back.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Measured {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_ah: Option<Figure>,
    /// At the terminals: sag is already inside.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_wh: Option<Figure>,
    /// The constant power the run was made at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load_w: Option<Figure>,
}

/// A cooling unit, how it is fed, and its modes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Unit {
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    #[serde(default, skip_serializing_if = "is_default")]
    pub feed: Feed,
    /// Nominal volts that the unit wants at its terminals (direct feed).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub supply_v: Option<f64>,
    /// Terminal volts at which the unit stops itself (direct feed).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cutoff_v: Option<Figure>,
    #[serde(default, skip_serializing_if = "is_default")]
    pub cable: Cable,
    /// What it gives, for the hot day.
    #[serde(default, skip_serializing_if = "is_default")]
    pub cooling: UnitCooling,
    pub modes: Vec<Mode>,
}

/// What stands between bank and unit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(!try_from))]
#[serde(
    tag = "kind",
    rename_all = "snake_case",
    deny_unknown_fields,
    try_from = "flat::FlatFeed"
)]
pub enum Feed {
    #[default]
    Direct,
    /// A DC-DC converter: takes its idle draw and output over efficiency.
    DcDc {
        output_v: f64,
        efficiency_percent: Figure,
        idle_w: Figure,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        limit_a: Option<Figure>,
    },
    /// An inverter: no-load, proportional and square loss.
    Inverter {
        no_load_w: Figure,
        proportional_loss_percent: Figure,
        square_loss_percent_per_kw: Figure,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        limit_w: Option<Figure>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        cutoff_v: Option<Figure>,
    },
}

/// The copper from the bank to the unit, converter or inverter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Cable {
    /// One way; the current goes there and back. Left out: nobody has said; runs take
    /// [`wiring::USUAL_M`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length_m: Option<f64>,
    /// Of one conductor. Left out: nobody has said; runs take
    /// [`wiring::USUAL_MM2`], and the fourth question judges nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub area_mm2: Option<f64>,
    #[serde(default = "warm_copper")]
    pub temperature_c: f64,
    /// Fuses, switches and lugs, both ways together.
    #[serde(default)]
    pub connections_mohm: f64,
}

impl Default for Cable {
    fn default() -> Self {
        Self {
            length_m: None,
            area_mm2: None,
            temperature_c: warm_copper(),
            connections_mohm: 0.0,
        }
    }
}

/// One way of running the unit, under the user's own name.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(!try_from)
)]
#[serde(try_from = "flat::FlatMode")]
pub struct Mode {
    pub name: String,
    #[serde(flatten)]
    pub draw: Draw,
    /// Whether that is while it runs or on average (absent: while it runs).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<DrawBasis>,
    /// Share of the time at that draw; the rest is standby (100 if absent).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub duty_percent: Option<Figure>,
    /// What still runs in the off-time: fan and electronics.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub standby_w: Option<Figure>,
    /// Cooling while on, at the unit's rating.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cooling_w: Option<Figure>,
}

part::choice! {
    /// What a draw is told of. A mean says nothing of the current while it runs.
    DrawBasis {
        WhileRunning = "while_running",
        OnAverage = "on_average",
    }
}

impl Mode {
    /// Whether its draw is a mean over the compressor's cycles.
    #[must_use]
    pub fn is_average(&self) -> bool {
        self.basis == Some(DrawBasis::OnAverage)
    }
}

/// What the unit takes while it is on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum Draw {
    /// A compressor behind its own electronics: watts stay, amps rise as volts fall.
    Power { power_w: Figure },
    /// Amps that stay as the volts fall, as measured at a system voltage.
    Current {
        current_a: Figure,
        measured_at_v: f64,
    },
}

/// Something else that runs all night.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Load {
    #[serde(default)]
    pub name: String,
    pub power_w: Figure,
}

/// The night itself, and what is asked of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Night {
    pub start_clock_min: u32,
    pub wanted_h: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub unknown: Unknown,
    /// Which unit and mode the unknown is asked for.
    #[serde(skip_serializing_if = "is_default")]
    pub asked_unit: usize,
    #[serde(skip_serializing_if = "is_default")]
    pub asked_mode: usize,
    /// Share of its capacity that the bank is to have left when it is replaced.
    pub ageing_percent: f64,
    pub margin_percent: f64,
}

impl Default for Night {
    /// Nine in the evening until seven; the ageing and margin of IEEE 485 (from memory).
    fn default() -> Self {
        Self {
            start_clock_min: 21 * 60,
            wanted_h: 10.0,
            unknown: Unknown::Bank,
            asked_unit: 0,
            asked_mode: 0,
            ageing_percent: 80.0,
            margin_percent: 10.0,
        }
    }
}

/// Which number is asked for, the others being given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Unknown {
    Hours,
    #[default]
    Bank,
    Draw,
    Depth,
}

/// How numbers are shown. The plan itself is always in the units its keys name.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Show {
    /// Feet, degrees Fahrenheit, cubic feet a minute and the like.
    pub us_units: bool,
}

impl Show {
    pub const METRIC: Self = Self { us_units: false };
    pub const US: Self = Self { us_units: true };

    /// Nominal volts of a house socket where these units are used: 120 V (ANSI C84.1) or
    /// 230 V (IEC 60038), from memory. Where amps on AC are taken until somebody says.
    #[must_use]
    pub const fn mains_v(self) -> f64 {
        if self.us_units { 120.0 } else { 230.0 }
    }

    /// What a browser's own tag asks for: US units for `en-US`, `es-US` and the
    /// like, whatever the language. It only decides until somebody chooses.
    ///
    /// ```
    /// use till_morning::plan::Show;
    /// assert_eq!(Show::of_tag("en-US"), Show::US);
    /// assert_eq!(Show::of_tag("en-GB"), Show::METRIC);
    /// ```
    #[must_use]
    pub fn of_tag(tag: &str) -> Self {
        let mut parts = tag.split(['-', '_']).skip(1);
        Self {
            us_units: parts.any(|part| part.eq_ignore_ascii_case("us")),
        }
    }
}

impl Unknown {
    pub const ALL: [Self; 4] = [Self::Hours, Self::Bank, Self::Draw, Self::Depth];
}

impl part::Choice for Unknown {
    const ALL: &[Self] = &Self::ALL;
    fn key(self) -> &'static str {
        match self {
            Self::Hours => "hours",
            Self::Bank => "bank",
            Self::Draw => "draw",
            Self::Depth => "depth",
        }
    }
}

fn is_default<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}

/// The counts that a bank has if it says nothing.
fn one() -> u32 {
    1
}

/// Copper under load in a warm cabin.
fn warm_copper() -> f64 {
    40.0
}
