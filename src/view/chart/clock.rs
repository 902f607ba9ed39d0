//! Whole clock times along an axis of hours since a start.

use super::scale::Domain;

const DAY_MIN: f64 = 1440.0;

/// Steps below an hour, for spans too short to hold three whole hours.
const SHORT_MIN: [f64; 3] = [5.0, 15.0, 30.0];

/// Steps that divide a day, so that midnight is always among the ticks.
const LONG_MIN: [f64; 6] = [60.0, 120.0, 180.0, 360.0, 720.0, DAY_MIN];

/// A whole clock time on an axis of hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClockTick {
    /// Hours since the start of the axis.
    pub hours: f64,
    /// Minute of the day, 0 to 1439.
    pub minute: u16,
    /// Midnights passed since the start's own day: 0 on that day, 1 on the next.
    pub day: i32,
}

impl ClockTick {
    /// Whether a new day begins here.
    #[must_use]
    pub fn is_midnight(self) -> bool {
        self.minute == 0
    }
}

/// A minute of the day from any number of minutes: wrapped into 0 to 1440;
/// 0 for one that is not finite.
#[must_use]
pub fn minute_of_day(minute: f64) -> f64 {
    if minute.is_finite() {
        // rem_euclid may round up to the divisor itself for tiny negatives.
        minute.rem_euclid(DAY_MIN) % DAY_MIN
    } else {
        0.0
    }
}

/// Ticks at whole clock times, at most `intervals` + 1 of them, strictly rising.
///
/// - `start_min`: clock minute at hour zero of the axis, wrapped into a day.
/// - `hours`: the span shown, hours since that start; may begin before it.
/// - `intervals`: how many fit, see [`super::ticks::intervals`].
///
/// Steps are 1, 2, 3, 6, 12 or 24 h, doubling beyond that; a span under 3 h may
/// use 5, 15 or 30 min.
///
/// ```
/// use till_morning::view::chart::{clock::clock_ticks, scale::Domain};
/// // From 21:30 for 10 hours, room for four intervals: every 3 hours.
/// let ticks = clock_ticks(21.5 * 60.0, Domain::of([0.0, 10.0]), 4);
/// let read: Vec<_> = ticks.iter().map(|t| (t.minute / 60, t.day, t.hours)).collect();
/// assert_eq!(read, [(0, 1, 2.5), (3, 1, 5.5), (6, 1, 8.5)]);
/// ```
#[must_use]
pub fn clock_ticks(start_min: f64, hours: Domain, intervals: usize) -> Vec<ClockTick> {
    let start_min = minute_of_day(start_min);
    let step_min = step_min(hours.span() * 60.0, intervals.clamp(1, 50));
    let first = ((start_min + hours.low() * 60.0) / step_min).ceil();
    let last = ((start_min + hours.high() * 60.0) / step_min).floor();
    let count = (last - first + 1.0).clamp(0.0, 51.0) as usize;
    (0..count)
        .map(|i| tick((first + i as f64) * step_min, start_min, hours))
        .collect()
}

/// The tick at so many minutes after midnight of the start's day.
fn tick(clock_min: f64, start_min: f64, shown: Domain) -> ClockTick {
    let hours = (clock_min - start_min) / 60.0;
    ClockTick {
        hours: hours.max(shown.low()).min(shown.high()),
        minute: minute_of_day(clock_min) as u16,
        day: (clock_min / DAY_MIN).floor() as i32,
    }
}

/// The smallest step whose intervals fit.
fn step_min(span_min: f64, intervals: usize) -> f64 {
    let fits = |step: &f64| span_min <= step * intervals as f64;
    let short = (span_min < 180.0).then_some(SHORT_MIN);
    let mut steps = short.into_iter().flatten().chain(LONG_MIN);
    steps.find(fits).unwrap_or_else(|| {
        let doubled = |step: &f64| Some(step * 2.0);
        // A span is finite and held, so this ends.
        std::iter::successors(Some(DAY_MIN), doubled)
            .find(fits)
            .unwrap_or(DAY_MIN)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_grow_with_the_span() {
        let check = |span_h: f64, intervals, step_h: f64| {
            assert_eq!(step_min(span_h * 60.0, intervals), step_h * 60.0);
        };
        check(6.0, 6, 1.0);
        check(7.0, 6, 2.0);
        check(24.0, 6, 6.0);
        check(48.0, 6, 12.0);
        check(2.0, 4, 0.5);
        check(24.0 * 7.0, 6, 48.0);
    }

    #[test]
    fn minutes_wrap_into_a_day() {
        assert_eq!(minute_of_day(1500.0), 60.0);
        assert_eq!(minute_of_day(-30.0), 1410.0);
        assert_eq!(minute_of_day(-1e-300), 0.0);
        assert_eq!(minute_of_day(f64::NAN), 0.0);
    }

    #[test]
    fn midnight_begins_the_next_day() {
        let ticks = clock_ticks(22.0 * 60.0, Domain::of([0.0, 4.0]), 4);
        let days: Vec<_> = ticks.iter().map(|t| t.day).collect();
        assert_eq!(days, [0, 0, 1, 1, 1]);
        assert!(ticks[2].is_midnight() && !ticks[1].is_midnight());
    }
}
