//! The figures of a whole log: totals, means, gaps, and how the run ended.

use super::meter::LogMeter;
use crate::{
    physics::bench::{
        instrument::Kind,
        log::Log,
        measured::{self, Measured},
        offset,
        run_end::{self, Cause},
        totals::{Adding, Sampling, Totals},
    },
    quantity::{
        Time, amps, in_amp_hours, in_amps, in_hours, in_volts, in_watt_hours, in_watts, seconds,
    },
};

/// Means of a quantity: mean, least, most.
///
/// By time, over what is covered.
pub type Means = (f64, f64, f64);

/// The figures of a log.
#[derive(Clone, Debug, PartialEq)]
pub struct LogReport {
    /// From the first row to the last.
    pub span_h: f64,
    /// Of it without the gaps.
    pub covered_h: f64,
    /// Net Ah out of the bank, with the expanded uncertainty where one can be claimed; absent
    /// where no amps were logged.
    pub ah: Option<(f64, Option<f64>)>,
    /// The same of Wh, by volts and amps or by watts.
    pub wh: Option<(f64, Option<f64>)>,
    /// What the gaps may add, least and most Ah.
    pub gap_ah: (f64, f64),
    /// The same of Wh.
    pub gap_wh: (f64, f64),
    /// From and to of each, hours from the first row.
    pub gaps_h: Vec<(f64, f64)>,
    /// Volts; absent where none were logged.
    pub volts: Option<Means>,
    /// Amps out of the bank; absent where none were logged.
    pub amps: Option<Means>,
    /// Watts out of the bank; absent where they neither were logged nor follow.
    pub watts: Option<Means>,
    /// Whether the rows follow the load.
    pub sampling: Sampling,
    /// How the run ended; absent where there was no load.
    pub end: Option<End>,
    /// What the offset taken off was worth, Ah.
    pub offset_ah: f64,
}

/// How the run ended.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct End {
    /// From the first row under load to the last.
    pub ran_h: f64,
    /// The last row under load, hours from the first row.
    pub at_h: f64,
    /// Volts of that row.
    pub last_v: Option<f64>,
    /// Amps of that row.
    pub last_a: Option<f64>,
    /// What probably ended it.
    pub cause: Cause,
    /// How often it had stopped and begun again before.
    pub restarts: usize,
}

/// What a log adds up to: what its rows say, before any meter is named.
#[derive(Clone, Debug, PartialEq)]
pub struct Sums {
    totals: Totals,
    /// Time with amperes.
    amps_for: Time,
    end: Option<End>,
}

/// Sums in the making: so many steps that no task of a page takes long.
#[derive(Clone, Debug)]
pub struct Summing {
    adding: Adding,
    has_totals: bool,
    end: Option<Option<End>>,
}

impl Summing {
    /// Begins on a log; all steps are to be made with that one.
    #[must_use]
    pub fn new(log: &Log) -> Self {
        Self {
            adding: Adding::whole(log),
            has_totals: false,
            end: None,
        }
    }

    /// One piece of the work; whether there is more of it.
    pub fn step(&mut self, log: &Log) -> bool {
        if self.has_totals {
            self.end = Some(end_of(log));
            return false;
        }
        self.has_totals = !self.adding.step(log);
        true
    }

    /// The sums, whatever is left to do done at once.
    #[must_use]
    pub fn finish(mut self, log: &Log) -> Sums {
        while self.end.is_none() {
            self.step(log);
        }
        Sums {
            totals: self.adding.finish(log),
            amps_for: seconds(log.series(|s| s.amps).covered_s()),
            end: self.end.flatten(),
        }
    }
}

fn end_of(log: &Log) -> Option<End> {
    run_end::run_end(log, None).map(|end| End {
        ran_h: in_hours(end.ran),
        at_h: in_hours(end.at),
        last_v: end.last_volts.map(in_volts),
        last_a: end.last_amps.map(in_amps),
        cause: end.cause,
        restarts: end.restarts,
    })
}

/// The log with so many amperes taken off each reading; `None` where that
/// changes nothing.
#[must_use]
pub fn rested(log: &Log, offset_a: f64) -> Option<Log> {
    (offset_a != 0.0).then(|| log.less_amps(offset_a))
}

/// The figures of a log's sums, as read by this meter; the offset is what
/// [`rested`] took off before.
#[must_use]
pub fn report(sums: &Sums, offset_a: f64, meter: LogMeter) -> LogReport {
    let totals = &sums.totals;
    let volt_meter = Kind::Multimeter.usual(0.0);
    let with_error = |figure: Measured| (figure.value, figure.expanded());
    let energy = measured::energy_by_volts_and_amps(totals, &volt_meter, &meter.amps())
        .or_else(|| measured::energy_by_watts(totals, &Kind::PlugInWattMeter.usual(0.0)));
    let gap = |gaps: Option<(f64, f64)>| gaps.unwrap_or_default();
    LogReport {
        span_h: in_hours(totals.span),
        covered_h: in_hours(totals.covered),
        ah: measured::charge(totals, &meter.amps()).map(with_error),
        wh: energy.map(with_error),
        gap_ah: gap(totals
            .charge
            .map(|f| (in_amp_hours(f.in_gaps.0), in_amp_hours(f.in_gaps.1)))),
        gap_wh: gap(totals
            .energy
            .map(|f| (in_watt_hours(f.in_gaps.0), in_watt_hours(f.in_gaps.1)))),
        gaps_h: totals
            .gaps
            .iter()
            .map(|gap| (in_hours(gap.from), in_hours(gap.to)))
            .collect(),
        volts: totals
            .volts
            .map(|s| (in_volts(s.mean), in_volts(s.least), in_volts(s.most))),
        amps: totals
            .amps
            .map(|s| (in_amps(s.mean), in_amps(s.least), in_amps(s.most))),
        watts: totals
            .watts
            .map(|s| (in_watts(s.mean), in_watts(s.least), in_watts(s.most))),
        sampling: totals.sampling,
        end: sums.end,
        offset_ah: in_amp_hours(offset::effect(amps(offset_a), sums.amps_for)),
    }
}

/// The offset in A that the meter shows before the load comes on; `None` where the
/// log starts under load, or has no amps.
#[must_use]
pub fn resting_offset_a(log: &Log) -> Option<f64> {
    let greatest = log
        .samples
        .iter()
        .filter_map(|s| s.amps)
        .fold(0.0, f64::max);
    let start_s = log.samples.first()?.time_s;
    let loaded = |a: f64| a.abs() > 0.05 * greatest;
    let first = log
        .samples
        .iter()
        .position(|s| s.amps.is_some_and(loaded))?;
    let last = log.samples.get(first.checked_sub(1)?)?;
    let rest = offset::at_rest(log, seconds(0.0), seconds(last.time_s - start_s))?;
    Some(in_amps(rest.current))
}
