//! The table against a measured day.

use super::*;
use crate::physics::weather::file::{Stamp, read};

/// A measured day of the US Department of Energy's (tests/data/weather_files.md):
/// each hour's direct and diffuse sun under a sun that moves on keep the day's
/// global to 1 %.
#[test]
fn hours_of_a_file_keep_their_energy() {
    let bytes = include_bytes!("../../../../tests/data/greensboro_10_july_1981.csv");
    let weather = read(bytes, Stamp::EndOfHour).unwrap();
    let place = weather.place().unwrap();
    let hours = weather.hours().iter();
    let imported = Imported {
        outdoor_c: hours.clone().map(|hour| hour.temperature_c).collect(),
        global_w_m2: hours.clone().map(|hour| hour.irradiance.ghi_w_m2).collect(),
        direct_w_m2: hours
            .clone()
            .filter_map(|hour| hour.irradiance.dni_w_m2)
            .collect(),
        diffuse_w_m2: hours.filter_map(|hour| hour.irradiance.dhi_w_m2).collect(),
        dew_point_c: Vec::new(),
    };
    let table = SolarTable::new(&Where {
        site: Site::new(place.latitude_deg, place.longitude_deg, place.altitude_m).unwrap(),
        date: Date::new(1981, 7, 10).unwrap(),
        utc_offset_h: place.utc_offset_h,
        start_h: 0.0,
        span_h: 24.0,
        steps_per_hour: STEPS_PER_HOUR,
        imported: Some(&imported),
    })
    .unwrap();
    let sky = Sky::new(3.0, 0.0).unwrap();
    let rows = (0..table.steps()).map(|row| table.irradiance(row, &sky).ghi_w_m2);
    let ours = rows.sum::<f64>() / STEPS_PER_HOUR as f64;
    let measured: f64 = imported.global_w_m2.iter().sum();
    assert!((ours / measured - 1.0).abs() < 0.01, "{ours} of {measured}");
}
