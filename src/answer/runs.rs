//! One mode of one unit on one bank: hours, how it ends, curves.

use super::working::{self, Working};
use crate::physics::battery::Pack;
use crate::{
    plan::finding::{Finding, Matter},
    plan::{
        Feed, Plan,
        path::{BankField as B, ModeField as M, Path, UnitField as U},
        supply::SupplyField as S,
    },
    simulate::{Job, Run, Stop, assemble, held_span, hours, hours_down, run_down},
    study::spread::{self, Band, Share},
};
use serde::{Deserialize, Serialize};

/// How long one mode runs, and everything about that run.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RunAnswer {
    /// Place of the bank in the plan.
    pub bank: usize,
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
    /// From the start until the run ends, with its band; 0 where it cannot start.
    pub hours_h: Band,
    /// What ends it.
    pub stop: Stop,
    /// Drawn from the bank.
    pub drawn_ah: f64,
    /// The same at its terminals.
    pub drawn_wh: f64,
    /// Of which at the unit, or at the input of its converter.
    pub unit_wh: f64,
    /// Left as heat in the bank: in its resistance and what it drops beyond that.
    pub lost_wh: f64,
    /// Mean over the whole run, at the terminals; 0 where it cannot start.
    pub mean_w: f64,
    /// The same of the current.
    pub mean_a: f64,
    /// Out of the bank at the start, the unit on; 0 where it cannot start.
    pub first_a: f64,
    /// The same at the end.
    pub last_a: f64,
    /// At the terminals at the start, the unit on; 0 where it cannot start.
    pub first_v: f64,
    /// The same at the end.
    pub last_v: f64,
    /// In the order of time, the start first; empty where it does not run at all.
    pub trace: Vec<TracePoint>,
    /// Hours against the size of the bank, from a quarter of it to four times, the batteries'
    /// kind unchanged; empty where the curves were left out.
    pub by_bank: Vec<CurvePoint>,
    /// Hours against depth of discharge, every 10 %; empty where the curves were left out.
    pub by_depth: Vec<DepthPoint>,
    /// Whose spread makes the band of the hours, largest first.
    pub spread_from: Vec<Share>,
    /// The formula with this run's numbers.
    pub working: Working,
}

/// The state at one moment of a run, the unit on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TracePoint {
    /// From the start.
    pub hours_h: f64,
    /// Share of what the bank holds, 0 to 100.
    pub charge_percent: f64,
    /// At the bank's terminals.
    pub terminal_v: f64,
    /// Out of the bank.
    pub bank_a: f64,
}

/// Hours on a bank of so many Ah.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CurvePoint {
    /// From full to empty.
    pub bank_ah: f64,
    /// From the plan's start charge to what it keeps back.
    pub hours_h: f64,
}

/// Hours at a depth of discharge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DepthPoint {
    /// Below full, 10 to 100.
    pub depth_percent: f64,
    /// From the plan's start charge; 0 where that is not above it.
    pub hours_h: f64,
}

/// Whether the curves over bank and depth are worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Curves {
    /// They are.
    Drawn,
    /// They stay empty.
    Left,
}

/// Answers one run: places of the bank, the unit and its mode in the plan, which is to be
/// without errors there. What there is to say is pushed onto `findings`. Nothing where pack
/// or job cannot be made.
pub fn run_answer(
    plan: &Plan,
    (bank, unit, mode): (usize, usize, usize),
    curves: Curves,
    findings: &mut Vec<Finding>,
) -> Option<RunAnswer> {
    let pack = assemble::warm_pack(plan, bank)?.pack;
    let assembled = assemble::job(plan, bank, unit, mode, &pack)?;
    findings.extend(assembled.findings);
    mismatch(plan, bank, unit, findings);
    standby_above_draw(plan, unit, mode, findings);
    let job = assembled.job;
    let (from, to) = held_span(plan, bank)?;
    let run = run_down(&pack, &job, from, to);
    rate_not_measured(plan, bank, &run, findings);
    fast_lead_acid(plan, bank, &run, findings);
    let paths = paths(bank, unit, mode, plan);
    let (band, spread_from) = spread::band(plan, &paths, |plan| {
        hours(plan, bank, unit, mode).unwrap_or(0.0)
    });
    // The hours alone differ in the ninth digit from those of the run that is followed.
    let hours_h = band.about(run.hours);
    let (first, last) = (run.knots.first().copied(), run.knots.last().copied());
    let per_hour = |sum: f64| {
        if run.hours > 0.0 {
            sum / run.hours
        } else {
            0.0
        }
    };
    let (by_bank, by_depth) = match curves {
        Curves::Drawn => (by_bank(&pack, &job, from, to), by_depth(&pack, &job, from)),
        Curves::Left => Default::default(),
    };
    Some(RunAnswer {
        bank,
        unit,
        mode,
        hours_h,
        stop: run.stop,
        drawn_ah: run.ah,
        drawn_wh: run.wh,
        unit_wh: run.unit_wh,
        lost_wh: run.lost_wh,
        mean_w: per_hour(run.wh),
        mean_a: per_hour(run.ah),
        first_a: first.map_or(0.0, |knot| knot.amps),
        last_a: last.map_or(0.0, |knot| knot.amps),
        first_v: first.map_or(0.0, |knot| knot.volts),
        last_v: last.map_or(0.0, |knot| knot.volts),
        trace: trace(&run),
        by_bank,
        by_depth,
        spread_from,
        working: working::of_run(&run, &pack, from, to),
    })
}

/// A direct unit on a bank of another system voltage.
fn mismatch(plan: &Plan, bank: usize, unit: usize, findings: &mut Vec<Finding>) {
    let (the_unit, the_bank) = (&plan.units[unit], &plan.banks[bank]);
    let (Feed::Direct, Some(supply_v)) = (&the_unit.feed, the_unit.supply_v) else {
        return;
    };
    let bank_v = the_bank.nominal_v();
    if (supply_v / bank_v - 1.0).abs() > assemble::SAME_SYSTEM {
        findings.push(Finding::caution(
            Some(Path::Unit(unit, U::SupplyV)),
            Matter::SupplyMismatch { supply_v, bank_v },
        ));
    }
}

/// A mode that takes more while its compressor rests than while it runs: one of
/// the two numbers is likely typed into the wrong field.
fn standby_above_draw(plan: &Plan, unit: usize, mode: usize, findings: &mut Vec<Finding>) {
    let path = Path::Mode(unit, mode, M::StandbyW);
    let (Some(standby_w), Some(the_mode)) = (plan.number(path), plan.mode(unit, mode)) else {
        return;
    };
    let draw_w = the_mode.draw.nominal_w();
    if standby_w > draw_w {
        let matter = Matter::StandbyAboveDraw { standby_w, draw_w };
        findings.push(Finding::caution(Some(path), matter));
    }
}

/// Below this rate what cells drop is small whatever they are, 1/h.
const SLOW_PER_H: f64 = 0.1;

/// A draw faster than anybody measured these cells at, said once for a bank.
fn rate_not_measured(plan: &Plan, bank: usize, run: &Run, findings: &mut Vec<Finding>) {
    let the_bank = &plan.banks[bank];
    let ah = the_bank.battery_rated_ah.value * f64::from(the_bank.parallel_count);
    let path = Path::Bank(bank, B::PolarisationPercent);
    let is_taken = plan.number(path).is_some_and(|percent| percent > 0.0);
    let (Some(measured_per_h), Some(first), true) = (
        the_bank.chemistry.data().rates.measured_to_per_h(),
        run.knots.first(),
        is_taken,
    ) else {
        return;
    };
    let rate_per_h = first.amps / ah;
    let is_said = findings.iter().any(|finding| {
        finding.field == Some(path) && matches!(finding.matter, Matter::RateNotMeasured { .. })
    });
    if rate_per_h > measured_per_h.max(SLOW_PER_H) && !is_said {
        let matter = Matter::RateNotMeasured {
            rate_per_h,
            measured_per_h,
        };
        findings.push(Finding::note(Some(path), matter));
    }
}

/// Up to here rate tables of lead-acid batteries are met within 15 % by the usual
/// exponent, 1/h; beyond, all of them give less (`tests/published/lead_rates.rs`).
const FAST_LEAD_ACID_PER_H: f64 = 0.33;

/// A draw faster than the usual exponent is good for, said once for a bank. Who states
/// an exponent, or a run of the bank, knows better.
fn fast_lead_acid(plan: &Plan, bank: usize, run: &Run, findings: &mut Vec<Finding>) {
    let the_bank = &plan.banks[bank];
    let path = Path::Bank(bank, B::PeukertExponent);
    let is_stated = plan.stated(path).is_some() || the_bank.is_measured();
    let Some(first) = run.knots.first().filter(|_| !is_stated) else {
        return;
    };
    let ah = the_bank.battery_rated_ah.value * f64::from(the_bank.parallel_count);
    let rate_per_h = first.amps / ah;
    let is_said = findings.iter().any(|finding| {
        finding.field == Some(path) && matches!(finding.matter, Matter::FastLeadAcid { .. })
    });
    if the_bank.chemistry.is_lead_acid() && rate_per_h > FAST_LEAD_ACID_PER_H && !is_said {
        let matter = Matter::FastLeadAcid { rate_per_h };
        findings.push(Finding::note(Some(path), matter));
    }
}

/// The addresses that a run's hours depend on, with a spread.
fn paths(bank: usize, unit: usize, mode: usize, plan: &Plan) -> Vec<Path> {
    let mut paths: Vec<Path> = BANK_PATHS
        .iter()
        .map(|&field| Path::Bank(bank, field))
        .collect();
    paths.extend(UNIT_PATHS.iter().map(|&field| Path::Unit(unit, field)));
    paths.extend(
        MODE_PATHS
            .iter()
            .map(|&field| Path::Mode(unit, mode, field)),
    );
    paths.extend((0..plan.loads.len()).map(Path::Load));
    // Nobody's guess where it is not stated: the run is then of a warm bank.
    paths.push(Path::Supply(S::BankC));
    let the_bank = &plan.banks[bank];
    let is_measured = the_bank.is_measured();
    paths.retain(|&path| match path {
        // What was measured replaces what the label says.
        Path::Bank(_, B::BatteryRatedAh | B::HealthPercent) => !is_measured,
        Path::Bank(_, B::PeukertExponent) => the_bank.chemistry.is_lead_acid(),
        // A cable that is said is that one; and where none is, it is none.
        Path::Unit(_, U::CableLengthM) => plan.stated(path).is_none(),
        Path::Unit(_, U::CableAreaMm2) => {
            let length_m = plan.number(Path::Unit(unit, U::CableLengthM));
            plan.stated(path).is_none() && length_m > Some(0.0)
        }
        _ => true,
    });
    paths
}

const BANK_PATHS: [B; 10] = [
    B::BatteryRatedAh,
    B::HealthPercent,
    B::StartChargePercent,
    B::CutoffV,
    B::BatteryResistanceMohm,
    B::PolarisationPercent,
    B::PeukertExponent,
    B::ParasiticW,
    B::MeasuredAh,
    B::MeasuredWh,
];
const UNIT_PATHS: [U; 8] = [
    U::CableAreaMm2,
    U::CutoffV,
    U::EfficiencyPercent,
    U::IdleW,
    U::NoLoadW,
    U::ProportionalLossPercent,
    U::SquareLossPercentPerKw,
    U::InverterCutoffV,
];
const MODE_PATHS: [M; 4] = [M::PowerW, M::CurrentA, M::DutyPercent, M::StandbyW];

fn trace(run: &Run) -> Vec<TracePoint> {
    run.knots
        .iter()
        .map(|knot| TracePoint {
            hours_h: knot.hours,
            charge_percent: 100.0 * knot.held,
            terminal_v: knot.volts,
            bank_a: knot.amps,
        })
        .collect()
}

/// Sizes of bank drawn, as shares of the present one.
const SIZES: [f64; 13] = [
    0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 1.75, 2.0, 2.25, 2.5, 3.0, 3.5, 4.0,
];

/// The same batteries, more or fewer side by side; a fraction of one is allowed for a curve.
fn by_bank(pack: &Pack, job: &Job, from: f64, to: f64) -> Vec<CurvePoint> {
    SIZES
        .iter()
        .map(|&size| {
            let pack = pack.times(size);
            CurvePoint {
                bank_ah: pack.held_ah(),
                hours_h: hours_down(&pack, job, from, to),
            }
        })
        .collect()
}

/// Hours at every tenth of depth, from the start's charge: read off one run to
/// empty, whose marks stand at every twentieth.
fn by_depth(pack: &Pack, job: &Job, from: f64) -> Vec<DepthPoint> {
    let run = run_down(pack, job, from, 0.0);
    (1..=10)
        .map(|tenth| {
            let depth_percent = f64::from(tenth) * 10.0;
            let held = 1.0 - depth_percent / 100.0;
            let hours_h = if held >= from {
                0.0
            } else {
                run.hours_to(held)
            };
            DepthPoint {
                depth_percent,
                hours_h,
            }
        })
        .collect()
}
