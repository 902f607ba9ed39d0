//! Light on planes, cells and arrays against what others computed or printed.

#[path = "support/sky.rs"]
mod sky;
#[path = "support/vectors.rs"]
mod vectors;

use sky::{AN_HOUR, clear_day, close, date, utc};
use till_morning::physics::solar::cell::Mounting;
use till_morning::physics::solar::controller::{ArrayVolts, Controller};
use till_morning::physics::solar::losses::{Losses, kept_after};
use till_morning::physics::solar::plane::{Light, Plane, SkyModel, Sun};
use till_morning::physics::solar::{Air, Array, Group, Offer};
use till_morning::physics::weather::clear_sky::Sky;
use till_morning::physics::weather::date::{Date, Moment};
use till_morning::physics::weather::site::Site;
use till_morning::physics::weather::sun::{horizon_angles, position};
use till_morning::quantity::{amps, celsius, in_amps, in_celsius, in_watts, volts, watts};
use vectors::{number as num, rows as table};

// ---- Incidence ----

/// Angle between plane and sun by three-vectors on the JPL DE421 sun (Skyfield);
/// pvlib's trigonometry agrees to 0.0003 degrees. First on that sun, so that only
/// the geometry is at stake; then on ours, for the whole.
#[test]
fn angle_of_incidence_against_de421() {
    for row in table("angle_of_incidence.csv") {
        let plane = Plane::new(num(&row, "tilt"), num(&row, "plane_azimuth")).unwrap();
        let theirs =
            Sun::from_angles(num(&row, "sun_elev_de421"), num(&row, "sun_azim_de421")).unwrap();
        close(
            plane.incidence_cosine(&theirs),
            num(&row, "cos_aoi"),
            1e-6,
            "cosine",
        );

        let site = Site::new(num(&row, "lat"), num(&row, "lon"), num(&row, "alt_m")).unwrap();
        let sun = position(&site, utc(&row["utc"]));
        let ours = Sun::from_angles(sun.elevation_deg, sun.azimuth_deg).unwrap();
        let angle = plane.incidence_cosine(&ours).acos().to_degrees();
        close(angle, num(&row, "aoi_deg"), 0.03, &row["utc"]);
    }
}

/// Angle of incidence from latitude, declination and hour angle, as handbooks
/// print it.
fn incidence_deg(latitude: f64, declination: f64, hour_angle: f64, plane: &Plane) -> f64 {
    let (elevation, azimuth) = horizon_angles(latitude, declination, hour_angle);
    let sun = Sun::from_angles(elevation, azimuth).unwrap();
    plane.incidence_cosine(&sun).acos().to_degrees()
}

/// Duffie and Beckman, *Solar Engineering of Thermal Processes*, example 1.6.1:
/// Madison, 43 N, 13 February, declination -14, 10:30 solar time, tilt 45, facing
/// 15 degrees west of south: 35 degrees. And the same at 38.54 N, a course's
/// variant: cosine 0.8319.
#[test]
fn incidence_of_duffie_and_beckman() {
    let plane = Plane::new(45.0, 195.0).unwrap();
    close(
        incidence_deg(43.0, -14.0, -22.5, &plane),
        35.0,
        0.5,
        "Madison",
    );
    let cosine = incidence_deg(38.54, -13.95, -22.5, &plane)
        .to_radians()
        .cos();
    close(cosine, 0.831_9, 1e-3, "38.54 N");
}

/// Reda and Andreas, NREL/TP-560-34302 (rev. 2008), table A5.1: on a slope of 30
/// degrees turned 10 east of south, 25.18700, with the apparent sun.
#[test]
fn incidence_of_the_nrel_example() {
    let site = Site::new(39.742_476, -105.178_6, 1_830.14).unwrap();
    let day = Date::new(2003, 10, 17).unwrap();
    let at = Moment::from_local(day, 12.0 + 30.5 / 60.0, -7.0).unwrap();
    let sun = position(&site, at);
    let seen = Sun::from_angles(sun.apparent_elevation_deg(&site), sun.azimuth_deg).unwrap();
    // The example turns the surface by -10 from south, positive to the west.
    let plane = Plane::new(30.0, 170.0).unwrap();
    let angle = plane.incidence_cosine(&seen).acos().to_degrees();
    close(angle, 25.187, 0.05, "incidence");
}

// ---- Light on planes ----

/// Site of a row's name, as the clear-sky table gives it.
fn site(name: &str) -> Site {
    let rows = table("clearsky_day_totals.csv");
    let row = rows.iter().find(|row| row["site"] == name).unwrap();
    Site::new(num(row, "lat"), num(row, "lon"), num(row, "alt_m")).unwrap()
}

/// pvlib's isotropic and Hay-Davies on our sun and pvlib's irradiance: 0.2 % and
/// half a watt.
#[test]
fn plane_instants_against_pvlib() {
    let mut checked = 0;
    for row in table("poa.csv") {
        if row["kind"] != "instant" {
            continue;
        }
        let site = site(&row["site"]);
        let sun = position(&site, utc(&row["utc_or_date"]));
        let seen = Sun::from_angles(sun.apparent_elevation_deg(&site), sun.azimuth_deg).unwrap();
        let plane = Plane::new(num(&row, "tilt"), num(&row, "azimuth_N_cw")).unwrap();
        let light = Light::new(
            num(&row, "ghi"),
            num(&row, "dni"),
            num(&row, "dhi"),
            num(&row, "etr"),
        )
        .unwrap();
        for (model, column) in [
            (SkyModel::Isotropic, "poa_isotropic"),
            (SkyModel::HayDavies, "poa_haydavies"),
        ] {
            let ours = plane.light(&seen, &light, 0.2, model).total_w_m2();
            let published = num(&row, column);
            let what = format!("{} {} {column}", row["site"], row["utc_or_date"]);
            close(ours, published, 2e-3 * published + 0.5, &what);
            // Perez's sky is fitted to measurements where Hay-Davies reasons: the
            // two differ by less than a tenth in sun (common experience, no source).
            if model == SkyModel::HayDavies && num(&row, "poa_perez") > 400.0 {
                let perez = num(&row, "poa_perez");
                close(ours, perez, 0.1 * perez, &format!("{what} against Perez"));
            }
            checked += 1;
        }
    }
    assert!(checked > 400);
}

/// Day sums, by our own sun and clear sky every five minutes.
#[test]
fn plane_day_totals_against_pvlib() {
    let skies = table("clearsky_day_totals.csv");
    for row in table("poa.csv") {
        if row["kind"] != "day" {
            continue;
        }
        let sky_row = skies
            .iter()
            .find(|it| it["site"] == row["site"] && it["date_local"] == row["utc_or_date"])
            .unwrap();
        let site = site(&row["site"]);
        let sky = Sky::new(num(sky_row, "linke"), 0.0).unwrap();
        let midnight =
            Moment::from_utc(date(&row["utc_or_date"]), -site.longitude_deg() / 15.0).unwrap();
        let day = clear_day(&site, &sky, midnight);
        let plane = Plane::new(num(&row, "tilt"), num(&row, "azimuth_N_cw")).unwrap();
        for (model, column) in [
            (SkyModel::Isotropic, "poa_isotropic"),
            (SkyModel::HayDavies, "poa_haydavies"),
        ] {
            let sum: f64 = day
                .iter()
                .map(|(sun, outside_w_m2, it)| {
                    let seen = Sun::from_angles(sun.apparent_elevation_deg(&site), sun.azimuth_deg);
                    let light =
                        Light::new(it.ghi_w_m2, it.dni_w_m2, it.dhi_w_m2, *outside_w_m2).unwrap();
                    let lit = plane.light(&seen.unwrap(), &light, 0.2, model);
                    lit.total_w_m2() / AN_HOUR
                })
                .sum();
            let published = num(&row, column);
            let what = format!("{} {} {column}", row["site"], row["utc_or_date"]);
            close(sum, published, 2e-3 * published + 0.5, &what);
        }
    }
}

// ---- Cells and arrays ----

/// King et al., SAND2004-3535, as computed by pvlib for an open rack and an
/// insulated back; and, for the open rack in light wind, other people's models:
/// Faiman 2008 within 2.5 kelvins (in more wind the two part by 3, as Faiman's wind
/// is that at the panel and King's that at 10 m), and a nominal operating
/// temperature of 45 C within 5 at 1 m/s and 800 W/m2, where that is defined.
#[test]
fn cell_temperature_against_pvlib() {
    for row in table("pv_module_single_diode.csv") {
        let (light, air, wind) = (
            num(&row, "poa_wm2"),
            num(&row, "t_air_c"),
            num(&row, "wind_ms"),
        );
        let air = Air::new(celsius(air), wind).unwrap();
        let cell = |mounting: Mounting| in_celsius(mounting.cell_temperature(light, &air));
        let rack = cell(Mounting::StoodOff);
        close(rack, num(&row, "tcell_sapm_open_c"), 0.006, "open rack");
        close(
            cell(Mounting::FlatOnRoof),
            num(&row, "tcell_sapm_insulated_back_c"),
            0.006,
            "insulated back",
        );
        if wind <= 1.0 {
            close(rack, num(&row, "tcell_faiman_c"), 2.5, "Faiman");
            if (light - 800.0).abs() < 1.0 {
                close(rack, num(&row, "tcell_noct45_c"), 5.0, "nominal");
            }
        }
    }
}

/// A lone panel lying flat, without losses, under light straight down.
fn panel(rated_w: f64, per_kelvin: f64) -> Array {
    let flat = Plane::new(0.0, 180.0).unwrap();
    let group = Group::new(watts(rated_w), flat, Mounting::StoodOff, 0.0).unwrap();
    Array::new(vec![group], per_kelvin, &Losses::NONE, 0.2).unwrap()
}

/// A De Soto one-diode module of 98.023 W computed by pvlib; its own effective
/// coefficient, -0.4659 %/K, is in the table's head. Proportion to light holds to
/// 1 % from 600 W/m2 up, 2.3 % at 400, 10 % at 100.
#[test]
fn power_against_a_one_diode_model() {
    let array = panel(98.023, -0.004_659);
    let above = Sun::from_angles(90.0, 0.0).unwrap();
    for row in table("pv_module_single_diode.csv") {
        let light_w_m2 = num(&row, "poa_wm2");
        let light = Light::new(light_w_m2, light_w_m2, 0.0, 1_366.1).unwrap();
        let air = Air::new(celsius(num(&row, "t_air_c")), num(&row, "wind_ms")).unwrap();
        let ours = in_watts(array.offer(&above, &light, &air).power);
        let published = num(&row, "pmp_w");
        let band = match light_w_m2 {
            high if high >= 600.0 => 0.01,
            middling if middling >= 400.0 => 0.023,
            _ => 0.1,
        };
        let what = format!("{light_w_m2} W/m2, {} C", row["t_air_c"]);
        close(ours, published, band * published, &what);
    }
}

/// Dobos, NREL/TP-6A20-62641 (2014), default system losses: soiling 2, shading 3,
/// snow 0, mismatch 2, wiring 2, connections 0.5, light-induced 1.5, nameplate 1,
/// age 0, availability 3 %: 14.0757 % in all. The product is what is tested; our
/// own losses are named and chosen otherwise.
#[test]
fn losses_multiply_as_in_the_nrel_report() {
    let shares = [0.02, 0.03, 0.0, 0.02, 0.02, 0.005, 0.015, 0.01, 0.0, 0.03];
    close(1.0 - kept_after(&shares).unwrap(), 0.140_757, 1e-6, "loss");
}

/// The same report's array model: 1 kW at -0.47 %/K, 1,000 W/m2 and a cell of
/// 55 C gives 859 W (computed from the report's equation).
#[test]
fn warmth_takes_its_share() {
    let factor = panel(1_000.0, -0.004_7).warmth_factor(celsius(55.0));
    close(1_000.0 * factor, 859.0, 0.5, "power");
}

fn offer(power_w: f64, cell_c: f64, warmth_factor: f64) -> Offer {
    Offer {
        power: watts(power_w),
        cell: celsius(cell_c),
        warmth_factor,
    }
}

/// The one-diode module's sheet as pvlib computes it at 1,000 W/m2 and 25 C.
fn tied(open_per_kelvin: f64) -> Controller {
    let sheet = ArrayVolts::new(volts(18.365_9), volts(22.300_1), open_per_kelvin).unwrap();
    Controller::direct(sheet, None).unwrap()
}

/// A controller that ties the panels to the bank: its best current and voltage
/// against the module's (pvlib), with strong light within 3 %.
#[test]
fn direct_controller_best_point_against_a_one_diode_model() {
    let array = panel(98.023, -0.004_659);
    let above = Sun::from_angles(90.0, 0.0).unwrap();
    let rows = table("pv_module_single_diode.csv");
    for row in rows.iter().filter(|row| num(row, "poa_wm2") >= 600.0) {
        let light_w_m2 = num(row, "poa_wm2");
        let light = Light::new(light_w_m2, light_w_m2, 0.0, 1_366.1).unwrap();
        let air = Air::new(celsius(num(row, "t_air_c")), num(row, "wind_ms")).unwrap();
        let offer = array.offer(&above, &light, &air);
        let current = in_amps(tied(-0.003).current(&offer, volts(12.8)));
        let published = num(row, "imp_a");
        close(current, published, 0.03 * published, "current");
        let best_v = 18.365_9 * offer.warmth_factor;
        close(best_v, num(row, "vmp_v"), 0.03 * best_v, "volts");
    }
}

/// The same module's whole curve at given voltages, by pvlib 0.16.1's `i_from_v`
/// with the parameters in the table's head. Ours lies below it by design, never
/// above by more than 1 %, and below it by 8 % at most up to the best voltage.
#[test]
fn direct_controller_curve_lies_below_a_one_diode_model() {
    for (light_w_m2, cell, bank_v, published) in [
        (1_000.0, 25.0, 12.8, 5.666_1),
        (1_000.0, 25.0, 14.4, 5.651_2),
        (1_000.0, 25.0, 19.0, 5.091_1),
        (1_000.0, 25.0, 20.0, 4.337_3),
        (1_000.0, 25.0, 21.0, 2.927_5),
        (1_000.0, 60.0, 12.8, 5.744_5),
        (1_000.0, 60.0, 14.4, 5.587_9),
        (600.0, 60.0, 12.8, 3.446_1),
        (600.0, 60.0, 14.4, 3.342_9),
    ] {
        let factor = panel(98.023, -0.004_659).warmth_factor(celsius(cell));
        let offer = offer(98.023 * light_w_m2 / 1_000.0 * factor, cell, factor);
        let ours = in_amps(tied(-0.003).current(&offer, volts(bank_v)));
        assert!(ours < 1.01 * published, "{bank_v} V: {ours}");
        if bank_v < 18.0 {
            assert!(ours > 0.92 * published, "{bank_v} V: {ours}");
        }
    }
    // A bank above the open-circuit voltage draws nothing.
    let none = tied(-0.003).current(&offer(90.0, 25.0, 1.0), volts(23.0));
    assert_eq!(in_amps(none), 0.0);
}

/// A tracking controller keeps the energy: volts times amperes out are its
/// efficiency times the watts in, until its limit (by definition).
#[test]
fn tracking_controller_converts_power() {
    let controller = Controller::tracking(0.95, Some(amps(20.0))).unwrap();
    let current = |offered_w, bank_v| {
        let out = controller.current(&offer(offered_w, 50.0, 0.9), volts(bank_v));
        in_amps(out)
    };
    close(current(240.0, 25.6), 240.0 * 0.95 / 25.6, 1e-12, "amperes");
    close(current(800.0, 25.6), 20.0, 1e-12, "limit");
    assert_eq!(current(240.0, 0.0), 0.0);
    assert_eq!(current(f64::INFINITY, 25.6), 0.0);
}
