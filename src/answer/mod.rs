//! The one contract: `answer(&Plan) -> Answer`.
//!
//! Pure, deterministic, total. Every face of the project is a face on it.

pub mod cautions;
pub mod claims;
pub mod day;
mod facts;
pub mod log;
pub mod pocket;
pub mod refill;
mod runs;
pub mod wiring;
mod working;

pub use cautions::{Caution, cautions};
pub use claims::ClaimsAnswer;
pub use day::DayAnswer;
pub use facts::BankFacts;
pub use pocket::{NoPocket, Pocket, PocketFormula, PocketOutcome};
pub use refill::RefillAnswer;
pub use runs::{CurvePoint, Curves, DepthPoint, RunAnswer, TracePoint};
pub use wiring::WiringAnswer;
pub use working::{Formula, Term, TermName, Working};

use crate::{
    plan::Plan,
    plan::finding::{Finding, Severity},
    study::sizing::{self, Sizing},
};
use serde::{Deserialize, Serialize};

/// The version of the answer's shape.
pub const VERSION: u32 = 1;

/// Everything the engine has to say about a plan. All numbers are finite.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Answer {
    /// [`VERSION`] of the engine that answered.
    pub version: u32,
    /// The method's version: it changes when the same plan would answer otherwise.
    pub method: String,
    /// Worst first, then in the order of the plan.
    pub findings: Vec<Finding>,
    /// One for each bank that could be read.
    pub banks: Vec<BankFacts>,
    /// One for each bank, unit and mode that could be answered, in that order.
    pub runs: Vec<RunAnswer>,
    /// The number asked for, for each bank that could be answered.
    pub sizing: Vec<Sizing>,
    /// The hot day on the first bank, if it could be answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<DayAnswer>,
    /// Whether the first bank can be filled again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub refill: Option<RefillAnswer>,
    /// One line for paper for each bank, unit and mode, or why there is none.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pocket: Vec<Pocket>,
    /// A verdict on each claim, and what to measure next.
    #[serde(default, skip_serializing_if = "ClaimsAnswer::is_empty")]
    pub claims: ClaimsAnswer,
    /// Whether cables, fuses and batteries carry it, if it could be answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wiring: Option<WiringAnswer>,
    /// What can hurt, where it applies, weightiest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub cautions: Vec<Caution>,
}

/// What [`night`] fills of an [`Answer`], written as the answer is.
///
/// The writers of the later parts are half of a program's weight: one that
/// answers the first two questions alone goes without by writing this.
///
/// Made by [`Answer::night_part`]; its schema is that of an answer without the rest.
#[derive(Debug, Serialize)]
pub struct NightPart<'a> {
    version: u32,
    method: &'a str,
    findings: &'a [Finding],
    banks: &'a [BankFacts],
    runs: &'a [RunAnswer],
    sizing: &'a [Sizing],
}

impl Answer {
    /// The first two questions' part of it.
    #[must_use]
    pub fn night_part(&self) -> NightPart<'_> {
        NightPart {
            version: self.version,
            method: &self.method,
            findings: &self.findings,
            banks: &self.banks,
            runs: &self.runs,
            sizing: &self.sizing,
        }
    }
}

/// The method's version.
pub const METHOD: &str = env!("CARGO_PKG_VERSION");

/// Answers a plan.
///
/// Never fails and never gives NaN: what cannot be answered is left out, and a
/// finding names the field and the accepted range.
///
/// ```
/// use till_morning::{answer::answer, plan::Plan};
/// let answer = answer(&Plan::demo());
/// let hold = &answer.runs[1];
/// assert!(hold.hours_h.low < hold.hours_h.likely && hold.hours_h.likely < hold.hours_h.high);
///
/// let mut bad = Plan::demo();
/// bad.banks[0].depth_percent = Some(400.0);
/// let answer = till_morning::answer::answer(&bad);
/// assert!(answer.runs.is_empty());
/// assert_eq!(answer.findings[0].field.unwrap().to_string(), "banks[0].depth_percent");
/// ```
#[must_use]
pub fn answer(plan: &Plan) -> Answer {
    let mut answer = night(plan);
    answer.day = day::day_with_odds(plan);
    if let Some(day) = &mut answer.day {
        day.further = Some(day::further(plan));
        answer.findings.extend(day.findings.iter().cloned());
        answer.findings = worst_first(std::mem::take(&mut answer.findings));
    }
    answer.refill = refill::refill(plan);
    answer.pocket = pocket::pocket(plan);
    answer.claims = claims::claims(plan, &answer.runs);
    answer.wiring = wiring::wiring(plan);
    answer.cautions = cautions(plan);
    answer
}

/// The first two questions alone: how long it runs at constant draw, and how big
/// a bank. What a page shows first, and all it must wait for; the parts of
/// [`answer`] that come later are left out.
#[must_use]
pub fn night(plan: &Plan) -> Answer {
    night_with(plan, Curves::Drawn)
}

/// The same with the curves of runs (`by_bank`, `by_depth`) drawn or left empty:
/// they cost as much as all the rest, and a page that shows none may go without.
#[must_use]
pub fn night_with(plan: &Plan, curves: Curves) -> Answer {
    let errors = plan.errors();
    let mut findings = errors.clone();
    let mut banks = Vec::new();
    let mut runs = Vec::new();
    let mut sizing = Vec::new();
    // Lists too long are refused whole: the work is bounded.
    let too_long = errors
        .iter()
        .filter(|error| !Plan::blocks_day_only(error))
        .any(|error| matches!(error.matter, crate::plan::finding::Matter::TooMany { .. }));
    for bank in 0..if too_long { 0 } else { plan.banks.len() } {
        let blocks = |unit, mode| errors.iter().any(|e| Plan::blocks(e, bank, unit, mode));
        if !errors.iter().any(|e| Plan::blocks_bank(e, bank)) {
            banks.extend(facts::bank_facts(plan, bank, &mut findings));
        }
        for (unit, the_unit) in plan.units.iter().enumerate() {
            for mode in 0..the_unit.modes.len() {
                if !blocks(unit, mode) {
                    runs.extend(runs::run_answer(
                        plan,
                        (bank, unit, mode),
                        curves,
                        &mut findings,
                    ));
                }
            }
        }
        let (unit, mode) = (plan.night.asked_unit, plan.night.asked_mode);
        let night_stands = !errors.iter().any(Plan::blocks_night);
        if plan.mode(unit, mode).is_some() && !blocks(unit, mode) && night_stands {
            sizing.extend(sizing::size(plan, bank, unit, mode, &mut findings));
        }
    }
    let findings = worst_first(findings);
    Answer {
        version: VERSION,
        method: METHOD.into(),
        findings,
        banks,
        runs,
        sizing,
        day: None,
        refill: None,
        pocket: Vec::new(),
        claims: ClaimsAnswer::default(),
        wiring: None,
        cautions: Vec::new(),
    }
}

/// A plan with the hot day's numbers left out, which [`night`] does not read: as long
/// as it stays the same, so does the night's answer. A plan with errors stays whole,
/// because the night tells of all of them.
#[must_use]
pub fn of_the_night(plan: &Plan) -> Plan {
    let mut of_the_night = plan.clone();
    if plan.errors().is_empty() {
        of_the_night.day = Default::default();
        of_the_night.cabin = Default::default();
        of_the_night.supply = Default::default();
        of_the_night.mode_plan = Vec::new();
        of_the_night.check_ins = Vec::new();
    }
    of_the_night
}

/// By severity, else in the order found; the same thing is said once.
fn worst_first(findings: Vec<Finding>) -> Vec<Finding> {
    let mut ordered: Vec<Finding> = Vec::with_capacity(findings.len());
    for severity in [Severity::Error, Severity::Caution, Severity::Note] {
        for finding in findings
            .iter()
            .filter(|finding| finding.severity == severity)
        {
            if !ordered.contains(finding) {
                ordered.push(finding.clone());
            }
        }
    }
    ordered
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn its_part_is_written_as_the_nights_answer_is() {
        let night = night(&Plan::demo());
        let part = serde_json::to_string(&night.night_part()).unwrap();
        assert_eq!(part, serde_json::to_string(&night).unwrap());
    }

    #[test]
    fn without_its_curves_the_night_is_the_same() {
        let plan = Plan::demo();
        let (mut whole, bare) = (night(&plan), night_with(&plan, Curves::Left));
        assert!(whole.runs.iter().all(|run| run.by_bank.len() == 13));
        for run in &mut whole.runs {
            (run.by_bank, run.by_depth) = (Vec::new(), Vec::new());
        }
        assert_eq!(whole, bare);
    }
}
