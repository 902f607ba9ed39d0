//! Lead-acid at rates to 1C by its label alone, against rate tables of others.
//!
//! A bank is said with its Ah over 20 hours, and nothing of how it stands faster
//! rates: the engine takes its chemistry's usual exponent. Batteries that give much
//! less at fast rates than that exponent says are common; what is short of them is
//! said here row by row, and the range must make room for it.

use super::{answered, current, near, run};
use till_morning::{
    physics::battery::Chemistry,
    plan::{Bank, Figure, Plan, finding::Matter},
    study::spread::Band,
};

/// Hours and amps of a constant-current table, and by how much the likely hours are
/// off there: a share of what is published.
struct Row {
    hours: f64,
    amps: f64,
    off: f64,
    /// Whether the range makes room for it.
    is_within: bool,
}

const fn row(hours: f64, amps: f64, off: f64, is_within: bool) -> Row {
    Row {
        hours,
        amps,
        off,
        is_within,
    }
}

/// A cell's or battery's table, and its Ah over 20 hours.
struct Table {
    name: &'static str,
    chemistry: Chemistry,
    cells: f64,
    twenty_hours_ah: f64,
    rows: &'static [Row],
}

/// Two vented batteries to 1.80 V a cell, as printed in course slides on IEEE 485 (ESE
/// 471, Section 6, Oregon State University, 2018): 24 h at 5.1 A and 12 h at 9.3 A are
/// 119.5 Ah over 20 h by a straight line of their logarithms; the other has 284.8 Ah. A cut-off
/// of 1.75 V, the usual, would give a little more, so part of the miss is the table's.
///
/// And the 6 V deep-cycle battery of `peukert` (a maker's sheet), 195 minutes at 75 A.
///
/// Glass mat: what makers' sheets of 12 V batteries of 100 Ah over 10 hours have in
/// common, to 1.75 V a cell at 25 °C (from memory; sheets lie 5 % about it).
const TABLES: [Table; 4] = [
    Table {
        name: "vented, 119.5 Ah",
        chemistry: Chemistry::Flooded,
        cells: 1.0,
        twenty_hours_ah: 119.5,
        rows: &[
            row(12.0, 9.3, -0.02, true),
            row(10.0, 11.0, -0.038, true),
            row(5.0, 18.0, 0.065, true),
            row(3.0, 27.0, 0.091, true),
            row(2.0, 37.0, 0.121, true),
            row(1.0, 58.0, 0.308, true),
            row(0.5, 94.0, 0.465, false),
        ],
    },
    Table {
        name: "vented, 284.8 Ah",
        chemistry: Chemistry::Flooded,
        cells: 1.0,
        twenty_hours_ah: 284.8,
        rows: &[
            row(12.0, 23.0, -0.062, true),
            row(10.0, 27.0, -0.072, true),
            row(5.0, 45.0, 0.006, true),
            row(3.0, 66.0, 0.058, true),
            row(2.0, 88.0, 0.124, true),
            row(1.0, 141.0, 0.277, true),
        ],
    },
    Table {
        name: "deep-cycle, 330 Ah",
        chemistry: Chemistry::Flooded,
        cells: 3.0,
        twenty_hours_ah: 330.0,
        rows: &[
            row(10.0, 30.4, -0.039, true),
            row(5.0, 54.2, -0.04, true),
            row(3.25, 75.0, 0.0, true),
        ],
    },
    Table {
        name: "glass mat, 105 Ah",
        chemistry: Chemistry::Agm,
        cells: 6.0,
        twenty_hours_ah: 105.0,
        rows: &[
            row(10.0, 10.0, -0.016, true),
            row(5.0, 17.4, 0.071, true),
            row(3.0, 26.0, 0.147, true),
            row(1.0, 61.0, 0.347, false),
            row(0.5, 98.0, 0.599, false),
        ],
    },
];

/// By the label alone, down to empty: only electronics and depth are not as usual.
fn labelled(chemistry: Chemistry, cells: f64, rated_ah: f64) -> Bank {
    Bank {
        depth_percent: Some(100.0),
        parasitic_w: Some(Figure::exact(0.0)),
        start_charge_percent: Some(Figure::exact(100.0)),
        ..Bank::of(chemistry, 2.0 * cells, rated_ah)
    }
}

fn band(bank: &Bank, amps: f64) -> Band {
    let mut mode = current(amps, bank.nominal_v());
    if let till_morning::plan::Draw::Current { current_a, .. } = &mut mode.draw {
        *current_a = Figure::exact(amps);
    }
    answered(&Plan::of(bank.clone(), mode)).runs[0].hours_h
}

/// Likely hours over those published, as found: from 7 % short at C/10 to 15 % long at
/// C/4, and a miss beyond that stands, always to the long side: 28 to 35 % at C/2, 47 %
/// at 0.8C, 60 % at 0.93C. One exponent is not good over all rates (`peukert`), and
/// nothing is fitted to these tables. The range makes room for it up to an hour's rate
/// of the vented ones; at three rows it does not. Beyond C/3 the answer says so.
#[test]
fn hours_at_a_rate() {
    let mut others = Vec::new();
    for table in &TABLES {
        let bank = labelled(table.chemistry, table.cells, table.twenty_hours_ah);
        for row in table.rows {
            let band = band(&bank, row.amps);
            let off = band.likely / row.hours - 1.0;
            println!(
                "{} at {} A ({:.2}C): {:.2} h ({:.2} to {:.2}), published {} h, {off:+.3}",
                table.name,
                row.amps,
                row.amps / table.twenty_hours_ah,
                band.likely,
                band.low,
                band.high,
                row.hours
            );
            let is_within = (band.low..=band.high).contains(&row.hours);
            if (off - row.off).abs() > 0.005 || is_within != row.is_within {
                others.push((table.name, row.amps, off, is_within));
            }
        }
    }
    assert!(others.is_empty(), "{others:#.3?}");
}

/// The range below the likely hours grows with the rate, as what is not known of the
/// exponent does.
#[test]
fn the_range_widens_with_the_rate() {
    for chemistry in [Chemistry::Flooded, Chemistry::Agm, Chemistry::Gel] {
        let bank = labelled(chemistry, 6.0, 100.0);
        let below = |rate: f64| {
            let band = band(&bank, 100.0 * rate);
            (band.likely - band.low) / band.likely
        };
        let widths = [0.05, 0.1, 0.2, 0.5, 1.0].map(below);
        println!("{chemistry:?}: {widths:.3?} below at C/20, C/10, C/5, C/2 and 1C");
        assert!(widths.windows(2).all(|two| two[0] < two[1]), "{widths:?}");
        assert!(widths[4] > 2.0 * widths[0], "{widths:?}");
    }
}

/// Beyond C/3 the answer says that less is likely, until somebody states an exponent.
#[test]
fn a_fast_draw_is_said() {
    let says = |bank: &Bank, amps: f64| {
        let plan = Plan::of(bank.clone(), current(amps, bank.nominal_v()));
        let mut findings = answered(&plan).findings.into_iter();
        findings.any(|one| matches!(one.matter, Matter::FastLeadAcid { .. }))
    };
    let bank = labelled(Chemistry::Agm, 6.0, 100.0);
    assert!(says(&bank, 50.0) && !says(&bank, 25.0));
    assert!(!says(&labelled(Chemistry::Lfp, 6.0, 100.0), 50.0));
    let stated = Bank {
        peukert_exponent: Some(Figure::measured(1.2)),
        ..bank
    };
    assert!(!says(&stated, 50.0));
}

/// Where a discharge ends, by the engine and by those who made the tables: 1.75 V a cell
/// is the usual end of discharge (and that of every run in
/// `tests/data/leadacid_discharge_pybamm.csv`). The engine's open-circuit line and plain
/// resistance end far above it: it is Peukert's law that ends a run, and no voltage. A
/// miss that stands: the last volts, and with them the energy of a run at constant
/// power, are too high, by a tenth at the very end and by some per cent over the run.
#[test]
fn the_end_of_a_discharge_is_too_high() {
    for (rate, end_v) in [(0.05, 1.961), (0.5, 1.925), (1.0, 1.885)] {
        let bank = labelled(Chemistry::Agm, 1.0, 100.0);
        let found = run(&bank, current(100.0 * rate, 2.0)).last_v;
        println!("{rate}C: ends at {found:.3} V, the model at 1.75 V");
        near(found, end_v, 0.002);
        assert!(found > 1.75);
    }
}
