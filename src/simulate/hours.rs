//! Hours of a run of the plan: the number that spread and search ask for again and again.

use super::{Job, assemble, hours_down};
use crate::{
    physics::battery::Pack,
    plan::{
        Plan,
        path::{BankField as B, Path},
    },
};

/// Shares of what the bank holds, 0 to 1, between which a run goes: the start, and what
/// the depth of discharge leaves.
///
/// The second is never above the first: a start below the floor has nothing to give, and
/// is no negative run. Nothing where there is no such bank.
pub fn held_span(plan: &Plan, bank: usize) -> Option<(f64, f64)> {
    let start = plan.number(Path::Bank(bank, B::StartChargePercent))? / 100.0;
    let depth = plan.number(Path::Bank(bank, B::DepthPercent))? / 100.0;
    // A start below the floor has nothing to give, and is no negative run.
    Some((start, (1.0 - depth).min(start)))
}

/// Hours of one mode of one unit on one bank.
pub fn hours(plan: &Plan, bank: usize, unit: usize, mode: usize) -> Option<f64> {
    let pack = assemble::warm_pack(plan, bank)?.pack;
    let job = assemble::job(plan, bank, unit, mode, &pack)?.job;
    let (from, to) = held_span(plan, bank)?;
    Some(hours_down(&pack, &job, from, to))
}

/// The same run on another size of the same bank: sizing's question.
pub fn hours_on(pack: &Pack, job: &Job, span: (f64, f64)) -> f64 {
    hours_down(pack, job, span.0, span.1)
}
