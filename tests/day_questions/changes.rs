//! What would buy more hours. Each change is held against the plan that has it.

use till_morning::{
    answer::day::{Change, MoreHours, Ranker, day, more_hours},
    physics::battery::Chemistry,
    plan::{
        Bank, Figure, Mode, ModeRow, Plan,
        cabin::{Covers, Insulation},
    },
};

fn found(more: &MoreHours, is: impl Fn(&Change) -> bool) -> Option<usize> {
    more.changes.iter().position(|ranked| is(&ranked.change))
}

/// A fridge alone on a bank: hours are watt-hours over watts, on paper.
#[test]
fn a_second_string_doubles_the_hours_of_a_steady_load() {
    let mut plan = Plan::of(
        Bank::of(Chemistry::Lfp, 12.8, 100.0),
        Mode::of_power("On", Figure::exact(1.0)),
    );
    plan.banks[0].battery_resistance_mohm = Some(Figure::exact(0.0));
    plan.banks[0].parasitic_w = Some(Figure::exact(0.0));
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        ..ModeRow::default()
    }];
    plan.loads = vec![till_morning::plan::Load {
        name: "load".into(),
        power_w: Figure::exact(60.0),
    }];
    plan.day.days_count = Some(4);
    let more = more_hours(&plan).unwrap();
    let one = &more.changes[found(&more, |it| matches!(it, Change::OneMoreString { .. })).unwrap()];
    let ratio = one.worth.hours_h / more.now.hours_h;
    assert!((ratio - 2.0).abs() < 0.01, "{ratio}");
    // A battery of 1280 Wh at 110 Wh a kilogram (common practice, no source).
    assert!((one.mass_kg.unwrap() - 11.6).abs() < 0.1);
    // Without the load it lasts as long as the days tried: nothing gains more.
    let off = &more.changes[found(&more, |it| matches!(it, Change::LoadOff { .. })).unwrap()];
    assert_eq!(off.worth.hours_h, more.span_h);
}

/// What is gained is what the day itself says of the changed plan, to a step.
#[test]
fn gains_are_those_of_the_changed_plan() {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(3);
    let more = more_hours(&plan).unwrap();
    assert!(more.changes.len() >= 6, "{}", more.changes.len());
    for ranked in &more.changes {
        let changed = ranked.change.applied_to(&plan);
        assert_ne!(changed, plan, "{:?}", ranked.change);
        let day = day(&changed).unwrap();
        let hours_h = day.empty_h.unwrap_or(day.span_h);
        let off_h = (ranked.worth.hours_h - hours_h).abs();
        assert!(off_h < 0.7, "{:?} {off_h}", ranked.change);
    }
    let gains: Vec<f64> = more.changes.iter().map(|ranked| ranked.gained_h).collect();
    assert!(
        gains.windows(2).all(|two| two[0] >= two[1] - 0.1 - 1e-9),
        "{gains:?}"
    );
}

/// However the work is sliced; and a touch of a key leaves the order.
#[test]
fn the_order_stands() {
    let plan = Plan::demo();
    let whole = more_hours(&plan).unwrap();
    let mut ranker = Ranker::new(&plan).unwrap();
    while !ranker.step(3) {}
    assert_eq!(whole, ranker.finish().unwrap());
    let mut nudged = plan;
    nudged.loads[0].power_w.value *= 1.0 + 1e-7;
    let order = |more: &MoreHours| more.changes.iter().map(|it| it.change).collect::<Vec<_>>();
    assert_eq!(order(&whole), order(&more_hours(&nudged).unwrap()));
}

/// Only what applies, and what does not fit changes nothing.
#[test]
fn changes_fit_their_plan() {
    let mut plan = Plan::demo();
    plan.cabin.covers = Some(Covers::OutsideCovers);
    plan.cabin.insulation = Some(Insulation::Heavy);
    plan.cabin.shade_percent = Some(Figure::label(80.0));
    plan.loads.clear();
    let all = Change::all_for(&plan);
    let is_of_cabin = |change: &Change| {
        matches!(
            change,
            Change::Covers { .. } | Change::Insulation { .. } | Change::Shade { .. }
        )
    };
    assert!(!all.iter().any(is_of_cabin), "{all:?}");
    let foreign = Change::LoadOff { load: 7 };
    assert_eq!(foreign.applied_to(&plan), plan);
    // The lowest mode has no lower one.
    plan.night.asked_mode = 2;
    let has_lower = |plan: &Plan| {
        let all = Change::all_for(plan);
        all.iter().any(|it| matches!(it, Change::LowerMode { .. }))
    };
    assert!(!has_lower(&plan));
    // Nothing can be said of a plan that cannot be run.
    plan.day.latitude_deg = Some(91.0);
    assert!(more_hours(&plan).is_none());
}

/// The price of the bank over its strings, where there is one.
#[test]
fn a_string_costs_its_share_of_the_bank() {
    let mut plan = Plan::demo();
    let string = Change::OneMoreString { parallel_count: 3 };
    assert_eq!(string.cost(&plan), None);
    plan.price.price_number = Some(1200.0);
    assert_eq!(string.cost(&plan), Some(600.0));
    assert_eq!(Change::FullAtStart.cost(&plan), None);
    // A measured bank grows with its strings.
    plan.banks[0].measured.measured_ah = Some(Figure::measured(200.0));
    let more = string.applied_to(&plan);
    assert_eq!(more.banks[0].measured.measured_ah.unwrap().value, 300.0);
}

/// Where no change can gain an hour, the watt-hours to spare rank them: of a
/// string more they are those of its batteries.
#[test]
fn a_bank_that_never_ends_is_ranked_by_what_is_to_spare() {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(2);
    let more = more_hours(&plan).unwrap();
    assert_eq!(more.now.hours_h, more.span_h);
    let string =
        &more.changes[found(&more, |it| matches!(it, Change::OneMoreString { .. })).unwrap()];
    let battery_wh = 105.0 * 25.6;
    // Above the floor of 10 %; the same draw at a little less current.
    let off_wh = (string.gained_spare_wh - 0.9 * battery_wh).abs();
    assert!(off_wh < 0.02 * battery_wh, "{off_wh}");
    let spare: Vec<f64> = more.changes.iter().map(|it| it.gained_spare_wh).collect();
    let none_lost = more
        .changes
        .iter()
        .filter(|it| it.gained_h.abs() < 0.05)
        .count();
    assert!(
        spare[..none_lost]
            .windows(2)
            .all(|two| two[0] >= two[1] - 20.0),
        "{spare:?}"
    );
}
