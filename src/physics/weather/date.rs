//! Calendar dates and moments of universal time.

use super::{Input, OutOfRange, within};

/// A day of the Gregorian calendar, 1900 to 2100.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date {
    year: i32,
    month: u8,
    day: u8,
}

impl Date {
    /// A date that exists.
    ///
    /// - `year`: 1900 to 2100, where the sun's elements used here hold
    /// - `month`: 1 to 12
    /// - `day`: 1 to the month's last
    ///
    /// # Errors
    /// The first field out of its range; for the day, the month's own range.
    ///
    /// # Examples
    /// ```
    /// use till_morning::physics::weather::date::Date;
    /// assert!(Date::new(2024, 2, 29).is_ok());
    /// assert_eq!(Date::new(2023, 2, 29).unwrap_err().most, 28.0);
    /// ```
    pub fn new(year: i32, month: u8, day: u8) -> Result<Self, OutOfRange> {
        within(Input::Year, f64::from(year), 1900.0, 2100.0)?;
        within(Input::Month, f64::from(month), 1.0, 12.0)?;
        let last = f64::from(last_day(year, month));
        within(Input::DayOfMonth, f64::from(day), 1.0, last)?;
        Ok(Self { year, month, day })
    }

    /// Year, month, day.
    #[must_use]
    pub fn parts(&self) -> (i32, u8, u8) {
        (self.year, self.month, self.day)
    }

    /// Days from 1 January 2000 to this date; negative before.
    ///
    /// Counting in years that begin in March puts the leap day last, so that
    /// month lengths follow one line: common practice, no source.
    #[must_use]
    pub fn days_since_2000(&self) -> i32 {
        let early = i32::from(self.month <= 2);
        let year = self.year - early;
        let month_from_march = (i32::from(self.month) + 9) % 12;
        let leap_days = year / 4 - year / 100 + year / 400;
        let days = 365 * year + leap_days + (153 * month_from_march + 2) / 5;
        // 730,425 is this count for 1 January 2000, so that it reads zero.
        days + i32::from(self.day) - 1 - 730_425
    }

    /// The date so many days on (or back), or where the calendar here ends.
    ///
    /// # Errors
    /// Past the years 1900 to 2100.
    pub fn plus_days(&self, days: u16) -> Result<Self, OutOfRange> {
        let mut next = *self;
        let mut left = u32::from(days);
        loop {
            let rest = u32::from(last_day(next.year, next.month) - next.day);
            if left <= rest {
                #[expect(clippy::cast_possible_truncation, reason = "at most 30")]
                return Self::new(next.year, next.month, next.day + left as u8);
            }
            left -= rest + 1;
            next = if next.month == 12 {
                Self::new(next.year + 1, 1, 1)?
            } else {
                Self::new(next.year, next.month + 1, 1)?
            };
        }
    }
}

/// The last day of a month.
fn last_day(year: i32, month: u8) -> u8 {
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    match month {
        4 | 6 | 9 | 11 => 30,
        2 if leap => 29,
        2 => 28,
        _ => 31,
    }
}

/// A moment of universal time, to a millisecond or better.
///
/// Universal and coordinated universal time are taken as one: they part by at
/// most 0.9 s, in which the sun moves 0.004 degrees.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Moment {
    days_since_j2000: f64,
}

impl Moment {
    /// The moment so many hours after midnight, universal time, of a date.
    ///
    /// - `hours`: -10,000 to 10,000; past a day's end it counts on
    ///
    /// # Errors
    /// Hours out of range.
    pub fn from_utc(date: Date, hours: f64) -> Result<Self, OutOfRange> {
        let hours = within(Input::Hours, hours, -10_000.0, 10_000.0)?;
        // J2000.0 is noon of 1 January 2000.
        let days = f64::from(date.days_since_2000()) - 0.5;
        Ok(Self {
            days_since_j2000: days + hours / 24.0,
        })
    }

    /// The moment so many hours on a local standard clock after midnight.
    ///
    /// - `utc_offset_h`: standard time less universal time, -12 to 14
    ///
    /// # Errors
    /// Hours or offset out of range.
    pub fn from_local(date: Date, hours: f64, utc_offset_h: f64) -> Result<Self, OutOfRange> {
        let offset = within(Input::UtcOffset, utc_offset_h, -12.0, 14.0)?;
        Ok(Self::from_utc(date, hours)?.shifted(-offset))
    }

    /// The moment so many hours later (earlier, if negative).
    ///
    /// - `hours`: -10,000 to 10,000
    ///
    /// # Errors
    /// Hours out of range.
    pub fn plus_hours(&self, hours: f64) -> Result<Self, OutOfRange> {
        Ok(self.shifted(within(Input::Hours, hours, -10_000.0, 10_000.0)?))
    }

    /// As [`Self::plus_hours`], for hours already known to be fit.
    pub(crate) fn shifted(&self, hours: f64) -> Self {
        Self {
            days_since_j2000: self.days_since_j2000 + hours / 24.0,
        }
    }

    /// Hours from an earlier moment to this one.
    #[must_use]
    pub fn hours_since(&self, earlier: Self) -> f64 {
        (self.days_since_j2000 - earlier.days_since_j2000) * 24.0
    }

    /// Days since J2000.0, that is noon of 1 January 2000; add 2,451,545 for
    /// the Julian date.
    #[must_use]
    pub fn days_since_j2000(&self) -> f64 {
        self.days_since_j2000
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Meeus, *Astronomical Algorithms*, 2nd ed., chapter 7, table of examples.
    #[test]
    fn julian_dates_as_printed() {
        let julian = |y, m, d, hours| {
            let date = Date::new(y, m, d).unwrap();
            Moment::from_utc(date, hours).unwrap().days_since_j2000() + 2_451_545.0
        };
        for (y, m, d, hours, printed) in [
            (1957, 10, 4, 0.81 * 24.0, 2_436_116.31),
            (2000, 1, 1, 12.0, 2_451_545.0),
            (1999, 1, 1, 0.0, 2_451_179.5),
            (1987, 1, 27, 0.0, 2_446_822.5),
            (1987, 6, 19, 12.0, 2_446_966.0),
            (1988, 1, 27, 0.0, 2_447_187.5),
            (1900, 1, 1, 0.0, 2_415_020.5),
        ] {
            assert!(
                (julian(y, m, d, hours) - printed).abs() < 1e-6,
                "{y}-{m}-{d}"
            );
        }
    }

    #[test]
    fn days_add_up_across_leap_and_year_ends() {
        let eve = Date::new(2023, 12, 31).unwrap();
        assert_eq!(eve.plus_days(1).unwrap().parts(), (2024, 1, 1));
        assert_eq!(eve.plus_days(60).unwrap().parts(), (2024, 2, 29));
        assert_eq!(eve.plus_days(366).unwrap().parts(), (2024, 12, 31));
        assert!(Date::new(2100, 12, 31).unwrap().plus_days(1).is_err());
    }

    #[test]
    fn hours_that_are_no_hours_are_refused() {
        let date = Date::new(2025, 6, 21).unwrap();
        for hours in [f64::NAN, f64::INFINITY, 1e9] {
            assert_eq!(
                Moment::from_utc(date, hours).unwrap_err().input,
                Input::Hours
            );
        }
    }
}
