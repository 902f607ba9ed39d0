//! Constant power from a voltage behind a resistance, against quadrature in
//! charge by another program (scipy 1.17.1; the files say how).
//!
//! The same model by another solver: it catches slips of integration and of
//! where a run ends, not a wrong model.

use super::{bare_bank, near, near_share, number, power, records, run, table};
use till_morning::{
    answer::RunAnswer,
    physics::battery::Chemistry,
    plan::{Bank, Figure},
    simulate::Stop,
};

const LINEAR: &str = include_str!("../data/battery_const_power_linear_ocv_exact.csv");
const TABLED: &str = include_str!("../data/battery_const_power_lfp_table_exact.csv");
const CELL: &str = include_str!("../data/lfp_ocv.csv");

/// We integrate in charge as the reference does: what is left is print rounding.
const SHARE: f64 = 1e-6;

/// A bank with a straight open-circuit voltage, from a record's first columns.
fn straight(record: &csv::StringRecord) -> (Bank, f64) {
    let (empty_v, full_v) = (number(record, 0), number(record, 1));
    let (ohm, ah, watts) = (number(record, 2), number(record, 3), number(record, 4));
    let nominal_v = if full_v > 20.0 { 25.6 } else { 12.8 };
    let bank = Bank {
        battery_open_circuit: table(&[(0.0, empty_v), (1.0, full_v)]),
        battery_resistance_mohm: Some(Figure::label(1000.0 * ohm)),
        cutoff_v: Some(Figure::label(number(record, 5))),
        depth_percent: Some(100.0 * (1.0 - number(record, 6))),
        ..bare_bank(Chemistry::Lfp, nominal_v, ah)
    };
    (bank, watts)
}

#[test]
fn straight_open_circuit_voltage() {
    let records = records(LINEAR);
    assert_eq!(records.len(), 39);
    for record in &records {
        let (bank, watts) = straight(record);
        let run = run(&bank, power(watts));
        let last = run.trace.last().expect("a run");
        near(last.charge_percent / 100.0, number(record, 7), 1e-8);
        near_share(run.hours_h.likely, number(record, 8), SHARE);
        near_share(run.drawn_ah, number(record, 9), SHARE);
        near_share(run.drawn_wh, number(record, 10), SHARE);
        near_share(run.unit_wh, number(record, 10), SHARE);
        near_share(run.lost_wh, number(record, 11), SHARE);
        near_share(run.first_a, number(record, 12), SHARE);
        near_share(run.last_a, number(record, 13), SHARE);
        near(run.last_v, number(record, 14), 1e-6);
        the_right_end(
            &run,
            number(record, 5),
            number(record, 6),
            number(record, 7),
        );
    }
}

/// The file ends a run at its cut-off or at its least charge: the answer must
/// name the same one, with its level.
#[track_caller]
fn the_right_end(run: &RunAnswer, cutoff_v: f64, least: f64, ended: f64) {
    if ended > least {
        assert_eq!(run.stop, Stop::OwnCutOff { cutoff_v });
    } else {
        let Stop::ChargeFloor { kept_percent } = run.stop else {
            panic!("{:?}", run.stop)
        };
        near(kept_percent, 100.0 * least, 1e-9);
    }
}

/// The record that the file leaves out: 1200 W from 12.8 V behind 20 mΩ sags
/// to 10.5 V at once, below its cut-off of 11.5 V, so nothing can start.
#[test]
fn what_sags_below_the_cut_off_at_once_does_not_start() {
    let records = records(LINEAR);
    let last_of_bank = records.iter().find(|r| &r[0] == "11.6" && &r[4] == "1200");
    let (mut bank, watts) = straight(last_of_bank.expect("the record"));
    bank.cutoff_v = Some(Figure::label(11.5));
    let run = run(&bank, power(watts));
    assert_eq!(run.stop, Stop::OwnCutOff { cutoff_v: 11.5 });
    assert_eq!((run.hours_h.likely, run.drawn_wh), (0.0, 0.0));
}

/// Charge and mean volts of the measured cell.
fn cell() -> Vec<(f64, f64)> {
    let rows: Vec<_> = records(CELL)
        .iter()
        .map(|record| (number(record, 0), number(record, 5)))
        .collect();
    assert_eq!(rows.len(), 61);
    rows
}

fn tabled_bank(ohm: f64, least: f64) -> Bank {
    Bank {
        battery_resistance_mohm: Some(Figure::label(1000.0 * ohm)),
        depth_percent: Some(100.0 * (1.0 - least)),
        ..bare_bank(Chemistry::Lfp, 12.8, 100.0)
    }
}

/// Four measured cells in series: the table given by the plan, and the same
/// table as the chemistry's default.
#[test]
fn measured_open_circuit_table() {
    let battery: Vec<_> = cell().iter().map(|&(c, volts)| (c, 4.0 * volts)).collect();
    let records = records(TABLED);
    assert_eq!(records.len(), 21);
    for record in &records {
        let by_default = tabled_bank(number(record, 1), number(record, 2));
        let own_table = Bank {
            battery_open_circuit: table(&battery),
            ..by_default.clone()
        };
        for bank in [own_table, by_default] {
            let run = run(&bank, power(number(record, 0)));
            near_share(run.hours_h.likely, number(record, 3), SHARE);
            near_share(run.drawn_wh, number(record, 4), SHARE);
            assert!(matches!(run.stop, Stop::ChargeFloor { .. }));
        }
    }
}

/// The default open-circuit voltage of LFP is the measured one, knot by knot
/// (data set `A123_OCV_P25`, ESC toolbox, G. Plett, UCCS).
#[test]
fn the_default_lfp_curve_is_the_measured_one() {
    let curve = Chemistry::Lfp.data().curve(1.0);
    for (charge, volts) in cell() {
        near(curve.at(charge), volts, 1e-9);
    }
}

/// Closed form, where the power is close to the most that can be carried.
///
/// With `E` straight in charge, `I = (E - √(E² - a²)) / 2R` and `a = 2 √(R P)`;
/// the hours are the integral of `dq / I = (E + √(E² - a²)) / 2P dq` (any table
/// of integrals), down to `E = a` at the lowest, where no current carries the
/// power and the current's slope has no bound.
struct Straight {
    empty_v: f64,
    full_v: f64,
    ohm: f64,
    ah: f64,
}

const STRAIGHT: Straight = Straight {
    empty_v: 10.0,
    full_v: 14.0,
    ohm: 0.02,
    ah: 100.0,
};

impl Straight {
    fn lowest_v(&self, watts: f64) -> f64 {
        2.0 * f64::sqrt(self.ohm * watts)
    }

    fn hours(&self, watts: f64, from_v: f64, to_v: f64) -> f64 {
        let a = self.lowest_v(watts);
        let area = |e: f64| {
            let root = (e * e - a * a).max(0.0).sqrt();
            (e * e + e * root - a * a * ((e + root) / a).ln()) / 2.0
        };
        let ah_per_v = self.ah / (self.full_v - self.empty_v);
        ah_per_v * (area(from_v) - area(to_v)) / (2.0 * watts)
    }

    fn bank(&self) -> Bank {
        Bank {
            battery_open_circuit: table(&[(0.0, self.empty_v), (1.0, self.full_v)]),
            battery_resistance_mohm: Some(Figure::label(1000.0 * self.ohm)),
            ..bare_bank(Chemistry::Lfp, 12.8, self.ah)
        }
    }
}

/// Wherever the collapse falls between the places where the engine looks.
#[test]
fn runs_until_the_power_collapses() {
    for step in 0..400 {
        let watts = 1300.0 + 2.5 * f64::from(step);
        let run = run(&STRAIGHT.bank(), power(watts));
        assert_eq!(run.stop, Stop::NoCurrentCarriesIt, "{watts}");
        let exact_h = STRAIGHT.hours(watts, STRAIGHT.full_v, STRAIGHT.lowest_v(watts));
        near_share(run.hours_h.likely, exact_h, 1e-9);
    }
}

/// To a floor at a little more than the lowest voltage that carries the power:
/// the slope's pole lies just outside the run.
#[test]
fn runs_that_end_just_before_a_collapse() {
    for spare in [0.3, 0.2, 0.17, 0.16, 0.1, 1e-2, 1e-3, 1e-5, 1e-7, 1e-9] {
        let floor_v = STRAIGHT.empty_v + 0.3 * (STRAIGHT.full_v - STRAIGHT.empty_v);
        let watts = (floor_v * (1.0 - spare)).powi(2) / (4.0 * STRAIGHT.ohm);
        let bank = Bank {
            depth_percent: Some(70.0),
            ..STRAIGHT.bank()
        };
        let run = run(&bank, power(watts));
        assert!(matches!(run.stop, Stop::ChargeFloor { .. }), "{watts}");
        let exact_h = STRAIGHT.hours(watts, STRAIGHT.full_v, floor_v);
        near_share(run.hours_h.likely, exact_h, 1e-9);
    }
}
