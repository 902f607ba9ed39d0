//! A measured figure with the parts of its uncertainty.

use super::instrument::Instrument;
use super::propagate::{Input, effective_freedom};
use super::series::Series;
use super::student::coverage_factor;
use super::totals::{Flow, Sampling, Totals};
use crate::quantity::{Time, in_amp_hours, in_hours, in_seconds, in_volts, in_watt_hours};

/// Where a part of the uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// The meter's limits.
    Meter,
    /// A second meter's limits: the volts of an energy.
    VoltMeter,
    /// Rows that sample the load.
    Sampling,
    /// Scatter of readings or of runs (type A).
    Scatter,
    /// When the run began and ended.
    Timing,
    /// The law by which a figure was brought to its rated conditions.
    Correction,
}

/// What a longer measurement does to a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shrinks {
    /// Nothing.
    Never,
    /// It falls as one over the time.
    WithTime,
    /// It falls as one over the root of the time.
    WithRootOfTime,
}

/// One part of the uncertainty of a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// Where it comes from.
    pub source: Source,
    /// Standard uncertainty, in the unit of the figure.
    pub standard: f64,
    /// What more time does to it.
    pub shrinks: Shrinks,
    /// Degrees of freedom; `None` where it is taken as certain.
    pub freedom: Option<f64>,
}

impl Part {
    /// A part of certain size that no time shrinks.
    #[must_use]
    pub fn fixed(source: Source, standard: f64) -> Self {
        Self {
            source,
            standard,
            shrinks: Shrinks::Never,
            freedom: None,
        }
    }
}

/// A measured figure, in whatever unit the claim beside it has.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// The figure.
    pub value: f64,
    /// What makes it uncertain; the parts are independent.
    pub parts: Vec<Part>,
    /// What gaps in the log may add, least and most.
    pub unseen: (f64, f64),
    /// Whether the rows resolve the load; if not, nothing is claimed.
    pub resolved: bool,
    /// How long it was measured, for what more time would do.
    pub lasted: Option<Time>,
}

impl Measured {
    /// A figure read once off a meter.
    #[must_use]
    pub fn read_once(value: f64, meter: &Instrument) -> Self {
        Self::from_parts(
            value,
            vec![Part::fixed(Source::Meter, meter.standard(value))],
        )
    }

    /// A figure with a standard uncertainty known from elsewhere.
    #[must_use]
    pub fn known(value: f64, standard: f64) -> Self {
        Self::from_parts(value, vec![Part::fixed(Source::Meter, standard)])
    }

    /// A figure without gaps and of unknown length.
    fn from_parts(value: f64, parts: Vec<Part>) -> Self {
        Self {
            value,
            parts,
            unseen: (0.0, 0.0),
            resolved: true,
            lasted: None,
        }
    }

    /// Combined standard uncertainty (JCGM 100:2008, equation 10).
    #[must_use]
    pub fn standard(&self) -> f64 {
        let squares: f64 = self.parts.iter().map(|p| p.standard * p.standard).sum();
        squares.sqrt()
    }

    /// The coverage factor for 95.45 %: 2, or Student's for few degrees of
    /// freedom.
    #[must_use]
    pub fn coverage(&self) -> f64 {
        let parts = self.parts.iter().map(|p| (p.standard, p.freedom));
        coverage_factor(effective_freedom(self.standard(), parts))
    }

    /// Expanded uncertainty; `None` when the rows do not resolve the load or a
    /// number is not finite.
    #[must_use]
    pub fn expanded(&self) -> Option<f64> {
        let expanded = self.coverage() * self.standard();
        let sound = self.resolved && self.value.is_finite() && expanded.is_finite();
        sound.then_some(expanded)
    }
}

/// The net energy of a log in watt-hours, from volts and amperes.
///
/// Both meters' limits are taken at the mean reading and act over the whole
/// run. `None` when the log gives no volts, no amperes or no energy.
#[must_use]
pub fn energy_by_volts_and_amps(
    totals: &Totals,
    volt_meter: &Instrument,
    amp_meter: &Instrument,
) -> Option<Measured> {
    let energy = in_flow(totals.energy.as_ref()?, in_watt_hours);
    let gross = energy.drawn + energy.returned;
    let volts = in_volts(totals.volts?.mean).abs();
    let hours = in_hours(totals.covered);
    if volts <= 0.0 || hours <= 0.0 {
        return None;
    }
    let amps = gross / volts / hours;
    let of_volts = gross * volt_meter.standard(volts) / volts;
    let of_amps = volts * hours * amp_meter.standard(amps);
    Some(figure(
        totals,
        &energy,
        [(Source::VoltMeter, of_volts), (Source::Meter, of_amps)],
    ))
}

/// The net energy of a log in watt-hours, from a meter of watts.
#[must_use]
pub fn energy_by_watts(totals: &Totals, meter: &Instrument) -> Option<Measured> {
    let energy = in_flow(totals.energy.as_ref()?, in_watt_hours);
    let of_watts = of_flow(totals, &energy, meter)?;
    Some(figure(totals, &energy, [(Source::Meter, of_watts)]))
}

/// The net charge of a log in ampere-hours.
#[must_use]
pub fn charge(totals: &Totals, meter: &Instrument) -> Option<Measured> {
    let charge = in_flow(totals.charge.as_ref()?, in_amp_hours);
    let of_amps = of_flow(totals, &charge, meter)?;
    Some(figure(totals, &charge, [(Source::Meter, of_amps)]))
}

/// The meter's part of a total: its standard uncertainty at the mean reading,
/// over the whole time, since the same meter errs the same way all along.
fn of_flow(totals: &Totals, flow: &Flow<f64>, meter: &Instrument) -> Option<f64> {
    let hours = in_hours(totals.covered);
    let mean = (flow.drawn + flow.returned) / hours;
    (hours > 0.0).then(|| hours * meter.standard(mean))
}

/// A flow as plain numbers in one unit.
fn in_flow<Q: Copy>(flow: &Flow<Q>, number: fn(Q) -> f64) -> Flow<f64> {
    Flow {
        drawn: number(flow.drawn),
        returned: number(flow.returned),
        net: number(flow.net),
        sampling: flow.sampling.map(number),
        in_gaps: (number(flow.in_gaps.0), number(flow.in_gaps.1)),
    }
}

/// The net of a flow with its meters' parts and that of sampling.
fn figure<const N: usize>(
    totals: &Totals,
    flow: &Flow<f64>,
    meters: [(Source, f64); N],
) -> Measured {
    let mut parts: Vec<Part> = meters.map(|(source, u)| Part::fixed(source, u)).into();
    parts.extend(flow.sampling.map(|u| Part::fixed(Source::Sampling, u)));
    Measured {
        value: flow.net,
        parts,
        unseen: flow.in_gaps,
        resolved: totals.sampling == Sampling::Resolved && flow.sampling.is_some(),
        lasted: Some(totals.covered),
    }
}

/// The mean of a stretch of a log, from its totals and the readings it is of; `value` in
/// their unit.
///
/// Scatter is taken from the means of ten parts of equal length, so that
/// readings that follow each other closely, and a compressor that starts and
/// stops, do not pass for independent ones.
#[must_use]
pub fn steady(value: f64, totals: &Totals, series: &Series, meter: &Instrument) -> Measured {
    let mut figure = Measured::read_once(value, meter);
    figure.lasted = Some(totals.covered);
    figure.resolved = totals.sampling == Sampling::Resolved;
    if let Some(scatter) = Input::repeated(&means_of_parts(series)) {
        figure.parts.push(Part {
            source: Source::Scatter,
            standard: scatter.standard,
            shrinks: Shrinks::WithRootOfTime,
            freedom: scatter.freedom,
        });
    }
    // One end may be off by half a step of the log, in a draw that has just
    // changed: the step's share of the spread.
    if let Some((low, high)) = series.extremes() {
        let share = series.usual_step_s() / in_seconds(totals.covered).max(f64::MIN_POSITIVE);
        figure.parts.push(Part {
            source: Source::Timing,
            standard: (high - low) * share.min(1.0) / 12f64.sqrt(),
            shrinks: Shrinks::WithTime,
            freedom: None,
        });
    }
    figure
}

/// Means of ten equal parts, one or more readings each; what is left at the end
/// is not used.
fn means_of_parts(series: &Series) -> Vec<f64> {
    /// Ten leave nine degrees of freedom: k = 2.32 rather than 2.
    const PARTS: usize = 10;
    let size = (series.x.len() / PARTS).max(1);
    series
        .x
        .chunks_exact(size)
        .map(|part| part.iter().sum::<f64>() / part.len() as f64)
        .collect()
}
