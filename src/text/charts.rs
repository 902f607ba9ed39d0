//! One sentence under each chart: what it shows of this plan.

use super::answers::{bank_line, extremes, mode_name, plain_hours};
use crate::text::Formatter;
use crate::{answer::Answer, plan::Plan};

/// Hours against the size of the bank.
#[must_use]
pub fn by_bank_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some(run) = answer.runs.iter().find(|run| run.by_bank.len() > 1) else {
        return String::new();
    };
    let name = mode_name(f, plan, run.unit, run.mode);
    let now = run.hours_h.likely;
    let double = run.by_bank.iter().find(|point| {
        answer
            .banks
            .iter()
            .any(|bank| bank.bank == run.bank && point.bank_ah >= 1.999 * bank.held_ah)
    });
    match double {
        Some(point) if now > 0.0 => format!(
            "Twice the bank runs {name} {} instead of {}: a little over twice, because the voltage sags less.",
            plain_hours(f, point.hours_h),
            plain_hours(f, now)
        ),
        _ => format!("On this bank {name} runs {}.", plain_hours(f, now)),
    }
}

/// Hours against depth of discharge.
#[must_use]
pub fn by_depth_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some(run) = answer.runs.first() else {
        return String::new();
    };
    let name = mode_name(f, plan, run.unit, run.mode);
    let at = |depth: f64| {
        run.by_depth
            .iter()
            .find(|point| point.depth_percent >= depth - 0.1)
            .map_or(0.0, |p| p.hours_h)
    };
    format!(
        "Half the bank is {} of {name}; all of it {}.",
        plain_hours(f, at(50.0)),
        plain_hours(f, at(100.0))
    )
}

/// State of charge along the run.
#[must_use]
pub fn charge_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some((short, long)) = extremes(answer) else {
        return String::new();
    };
    let facts = answer
        .banks
        .first()
        .map(|bank| bank_line(f, bank))
        .unwrap_or_default();
    if short == long {
        return format!("{facts}.");
    }
    format!(
        "{facts}. {} lasts longest, {} shortest.",
        mode_name(f, plan, long.unit, long.mode),
        mode_name(f, plan, short.unit, short.mode)
    )
}

/// Terminal volts along the run.
#[must_use]
pub fn volts_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some((short, _)) = extremes(answer) else {
        return String::new();
    };
    format!(
        "Running {}, the bank’s terminals go from {} to {} as it empties.",
        mode_name(f, plan, short.unit, short.mode),
        f.with_unit(short.first_v, "V"),
        f.with_unit(short.last_v, "V")
    )
}
