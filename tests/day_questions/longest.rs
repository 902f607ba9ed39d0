//! The longest cool night, against every plan there is and against the day.

use till_morning::{
    answer::day::{Longest, LongestNight, SearchScenario, day, longest_night},
    plan::{Figure, Mode, Plan},
    simulate::day::{Inputs, Legs},
};

/// A strong mode that wastes and a weak one that does not, on a bank for an
/// evening, from a hot cabin.
fn evening() -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan.banks[0].parallel_count = 1;
    plan.banks[0].battery_rated_ah.value = 45.0;
    plan.cabin.start_c = Some(Figure::label(31.0));
    plan.cabin.set_point_c = Some(25.0);
    // No night to air the cabin in.
    plan.day.high_c = Some(Figure::label(40.0));
    plan.day.low_c = Some(Figure::label(29.0));
    let mode = |name: &str, watts: f64, cooling_w: f64| Mode {
        cooling_w: Some(Figure::label(cooling_w)),
        ..Mode::of_power(name, Figure::label(watts))
    };
    plan.units[0].modes = vec![mode("Plunge", 690.0, 1700.0), mode("Hush", 200.0, 640.0)];
    plan.night.asked_mode = 0;
    plan
}

/// Steps of 20 minutes that every plan there is has its switches in.
const STEPS: usize = 24;

/// How long one plan holds, step by step, nothing shared and nothing given up.
fn held_h(legs: &Legs, limit_c: f64, path: &[(usize, Option<usize>)]) -> f64 {
    let mut mark = legs.start().unwrap();
    let mut is_cool = mark.cabin_c().0 <= limit_c;
    for step in 0..STEPS + 6 {
        let option = path.iter().rev().find(|at| at.0 <= step).unwrap().1;
        let (from_h, to_h) = (step as f64 / 3.0, (step + 1) as f64 / 3.0);
        let leg = legs.go(&mark, to_h, option);
        let is_warm = leg.warmest_c > limit_c;
        if let Some(empty_h) = leg.empty_h {
            return if is_warm && is_cool { from_h } else { empty_h };
        }
        if is_cool && is_warm {
            return from_h;
        }
        let air_c = leg.mark.cabin_c().0;
        if !is_cool && to_h > 2.0 + 1e-9 && air_c > limit_c {
            return 0.0;
        }
        is_cool |= air_c <= limit_c;
        mark = leg.mark;
    }
    panic!("longer than was looked");
}

fn every_plan(plan: &Plan, limit_c: f64) -> (f64, usize) {
    let ground = SearchScenario::days(plan, 1).unwrap();
    let modes = vec![(0, 0), (0, 1)];
    let rows = vec![(0, Some(0))];
    let inputs = Inputs::of_rows(&ground.scene, plan, modes, &rows).unwrap();
    let legs = Legs::new(&ground.scene, inputs).unwrap();
    let options = [Some(0), Some(1), None];
    let (mut best_h, mut count) = (0.0_f64, 0);
    for first in options {
        let mut look = |path: &[(usize, Option<usize>)]| {
            best_h = best_h.max(held_h(&legs, limit_c, path));
            count += 1;
        };
        look(&[(0, first)]);
        for second in options.into_iter().filter(|&it| it != first) {
            for at in 1..STEPS {
                look(&[(0, first), (at, second)]);
                for third in options.into_iter().filter(|&it| it != second) {
                    for then in at + 1..STEPS {
                        look(&[(0, first), (at, second), (then, third)]);
                    }
                }
            }
        }
    }
    (best_h, count)
}

/// Within a step of the grid of the best of all plans with two switches at most.
#[test]
fn no_plan_holds_longer() {
    let plan = evening();
    let found = longest_night(&plan).unwrap();
    let (best_h, count) = every_plan(&plan, found.limit_c);
    assert!(count > 3000);
    let held_h = found.best.held_h;
    assert!(held_h < STEPS as f64 / 3.0, "{held_h}");
    assert!(
        (best_h - held_h).abs() < 1.0 / 3.0 + 1e-9,
        "{best_h} {held_h}"
    );
    assert!(held_h <= best_h + 1e-9, "{best_h} {held_h}");
    assert!(!found.is_cut_short);
    // And it is worth something: the strong mode first, then the thrifty one.
    let alone = found
        .alone
        .iter()
        .map(|alone| alone.held_h)
        .fold(0.0, f64::max);
    assert!(held_h > alone + 0.5, "{found:?}");
}

/// Written into the plan and run by the day itself, it holds as long as is said.
#[test]
fn the_day_meets_it() {
    let plan = evening();
    let found: LongestNight = longest_night(&plan).unwrap();
    let night = day(&found.best.applied_to(&plan)).unwrap();
    let held_h = found.best.held_h;
    assert!(
        night.empty_h.is_none_or(|empty_h| empty_h > held_h - 0.35),
        "{night:?}"
    );
    let too_warm = night.trace.iter().find(|point| {
        (found.pull_down_h + 0.35..held_h - 0.35).contains(&point.hours_h)
            && point.cabin_c > found.limit_c + 0.3
    });
    assert_eq!(too_warm, None);
}

/// A larger bank never holds shorter, and slices change nothing.
#[test]
fn more_bank_never_holds_shorter() {
    let mut before_h = 0.0;
    for ah in [15.0, 30.0, 45.0, 60.0] {
        let mut plan = evening();
        plan.banks[0].battery_rated_ah.value = ah;
        let found = longest_night(&plan).unwrap();
        assert!(
            found.best.held_h >= before_h - 1.0 / 3.0,
            "{ah} {before_h} {found:?}"
        );
        before_h = found.best.held_h;
    }
    let plan = evening();
    let mut longest = Longest::new(&plan).unwrap();
    while !longest.step(1) {}
    assert_eq!(longest.finish(), longest_night(&plan));
}

/// A cool night needs no unit: off is the plan, and nothing is spent.
#[test]
fn a_cool_night_needs_none() {
    let mut plan = evening();
    plan.day.high_c = Some(Figure::label(8.0));
    plan.day.low_c = Some(Figure::label(2.0));
    plan.cabin.start_c = Some(Figure::label(20.0));
    plan.day.dew_point_c = Some(Figure::label(0.0));
    let found = longest_night(&plan).unwrap();
    assert_eq!(found.best.held_h, found.looked_h);
    assert_eq!(found.best.modes.len(), 1, "{found:?}");
    assert_eq!(found.best.modes[0].mode, None, "{found:?}");
}
