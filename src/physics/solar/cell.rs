//! How warm the cells run.

use super::Air;
use crate::quantity::{ThermodynamicTemperature, celsius};

/// How panels sit, as far as air can reach their backs.
///
/// The roof's heat enters here, not among the losses: a panel glued to a roof
/// runs some 10 to 15 kelvins hotter in full sun than one stood off it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mounting {
    /// On legs or a rack with air behind, a hand's breadth or more.
    StoodOff,
    /// Glued or screwed flat, the back shut off.
    FlatOnRoof,
}

impl Mounting {
    /// Temperature of the cells.
    ///
    /// - `light_w_m2`: on the plane; below zero reads as none
    ///
    /// Source: King, Boyson and Kratochvil, *Photovoltaic Array Performance Model*,
    /// SAND2004-3535, equations 11 and 12 with table 1: glass, cell, polymer
    /// sheet, on an open rack and with insulated back.
    #[must_use]
    pub fn cell_temperature(self, light_w_m2: f64, air: &Air) -> ThermodynamicTemperature {
        // The logarithm of the back's rise by W/m2 in still air, its change by
        // m/s of wind, and how much warmer the cell is at 1,000 W/m2.
        let (still, per_wind, cell_over_back_k) = match self {
            Self::StoodOff => (-3.56, -0.075, 3.0),
            Self::FlatOnRoof => (-2.81, -0.045_5, 0.0),
        };
        let light = light_w_m2.max(0.0);
        let exponent: f64 = still + per_wind * air.wind_m_s;
        let rise_k = light * exponent.exp() + light / 1_000.0 * cell_over_back_k;
        celsius(air.temperature_c + rise_k)
    }
}
