//! Ticks with their pixels: what an axis shows.

use super::clock::clock_ticks;
use super::scale::{Scale, tenth};
use super::ticks::{NiceStep, intervals};

/// The usual width of a character, in font sizes.
///
/// Tabular figures in common sans-serif faces are 0.55 to 0.6 wide (common
/// practice, no source). The page may measure; the engine has no fonts.
pub const EM_PER_CHAR: f64 = 0.6;

/// Characters in a clock label such as 06:00.
const CLOCK_CHARS: usize = 5;

/// What a tick says; the words are written elsewhere.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TickLabel {
    /// A plain number.
    Number {
        /// The number.
        value: f64,
        /// Decimals it needs, so that all labels of the axis differ.
        decimals: usize,
    },
    /// A clock time.
    Clock {
        /// Minute of the day, 0 to 1439.
        minute: u16,
        /// Midnights passed since the day of the start.
        day: i32,
    },
}

/// A tick and its place along the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxisTick {
    /// Its pixel, to 0.1.
    pub at: f64,
    /// What it says.
    pub label: TickLabel,
}

impl AxisTick {
    /// Whether a new day begins here.
    #[must_use]
    pub fn is_midnight(self) -> bool {
        matches!(self.label, TickLabel::Clock { minute: 0, .. })
    }
}

/// An estimate of a text's width, px.
#[must_use]
pub fn text_px(chars: usize, font_px: f64) -> f64 {
    // No label is longer than a few words; the cap keeps the product sane.
    chars.min(1000) as f64 * EM_PER_CHAR * font_px
}

/// Ticks at each whole step inside the scale's domain.
#[must_use]
pub fn number_axis(scale: Scale, step: NiceStep) -> Vec<AxisTick> {
    let decimals = step.decimals();
    step.ticks(scale.domain())
        .into_iter()
        .map(|value| AxisTick {
            at: tenth(scale.px_of_drawable(value)),
            label: TickLabel::Number { value, decimals },
        })
        .collect()
}

/// Clock ticks along a scale of hours, as many as there is room for.
///
/// `start_min` is the clock minute at hour zero, `length_px` the axis.
#[must_use]
pub fn clock_axis(scale: Scale, start_min: f64, length_px: f64, font_px: f64) -> Vec<AxisTick> {
    let apart_px = text_px(CLOCK_CHARS, font_px) + font_px;
    clock_ticks(start_min, scale.domain(), intervals(length_px, apart_px))
        .into_iter()
        .map(|tick| AxisTick {
            at: tenth(scale.px_of_drawable(tick.hours)),
            label: TickLabel::Clock {
                minute: tick.minute,
                day: tick.day,
            },
        })
        .collect()
}
