//! Stepping the cabin through time, exactly.
//!
//! Within one step the inputs run straight from their start to their end value
//! and the unit's capacity is frozen; for such inputs the temperatures are the
//! exact solution, and each thermostat event is located on it. The only error
//! is that of describing weather by straight lines: for a smooth swing of
//! amplitude A and period P it is below A (2 pi step / P)^2 / 8, which is 2 mK
//! for a 7 K day stepped by 10 minutes.

use super::books::{HeatBook, WaterBook};
use super::error::{CabinError, CabinInput, within};
use super::exact::Phi;
use super::leg::{Leg, Push};
use super::moisture::{MoistStore, Moisture, RATIO, WaterDrive, WetCoil};
use super::stores::{Modes, Network, Stores};
use super::thermostat::{Rule, Running, Thermostat};
use crate::quantity::{Time, in_seconds};

/// Temperatures accepted anywhere in the cabin and outside it, Celsius.
pub const RANGE_C: (f64, f64) = (-100.0, 150.0);
/// Steps accepted, s.
pub const STEP_S: (f64, f64) = (0.01, 86_400.0);
/// Heat flows accepted, W.
const FLOW_W: (f64, f64) = (-1e6, 1e6);
/// Capacities accepted, W.
const CAPACITY_W: (f64, f64) = (0.0, 1e6);
/// Water flows accepted, kg/s.
const WATER_KG_S: (f64, f64) = (0.0, 1.0);
/// Switches and hand-overs followed within one step.
const MOST_EVENTS: usize = 10_000;

/// What acts on the cabin at one instant. Plain numbers: this is the hot loop.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Drive {
    /// Outdoor dry bulb, Celsius.
    pub outdoor_c: f64,
    /// Outdoor humidity ratio, kg/kg.
    pub outdoor_ratio: f64,
    /// Sun through glass into the air and contents, W.
    pub sun_glass_w: f64,
    /// Sun on the shell as it reaches the shell store, W (see [`super::sun`]).
    pub sun_shell_w: f64,
    /// Sensible heat of people and animals, W.
    pub people_w: f64,
    /// Water they give off, kg/s.
    pub people_kg_s: f64,
    /// Waste heat of everything else, W.
    pub gains_w: f64,
}

impl Drive {
    /// Watts that go to the air whatever its temperature.
    #[must_use]
    pub fn air_w(&self) -> f64 {
        self.sun_glass_w + self.people_w + self.gains_w
    }

    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn check(&self) -> Result<(), CabinError> {
        within(CabinInput::Temperature, self.outdoor_c, RANGE_C)?;
        within(CabinInput::HumidityRatio, self.outdoor_ratio, RATIO)?;
        within(CabinInput::HeatFlow, self.sun_glass_w, FLOW_W)?;
        within(CabinInput::HeatFlow, self.sun_shell_w, FLOW_W)?;
        within(CabinInput::HeatFlow, self.people_w, FLOW_W)?;
        within(CabinInput::WaterFlow, self.people_kg_s, WATER_KG_S)?;
        within(CabinInput::HeatFlow, self.gains_w, FLOW_W)?;
        Ok(())
    }
}

/// What the unit can do during one step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling {
    /// Sensible capacity running full, W.
    pub sensible_w: f64,
    /// Its coil, if wet.
    pub coil: Option<WetCoil>,
}

/// The cabin at one instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// Air and contents, Celsius.
    pub air_c: f64,
    /// Shell, Celsius.
    pub shell_c: f64,
    /// Humidity ratio of the air, kg/kg.
    pub humidity_ratio: f64,
    /// What the unit is doing.
    pub running: Running,
}

/// One step's result.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// The cabin at the end.
    pub state: State,
    /// Time the unit ran, s.
    pub running_s: f64,
    /// The same in seconds of full capacity: less than the former where it
    /// ran at part of it.
    pub full_s: f64,
    /// Starts and stops.
    pub switches: u32,
    /// Where the heat went.
    pub heat: HeatBook,
    /// Where the water went.
    pub water: WaterBook,
}

/// A start or stop of the unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Switch {
    /// Seconds into the step.
    pub at_s: f64,
    /// Air temperature then.
    pub air_c: f64,
    /// What the unit does from here on.
    pub now: Running,
}

/// A cabin ready to be stepped by a fixed time: all that can be is worked out
/// beforehand, so a step without an event costs no exponential of heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Stepper {
    pub(super) net: Network,
    pub(super) modes: Modes,
    pub(super) rule: Rule,
    moisture: Moisture,
    pub(super) step_s: f64,
    /// Functions of a whole step for both modes.
    pub(super) whole: [Phi; 2],
    /// Decay rate of the shell while the air is held, and a whole step of it.
    pub(super) held_lambda: f64,
    pub(super) held_whole: Phi,
}

/// What the legs of one step add up to.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Tally {
    /// Integral of the air temperature, K s above 0 °C.
    pub air_c_s: f64,
    /// The same for the shell.
    pub shell_c_s: f64,
    pub unit_j: f64,
    pub running_s: f64,
    pub full_s: f64,
}

impl Stepper {
    /// A cabin with its thermostat, to be stepped by `step`.
    ///
    /// Range: step 0.01 s to a day; the rest as at [`Stores`],
    /// [`MoistStore`] and [`Thermostat`].
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub fn new(
        stores: &Stores,
        moist: &MoistStore,
        thermostat: Thermostat,
        step: Time,
    ) -> Result<Self, CabinError> {
        let net = stores.network()?;
        let step_s = within(CabinInput::Step, in_seconds(step), STEP_S)?;
        let modes = Modes::of(&net);
        let held_lambda = -(net.air_shell_w_k + net.shell_out_w_k) / net.shell_j_k;
        Ok(Self {
            net,
            modes,
            rule: thermostat.rule()?,
            moisture: moist.checked()?,
            step_s,
            whole: modes.lambda.map(|lambda| Phi::at(lambda * step_s)),
            held_lambda,
            held_whole: Phi::at(held_lambda * step_s),
        })
    }

    /// One step from `from`, inputs running straight from `start` to `end`.
    ///
    /// `cooling` is `None` while the unit cannot run at all.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`] for an input;
    /// [`CabinError::SwitchesTooFast`] beyond 10 000 switches in a step.
    pub fn step(
        &self,
        from: &State,
        start: &Drive,
        end: &Drive,
        cooling: Option<&Cooling>,
    ) -> Result<Step, CabinError> {
        self.step_watched(from, start, end, cooling, |_| ())
    }

    /// The same, telling `watch` of every start and stop as it happens.
    ///
    /// # Errors
    /// As [`Stepper::step`].
    pub fn step_watched(
        &self,
        from: &State,
        start: &Drive,
        end: &Drive,
        cooling: Option<&Cooling>,
        mut watch: impl FnMut(Switch),
    ) -> Result<Step, CabinError> {
        let asked = Asked {
            from,
            start,
            end,
            cooling,
        };
        asked.check()?;
        let push = Push::over(&self.net, start, end, self.step_s);
        let mut leg = Leg {
            air_c: from.air_c,
            shell_c: from.shell_c,
            running: self.rule.begin(from.running, from.air_c, cooling.is_some()),
            at_s: 0.0,
            capacity_w: cooling.map(|unit| unit.sensible_w),
        };
        let mut tally = Tally::default();
        let mut switches = 0;
        let mut was_on = from.running.is_on();
        let mut more = true;
        for _ in 0..MOST_EVENTS {
            if leg.running.is_on() != was_on {
                switches += 1;
                was_on = !was_on;
                watch(leg.as_switch());
            }
            if !more {
                return Ok(self.close(&asked, &leg, &tally, switches));
            }
            more = self.run_leg(&mut leg, &push, &mut tally);
        }
        Err(CabinError::SwitchesTooFast)
    }

    /// Turns the legs' sums into a step's result.
    fn close(&self, asked: &Asked, leg: &Leg, tally: &Tally, switches: u32) -> Step {
        let Asked {
            from, start, end, ..
        } = asked;
        let ran = tally.full_s / self.step_s;
        let coil = asked.cooling.and_then(|unit| unit.coil);
        let (humidity_ratio, water) = self.moisture.advance(
            from.humidity_ratio,
            self.step_s,
            &WaterDrive {
                outdoor: [start.outdoor_ratio, end.outdoor_ratio],
                people_kg_s: [start.people_kg_s, end.people_kg_s],
                coil: coil.map(|coil| WetCoil {
                    contact_kg_s: coil.contact_kg_s * ran,
                    ..coil
                }),
            },
        );
        Step {
            state: State {
                air_c: leg.air_c,
                shell_c: leg.shell_c,
                humidity_ratio,
                running: leg.running,
            },
            running_s: tally.running_s,
            full_s: tally.full_s,
            switches,
            heat: self.heat_book(asked, leg, tally),
            water,
        }
    }

    /// The heat book of a step.
    fn heat_book(&self, asked: &Asked, leg: &Leg, tally: &Tally) -> HeatBook {
        let Asked {
            from, start, end, ..
        } = asked;
        let over_step = |a: f64, b: f64| 0.5 * (a + b) * self.step_s;
        let outdoor_c_s = over_step(start.outdoor_c, end.outdoor_c);
        let net = &self.net;
        HeatBook {
            glass_j: net.glass_w_k * (outdoor_c_s - tally.air_c_s),
            shell_j: net.shell_out_w_k * (outdoor_c_s - tally.shell_c_s),
            air_change_j: net.air_change_w_k * (outdoor_c_s - tally.air_c_s),
            sun_glass_j: over_step(start.sun_glass_w, end.sun_glass_w),
            sun_shell_j: over_step(start.sun_shell_w, end.sun_shell_w),
            people_j: over_step(start.people_w, end.people_w),
            gains_j: over_step(start.gains_w, end.gains_w),
            unit_j: tally.unit_j,
            stored_air_j: net.air_j_k * (leg.air_c - from.air_c),
            stored_shell_j: net.shell_j_k * (leg.shell_c - from.shell_c),
        }
    }
}

/// All that comes in with a step.
struct Asked<'a> {
    from: &'a State,
    start: &'a Drive,
    end: &'a Drive,
    cooling: Option<&'a Cooling>,
}

impl Asked<'_> {
    fn check(&self) -> Result<(), CabinError> {
        // States may pass the range of inputs: sun can drive a bare roof far up.
        within(CabinInput::Temperature, self.from.air_c, (-1e6, 1e6))?;
        within(CabinInput::Temperature, self.from.shell_c, (-1e6, 1e6))?;
        within(
            CabinInput::HumidityRatio,
            self.from.humidity_ratio,
            (0.0, 1e6),
        )?;
        self.start.check()?;
        self.end.check()?;
        if let Some(unit) = self.cooling {
            within(CabinInput::HeatFlow, unit.sensible_w, CAPACITY_W)?;
            unit.coil.map_or(Ok(()), |coil| coil.check())?;
        }
        Ok(())
    }
}
