//! When a run ended, and what probably ended it.

use super::log::{Log, Sample};
use super::series::median;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Power, Time, amps, in_seconds, seconds, volts, watts,
};

/// What probably ended a run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// The log ends under load, or the load faded away: a charge floor that
    /// someone set, or nothing that a log can tell.
    FloorOrUnknown,
    /// The battery's own electronics: the current stops at once, and the volts
    /// vanish, or spring back to where a relieved battery rests.
    BatteryCutOff,
    /// The unit or the inverter: the current falls to next to nothing with the
    /// volts low and still there.
    UnitCutOff,
    /// Somebody: the current stops with the volts still high.
    StoppedByHand,
}

/// The end of a run with what was seen there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunEnd {
    /// From the first sample under load to the last.
    pub ran: Time,
    /// The last sample under load, from the start of the log.
    pub at: Time,
    /// Its place in the log.
    pub sample: usize,
    /// Volts under load, last.
    pub last_volts: Option<ElectricPotential>,
    /// Amperes, last.
    pub last_amps: Option<ElectricCurrent>,
    /// Watts, last.
    pub last_watts: Option<Power>,
    /// Volts after, at first sight; `None` where there is no row after, or it
    /// has no volts.
    pub volts_after: Option<ElectricPotential>,
    /// The run stopped and began again so many times before.
    pub restarts: usize,
    /// What probably ended it.
    pub cause: Cause,
}

/// Above this share of the usual load the unit counts as running. Fans and
/// electronics that stay on after a stop draw less: common practice, no source.
const RUNNING: f64 = 0.1;
/// Volts this much below the middle of the run are low: a lithium bank is past
/// its knee there, a lead one near its end. Common practice, no source.
const LOW: f64 = 0.03;
/// Volts below this share of the last are gone.
const GONE: f64 = 0.2;
/// Volts that rise by this share when the load goes have sprung back.
const SPRUNG: f64 = 0.05;
/// A current below this share of the usual one is none at all.
const NONE_AT_ALL: f64 = 0.005;

/// Finds the end of the run in a log.
///
/// `longest_pause` ends the run at the first pause that is longer; without it
/// the last load counts, so that a compressor that rests does not end it.
/// `None` where the log has no load at all.
#[must_use]
pub fn run_end(log: &Log, longest_pause: Option<Time>) -> Option<RunEnd> {
    let has_amps = log.samples.iter().any(|s| s.amps.is_some());
    let load: fn(&Sample) -> Option<f64> = if has_amps { |s| s.amps } else { |s| s.watts };
    let usual = usual_load(log, load)?;
    let runs = |s: &Sample| load(s).is_some_and(|x| x > RUNNING * usual);
    let pause_s = longest_pause.map(in_seconds).filter(|s| *s >= 0.0);
    let first = log.samples.iter().position(runs)?;
    let (mut last, mut restarts) = (first, 0);
    for (k, sample) in log.samples.iter().enumerate().skip(first + 1) {
        if !runs(sample) {
            continue;
        }
        if pause_s.is_some_and(|most| sample.time_s - log.samples[last].time_s > most) {
            break;
        }
        restarts += usize::from(stopped_between(log, load, usual, last, k));
        last = k;
    }
    let (start, end) = (log.samples[first], log.samples[last]);
    let last_volts = log.samples[first..=last].iter().rev().find_map(|s| s.volts);
    Some(RunEnd {
        ran: seconds(end.time_s - start.time_s),
        at: seconds(end.time_s - log.samples[0].time_s),
        sample: last,
        last_volts: last_volts.map(volts),
        last_amps: end.amps.map(amps),
        last_watts: end.watts.map(watts),
        volts_after: log.samples.get(last + 1).and_then(|s| s.volts).map(volts),
        restarts,
        cause: cause(log, load, usual, first, last),
    })
}

/// The middle load among samples that carry at least a tenth of the greatest.
fn usual_load(log: &Log, load: fn(&Sample) -> Option<f64>) -> Option<f64> {
    let greatest = log.samples.iter().filter_map(load).fold(0.0, f64::max);
    if greatest <= 0.0 {
        return None;
    }
    let loads = log.samples.iter().filter_map(load);
    Some(median(loads.filter(|x| *x > RUNNING * greatest).collect()))
}

fn stopped_between(
    log: &Log,
    load: fn(&Sample) -> Option<f64>,
    usual: f64,
    last: usize,
    now: usize,
) -> bool {
    let between = &log.samples[last + 1..now];
    between
        .iter()
        .any(|s| load(s).is_some_and(|x| x.abs() < NONE_AT_ALL * usual))
}

fn cause(
    log: &Log,
    load: fn(&Sample) -> Option<f64>,
    usual: f64,
    first: usize,
    last: usize,
) -> Cause {
    let after = &log.samples[last + 1..];
    let Some(next) = after.first() else {
        return Cause::FloorOrUnknown;
    };
    // Faded rather than stopped: the last load is far below the usual one.
    if load(&log.samples[last]).is_some_and(|x| x < 0.5 * usual) {
        return Cause::FloorOrUnknown;
    }
    let run = &log.samples[first..=last];
    let Some(under_load) = run.iter().rev().find_map(|s| s.volts) else {
        return Cause::FloorOrUnknown;
    };
    // Volts over the next few rows: a meter may need one to follow.
    let seen: Vec<f64> = after.iter().take(5).filter_map(|s| s.volts).collect();
    let vanished = next.volts.is_none() && seen.is_empty()
        || seen.iter().any(|v| v.abs() < GONE * under_load.abs());
    if vanished {
        return Cause::BatteryCutOff;
    }
    let middle = median(run.iter().filter_map(|s| s.volts).collect());
    if under_load > (1.0 - LOW) * middle {
        return Cause::StoppedByHand;
    }
    let sprung = seen.iter().any(|v| *v > (1.0 + SPRUNG) * under_load);
    let none_at_all = after
        .iter()
        .take(5)
        .filter_map(load)
        .all(|x| x.abs() <= NONE_AT_ALL * usual);
    if sprung && none_at_all {
        Cause::BatteryCutOff
    } else {
        Cause::UnitCutOff
    }
}
