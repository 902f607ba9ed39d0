//! The pocket formula against the full engine, on banks it was not made from.

use till_morning::{
    answer::{NoPocket, PocketOutcome, night, pocket::pocket},
    physics::battery::Chemistry,
    plan::{Bank, Figure, Mode, Plan, supply::Array},
};

fn plan(chemistry: Chemistry, volts: f64, ah: f64, watts: f64) -> Plan {
    let mut bank = Bank::of(chemistry, volts, ah);
    bank.depth_percent = Some(90.0);
    Plan::of(bank, Mode::of_power("Hold", Figure::label(watts)))
}

fn refused(plan: &Plan) -> NoPocket {
    match pocket(plan)[0].outcome {
        PocketOutcome::Refused { because, .. } => because,
        PocketOutcome::Holds(formula) => panic!("{formula:?}"),
    }
}

/// Usable Wh over watts is hours: common practice, no source. The formula may
/// differ from it by what the battery's own electronics take and by volts above
/// or below the nominal, and holds within its own stated error on other banks.
#[test]
fn it_holds_on_other_banks_within_its_error() {
    let base = plan(Chemistry::Lfp, 25.6, 200.0, 400.0);
    let PocketOutcome::Holds(formula) = pocket(&base)[0].outcome else {
        panic!("lithium has a formula");
    };
    assert!((formula.hours_per_wh * 400.0 - 1.0).abs() < 0.06);
    assert!((formula.hours_per_ah / formula.hours_per_wh - 25.6).abs() < 1e-9);
    assert!(formula.worst_error_percent <= 5.0);
    for (ah, depth) in [(130.0, 45.0), (200.0, 90.0), (310.0, 77.0), (640.0, 61.0)] {
        let mut other = plan(Chemistry::Lfp, 25.6, ah, 400.0);
        other.banks[0].depth_percent = Some(depth);
        let usable_wh = 25.6 * ah * depth / 100.0;
        assert!((formula.least_wh..=formula.most_wh).contains(&usable_wh));
        let hours = night(&other).runs[0].hours_h.likely;
        let off = 100.0 * (formula.hours_per_wh * usable_wh / hours - 1.0).abs();
        // Between the tried sizes and on banks whose resistance is by their own
        // label: a hair more than on the grid itself.
        assert!(off <= formula.worst_error_percent + 0.5, "{ah} Ah: {off} %");
    }
}

#[test]
fn where_no_line_can_hold_it_says_why() {
    let lead = plan(Chemistry::Agm, 12.0, 200.0, 400.0);
    assert_eq!(refused(&lead), NoPocket::LeadAcid);

    let mut half = plan(Chemistry::Lfp, 25.6, 200.0, 400.0);
    half.banks[0].start_charge_percent = Some(Figure::measured(60.0));
    assert_eq!(refused(&half), NoPocket::FixedStartCharge);

    let mut sunny = plan(Chemistry::Lfp, 25.6, 200.0, 400.0);
    sunny.night.start_clock_min = 9 * 60;
    sunny.supply.arrays.push(Array {
        rated_w: Some(Figure::label(240.0)),
        ..Array::default()
    });
    assert_eq!(refused(&sunny), NoPocket::Sun);

    let mut weak = plan(Chemistry::Lfp, 25.6, 200.0, 400.0);
    weak.banks[0].battery_current_limit_a = Some(Figure::label(5.0));
    assert_eq!(refused(&weak), NoPocket::Limits);
}

/// The invented night starts at nine: Hold is through before the sun gives
/// anything, Hush runs well into the day.
#[test]
fn the_demo_has_a_line_for_each_mode_or_a_reason() {
    let all = pocket(&Plan::demo());
    let holds = |at: usize| matches!(all[at].outcome, PocketOutcome::Holds(_));
    assert_eq!((all.len(), holds(0), holds(1)), (3, true, true));
    assert!(matches!(
        all[2].outcome,
        PocketOutcome::Refused {
            because: NoPocket::Sun,
            ..
        }
    ));
}
