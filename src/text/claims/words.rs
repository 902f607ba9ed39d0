//! Headings and choices of the fifth question.

use crate::text::{Formatter, m};

/// Heads of the bench report.
#[must_use]
pub fn report_heads(f: Formatter) -> [&'static str; 5] {
    [
        f.say(m::ClaimsHeadClaim),
        f.say(m::ClaimsHeadClaimed),
        f.say(m::ClaimsHeadMeasured),
        f.say(m::ClaimsHeadShare),
        f.say(m::ClaimsHeadVerdict),
    ]
}

/// What an airflow is stated at: outlet, inlet, standard density.
#[must_use]
pub fn bases(f: Formatter) -> [&'static str; 3] {
    [
        f.say(m::ClaimsBasisOutlet),
        f.say(m::ClaimsBasisInlet),
        f.say(m::ClaimsBasisStandard),
    ]
}

/// Heads of the air side's budget.
#[must_use]
pub fn budget_heads(f: Formatter) -> [&'static str; 3] {
    [
        f.say(m::ClaimsBudgetReading),
        f.say(m::ClaimsBudgetStandard),
        f.say(m::ClaimsBudgetShare),
    ]
}
