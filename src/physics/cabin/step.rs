//! Stepping the cabin through time, exactly.
//!
//! Within one step the inputs run straight from their start to their end value
//! and the unit's capacity is frozen; for such inputs the temperatures are the
//! exact solution, and each thermostat event is located on it. The only error
//! is that of describing weather by straight lines: for a smooth swing of
//! amplitude A and period P it is below A (2 pi step / P)^2 / 8, which is 2 mK
//! for a 7 K day stepped by 10 minutes.

use super::books::HeatBook;
use super::error::{CabinError, CabinInput, within};
use super::exact::Phi;
use super::leg::{Leg, Push};
use super::moisture::{MoistStore, Moisture, WaterDrive, WetCoil};
use super::state::{Cooling, Drive, State, Step, Switch};
use super::stores::{Modes, Network, Stores};
use super::thermostat::{Rule, Thermostat};
use crate::quantity::{Time, in_seconds};

/// Steps accepted, s.
pub const STEP_S: (f64, f64) = (0.01, 86_400.0);
/// Switches and hand-overs followed within one step.
const MOST_EVENTS: usize = 10_000;

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
    most_events: usize,
    /// From a start of the unit until it cools.
    pub(super) start_ms: u32,
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
    pub starting_s: f64,
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
            most_events: MOST_EVENTS,
            start_ms: 0,
        })
    }

    /// The same, with no more switches followed in a step than this: for those who
    /// smooth out cycles faster than any unit's (see [`Thermostat::averaged`]).
    #[must_use]
    pub fn with_at_most(self, most_events: usize) -> Self {
        Self {
            most_events: most_events.min(MOST_EVENTS),
            ..self
        }
    }

    /// The same, the unit drawing for so long at each start (0 to an hour) before it
    /// cools: what its first minutes cool less than its later ones, all at once.
    #[must_use]
    pub fn with_start_loss(self, loss_s: f64) -> Self {
        Self {
            start_ms: (1000.0 * loss_s.clamp(0.0, 3600.0)) as u32,
            ..self
        }
    }

    /// One step from `from`, inputs running straight from `start` to `end`.
    ///
    /// `cooling` is `None` while the unit cannot run at all.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`] for an input;
    /// [`CabinError::SwitchesTooFast`] beyond 10 000 switches in a step, or what
    /// [`Stepper::with_at_most`] says.
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
        for _ in 0..self.most_events {
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
        let ran = (tally.full_s - tally.starting_s) / self.step_s;
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
            starting_s: tally.starting_s,
            mean_air_c: tally.air_c_s / self.step_s,
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
        self.from.check()?;
        self.start.check()?;
        self.end.check()?;
        self.cooling.map_or(Ok(()), Cooling::check)
    }
}
