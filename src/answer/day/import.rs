//! Hours of a weather file into a plan: whole days from a midnight on.
//!
//! A year is too long for a plan, and nobody asks for one: a stretch of as many
//! days as the plan covers is taken, the hottest of the file or that of the
//! plan's date. Place, clock and date come along where the file has them.
//!
//! ```
//! use till_morning::{answer::day::import::{Stamp, Stretch, read}, plan::Plan};
//! let mut table = String::from("hour,temperature,irradiance\n");
//! for hour in 0..24 {
//!     table += &format!("{hour},{},{}\n", 20 + hour / 2, if hour > 5 { 500 } else { 0 });
//! }
//! let file = read(table.as_bytes(), Stamp::StartOfHour).unwrap();
//! let (plan, taken) = file.taken_into(&Plan::demo(), Stretch::Hottest);
//! assert_eq!(plan.day.imported.outdoor_c.len(), 24);
//! assert_eq!((taken.low_c, taken.high_c), (20.0, 31.0));
//! ```

pub use crate::physics::weather::file::{Fault, Field, FileError, Format, MOST_BYTES, Stamp};

use crate::{
    physics::weather::file::{self, HourMean, HourlyWeather},
    plan::{
        Figure, Path, Plan,
        check::MOST_IMPORTED,
        day::{DayField as D, SunParts},
    },
    quantity::in_celsius,
    range::{self, Range},
};

const DAY: usize = 24;

/// One of an hour's three irradiances, if the file has it.
type SunPart = fn(&HourMean) -> Option<f64>;

/// Why a file gives no hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// The file itself: its first fault.
    File(FileError),
    /// Less than a whole day; how many hours there are.
    TooShort { hours: usize },
}

/// Which days of a file are taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stretch {
    /// The warmest by their mean.
    Hottest,
    /// From the plan's date on, whatever the year; the hottest where the file has
    /// it not.
    PlanDate,
}

/// What was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken {
    /// What kind of file it was.
    pub format: Format,
    /// Hours in the whole file.
    pub file_hours: usize,
    /// Whole days that were taken.
    pub days: usize,
    /// Year, month and day of the first; absent in plain tables.
    pub date: Option<(i32, u8, u8)>,
    /// Lowest temperature of these days.
    pub low_c: f64,
    /// The highest.
    pub high_c: f64,
    /// Missing values filled by straight lines, in the whole file.
    pub filled: usize,
    /// Where direct and diffuse sun come from.
    pub sun_parts: SunParts,
    /// Whether place and clock were taken from the file.
    pub has_place: bool,
    /// The plan's date was asked for and is not in the file.
    pub is_other_date: bool,
}

/// A file that has been read.
#[derive(Clone, Debug, PartialEq)]
pub struct WeatherFile {
    weather: HourlyWeather,
    whole_days: usize,
}

/// Reads a file of any of the formats; `stamp` says what the hours of a plain
/// table mean.
///
/// # Errors
/// The first fault, by line and column where it has them, or too few hours.
pub fn read(bytes: &[u8], stamp: Stamp) -> Result<WeatherFile, Refusal> {
    let weather = file::read(bytes, stamp).map_err(Refusal::File)?;
    let hours = weather.hours().len();
    if hours < DAY {
        return Err(Refusal::TooShort { hours });
    }
    Ok(WeatherFile {
        whole_days: hours / DAY,
        weather,
    })
}

impl WeatherFile {
    /// The plan with a stretch of the file, and what was taken.
    ///
    /// As many days as the plan covers and one more, as far as the file and the plan's room for
    /// hours go. Values are kept in the plan's ranges and rounded to a tenth. High and low of
    /// the plan become those of the stretch; place, clock and date come along where the file
    /// has them.
    #[must_use]
    pub fn taken_into(&self, plan: &Plan, stretch: Stretch) -> (Plan, Taken) {
        let mut plan = plan.clone();
        let days = self.days_for(&plan);
        let of_plan = match stretch {
            Stretch::PlanDate => self.day_of_plan(&plan),
            Stretch::Hottest => None,
        };
        let first = of_plan.unwrap_or_else(|| self.hottest(days));
        let hours = || (0..days * DAY).map(|hour| self.at(first * DAY + hour));
        let held = |range: Range, value: f64| value.max(range.min).min(range.max);
        let sun = |part: SunPart| -> Vec<f64> {
            hours()
                .filter_map(|at| Some(tenth(held(range::GLOBAL_W_M2, self.sun_w_m2(at, part)?))))
                .collect()
        };
        let imported = &mut plan.day.imported;
        imported.outdoor_c = hours()
            .map(|at| tenth(held(range::OUTDOOR_C, self.temperature_c(at))))
            .collect();
        imported.global_w_m2 = sun(|mean| Some(mean.ghi_w_m2));
        imported.direct_w_m2 = sun(|mean| mean.dni_w_m2);
        imported.diffuse_w_m2 = sun(|mean| mean.dhi_w_m2);
        imported.dew_point_c = hours()
            .filter_map(|at| Some(tenth(held(range::DEW_POINT_C, self.dew_point_c(at)?))))
            .collect();
        let sun_parts = imported.sun_parts().unwrap_or(SunParts::Estimated);
        let warm = plan.day.imported.outdoor_c.iter();
        let (low_c, high_c) = warm.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &c| {
            (low.min(c), high.max(c))
        });
        plan.day.high_c = Some(Figure::measured(high_c));
        plan.day.low_c = Some(Figure::measured(low_c));
        let date = self.date_of(first);
        if let Some((year, month, day)) = date {
            // Casts saturate; a year before 1900 is none of these formats'.
            plan.day
                .set_date(year.unsigned_abs(), u32::from(month), u32::from(day));
        }
        let taken = Taken {
            format: self.weather.format(),
            file_hours: self.weather.hours().len(),
            days,
            date,
            low_c,
            high_c,
            filled: self.weather.filled(),
            sun_parts,
            has_place: self.place_into(&mut plan),
            is_other_date: stretch == Stretch::PlanDate && of_plan.is_none() && date.is_some(),
        };
        (plan, taken)
    }

    /// One day more than are asked for, since the first begins in the evening.
    fn days_for(&self, plan: &Plan) -> usize {
        let asked = plan.number(Path::Day(D::DaysCount)).unwrap_or(1.0) as usize;
        (asked + 1).min(MOST_IMPORTED / DAY).min(self.whole_days)
    }

    /// The first of so many days that are the warmest.
    fn hottest(&self, days: usize) -> usize {
        let sums: Vec<f64> = (0..self.whole_days)
            .map(|day| {
                let hours = (0..DAY).map(|hour| self.temperature_c(self.at(day * DAY + hour)));
                hours.sum()
            })
            .collect();
        let warmth = |first: usize| -> f64 { sums[first..first + days].iter().sum() };
        (0..=self.whole_days - days)
            .reduce(|best, first| {
                if warmth(first) > warmth(best) {
                    first
                } else {
                    best
                }
            })
            .unwrap_or(0)
    }

    /// By month and day; nothing where the file has no dates, or not that one.
    fn day_of_plan(&self, plan: &Plan) -> Option<usize> {
        let number = |field| plan.number(Path::Day(field));
        let (month, day) = (number(D::Month)?, number(D::DayOfMonth)?);
        (0..self.whole_days).find(|&at| {
            self.date_of(at)
                .is_some_and(|(_, m, d)| (f64::from(m), f64::from(d)) == (month, day))
        })
    }

    /// Of the file's days from its first midnight on.
    fn date_of(&self, day: usize) -> Option<(i32, u8, u8)> {
        let (index, _) = self.at(day * DAY + DAY / 2);
        Some(self.weather.hours()[index].date?.parts())
    }

    /// The file's hour in which a clock hour begins, and how far into it. A file
    /// that begins within a day is taken as going round.
    fn at(&self, clock_hour: usize) -> (usize, f64) {
        let round = self.whole_days * DAY;
        let from_first = clock_hour as f64 - self.weather.hours()[0].start_h + round as f64;
        let index = from_first.floor();
        (index as usize % round, from_first - index)
    }

    /// In the middle of a clock hour.
    fn temperature_c(&self, (index, into): (usize, f64)) -> f64 {
        in_celsius(self.weather.temperature(index, into + 0.5))
    }

    fn dew_point_c(&self, (index, into): (usize, f64)) -> Option<f64> {
        Some(in_celsius(self.weather.dew_point(index, into + 0.5)?))
    }

    /// Mean over a clock hour, of the two hours of the file that it lies in.
    fn sun_w_m2(&self, (index, into): (usize, f64), part: SunPart) -> Option<f64> {
        let mean = |index: usize| {
            let hours = self.weather.hours();
            part(&hours[index % hours.len()].irradiance)
        };
        Some((1.0 - into) * mean(index)? + into * mean(index + 1)?)
    }

    /// Place and clock into the plan, where the file says them.
    fn place_into(&self, plan: &mut Plan) -> bool {
        let Some(place) = self.weather.place() else {
            return false;
        };
        let altitude_m = Some(place.altitude_m);
        plan.day
            .set_place(place.latitude_deg, place.longitude_deg, altitude_m);
        plan.day.set_clock_behind_utc(-60.0 * place.utc_offset_h);
        true
    }
}

fn tenth(value: f64) -> f64 {
    (10.0 * value).round() / 10.0
}
