//! What must hold of every answer, whatever the plan.
//!
//! The laws are arithmetic and physics, not numbers of ours: more load never
//! runs longer, energy is kept, what was searched for runs as asked. 256 cases
//! each; `PROPTEST_CASES=20000` for a long run.

mod any_plan;
mod books;
mod charging;
mod day;
mod ends;
mod hand_on;
mod hostile;
mod inverse;
mod kinetic;
mod monotone;
mod refill;
mod sane_plan;
mod stops;
mod tabs;
mod text;
mod walk;

use till_morning::{
    answer::{RunAnswer, night as answer},
    plan::{
        Plan,
        path::{BankField, Path},
    },
    simulate::{assemble, hours_down},
};

/// The answer's only run.
fn run(plan: &Plan) -> RunAnswer {
    let mut answer = answer(plan);
    assert_eq!(answer.runs.len(), 1, "{:?}", answer.findings);
    answer.runs.remove(0)
}

/// The likely hours of the plan's only run, without all that an answer gives
/// beside them (see `hostile::the_quick_way_is_the_same`).
fn hours(plan: &Plan) -> f64 {
    assert_eq!(plan.errors(), []);
    let pack = assemble::pack(plan, 0).unwrap().pack;
    let job = assemble::job(plan, 0, 0, 0, &pack).unwrap().job;
    let share = |field| plan.number(Path::Bank(0, field)).unwrap() / 100.0;
    let start = share(BankField::StartChargePercent);
    let floor = (1.0 - share(BankField::DepthPercent)).min(start);
    hours_down(&pack, &job, start, floor)
}

/// Rounding between two ways to the same number.
fn close(a: f64, b: f64, share: f64) -> bool {
    (a - b).abs() <= share * a.abs().max(b.abs())
}
