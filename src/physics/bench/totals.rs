//! Charge, energy and means of a log, and how well its rows resolve them.

use std::ops::Range;

use super::counters::disagreement;
use super::log::{Log, Sample};
use super::series::Series;
use super::tally::{MOST_SCATTER, Tally};
use crate::quantity::{
    ElectricCharge, ElectricCurrent, ElectricPotential, Energy, Power, ThermodynamicTemperature,
    Time, amp_hours, amps, celsius, seconds, volts, watt_hours, watts,
};

/// A total by direction: `drawn` in the sense of the draw, `returned` against
/// it, both positive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flow<Q> {
    /// In the sense of the draw.
    pub drawn: Q,
    /// Against it.
    pub returned: Q,
    /// The difference.
    pub net: Q,
    /// How far the net may be off because rows sample it: a standard
    /// uncertainty. `None` when [`Sampling`] is not resolved.
    pub sampling: Option<Q>,
    /// What the gaps may hold, least and most: their length times the extremes
    /// seen in the log. Not part of the totals above.
    pub in_gaps: (Q, Q),
}

/// Mean over time, least and greatest reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread<Q> {
    /// Weighted by time, gaps left out.
    pub mean: Q,
    /// Least reading.
    pub least: Q,
    /// Greatest reading.
    pub most: Q,
}

/// A span in which nothing was logged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// From the start of the log to the last row before.
    pub from: Time,
    /// From the start of the log to the first row after.
    pub to: Time,
}

/// Whether the rows are close enough to follow the load.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Sampling {
    /// They are: leaving every other row out changes the total by little.
    Resolved,
    /// They are not: pulses fall between rows, and no accuracy is claimed.
    /// `scatter` is that change as a share of all that flowed.
    PulsesNotResolved {
        /// Share of the gross total.
        scatter: f64,
    },
    /// The logger's own counters disagree with the rows, though these look
    /// smooth: no accuracy is claimed.
    CountersDisagree {
        /// Share of all that flowed.
        share: f64,
    },
    /// Too few rows to tell.
    #[default]
    TooFewRows,
}

/// The figures of a log or a part of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Totals {
    /// From the first row to the last, gaps included.
    pub span: Time,
    /// Without the gaps in the flow.
    pub covered: Time,
    /// Charge, where there are amperes.
    pub charge: Option<Flow<ElectricCharge>>,
    /// Energy, where there are watts.
    pub energy: Option<Flow<Energy>>,
    /// Volts.
    pub volts: Option<Spread<ElectricPotential>>,
    /// Amperes.
    pub amps: Option<Spread<ElectricCurrent>>,
    /// Watts.
    pub watts: Option<Spread<Power>>,
    /// Temperature.
    pub temperature: Option<Spread<ThermodynamicTemperature>>,
    /// Gaps in the flow.
    pub gaps: Vec<Gap>,
    /// Whether the rows resolve the flow.
    pub sampling: Sampling,
}

/// The figures of the whole log.
#[must_use]
pub fn totals(log: &Log) -> Totals {
    let mut adding = Adding::whole(log);
    while adding.step(log) {}
    adding.finish(log)
}

/// The figures of the samples in `range`; a range past the log is cut.
///
/// Charge is the integral of the amperes, energy that of the watts, each by the
/// trapezoidal rule over the rows that have it. Parts that share their border
/// row add up to the whole. The logger's counters, which count the whole run,
/// are not held against a part.
#[must_use]
pub fn totals_in(log: &Log, range: Range<usize>) -> Totals {
    let range = range.start.min(log.samples.len())..range.end.min(log.samples.len());
    let mut adding = Adding {
        range,
        tallies: Vec::new(),
    };
    while adding.step(log) {}
    adding.put_together(log)
}

/// A quantity of a sample.
type Part = fn(&Sample) -> Option<f64>;

/// What is added up, a slice of work each.
const PARTS: [Part; 4] = [|s| s.volts, |s| s.amps, |s| s.watts, |s| s.celsius];

/// Figures in the making, for a page that may not stop: a step is one quantity.
#[derive(Debug, Clone)]
pub struct Adding {
    range: Range<usize>,
    tallies: Vec<Option<Tally>>,
}

impl Adding {
    /// Begins on a whole log; all steps are to be made with that one.
    #[must_use]
    pub fn whole(log: &Log) -> Self {
        Self {
            range: 0..log.samples.len(),
            tallies: Vec::new(),
        }
    }

    /// Adds up one quantity more; whether there are others.
    pub fn step(&mut self, log: &Log) -> bool {
        if let Some(&part) = PARTS.get(self.tallies.len()) {
            let series = log.series_in(self.range.clone(), part);
            self.tallies.push(Tally::of(&series));
        }
        self.tallies.len() < PARTS.len()
    }

    /// The figures, the logger's own counters held against them.
    #[must_use]
    pub fn finish(self, log: &Log) -> Totals {
        let mut totals = self.put_together(log);
        let apart = disagreement(log, &totals).filter(|share| *share > MOST_SCATTER);
        if let (Sampling::Resolved, Some(share)) = (totals.sampling, apart) {
            totals.sampling = Sampling::CountersDisagree { share };
        }
        totals
    }

    fn put_together(self, log: &Log) -> Totals {
        let rows = log.samples.get(self.range).unwrap_or_default();
        let start_s = rows.first().map_or(0.0, |s| s.time_s);
        let span_s = rows.last().map_or(0.0, |s| s.time_s) - start_s;
        let mut tallies = self.tallies.into_iter().map(Option::unwrap_or_default);
        let [v, a, w, t] = std::array::from_fn(|_| tallies.next().unwrap_or_default());
        let seen = if w.readings >= 2 { &w } else { &a };
        let from_start = |t_s: f64| seconds(t_s - start_s);
        Totals {
            span: seconds(span_s),
            covered: seconds(seen.covered_s),
            charge: flow(&a, span_s, |ampere_s| amp_hours(ampere_s / 3600.0)),
            energy: flow(&w, span_s, |watt_s| watt_hours(watt_s / 3600.0)),
            volts: spread(&v, volts),
            amps: spread(&a, amps),
            watts: spread(&w, watts),
            temperature: spread(&t, celsius),
            gaps: seen
                .gaps_s
                .iter()
                .map(|&(from, to)| Gap {
                    from: from_start(from),
                    to: from_start(to),
                })
                .collect(),
            sampling: seen.sampling,
        }
    }
}

/// A total by direction, from a tally whose integral over seconds `quantity` turns
/// into the unit wanted. `None` of fewer than two readings. The bounds of the
/// gaps take in zero, for the load may have been off.
fn flow<Q>(tally: &Tally, span_s: f64, quantity: fn(f64) -> Q) -> Option<Flow<Q>> {
    let unseen_s = (span_s - tally.covered_s).max(0.0);
    (tally.readings >= 2).then(|| Flow {
        drawn: quantity(tally.drawn),
        returned: quantity(tally.returned),
        net: quantity(tally.drawn - tally.returned),
        sampling: (tally.sampling == Sampling::Resolved).then(|| quantity(tally.sampling_error)),
        in_gaps: (
            quantity(tally.least.min(0.0) * unseen_s),
            quantity(tally.most.max(0.0) * unseen_s),
        ),
    })
}

/// Mean and extremes of a tally; `None` of none.
fn spread<Q>(tally: &Tally, quantity: fn(f64) -> Q) -> Option<Spread<Q>> {
    (tally.readings > 0).then(|| Spread {
        mean: quantity(tally.mean),
        least: quantity(tally.least),
        most: quantity(tally.most),
    })
}

/// The integral over time by the trapezoidal rule, gaps left out.
#[must_use]
pub fn net(series: &Series) -> f64 {
    let of_piece = |piece: Range<usize>| {
        (piece.start + 1..piece.end)
            .map(|k| 0.5 * (series.t_s[k] - series.t_s[k - 1]) * (series.x[k - 1] + series.x[k]))
            .sum::<f64>()
    };
    series.pieces().map(of_piece).sum()
}
