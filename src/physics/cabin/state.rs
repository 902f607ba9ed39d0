//! What goes into a step of the cabin and what comes out.
//!
//! Plain numbers with their unit in the name: this is the hot loop.

use super::books::{HeatBook, WaterBook};
use super::error::{CabinError, CabinInput, within};
use super::moisture::{RATIO, WetCoil};
use super::thermostat::Running;

/// Temperatures accepted anywhere in the cabin and outside it, Celsius.
pub const RANGE_C: (f64, f64) = (-100.0, 150.0);
/// Heat flows accepted, W.
const FLOW_W: (f64, f64) = (-1e6, 1e6);
/// Capacities accepted, W.
const CAPACITY_W: (f64, f64) = (0.0, 1e6);
/// Water flows accepted, kg/s.
const WATER_KG_S: (f64, f64) = (0.0, 1.0);
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

impl Cooling {
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn check(&self) -> Result<(), CabinError> {
        within(CabinInput::HeatFlow, self.sensible_w, CAPACITY_W)?;
        self.coil.map_or(Ok(()), |coil| coil.check())
    }
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

impl State {
    /// States may pass the range of inputs: sun can drive a bare roof far up.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn check(&self) -> Result<(), CabinError> {
        within(CabinInput::Temperature, self.air_c, (-1e6, 1e6))?;
        within(CabinInput::Temperature, self.shell_c, (-1e6, 1e6))?;
        within(CabinInput::HumidityRatio, self.humidity_ratio, (0.0, 1e6))?;
        Ok(())
    }
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
    /// Of which it drew and did not cool yet.
    pub starting_s: f64,
    /// Mean air temperature over the step, Celsius.
    pub mean_air_c: f64,
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
