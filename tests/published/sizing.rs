//! The bank that a load wants, against worked examples.
//!
//! Their arithmetic is energy over nominal volts, so the bank here has a flat
//! open-circuit voltage and no resistance. A factor for cold cells is one more
//! number to multiply by; the engine has none of its own, and it goes in as the
//! margin.

use super::{answered, bare_bank, near, near_share, power, table};
use till_morning::{
    physics::battery::Chemistry,
    plan::{Bank, Figure, Night, Plan, Unknown},
    study::sizing::{Found, NeededBank},
};

struct Wanted {
    wh_per_day: f64,
    days: f64,
    depth_percent: f64,
    system_v: f64,
    margin_percent: f64,
    ageing_percent: f64,
}

fn needed(wanted: &Wanted) -> NeededBank {
    let volts = wanted.system_v;
    let bank = Bank {
        depth_percent: Some(wanted.depth_percent),
        peukert_exponent: Some(Figure::label(1.0)),
        battery_open_circuit: table(&[(0.0, volts), (1.0, volts)]),
        ..bare_bank(Chemistry::Flooded, volts, 100.0)
    };
    let mut plan = Plan::of(bank, power(wanted.wh_per_day / 24.0));
    plan.night = Night {
        unknown: Unknown::Bank,
        wanted_h: 24.0 * wanted.days,
        margin_percent: wanted.margin_percent,
        ageing_percent: wanted.ageing_percent,
        ..Night::default()
    };
    match answered(&plan).sizing[0].found {
        Found::Bank(needed) => needed,
        ref other => panic!("{other:?}"),
    }
}

/// A teaching note's eight steps after the IEEE: 1000 Wh a day, two and a half
/// days, half depth, 12 V. 2500, then 5000 Wh; times 1.30 for 40 °F it is 6500
/// Wh and 541.7 Ah, times 1.04 for 70 °F 433.3 Ah.
#[test]
fn stand_alone_bank_in_eight_steps() {
    let wanted = |margin_percent| Wanted {
        wh_per_day: 1000.0,
        days: 2.5,
        depth_percent: 50.0,
        system_v: 12.0,
        margin_percent,
        ageing_percent: 100.0,
    };
    let cold = needed(&wanted(30.0));
    near_share(cold.needed_wh, 5000.0, 1e-9);
    near_share(cold.with_reserve_wh, 6500.0, 1e-9);
    near(cold.with_reserve_ah, 541.7, 0.05);
    near(needed(&wanted(4.0)).with_reserve_ah, 433.3, 0.05);
    // Whole batteries of 100 Ah that hold it.
    assert_eq!((cold.series_count, cold.parallel_count), (1, 6));
}

/// The same method (SAND87-7023, IEEE 1013) with other numbers: 1200 Wh a day,
/// two days, 60 % depth, 24 V, and 1.19 for 50 °F (IEEE 485). 4000, then 4760 Wh:
/// 198.3 Ah.
#[test]
fn stand_alone_bank_of_24_volts() {
    let needed = needed(&Wanted {
        wh_per_day: 1200.0,
        days: 2.0,
        depth_percent: 60.0,
        system_v: 24.0,
        margin_percent: 19.0,
        ageing_percent: 100.0,
    });
    near_share(needed.needed_wh, 4000.0, 1e-9);
    near_share(needed.with_reserve_wh, 4760.0, 1e-9);
    near(needed.with_reserve_ah, 198.3, 0.05);
}

/// IEEE 485, 6.2 (from memory): 1.11 for 60 °F, a design margin of 1.15, and
/// replaced at 80 % (1.25): 1.5956 times the Ah.
#[test]
fn margins_multiply() {
    let needed = needed(&Wanted {
        wh_per_day: 1200.0,
        days: 1.0,
        depth_percent: 100.0,
        system_v: 12.0,
        margin_percent: 100.0 * (1.11 * 1.15 - 1.0),
        ageing_percent: 80.0,
    });
    near(needed.with_reserve_ah / needed.needed_ah, 1.5956, 5e-5);
    near_share(needed.needed_ah, 100.0, 1e-9);
}
