//! How much is enough, against the day run with what was found and on paper.

use till_morning::{
    answer::day::day,
    physics::battery::Chemistry,
    plan::finding::Matter,
    plan::{
        Bank, Figure, Load, Mode, ModeRow, Plan,
        supply::{Charger, ChargerKind},
    },
    study::sizing::day::{DayFound, DayUnknown, size_all, size_day},
};

fn enough(plan: &Plan, unknown: DayUnknown) -> (f64, f64) {
    match size_day(plan, unknown).unwrap().found {
        DayFound::Enough {
            value, fails_at, ..
        } => (value, fails_at),
        other => panic!("{unknown:?} {other:?}"),
    }
}

/// A steady load on a bank without losses: Ah are watts times hours over volts.
fn on_paper() -> Plan {
    let mut plan = Plan::of(
        Bank::of(Chemistry::Lfp, 12.8, 100.0),
        Mode::of_power("On", Figure::exact(1.0)),
    );
    let bank = &mut plan.banks[0];
    bank.battery_resistance_mohm = Some(Figure::exact(0.0));
    bank.polarisation_percent = Some(Figure::exact(0.0));
    bank.parasitic_w = Some(Figure::exact(0.0));
    bank.depth_percent = Some(100.0);
    // 3.3 V a cell from empty to full: the current stays.
    bank.battery_open_circuit = [0.0, 100.0]
        .map(|charge_percent| till_morning::plan::OpenCircuitPoint {
            charge_percent,
            open_circuit_v: 13.2,
        })
        .to_vec();
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        ..ModeRow::default()
    }];
    plan.loads = vec![Load {
        name: "load".into(),
        power_w: Figure::exact(66.0),
    }];
    plan.night.wanted_h = 12.0;
    plan
}

/// 66 W for 12 h from 13.2 V are 60 Ah: arithmetic.
#[test]
fn bank_for_a_steady_load() {
    let (value, fails_at) = enough(&on_paper(), DayUnknown::BankAh);
    assert!((60.0..60.0 * 1.006).contains(&value), "{value}");
    assert!(fails_at < 60.0, "{fails_at}");
}

/// A charger that brings what the load takes lasts for ever: 5 A, less what the
/// bank itself still gives, 60 Ah of 12 h away, so 20 Ah leave 40 to be brought.
#[test]
fn charger_beside_a_small_bank() {
    let mut plan = on_paper();
    plan.banks[0].battery_rated_ah.value = 20.0;
    plan.supply.chargers = vec![Charger {
        kind: Some(ChargerKind::Shore),
        ..Charger::default()
    }];
    let (value, _) = enough(&plan, DayUnknown::ChargerA);
    let by_hand_a = 40.0 / 12.0;
    assert!((value / by_hand_a - 1.0).abs() < 0.011, "{value}");
    plan.supply.chargers.clear();
    assert!(size_day(&plan, DayUnknown::ChargerA).is_none());
}

/// What is enough is so by the day's own trace, and a good part less is not.
#[test]
fn what_is_found_holds_and_less_does_not() {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(2);
    // A week's heat on half the bank, so that every question has an answer.
    plan.banks[0].parallel_count = 1;
    plan.night.wanted_h = 14.0;
    plan.cabin.set_point_c = Some(27.0);
    plan.banks[0].battery_rated_ah.value = 80.0;
    plan.supply.chargers = vec![Charger {
        kind: Some(ChargerKind::Shore),
        from_clock_min: Some(21 * 60),
        until_clock_min: Some(23 * 60),
        ..Charger::default()
    }];
    let holds = |plan: &Plan, goal_h: f64| {
        let day = day(plan).unwrap();
        day.empty_h.is_none_or(|h| h >= goal_h) && day.lost_h.is_none_or(|h| h >= goal_h)
    };
    let mut answered = 0;
    for sizing in size_all(&plan) {
        let DayFound::Enough {
            value, fails_at, ..
        } = sizing.found
        else {
            continue;
        };
        answered += 1;
        assert_eq!(sizing.goal_h, 38.0);
        // The trace has steps half as long: a little more than found, and less.
        // (Steps alone are good for a few tens of watt-hours, which of a small panel
        // or charger is much and of the bank little.)
        let share = match sizing.unknown {
            DayUnknown::PanelW | DayUnknown::ChargerA => 0.3,
            _ => 0.04,
        };
        let step = share * (value - fails_at).signum() * value.abs();
        let at = |value: f64| {
            let mut changed = plan.clone();
            let path = sizing.unknown.path();
            changed.set_number(path, value);
            if sizing.unknown == DayUnknown::HighC {
                changed.day.low_c = Some(Figure::label(value - 14.0));
            }
            changed
        };
        assert!(holds(&at(value + step), sizing.goal_h), "{sizing:?}");
        assert!(!holds(&at(value - step), sizing.goal_h), "{sizing:?}");
        assert!(
            holds(&sizing.applied_to(&plan).unwrap(), sizing.goal_h),
            "{sizing:?}"
        );
    }
    assert!(answered >= 4, "{:?}", size_all(&plan));
}

/// No panel carries a night that starts in the dark: it says so, and how far it
/// looked.
#[test]
fn out_of_reach_is_said() {
    let mut plan = on_paper();
    plan.banks[0].battery_rated_ah.value = 20.0;
    plan.night.wanted_h = 8.0;
    let sizing = size_day(&plan, DayUnknown::PanelW).unwrap();
    assert_eq!(sizing.found, DayFound::None { lasts: false });
    let finding = sizing.finding.clone().unwrap();
    assert_eq!(finding.field, Some(DayUnknown::PanelW.path()));
    assert!(matches!(finding.matter, Matter::Unreachable { max, .. } if max == 20_000.0));
    assert!(sizing.applied_to(&plan).is_none());
    // It is the unit that gives out where no bank is large enough.
    let mut weak = Plan::demo();
    weak.day.days_count = Some(1);
    weak.cabin.set_point_c = Some(12.0);
    let found = size_day(&weak, DayUnknown::BankAh).unwrap().found;
    assert_eq!(found, DayFound::None { lasts: true });
    // And a bank that holds without any.
    plan.banks[0].battery_rated_ah.value = 200.0;
    let sizing = size_day(&plan, DayUnknown::PanelW).unwrap();
    assert!(matches!(sizing.found, DayFound::Any { value: 0.0, .. }));
}
