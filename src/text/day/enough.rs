//! How much is enough, and the longest cool night, in words.

use super::day_number;
use crate::text::Formatter;
use crate::{
    answer::day::{CoolPlan, DayFound, DaySizing, DayUnknown, LongestNight},
    plan::Plan,
    text::full_mode_name,
};

/// What may be asked for.
#[must_use]
pub fn unknown_name(_f: Formatter, unknown: DayUnknown) -> &'static str {
    match unknown {
        DayUnknown::BankAh => "the charge of a battery",
        DayUnknown::PanelW => "panel watts",
        DayUnknown::ChargerA => "charger amps",
        DayUnknown::SetPointC => "the coolest set point",
        DayUnknown::HighC => "the hottest day",
    }
}

fn amount(f: Formatter, _plan: &Plan, unknown: DayUnknown, value: f64) -> String {
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
    let start = f64::from(plan.night.start_clock_min);
    let goal = f.clock(start + 60.0 * sizing.goal_h);
    let until = format!("until {goal} on day {}", day_number(sizing.goal_h));
    let unknown = sizing.unknown;
    match sizing.found {
        DayFound::Enough { value, .. } => {
            let value = amount(f, plan, unknown, value);
            match unknown {
                DayUnknown::BankAh => format!(
                    "Batteries of {value} each carry it {until}, as many as there are, the set point held."
                ),
                DayUnknown::PanelW => {
                    format!("{value} in the first panels carry it {until}, the set point held.")
                }
                DayUnknown::ChargerA => {
                    format!("A first charger of {value} carries it {until}, the set point held.")
                }
                DayUnknown::SetPointC => {
                    format!("{value} is the coolest set point that is held {until}.")
                }
                DayUnknown::HighC => format!(
                    "A high of {value} is the hottest that is borne {until}, the set point held and the night as much hotter."
                ),
            }
        }
        DayFound::Any { value, .. } => format!(
            "Even {} would do {until}: nothing here stands in the way.",
            amount(f, plan, unknown, value)
        ),
        DayFound::None { lasts: true } => format!(
            "Nothing that may be asked for holds the set point {until}: the bank lasts, and it is the unit that gives too little."
        ),
        DayFound::None { lasts: false } => {
            format!("Nothing that may be asked for carries it {until}.")
        }
    }
}

/// A mode plan in one line: "Plunge from 21:00, then Hush from 23:40".
fn modes_said(f: Formatter, plan: &Plan, cool: &CoolPlan) -> String {
    let said: Vec<String> = cool
        .modes
        .iter()
        .enumerate()
        .map(|(at, from)| {
            // The first begins the sentence.
            let nothing = if at == 0 { "Nothing" } else { "nothing" };
            let name = from.mode.map_or_else(
                || nothing.to_owned(),
                |at| full_mode_name(f, plan, at.unit, at.mode),
            );
            format!("{name} from {}", f.clock(f64::from(from.clock_min)))
        })
        .collect();
    said.join(", then ")
}

fn held(f: Formatter, plan: &Plan, night: &LongestNight, cool: &CoolPlan) -> String {
    if cool.held_h >= night.looked_h {
        return format!("all {} that were looked at", f.duration(night.looked_h));
    }
    let end = f64::from(plan.night.start_clock_min) + 60.0 * cool.held_h;
    format!("{}, until {}", f.duration(cool.held_h), f.clock(end))
}

/// The plan that holds longest.
#[must_use]
pub fn longest_sentence(f: Formatter, plan: &Plan, night: &LongestNight) -> String {
    let best = &night.best;
    if best.held_h <= 0.0 {
        return format!(
            "No mode brings the cabin to {} on this bank.",
            f.temperature(night.limit_c)
        );
    }
    format!(
        "{}: {} at or below {}, with {} left in the bank.",
        modes_said(f, plan, best),
        held(f, plan, night, best),
        f.temperature(night.limit_c),
        f.percent(best.charge_percent)
    )
}

/// What each mode alone does beside it.
#[must_use]
pub fn alone_sentences(f: Formatter, plan: &Plan, night: &LongestNight) -> Vec<String> {
    let alone = night.alone.iter().map(|cool| {
        let mode = cool.modes.first().and_then(|from| from.mode);
        let name = mode.map_or_else(
            || "Everything open and nothing on".to_owned(),
            |at| format!("{} alone", full_mode_name(f, plan, at.unit, at.mode)),
        );
        if cool.held_h <= 0.0 {
            format!("{name}: never that cool.")
        } else {
            format!("{name}: {}.", held(f, plan, night, cool))
        }
    });
    alone.collect()
}

/// How good it is, plainly.
#[must_use]
pub fn longest_stands(f: Formatter, night: &LongestNight) -> String {
    let mut text = format!(
        "The longest of all plans with at most {} switches at times {} min apart, those that come to nearly the same counted as one; the cabin may take {} to cool down first. By the plan’s own numbers, without their spread.",
        night.most_switches_count,
        night.grid_min,
        f.duration(night.pull_down_h)
    );
    if night.is_cut_short {
        text += " Some plans were given up for want of room: there may be a longer one.";
    }
    text
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
        assert!(text.contains(" from 21:00"), "{text}");
        assert!(text.contains("at or below 26 °C"), "{text}");
        let alone = alone_sentences(Formatter::ENGLISH, &plan, &night);
        assert!(
            alone.iter().any(|one| one.starts_with("Hush alone")),
            "{alone:?}"
        );
        assert!(longest_stands(Formatter::ENGLISH, &night).contains("at most 2 switches"));
    }

    #[test]
    fn every_unknown_is_answered_or_says_why_not() {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        for unknown in DayUnknown::ALL {
            match size_day(&plan, unknown) {
                Some(sizing) => {
                    let text = enough_sentence(Formatter::ENGLISH, &plan, &sizing);
                    assert!(text.contains("until 07:00 on day 1"), "{text}");
                }
                // The demo has no charger.
                None => assert_eq!(unknown, DayUnknown::ChargerA),
            }
        }
    }
}
