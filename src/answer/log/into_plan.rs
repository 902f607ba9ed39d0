//! The way of a log's figures into the plan: a mode's draw, a measured bank, and
//! claims to judge.

use super::{report::LogReport, stretch::StretchFigures};
use crate::{
    physics::bench::run_end::Cause,
    plan::{
        Claim, Draw, Figure, Plan,
        claims::{Claimed, EndBy},
    },
    range,
};

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
/// goes. A log without volts gives amperes, which are taken for the first
/// bank's nominal volts. Returns whether it could be.
pub fn to_mode(plan: &mut Plan, unit: usize, mode: usize, stretch: &StretchFigures) -> bool {
    let range = if stretch.is_amps {
        range::DRAW_A
    } else {
        range::DRAW_W
    };
    let known = stretch.expanded;
    let measured = known.and_then(|u| figure(stretch.draw, Some(u), range));
    let measured_at_v = plan.banks.first().map(|bank| bank.nominal_v());
    let mode = plan.units.get_mut(unit).and_then(|u| u.modes.get_mut(mode));
    let (Some(measured), Some(measured_at_v), Some(mode)) = (measured, measured_at_v, mode) else {
        return false;
    };
    mode.draw = if stretch.is_amps {
        Draw::Current {
            current_a: measured,
            measured_at_v,
        }
    } else {
        Draw::Power { power_w: measured }
    };
    (mode.duty_percent, mode.standby_w) = (None, None);
    true
}

/// Makes the totals the measured bank, a figure only where its accuracy can be claimed, and
/// the mean watts its load. Returns whether there was anything; if not, the plan stays.
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
/// both by this name. One that was not measured, or for which the plan has no room, is left
/// out.
pub fn to_claims(plan: &mut Plan, bank: usize, report: &LogReport, name: &str) {
    let Some(the_bank) = plan.banks.get(bank) else {
        return;
    };
    let ah = the_bank.battery_rated_ah.value * f64::from(the_bank.parallel_count);
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
