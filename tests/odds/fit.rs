//! The check-in's fit: nights of which loss, draw and usable energy are drawn, read as
//! badly as instruments are, and fitted again.
//!
//! What is told of each factor is a value and a standard error, so the truth is to lie
//! within 1.2816 of it in 80 % and within 1.96 in 95 % of nights.

use super::truth::{Dice, truth};
use till_morning::{
    answer::day::{CheckInWork, DayPoint, Fit, FittedFactor, day},
    plan::{CheckIn, Draw, Figure, ModeRow, Plan},
};

/// Nights that are fitted: three factors each.
const NIGHTS: u32 = 250;
const REST_NIGHTS: u32 = 150;
/// Standard errors by which a counted share may be off.
const ERRORS: f64 = 3.0;
const HOURS: [f64; 6] = [1.0, 2.5, 4.0, 5.5, 7.0, 8.5];

fn figure(value: f64, spread_percent: f64) -> Option<Figure> {
    Some(Figure {
        spread_percent: Some(spread_percent),
        ..Figure::guess(value)
    })
}

/// The demonstration with what is fitted stated, its unit on, off and on again.
fn plan() -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan.supply.arrays.clear();
    plan.cabin.shell_w_m2_k = figure(1.4, 30.0);
    plan.cabin.glass_w_m2_k = figure(2.8, 30.0);
    plan.cabin.air_changes_per_h = figure(1.0, 30.0);
    plan.cabin.aired_changes_per_h = figure(1.0, 30.0);
    plan.cabin.start_c = figure(30.0, 0.0);
    for (mode, watts) in plan.units[0].modes.iter_mut().zip([2000.0, 1250.0, 770.0]) {
        mode.cooling_w = figure(watts, 0.0);
        if let Draw::Power { power_w } = &mut mode.draw {
            power_w.spread_percent = Some(30.0);
        }
    }
    plan.units[0].cooling.cooling_w = figure(2000.0, 0.0);
    plan.banks[0].battery_rated_ah.spread_percent = Some(10.0);
    plan.banks[0].health_percent = figure(100.0, 0.0);
    let row = |hour: u32, mode| ModeRow {
        from_clock_min: Some(60 * hour),
        unit: 0,
        mode,
    };
    plan.mode_plan = vec![row(21, Some(0)), row(0, None), row(4, Some(1))];
    plan
}

/// The same with loss, draw and usable energy times so much.
fn scaled(plan: &Plan, [loss, draw, usable]: [f64; 3]) -> Plan {
    let mut truth = plan.clone();
    let cabin = &mut truth.cabin;
    for figure in [
        &mut cabin.shell_w_m2_k,
        &mut cabin.glass_w_m2_k,
        &mut cabin.air_changes_per_h,
        &mut cabin.aired_changes_per_h,
    ] {
        *figure = figure.map(|figure| figure.with(figure.value * loss));
    }
    for mode in &mut truth.units[0].modes {
        if let Draw::Power { power_w } = &mut mode.draw {
            power_w.value *= draw;
        }
    }
    truth.banks[0].battery_rated_ah.value *= usable;
    truth
}

/// A plan with a true day's readings in it: charge to 1.5 % and cabin to 0.5 K at one
/// standard deviation, as a measured figure is by default.
fn read(plan: &Plan, trace: &[DayPoint], dice: &mut Dice) -> Plan {
    let mut plan = plan.clone();
    let reading = |&at_h: &f64| {
        let place = trace.iter().position(|point| point.hours_h > at_h - 1e-6);
        let [here, next] = trace[place.unwrap()..][..2] else {
            panic!("two points");
        };
        let charge_percent = here.charge_percent + 1.5 * dice.normal();
        // The trace has means of ten minutes.
        let cabin_c = 0.5 * (here.cabin_c + next.cabin_c) + 0.5 * dice.normal();
        CheckIn {
            clock_min: Some((21 * 60 + (60.0 * at_h).round() as u32) % (24 * 60)),
            day_count: None,
            charge_percent: Some(Figure::measured(charge_percent.min(100.0))),
            cabin_c: Some(Figure::measured(cabin_c)),
        }
    };
    plan.check_ins = HOURS.iter().map(reading).collect();
    plan
}

fn fitted(plan: &Plan) -> [FittedFactor; 3] {
    let mut work = CheckInWork::new(plan).unwrap();
    // As many steps as a fit takes at the most.
    work.step(12);
    match work.finish().unwrap().fit {
        Fit::Fitted {
            cabin_loss,
            draw,
            usable,
            ..
        }
        | Fit::Untold {
            cabin_loss,
            draw,
            usable,
            ..
        } => [cabin_loss, draw, usable],
        Fit::TooFew { .. } => panic!("six readings"),
    }
}

/// Standard deviations of loss, draw and usable energy by the plan's spreads.
const SDS: [f64; 3] = [0.15, 0.15, 0.05];

/// Nights in which each factor lay within 80 and 95 % of what was told, as shares. What
/// else is not as planned is up to `others`.
fn within(nights: u32, seed: u64, others: impl Fn(&Plan, &mut Dice) -> Plan) -> [[f64; 2]; 3] {
    let plan = plan();
    assert_eq!(plan.errors(), []);
    let mut dice = Dice::of(seed);
    let mut within = [[0.0; 2]; 3];
    for _ in 0..nights {
        let factors = SDS.map(|sd| 1.0 + sd * dice.normal());
        let truth = scaled(&others(&plan, &mut dice), factors);
        let trace = day(&truth).unwrap().trace;
        let found = fitted(&read(&plan, &trace, &mut dice));
        for (at, factor) in found.iter().enumerate() {
            assert!(
                (factor.sd_before_number - SDS[at]).abs() < 1e-9,
                "{factor:?}"
            );
            let off = (factor.after_number - factors[at]).abs() / factor.sd_after_number;
            let of_one = 1.0 / f64::from(nights);
            within[at][0] += if off < 1.281_552 { of_one } else { 0.0 };
            within[at][1] += if off < 1.959_964 { of_one } else { 0.0 };
        }
    }
    for (name, [eighty, ninety_five]) in ["loss", "draw", "usable"].iter().zip(within) {
        println!("{name}: {eighty:.3} within 80 %, {ninety_five:.3} within 95 %");
    }
    within
}

/// A counted share is what it is to be, within its binomial standard error.
#[track_caller]
fn is(found: f64, share: f64, nights: u32) {
    let error = (share * (1.0 - share) / f64::from(nights)).sqrt();
    assert!(
        (found - share).abs() < ERRORS * error,
        "{found} for {share}"
    );
}

/// Where the three are all that is not as planned, the standard errors are right.
#[test]
fn standard_errors_of_a_fit() {
    for [eighty, ninety_five] in within(NIGHTS, 31, |plan, _| plan.clone()) {
        is(eighty, 0.8, NIGHTS);
        is(ninety_five, 0.95, NIGHTS);
    }
}

/// Where everything else is not as planned either, by its own spread (weather, people,
/// what the cabin holds, the bank's resistance), that goes into the three, and their
/// standard errors do not know of it: a miss that stands. What is told of the loss at
/// 95 % is true in two nights of three, of draw and usable energy in 93 %.
#[test]
fn a_fit_does_not_know_of_the_rest() {
    let others = |plan: &Plan, dice: &mut Dice| {
        let drawn = truth(plan, dice);
        let mut others = plan.clone();
        others.day = drawn.day;
        (others.cabin.gains_w, others.cabin.animal_kg) =
            (drawn.cabin.gains_w, drawn.cabin.animal_kg);
        others.cabin.air_capacity_kj_k = drawn.cabin.air_capacity_kj_k;
        others.cabin.shell_capacity_kj_k = drawn.cabin.shell_capacity_kj_k;
        others.cabin.moisture_buffer = drawn.cabin.moisture_buffer;
        others.loads = drawn.loads;
        others.supply = drawn.supply;
        others.units[0].cooling = drawn.units[0].cooling.clone();
        let bank = &mut others.banks[0];
        bank.battery_resistance_mohm = drawn.banks[0].battery_resistance_mohm;
        bank.start_charge_percent = drawn.banks[0].start_charge_percent;
        bank.parasitic_w = drawn.banks[0].parasitic_w;
        others
    };
    let found = within(REST_NIGHTS, 32, others);
    for (found, stands) in found.iter().zip([0.67, 0.93, 0.93]) {
        is(found[1], stands, REST_NIGHTS);
    }
}
