//! One sentence under each chart: what it shows of this plan.

use super::answers::{bank_line, extremes, mode_name, plain_hours, run_title, within_sentence};
use crate::text::{Formatter, m};
use crate::{
    answer::{Answer, RunAnswer},
    plan::Plan,
};

fn mode_of(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    within_sentence(plan, mode_name(f, plan, run.unit, run.mode))
}

/// Hours against the size of the bank.
#[must_use]
pub fn by_bank_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some(run) = answer.runs.iter().find(|run| run.by_bank.len() > 1) else {
        return String::new();
    };
    let mode = mode_of(f, plan, run);
    let now = run.hours_h.likely;
    let double = run.by_bank.iter().find(|point| {
        answer
            .banks
            .iter()
            .any(|bank| bank.bank == run.bank && point.bank_ah >= 1.999 * bank.held_ah)
    });
    let hours = plain_hours(f, now);
    match double {
        Some(point) if now > 0.0 => f.say(m::ChartTwiceTheBank {
            mode,
            double: plain_hours(f, point.hours_h),
            now: hours,
        }),
        _ => f.say(m::ChartThisBank { mode, hours }),
    }
}

/// Hours against depth of discharge.
#[must_use]
pub fn by_depth_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some(run) = answer.runs.first() else {
        return String::new();
    };
    let at = |depth: f64| {
        let hours = run
            .by_depth
            .iter()
            .find(|point| point.depth_percent >= depth - 0.1)
            .map_or(0.0, |point| point.hours_h);
        plain_hours(f, hours)
    };
    f.say(m::ChartByDepth {
        mode: mode_of(f, plan, run),
        half: at(50.0),
        whole: at(100.0),
    })
}

/// State of charge along the run.
#[must_use]
pub fn charge_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some((short, long)) = extremes(answer) else {
        return String::new();
    };
    let facts = answer.banks.first().map(|bank| bank_line(f, bank));
    let order = (short != long).then(|| {
        f.say(m::ChartLongestShortest {
            longest: run_title(f, plan, answer, long),
            shortest: run_title(f, plan, answer, short),
        })
    });
    let sentences: Vec<String> = facts.into_iter().chain(order).collect();
    sentences.join(" ")
}

/// Terminal volts along the run.
#[must_use]
pub fn volts_takeaway(f: Formatter, plan: &Plan, answer: &Answer) -> String {
    let Some((short, _)) = extremes(answer) else {
        return String::new();
    };
    f.say(m::ChartVolts {
        mode: mode_of(f, plan, short),
        first: f.with_unit(short.first_v, "V"),
        last: f.with_unit(short.last_v, "V"),
    })
}
