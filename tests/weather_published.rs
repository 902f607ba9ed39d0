//! The sun, the clear sky and the day's profile against what others computed,
//! printed or measured.

#[path = "support/sky.rs"]
mod sky;
#[path = "support/vectors.rs"]
mod vectors;

use sky::{AN_HOUR, clear_day, close, date, utc};
use till_morning::physics::weather::clear_sky::{self, Sky, extraterrestrial_w_m2};
use till_morning::physics::weather::date::{Date, Moment};
use till_morning::physics::weather::day::DayProfile;
use till_morning::physics::weather::site::Site;
use till_morning::physics::weather::sun::events::{Daylight, Horizon, daylight};
use till_morning::physics::weather::sun::{horizon_angles, position, refraction_deg};
use till_morning::quantity::{celsius, in_celsius};
use vectors::{number as num, rows as table};

/// Great-circle angle between two directions, degrees.
fn apart_deg(a: (f64, f64), b: (f64, f64)) -> f64 {
    let unit = |(elevation, azimuth): (f64, f64)| {
        let (up, level) = elevation.to_radians().sin_cos();
        let (east, north) = azimuth.to_radians().sin_cos();
        [level * east, level * north, up]
    };
    let (a, b) = (unit(a), unit(b));
    let chord: f64 = a.iter().zip(b).map(|(a, b)| (a - b).powi(2)).sum();
    (2.0 * (chord.sqrt() / 2.0).asin()).to_degrees()
}

// ---- The sun ----

/// JPL DE421 (Skyfield), SPA (pvlib) and VSOP87 (PyEphem) agree among themselves
/// to 0.0005 degrees; see the head of the table. 0.03 is what is promised.
#[test]
fn sun_position_against_three_ephemerides() {
    let mut worst = 0.0_f64;
    for row in table("solar_position.csv") {
        let site = Site::new(
            num(&row, "lat_deg"),
            num(&row, "lon_deg_east"),
            num(&row, "alt_m"),
        )
        .unwrap();
        let sun = position(&site, utc(&row["utc"]));
        let ours = (sun.elevation_deg, sun.azimuth_deg);
        for (elevation, azimuth) in [
            ("elev_de421_deg", "azim_de421_deg"),
            ("elev_spa_deg", "azim_spa_deg_N_cw"),
            ("elev_ephem_deg", "azim_ephem_deg"),
        ] {
            let gap = apart_deg(ours, (num(&row, elevation), num(&row, azimuth)));
            assert!(gap < 0.03, "{} {}: {gap}", row["site"], row["utc"]);
            worst = worst.max(gap);
        }
        // SPA's equation of time and distance, pvlib.
        close(
            sun.equation_of_time_min,
            num(&row, "eot_spa_min"),
            0.03,
            "equation of time",
        );
        let outside = num(&row, "etr_nrel_wm2");
        close(
            extraterrestrial_w_m2(sun.distance_au),
            outside,
            2e-4 * outside,
            "outside the air",
        );
        // With refraction, above the horizon: 0.02 besides the position itself.
        if num(&row, "elev_spa_deg") > 0.0 {
            let apparent = sun.apparent_elevation_deg(&site);
            close(
                apparent,
                num(&row, "apparent_elev_spa_deg"),
                0.03,
                "apparent elevation",
            );
        }
    }
    // The module says 0.01 degrees; keep it honest.
    assert!(worst < 0.01, "worst {worst}");
}

/// Reda and Andreas, *Solar Position Algorithm*, NREL/TP-560-34302 (rev. 2008),
/// table A5.1 (numbers as repeated in five public test suites): 17 October 2003,
/// 12:30:30 at UTC-7. Its zenith includes refraction at 820 hPa and 11 C.
#[test]
fn sun_position_of_the_nrel_example() {
    let site = Site::new(39.742_476, -105.178_6, 1_830.14).unwrap();
    let day = Date::new(2003, 10, 17).unwrap();
    let at = |local_h| Moment::from_local(day, local_h, -7.0).unwrap();
    let moment = at(12.0 + 30.5 / 60.0);
    // The example prints 2452930.312847, to five seconds' last digits.
    close(
        moment.days_since_j2000() + 2_451_545.0,
        2_452_930.312_847,
        1e-6,
        "Julian date",
    );
    let sun = position(&site, moment);
    let apparent = sun.elevation_deg + refraction_deg(sun.elevation_deg, 820.0, 11.0);
    close(90.0 - apparent, 50.111_62, 0.01, "zenith");
    close(sun.azimuth_deg, 194.340_24, 0.01, "azimuth");
    close(sun.declination_deg, -9.316_179, 0.01, "declination");
    close(sun.hour_angle_deg, 11.106_29, 0.01, "hour angle");

    let Daylight::RisesAndSets { rise, transit, set } = daylight(&site, at(12.0), Horizon::SunEdge)
    else {
        panic!("the sun rises in Colorado");
    };
    // Printed to a thousandth of an hour; ten seconds.
    let local_h = |moment: Moment| moment.hours_since(at(0.0));
    close(local_h(rise), 6.212, 0.003, "rise");
    close(local_h(transit), 11.768, 0.003, "transit");
    close(local_h(set), 17.314, 0.003, "set");
}

/// Duffie and Beckman, *Solar Engineering of Thermal Processes*, example 1.5.1:
/// Madison, 89.4 W, 3 February, 10:30 central time is 10:19 solar time with an
/// equation of time of -13.5 min. The book's is a fit by day number, good to
/// half a minute.
#[test]
fn solar_time_of_duffie_and_beckman() {
    let madison = Site::new(43.0, -89.4, 260.0).unwrap();
    let day = Date::new(2023, 2, 3).unwrap();
    let sun = position(&madison, Moment::from_local(day, 10.5, -6.0).unwrap());
    close(sun.equation_of_time_min, -13.5, 0.5, "equation of time");
    let solar_h = 12.0 + sun.hour_angle_deg / 15.0;
    close(solar_h, 10.0 + 19.0 / 60.0, 1.0 / 60.0, "solar time");
}

/// Duffie and Beckman, equations 1.6.5 (height) and 1.6.6 (azimuth), which take
/// another road than the components used here. Their example 1.6.1 is held in
/// `solar_published.rs`.
#[test]
fn horizon_angles_by_the_cosine_rule() {
    for (lat, dec, hour) in [
        (43.0, -14.0, -22.5),
        (-33.9, 20.0, 60.0),
        (69.7, 23.0, 170.0),
    ] {
        let (lat_r, dec_r, hour_r) = (
            f64::to_radians(lat),
            f64::to_radians(dec),
            f64::to_radians(hour),
        );
        let sine = lat_r.sin() * dec_r.sin() + lat_r.cos() * dec_r.cos() * hour_r.cos();
        let (elevation, azimuth) = horizon_angles(lat, dec, hour);
        close(elevation, sine.asin().to_degrees(), 1e-9, "elevation");
        let sin_azimuth = -dec_r.cos() * hour_r.sin() / elevation.to_radians().cos();
        close(azimuth.to_radians().sin(), sin_azimuth, 1e-9, "azimuth");
    }
}

/// Polar day and night are told, not stepped over. Tromsø: the midnight sun
/// shines from 20 May to 22 July and the sun stays down from 27 November to 15
/// January (its tourist office's dates; from memory).
#[test]
fn polar_day_and_night() {
    let tromso = Site::new(69.65, 18.96, 10.0).unwrap();
    let on = |month, day, horizon| {
        let date = Date::new(2025, month, day).unwrap();
        daylight(
            &tromso,
            Moment::from_local(date, 12.0, 1.0).unwrap(),
            horizon,
        )
    };
    assert!(matches!(
        on(6, 21, Horizon::SunEdge),
        Daylight::UpAllDay { .. }
    ));
    assert!(matches!(
        on(12, 21, Horizon::SunEdge),
        Daylight::DownAllDay { .. }
    ));
    // Though the sun stays down, there is a bluish noon.
    assert!(matches!(
        on(12, 21, Horizon::CivilTwilight),
        Daylight::RisesAndSets { .. }
    ));
    for (month, day) in [(5, 14), (7, 29)] {
        assert!(matches!(
            on(month, day, Horizon::SunEdge),
            Daylight::RisesAndSets { .. }
        ));
    }
    for (month, day) in [(5, 22), (7, 20)] {
        assert!(matches!(
            on(month, day, Horizon::SunEdge),
            Daylight::UpAllDay { .. }
        ));
    }
}

// ---- The clear sky ----

/// pvlib's Ineichen, on the sun and distance of the same table so that only the
/// model is at stake (near the horizon 0.005 degrees of sun is worth 0.1 %): 0.1 %
/// or the last digit printed. The whole chain is held by the day sums below.
#[test]
fn clear_sky_instants_against_pvlib() {
    let mut checked = 0;
    for row in table("clearsky_instant.csv") {
        let altitude = num(&row, "alt_m");
        let site = Site::new(num(&row, "lat"), num(&row, "lon"), altitude).unwrap();
        let elevation = num(&row, "elev_deg");
        let apparent = elevation + refraction_deg(elevation, site.pressure_pa() / 100.0, 12.0);
        let at_turbidity = |turbidity: f64| {
            let sky = Sky::new(turbidity, 0.0).unwrap();
            sky.irradiance(apparent, num(&row, "etr"), altitude, site.pressure_pa())
        };
        let ours = at_turbidity(num(&row, "linke_turbidity"));
        for (got, column) in [
            (ours.ghi_w_m2, "ineichen_ghi"),
            (ours.dni_w_m2, "ineichen_dni"),
            (ours.dhi_w_m2, "ineichen_dhi"),
            (at_turbidity(3.0).ghi_w_m2, "ineichen_tl3_ghi"),
        ] {
            let published = num(&row, column);
            let what = format!("{} {} {column}", row["site"], row["utc"]);
            close(got, published, 1e-3 * published + 0.01, &what);
            checked += 1;
        }
    }
    assert!(checked > 800);
}

/// Day sums. Ours against pvlib's Ineichen, 0.2 %; and, as a check by other
/// physics, against the Haurwitz, simplified Solis and Bird models there, within
/// the 20 % that such models differ by.
#[test]
fn clear_sky_day_totals() {
    for row in table("clearsky_day_totals.csv") {
        let site = Site::new(num(&row, "lat"), num(&row, "lon"), num(&row, "alt_m")).unwrap();
        let midnight =
            Moment::from_utc(date(&row["date_local"]), -num(&row, "lon") / 15.0).unwrap();
        let totals = |turbidity: f64| {
            let sky = Sky::new(turbidity, 0.0).unwrap();
            let day = clear_day(&site, &sky, midnight);
            let sum = |part: fn(&clear_sky::Irradiance) -> f64| -> f64 {
                day.iter().map(|(_, _, it)| part(it)).sum::<f64>() / AN_HOUR
            };
            (
                sum(|it| it.ghi_w_m2),
                sum(|it| it.dni_w_m2),
                sum(|it| it.dhi_w_m2),
            )
        };
        let (ghi, dni, dhi) = totals(num(&row, "linke"));
        let what = format!("{} {}", row["site"], row["date_local"]);
        for (got, column) in [
            (ghi, "ineichen_ghi_Wh"),
            (dni, "ineichen_dni_Wh"),
            (dhi, "ineichen_dhi_Wh"),
        ] {
            let published = num(&row, column);
            close(got, published, 2e-3 * published, &what);
        }
        // Haurwitz knows no altitude: not for Quito at 2,850 m.
        if row["site"] != "quito" {
            let haurwitz = num(&row, "haurwitz_ghi_Wh");
            close(ghi, haurwitz, 0.2 * haurwitz, &what);
        }
        for column in ["solis_ghi_Wh", "bird_ghi_Wh"] {
            let other = num(&row, column);
            close(totals(3.0).0, other, 0.2 * other, &what);
        }
    }
}

/// pvlib's Erbs, digit for digit but for its daily distance of the sun, which
/// the table gives.
#[test]
fn beam_and_diffuse_split_against_pvlib() {
    for row in table("erbs_split.csv") {
        let zenith = num(&row, "zenith_deg");
        let ours = clear_sky::split(
            num(&row, "ghi"),
            zenith.to_radians().cos(),
            num(&row, "etr"),
        );
        let what = format!("zenith {zenith}, kt {}", row["kt"]);
        close(ours.dhi_w_m2, num(&row, "dhi"), 0.02, &what);
        close(ours.dni_w_m2, num(&row, "dni"), 0.2, &what);
    }
}

/// Kasten and Czeplak 1980: an overcast sky leaves a quarter of the clear global,
/// half a sky of cloud 93 % of it.
#[test]
fn clouds_leave_what_kasten_and_czeplak_found() {
    let under = |cloud| {
        Sky::new(3.0, cloud)
            .unwrap()
            .irradiance(60.0, 1_330.0, 0.0, 101_325.0)
    };
    let clear = under(0.0);
    close(under(1.0).ghi_w_m2 / clear.ghi_w_m2, 0.25, 1e-9, "overcast");
    close(under(0.5).ghi_w_m2 / clear.ghi_w_m2, 0.929, 1e-3, "half");
    // An overcast sky casts no shadow: hardly any beam (common sense, no source).
    assert!(under(1.0).dni_w_m2 < 0.02 * clear.dni_w_m2);
}

// ---- The day ----

/// A measured day: Greensboro, 10 July 1981 (TMY3, US DOE/NREL), a clear hot day.
/// From its high and low alone the profile follows the thermometer. The table
/// was made for design days as a class; 2 kelvins is what a single day may
/// stray by, set beforehand.
#[test]
fn day_profile_follows_a_measured_day() {
    let rows = table("weather_hot_days.csv");
    let measured: Vec<(f64, f64)> = rows
        .iter()
        .filter(|row| row["station"] == "greensboro")
        .map(|row| (num(row, "hour_start_lst") + 1.0, num(row, "t_dry_c")))
        .collect();
    let high = measured.iter().map(|it| it.1).fold(f64::MIN, f64::max);
    let low = measured.iter().map(|it| it.1).fold(f64::MAX, f64::min);
    let day = DayProfile::new(celsius(high), celsius(low), None).unwrap();
    let squares: f64 = measured
        .iter()
        .map(|&(hour, t)| (in_celsius(day.temperature(hour)) - t).powi(2))
        .sum();
    let off = (squares / 24.0).sqrt();
    assert!(off < 2.0, "off by {off} K");
}

/// ASHRAE *Handbook of Fundamentals* 2009, chapter 14, fractions of the daily
/// range (second-hand, from an open building-energy library): coldest at 5 h,
/// warmest at 14 and 15 h; the 24 sum to 12.87.
#[test]
fn day_profile_passes_through_the_table() {
    let day = DayProfile::new(celsius(100.0 / 2.0), celsius(-50.0), None).unwrap();
    let fraction = |hour: f64| (50.0 - in_celsius(day.temperature(hour))) / 100.0;
    for (hour, published) in [
        (0.0, 0.82),
        (5.0, 1.0),
        (8.0, 0.74),
        (12.0, 0.13),
        (14.0, 0.0),
        (15.0, 0.0),
        (18.0, 0.24),
        (24.0, 0.82),
    ] {
        close(fraction(hour), published, 1e-9, "fraction");
    }
    let sum: f64 = (0..24).map(|hour| fraction(f64::from(hour))).sum();
    close(sum, 12.87, 1e-9, "sum");
}
