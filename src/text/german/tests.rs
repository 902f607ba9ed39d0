//! German against CLDR, and against English: nothing may be left untranslated.

use super::*;
use crate::text::Formatter;
use crate::{
    answer::{night, pocket::pocket},
    plan::{Path, open::plan_from_json, reader::Language},
    text::reader::table,
};
use std::collections::BTreeSet;

/// `tests/data/cldr_german.txt` was made by Node's `Intl`, and names its CLDR. Ours
/// differs in the minus alone: U+2212 as in all these pages.
const F: Formatter = Formatter::ENGLISH;

#[test]
fn numbers_and_plural_are_those_of_cldr() {
    let table = include_str!("../../../tests/data/cldr_german.txt");
    let rows: Vec<_> = table.lines().filter(|row| !row.starts_with('#')).collect();
    assert!(rows.len() > 20);
    for row in rows {
        let [value, written, category] = row.split(';').collect::<Vec<_>>()[..] else {
            panic!("{row}");
        };
        let (value, written): (f64, _) = (value.parse().unwrap(), written.replace('-', "\u{2212}"));
        assert_eq!(FORMAT.fixed(value, 3), written);
        let word = if category == "one" {
            "Stunde"
        } else {
            "Stunden"
        };
        assert_eq!(counted(value, 3, HOURS), format!("{written} {word}"));
    }
}

#[test]
fn durations_in_words() {
    let say = |hours: f64| in_words(hours);
    assert_eq!(say(1.0), "1 Stunde");
    assert_eq!(say(1.0 + 1.0 / 60.0), "1 Stunde 1 Minute");
    assert_eq!(say(9.84), "9 Stunden 50 Minuten");
    assert_eq!(say(0.51), "31 Minuten");
    assert_eq!(say(0.0), "0 Minuten");
    assert_eq!(say(0.001), "unter 1 Minute");
    assert_eq!(say(100.0), "4,2 Tage");
    assert_eq!(duration(9.84), "9\u{202f}h 50\u{202f}min");
}

#[test]
fn every_text_is_there_and_german() {
    let pairs = |language| table(language).texts.all().into_iter();
    for ((key, english), (_, german)) in pairs(Language::English).zip(pairs(Language::German)) {
        assert!(!english.is_empty() && !german.is_empty(), "{key}");
        assert_ne!(english, german, "{key}");
    }
    assert_ne!(TABLE.ribbon.label, crate::text::RIBBON.label);
}

/// Plans that bring about what the first question has to say.
fn plans() -> Vec<Plan> {
    let files = [
        include_str!("../../../tests/golden/plans/broken.json"),
        include_str!("../../../tests/golden/plans/lead_acid_by_inverter.json"),
        include_str!("../../../tests/golden/plans/measured_bank.json"),
        include_str!("../../../tests/golden/plans/own_table.json"),
    ];
    let mut plans = files
        .map(|json| plan_from_json(json).expect("a plan"))
        .to_vec();
    let changes: [fn(&mut Plan); 8] = [
        |plan| plan.banks[0].battery_nominal_v = 12.0,
        |plan| plan.banks[0].depth_percent = Some(400.0),
        |plan| plan.banks[0].battery_rated_ah.value = f64::NAN,
        |plan| plan.units[0].modes.clear(),
        |plan| plan.banks.extend(vec![plan.banks[0].clone(); 9]),
        |plan| plan.banks[0].start_charge_percent = Some(crate::plan::Figure::label(5.0)),
        |plan| plan.units[0].modes[0].draw = plan.units[0].modes[0].draw.switched(12.8),
        |plan| plan.units[0].modes[0].name.clear(),
    ];
    plans.extend(changes.map(|change| {
        let mut plan = Plan::demo();
        change(&mut plan);
        plan
    }));
    plans
}

#[test]
fn every_sentence_is_german() {
    let english = table(Language::English);
    let mut matters = BTreeSet::new();
    let both = |german: String, english: String| {
        assert!(!german.is_empty() && german != english, "{german}");
    };
    for plan in plans() {
        let answer = night(&plan);
        for run in &answer.runs {
            both(
                (TABLE.run_sentence)(F, &plan, run),
                (english.run_sentence)(F, &plan, run),
            );
            if run.hours_h.likely > 0.0 {
                both((TABLE.run_detail)(F, run), (english.run_detail)(F, run));
            }
        }
        for one in pocket(&plan) {
            both(
                (TABLE.pocket)(F, &plan, &one),
                (english.pocket)(F, &plan, &one),
            );
        }
        for finding in answer
            .findings
            .iter()
            .filter(|one| Plan::is_of_the_night(one))
        {
            matters.insert(
                format!("{:?}", finding.matter)
                    .split([' ', '{'])
                    .next()
                    .map(String::from),
            );
            both(
                (TABLE.finding)(Formatter::new(F.locale, plan.show), finding),
                (english.finding)(Formatter::new(F.locale, plan.show), finding),
            );
        }
    }
    assert!(matters.len() >= 8, "{matters:?}");
}

#[test]
fn every_field_that_may_be_open_is_german() {
    let english = table(Language::English);
    let mut plan = Plan::demo();
    plan.banks[0].series_count = 2;
    for path in plan.may_open() {
        let label = |table: &Table| (table.label)(F, &plan, path);
        assert_ne!(label(&TABLE), label(english), "{path}");
        for units in [Show::METRIC, Show::US] {
            let trouble = |table: &Table| {
                path.range()
                    .map(|range| (table.trouble)(Formatter::new(F.locale, units), "x", range))
            };
            assert!(
                path.range().is_none() || trouble(&TABLE) != trouble(english),
                "{path}"
            );
        }
        let hints = [(TABLE.hint)(F, path), (english.hint)(F, path)];
        assert_eq!(hints[0].is_empty(), hints[1].is_empty(), "{path}");
    }
    // Findings may name these too.
    for path in plan.paths() {
        let of_the_night = matches!(
            path,
            Path::Bank(..) | Path::Unit(..) | Path::Mode(..) | Path::Load(_) | Path::Night(_)
        );
        if of_the_night {
            let english = crate::text::field_label(F, path);
            // Words that are the same in both languages, if any, are named here.
            assert_ne!(labels::name(path), english, "{path}");
        }
    }
}
