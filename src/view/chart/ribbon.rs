//! The night ribbon: one bar per mode along the clock, its end fading over the spread.

use super::axis::{AxisTick, clock_axis};
use super::clock::minute_of_day;
use super::scale::{Domain, Scale, tenth};

/// The shortest window: below it every bar looks as long as a night.
pub const SHORTEST_H: f64 = 6.0;

/// The longest window: two nights. Beyond it, hours are no longer told apart on
/// a phone, where 48 h leave about 6 px to each.
pub const LONGEST_H: f64 = 48.0;

/// The window when nothing runs at all: one night.
const NIGHT_H: f64 = 12.0;

/// Room left after the last end, so that it is seen to end.
const AFTER_H: f64 = 0.5;

/// The fading end widens the window up to this many times the likely end; a
/// wilder guess may fade out of view rather than shrink all other bars.
const FADE_REACH: f64 = 1.5;

/// When one mode ends, in hours since the start.
///
/// Infinity is an end too: one beyond every window.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct End {
    /// The likely end.
    pub likely_h: f64,
    /// The early end of the spread; not a number, or late: the likely one.
    pub low_h: f64,
    /// The late end of the spread; not a number, or early: the likely one.
    pub high_h: f64,
}

impl End {
    /// Ends in order and not below zero; `None` when the likely one is not a number.
    fn held(self) -> Option<Self> {
        let likely_h = self.likely_h.max(0.0);
        // f64::min and max pass over not-a-number.
        (!self.likely_h.is_nan()).then(|| Self {
            likely_h,
            low_h: self.low_h.min(likely_h).max(0.0),
            high_h: self.high_h.max(likely_h),
        })
    }
}

/// The stretch of clock that a ribbon shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window {
    start_min: f64,
    hours: f64,
}

impl Window {
    /// A window from a clock minute for so many hours, rounded to whole ones
    /// and held to 6 to 48. Not a number: 12.
    #[must_use]
    pub fn new(start_min: f64, hours: f64) -> Self {
        let hours = if hours.is_nan() { NIGHT_H } else { hours };
        Self {
            start_min: minute_of_day(start_min),
            hours: hours.round().clamp(SHORTEST_H, LONGEST_H),
        }
    }

    /// The shortest window, in whole hours, that shows every end and half an
    /// hour after; what lies beyond 48 h is clipped.
    ///
    /// One rule that only ever grows with the longest end: the clock under the
    /// reader does not jump about while a number is typed.
    #[must_use]
    pub fn for_ends(start_min: f64, ends: &[Option<End>]) -> Self {
        let reach = ends
            .iter()
            .filter_map(|end| end.and_then(End::held))
            .map(|end| end.high_h.min(FADE_REACH * end.likely_h))
            .fold(0.0, f64::max);
        let hours = if reach > 0.0 {
            (reach + AFTER_H).ceil()
        } else {
            NIGHT_H
        };
        Self::new(start_min, hours)
    }

    /// Hours shown: whole, 6 to 48.
    #[must_use]
    pub fn hours(self) -> f64 {
        self.hours
    }
}

/// One mode's bar, px.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bar {
    /// Where it starts: the left edge.
    pub x0: f64,
    /// As far as it surely runs; equal to `x0` when it may not run at all.
    pub solid_end: f64,
    /// As far as it may run; not before `solid_end`.
    pub fade_end: f64,
    /// The likely end; `None` when past the window.
    pub likely: Option<f64>,
    /// Whether any of it runs past the window.
    pub clipped: bool,
}

/// A ribbon, ready to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct Ribbon {
    /// The map of hours since the start to pixels.
    pub x: Scale,
    /// Whole clock times; midnights among them.
    pub ticks: Vec<AxisTick>,
    /// Midnights, px.
    pub midnights: Vec<f64>,
    /// From and to of each dark stretch, px.
    pub nights: Vec<(f64, f64)>,
    /// One per row, in order; `None` where no end is known.
    pub bars: Vec<Option<Bar>>,
}

/// Lays out a ribbon between two pixels.
///
/// - `ends`: one per row; `None` or a likely end that is not a number: no bar.
/// - `dark_min`: clock minutes of dusk and dawn, if known.
/// - `font_px`: letter size of the clock labels. One may be centred on either
///   edge: leave half a label, 1.5 letter sizes, outside the two pixels.
///
/// ```
/// use till_morning::view::chart::ribbon::{End, Window, ribbon};
/// let end = End { likely_h: 6.0, low_h: 5.0, high_h: 7.0 };
/// let window = Window::new(21.0 * 60.0, 10.0);
/// let drawn = ribbon(window, &[Some(end), None], None, (0.0, 300.0), 14.0);
/// let bar = drawn.bars[0].unwrap();
/// assert_eq!((bar.solid_end, bar.likely, bar.fade_end), (150.0, Some(180.0), 210.0));
/// assert_eq!(drawn.midnights, [90.0]);
/// assert_eq!(drawn.bars[1], None);
/// ```
#[must_use]
pub fn ribbon(
    window: Window,
    ends: &[Option<End>],
    dark_min: Option<(f64, f64)>,
    (left_px, right_px): (f64, f64),
    font_px: f64,
) -> Ribbon {
    let x = Scale::new(Domain::of([0.0, window.hours]), left_px, right_px);
    let ticks = clock_axis(x, window.start_min, (right_px - left_px).abs(), font_px);
    let midnights = ticks.iter().filter(|tick| tick.is_midnight());
    Ribbon {
        x,
        midnights: midnights.map(|tick| tick.at).collect(),
        nights: dark_min.map_or_else(Vec::new, |dark| nights(window, dark, x)),
        bars: ends
            .iter()
            .map(|end| end.and_then(End::held).map(|end| bar(end, window, x)))
            .collect(),
        ticks,
    }
}

fn bar(end: End, window: Window, x: Scale) -> Bar {
    let px = |hours: f64| tenth(x.px_of_drawable(hours.min(window.hours)));
    Bar {
        x0: px(0.0),
        solid_end: px(end.low_h),
        fade_end: px(end.high_h),
        likely: (end.likely_h <= window.hours).then(|| px(end.likely_h)),
        clipped: end.high_h > window.hours,
    }
}

/// Each stretch from dusk to dawn that the window shows. Dusk at dawn: none.
fn nights(window: Window, (dusk_min, dawn_min): (f64, f64), x: Scale) -> Vec<(f64, f64)> {
    if !(dusk_min.is_finite() && dawn_min.is_finite()) {
        return Vec::new();
    }
    let dark_h = minute_of_day(dawn_min - dusk_min) / 60.0;
    let first_dusk_h = minute_of_day(dusk_min - window.start_min) / 60.0;
    // From the dusk before the start to the last one that 48 h can hold.
    (-1..=2)
        .map(|day| first_dusk_h + 24.0 * f64::from(day))
        .map(|dusk_h| (dusk_h.max(0.0), (dusk_h + dark_h).min(window.hours)))
        .filter(|(from, to)| from < to)
        .map(|(from, to)| (tenth(x.px_of_drawable(from)), tenth(x.px_of_drawable(to))))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn end(low_h: f64, likely_h: f64, high_h: f64) -> Option<End> {
        Some(End {
            likely_h,
            low_h,
            high_h,
        })
    }

    #[track_caller]
    fn check_window(ends: &[Option<End>], hours: f64) {
        assert_eq!(Window::for_ends(0.0, ends).hours(), hours, "{ends:?}");
    }

    #[test]
    fn the_window_follows_the_longest_end() {
        check_window(&[], 12.0);
        check_window(&[None, end(0.0, 0.0, 0.0)], 12.0);
        check_window(&[end(1.0, 2.0, 3.0)], 6.0);
        check_window(&[end(8.0, 9.0, 10.5), end(3.0, 4.0, 5.0)], 11.0);
        check_window(&[end(8.0, 9.0, 10.6)], 12.0);
        check_window(&[end(8.0, 10.0, 40.0)], 16.0);
        check_window(&[end(50.0, 60.0, 70.0), end(8.0, 9.0, 10.0)], 48.0);
        check_window(&[end(1.0, f64::INFINITY, f64::INFINITY)], 48.0);
    }

    #[test]
    fn bars_clip_at_the_window() {
        let window = Window::new(0.0, 10.0);
        let ends = [
            end(8.0, 9.0, 12.0),
            end(11.0, 12.0, 13.0),
            end(f64::NAN, 3.0, 1.0),
        ];
        let drawn = ribbon(window, &ends, None, (0.0, 100.0), 14.0);
        let bar = |solid_end, likely, fade_end, clipped| {
            Some(Bar {
                x0: 0.0,
                solid_end,
                fade_end,
                likely,
                clipped,
            })
        };
        assert_eq!(drawn.bars[0], bar(80.0, Some(90.0), 100.0, true));
        assert_eq!(drawn.bars[1], bar(100.0, None, 100.0, true));
        // No early end given counts as no early spread.
        assert_eq!(drawn.bars[2], bar(30.0, Some(30.0), 30.0, false));
    }

    #[test]
    fn nights_before_and_after_the_start() {
        // From 02:00 for 24 h, dark from 21:00 to 06:00: the rest of one night
        // and the beginning of the next.
        let window = Window::new(120.0, 24.0);
        let dark = Some((21.0 * 60.0, 6.0 * 60.0));
        let drawn = ribbon(window, &[], dark, (0.0, 240.0), 14.0);
        assert_eq!(drawn.nights, [(0.0, 40.0), (190.0, 240.0)]);
    }
}
