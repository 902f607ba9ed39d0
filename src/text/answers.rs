//! The answer in sentences.

use crate::text::Formatter;
use crate::{
    answer::{Answer, BankFacts, RunAnswer},
    plan::Plan,
    simulate::Stop,
    study::sizing::{Found, NeededBank, Sizing},
};

/// The user's own name of a mode.
#[must_use]
pub fn mode_name(_f: Formatter, plan: &Plan, unit: usize, mode: usize) -> String {
    let name = plan.mode(unit, mode).map_or("", |mode| mode.name.trim());
    if name.is_empty() {
        format!("Mode {}", mode + 1)
    } else {
        name.into()
    }
}

/// The user's own name of a unit.
#[must_use]
pub fn unit_name(_f: Formatter, plan: &Plan, unit: usize) -> String {
    let name = plan.units.get(unit).map_or("", |unit| unit.name.trim());
    if name.is_empty() {
        format!("Unit {}", unit + 1)
    } else {
        name.into()
    }
}

/// A bank's name: the user's own, or what it is made of.
#[must_use]
pub fn bank_in_words(f: Formatter, plan: &Plan, bank: usize) -> String {
    let Some(the_bank) = plan.banks.get(bank) else {
        return String::new();
    };
    if !the_bank.name.trim().is_empty() {
        return the_bank.name.trim().into();
    }
    let ah = the_bank.battery_rated_ah.value * f64::from(the_bank.parallel_count);
    format!(
        "{} {}",
        f.with_unit(the_bank.nominal_v(), "V"),
        f.with_unit(ah, "Ah")
    )
}

/// The first sentence of the page: what one run comes to.
#[must_use]
pub fn run_sentence(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let name = mode_name(f, plan, run.unit, run.mode);
    let hours = run.hours_h.likely;
    if hours <= 0.0 {
        return format!("{name} does not start: {}.", stop_phrase(f, &run.stop));
    }
    if hours >= WITHIN_A_DAY_H {
        return format!("{name} runs {}.", f.duration(hours));
    }
    let until = f.clock_after(plan.night.start_clock_min, hours);
    format!("{name} runs {}, until about {until}.", f.duration(hours))
}

/// Beyond this a clock time alone would be read as tomorrow's.
pub(super) const WITHIN_A_DAY_H: f64 = 22.0;

/// How sure that is, and what ends it.
#[must_use]
pub fn run_detail(f: Formatter, run: &RunAnswer) -> String {
    if run.hours_h.likely <= 0.0 {
        return String::new();
    }
    format!(
        "{} to {}, by how well the numbers are known. It ends {}.",
        f.duration(run.hours_h.low),
        f.duration(run.hours_h.high),
        stop_phrase(f, &run.stop)
    )
}

/// One run beside its bar: hours and the end's clock time.
#[must_use]
pub fn run_short(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    match run.hours_h.likely {
        hours if hours <= 0.0 => "does not start".into(),
        hours if hours < WITHIN_A_DAY_H => {
            format!(
                "{}, to {}",
                f.duration(hours),
                f.clock_after(plan.night.start_clock_min, hours)
            )
        }
        hours => f.duration(hours),
    }
}

/// How a run ends, after "It ends" or "does not start:".
#[must_use]
pub fn stop_phrase(f: Formatter, stop: &Stop) -> String {
    match *stop {
        Stop::ChargeFloor { kept_percent } if kept_percent < 0.5 => "when the bank is empty".into(),
        Stop::ChargeFloor { kept_percent } => {
            format!(
                "at the {} that you keep back",
                f.with_unit(kept_percent, "%")
            )
        }
        Stop::OwnCutOff { cutoff_v } => {
            format!(
                "at the battery’s own cut-off, {}",
                f.with_unit(cutoff_v, "V")
            )
        }
        Stop::CurrentLimit { limit_a } => {
            format!("at the bank’s current limit, {}", f.with_unit(limit_a, "A"))
        }
        Stop::UnitCutOff { cutoff_v } => {
            format!(
                "at the unit’s own cut-off, {} at its terminals",
                f.with_unit(cutoff_v, "V")
            )
        }
        Stop::InverterCutOff { cutoff_v } => {
            format!(
                "at the inverter’s cut-off, {} at its input",
                f.with_unit(cutoff_v, "V")
            )
        }
        Stop::InverterLimit { limit_w } => {
            format!("the inverter gives at most {}", f.with_unit(limit_w, "W"))
        }
        Stop::ConverterLimit { limit_a } => {
            format!("the converter gives at most {}", f.with_unit(limit_a, "A"))
        }
        Stop::NoCurrentCarriesIt => {
            "where no current can carry the power through the cable and the bank".into()
        }
    }
}

/// What was asked, answered in a sentence.
#[must_use]
pub fn sizing_sentence(f: Formatter, plan: &Plan, sizing: &Sizing) -> String {
    let name = mode_name(f, plan, sizing.unit, sizing.mode);
    let wanted = f.duration(sizing.wanted_h);
    match &sizing.found {
        Found::Hours { hours_h } => format!("{name} runs {} on this bank.", f.duration(*hours_h)),
        // The Ah that the count was rounded up from: one number, one meaning. What
        // a new bank would need with nothing in reserve stands in the table below.
        Found::Bank(needed) => format!(
            "{name} for {wanted} needs {} ({}) with ageing and margin: {}.",
            f.with_unit(needed.with_reserve_ah, "Ah"),
            f.with_unit(needed.with_reserve_wh, "Wh"),
            batteries_in_words(f, needed)
        ),
        Found::Draw { draw, unit } => format!(
            "For {wanted} on this bank {name} may draw {} at the most.",
            f.value(*draw, *unit)
        ),
        Found::Depth { depth_percent } => format!(
            "For {wanted} of {name} this bank goes {} down.",
            f.with_unit(*depth_percent, "%")
        ),
        Found::None => format!("Nothing within reach gives {wanted} of {name}."),
    }
}

/// The whole batteries that carry it, with their reserve.
#[must_use]
pub fn batteries_in_words(_f: Formatter, needed: &NeededBank) -> String {
    let batteries = if needed.batteries_count == 1 {
        "battery like this one"
    } else {
        "batteries like these"
    };
    let layout = match (needed.series_count, needed.parallel_count) {
        (1, 1) => String::new(),
        (1, parallel) => format!(" ({parallel} in parallel)"),
        (series, 1) => format!(" ({series} in series)"),
        (series, parallel) => format!(" ({series} in series, {parallel} strings)"),
    };
    format!("{} {batteries}{layout}", needed.batteries_count)
}

/// A run's name beside its bar: the mode, and the bank or unit where there are several.
#[must_use]
pub fn run_title(f: Formatter, plan: &Plan, answer: &Answer, run: &RunAnswer) -> String {
    let mut title = full_mode_name(f, plan, run.unit, run.mode);
    if plan.banks.len() > 1 && answer.banks.len() > 1 {
        title = format!("{title}, {}", bank_in_words(f, plan, run.bank));
    }
    title
}

/// What a bank is, holds and gives, under its fields.
#[must_use]
pub fn bank_sentence(f: Formatter, facts: &BankFacts) -> String {
    let measured = match (
        facts.measured_of_rated_ah_percent,
        facts.measured_of_rated_wh_percent,
    ) {
        (Some(ah), Some(wh)) => format!(
            " Measured: {} of the labelled charge, {} of the labelled energy.",
            percent(f, ah),
            percent(f, wh)
        ),
        (Some(ah), None) => format!(" Measured: {} of the labelled charge.", percent(f, ah)),
        (None, Some(wh)) => format!(" Measured: {} of the labelled energy.", percent(f, wh)),
        (None, None) => String::new(),
    };
    let batteries = if facts.batteries_count == 1 {
        "battery"
    } else {
        "batteries"
    };
    format!(
        "{} {batteries}, {}, {} by the label; {} and {} of it to use.{measured}",
        facts.batteries_count,
        f.with_unit(facts.nominal_v, "V"),
        f.with_unit(facts.rated_wh, "Wh"),
        f.with_unit(facts.usable_ah, "Ah"),
        f.with_unit(facts.usable_wh, "Wh")
    )
}

fn percent(f: Formatter, value: f64) -> String {
    format!("{}\u{202f}%", f.fixed(value, 1))
}

/// Hours of the chosen batteries, new and aged.
#[must_use]
pub fn new_and_aged(f: Formatter, new_h: f64, aged_h: f64) -> String {
    format!(
        "{} when new, {} when aged",
        f.duration(new_h),
        f.duration(aged_h)
    )
}

/// A title with its number where there are several.
#[must_use]
pub fn numbered(title: &str, index: usize, count: usize) -> String {
    if count > 1 {
        format!("{title} {}", index + 1)
    } else {
        title.into()
    }
}

/// A mode's name, with its unit's where there are several.
#[must_use]
pub fn full_mode_name(f: Formatter, plan: &Plan, unit: usize, mode: usize) -> String {
    let name = mode_name(f, plan, unit, mode);
    if plan.units.len() > 1 {
        format!("{name}, {}", unit_name(f, plan, unit))
    } else {
        name
    }
}

/// A sizing's sentence, with its bank's name where there are several.
#[must_use]
pub fn sizing_answer(f: Formatter, plan: &Plan, sizing: &Sizing) -> String {
    let sentence = sizing_sentence(f, plan, sizing);
    if plan.banks.len() > 1 {
        format!("{}: {sentence}", bank_in_words(f, plan, sizing.bank))
    } else {
        sentence
    }
}

/// A source after its sentence.
#[must_use]
pub fn in_brackets(source: &str) -> String {
    format!(" ({source})")
}

/// The fold of how a unit is fed.
#[must_use]
pub fn feed_title(_f: Formatter, unit: &str) -> String {
    format!("{unit}: feed and cable")
}

/// The fold of a mode's duty.
#[must_use]
pub fn duty_title(_f: Formatter, mode: &str) -> String {
    format!("{mode}: time on and standby")
}

/// One input's part in the spread.
#[must_use]
pub fn share_sentence(f: Formatter, share: &crate::study::spread::Share) -> String {
    format!(
        "{}: {} (may cost {}, may gain {})",
        super::field_label(f, share.field),
        share_in_words(f, share.share_percent),
        f.duration(share.lost_h),
        f.duration(share.gained_h)
    )
}

/// Whose uncertainty makes the band, in words.
fn share_in_words(_f: Formatter, share_percent: f64) -> &'static str {
    match share_percent {
        60.0.. => "most of it",
        30.0.. => "much of it",
        10.0.. => "some of it",
        _ => "a little",
    }
}

/// What a bank holds and gives, in one line.
pub(super) fn bank_line(f: Formatter, facts: &BankFacts) -> String {
    format!(
        "{} held, {} of it to use, {} nominal",
        f.with_unit(facts.held_ah, "Ah"),
        f.with_unit(facts.usable_wh, "Wh"),
        f.with_unit(facts.nominal_v, "V")
    )
}

/// The longest and the shortest run of an answer, for takeaways.
pub(super) fn extremes(answer: &Answer) -> Option<(&RunAnswer, &RunAnswer)> {
    let by_hours = |a: &&RunAnswer, b: &&RunAnswer| a.hours_h.likely.total_cmp(&b.hours_h.likely);
    Some((
        answer.runs.iter().min_by(by_hours)?,
        answer.runs.iter().max_by(by_hours)?,
    ))
}

/// A number for a sentence about a chart.
pub(super) fn plain_hours(f: Formatter, hours: f64) -> String {
    if hours >= 10.0 {
        format!("{}\u{202f}h", f.plain(hours.round()))
    } else {
        f.duration(hours)
    }
}
