//! Times as loggers write them, to seconds.

mod month;

use time::{Date, Month};

/// The order of day and month in dates written with strokes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateOrder {
    /// 31/12/2025.
    DayFirst,
    /// 12/31/2025.
    MonthFirst,
}

/// A clock reading, `h:mm`, `h:mm:ss` or with fractions, AM and PM understood.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clock {
    /// First part, any number of hours (or minutes, in `m:ss`).
    pub first: f64,
    /// Second part, below 60.
    pub second: f64,
    /// Third part, below 60, where written.
    pub third: Option<f64>,
}

impl Clock {
    /// Seconds since midnight or the start, read as hours and minutes.
    #[must_use]
    pub fn seconds(self) -> f64 {
        (self.first * 60.0 + self.second) * 60.0 + self.third.unwrap_or(0.0)
    }

    /// Seconds, with two parts read as minutes and seconds.
    #[must_use]
    pub fn seconds_short(self) -> f64 {
        match self.third {
            Some(_) => self.seconds(),
            None => self.first * 60.0 + self.second,
        }
    }
}

/// Reads a clock time; `None` for anything else, and for 61 minutes.
#[must_use]
pub fn clock(text: &str) -> Option<Clock> {
    let (text, half) = split_half_day(text.trim());
    let mut parts = text.split(':');
    let mut first = whole(parts.next()?, 4)?;
    let second = parts.next()?;
    let third = parts.next();
    if parts.next().is_some() {
        return None;
    }
    // Fractions only in the last part, comma or point.
    let (second, third) = match third {
        Some(third) => (whole(second, 2)?, Some(fraction(third)?)),
        None => (fraction(second)?, None),
    };
    if second >= 60.0 || third.is_some_and(|s| s >= 60.0) {
        return None;
    }
    if let Some(afternoon) = half {
        if !(1.0..=12.0).contains(&first) {
            return None;
        }
        first = first % 12.0 + if afternoon { 12.0 } else { 0.0 };
    }
    Some(Clock {
        first,
        second,
        third,
    })
}

/// Takes AM or PM from the end; true is the afternoon.
fn split_half_day(text: &str) -> (&str, Option<bool>) {
    for (mark, afternoon) in [("am", false), ("pm", true), ("a.m.", false), ("p.m.", true)] {
        let at = text.len().wrapping_sub(mark.len());
        if text
            .get(at..)
            .is_some_and(|end| end.eq_ignore_ascii_case(mark))
        {
            return (text[..at].trim_end(), Some(afternoon));
        }
    }
    (text, None)
}

/// Digits alone, at most so many.
fn whole(text: &str, most: usize) -> Option<f64> {
    let good = (1..=most).contains(&text.len()) && text.bytes().all(|b| b.is_ascii_digit());
    good.then(|| text.parse().ok()).flatten()
}

/// Two digits at most and a fraction behind point or comma.
fn fraction(text: &str) -> Option<f64> {
    let (int, part) = text.split_once(['.', ',']).unwrap_or((text, "0"));
    let good = (1..=9).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
    let tail: f64 = format!("0.{part}").parse().ok()?;
    good.then(|| whole(int, 2).map(|n| n + tail)).flatten()
}

/// Reads a date, with the year first or as `order` says; dots mean day first.
/// The answer counts days and has no meaning beyond differences.
#[must_use]
pub fn date(text: &str, order: DateOrder) -> Option<f64> {
    if let Some((day, rest)) = month::named_date(text) {
        return rest.is_empty().then_some(day);
    }
    let mark = text.chars().find(|c| matches!(c, '-' | '/' | '.'))?;
    let mut parts = text.trim().trim_end_matches('.').split(mark);
    let (a, b, c) = (parts.next()?, parts.next()?, parts.next()?);
    if parts.next().is_some() {
        return None;
    }
    let (year, month, day) = if a.len() == 4 {
        (a, b, c)
    } else if mark == '.' || order == DateOrder::DayFirst {
        (c, b, a)
    } else {
        (c, a, b)
    };
    day_number(year, Month::try_from(whole(month, 2)? as u8).ok()?, day)
}

/// The day of a year of two or four digits.
fn day_number(year: &str, month: Month, day: &str) -> Option<f64> {
    let mut year_number = whole(year, 4)? as i32;
    match year.len() {
        4 => {}
        2 => year_number += 2000,
        _ => return None,
    }
    let day = whole(day, 2)? as u8;
    let date = Date::from_calendar_date(year_number, month, day).ok()?;
    Some(f64::from(date.to_julian_day()))
}

/// A day, a clock time and perhaps the zone in seconds east.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Seconds on the scale of [`date`], the zone taken off.
    pub seconds: f64,
    /// Whether a zone was written.
    pub zoned: bool,
}

/// Reads a date with a time, `T`, blank or comma between, zone optional.
#[must_use]
pub fn moment(text: &str, order: DateOrder) -> Option<Moment> {
    let text = text.trim();
    let (day, rest) = match month::named_date(text) {
        Some(named) => named,
        None => {
            let at = text.find(['T', 't', ' ', ',', '_'])?;
            (date(&text[..at], order)?, text[at + 1..].trim_start())
        }
    };
    let (time, zone) = split_zone(rest)?;
    let clock = clock(time)?;
    if clock.first >= 24.0 {
        return None;
    }
    let seconds = day * 86_400.0 + clock.seconds() - zone.unwrap_or(0.0);
    Some(Moment {
        seconds,
        zoned: zone.is_some(),
    })
}

/// Takes `Z`, `UTC` or `+hh:mm` from the end; `None` when it is malformed.
fn split_zone(text: &str) -> Option<(&str, Option<f64>)> {
    for mark in ["Z", "z", "UTC", "GMT"] {
        if let Some(time) = text.strip_suffix(mark) {
            return Some((time.trim_end(), Some(0.0)));
        }
    }
    let Some(at) = text.rfind(['+', '-']) else {
        return Some((text, None));
    };
    let (time, zone) = text.split_at(at);
    let digits: String = zone[1..].chars().filter(|&c| c != ':').collect();
    let (hours, minutes) = match digits.len() {
        2 => (whole(&digits, 2)?, 0.0),
        4 => (whole(digits.get(..2)?, 2)?, whole(digits.get(2..)?, 2)?),
        _ => return None,
    };
    if hours > 14.0 || minutes >= 60.0 {
        return None;
    }
    let east = if zone.starts_with('-') { -1.0 } else { 1.0 };
    Some((
        time.trim_end(),
        Some(east * (hours * 60.0 + minutes) * 60.0),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn clock_times_of_every_cut() {
        for (text, want) in [
            ("0:00", 0.0),
            ("26:10:05", 94_205.0),
            ("1:02:03.5", 3723.5),
            ("01:02:03,25", 3723.25),
            ("12:00 AM", 0.0),
            ("12:30:00 pm", 45_000.0),
            ("11:59:59 p.m.", 86_399.0),
        ] {
            assert_eq!(clock(text).map(Clock::seconds), Some(want), "{text}");
        }
        for text in [
            "", "12", "1:60", "1:2:3:4", "13:00 PM", "a:b", "1:00:00.", "-1:00",
        ] {
            assert_eq!(clock(text), None, "{text}");
        }
        assert_eq!(clock("61:05").map(Clock::seconds_short), Some(3665.0));
    }

    #[test]
    fn one_moment_in_many_forms() {
        // ISO 8601 and the national orders write the same instant.
        let want = moment("2024-03-05T14:03:22Z", DateOrder::DayFirst)
            .unwrap()
            .seconds;
        for (text, order) in [
            ("2024-03-05 14:03:22", DateOrder::MonthFirst),
            ("2024-03-05T16:03:22+02:00", DateOrder::DayFirst),
            ("2024-03-05T09:03:22-0500", DateOrder::DayFirst),
            ("2024/03/05 14:03:22", DateOrder::DayFirst),
            ("05.03.2024 14:03:22", DateOrder::MonthFirst),
            ("05/03/24 2:03:22 PM", DateOrder::DayFirst),
            ("3/5/2024, 14:03:22", DateOrder::MonthFirst),
            ("05 Mar 2024 14:03:22", DateOrder::MonthFirst),
            ("5-MAR-24 2:03:22 pm", DateOrder::DayFirst),
            ("March 5, 2024 14:03:22", DateOrder::DayFirst),
            ("5. März 2024, 14:03:22", DateOrder::DayFirst),
            ("2024 Mar 05 14:03:22Z", DateOrder::DayFirst),
        ] {
            assert_eq!(moment(text, order).map(|m| m.seconds), Some(want), "{text}");
        }
        for text in [
            "2024-02-30 10:00",
            "2024-13-01 10:00",
            "2024-03-05",
            "2024-03-05T25:00",
            "30 Feb 2024 10:00",
            "5 Mar 2024",
            "5 Max 2024 10:00",
            "Mar 2024 10:00",
        ] {
            assert_eq!(moment(text, DateOrder::DayFirst), None, "{text}");
        }
    }

    #[test]
    fn days_count_through_leap_years() {
        let days =
            |a, b| date(b, DateOrder::DayFirst).unwrap() - date(a, DateOrder::DayFirst).unwrap();
        assert_eq!(days("2024-02-28", "2024-03-01"), 2.0);
        assert_eq!(days("2023-02-28", "2023-03-01"), 1.0);
    }
}
