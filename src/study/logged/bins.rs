//! A log thinned to means over the steps of a scene.

use crate::physics::bench::log::{ClockTimes, Log, Sample};

/// Means over one step; absent where no row lies in it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Bin {
    /// At the bank.
    pub volts: Option<f64>,
    /// Out of the bank; of watts alone at nominal volts.
    pub amps: Option<f64>,
    /// Out of the bank; of amps alone at nominal volts.
    pub watts: Option<f64>,
    /// By the thermometer in the cabin.
    pub cabin_c: Option<f64>,
    /// By the thermometer outdoors.
    pub outdoor_c: Option<f64>,
}

/// A log's rows and their means, from its start on.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Bins {
    /// One for each step of the scene, from the log's first row to its last.
    pub all: Vec<Bin>,
    /// Rows with watts, in the order of time.
    pub rows: Vec<Row>,
    /// Clock at the start, minutes after midnight, where the log says.
    pub start_min: Option<u32>,
    /// Steps with rows, in hours.
    pub covered_h: f64,
    /// Usual time between two rows, s.
    pub usual_step_s: f64,
}

/// A row with its watts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Row {
    /// The step it lies in.
    pub bin: usize,
    /// Out of the bank; of amps alone at nominal volts.
    pub watts: f64,
    /// Whether the row with watts before was near: no further than 2.5 usual steps.
    pub follows: bool,
}

const DAY_S: f64 = 86_400.0;
const MINUTE_S: f64 = 60.0;

impl Bins {
    /// A log in steps of `step_h`, the first `most_h` hours of it.
    ///
    /// Amperes alone are taken at `nominal_v`, and watts alone as well; `utc_offset_min` turns
    /// universal time to the clock.
    pub(super) fn of(
        log: &Log,
        step_h: f64,
        most_h: f64,
        nominal_v: f64,
        utc_offset_min: f64,
    ) -> Self {
        let step_s = 3600.0 * step_h;
        let first_s = log.samples.first().map_or(0.0, |s| s.time_s);
        let at = |s: &Sample| ((s.time_s - first_s) / step_s) as usize;
        let most = (most_h / step_h) as usize;
        let kept: Vec<&Sample> = log.samples.iter().filter(|s| at(s) < most).collect();
        let all: Vec<Bin> = (0..kept.last().map_or(0, |s| at(s) + 1))
            .map(|_| Bin::default())
            .collect();
        let mut bins = Self {
            all,
            rows: Vec::with_capacity(kept.len()),
            start_min: start_min(log.notes.clock, first_s, utc_offset_min),
            covered_h: 0.0,
            usual_step_s: log.usual_step_s,
        };
        for group in kept.chunk_by(|a, b| at(a) == at(b)) {
            bins.all[at(group[0])] = Bin::mean(group, nominal_v);
            bins.covered_h += step_h;
        }
        let mut last_s = f64::NEG_INFINITY;
        for sample in kept {
            if let Some(watts) = watts_of(sample, nominal_v) {
                bins.rows.push(Row {
                    bin: at(sample),
                    watts,
                    follows: sample.time_s - last_s <= 2.5 * log.usual_step_s,
                });
                last_s = sample.time_s;
            }
        }
        bins
    }

    /// One quantity in every step, straight between those that have it and level beyond the
    /// first and the last; nothing where none has.
    pub(super) fn filled(&self, part: fn(&Bin) -> Option<f64>) -> Option<Vec<f64>> {
        let known: Vec<(usize, f64)> = self
            .all
            .iter()
            .enumerate()
            .filter_map(|(at, bin)| Some((at, part(bin)?)))
            .collect();
        let (first, last) = (known.first()?, known.last()?);
        let mut filled = Vec::with_capacity(self.all.len());
        let mut upper = 0;
        for at in 0..self.all.len() {
            while known.get(upper).is_some_and(|point| point.0 < at) {
                upper += 1;
            }
            let value = match (
                upper.checked_sub(1).map(|lower| known[lower]),
                known.get(upper),
            ) {
                (Some(a), Some(b)) => a.1 + (b.1 - a.1) * (at - a.0) as f64 / (b.0 - a.0) as f64,
                (None, _) => first.1,
                (_, None) => last.1,
            };
            filled.push(value);
        }
        Some(filled)
    }

    /// Whether one step in two at least has it.
    pub(super) fn has(&self, part: fn(&Bin) -> Option<f64>) -> bool {
        2 * self.all.iter().filter(|bin| part(bin).is_some()).count() >= self.all.len().max(1)
    }
}

impl Bin {
    /// Of the rows of one step, each quantity over those that have it.
    fn mean(samples: &[&Sample], nominal_v: f64) -> Self {
        let mean = |part: &dyn Fn(&Sample) -> Option<f64>| {
            let (sum, count) = samples
                .iter()
                .filter_map(|sample| part(sample))
                .fold((0.0, 0.0), |(sum, count), x| (sum + x, count + 1.0));
            (count > 0.0).then(|| sum / count)
        };
        Self {
            volts: mean(&|s| s.volts),
            amps: mean(&|s| s.amps.or(s.watts.map(|w| w / nominal_v))),
            watts: mean(&|s| watts_of(s, nominal_v)),
            cabin_c: mean(&|s| s.celsius),
            outdoor_c: mean(&|s| s.outdoor_c),
        }
    }
}

fn watts_of(sample: &Sample, nominal_v: f64) -> Option<f64> {
    sample.watts.or(sample.amps.map(|a| a * nominal_v))
}

/// Nothing of a log that only counts from its start.
fn start_min(clock: ClockTimes, first_s: f64, utc_offset_min: f64) -> Option<u32> {
    let local_s = match clock {
        ClockTimes::Elapsed => return None,
        ClockTimes::Local => first_s,
        ClockTimes::Universal => first_s + MINUTE_S * utc_offset_min,
    };
    // Below a day's minutes whatever is rounded.
    Some((local_s.rem_euclid(DAY_S) / MINUTE_S) as u32 % (24 * 60))
}
