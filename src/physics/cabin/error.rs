//! What the cabin room refuses, as types.

/// A number this room takes in, in the unit given here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CabinInput {
    /// Heat the air and contents take up, J/K.
    AirCapacity,
    /// Heat the shell takes up, J/K.
    ShellCapacity,
    /// A conductance of the network, W/K.
    Conductance,
    /// Mass flow of the air change, kg/s.
    AirChange,
    /// Dry air inside, with what its surroundings buffer, kg.
    DryAir,
    /// A temperature, Celsius.
    Temperature,
    /// Least and greatest of a dead band apart, K.
    Band,
    /// Least capacity of a modulating unit over its full one, 0 to 1.
    Floor,
    /// Length of a step, s.
    Step,
    /// A heat flow, W.
    HeatFlow,
    /// Kilograms of water per kilogram of dry air.
    HumidityRatio,
    /// A flow of water, kg/s.
    WaterFlow,
    /// Length of the body, m.
    Length,
    /// An area, m².
    Area,
    /// A volume, m³.
    Volume,
    /// Heat transfer coefficient, W/(m² K).
    HeatTransfer,
    /// A share, 0 to 1: shade, absorptance, glass gain.
    Share,
    /// Air changes an hour.
    AirChangesPerHour,
    /// Irradiance, W/m².
    Irradiance,
    /// Mass of an animal, kg.
    AnimalMass,
    /// Density of air, kg/m³.
    Density,
}

/// Why no answer can be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CabinError {
    /// The number is not a number, or infinite.
    NotANumber(CabinInput),
    /// The number lies outside what is accepted.
    OutOfRange {
        /// Which number.
        input: CabinInput,
        /// What was given, in the unit named at [`CabinInput`].
        value: f64,
        /// Least accepted.
        low: f64,
        /// Greatest accepted.
        high: f64,
    },
    /// The unit would switch more often in one step than a step can follow:
    /// far too large for the cabin and its dead band.
    SwitchesTooFast,
}

impl core::fmt::Display for CabinError {
    /// Terse and for logs; sentences for people are in `text`.
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{self:?}")
    }
}

impl core::error::Error for CabinError {}

/// Passes `value` on if it is a number within `range`.
///
/// # Errors
/// [`CabinError::NotANumber`] and [`CabinError::OutOfRange`].
pub(super) fn within(input: CabinInput, value: f64, range: (f64, f64)) -> Result<f64, CabinError> {
    let (low, high) = range;
    if !value.is_finite() {
        return Err(CabinError::NotANumber(input));
    }
    if value < low || value > high {
        return Err(CabinError::OutOfRange {
            input,
            value,
            low,
            high,
        });
    }
    Ok(value)
}
