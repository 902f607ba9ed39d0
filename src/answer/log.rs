//! What a log says, in numbers for a page: totals, the run's end, stretches,
//! and the way of both into the plan.
//!
//! A log is too big for a plan, so this is no part of [`super::answer`]: the
//! page asks for it while a log is open. All of it is [`crate::bench`]'s work.

mod notes;

/// What reads a file, for a page that may not know the rooms behind an answer.
pub use crate::bench::{
    import::{
        Column, Given, Importer, MOST_BYTES, Options, Progress, Refusal, Role, Unit, headings,
    },
    log::Log,
};
pub use notes::{NoNumber, Note, NoteField, NoteFigures, noted};

use crate::{
    bench::{
        instrument::{Instrument, Kind},
        measured::{self, Measured},
        offset,
        run_end::{self, Cause},
        stretches::{Fineness, stretches},
        totals::{Sampling, totals},
    },
    chart::series::{Sample as Dot, Series},
    plan::{
        Claim, Draw, Figure, Plan,
        claims::{Claimed, EndBy},
    },
    quantity::{amps, in_amp_hours, in_amps, in_hours, in_volts, in_watt_hours, in_watts, seconds},
    range,
};
use std::ops::Range;

/// Means of a quantity: mean, least, most.
pub type Means = (f64, f64, f64);

/// The figures of a log.
#[derive(Clone, Debug, PartialEq)]
pub struct LogReport {
    pub span_h: f64,
    pub covered_h: f64,
    /// Net, with the expanded uncertainty where one can be claimed.
    pub ah: Option<(f64, Option<f64>)>,
    pub wh: Option<(f64, Option<f64>)>,
    /// What the gaps may add, least and most.
    pub gap_ah: (f64, f64),
    pub gap_wh: (f64, f64),
    /// From and to.
    pub gaps_h: Vec<(f64, f64)>,
    pub volts: Option<Means>,
    pub amps: Option<Means>,
    pub watts: Option<Means>,
    pub sampling: Sampling,
    pub end: Option<End>,
    /// What the offset taken off was worth.
    pub offset_ah: f64,
}

/// How the run ended.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct End {
    pub ran_h: f64,
    pub at_h: f64,
    pub last_v: Option<f64>,
    pub last_a: Option<f64>,
    pub cause: Cause,
    pub restarts: usize,
}

/// The figures of one stretch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StretchFigures {
    pub from_h: f64,
    pub to_h: f64,
    pub watts: f64,
    /// Expanded; `None` where the rows do not follow the load.
    pub expanded_w: Option<f64>,
    pub amps: Option<f64>,
    pub volts: Option<f64>,
}

/// The meter that the amperes were logged by: a shunt of this rating, or a clamp.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogMeter {
    pub is_clamp: bool,
    pub shunt_a: f64,
}

impl Default for LogMeter {
    fn default() -> Self {
        Self {
            is_clamp: false,
            shunt_a: 100.0,
        }
    }
}

impl LogMeter {
    fn amps(self) -> Instrument {
        if self.is_clamp {
            Kind::ClampMeter.usual(0.0)
        } else {
            Kind::ShuntMonitor.usual(self.shunt_a)
        }
    }
}

/// The figures of a whole log, so many amperes taken off each reading first.
#[must_use]
pub fn report(log: &Log, offset_a: f64, meter: LogMeter) -> LogReport {
    let (log, offset_ah) = match offset::remove(log, amps(offset_a)) {
        Some((log, charge)) if offset_a != 0.0 => (log, in_amp_hours(charge)),
        _ => (log.clone(), 0.0),
    };
    let totals = totals(&log);
    let volt_meter = Kind::Multimeter.usual(0.0);
    let with_error = |figure: Measured| (figure.value, figure.expanded());
    let energy = measured::energy_by_volts_and_amps(&totals, &volt_meter, &meter.amps())
        .or_else(|| measured::energy_by_watts(&totals, &Kind::PlugInWattMeter.usual(0.0)));
    let gap = |gaps: Option<(f64, f64)>| gaps.unwrap_or_default();
    LogReport {
        span_h: in_hours(totals.span),
        covered_h: in_hours(totals.covered),
        ah: measured::charge(&totals, &meter.amps()).map(with_error),
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
        end: run_end::run_end(&log, None).map(|end| End {
            ran_h: in_hours(end.ran),
            at_h: in_hours(end.at),
            last_v: end.last_volts.map(in_volts),
            last_a: end.last_amps.map(in_amps),
            cause: end.cause,
            restarts: end.restarts,
        }),
        offset_ah,
    }
}

/// The offset that the meter shows before the load comes on; `None` where the
/// log starts under load.
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

/// Values that change points are looked for on: so few that no task of a page
/// takes long (the work grows with their square at worst).
const MOST_POINTS: usize = 500;

/// The steady stretches found, from and to in hours from the log's start. Those
/// without a draw are left out.
#[must_use]
pub fn found(log: &Log) -> Vec<(f64, f64)> {
    let fineness = Fineness {
        most_points: MOST_POINTS,
        ..Fineness::default()
    };
    let found = stretches(log, &fineness);
    let watts = |s: &crate::bench::stretches::Stretch| {
        s.watts.map(in_watts).or(s.amps.map(in_amps)).unwrap_or(0.0)
    };
    let most = found.iter().map(watts).fold(0.0, f64::max);
    found
        .iter()
        .filter(|s| watts(s) > 0.05 * most)
        .map(|s| (in_hours(s.from), in_hours(s.to)))
        .collect()
}

/// The figures between two moments of a log; `None` without watts there.
#[must_use]
pub fn stretch(log: &Log, (from_h, to_h): (f64, f64), meter: LogMeter) -> Option<StretchFigures> {
    let range = rows(log, from_h, to_h);
    let totals = crate::bench::totals::totals_in(log, range.clone());
    let watts = in_watts(totals.watts?.mean);
    // Amps and volts make the watts of most logs: their limits at the mean.
    let (volts, amps) = (totals.volts, totals.amps);
    let limits = match (volts, amps) {
        (Some(v), Some(a)) => {
            let (v, a) = (in_volts(v.mean), in_amps(a.mean));
            let share = |u: f64, x: f64| u / x.abs().max(f64::MIN_POSITIVE);
            let of_a = share(meter.amps().limit(a), a);
            let of_v = share(Kind::Multimeter.usual(0.0).limit(v), v);
            Instrument::of_reading(of_a.hypot(of_v).min(1.0))
        }
        _ => Kind::PlugInWattMeter.usual(0.0),
    };
    let figure = measured::mean_draw(log, range, &limits)?;
    Some(StretchFigures {
        from_h,
        to_h,
        watts,
        expanded_w: figure.expanded(),
        amps: amps.map(|s| in_amps(s.mean)),
        volts: volts.map(|s| in_volts(s.mean)),
    })
}

fn rows(log: &Log, from_h: f64, to_h: f64) -> Range<usize> {
    let start_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let at = |h: f64| {
        log.samples
            .partition_point(|s| s.time_s - start_s < 3600.0 * h - 1e-6)
    };
    let (from, to) = (at(from_h), at(to_h));
    from..(to + 1).min(log.samples.len()).max(from)
}

/// Moves one edge of a stretch, between its other edge and its neighbours.
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

/// The draw along the log for a chart: least and most of so many pieces, so that
/// no peak is lost; gaps stay gaps.
#[must_use]
pub fn drawn(log: &Log, pieces: usize) -> Series {
    let series = log.series(|s| s.watts.or(s.amps));
    let start_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let mut dots = Vec::new();
    for piece in series.pieces().filter(|p| !p.is_empty()) {
        let size = piece.len().div_ceil(pieces.max(1)).max(1);
        for from in piece.clone().step_by(size) {
            let to = (from + size).min(piece.end);
            let hours = |k: usize| (series.t_s[k] - start_s) / 3600.0;
            let dot = |k: usize| Dot {
                x: hours(k),
                y: Some(series.x[k]),
            };
            let by = |a: &usize, b: &usize| series.x[*a].total_cmp(&series.x[*b]);
            let least = (from..to).min_by(by).unwrap_or(from);
            let most = (from..to).max_by(by).unwrap_or(from);
            dots.push(dot(least.min(most)));
            if least != most {
                dots.push(dot(least.max(most)));
            }
        }
        // A sample without a value is a gap in a chart.
        dots.push(Dot {
            x: dots.last().map_or(0.0, |d| d.x),
            y: None,
        });
    }
    Series {
        samples: dots,
        ..Series::default()
    }
}

/// Rounded to five digits: more than any meter here reads, and fit to be read.
fn readable(value: f64) -> f64 {
    let digits = 4 - value.abs().max(1e-9).log10().floor() as i32;
    let scale = 10f64.powi(digits.clamp(-9, 9));
    (value * scale).round() / scale
}

/// The uncertainty with what the gaps may hold added to it: a plan has no place
/// for a bound on one side, so it widens both.
fn with_gap(expanded: f64, (least, most): (f64, f64)) -> f64 {
    expanded + least.abs().max(most.abs())
}

/// A measured figure with its spread, where its range takes it.
fn figure(value: f64, expanded: Option<f64>, range: range::Range) -> Option<Figure> {
    let value = readable(value);
    let spread = expanded.map(|u| readable(100.0 * u / value.abs()));
    let spread = spread.filter(|percent| range::SPREAD_PERCENT.accepts(*percent));
    range.accepts(value).then_some(Figure {
        spread_percent: spread,
        ..Figure::measured(value)
    })
}

/// Makes a stretch the draw of a mode: watts, measured, with their spread. The
/// mean over its time on and off is what was measured, so the share of time on
/// goes. Returns whether it could be.
pub fn to_mode(plan: &mut Plan, unit: usize, mode: usize, stretch: &StretchFigures) -> bool {
    let known = stretch.expanded_w;
    let power = known.and_then(|u| figure(stretch.watts, Some(u), range::DRAW_W));
    let mode = plan.units.get_mut(unit).and_then(|u| u.modes.get_mut(mode));
    let (Some(power_w), Some(mode)) = (power, mode) else {
        return false;
    };
    mode.draw = Draw::Power { power_w };
    (mode.duty_percent, mode.standby_w) = (None, None);
    true
}

/// Makes the totals the measured bank. Returns whether there was anything.
pub fn to_bank(plan: &mut Plan, bank: usize, report: &LogReport) -> bool {
    let Some(bank) = plan.banks.get_mut(bank) else {
        return false;
    };
    // Where no accuracy can be claimed, nothing is taken for measured.
    let of = |total: Option<(f64, Option<f64>)>, gap, range| {
        let (value, expanded) = total?;
        figure(value, Some(with_gap(expanded?, gap)), range)
    };
    let (ah, wh) = (
        of(report.ah, report.gap_ah, range::MEASURED_AH),
        of(report.wh, report.gap_wh, range::MEASURED_WH),
    );
    if ah.is_none() && wh.is_none() {
        return false;
    }
    (bank.measured.measured_ah, bank.measured.measured_wh) = (ah, wh);
    let load = report.watts.map(|(mean, ..)| mean);
    let load = load.and_then(|mean| figure(mean, None, range::MEASURED_LOAD_W));
    bank.measured.load_w = load;
    true
}

/// Holds the totals against the bank's label: a claim of charge and one of energy,
/// both by this name.
pub fn to_claims(plan: &mut Plan, bank: usize, report: &LogReport, name: &str) {
    let Some(the_bank) = plan.banks.get(bank) else {
        return;
    };
    let ah = the_bank.block_rated_ah.value * f64::from(the_bank.parallel_count);
    let wh = ah * the_bank.nominal_v();
    let end_by = report.end.and_then(|end| match end.cause {
        Cause::BatteryCutOff => Some(EndBy::BatteryCutOff),
        Cause::UnitCutOff => Some(EndBy::UnitCutOff),
        Cause::StoppedByHand => Some(EndBy::ByHand),
        Cause::FloorOrUnknown => None,
    });
    let common = |about| Claim {
        bank,
        end_by,
        name: name.into(),
        measured_min: Some(readable(60.0 * report.covered_h))
            .filter(|min| range::MEASURED_MIN.accepts(*min)),
        rate_a: report
            .amps
            .map(|(mean, ..)| readable(mean))
            .filter(|a| range::DRAW_A.accepts(*a)),
        ..Claim::of(about)
    };
    let of = |total: Option<(f64, Option<f64>)>, gap, range| {
        let (value, expanded) = total?;
        figure(value, expanded.map(|u| with_gap(u, gap)), range)
    };
    let new = [
        Claim {
            claimed_ah: Some(ah),
            measured_ah: of(report.ah, report.gap_ah, range::CLAIM_AH),
            ..common(Claimed::Charge)
        },
        Claim {
            claimed_wh: Some(wh),
            measured_wh: of(report.wh, report.gap_wh, range::CLAIM_WH),
            ..common(Claimed::Energy)
        },
    ];
    for claim in new {
        let fits = claim.measured_ah.is_some() || claim.measured_wh.is_some();
        if fits && plan.claims.len() < crate::plan::claims::MOST_CLAIMS {
            plan.claims.push(claim);
        }
    }
}

/// An invented log of the demonstration's scenario, and it says so: ten minutes
/// at rest with a meter that shows a tenth of an ampere too much, then Plunge,
/// Hold and Hush until the battery's own electronics open; six minutes missing.
#[must_use]
pub fn invented() -> String {
    let mut text = String::from(
        "Invented for the demonstration: no such van, bank or cooler was measured\nelapsed min,bank V,draw A\n",
    );
    let (mut wh, mut noise) = (0.0_f64, 1_u32);
    for step in 0..2400_u32 {
        let minute = f64::from(step) * 0.5;
        noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let wobble = f64::from(noise >> 16) / 65_536.0 - 0.5;
        let watts = match minute {
            m if m < 10.0 => 0.0,
            m if m < 55.0 => 690.0,
            m if m < 415.0 => 430.0,
            _ => 265.0,
        } * (1.0 + 0.02 * wobble);
        let left = 1.0 - wh / 5290.0;
        let knee = 3.2 * (1.0 - left).powi(24);
        let resting_v = 26.1 + 0.5 * left - knee;
        let open = resting_v < 23.6;
        let volts = if open {
            25.4
        } else {
            resting_v - 0.0008 * watts
        };
        let draw = if open { 0.0 } else { watts / volts };
        wh += if open { 0.0 } else { watts / 120.0 };
        if !(600.0..606.0).contains(&minute) {
            let (volts, draw) = (
                crate::plan::entry::fixed(volts, 2),
                crate::plan::entry::fixed(draw + 0.1, 2),
            );
            let minute = crate::plan::entry::fixed(minute, 1);
            text.push_str(&format!("{minute},{volts},{draw}\n"));
        }
        if open && wh > 0.0 && noise % 16 == 0 {
            break;
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::import::{Options, read_all};

    fn log() -> Log {
        let (log, _) = read_all(invented().as_bytes(), Options::default()).unwrap();
        log
    }

    #[test]
    fn the_invented_log_is_read_whole() {
        let log = log();
        let offset = resting_offset_a(&log).unwrap();
        assert!((offset - 0.1).abs() < 0.005, "{offset}");
        let report = report(&log, offset, LogMeter::default());
        assert_eq!(report.gaps_h.len(), 1);
        let end = report.end.unwrap();
        assert_eq!(end.cause, Cause::BatteryCutOff, "{end:?}");
        let (wh, expanded) = report.wh.unwrap();
        assert!(
            (4500.0..5400.0).contains(&wh) && expanded.unwrap() > 0.0,
            "{wh}"
        );
        // A tenth of an ampere over the hours covered.
        assert!((report.offset_ah - offset * report.covered_h).abs() < 0.02);
    }

    #[test]
    fn its_stretches_are_the_modes_that_were_run() {
        let log = log();
        let log = log.less_amps(0.1);
        let edges = found(&log);
        let watts: Vec<f64> = edges
            .iter()
            .filter_map(|&edge| stretch(&log, edge, LogMeter::default()))
            .map(|s| s.watts)
            .collect();
        for want in [690.0, 430.0, 265.0] {
            assert!(
                watts.iter().any(|w| (w / want - 1.0).abs() < 0.02),
                "{watts:?}"
            );
        }
        let mut plan = Plan::demo();
        let first = stretch(&log, edges[0], LogMeter::default()).unwrap();
        assert!(to_mode(&mut plan, 0, 0, &first));
        assert!(!to_mode(&mut plan, 0, 9, &first));
        let report = report(&log, 0.0, LogMeter::default());
        assert!(to_bank(&mut plan, 0, &report));
        to_claims(&mut plan, 0, &report, "");
        assert_eq!((plan.claims.len(), plan.errors()), (2, Vec::new()));
        // What the gap may hold stands in the spread: a verdict must survive it.
        let (ah, expanded) = report.ah.unwrap();
        let spread = plan.claims[0].measured_ah.unwrap().spread_percent.unwrap();
        let want = 100.0 * (expanded.unwrap() + report.gap_ah.1) / ah;
        assert!((spread / want - 1.0).abs() < 1e-3, "{spread} {want}");
    }

    #[test]
    fn edges_keep_their_order() {
        let mut edges = vec![(0.0, 1.0), (2.0, 3.0)];
        move_edge(&mut edges, 0, true, 9.0, 4.0);
        move_edge(&mut edges, 1, false, -1.0, 4.0);
        move_edge(&mut edges, 1, true, 99.0, 4.0);
        assert_eq!(edges, [(0.0, 2.0), (2.0, 4.0)]);
        move_edge(&mut edges, 0, false, 5.0, 4.0);
        assert!(edges[0].0 < edges[0].1);
    }
}
