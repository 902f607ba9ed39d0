//! The sun among the stars: a kernel on bare numbers.

use super::wrap_180;
use crate::physics::weather::date::Moment;

/// Terrestrial time less universal time, seconds.
///
/// One number for all years: it was -3 s in 1900 and may be 200 s by 2100, and
/// the sun drifts only 0.0015 degrees along its path in 130 s. 69 s is that of
/// the 2020s (IERS Bulletin A).
const DELTA_T_S: f64 = 69.0;

/// Geocentric apparent place of the sun, and the earth's turning.
pub(super) struct Ephemeris {
    pub right_ascension_deg: f64,
    pub declination_deg: f64,
    /// Apparent sidereal time at Greenwich.
    pub sidereal_deg: f64,
    pub equation_of_time_min: f64,
    pub distance_au: f64,
}

impl Ephemeris {
    /// The sun's place at a moment. Meeus, *Astronomical Algorithms*, 2nd ed.
    pub fn at(moment: Moment) -> Self {
        let days = moment.days_since_j2000();
        let t = (days + DELTA_T_S / 86_400.0) / 36_525.0;
        let mean_longitude = 280.466_46 + t * (36_000.769_83 + t * 0.000_303_2); // 25.2
        let (true_longitude, distance_au) = orbit(t, mean_longitude);

        // The largest term of nutation, in longitude and in obliquity
        // (chapter 25, from the moon's node), and aberration, 0.00569.
        let (sin_node, cos_node) = (125.04 - 1_934.136 * t).to_radians().sin_cos();
        let nutation = -0.004_78 * sin_node;
        let longitude = (true_longitude - 0.005_69 + nutation).to_radians();
        let obliquity = (23.439_291 - 0.013_004_2 * t + 0.002_56 * cos_node).to_radians(); // 22.2, 25.8

        let right_ascension_deg = (obliquity.cos() * longitude.sin()) // 25.6
            .atan2(longitude.cos())
            .to_degrees();
        let declination_deg = (obliquity.sin() * longitude.sin()).asin().to_degrees(); // 25.7

        let nutation_ra = nutation * obliquity.cos();
        let sidereal_deg = 280.460_618_37 // 12.4
            + 360.985_647_366_29 * days
            + 0.000_387_933 * (days / 36_525.0).powi(2)
            + nutation_ra;
        let sundial_lead_deg =
            wrap_180(mean_longitude - 0.005_718_3 - right_ascension_deg + nutation_ra); // 28.1
        Self {
            right_ascension_deg,
            declination_deg,
            sidereal_deg,
            equation_of_time_min: 4.0 * sundial_lead_deg,
            distance_au,
        }
    }
}

/// True longitude in degrees and distance in astronomical units, from the mean
/// longitude by the equation of centre. Meeus, equations 25.3 to 25.5.
fn orbit(t: f64, mean_longitude_deg: f64) -> (f64, f64) {
    let anomaly_deg = 357.529_11 + t * (35_999.050_29 - t * 0.000_153_7);
    let anomaly = anomaly_deg.to_radians();
    let eccentricity = 0.016_708_634 - t * (0.000_042_037 + t * 0.000_000_126_7);
    let centre_deg = (1.914_602 - t * (0.004_817 + t * 0.000_014)) * anomaly.sin()
        + (0.019_993 - 0.000_101 * t) * (2.0 * anomaly).sin()
        + 0.000_289 * (3.0 * anomaly).sin();
    let true_anomaly = (anomaly_deg + centre_deg).to_radians();
    let distance_au = 1.000_001_018 * (1.0 - eccentricity * eccentricity)
        / (1.0 + eccentricity * true_anomaly.cos());
    (mean_longitude_deg + centre_deg, distance_au)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::weather::date::Date;

    /// Meeus, example 25.a: 13 October 1992, 0 h TD. The low-accuracy method
    /// prints right ascension 198.38083, declination -7.78507, R 0.99766.
    #[test]
    fn example_25a() {
        let date = Date::new(1992, 10, 13).unwrap();
        let moment = Moment::from_utc(date, -DELTA_T_S / 3_600.0).unwrap();
        let sun = Ephemeris::at(moment);
        let right_ascension = sun.right_ascension_deg.rem_euclid(360.0);
        assert!((right_ascension - 198.380_83).abs() < 1e-4);
        assert!((sun.declination_deg + 7.785_07).abs() < 1e-4);
        assert!((sun.distance_au - 0.997_66).abs() < 1e-5);
    }

    /// Meeus, example 28.a: equation of time on that date, 13 min 42.6 s.
    #[test]
    fn example_28a() {
        let date = Date::new(1992, 10, 13).unwrap();
        let sun = Ephemeris::at(Moment::from_utc(date, 0.0).unwrap());
        assert!((sun.equation_of_time_min - (13.0 + 42.6 / 60.0)).abs() < 0.01);
    }
}
