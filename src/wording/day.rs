//! The hot day in sentences.

use super::{
    full_mode_name,
    number::{clock_after, duration, fixed, percent, with_unit},
    stop_phrase,
};
use crate::{
    answer::day::{DayAnswer, DayEvent, Happening, ModeAt, Odds},
    plan::{Path, Plan, day::DayField},
    quantity::{celsius, in_fahrenheit},
};

/// Beyond this a clock time needs its day beside it.
const ONE_DAY_H: f64 = 24.0;

/// A temperature in the units shown.
#[must_use]
pub fn temperature(plan: &Plan, value_c: f64) -> String {
    let (value, sign) = if plan.show.us_units {
        (in_fahrenheit(celsius(value_c)), "°F")
    } else {
        (value_c, "°C")
    };
    format!("{}\u{202f}{sign}", fixed(value, 1))
}

/// A difference of temperatures in the units shown.
#[must_use]
pub fn warmer_by(plan: &Plan, value_k: f64) -> String {
    if plan.show.us_units {
        with_unit(1.8 * value_k, "°F")
    } else {
        with_unit(value_k, "K")
    }
}

/// Watt-hours, from ten thousand on in kilowatt-hours.
#[must_use]
pub fn energy(wh: f64) -> String {
    if wh.abs() >= 10_000.0 {
        with_unit(wh / 1000.0, "kWh")
    } else {
        with_unit(wh.round(), "Wh")
    }
}

/// Day 1 begins with the first night.
#[must_use]
pub fn day_number(hours_h: f64) -> usize {
    (hours_h.max(0.0) / ONE_DAY_H).floor() as usize + 1
}

/// A moment of the days, after "at" or "from": the clock, and the day where
/// there are several.
#[must_use]
pub fn moment(day: &DayAnswer, hours_h: f64) -> String {
    let clock = clock_after(day.start_clock_min, hours_h);
    if day.span_h > ONE_DAY_H {
        format!("{clock} on day {}", day_number(hours_h))
    } else {
        clock
    }
}

/// The modes that the plan runs, each once, in the order of the clock.
#[must_use]
pub fn planned_modes(plan: &Plan) -> String {
    let mut names: Vec<String> = Vec::new();
    let start = plan.night.start_clock_min % 1440;
    let mut rows = plan.mode_rows();
    // From the start on, not from midnight.
    rows.sort_by_key(|row| (row.0 + 1440 - start) % 1440);
    for (_, unit, mode) in rows {
        let Some(mode) = mode else { continue };
        let name = full_mode_name(plan, unit, mode);
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
fn until_wanted(day: &DayAnswer) -> String {
    if day.wanted_h < super::WITHIN_A_DAY_H {
        let clock = clock_after(day.start_clock_min, day.wanted_h);
        format!("until {clock}")
    } else {
        format!("for {}", duration(day.wanted_h))
    }
}

/// The whole of the days, after "all" or "in".
fn all_days(day: &DayAnswer) -> String {
    let days = (day.span_h / ONE_DAY_H).round();
    if days <= 1.0 {
        format!("{}\u{202f}h", fixed(day.span_h, 0))
    } else {
        format!("{} days", fixed(days, 0))
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
pub fn day_sentence(plan: &Plan, day: &DayAnswer) -> String {
    let until = until_wanted(day);
    let modes = planned_modes(plan);
    let least = percent(day.least_charge_percent);
    match day.empty_h {
        None if day.span_h > ONE_DAY_H => format!(
            "It lasts all {}: with {modes} each night the bank goes no lower than {least}. {}",
            all_days(day),
            warmth(plan, day)
        ),
        None => format!(
            "It lasts {until}: with {modes} the bank goes no lower than {least}. {}",
            warmth(plan, day)
        ),
        Some(empty_h) if empty_h >= day.wanted_h => format!(
            "It lasts the night, {until}, and the bank is empty about {}. {}",
            moment(day, empty_h),
            warmth(plan, day)
        ),
        Some(empty_h) => format!(
            "It does not last {until}: with {modes} the bank is empty about {}, after {}. {}",
            moment(day, empty_h),
            duration(empty_h),
            warmth(plan, day)
        ),
    }
}

fn warmth(plan: &Plan, day: &DayAnswer) -> String {
    let set = temperature(plan, day.set_point_c);
    if !is_cooled(plan) {
        return "No mode is planned, so nothing is cooled.".into();
    }
    let warmest = temperature(plan, day.warmest_c);
    match day.lost_h.filter(|&lost_h| lost_h < day.wanted_h) {
        None => format!("The cabin holds {set} that night: {warmest} at the most."),
        Some(lost_h) => format!(
            "The cabin does not hold {set}: it is warmer from {}, {warmest} at the most that night.",
            moment(day, lost_h)
        ),
    }
}

/// A chance in rounded words: tens of per cent, as fine as such odds are.
#[must_use]
pub fn chance(share_percent: f64) -> String {
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
pub fn odds_sentence(plan: &Plan, day: &DayAnswer, odds: &Odds) -> String {
    let set = temperature(plan, day.set_point_c);
    let until = until_wanted(day);
    let mut sentence = format!("Lasting {until}: {}", chance(odds.lasting_percent));
    if is_cooled(plan) {
        sentence += &format!("; holding {set} as well: {}", chance(odds.holding_percent));
    }
    if day.span_h > ONE_DAY_H {
        sentence += &format!(
            "; never empty in {}: {}",
            all_days(day),
            chance(odds.never_empty_percent)
        );
    }
    sentence + "."
}

/// What the odds rest on.
#[must_use]
pub fn odds_assume(odds: &Odds) -> String {
    format!(
        "Worked out {} times over, each number drawn from how far it may be off, every one by itself: the row of chances is the same each time. A forecast that is wrong all week the same way is not in it, nor what nobody wrote down.",
        odds.samples_count
    )
}

/// What ended it, and how sure the hours are.
#[must_use]
pub fn end_sentence(plan: &Plan, day: &DayAnswer) -> Option<String> {
    let stop = day.empty_by?;
    let mut sentence = format!("It ends {}.", stop_phrase(&stop));
    if let Some(odds) = &day.odds {
        let band = odds.hours_h;
        if band.low < day.span_h {
            let high = if band.high >= day.span_h {
                format!("beyond the {} worked out", all_days(day))
            } else {
                moment(day, band.high)
            };
            sentence += &format!(
                " In 19 of 20 drawn days that is between {} and {high}.",
                moment(day, band.low)
            );
        }
        let warm = odds.warmest_c;
        if is_cooled(plan) {
            sentence += &format!(
                " The warmest cabin of the night lies between {} and {}.",
                temperature(plan, warm.low),
                temperature(plan, warm.high)
            );
        }
    }
    Some(sentence)
}

/// An event beside its line in a chart: short.
#[must_use]
pub fn event_label(plan: &Plan, event: &DayEvent) -> String {
    match event.what {
        Happening::Empty { .. } => "empty".into(),
        Happening::BackOn => "back on".into(),
        Happening::Full => "full".into(),
        Happening::UnitStopped { .. } => "unit stops".into(),
        Happening::SetPointLost => "too warm".into(),
        Happening::SetPointRegained => "held again".into(),
        Happening::ModeChanged { mode } => mode_label(plan, mode),
        Happening::ChargingRefused { .. } => "no charging".into(),
        Happening::ChargingResumed => "charging again".into(),
        Happening::FuelGone { .. } => "fuel gone".into(),
    }
}

fn mode_label(plan: &Plan, mode: Option<ModeAt>) -> String {
    mode.map_or_else(
        || "unit off".into(),
        |at| full_mode_name(plan, at.unit, at.mode),
    )
}

/// An event as a sentence of its own, after its clock time.
#[must_use]
pub fn event_sentence(plan: &Plan, event: &DayEvent) -> String {
    match event.what {
        Happening::Empty { stop } => format!(
            "Everything on the bank is off: it ends {}.",
            stop_phrase(&stop)
        ),
        Happening::BackOn => {
            "The bank is charged far enough again: loads and unit come back.".into()
        }
        Happening::Full => "The bank is as full as it gets.".into(),
        Happening::UnitStopped { stop } => {
            format!("The cooling unit alone stops, {}.", stop_phrase(&stop))
        }
        Happening::SetPointLost => "The cabin is warmer than the set point and its band.".into(),
        Happening::SetPointRegained => "The cabin is back at its set point.".into(),
        Happening::ModeChanged { mode: Some(at) } => {
            format!("{} begins.", full_mode_name(plan, at.unit, at.mode))
        }
        Happening::ModeChanged { mode: None } => {
            "The cooling unit is off by the plan; doors and roof light are open.".into()
        }
        Happening::ChargingRefused { bank_c } => format!(
            "The bank is at {} and takes no charge: lithium is charged neither below freezing nor hot.",
            temperature(plan, bank_c)
        ),
        Happening::ChargingResumed => "The bank takes charge again.".into(),
        Happening::FuelGone { .. } => "The generator’s fuel is used up.".into(),
    }
}

/// What the temperatures show.
#[must_use]
pub fn temperature_takeaway(plan: &Plan, day: &DayAnswer) -> String {
    let outdoor = day.trace.iter().map(|point| point.outdoor_c);
    let (low, high) = span_of(outdoor);
    let idle = day.trace.iter().filter(|point| point.mode.is_none());
    let (_, hottest) = span_of(idle.map(|point| point.cabin_c));
    let mut text = format!(
        "Outdoors goes from {} to {}.",
        temperature(plan, low),
        temperature(plan, high)
    );
    if hottest.is_finite() && hottest > day.warmest_c {
        text += &format!(
            " With the unit off the cabin reaches {}: this is no place to leave anyone.",
            temperature(plan, hottest)
        );
    }
    text
}

/// What the charge shows.
#[must_use]
pub fn charge_takeaway(day: &DayAnswer) -> String {
    let least = day
        .trace
        .iter()
        .min_by(|a, b| a.charge_percent.total_cmp(&b.charge_percent));
    let end = day.days.last().map_or(0.0, |sum| sum.end_charge_percent);
    let Some(least) = least else {
        return String::new();
    };
    format!(
        "Lowest {} at {}; it ends at {}.",
        percent(day.least_charge_percent),
        moment(day, least.hours_h),
        percent(end)
    )
}

/// What the power shows: the energy book in a sentence.
#[must_use]
pub fn power_takeaway(day: &DayAnswer) -> String {
    let book = &day.energy;
    let mut ways_in = vec![format!("the panels {}", energy(book.solar_wh))];
    if book.charger_wh > 0.0 {
        ways_in.push(format!("chargers {}", energy(book.charger_wh)));
    }
    if book.from_store_wh > 0.0 {
        ways_in.push(format!("the bank’s store {}", energy(book.from_store_wh)));
    }
    format!(
        "In {}: {}. Out: the unit {}, loads {}.",
        all_days(day),
        ways_in.join(", "),
        energy(book.unit_wh),
        energy(book.loads_wh)
    )
}

fn span_of(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// The first things that anyone should know of these days, most pressing first.
#[must_use]
pub fn first_things(plan: &Plan, day: &DayAnswer) -> Vec<String> {
    let mut things = Vec::new();
    let dark_h: f64 = day.days.iter().map(|sum| sum.dark_h).sum();
    if dark_h > 0.0 {
        things.push(format!(
            "Everything electric is off for {} of these days: lamps, fan and fridge too.",
            duration(dark_h)
        ));
    }
    let lost_h: f64 = day.days.iter().map(|sum| sum.lost_h).sum();
    if lost_h > 0.0 {
        things.push(format!(
            "For {} with a mode planned the cabin is above {} and its band.",
            duration(lost_h),
            temperature(plan, day.set_point_c)
        ));
    }
    let days = day.span_h / ONE_DAY_H;
    if days > 1.5 && day.energy.from_store_wh > 0.0 {
        things.push(format!(
            "Each day takes about {} more out of the bank than comes in.",
            energy(day.energy.from_store_wh / days)
        ));
    }
    if day.energy.spilled_wh > 0.1 * (day.energy.solar_wh + day.energy.spilled_wh) {
        things.push(format!(
            "The panels offer {} that nothing takes: the bank is full by then.",
            energy(day.energy.spilled_wh)
        ));
    }
    if plan.day.climate.is_none()
        && plan.number(Path::Day(DayField::HighC)).is_some()
        && plan.day.high_c.is_none()
        && plan.day.imported.outdoor_c.is_empty()
    {
        things.push(
            "No weather is stated: a hot day beside a salt lake is taken, high plain, 38° north."
                .into(),
        );
    }
    things
}

/// One row of the energy book: what, and how much of it in or out.
pub type BookRow = (&'static str, String);

/// Where the energy came from and went.
#[must_use]
pub fn energy_rows(day: &DayAnswer) -> Vec<BookRow> {
    let book = &day.energy;
    let mut rows = vec![
        (
            "From the panels, past the controller",
            energy(book.solar_wh),
        ),
        ("From chargers", energy(book.charger_wh)),
        ("Out of the bank’s store", energy(book.from_store_wh)),
        (
            "To the cooling unit, its feed and cable",
            energy(book.unit_wh),
        ),
        ("To the other loads", energy(book.loads_wh)),
        ("Lost as heat in the bank", energy(book.lost_wh)),
        (
            "Offered by the panels and not taken",
            energy(book.spilled_wh),
        ),
    ];
    if book.fuel_l > 0.0 {
        rows.push(("Fuel used", with_unit(book.fuel_l, "l")));
    }
    rows
}

/// Where the cabin’s heat came from and went; into the cabin is positive.
#[must_use]
pub fn heat_rows(day: &DayAnswer) -> Vec<BookRow> {
    let heat = &day.heat;
    vec![
        ("Sun through glass", energy(heat.sun_glass_wh)),
        ("Sun on the shell", energy(heat.sun_shell_wh)),
        ("Through glass, by conduction", energy(heat.glass_wh)),
        ("Through the shell, by conduction", energy(heat.shell_wh)),
        ("With air that comes in", energy(heat.air_change_wh)),
        ("People and animals", energy(heat.people_wh)),
        ("Other things inside", energy(heat.gains_wh)),
        ("Taken out by the unit", energy(-heat.unit_wh)),
        ("Stayed in air, contents and shell", energy(heat.stored_wh)),
        (
            "Water that the unit shed",
            with_unit(heat.condensed_kg, "kg"),
        ),
        ("Latent heat of that water", energy(heat.latent_wh)),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::day::day;

    fn plain(text: &str) -> String {
        text.replace('\u{202f}', " ")
    }

    #[test]
    fn the_week_at_the_lake_in_a_sentence() {
        let plan = Plan::demo();
        let day = day(&plan).unwrap();
        let text = plain(&day_sentence(&plan, &day));
        assert!(
            text.starts_with("It lasts all 7 days: with Hold each night"),
            "{text}"
        );
        assert!(text.contains("The cabin holds 25 °C that night"), "{text}");
    }

    #[test]
    fn a_bank_too_small_says_when_and_by_what() {
        let mut plan = Plan::demo();
        plan.banks[0].parallel_count = 1;
        plan.banks[0].block_rated_ah.value = 20.0;
        plan.day.days_count = Some(1);
        let day = day(&plan).unwrap();
        let text = plain(&day_sentence(&plan, &day));
        assert!(
            text.starts_with("It does not last until 07:00: with Hold the bank is empty about"),
            "{text}"
        );
        let end = end_sentence(&plan, &day).unwrap();
        assert!(end.starts_with("It ends "), "{end}");
        let things = first_things(&plan, &day);
        assert!(
            things[0].starts_with("Everything electric is off"),
            "{things:?}"
        );
    }

    #[test]
    fn chances_are_said_in_tens() {
        assert_eq!(chance(100.0), "next to certain");
        assert_eq!(chance(96.0), "more than nine chances in ten");
        assert_eq!(chance(88.0), "about nine chances in ten");
        assert_eq!(chance(52.0), "about even odds");
        assert_eq!(chance(13.0), "about one chance in ten");
        assert_eq!(chance(4.0), "less than one chance in ten");
        assert_eq!(chance(0.0), "next to no chance");
    }

    #[test]
    fn no_mode_planned_is_no_cold_cabin() {
        let mut plan = Plan::demo();
        plan.mode_plan = vec![crate::plan::ModeRow::default()];
        plan.day.days_count = Some(1);
        let day = day(&plan).unwrap();
        let text = day_sentence(&plan, &day);
        assert!(text.contains("No mode is planned"), "{text}");
        assert!(!text.contains("100"), "{text}");
    }

    #[test]
    fn every_happening_has_words() {
        let plan = Plan::demo();
        let stop = crate::simulate::Stop::NoCurrentCarriesIt;
        let all = [
            Happening::Empty { stop },
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
            .map(|&what| event_sentence(&plan, &DayEvent { hours_h: 1.0, what }))
            .collect();
        said.sort();
        said.dedup();
        assert_eq!(said.len(), all.len());
        assert!(said.iter().any(|text| text.starts_with("Hush")));
    }
}
