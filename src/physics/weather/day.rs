//! A day's air temperature from its high and its low.

use super::{Input, OutOfRange, within};
use crate::quantity::{ThermodynamicTemperature, celsius, in_celsius};

/// Share of the daily range by which the air stands below the high, at hours 0
/// to 23.
///
/// Source: ASHRAE *Handbook of Fundamentals* 2009 and later, chapter 14, the
/// table of fractions of daily temperature range (from Hedrick, RP-1453);
/// second-hand, from an open building-energy library.
const BELOW_HIGH: [f64; 24] = [
    0.82, 0.88, 0.92, 0.95, 0.98, 1.0, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0.0, 0.0,
    0.06, 0.14, 0.24, 0.39, 0.5, 0.59, 0.68, 0.75,
];

/// Slopes at the hours, per hour, that let a cubic through the table without
/// overshoot.
const SLOPES: [f64; 24] = monotone_slopes();

/// Harmonic mean of the rises on either side, zero at a high or low.
///
/// Source: Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, for
/// equal spacing.
const fn monotone_slopes() -> [f64; 24] {
    let mut slopes = [0.0; 24];
    let mut i = 0;
    while i < 24 {
        let before = BELOW_HIGH[i] - BELOW_HIGH[(i + 23) % 24];
        let after = BELOW_HIGH[(i + 1) % 24] - BELOW_HIGH[i];
        if before * after > 0.0 {
            slopes[i] = 2.0 * before * after / (before + after);
        }
        i += 1;
    }
    slopes
}

/// A day that repeats: air temperature by the hour, dew point constant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayProfile {
    high_c: f64,
    low_c: f64,
    dew_point_c: Option<f64>,
}

impl DayProfile {
    /// A day between a low and a high.
    ///
    /// - `high`: -50 to 60 degrees Celsius
    /// - `low`: -50 degrees Celsius to the high
    /// - `dew_point`: -60 degrees Celsius to the high, where known
    ///
    /// # Errors
    /// The first temperature out of its range.
    ///
    /// # Examples
    /// ```
    /// use till_morning::quantity::{celsius, in_celsius};
    /// use till_morning::physics::weather::day::DayProfile;
    /// let day = DayProfile::new(celsius(36.0), celsius(22.0), None).unwrap();
    /// assert_eq!(in_celsius(day.temperature(5.0)).round(), 22.0); // coldest at five
    /// assert!(DayProfile::new(celsius(22.0), celsius(36.0), None).is_err());
    /// ```
    pub fn new(
        high: ThermodynamicTemperature,
        low: ThermodynamicTemperature,
        dew_point: Option<ThermodynamicTemperature>,
    ) -> Result<Self, OutOfRange> {
        let high_c = within(Input::HighTemperature, in_celsius(high), -50.0, 60.0)?;
        let low_c = within(Input::LowTemperature, in_celsius(low), -50.0, high_c)?;
        let dew_point_c = dew_point
            .map(|dew| within(Input::DewPoint, in_celsius(dew), -60.0, high_c))
            .transpose()?;
        Ok(Self {
            high_c,
            low_c,
            dew_point_c,
        })
    }

    /// Air temperature at an hour of the day; hours past a day begin it anew.
    ///
    /// The table's hours are read as local standard time; on a clock put
    /// forward for the summer, take an hour off. Between hours a monotone cubic
    /// passes through the table's values, so it never leaves the low and high.
    /// Hours that are not finite read as midnight.
    #[must_use]
    pub fn temperature(&self, hour: f64) -> ThermodynamicTemperature {
        celsius(self.temperature_c(hour))
    }

    /// As [`Self::temperature`], in degrees Celsius, for kernels.
    #[must_use]
    pub fn temperature_c(&self, hour: f64) -> f64 {
        self.high_c - below_high(hour) * (self.high_c - self.low_c)
    }

    /// Dew point at an hour: the day's own, but never above the air's
    /// temperature, where dew or fog would have taken the water out.
    #[must_use]
    pub fn dew_point(&self, hour: f64) -> Option<ThermodynamicTemperature> {
        let dew_point_c = self.dew_point_c?;
        Some(celsius(dew_point_c.min(self.temperature_c(hour))))
    }
}

/// The table between its hours.
fn below_high(hour: f64) -> f64 {
    let hour = if hour.is_finite() {
        hour.rem_euclid(24.0)
    } else {
        0.0
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 24; the remainder below takes care of 24"
    )]
    let start = hour as usize % 24;
    let end = (start + 1) % 24;
    let t = hour.fract();
    // Cubic Hermite on a unit step.
    let rise = BELOW_HIGH[end] - BELOW_HIGH[start];
    let bend = SLOPES[start] + SLOPES[end] - 2.0 * rise;
    let pull = 3.0 * rise - 2.0 * SLOPES[start] - SLOPES[end];
    BELOW_HIGH[start] + t * (SLOPES[start] + t * (pull + t * bend))
}
