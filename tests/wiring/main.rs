//! The fourth question, whole: from a plan to cables, fuses and batteries.
//!
//! The tables behind it are held to their sources in `wiring_published`; here
//! the way from the plan to them is.

#[path = "../support/vectors.rs"]
mod vectors;

mod cautions;
mod judged;
mod said;

use proptest::prelude::*;
use till_morning::{
    answer::{
        answer, night,
        wiring::{
            CircuitAnswer, FuseFault, Open, RuleName, SizeSystem, Verdict, WiringNote, wiring,
        },
    },
    physics::battery::Chemistry,
    physics::wiring::{Awg, Size},
    plan::{
        Bank, Cable, Feed, Figure, Mode, Path, Plan,
        draft::Draft,
        path::UnitField,
        supply::Array,
        wiring::{CableInstallation, Circuit, FuseKind, Place, TakeOff, WiringField},
    },
    quantity::{in_square_millimeters, square_millimeters},
};
use vectors::near;

fn circuit(plan: &Plan, circuit: Circuit) -> CircuitAnswer {
    let answer = wiring(plan).expect("an answer");
    let found = answer
        .circuits
        .into_iter()
        .find(|one| one.circuit == circuit);
    found.expect("the circuit")
}

fn unit(plan: &Plan) -> CircuitAnswer {
    circuit(plan, Circuit::Unit)
}

/// A 24 V bank with 600 W on it, 4 m away.
fn van() -> Plan {
    let bank = Bank::of(Chemistry::Lfp, 25.6, 100.0);
    let mut plan = Plan::of(bank, Mode::of_power("Cool", Figure::label(600.0)));
    plan.units[0].cable = Cable {
        length_m: Some(4.0),
        area_mm2: Some(16.0),
        ..Cable::default()
    };
    // Said, so that no guess has a say: 8 cells at 2.5 V.
    plan.banks[0].cutoff_v = Some(Figure::label(20.0));
    plan.wiring.battery_fault_a = Some(Figure::label(3000.0));
    plan.wiring.fuse_kind = Some(FuseKind::ClassT);
    plan.wiring.unit = CableInstallation {
        insulation_c: Some(75.0),
        terminal_c: Some(75.0),
        air_c: Some(45.0),
        bundled_count: Some(2),
        ..CableInstallation::default()
    };
    plan
}

/// An inverter whose losses are of its label.
fn labelled_inverter() -> Feed {
    Feed::Inverter {
        no_load_w: Figure::label(12.0),
        proportional_loss_percent: Figure::label(5.0),
        square_loss_percent_per_kw: Figure::label(3.0),
        limit_w: None,
        cutoff_v: None,
    }
}

/// By hand: P = (V - I R) I at 20.0 V (8 cells at 2.5 V), the copper of both
/// ways as hot as its 75 C lugs may be, flexible strands 1.16 over solid, by
/// R = rho l / A (IEC 60028).
#[test]
fn the_current_at_the_lowest_volts_is_the_one_of_ohms_law() {
    let found = unit(&van());
    let hot = 1.0 + 0.00393 * 55.0;
    let ohm = 1.7241e-8 * 8.0 / 16e-6 * 1.16 * hot;
    let a = found.low_a;
    near((20.0 - a * ohm) * a, 600.0, 1e-6);
    near(found.continuous_a, 600.0 / 25.6, 1e-9);
    assert!(a > found.continuous_a);
}

/// A pair that drops is as good as what its tables say, and the rule that
/// decides asks for the most.
#[test]
fn the_deciding_rule_asks_for_the_most() {
    let mut plan = van();
    plan.units[0].cable.length_m = Some(12.0);
    for needed in unit(&plan).needed {
        let smallest = needed.smallest.expect("one passes").size;
        let by = |rule: RuleName| {
            let row = needed.by_rule.iter().find(|one| one.rule == rule);
            row.and_then(|row| row.size.clone())
                .expect("a size")
                .area_mm2
        };
        // Twelve metres each way at 3 %: the drop decides, long before heat.
        assert_eq!(needed.decided_by, Some(RuleName::Drop));
        near(by(RuleName::Drop), smallest.area_mm2, 1e-9);
        assert!(
            RuleName::ALL
                .iter()
                .all(|&rule| by(rule) <= smallest.area_mm2)
        );
        assert!(by(RuleName::Ampacity) < smallest.area_mm2);
    }
}

/// Gauges as the plan's texts know them are those of ASTM B258.
#[test]
fn a_typed_gauge_is_that_gauge() {
    for gauge in Awg::all() {
        let number = gauge.number();
        let text = match number {
            1.. => format!("{number} AWG"),
            _ => format!("{}/0", 1 - number),
        };
        let path = Path::Unit(0, UnitField::CableAreaMm2);
        let mut draft = Draft::of(van());
        draft.type_text(path, &text);
        assert_eq!(draft.trouble(path), None, "{text}");
        let stated = draft.plan.units[0].cable.area_mm2.expect("a conductor");
        let by_law = in_square_millimeters(gauge.area());
        near(stated / by_law, 1.0, 1e-3);
        assert_eq!(
            Size::of_stated(square_millimeters(stated)),
            Ok(Size::Awg(gauge))
        );
        let have = unit(&draft.plan).have.expect("a conductor");
        assert_eq!(have.size.system, SizeSystem::Awg);
        assert!(text.starts_with(&have.size.gauge), "{text}");
        draft.settle(path);
        assert!(draft.text(path).ends_with("AWG"), "{}", draft.text(path));
    }
}

/// 15 mm2 is no size: it is read as the thinner one, and said.
#[test]
fn between_two_sizes_the_thinner_counts() {
    let mut plan = van();
    plan.units[0].cable.area_mm2 = Some(15.0);
    let found = unit(&plan);
    assert_eq!(found.have.unwrap().size.gauge, "6");
    assert!(!found.notes.is_empty());
    plan.units[0].cable.area_mm2 = Some(0.3);
    assert_eq!(unit(&plan).verdict, Verdict::Fails);
}

/// 33 CFR 183.455(c) and table 5: 8 AWG of 105 C insulation at 30 C carries
/// 80 A, and the law for boats allows 150 % of it.
#[test]
fn the_marine_allowance_is_shown_and_not_recommended() {
    let mut plan = van();
    plan.wiring.place = Some(Place::Boat);
    plan.units[0].cable.area_mm2 = Some(8.366);
    let laid = &mut plan.wiring.unit;
    laid.insulation_c = Some(105.0);
    laid.terminal_c = Some(105.0);
    laid.air_c = Some(30.0);
    let protection = unit(&plan).protection.expect("a fuse");
    near(protection.most_a, 80.0, 1e-6);
    near(protection.marine_most_a, 120.0, 1e-6);
    assert!(protection.recommended_a.unwrap() <= 80.0);
}

#[test]
fn a_fuse_that_is_there_is_held_against_conductor_load_and_place() {
    let mut plan = van();
    let faults = |plan: &Plan| unit(plan).protection.expect("a fuse").fitted_faults;
    plan.wiring.unit.fuse_a = Some(50.0);
    assert_eq!(faults(&plan), []);
    assert_eq!(unit(&plan).verdict, Verdict::Carries);
    plan.wiring.unit.fuse_a = Some(200.0);
    assert!(matches!(
        faults(&plan)[..],
        [FuseFault::AboveConductor { .. }]
    ));
    assert_eq!(unit(&plan).verdict, Verdict::Fails);
    plan.wiring.unit.fuse_a = Some(20.0);
    assert!(matches!(faults(&plan)[..], [FuseFault::BelowLoad { .. }]));
    // NFPA 70 section 552.10(E)(4): 18 in, 457 mm.
    plan.wiring.unit.fuse_a = Some(50.0);
    plan.wiring.unit.fuse_along_m = Some(0.457);
    assert_eq!(faults(&plan), []);
    plan.wiring.unit.fuse_along_m = Some(0.46);
    assert!(matches!(faults(&plan)[..], [FuseFault::TooFar { .. }]));
}

/// Four batteries of 8 mOhm with links of 1 mOhm taken off at one end: the near one
/// carries 35 A and more of 100 (the network vector of `wiring_published`).
#[test]
fn batteries_share_by_where_the_cables_leave() {
    let mut plan = van();
    plan.banks[0].parallel_count = 4;
    plan.banks[0].battery_resistance_mohm = Some(Figure::measured(8.0));
    plan.banks[0].battery_current_limit_a = Some(Figure::label(100.0));
    plan.wiring.link_mohm = Some(Figure::measured(1.0));
    plan.units[0].modes = vec![Mode::of_power("Cool", Figure::label(2000.0))];
    let of = |take_off: TakeOff| {
        let mut plan = plan.clone();
        plan.wiring.take_off = Some(take_off);
        wiring(&plan).unwrap().bank.unwrap()
    };
    let share = |take_off| of(take_off).continuous.worst_a / of(take_off).continuous.total_a;
    near(share(TakeOff::BusBar), 0.25, 1e-9);
    assert!(share(TakeOff::Diagonal) > 0.25 && share(TakeOff::Diagonal) < share(TakeOff::SameEnd));
    assert!(share(TakeOff::SameEnd) > 0.35);
    // On bars, one open: three carry what four did.
    let open = of(TakeOff::BusBar).one_open.unwrap();
    near(open.worst_a / open.total_a, 1.0 / 3.0, 1e-9);
    let mut tight = plan.clone();
    tight.banks[0].battery_current_limit_a = Some(Figure::label(30.0));
    let answer = wiring(&tight).unwrap();
    assert_eq!(answer.verdict, Verdict::Fails);
    let opens = |note: &WiringNote| matches!(note, WiringNote::OneOpens { .. });
    assert!(answer.notes.iter().any(opens));
}

/// NFPA 70 section 690.8, from memory: 1.25 x 1.25 x Isc; 690.7: a module of
/// 22.5 V and -0.28 %/K stands at 24.7 V each on a morning of -10 C.
#[test]
fn panels_by_their_short_circuit_and_the_coldest_morning() {
    let mut plan = van();
    plan.supply.arrays = vec![Array {
        rated_w: Some(Figure::label(480.0)),
        panels_series_count: Some(2),
        panels_parallel_count: Some(3),
        panel_open_v: Some(Figure::label(22.5)),
        panel_short_a: Some(Figure::label(4.6)),
        ..Array::default()
    }];
    plan.supply.controller_limit_v = Some(Figure::label(49.0));
    // With a guess of the morning and of the panels' cold volts it is not judged.
    let guessed = wiring(&plan).unwrap();
    assert_eq!(guessed.solar.unwrap().verdict, Verdict::NotJudged);
    assert!(
        guessed
            .open
            .contains(&Open::Field(Path::Wiring(WiringField::ColdestC)))
    );
    plan.wiring.coldest_c = Some(-10.0);
    plan.supply.panel_volts_percent_per_k = Some(Figure::label(-0.28));
    let answer = wiring(&plan).unwrap();
    let side = answer.solar.unwrap();
    near(side.short_circuit_a, 13.8, 1e-9);
    near(side.design_a, 1.5625 * 13.8, 1e-9);
    assert!(side.string_fuses);
    near(side.cold_open_v, 2.0 * 22.5 * 1.098, 1e-9);
    assert_eq!(side.within, Some(false));
    assert_eq!(answer.verdict, Verdict::Fails);
    // The fuse has its 125 % once more than the current, not twice.
    let panel = circuit(&plan, Circuit::Panel);
    near(panel.protection.unwrap().least_a, 1.5625 * 13.8, 1e-9);
}

/// A rush where something is connected, and what is not judged behind it.
#[test]
fn notes_stand_where_they_apply_and_nowhere_else() {
    let has = |plan: &Plan, what: &WiringNote| wiring(plan).unwrap().notes.contains(what);
    let mut plan = van();
    assert!(!has(&plan, &WiringNote::Precharge) && !has(&plan, &WiringNote::MixedBatteries));
    plan.units[0].feed = labelled_inverter();
    assert!(has(&plan, &WiringNote::Precharge) && has(&plan, &WiringNote::BehindConverter));
    plan.banks[0].parallel_count = 2;
    plan.wiring.mixed_batteries = true;
    assert!(has(&plan, &WiringNote::MixedBatteries));
}

#[test]
fn the_night_leaves_the_wiring_alone_and_the_answer_has_it() {
    let mut plan = van();
    assert_eq!(night(&plan).wiring, None);
    assert_eq!(answer(&plan).wiring, wiring(&plan));
    // An error of the wiring is named, and takes nothing else with it.
    plan.wiring.unit.air_c = Some(500.0);
    let answered = answer(&plan);
    assert_eq!(answered.wiring, None);
    assert_eq!(answered.runs.len(), 1);
    let field = answered.findings[0].field.unwrap().to_string();
    assert_eq!(field, "wiring.unit.air_c");
}

prop_compose! {
    fn any_van()(
        power_w in 20.0..2500.0,
        length_m in 0.2..20.0,
        size in 0usize..15,
        air_c in 10.0..70.0,
        bundled in 1u32..10,
        allowed in 0.5..10.0,
        inverter in any::<bool>(),
        place in 0usize..3,
        parallel in 1u32..4,
    ) -> Plan {
        let mut plan = van();
        plan.banks[0].parallel_count = parallel;
        plan.units[0].modes = vec![Mode::of_power("Cool", Figure::label(power_w))];
        if inverter {
            plan.units[0].feed = labelled_inverter();
        }
        plan.units[0].cable.length_m = Some(length_m);
        let gauge = Awg::all().nth(size).unwrap();
        plan.units[0].cable.area_mm2 = Some(in_square_millimeters(gauge.area()));
        plan.wiring.place = [Place::Vehicle, Place::Boat, Place::Cabin].get(place).copied();
        plan.wiring.unit.air_c = Some(air_c);
        plan.wiring.unit.bundled_count = Some(bundled);
        plan.wiring.unit.allowed_drop_percent = Some(allowed);
        plan
    }
}

fn thinner(plan: &Plan, steps: usize) -> Plan {
    let mut plan = plan.clone();
    let mm2 = plan.units[0].cable.area_mm2.expect("a conductor");
    let at = Awg::all()
        .position(|g| in_square_millimeters(g.area()) >= mm2 - 1e-9)
        .unwrap();
    let gauge = Awg::all().nth(at.saturating_sub(steps)).unwrap();
    plan.units[0].cable.area_mm2 = Some(in_square_millimeters(gauge.area()));
    plan
}

fn fails(plan: &Plan) -> Vec<RuleName> {
    unit(plan).have.expect("a conductor").fails
}

proptest! {
    /// Longer, hotter, more bundled or thinner: what failed before fails still.
    #[test]
    fn harder_never_passes_where_easier_failed(
        plan in any_van(),
        longer_m in 0.0..10.0,
        hotter_c in 0.0..20.0,
        more in 0u32..10,
        steps in 0usize..5,
    ) {
        let mut hard = thinner(&plan, steps);
        let cable = &mut hard.units[0].cable;
        cable.length_m = cable.length_m.map(|length_m| length_m + longer_m);
        let laid = &mut hard.wiring.unit;
        laid.air_c = laid.air_c.map(|c| c + hotter_c);
        laid.bundled_count = laid.bundled_count.map(|count| count + more);
        let (easy, hard) = (fails(&plan), fails(&hard));
        for rule in easy {
            prop_assert!(hard.contains(&rule), "{rule:?}");
        }
    }

    /// Whatever fuse is named, for the conductor that is there or for one that
    /// is chosen, that conductor carries it; and it bears the load.
    #[test]
    fn no_recommended_fuse_exceeds_its_conductor(plan in any_van()) {
        let answer = wiring(&plan).unwrap();
        for circuit in &answer.circuits {
            let chosen = circuit.needed.iter().filter_map(|one| one.smallest.as_ref());
            for figures in chosen.chain(&circuit.have) {
                let Some(fuse_a) = figures.fuse_a else { continue };
                prop_assert!(fuse_a <= figures.ampacity.as_ref().unwrap().allowed_a);
                prop_assert!(fuse_a >= 1.25 * figures.loaded.unwrap().current_a * (1.0 - 1e-9));
            }
            if let Some(protection) = &circuit.protection {
                let most_a = protection.recommended_a.unwrap_or(0.0);
                prop_assert!(most_a <= protection.most_a && protection.most_a <= protection.marine_most_a);
            }
        }
    }

    /// The smallest that is named passes all, whichever system.
    #[test]
    fn what_is_named_would_carry_it(plan in any_van()) {
        for needed in unit(&plan).needed {
            if let Some(smallest) = needed.smallest {
                prop_assert_eq!(smallest.fails, []);
                let mut plan = plan.clone();
                plan.units[0].cable.area_mm2 = Some(smallest.size.area_mm2);
                plan.wiring.unit.fuse_a = smallest.fuse_a;
                prop_assert_eq!(unit(&plan).verdict, Verdict::Carries);
            }
        }
    }
}

/// The first question runs on the copper that the fourth judges: by R = rho l / A
/// (IEC 60028) and 1.16 for fine strands, the way to the distribution added.
#[test]
fn hours_and_cables_speak_of_the_same_copper() {
    use till_morning::simulate::assemble::path_ohm;
    let mut plan = van();
    let warm = 1.0 + 0.00393 * 20.0;
    let bare = 1.7241e-8 * 8.0 / 16e-6 * warm;
    near(path_ohm(&plan, 0), bare, 1e-12);
    let before = night(&plan).runs[0].lost_wh;
    plan.wiring.unit.strands = Some(till_morning::plan::wiring::Strands::Fine);
    near(path_ohm(&plan, 0), 1.16 * bare, 1e-12);
    plan.wiring.distribution_m = Some(1.0);
    plan.wiring.distribution_mm2 = Some(33.631);
    let shared = 1.7241e-8 * 2.0 / 33.631e-6 * warm;
    near(path_ohm(&plan, 0), 1.16 * bare + shared, 1e-12);
    let run = &night(&plan).runs[0];
    assert!(run.unit_wh < run.drawn_wh && before > 0.0);
    let circuits = wiring(&plan).unwrap().circuits;
    assert_eq!(
        [circuits[0].circuit, circuits[1].circuit],
        [Circuit::Distribution, Circuit::Unit]
    );
    // What the first cable drops the second one's source has not.
    assert!(circuits[1].source_low_v < 20.0 && circuits[1].source_low_v > 19.5);
}

/// A cable of no length is one that nobody described: what it must be is said,
/// and nothing is said to carry.
#[test]
fn a_cable_that_nobody_described_carries_nothing() {
    let mut plan = van();
    plan.units[0].cable = Cable::default();
    let found = unit(&plan);
    assert_eq!((found.have, found.verdict), (None, Verdict::NotSaid));
    assert!(found.needed.iter().all(|one| one.smallest.is_some()));
    assert_eq!(wiring(&plan).unwrap().verdict, Verdict::NotSaid);
    near(found.length_m, 3.0, 1e-12);
}
