//! What a log lacks is said; the invented night is read, fitted and told in words.

use super::{
    drawn::fitted,
    nights::{Chance, Scatter, Truth, logged, plan},
};
use till_morning::{
    answer::log::{LogMeter, invented, invented_night, night},
    physics::bench::{
        import::{Options, Role, read_all},
        log::{ClockTimes, Log, Notes, Sample, Sense},
    },
    plan::{Figure, Plan, cooling::Control},
    simulate::day::{Scene, UnitModel},
    study::logged::{
        Fitted, FittedFigure, FittedNight, LoggedNight, MeterSd, Untold, logged_night,
    },
    text::{Formatter, claims},
};

const STILL: Scatter = Scatter {
    cabin_k: 0.0,
    outdoor_k: 0.0,
    volts: 0.0,
    draw: 0.0,
};

fn changed(log: &Log, change: impl Fn(&mut Sample)) -> Log {
    let mut samples = log.samples.clone();
    samples.iter_mut().for_each(change);
    let notes = Notes {
        clock: log.notes.clock,
        ..Notes::default()
    };
    Log::new(samples, None, Sense::Positive, notes).expect("a log")
}

/// Means over so many rows, as a logger keeps them.
fn means_of(log: &Log, count: usize) -> Log {
    let mean = |rows: &[Sample]| {
        let of = |part: fn(&Sample) -> Option<f64>| {
            let all: Vec<f64> = rows.iter().filter_map(part).collect();
            Some(all.iter().sum::<f64>() / all.len() as f64)
        };
        Sample {
            volts: of(|s| s.volts),
            amps: of(|s| s.amps),
            watts: of(|s| s.watts),
            celsius: of(|s| s.celsius),
            outdoor_c: of(|s| s.outdoor_c),
            ..rows[0]
        }
    };
    let samples = log.samples.chunks(count).map(mean).collect();
    let notes = Notes {
        clock: log.notes.clock,
        ..Notes::default()
    };
    Log::new(samples, None, Sense::Positive, notes).expect("a log")
}

fn a_night(hours: f64) -> Log {
    logged(&plan(), &Truth::AS_PLANNED, hours, STILL, &mut Chance(3))
}

fn figure(night: &FittedNight, what: Fitted) -> FittedFigure {
    let found = night.figures.iter().find(|one| one.what == what);
    *found.expect("a figure")
}

#[test]
fn without_a_thermometer_the_electric_side_alone_is_fitted() {
    let log = changed(&a_night(8.0), |sample| sample.celsius = None);
    let night = fitted(&plan(), &log);
    for what in [
        Fitted::CabinLoss,
        Fitted::CabinCapacity,
        Fitted::CoolingPerWatt,
    ] {
        let one = figure(&night, what);
        assert_eq!(one.untold, Some(Untold::NoThermometer), "{what:?}");
        assert_eq!((one.before, one.before_half), (one.after, one.after_half));
    }
    assert_eq!(figure(&night, Fitted::Draw).untold, None);
    let ahead = night.ahead.expect("a prediction");
    assert_eq!((ahead.cabin_k, ahead.held_c), (None, None));
    assert!(ahead.used_ah.predicted > 0.0);
    // Of cabin figures nothing goes into the plan.
    let taken = night.taken.expect("the draw at least");
    assert_eq!(taken.cabin, plan().cabin);
}

#[test]
fn what_else_a_log_lacks_is_said() {
    let log = a_night(8.0);
    let of = |log: &Log, plan: &Plan, what| figure(&fitted(plan, log), what).untold;
    let no_outdoors = changed(&log, |sample| sample.outdoor_c = None);
    assert_eq!(
        of(&no_outdoors, &plan(), Fitted::DrawSlope),
        Some(Untold::NoOutdoors)
    );
    let no_volts = changed(&log, |sample| sample.volts = None);
    assert_eq!(
        of(&no_volts, &plan(), Fitted::Usable),
        Some(Untold::NoVolts)
    );
    // The unit's circuit off: what is left is the fridge.
    let idle = changed(&log, |sample| {
        (sample.amps, sample.watts) = (Some(1.5), Some(38.0));
    });
    assert_eq!(of(&idle, &plan(), Fitted::Draw), Some(Untold::UnitOff));
    let mut follows = plan();
    follows.units[0].cooling.control = Some(Control::Modulating);
    assert_eq!(of(&log, &follows, Fitted::Draw), Some(Untold::FollowsLoad));
    let sparse = means_of(&log, 5);
    assert_eq!(
        of(&sparse, &plan(), Fitted::Draw),
        Some(Untold::RowsTooFarApart)
    );
    assert_eq!(of(&sparse, &plan(), Fitted::CabinLoss), None);
}

#[test]
fn a_short_log_and_a_bad_plan_are_refused_in_words() {
    let f = Formatter::ENGLISH;
    let short = logged_night(&plan(), &a_night(2.0), MeterSd::default());
    assert!(matches!(short, LoggedNight::TooShort { .. }), "{short:?}");
    let said = claims::night_state(f, &short);
    assert!(said.contains("3\u{202f}h"), "{said}");
    let mut other = plan();
    other.banks[0].battery_nominal_v = Some(12.8);
    other.banks[0].series_count = 1;
    let refused = logged_night(&other, &a_night(4.0), MeterSd::default());
    let said = claims::night_state(f, &refused);
    assert!(said.contains("12.8\u{202f}V"), "{said}");
    let mut bad = plan();
    bad.units[0].modes.clear();
    let unready = logged_night(&bad, &a_night(4.0), MeterSd::default());
    assert_eq!(unready, LoggedNight::PlanUnready);
    assert!(!claims::night_state(f, &unready).is_empty());
}

#[test]
fn gaps_are_passed_over() {
    let log = a_night(9.0);
    let whole = fitted(&plan(), &log);
    let mut gappy = log.clone();
    let start_s = log.samples[0].time_s;
    gappy
        .samples
        .retain(|sample| !(7200.0..10_800.0).contains(&(sample.time_s - start_s)));
    let with_gap = fitted(&plan(), &changed(&gappy, |_| ()));
    assert!((whole.covered_h - with_gap.covered_h - 1.0).abs() < 0.2);
    let (a, b) = (
        figure(&whole, Fitted::CabinLoss),
        figure(&with_gap, Fitted::CabinLoss),
    );
    assert!((a.after - b.after).abs() < b.after_half, "{a:?} {b:?}");
}

/// With nothing to be found but what the plan has, the last third comes out as it was:
/// our own model foretold by itself.
#[test]
fn a_night_as_planned_is_predicted() {
    let night = fitted(&plan(), &a_night(10.0));
    let ahead = night.ahead.expect("a prediction");
    let cabin = ahead.cabin_k.expect("a thermometer");
    assert!(cabin.root_mean_square < 0.25, "{cabin:?}");
    let used = ahead.used_ah;
    assert!(
        (used.predicted / used.measured - 1.0).abs() < 0.1,
        "{used:?}"
    );
    assert_eq!(night.start_clock_min, 20 * 60);
}

#[test]
fn clocks_are_taken_from_the_log() {
    let rows = |from: &str| {
        let rows = (0..200).map(|k| format!("{from}{:02}:{:02},26,1.5,25", 1 + k / 60, k % 60));
        rows.collect::<Vec<_>>().join("\n")
    };
    let read = |head: &str, from: &str| {
        let text = format!("{head},bank V,draw A,cabin °C\n{}\n", rows(from));
        read_all(text.as_bytes(), Options::default())
            .expect("read")
            .0
    };
    assert_eq!(read("clock", "").notes.clock, ClockTimes::Local);
    assert_eq!(read("elapsed h:mm", "").notes.clock, ClockTimes::Elapsed);
    let dated = read("time", "2026-08-01 ");
    assert_eq!(dated.notes.clock, ClockTimes::Local);
    assert_eq!(fitted(&plan(), &dated).start_clock_min, 60);
}

#[test]
fn the_invented_night_is_read_fitted_and_told() {
    let (log, layout) = read_all(invented_night().as_bytes(), Options::default()).expect("read");
    let roles: Vec<Role> = layout.columns.iter().map(|column| column.role).collect();
    use Role::{Amps, Outdoors, Temperature, Time, Volts};
    assert_eq!(roles, [Time, Volts, Amps, Temperature, Outdoors]);
    let plan = Plan::demo();
    let found = night(&plan, &log, LogMeter::default()).finish();
    let f = Formatter::ENGLISH;
    for row in claims::night_rows(f, &found) {
        println!("{row:?}");
    }
    for note in claims::night_notes(f, &plan, &found) {
        println!("{note}");
    }
    let LoggedNight::Fitted(found) = found else {
        panic!("{found:?}");
    };
    let ahead = found.ahead.as_ref().expect("a prediction");
    for said in [
        claims::night_cabin(f, ahead),
        claims::night_used(f, ahead),
        claims::night_volts(f, ahead),
    ] {
        println!("{said}");
    }
    assert_eq!(found.start_clock_min, 20 * 60 + 39);
    assert_eq!(figure(&found, Fitted::CabinLoss).untold, None);
    let taken = found.taken.expect("fitted figures");
    assert_eq!(taken.errors(), Vec::new());
    assert_ne!(*taken, plan);
    // A log without thermometers is fitted all the same.
    let (bare, _) = read_all(invented().as_bytes(), Options::default()).expect("read");
    let bare = night(&plan, &bare, LogMeter::default()).finish();
    assert!(matches!(bare, LoggedNight::Fitted(_)), "{bare:?}");
}

/// What goes into the plan is what was shown: the draw and its slope in the weather that
/// was met, by the unit's own curves.
#[test]
fn the_plan_takes_what_was_shown() {
    let (log, _) = read_all(invented_night().as_bytes(), Options::default()).expect("read");
    let plan = Plan::demo();
    let LoggedNight::Fitted(found) = night(&plan, &log, LogMeter::default()).finish() else {
        panic!("not fitted");
    };
    let taken = found.taken.as_deref().expect("fitted figures");
    let pressure_pa = Scene::new(taken).expect("a scene").pressure_pa();
    let unit = UnitModel::new(taken, 0, 1, pressure_pa).expect("a unit");
    let middle_c = found.middle_c.expect("a unit that ran");
    let draw_w = |off_k: f64| unit.settled_run(middle_c + off_k).draw_w;
    let (draw, slope) = (
        figure(&found, Fitted::Draw),
        figure(&found, Fitted::DrawSlope),
    );
    assert!((draw_w(0.0) / draw.after - 1.0).abs() < 0.005, "{draw:?}");
    let slope_percent_k = 100.0 * (draw_w(0.5) / draw_w(-0.5)).ln();
    assert!(
        (slope_percent_k - slope.after).abs() < 0.1,
        "{slope_percent_k} {slope:?}"
    );
    // Cooling for each watt follows, to the share by which the slope moves it.
    let run = unit.settled_run(middle_c);
    let per_watt = figure(&found, Fitted::CoolingPerWatt);
    assert!((run.cooling_w / run.draw_w / per_watt.after - 1.0).abs() < 0.02);
}

/// A run that the battery's own electronics end tells what was in it.
#[test]
fn a_bank_run_down_tells_its_usable_energy() {
    let mut plan = plan();
    plan.banks[0].parallel_count = 1;
    plan.banks[0].battery_current_limit_a = None;
    plan.banks[0].depth_percent = Some(100.0);
    // More beside the unit, so that it is empty by the morning.
    plan.loads[0].power_w = Figure::measured(150.0);
    let truth = Truth {
        usable: 0.9,
        ..Truth::AS_PLANNED
    };
    let log = logged(&plan, &truth, 20.0, STILL, &mut Chance(5));
    let ended = log
        .samples
        .iter()
        .position(|sample| sample.watts.is_some_and(|watts| watts < 5.0));
    let ended = ended.expect("an empty bank");
    let mut cut = log.clone();
    cut.samples.truncate(ended + 10);
    let last_s = cut.samples[ended].time_s;
    let cut = changed(&cut, |sample| {
        if sample.time_s >= last_s {
            (sample.volts, sample.amps, sample.watts) = (Some(0.0), Some(0.0), Some(0.0));
        }
    });
    let usable = figure(&fitted(&plan, &cut), Fitted::Usable);
    println!("{usable:?}");
    assert_eq!(usable.untold, None);
    let miss = usable.after - 0.9 * usable.before;
    assert!(miss.abs() < usable.after_half, "{usable:?}");
}
