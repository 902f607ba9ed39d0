//! Sun and weather over the days, step by step.
//!
//! Where the sun stands depends on place and date alone and is worked out once
//! ([`SolarTable`]); how strongly it shines and how warm the air is depends on
//! figures that have a spread and is worked out for each run ([`Air`]).

use super::outdoors::{Air, SunShare, Weather};
use crate::{
    physics::cabin::Figures,
    physics::solar::{
        self, Array,
        plane::{Light, Plane, SkyModel, Sun},
    },
    physics::weather::{
        clear_sky::{Irradiance, Sky, extraterrestrial_w_m2, split},
        date::{Date, Moment},
        site::Site,
        sun::position,
    },
    plan::day::Imported,
    quantity::celsius,
};

/// Steps an hour: the coefficients of cabin, unit and bank stay through a step.
pub const STEPS_PER_HOUR: usize = 6;
/// The same for drawn days, whose curves are bands: a step of 20 minutes
/// describes the swing of a day to 0.01 K.
pub const COARSE_STEPS_PER_HOUR: usize = 3;

/// The sun at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
struct SunRow {
    /// Unit vector to the sun: east, north, up.
    parts: [f64; 3],
    apparent_elevation_deg: f64,
    outside_w_m2: f64,
}

/// Imported hours, taken apart.
#[derive(Clone, Debug, PartialEq)]
struct Hours {
    outdoor_c: Vec<f64>,
    dew_point_c: Vec<f64>,
    /// Mean beam and diffuse of each hour.
    parts: Vec<Irradiance>,
}

/// The sun and what else no figure changes, a row at each edge of the steps.
#[derive(Clone, Debug, PartialEq)]
pub struct SolarTable {
    site: Site,
    rows: Vec<SunRow>,
    steps_per_hour: usize,
    /// Clock hours at the first row.
    start_h: f64,
    /// Hours by which the clock is put forward.
    forward_h: f64,
    hours: Option<Hours>,
    walls: [Plane; 4],
}

/// A clock that is further ahead of the sun than this is taken to be put
/// forward by an hour, which the table of day temperatures does not know.
const FORWARD_H: f64 = 0.75;

/// Sine of 3 degrees: below this sun no direct light is worked out from others.
const LOW_SUN_SINE: f64 = 0.052_335_956;

/// What is asked of the heavens.
pub struct Where<'a> {
    /// Latitude, longitude and altitude.
    pub site: Site,
    /// The first day, by the clock.
    pub date: Date,
    /// Clock less UTC, h.
    pub utc_offset_h: f64,
    /// Clock hours at which the days start, 0 to below 24.
    pub start_h: f64,
    /// Length of the days, h.
    pub span_h: f64,
    /// [`STEPS_PER_HOUR`] or [`COARSE_STEPS_PER_HOUR`].
    pub steps_per_hour: usize,
    /// Hours of a weather file, if imported.
    pub imported: Option<&'a Imported>,
}

impl SolarTable {
    /// The sun over a span; nothing where the date or place is out of range.
    pub fn new(at: &Where) -> Option<Self> {
        let midnight = Moment::from_local(at.date, 0.0, at.utc_offset_h).ok()?;
        let per_hour = at.steps_per_hour;
        let steps = (at.span_h * per_hour as f64).round() as usize;
        let rows = (0..=steps)
            .map(|step| {
                let after_h = at.start_h + step as f64 / per_hour as f64;
                SunRow::at(&at.site, midnight.plus_hours(after_h).ok()?)
            })
            .collect::<Option<Vec<_>>>()?;
        let ahead_h = at.utc_offset_h - at.site.longitude_deg() / 15.0;
        let wall = |azimuth_deg| Plane::new(90.0, azimuth_deg).ok();
        Some(Self {
            site: at.site,
            rows,
            steps_per_hour: per_hour,
            start_h: at.start_h,
            forward_h: if ahead_h > FORWARD_H { 1.0 } else { 0.0 },
            hours: at
                .imported
                .and_then(|imported| Hours::new(at, imported, midnight)),
            walls: [wall(0.0)?, wall(90.0)?, wall(180.0)?, wall(270.0)?],
        })
    }

    /// Hours from the start to a row.
    fn hours(&self, row: usize) -> f64 {
        row as f64 / self.steps_per_hour as f64
    }

    /// Steps an hour.
    #[must_use]
    pub fn steps_per_hour(&self) -> usize {
        self.steps_per_hour
    }

    /// How many steps the span has.
    #[must_use]
    pub fn steps(&self) -> usize {
        self.rows.len() - 1
    }

    /// The site's mean air pressure, Pa.
    #[must_use]
    pub fn pressure_pa(&self) -> f64 {
        self.site.pressure_pa()
    }

    /// Irradiance on the ground at a row.
    ///
    /// Of imported hours the means of the hour, repeated after their last; without direct
    /// light while the sun is down.
    fn irradiance(&self, row: usize, sky: &Sky) -> Irradiance {
        let sun = &self.rows[row];
        let Some(hours) = &self.hours else {
            return sky.irradiance(
                sun.apparent_elevation_deg,
                sun.outside_w_m2,
                self.site.altitude_m(),
                self.site.pressure_pa(),
            );
        };
        let clock_h = self.start_h + self.hours(row);
        let mean = hours.parts[clock_h as usize % hours.parts.len()];
        let dni_w_m2 = if sun.parts[2] > 0.0 {
            mean.dni_w_m2
        } else {
            0.0
        };
        Irradiance {
            ghi_w_m2: dni_w_m2 * sun.parts[2].max(0.0) + mean.dhi_w_m2,
            dni_w_m2,
            dhi_w_m2: mean.dhi_w_m2,
        }
    }

    /// Air outdoors at a row: dry bulb and dew point.
    fn outdoors_c(&self, row: usize, weather: &Weather) -> (f64, f64) {
        let clock_h = self.start_h + self.hours(row);
        match &self.hours {
            Some(hours) => {
                let air_c = between_middles(&hours.outdoor_c, clock_h) + weather.warmer_k;
                let dew_c = if hours.dew_point_c.is_empty() {
                    weather.dew_point_c
                } else {
                    between_middles(&hours.dew_point_c, clock_h)
                };
                (air_c, dew_c.min(air_c))
            }
            None => {
                let air_c = weather.profile.temperature_c(clock_h - self.forward_h);
                (air_c, weather.dew_point_c.min(air_c))
            }
        }
    }

    /// Weather, and what panels and cabin get of it, at every step.
    ///
    /// One for each edge of the steps, so one more than [`Self::steps`]. `array` absent: no
    /// panels.
    #[must_use]
    pub fn air(&self, weather: &Weather, array: Option<&Array>, figures: &Figures) -> Vec<Air> {
        let gains = SunShare::of(figures);
        (0..self.rows.len())
            .map(|row| self.air_at(row, weather, array, &gains))
            .collect()
    }

    /// Walls stand to the four quarters of the sky and share their light: which way the
    /// vehicle is parked, nobody says.
    fn air_at(
        &self,
        row: usize,
        weather: &Weather,
        array: Option<&Array>,
        gains: &SunShare,
    ) -> Air {
        let (outdoor_c, dew_c) = self.outdoors_c(row, weather);
        let mut air = Air {
            outdoor_c,
            outdoor_ratio: weather.ratio(self.pressure_pa(), dew_c, outdoor_c),
            global_w_m2: 0.0,
            sun_glass_w: 0.0,
            sun_shell_w: gains.dark_shell_w,
            offer: solar::Offer {
                power: crate::quantity::watts(0.0),
                cell: celsius(outdoor_c),
                warmth_factor: 1.0,
            },
        };
        let shine = self.irradiance(row, &weather.sky);
        let sun = &self.rows[row];
        let lights = Light::new(
            shine.ghi_w_m2,
            shine.dni_w_m2,
            shine.dhi_w_m2,
            sun.outside_w_m2,
        );
        let (true, Ok(light), Ok(direction)) =
            (shine.ghi_w_m2 > 0.0, lights, Sun::from_parts(sun.parts))
        else {
            return air;
        };
        let on_walls = self.walls.iter().map(|wall| {
            wall.light(&direction, &light, weather.albedo, SkyModel::HayDavies)
                .total_w_m2()
        });
        let wall_w_m2 = on_walls.sum::<f64>() / 4.0;
        air.global_w_m2 = shine.ghi_w_m2;
        air.sun_glass_w = gains.glass_w(shine.ghi_w_m2, wall_w_m2);
        air.sun_shell_w = gains.shell_w(shine.ghi_w_m2, wall_w_m2);
        if let (Some(array), Ok(over)) =
            (array, solar::Air::new(celsius(outdoor_c), weather.wind_m_s))
        {
            air.offer = array.offer(&direction, &light, &over);
        }
        air
    }
}

impl SunRow {
    fn at(site: &Site, moment: Moment) -> Option<Self> {
        let sun = position(site, moment);
        let elevation_deg = sun.apparent_elevation_deg(site);
        let (up, level) = elevation_deg.to_radians().sin_cos();
        let (east, north) = sun.azimuth_deg.to_radians().sin_cos();
        Some(Self {
            parts: [level * east, level * north, up],
            apparent_elevation_deg: elevation_deg,
            outside_w_m2: extraterrestrial_w_m2(sun.distance_au),
        })
    }
}

impl Hours {
    /// Nothing where there are no hours, or lists of unlike length.
    fn new(at: &Where, imported: &Imported, midnight: Moment) -> Option<Self> {
        let parts = (0..imported.global_w_m2.len())
            .map(|hour| {
                let middle = midnight.plus_hours(hour as f64 + 0.5).ok()?;
                let sun = SunRow::at(&at.site, middle)?;
                Some(sun_parts(imported, hour, &sun))
            })
            .collect::<Option<Vec<_>>>()?;
        (!parts.is_empty() && imported.outdoor_c.len() == parts.len()).then(|| Self {
            outdoor_c: imported.outdoor_c.clone(),
            dew_point_c: imported.dew_point_c.clone(),
            parts,
        })
    }
}

/// Direct and diffuse sun of an imported hour: the file's own where it has them;
/// of one of them and the total the other, by the sun in the middle of the hour
/// (global is direct times the sine of the sun's height, plus diffuse); of the
/// total alone by [`split`].
fn sun_parts(imported: &Imported, hour: usize, sun: &SunRow) -> Irradiance {
    let ghi_w_m2 = imported.global_w_m2[hour];
    let sin_elevation = sun.parts[2];
    let part = |values: &[f64]| values.get(hour).copied();
    let (dni_w_m2, dhi_w_m2) = match (part(&imported.direct_w_m2), part(&imported.diffuse_w_m2)) {
        (Some(dni), Some(dhi)) => (dni, dhi),
        (Some(dni), None) => {
            let level = dni * sin_elevation.max(0.0);
            (dni, (ghi_w_m2 - level).max(0.0))
        }
        // A low sun would make much direct light of little: none is taken there,
        // as the split does.
        (None, Some(dhi)) if sin_elevation > LOW_SUN_SINE => {
            let dni = (ghi_w_m2 - dhi).max(0.0) / sin_elevation;
            (dni.min(sun.outside_w_m2), dhi)
        }
        (None, Some(_)) => (0.0, ghi_w_m2),
        (None, None) => return split(ghi_w_m2, sin_elevation, sun.outside_w_m2),
    };
    Irradiance {
        ghi_w_m2,
        dni_w_m2,
        dhi_w_m2,
    }
}

/// Between values that stand in the middle of their hours; round to the start
/// where they end.
fn between_middles(values: &[f64], clock_h: f64) -> f64 {
    let count = values.len();
    let at_h = clock_h - 0.5 + count as f64;
    let hour = at_h as usize;
    let (from, to) = (values[hour % count], values[(hour + 1) % count]);
    from + at_h.fract() * (to - from)
}

#[cfg(test)]
mod tests;
