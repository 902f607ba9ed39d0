//! A bank in use, hour by hour.
//!
//! Five LFP batteries of 12.8 V 100 Ah side by side, about 18 °C, an inverter's load of
//! 487 W dc on average for 10.5 hours from full (`wkcollis1-eng/Lifepo4-Battery-Banks`,
//! CC BY 4.0; the file says more). No run time is claimed: the load was taken off at
//! 12.6 V, and the 397 Ah given are energy over mean volts, not a counter.

use super::{answered, bare_bank, near, number, power, records};
use till_morning::{
    answer::RunAnswer,
    physics::battery::Chemistry,
    plan::{Bank, Figure, Plan},
};

const HOURLY: &str = include_str!("../data/lfp_bank_500ah_440w_hourly.csv");
const LOAD_W: f64 = 487.0;
const BEGAN_H: f64 = 18.0;

fn by_label() -> RunAnswer {
    let bank = Bank {
        cutoff_v: None,
        battery_resistance_mohm: None,
        polarisation_percent: None,
        parallel_count: 5,
        ..bare_bank(Chemistry::Lfp, 12.8, 100.0)
    };
    let mut plan = Plan::of(bank, power(LOAD_W));
    plan.supply.bank_c = Some(Figure::measured(18.0));
    answered(&plan).runs.remove(0)
}

/// Volts and share held after so many hours.
fn after(run: &RunAnswer, hours: f64) -> (f64, f64) {
    let next = run.trace.iter().position(|at| at.hours_h >= hours);
    let next = next.expect("it runs that long").max(1);
    let (a, b) = (run.trace[next - 1], run.trace[next]);
    let share = (hours - a.hours_h) / (b.hours_h - a.hours_h);
    let between = |a: f64, b: f64| a + share * (b - a);
    (
        between(a.terminal_v, b.terminal_v),
        between(a.charge_percent, b.charge_percent),
    )
}

/// Each whole hour under load: the most by which the prediction may lie above the
/// measurement. 0.1 V is what a prediction should reach; it does in one hour of nine,
/// and the others state their miss.
///
/// | hour | predicted | measured middle | measured least to greatest |
/// |---|---|---|---|
/// | 19 | 13.243 | 13.140 | 13.05 to 13.23 |
/// | 20 | 13.226 | 13.130 | 13.01 to 13.25 |
/// | 21 | 13.195 | 13.070 | 12.98 to 13.16 |
/// | 22 | 13.139 | 13.005 | 12.88 to 13.13 |
/// | 23 | 13.104 | 12.975 | 12.87 to 13.08 |
/// | 24 | 13.077 | 12.925 | 12.79 to 13.06 |
/// | 25 | 13.062 | 12.930 | 12.84 to 13.02 |
/// | 26 | 13.019 | 12.850 | 12.73 to 12.97 |
/// | 27 | 12.947 | 12.830 | 12.73 to 12.93 |
const MOST_ABOVE_V: [(f64, f64); 9] = [
    (19.0, 0.11),
    (20.0, 0.10),
    (21.0, 0.13),
    (22.0, 0.14),
    (23.0, 0.13),
    (24.0, 0.16),
    (25.0, 0.14),
    (26.0, 0.17),
    (27.0, 0.12),
];

/// In the middle of each hour, against the middle of that hour's least and greatest
/// volts. The prediction is too high in every hour, by 0.10 to 0.17 V; by a resistance
/// of one-second steps alone it was 0.12 to 0.34 V.
///
/// Nothing of the chemistry's data is taken from this bank, so this is a prediction, and
/// it misses. What may be behind it, none of it shown by the source:
///
/// - only the load's mean is known, and it has peaks. These pull the least volts down,
///   so that the middle lies below the mean that a steady load is held against. Against
///   the greatest volts of each hour the prediction is 0.02 V below to 0.05 V above;
/// - the meter is on the bus: leads, fuse and BMS transistors of each battery may have
///   more than the 2.5 milliohm taken. A tenth of a volt at 38 A would be 13 milliohm a
///   battery, so they are not all of it;
/// - cells of whole batteries may lie further below their curve at rest than the two
///   cells that the gap is from (19 and 26 mV): 0.13 V would be 32 mV a cell more.
#[test]
fn volts_hour_by_hour() {
    let run = by_label();
    let records = records(HOURLY);
    for (hour, most_above_v) in MOST_ABOVE_V {
        let record = records.iter().find(|row| number(row, 0) == hour);
        let record = record.expect("a row");
        let (least_v, greatest_v) = (number(record, 1), number(record, 2));
        let middle_v = 0.5 * (least_v + greatest_v);
        let (found_v, _) = after(&run, hour + 0.5 - BEGAN_H);
        println!("hour {hour}: {found_v:.3} V, measured {middle_v:.3}");
        let above_v = found_v - middle_v;
        assert!((0.0..=most_above_v).contains(&above_v), "{hour}: {above_v}");
        assert!(found_v < greatest_v + 0.05, "{hour}: {found_v}");
    }
}

/// What was drawn in 10.5 hours, by the model's own volts and amps: 5114 Wh within
/// 1 %, and a quarter or so left.
#[test]
fn energy_of_the_load() {
    let run = by_label();
    let drawn_wh: f64 = run
        .trace
        .windows(2)
        .take_while(|pair| pair[1].hours_h <= 10.5)
        .map(|pair| {
            let watts = |at: usize| pair[at].terminal_v * pair[at].bank_a;
            0.5 * (watts(0) + watts(1)) * (pair[1].hours_h - pair[0].hours_h)
        })
        .sum();
    let (end_v, left_percent) = after(&run, 10.5);
    let last_h = run.trace.iter().rev().find(|at| at.hours_h <= 10.5);
    let rest_wh = LOAD_W * (10.5 - last_h.expect("a mark").hours_h);
    println!(
        "{:.0} Wh, {left_percent:.1} % left at {end_v:.2} V",
        drawn_wh + rest_wh
    );
    near(drawn_wh + rest_wh, 5114.0, 51.0);
    assert!((15.0..30.0).contains(&left_percent));
    // It was still above the 12.6 V at which the load was taken off, and not far.
    assert!((12.6..12.95).contains(&end_v), "{end_v}");
}
