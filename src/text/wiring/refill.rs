//! Can it be filled again: in sentences.

use crate::text::Formatter;
use crate::{
    answer::{
        RefillAnswer,
        refill::{
            ChargerRefill, Course, DaysBalance, Fill, FilledFrom, RefillMatter as R, RefillNote,
            SkyDay, SunRefill,
        },
    },
    plan::{Plan, supply::ChargerKind},
    range::Unit,
    simulate::charge::{FillEnd, MOST_H},
    study::spread::{Band, Share},
    text::{caution, caution_source, field_label, full_mode_name},
};

pub const TITLE: &str = "Can it be filled again?";
pub const WAITING: &str = "Working it out …";
pub const NO_ANSWER: &str = "Something in the plan must be mended before this can be answered.";
pub const SOURCES: &str = "What fills it";
pub const FIELDS: &str = "From, to and prices";
pub const SUN: &str = "The sun alone";
pub const CURVES: &str = "Curves of charging";
pub const SKY_HEADS: [&str; 5] = ["Sky", "Sun gives", "Used", "Lowest", "A day on"];
pub const SOURCE: &str = "Constant current, then constant voltage, exact on each straight piece of \
    the open-circuit curve; lead-acid by what seeps into its second tank (Manwell & McGowan 1993).";

/// What a charger is called, numbered where there are several of a kind.
#[must_use]
pub fn charger_name(_f: Formatter, plan: &Plan, charger: &ChargerRefill) -> String {
    let name = match charger.kind {
        ChargerKind::Shore => "Shore charger",
        ChargerKind::Engine => "Engine charger",
        ChargerKind::Generator => "Generator",
    };
    let alike = plan.supply.chargers.iter();
    let alike = alike.filter(|one| one.kind_taken() == charger.kind).count();
    if alike > 1 {
        format!("{name} {}", charger.charger + 1)
    } else {
        name.into()
    }
}

fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        format!("{}{}", first.to_ascii_lowercase(), letters.as_str())
    })
}

/// The answer in a sentence.
#[must_use]
pub fn headline(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    if matches!(first_error(answer), Some(R::NoSource)) {
        return "Nothing here fills the bank again: add panels or a charger below.".into();
    }
    let from = f.percent(answer.from_percent.likely);
    let is_falling = answer
        .days
        .as_ref()
        .is_some_and(|days| matches!(days.course, Course::Falling { .. } | Course::Empty { .. }));
    let sun = answer.sun.as_ref();
    let sun = sun.map(|sun| sun_clause(f, plan, sun, is_falling));
    let charger = charger_clause(f, plan, answer);
    match (charger, sun) {
        (Some(charger), Some(sun)) => format!("From {from}, {charger}; {sun}."),
        (Some(charger), None) => format!("From {from}, {charger}."),
        (None, Some(sun)) => format!("Tonight leaves {from}; {sun}."),
        (None, None) => format!("Tonight leaves {from}."),
    }
}

/// The quickest charger, or that none does it.
fn charger_clause(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> Option<String> {
    let filled = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let quickest = filled.min_by(|a, b| a.idle.hours_h.likely.total_cmp(&b.idle.hours_h.likely));
    let Some(quickest) = quickest else {
        let goal = goal(f, answer);
        return (!answer.chargers.is_empty()).then(|| format!("no charger here {goal}"));
    };
    if quickest.idle.hours_h.likely <= 0.0 {
        return Some("there is nothing to fill".into());
    }
    let name = lower_first(&charger_name(f, plan, quickest));
    let hours = f.duration(quickest.idle.hours_h.likely);
    Some(format!("the {name} {} in {hours}", goal(f, answer)))
}

fn goal(f: Formatter, answer: &RefillAnswer) -> String {
    if answer.to_percent >= 100.0 {
        "fills it".into()
    } else {
        format!("brings it to {}", f.percent(answer.to_percent))
    }
}

/// Whether tomorrow repays tonight. Where the days go down all the same, what came
/// back by the afternoon is used again before the next night.
fn sun_clause(f: Formatter, plan: &Plan, sun: &SunRefill, is_falling: bool) -> String {
    let day = &sun.tomorrow;
    let start = plan.night.start_clock_min;
    match (day.repaid_h, day.empty_h) {
        (_, Some(empty_h)) => {
            let at = f.clock_after(start, empty_h);
            format!("on the sun alone it is empty at {at}")
        }
        (Some(_), None) if day.start_percent - day.lowest_percent < 0.5 => {
            "the sun keeps up with all that runs".into()
        }
        (Some(_), None) if is_falling => "tomorrow’s sun all but repays tonight".into(),
        (Some(at_h), None) => {
            let at = f.clock_after(start, at_h);
            format!("tomorrow’s sun repays tonight by {at}")
        }
        (None, None) if day.repaid_percent < 1.0 => {
            "tomorrow’s sun repays nothing of tonight".into()
        }
        (None, None) => {
            let share = f.percent(day.repaid_percent.min(99.0));
            format!("tomorrow’s sun repays {share} of tonight")
        }
    }
}

fn first_error(answer: &RefillAnswer) -> Option<R> {
    answer.notes.first().map(|note| note.matter)
}

/// Where the charge to start from comes from, and what is missing.
#[must_use]
pub fn from_line(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    let night = &plan.night;
    let mode = full_mode_name(f, plan, night.asked_unit, night.asked_mode);
    let Band { low, likely, high } = answer.from_percent;
    let from = match answer.from {
        FilledFrom::Stated => format!("{}, as you say", f.percent(likely)),
        FilledFrom::Night => format!(
            "what tonight leaves with no charger on: {} ({} to {})",
            f.percent(likely),
            f.percent(low),
            f.percent(high)
        ),
        FilledFrom::ConstantDraw => {
            format!("what {mode} leaves at its full draw: {}", f.percent(likely))
        }
    };
    let missing = f.with_unit(answer.missing_ah, "Ah");
    let beside = f.with_unit(answer.beside_w, "W");
    format!(
        "From {from}. That is {missing} to put back, with {beside} running beside all the time."
    )
}

/// Where the days lead.
#[must_use]
pub fn course(f: Formatter, days: &DaysBalance, to_percent: f64) -> String {
    let fed = f.energy(days.fed_daily_wh);
    let used = f.energy(days.used_daily_wh);
    let each = format!("A day as planned brings {fed} and uses {used}");
    let last = days.end_percent.last().copied().unwrap_or(0.0);
    let goal = if to_percent >= 100.0 {
        "full".to_owned()
    } else {
        format!("at {}", f.percent(to_percent))
    };
    match days.course {
        Course::Empty { after_h, .. } => format!("{each}: empty after {}.", in_days(f, after_h)),
        Course::Falling { after_h } => format!(
            "{each}: empty after about {}, if it goes on so.",
            in_days(f, after_h)
        ),
        Course::Full { after_h } => format!(
            "{each}: {goal} again after {}, and on every day after.",
            in_days(f, after_h)
        ),
        Course::Rising { after_h } => format!(
            "{each}: {goal} after about {}, if it goes on so.",
            in_days(f, after_h)
        ),
        Course::Level => format!(
            "{each}: every day ends as the one before, at {}.",
            f.percent(last)
        ),
    }
}

fn in_days(f: Formatter, hours: f64) -> String {
    if hours < 48.0 {
        f.duration(hours)
    } else {
        format!("{} days", f.fixed(hours / 24.0, usize::from(hours < 240.0)))
    }
}

/// The right end of a charger's row.
#[must_use]
pub fn charger_verdict(f: Formatter, fill: &Fill) -> String {
    match (fill.is_filled, fill.end) {
        (true, _) => with_band(f, fill.hours_h),
        (false, FillEnd::TooWeak) => "never gets there".into(),
        (false, FillEnd::TooLong) => format!("more than {}", in_days(f, MOST_H)),
        (false, FillEnd::Refused) => "too cold to charge".into(),
        (false, _) => format!("ends at {}", f.percent(fill.reached_percent)),
    }
}

fn with_band(f: Formatter, band: Band) -> String {
    let likely = f.duration(band.likely);
    if band.high - band.low < 0.02 * band.likely {
        return likely;
    }
    if band.high >= MOST_H - 1e-9 {
        return format!("{likely} (from {}; or not at all)", f.duration(band.low));
    }
    format!(
        "{likely} ({} to {})",
        f.duration(band.low),
        f.duration(band.high)
    )
}

/// What stands in a charger's row, line by line.
#[must_use]
pub fn charger_lines(f: Formatter, plan: &Plan, charger: &ChargerRefill) -> Vec<String> {
    let fill = &charger.idle;
    let mut lines = Vec::new();
    if fill.is_filled || fill.end == FillEnd::CalledFull {
        lines.push(phases(f, charger, fill));
    }
    lines.extend(
        charger
            .cooling
            .as_ref()
            .map(|with| cooling_line(f, plan, with)),
    );
    if fill.charger_wh > 0.0 {
        lines.push(energy_line(f, charger, fill));
        lines.push(formula(f, charger, fill));
    }
    lines.extend(fuel_line(f, plan, fill));
    lines.extend(spread_line(f, &charger.spread_from));
    lines.push(SOURCE.into());
    lines
}

/// The two stretches.
fn phases(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    let first = fill.curve.first().map_or(0.0, |at| at.charger_a);
    let held_h = fill.hours_h.likely - fill.constant_current_h;
    let amps = f.with_unit(first, "A");
    let current = format!("{} at {amps}", f.duration(fill.constant_current_h));
    let held = f.volts(charger.hold_v);
    let end = f.with_unit(charger.end_a, "A");
    let called = if fill.end == FillEnd::CalledFull {
        format!(
            ", which this charger calls full (at {} of charge)",
            f.percent(fill.reached_percent)
        )
    } else {
        String::new()
    };
    if held_h < 1.0 / 60.0 && fill.end == FillEnd::Reached {
        return format!("{current}; the {held} that it would hold are not met before.");
    }
    let until = if fill.end == FillEnd::CalledFull {
        format!(" until the bank takes {end}")
    } else {
        String::new()
    };
    format!(
        "{current}, then {} held at {held}{until}{called}.",
        f.duration(held_h)
    )
}

fn cooling_line(f: Formatter, plan: &Plan, fill: &Fill) -> String {
    let night = &plan.night;
    let mode = full_mode_name(f, plan, night.asked_unit, night.asked_mode);
    match (fill.is_filled, fill.end) {
        (true, _) => format!(
            "With {mode} running all the while: {}.",
            with_band(f, fill.hours_h)
        ),
        (false, FillEnd::TooWeak) if fill.into_ah <= 0.0 => {
            format!(
                "With {mode} running all the while it does not charge: the draw takes more than it gives."
            )
        }
        (false, FillEnd::TooLong) => {
            format!(
                "With {mode} running all the while: more than {}.",
                in_days(f, MOST_H)
            )
        }
        (false, _) => format!(
            "With {mode} running all the while it gets no further than {}.",
            f.percent(fill.reached_percent)
        ),
    }
}

fn energy_line(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    let source = match charger.kind {
        ChargerKind::Shore => "shore",
        ChargerKind::Engine => "the engine",
        ChargerKind::Generator => "the generator",
    };
    format!(
        "Takes {} from {source} at {} and gives {}: {} to what runs beside, {} lost in the bank.",
        f.energy(fill.taken_wh),
        f.percent(charger.efficiency_percent),
        f.energy(fill.charger_wh),
        f.energy(fill.loads_wh),
        f.energy(fill.lost_wh)
    )
}

/// The rule of thumb with this plan's numbers in it.
fn formula(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    let first = fill.curve.first();
    let (charger_a, bank_a) = first.map_or((0.0, 0.0), |at| (at.charger_a, at.bank_a));
    let rough_h = fill.into_ah / bank_a.max(1e-9);
    format!(
        "On paper: {} ÷ ({} − {} beside) = {}; then what the falling current adds above {}.",
        f.with_unit(fill.into_ah, "Ah"),
        f.with_unit(charger_a, "A"),
        f.with_unit(charger_a - bank_a, "A"),
        f.duration(rough_h),
        f.volts(charger.hold_v)
    )
}

fn fuel(f: Formatter, _plan: &Plan, liters: f64) -> String {
    f.value(liters, Unit::Liter)
}

fn fuel_line(f: Formatter, plan: &Plan, fill: &Fill) -> Option<String> {
    let fuel = fill.fuel_l.map(|l| fuel(f, plan, l));
    let price = fill
        .price_number
        .map(|price| format!("{} in your currency", f.plain(price)));
    match (fuel, price) {
        (Some(fuel), Some(price)) => Some(format!("{fuel} of fuel, {price}.")),
        (Some(fuel), None) => Some(format!("{fuel} of fuel.")),
        (None, Some(price)) => Some(format!("It costs {price}.")),
        (None, None) => None,
    }
}

/// The two inputs that make most of a band.
fn spread_line(f: Formatter, shares: &[Share]) -> Option<String> {
    let named: Vec<String> = shares
        .iter()
        .take(2)
        .filter(|share| share.share_percent >= 5.0)
        .map(|share| {
            let label = lower_first(field_label(f, share.field));
            format!("{label} ({})", f.percent(share.share_percent))
        })
        .collect();
    (!named.is_empty()).then(|| format!("The spread comes mostly from {}.", named.join(" and ")))
}

/// The right end of the sun's row.
#[must_use]
pub fn sun_verdict(f: Formatter, plan: &Plan, sun: &SunRefill) -> String {
    let day = &sun.tomorrow;
    match (day.repaid_h, day.empty_h) {
        (_, Some(_)) => "runs empty".into(),
        (Some(at_h), _) => {
            format!(
                "repaid by {}",
                f.clock_after(plan.night.start_clock_min, at_h)
            )
        }
        _ => format!("{} repaid", f.percent(day.repaid_percent.min(99.0))),
    }
}

/// What stands in the sun's row, before its table.
#[must_use]
pub fn sun_lines(f: Formatter, plan: &Plan, answer: &RefillAnswer, sun: &SunRefill) -> Vec<String> {
    let day = &sun.tomorrow;
    let start = plan.night.start_clock_min;
    let end = sun.end_percent;
    let mut lines = vec![format!(
        "From {} at {} down to {} at {}; a day on at {} ({} to {}).",
        f.percent(day.start_percent),
        f.clock_after(start, 0.0),
        f.percent(day.lowest_percent),
        f.clock_after(start, day.lowest_h),
        f.percent(end.likely),
        f.percent(end.low),
        f.percent(end.high)
    )];
    let goal = goal(f, answer);
    lines.push(match sun.idle_h {
        Some(hours) => format!(
            "With the cooler off from the morning, the sun {goal} in {} of day and night.",
            in_days(f, hours)
        ),
        None => format!("With the cooler off from the morning, a week of such sun does not do it: no sun {goal} here."),
    });
    if day.spilled_wh >= 10.0 {
        lines.push(format!(
            "{} of sun found no room in the bank.",
            f.energy(day.spilled_wh)
        ));
    }
    lines.extend(spread_line(f, &sun.spread_from));
    lines
}

/// A row of the table of skies.
#[must_use]
pub fn sky_row(f: Formatter, plan: &Plan, sky: &SkyDay) -> Vec<String> {
    let name = match sky.cloud_percent {
        cloud if cloud < 5.0 => "Clear".to_owned(),
        cloud if cloud > 95.0 => "Overcast".to_owned(),
        cloud => format!("{} cloud", f.percent(cloud)),
    };
    let end = match sky.empty_h {
        Some(at_h) => format!(
            "empty at {}",
            f.clock_after(plan.night.start_clock_min, at_h)
        ),
        None => f.percent(sky.end_percent),
    };
    vec![
        name,
        f.energy(sky.solar_wh),
        f.energy(sky.used_wh),
        f.percent(sky.lowest_percent),
        end,
    ]
}

/// A note as a sentence; nothing for what the headline says.
#[must_use]
pub fn note(f: Formatter, plan: &Plan, answer: &RefillAnswer, note: &RefillNote) -> Option<String> {
    let name = |charger: usize| {
        let all = &answer.chargers;
        let found = all.iter().find(|one| one.charger == charger);
        found.map_or_else(String::new, |one| charger_name(f, plan, one))
    };
    let celsius = |c: f64| f.temperature(c);
    Some(match note.matter {
        R::NoSource => return None,
        R::NoCharger => "No charger stands in the plan: after dark days nothing fills the bank. Add one under what feeds it.".into(),
        R::NoPanels => "No panels stand in the plan: the sun brings nothing.".into(),
        R::TooWeak { charger, charger_a, beside_a } => format!(
            "{}: what runs beside takes {} of its {}. It never fills the bank.",
            name(charger), f.with_unit(beside_a, "A"), f.with_unit(charger_a, "A")
        ),
        R::TooWeakForCooling { charger, reached_percent } => format!(
            "{}: with the cooler running it gets no further than {}.",
            name(charger), f.percent(reached_percent)
        ),
        R::EndsBelow { charger, reached_percent } => format!(
            "{}: its own end of charging comes at {}. To go further it must hold more volts, if the battery’s maker allows.",
            name(charger), f.percent(reached_percent)
        ),
        R::TakesTooLong { charger } => format!(
            "{}: it would take more than {}.", name(charger), in_days(f, MOST_H)
        ),
        R::FuelRunsOut { charger, needed_l, at_hand_l } => format!(
            "{}: it takes {} of fuel and {} are at hand.",
            name(charger), fuel(f, plan, needed_l), fuel(f, plan, at_hand_l)
        ),
        R::WindowTooShort { charger, daily_h, needed_h } => format!(
            "{}: on for {} a day by the clock, so {} days of it.",
            name(charger), f.duration(daily_h), f.plain((needed_h / daily_h).ceil())
        ),
        R::TooCold { bank_c, least_c } => format!(
            "The bank is no warmer than {} all day: below {} it must not be charged.",
            celsius(bank_c), celsius(least_c)
        ),
        R::ColdAtTimes { bank_c, least_c } => format!(
            "The bank gets as cold as {}: below {} it must not be charged. Hours count only while it is warmer.",
            celsius(bank_c), celsius(least_c)
        ),
        R::TooHot { bank_c, most_c } => format!(
            "The bank gets as warm as {}: above {} it must not be charged.",
            celsius(bank_c), celsius(most_c)
        ),
        R::Derated { charger, air_c, left_percent } => format!(
            "{}: in air of {} it gives {} of its amps (common practice, no source).",
            name(charger), celsius(air_c), f.percent(left_percent)
        ),
        R::SourceLimits { charger, source_w, charger_a } => format!(
            "{}: the {} that feed it are good for {} at most.",
            name(charger), f.with_unit(source_w, "W"), f.with_unit(charger_a, "A")
        ),
        R::AboveBankLimit { charger, most_a, limit_a } => format!(
            "{}: {} are more than the {} that the batteries may bear by their label.",
            name(charger), f.with_unit(most_a, "A"), f.with_unit(limit_a, "A")
        ),
        R::NothingToFill { from_percent, to_percent } => format!(
            "{} is not below {}: there is nothing to fill.",
            f.percent(from_percent), f.percent(to_percent)
        ),
        R::NoDay => "The hot day cannot be run as the plan stands: no sun is counted, and the night is at the mode’s full draw.".into(),
    })
}

/// The cautions of a kind of charger, each with its source.
#[must_use]
pub fn cautions(f: Formatter, plan: &Plan, kind: ChargerKind) -> Vec<(String, &'static str)> {
    let all = crate::answer::cautions(plan).into_iter();
    all.filter(|one| one.is_of_charger(kind))
        .map(|one| (caution(f, plan, one), caution_source(f, one)))
        .collect()
}

/// What the curve of charge shows.
#[must_use]
pub fn charge_takeaway(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    let filled = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let each: Vec<String> = filled
        .map(|one| {
            let hours = f.duration(one.idle.hours_h.likely);
            format!("{} {hours}", lower_first(&charger_name(f, plan, one)))
        })
        .collect();
    if each.is_empty() {
        "No charger here gets there.".into()
    } else {
        format!("Until filled: {}.", each.join(", "))
    }
}

/// What the curve of amps shows.
#[must_use]
pub fn amps_takeaway(f: Formatter, answer: &RefillAnswer) -> String {
    let held = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let held: f64 = held
        .map(|one| one.idle.hours_h.likely - one.idle.constant_current_h)
        .fold(0.0, f64::max);
    if held < 1.0 / 60.0 {
        "The amps stay up to the end.".into()
    } else {
        format!(
            "The amps stay until the volts are held; then they fall for {} at the most.",
            f.duration(held)
        )
    }
}

pub const CHARGE_TITLE: &str = "Charge while it is filled";
pub const AMPS_TITLE: &str = "Amps into the bank";
pub const AXIS_CHARGE: &str = "State of charge, %";
pub const AXIS_AMPS: &str = "A";
pub const AXIS_HOURS: &str = "Hours on the charger, cooler off";

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
