//! How long a day takes: a benchmark, no test. `cargo bench --bench day`.
//!
//! The page wants the trace of 48 hours to follow the keys, and a thousand drawn
//! days within half a second in slices of 30 ms.

use std::{hint::black_box, time::Instant};
use till_morning::{
    answer::{day::day, night},
    plan::Plan,
    simulate::day::{How, Inputs, Scene, run},
    study::spread::Sampler,
};

fn report(what: &str, times: u32, mut work: impl FnMut()) {
    work();
    let start = Instant::now();
    for _ in 0..times {
        work();
    }
    let each_us = start.elapsed().as_secs_f64() * 1e6 / f64::from(times);
    println!("{what:44} {each_us:12.1} µs");
}

fn main() {
    let mut plan = Plan::demo();
    report("the night's answer, as after each key", 50, || {
        black_box(night(&plan));
    });
    let fresh = Plan::fresh();
    report("the same of an empty plan", 50, || {
        black_box(night(&fresh));
    });
    for days in [1, 2, 7] {
        plan.day.days_count = Some(days);
        let scene = Scene::new(&plan).expect("the demo has a scene");
        let inputs = Inputs::new(&scene, &plan).expect("and inputs");
        let hours = 24 * days;
        let quick = How {
            is_quick: true,
            ..How::default()
        };
        println!("{hours} h");
        report("  the scene", 20, || {
            black_box(Scene::new(&plan));
        });
        report("  the inputs", 50, || {
            black_box(Inputs::new(&scene, &plan));
        });
        report("  a run, exact", 50, || {
            black_box(run(&scene, &inputs, &How::default(), &mut ()));
        });
        report("  a run, quick", 50, || {
            black_box(run(&scene, &inputs, &quick, &mut ()));
        });
        report("  the whole trace, from the plan", 20, || {
            black_box(day(&plan));
        });
        report("  1000 drawn days, with their bands", 1, || {
            let mut sampler = Sampler::new(&plan).expect("it can be run");
            sampler.step(1000);
            black_box(sampler.finish());
        });
        let mut sampler = Sampler::new(&plan).expect("it can be run");
        sampler.step(1000);
        report("  bands of 1000 drawn days alone", 3, || {
            black_box(sampler.finish());
        });
    }
}
