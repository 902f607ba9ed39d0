//! Cautions, both ways: a plan that has what a caution is about, and the nearest
//! one that has not. Where the rules come from stands beside each sentence, in
//! `text`; temperatures are those of the plan's own days.

use super::van;
use till_morning::text::Formatter;
use till_morning::{
    answer::{
        answer,
        cautions::{Caution, cautions},
    },
    physics::battery::Chemistry,
    plan::{
        Bank, Figure, Mode, Plan,
        supply::{BankPlace, Charger, ChargerKind},
    },
    text,
};

/// Every caution has a name here, or this does not compile; and a row below, or the
/// test does not pass.
fn name(caution: Caution) -> &'static str {
    match caution {
        Caution::HeatUnattended { .. } => "heat",
        Caution::BeyondFiftyVolts { .. } => "fifty volts",
        Caution::Generator { at_night: false } => "generator",
        Caution::Generator { at_night: true } => "generator at night",
        Caution::Engine { at_night: false } => "engine",
        Caution::Engine { at_night: true } => "engine at night",
        Caution::ChargedCold { .. } => "cold",
        Caution::LeadAcidGas { .. } => "gas",
        Caution::PathWithoutFuse { .. } => "no fuse",
        Caution::AlternatorLeftOpen { .. } => "alternator",
        Caution::SeriesBeyondMaker { .. } => "beyond maker",
        Caution::SeriesAsAllowed { .. } => "series",
        Caution::ParallelAsAllowed { .. } => "parallel",
        Caution::BmsIsNoFuse => "bms",
        Caution::FuseAtSource
        | Caution::CopperOnly
        | Caution::AutomotiveGauge
        | Caution::PrintedRatingDecides
        | Caution::LocalCodes
        | Caution::Estimates => "always",
    }
}

fn has(plan: &Plan, what: &str) -> bool {
    cautions(plan).into_iter().any(|one| name(one) == what)
}

/// One lead-acid battery outside in mild, dull weather, its one cable fused: nothing
/// but what always holds.
fn quiet() -> Plan {
    let mut plan = van();
    plan.banks[0] = Bank::of(Chemistry::Agm, 24.0, 100.0);
    plan.supply.bank_place = Some(BankPlace::Outside);
    plan.wiring.unit.fuse_a = Some(50.0);
    weather(&mut plan, 14.0, 8.0);
    plan.day.cloud_percent = Some(Figure::label(100.0));
    plan
}

fn weather(plan: &mut Plan, high_c: f64, low_c: f64) {
    plan.day.high_c = Some(Figure::label(high_c));
    plan.day.low_c = Some(Figure::label(low_c));
}

fn lithium(plan: &mut Plan) {
    plan.banks.push(Bank::of(Chemistry::Lfp, 25.6, 100.0));
}

fn charger(plan: &mut Plan, kind: ChargerKind, from: u32, until: u32) {
    plan.supply.chargers.push(Charger {
        kind: Some(kind),
        from_clock_min: Some(from * 60),
        until_clock_min: Some(until * 60),
        ..Charger::default()
    });
    plan.wiring.charger.fuse_a = Some(50.0);
}

/// A frosty night, a charger, and a lithium bank in the second place.
fn frost(plan: &mut Plan) {
    weather(plan, 4.0, -6.0);
    lithium(plan);
    charger(plan, ChargerKind::Shore, 10, 12);
}

type Change = fn(&mut Plan);

/// A name, what brings it, and what is near it and does not.
const ROWS: &[(&str, Change, Change)] = &[
    (
        "heat",
        |p| weather(p, 38.0, 24.0),
        |p| weather(p, 18.0, 10.0),
    ),
    // 16 cells at 3.65 V, in the second bank; 8 cells reach 29.2 V.
    (
        "fifty volts",
        |p| p.banks.push(Bank::of(Chemistry::Lfp, 51.2, 100.0)),
        lithium,
    ),
    (
        "generator",
        |p| charger(p, ChargerKind::Generator, 10, 12),
        |p| charger(p, ChargerKind::Shore, 10, 12),
    ),
    // The night begins at nine and ends at seven.
    (
        "generator at night",
        |p| charger(p, ChargerKind::Generator, 20, 22),
        |p| charger(p, ChargerKind::Generator, 18, 20),
    ),
    (
        "engine",
        |p| charger(p, ChargerKind::Engine, 10, 12),
        |p| charger(p, ChargerKind::Generator, 10, 12),
    ),
    (
        "engine at night",
        |p| charger(p, ChargerKind::Engine, 6, 8),
        |p| charger(p, ChargerKind::Engine, 7, 9),
    ),
    ("cold", frost, |p| {
        frost(p);
        weather(p, 14.0, 8.0);
    }),
    // Nothing charges it.
    ("cold", frost, |p| {
        frost(p);
        p.supply.chargers.clear();
    }),
    // Lead-acid alone.
    ("cold", frost, |p| {
        frost(p);
        p.banks.pop();
    }),
    // Its own warmth is said, and holds against any weather.
    ("cold", frost, |p| {
        frost(p);
        p.supply.bank_c = Some(Figure::label(12.0));
    }),
    // A van in winter is little warmer inside; four people keep a mild night off.
    (
        "cold",
        |p| {
            frost(p);
            p.supply.bank_place = Some(BankPlace::Cabin);
            p.cabin.people_count = Some(0);
            weather(p, -8.0, -15.0);
        },
        |p| {
            frost(p);
            p.supply.bank_place = Some(BankPlace::Cabin);
            p.cabin.people_count = Some(4);
            weather(p, 6.0, -1.0);
        },
    ),
    // A mild day, and a cold morning of the year that is said; and one that is not,
    // of which the page only has a default.
    (
        "cold",
        |p| {
            frost(p);
            weather(p, 14.0, 8.0);
            p.wiring.coldest_c = Some(-4.0);
        },
        |p| {
            frost(p);
            weather(p, 14.0, 8.0);
            p.wiring.coldest_c = Some(2.0);
        },
    ),
    // What the maker says in the place of 0 °C.
    (
        "cold",
        |p| {
            frost(p);
            weather(p, 9.0, 3.0);
            p.wiring.charge_least_c = Some(5.0);
        },
        |p| {
            frost(p);
            p.wiring.charge_least_c = Some(-20.0);
        },
    ),
    // By the hours of an imported file.
    (
        "cold",
        |p| {
            frost(p);
            weather(p, 14.0, 8.0);
            import(p, -3.0);
        },
        |p| {
            frost(p);
            import(p, 5.0);
        },
    ),
    (
        "gas",
        |p| p.supply.bank_place = Some(BankPlace::Locker),
        |p| p.supply.bank_place = Some(BankPlace::Outside),
    ),
    // In the second place, where the first is lithium; left unsaid it is indoors.
    (
        "gas",
        |p| {
            p.supply.bank_place = None;
            p.banks.insert(0, Bank::of(Chemistry::Lfp, 25.6, 100.0));
        },
        |p| {
            p.supply.bank_place = None;
            p.banks[0] = Bank::of(Chemistry::Lfp, 25.6, 100.0);
        },
    ),
    (
        "no fuse",
        |p| p.wiring.unit.fuse_a = None,
        |p| {
            p.wiring.unit.fuse_a = None;
            p.units[0].modes = vec![Mode::of_power("Fan", Figure::label(60.0))];
        },
    ),
    (
        "no fuse",
        |p| {
            charger(p, ChargerKind::Shore, 10, 12);
            p.wiring.charger.fuse_a = None;
        },
        |p| charger(p, ChargerKind::Shore, 10, 12),
    ),
    (
        "alternator",
        |p| {
            lithium(p);
            charger(p, ChargerKind::Engine, 10, 12);
        },
        |p| charger(p, ChargerKind::Engine, 10, 12),
    ),
    (
        "alternator",
        |p| {
            lithium(p);
            charger(p, ChargerKind::Engine, 10, 12);
        },
        |p| {
            lithium(p);
            charger(p, ChargerKind::Shore, 10, 12);
        },
    ),
    (
        "series",
        |p| p.banks[0] = in_series(2),
        |p| {
            p.banks[0] = in_series(2);
            p.wiring.most_series_count = Some(4);
        },
    ),
    (
        "beyond maker",
        |p| {
            p.banks[0] = in_series(2);
            p.wiring.most_series_count = Some(1);
        },
        |p| {
            p.banks[0] = in_series(2);
            p.wiring.most_series_count = Some(2);
        },
    ),
    ("parallel", |p| p.banks[0].parallel_count = 2, |_| ()),
    ("bms", lithium, |_| ()),
    ("always", |_| (), |_| ()),
];

fn in_series(series_count: u32) -> Bank {
    Bank {
        series_count,
        ..Bank::of(Chemistry::Agm, 12.0, 100.0)
    }
}

fn import(plan: &mut Plan, outdoor_c: f64) {
    plan.day.imported.outdoor_c = vec![outdoor_c; 24];
    plan.day.imported.global_w_m2 = vec![0.0; 24];
}

#[test]
fn a_caution_is_there_where_it_applies_and_nowhere_else() {
    for (at, (what, with, without)) in ROWS.iter().enumerate() {
        let changed = |change: &Change| {
            let mut plan = quiet();
            change(&mut plan);
            plan
        };
        assert!(has(&changed(with), what), "row {at}: {what} is missing");
        if *what != "always" {
            let plan = changed(without);
            assert!(!has(&plan, what), "row {at}: {what}: {:?}", cautions(&plan));
        }
    }
}

#[test]
fn every_caution_has_a_row_and_a_quiet_plan_has_none() {
    let named: Vec<&str> = ROWS.iter().map(|row| row.0).collect();
    let mut seen = Vec::new();
    for (_, with, _) in ROWS {
        let mut plan = quiet();
        with(&mut plan);
        seen.extend(cautions(&plan).into_iter().map(name));
    }
    assert!(seen.iter().all(|one| named.contains(one)));
    let quiet = cautions(&quiet()).into_iter();
    let beside: Vec<Caution> = quiet.filter(|&one| name(one) != "always").collect();
    assert_eq!(beside, []);
}

/// 33 CFR 183.420 and EN 50272-3: six cells of 200 Ah, flooded, want 1.2 m³/h.
#[test]
fn a_flooded_bank_wants_its_air() {
    let mut plan = van();
    plan.banks.push(Bank::of(Chemistry::Flooded, 12.0, 200.0));
    let air = cautions(&plan).into_iter().find_map(|one| match one {
        Caution::LeadAcidGas {
            bank: 1, air_m3_h, ..
        } => Some(air_m3_h),
        _ => None,
    });
    super::near(air.expect("air"), 1.2, 1e-9);
}

/// Each is one sentence in one place, with a source or none to name; what is said of
/// a charger is chosen by its kind.
#[test]
fn each_caution_is_said_once() {
    for (_, with, _) in ROWS {
        let mut plan = quiet();
        with(&mut plan);
        let all = cautions(&plan);
        let said: Vec<String> = all
            .iter()
            .map(|&one| text::caution(Formatter::ENGLISH, &plan, one))
            .collect();
        for (at, text) in said.iter().enumerate() {
            assert!(text.len() > 20);
            assert!(!said[at + 1..].contains(text), "{text}");
        }
    }
    let mut plan = quiet();
    lithium(&mut plan);
    let of = |plan: &Plan, kind: ChargerKind| {
        let all = cautions(plan).into_iter();
        all.filter(|one| one.is_of_charger(kind))
            .map(name)
            .collect::<Vec<_>>()
    };
    charger(&mut plan, ChargerKind::Engine, 10, 12);
    assert_eq!(of(&plan, ChargerKind::Engine), ["engine", "alternator"]);
    assert_eq!(of(&plan, ChargerKind::Generator), [""; 0]);
    charger(&mut plan, ChargerKind::Generator, 10, 12);
    assert_eq!(of(&plan, ChargerKind::Generator), ["generator"]);
    assert_eq!(of(&plan, ChargerKind::Shore), [""; 0]);
    assert_eq!(answer(&van()).cautions, cautions(&van()));
}

/// A bank whose numbers are wrong is named by its findings, and has no caution made of
/// them; the others keep theirs.
#[test]
fn a_bank_with_an_error_has_no_numbers_to_caution_with() {
    let mut plan = quiet();
    plan.banks[0].series_count = 1_000_000;
    assert!(!has(&plan, "series") && !has(&plan, "fifty volts"));
    plan.banks.push(Bank::of(Chemistry::Lfp, 51.2, 100.0));
    assert!(has(&plan, "fifty volts") && has(&plan, "always"));
}

/// What makers of sodium-ion cells allow differs (common practice, no source): only a
/// figure that somebody gave silences the caution below freezing.
#[test]
fn a_usual_figure_silences_no_caution_of_the_cold() {
    for chemistry in [Chemistry::Lfp, Chemistry::Nmc, Chemistry::SodiumIon] {
        let mut plan = van();
        plan.banks[0].chemistry = chemistry;
        plan.supply.bank_place = Some(BankPlace::Outside);
        charger(&mut plan, ChargerKind::Shore, 10, 12);
        plan.wiring.coldest_c = Some(-5.0);
        assert!(has(&plan, "cold"), "{chemistry:?}");
        plan.wiring.charge_least_c = Some(-20.0);
        assert!(!has(&plan, "cold"), "{chemistry:?}");
    }
}
