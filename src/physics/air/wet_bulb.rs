//! Thermodynamic wet bulb, both ways.
//!
//! The Handbook has one equation over water and one over ice. The humidity
//! ratio they give is not continuous at 0 °C (ice takes more heat to leave),
//! so around there two wet bulbs can fit one state; water is taken first, as a
//! wick that has not frozen would read.

use super::error::AirError;
use super::moist::{CP_DRY_J_KG_K, CP_VAPOUR_J_KG_K, HFG_0_J_KG, saturation_ratio};
use crate::search::root;

/// Enthalpy of sublimation at 0 °C, J/kg (Handbook eq. 35).
const HIG_0_J_KG: f64 = 2_830_000.0;

/// Humidity ratio of air at `t_c` whose wet bulb is `wet_c` (Handbook eq. 33
/// over water, 35 over ice). Negative when no air can have that wet bulb.
///
/// # Errors
/// [`AirError::OutOfRange`] where saturated air at the wet bulb has no ratio.
pub(super) fn ratio(pressure_pa: f64, t_c: f64, wet_c: f64) -> Result<f64, AirError> {
    Ok(ratio_from(
        saturation_ratio(pressure_pa, wet_c)?,
        t_c,
        wet_c,
        wet_c >= 0.0,
    ))
}

/// The same from the ratio of saturated air at the wet bulb.
fn ratio_from(saturated: f64, t_c: f64, wet_c: f64, water: bool) -> f64 {
    let sensible = CP_DRY_J_KG_K * (t_c - wet_c);
    if water {
        ((HFG_0_J_KG - 2_326.0 * wet_c) * saturated - sensible)
            / (HFG_0_J_KG + CP_VAPOUR_J_KG_K * t_c - 4_186.0 * wet_c)
    } else {
        ((HIG_0_J_KG - 240.0 * wet_c) * saturated - sensible)
            / (HIG_0_J_KG + CP_VAPOUR_J_KG_K * t_c - 2_100.0 * wet_c)
    }
}

/// Wet bulb, Celsius, of air at `t_c` with humidity ratio `w`, to 1e-9 K.
pub(super) fn solve_c(pressure_pa: f64, t_c: f64, w: f64) -> f64 {
    let miss = |wet_c: f64, water: bool| match saturation_ratio(pressure_pa, wet_c) {
        Ok(saturated) => ratio_from(saturated, t_c, wet_c, water) - w,
        // Water near boiling: far too much of it.
        Err(_) => f64::INFINITY,
    };
    if t_c >= 0.0 && miss(0.0, true) <= 0.0 {
        return root(|wet_c| miss(wet_c, true), 0.0, t_c);
    }
    // Bone-dry air at 90 °C has a wet bulb above freezing, so ice only ever
    // meets air whose wet bulb lies within a few tens of kelvins below it.
    root(|wet_c| miss(wet_c, false), -100.0, t_c.min(0.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SEA_PA: f64 = 101_325.0;

    /// Saturated air is as wet as its wick.
    #[test]
    fn saturated_air_has_its_own_wet_bulb() {
        for t_c in [-50.0, -5.0, 0.0, 0.005, 20.0, 60.0] {
            let w = saturation_ratio(SEA_PA, t_c).unwrap();
            assert!((solve_c(SEA_PA, t_c, w) - t_c).abs() < 1e-7, "{t_c}");
        }
    }

    #[test]
    fn solve_undoes_ratio() {
        for (t_c, wet_c) in [(40.0, 20.0), (15.0, 2.0), (3.0, -2.0), (-10.0, -11.0)] {
            let w = ratio(SEA_PA, t_c, wet_c).unwrap();
            assert!(
                (solve_c(SEA_PA, t_c, w) - wet_c).abs() < 1e-8,
                "{t_c} {wet_c}"
            );
        }
    }
}
