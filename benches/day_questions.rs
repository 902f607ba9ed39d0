//! How long the hot day's further questions take: a benchmark, no test.
//! `cargo bench --bench day_questions`.
//!
//! The page does them in its idle time: a slice should stay below 7 ms here,
//! which is about 15 ms as wasm.

use std::{hint::black_box, time::Instant};
use till_morning::{
    answer::day::{Bedtime, CheckInWork, Longest, Ranker},
    plan::{CheckIn, Figure, Plan},
    study::sizing::day::{DayUnknown, size_day},
};

fn report(what: &str, mut work: impl FnMut()) {
    work();
    let start = Instant::now();
    let times = 3;
    for _ in 0..times {
        work();
    }
    let each_ms = start.elapsed().as_secs_f64() * 1e3 / f64::from(times);
    println!("{what:44} {each_ms:12.2} ms");
}

/// Slices until done, and the longest of them.
fn sliced(what: &str, mut step: impl FnMut() -> bool) {
    let (mut slices, mut longest_ms) = (0, 0.0_f64);
    let whole = Instant::now();
    loop {
        let start = Instant::now();
        let is_done = step();
        longest_ms = longest_ms.max(start.elapsed().as_secs_f64() * 1e3);
        slices += 1;
        if is_done {
            break;
        }
    }
    let all_ms = whole.elapsed().as_secs_f64() * 1e3;
    println!("{what:44} {all_ms:12.2} ms in {slices} slices, {longest_ms:.2} ms the longest");
}

fn main() {
    let plan = Plan::demo();
    report("ranked changes: made ready", || {
        black_box(Ranker::new(&plan));
    });
    let mut ranker = Ranker::new(&plan).expect("the demo can be run");
    sliced("ranked changes of a week", || ranker.step(1));
    let mut bedtime = Bedtime::new(&plan).expect("the demo can be run");
    sliced("bedtime lines", || bedtime.step(1));
    let mut longest = Longest::new(&plan).expect("the demo can be run");
    sliced("the longest cool night", || longest.step(1));
    for unknown in DayUnknown::ALL {
        report(&format!("sizing of a week: {unknown:?}"), || {
            black_box(size_day(&plan, unknown));
        });
    }
    let mut read = plan.clone();
    read.check_ins = [60, 120, 180, 240]
        .map(|clock_min| CheckIn {
            clock_min: Some(clock_min),
            charge_percent: Some(Figure::measured(90.0 - 0.02 * f64::from(clock_min))),
            cabin_c: Some(Figure::measured(25.0)),
            ..CheckIn::default()
        })
        .to_vec();
    let mut work = CheckInWork::new(&read).expect("it can be run");
    sliced("a check-in, four readings", || work.step(1));
    report("a check-in's answer", || {
        black_box(work.finish());
    });
}
