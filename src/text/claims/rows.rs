//! What was done to the rows of a log on the way in: nothing is done in silence.

use crate::{
    answer::log::LogReport,
    physics::bench::log::{CounterChange, Notes, WattsFrom},
    text::{Formatter, m, number::with_sign},
};

/// Volts times amps off the logged watts by more than this tell of a wrong unit or
/// of alternating current.
const APART: f64 = 0.05;

/// All of it in sentences; often just where the watts come from.
#[must_use]
pub fn rows_text(f: Formatter, notes: &Notes, report: &LogReport) -> String {
    let mut all = vec![f.say(m::LogRows).to_owned()];
    all.extend(signs(f, notes));
    all.extend(order(f, notes));
    all.extend(counts(f, notes));
    all.push(watts(f, notes));
    let counters = notes.counters.iter();
    all.extend(counters.filter_map(|one| counter(f, one, report)));
    all.join(" ")
}

fn signs(f: Formatter, notes: &Notes) -> Vec<String> {
    let reversed = match (notes.amps_turned, notes.watts_turned) {
        (true, true) => Some("both"),
        (true, false) => Some("amps"),
        (false, true) => Some("watts"),
        (false, false) => None,
    };
    let mut all = Vec::new();
    all.extend(reversed.map(|of| f.say(m::LogSignReversed { of })));
    if notes.watts_signed_by_amps {
        all.push(f.say(m::LogSignByAmps).into());
    }
    all
}

fn order(f: Formatter, notes: &Notes) -> Vec<String> {
    let mut all = Vec::new();
    if notes.newest_first {
        all.push(f.say(m::LogNewestFirst).into());
    }
    if notes.cut_short {
        all.push(f.say(m::LogCutShort).into());
    }
    all
}

fn counts(f: Formatter, notes: &Notes) -> Vec<String> {
    let some =
        |count: usize, say: fn(Formatter, usize) -> String| (count > 0).then(|| say(f, count));
    [
        some(notes.out_of_order_rows, |f, count| {
            f.say(m::LogOutOfOrder { count })
        }),
        some(notes.repeated_rows, |f, count| {
            f.say(m::LogRepeated { count })
        }),
        some(notes.same_time_rows, |f, count| {
            f.say(m::LogSameTime { count })
        }),
        some(notes.missing_cells, |f, count| {
            f.say(m::LogMissingCells { count })
        }),
        some(notes.rows_without_time, |f, count| {
            f.say(m::LogWithoutTime { count })
        }),
        some(notes.remark_lines, |f, count| {
            f.say(m::LogRemarks { count })
        }),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn watts(f: Formatter, notes: &Notes) -> String {
    let apart = notes.volt_amps_per_watt.filter(|x| (x - 1.0).abs() > APART);
    match (notes.watts_from, apart) {
        (WattsFrom::Nowhere, _) => f.say(m::LogWattsNone).into(),
        (WattsFrom::VoltsTimesAmps, _) => f.say(m::LogWattsProduct).into(),
        (WattsFrom::Column, None) => f.say(m::LogWattsColumn).into(),
        (WattsFrom::Column, Some(x)) => f.say(m::LogWattsApart {
            share: f.percent(100.0 * x),
        }),
    }
}

/// The logger's own counter beside the total of the rows.
fn counter(f: Formatter, change: &CounterChange, report: &LogReport) -> Option<String> {
    let (unit, total, decimals) = if change.is_energy {
        ("Wh", report.wh, 0)
    } else {
        ("Ah", report.ah, 1)
    };
    let Some(own) = change.size() else {
        return Some(f.say(m::LogCounterReset { unit }));
    };
    let (of_rows, _) = total?;
    let text = |value| with_sign(f.fixed(value, decimals), unit);
    Some(f.say(m::LogCounter {
        own: text(own),
        rows: text(of_rows),
    }))
}
