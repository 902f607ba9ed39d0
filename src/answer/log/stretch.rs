//! Steady stretches of a log: found, moved by hand, and their figures.

use super::{meter::LogMeter, report::Means};
use crate::{
    physics::bench::{
        instrument::{Instrument, Kind},
        log::{Log, Sample},
        measured,
        stretches::{Fineness, spans},
        totals::{Spread, totals_in},
    },
    quantity::{in_amp_hours, in_amps, in_hours, in_volts, in_watt_hours, in_watts, minutes},
};
use std::ops::Range;

/// The figures of one stretch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StretchFigures {
    /// Hours from the log's first row.
    pub from_h: f64,
    /// The same, its end.
    pub to_h: f64,
    /// Mean watts; amperes where the log has none.
    pub draw: f64,
    /// Whether the draw is in amperes.
    pub is_amps: bool,
    /// Expanded uncertainty of the draw; `None` where the rows do not follow the load.
    pub expanded: Option<f64>,
    /// Least reading of the draw.
    pub least: f64,
    /// The greatest.
    pub most: f64,
    /// Mean amps.
    pub amps: Option<f64>,
    /// Mean, least and most volts.
    pub volts: Option<Means>,
    /// Net charge out of the bank.
    pub ah: Option<f64>,
    /// Net energy out of it.
    pub wh: Option<f64>,
}

/// Values that change points are looked for on: so few that no task of a page
/// takes long (the work grows with their square at worst).
const MOST_POINTS: usize = 500;

/// Minutes that the shortest stretch may be looked for with. A compressor that
/// starts and stops wants one longer than its cycle.
pub const SHORTEST_MIN: [f64; 5] = [2.0, 10.0, 30.0, 60.0, 120.0];

/// More stretches than a person sets a unit to in one run: rather the cycle of its
/// compressor. Common practice, no source.
const MANY: usize = 12;

/// The next length to look with, minutes, where so many were found with this one; nothing
/// where they are few enough, or none is longer.
#[must_use]
pub fn coarser(found: usize, shortest_min: f64) -> Option<f64> {
    let mut longer = SHORTEST_MIN.into_iter().filter(|min| *min > shortest_min);
    longer.next().filter(|_| found > MANY)
}

/// The steady stretches found, none shorter than these minutes, from and to in
/// hours from the log's start. Those without a draw are left out.
#[must_use]
pub fn found(log: &Log, shortest_min: f64) -> Vec<(f64, f64)> {
    let fineness = Fineness {
        most_points: MOST_POINTS,
        shortest: minutes(shortest_min),
        ..Fineness::default()
    };
    let found = spans(log, &fineness);
    let most = found.iter().map(|span| span.2).fold(0.0, f64::max);
    found
        .iter()
        .filter(|(.., mean)| *mean > 0.05 * most)
        .map(|(from, to, _)| (in_hours(*from), in_hours(*to)))
        .collect()
}

/// The figures between two moments of a log, hours from its first row; `None` without
/// readings of a draw there.
#[must_use]
pub fn stretch(log: &Log, (from_h, to_h): (f64, f64), meter: LogMeter) -> Option<StretchFigures> {
    let range = rows(log, from_h, to_h);
    let totals = totals_in(log, range.clone());
    let of_volts = |s: Spread<_>| (in_volts(s.mean), in_volts(s.least), in_volts(s.most));
    let volts = totals.volts.map(of_volts);
    let amps = totals.amps.map(|s| in_amps(s.mean));
    let watts = totals.watts.map(|s| in_watts(s.mean));
    let part: fn(&Sample) -> Option<f64> = match watts {
        Some(_) => |s| s.watts,
        None => |s| s.amps,
    };
    let draw = watts.or(amps)?;
    let limits = limits(watts, volts.map(|v| v.0), amps, meter);
    let readings = log.series_in(range, part);
    let (least, most) = readings.extremes().unwrap_or((draw, draw));
    let figure = measured::steady(draw, &totals, &readings, &limits);
    Some(StretchFigures {
        from_h,
        to_h,
        draw,
        is_amps: watts.is_none(),
        expanded: figure.expanded(),
        least,
        most,
        amps,
        volts,
        ah: totals.charge.map(|f| in_amp_hours(f.net)),
        wh: totals.energy.map(|f| in_watt_hours(f.net)),
    })
}

/// Amps and volts make the watts of most logs: their limits at the mean.
fn limits(
    watts: Option<f64>,
    volts: Option<f64>,
    amps: Option<f64>,
    meter: LogMeter,
) -> Instrument {
    let share = |u: f64, x: f64| u / x.abs().max(f64::MIN_POSITIVE);
    match (watts, volts, amps) {
        (None, _, Some(_)) => meter.amps(),
        (Some(_), Some(v), Some(a)) => {
            let of_a = share(meter.amps().limit(a), a);
            let of_v = share(Kind::Multimeter.usual(0.0).limit(v), v);
            Instrument::of_reading(of_a.hypot(of_v).min(1.0))
        }
        _ => Kind::PlugInWattMeter.usual(0.0),
    }
}

/// The rows from one moment to another, with the one after it: the last step belongs here.
fn rows(log: &Log, from_h: f64, to_h: f64) -> Range<usize> {
    let start_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let at = |h: f64| {
        log.samples
            .partition_point(|s| s.time_s - start_s < 3600.0 * h - 1e-6)
    };
    let (from, to) = (at(from_h), at(to_h));
    from..(to + 1).min(log.samples.len()).max(from)
}

/// Cuts the stretch at a place in the list in two at its middle; nothing where there is none.
pub fn cut_in_two(edges: &mut Vec<(f64, f64)>, at: usize) {
    if let Some(&(from, to)) = edges.get(at) {
        let middle = 0.5 * (from + to);
        edges[at].1 = middle;
        edges.insert(at + 1, (middle, to));
    }
}

/// Moves one edge of the stretch at a place in the list to an hour, between its other edge
/// (a minute from it at least) and its neighbours, or the ends of the log at 0 and `span_h`.
pub fn move_edge(edges: &mut [(f64, f64)], at: usize, is_end: bool, to_h: f64, span_h: f64) {
    const LEAST_H: f64 = 1.0 / 60.0;
    let before = at
        .checked_sub(1)
        .and_then(|b| edges.get(b))
        .map_or(0.0, |e| e.1);
    let after = edges.get(at + 1).map_or(span_h, |e| e.0);
    let Some(edge) = edges.get_mut(at) else {
        return;
    };
    if is_end {
        edge.1 = to_h.min(after).max(edge.0 + LEAST_H);
    } else {
        edge.0 = to_h.max(before).min(edge.1 - LEAST_H);
    }
}
