//! Sun on the shell and through the glass.

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
