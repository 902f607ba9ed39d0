//! Two numbers in one text: from where to where, and amps with their voltage.

use super::{Entry, EntryError, Reading, in_number, plainer, read, whole};
use crate::{plan::Show, range::Unit};

/// A text read that may say from where to where: `230-250`, `230 to 250 W`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The number, or the middle.
    pub entry: Entry,
    /// Half the way between both ends, in the same unit; of a number alone none.
    pub half: Option<f64>,
}

/// Reads `text` as [`read`] does, or as two numbers with a dash or `to` between.
/// A unit after the second is the first's too.
///
/// # Errors
/// See [`EntryError`]. Ends in falling order are no range.
///
/// ```
/// use till_morning::{plan::{Show, entry::read_spread}, range::Unit};
/// let read = read_spread("230-250", Unit::Watt, Show::METRIC).unwrap();
/// assert_eq!((read.entry.value, read.half), (240.0, Some(10.0)));
/// ```
pub fn read_spread(text: &str, unit: Unit, units: Show) -> Result<Spread, EntryError> {
    let plain: String = text.trim().chars().map(plainer).collect();
    let plain = plain.to_ascii_lowercase();
    let alone = |entry| Spread { entry, half: None };
    let Some((low, high)) = ends(&plain).filter(|_| unit != Unit::ClockMinute) else {
        return read(text, unit, units).map(alone);
    };
    let high_entry = read(high, unit, units)?;
    let is_bare = |text: &str| text.chars().all(in_number);
    let sign: String = high.chars().skip_while(|&c| in_number(c)).collect();
    let low = if is_bare(low) {
        format!("{low}{sign}")
    } else {
        low.to_owned()
    };
    let low_entry = read(&low, unit, units)?;
    let half = (high_entry.value - low_entry.value) / 2.0;
    if half.is_nan() || half <= 0.0 || low_entry.given != high_entry.given {
        return Err(EntryError::NotANumber);
    }
    let value = low_entry.value + half;
    Ok(Spread {
        entry: whole(value, Reading::Converted, high_entry.given),
        half: Some(half),
    })
}

/// Both ends of a range as typed. A dash before a number is its minus.
fn ends(text: &str) -> Option<(&str, &str)> {
    if let Some((low, high)) = text.split_once(" to ") {
        return Some((low.trim(), high.trim()));
    }
    let dash = text.char_indices().find(|&(at, c)| {
        let before = text[..at].trim_end();
        c == '-' && !before.is_empty() && !before.ends_with(['-', '+'])
    });
    let (at, _) = dash?;
    Some((text[..at].trim(), text[at + 1..].trim()))
}

/// The voltage said with amps, and the text before it: `45 A at 24 V`, `45A@24`.
/// Nothing where none is said; an error where it is no voltage.
///
/// # Errors
/// See [`EntryError`].
pub fn split_volts(text: &str) -> Result<(&str, Option<f64>), EntryError> {
    let lower = text.to_ascii_lowercase();
    let split = lower.find('@').map(|at| (at, at + 1));
    let split = split.or_else(|| lower.find(" at ").map(|at| (at, at + 4)));
    let Some((end, start)) = split else {
        return Ok((text, None));
    };
    let volts = read(&text[start..], Unit::Volt, Show::METRIC)?;
    Ok((&text[..end], Some(volts.value)))
}
