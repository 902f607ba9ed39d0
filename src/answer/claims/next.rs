//! What to measure next: the inputs that make the band, and what measuring
//! each would leave of it.

use crate::{
    answer::RunAnswer,
    plan::{
        Figure, Path, Plan, Provenance,
        path::{BankField as B, ModeField as M, UnitField as U},
    },
    study::spread,
};
use serde::{Deserialize, Serialize};

/// One thing worth measuring for the asked mode.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ToMeasure {
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
    /// The number to be measured.
    pub field: Path,
    /// Its share of the band's squared width now, 2 to 100.
    pub share_percent: f64,
    /// By what kind of measurement.
    pub how: How,
    /// How long that takes, where it is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub takes_min: Option<f64>,
    /// Width of the band of hours, from low to high.
    pub band_now_h: f64,
    /// The same with that number measured and all others as they are.
    pub band_then_h: f64,
}

/// How a number is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum How {
    /// A clamp or shunt on the cable while it runs.
    ClampReadings,
    /// A whole run of the bank from full until its own end, logged.
    WholeRun,
    /// Volts at two loads.
    TwoLoads,
    /// Volts as it stops.
    VoltsAtStop,
    /// Full by the charger before the run.
    FillFirst,
    /// Watts before and behind the converter.
    BothSides,
}

/// Readings of a draw over so many minutes: common practice, no source.
const CLAMP_MIN: f64 = 30.0;
/// Less than this share of the band is not worth an evening.
const LEAST_SHARE_PERCENT: f64 = 2.0;

/// Ranked by share of the asked mode's band on the first bank; what is measured
/// already as well as such a measurement would is left out.
#[must_use]
pub fn next(plan: &Plan, runs: &[RunAnswer]) -> Vec<ToMeasure> {
    let asked = (0, plan.night.asked_unit, plan.night.asked_mode);
    let Some(run) = runs
        .iter()
        .find(|run| (run.bank, run.unit, run.mode) == asked)
    else {
        return Vec::new();
    };
    let band_now_h = run.hours_h.high - run.hours_h.low;
    let worth = run
        .spread_from
        .iter()
        .filter(|share| share.share_percent >= LEAST_SHARE_PERCENT);
    worth
        .filter_map(|share| {
            let figure = plan.figure(share.field)?;
            let now = spread::percent_of(share.field, figure);
            let measured = Figure {
                from: Provenance::Measured,
                spread_percent: None,
                ..figure
            };
            let then = spread::percent_of(share.field, measured) / now;
            let (how, minutes) = how(share.field, run)?;
            // First order: a spread of a share leaves that share of its change.
            let left = 1.0 - share.share_percent / 100.0 * (1.0 - then * then);
            (then < 1.0).then_some(ToMeasure {
                unit: run.unit,
                mode: run.mode,
                field: share.field,
                share_percent: share.share_percent,
                how,
                takes_min: minutes,
                band_now_h,
                band_then_h: band_now_h * left.max(0.0).sqrt(),
            })
        })
        .collect()
}

/// With the minutes that it takes, where they are known; nothing for what nobody measures.
fn how(field: Path, run: &RunAnswer) -> Option<(How, Option<f64>)> {
    let whole_run = Some(60.0 * run.hours_h.likely);
    Some(match field {
        Path::Mode(_, _, M::PowerW | M::CurrentA | M::DutyPercent | M::StandbyW)
        | Path::Load(_)
        | Path::Bank(_, B::ParasiticW) => (How::ClampReadings, Some(CLAMP_MIN)),
        Path::Bank(_, B::BatteryRatedAh | B::HealthPercent | B::MeasuredAh | B::MeasuredWh) => {
            (How::WholeRun, whole_run)
        }
        Path::Bank(_, B::PeukertExponent) => (How::WholeRun, whole_run),
        Path::Bank(_, B::BatteryResistanceMohm) => (How::TwoLoads, None),
        Path::Bank(_, B::StartChargePercent) => (How::FillFirst, None),
        Path::Bank(_, B::CutoffV) | Path::Unit(_, U::CutoffV | U::InverterCutoffV) => {
            (How::VoltsAtStop, None)
        }
        Path::Unit(..) => (How::BothSides, Some(CLAMP_MIN)),
        _ => return None,
    })
}
