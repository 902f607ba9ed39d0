//! Dates and moments of the tables, and a clear day by the engine's own sun and sky.

// Each test file uses some of it.
#![allow(dead_code)]

use till_morning::physics::weather::clear_sky::{Irradiance, Sky, extraterrestrial_w_m2};
use till_morning::physics::weather::date::{Date, Moment};
use till_morning::physics::weather::site::Site;
use till_morning::physics::weather::sun::{SunPosition, position};

/// Within an absolute tolerance, saying of what if not.
#[track_caller]
pub fn close(got: f64, published: f64, tolerance: f64, what: &str) {
    let gap = (got - published).abs();
    assert!(gap <= tolerance, "{what}: {got} against {published}");
}

/// A date from `2025-03-20`.
pub fn date(text: &str) -> Date {
    let part = |range: std::ops::Range<usize>| text[range].parse::<u16>().unwrap();
    let small = |range| u8::try_from(part(range)).unwrap();
    Date::new(i32::from(part(0..4)), small(5..7), small(8..10)).unwrap()
}

/// A moment from `2025-03-20T13:00:00Z`.
pub fn utc(text: &str) -> Moment {
    let part = |range: std::ops::Range<usize>| text[range].parse::<f64>().unwrap();
    let hours = part(11..13) + part(14..16) / 60.0 + part(17..19) / 3_600.0;
    Moment::from_utc(date(text), hours).unwrap()
}

/// Sun, light outside the air and light on the ground.
pub type Now = (SunPosition, f64, Irradiance);

/// Moments of a day every five minutes.
pub const AN_HOUR: f64 = 12.0;

/// A clear day from midnight on, every five minutes.
pub fn clear_day(site: &Site, sky: &Sky, midnight: Moment) -> Vec<Now> {
    let now = |row: u16| {
        let sun = position(site, midnight.plus_hours(f64::from(row) / AN_HOUR).unwrap());
        let outside_w_m2 = extraterrestrial_w_m2(sun.distance_au);
        let light = sky.irradiance(
            sun.apparent_elevation_deg(site),
            outside_w_m2,
            site.altitude_m(),
            site.pressure_pa(),
        );
        (sun, outside_w_m2, light)
    };
    (1..=288).map(now).collect()
}
