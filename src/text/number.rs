//! Numbers as people read them.

use crate::plan::entry::decimals_of;

/// A thin space: between a number and its unit, and between thousands.
const THIN: char = '\u{202f}';

/// Significant digits of a number that somebody stated: more than a meter has,
/// and none that a conversion of units left behind.
const STATED_DIGITS: i32 = 6;

/// How a language writes numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Format {
    pub decimal: char,
    /// Between thousands, from so many digits on.
    pub group: char,
    pub group_from: usize,
}

impl Format {
    /// A number with at most three significant digits, thousands apart.
    #[must_use]
    pub fn plain(self, value: f64) -> String {
        let size = value.abs();
        let decimals = match size {
            _ if size >= 100.0 || size == 0.0 => 0,
            _ if size >= 10.0 => 1,
            _ if size >= 1.0 => 2,
            _ => 3,
        };
        self.fixed(value, decimals)
    }

    /// A number that somebody stated, as it stands: six significant digits, and
    /// every whole one.
    #[must_use]
    pub fn stated(self, value: f64) -> String {
        self.fixed(value, decimals_of(value, STATED_DIGITS))
    }

    /// A number with so many decimals at the most: trailing zeros go.
    #[must_use]
    pub fn fixed(self, value: f64, decimals: usize) -> String {
        let text = written(value, decimals);
        let text = if text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.')
        } else {
            &text
        };
        let text = if text == "-0" { "0" } else { text };
        self.grouped(text)
    }

    /// A number with exactly so many decimals, as axes and tables want it.
    #[must_use]
    pub fn exact(self, value: f64, decimals: usize) -> String {
        self.grouped(&written(value, decimals))
    }

    /// A plainly written number as it is typed: the decimal mark alone, so that a
    /// field holds nothing to type around.
    #[must_use]
    pub fn typed(self, text: &str) -> String {
        text.replace('.', self.decimal.encode_utf8(&mut [0; 4]))
    }

    /// A number and its unit.
    #[must_use]
    pub fn with_unit(self, value: f64, sign: &str) -> String {
        with_sign(self.plain(value), sign)
    }

    /// A plainly written number (`-1234.5`) as this language has it.
    #[must_use]
    pub fn grouped(self, text: &str) -> String {
        let (sign, text) = text
            .strip_prefix('-')
            .map_or(("", text), |rest| ("\u{2212}", rest));
        let (whole, rest) = text
            .split_once('.')
            .map_or((text, None), |(w, r)| (w, Some(r)));
        let mut grouped = String::from(sign);
        for (index, digit) in whole.chars().enumerate() {
            if whole.len() >= self.group_from && index > 0 && (whole.len() - index) % 3 == 0 {
                grouped.push(self.group);
            }
            grouped.push(digit);
        }
        if let Some(rest) = rest {
            grouped.push(self.decimal);
            grouped.push_str(rest);
        }
        grouped
    }
}

/// A written number and its unit.
#[must_use]
pub fn with_sign(number: String, sign: &str) -> String {
    if sign.is_empty() {
        number
    } else {
        format!("{number}{THIN}{sign}")
    }
}

/// To three or four significant digits: for a number that was taken, not typed.
#[must_use]
pub fn rounded(value: f64) -> f64 {
    let parts = match value.abs() {
        size if size >= 100.0 => 1.0,
        size if size >= 10.0 => 10.0,
        size if size >= 1.0 => 100.0,
        _ => 1000.0,
    };
    (value * parts).round() / parts
}

/// A number with so many decimals, plainly: see [`crate::plan::entry::fixed`].
fn written(value: f64, decimals: usize) -> String {
    crate::plan::entry::fixed(value, decimals)
}

/// How long something lasts, as it is told.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Span {
    Nothing,
    UnderAMinute,
    /// Hours and minutes.
    Clocked(u64, u64),
    /// From three days on, with so many decimals.
    Days(f64, usize),
}

/// Ten-minute steps from two hours up: the engine's own error is smaller, the
/// inputs' spread is not.
#[must_use]
pub fn span(hours: f64) -> Span {
    if hours <= 0.0 {
        return Span::Nothing;
    }
    if hours < 1.0 / 60.0 {
        return Span::UnderAMinute;
    }
    if hours >= 72.0 {
        return in_days(hours);
    }
    let step = if hours >= 2.0 { 10.0 } else { 1.0 };
    let minutes = ((hours * 60.0 / step).round() * step) as u64;
    Span::Clocked(minutes / 60, minutes % 60)
}

fn in_days(hours: f64) -> Span {
    Span::Days(hours / 24.0, usize::from(hours < 240.0))
}

/// Both ends of a band: `2.9 days` to `4.1 days`, and not `70 h 40 min` to `4.1 days`.
/// Less than a day stays in hours.
#[must_use]
pub fn span_range(low: f64, high: f64) -> (Span, Span) {
    let (first, second) = (span(low), span(high));
    match (first, second) {
        (Span::Clocked(hours, _), Span::Days(..)) if hours >= 24 => (in_days(low), second),
        both => both,
    }
}

/// `9 h 50 min`: the signs are those of every language.
pub(super) fn join(minutes: u64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, minutes) => format!("{minutes}{THIN}min"),
        (hours, 0) => format!("{hours}{THIN}h"),
        (hours, minutes) => format!("{hours}{THIN}h {minutes}{THIN}min"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::Formatter;

    const F: Formatter = Formatter::ENGLISH;

    #[test]
    fn numbers_for_people() {
        assert_eq!(F.plain(335.512), "336");
        assert_eq!(F.stated(335.5), "335.5");
        assert_eq!(F.stated(12_345_678.9), "12\u{202f}345\u{202f}679");
        assert_eq!(F.stated(407.762_592), "407.763");
        assert_eq!(F.plain(49.73), "49.7");
        assert_eq!(F.plain(12.8), "12.8");
        assert_eq!(F.plain(0.0254), "0.025");
        assert_eq!(F.plain(12_800.0), "12\u{202f}800");
        assert_eq!(F.plain(-0.0), "0");
        assert_eq!(
            [390.1881, 13.2234, -0.38].map(rounded),
            [390.0, 13.2, -0.38]
        );
        assert_eq!(F.exact(-1.5, 2), "\u{2212}1.50");
    }

    #[test]
    fn times_for_people() {
        assert_eq!(F.duration(9.84), "9\u{202f}h 50\u{202f}min");
        assert_eq!(F.duration(0.51), "31\u{202f}min");
        assert_eq!(F.duration(0.0), "0\u{202f}min");
        assert_eq!(F.duration(100.0), "4.2 days");
        let range = |low, high| {
            let (low, high) = F.duration_range(low, high);
            format!("{low} to {high}")
        };
        assert_eq!(range(70.7, 98.4), "2.9 days to 4.1 days");
        assert_eq!(range(23.0, 98.4), "23\u{202f}h to 4.1 days");
        assert_eq!(range(50.0, 60.0), "50\u{202f}h to 60\u{202f}h");
        assert_eq!(F.clock_after(21 * 60, 9.84), "06:50");
        assert_eq!(F.clock(1439.99), "23:59");
    }
}
