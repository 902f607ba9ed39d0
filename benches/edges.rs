//! Days and whole answers at the edges of the ranges: a benchmark, no test.
//! `cargo bench --bench edges`.
//!
//! Wanted: seven days of any valid plan in 0.3 s, and its whole answer in 2 s. The
//! plans are those that once took 3 to 15 s, and as many made up at random as are
//! asked for (`cargo bench --bench edges -- 200`), of which the slowest are named.
//!
//! Measured figures, with the machine, stand in DEVELOPERS.

use std::{hint::black_box, time::Instant};
use till_morning::{
    answer::{answer, day::day},
    plan::{Figure, Plan, open::plan_from_json},
    range::Unit,
};

const ONCE_SLOW: [(&str, &str); 5] = [
    (
        "chatter at 1 %",
        include_str!("../tests/properties/plans/chatter_at_one_percent.json"),
    ),
    (
        "1 % deep",
        include_str!("../tests/properties/plans/one_percent_deep.json"),
    ),
    (
        "slow answer",
        include_str!("../tests/properties/plans/slow_answer.json"),
    ),
    (
        "slow more hours",
        include_str!("../tests/properties/plans/slow_more_hours.json"),
    ),
    (
        "slow refill",
        include_str!("../tests/properties/plans/slow_refill.json"),
    ),
];

fn seconds(work: impl FnOnce()) -> f64 {
    let start = Instant::now();
    work();
    start.elapsed().as_secs_f64()
}

/// Seconds of seven days, and of the whole answer.
fn both(plan: &Plan) -> (f64, f64) {
    let mut week = plan.clone();
    week.day.days_count = Some(7);
    let day_s = seconds(|| {
        black_box(day(&week));
    });
    let answer_s = seconds(|| {
        black_box(answer(plan));
    });
    (day_s, answer_s)
}

fn report(name: &str, plan: &Plan) {
    let (day_s, answer_s) = both(plan);
    println!(
        "{name:24} seven days {:8.1} ms, whole answer {:8.1} ms",
        1e3 * day_s,
        1e3 * answer_s
    );
}

/// A number from 0 to 1 by a place in a row (splitmix64).
fn share(at: u64) -> f64 {
    let mut x = at.wrapping_mul(0x9E37_79B9_7F4A_7C15);
    x = (x ^ (x >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    x = (x ^ (x >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((x ^ (x >> 31)) >> 11) as f64 / (1u64 << 53) as f64
}

/// The demo with each number that has a range put anywhere in it, a fourth of them
/// at an end.
fn anywhere(number: u64) -> Plan {
    let mut plan = Plan::demo();
    for (place, path) in plan.paths().into_iter().enumerate() {
        let Some(range) = path.range() else { continue };
        let dice = |of: u64| share(number.wrapping_mul(1_000_003) + 4 * place as u64 + of);
        if dice(0) < 0.3 {
            continue;
        }
        let at = match dice(1) {
            end if end < 0.1 => 0.0,
            end if end > 0.9 => 1.0,
            _ => dice(2),
        };
        let value = if range.min > 0.0 {
            range.min * (range.max / range.min).powf(at)
        } else {
            range.min + at * (range.max - range.min)
        };
        let value = value.clamp(range.min, range.max);
        let is_whole = matches!(range.unit, Unit::Count | Unit::ClockMinute);
        plan.set_figure(
            path,
            Figure::label(if is_whole { value.round() } else { value }),
        );
    }
    plan.day.samples_count = Some(100);
    plan
}

fn main() {
    report("the demo", &Plan::demo());
    for (name, text) in ONCE_SLOW {
        report(name, &plan_from_json(text).expect("a plan"));
    }
    let asked = std::env::args().find_map(|word| word.parse().ok());
    let count: u64 = asked.unwrap_or(40);
    let mut taken: Vec<(f64, f64, u64)> = (0..count)
        .filter(|&number| anywhere(number).errors().is_empty())
        .map(|number| {
            let (day_s, answer_s) = both(&anywhere(number));
            (answer_s, day_s, number)
        })
        .collect();
    taken.sort_by(|a, b| b.0.total_cmp(&a.0));
    let over = taken
        .iter()
        .filter(|row| row.0 > 2.0 || row.1 > 0.3)
        .count();
    println!(
        "{} plans from anywhere in the ranges, {over} over 0.3 s or 2 s; the slowest:",
        taken.len()
    );
    for (_, _, number) in taken.iter().take(5) {
        report(&format!("  number {number}"), &anywhere(*number));
    }
}
