//! The midnight check-in, against days whose truth is known because we made it.

use till_morning::{
    answer::day::{Advice, CheckInAnswer, CheckInWork, DayPoint, Fit, check_in, day},
    plan::{CheckIn, Draw, Figure, ModeRow, Plan},
};

fn guess(value: f64) -> Option<Figure> {
    Some(Figure::guess(value))
}

/// The demo with cabin and cooling stated, one day.
fn stated() -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan.cabin.shell_w_m2_k = guess(1.4);
    plan.cabin.glass_w_m2_k = guess(2.8);
    plan.cabin.air_changes_per_h = guess(1.0);
    plan.cabin.aired_changes_per_h = guess(15.0);
    plan.cabin.start_c = guess(30.0);
    for (mode, watts) in plan.units[0].modes.iter_mut().zip([2000.0, 1250.0, 770.0]) {
        mode.cooling_w = guess(watts);
        // Nobody has measured it.
        if let Draw::Power { power_w } = &mut mode.draw {
            *power_w = Figure {
                spread_percent: Some(40.0),
                ..Figure::guess(power_w.value)
            };
        }
    }
    plan.units[0].cooling.cooling_w = guess(2000.0);
    plan
}

/// The same with the truth in it: loss, draw and usable energy times so much.
fn truth(plan: &Plan, loss: f64, draw: f64, usable: f64) -> Plan {
    let mut plan = plan.clone();
    let cabin = &mut plan.cabin;
    for figure in [
        &mut cabin.shell_w_m2_k,
        &mut cabin.glass_w_m2_k,
        &mut cabin.air_changes_per_h,
        &mut cabin.aired_changes_per_h,
    ] {
        *figure = figure.map(|figure| figure.with(figure.value * loss));
    }
    for mode in &mut plan.units[0].modes {
        if let Draw::Power { power_w } = &mut mode.draw {
            power_w.value *= draw;
        }
    }
    plan.banks[0].battery_rated_ah.value *= usable;
    plan
}

/// The point of a trace at an hour.
fn point(trace: &[DayPoint], at_h: f64) -> &DayPoint {
    let near = |point: &&DayPoint| (point.hours_h - at_h).abs() < 1e-6;
    trace.iter().find(near).unwrap()
}

/// Readings of a true day, exact to the last digit; spreads as of good instruments.
fn read(plan: &Plan, truth: &Plan, hours: &[f64]) -> Plan {
    let trace = day(truth).unwrap().trace;
    let mut plan = plan.clone();
    plan.check_ins = hours
        .iter()
        .map(|&at_h| {
            let point = point(&trace, at_h);
            // The trace has means of ten minutes.
            let next = trace
                .iter()
                .find(|next| next.hours_h > at_h + 1e-6)
                .unwrap();
            let clock_min = (21 * 60 + (60.0 * at_h).round() as u32) % (24 * 60);
            CheckIn {
                clock_min: Some(clock_min),
                day_count: None,
                // A shunt in the bank's own lead.
                charge_percent: Some(Figure {
                    spread_percent: Some(1.0),
                    ..Figure::measured(point.charge_percent)
                }),
                cabin_c: Some(Figure::measured(0.5 * (point.cabin_c + next.cabin_c))),
            }
        })
        .collect();
    plan
}

/// A reading that says what the plan had expected changes nothing.
#[test]
fn a_reading_as_expected_leaves_the_night() {
    let mut plan = stated();
    plan.banks[0].parallel_count = 1;
    plan.cabin.set_point_c = Some(14.0);
    let before = day(&plan).unwrap();
    let plan = read(&plan, &plan, &[3.0]);
    let answer = check_in(&plan).unwrap();
    assert_eq!((answer.at_h, answer.goal_h), (3.0, 10.0));
    assert!((answer.charge_percent - answer.expected_charge_percent).abs() < 0.5);
    assert!((answer.used_ratio_number.unwrap() - 1.0).abs() < 0.02);
    let (was, is) = (before.empty_h.unwrap(), answer.onward.empty_h.unwrap());
    assert!((was - is).abs() < 0.15, "{was} {is}");
    assert!(matches!(
        answer.fit,
        Fit::TooFew {
            readings_count: 1,
            ..
        }
    ));
    let first = answer.onward.trace[0];
    assert_eq!(first.hours_h, 3.0);
    assert!((first.charge_percent - answer.charge_percent).abs() < 1e-9);
}

fn at_midnight(charge_percent: f64) -> CheckInAnswer {
    let mut plan = stated();
    plan.check_ins = vec![CheckIn {
        clock_min: Some(130),
        charge_percent: Some(Figure::measured(charge_percent)),
        cabin_c: Some(Figure::measured(25.0)),
        ..CheckIn::default()
    }];
    plan.cabin.set_point_c = Some(12.0);
    check_in(&plan).unwrap()
}

/// The less is left, the lower the mode; at last nothing helps.
#[test]
fn advice_goes_down_with_the_charge() {
    let mut depths = Vec::new();
    for charge_percent in [95.0, 70.0, 50.0, 40.0, 25.0, 11.0] {
        let answer = at_midnight(charge_percent);
        assert!((answer.at_h - 310.0 / 60.0).abs() < 1e-9);
        let (depth, chances) = match answer.advice.unwrap() {
            Advice::GoOn { chances } => (0, chances),
            Advice::SwitchNow { to, chances } => (to.map_or(10, |to| to.mode), chances),
            Advice::NothingReaches { chances } => {
                assert!(chances.lasting_percent < 90.0);
                depths.push(11);
                continue;
            }
        };
        assert!(chances.lasting_percent >= 90.0);
        // What was not enough was tried first.
        let as_planned = answer.chances.unwrap();
        assert_eq!(depth == 0, as_planned.lasting_percent >= 90.0);
        depths.push(depth);
    }
    assert!(depths.windows(2).all(|two| two[0] <= two[1]), "{depths:?}");
    assert_eq!((depths[0], depths[5]), (0, 11), "{depths:?}");
    assert!(
        depths[1..5].iter().any(|&depth| depth == 2 || depth == 10),
        "{depths:?}"
    );
}

/// A cabin that leaks more and a unit that draws more than the plan says. Four
/// hours without the unit tell the loss, the hours with it the draw.
#[test]
fn a_night_of_readings_tells_loss_and_draw() {
    let mut plan = stated();
    // The bank is known.
    plan.banks[0].battery_rated_ah = Figure::exact(105.0);
    plan.banks[0].health_percent = Some(Figure::exact(100.0));
    let row = |clock_min, mode| ModeRow {
        from_clock_min: Some(clock_min),
        unit: 0,
        mode,
    };
    plan.mode_plan = vec![
        row(21 * 60, Some(0)),
        row(60, None),
        row(5 * 60, Some(1)),
        row(10 * 60, None),
    ];
    plan.night.wanted_h = 13.0;
    // Closed up while the unit is off, so that it is the cabin that is seen.
    plan.cabin.aired_changes_per_h = guess(1.0);
    let truth = truth(&plan, 1.2, 1.25, 1.0);
    let plan = read(
        &plan,
        &truth,
        &[1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0],
    );
    let answer = check_in(&plan).unwrap();
    let Fit::Fitted {
        cabin_loss,
        draw,
        usable,
        misfit_number,
        readings_count,
    } = answer.fit
    else {
        panic!("{:?}", answer.fit);
    };
    assert_eq!(readings_count, 10);
    assert!(cabin_loss.is_told && draw.is_told && !usable.is_told);
    let off = |after: f64, true_number: f64, sd: f64| (after - true_number).abs() / sd;
    assert!(
        off(cabin_loss.after_number, 1.2, cabin_loss.sd_after_number) < 2.0,
        "{cabin_loss:?}"
    );
    assert!(
        off(draw.after_number, 1.25, draw.sd_after_number) < 2.0,
        "{draw:?}"
    );
    assert!((usable.after_number - 1.0).abs() < 0.01);
    assert!(cabin_loss.sd_after_number < cabin_loss.sd_before_number);
    assert!(misfit_number < 1.0, "{misfit_number}");
    let fitted = answer.fit.applied_to(&plan).unwrap();
    let shell = |plan: &Plan| plan.cabin.shell_w_m2_k.unwrap();
    assert!((shell(&fitted).value / shell(&plan).value - cabin_loss.after_number).abs() < 1e-9);
}

/// Charge alone tells the ratio of draw to usable energy, and neither.
#[test]
fn charge_alone_tells_a_ratio() {
    let mut plan = stated();
    plan.loads.clear();
    // The unit never rests, and no cabin changes that.
    plan.cabin.set_point_c = Some(12.0);
    plan.units[0].modes[1].cooling_w = guess(300.0);
    plan.banks[0].battery_rated_ah = Figure {
        spread_percent: Some(20.0),
        ..Figure::guess(105.0)
    };
    let truth = truth(&plan, 1.0, 1.15, 0.95);
    let mut plan = read(&plan, &truth, &[0.5, 2.0, 4.0, 6.0]);
    for reading in &mut plan.check_ins {
        reading.cabin_c = None;
    }
    let answer = check_in(&plan).unwrap();
    let (Fit::Fitted { draw, usable, .. } | Fit::Untold { draw, usable, .. }) = answer.fit else {
        panic!("{:?}", answer.fit);
    };
    let ratio = draw.after_number / usable.after_number;
    assert!((ratio / (1.15 / 0.95) - 1.0).abs() < 0.02, "{ratio}");
    // Each stays nearly as unsure as before.
    assert!(
        usable.sd_after_number > 0.6 * usable.sd_before_number,
        "{usable:?}"
    );
}

/// Readings with nothing in them tell nothing, and say so in plain numbers.
#[test]
fn readings_that_tell_nothing_say_so() {
    let mut plan = stated();
    // Within ten minutes, of a bank at rest.
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        ..ModeRow::default()
    }];
    plan.check_ins = [0, 4, 8]
        .map(|minute| CheckIn {
            clock_min: Some(21 * 60 + minute),
            charge_percent: Some(Figure::measured(100.0)),
            ..CheckIn::default()
        })
        .to_vec();
    let answer = check_in(&plan).unwrap();
    let Fit::Untold {
        cabin_loss,
        draw,
        usable,
        ..
    } = answer.fit
    else {
        panic!("{:?}", answer.fit);
    };
    for factor in [cabin_loss, draw, usable] {
        assert!((factor.after_number - 1.0).abs() < 0.02, "{factor:?}");
        assert!((factor.sd_after_number / factor.sd_before_number - 1.0).abs() < 0.02);
    }
    assert!(answer.fit.applied_to(&plan).is_none());
    assert!(answer.used_ratio_number.is_none());
    // None at all, or none that says when.
    plan.check_ins = vec![CheckIn::default()];
    assert!(check_in(&plan).is_none());
    // However it is sliced.
    let plan = read(&stated(), &stated(), &[1.0, 2.0, 3.0]);
    let mut work = CheckInWork::new(&plan).unwrap();
    while !work.step(1) {}
    assert_eq!(work.finish(), check_in(&plan));
}
