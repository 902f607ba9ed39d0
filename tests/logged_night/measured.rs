//! A measured day: a real two-stage unit in NIST's chambers, held to a simulated house in
//! the weather of Tucson (doi 10.18434/mds2-3058; `tests/data/nist_unit.md`).
//!
//! The house is theirs, not ours, and neither its figures nor the sun on it are in the
//! file: what stands here is a plain house by hand, with wide spreads, and a unit by the
//! round numbers of its size. From five in the morning until nine in the evening its set
//! point stays at 25.56 °C; fitted to the first two thirds of that.

use super::{
    drawn::fitted,
    vectors::{Row, number, rows},
};
use till_morning::{
    physics::bench::log::{ClockTimes, Log, Notes, Sample, Sense},
    plan::{
        Bank, Day, Figure, Load, Mode, Path, Plan,
        cabin::{Cabin, CabinField as C},
        cooling::{UnitCooling, UnitCurves},
    },
    study::logged::{Fitted, Untold},
};

const FROM_TO_MIN: (f64, f64) = (300.0, 1260.0);

fn house() -> Plan {
    let mut plan = Plan::demo();
    plan.day = Day::default();
    plan.day.set_place(32.2, -110.9, Some(780.0));
    plan.day.set_date(2023, 8, 28);
    plan.day.utc_offset_min = Some(-420.0);
    plan.supply.arrays.clear();
    plan.mode_plan.clear();
    plan.banks = vec![Bank {
        battery_rated_ah: Figure::guess(5000.0),
        battery_current_limit_a: None,
        ..plan.banks[0].clone()
    }];
    plan.loads = vec![Load {
        name: "Electronics".into(),
        power_w: Figure::guess(16.0),
    }];
    let mode = |name, draw_w, cooling_w| Mode {
        cooling_w: Some(Figure::guess(cooling_w)),
        ..Mode::of_power(name, Figure::guess(draw_w))
    };
    let unit = &mut plan.units[0];
    unit.cutoff_v = None;
    unit.cable.length_m = Some(0.0);
    unit.modes = vec![mode("Low", 1900.0, 6800.0), mode("High", 2850.0, 9700.0)];
    unit.cooling = UnitCooling {
        curves: Some(UnitCurves::TwoStage),
        ..UnitCooling::default()
    };
    plan.night.asked_mode = 0;
    plan.cabin = Cabin {
        people_count: Some(2),
        set_point_c: Some(25.56),
        ..Cabin::default()
    };
    for (field, value, percent) in [
        (C::FloorM2, 150.0, 0.0),
        (C::VolumeM3, 380.0, 0.0),
        (C::RoofM2, 150.0, 0.0),
        (C::WallsM2, 140.0, 0.0),
        (C::WallGlassM2, 20.0, 30.0),
        (C::RoofGlassM2, 0.0, 0.0),
        (C::ShellWM2K, 0.5, 60.0),
        (C::GlassWM2K, 3.0, 60.0),
        (C::AirChangesPerH, 0.5, 50.0),
        (C::AirCapacityKjK, 3000.0, 80.0),
        (C::ShellCapacityKjK, 15_000.0, 80.0),
        (C::GainsW, 500.0, 50.0),
    ] {
        let figure = Figure {
            spread_percent: Some(percent),
            ..Figure::guess(value)
        };
        plan.set_figure(Path::Cabin(field), figure);
    }
    assert_eq!(plan.errors(), Vec::new());
    plan
}

fn day(is_in: fn(&Row) -> bool) -> Log {
    let all = rows("nist_unit_tucson_28aug_1min.csv");
    let within = |minute: &f64| (FROM_TO_MIN.0..FROM_TO_MIN.1).contains(minute);
    let all = all
        .iter()
        .filter(|row| within(&number(row, "minute")) && is_in(row));
    let samples = all.map(|row| Sample {
        time_s: 60.0 * number(row, "minute"),
        watts: Some(number(row, "p_indoor_w") + number(row, "p_outdoor_w")),
        celsius: Some(number(row, "t_room_c")),
        outdoor_c: Some(number(row, "t_out_c")),
        ..Sample::default()
    });
    let notes = Notes {
        clock: ClockTimes::Local,
        ..Notes::default()
    };
    Log::new(samples.collect(), None, Sense::Positive, notes).expect("a log")
}

/// Charge from a bank of 25.6 V over the last 5.3 h, standing for the unit's energy:
/// measured 164 Ah, predicted 154 Ah, a miss of 6 %; the house as it was before the fit
/// said 120 Ah, a miss of 27 %. The room within 0.91 K (root mean square) on a day on
/// which it swung from 22.7 to 28.0 °C by itself in that time, against 0.96 K before: of
/// the room's own swings no model with a thermostat knows. The limits were set when the
/// misses were seen.
#[test]
fn the_last_third_of_a_measured_day() {
    let night = fitted(&house(), &day(|_| true));
    for figure in &night.figures {
        println!("{figure:?}");
    }
    let ahead = night.ahead.expect("a prediction");
    let (cabin, used) = (ahead.cabin_k.expect("a thermometer"), ahead.used_ah);
    println!("{cabin:?} {used:?} held {:?}", ahead.held_c);
    let miss = |predicted: f64| (predicted / used.measured - 1.0).abs();
    assert!((used.measured - 164.3).abs() < 0.5);
    assert!(miss(used.predicted) < 0.12 && miss(used.predicted) < miss(used.before));
    assert!(cabin.root_mean_square < 1.1 && cabin.mean.abs() < 0.4);
    assert!(cabin.root_mean_square <= cabin.before_root_mean_square);
    // It is held at its set point, and the model's misses widen the spreads.
    assert!((ahead.held_c.expect("a thermostat at work") - 25.56).abs() < 0.2);
    assert!(night.cabin_misfit_number.expect("a thermometer") > 2.0);
}

/// The draw by the rows themselves: the mean of what stage 1 drew at 32 to 34 °C outdoors.
/// Minutes of stage 2, which the plan does not have on, are left out of the log.
#[test]
fn the_draw_is_that_of_the_rows() {
    let all = rows("nist_unit_tucson_28aug_1min.csv");
    let is_asked = |row: &&Row| {
        let minute = number(row, "minute");
        row["stage"] == "1"
            && (FROM_TO_MIN.0..FROM_TO_MIN.1).contains(&minute)
            && number(row, "p_outdoor_w") > 1000.0
            && (32.0..34.0).contains(&number(row, "t_out_c"))
    };
    let watts = all.iter().filter(is_asked);
    let watts: Vec<f64> = watts
        .map(|row| number(row, "p_indoor_w") + number(row, "p_outdoor_w"))
        .collect();
    let measured_w = watts.iter().sum::<f64>() / watts.len() as f64;
    let night = fitted(&house(), &day(|row| row["stage"] != "2"));
    let of = |what| *night.figures.iter().find(|one| one.what == what).unwrap();
    let (draw, slope) = (of(Fitted::Draw), of(Fitted::DrawSlope));
    let middle_c = night.middle_c.expect("a unit that ran");
    let there_w = draw.after * (0.01 * slope.after * (33.0 - middle_c)).exp();
    println!("{there_w:.0} W, measured {measured_w:.0} W");
    assert!((there_w / measured_w - 1.0).abs() < 0.04);
    assert_eq!((draw.untold, slope.untold), (None, None));
    // Nothing is said of a bank without its volts.
    assert_eq!(of(Fitted::Usable).untold, Some(Untold::NoVolts));
}
