//! What to know of recharging, a sentence each.

use super::charger_name;
use crate::{
    answer::{
        RefillAnswer,
        refill::{RefillMatter as R, RefillNote},
    },
    plan::Plan,
    range::Unit,
    simulate::charge::MOST_H,
    text::{Formatter, m},
};

/// Whether there is nothing to charge by.
pub(super) fn is_without_source(answer: &RefillAnswer) -> bool {
    let first = answer.notes.first();
    first.is_some_and(|note| matches!(note.matter, R::NoSource))
}

/// A note as a sentence; nothing for what the headline says.
#[must_use]
pub fn note(f: Formatter, plan: &Plan, answer: &RefillAnswer, note: &RefillNote) -> Option<String> {
    match charger_of(&note.matter) {
        Some(at) => {
            let found = answer.chargers.iter().find(|one| one.charger == at);
            let name = found.map_or_else(String::new, |one| charger_name(f, plan, one));
            of_charger(f, name, note.matter)
        }
        None => of_bank(f, note.matter),
    }
}

fn of_bank(f: Formatter, matter: R) -> Option<String> {
    Some(match matter {
        R::NoCharger => f.say(m::ChargingNoCharger).into(),
        R::NoPanels => f.say(m::ChargingNoPanels).into(),
        R::TooCold { bank_c, least_c } => f.say(m::ChargingTooCold {
            bank: f.temperature(bank_c),
            limit: f.temperature(least_c),
        }),
        R::ColdAtTimes { bank_c, least_c } => f.say(m::ChargingColdAtTimes {
            bank: f.temperature(bank_c),
            limit: f.temperature(least_c),
        }),
        R::TooHot { bank_c, most_c } => f.say(m::ChargingTooHot {
            bank: f.temperature(bank_c),
            limit: f.temperature(most_c),
        }),
        R::NothingToFill {
            from_percent,
            to_percent,
        } => f.say(m::ChargingNothingToFill {
            from: f.percent(from_percent),
            goal: f.percent(to_percent),
        }),
        R::NoDay => f.say(m::ChargingNoDay).into(),
        R::NoSource
        | R::TooWeak { .. }
        | R::TooWeakForCooling { .. }
        | R::EndsBelow { .. }
        | R::TakesTooLong { .. }
        | R::FuelRunsOut { .. }
        | R::WindowTooShort { .. }
        | R::Derated { .. }
        | R::SourceLimits { .. }
        | R::AboveBankLimit { .. } => return None,
    })
}

fn of_charger(f: Formatter, charger: String, matter: R) -> Option<String> {
    let amps = |value| f.with_unit(value, "A");
    let fuel = |liters| f.value(liters, Unit::Liter);
    Some(match matter {
        R::TooWeak {
            charger_a,
            beside_a,
            ..
        } => f.say(m::ChargingTooWeak {
            charger,
            loads: amps(beside_a),
            current: amps(charger_a),
        }),
        R::TooWeakForCooling {
            reached_percent, ..
        } => f.say(m::ChargingWeakCooling {
            charger,
            percent: f.percent(reached_percent),
        }),
        R::EndsBelow {
            reached_percent, ..
        } => f.say(m::ChargingEndsBelow {
            charger,
            percent: f.percent(reached_percent),
        }),
        R::TakesTooLong { .. } => f.say(m::ChargingTakesLong {
            charger,
            time: f.duration(MOST_H),
        }),
        R::FuelRunsOut {
            needed_l,
            at_hand_l,
            ..
        } => f.say(m::ChargingFuelShort {
            charger,
            needed: fuel(needed_l),
            available: fuel(at_hand_l),
        }),
        R::WindowTooShort {
            daily_h, needed_h, ..
        } => f.say(m::ChargingWindow {
            charger,
            daily: f.duration(daily_h),
            days: (needed_h / daily_h).ceil(),
        }),
        R::Derated {
            air_c,
            left_percent,
            ..
        } => f.say(m::ChargingDerated {
            charger,
            air: f.temperature(air_c),
            percent: f.percent(left_percent),
        }),
        R::SourceLimits {
            source_w,
            charger_a,
            ..
        } => f.say(m::ChargingSourceLimits {
            charger,
            power: f.with_unit(source_w, "W"),
            current: amps(charger_a),
        }),
        R::AboveBankLimit {
            most_a, limit_a, ..
        } => f.say(m::ChargingAboveLimit {
            charger,
            current: amps(most_a),
            limit: amps(limit_a),
        }),
        R::NoSource
        | R::NoCharger
        | R::NoPanels
        | R::TooCold { .. }
        | R::ColdAtTimes { .. }
        | R::TooHot { .. }
        | R::NothingToFill { .. }
        | R::NoDay => return None,
    })
}

/// The charger that a note is of, by its place in the plan.
#[must_use]
pub const fn charger_of(matter: &R) -> Option<usize> {
    match *matter {
        R::TooWeak { charger, .. }
        | R::TooWeakForCooling { charger, .. }
        | R::EndsBelow { charger, .. }
        | R::TakesTooLong { charger }
        | R::FuelRunsOut { charger, .. }
        | R::WindowTooShort { charger, .. }
        | R::Derated { charger, .. }
        | R::SourceLimits { charger, .. }
        | R::AboveBankLimit { charger, .. } => Some(charger),
        _ => None,
    }
}
