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

/// Whether the current was wholly gone between two samples under load: a stop, not
/// a mere dip.
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

/// What the rows after the last load tell. Order counts: a log that ends and a
/// load that fades tell nothing; volts that vanish tell of the battery whatever
/// else; only then is it asked whether they were low.
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::bench::log::{Notes, Sense};
    use crate::quantity::{in_minutes, in_volts, minutes};

    /// An hour at 20 A, volts sinking from 13.2 to `low`, then the given rows,
    /// volts and amperes, a minute apart. Shapes are common practice, no source.
    fn ended(low: f64, after: &[(Option<f64>, f64)]) -> RunEnd {
        let run = (0..=60).map(|k| {
            let late = (f64::from(k) / 60.0).powi(8);
            (Some(13.2 - (13.2 - low) * late), 20.0)
        });
        let samples = run
            .chain(after.iter().copied())
            .enumerate()
            .map(|(k, (volts, a))| Sample {
                time_s: 60.0 * k as f64,
                volts,
                amps: Some(a),
                ..Sample::default()
            })
            .collect();
        let log = Log::new(samples, None, Sense::Positive, Notes::default()).unwrap();
        let end = run_end(&log, None).unwrap();
        assert_eq!(in_minutes(end.ran), 60.0);
        assert_eq!(in_volts(end.last_volts.unwrap()), low);
        end
    }

    #[test]
    fn each_end_has_its_look() {
        let rest = |v: f64, a: f64| [(Some(v), a), (Some(v), a)];
        assert_eq!(ended(10.8, &[]).cause, Cause::FloorOrUnknown);
        assert_eq!(ended(10.8, &rest(0.2, 0.0)).cause, Cause::BatteryCutOff);
        assert_eq!(ended(10.8, &[(None, 0.0)]).cause, Cause::BatteryCutOff);
        assert_eq!(ended(10.8, &rest(11.9, 0.0)).cause, Cause::BatteryCutOff);
        assert_eq!(ended(11.6, &rest(11.9, 0.3)).cause, Cause::UnitCutOff);
        assert_eq!(ended(13.0, &rest(13.2, 0.0)).cause, Cause::StoppedByHand);
        let faded = ended(11.6, &rest(11.7, 0.0));
        assert_eq!((faded.cause, faded.restarts), (Cause::UnitCutOff, 0));
    }

    #[test]
    fn a_pause_ends_the_run_when_asked() {
        let load = |k: usize| if (10..20).contains(&k) { 0.0 } else { 20.0 };
        let sample = |k: usize| Sample {
            time_s: 60.0 * k as f64,
            amps: Some(load(k)),
            ..Sample::default()
        };
        let samples = (0..30).map(sample).collect();
        let log = Log::new(samples, None, Sense::Positive, Notes::default()).unwrap();
        let through = run_end(&log, None).unwrap();
        assert_eq!((in_minutes(through.ran), through.restarts), (29.0, 1));
        let first = run_end(&log, Some(minutes(5.0))).unwrap();
        assert_eq!((in_minutes(first.ran), first.restarts), (9.0, 0));
        // Nothing runs where nothing is drawn.
        let idle = vec![
            Sample {
                volts: Some(13.0),
                ..Sample::default()
            },
            Sample {
                time_s: 9.0,
                volts: Some(13.0),
                ..Sample::default()
            },
        ];
        let idle = Log::new(idle, None, Sense::Positive, Notes::default()).unwrap();
        assert_eq!(run_end(&idle, None), None);
    }
}
