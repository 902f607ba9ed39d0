//! What holds for any air, coil and unit.

use proptest::prelude::*;
use till_morning::physics::air::*;
use till_morning::quantity::*;

fn reading(pressure: Pressure, into: (f64, f64), out: (f64, f64), airflow: Airflow) -> Reading {
    let point = |(t_c, rh)| Point {
        dry_bulb: celsius(t_c),
        humidity: Some(Humidity::Relative(rh)),
    };
    Reading {
        pressure,
        inlet: point(into),
        outlet: point(out),
        airflow,
        power: None,
    }
}

fn volume(rate: VolumeRate, basis: FlowBasis) -> Airflow {
    Airflow::Volume { rate, basis }
}

fn any_air() -> impl Strategy<Value = MoistAir> {
    (40_000.0..120_000.0_f64, -40.0..60.0_f64, 0.0..=1.0_f64)
        .prop_filter_map("air that exists", |(p, t, rh)| {
            MoistAir::new(pascals(p), celsius(t), Humidity::Relative(rh)).ok()
        })
}

proptest! {
    /// Each way of giving the humidity leads back to the same air.
    #[test]
    fn humidities_agree(air in any_air()) {
        let again = |humidity| MoistAir::new(air.pressure(), air.dry_bulb(), humidity).unwrap();
        let w = air.humidity_ratio();
        let same = |other: MoistAir| (other.humidity_ratio() - w).abs() <= 1e-7 * w + 1e-11;
        prop_assert!(same(again(Humidity::Ratio(w))));
        prop_assert!(same(again(Humidity::Relative(air.relative_humidity()))));
        if let Ok(dew) = air.dew_point() {
            prop_assert!(same(again(Humidity::DewPoint(dew))));
            // Dew point, wet bulb, dry bulb stand in order.
            prop_assert!(in_kelvins(dew) <= in_kelvins(air.wet_bulb()) + 1e-6);
        }
        prop_assert!(in_kelvins(air.wet_bulb()) <= in_kelvins(air.dry_bulb()) + 1e-9);
        let by_wick = again(Humidity::WetBulb(air.wet_bulb()));
        prop_assert!((by_wick.humidity_ratio() - w).abs() < 1e-8, "{} {w}", by_wick.humidity_ratio());
    }

    /// Total is sensible and latent; no number is ever not a number.
    #[test]
    fn parts_make_the_whole(
        t_in in -60.0..100.0_f64, rh_in in -0.1..1.1_f64,
        t_out in -60.0..100.0_f64, rh_out in -0.1..1.1_f64,
        m3_h in -10.0..5_000.0_f64, p in 30_000.0..130_000.0_f64,
    ) {
        let flow = volume(cubic_meters_per_hour(m3_h), FlowBasis::Actual(Face::Outlet));
        if let Ok(side) = cooling(&reading(pascals(p), (t_in, rh_in), (t_out, rh_out), flow)) {
            let (total, latent) = (in_watts(side.total.unwrap()), in_watts(side.latent.unwrap()));
            let sensible = in_watts(side.sensible);
            prop_assert!(total.is_finite() && latent.is_finite() && sensible.is_finite());
            prop_assert!((total - sensible - latent).abs() <= 1e-9 * (1.0 + total.abs()));
            prop_assert!(in_kilograms_per_second(side.condensate.unwrap()) >= 0.0);
        }
    }

    /// Curves give positive figures anywhere they answer, and an answer or a
    /// typed refusal everywhere.
    #[test]
    fn units_stay_positive(wet in -60.0..90.0_f64, outdoor in -60.0..90.0_f64) {
        for curves in [CurveSet::WindowUnit, CurveSet::SingleSpeedCentral] {
            if let Ok(at) = curves.at(celsius(wet), celsius(outdoor)) {
                prop_assert!(at.capacity > 0.3 && at.capacity < 1.6, "{}", at.capacity);
                prop_assert!(at.energy_input > 0.3 && at.energy_input < 3.0, "{}", at.energy_input);
            }
        }
    }

    /// A coil's parts make its capacity, and it never wets the air.
    #[test]
    fn coil_parts_make_the_whole(air in any_air(), q in 0.0..5_000.0_f64, bypass in 0.0..0.5_f64) {
        let coil = Coil::new(kilograms_per_second(0.08), bypass).unwrap();
        if let Ok(work) = coil.work(&air, watts(q)) {
            let parts = in_watts(work.sensible) + in_watts(work.latent);
            prop_assert!((parts - q).abs() < 1e-6 * (1.0 + q));
            prop_assert!(in_watts(work.latent) >= -1e-6 * (1.0 + q));
            prop_assert!(in_kilograms_per_second(work.condensate) >= 0.0);
        }
    }
}
