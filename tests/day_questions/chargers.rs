//! Several chargers on one bank, each with volts of its own.

use super::vectors::{near_share, number, rows};
use till_morning::{
    answer::day::{DayAnswer, DayEvent, Happening, day},
    physics::battery::Chemistry,
    plan::{
        Bank, Figure, Mode, ModeRow, Plan,
        supply::{Charger, ChargerKind},
    },
};

fn charger(most_a: f64, hold_v: f64) -> Charger {
    Charger {
        kind: Some(ChargerKind::Shore),
        most_a: Some(Figure::exact(most_a)),
        hold_v: Some(hold_v),
        ..Charger::default()
    }
}

/// The demo's bank half full, nothing on, nothing but chargers.
fn charged(chargers: &[Charger], start_c: f64) -> DayAnswer {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan.banks[0].start_charge_percent = Some(Figure::label(50.0));
    plan.supply.arrays.clear();
    plan.supply.chargers = chargers.to_vec();
    plan.supply.bank_c = Some(Figure::label(25.0));
    plan.cabin.start_c = Some(Figure::label(start_c));
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        ..ModeRow::default()
    }];
    let day = day(&plan).unwrap();
    let gap = day.energy.gap_wh.abs() / day.energy.throughput_wh();
    assert!(gap < 1e-9, "{gap}");
    day
}

/// The highest bars while the bank is charged. (Full, it stands at its own rest
/// volts, which rise steeply at the end and may pass what the charger holds by the
/// mean of a step.)
fn most_v(day: &DayAnswer) -> f64 {
    day.trace
        .iter()
        .filter(|point| point.bank_a < -0.1)
        .map(|point| point.terminal_v)
        .fold(0.0, f64::max)
}

/// No charger lifts the bars above the volts that it holds; one that holds more
/// goes on where the other stands back, and the other is never in its way.
#[test]
fn each_charger_holds_its_own_volts() {
    let (low, high) = (charger(20.0, 26.6), charger(15.0, 28.4));
    let by_low = charged(std::slice::from_ref(&low), 25.0);
    let by_high = charged(std::slice::from_ref(&high), 25.0);
    let by_both = charged(&[low, high], 25.0);
    assert!(most_v(&by_low) <= 26.6 + 1e-6, "{}", most_v(&by_low));
    let (low_v, both_v) = (most_v(&by_low), most_v(&by_both));
    assert!(
        both_v > low_v + 0.5 && both_v <= 28.4 + 1e-6,
        "{low_v} {both_v}"
    );
    for ((low, high), both) in by_low.trace.iter().zip(&by_high.trace).zip(&by_both.trace) {
        let alone = low.charge_percent.max(high.charge_percent);
        assert!(
            // (What the last step before full overshoots is a matter of its length.)
            both.charge_percent >= alone - if alone > 99.0 { 0.5 } else { 0.01 },
            "{alone} {both:?} {high:?}"
        );
    }
    // The order in the list is no matter.
    let turned = charged(&[high, low], 25.0);
    let wh = |day: &DayAnswer| day.energy.charger_wh;
    assert!((wh(&turned) - wh(&by_both)).abs() < 1e-6 * wh(&by_both));
}

/// Half the amps at 60 °C (common practice, no source).
#[test]
fn a_hot_charger_gives_less() {
    let amps = |start_c: f64| {
        let point = charged(&[charger(20.0, 28.4)], start_c).trace[1];
        point.charger_w / point.terminal_v
    };
    assert!((amps(30.0) - 20.0).abs() < 1e-6, "{}", amps(30.0));
    assert!((amps(60.0) - 10.0).abs() < 1e-6, "{}", amps(60.0));
}

/// What a source gives, less the charger's loss, and no more: 300 W over 90 % are
/// 270 W at the bars, by amps times volts, long before 20 A are reached.
#[test]
fn a_small_source_gives_its_watts() {
    let small = Charger {
        source_w: Some(Figure::exact(300.0)),
        efficiency_percent: Some(Figure::exact(90.0)),
        ..charger(20.0, 28.4)
    };
    let (bound, free) = (
        charged(&[small], 25.0),
        charged(&[charger(20.0, 28.4)], 25.0),
    );
    for point in &bound.trace[1..6] {
        near_share(point.charger_w, 270.0, 1e-3);
    }
    assert!(free.trace[1].charger_w > 500.0);
}

/// PyBaMM 26.10.1.1 (Prada2013, four cells scaled to 12.8 V 100 Ah) charged at
/// constant current and held at 14.4 V; the file says how. The day does it in steps
/// of ten minutes, from another kind of model: hours within 2 %, watt-hours within
/// 3 %, of the way to 98 %. (Ours has 0.5 % of the charge lost, theirs none.)
#[test]
fn a_bank_is_charged_as_a_cell_model_is() {
    let mut seen = 0;
    for row in rows("lfp_cccv_pybamm.csv") {
        let most_a = number(&row, "bank_charge_a");
        let start = number(&row, "soc_start");
        // Faster ones are through in a few steps.
        if most_a > 20.0 || start < 0.1 {
            continue;
        }
        seen += 1;
        let mut plan = Plan::of(
            Bank::of(Chemistry::Lfp, 12.8, 100.0),
            Mode::of_power("On", Figure::exact(1.0)),
        );
        plan.banks[0].start_charge_percent = Some(Figure::exact(100.0 * start));
        plan.banks[0].parasitic_w = Some(Figure::exact(0.0));
        plan.supply.chargers = vec![charger(most_a, 14.4)];
        plan.supply.bank_c = Some(Figure::exact(25.0));
        plan.cabin.start_c = Some(Figure::exact(25.0));
        plan.mode_plan = vec![ModeRow {
            from_clock_min: Some(0),
            ..ModeRow::default()
        }];
        let trace = day(&plan).unwrap().trace;
        let mut wh = 0.0;
        let mut found = None;
        for two in trace.windows(2) {
            let (from, to) = (&two[0], &two[1]);
            let step_h = to.hours_h - from.hours_h;
            if to.charge_percent >= 98.0 {
                let share =
                    (98.0 - from.charge_percent) / (to.charge_percent - from.charge_percent);
                found = Some((
                    from.hours_h + share * step_h,
                    wh + share * to.charger_w * step_h,
                ));
                break;
            }
            wh += to.charger_w * step_h;
        }
        let (hours_h, wh) = found.unwrap();
        let part = (0.98 - start) / (1.0 - start);
        near_share(hours_h, part * number(&row, "total_ah") / most_a, 0.02);
        near_share(wh, part * number(&row, "total_wh"), 0.03);
    }
    assert_eq!(seen, 4);
}

/// A bank that the sun fills is called full every day, though what the controller
/// holds stops a little short of every last Ah.
#[test]
fn the_sun_fills_the_demo() {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(3);
    plan.supply.arrays[0].rated_w = Some(Figure::label(900.0));
    let day = day(&plan).unwrap();
    let is_full = |event: &&DayEvent| matches!(event.what, Happening::Full);
    let full = day.events.iter().filter(is_full).count();
    assert_eq!(full, 3, "{:?}", day.events);
    let later = day.trace.iter().filter(|point| point.hours_h > 12.0);
    assert!(later.map(|point| point.charge_percent).fold(0.0, f64::max) > 99.0);
}
