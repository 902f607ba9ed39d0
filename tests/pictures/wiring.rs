//! The single-line diagram: every cable of the answer is in it, with the answer's
//! numbers as the electrician's table has them.

use super::{WIDTHS, any_plan::any_plan, check_texts, plans, texts};
use proptest::prelude::*;
use till_morning::{
    answer::wiring::{Verdict, WiringAnswer, wiring},
    plan::{Figure, Plan, part::Choice, supply::Charger},
    text::{Formatter, wiring as say},
    view::{
        diagram::{Mark, Picture},
        drawing::wiring_diagram,
    },
};

fn count(picture: &Picture, class: &str) -> usize {
    let is = |mark: &&Mark| matches!(mark, Mark::Path { class: of, .. } if of == class);
    picture.marks.iter().filter(is).count()
}

/// What the table of the electrician's sheet says stands in the picture too.
fn check(plan: &Plan, answer: &WiringAnswer, width: f64) {
    let shown = wiring_diagram(Formatter::ENGLISH, plan, answer, width);
    check_texts(&shown.picture);
    let said = texts(&shown.picture);
    let has = |text: &str| assert!(said.contains(text), "{text:?} is not in {said}");
    let mut keys: Vec<&str> = shown
        .picture
        .spots
        .iter()
        .map(|spot| spot.key.as_str())
        .collect();
    keys.sort_unstable();
    let mut wanted: Vec<&str> = answer
        .circuits
        .iter()
        .map(|one| one.circuit.key())
        .collect();
    wanted.sort_unstable();
    assert_eq!(keys, wanted);
    for circuit in &answer.circuits {
        has(say::circuit_name(Formatter::ENGLISH, circuit.circuit));
        has(&say::amps(Formatter::ENGLISH, circuit.low_a));
        let drop = say::drop_on_paper(Formatter::ENGLISH, circuit);
        if let Some((drop, _)) = drop.split_once(" of ") {
            has(drop);
        }
        match &circuit.have {
            Some(have) => has(&say::size_text(Formatter::ENGLISH, &have.size)),
            None if say::none_passes(circuit) => has("no single conductor"),
            None => has(&format!(
                "needs {}",
                say::both_sizes(Formatter::ENGLISH, circuit)
            )),
        }
        let fitted = circuit.protection.as_ref().and_then(|one| one.fitted_a);
        let has_fuse = circuit.circuit.key() != "panel";
        if let Some(fitted_a) = fitted.filter(|_| has_fuse) {
            has(&format!("fuse {}", say::amps(Formatter::ENGLISH, fitted_a)));
        }
    }
    // Shapes beside the words, and one on the wire of whatever is judged.
    let of = |verdict| {
        answer
            .circuits
            .iter()
            .filter(|one| one.verdict == verdict)
            .count()
    };
    assert_eq!(count(&shown.picture, "pic-wire good"), {
        let cold = answer
            .solar
            .is_some_and(|side| side.verdict != Verdict::Carries);
        let panel = answer
            .circuits
            .iter()
            .any(|one| one.circuit.key() == "panel" && one.verdict == Verdict::Carries);
        of(Verdict::Carries) - usize::from(cold && panel)
    });
    assert!(count(&shown.picture, "pic-wire bad") >= of(Verdict::Fails));
    assert!(count(&shown.picture, "pic-badge bad") >= 2 * of(Verdict::Fails));
}

#[test]
fn every_cable_is_there_with_the_answers_numbers() {
    for plan in plans::all() {
        let answer = wiring(&plan).unwrap();
        WIDTHS
            .iter()
            .for_each(|&width| check(&plan, &answer, width));
    }
}

#[test]
fn what_fails_is_told_by_shape_and_word() {
    let plan = plans::failing();
    let shown = wiring_diagram(Formatter::ENGLISH, &plan, &wiring(&plan).unwrap(), 358.0);
    assert_eq!(count(&shown.picture, "pic-wire bad"), 1);
    assert!(texts(&shown.picture).contains("fails: voltage drop 12"));
    // The fuse is above what the conductor may carry, and that is said as well.
    assert!(texts(&shown.picture).contains("is above what the conductor may carry"));
    assert!(
        shown.told.contains("fails: voltage drop 12"),
        "{}",
        shown.told
    );
}

/// What stands beneath a piece hangs on it: two pieces, no more wires on the bus.
#[test]
fn what_hangs_on_a_converter_stands_beneath_it() {
    let plan = plans::large();
    let answer = wiring(&plan).unwrap();
    let said = texts(&wiring_diagram(Formatter::ENGLISH, &plan, &answer, 358.0).picture);
    let place = |text: &str| {
        said.find(text)
            .unwrap_or_else(|| panic!("{text} is not in {said}"))
    };
    assert!(place("To the unit") < place("Inverter") && place("Inverter") < place("Roof unit"));
    assert!(place("Charger 2, from the engine") > place("Charger 1, from shore power"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    /// Numbers of any size, names of any letters.
    #[test]
    fn any_plan_that_is_answered_is_drawn(
        plan in any::<bool>().prop_flat_map(any_plan),
        charger_a in prop::option::of(1.0..400.0f64),
        width in 240.0..760.0f64,
    ) {
        let mut plan = plan;
        plan.supply.chargers.extend(charger_a.map(|most_a| Charger {
            most_a: Some(Figure::label(most_a)),
            ..Charger::default()
        }));
        if let Some(answer) = wiring(&plan) {
            check(&plan, &answer, width);
            let markup = wiring_diagram(Formatter::ENGLISH, &plan, &answer, width).markup();
            prop_assert!(!markup.contains("NaN") && !markup.contains("inf"));
        }
    }
}
