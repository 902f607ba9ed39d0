//! Round numbers along an axis.
//!
//! The idea is Heckbert's ("Nice numbers for graph labels", Graphics Gems,
//! 1990): steps of 1, 2 or 5 times a power of ten, and *loose* ends, which widen
//! the axis to whole steps. We add 2.5, which suits volts and quarter hours, and
//! pick the smallest step whose labels still have room, where he rounds.

use super::scale::Domain;

/// More intervals than this serve nobody, however long the axis.
const MOST_INTERVALS: f64 = 50.0;

/// How near to a whole step counts as on it, in steps: rounding, no more.
const ON_STEP: f64 = 1e-9;

/// A round step: 1, 2, 2.5 or 5 times a power of ten.
///
/// Kept as a whole number of tenths and an exponent, so that a multiple is one
/// correctly rounded operation: three steps of 0.1 are 0.3, not
/// 0.30000000000000004.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NiceStep {
    tenths: u8,
    exponent: i32,
}

impl NiceStep {
    /// The smallest round step that cuts the domain into at most so many
    /// intervals (at least one is assumed).
    ///
    /// ```
    /// use till_morning::view::chart::{scale::Domain, ticks::NiceStep};
    /// let step = NiceStep::of(Domain::of([0.0, 9.0]), 4);
    /// assert_eq!((step.size(), step.decimals()), (2.5, 1));
    /// ```
    #[must_use]
    pub fn of(domain: Domain, intervals: usize) -> Self {
        let least = domain.span() / (intervals.max(1) as f64);
        let about = least.log10().floor() as i32;
        (about - 1..=about + 1)
            .flat_map(|exponent| [10, 20, 25, 50].map(|tenths| Self { tenths, exponent }))
            .find(|step| step.size() >= least * (1.0 - ON_STEP))
            .unwrap_or(Self {
                tenths: 10,
                exponent: about + 2,
            })
    }

    /// The step itself: the distance between ticks, in the axis's unit.
    #[must_use]
    pub fn size(self) -> f64 {
        self.times(1.0)
    }

    /// So many steps from zero.
    fn times(self, count: f64) -> f64 {
        let tenths = count * f64::from(self.tenths);
        let shift = self.exponent - 1;
        // Powers of ten are exact up to 10^22; dividing by one rounds once.
        if shift < 0 {
            tenths / 10f64.powi(-shift)
        } else {
            tenths * 10f64.powi(shift)
        }
    }

    /// Decimals that a label needs: 0 for steps of 1 and more except 2.5.
    #[must_use]
    pub fn decimals(self) -> usize {
        let places = if self.tenths == 25 {
            1 - self.exponent
        } else {
            -self.exponent
        };
        usize::try_from(places).unwrap_or(0)
    }

    /// The domain widened outward to whole steps (Heckbert's loose labels).
    #[must_use]
    pub fn loosen(self, domain: Domain) -> Domain {
        let below = (domain.low() / self.size() + ON_STEP).floor();
        let above = (domain.high() / self.size() - ON_STEP).ceil();
        let low = self.times(below).min(domain.low());
        let high = self.times(above).max(domain.high());
        Domain::held(low, high)
    }

    /// All whole steps inside the domain, strictly rising. None when the step
    /// is wider than the domain and misses it.
    #[must_use]
    pub fn ticks(self, domain: Domain) -> Vec<f64> {
        let first = (domain.low() / self.size() - ON_STEP).ceil();
        let last = (domain.high() / self.size() + ON_STEP).floor();
        let count = (last - first + 1.0).clamp(0.0, 2.0 * MOST_INTERVALS) as usize;
        (0..count)
            .map(|i| {
                self.times(first + i as f64)
                    .max(domain.low())
                    .min(domain.high())
            })
            // The clamp may leave a negative zero, which would be written "-0".
            .map(|value| if value == 0.0 { 0.0 } else { value })
            .collect()
    }
}

/// How many intervals fit along an axis, 1 to 50.
///
/// `length_px` is the axis, `apart_px` the least distance between two labels'
/// middles. Anything that is no length gives 1.
#[must_use]
pub fn intervals(length_px: f64, apart_px: f64) -> usize {
    let fit = (length_px / apart_px.max(1.0)).floor();
    // Not-a-number casts to 0, which the last step lifts to 1.
    (fit.clamp(1.0, MOST_INTERVALS) as usize).max(1)
}

/// Characters in a plain number: sign, digits, one separator per three digits, decimals.
/// Good enough to leave room for a label that is written elsewhere.
#[must_use]
pub fn number_chars(value: f64, decimals: usize) -> usize {
    let whole = value.abs().min(1e15) as u64;
    let digits = whole.checked_ilog10().unwrap_or(0) as usize + 1;
    let sign = usize::from(value < 0.0);
    let fraction = if decimals > 0 { decimals + 1 } else { 0 };
    sign + digits + (digits - 1) / 3 + fraction
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tenths_come_out_as_typed() {
        let domain = Domain::of([0.0, 0.3]);
        let step = NiceStep::of(domain, 3);
        assert_eq!(step.ticks(domain), [0.0, 0.1, 0.2, 0.3]);
        assert_eq!(step.decimals(), 1);
    }

    #[test]
    fn a_quarter_needs_two_decimals() {
        let domain = Domain::of([12.0, 13.0]);
        let step = NiceStep::of(domain, 4);
        assert_eq!((step.size(), step.decimals()), (0.25, 2));
        assert_eq!(step.ticks(domain).len(), 5);
    }

    #[test]
    fn label_room_counts_sign_separator_and_decimals() {
        let check = |value, decimals, text: &str| {
            assert_eq!(number_chars(value, decimals), text.len(), "{text}");
        };
        check(0.0, 0, "0");
        check(-12.5, 1, "-12.5");
        check(1200.0, 0, "1,200");
        check(1_000_000.0, 2, "1,000,000.00");
    }
}
