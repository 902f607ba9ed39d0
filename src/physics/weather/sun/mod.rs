//! Where the sun stands, to 0.03 degrees or better.
//!
//! [`position`] gives the sun as seen from a site without the air's bending;
//! [`SunPosition::apparent_elevation_deg`] adds that. [`events`] finds rise,
//! transit and set.

mod ephemeris;
pub mod events;

use super::date::Moment;
use super::site::Site;
use ephemeris::Ephemeris;

/// The sun as seen from a site.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// Height of the sun's centre above the horizon, degrees, without
    /// refraction; negative at night.
    pub elevation_deg: f64,
    /// Compass bearing, degrees clockwise from true north, 0 to 360.
    pub azimuth_deg: f64,
    /// Declination, degrees.
    pub declination_deg: f64,
    /// Hour angle, degrees, -180 to 180, west (afternoon) positive.
    pub hour_angle_deg: f64,
    /// Sundial time less mean time, minutes.
    pub equation_of_time_min: f64,
    /// Distance from the earth, astronomical units.
    pub distance_au: f64,
}

impl SunPosition {
    /// Elevation with the air's bending added, degrees, for 12 degrees Celsius
    /// and the site's mean pressure.
    #[must_use]
    pub fn apparent_elevation_deg(&self, site: &Site) -> f64 {
        self.elevation_deg + refraction_deg(self.elevation_deg, site.pressure_pa() / 100.0, 12.0)
    }
}

/// The sun as seen from a site at a moment.
///
/// Good to 0.01 degrees over 1900 to 2100: three terms of the equation of
/// centre, the largest of nutation, aberration and the sun's own parallax.
///
/// Source: Meeus, *Astronomical Algorithms*, 2nd ed., chapters 12, 13, 25, 28
/// and 40 (the parallax in elevation, 8.794 arc seconds at the horizon).
#[must_use]
pub fn position(site: &Site, at: Moment) -> SunPosition {
    let sun = Ephemeris::at(at);
    let hour_angle_deg =
        wrap_180(sun.sidereal_deg + site.longitude_deg() - sun.right_ascension_deg);
    let (geocentric_deg, azimuth_deg) =
        horizon_angles(site.latitude_deg(), sun.declination_deg, hour_angle_deg);
    let parallax_deg = 8.794 / 3_600.0 * geocentric_deg.to_radians().cos() / sun.distance_au;
    SunPosition {
        elevation_deg: geocentric_deg - parallax_deg,
        azimuth_deg,
        declination_deg: sun.declination_deg,
        hour_angle_deg,
        equation_of_time_min: sun.equation_of_time_min,
        distance_au: sun.distance_au,
    }
}

/// Elevation and azimuth (clockwise from north), degrees, of a body at a
/// declination and hour angle seen from a latitude; all degrees.
///
/// By components east, north and up, so that neither zenith nor pole divides
/// by zero. Source: Meeus, equations 13.5 and 13.6.
#[must_use]
pub fn horizon_angles(latitude_deg: f64, declination_deg: f64, hour_angle_deg: f64) -> (f64, f64) {
    let (sin_lat, cos_lat) = latitude_deg.to_radians().sin_cos();
    let (sin_dec, cos_dec) = declination_deg.to_radians().sin_cos();
    let (sin_hour, cos_hour) = hour_angle_deg.to_radians().sin_cos();
    let east = -cos_dec * sin_hour;
    let north = sin_dec * cos_lat - cos_dec * cos_hour * sin_lat;
    let up = sin_dec * sin_lat + cos_dec * cos_hour * cos_lat;
    let elevation = up.atan2(east.hypot(north)).to_degrees();
    (elevation, wrap_360(east.atan2(north).to_degrees()))
}

/// How far the air lifts the sun, degrees, at a true elevation.
///
/// Zero below -0.83 degrees, where the sun's upper edge is out of sight.
///
/// Source: Saemundsson's formula as used in Reda and Andreas, NREL/TP-560-34302
/// (2008), equation 42.
#[must_use]
pub fn refraction_deg(elevation_deg: f64, pressure_hpa: f64, air_c: f64) -> f64 {
    if elevation_deg < events::Horizon::SunEdge.elevation_deg() {
        return 0.0;
    }
    let bent = (elevation_deg + 10.3 / (elevation_deg + 5.11)).to_radians();
    pressure_hpa / 1_010.0 * 283.0 / (273.0 + air_c) * 1.02 / (60.0 * bent.tan())
}

/// An angle brought into -180 to 180.
fn wrap_180(deg: f64) -> f64 {
    (deg + 180.0).rem_euclid(360.0) - 180.0
}

/// An angle brought into 0 to 360.
fn wrap_360(deg: f64) -> f64 {
    deg.rem_euclid(360.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// At the pole the sun stands at its declination whatever the hour.
    #[test]
    fn pole_and_zenith_do_not_break() {
        let (elevation, _) = horizon_angles(90.0, 23.4, 77.0);
        assert!((elevation - 23.4).abs() < 1e-9);
        let (elevation, azimuth) = horizon_angles(10.0, 10.0, 0.0);
        assert!((elevation - 90.0).abs() < 1e-6 && azimuth.is_finite());
    }

    #[test]
    fn angles_wrap() {
        assert_eq!(wrap_180(190.0), -170.0);
        assert_eq!(wrap_360(-10.0), 350.0);
    }
}
