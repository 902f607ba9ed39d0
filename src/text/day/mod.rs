//! The hot day in sentences.

mod books;
mod changes;
mod check_in;
mod enough;
mod happened;
mod moments;
mod weather;

pub use books::{BookRow, day_rows, energy_rows, heat_rows};
pub use changes::{bedtime_sentences, change_gain, change_name};
pub use check_in::{advice_sentence, check_in_sentence, fit_sentences, is_fitted, onward_sentence};
pub use enough::{
    alone_sentences, enough_sentence, longest_sentence, longest_stands, unknown_name,
};
pub use happened::{
    charge_takeaway, event_label, event_sentence, first_things, power_takeaway,
    temperature_takeaway,
};
pub use moments::{Calendar, moment, utc_offset};
pub use weather::{weather_fault, weather_taken};

use super::{Formatter, full_mode_name, is_unnamed, m, mode_in_sentence, stop_phrase};
use crate::{
    answer::day::{COLDEST_C, DayAnswer, Happening, ModeAt, Odds},
    plan::Plan,
};

/// Beyond this a clock time needs its day beside it.
const ONE_DAY_H: f64 = 24.0;

/// The rows of the mode plan from the start on, not from midnight.
fn from_start(plan: &Plan) -> Vec<(u32, usize, Option<usize>)> {
    let start = plan.night.start_clock_min % 1440;
    let mut rows = plan.mode_rows();
    rows.sort_by_key(|row| (row.0 % 1440 + 1440 - start) % 1440);
    rows
}

/// The modes that the plan runs, each once, in the order of the clock.
#[must_use]
pub fn planned_modes(f: Formatter, plan: &Plan) -> String {
    let mut names: Vec<String> = Vec::new();
    for (_, unit, mode) in from_start(plan) {
        let Some(mode) = mode else { continue };
        let name = full_mode_name(f, plan, unit, mode);
        if !names.contains(&name) {
            names.push(name);
        }
    }
    match names.as_slice() {
        [] => f.say(m::DayNoMode).into(),
        [one] => one.clone(),
        [all @ .., last] => f.say(m::DayModesThen {
            first: all.join(", "),
            last,
        }),
    }
}

/// "until 07:00", or how long where that alone would be read as another day's.
fn until_wanted(f: Formatter, day: &DayAnswer) -> String {
    if day.wanted_h < crate::text::WITHIN_A_DAY_H {
        let clock = f.clock_after(day.start_clock_min, day.wanted_h);
        f.say(m::DayUntilClock { clock })
    } else {
        let duration = f.duration(day.wanted_h);
        f.say(m::DayForDuration { duration })
    }
}

/// The whole of the days: "7 days", "24 h".
fn all_days(f: Formatter, day: &DayAnswer) -> String {
    let days = (day.span_h / ONE_DAY_H).round();
    if days <= 1.0 {
        f.with_unit(day.span_h, "h")
    } else {
        f.say(m::DurationDays {
            count: days,
            days: f.number(days),
        })
    }
}

/// Whether any mode is planned at all.
fn is_cooled(plan: &Plan) -> bool {
    plan.mode_rows().iter().any(|row| row.2.is_some())
}

/// Whether the set point is held until the wanted hour.
#[must_use]
pub fn is_held(day: &DayAnswer) -> bool {
    day.lost_h.is_none_or(|lost_h| lost_h >= day.wanted_h)
}

/// The first sentences of the third question: whether it lasts, and how warm it gets.
#[must_use]
pub fn day_sentence(f: Formatter, plan: &Plan, day: &DayAnswer) -> String {
    let warmth = warmth_sentence(f, plan, day);
    [lasts_sentence(f, plan, day), warmth].join(" ")
}

/// How warm it gets, and when the unit was off.
#[must_use]
pub fn warmth_sentence(f: Formatter, plan: &Plan, day: &DayAnswer) -> String {
    let mut said = warmth(f, plan, day);
    said.extend(happened::unit_off_sentence(f, day));
    said.join(" ")
}

/// Whether it lasts: the headline.
#[must_use]
pub fn lasts_sentence(f: Formatter, plan: &Plan, day: &DayAnswer) -> String {
    let until = until_wanted(f, day);
    let modes = planned_modes(f, plan);
    let is_plain = is_unnamed(plan);
    let least = f.percent(day.least_charge_percent);
    match day.empty_h {
        None if day.span_h > ONE_DAY_H && is_plain => f.say(m::DayLastsAllPlain {
            days: all_days(f, day),
            least,
        }),
        None if day.span_h > ONE_DAY_H => f.say(m::DayLastsAll {
            days: all_days(f, day),
            modes,
            least,
        }),
        None if is_plain => f.say(m::DayLastsPlain { until, least }),
        None => f.say(m::DayLasts {
            until,
            modes,
            least,
        }),
        Some(empty_h) if empty_h >= day.wanted_h => f.say(m::DayLastsThenEmpty {
            until,
            moment: moments::about(f, plan, empty_h),
        }),
        Some(empty_h) if is_plain => f.say(m::DayDoesNotLastPlain {
            until,
            moment: moments::about(f, plan, empty_h),
            duration: f.duration(empty_h),
        }),
        Some(empty_h) => f.say(m::DayDoesNotLast {
            until,
            modes,
            moment: moments::about(f, plan, empty_h),
            duration: f.duration(empty_h),
        }),
    }
}

/// How warm the cabin gets once it is cooled down; and, where that is more, while a mode
/// is planned at all.
fn warmth(f: Formatter, plan: &Plan, day: &DayAnswer) -> Vec<String> {
    if !is_cooled(plan) {
        return vec![f.say(m::DayNothingCooled).into()];
    }
    let set = f.temperature(day.set_point_c);
    let warmest = f.temperature(day.warmest_c);
    let held = match day.lost_h.filter(|&lost_h| lost_h < day.wanted_h) {
        None if day.empty_h.is_some_and(|empty_h| empty_h < day.wanted_h) => {
            f.say(m::DayStaysCool { warmest: &warmest })
        }
        None => f.say(m::DayKeepsSetPoint {
            set,
            warmest: &warmest,
        }),
        Some(lost_h) => f.say(m::DayLosesSetPoint {
            set,
            moment: moments::about(f, plan, lost_h),
            warmest: &warmest,
        }),
    };
    let mut said = vec![held];
    let in_all_c = day
        .days
        .iter()
        .map(|sum| sum.warmest_c)
        .fold(COLDEST_C, f64::max);
    let in_all = f.temperature(in_all_c);
    if in_all_c > day.warmest_c && in_all != warmest {
        said.push(f.say(m::DayWarmestInAll {
            days: all_days(f, day),
            warmest: in_all,
        }));
    }
    said
}

/// A chance in tens of per cent, as fine as such odds are.
#[must_use]
pub fn chance(f: Formatter, share_percent: f64) -> String {
    match (share_percent / 10.0).round() as i32 {
        _ if share_percent >= 97.5 => f.say(m::DayChanceCertain).into(),
        _ if share_percent <= 2.5 => f.say(m::DayChanceNone).into(),
        ..=0 => f.say(m::DayChanceUnderTenth).into(),
        10.. => f.say(m::DayChanceOverNine).into(),
        tens => f.say(m::DayChanceTens {
            share: f.percent(f64::from(10 * tens)),
        }),
    }
}

/// How sure the answer is.
#[must_use]
pub fn odds_sentence(f: Formatter, plan: &Plan, day: &DayAnswer, odds: &Odds) -> String {
    let mut said = vec![f.say(m::DayOddsLasting {
        until: until_wanted(f, day),
        chance: chance(f, odds.lasting_percent),
    })];
    if is_cooled(plan) {
        said.push(f.say(m::DayOddsHolding {
            set: f.temperature(day.set_point_c),
            chance: chance(f, odds.holding_percent),
        }));
    }
    if day.span_h > ONE_DAY_H {
        said.push(f.say(m::DayOddsNeverEmpty {
            days: all_days(f, day),
            chance: chance(f, odds.never_empty_percent),
        }));
    }
    said.join(" ")
}

/// What the odds rest on.
#[must_use]
pub fn odds_assume(f: Formatter, odds: &Odds) -> String {
    f.say(m::DayOddsAssume {
        count: odds.samples_count,
    })
}

/// What ended it, and how sure the hours are.
#[must_use]
pub fn end_sentence(f: Formatter, plan: &Plan, day: &DayAnswer) -> Option<String> {
    let stop = day.empty_by?;
    let mut said = vec![f.say(m::DayEnds {
        stop: stop_phrase(f, &stop),
    })];
    if let Some(at) = starting(day) {
        said.push(f.say(m::DayEndsAtStart {
            mode: mode_in_sentence(f, plan, at.unit, at.mode),
        }));
    }
    if let Some(odds) = &day.odds {
        let band = odds.hours_h;
        if band.low < day.span_h {
            let low = moments::about(f, plan, band.low);
            said.push(if band.high >= day.span_h {
                f.say(m::DayEndsAfter { low })
            } else {
                let high = moments::about(f, plan, band.high);
                f.say(m::DayEndsBetween { low, high })
            });
        }
        if is_cooled(plan) {
            said.push(f.say(m::DayWarmestBetween {
                low: f.temperature(odds.warmest_c.low),
                high: f.temperature(odds.warmest_c.high),
            }));
        }
    }
    Some(said.join(" "))
}

/// The mode whose start first emptied the bank, if it was that.
fn starting(day: &DayAnswer) -> Option<ModeAt> {
    let first = day.events.iter().find_map(|event| match event.what {
        Happening::Empty { starting, .. } => Some(starting),
        _ => None,
    });
    first.flatten()
}

/// What is taken without a mode plan.
#[must_use]
pub fn mode_plan_taken(f: Formatter, plan: &Plan) -> String {
    let said: Vec<String> = from_start(plan)
        .into_iter()
        .map(|(from_min, unit, mode)| {
            let clock = f.clock(f64::from(from_min));
            let name = mode.map(|mode| full_mode_name(f, plan, unit, mode));
            let off = f.say(m::DayModeOff);
            format!("{clock} {}", name.as_deref().unwrap_or(off))
        })
        .collect();
    f.say(m::DayModePlanTaken {
        modes: said.join(", "),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::day::{DayEvent, day};

    fn plain(text: &str) -> String {
        text.replace('\u{202f}', " ")
    }

    #[test]
    fn the_week_at_the_lake_in_a_sentence() {
        let plan = Plan::demo();
        let day = day(&plan).unwrap();
        let text = plain(&day_sentence(Formatter::ENGLISH, &plan, &day));
        assert!(
            text.starts_with("It lasts all 7 days: with Hold each night"),
            "{text}"
        );
        // Later nights begin with a warm cabin: the table by days counts that in.
        let warmest_c = day.days.iter().map(|sum| sum.warmest_c).fold(0.0, f64::max);
        assert!(warmest_c > day.warmest_c + 0.1, "{warmest_c}");
        let in_all = plain(&Formatter::ENGLISH.temperature(warmest_c));
        assert!(
            text.contains(&format!(
                "over all 7 days: {in_all} (cooling down included)"
            )),
            "{text}"
        );
        assert!(
            text.contains("The first night the cabin keeps its 25 °C: 25.4 °C at the warmest"),
            "{text}"
        );
    }

    #[test]
    fn a_bank_too_small_says_when_and_by_what() {
        let mut plan = Plan::demo();
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 20.0;
        plan.day.days_count = Some(1);
        let day = day(&plan).unwrap();
        let text = plain(&day_sentence(Formatter::ENGLISH, &plan, &day));
        assert!(
            text.starts_with("It does not last until 07:00: with Hold the bank is empty about"),
            "{text}"
        );
        let end = end_sentence(Formatter::ENGLISH, &plan, &day).unwrap();
        assert!(end.starts_with("It stops "), "{end}");
        let things = first_things(Formatter::ENGLISH, &plan, &day);
        assert!(
            things[0].starts_with("Everything electric is off"),
            "{things:?}"
        );
    }

    #[test]
    fn chances_are_said_in_tens() {
        assert_eq!(chance(Formatter::ENGLISH, 100.0), "almost certain");
        assert_eq!(chance(Formatter::ENGLISH, 96.0), "more than 90\u{202f}%");
        assert_eq!(chance(Formatter::ENGLISH, 88.0), "about 90\u{202f}%");
        assert_eq!(chance(Formatter::ENGLISH, 52.0), "about 50\u{202f}%");
        assert_eq!(chance(Formatter::ENGLISH, 13.0), "about 10\u{202f}%");
        assert_eq!(chance(Formatter::ENGLISH, 4.0), "less than 10\u{202f}%");
        assert_eq!(chance(Formatter::ENGLISH, 0.0), "almost no chance");
    }

    #[test]
    fn no_mode_planned_is_no_cold_cabin() {
        let mut plan = Plan::demo();
        plan.mode_plan = vec![crate::plan::ModeRow::default()];
        plan.day.days_count = Some(1);
        let day = day(&plan).unwrap();
        let text = day_sentence(Formatter::ENGLISH, &plan, &day);
        assert!(text.contains("No mode is planned"), "{text}");
        assert!(!text.contains("100"), "{text}");
    }

    #[test]
    fn every_happening_has_words() {
        let plan = Plan::demo();
        let stop = crate::simulate::Stop::NoCurrentCarriesIt;
        let all = [
            Happening::Empty {
                stop,
                starting: None,
            },
            Happening::Empty {
                stop,
                starting: Some(ModeAt { unit: 0, mode: 0 }),
            },
            Happening::BackOn,
            Happening::Full,
            Happening::UnitStopped { stop },
            Happening::SetPointLost,
            Happening::SetPointRegained,
            Happening::ModeChanged { mode: None },
            Happening::ModeChanged {
                mode: Some(ModeAt { unit: 0, mode: 2 }),
            },
            Happening::ChargingRefused { bank_c: -3.0 },
            Happening::ChargingResumed,
            Happening::FuelGone { charger: 0 },
        ];
        let mut said: Vec<String> = all
            .iter()
            .map(|&what| {
                event_sentence(Formatter::ENGLISH, &plan, &DayEvent { hours_h: 1.0, what })
            })
            .collect();
        said.sort();
        said.dedup();
        assert_eq!(said.len(), all.len());
        assert!(said.iter().any(|text| text.starts_with("Hush")));
    }
}
