//! The engine against numbers published, computed or measured by others.
//!
//! One file a subject; the source stands beside each check. Wherever a check
//! can go through the contract it does: a plan in, an answer out.

#[path = "../support/vectors.rs"]
mod vectors;

mod bench_bank;
mod cabin_heat;
mod cables;
mod chances;
mod charging;
mod chemistry_models;
mod constant_power;
mod days;
mod inverter;
mod kinetic;
mod lead_rates;
mod network;
mod peukert;
mod rates;
mod real_bank;
mod second_half;
mod sizing;
mod staged;
mod standing;
mod starts;
mod sun;
mod unit_map;

use till_morning::{
    answer::{Answer, RunAnswer, night as answer},
    physics::battery::Chemistry,
    plan::finding::Severity,
    plan::{Bank, Draw, Figure, Mode, OpenCircuitPoint, Plan, Unknown},
};
use vectors::{near, near_share};

/// The records of a file of numbers, its comment lines left out.
fn records(text: &str) -> Vec<csv::StringRecord> {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    reader
        .records()
        .map(|record| record.expect("a record"))
        .collect()
}

/// The number in a column.
#[track_caller]
fn number(record: &csv::StringRecord, column: usize) -> f64 {
    record[column].parse().expect("a number")
}

/// A bank that is only what the source says: no electronics drawing, no resistance,
/// no cut-off, down to empty. No polarisation either: the models it is held against
/// have a voltage behind a plain resistance, and what they say of cells' rates is in it.
fn bare_bank(chemistry: Chemistry, nominal_v: f64, rated_ah: f64) -> Bank {
    Bank {
        depth_percent: Some(100.0),
        cutoff_v: Some(Figure::label(0.0)),
        battery_resistance_mohm: Some(Figure::label(0.0)),
        polarisation_percent: Some(Figure::label(0.0)),
        parasitic_w: Some(Figure::label(0.0)),
        ..Bank::of(chemistry, nominal_v, rated_ah)
    }
}

/// An own open-circuit table from rows of charge (0 to 1) and volts.
fn table(rows: &[(f64, f64)]) -> Vec<OpenCircuitPoint> {
    rows.iter()
        .map(|&(charge, open_circuit_v)| OpenCircuitPoint {
            charge_percent: 100.0 * charge,
            open_circuit_v,
        })
        .collect()
}

fn power(watts: f64) -> Mode {
    Mode::of_power("", Figure::label(watts))
}

fn current(amps: f64, measured_at_v: f64) -> Mode {
    let draw = Draw::Current {
        current_a: Figure::label(amps),
        measured_at_v,
    };
    Mode {
        draw,
        ..Mode::of_power("", Figure::label(1.0))
    }
}

/// The answer to a plan that has nothing wrong with it.
#[track_caller]
fn answered(plan: &Plan) -> Answer {
    let answer = answer(plan);
    for finding in &answer.findings {
        assert_ne!(finding.severity, Severity::Error, "{finding:?}");
    }
    answer
}

/// The one run of one mode on one bank.
#[track_caller]
fn run(bank: &Bank, mode: Mode) -> RunAnswer {
    let mut plan = Plan::of(bank.clone(), mode);
    plan.night.unknown = Unknown::Hours;
    let mut runs = answered(&plan).runs;
    assert_eq!(runs.len(), 1);
    runs.remove(0)
}

#[track_caller]
fn hours(bank: &Bank, mode: Mode) -> f64 {
    run(bank, mode).hours_h.likely
}
