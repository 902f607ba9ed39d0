//! A charger: constant current, then constant voltage.
//!
//! One place for shore, engine and generator chargers alike; only what feeds
//! them differs. Plain numbers, as the innermost loops want them: amps into the
//! bank's bars, volts at the bars, watts and kilowatt-hours taken from the
//! source. Ranges are the plan's and are checked there.

/// A charger in plain numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charger {
    /// Most amps into the bars, cool.
    pub most_a: f64,
    /// Volts at the bars that it holds at the end.
    pub hold_v: f64,
    /// The bank's own current at which the charger calls it full.
    pub end_a: f64,
    /// Of what it takes, what reaches the bars: above 0 to 1.
    pub efficiency: f64,
    /// Most watts that shore, engine or generator give it.
    pub source_w: Option<f64>,
}

/// Up to this temperature around it a charger gives all it has, degrees Celsius.
pub const FULL_TO_C: f64 = 40.0;
/// From here on it gives nothing.
pub const NONE_FROM_C: f64 = 70.0;
/// What each kelvin above [`FULL_TO_C`] takes off: half is left at 60.
const LESS_PER_K: f64 = 0.025;

/// Share of its amps that a charger gives in air of so many degrees.
///
/// All up to 40 C, 2.5 % less by the kelvin above, none from 70 C on: common
/// practice, no source.
///
/// ```
/// use till_morning::physics::solar::charger::hot_share;
/// assert_eq!((hot_share(25.0), hot_share(60.0), hot_share(80.0)), (1.0, 0.5, 0.0));
/// ```
#[must_use]
pub fn hot_share(air_c: f64) -> f64 {
    if air_c >= NONE_FROM_C {
        0.0
    } else {
        1.0 - LESS_PER_K * (air_c - FULL_TO_C).max(0.0)
    }
}

impl Charger {
    /// The same in air of so many degrees.
    #[must_use]
    pub fn in_air(self, air_c: f64) -> Self {
        Self {
            most_a: self.most_a * hot_share(air_c),
            ..self
        }
    }

    /// Most amps into bars that stand at `bar_v`, before it holds the volts: by
    /// itself, or by what its source gives.
    #[must_use]
    pub fn most_a_at(&self, bar_v: f64) -> f64 {
        match self.source_w {
            Some(source_w) => self.most_a.min(source_w * self.efficiency / bar_v),
            None => self.most_a,
        }
    }

    /// Volts at the bars above which the source and not the charger is the limit;
    /// nothing where the source never is.
    #[must_use]
    pub fn source_limits_from_v(&self) -> Option<f64> {
        let source_w = self.source_w?;
        (self.most_a > 0.0).then(|| source_w * self.efficiency / self.most_a)
    }

    /// Watt-hours taken from the source for so many into the bars.
    #[must_use]
    pub fn taken_wh(&self, given_wh: f64) -> f64 {
        given_wh / self.efficiency
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_small_source_bounds_the_amps_and_says_from_where() {
        let charger = Charger {
            most_a: 50.0,
            hold_v: 28.4,
            end_a: 4.0,
            efficiency: 0.9,
            source_w: Some(1000.0),
        };
        // 900 W reach the bars: 50 A up to 18 V.
        assert_eq!(charger.source_limits_from_v(), Some(18.0));
        assert_eq!(charger.most_a_at(10.0), 50.0);
        assert!((charger.most_a_at(25.0) - 36.0).abs() < 1e-12);
        assert!((charger.taken_wh(900.0) - 1000.0).abs() < 1e-12);
        assert_eq!(charger.in_air(50.0).most_a, 37.5);
    }
}
