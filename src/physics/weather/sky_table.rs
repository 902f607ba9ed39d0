//! The sky tabulated every five minutes, to be read in a hot loop.

use super::clear_sky::{Irradiance, Sky, extraterrestrial_w_m2, split};
use super::date::{Date, Moment};
use super::file::HourlyWeather;
use super::site::Site;
use super::sun::position;
use super::{Input, OutOfRange, within};

/// Rows an hour.
const ROWS_PER_HOUR: u16 = 12;

/// Longest span, hours: two weeks.
const MOST_HOURS: f64 = 336.0;

/// Where the sun is and how it shines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SkyMoment {
    /// Unit vector to the sun as seen through the air: east, north, up.
    pub sun: [f64; 3],
    /// Irradiance outside the air on a plane facing the sun, W/m2.
    pub extraterrestrial_w_m2: f64,
    /// Irradiance on the ground.
    pub irradiance: Irradiance,
}

/// A span of sky in five-minute rows.
#[derive(Debug, Clone, PartialEq)]
pub struct SkyTable {
    /// Never empty.
    rows: Vec<SkyMoment>,
}

impl SkyTable {
    /// The sky over a site from a moment on, by the clear-sky model and cloud.
    ///
    /// - `hours`: 0 to 336
    ///
    /// # Errors
    /// Hours out of range.
    pub fn modelled(site: &Site, sky: &Sky, start: Moment, hours: f64) -> Result<Self, OutOfRange> {
        let rows = row_hours(hours)?.map(|after_h| {
            let seen = Seen::at(site, start.shifted(after_h));
            let irradiance = sky.irradiance(
                seen.elevation_deg,
                seen.extraterrestrial_w_m2,
                site.altitude_m(),
                site.pressure_pa(),
            );
            seen.shining(irradiance)
        });
        Ok(Self {
            rows: rows.collect(),
        })
    }

    /// The sky of an hourly file from one of its hours on, round to its start
    /// again where it ends.
    ///
    /// Each hour's mean beam and diffuse hold through the hour while the sun
    /// moves on; global is put together from them anew, so it bends within the
    /// hour and keeps the hour's sum about as well as the file closes. A file
    /// with global alone is split by [`split`] at mid-hour.
    ///
    /// - `first_date`: the date of hour 0 for files without dates; others use their own
    /// - `utc_offset_h`: of the file's clock
    /// - `first_hour`: 0 to the file's last
    /// - `hours`: 0 to 336
    ///
    /// # Errors
    /// Hours, offset or first hour out of range.
    pub fn from_file(
        weather: &HourlyWeather,
        site: &Site,
        first_date: Date,
        utc_offset_h: f64,
        first_hour: usize,
        hours: f64,
    ) -> Result<Self, OutOfRange> {
        let count = weather.hours().len();
        #[expect(clippy::cast_precision_loss, reason = "some thousands at most")]
        within(
            Input::FirstHour,
            first_hour as f64,
            0.0,
            count.saturating_sub(1) as f64,
        )?;
        let rows: Result<Vec<_>, _> = row_hours(hours)?
            .map(|after_h| {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "0 to 336"
                )]
                let index = (first_hour + after_h as usize) % count;
                let start = weather.hour_start(index, first_date, utc_offset_h)?;
                let middle = Seen::at(site, start.shifted(0.5));
                let mean = weather.hours()[index].irradiance;
                let parts = mean.parts().unwrap_or_else(|| {
                    split(mean.ghi_w_m2, middle.sun[2], middle.extraterrestrial_w_m2)
                });
                let seen = Seen::at(site, start.shifted(after_h.fract()));
                Ok(seen.shining(seen.hour_mean_now(parts)))
            })
            .collect();
        Ok(Self { rows: rows? })
    }

    /// The sky so many hours after the table's start, between rows by straight
    /// lines; before the start and past the end it stays as it was there.
    ///
    /// Not-a-number reads as the start.
    #[must_use]
    pub fn at(&self, hours_after_start: f64) -> SkyMoment {
        let last = self.rows.len() - 1;
        #[expect(clippy::cast_precision_loss, reason = "4,033 rows at most")]
        let row = (hours_after_start.max(0.0) * f64::from(ROWS_PER_HOUR)).min(last as f64);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "0 to last"
        )]
        let (index, share) = (row as usize, row.fract());
        between(&self.rows[index], &self.rows[(index + 1).min(last)], share)
    }

    /// The rows, five minutes apart.
    #[must_use]
    pub fn rows(&self) -> &[SkyMoment] {
        &self.rows
    }
}

/// Hours after the start of each row; one row past the last full step.
fn row_hours(hours: f64) -> Result<impl Iterator<Item = f64>, OutOfRange> {
    let hours = within(Input::Hours, hours, 0.0, MOST_HOURS)?;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "at most 4,032"
    )]
    let steps = (hours * f64::from(ROWS_PER_HOUR)).ceil() as u16;
    Ok((0..=steps).map(|row| f64::from(row) / f64::from(ROWS_PER_HOUR)))
}

/// A share of the way from one row to the next. The chord between two
/// directions 1.25 degrees apart is brought back to unit length.
fn between(from: &SkyMoment, to: &SkyMoment, share: f64) -> SkyMoment {
    let mix = |a: f64, b: f64| a + share * (b - a);
    let sun = [0, 1, 2].map(|axis| mix(from.sun[axis], to.sun[axis]));
    let length = sun.iter().map(|part| part * part).sum::<f64>().sqrt();
    let (a, b) = (from.irradiance, to.irradiance);
    SkyMoment {
        sun: sun.map(|part| part / length),
        extraterrestrial_w_m2: mix(from.extraterrestrial_w_m2, to.extraterrestrial_w_m2),
        irradiance: Irradiance {
            ghi_w_m2: mix(a.ghi_w_m2, b.ghi_w_m2),
            dni_w_m2: mix(a.dni_w_m2, b.dni_w_m2),
            dhi_w_m2: mix(a.dhi_w_m2, b.dhi_w_m2),
        },
    }
}

/// The sun as seen through the air.
struct Seen {
    elevation_deg: f64,
    sun: [f64; 3],
    extraterrestrial_w_m2: f64,
}

impl Seen {
    fn at(site: &Site, moment: Moment) -> Self {
        let sun = position(site, moment);
        let elevation_deg = sun.apparent_elevation_deg(site);
        let (up, level) = elevation_deg.to_radians().sin_cos();
        let (east, north) = sun.azimuth_deg.to_radians().sin_cos();
        Self {
            elevation_deg,
            sun: [level * east, level * north, up],
            extraterrestrial_w_m2: extraterrestrial_w_m2(sun.distance_au),
        }
    }

    /// An hour's mean beam and diffuse under the sun of this moment.
    fn hour_mean_now(&self, mean: Irradiance) -> Irradiance {
        let dni_w_m2 = if self.sun[2] > 0.0 {
            mean.dni_w_m2
        } else {
            0.0
        };
        Irradiance {
            ghi_w_m2: dni_w_m2 * self.sun[2] + mean.dhi_w_m2,
            dni_w_m2,
            dhi_w_m2: mean.dhi_w_m2,
        }
    }

    fn shining(&self, irradiance: Irradiance) -> SkyMoment {
        SkyMoment {
            sun: self.sun,
            extraterrestrial_w_m2: self.extraterrestrial_w_m2,
            irradiance,
        }
    }
}
