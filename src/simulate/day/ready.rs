//! Whether a plan has what the day needs.

use crate::plan::{
    Plan,
    finding::{Finding, Matter, Severity},
};

/// Whether no error stands in the way of the first bank and the modes planned.
#[must_use]
pub fn can_be_run(plan: &Plan) -> bool {
    let modes = plan.mode_rows();
    let errors = plan.errors();
    let is_there = |&(_, unit, mode): &(u32, usize, Option<usize>)| {
        mode.is_none_or(|mode| plan.mode(unit, mode).is_some())
    };
    let stands_in_the_way = |error: &Finding| {
        Plan::blocks_day_only(error)
            || matches!(error.matter, Matter::TooMany { .. })
            || Plan::blocks_night(error)
            || modes
                .iter()
                .any(|&(_, unit, mode)| Plan::blocks(error, 0, unit, mode.unwrap_or(usize::MAX)))
    };
    !plan.banks.is_empty()
        && modes.iter().all(is_there)
        && !errors
            .iter()
            .filter(|error| error.severity == Severity::Error)
            .any(stands_in_the_way)
}
