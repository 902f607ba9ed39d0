//! What was done to the rows of a log on the way in: nothing is done in silence.

use crate::text::Formatter;
use crate::{
    answer::log::LogReport,
    physics::bench::log::{CounterChange, Notes, WattsFrom},
};

/// Volts times amps off the logged watts by more than this tell of a wrong unit or
/// of alternating current.
const APART: f64 = 0.05;

/// All of it in sentences; often just where the watts come from.
#[must_use]
pub fn rows_text(f: Formatter, notes: &Notes, report: &LogReport) -> String {
    let mut all = vec!["How it was read:".to_owned()];
    all.extend(signs(f, notes));
    all.extend(order(f, notes));
    all.extend(counts(f, notes));
    all.push(watts(f, notes));
    all.extend(notes.counters.iter().map(|one| counter(f, one, report)));
    all.retain(|text| !text.is_empty());
    all.join(" ")
}

fn signs(_f: Formatter, notes: &Notes) -> Vec<String> {
    let turned = match (notes.amps_turned, notes.watts_turned) {
        (true, true) => "amps and watts were",
        (true, false) => "amps were",
        (false, true) => "watts were",
        (false, false) => "",
    };
    let mut all = Vec::new();
    if !turned.is_empty() {
        all.push(format!(
            "The draw is logged with a minus: {turned} turned round."
        ));
    }
    if notes.watts_signed_by_amps {
        all.push("Watts are logged without a sign: they took that of the amps.".into());
    }
    all
}

fn order(_f: Formatter, notes: &Notes) -> Vec<String> {
    let mut all = Vec::new();
    if notes.newest_first {
        all.push("The newest row stands first: the order was turned round.".into());
    }
    if notes.cut_short {
        all.push("The last row was cut off, and left out.".into());
    }
    all
}

fn counts(_f: Formatter, notes: &Notes) -> Vec<String> {
    let some = |count: usize, one: &str, many: &str| match count {
        0 => None,
        1 => Some(format!("One {one}.")),
        all => Some(format!("{all} {many}.")),
    };
    [
        some(
            notes.out_of_order_rows,
            "step back in time was sorted",
            "steps back in time were sorted",
        ),
        some(
            notes.repeated_rows,
            "row stood there twice and was left out",
            "rows stood there twice and were left out",
        ),
        some(
            notes.same_time_rows,
            "row shares its time with another: their mean counts",
            "rows share their time with others: their mean counts",
        ),
        some(
            notes.missing_cells,
            "cell is empty",
            "cells are empty; where few are missing a straight line bridges them",
        ),
        some(
            notes.rows_without_time,
            "row has no time and was left out",
            "rows have no time and were left out",
        ),
        some(
            notes.remark_lines,
            "line of words was passed over",
            "lines of words were passed over",
        ),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn watts(f: Formatter, notes: &Notes) -> String {
    let apart = notes.volt_amps_per_watt.filter(|x| (x - 1.0).abs() > APART);
    match (notes.watts_from, apart) {
        (WattsFrom::Nowhere, _) => {
            "There are no volts and no watts: amps alone give charge, and no energy.".into()
        }
        (WattsFrom::VoltsTimesAmps, _) => "Watts are volts times amps, row by row.".into(),
        (WattsFrom::Column, None) => "Watts are those logged.".into(),
        (WattsFrom::Column, Some(x)) => format!(
            "Watts are those logged, but volts times amps make {} of them: look at the units, or it is alternating current.",
            f.percent(100.0 * x)
        ),
    }
}

/// The logger's own counter beside the total of the rows.
fn counter(f: Formatter, change: &CounterChange, report: &LogReport) -> String {
    let (unit, total, decimals) = if change.is_energy {
        ("Wh", report.wh, 0)
    } else {
        ("Ah", report.ah, 1)
    };
    match (change.size(), total) {
        (Some(own), Some((of_rows, _))) => format!(
            "The logger’s own counter went through {}\u{202f}{unit}; the rows add up to {}.",
            f.fixed(own, decimals),
            f.fixed(of_rows, decimals)
        ),
        (None, _) => {
            format!(
                "The logger’s own counter of {unit} went both ways, or was set back: it is not compared."
            )
        }
        (Some(_), None) => String::new(),
    }
}
