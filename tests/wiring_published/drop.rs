use super::{awg, circular_mils, gauge, near, near_share};
use till_morning::physics::wiring::{Awg, Build, Metric, Run, Size, drop_over, hot_factor, solid};
use till_morning::quantity::{
    amps, celsius, feet, in_volts, meters, ohms, square_millimeters, volts,
};

/// FAA AC 43.13-1B table 11-7: drop over a run that has the ground return in
/// it, 20 A, from the printed ohms per foot. 88 ft of 12 prints 3.60 where its
/// own factors make 3.555.
#[test]
fn faa_table_11_7() {
    let rows = [
        (0.000_44, 107.0, 0.942),
        (0.000_28, 90.0, 0.504),
        (0.002_02, 88.0, 3.555),
        (0.003_06, 100.0, 6.12),
    ];
    for (ohm_per_ft, run_ft, drop_v) in rows {
        let drop = drop_over(ohms(ohm_per_ft * run_ft), amps(20.0), volts(28.0)).unwrap();
        near(in_volts(drop.volts), drop_v, 5e-4);
    }
}

/// The same four from copper: the table's areas with our tinned allowance. Not
/// below the printed drop by more than its rounding, nor above by over 4 %.
#[test]
fn faa_table_11_7_from_copper() {
    let allowance = Build::FlexibleTinned.allowance(awg(10).system());
    let rows = [
        (26_818.0, 107.0, 0.942),
        (42_615.0, 90.0, 0.504),
        (5_874.0, 88.0, 3.555),
        (3_831.0, 100.0, 6.12),
    ];
    for (circular_mil, run_ft, drop_v) in rows {
        let copper = solid(circular_mils(circular_mil), feet(run_ft), celsius(20.0)).unwrap();
        let drop = drop_over(copper * allowance, amps(20.0), volts(28.0)).unwrap();
        let found = in_volts(drop.volts);
        assert!(
            found > drop_v * 0.998 && found < drop_v * 1.04,
            "{found} {drop_v}"
        );
    }
}

/// FAA AC 43.13-1B table 11-8: the run that drops the limit, 20 A over
/// 0.00126 ohm per foot. The second row prints .366; 0.00126 x 19.5 x 20 is
/// 0.4914, half the row above, as half the length must be: a misprint there.
#[test]
fn faa_table_11_8() {
    for (run_ft, drop_v) in [(39.0, 0.98), (19.5, 0.4914), (156.0, 3.93), (273.0, 6.88)] {
        let drop = drop_over(ohms(0.001_26 * run_ft), amps(20.0), volts(28.0)).unwrap();
        near(in_volts(drop.volts), drop_v, 3.5e-3);
    }
    let half = drop_over(ohms(0.001_26 * 19.5), amps(20.0), volts(28.0)).unwrap();
    assert!((in_volts(half.volts) - 0.366).abs() > 0.1);
}

/// A course on electrical work (after NFPA 70 chapter 9 table 8, 16 stranded:
/// 4.99 ohm per 1000 ft at 75 C): 4 A, 100 ft one way, 24 V: 3.992 V. It
/// prints 16.7 %, from 4.0 V; 3.992 V is 16.6 %.
#[test]
fn two_wire_course_example() {
    let run = Run {
        size: awg(16),
        build: Build::Stranded,
        one_way: feet(100.0),
    };
    let drop = run.drop(amps(4.0), volts(24.0), celsius(75.0)).unwrap();
    near_share(in_volts(drop.volts), 3.992, 2e-3);
    near(drop.share, 0.1663, 5e-4);
}

/// ABYC E-11 (as quoted by others): circular mils = 10.75 I L / E with L the
/// whole loop: 20 A, 40 ft, 0.36 V: 23 889 circular mils, gauge 6; 1.2 V:
/// 7167, gauge 10. Their 10.75 is solid copper at 29 C: hot, a thicker one may
/// be needed, never a thinner.
#[test]
fn abyc_circular_mils() {
    for (allowed_v, circular_mil, number) in [(0.36, 23_889.0, 6), (1.2, 7_167.0, 10)] {
        near(10.75 * 20.0 * 40.0 / allowed_v, circular_mil, 0.5);
        let size = Awg::at_least(circular_mils(circular_mil)).unwrap();
        assert_eq!(size, Some(gauge(number)));
        // The same drop from copper: exactly the allowed one at 29.3 C.
        let copper = solid(circular_mils(circular_mil), feet(40.0), celsius(29.3)).unwrap();
        let drop = drop_over(copper, amps(20.0), volts(12.0)).unwrap();
        near_share(in_volts(drop.volts), allowed_v, 1e-3);
    }
}

/// 3 m one way, 100 A, over IEC 60228 class 5 maxima (0.554 ohm/km for 35 mm2,
/// 0.386 for 50), at 20 and 70 C: 0.332 and 0.398 V, 0.232 and 0.277 V. So 35
/// mm2 keeps 3 % of 12 V cold and breaks it hot. (Arithmetic from the
/// standard's maxima; 35 and 50 mm2 from memory.)
#[test]
fn class_5_drop_cold_and_hot() {
    for (mm2, ohm_per_km, cold_v, hot_v) in
        [(35.0, 0.554, 0.332, 0.398), (50.0, 0.386, 0.232, 0.277)]
    {
        let at = |at_c| {
            let path = ohms(ohm_per_km * 6e-3 * hot_factor(celsius(at_c)).unwrap());
            in_volts(drop_over(path, amps(100.0), volts(12.0)).unwrap().volts)
        };
        near(at(20.0), cold_v, 5e-4);
        near(at(70.0), hot_v, 7e-4);
        // The engine's own size lies above its maximum, by its one factor for
        // all sizes: 3 to 4 % here.
        let run = Run {
            size: Size::Metric(Metric::new(square_millimeters(mm2)).unwrap()),
            build: Build::Flexible,
            one_way: meters(3.0),
        };
        let own = in_volts(
            run.drop(amps(100.0), volts(12.0), celsius(70.0))
                .unwrap()
                .volts,
        );
        assert!(own >= at(70.0) && own < 1.04 * at(70.0), "{own}");
    }
}
