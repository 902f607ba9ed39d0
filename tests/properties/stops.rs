//! What stops the unit, what stops everything, and when they come back: days that
//! once went wrong, and small ones whose answer is plain.
//!
//! Figures invented. What must come out is a law (a unit that never runs is no
//! load) or the steady run of the same loads, which the published checks hold.

use till_morning::{
    answer::{
        DayAnswer,
        day::{DayEvent, Happening, day},
    },
    physics::battery::Chemistry,
    plan::{Bank, Figure, Load, Mode, ModeRow, Plan, open::plan_from_json, supply::Array},
    simulate::Stop,
};

fn read(text: &str) -> Plan {
    plan_from_json(text).expect("a plan")
}

fn answered(plan: &Plan) -> DayAnswer {
    day(plan).unwrap_or_else(|| panic!("{:?}", plan.errors()))
}

/// The same plan with no mode planned. Aired instead of shut up: so the bank's
/// temperature must be given where it matters.
fn loads_only(plan: &Plan) -> DayAnswer {
    let mut plan = plan.clone();
    plan.mode_plan = vec![ModeRow::default()];
    answered(&plan)
}

fn count(day: &DayAnswer, is: fn(&Happening) -> bool) -> usize {
    day.events.iter().filter(|event| is(&event.what)).count()
}

fn stops(day: &DayAnswer) -> usize {
    count(day, |what| matches!(what, Happening::UnitStopped { .. }))
}

fn backs(day: &DayAnswer) -> usize {
    count(day, |what| matches!(what, Happening::BackOn))
}

#[track_caller]
fn is_as_without_the_unit(plan: &Plan) {
    let (day, alone) = (answered(plan), loads_only(plan));
    assert_eq!(day.energy.unit_wh, 0.0);
    let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * b.abs().max(1.0);
    assert!(
        near(day.energy.loads_wh, alone.energy.loads_wh),
        "{:?} {:?}",
        day.energy,
        alone.energy
    );
    let hours = |day: &DayAnswer| day.empty_h.unwrap_or(day.span_h);
    assert!(
        near(hours(&day), hours(&alone)),
        "{:?} {:?}",
        day.empty_h,
        alone.empty_h
    );
    assert!(day.energy.gap_wh.abs() <= 1e-9 * day.energy.throughput_wh());
}

const NEVER: [&str; 3] = [
    include_str!("plans/unit_of_another_voltage.json"),
    include_str!("plans/unit_of_another_voltage_bigger.json"),
    include_str!("plans/inverter_that_never_starts.json"),
];

/// A unit that can never start takes nothing, and nothing from the others: it is
/// tried at its mode's start, and not again while nothing has come in.
#[test]
fn a_unit_that_never_starts_leaves_the_loads_on() {
    for text in NEVER {
        let mut plan = read(text);
        // Aired or shut up, the bank is as warm.
        plan.supply.bank_c = Some(Figure::exact(25.0));
        is_as_without_the_unit(&plan);
        let day = answered(&plan);
        // Once a night, while anything is on.
        assert!(
            (1..=day.days.len()).contains(&stops(&day)),
            "{:?}",
            day.events
        );
        let planned_h = 10.0 * day.days.len() as f64;
        let off_h: f64 = day.days.iter().map(|sum| sum.unit_off_h + sum.dark_h).sum();
        assert!(off_h >= planned_h - 1e-6, "{off_h}");
    }
}

/// A tenth of a watt is next to nothing: the loads run as long as without it.
#[test]
fn a_unit_of_a_tenth_of_a_watt_is_next_to_none() {
    let mut plan = read(include_str!("plans/lead_acid_to_its_end.json"));
    plan.supply.bank_c = Some(Figure::exact(25.0));
    let (day, alone) = (answered(&plan), loads_only(&plan));
    let (with_h, without_h) = (day.empty_h.unwrap(), alone.empty_h.unwrap());
    assert!(
        (with_h - without_h).abs() < 0.01 * without_h,
        "{with_h} {without_h}"
    );
}

/// What bank, size or heat does a unit that never starts: nothing.
#[test]
fn hotter_and_bigger_do_nothing_to_a_unit_that_never_starts() {
    for text in NEVER {
        let mut plan = read(text);
        plan.supply.bank_c = Some(Figure::exact(25.0));
        let hours = |plan: &Plan| answered(plan).empty_h.unwrap_or(48.0);
        let before_h = hours(&plan);
        for hotter_k in [1.0, 4.0, 10.0] {
            let mut hotter = plan.clone();
            for figure in [&mut hotter.day.high_c, &mut hotter.day.low_c] {
                *figure = figure.map(|figure| figure.with(figure.value + hotter_k));
            }
            assert!((hours(&hotter) - before_h).abs() < 1e-9);
        }
        for factor in [1.1, 2.0, 5.0] {
            let mut bigger = plan.clone();
            bigger.banks[0].battery_rated_ah.value *= factor;
            let bigger_h = hours(&bigger);
            assert!(bigger_h >= before_h - 1e-9, "{bigger_h} {before_h}");
        }
    }
}

/// Nothing charges: what is empty stays so, at one per cent deep as at any depth.
#[test]
fn nothing_comes_back_by_itself() {
    for text in [
        include_str!("plans/one_percent_deep.json"),
        include_str!("plans/chatter_at_one_percent.json"),
        include_str!("plans/inverter_that_never_starts.json"),
    ] {
        let day = answered(&read(text));
        assert_eq!(backs(&day), 0);
        let empties = count(&day, |what| matches!(what, Happening::Empty { .. }));
        assert_eq!(empties, 1, "{:?}", day.events);
    }
}

/// The warmest cabin of a held night does not count how it was cooled down before:
/// it follows the outdoors, but for where in its band the air happens to be.
#[test]
fn the_warmest_held_cabin_follows_the_outdoors() {
    let mut plan = read(include_str!("plans/pulled_down.json"));
    plan.night.wanted_h = 10.0;
    let band_k = plan
        .number(till_morning::plan::path::Path::Cabin(
            till_morning::plan::cabin::CabinField::DeadBandK,
        ))
        .unwrap();
    let set_c = answered(&plan).set_point_c;
    let mut warmest_c = Vec::new();
    for hotter_k in [0.0, 1.0, 2.0, 4.0] {
        let mut hotter = plan.clone();
        (hotter.day.high_c, hotter.day.low_c) = (
            Some(Figure::exact(34.0 + hotter_k)),
            Some(Figure::exact(24.0 + hotter_k)),
        );
        let day = answered(&hotter);
        assert_eq!(day.lost_h, None);
        warmest_c.push(day.warmest_c);
    }
    for warmest in &warmest_c {
        assert!(*warmest <= set_c + 0.5 * band_k + 0.05, "{warmest_c:?}");
    }
}

/// A bank of lithium, and a unit on it with loads beside.
fn plan(power_w: f64, load_w: f64) -> Plan {
    let mut plan = Plan::of(
        Bank::of(Chemistry::Lfp, 12.8, 100.0),
        Mode::of_power("Cool", Figure::exact(power_w)),
    );
    plan.banks[0].parasitic_w = Some(Figure::exact(0.0));
    plan.loads = vec![Load {
        name: "Fridge".into(),
        power_w: Figure::exact(load_w),
    }];
    plan.day.days_count = Some(1);
    plan.day.samples_count = Some(0);
    plan.supply.bank_c = Some(Figure::exact(25.0));
    plan
}

fn first_stop(day: &DayAnswer) -> Option<DayEvent> {
    let is = |event: &&DayEvent| {
        matches!(
            event.what,
            Happening::UnitStopped { .. } | Happening::Empty { .. }
        )
    };
    day.events.iter().find(is).copied()
}

/// Current limit of the BMS: the unit's start trips it, and everything is dark. It
/// is told as that. The loads alone would have run: by the steady integral.
#[test]
fn a_start_that_trips_the_bms_is_told_as_that() {
    let mut plan = plan(400.0, 60.0);
    plan.banks[0].battery_current_limit_a = Some(Figure::exact(20.0));
    let day = answered(&plan);
    let Some(DayEvent {
        hours_h,
        what:
            Happening::Empty {
                stop: Stop::CurrentLimit { limit_a },
                starting,
            },
    }) = first_stop(&day)
    else {
        panic!("{:?}", day.events)
    };
    assert_eq!((hours_h, limit_a), (0.0, 20.0));
    assert_eq!(starting.map(|at| (at.unit, at.mode)), Some((0, 0)));
    // A BMS that has opened carries nothing.
    assert_eq!(day.energy.loads_wh, 0.0);
    assert_eq!(backs(&day), 0);
    assert!(loads_only(&plan).empty_h.unwrap() > 15.0);
}

/// The same limit on a bank whose volts never let the unit turn on: its draw, which
/// would trip the BMS, never comes.
#[test]
fn what_is_met_first_on_the_way_up_acts() {
    let mut plan = plan(400.0, 60.0);
    plan.banks[0].battery_current_limit_a = Some(Figure::exact(20.0));
    plan.units[0].cutoff_v = Some(Figure::exact(21.0));
    let day = answered(&plan);
    let stop = first_stop(&day).unwrap();
    assert!(
        matches!(
            stop.what,
            Happening::UnitStopped {
                stop: Stop::UnitCutOff { .. }
            }
        ),
        "{stop:?}"
    );
    is_as_without_the_unit(&plan);
}

/// A power that no current carries through a long thin cable leaves the loads on.
/// (A constant power P behind R has a current while E² > 4 R P.)
#[test]
fn a_power_that_no_current_carries_stops_the_unit_alone() {
    let mut plan = plan(400.0, 60.0);
    let cable = &mut plan.units[0].cable;
    (cable.length_m, cable.connections_mohm) = (Some(0.0), 120.0);
    plan.units[0].cutoff_v = Some(Figure::exact(0.1));
    // 13.5² = 182 < 4 · 0.12 · 400 = 192.
    let day = answered(&plan);
    let stop = first_stop(&day).unwrap();
    assert!(
        matches!(
            stop.what,
            Happening::UnitStopped {
                stop: Stop::NoCurrentCarriesIt
            }
        ),
        "{stop:?}"
    );
    is_as_without_the_unit(&plan);
    // And with a tenth less draw it runs: 4 · 0.12 · 320 = 154.
    plan.units[0].modes = vec![Mode::of_power("Cool", Figure::exact(320.0))];
    plan.day.high_c = Some(Figure::exact(40.0));
    let day = answered(&plan);
    assert!(day.energy.unit_wh > 0.0, "{:?}", day.events);
}

/// The loads that a stopped unit leaves on last as long as the steady run of them.
#[test]
fn loads_last_as_the_steady_run_says() {
    let mut plan = plan(400.0, 60.0);
    plan.units[0].cutoff_v = Some(Figure::exact(21.0));
    let day_h = answered(&plan).empty_h.unwrap();
    let steady = Plan {
        loads: Vec::new(),
        ..plan_of_load(&plan, 60.0)
    };
    let steady_h = till_morning::answer::night(&steady).runs[0].hours_h.likely;
    assert!(
        (day_h - steady_h).abs() < 1e-3 * steady_h,
        "{day_h} {steady_h}"
    );
}

/// A bank with a load in the unit's place.
fn plan_of_load(like: &Plan, load_w: f64) -> Plan {
    let mut plan = Plan::of(
        like.banks[0].clone(),
        Mode::of_power("load", Figure::exact(load_w)),
    );
    let cable = &mut plan.units[0].cable;
    (cable.length_m, cable.connections_mohm) = (Some(0.0), 0.0);
    plan.units[0].cutoff_v = Some(Figure::exact(0.1));
    plan
}

/// Another mode is another try: a strong one that stops, then one that is carried.
#[test]
fn another_mode_is_tried() {
    let mut plan = plan(400.0, 60.0);
    let cable = &mut plan.units[0].cable;
    (cable.length_m, cable.connections_mohm) = (Some(0.0), 120.0);
    plan.units[0].cutoff_v = Some(Figure::exact(0.1));
    plan.units[0]
        .modes
        .push(Mode::of_power("Low", Figure::exact(100.0)));
    plan.day.high_c = Some(Figure::exact(40.0));
    plan.day.low_c = Some(Figure::exact(33.0));
    let row = |from_min, mode| ModeRow {
        from_clock_min: Some(from_min),
        mode: Some(mode),
        ..ModeRow::default()
    };
    plan.mode_plan = vec![row(21 * 60, 0), row(23 * 60, 1)];
    plan.night.start_clock_min = 21 * 60;
    let day = answered(&plan);
    let first_run = day.trace.iter().find(|point| point.unit_w > 1.0).unwrap();
    assert!(
        first_run.hours_h > 2.0 && first_run.hours_h < 2.4,
        "{first_run:?}"
    );
    let off_h: f64 = day.days.iter().map(|sum| sum.unit_off_h).sum();
    assert!((off_h - 2.0).abs() < 1e-6, "{off_h}");
}

/// Sun on an emptied bank brings it back, with charge that came in: at ordinary
/// depth and at the least.
#[test]
fn sun_brings_it_back() {
    for depth_percent in [80.0, 10.0, 1.7] {
        let mut plan = plan(400.0, 60.0);
        plan.banks[0].depth_percent = Some(depth_percent);
        plan.day.days_count = Some(2);
        plan.supply.arrays = vec![Array {
            rated_w: Some(Figure::exact(400.0)),
            ..Array::default()
        }];
        let day = answered(&plan);
        assert!(backs(&day) > 0, "{depth_percent}");
        assert!(day.events.len() < 600);
    }
}
