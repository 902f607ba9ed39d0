//! The midnight check-in in words.

use super::{Calendar, chance};
use crate::text::{Formatter, m};
use crate::{
    answer::day::{Advice, Chances, CheckInAnswer, Fit, FittedFactor},
    plan::Plan,
    text::mode_in_sentence,
};

/// What was read, and what was expected.
#[must_use]
pub fn check_in_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> String {
    let read = f.say(m::DayCheckInRead {
        moment: Calendar::of(plan).moment(f, said.at_h),
        charge: f.percent(said.charge_percent),
        expected_charge: f.percent(said.expected_charge_percent),
        cabin: f.temperature(said.cabin_c),
        expected_cabin: f.temperature(said.expected_cabin_c),
    });
    let Some(ratio) = said.used_ratio_number.filter(|ratio| *ratio > 0.0) else {
        return read;
    };
    let ratio = f.fixed(ratio, 2);
    let used = if said.readings_count > 1 {
        f.say(m::DayCheckInUsedSinceReading { ratio })
    } else {
        f.say(m::DayCheckInUsedSinceStart { ratio })
    };
    format!("{read} {used}")
}

/// How it goes on from there, as the plan stands.
#[must_use]
pub fn onward_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> String {
    let calendar = Calendar::of(plan);
    let goal = calendar.moment(f, said.goal_h);
    let at_goal = said
        .onward
        .trace
        .iter()
        .find(|point| point.hours_h >= said.goal_h - 1e-6);
    match (said.onward.empty_h, at_goal) {
        (Some(empty_h), _) if empty_h < said.goal_h => f.say(m::DayOnwardEmpty {
            moment: calendar.about(f, empty_h),
            goal,
        }),
        (_, Some(point)) => f.say(m::DayOnwardLastsWith {
            goal,
            charge: f.percent(point.charge_percent),
        }),
        _ => f.say(m::DayOnwardLasts { goal }),
    }
}

/// What to switch now.
#[must_use]
pub fn advice_sentence(f: Formatter, plan: &Plan, said: &CheckInAnswer) -> Option<String> {
    let goal = Calendar::of(plan).moment(f, said.goal_h);
    let lasting = |chances: &Chances| chance(f, chances.lasting_percent);
    let advice = said.advice.as_ref()?;
    let first = match advice {
        Advice::GoOn { chances } => f.say(m::DayAdviceGoOn {
            goal,
            chance: lasting(chances),
        }),
        Advice::SwitchNow {
            to: Some(mode),
            chances,
        } => f.say(m::DayAdviceSwitch {
            mode: mode_in_sentence(f, plan, mode.unit, mode.mode),
            goal,
            chance: lasting(chances),
        }),
        Advice::SwitchNow { to: None, chances } => f.say(m::DayAdviceOff {
            goal,
            chance: lasting(chances),
        }),
        Advice::NothingReaches { chances } => f.say(m::DayAdviceNothing {
            goal,
            chance: lasting(chances),
        }),
    };
    let changes_plan = !matches!(advice, Advice::GoOn { .. });
    let as_planned = said.chances.as_ref().filter(|_| changes_plan);
    Some(as_planned.map_or(first.clone(), |chances| {
        let chance = lasting(chances);
        format!("{first} {}", f.say(m::DayAdviceAsPlanned { chance }))
    }))
}

/// What the readings say of the plan: one line for each of the three figures.
#[must_use]
pub fn fit_sentences(f: Formatter, fit: &Fit) -> Vec<String> {
    match *fit {
        Fit::TooFew {
            readings_count,
            least_count,
        } => vec![f.say(m::DayFitTooFew {
            least: least_count,
            readings: readings_count,
        })],
        Fit::Untold { readings_count, .. } => vec![f.say(m::DayFitUntold {
            readings: readings_count,
        })],
        Fit::Fitted {
            ref cabin_loss,
            ref draw,
            ref usable,
            misfit_number,
            readings_count,
        } => {
            let mut said = vec![
                factor(f, f.say(m::DayFitCabinLoss), cabin_loss),
                factor(f, f.say(m::DayFitDraw), draw),
                factor(f, f.say(m::DayFitUsable), usable),
            ];
            if misfit_number > 2.0 {
                said.push(f.say(m::DayFitMisfit {
                    readings: readings_count,
                }));
            }
            said
        }
    }
}

fn factor(f: Formatter, what: &str, factor: &FittedFactor) -> String {
    let before = f.percent(200.0 * factor.sd_before_number);
    if factor.is_told {
        f.say(m::DayFitFactor {
            what,
            before,
            factor: f.fixed(factor.after_number, 2),
            after: f.percent(200.0 * factor.sd_after_number),
        })
    } else {
        f.say(m::DayFitFactorUntold { what, before })
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
        assert!(text.starts_with("02:10: the bank is at 24 %"), "{text}");
        assert!(onward_sentence(Formatter::ENGLISH, &plan, &said).starts_with("From there"));
        assert!(advice_sentence(Formatter::ENGLISH, &plan, &said).is_some());
        assert!(
            fit_sentences(Formatter::ENGLISH, &said.fit)[0].contains("so far there is 1"),
            "{:?}",
            said.fit
        );
    }
}
