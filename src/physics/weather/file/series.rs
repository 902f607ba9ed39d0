//! Hours in a row: order checked, short gaps filled.

use super::error::{Fault, Field, FileError};
use super::{FilePlace, Format, LONGEST_GAP, Parsed, RawHour, Stamp};
use crate::physics::weather::OutOfRange;
use crate::physics::weather::date::{Date, Moment};
use crate::quantity::{ThermodynamicTemperature, celsius};

/// Mean irradiance over an hour, W/m2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HourMean {
    /// Global, on the horizontal.
    pub ghi_w_m2: f64,
    /// Beam, facing the sun, where the file has it.
    pub dni_w_m2: Option<f64>,
    /// Diffuse, on the horizontal, where the file has it.
    pub dhi_w_m2: Option<f64>,
}

/// One hour of weather.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeatherHour {
    /// Date of the stamp; `None` in plain tables.
    pub date: Option<Date>,
    /// Days from the file's first hour by its clock.
    pub day: u16,
    /// When the hour of irradiance begins, hours after midnight of that day by
    /// the file's clock; -1 to 24.
    pub start_h: f64,
    /// Air temperature at the stamp, degrees Celsius.
    pub temperature_c: f64,
    /// Dew point at the stamp, degrees Celsius.
    pub dew_point_c: Option<f64>,
    /// Wind at the stamp, m/s.
    pub wind_m_s: Option<f64>,
    /// Mean over the hour.
    pub irradiance: HourMean,
}

/// A file's hours, one after the other without gaps.
#[derive(Debug, Clone, PartialEq)]
pub struct HourlyWeather {
    format: Format,
    place: Option<FilePlace>,
    stamp: Stamp,
    hours: Vec<WeatherHour>,
    filled: usize,
}

impl HourlyWeather {
    /// Which kind of file it was.
    #[must_use]
    pub fn format(&self) -> Format {
        self.format
    }

    /// Where the file says it was taken.
    #[must_use]
    pub fn place(&self) -> Option<FilePlace> {
        self.place
    }

    /// The hours; at least one.
    #[must_use]
    pub fn hours(&self) -> &[WeatherHour] {
        &self.hours
    }

    /// How many missing values were filled by straight lines.
    #[must_use]
    pub fn filled(&self) -> usize {
        self.filled
    }

    /// The moment an hour of irradiance begins; an index past the end reads as
    /// the last hour.
    ///
    /// - `first_date`: for plain tables, which hold no dates
    /// - `utc_offset_h`: of the file's clock
    ///
    /// # Errors
    /// Offset out of range, or a plain table that runs past 2100.
    pub fn hour_start(
        &self,
        index: usize,
        first_date: Date,
        utc_offset_h: f64,
    ) -> Result<Moment, OutOfRange> {
        let hour = &self.hours[index.min(self.hours.len() - 1)];
        let date = match hour.date {
            Some(date) => date,
            None => first_date.plus_days(hour.day)?,
        };
        Moment::from_local(date, hour.start_h, utc_offset_h)
    }

    /// Air temperature so many hours after the start of an hour, by straight
    /// lines between stamps; the ends hold on past the file.
    #[must_use]
    pub fn temperature(&self, first_hour: usize, after_h: f64) -> ThermodynamicTemperature {
        celsius(self.between_stamps(first_hour, after_h, |hour| hour.temperature_c))
    }

    /// As [`Self::temperature`], for the dew point; `None` if the file has none.
    #[must_use]
    pub fn dew_point(&self, first_hour: usize, after_h: f64) -> Option<ThermodynamicTemperature> {
        self.hours[0].dew_point_c?;
        let dew = |hour: &WeatherHour| hour.dew_point_c.unwrap_or(hour.temperature_c);
        Some(celsius(self.between_stamps(first_hour, after_h, dew)))
    }

    fn between_stamps(
        &self,
        first_hour: usize,
        after_h: f64,
        value: impl Fn(&WeatherHour) -> f64,
    ) -> f64 {
        let last = self.hours.len() - 1;
        #[expect(clippy::cast_precision_loss, reason = "some thousands at most")]
        let at = (first_hour as f64 + after_h - self.stamp.lag_h())
            .max(0.0)
            .min(last as f64);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "0 to last"
        )]
        let index = at as usize;
        let (from, to) = (
            value(&self.hours[index]),
            value(&self.hours[(index + 1).min(last)]),
        );
        from + at.fract() * (to - from)
    }
}

/// Checks a file's hours as a series and fills short gaps.
pub(super) fn assemble(parsed: Parsed) -> Result<HourlyWeather, FileError> {
    let raw = &parsed.hours;
    if raw.is_empty() {
        return Err(FileError::whole(Fault::NoHours));
    }
    let days = days_in_order(raw)?;
    let mut filled = 0;
    let mut series = |field: Field, value: fn(&RawHour) -> Option<f64>| {
        let (values, count) = fill(raw, field, value)?;
        filled += count;
        Ok::<_, FileError>(values)
    };
    let needed = |values: Option<Vec<f64>>, field| {
        values.ok_or_else(|| FileError::whole(Fault::Missing(field)))
    };
    let temperature = needed(
        series(Field::Temperature, |hour| hour.temperature_c)?,
        Field::Temperature,
    )?;
    let ghi = needed(series(Field::Global, |hour| hour.ghi_w_m2)?, Field::Global)?;
    let dew_point = series(Field::DewPoint, |hour| hour.dew_point_c)?;
    let wind = series(Field::Wind, |hour| hour.wind_m_s)?;
    let dni = series(Field::Beam, |hour| hour.dni_w_m2)?;
    let dhi = series(Field::Diffuse, |hour| hour.dhi_w_m2)?;

    let lag_h = parsed.stamp.lag_h();
    let at = |values: &Option<Vec<f64>>, index: usize| values.as_ref().map(|it| it[index]);
    let hours = raw
        .iter()
        .zip(days)
        .enumerate()
        .map(|(i, (hour, day))| WeatherHour {
            date: hour.date,
            day,
            start_h: hour.stamp_h - lag_h,
            temperature_c: temperature[i],
            dew_point_c: at(&dew_point, i),
            wind_m_s: at(&wind, i),
            irradiance: HourMean {
                ghi_w_m2: ghi[i],
                dni_w_m2: at(&dni, i),
                dhi_w_m2: at(&dhi, i),
            },
        });
    Ok(HourlyWeather {
        format: parsed.format,
        place: parsed.place,
        stamp: parsed.stamp,
        hours: hours.collect(),
        filled,
    })
}

/// Each hour's day from the first, once each is an hour after the last.
///
/// Dates need not run on: a typical year is put together from months of many
/// years. They only must change when, and no sooner than, the hours start anew.
fn days_in_order(raw: &[RawHour]) -> Result<Vec<u16>, FileError> {
    let mut day = 0_u16;
    let mut days = vec![0];
    for pair in raw.windows(2) {
        let (before, now) = (&pair[0], &pair[1]);
        let step_h = now.stamp_h - before.stamp_h;
        let new_day = step_h < 0.0;
        let an_hour_on = (step_h.rem_euclid(24.0) - 1.0).abs() < 1e-6;
        let dates_agree = now.date.is_none() || (now.date != before.date) == new_day;
        if !(an_hour_on && dates_agree) {
            return Err(FileError::at(now.line, None, Fault::NotTheNextHour));
        }
        day += u16::from(new_day);
        days.push(day);
    }
    Ok(days)
}

/// One column with its short gaps filled, and how many values that took; `None`
/// if the whole column is missing.
fn fill(
    raw: &[RawHour],
    field: Field,
    value: fn(&RawHour) -> Option<f64>,
) -> Result<(Option<Vec<f64>>, usize), FileError> {
    if raw.iter().all(|hour| value(hour).is_none()) {
        return Ok((None, 0));
    }
    let mut values: Vec<f64> = Vec::with_capacity(raw.len());
    let mut filled = 0;
    while values.len() < raw.len() {
        let start = values.len();
        if let Some(here) = value(&raw[start]) {
            values.push(here);
            continue;
        }
        let gap = raw[start..]
            .iter()
            .take_while(|hour| value(hour).is_none())
            .count();
        if gap > LONGEST_GAP {
            return Err(FileError::at(raw[start].line, None, Fault::LongGap(field)));
        }
        let after = raw.get(start + gap).and_then(value);
        let before = values.last().copied();
        // At an end of the file the one neighbour stands for both.
        let (Some(from), Some(to)) = (before.or(after), after.or(before)) else {
            return Ok((None, 0));
        };
        #[expect(clippy::cast_precision_loss, reason = "three at most")]
        values.extend((1..=gap).map(|step| from + (to - from) * step as f64 / (gap + 1) as f64));
        filled += gap;
    }
    Ok((Some(values), filled))
}
