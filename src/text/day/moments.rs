//! What a moment of the days is called: by its date where the plan states one, else by the
//! night or the part of the day that it is in.

use crate::{
    physics::weather::date::Date,
    plan::{Path, Plan, day::DayField},
    text::{Formatter, m},
};

const DAY_MIN: i64 = 1440;
/// A night belongs to the evening that it began on, until here: people call it morning
/// from about then on.
const MORNING_MIN: i64 = 4 * 60;
const NOON_MIN: i64 = 12 * 60;
const NIGHT_MIN: i64 = 18 * 60;
/// Beyond this a clock time alone might be another day's.
const ONE_DAY_H: f64 = 24.0;

/// How a plan's moments are named.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Calendar {
    start_min: u32,
    has_several_days: bool,
    /// The date of the start, where day and month are stated.
    first: Option<Date>,
    /// Without it nobody knows the weekday.
    has_year: bool,
}

impl Calendar {
    #[must_use]
    pub fn of(plan: &Plan) -> Self {
        let number = |field| plan.number(Path::Day(field));
        let is_dated = plan.day.month.is_some() && plan.day.day_of_month.is_some();
        let parts = (
            number(DayField::Year),
            number(DayField::Month),
            number(DayField::DayOfMonth),
        );
        let first = match parts {
            (Some(year), Some(month), Some(day)) if is_dated => {
                Date::or_last_of_month(year as i32, month as u8, day as u8)
            }
            _ => None,
        };
        let days = number(DayField::DaysCount).unwrap_or(1.0);
        Self {
            start_min: plan.night.start_clock_min % 1440,
            has_several_days: days > 1.0 || plan.night.wanted_h > ONE_DAY_H,
            first,
            has_year: plan.day.year.is_some(),
        }
    }

    #[must_use]
    pub fn start_min(self) -> f64 {
        f64::from(self.start_min)
    }

    /// A moment so many hours after the start: "Sat 29 Aug, 04:10" or "morning 2, 04:10";
    /// the clock alone where all is over within a day.
    #[must_use]
    pub fn moment(self, f: Formatter, hours_h: f64) -> String {
        self.named(f, self.minutes(hours_h))
    }

    /// The same to ten minutes, for what is worked out and no clock has shown.
    #[must_use]
    pub fn about(self, f: Formatter, hours_h: f64) -> String {
        self.named(f, self.to_ten(hours_h))
    }

    fn to_ten(self, hours_h: f64) -> i64 {
        let minutes = f64::from(self.start_min) + 60.0 * hours_h.max(0.0);
        10 * (minutes / 10.0).round() as i64
    }

    /// Whether the clock has been there before: it alone would be read as the start's day.
    fn is_a_day_on(self, minutes: i64) -> bool {
        minutes >= i64::from(self.start_min) + DAY_MIN
    }

    /// Until such a moment, to ten minutes.
    #[must_use]
    pub fn until(self, f: Formatter, hours_h: f64) -> String {
        let minutes = self.to_ten(hours_h);
        if self.has_several_days || self.is_a_day_on(minutes) {
            let moment = self.named(f, minutes);
            return f.say(m::DayUntil { moment });
        }
        let clock = f.clock(minutes.rem_euclid(DAY_MIN) as f64);
        f.say(m::DayUntilClock { clock })
    }

    /// The day that begins at a midnight, for an axis: "Sat 29" or "day 2". The nearest
    /// midnight is meant: read from where a tick is drawn it may be a minute short.
    #[must_use]
    pub fn day(self, f: Formatter, hours_h: f64) -> String {
        let minutes = (self.minutes(hours_h) + DAY_MIN / 2).div_euclid(DAY_MIN) * DAY_MIN;
        let Some(date) = self.date(minutes) else {
            // From midnight on it is called by the morning to come.
            let day = self.day_number(minutes + MORNING_MIN);
            return f.say(m::DayOfNumber { day: f.number(day) });
        };
        let (_, month, day) = date.parts();
        let day = f.number(f64::from(day));
        if self.has_year {
            let weekday = weekday_name(f, date.weekday());
            f.say(m::DayOfWeekday { weekday, day })
        } else {
            let month = month_name(f, month);
            f.say(m::DayOfMonth { day, month })
        }
    }

    /// The day that begins with a start so many days later, at the head of a row.
    #[must_use]
    pub fn row(self, f: Formatter, days: usize) -> String {
        let minutes = self.minutes(ONE_DAY_H * days as f64);
        self.date(minutes)
            .map_or_else(|| f.number(days as f64 + 1.0), |date| self.dated(f, date))
    }

    /// Whole minutes after the first day's midnight.
    fn minutes(self, hours_h: f64) -> i64 {
        (f64::from(self.start_min) + 60.0 * hours_h.max(0.0)).round() as i64
    }

    fn date(self, minutes: i64) -> Option<Date> {
        let days = u16::try_from(minutes.div_euclid(DAY_MIN)).ok()?;
        self.first?.plus_days(days).ok()
    }

    /// Counted from the evening of the start, each until the next day's morning.
    fn day_number(self, minutes: i64) -> f64 {
        let evening = |minutes: i64| (minutes - MORNING_MIN).div_euclid(DAY_MIN);
        (evening(minutes) - evening(i64::from(self.start_min)) + 1) as f64
    }

    fn dated(self, f: Formatter, date: Date) -> String {
        let (_, month, day) = date.parts();
        let (day, month) = (f.number(f64::from(day)), month_name(f, month));
        if self.has_year {
            let weekday = weekday_name(f, date.weekday());
            f.say(m::DayOfDate {
                weekday,
                day,
                month,
            })
        } else {
            f.say(m::DayOfMonth { day, month })
        }
    }

    fn named(self, f: Formatter, minutes: i64) -> String {
        let clock = f.clock(minutes.rem_euclid(DAY_MIN) as f64);
        if !self.has_several_days {
            return if self.is_a_day_on(minutes) {
                f.say(m::DayMomentNextDay { clock })
            } else {
                clock
            };
        }
        if let Some(date) = self.date(minutes) {
            let date = self.dated(f, date);
            return f.say(m::DayMomentOfDate { date, clock });
        }
        let number = f.number(self.day_number(minutes));
        match minutes.rem_euclid(DAY_MIN) {
            MORNING_MIN..NOON_MIN => f.say(m::DayMomentMorning { number, clock }),
            NOON_MIN..NIGHT_MIN => f.say(m::DayMomentAfternoon { number, clock }),
            _ => f.say(m::DayMomentNight { number, clock }),
        }
    }
}

/// A moment of a plan's days, to the minute.
#[must_use]
pub fn moment(f: Formatter, plan: &Plan, hours_h: f64) -> String {
    Calendar::of(plan).moment(f, hours_h)
}

/// A moment of a plan's days, to ten minutes.
#[must_use]
pub fn about(f: Formatter, plan: &Plan, hours_h: f64) -> String {
    Calendar::of(plan).about(f, hours_h)
}

/// A clock's distance from UTC as people say it: `UTC+2`, `UTC+5:30`.
#[must_use]
pub fn utc_offset(minutes: f64) -> String {
    let all = minutes.abs().round() as u32;
    let sign = if minutes < 0.0 { '\u{2212}' } else { '+' };
    match (all / 60, all % 60) {
        (0, 0) => "UTC".into(),
        (hours, 0) => format!("UTC{sign}{hours}"),
        (hours, minutes) => format!("UTC{sign}{hours}:{minutes:02}"),
    }
}

/// A day of the week, Monday 0.
fn weekday_name(f: Formatter, weekday: u8) -> &'static str {
    match weekday {
        0 => f.say(m::DayWeekdayMon),
        1 => f.say(m::DayWeekdayTue),
        2 => f.say(m::DayWeekdayWed),
        3 => f.say(m::DayWeekdayThu),
        4 => f.say(m::DayWeekdayFri),
        5 => f.say(m::DayWeekdaySat),
        _ => f.say(m::DayWeekdaySun),
    }
}

/// A month, January 1.
pub(super) fn month_name(f: Formatter, month: u8) -> &'static str {
    match month {
        1 => f.say(m::DayMonthJan),
        2 => f.say(m::DayMonthFeb),
        3 => f.say(m::DayMonthMar),
        4 => f.say(m::DayMonthApr),
        5 => f.say(m::DayMonthMay),
        6 => f.say(m::DayMonthJun),
        7 => f.say(m::DayMonthJul),
        8 => f.say(m::DayMonthAug),
        9 => f.say(m::DayMonthSep),
        10 => f.say(m::DayMonthOct),
        11 => f.say(m::DayMonthNov),
        _ => f.say(m::DayMonthDec),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const F: Formatter = Formatter::ENGLISH;

    /// A week that starts at 21:00.
    fn week(date: Option<(Option<u32>, u32, u32)>) -> Plan {
        let mut plan = Plan::demo();
        plan.night.start_clock_min = 21 * 60;
        if let Some((year, month, day)) = date {
            plan.day.year = year;
            plan.day.month = Some(month);
            plan.day.day_of_month = Some(day);
        }
        plan
    }

    /// 28 August 2026 is a Friday, 1 January 2000 was a Saturday: any calendar.
    #[test]
    fn with_a_date_a_moment_has_its_own() {
        let plan = week(Some((Some(2026), 8, 28)));
        assert_eq!(moment(F, &plan, 0.0), "Fri 28 Aug, 21:00");
        assert_eq!(moment(F, &plan, 7.0 + 1.0 / 6.0), "Sat 29 Aug, 04:10");
        assert_eq!(moment(F, &plan, 3.0), "Sat 29 Aug, 00:00");
        assert_eq!(moment(F, &plan, 24.0), "Sat 29 Aug, 21:00");
        // August has 31 days.
        assert_eq!(moment(F, &plan, 96.0), "Tue 1 Sep, 21:00");
        assert_eq!(Calendar::of(&plan).day(F, 3.0), "Sat 29");
        assert_eq!(Calendar::of(&plan).row(F, 4), "Tue 1 Sep");
        let century = week(Some((Some(1999), 12, 31)));
        assert_eq!(moment(F, &century, 4.0), "Sat 1 Jan, 01:00");
    }

    #[test]
    fn a_date_without_a_year_has_no_weekday() {
        let plan = week(Some((None, 8, 31)));
        assert_eq!(moment(F, &plan, 0.0), "31 Aug, 21:00");
        assert_eq!(moment(F, &plan, 5.5), "1 Sep, 02:30");
        assert_eq!(Calendar::of(&plan).day(F, 3.0), "1 Sep");
    }

    #[test]
    fn a_day_that_the_month_has_not_is_its_last() {
        let plan = week(Some((Some(2026), 2, 31)));
        assert_eq!(moment(F, &plan, 0.0), "Sat 28 Feb, 21:00");
        assert_eq!(moment(F, &plan, 3.0), "Sun 1 Mar, 00:00");
    }

    /// The end of 24 hours stands at the clock of their start.
    #[test]
    fn a_clock_that_comes_again_is_the_next_day_s() {
        let mut plan = week(None);
        plan.day.days_count = Some(1);
        assert_eq!(moment(F, &plan, 0.0), "21:00");
        assert_eq!(moment(F, &plan, 23.5), "20:30");
        assert_eq!(moment(F, &plan, 24.0), "21:00 the next day");
        assert_eq!(Calendar::of(&plan).until(F, 10.0), "until 07:00");
        assert_eq!(
            Calendar::of(&plan).until(F, 24.0),
            "until 21:00 the next day"
        );
    }

    #[test]
    fn without_a_date_a_night_belongs_to_its_evening() {
        let plan = week(None);
        assert_eq!(moment(F, &plan, 0.0), "night 1, 21:00");
        assert_eq!(moment(F, &plan, 5.0), "night 1, 02:00");
        assert_eq!(moment(F, &plan, 7.0 + 1.0 / 6.0), "morning 2, 04:10");
        assert_eq!(moment(F, &plan, 18.0), "afternoon 2, 15:00");
        assert_eq!(moment(F, &plan, 24.0), "night 2, 21:00");
        assert_eq!(Calendar::of(&plan).day(F, 3.0), "day 2");
        assert_eq!(Calendar::of(&plan).row(F, 0), "1");
        // Where a tick is drawn is told to a tenth of a pixel: some minutes of a week.
        let names = (0..6).map(|night| Calendar::of(&plan).day(F, 2.95 + 24.0 * f64::from(night)));
        let wanted = ["day 2", "day 3", "day 4", "day 5", "day 6", "day 7"];
        assert_eq!(names.collect::<Vec<_>>(), wanted);
    }

    #[test]
    fn a_start_after_midnight_is_in_the_first_night() {
        let mut plan = week(None);
        plan.night.start_clock_min = 60;
        assert_eq!(moment(F, &plan, 0.0), "night 1, 01:00");
        assert_eq!(moment(F, &plan, 4.0), "morning 2, 05:00");
        assert_eq!(Calendar::of(&plan).day(F, 23.0), "day 3");
    }

    #[test]
    fn what_rounds_over_midnight_is_the_next_day() {
        let plan = week(Some((Some(2026), 8, 28)));
        assert_eq!(about(F, &plan, 2.95), "Sat 29 Aug, 00:00");
    }

    #[test]
    fn one_night_needs_no_more_than_the_clock() {
        let mut plan = week(Some((Some(2026), 8, 28)));
        plan.day.days_count = Some(1);
        assert_eq!(moment(F, &plan, 7.0 + 1.0 / 6.0), "04:10");
    }

    #[test]
    fn the_clock_against_utc_is_in_hours() {
        assert_eq!(utc_offset(120.0), "UTC+2");
        assert_eq!(utc_offset(-300.0), "UTC\u{2212}5");
        assert_eq!(utc_offset(330.0), "UTC+5:30");
        assert_eq!(utc_offset(0.0), "UTC");
    }
}
