//! What the page asks for, and the room it leaves to labels.

use super::axis::{AxisTick, TickLabel, text_px};
use super::scale::Domain;
use super::ticks::number_chars;

/// A line of text, in font sizes.
pub const LINE_EM: f64 = 1.25;

/// The gap between an axis or a line end and its text, in font sizes.
pub const GAP_EM: f64 = 0.4;

/// Labels at line ends stand beside the plot while they take no more than this
/// share of the width; otherwise they go inside, above their lines.
const BESIDE_SHARE: f64 = 0.3;

/// The most of the width that numbers on the y axis may take.
const Y_LABEL_SHARE: f64 = 0.35;

/// What the x axis means.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum XKind {
    /// A plain number.
    #[default]
    Number,
    /// Hours since a clock minute of the day.
    Clock {
        /// The minute at hour zero, wrapped into a day.
        start_min: f64,
    },
}

/// How far the y axis reaches. All but `Fixed` widen to whole steps.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum YRange {
    /// As far as the data.
    #[default]
    Data,
    /// As far as the data and zero.
    WithZero,
    /// From one value to another; where that is no span, as far as the data.
    Fixed(f64, f64),
}

/// The outside of a chart: its size, its letters and its axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Whole width, px; 80 to 10,000.
    pub width: f64,
    /// Whole height, px; 60 to 10,000.
    pub height: f64,
    /// Letter size, px; 6 to 60.
    pub font_px: f64,
    /// What x means.
    pub x_kind: XKind,
    /// From and to along x; `None` or no span: as far as the data.
    pub x_range: Option<(f64, f64)>,
    /// How far y reaches.
    pub y_range: YRange,
    /// Letters that numbers at the left and labels at the right have room for at
    /// the least: charts one above another then share their x axis.
    pub least_chars: (usize, usize),
}

impl Default for Frame {
    fn default() -> Self {
        Self {
            width: 320.0,
            height: 220.0,
            font_px: 14.0,
            x_kind: XKind::default(),
            x_range: None,
            y_range: YRange::default(),
            least_chars: (0, 0),
        }
    }
}

/// A rectangle, px, y downward.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Rect {
    /// Right less left.
    #[must_use]
    pub fn width(self) -> f64 {
        self.right - self.left
    }

    /// Bottom less top.
    #[must_use]
    pub fn height(self) -> f64 {
        self.bottom - self.top
    }
}

impl Frame {
    /// The frame with sizes held to their ranges; not a number: the default.
    #[must_use]
    pub fn held(self) -> Self {
        let usual = Self::default();
        let hold = |size: f64, usual: f64, least, most| {
            if size.is_nan() {
                usual
            } else {
                size.max(least).min(most)
            }
        };
        Self {
            width: hold(self.width, usual.width, 80.0, 10_000.0),
            height: hold(self.height, usual.height, 60.0, 10_000.0),
            font_px: hold(self.font_px, usual.font_px, 6.0, 60.0),
            ..self
        }
    }

    /// The upper and the lower edge of the plot. A clock axis has a second line for days.
    #[must_use]
    pub fn rows(&self) -> (f64, f64) {
        let lines = match self.x_kind {
            XKind::Number => 1.0,
            XKind::Clock { .. } => 2.0,
        };
        let top = self.font_px * LINE_EM / 2.0;
        let below = self.font_px * (GAP_EM + lines * LINE_EM);
        (top, (self.height - below).max(top + 10.0))
    }

    /// The left edge of the plot, from the y ticks beside it.
    #[must_use]
    pub fn left(&self, y_ticks: &[AxisTick]) -> f64 {
        let chars = y_ticks.iter().map(|tick| match tick.label {
            TickLabel::Number { value, decimals } => number_chars(value, decimals),
            TickLabel::Clock { .. } => 0,
        });
        let chars = chars.max().unwrap_or(0).max(self.least_chars.0);
        let text = text_px(chars, self.font_px);
        (text + self.font_px * GAP_EM)
            .max(self.half_tick())
            .min(self.width * Y_LABEL_SHARE)
    }

    /// Half an x label: the first and the last may be centred on the plot's edges.
    fn half_tick(&self) -> f64 {
        text_px(5, self.font_px) / 2.0
    }

    /// The right edge of the plot, and whether end labels go inside it.
    /// `label_chars` is the longest label's.
    #[must_use]
    pub fn right(&self, label_chars: usize) -> (f64, bool) {
        let half_tick = self.half_tick();
        let label_chars = label_chars.max(self.least_chars.1);
        let label = text_px(label_chars, self.font_px) + 2.0 * self.font_px * GAP_EM;
        let inside = label_chars > 0 && label > self.width * BESIDE_SHARE;
        let margin = if inside || label_chars == 0 {
            half_tick
        } else {
            label.max(half_tick)
        };
        (self.width - margin.min(self.width * BESIDE_SHARE), inside)
    }
}

/// A range given by a caller, if it is one.
pub(super) fn range((from, to): (f64, f64)) -> Option<Domain> {
    (from < to && Domain::of([from, to]).low() == from).then(|| Domain::of([from, to]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_held() {
        let frame = Frame {
            width: f64::NAN,
            height: -4.0,
            font_px: f64::INFINITY,
            ..Frame::default()
        };
        let held = frame.held();
        assert_eq!((held.width, held.height, held.font_px), (320.0, 60.0, 60.0));
    }

    #[test]
    fn long_labels_go_inside_on_a_phone() {
        let at = |width| Frame {
            width,
            ..Frame::default()
        };
        assert!(at(320.0).right(16).1);
        assert!(!at(1200.0).right(16).1);
        assert!(!at(320.0).right(0).1);
    }

    #[test]
    fn a_range_needs_a_span() {
        assert!(range((0.0, 1.0)).is_some());
        assert!(range((1.0, 1.0)).is_none());
        assert!(range((f64::NAN, 1.0)).is_none());
        assert!(range((f64::NEG_INFINITY, 1.0)).is_none());
    }
}
