//! Student's distribution.

use crate::search::root;

/// Past so many degrees of freedom the factor is the normal's within 0.03 %.
const AS_GOOD_AS_NORMAL: f64 = 10_000.0;

/// The probability that a Student variable of `freedom` whole degrees lies
/// within `t` either way (Abramowitz and Stegun 1964, 26.7.3 and 26.7.4).
#[must_use]
pub fn probability_within(t: f64, freedom: u32) -> f64 {
    use std::f64::consts::FRAC_2_PI;
    let n = freedom.max(1);
    let theta = (t / f64::from(n).sqrt()).atan();
    let (sin, cos) = theta.sin_cos();
    let squared = cos * cos;
    if n.is_multiple_of(2) {
        // sin (1 + 1/2 cos^2 + (1*3)/(2*4) cos^4 + ...)
        let (mut term, mut sum) = (1.0, 1.0);
        for k in (2..n).step_by(2) {
            term *= f64::from(k - 1) / f64::from(k) * squared;
            sum += term;
        }
        return sin * sum;
    }
    // 2/pi (theta + sin (cos + 2/3 cos^3 + (2*4)/(3*5) cos^5 + ...))
    let (mut term, mut sum) = (cos, if n > 1 { cos } else { 0.0 });
    for k in (3..n).step_by(2) {
        term *= f64::from(k - 1) / f64::from(k) * squared;
        sum += term;
    }
    FRAC_2_PI * (theta + sin * sum)
}

/// The factor `t` that covers `probability` of a Student variable.
///
/// Degrees of freedom are cut to the next lower whole number (JCGM 100:2008,
/// G.4.1, note) and to the range 1 to 10,000; the probability is kept from 0
/// to 0.9999.
#[must_use]
pub fn quantile(probability: f64, freedom: f64) -> f64 {
    let wanted = if probability.is_nan() {
        0.0
    } else {
        probability.clamp(0.0, 0.9999)
    };
    // What is no number becomes zero, and then one degree.
    let whole = (freedom.min(AS_GOOD_AS_NORMAL) as u32).max(1);
    let mut high = 1.0;
    // tan reaches any t: with one degree, 0.9999 needs 6366.
    while probability_within(high, whole) < wanted && high < 1e5 {
        high *= 2.0;
    }
    root(|t| probability_within(t, whole) - wanted, 0.0, high)
}

/// The coverage factor for 95.45 %: 2, or more where degrees of freedom are few.
#[must_use]
pub fn coverage_factor(freedom: Option<f64>) -> f64 {
    match freedom {
        Some(freedom) if freedom < AS_GOOD_AS_NORMAL => quantile(0.9545, freedom),
        _ => 2.0,
    }
}
