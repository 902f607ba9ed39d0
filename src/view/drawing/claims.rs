//! Claims as intervals: measured beside claimed, with the verdict.

use super::Shown;
use crate::{
    answer::claims::{ClaimAnswer, ClaimVerdict, ClaimsAnswer},
    plan::Plan,
    text::{Formatter, claims as said, m, pictures as say},
    view::diagram::{
        badge::Standing,
        intervals::{Interval, intervals},
    },
};

/// The claims of an answer at a width in pixels; nothing where none is judged.
#[must_use]
pub fn claims_diagram(
    f: Formatter,
    plan: &Plan,
    answer: &ClaimsAnswer,
    width: f64,
) -> Option<Shown> {
    if answer.claims.is_empty() {
        return None;
    }
    let rows = claim_rows(f, plan, answer);
    let told: Vec<String> = rows.iter().map(told).collect();
    Some(Shown {
        title: f.say(m::PictureClaims),
        caption: f.say(m::PictureClaimsCaption).into(),
        told: say::told(f.say(m::PictureClaims), &told),
        picture: intervals(&rows, width),
    })
}

fn told(row: &Interval) -> String {
    format!(
        "{}: {}, {}, {}",
        row.name, row.verdict.1, row.measured_text, row.claimed_text
    )
}

/// A row for each claim, in the plan's order.
#[must_use]
pub fn claim_rows(f: Formatter, plan: &Plan, answer: &ClaimsAnswer) -> Vec<Interval> {
    answer.claims.iter().map(|one| row(f, plan, one)).collect()
}

const fn standing(verdict: ClaimVerdict) -> Standing {
    match verdict {
        ClaimVerdict::BeatsIt | ClaimVerdict::MeetsIt | ClaimVerdict::Inside => Standing::Good,
        ClaimVerdict::FallsShort | ClaimVerdict::OutsideBelow | ClaimVerdict::OutsideAbove => {
            Standing::Bad
        }
        ClaimVerdict::TooCloseToCall | ClaimVerdict::NotJudged => Standing::Open,
    }
}

fn row(f: Formatter, plan: &Plan, one: &ClaimAnswer) -> Interval {
    let [name, claimed, measured, _, verdict] = said::report_row(f, plan, one);
    let claim = plan.claims.get(one.claim);
    // A range has no tolerance of its own.
    let tolerance_percent = claim
        .and_then(|claim| claim.tolerance_percent)
        .filter(|_| one.claimed_most.is_none());
    Interval {
        name,
        verdict: (standing(one.verdict), verdict),
        measured: one.measured,
        off: one.expanded,
        claimed: one.claimed,
        claimed_most: one.claimed_most,
        tolerance: tolerance_percent.map(|percent| one.claimed.abs() * percent / 100.0),
        measured_text: say::measured(f, &measured),
        claimed_text: say::claimed(f, &claimed, tolerance_percent),
    }
}
