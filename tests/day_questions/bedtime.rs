//! The bedtime line, against drawn nights with that change written into the plan.

use till_morning::{
    answer::day::{Bedtime, BedtimeLine, Latest, bedtime_lines},
    plan::{ModeRow, Plan},
    study::spread::Sampler,
};

/// The demo on a smaller bank, in Plunge: set so cool that no mode
/// ever rests: it does not reach the morning.
fn short() -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan.banks[0].parallel_count = 1;
    plan.banks[0].battery_rated_ah.value = 170.0;
    plan.cabin.set_point_c = Some(11.0);
    plan.night.asked_mode = 0;
    plan
}

fn row(from_clock_min: u32, mode: Option<usize>) -> ModeRow {
    ModeRow {
        from_clock_min: Some(from_clock_min),
        unit: 0,
        mode,
    }
}

/// The plan with the change written into it, drawn by the sampler.
fn lasting_percent(plan: &Plan, at_min: u32, to: Option<usize>) -> f64 {
    let mut changed = plan.clone();
    let wanted_min = (21 * 60 + 600) % 1440;
    changed.mode_plan = vec![row(wanted_min, None)];
    if at_min != 21 * 60 {
        changed.mode_plan.push(row(21 * 60, Some(0)));
    }
    changed.mode_plan.push(row(at_min % 1440, to));
    let mut sampler = Sampler::new(&changed).unwrap();
    sampler.step(60);
    sampler.finish().unwrap().odds.lasting_percent
}

fn hours(line: &BedtimeLine) -> f64 {
    match line.latest {
        Latest::NoNeed { .. } => f64::INFINITY,
        Latest::By { hours_h, .. } => hours_h,
        Latest::TooLate { .. } => -1.0,
    }
}

#[test]
fn nine_in_ten_nights_last_by_the_line_and_fewer_a_step_later() {
    let plan = short();
    let lines = bedtime_lines(&plan).unwrap();
    assert_eq!(lines.len(), 3);
    let mut times = 0;
    for line in &lines {
        let Latest::By {
            clock_min,
            lasting_percent: said,
            ..
        } = line.latest
        else {
            continue;
        };
        times += 1;
        let to = line.to.map(|to| to.mode);
        // Off has no mode of its own to be drawn: a row says so all the same.
        let there = lasting_percent(&plan, clock_min, to);
        assert!(there >= 90.0, "{line:?} {there}");
        assert!((there - said).abs() < 1e-9, "{line:?} {there}");
        let later = lasting_percent(&plan, clock_min + line.resolution_min, to);
        assert!(later < 90.0, "{line:?} {later}");
    }
    assert!(times >= 2, "{lines:?}");
    // The lower the mode, the later one may go to bed.
    assert!(
        lines.windows(2).all(|two| hours(&two[0]) <= hours(&two[1])),
        "{lines:?}"
    );
}

#[test]
fn a_larger_bank_never_has_an_earlier_line() {
    let mut before: Option<Vec<BedtimeLine>> = None;
    for ah in [40.0, 100.0, 140.0, 170.0, 200.0, 250.0, 900.0] {
        let mut plan = short();
        plan.banks[0].battery_rated_ah.value = ah;
        let lines = bedtime_lines(&plan).unwrap();
        if let Some(before) = &before {
            for (was, is) in before.iter().zip(&lines) {
                assert!(hours(is) >= hours(was), "{ah} {was:?} {is:?}");
            }
        }
        before = Some(lines);
    }
    // At last there is no need for a change.
    let at_last = before.unwrap();
    assert!(
        at_last
            .iter()
            .all(|line| matches!(line.latest, Latest::NoNeed { .. }))
    );
}

/// However it is sliced; and nothing where nothing is planned.
#[test]
fn slices_make_the_same_line() {
    let plan = short();
    let mut bedtime = Bedtime::new(&plan).unwrap();
    assert!(bedtime.finish().is_none());
    while !bedtime.step(7) {}
    assert_eq!(bedtime.finish(), bedtime_lines(&plan));
    let mut off = plan;
    off.mode_plan = vec![row(0, None)];
    assert!(Bedtime::new(&off).is_none());
}
