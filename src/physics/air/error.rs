//! What the air room refuses, as types.

/// A number this room takes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirInput {
    /// Height above the sea, in metres.
    Altitude,
    /// Barometric pressure, in pascals.
    Pressure,
    /// Dry-bulb temperature, in degrees Celsius.
    DryBulb,
    /// Wet-bulb temperature, in degrees Celsius.
    WetBulb,
    /// Dew point, in degrees Celsius.
    DewPoint,
    /// Relative humidity, 0 to 1.
    RelativeHumidity,
    /// Kilograms of water per kilogram of dry air.
    HumidityRatio,
    /// Pressure of water vapour, in pascals.
    VapourPressure,
    /// Volume flow, in cubic metres a second.
    VolumeFlow,
    /// Air velocity at the vane, in metres a second.
    Velocity,
    /// Free area of the grille, in square metres.
    FreeArea,
    /// Electrical power, in watts.
    ElectricalPower,
    /// Mass flow of dry air, in kilograms a second.
    MassFlow,
    /// Cooling capacity, in watts.
    Capacity,
    /// Sensible share of the total, 0 to 1.
    SensibleShare,
    /// Bypass factor, 0 to 1.
    BypassFactor,
    /// Outdoor dry bulb, in degrees Celsius.
    Outdoor,
    /// Load over capacity, 0 to 1.
    PartLoad,
}

/// Why no answer can be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AirError {
    /// The number is not a number, or infinite.
    NotANumber(AirInput),
    /// The number lies outside what is accepted.
    OutOfRange {
        /// Which number.
        input: AirInput,
        /// What was given, in the unit named at [`AirInput`].
        value: f64,
        /// Least accepted.
        low: f64,
        /// Greatest accepted.
        high: f64,
    },
    /// The air would hold more water than it can.
    AboveSaturation(AirInput),
    /// No velocity reading was given.
    NoReadings,
    /// Bone-dry air: it has no dew point.
    BoneDry,
    /// The coil would have to be colder than the formulas reach.
    CoilTooCold,
}

impl core::fmt::Display for AirError {
    /// Terse and for logs; sentences for people are in `text`.
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{self:?}")
    }
}

impl core::error::Error for AirError {}

/// Passes `value` on if it is a number within `low..=high`.
///
/// # Errors
/// [`AirError::NotANumber`] and [`AirError::OutOfRange`].
pub(super) fn within(input: AirInput, value: f64, low: f64, high: f64) -> Result<f64, AirError> {
    if !value.is_finite() {
        return Err(AirError::NotANumber(input));
    }
    if value < low || value > high {
        return Err(AirError::OutOfRange {
            input,
            value,
            low,
            high,
        });
    }
    Ok(value)
}
