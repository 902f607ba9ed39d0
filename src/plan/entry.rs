//! Text as people type it, read as a number.
//!
//! `1,5`, `1 000`, `12v`, `1.2 kW`, `9 h 30`, `9:30 pm`, `2x100`: understood
//! where only one reading makes sense, refused where none does. What was
//! understood is said, so that the page can echo it.

mod shown;
mod spread;

pub use shown::{decimals_of, fixed, is_converted, is_gauge, show, show_taken, shown, width_shown};
pub use spread::{Spread, read_spread, split_volts};

use super::{
    Show,
    units::{self, Scale},
};
use crate::range::Unit;

/// How a text was understood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reading {
    /// As it stands, perhaps with a comma for a point.
    Plain,
    /// A comma or point before three digits was taken to part thousands.
    Thousands,
    /// From another unit, or from a clock time in words.
    Converted,
    /// So many times so much.
    Product,
}

/// A text read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// In the field's unit, or in `given` where that is not of the same kind.
    pub value: f64,
    /// Of a product: how many, and of what.
    pub times: Option<u32>,
    pub each: Option<f64>,
    pub reading: Reading,
    /// The kind of unit that was typed; the field's own if none was.
    pub given: Unit,
}

/// Why a text is no number for this field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EntryError {
    Empty,
    /// Not a number, or not one that anybody means.
    NotANumber,
    /// A number of another kind.
    OtherUnit {
        given: Unit,
    },
}

/// Characters of a text that are read.
const MOST_CHARS: usize = 64;

/// Reads `text` for a field of `unit`.
///
/// # Errors
/// See [`EntryError`]. Never NaN and never infinite; the range is not looked at.
pub fn read(text: &str, unit: Unit, units: Show) -> Result<Entry, EntryError> {
    let text: String = text.trim().chars().map(plainer).collect();
    if text.is_empty() {
        return Err(EntryError::Empty);
    }
    if text.chars().count() > MOST_CHARS {
        return Err(EntryError::NotANumber);
    }
    let text = text.to_ascii_lowercase();
    match unit {
        Unit::ClockMinute => {
            clock_minute(&text).map(|value| whole(value, Reading::Converted, unit))
        }
        Unit::Hour if span_hours(&text).is_some() => {
            let value = span_hours(&text).unwrap_or_default();
            Ok(whole(value, Reading::Converted, unit))
        }
        Unit::SquareMillimeter if units::of_gauge(&text).is_some() => {
            let value = units::of_gauge(&text).unwrap_or_default();
            Ok(whole(value, Reading::Converted, unit))
        }
        _ => product(&text, unit, units),
    }
}

/// Kinds of spaces, dashes and multiplication signs, made one.
fn plainer(c: char) -> char {
    match c {
        '\u{a0}' | '\u{2009}' | '\u{202f}' | '\t' => ' ',
        '\u{2212}' | '\u{2013}' => '-',
        '×' | '*' => 'x',
        '’' => '\'',
        // Both omegas; the micro sign is nobody's unit here.
        'Ω' | '\u{2126}' => 'ω',
        _ => c,
    }
}

const fn whole(value: f64, reading: Reading, given: Unit) -> Entry {
    Entry {
        value,
        times: None,
        each: None,
        reading,
        given,
    }
}

/// `2x100ah`, or no product at all.
fn product(text: &str, unit: Unit, units: Show) -> Result<Entry, EntryError> {
    let Some((count, each)) = text.split_once('x') else {
        return quantity(text, unit, units);
    };
    let times: u32 = count.trim().parse().map_err(|_| EntryError::NotANumber)?;
    let each = quantity(each.trim(), unit, units)?;
    let value = f64::from(times) * each.value;
    Ok(Entry {
        value,
        times: Some(times),
        each: Some(each.value),
        reading: Reading::Product,
        ..each
    })
}

/// A number and perhaps a unit after it.
fn quantity(text: &str, unit: Unit, units: Show) -> Result<Entry, EntryError> {
    let end = text
        .char_indices()
        .find(|&(at, c)| !in_number(c) || (c == '\'' && !digit_after(text, at)))
        .map_or(text.len(), |(at, _)| at);
    let (number, sign) = (text[..end].trim(), text[end..].trim());
    let (number, parted) = plain_number(number).ok_or(EntryError::NotANumber)?;
    let (given, scale) = if sign.is_empty() {
        (unit, units::shown(unit, units))
    } else {
        units::of_sign(sign, unit).ok_or(EntryError::NotANumber)?
    };
    // Watt-hours are told apart by their charge only with a voltage, which the
    // caller has; every other kind is a mistake.
    if given != unit && (given, unit) != (Unit::WattHour, Unit::AmpHour) {
        return Err(EntryError::OtherUnit { given });
    }
    let value = if scale == Scale::SAME {
        number
    } else {
        without_noise(scale.apply(number))
    };
    if !value.is_finite() || value.abs() > 1e12 {
        return Err(EntryError::NotANumber);
    }
    let reading = match () {
        () if !sign.is_empty() && scale != units::shown(unit, units) => Reading::Converted,
        () if parted => Reading::Thousands,
        () => Reading::Plain,
    };
    Ok(whole(value, reading, given))
}

/// A converted number to twelve digits: -40 °F is -40 °C, and not a hair outside.
fn without_noise(value: f64) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let size = value.abs().log10().floor() as i32;
    let parts = 10f64.powi((11 - size).clamp(0, 30));
    (value * parts).round() / parts
}

/// What may stand in a number as typed. (Asking for letters instead would bring
/// the tables of all alphabets into the page.)
fn in_number(c: char) -> bool {
    c.is_ascii_digit() || " .,'+-".contains(c)
}

fn digit_after(text: &str, at: usize) -> bool {
    text[at + 1..].starts_with(|c: char| c.is_ascii_digit())
}

/// A number with point or comma, thousands apart or not; and whether a comma or
/// point was taken to part thousands.
fn plain_number(text: &str) -> Option<(f64, bool)> {
    let (sign, digits) = match text.strip_prefix('-') {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text.strip_prefix('+').unwrap_or(text)),
    };
    let allowed = |c: char| c.is_ascii_digit() || ".,' ".contains(c);
    if digits.is_empty()
        || !digits.chars().all(allowed)
        || !digits.contains(|c: char| c.is_ascii_digit())
    {
        return None;
    }
    // Of both, the later one is the decimal mark.
    let mark = match (digits.rfind(','), digits.rfind('.')) {
        (Some(comma), Some(point)) => Some(comma.max(point)),
        (comma, point) => comma.or(point),
    };
    let Some(mark) = mark else {
        return Some((sign * decimal(&grouped(digits, &['\'', ' '])?, "")?, false));
    };
    let sort = if digits[mark..].starts_with(',') {
        ','
    } else {
        '.'
    };
    let (before, after) = (&digits[..mark], &digits[mark + 1..]);
    let other = if sort == ',' { '.' } else { ',' };
    let figures = after.bytes().all(|byte| byte.is_ascii_digit());
    // "1,000" is a thousand; "0,125" and "12,5" are not.
    let three = after.len() == 3 && figures;
    let parts = sort == ','
        && three
        && !before.contains(other)
        && !before.trim_start_matches('0').is_empty();
    if before.contains(sort) || parts {
        let whole = (three && !before.contains(other)).then(|| grouped(digits, &[sort]))??;
        return Some((sign * decimal(&whole, "")?, true));
    }
    if !figures {
        return None;
    }
    let whole = if before.is_empty() {
        String::new()
    } else {
        grouped(before, &[other, '\'', ' '])?
    };
    Some((sign * decimal(&whole, after)?, false))
}

/// Digits in one run, or in groups of three after the first, made one run.
fn grouped(text: &str, separators: &[char]) -> Option<String> {
    let groups: Vec<&str> = text.split(separators).collect();
    let digits = |group: &&str| !group.is_empty() && group.bytes().all(|b| b.is_ascii_digit());
    let threes = groups.len() == 1
        || (groups[0].len() <= 3 && groups[1..].iter().all(|group| group.len() == 3));
    (groups.iter().all(digits) && threes).then(|| groups.concat())
}

/// Digits that a double holds exactly.
const EXACT_DIGITS: usize = 15;

/// A number from its digits before and after the point.
///
/// A whole number below 10^15 and a power of ten below 10^15 are exact, so one
/// division gives the nearest double: as `str::parse` would, without its 10 kB
/// of tables. Digits of the fraction past the fifteenth are left out.
fn decimal(whole: &str, fraction: &str) -> Option<f64> {
    let whole = whole.trim_start_matches('0');
    if whole.len() > EXACT_DIGITS {
        return None;
    }
    let fraction = &fraction[..fraction.len().min(EXACT_DIGITS - whole.len())];
    let digits = whole.bytes().chain(fraction.bytes());
    let number = digits.fold(0_u64, |number, digit| number * 10 + u64::from(digit - b'0'));
    Some(number as f64 / 10_u64.pow(fraction.len() as u32) as f64)
}

/// A short run of digits.
fn digits(text: &str, most: usize) -> Option<f64> {
    let fits = !text.is_empty() && text.len() <= most && text.bytes().all(|b| b.is_ascii_digit());
    fits.then(|| decimal(text, ""))?
}

/// `9:30`, `9h30`, `9 h 30 min`: hours and minutes.
fn span_hours(text: &str) -> Option<f64> {
    let tight: String = text.chars().filter(|c| *c != ' ').collect();
    let (hours, minutes) = tight.split_once(':').or_else(|| tight.split_once('h'))?;
    let minutes = minutes
        .strip_suffix("min")
        .or_else(|| minutes.strip_suffix('m'))
        .unwrap_or(minutes);
    let (hours, minutes) = (digits(hours, 4)?, digits(minutes, 2)?);
    (minutes < 60.0).then_some(hours + minutes / 60.0)
}

/// `21:30`, `9 pm`, `2130`, `21.30`, `21h30`: minutes after midnight.
fn clock_minute(text: &str) -> Result<f64, EntryError> {
    read_clock(text).ok_or(EntryError::NotANumber)
}

fn read_clock(text: &str) -> Option<f64> {
    let tight: String = text.chars().filter(|c| *c != ' ').collect();
    let (tight, half_day) = match (tight.strip_suffix("pm"), tight.strip_suffix("am")) {
        (Some(rest), _) => (rest, Some(12.0)),
        (_, Some(rest)) => (rest, Some(0.0)),
        _ => (tight.as_str(), None),
    };
    let parts = tight.split_once([':', '.', 'h']).or_else(|| {
        (tight.len() >= 3 && tight.is_ascii()).then(|| tight.split_at(tight.len() - 2))
    });
    let (hour, minute) = parts.unwrap_or((tight, ""));
    let minute = if minute.is_empty() {
        0.0
    } else {
        digits(minute, 2)?
    };
    let mut hour = digits(hour, 2)?;
    if let Some(half_day) = half_day {
        if !(1.0..=12.0).contains(&hour) {
            return None;
        }
        hour = if hour == 12.0 {
            half_day
        } else {
            hour + half_day
        };
    }
    (hour < 24.0 && minute < 60.0).then_some(hour * 60.0 + minute)
}

#[cfg(test)]
mod tests;
