//! Calendar dates and moments of universal time.

use super::{Input, OutOfRange, within};
use time::{Duration, Month};

/// Julian day number of 1 January 2000, which begins at its noon.
const J2000: i32 = 2_451_545;

/// A day of the Gregorian calendar, 1900 to 2100.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date(time::Date);

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
        let outside = |input, most| OutOfRange {
            input,
            least: 1.0,
            most,
        };
        let month = Month::try_from(month).map_err(|_| outside(Input::Month, 12.0))?;
        let last = f64::from(month.length(year));
        let date = time::Date::from_calendar_date(year, month, day);
        date.map(Self).map_err(|_| outside(Input::DayOfMonth, last))
    }

    /// A date, its day brought down to the month's last; nothing where year or month are
    /// out of range.
    #[must_use]
    pub fn or_last_of_month(year: i32, month: u8, day: u8) -> Option<Self> {
        (0..4).find_map(|less| Self::new(year, month, day.saturating_sub(less)).ok())
    }

    /// The day of the week: Monday 0, Sunday 6.
    #[must_use]
    pub fn weekday(&self) -> u8 {
        self.0.weekday().number_days_from_monday()
    }

    /// Year, month, day.
    #[must_use]
    pub fn parts(&self) -> (i32, u8, u8) {
        let (year, month, day) = self.0.to_calendar_date();
        (year, month.into(), day)
    }

    /// The date so many days on, or where the calendar here ends.
    ///
    /// # Errors
    /// Past the year 2100.
    pub fn plus_days(&self, days: u16) -> Result<Self, OutOfRange> {
        let next = self.0.saturating_add(Duration::days(days.into()));
        within(Input::Year, f64::from(next.year()), 1900.0, 2100.0)?;
        Ok(Self(next))
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
        let days = f64::from(date.0.to_julian_day() - J2000) - 0.5;
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
