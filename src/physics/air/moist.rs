//! States of moist air.
//!
//! Per kilogram of *dry* air throughout, as the trade does it, so that mass is
//! conserved through a coil that sheds water.

use super::error::{AirError, AirInput, within};
use super::saturation::{ZERO_C_K, saturation_c, saturation_pa};
use super::wet_bulb;
use crate::quantity::{
    Length, Pressure, SpecificEnergy, SpecificVolume, ThermodynamicTemperature, celsius,
    cubic_meters_per_kilogram, in_celsius, in_meters, in_pascals, joules_per_kilogram, pascals,
};

/// Ratio of the molar masses of water and dry air (Handbook eq. 20).
const MASS_RATIO: f64 = 0.621_945;
/// Gas constant of dry air, J/(kg K) (Handbook eq. 1).
const R_DRY_J_KG_K: f64 = 287.042;
/// Specific heat of dry air, J/(kg K) (Handbook eq. 30).
pub(super) const CP_DRY_J_KG_K: f64 = 1_006.0;
/// Specific heat of water vapour, J/(kg K) (Handbook eq. 30).
pub(super) const CP_VAPOUR_J_KG_K: f64 = 1_860.0;
/// Heat of vaporisation at 0 °C, J/kg (Handbook eq. 30).
pub(super) const HFG_0_J_KG: f64 = 2_501_000.0;

/// Dry bulbs the states are good for, Celsius (Handbook tables 2 and 3 begin
/// at -60 °C and end at 90 °C).
pub const DRY_BULB_C: (f64, f64) = (-60.0, 90.0);
/// Barometric pressures accepted, Pa: from a 7 000 m pass to below the sea.
pub const PRESSURE_PA: (f64, f64) = (40_000.0, 120_000.0);
/// Altitudes accepted, m.
pub const ALTITUDE_M: (f64, f64) = (-500.0, 7_000.0);

/// How moist the air is, in the way it was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Humidity {
    /// Share of saturation, 0 to 1.
    Relative(f64),
    /// Thermodynamic wet bulb (a well-blown wet wick reads close to it).
    WetBulb(ThermodynamicTemperature),
    /// Dew point, or frost point below 0.01 °C.
    DewPoint(ThermodynamicTemperature),
    /// Kilograms of water per kilogram of dry air.
    Ratio(f64),
}

/// Barometric pressure of the standard atmosphere at an altitude.
///
/// Range: -500 to 7 000 m.
///
/// # Errors
/// [`AirError::OutOfRange`] or [`AirError::NotANumber`] for the altitude.
///
/// Source: ASHRAE Handbook of Fundamentals (2017), ch. 1, eq. 3.
pub fn pressure_at_altitude(altitude: Length) -> Result<Pressure, AirError> {
    let (low, high) = ALTITUDE_M;
    let z_m = within(AirInput::Altitude, in_meters(altitude), low, high)?;
    Ok(pascals(101_325.0 * (1.0 - 2.255_77e-5 * z_m).powf(5.255_9)))
}

/// One state of moist air: pressure, dry bulb, water.
///
/// Always within range and never wetter than saturated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistAir {
    pressure_pa: f64,
    t_c: f64,
    w: f64,
}

impl MoistAir {
    /// A state from pressure, dry bulb and a humidity.
    ///
    /// Range: 40 to 120 kPa; -60 to 90 °C; humidity from bone dry to saturated.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`], [`AirError::NotANumber`], and
    /// [`AirError::AboveSaturation`] for more water than the air can hold.
    ///
    /// Source: ASHRAE Handbook of Fundamentals (2017), ch. 1, eqs. 20 to 35.
    pub fn new(
        pressure: Pressure,
        dry_bulb: ThermodynamicTemperature,
        humidity: Humidity,
    ) -> Result<Self, AirError> {
        let (p_low, p_high) = PRESSURE_PA;
        let pressure_pa = within(AirInput::Pressure, in_pascals(pressure), p_low, p_high)?;
        let t_c = dry_bulb_c(AirInput::DryBulb, dry_bulb)?;
        let w = humidity_ratio(pressure_pa, t_c, humidity)?;
        Ok(Self {
            pressure_pa,
            t_c,
            w,
        })
    }

    /// Saturated air.
    ///
    /// # Errors
    /// As [`MoistAir::new`].
    pub fn saturated(
        pressure: Pressure,
        dry_bulb: ThermodynamicTemperature,
    ) -> Result<Self, AirError> {
        Self::new(pressure, dry_bulb, Humidity::Relative(1.0))
    }

    /// This air brought to another dry bulb with its water kept, or as much
    /// of it as the new dry bulb can hold.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`] for the dry bulb.
    pub fn at_dry_bulb(&self, dry_bulb: ThermodynamicTemperature) -> Result<Self, AirError> {
        let t_c = dry_bulb_c(AirInput::DryBulb, dry_bulb)?;
        let w = self.w.min(saturation_ratio(self.pressure_pa, t_c)?);
        Ok(Self { t_c, w, ..*self })
    }

    /// Barometric pressure.
    #[must_use]
    pub fn pressure(&self) -> Pressure {
        pascals(self.pressure_pa)
    }

    /// Dry-bulb temperature.
    #[must_use]
    pub fn dry_bulb(&self) -> ThermodynamicTemperature {
        celsius(self.t_c)
    }

    /// Humidity ratio: kilograms of water per kilogram of dry air.
    #[must_use]
    pub fn humidity_ratio(&self) -> f64 {
        self.w
    }

    /// Relative humidity, 0 to 1 (Handbook eq. 22).
    #[must_use]
    pub fn relative_humidity(&self) -> f64 {
        (self.vapour_pa() / saturation_pa(self.t_c)).min(1.0)
    }

    /// Dew point; a frost point below 0.01 °C.
    ///
    /// # Errors
    /// [`AirError::BoneDry`] when there is next to no water: below a dew point
    /// of -100 °C.
    pub fn dew_point(&self) -> Result<ThermodynamicTemperature, AirError> {
        let vapour_pa = self.vapour_pa();
        if vapour_pa < saturation_pa(-100.0) {
            return Err(AirError::BoneDry);
        }
        Ok(celsius(saturation_c(vapour_pa).min(self.t_c)))
    }

    /// Thermodynamic wet bulb (Handbook eqs. 33 and 35), by a bracketed solve
    /// good to 1e-9 K.
    #[must_use]
    pub fn wet_bulb(&self) -> ThermodynamicTemperature {
        celsius(wet_bulb::solve_c(self.pressure_pa, self.t_c, self.w))
    }

    /// Enthalpy per kilogram of dry air, zero for dry air at 0 °C (eq. 30).
    #[must_use]
    pub fn enthalpy(&self) -> SpecificEnergy {
        joules_per_kilogram(enthalpy_j_kg(self.t_c, self.w))
    }

    /// Volume per kilogram of dry air (Handbook eq. 26).
    #[must_use]
    pub fn specific_volume(&self) -> SpecificVolume {
        cubic_meters_per_kilogram(self.volume_m3_kg())
    }

    /// Volume per kilogram of dry air, m³.
    pub(super) fn volume_m3_kg(&self) -> f64 {
        R_DRY_J_KG_K * (self.t_c + ZERO_C_K) * (1.0 + self.w / MASS_RATIO) / self.pressure_pa
    }

    /// Dry bulb, Celsius.
    pub(super) fn t_c(&self) -> f64 {
        self.t_c
    }

    /// Enthalpy, joules per kilogram of dry air.
    pub(super) fn h_j_kg(&self) -> f64 {
        enthalpy_j_kg(self.t_c, self.w)
    }

    /// Vapour pressure, Pa.
    fn vapour_pa(&self) -> f64 {
        self.pressure_pa * self.w / (MASS_RATIO + self.w)
    }
}

/// Enthalpy of moist air, joules per kilogram of dry air (Handbook eq. 30).
pub(super) fn enthalpy_j_kg(t_c: f64, w: f64) -> f64 {
    CP_DRY_J_KG_K * t_c + w * (HFG_0_J_KG + CP_VAPOUR_J_KG_K * t_c)
}

/// Humidity ratio of saturated air (Handbook eq. 21).
///
/// # Errors
/// [`AirError::OutOfRange`] where water would boil or nearly so.
pub(super) fn saturation_ratio(pressure_pa: f64, t_c: f64) -> Result<f64, AirError> {
    ratio_of_vapour(pressure_pa, saturation_pa(t_c))
}

/// Humidity ratio for a vapour pressure.
fn ratio_of_vapour(pressure_pa: f64, vapour_pa: f64) -> Result<f64, AirError> {
    // Vapour up to nine tenths of the whole: beyond that the ratio runs away.
    let vapour_pa = within(AirInput::VapourPressure, vapour_pa, 0.0, 0.9 * pressure_pa)?;
    Ok(MASS_RATIO * vapour_pa / (pressure_pa - vapour_pa))
}

/// A temperature within the range of the states, in Celsius.
fn dry_bulb_c(input: AirInput, t: ThermodynamicTemperature) -> Result<f64, AirError> {
    // A hair of slack, for Celsius that went through kelvins and back.
    within(
        input,
        in_celsius(t),
        DRY_BULB_C.0 - 1e-9,
        DRY_BULB_C.1 + 1e-9,
    )
}

/// Humidity ratio from whichever humidity was measured.
fn humidity_ratio(pressure_pa: f64, t_c: f64, humidity: Humidity) -> Result<f64, AirError> {
    match humidity {
        Humidity::Relative(rh) => {
            let rh = within(AirInput::RelativeHumidity, rh, 0.0, 1.0)?;
            ratio_of_vapour(pressure_pa, rh * saturation_pa(t_c))
        }
        Humidity::WetBulb(wet) => {
            let wet_c = not_above(AirInput::WetBulb, dry_bulb_c(AirInput::WetBulb, wet)?, t_c)?;
            let w = wet_bulb::ratio(pressure_pa, t_c, wet_c)?;
            // A wet bulb lower than bone-dry air would give is a misreading.
            if w < -1e-9 {
                return Err(AirError::OutOfRange {
                    input: AirInput::WetBulb,
                    value: wet_c,
                    low: wet_bulb::solve_c(pressure_pa, t_c, 0.0),
                    high: t_c,
                });
            }
            Ok(w.max(0.0))
        }
        Humidity::DewPoint(dew) => {
            // The range of saturation, which reaches lower than that of states.
            let dew_c = within(AirInput::DewPoint, in_celsius(dew), -100.0, DRY_BULB_C.1)?;
            let dew_c = not_above(AirInput::DewPoint, dew_c, t_c)?;
            saturation_ratio(pressure_pa, dew_c)
        }
        Humidity::Ratio(w) => {
            let w = within(AirInput::HumidityRatio, w, 0.0, 10.0)?;
            let most = saturation_ratio(pressure_pa, t_c)?;
            not_above(AirInput::HumidityRatio, w, most)
        }
    }
}

/// Passes `value` on, brought down to `most` if it is a rounding above it.
fn not_above(input: AirInput, value: f64, most: f64) -> Result<f64, AirError> {
    if value > most + 1e-6 * most.abs().max(1e-3) {
        return Err(AirError::AboveSaturation(input));
    }
    Ok(value.min(most))
}
