//! Pressure at which water vapour is saturated, over ice and over liquid water.

use super::error::{AirError, AirInput, within};
use crate::{
    quantity::{Pressure, ThermodynamicTemperature, celsius, in_celsius, in_pascals, pascals},
    search::stepped,
};

/// Zero Celsius in kelvins.
pub(super) const ZERO_C_K: f64 = 273.15;
/// Triple point of water, Celsius: ice below, liquid water above.
const TRIPLE_POINT_C: f64 = 0.01;
/// Range of the formulas, Celsius (Handbook ch. 1, eqs. 5 and 6).
const LOW_C: f64 = -100.0;
const HIGH_C: f64 = 200.0;

/// Newton's steps are quadratic: behind one this short, rounding is all that is left.
const LAST_STEP_K: f64 = 1e-9;

/// Coefficients C1 to C7 of Handbook eq. 5, over ice.
const ICE: [f64; 7] = [
    -5.674_535_9e3,
    6.392_524_7,
    -9.677_843_0e-3,
    6.221_570_1e-7,
    2.074_782_5e-9,
    -9.484_024_0e-13,
    4.163_501_9,
];
/// Coefficients C8 to C13 of Handbook eq. 6, over liquid water.
const WATER: [f64; 6] = [
    -5.800_220_6e3,
    1.391_499_3,
    -4.864_023_9e-2,
    4.176_476_8e-5,
    -1.445_209_3e-8,
    6.545_967_3,
];

/// Pressure of saturated water vapour.
///
/// Range: -100 to 200 °C. Over ice below the triple point, over water above.
///
/// # Errors
/// [`AirError::OutOfRange`] or [`AirError::NotANumber`] for the temperature.
///
/// Source: Hyland and Wexler 1983, as eqs. 5 and 6 of the ASHRAE Handbook of
/// Fundamentals (2017), ch. 1.
pub fn saturation_pressure(temperature: ThermodynamicTemperature) -> Result<Pressure, AirError> {
    let t_c = within(
        AirInput::DryBulb,
        in_celsius(temperature),
        LOW_C - 1e-9,
        HIGH_C + 1e-9,
    )?;
    Ok(pascals(saturation_pa(t_c)))
}

/// Temperature at which water vapour of this pressure is saturated: the dew
/// point (or frost point, below 0.01 °C).
///
/// Range: 0.0015 Pa to 1.55 MPa, which is -100 to 200 °C.
///
/// # Errors
/// [`AirError::OutOfRange`] or [`AirError::NotANumber`] for the pressure.
///
/// Source: the inverse of [`saturation_pressure`], by safeguarded Newton steps.
pub fn saturation_temperature(pressure: Pressure) -> Result<ThermodynamicTemperature, AirError> {
    let (low, high) = (saturation_pa(LOW_C), saturation_pa(HIGH_C));
    let p_pa = within(AirInput::VapourPressure, in_pascals(pressure), low, high)?;
    Ok(celsius(saturation_c(p_pa)))
}

/// Saturation pressure, Pa, at `t_c` Celsius (-100 to 200).
pub(super) fn saturation_pa(t_c: f64) -> f64 {
    ln_saturation(t_c).exp()
}

/// Natural logarithm of the saturation pressure in pascals.
fn ln_saturation(t_c: f64) -> f64 {
    let t = t_c + ZERO_C_K;
    if t_c <= TRIPLE_POINT_C {
        let [c1, c2, c3, c4, c5, c6, c7] = ICE;
        c1 / t + c2 + t * (c3 + t * (c4 + t * (c5 + t * c6))) + c7 * t.ln()
    } else {
        let [c8, c9, c10, c11, c12, c13] = WATER;
        c8 / t + c9 + t * (c10 + t * (c11 + t * c12)) + c13 * t.ln()
    }
}

/// Slope of [`ln_saturation`], per kelvin.
pub(super) fn ln_saturation_slope(t_c: f64) -> f64 {
    let t = t_c + ZERO_C_K;
    if t_c <= TRIPLE_POINT_C {
        let [c1, _, c3, c4, c5, c6, c7] = ICE;
        -c1 / (t * t) + c3 + t * (2.0 * c4 + t * (3.0 * c5 + t * 4.0 * c6)) + c7 / t
    } else {
        let [c8, _, c10, c11, c12, c13] = WATER;
        -c8 / (t * t) + c10 + t * (2.0 * c11 + t * 3.0 * c12) + c13 / t
    }
}

/// Dew point in Celsius for a vapour pressure within the range.
///
/// By Newton's steps in the logarithm, which is nearly straight.
pub(super) fn saturation_c(p_pa: f64) -> f64 {
    let goal = p_pa.ln();
    // Magnus' form turned round (over water; within a few kelvins everywhere).
    let magnus = (p_pa / 611.2).ln();
    let start = (243.12 * magnus / (17.62 - magnus)).clamp(LOW_C, HIGH_C);
    let of = |t_c: f64| {
        let miss = ln_saturation(t_c) - goal;
        (miss, -miss / ln_saturation_slope(t_c))
    };
    stepped(of, (LOW_C, HIGH_C), start, LAST_STEP_K)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The slope used by the solver is the slope of the curve it solves.
    #[test]
    fn slope_is_the_derivative() {
        for t_c in [-60.0, -10.0, 5.0, 40.0, 150.0] {
            let by_difference = (ln_saturation(t_c + 1e-4) - ln_saturation(t_c - 1e-4)) / 2e-4;
            assert!((ln_saturation_slope(t_c) / by_difference - 1.0).abs() < 1e-7);
        }
    }

    /// The two branches meet at the triple point to 0.01 %.
    #[test]
    fn branches_meet() {
        let ice = saturation_pa(TRIPLE_POINT_C);
        let water = saturation_pa(TRIPLE_POINT_C + 1e-9);
        assert!((ice / water - 1.0).abs() < 1e-4);
    }

    #[test]
    fn inverse_gives_back() {
        for t_c in [-99.0, -40.0, 0.0, 0.02, 25.0, 90.0, 199.0] {
            assert!(
                (saturation_c(saturation_pa(t_c)) - t_c).abs() < 1e-8,
                "{t_c}"
            );
        }
    }
}
