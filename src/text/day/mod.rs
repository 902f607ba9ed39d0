//! The hot day in sentences.

use crate::text::Formatter;
mod books;
mod changes;
mod check_in;
mod enough;
mod happened;
mod weather;

pub use books::{BookRow, day_rows, energy_rows, heat_rows};
pub use changes::{bedtime_sentences, change_gain, change_name, try_change};
pub use check_in::{advice_sentence, check_in_sentence, fit_sentences, is_fitted, onward_sentence};
pub use enough::{
    alone_sentences, enough_sentence, longest_sentence, longest_stands, unknown_name,
};
pub use happened::{
    charge_takeaway, event_label, event_sentence, first_things, power_takeaway,
    temperature_takeaway,
};
pub use weather::{weather_fault, weather_taken};

use super::{full_mode_name, stop_phrase};
use crate::{
    answer::day::{DayAnswer, Happening, ModeAt, Odds},
    plan::{Plan, entry::shown},
    range::Unit,
};

/// Beyond this a clock time needs its day beside it.
const ONE_DAY_H: f64 = 24.0;

/// A temperature in the units shown.
#[must_use]
pub fn temperature(f: Formatter, _plan: &Plan, value_c: f64) -> String {
    f.temperature(value_c)
}

/// The same to a tenth of a degree.
#[must_use]
pub fn temperature_in(f: Formatter, value_c: f64) -> String {
    let value = shown(value_c, Unit::Celsius, f.units);
    format!("{}\u{202f}{}", f.fixed(value, 1), f.sign(Unit::Celsius))
}

/// Watt-hours, from ten thousand on in kilowatt-hours.
#[must_use]
pub fn energy(f: Formatter, wh: f64) -> String {
    if wh.abs() >= 10_000.0 {
        f.with_unit(wh / 1000.0, "kWh")
    } else {
        f.with_unit(wh.round(), "Wh")
    }
}

/// Day 1 begins with the first night.
#[must_use]
pub fn day_number(hours_h: f64) -> usize {
    (hours_h.max(0.0) / ONE_DAY_H).floor() as usize + 1
}

/// The day that a moment belongs to, for an axis.
#[must_use]
pub fn day_short(_f: Formatter, hours_h: f64) -> String {
    format!("day {}", day_number(hours_h))
}

/// A moment at the head of a row: the day where there are several, then the clock.
#[must_use]
pub fn when(f: Formatter, day: &DayAnswer, hours_h: f64) -> String {
    let at = f.clock(f64::from(day.start_clock_min) + 60.0 * hours_h);
    if day.span_h > ONE_DAY_H {
        format!("Day {}, {at}", day_number(hours_h))
    } else {
        at
    }
}

/// A moment of the days, after "at" or "from": the clock, and the day where
/// there are several.
#[must_use]
pub fn moment(f: Formatter, day: &DayAnswer, hours_h: f64) -> String {
    let clock = f.clock_after(day.start_clock_min, hours_h);
    if day.span_h > ONE_DAY_H {
        format!("{clock} on day {}", day_number(hours_h))
    } else {
        clock
    }
}

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
        [] => "nothing cooled".into(),
        [one] => one.clone(),
        [all @ .., last] => format!("{} then {last}", all.join(", ")),
    }
}

/// "until 07:00", or how long where that alone would be read as another day's.
fn until_wanted(f: Formatter, day: &DayAnswer) -> String {
    if day.wanted_h < crate::text::WITHIN_A_DAY_H {
        let clock = f.clock_after(day.start_clock_min, day.wanted_h);
        format!("until {clock}")
    } else {
        format!("for {}", f.duration(day.wanted_h))
    }
}

/// The whole of the days, after "all" or "in".
fn all_days(f: Formatter, day: &DayAnswer) -> String {
    let days = (day.span_h / ONE_DAY_H).round();
    if days <= 1.0 {
        format!("{}\u{202f}h", f.fixed(day.span_h, 0))
    } else {
        format!("{} days", f.fixed(days, 0))
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
    let until = until_wanted(f, day);
    let modes = planned_modes(f, plan);
    let least = f.percent(day.least_charge_percent);
    let lasts = match day.empty_h {
        None if day.span_h > ONE_DAY_H => format!(
            "It lasts all {}: with {modes} each night the bank goes no lower than {least}. {}",
            all_days(f, day),
            warmth(f, plan, day)
        ),
        None => format!(
            "It lasts {until}: with {modes} the bank goes no lower than {least}. {}",
            warmth(f, plan, day)
        ),
        Some(empty_h) if empty_h >= day.wanted_h => format!(
            "It lasts the night, {until}, and the bank is empty about {}. {}",
            moment(f, day, empty_h),
            warmth(f, plan, day)
        ),
        Some(empty_h) => format!(
            "It does not last {until}: with {modes} the bank is empty about {}, after {}. {}",
            moment(f, day, empty_h),
            f.duration(empty_h),
            warmth(f, plan, day)
        ),
    };
    match happened::unit_off_sentence(f, day) {
        Some(stopped) => format!("{lasts} {stopped}"),
        None => lasts,
    }
}

fn warmth(f: Formatter, plan: &Plan, day: &DayAnswer) -> String {
    let set = f.temperature(day.set_point_c);
    if !is_cooled(plan) {
        return "No mode is planned, so nothing is cooled.".into();
    }
    let warmest = f.temperature(day.warmest_c);
    match day.lost_h.filter(|&lost_h| lost_h < day.wanted_h) {
        None if day.empty_h.is_some_and(|empty_h| empty_h < day.wanted_h) => {
            format!("The cabin still stays at {warmest} or below that night.")
        }
        None => format!("The first night the cabin keeps its {set}, {warmest} at the warmest."),
        Some(lost_h) => format!(
            "The cabin does not keep its {set}: it is warmer from {} on, {warmest} at the warmest.",
            moment(f, day, lost_h)
        ),
    }
}

/// A chance in rounded words: tens of per cent, as fine as such odds are.
#[must_use]
pub fn chance(_f: Formatter, share_percent: f64) -> String {
    match (share_percent / 10.0).round() as i64 {
        _ if share_percent >= 97.5 => "next to certain".into(),
        _ if share_percent <= 2.5 => "next to no chance".into(),
        ..=0 => "less than one chance in ten".into(),
        1 => "about one chance in ten".into(),
        5 => "about even odds".into(),
        10.. => "more than nine chances in ten".into(),
        tens => {
            const IN_WORDS: [&str; 10] = [
                "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
            ];
            format!(
                "about {} chances in ten",
                IN_WORDS[tens.unsigned_abs() as usize % 10]
            )
        }
    }
}

/// How sure the answer is.
#[must_use]
pub fn odds_sentence(f: Formatter, plan: &Plan, day: &DayAnswer, odds: &Odds) -> String {
    let set = f.temperature(day.set_point_c);
    let until = until_wanted(f, day);
    let mut sentence = format!("Lasting {until}: {}", chance(f, odds.lasting_percent));
    if is_cooled(plan) {
        sentence += &format!(
            "; holding {set} as well: {}",
            chance(f, odds.holding_percent)
        );
    }
    if day.span_h > ONE_DAY_H {
        sentence += &format!(
            "; never empty in {}: {}",
            all_days(f, day),
            chance(f, odds.never_empty_percent)
        );
    }
    sentence + "."
}

/// What the odds rest on.
#[must_use]
pub fn odds_assume(_f: Formatter, odds: &Odds) -> String {
    format!(
        "Odds of {} drawn days: each number anew from how far it may be off, every one by itself. A forecast that errs the same way all week is not in them, nor what nobody wrote down.",
        odds.samples_count
    )
}

/// What ended it, and how sure the hours are.
#[must_use]
pub fn end_sentence(f: Formatter, plan: &Plan, day: &DayAnswer) -> Option<String> {
    let stop = day.empty_by?;
    let mut sentence = format!("It ends {}.", stop_phrase(f, &stop));
    if let Some(at) = starting(day) {
        sentence += &format!(
            " That is the start of {}: the loads alone would be carried.",
            full_mode_name(f, plan, at.unit, at.mode)
        );
    }
    if let Some(odds) = &day.odds {
        let band = odds.hours_h;
        if band.low < day.span_h {
            let low = moment(f, day, band.low);
            sentence += &if band.high >= day.span_h {
                format!(" In 39 of 40 drawn days that is after {low}, in some not at all.")
            } else {
                let high = moment(f, day, band.high);
                format!(" In 19 of 20 drawn days that is between {low} and {high}.")
            };
        }
        let warm = odds.warmest_c;
        if is_cooled(plan) {
            sentence += &format!(
                " The warmest cabin of the night lies between {} and {}.",
                f.temperature(warm.low),
                f.temperature(warm.high)
            );
        }
    }
    Some(sentence)
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
            let name = mode.map_or_else(
                || "nothing".to_owned(),
                |mode| full_mode_name(f, plan, unit, mode),
            );
            format!("{} {name}", f.clock(f64::from(from_min)))
        })
        .collect();
    format!(
        "No plan is stated. Taken from the hours wanted: {}.",
        said.join(", ")
    )
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
        assert!(
            text.contains("The first night the cabin keeps its 25 °C, 25.5 °C at the warmest"),
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
        assert!(end.starts_with("It ends "), "{end}");
        let things = first_things(Formatter::ENGLISH, &plan, &day);
        assert!(
            things[0].starts_with("Everything electric is off"),
            "{things:?}"
        );
    }

    #[test]
    fn chances_are_said_in_tens() {
        assert_eq!(chance(Formatter::ENGLISH, 100.0), "next to certain");
        assert_eq!(
            chance(Formatter::ENGLISH, 96.0),
            "more than nine chances in ten"
        );
        assert_eq!(
            chance(Formatter::ENGLISH, 88.0),
            "about nine chances in ten"
        );
        assert_eq!(chance(Formatter::ENGLISH, 52.0), "about even odds");
        assert_eq!(chance(Formatter::ENGLISH, 13.0), "about one chance in ten");
        assert_eq!(
            chance(Formatter::ENGLISH, 4.0),
            "less than one chance in ten"
        );
        assert_eq!(chance(Formatter::ENGLISH, 0.0), "next to no chance");
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
