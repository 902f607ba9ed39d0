//! What a run leaves: points to draw, events, and books that close.

use crate::{
    physics::cabin::{HeatBook, Step, WaterBook},
    simulate::Stop,
};
use serde::{Deserialize, Serialize};

/// What is on at a moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ModeAt {
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
}

/// One moment. Charge and outdoors are those of the moment; volts, amps, watts and
/// the cabin's air are means over the step that ends here, so that a thermostat's
/// sawtooth does not alias. The first point of a run is before any step: the cabin as
/// it starts, the bank's volts at rest, and no watts.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayPoint {
    /// From the plan's start.
    pub hours_h: f64,
    /// Share of what the bank holds, 0 to 100.
    pub charge_percent: f64,
    /// At the bank's terminals.
    pub terminal_v: f64,
    /// Out of the bank; negative while it is charged.
    pub bank_a: f64,
    /// The cabin's air.
    pub cabin_c: f64,
    /// Dry bulb outdoors.
    pub outdoor_c: f64,
    /// Relative humidity of the cabin air, 0 to 100; 0 in samples, which leave it out.
    pub humidity_percent: f64,
    /// Panels, past the controller, as far as it was taken.
    pub solar_w: f64,
    /// From all chargers, as far as it was taken.
    pub charger_w: f64,
    /// Everything electric but the unit, the bank's own electronics included.
    pub loads_w: f64,
    /// The unit with its feed and cable.
    pub unit_w: f64,
    /// Sensible heat that the unit took out of the cabin.
    pub cooling_w: f64,
    /// Irradiance on the ground.
    pub global_w_m2: f64,
    /// The mode on; absent: none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mode: Option<ModeAt>,
}

/// Something that happened, and when.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DayEvent {
    /// From the plan's start.
    pub hours_h: f64,
    /// What it was, with what belongs to it.
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
        /// The level that ended it.
        stop: Stop,
        /// The mode that was just starting, where the loads alone would be carried.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        starting: Option<ModeAt>,
    },
    /// Charged far enough again: loads and unit come back.
    BackOn,
    /// As full as it gets.
    Full,
    /// The unit alone was stopped, by its own or its feed's limit.
    UnitStopped {
        /// The level that it did not keep.
        stop: Stop,
    },
    /// The cabin is warmer than the set point, a mode on or planned.
    SetPointLost,
    /// The cabin is back in its band.
    SetPointRegained,
    /// The mode plan came to another mode, or to none.
    ModeChanged {
        /// The mode from here on; absent: none.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        mode: Option<ModeAt>,
    },
    /// The bank is too cold or too hot to be charged.
    ChargingRefused {
        /// The bank's temperature.
        bank_c: f64,
    },
    /// The bank is back at temperatures at which it may be charged.
    ChargingResumed,
    /// A generator's fuel is used up.
    FuelGone {
        /// Place of the charger in the plan.
        charger: usize,
    },
}

/// One day summed up: 24 hours from the plan's start, or from a day after it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DaySum {
    /// From the panels, past the controller, as far as it was taken.
    pub solar_wh: f64,
    /// From all chargers.
    pub charger_wh: f64,
    /// Everything electric but the unit.
    pub loads_wh: f64,
    /// The unit with its feed and cable.
    pub unit_wh: f64,
    /// At the end of the step at which the bank held least.
    pub least_charge_percent: f64,
    /// At the end of the day.
    pub end_charge_percent: f64,
    /// Warmest cabin with a mode planned; the coldest number there is, if none was.
    pub warmest_c: f64,
    /// Time with everything off, the bank giving no more.
    pub dark_h: f64,
    /// Time with a mode planned and the unit alone stopped.
    pub unit_off_h: f64,
    /// Time above the set point's band, a mode planned.
    pub lost_h: f64,
}

impl DaySum {
    /// A day that has not begun.
    pub(super) const EMPTY: Self = Self {
        solar_wh: 0.0,
        charger_wh: 0.0,
        loads_wh: 0.0,
        unit_wh: 0.0,
        least_charge_percent: 100.0,
        end_charge_percent: 0.0,
        warmest_c: COLDEST_C,
        dark_h: 0.0,
        unit_off_h: 0.0,
        lost_h: 0.0,
    };
}

/// Below every cabin, Celsius: what "the warmest so far" starts from.
pub const COLDEST_C: f64 = -100.0;

/// Where the energy went over the whole span. The book closes:
/// solar + charger + out of the bank's store = loads + unit + lost.
///
/// Not in a quick run, which leaves the store's side out (see
/// [`How::is_quick`](super::How::is_quick)).
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct EnergySum {
    /// From the panels, past the controller, as far as it was taken.
    pub solar_wh: f64,
    /// What the panels offered and nothing took.
    pub spilled_wh: f64,
    /// From all chargers into the bars.
    pub charger_wh: f64,
    /// Everything electric but the unit.
    pub loads_wh: f64,
    /// The unit with its feed and cable.
    pub unit_wh: f64,
    /// Heat in the bank, and charge that did not go in.
    pub lost_wh: f64,
    /// By which the bank's store fell, by its open-circuit volts; negative if it rose.
    pub from_store_wh: f64,
    /// The same in charge.
    pub from_store_ah: f64,
    /// Burnt by all chargers.
    pub fuel_l: f64,
    /// What the book is out by; rounding.
    pub gap_wh: f64,
}

impl EnergySum {
    /// Works out the gap: once, when all is booked.
    pub(super) fn close(&mut self) {
        self.gap_wh = self.solar_wh + self.charger_wh + self.from_store_wh
            - self.loads_wh
            - self.unit_wh
            - self.lost_wh;
    }

    /// Everything that moved: the measure for the gap.
    #[must_use]
    pub fn throughput_wh(&self) -> f64 {
        self.solar_wh
            + self.charger_wh
            + self.from_store_wh.abs()
            + self.loads_wh
            + self.unit_wh
            + self.lost_wh.abs()
    }
}

/// Where the cabin's sensible heat came from over the whole span; into the
/// cabin is positive. The book closes: the ways in = the unit + stored.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct HeatSum {
    /// Through glass, by conduction.
    pub glass_wh: f64,
    /// Through the shell, by conduction.
    pub shell_wh: f64,
    /// With the air change.
    pub air_change_wh: f64,
    /// Sun through glass.
    pub sun_glass_wh: f64,
    /// Sun on the shell, less what the roof radiates to the sky.
    pub sun_shell_wh: f64,
    /// From people and animals, sensible.
    pub people_wh: f64,
    /// From appliances and other waste heat.
    pub gains_wh: f64,
    /// Taken out by the unit, sensible: counted positive.
    pub unit_wh: f64,
    /// Stayed in air, contents and shell.
    pub stored_wh: f64,
    /// Water that the unit shed.
    pub condensed_kg: f64,
    /// The latent heat of that water.
    pub latent_wh: f64,
    /// What the book is out by; rounding.
    pub gap_wh: f64,
}

impl HeatSum {
    pub(super) fn of(heat: &HeatBook, water: &WaterBook) -> Self {
        let wh = |joules: f64| joules / 3600.0;
        Self {
            glass_wh: wh(heat.glass_j),
            shell_wh: wh(heat.shell_j),
            air_change_wh: wh(heat.air_change_j),
            sun_glass_wh: wh(heat.sun_glass_j),
            sun_shell_wh: wh(heat.sun_shell_j),
            people_wh: wh(heat.people_j),
            gains_wh: wh(heat.gains_j),
            unit_wh: wh(heat.unit_j),
            stored_wh: wh(heat.stored_air_j + heat.stored_shell_j),
            condensed_kg: water.condensed_kg,
            latent_wh: wh(water.condensed_kg * crate::physics::cabin::moisture::EVAPORATION_J_KG),
            gap_wh: wh(heat.gap_j()),
        }
    }
}

/// Who listens to a run. Whoever wants nothing of it says `&mut ()`.
///
/// Called in the order of time; an event comes before the point of the piece it lies in, and
/// a set point lost or regained may be told a little after the fact.
pub trait Sink {
    /// Whether points are to carry the humidity, which costs a little.
    const WANTS_HUMIDITY: bool = false;
    /// The end of a step or of a part of one, and the start of the run.
    fn point(&mut self, _point: &DayPoint) {}
    /// Something happened, hours after the plan's start.
    fn event(&mut self, _hours_h: f64, _what: Happening) {}
}

impl Sink for () {}

/// All of it, to be drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    /// In the order of time, the start first.
    pub points: Vec<DayPoint>,
    /// As they were told.
    pub events: Vec<DayEvent>,
}

impl Sink for Record {
    const WANTS_HUMIDITY: bool = true;

    fn point(&mut self, point: &DayPoint) {
        self.points.push(*point);
    }
    fn event(&mut self, hours_h: f64, what: Happening) {
        self.events.push(DayEvent { hours_h, what });
    }
}

/// Starts of the units, and what they cost.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Starts {
    /// How often a unit switched on.
    pub count: u32,
    /// Time on, as seconds at full capacity.
    pub on_s: f64,
    /// Of it the time in which a unit drew and did not cool yet.
    pub lost_s: f64,
    /// The mode that started, among the inputs' modes; the last of several.
    pub rig: Option<usize>,
}

impl Starts {
    /// Counts those of a step of one mode; `before` is the cabin at its start.
    pub(super) fn add(&mut self, rig: usize, before: &crate::physics::cabin::State, step: &Step) {
        // Starts and stops take turns.
        let was_off = u32::from(!before.running.is_on());
        let starts = (step.switches + was_off) / 2;
        self.count += starts;
        self.on_s += step.full_s;
        self.lost_s += step.starting_s;
        if starts > 0 {
            self.rig = Some(rig);
        }
    }

    /// Share of the cooling that was lost, 0 to 1; 0 where nothing was on.
    #[must_use]
    pub fn lost_share(&self) -> f64 {
        if self.on_s > 0.0 {
            self.lost_s / self.on_s
        } else {
            0.0
        }
    }
}

/// What a run came to.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Hours from the plan's start until the bank was first empty, and by what; absent: never.
    pub empty: Option<(f64, Stop)>,
    /// The same until the set point was first lost.
    pub lost_h: Option<f64>,
    /// Warmest cabin until the wanted hour, a mode planned and once cooled down, means over
    /// 20 minutes; where that never was, the air at the end.
    pub warmest_c: f64,
    /// Of the whole span, its start included, 0 to 100.
    pub least_charge_percent: f64,
    /// One for each 24 hours of the scene, also those that the run did not come to.
    pub days: Vec<DaySum>,
    /// Of the whole span.
    pub energy: EnergySum,
    /// Of the whole span.
    pub heat: HeatSum,
    /// Share of what the bank holds at the end, 0 to 1.
    pub end_share: f64,
    /// The cabin at the end, to go on from.
    pub end_cabin: crate::physics::cabin::State,
    /// Of all modes together.
    pub starts: Starts,
}

impl Outcome {
    /// Hours until empty, or the whole of `span_h`.
    #[must_use]
    pub fn hours(&self, span_h: f64) -> f64 {
        self.empty.map_or(span_h, |(hours_h, _)| hours_h)
    }
    /// Whether the bank was not empty before an hour.
    #[must_use]
    pub fn lasts_to(&self, wanted_h: f64) -> bool {
        self.empty.is_none_or(|(hours_h, _)| hours_h >= wanted_h)
    }
    /// Whether, besides, the set point was held until then.
    #[must_use]
    pub fn holds_to(&self, wanted_h: f64) -> bool {
        self.lasts_to(wanted_h) && self.lost_h.is_none_or(|lost_h| lost_h >= wanted_h)
    }
}
