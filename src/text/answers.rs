//! The answer in sentences.

use crate::text::{Formatter, m, number};
use crate::{
    answer::{Answer, BankFacts, RunAnswer},
    plan::Plan,
    simulate::Stop,
    study::sizing::{Found, NeededBank, Sizing},
};

/// The user's own name of a mode; where there is but one and nobody has named it, it is
/// the unit itself.
#[must_use]
pub fn mode_name(f: Formatter, plan: &Plan, unit: usize, mode: usize) -> String {
    let name = plan.mode(unit, mode).map_or("", |mode| mode.name.trim());
    if !name.is_empty() {
        return name.into();
    }
    match only_unit(plan) {
        Some("") => f.say(m::ModeOnly).into(),
        Some(unit) => unit.into(),
        None => f.say(m::ModeNumbered { number: mode + 1 }),
    }
}

/// The name of the unit where there is but one of one mode, and nobody has named the mode.
fn only_unit(plan: &Plan) -> Option<&str> {
    let [unit] = &*plan.units else {
        return None;
    };
    let is_unnamed = matches!(&*unit.modes, [mode] if mode.name.trim().is_empty());
    is_unnamed.then(|| unit.name.trim())
}

/// Whether neither the only mode nor its unit has a name: no sentence needs one.
pub(in crate::text) fn is_unnamed(plan: &Plan) -> bool {
    only_unit(plan) == Some("")
}

/// What stands for the only mode, unnamed, in a message: the catalogue says "the cooling
/// unit" there, with the article and the case that its sentence wants.
const THE_UNIT: &str = "the-unit";

/// A mode as a message names it within a sentence, of its name elsewhere.
pub(in crate::text) fn within_sentence(plan: &Plan, name: String) -> String {
    if is_unnamed(plan) {
        THE_UNIT.into()
    } else {
        name
    }
}

/// A mode within a sentence: only for messages that know what to make of it.
#[must_use]
pub fn mode_in_sentence(f: Formatter, plan: &Plan, unit: usize, mode: usize) -> String {
    within_sentence(plan, full_mode_name(f, plan, unit, mode))
}

/// The user's own name of a unit.
#[must_use]
pub fn unit_name(f: Formatter, plan: &Plan, unit: usize) -> String {
    let name = plan.units.get(unit).map_or("", |unit| unit.name.trim());
    if name.is_empty() {
        f.say(m::UnitNumbered { number: unit + 1 })
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
    f.say(m::BankMadeOf {
        volts: f.with_unit(the_bank.nominal_v(), "V"),
        capacity: f.with_unit(ah, "Ah"),
    })
}

/// The first sentence of the page: what one run comes to.
#[must_use]
pub fn run_sentence(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let mode = within_sentence(plan, mode_name(f, plan, run.unit, run.mode));
    let hours_h = run.hours_h.likely;
    if hours_h <= 0.0 {
        let stop = stop_phrase(f, &run.stop);
        return f.say(m::RunNoStart { mode, stop });
    }
    let hours = f.duration(hours_h);
    if hours_h >= WITHIN_A_DAY_H {
        return f.say(m::RunLasts { mode, hours });
    }
    let clock = f.clock_after(plan.night.start_clock_min, hours_h);
    f.say(m::RunLastsUntil { mode, hours, clock })
}

/// Beyond this a clock time alone would be read as tomorrow's.
pub(super) const WITHIN_A_DAY_H: f64 = 22.0;

/// How sure that is, and what ends it.
#[must_use]
pub fn run_detail(f: Formatter, run: &RunAnswer) -> String {
    if run.hours_h.likely <= 0.0 {
        return String::new();
    }
    let (low, high) = f.duration_range(run.hours_h.low, run.hours_h.high);
    f.say(m::RunRange {
        low,
        high,
        stop: stop_phrase(f, &run.stop),
    })
}

/// One run beside its bar: hours and the end's clock time.
#[must_use]
pub fn run_short(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    match run.hours_h.likely {
        hours if hours <= 0.0 => f.say(m::RunShortNoStart).into(),
        hours if hours < WITHIN_A_DAY_H => f.say(m::RunShortUntil {
            hours: f.duration(hours),
            clock: f.clock_after(plan.night.start_clock_min, hours),
        }),
        hours => f.duration(hours),
    }
}

/// How a run ends: `at the 10 % reserve`.
#[must_use]
pub fn stop_phrase(f: Formatter, stop: &Stop) -> String {
    let volts = |value| f.with_unit(value, "V");
    let amps = |value| f.with_unit(value, "A");
    match *stop {
        Stop::ChargeFloor { kept_percent } if kept_percent < 0.5 => f.say(m::StopEmpty).into(),
        Stop::ChargeFloor { kept_percent } => f.say(m::StopReserve {
            percent: f.with_unit(kept_percent, "%"),
        }),
        Stop::OwnCutOff { cutoff_v } => f.say(m::StopBatteryCutOff {
            volts: volts(cutoff_v),
        }),
        Stop::CurrentLimit { limit_a } => f.say(m::StopCurrentLimit {
            amps: amps(limit_a),
        }),
        Stop::UnitCutOff { cutoff_v } => f.say(m::StopUnitCutOff {
            volts: volts(cutoff_v),
        }),
        Stop::InverterCutOff { cutoff_v } => f.say(m::StopInverterCutOff {
            volts: volts(cutoff_v),
        }),
        Stop::InverterLimit { limit_w } => f.say(m::StopInverterLimit {
            watts: f.with_unit(limit_w, "W"),
        }),
        Stop::ConverterLimit { limit_a } => f.say(m::StopConverterLimit {
            amps: amps(limit_a),
        }),
        Stop::NoCurrentCarriesIt => f.say(m::StopNoCurrent).into(),
    }
}

/// What was asked, answered in a sentence.
#[must_use]
pub fn sizing_sentence(f: Formatter, plan: &Plan, sizing: &Sizing) -> String {
    let mode = within_sentence(plan, mode_name(f, plan, sizing.unit, sizing.mode));
    let hours = f.duration(sizing.wanted_h);
    match &sizing.found {
        Found::Hours { hours_h } => f.say(m::SizingHours {
            mode,
            hours: f.duration(*hours_h),
        }),
        // The Ah that the count was rounded up from: one number, one meaning. What
        // a new bank would need with nothing in reserve stands in the table below.
        Found::Bank(needed) => f.say(m::SizingBank {
            mode,
            hours,
            capacity: f.with_unit(needed.with_reserve_ah, "Ah"),
            energy: f.with_unit(needed.with_reserve_wh, "Wh"),
            batteries: batteries_in_words(f, needed),
        }),
        Found::Draw { draw, unit } => f.say(m::SizingDraw {
            hours,
            mode,
            draw: f.value(*draw, *unit),
        }),
        Found::Depth { depth_percent } => f.say(m::SizingDepth {
            mode,
            hours,
            depth: f.with_unit(*depth_percent, "%"),
        }),
        Found::None => f.say(m::SizingNone { hours, mode }),
    }
}

/// The whole batteries that carry it, with their reserve.
#[must_use]
pub fn batteries_in_words(f: Formatter, needed: &NeededBank) -> String {
    let (series, parallel) = (needed.series_count, needed.parallel_count);
    let batteries = f.say(m::BatteriesLikeThese {
        count: needed.batteries_count,
    });
    match (series, parallel) {
        (1, 1) => batteries,
        (1, _) => f.say(m::BatteriesInParallel {
            batteries,
            parallel,
        }),
        (_, 1) => f.say(m::BatteriesInSeries { batteries, series }),
        _ => f.say(m::BatteriesInStrings {
            batteries,
            series,
            parallel,
        }),
    }
}

/// A run's name beside its bar: the mode, and the bank or unit where there are several.
#[must_use]
pub fn run_title(f: Formatter, plan: &Plan, answer: &Answer, run: &RunAnswer) -> String {
    let mode = full_mode_name(f, plan, run.unit, run.mode);
    if plan.banks.len() > 1 && answer.banks.len() > 1 {
        let bank = bank_in_words(f, plan, run.bank);
        f.say(m::RunOnBank { mode, bank })
    } else {
        mode
    }
}

/// What a bank is, holds and gives, under its fields.
#[must_use]
pub fn bank_sentence(f: Formatter, facts: &BankFacts) -> String {
    let percent = |value| number::with_sign(f.fixed(value, 1), "%");
    let measured = match (
        facts.measured_of_rated_ah_percent.map(percent),
        facts.measured_of_rated_wh_percent.map(percent),
    ) {
        (Some(ah), Some(wh)) => Some(f.say(m::BankMeasured { ah, wh })),
        (Some(ah), None) => Some(f.say(m::BankMeasuredCharge { ah })),
        (None, Some(wh)) => Some(f.say(m::BankMeasuredEnergy { wh })),
        (None, None) => None,
    };
    let is = f.say(m::BankFacts {
        count: facts.batteries_count,
        volts: f.with_unit(facts.nominal_v, "V"),
        energy: f.with_unit(facts.rated_wh, "Wh"),
        usable_ah: f.with_unit(facts.usable_ah, "Ah"),
        usable_wh: f.with_unit(facts.usable_wh, "Wh"),
    });
    match measured {
        Some(measured) => format!("{is} {measured}"),
        None => is,
    }
}

/// Hours of the chosen batteries, new and aged.
#[must_use]
pub fn new_and_aged(f: Formatter, new_h: f64, aged_h: f64) -> String {
    f.say(m::NewAndAged {
        new: f.duration(new_h),
        aged: f.duration(aged_h),
    })
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
        f.say(m::ModeOfUnit {
            mode: name,
            unit: unit_name(f, plan, unit),
        })
    } else {
        name
    }
}

/// A sizing's sentence, with its bank's name where there are several.
#[must_use]
pub fn sizing_answer(f: Formatter, plan: &Plan, sizing: &Sizing) -> String {
    let answer = sizing_sentence(f, plan, sizing);
    if plan.banks.len() > 1 {
        f.say(m::SizingOfBank {
            bank: bank_in_words(f, plan, sizing.bank),
            answer,
        })
    } else {
        answer
    }
}

/// A source after its sentence.
#[must_use]
pub fn in_brackets(source: &str) -> String {
    format!(" ({source})")
}

/// The fold of how a unit is fed.
#[must_use]
pub fn feed_title(f: Formatter, unit: &str) -> String {
    f.say(m::UnitSupplyTitle { unit })
}

/// The fold of a mode's duty.
#[must_use]
pub fn duty_title(f: Formatter, mode: &str) -> String {
    f.say(m::ModeDutyTitle { mode })
}

/// One input's part in the spread.
#[must_use]
pub fn share_sentence(f: Formatter, share: &crate::study::spread::Share) -> String {
    f.say(m::SpreadShare {
        share: match share.share_percent {
            60.0.. => "most",
            30.0.. => "much",
            10.0.. => "some",
            _ => "little",
        },
        field: super::field_label(f, share.field),
        lost: f.duration(share.lost_h),
        gained: f.duration(share.gained_h),
    })
}

/// What a bank holds and gives, in one line.
pub(super) fn bank_line(f: Formatter, facts: &BankFacts) -> String {
    f.say(m::BankHolds {
        capacity: f.with_unit(facts.held_ah, "Ah"),
        usable: f.with_unit(facts.usable_wh, "Wh"),
        volts: f.with_unit(facts.nominal_v, "V"),
    })
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
        f.with_unit(hours.round(), "h")
    } else {
        f.duration(hours)
    }
}
