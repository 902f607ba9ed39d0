//! A span of values, and the straight map from it to pixels.

/// The largest magnitude a chart accepts; anything beyond counts as a gap.
///
/// Far above any quantity drawn here, and low enough that sums and products of
/// two such numbers stay finite.
pub const LARGEST: f64 = 1e100;

/// How far from the origin a pixel coordinate may lie.
///
/// Browsers keep path coordinates in 32-bit floats, which hold tenths of a
/// pixel exactly enough up to about 1.6 million.
pub const FARTHEST_PX: f64 = 1e5;

/// A span narrower than this share of its own magnitude is taken as flat:
/// below it, neighbouring ticks would differ only by rounding.
const FLAT_SHARE: f64 = 1e-9;

/// A span narrower than this is taken as flat whatever its magnitude.
const FLAT_SPAN: f64 = 1e-12;

/// Whether a number can be drawn: finite and not beyond [`LARGEST`].
#[must_use]
pub fn drawable(value: f64) -> bool {
    value.abs() <= LARGEST
}

/// A pixel coordinate to the nearest 0.1 px: what a screen can show.
/// Not-a-number becomes 0, and the rest is held within [`FARTHEST_PX`].
#[must_use]
pub fn tenth(px: f64) -> f64 {
    f64::from(tenths(px)) / 10.0
}

/// A pixel coordinate in whole tenths; see [`tenth`].
pub(super) fn tenths(px: f64) -> i32 {
    // The cast is total: not-a-number gives 0, and the clamp keeps the rest in range.
    (px.clamp(-FARTHEST_PX, FARTHEST_PX) * 10.0).round() as i32
}

/// A span of values: both ends drawable, the high one clearly above the low one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Domain {
    low: f64,
    high: f64,
}

impl Domain {
    /// The span of some values, in any order. Values that cannot be drawn are left out.
    ///
    /// - None left: 0 to 1, so that axes can still be drawn.
    /// - One value, or all equal: 10 % of it to either side (0.5 about zero), so
    ///   that a flat line lies in the middle.
    ///
    /// ```
    /// use till_morning::view::chart::scale::Domain;
    /// let good = Domain::of([12.0, 13.6]);
    /// assert_eq!((good.low(), good.high()), (12.0, 13.6));
    /// let empty = Domain::of([f64::NAN]);
    /// assert_eq!((empty.low(), empty.high()), (0.0, 1.0));
    /// ```
    #[must_use]
    pub fn of(values: impl IntoIterator<Item = f64>) -> Self {
        let ends = values.into_iter().filter(|value| drawable(*value)).fold(
            None,
            |ends: Option<(f64, f64)>, value| {
                let (low, high) = ends.unwrap_or((value, value));
                Some((low.min(value), high.max(value)))
            },
        );
        let Some((low, high)) = ends else {
            return Self {
                low: 0.0,
                high: 1.0,
            };
        };
        let magnitude = low.abs().max(high.abs());
        if high - low < FLAT_SPAN.max(FLAT_SHARE * magnitude) {
            Self::about(low / 2.0 + high / 2.0)
        } else {
            Self { low, high }
        }
    }

    /// The span given to a single value.
    fn about(value: f64) -> Self {
        let half = if value.abs() < FLAT_SHARE {
            0.5
        } else {
            value.abs() * 0.1
        };
        Self {
            low: value - half,
            high: value + half,
        }
    }

    /// The lower end.
    #[must_use]
    pub fn low(self) -> f64 {
        self.low
    }

    /// The higher end.
    #[must_use]
    pub fn high(self) -> f64 {
        self.high
    }

    /// High less low: always above zero.
    #[must_use]
    pub fn span(self) -> f64 {
        self.high - self.low
    }

    /// A span whose ends may have been pushed past what can be drawn.
    pub(super) fn held(low: f64, high: f64) -> Self {
        Self::of([low, high].map(|end| end.clamp(-LARGEST, LARGEST)))
    }
}

/// A straight map from values to pixels.
///
/// The pixel ends may run either way: an upward y axis has its low end at the
/// larger pixel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    domain: Domain,
    from_px: f64,
    to_px: f64,
}

impl Scale {
    /// A map of the domain's low end to `from_px` and its high end to `to_px`.
    /// Pixels that are not numbers become 0; the rest are held within [`FARTHEST_PX`].
    #[must_use]
    pub fn new(domain: Domain, from_px: f64, to_px: f64) -> Self {
        let hold = |px: f64| {
            if px.is_nan() {
                0.0
            } else {
                px.clamp(-FARTHEST_PX, FARTHEST_PX)
            }
        };
        Self {
            domain,
            from_px: hold(from_px),
            to_px: hold(to_px),
        }
    }

    /// The span of values mapped.
    #[must_use]
    pub fn domain(self) -> Domain {
        self.domain
    }

    /// Where a value lies, px; `None` for one that cannot be drawn.
    /// Values outside the domain lie outside the pixels, up to [`FARTHEST_PX`].
    #[must_use]
    pub fn px(self, value: f64) -> Option<f64> {
        drawable(value).then(|| self.px_of_drawable(value))
    }

    /// [`Scale::px`] for a value already known to be drawable.
    pub(super) fn px_of_drawable(self, value: f64) -> f64 {
        let share = ((value - self.domain.low) / self.domain.span()).clamp(-1e9, 1e9);
        (self.from_px + share * (self.to_px - self.from_px)).clamp(-FARTHEST_PX, FARTHEST_PX)
    }

    /// The value at a pixel: the inverse of [`Scale::px`].
    /// Where the pixel says nothing (not a number, or a map onto less than
    /// 0.001 px), the domain's low end.
    #[must_use]
    pub fn value(self, px: f64) -> f64 {
        let length = self.to_px - self.from_px;
        if px.is_nan() || length.abs() < 1e-3 {
            return self.domain.low;
        }
        let share = (px.clamp(-FARTHEST_PX, FARTHEST_PX) - self.from_px) / length;
        self.domain.low + share * self.domain.span()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn degenerate_domains_open_up() {
        let check = |values: &[f64], low: f64, high: f64| {
            let domain = Domain::of(values.iter().copied());
            assert_eq!((domain.low(), domain.high()), (low, high), "{values:?}");
        };
        check(&[], 0.0, 1.0);
        check(&[f64::INFINITY, f64::NAN], 0.0, 1.0);
        check(&[0.0, 0.0], -0.5, 0.5);
        check(&[20.0], 18.0, 22.0);
        check(&[-20.0, -20.0], -22.0, -18.0);
        check(&[3.0, f64::NAN, 1.0], 1.0, 3.0);
    }

    #[test]
    fn upward_axis_puts_the_low_end_at_the_larger_pixel() {
        let scale = Scale::new(Domain::of([0.0, 10.0]), 200.0, 0.0);
        assert_eq!(scale.px(0.0), Some(200.0));
        assert_eq!(scale.px(2.5), Some(150.0));
        assert_eq!(scale.value(150.0), 2.5);
        assert_eq!(scale.px(f64::NAN), None);
    }

    #[test]
    fn a_map_onto_nothing_still_answers() {
        let scale = Scale::new(Domain::of([1.0, 2.0]), 5.0, 5.0);
        assert_eq!(scale.px(1e90), Some(5.0));
        assert_eq!(scale.value(7.0), 1.0);
    }
}
