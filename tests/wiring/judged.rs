//! A guess decides no verdict, in either direction: `van` has everything said, and
//! each test takes something of it back.

use super::{circuit, unit, van};
use proptest::prelude::*;
use till_morning::text::Formatter;
use till_morning::{
    answer::wiring::{Open, Remedy, Verdict, wiring},
    plan::{
        Figure, Mode, Path, Plan,
        draft::Draft,
        path::{ModeField, UnitField},
        supply::Charger,
        wiring::{Circuit, FuseKind, InstallationField, WiringField},
    },
    simulate::assemble::path_ohm,
    text::wiring,
};

fn fused() -> Plan {
    let mut plan = van();
    plan.wiring.unit.fuse_a = Some(50.0);
    plan
}

fn waits_for(plan: &Plan, field: Path) -> bool {
    wiring(plan).unwrap().open.contains(&Open::Field(field))
}

fn headline(plan: &Plan) -> String {
    wiring::headline(Formatter::ENGLISH, &wiring(plan).unwrap())
}

const CONDUCTOR: Path = Path::Unit(0, UnitField::CableAreaMm2);
const FAULT: Path = Path::Wiring(WiringField::BatteryFaultA);

#[test]
fn what_is_all_said_is_judged() {
    let answer = wiring(&fused()).unwrap();
    assert_eq!((answer.verdict, answer.open.len()), (Verdict::Carries, 0));
    assert!(headline(&fused()).starts_with("Yes, for what you entered"));
}

/// A field that is cleared is no error: what must be there is said, nothing is
/// judged, and the run counts with the size that is shown as assumed.
#[test]
fn a_conductor_that_nobody_named_is_not_judged() {
    let mut draft = Draft::of(fused());
    draft.type_text(CONDUCTOR, "");
    assert_eq!(draft.trouble(CONDUCTOR), None);
    let plan = &draft.plan;
    assert_eq!(plan.stated(CONDUCTOR), None);
    let found = unit(plan);
    assert_eq!((&found.have, found.verdict), (&None, Verdict::NotSaid));
    let line = wiring::circuit_line(Formatter::ENGLISH, &found);
    assert!(line.starts_with("not entered yet, needs "), "{line}");
    let comes_first = |first: &str, second: &str, line: &str| {
        let (first, second) = (line.find(first), line.find(second));
        assert!(first.is_some() && first < second, "{line}");
    };
    comes_first("mm²", "AWG", &line);
    let mut us = Formatter::ENGLISH;
    us.units.us_units = true;
    comes_first("AWG", "mm²", &wiring::circuit_line(us, &found));
    assert!(waits_for(plan, CONDUCTOR));
    assert!(
        headline(plan).starts_with("Not checked yet"),
        "{}",
        headline(plan)
    );
    let assumed = plan.assumed(CONDUCTOR).unwrap();
    let mut same = plan.clone();
    same.set_number(CONDUCTOR, assumed.value);
    assert_eq!(path_ohm(plan, 0), path_ohm(&same, 0));
    assert_eq!(till_morning::plan::Cable::default().area_mm2, None);
}

/// The same of the cable that all share: its length says that it is there.
#[test]
fn a_shared_conductor_that_nobody_named_counts_in_the_run_alone() {
    let mut plan = fused();
    let before = path_ohm(&plan, 0);
    plan.wiring.distribution_m = Some(2.0);
    assert!(path_ohm(&plan, 0) > before);
    assert_eq!(
        circuit(&plan, Circuit::Distribution).verdict,
        Verdict::NotSaid
    );
}

#[test]
fn a_guessed_short_circuit_current_decides_nothing() {
    let mut plan = fused();
    plan.wiring.battery_fault_a = None;
    // By the chemistry's resistance; and typed, but as a guess.
    for fault in [None, Some(Figure::guess(3000.0))] {
        plan.wiring.battery_fault_a = fault;
        for kind in [FuseKind::ClassT, FuseKind::Strip, FuseKind::Blade] {
            plan.wiring.fuse_kind = Some(kind);
            let answer = wiring(&plan).unwrap();
            assert_eq!(answer.verdict, Verdict::NotJudged, "{kind:?}");
            assert!(waits_for(&plan, FAULT));
            let said = headline(&plan);
            assert!(said.starts_with("Not checked yet"), "{said}");
            assert!(
                said.contains("Short-circuit current of one battery"),
                "{said}"
            );
            assert!(answer.notes.is_empty(), "{:?}", answer.notes);
        }
    }
    // Said, it decides: a strip fuse breaks 2.7 kA at these volts.
    plan.wiring.battery_fault_a = Some(Figure::label(3000.0));
    plan.wiring.fuse_kind = Some(FuseKind::Strip);
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::Fails);
    plan.wiring.battery_fault_a = Some(Figure::label(2000.0));
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::Carries);
    // A resistance that was measured is no guess.
    plan.wiring.battery_fault_a = None;
    plan.wiring.fuse_kind = Some(FuseKind::ClassT);
    plan.banks[0].battery_resistance_mohm = Some(Figure::measured(10.0));
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::Carries);
}

#[test]
fn a_fuse_that_nobody_named_is_waited_for() {
    let mut plan = van();
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::NotJudged);
    assert!(waits_for(
        &plan,
        Path::Installation(Circuit::Unit, InstallationField::FuseA)
    ));
    plan.wiring.unit.fuse_a = Some(50.0);
    plan.wiring.fuse_kind = None;
    let answer = wiring(&plan).unwrap();
    assert_eq!(answer.verdict, Verdict::NotJudged);
    assert_eq!(answer.open, [Open::FuseKind]);
}

/// A draw that is a guess decides where its spread crosses the limit, and only
/// there: at 600 W the fuse of 50 A has little room, a bell wire has none.
#[test]
fn a_guessed_draw_decides_only_where_it_would_not_change_the_verdict() {
    let mut plan = fused();
    let draw = Path::Mode(0, 0, ModeField::PowerW);
    plan.units[0].modes = vec![Mode::of_power("Cool", Figure::guess(700.0))];
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::NotJudged);
    assert!(waits_for(&plan, draw));
    plan.units[0].modes = vec![Mode::of_power("Cool", Figure::guess(300.0))];
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::Carries);
    plan.units[0].cable.area_mm2 = Some(1.0);
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::Fails);
}

/// 60 A into 100 Ah: what the battery bears is a guess (half its Ah) until it is said.
#[test]
fn a_guessed_charge_limit_decides_nothing() {
    let mut plan = fused();
    plan.supply.chargers = vec![Charger {
        most_a: Some(Figure::label(60.0)),
        ..Charger::default()
    }];
    let verdict = |plan: &Plan| {
        let answer = wiring(plan).unwrap();
        (answer.bank.unwrap().charge.unwrap().verdict, answer.verdict)
    };
    let limit = Path::Wiring(WiringField::BatteryChargeA);
    assert_eq!(verdict(&plan), (Verdict::NotJudged, Verdict::NotJudged));
    assert!(waits_for(&plan, limit));
    plan.wiring.battery_charge_a = Some(Figure::label(50.0));
    assert_eq!(verdict(&plan), (Verdict::Fails, Verdict::Fails));
    plan.wiring.battery_charge_a = Some(Figure::label(100.0));
    assert_eq!(verdict(&plan), (Verdict::Carries, Verdict::Carries));
}

proptest! {
    /// Whatever the cable turns out to be like, a verdict that was given before
    /// anybody had said it stands.
    #[test]
    fn a_verdict_outlives_what_is_said_of_the_cable(
        power_w in 20.0..2500.0,
        mm2 in 1.0..100.0,
        fuse_a in 5.0..200.0,
        insulation_c in 60.0..105.0,
        terminal_c in 60.0..105.0,
        air_c in 30.0..60.0,
        bundled in 2u32..=4,
    ) {
        let mut plan = van();
        plan.units[0].modes = vec![Mode::of_power("Cool", Figure::label(power_w))];
        plan.units[0].cable.area_mm2 = Some(mm2);
        plan.wiring.unit = Default::default();
        plan.wiring.unit.fuse_a = Some(fuse_a);
        let before = unit(&plan).verdict;
        let laid = &mut plan.wiring.unit;
        laid.insulation_c = Some(insulation_c);
        laid.terminal_c = Some(terminal_c);
        laid.air_c = Some(air_c);
        laid.bundled_count = Some(bundled);
        if before != Verdict::NotJudged {
            prop_assert_eq!(unit(&plan).verdict, before);
        }
    }
}

/// In air as hot as its lugs nothing may flow through any size, however short: a
/// better rating helps, and length is not named.
#[test]
fn advice_names_what_helps() {
    let mut plan = van();
    plan.wiring.unit.air_c = Some(75.0);
    let found = unit(&plan);
    assert!(found.needed.iter().all(|one| one.smallest.is_none()));
    let both = Remedy::Ratings {
        insulation: true,
        terminals: true,
        to_c: 90.0,
    };
    assert!(found.remedies.contains(&both), "{:?}", found.remedies);
    let is_length = |one: &Remedy| matches!(one, Remedy::ShorterRun { .. });
    assert!(!found.remedies.iter().any(is_length));
    let said = wiring::remedies_text(Formatter::ENGLISH, &found).unwrap();
    assert!(
        said.contains("insulation, lugs and holders rated for 90"),
        "{said}"
    );
    assert!(!said.contains("shorter"), "{said}");
    // It is true: with that rating, 75 °C air leaves room and a size passes.
    plan.wiring.unit.insulation_c = Some(90.0);
    plan.wiring.unit.terminal_c = Some(90.0);
    assert!(unit(&plan).needed.iter().any(|one| one.smallest.is_some()));
    assert_eq!(unit(&van()).remedies, []);
}

/// 2.5 kW through 12 m from a bank that is let down to 13 V: every size drops too
/// much. A cut-off that keeps the volts up is named, and helps.
#[test]
fn a_low_cut_off_is_named_where_it_is_what_fails() {
    let mut plan = van();
    plan.units[0].cable.length_m = Some(12.0);
    plan.units[0].modes = vec![Mode::of_power("Cool", Figure::label(2500.0))];
    plan.banks[0].cutoff_v = Some(Figure::label(13.0));
    let found = unit(&plan);
    let cut_off = found.remedies.iter().find_map(|one| match *one {
        Remedy::HigherCutOff { to_v } => Some(to_v),
        _ => None,
    });
    assert!(found.needed.iter().all(|one| one.smallest.is_none()));
    let to_v = cut_off.expect("a cut-off");
    plan.units[0].cutoff_v = Some(Figure::label(to_v));
    assert!(unit(&plan).needed.iter().any(|one| one.smallest.is_some()));
}

/// A long thin run drops too much: length is what fails, and it is named.
#[test]
fn length_is_named_where_it_is_what_fails() {
    let mut plan = van();
    plan.units[0].cable.length_m = Some(7.0);
    let found = unit(&plan);
    assert_eq!(found.verdict, Verdict::Fails);
    let to_m = found.remedies.iter().find_map(|one| match *one {
        Remedy::ShorterRun { to_m } => Some(to_m),
        _ => None,
    });
    plan.units[0].cable.length_m = Some(to_m.expect("a length"));
    assert_eq!(unit(&plan).have.unwrap().fails, []);
    let better = |one: &Remedy| matches!(one, Remedy::Ratings { .. });
    assert!(!found.remedies.iter().any(better), "{:?}", found.remedies);
}
