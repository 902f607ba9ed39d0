//! Text as people type it, read as a number.
//!
//! `1,5`, `1 000`, `12v`, `1.2 kW`, `9 h 30`, `9:30 pm`, `2x100`: understood
//! where only one reading makes sense, refused where none does. What was
//! understood is said, so that the page can echo it.

use super::units::{self, Scale};
use crate::range::Unit;

/// What a bare number in a field means to the one who types it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shown {
    /// The unit that the plan keeps.
    AsIs,
    Feet,
    Fahrenheit,
}

impl Shown {
    /// How numbers of a unit are shown, by the reader's choice.
    #[must_use]
    pub const fn of(unit: Unit, us_units: bool) -> Self {
        match unit {
            Unit::Meter if us_units => Self::Feet,
            Unit::Celsius if us_units => Self::Fahrenheit,
            _ => Self::AsIs,
        }
    }
}

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
pub fn read(text: &str, unit: Unit, shown: Shown) -> Result<Entry, EntryError> {
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
        _ => product(&text, unit, shown),
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
fn product(text: &str, unit: Unit, shown: Shown) -> Result<Entry, EntryError> {
    let Some((count, each)) = text.split_once('x') else {
        return quantity(text, unit, shown);
    };
    let times: u32 = count.trim().parse().map_err(|_| EntryError::NotANumber)?;
    let each = quantity(each.trim(), unit, shown)?;
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
fn quantity(text: &str, unit: Unit, shown: Shown) -> Result<Entry, EntryError> {
    let end = text
        .char_indices()
        .find(|&(at, c)| !in_number(c) || (c == '\'' && !digit_after(text, at)))
        .map_or(text.len(), |(at, _)| at);
    let (number, sign) = (text[..end].trim(), text[end..].trim());
    let (number, parted) = plain_number(number).ok_or(EntryError::NotANumber)?;
    let (given, scale) = if sign.is_empty() {
        (unit, units::bare(shown))
    } else {
        units::of_sign(sign, unit).ok_or(EntryError::NotANumber)?
    };
    // Watt-hours are told apart by their charge only with a voltage, which the
    // caller has; every other kind is a mistake.
    if given != unit && (given, unit) != (Unit::WattHour, Unit::AmpHour) {
        return Err(EntryError::OtherUnit { given });
    }
    let value = scale.apply(number);
    if !value.is_finite() || value.abs() > 1e12 {
        return Err(EntryError::NotANumber);
    }
    let reading = match () {
        () if !sign.is_empty() && scale != Scale::SAME => Reading::Converted,
        () if parted => Reading::Thousands,
        () => Reading::Plain,
    };
    Ok(whole(value, reading, given))
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
pub fn show(value: f64, unit: Unit, shown: Shown) -> String {
    if unit == Unit::ClockMinute {
        let minutes = value.clamp(0.0, 1439.0) as u32;
        return format!("{:02}:{:02}", minutes / 60, minutes % 60);
    }
    if let (Unit::SquareMillimeter, Some(gauge)) = (unit, units::gauge_name(value)) {
        return format!("{gauge} AWG");
    }
    let (value, digits) = match shown {
        Shown::AsIs => (value, 10),
        // Converted numbers are rounded to what a person would have typed.
        Shown::Feet | Shown::Fahrenheit => (units::bare(shown).undo(value), 4),
    };
    let text = fixed(value, decimals_of(value, digits));
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // How people write numbers, units and clock times: common practice, no
    // source. The foot is 0.3048 m and 77 °F is 25 °C by definition (NIST SP 811,
    // from memory).
    #[track_caller]
    fn check(text: &str, unit: Unit, value: f64) {
        let entry =
            read(text, unit, Shown::AsIs).unwrap_or_else(|error| panic!("{text}: {error:?}"));
        assert!((entry.value - value).abs() < 1e-9, "{text}: {entry:?}");
    }

    #[test]
    fn numbers_as_typed() {
        for (text, value) in [
            ("1,5", 1.5),
            ("1 000", 1000.0),
            ("1\u{a0}000,5", 1000.5),
            ("1'000", 1000.0),
            ("1,000.5", 1000.5),
            ("1.000,5", 1000.5),
            ("1,000", 1000.0),
            ("1.000", 1.0),
            ("0,125", 0.125),
            (".5", 0.5),
            ("5.", 5.0),
            ("+7", 7.0),
            (" 12 ", 12.0),
            ("12,80", 12.8),
            ("1,234,567", 1_234_567.0),
        ] {
            check(text, Unit::Watt, value);
        }
        check("\u{2212}5", Unit::Celsius, -5.0);
    }

    #[test]
    fn units_after_the_number() {
        check("12v", Unit::Volt, 12.0);
        check("1.2 kW", Unit::Watt, 1200.0);
        check("500 mA", Unit::Amp, 0.5);
        check("100Ah", Unit::AmpHour, 100.0);
        check("80 %", Unit::Percent, 80.0);
        check("90 min", Unit::Hour, 1.5);
        check("2 h", Unit::Hour, 2.0);
        check("9h30", Unit::Hour, 9.5);
        check("9 h 30 min", Unit::Hour, 9.5);
        check("9:30", Unit::Hour, 9.5);
        check("10 ft", Unit::Meter, 3.048);
        check("10'", Unit::Meter, 3.048);
        check("77 °F", Unit::Celsius, 25.0);
        check("16mm²", Unit::SquareMillimeter, 16.0);
        check("6 AWG", Unit::SquareMillimeter, 13.302);
        check("awg 6", Unit::SquareMillimeter, 13.302);
        check("2/0", Unit::SquareMillimeter, 67.431);
        check("6", Unit::SquareMillimeter, 6.0);
        assert_eq!(show(67.431, Unit::SquareMillimeter, Shown::AsIs), "2/0 AWG");
        assert!(read("5 AWG", Unit::SquareMillimeter, Shown::AsIs).is_err());
        assert!(read("6 AWG", Unit::Meter, Shown::AsIs).is_err());
        check("0.01 ohm", Unit::Milliohm, 10.0);
        check("5 mΩ", Unit::Milliohm, 5.0);
        assert_eq!(
            read("1280 Wh", Unit::AmpHour, Shown::AsIs).map(|entry| entry.given),
            Ok(Unit::WattHour)
        );
        let product = read("2 × 100 Ah", Unit::AmpHour, Shown::AsIs).unwrap();
        assert_eq!(
            (product.value, product.times, product.each),
            (200.0, Some(2), Some(100.0))
        );
    }

    #[test]
    fn clock_times() {
        for text in [
            "21:30", "9:30 pm", "9.30pm", "2130", "21.30", "21h30", "9:30PM",
        ] {
            check(text, Unit::ClockMinute, 1290.0);
        }
        check("9 pm", Unit::ClockMinute, 1260.0);
        check("12 am", Unit::ClockMinute, 0.0);
        check("7", Unit::ClockMinute, 420.0);
        check("730", Unit::ClockMinute, 450.0);
    }

    #[test]
    fn what_is_no_number() {
        for text in [
            "plenty", "1.2.3", "1,2,3", "--5", "1e9", "12 V 3", "25:00", "x", "2x", "x2", "1 00",
        ] {
            assert!(read(text, Unit::Watt, Shown::AsIs).is_err(), "{text}");
        }
        assert_eq!(
            read("12 V", Unit::Watt, Shown::AsIs),
            Err(EntryError::OtherUnit { given: Unit::Volt })
        );
        assert_eq!(read(" ", Unit::Watt, Shown::AsIs), Err(EntryError::Empty));
        assert!(read("25:00", Unit::ClockMinute, Shown::AsIs).is_err());
    }

    #[test]
    fn fixed_writes_as_the_standard_library_does() {
        for value in [
            0.0,
            0.05,
            1.005,
            -2.5,
            12.345_678,
            99.999,
            1e9,
            123_456_789.123,
            -0.0001,
        ] {
            for decimals in 0..6 {
                let ours: f64 = fixed(value, decimals).parse().unwrap();
                let theirs: f64 = format!("{value:.decimals$}").parse().unwrap();
                // A tie may be rounded the other way; nothing else may differ.
                assert!(
                    (ours - theirs).abs() < 1.01 * 10f64.powi(-(decimals as i32)),
                    "{value} {decimals}"
                );
                assert!(
                    (ours - value).abs() <= 0.500_001 * 10f64.powi(-(decimals as i32)),
                    "{value} {decimals}"
                );
            }
        }
        assert_eq!(fixed(-0.4, 0), "0");
        assert_eq!(fixed(2.5, 2), "2.50");
        assert_eq!(fixed(f64::NAN, 1), "0.0");
        assert_eq!(fixed(-9_007_199_254_740_994.0, 2), "-9007199254740994");
        assert_eq!(fixed(1e300, 2).parse(), Ok(1e300));
        assert_eq!(fixed(f64::NEG_INFINITY, 2), "-∞");
    }

    #[test]
    fn what_is_shown_reads_back() {
        for value in [
            0.0,
            0.001,
            0.1 + 0.2,
            12.8,
            49.7,
            335.5,
            1e4,
            123_456.75,
            1e-5,
        ] {
            let text = show(value, Unit::Watt, Shown::AsIs);
            check(&text, Unit::Watt, (value * 1e9).round() / 1e9);
        }
        assert_eq!(show(1260.0, Unit::ClockMinute, Shown::AsIs), "21:00");
        assert_eq!(show(2.5, Unit::Meter, Shown::Feet), "8.202");
        assert_eq!(show(40.0, Unit::Celsius, Shown::Fahrenheit), "104");
        let feet = read("8.202", Unit::Meter, Shown::Feet).unwrap();
        assert!((feet.value - 2.5).abs() < 1e-4);
    }
}
