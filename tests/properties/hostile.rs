//! Any plan at all is answered: finite, ordered, the same each time.

use super::{any_plan::any_plan, hours, run, sane_plan::sane_plan};
use proptest::prelude::*;
use serde_json::Value;
use till_morning::{
    answer::{Answer, WiringAnswer, night as answer},
    plan::finding::Severity,
    plan::{
        Plan,
        supply::{Array, Charger},
    },
};

/// The address of the first number that JSON could not hold. It has no NaN and
/// no infinity and writes `null`, which stands for nothing else in an answer.
fn not_finite(value: &Value, at: &str) -> Option<String> {
    match value {
        Value::Null => Some(at.to_string()),
        Value::Array(list) => list
            .iter()
            .enumerate()
            .find_map(|(index, value)| not_finite(value, &format!("{at}[{index}]"))),
        Value::Object(map) => map
            .iter()
            .find_map(|(key, value)| not_finite(value, &format!("{at}.{key}"))),
        _ => None,
    }
}

fn is_in_order(answer: &Answer) -> Result<(), TestCaseError> {
    for bank in &answer.banks {
        prop_assert!(
            0.0 <= bank.usable_ah && bank.usable_ah <= bank.held_ah,
            "{bank:?}"
        );
        prop_assert!(
            0.0 <= bank.usable_wh && bank.resistance_mohm >= 0.0,
            "{bank:?}"
        );
    }
    for run in &answer.runs {
        let band = run.hours_h;
        prop_assert!(
            0.0 <= band.low && band.low <= band.likely && band.likely <= band.high,
            "{band:?}"
        );
        for amount in [
            run.drawn_ah,
            run.drawn_wh,
            run.unit_wh,
            run.lost_wh,
            run.mean_w,
            run.mean_a,
        ] {
            prop_assert!(amount >= 0.0, "{run:?}");
        }
        let shares: f64 = run
            .spread_from
            .iter()
            .map(|share| share.share_percent)
            .sum();
        prop_assert!(
            run.spread_from.is_empty() || (shares - 100.0).abs() < 1e-6,
            "{shares}"
        );
        prop_assert!(
            run.by_bank
                .windows(2)
                .all(|pair| pair[0].hours_h <= pair[1].hours_h * (1.0 + 1e-8))
        );
        prop_assert!(
            run.by_depth
                .windows(2)
                .all(|pair| pair[0].hours_h <= pair[1].hours_h * (1.0 + 1e-8))
        );
    }
    let worst_first = answer
        .findings
        .windows(2)
        .all(|pair| pair[0].severity >= pair[1].severity);
    prop_assert!(worst_first, "{:?}", answer.findings);
    Ok(())
}

fn is_sound(plan: &Plan) -> Result<Answer, TestCaseError> {
    let answer = answer(plan);
    let json = serde_json::to_value(&answer).unwrap();
    prop_assert_eq!(not_finite(&json, "answer"), None);
    // No key is written twice, and nothing is lost on the way.
    let read: Answer = serde_json::from_value(json).unwrap();
    prop_assert_eq!(&read, &answer);
    is_in_order(&answer)?;
    Ok(answer)
}

proptest! {
    /// Any number at all, any shape, any text.
    #[test]
    fn any_plan_is_answered(plan in any_plan(true)) {
        let answer = is_sound(&plan)?;
        // What is left out has a finding that says why.
        let asked: usize = plan.units.iter().map(|unit| unit.modes.len()).sum();
        if answer.runs.len() < plan.banks.len() * asked {
            prop_assert!(answer.findings.iter().any(|f| f.severity == Severity::Error), "{plan:?}");
        }
    }

    /// The fourth question of any plan: finite, and the same read back.
    #[test]
    fn any_wiring_is_answered(mut plan in prop_oneof![any_plan(true), any_plan(false)]) {
        plan.supply.arrays.push(Array::default());
        plan.supply.chargers.push(Charger::default());
        if let Some(answer) = till_morning::answer::wiring::wiring(&plan) {
            let json = serde_json::to_value(&answer).unwrap();
            prop_assert_eq!(not_finite(&json, "wiring"), None);
            prop_assert_eq!(serde_json::from_value::<WiringAnswer>(json).unwrap(), answer);
        }
    }

    /// Any numbers that their ranges accept, ends included: nothing is left out.
    #[test]
    fn any_accepted_plan_is_answered_whole(plan in any_plan(false)) {
        let answer = is_sound(&plan)?;
        let asked: usize = plan.units.iter().map(|unit| unit.modes.len()).sum();
        let has_table = plan.banks.iter().any(|bank| !bank.battery_open_circuit.is_empty());
        if plan.errors().is_empty() {
            prop_assert_eq!(answer.runs.len(), plan.banks.len() * asked);
            prop_assert_eq!(answer.banks.len(), plan.banks.len());
        } else {
            prop_assert!(has_table || plan.units.iter().any(|unit| unit.modes.is_empty()), "{:?}", plan.errors());
        }
    }

    /// Each error names a field and what it accepts; each range it gives is one.
    #[test]
    fn an_error_names_its_field(plan in any_plan(true)) {
        for error in plan.errors() {
            prop_assert!(error.field.is_some(), "{error:?}");
            let json = serde_json::to_value(&error).unwrap();
            prop_assert_eq!(not_finite(&json, "finding"), None);
            if let (Some(min), Some(max)) = (json.get("min"), json.get("max")) {
                prop_assert!(min.as_f64() < max.as_f64(), "{error:?}");
            }
        }
    }

    /// The short way to the hours, which spread, sizing and other properties take: without
    /// the marks of the run that is followed.
    #[test]
    fn the_quick_way_is_the_same(plan in sane_plan()) {
        let (quick_h, run_h) = (hours(&plan), run(&plan).hours_h.likely);
        prop_assert!((quick_h - run_h).abs() <= 1e-7 * run_h, "{quick_h} {run_h}");
    }

    #[test]
    fn an_answer_is_the_same_each_time(plan in any_plan(true), other in any_plan(false)) {
        let first = answer(&plan);
        let _ = answer(&other);
        prop_assert_eq!(first, answer(&plan.clone()));
    }
}
