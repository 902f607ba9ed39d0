//! Numbers as fields show them, in the units shown.

use super::{EXACT_DIGITS, without_noise};
use crate::{
    plan::{
        Show,
        units::{self, Scale},
    },
    range::Unit,
};

/// Whole numbers that a double holds exactly.
const EXACT: f64 = 9_007_199_254_740_992.0;

/// A number with so many decimals, rounded half away from zero; beyond what a
/// double holds exactly, whole. What is no number is 0.
#[must_use]
pub fn fixed(value: f64, decimals: usize) -> String {
    let size = if value.is_nan() { 0.0 } else { value.abs() };
    if size >= EXACT {
        let sign = if value < 0.0 { "-" } else { "" };
        return match size {
            f64::INFINITY => format!("{sign}∞"),
            _ => format!("{sign}{size:.0}"),
        };
    }
    let mut decimals = decimals.min(EXACT_DIGITS);
    let power = |decimals: usize| 10_u64.pow(decimals as u32);
    while decimals > 0 && size * power(decimals) as f64 >= EXACT {
        decimals -= 1;
    }
    let number = (size * power(decimals) as f64).round() as u64;
    let sign = if value < 0.0 && number > 0 { "-" } else { "" };
    let (whole, part) = (number / power(decimals), number % power(decimals));
    if decimals == 0 {
        format!("{sign}{whole}")
    } else {
        format!("{sign}{whole}.{part:0decimals$}")
    }
}

/// The decimals that give a number so many significant digits, nine at most.
#[must_use]
pub fn decimals_of(value: f64, digits: i32) -> usize {
    let size = value.abs().clamp(1e-9, EXACT).log10().floor() as i32 + 1;
    usize::try_from((digits - size).clamp(0, 9)).unwrap_or(0)
}

/// Whether an area is a gauge's: see [`show`].
#[must_use]
pub fn is_gauge(area_mm2: f64) -> bool {
    units::gauge_name(area_mm2).is_some()
}

/// A value as a field shows it: point for the decimals, nothing between
/// thousands, at most ten significant digits. Reads back as the same number.
#[must_use]
pub fn show(value: f64, unit: Unit, units: Show) -> String {
    if unit == Unit::ClockMinute {
        let minutes = value.clamp(0.0, 1439.0) as u32;
        return format!("{:02}:{:02}", minutes / 60, minutes % 60);
    }
    if let (Unit::SquareMillimeter, Some(gauge)) = (unit, units::gauge_name(value)) {
        return format!("{gauge} AWG");
    }
    let scale = units::shown(unit, units);
    // Converted numbers are rounded to what a person would have typed.
    let digits = if scale == Scale::SAME { 10 } else { 4 };
    significant(scale.undo(value), digits)
}

/// A number that was taken, not typed, as a field shows it: three digits, of the
/// number as it is shown.
#[must_use]
pub fn show_taken(value: f64, unit: Unit, units: Show) -> String {
    match unit {
        Unit::ClockMinute | Unit::SquareMillimeter => show(value, unit, units),
        _ => {
            let value = shown(value, unit, units);
            let whole = value.abs() >= 100.0;
            significant(
                if whole { value.round() } else { value },
                if whole { 10 } else { 3 },
            )
        }
    }
}

/// A number of the plan in the units shown.
#[must_use]
pub fn shown(value: f64, unit: Unit, units: Show) -> f64 {
    let scale = units::shown(unit, units);
    if scale == Scale::SAME {
        value
    } else {
        without_noise(scale.undo(value))
    }
}

/// A difference of two such numbers in the units shown.
#[must_use]
pub fn width_shown(width: f64, unit: Unit, units: Show) -> f64 {
    units::shown(unit, units).undo_width(width)
}

/// Whether the units shown have another number for it than the plan has.
#[must_use]
pub fn is_converted(unit: Unit, units: Show) -> bool {
    units::shown(unit, units) != Scale::SAME
}

/// So many significant digits at the most, written plainly.
fn significant(value: f64, digits: i32) -> String {
    let text = fixed(value, decimals_of(value, digits));
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}
