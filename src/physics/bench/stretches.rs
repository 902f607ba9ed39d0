//! Steady stretches of a log: each one a mode of the unit.
//!
//! Change points come from [`pelt`](super::pelt) on the watts (on the amperes,
//! where there are no watts), averaged down to a thousand values or so and
//! sharpened on the rows after; then stretches that differ too little or last
//! too short are joined to the neighbour they are most like.

use std::ops::Range;

use super::log::{Log, Sample};
use super::pelt::{best_cut, change_points};
use super::series::{Series, median};
use crate::quantity::{Time, in_seconds, minutes, seconds};

/// How finely to cut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fineness {
    /// Multiplies the penalty of the Bayesian information criterion, 2 sigma^2
    /// ln n a cut: more finds fewer stretches. From 0.1 to 1000.
    pub strictness: f64,
    /// Neighbours whose means differ by less than this share of the larger are
    /// one stretch. From 0 to 1.
    pub least_change: f64,
    /// The shortest stretch.
    pub shortest: Time,
    /// The log is averaged down to so many values, from 10 to 4000.
    pub most_points: usize,
}

impl Default for Fineness {
    fn default() -> Self {
        Self {
            strictness: 3.0,
            least_change: 0.05,
            shortest: minutes(2.0),
            most_points: 1000,
        }
    }
}

/// Cuts a log into steady stretches. Gaps are always between stretches.
///
/// A stretch runs from its first row to its last: the step to the next stretch,
/// where the mode was changed, belongs to neither. A part of the log without
/// readings gives none. A compressor that starts and stops is many stretches
/// until `shortest` is longer than its cycle; the mean of the joined stretch is
/// then the draw with its duty in it.
///
/// Of each from and to, from the start of the log, and the plain mean of its watts (of
/// its amperes, where the log has no watts).
#[must_use]
pub fn spans(log: &Log, fineness: &Fineness) -> Vec<(Time, Time, f64)> {
    let series = log.series(draw(log));
    let start_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let at = |k: usize| seconds(series.t_s[k] - start_s);
    parts(&series, fineness)
        .into_iter()
        .map(|range| (at(range.start), at(range.end - 1), mean(&series, &range)))
        .collect()
}

/// Watts, or amperes where the log has none.
fn draw(log: &Log) -> fn(&Sample) -> Option<f64> {
    if log.samples.iter().any(|s| s.watts.is_some()) {
        |s| s.watts
    } else {
        |s| s.amps
    }
}

/// The stretches as places of the series.
fn parts(series: &Series, fineness: &Fineness) -> Vec<Range<usize>> {
    let shortest_s = in_seconds(fineness.shortest).max(0.0);
    let group = series
        .x
        .len()
        .div_ceil(fineness.most_points.clamp(10, 4000))
        .max(1);
    let sigma = noise(series, group);
    let mut all = Vec::new();
    for piece in series.pieces().filter(|p| !p.is_empty()) {
        let cuts = cut(&series.x[piece.clone()], group, sigma, fineness.strictness);
        let mut parts = ranges(&cuts, piece);
        join(&mut parts, series, fineness.least_change, shortest_s);
        all.extend(parts);
    }
    all
}

/// Means of so many values each; the last may be of fewer.
fn averages(values: &[f64], group: usize) -> Vec<f64> {
    values
        .chunks(group)
        .map(|c| c.iter().sum::<f64>() / c.len() as f64)
        .collect()
}

/// The noise of the averaged values, from the middle one of their steps, so
/// that the changes looked for do not count as noise; never below 0.1 % of the
/// range, or a log without noise would be cut to shreds.
fn noise(series: &Series, group: usize) -> f64 {
    /// Median of |x| over sigma, for normal x.
    const MEDIAN_OF_NORMAL: f64 = 0.674_489_75;
    let coarse = averages(&series.x, group);
    let steps = coarse.windows(2).map(|w| (w[1] - w[0]).abs()).collect();
    let (low, high) = series.extremes().unwrap_or((0.0, 0.0));
    let spread = median(steps) / (MEDIAN_OF_NORMAL * std::f64::consts::SQRT_2);
    spread.max(0.001 * (high - low))
}

/// Change points of one piece, sharpened to the row.
fn cut(values: &[f64], group: usize, sigma: f64, strictness: f64) -> Vec<usize> {
    let coarse = averages(values, group);
    let strictness = if strictness.is_nan() {
        1.0
    } else {
        strictness.clamp(0.1, 1000.0)
    };
    let penalty = strictness * 2.0 * sigma * sigma * (coarse.len().max(2) as f64).ln();
    let rough: Vec<usize> = change_points(&coarse, penalty, 2)
        .into_iter()
        .map(|k| k * group)
        .collect();
    let mut sharp: Vec<usize> = Vec::with_capacity(rough.len());
    for (k, &place) in rough.iter().enumerate() {
        let from = sharp.last().copied().unwrap_or(0);
        let to = rough.get(k + 1).copied().unwrap_or(values.len());
        let low = place.saturating_sub(group).max(from + 1) - from;
        let high = (place + group).min(to - 1) + 1 - from;
        let cut = best_cut(&values[from..to], low..high).unwrap_or(place - from);
        sharp.push(from + cut);
    }
    sharp
}

/// The parts of a piece between its cuts.
fn ranges(cuts: &[usize], piece: Range<usize>) -> Vec<Range<usize>> {
    let mut starts = vec![piece.start];
    starts.extend(cuts.iter().map(|cut| piece.start + cut));
    let ends = starts.iter().skip(1).copied().chain([piece.end]);
    starts
        .iter()
        .copied()
        .zip(ends)
        .map(|(from, to)| from..to)
        .collect()
}

/// The plain mean of the readings of a part.
fn mean(series: &Series, range: &Range<usize>) -> f64 {
    series.x[range.clone()].iter().sum::<f64>() / range.len().max(1) as f64
}

/// Joins the most alike neighbours while they are too alike, then each too
/// short stretch to the neighbour it is most like.
fn join(parts: &mut Vec<Range<usize>>, series: &Series, least_change: f64, shortest_s: f64) {
    let mut means: Vec<f64> = parts.iter().map(|p| mean(series, p)).collect();
    let change = |means: &[f64], k: usize| {
        let (a, b) = (means[k], means[k + 1]);
        let size = a.abs().max(b.abs());
        if size > 0.0 {
            (a - b).abs() / size
        } else {
            0.0
        }
    };
    while parts.len() > 1 {
        let closest = (0..parts.len() - 1)
            .min_by(|&a, &b| change(&means, a).total_cmp(&change(&means, b)))
            .unwrap_or(0);
        let length = |p: &Range<usize>| series.t_s[p.end - 1] - series.t_s[p.start];
        let short = (0..parts.len()).find(|&k| length(&parts[k]) < shortest_s);
        let at = match short {
            _ if change(&means, closest) < least_change => closest,
            // The neighbour it is most like: the one before or the one after.
            Some(k) if k + 1 == parts.len() => k - 1,
            Some(k) if k > 0 && change(&means, k - 1) <= change(&means, k) => k - 1,
            Some(k) => k,
            None => return,
        };
        parts[at].end = parts[at + 1].end;
        parts.remove(at + 1);
        means.remove(at + 1);
        means[at] = mean(series, &parts[at]);
    }
}
