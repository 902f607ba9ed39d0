//! How much is enough, and the longest cool night, in words.

use super::Calendar;
use crate::text::{Formatter, m};
use crate::{
    answer::day::{CoolPlan, DayFound, DaySizing, DayUnknown, LongestNight},
    plan::Plan,
    text::mode_in_sentence,
};

/// What may be asked for.
#[must_use]
pub fn unknown_name(f: Formatter, unknown: DayUnknown) -> &'static str {
    match unknown {
        DayUnknown::BankAh => f.say(m::DayUnknownBank),
        DayUnknown::PanelW => f.say(m::DayUnknownPanels),
        DayUnknown::ChargerA => f.say(m::DayUnknownCharger),
        DayUnknown::SetPointC => f.say(m::DayUnknownSetPoint),
        DayUnknown::HighC => f.say(m::DayUnknownHigh),
    }
}

fn amount(f: Formatter, unknown: DayUnknown, value: f64) -> String {
    match unknown {
        DayUnknown::BankAh => f.with_unit(value, "Ah"),
        DayUnknown::PanelW => f.with_unit(value, "W"),
        DayUnknown::ChargerA => f.with_unit(value, "A"),
        DayUnknown::SetPointC | DayUnknown::HighC => f.temperature(value),
    }
}

/// How much of one thing carries these days.
#[must_use]
pub fn enough_sentence(f: Formatter, plan: &Plan, sizing: &DaySizing) -> String {
    let until = Calendar::of(plan).until(f, sizing.goal_h);
    let unknown = sizing.unknown;
    match sizing.found {
        DayFound::Enough { value, .. } => {
            let value = amount(f, unknown, value);
            match unknown {
                DayUnknown::BankAh => f.say(m::DayEnoughBank { value, until }),
                DayUnknown::PanelW => f.say(m::DayEnoughPanels { value, until }),
                DayUnknown::ChargerA => f.say(m::DayEnoughCharger { value, until }),
                DayUnknown::SetPointC => f.say(m::DayEnoughSetPoint { value, until }),
                DayUnknown::HighC => f.say(m::DayEnoughHigh { value, until }),
            }
        }
        DayFound::Any { value, .. } => f.say(m::DayEnoughAny {
            kind: any_kind(plan, unknown, value),
            value: amount(f, unknown, value),
            until,
        }),
        DayFound::None { lasts: true } => f.say(m::DayEnoughUnitTooSmall { until }),
        DayFound::None { lasts: false } => f.say(m::DayEnoughNothing { until }),
    }
}

/// How it is said that even the least of it is enough: nothing is not an amount.
fn any_kind(plan: &Plan, unknown: DayUnknown, value: f64) -> &'static str {
    let is_none = value <= 0.0;
    match unknown {
        DayUnknown::PanelW if is_none && plan.supply.arrays.len() < 2 => "panels",
        DayUnknown::ChargerA if is_none && plan.supply.chargers.len() < 2 => "charger",
        DayUnknown::SetPointC => "set-point",
        DayUnknown::HighC => "high",
        _ => "other",
    }
}

/// A mode plan in one line: "from 21:00 Plunge, then from 23:40 Hush".
fn modes_said(f: Formatter, plan: &Plan, cool: &CoolPlan) -> String {
    let said = cool.modes.iter().map(|from| {
        let mode = from.mode.map_or_else(
            || f.say(m::DayModeOff).to_owned(),
            |at| mode_in_sentence(f, plan, at.unit, at.mode),
        );
        let clock = f.clock(f64::from(from.clock_min));
        f.say(m::DayModeFrom { mode, clock })
    });
    let said = said.reduce(|first, next| f.say(m::DayModesNext { first, next }));
    said.unwrap_or_default()
}

fn held(f: Formatter, plan: &Plan, night: &LongestNight, cool: &CoolPlan) -> String {
    if cool.held_h >= night.looked_h {
        return f.say(m::DayHeldAll {
            duration: f.duration(night.looked_h),
        });
    }
    let end = f64::from(plan.night.start_clock_min) + 60.0 * cool.held_h;
    f.say(m::DayHeldUntil {
        duration: f.duration(cool.held_h),
        clock: f.clock(end),
    })
}

/// The plan that holds longest.
#[must_use]
pub fn longest_sentence(f: Formatter, plan: &Plan, night: &LongestNight) -> String {
    let best = &night.best;
    let limit = f.temperature(night.limit_c);
    if best.held_h <= 0.0 {
        return f.say(m::DayLongestNever { limit });
    }
    f.say(m::DayLongestIs {
        limit,
        held: held(f, plan, night, best),
        modes: modes_said(f, plan, best),
        charge: f.percent(best.charge_percent),
    })
}

/// What each mode alone does beside it.
#[must_use]
pub fn alone_sentences(f: Formatter, plan: &Plan, night: &LongestNight) -> Vec<String> {
    let alone = night.alone.iter().map(|cool| {
        let mode = cool.modes.first().and_then(|from| from.mode);
        let name = mode.map_or_else(
            || f.say(m::DayAloneOpen).to_owned(),
            |at| {
                let mode = mode_in_sentence(f, plan, at.unit, at.mode);
                f.say(m::DayAloneMode { mode })
            },
        );
        if cool.held_h <= 0.0 {
            f.say(m::DayAloneNever { name })
        } else {
            let held = held(f, plan, night, cool);
            f.say(m::DayAloneHeld { name, held })
        }
    });
    alone.collect()
}

/// How good it is, plainly.
#[must_use]
pub fn longest_stands(f: Formatter, night: &LongestNight) -> String {
    let stands = f.say(m::DayLongestStands {
        switches: night.most_switches_count,
        minutes: f.with_unit(f64::from(night.grid_min), "min"),
        duration: f.duration(night.pull_down_h),
    });
    if night.is_cut_short {
        format!("{stands} {}", f.say(m::DayLongestCutShort))
    } else {
        stands
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::day::{longest_night, size_day};

    fn plain(text: &str) -> String {
        text.replace('\u{202f}', " ")
    }

    #[test]
    fn the_longest_night_names_its_modes_and_its_end() {
        let mut plan = Plan::demo();
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 40.0;
        let night = longest_night(&plan).unwrap();
        let text = plain(&longest_sentence(Formatter::ENGLISH, &plan, &night));
        assert!(text.contains("from 21:00"), "{text}");
        assert!(text.contains("At or below 26 °C"), "{text}");
        let alone = alone_sentences(Formatter::ENGLISH, &plan, &night);
        assert!(
            alone.iter().any(|one| one.starts_with("Hush alone")),
            "{alone:?}"
        );
        assert!(longest_stands(Formatter::ENGLISH, &night).contains("up to 2 changes of mode"));
    }

    #[test]
    fn every_unknown_is_answered_or_says_why_not() {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        for unknown in DayUnknown::ALL {
            match size_day(&plan, unknown) {
                Some(sizing) => {
                    let text = enough_sentence(Formatter::ENGLISH, &plan, &sizing);
                    assert!(text.contains("until 07:00"), "{text}");
                }
                // The demo has no charger.
                None => assert_eq!(unknown, DayUnknown::ChargerA),
            }
        }
    }
}
