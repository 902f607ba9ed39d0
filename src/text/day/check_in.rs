//! The midnight check-in in words.

use super::chance;
use crate::text::Formatter;
use crate::{
    answer::day::{Advice, Chances, CheckInAnswer, Fit, FittedFactor},
    plan::Plan,
    text::full_mode_name,
};

/// A clock time so many hours after the plan's start, to the minute.
fn at(f: Formatter, plan: &Plan, hours_h: f64) -> String {
    f.clock((f64::from(plan.night.start_clock_min) + 60.0 * hours_h).round())
}

/// What was read, and what was expected.
#[must_use]
pub fn check_in_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> String {
    let mut text = format!(
        "At {} the bank stands at {}, where {} was expected, and the cabin at {}, where {} was.",
        at(f, plan, said.at_h),
        f.percent(said.charge_percent),
        f.percent(said.expected_charge_percent),
        f.temperature(said.cabin_c),
        f.temperature(said.expected_cabin_c)
    );
    if let Some(ratio) = said.used_ratio_number.filter(|ratio| *ratio > 0.0) {
        let since = if said.readings_count > 1 {
            "the reading before"
        } else {
            "the start"
        };
        text += &format!(
            " Since {since} {} times as much went as was expected to.",
            f.fixed(ratio, 2)
        );
    }
    text
}

/// How it goes on from there, as the plan stands.
#[must_use]
pub fn onward_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> String {
    let goal = at(f, plan, said.goal_h);
    let at_goal = said
        .onward
        .trace
        .iter()
        .find(|point| point.hours_h >= said.goal_h - 1e-6);
    match said.onward.empty_h {
        Some(empty_h) if empty_h < said.goal_h => format!(
            "From there the bank is empty about {}, before {goal}.",
            at(f, plan, (6.0 * empty_h).round() / 6.0)
        ),
        _ => match at_goal {
            Some(point) => format!(
                "From there it lasts until {goal}, with {} left.",
                f.percent(point.charge_percent)
            ),
            None => format!("From there it lasts until {goal}."),
        },
    }
}

/// What to switch now.
#[must_use]
pub fn advice_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> Option<String> {
    let goal = at(f, plan, said.goal_h);
    let lasting = |chances: &Chances| chance(f, chances.lasting_percent);
    let as_planned = said.chances.as_ref().map_or_else(String::new, |chances| {
        format!(" As planned it is {}.", lasting(chances))
    });
    Some(match said.advice.as_ref()? {
        Advice::GoOn { chances } => format!(
            "Go on as planned: lasting until {goal} is {}.",
            lasting(chances)
        ),
        Advice::SwitchNow { to, chances } => {
            let what = match to {
                Some(mode) => format!(
                    "Switch to {} now",
                    full_mode_name(f, plan, mode.unit, mode.mode)
                ),
                None => "Turn the unit off now".into(),
            };
            format!(
                "{what}: then lasting until {goal} is {}.{as_planned}",
                lasting(chances)
            )
        }
        Advice::NothingReaches { chances } => format!(
            "Nothing that can be switched reaches {goal} in nine nights of ten: with the unit off from now on it is {}.{as_planned}",
            lasting(chances)
        ),
    })
}

/// What the readings say of the plan: one line for each of the three figures.
#[must_use]
pub fn fit_sentences(f: Formatter, fit: &Fit) -> Vec<String> {
    match fit {
        Fit::TooFew {
            readings_count,
            least_count,
        } => vec![format!(
            "With {} readings or more the plan itself is fitted to them; there {}.",
            least_count,
            match readings_count {
                0 => "is none yet".into(),
                1 => "is one".into(),
                count => format!("are {count}"),
            }
        )],
        Fit::Untold { readings_count, .. } => vec![format!(
            "The {readings_count} readings tell neither cabin loss nor draw nor usable energy better than the plan knows them."
        )],
        Fit::Fitted {
            cabin_loss,
            draw,
            usable,
            misfit_number,
            readings_count,
        } => {
            let mut said = vec![
                factor(f, "Heat that comes into the cabin", cabin_loss),
                factor(f, "What the unit draws", draw),
                factor(f, "What the bank gives from full to empty", usable),
            ];
            if *misfit_number > 2.0 {
                said.push(format!(
                    "The {readings_count} readings do not go together with these three alone: something else in the plan is off."
                ));
            }
            said
        }
    }
}

fn factor(f: Formatter, what: &str, factor: &FittedFactor) -> String {
    let before = f.percent(200.0 * factor.sd_before_number);
    if factor.is_told {
        format!(
            "{what}: before, the plan’s own give or take {before}; after, {} times that give or take {}.",
            f.fixed(factor.after_number, 2),
            f.percent(200.0 * factor.sd_after_number)
        )
    } else {
        format!("{what}: the readings do not tell it better than give or take {before}.")
    }
}

/// Whether there is something fitted to take into the plan.
#[must_use]
pub fn is_fitted(said: &CheckInAnswer, plan: &Plan) -> bool {
    said.fit.applied_to(plan).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        answer::day::check_in,
        plan::{CheckIn, Figure},
    };

    #[test]
    fn two_in_the_morning_in_words() {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 40.0;
        plan.check_ins = vec![CheckIn {
            clock_min: Some(130),
            charge_percent: Some(Figure::measured(24.0)),
            cabin_c: Some(Figure::measured(25.0)),
            ..CheckIn::default()
        }];
        let said = check_in(&plan).unwrap();
        let text = check_in_sentence(Formatter::ENGLISH, &plan, &said).replace('\u{202f}', " ");
        assert!(
            text.starts_with("At 02:10 the bank stands at 24 %"),
            "{text}"
        );
        assert!(onward_sentence(Formatter::ENGLISH, &plan, &said).starts_with("From there"));
        assert!(advice_sentence(Formatter::ENGLISH, &plan, &said).is_some());
        assert!(
            fit_sentences(Formatter::ENGLISH, &said.fit)[0].contains("there is one"),
            "{:?}",
            said.fit
        );
    }
}
