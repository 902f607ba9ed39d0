//! What is said of it: the electrician's sheet, and words that mean one thing.

use super::{labelled_inverter, unit, van};
use std::collections::BTreeMap;
use till_morning::text::Formatter;
use till_morning::{
    answer::{night, wiring::wiring},
    plan::{Figure, Path, Plan, Unknown},
    range::Unit,
    study::sizing::Found,
    text::{self, wiring as say},
};

#[test]
fn the_sheet_names_bank_volts_chemistry_and_feed() {
    let mut plan = van();
    plan.banks[0].parallel_count = 2;
    let lines = |plan: &Plan| {
        say::system_on_paper(Formatter::ENGLISH, plan, &wiring(plan).unwrap()).join(" ")
    };
    let said = lines(&plan).replace('\u{202f}', " ");
    for part in [
        "LFP (lithium iron phosphate)",
        "2 in parallel, each 25.6 V and 100 Ah",
        "25.6 V nominal, 29.2 V while charging, 20 V at its lowest",
        "directly on the bank",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
    plan.units[0].feed = labelled_inverter();
    assert!(lines(&plan).contains("through an inverter, rating not entered"));
    if let till_morning::plan::Feed::Inverter { limit_w, .. } = &mut plan.units[0].feed {
        *limit_w = Some(Figure::label(1500.0));
    }
    let said = lines(&plan).replace('\u{202f}', " ");
    assert!(said.contains("through an inverter, 1500 W"), "{said}");
}

/// Everything that nobody has said is marked, and nothing else.
#[test]
fn the_sheet_marks_what_is_assumed() {
    let mut plan = van();
    assert!(!say::circuit_on_paper(Formatter::ENGLISH, &unit(&plan)).contains("assumed"));
    let taken = |plan: &Plan| say::taken_for(Formatter::ENGLISH, plan, &wiring(plan).unwrap());
    // Place and take-off, then the strands of the cable: not said.
    assert_eq!(taken(&plan)[0].matches("(assumed)").count(), 2);
    assert_eq!(taken(&plan)[1].matches("(assumed)").count(), 1);
    plan.units[0].cable.length_m = None;
    plan.wiring.unit = Default::default();
    assert!(say::circuit_on_paper(Formatter::ENGLISH, &unit(&plan)).ends_with("(assumed)"));
    assert_eq!(taken(&plan)[1].matches("(assumed)").count(), 5);
}

/// No name up to its first comma stands for two units.
#[test]
fn no_two_fields_read_the_same_for_different_units() {
    let mut units: BTreeMap<String, (Unit, Path)> = BTreeMap::new();
    for path in Plan::demo().paths() {
        let in_question = matches!(path, Path::Bank(..) | Path::Wiring(_));
        let (Some(range), true) = (path.range(), in_question) else {
            continue;
        };
        let label = text::field_label(Formatter::ENGLISH, path);
        let name = label.split(',').next().unwrap_or(label).to_owned();
        let (unit, other) = *units.entry(name).or_insert((range.unit, path));
        assert_eq!(unit, range.unit, "{label}: {path} and {other}");
    }
}

/// The Ah in the sentence are those that the count is rounded up from.
#[test]
fn one_number_of_ah_and_a_count_that_follows_from_it() {
    let mut plan = Plan::demo();
    plan.night.unknown = Unknown::Bank;
    let answer = night(&plan);
    let Found::Bank(needed) = answer.sizing[0].found else {
        panic!("a bank");
    };
    let said = text::sizing_answer(Formatter::ENGLISH, &plan, &answer.sizing[0]);
    assert_eq!(said.matches("Ah").count(), 1, "{said}");
    assert!(
        said.contains(&Formatter::ENGLISH.with_unit(needed.with_reserve_ah, "Ah")),
        "{said}"
    );
    let each_ah = plan.banks[0].battery_rated_ah.value;
    let least = (needed.with_reserve_ah / each_ah).ceil();
    assert_eq!(f64::from(needed.parallel_count), least);
    assert!(
        said.contains(&format!("{} batteries like these", needed.batteries_count)),
        "{said}"
    );
}
