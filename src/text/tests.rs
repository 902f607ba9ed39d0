//! Numbers in the units shown: ranges, echoes, spreads and the report.

use super::Formatter;
use super::*;
use crate::{
    answer::answer,
    plan::{
        CheckIn, Claim, Figure, Path, Plan, Show,
        cabin::CabinField,
        claims::{Claimed, MeterClass},
        cooling::CoolingField,
        day::DayField,
        draft::Draft,
        entry::read,
        path::UnitField,
        reader::Language,
        supply::{Array, Charger, ChargerKind},
    },
    range::Unit,
    share::report,
};

/// A plan with a row in every list, in US units.
fn full() -> Plan {
    let mut plan = Plan::demo();
    plan.show = Show::US;
    plan.day.samples_count = Some(0);
    plan.supply.arrays.push(Array::default());
    plan.supply.chargers.push(Charger {
        kind: Some(ChargerKind::Generator),
        ..Charger::default()
    });
    plan.check_ins.push(CheckIn::default());
    plan.mode_plan = plan.mode_rows_stated();
    plan.claims.push(Claim {
        claimed_c: Some(10.0),
        measured_c: Some(Figure::measured(12.0)),
        test_c: Some(25.0),
        meter: Some(MeterClass::Thermometer),
        ..Claim::of(Claimed::Temperature)
    });
    plan.claims.push(Claim {
        claimed_m3_h: Some(400.0),
        measured_m3_h: Some(Figure::measured(380.0)),
        meter: Some(MeterClass::Vane),
        grille_m2: Some(0.04),
        ..Claim::of(Claimed::Airflow)
    });
    plan
}

/// Signs that nobody uses who has US units.
const METRIC: [&str; 11] = [
    "°C",
    "m²",
    "m³",
    "m/s",
    "kg",
    "\u{202f}m",
    "\u{202f}K",
    "(m)",
    "(K)",
    "kJ",
    "\u{202f}l",
];

/// The text without what is the same in all units, and without what stands beside a
/// US unit in brackets.
fn without_common(text: &str) -> String {
    let common = [
        "W/m²",
        "mm²",
        "m³/h)",
        "(1.8\u{202f}°C)",
        "(6\u{202f}m)",
        "0 °C (32 °F)",
        "% per K",
        "\u{202f}min",
        "\u{202f}ms",
        "\u{202f}mΩ",
        "\u{202f}lb",
        "\u{202f}mph",
    ];
    common
        .iter()
        .fold(text.to_owned(), |text, one| text.replace(one, ""))
}

#[track_caller]
fn no_metric(text: &str) {
    let text = without_common(text);
    for sign in METRIC {
        let at = text.find(sign);
        let near = at.map(|at| {
            let start = (0..=at.saturating_sub(60))
                .rev()
                .find(|&i| text.is_char_boundary(i));
            text[start.unwrap_or(0)..]
                .chars()
                .take(120)
                .collect::<String>()
        });
        assert_eq!(near, None, "{sign}");
    }
}

#[test]
fn what_a_range_says_is_accepted_in_the_units_shown() {
    for path in full().paths() {
        let Some(range) = path.range() else { continue };
        no_metric(&format!(
            " {}",
            Formatter::new(Formatter::ENGLISH.locale, Show::US).accepted(range)
        ));
        if matches!(range.unit, Unit::Count | Unit::ClockMinute) {
            continue;
        }
        for units in [Show::METRIC, Show::US] {
            let ends = findings::ends(range, units, Formatter::ENGLISH.format());
            let [low, high] = ends.map(|end| {
                let end: String = end.split('\u{202f}').collect();
                let value = read(&end, range.unit, units).unwrap().value;
                assert!(range.accepts(value), "{path}: {end} in {units:?}");
                value
            });
            // As good as all of it: three digits.
            let near = |a: f64, b: f64| (a - b).abs() <= 0.01 * b.abs().max(1e-6);
            assert!(near(low, range.min) && near(high, range.max), "{path}");
        }
    }
}

// -50 and 60 °C are -58 and 140 °F, 200 m are 656.2 ft, 20 000 m3/h are 11 771.6 cfm
// (NIST SP 811, appendix B.8, from memory).
#[test]
fn a_refused_text_is_told_its_range_in_the_units_shown() {
    let mut draft = Draft::of(full());
    for (path, text, wanted) in [
        (
            Path::Day(DayField::HighC),
            "400",
            "from \u{2212}58 to 140\u{202f}°F.",
        ),
        (
            Path::Unit(0, UnitField::CableLengthM),
            "700",
            "from 0 to 656\u{202f}ft.",
        ),
        (
            Path::Cooling(0, CoolingField::AirflowM3H),
            "1",
            "to 11\u{202f}771\u{202f}cfm.",
        ),
        (Path::Cabin(CabinField::DeadBandK), "99", "to 18\u{202f}°F."),
    ] {
        draft.type_text(path, text);
        let wanted_range = draft.wanted(path).unwrap();
        let said = entry_trouble(
            Formatter::new(Formatter::ENGLISH.locale, draft.plan.show),
            path,
            wanted_range,
        );
        assert!(
            draft.trouble(path).is_some() && said.ends_with(wanted),
            "{said}"
        );
        // In a finding of a plan from elsewhere too.
        let value = read(text, wanted_range.unit, Show::US).unwrap().value;
        draft.plan.set_number(path, value);
        let errors = draft.plan.errors();
        let error = errors
            .iter()
            .find(|error| error.field == Some(path))
            .unwrap();
        let said = finding_sentence(Formatter::new(Formatter::ENGLISH.locale, Show::US), error);
        assert!(said.ends_with(wanted) && said.contains(text), "{said}");
    }
}

#[test]
fn every_field_has_a_sign_echo_and_default_in_the_units_shown() {
    let plan = full();
    let metric = Plan {
        show: Show::METRIC,
        ..plan.clone()
    };
    for path in plan.paths() {
        let Some(range) = path.range() else { continue };
        no_metric(&format!(
            "\u{202f}{}",
            Formatter::new(Formatter::ENGLISH.locale, Show::US).sign(range.unit)
        ));
        let (mut us, mut si) = (Draft::of(plan.clone()), Draft::of(metric.clone()));
        let value = 0.5 * (range.min + range.max);
        let value = if range.unit == Unit::Count {
            value.round()
        } else {
            value
        };
        let (text, as_si) = (us.written(path, value), si.written(path, value));
        us.type_text(path, &text);
        si.type_text(path, &as_si);
        let taken = [&us, &si].map(|draft| draft.plan.number(path));
        if let [Some(us), Some(si)] = taken {
            assert!(
                (us - si).abs() <= 1e-3 * si.abs().max(0.1),
                "{path}: {text} and {as_si}"
            );
        }
        for draft in [&us, &si] {
            let default = draft.default_text(path);
            if let Some(assumed) = draft.plan.assumed(path).filter(|_| !default.is_empty()) {
                let value = read(&default, range.unit, draft.plan.show).unwrap().value;
                let near = 0.01 * assumed.value.abs().max(0.1);
                assert!((value - assumed.value).abs() <= near, "{path}: {default}");
            }
        }
    }
    // A plain 240 is 240 cfm, and one in the other unit is echoed in cfm.
    let path = Path::Cooling(0, CoolingField::AirflowM3H);
    let mut draft = Draft::of(plan);
    draft.type_text(path, "240");
    assert!((draft.plan.number(path).unwrap() - 407.76).abs() < 0.01);
    assert_eq!(draft.echo(path), None);
    draft.type_text(path, "400 m3/h");
    let echo = echo_sentence(
        Formatter::new(Formatter::ENGLISH.locale, Show::US),
        draft.echo(path).unwrap(),
    );
    assert_eq!(echo, "read as 235.4\u{202f}cfm");
    assert_eq!(draft.unit_beside(path), None);
    draft.settle(path);
    assert_eq!(draft.text(path), "235.4");
    assert_eq!(draft.unit_beside(path), Some(Unit::CubicMeterPerHour));
}

// A step of 1 K is one of 1.8 °F.
#[test]
fn a_difference_has_no_zero_of_its_own() {
    let high = Figure::label(36.0);
    let mark = |units| {
        origin_mark(
            Formatter::new(Formatter::ENGLISH.locale, units),
            Path::Day(DayField::HighC),
            high,
        )
    };
    assert_eq!(mark(Show::METRIC), "from label ±2\u{202f}°C");
    assert_eq!(mark(Show::US), "from label ±3.6\u{202f}°F");
}

#[test]
fn the_report_is_in_the_units_shown() {
    let plan = full();
    let whole = answer(&plan);
    assert!(whole.day.is_some() && whole.claims.claims.len() == 2);
    let report = report::article(
        Formatter::new(Formatter::ENGLISH.locale, Show::US),
        &plan,
        &whole,
        None,
    );
    no_metric(&report);
    assert!(report.contains("°F") && report.contains("cfm"));
    let day = whole.day.as_ref().unwrap();
    for (_, text) in day::heat_rows(Formatter::new(Formatter::ENGLISH.locale, Show::US), day) {
        no_metric(&text);
    }
    for claim in &whole.claims.claims {
        no_metric(
            &claims::report_notes(
                Formatter::new(Formatter::ENGLISH.locale, Show::US),
                &plan,
                claim,
            )
            .join(" "),
        );
    }
    // Another plan in the same units is still in them.
    assert_eq!(Plan::fresh().shown_as(plan.show).show, Show::US);
}

/// The only mode, unnamed, has its article and its case, and its name in a table has none.
#[test]
fn the_only_mode_without_a_name_is_the_unit() {
    let mut plan = Plan::fresh();
    plan.show = Show::METRIC;
    plan.day.samples_count = Some(0);
    plan.supply.chargers.push(Charger::default());
    let whole = answer(&plan);
    for (language, says, titled) in [
        (Language::English, "The cooling unit runs ", "Cooling unit"),
        (Language::German, "Das Kühlgerät läuft ", "Kühlgerät"),
        (
            Language::Spanish,
            "El equipo de frío funciona ",
            "Equipo de frío",
        ),
    ] {
        let f = Formatter::new(Locale::usual(language), plan.show);
        let run = &whole.runs[0];
        let said = run_sentence(f, &plan, run);
        assert!(said.starts_with(says), "{said}");
        assert_eq!(run_title(f, &plan, &whole, run), titled);
        let report = report::article(f, &plan, &whole, None);
        assert!(report.contains(says), "{says}");
        assert!(!report.contains("the-unit"), "{report}");
    }
    plan.units[0].modes[0].name = "Eco".into();
    let said = run_sentence(Formatter::ENGLISH, &plan, &whole.runs[0]);
    assert!(said.starts_with("Eco runs "), "{said}");
}
