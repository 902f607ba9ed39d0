//! A log: samples in time, each quantity filled in where it follows.

use super::series::{Series, median};
use crate::quantity::{Time, in_seconds};

/// One row: volts, amperes, watts and temperatures where known. Draw is
/// positive once the row is in a [`Log`].
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Sample {
    /// Seconds, from any start.
    pub time_s: f64,
    /// Volts.
    pub volts: Option<f64>,
    /// Amperes.
    pub amps: Option<f64>,
    /// Watts.
    pub watts: Option<f64>,
    /// Degrees Celsius, in the cabin.
    pub celsius: Option<f64>,
    /// Degrees Celsius outdoors.
    pub outdoor_c: Option<f64>,
    /// Line of the file, zero where there is none.
    pub line: usize,
}

/// Which sign of amperes and watts is the draw.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sense {
    /// The sign that prevails over the log, amperes and watts each.
    #[default]
    Prevailing,
    /// Positive.
    Positive,
    /// Negative.
    Negative,
}

/// Where the watts come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum WattsFrom {
    /// There are none: amperes alone give no energy.
    #[default]
    Nowhere,
    /// A column of watts.
    Column,
    /// Volts times amperes, row by row.
    VoltsTimesAmps,
}

/// First and last reading of a counter that the logger kept itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CounterChange {
    /// The column, from zero.
    pub column: usize,
    /// Watt-hours; else ampere-hours.
    pub is_energy: bool,
    /// First reading, in the order of the file.
    pub first: Option<f64>,
    /// Last reading.
    pub last: Option<f64>,
    /// It went up at some row.
    pub rose: bool,
    /// It went down at some row.
    pub fell: bool,
}

impl CounterChange {
    /// How far it counted; `None` where it went both ways.
    #[must_use]
    pub fn size(&self) -> Option<f64> {
        let change = (self.last? - self.first?).abs();
        (!(self.rose && self.fell)).then_some(change)
    }

    /// Takes in the next reading.
    pub fn count(&mut self, reading: f64) {
        let before = self.last.unwrap_or(reading);
        self.rose |= reading > before;
        self.fell |= reading < before;
        self.first.get_or_insert(reading);
        self.last = Some(reading);
    }
}

/// What the times of a log say of the clock.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum ClockTimes {
    /// Nothing: they count from the log's start.
    #[default]
    Elapsed,
    /// The clock on the wall.
    Local,
    /// Universal time.
    Universal,
}

/// What was done to the rows on the way in; nothing is done in silence.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Notes {
    /// Rows that said the same at the same time, dropped.
    pub repeated_rows: usize,
    /// Rows that said something else at the same time, averaged.
    pub same_time_rows: usize,
    /// Steps back in time that were sorted.
    pub out_of_order_rows: usize,
    /// The file ran backwards.
    pub newest_first: bool,
    /// Empty cells in used columns.
    pub missing_cells: usize,
    /// Rows without a time, dropped.
    pub rows_without_time: usize,
    /// Lines of words, skipped.
    pub remark_lines: usize,
    /// The last row was cut off, and dropped.
    pub cut_short: bool,
    /// Negative amperes were the draw, and were turned round.
    pub amps_turned: bool,
    /// Negative watts were the draw, and were turned round.
    pub watts_turned: bool,
    /// Unsigned watts took the sign of the amperes.
    pub watts_signed_by_amps: bool,
    /// Where the watts come from.
    pub watts_from: WattsFrom,
    /// Mean of |volts x amperes| over mean |watts| where all three are logged.
    /// Far from 1 it tells a wrong unit, or alternating current.
    pub volt_amps_per_watt: Option<f64>,
    /// The logger's own counters.
    pub counters: Vec<CounterChange>,
    /// What its times say of the clock.
    pub clock: ClockTimes,
}

/// A log in order of time.
#[derive(Debug, Clone, PartialEq)]
pub struct Log {
    /// Two samples or more, times ascending, draw positive.
    pub samples: Vec<Sample>,
    /// What was done to the rows.
    pub notes: Notes,
    /// The median time between rows, in seconds.
    pub usual_step_s: f64,
    gap_after_s: Option<f64>,
}

impl Log {
    /// Makes a log of samples; `None` of fewer than two usable ones.
    ///
    /// Samples out of order, or with numbers that are not finite, are dropped.
    /// Watts are filled in from volts and amperes, amperes from watts and
    /// volts, each only where the log has no column of it.
    #[must_use]
    pub fn new(
        mut samples: Vec<Sample>,
        gap_after: Option<Time>,
        sense: Sense,
        mut notes: Notes,
    ) -> Option<Self> {
        samples.retain(is_usable);
        let mut last = f64::NEG_INFINITY;
        samples.retain(|s| {
            s.time_s > last && {
                last = s.time_s;
                true
            }
        });
        if samples.len() < 2 {
            return None;
        }
        let steps = samples
            .windows(2)
            .map(|w| w[1].time_s - w[0].time_s)
            .collect();
        let gap_after_s = gap_after.map(in_seconds).filter(|s| *s > 0.0);
        let usual_step_s = median(steps);
        fill(&mut samples, sense, &mut notes, gap_after_s);
        Some(Self {
            samples,
            notes,
            usual_step_s,
            gap_after_s,
        })
    }

    /// One quantity of the log over the samples in `range`.
    #[must_use]
    pub fn series_in(
        &self,
        range: std::ops::Range<usize>,
        part: fn(&Sample) -> Option<f64>,
    ) -> Series {
        series(
            self.samples.get(range).unwrap_or_default(),
            part,
            self.gap_after_s,
        )
    }

    /// One quantity of the whole log.
    #[must_use]
    pub fn series(&self, part: fn(&Sample) -> Option<f64>) -> Series {
        self.series_in(0..self.samples.len(), part)
    }

    /// From the first sample to the last, in seconds.
    #[must_use]
    pub fn span_s(&self) -> f64 {
        match (self.samples.first(), self.samples.last()) {
            (Some(first), Some(last)) => last.time_s - first.time_s,
            _ => 0.0,
        }
    }

    /// The same log with so many amperes taken off each reading, watts made of
    /// volts and amperes following.
    #[must_use]
    pub fn less_amps(&self, offset_a: f64) -> Self {
        let mut log = self.clone();
        for sample in &mut log.samples {
            sample.amps = sample.amps.map(|a| a - offset_a).filter(|a| a.is_finite());
            if log.notes.watts_from == WattsFrom::VoltsTimesAmps {
                sample.watts = product(sample.volts, sample.amps);
            }
        }
        log
    }
}

/// A time, a reading, and nothing that is not finite.
fn is_usable(s: &Sample) -> bool {
    let finite = |x: Option<f64>| x.is_none_or(f64::is_finite);
    let has = s.volts.is_some() || s.amps.is_some() || s.watts.is_some();
    s.time_s.is_finite()
        && has
        && [s.volts, s.amps, s.watts, s.celsius, s.outdoor_c]
            .into_iter()
            .all(finite)
}

/// One quantity over some samples. Rows without it are left out, so that a few of
/// them make a gap in this quantity and in no other.
fn series(
    samples: &[Sample],
    part: fn(&Sample) -> Option<f64>,
    gap_after_s: Option<f64>,
) -> Series {
    let (t, x) = samples
        .iter()
        .filter_map(|s| Some((s.time_s, part(s)?)))
        .unzip();
    Series::new(t, x, gap_after_s)
}

/// Both or neither.
fn product(a: Option<f64>, b: Option<f64>) -> Option<f64> {
    Some(a? * b?)
}

/// Turns the readings so that the draw is positive, and fills in watts or amperes.
/// The sign that prevails is the draw because a bank is put on the bench to be
/// run down; a log of charging is turned the same way, and its total is what
/// went in. Amperes and watts are turned apart, for some loggers sign only one.
fn fill(samples: &mut [Sample], sense: Sense, notes: &mut Notes, gap_after_s: Option<f64>) {
    let has = |part: fn(&Sample) -> Option<f64>| samples.iter().any(|s| part(s).is_some());
    let (has_amps, has_watts) = (has(|s| s.amps), has(|s| s.watts));
    let net =
        |part: fn(&Sample) -> Option<f64>| super::totals::net(&series(samples, part, gap_after_s));
    let (net_amps, net_watts) = (net(|s| s.amps), net(|s| s.watts));
    notes.volt_amps_per_watt = volt_amps_per_watt(samples);
    let unsigned = has_watts && samples.iter().all(|s| s.watts.is_none_or(|w| w >= 0.0));
    let both_ways = samples.iter().any(|s| s.amps.is_some_and(|a| a < 0.0))
        && samples.iter().any(|s| s.amps.is_some_and(|a| a > 0.0));
    let turned = |net: f64| match sense {
        Sense::Prevailing => net < 0.0,
        Sense::Positive => false,
        Sense::Negative => true,
    };
    notes.amps_turned = has_amps && turned(net_amps);
    notes.watts_signed_by_amps = unsigned && both_ways;
    notes.watts_turned = has_watts && !unsigned && turned(net_watts);
    notes.watts_from = match () {
        () if has_watts => WattsFrom::Column,
        () if samples.iter().any(|s| product(s.volts, s.amps).is_some()) => {
            WattsFrom::VoltsTimesAmps
        }
        () => WattsFrom::Nowhere,
    };
    for sample in samples {
        fill_one(sample, notes, has_amps);
    }
}

/// One sample by the notes that were taken of the whole log.
fn fill_one(sample: &mut Sample, notes: &Notes, has_amps: bool) {
    let turn = |x: f64, turned: bool| if turned { -x } else { x };
    sample.amps = sample.amps.map(|a| turn(a, notes.amps_turned));
    sample.watts = match notes.watts_from {
        WattsFrom::Nowhere => None,
        WattsFrom::VoltsTimesAmps => product(sample.volts, sample.amps),
        WattsFrom::Column if notes.watts_signed_by_amps => {
            let flows_back = sample.amps.is_some_and(|a| a < 0.0);
            sample.watts.map(|w| turn(w, flows_back))
        }
        WattsFrom::Column => sample.watts.map(|w| turn(w, notes.watts_turned)),
    };
    if !has_amps {
        let live = sample.volts.filter(|v| v.abs() >= 0.5);
        sample.amps = live.zip(sample.watts).map(|(v, w)| w / v);
    }
}

/// Mean volts times amperes over mean watts, signs left out; `None` where no row
/// has all three.
fn volt_amps_per_watt(samples: &[Sample]) -> Option<f64> {
    let sums = samples
        .iter()
        .filter_map(|s| Some((product(s.volts, s.amps)?.abs(), s.watts?.abs())))
        .fold((0.0, 0.0), |(va, w), (x, y)| (va + x, w + y));
    (sums.1 > 0.0).then(|| sums.0 / sums.1)
}
