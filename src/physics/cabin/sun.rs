//! Sun on the shell and through the glass.

use super::error::{CabinError, CabinInput, within};
use crate::quantity::{
    HeatFluxDensity, TemperatureInterval, ThermodynamicTemperature, celsius, in_celsius,
    in_watts_per_square_meter, kelvin_steps,
};

/// Outside heat transfer coefficient in summer, W/(m² K): 3.0 Btu/(h ft² °F)
/// (ASHRAE Handbook of Fundamentals 2017, ch. 18, sol-air temperature).
pub const OUTSIDE_FILM_W_M2_K: f64 = 17.034;
/// What a horizontal face radiates to a clear sky beyond what it gets from it,
/// W/m²: 20 Btu/(h ft²) (same source). Vertical faces: nothing on balance.
pub const SKY_LOSS_W_M2: f64 = 63.09;
/// Irradiances accepted, W/m² (a little above the sun outside the air).
pub const IRRADIANCE_W_M2: (f64, f64) = (0.0, 1_500.0);

/// Which way a face looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// Up: a roof.
    Horizontal,
    /// Sideways: a wall.
    Vertical,
}

impl Face {
    /// What it loses to the sky, W/m².
    pub(super) fn sky_loss_w_m2(self) -> f64 {
        match self {
            Self::Horizontal => SKY_LOSS_W_M2,
            Self::Vertical => 0.0,
        }
    }
}

/// How much hotter than outdoors a sunlit face feels to the shell.
///
/// Range: irradiance 0 to 1 500 W/m², absorptance 0 to 1.
///
/// # Errors
/// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
///
/// Source: ASHRAE Handbook of Fundamentals (2017), ch. 18, sol-air
/// temperature: absorptance x irradiance / h - sky loss / h.
pub fn sun_excess(
    irradiance: HeatFluxDensity,
    absorptance: f64,
    face: Face,
) -> Result<TemperatureInterval, CabinError> {
    let w_m2 = within(
        CabinInput::Irradiance,
        in_watts_per_square_meter(irradiance),
        IRRADIANCE_W_M2,
    )?;
    let absorptance = within(CabinInput::Share, absorptance, (0.0, 1.0))?;
    let net_w_m2 = absorptance * w_m2 - face.sky_loss_w_m2();
    Ok(kelvin_steps(net_w_m2 / OUTSIDE_FILM_W_M2_K))
}

/// Sol-air temperature: outdoors plus [`sun_excess`].
///
/// # Errors
/// As [`sun_excess`].
pub fn sol_air(
    outdoor: ThermodynamicTemperature,
    irradiance: HeatFluxDensity,
    absorptance: f64,
    face: Face,
) -> Result<ThermodynamicTemperature, CabinError> {
    let outdoor_c = within(
        CabinInput::Temperature,
        in_celsius(outdoor),
        super::state::RANGE_C,
    )?;
    let excess = sun_excess(irradiance, absorptance, face)?;
    Ok(celsius(
        outdoor_c + crate::quantity::in_kelvin_steps(excess),
    ))
}
