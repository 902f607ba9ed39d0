//! What would buy more hours, and the bedtime line, in words.

use super::{chance, day_number, until_wanted};
use crate::text::Formatter;
use crate::{
    answer::day::{BedtimeLine, Change, DayAnswer, Latest, ModeAt, MoreHours, RankedChange},
    plan::{Path, Plan, entry::shown, supply::ArrayField},
    range::Unit,
    text::{
        day_words::{colour_name, covers_name, insulation_name},
        full_mode_name,
    },
};

/// Gains below these are none to speak of.
const LEAST_H: f64 = 0.1;
const LEAST_WH: f64 = 20.0;

/// A change, as one would make it.
#[must_use]
pub fn change_name(f: Formatter, plan: &Plan, change: &Change) -> String {
    match *change {
        Change::OneMoreString { parallel_count } => {
            format!("One more string of batteries: {parallel_count} in parallel")
        }
        Change::PanelWatts { array, rated_w } => {
            let now_w = plan
                .number(Path::Array(array, ArrayField::RatedW))
                .filter(|_| array < plan.supply.arrays.len())
                .unwrap_or(0.0);
            let more = f.with_unit((rated_w - now_w).max(0.0), "W");
            if now_w > 0.0 {
                format!(
                    "{more} more of panels, {} in all",
                    f.with_unit(rated_w, "W")
                )
            } else {
                format!("{more} of panels, flat on the roof")
            }
        }
        Change::PanelsInTheOpen { .. } => "The panels out of the shade".into(),
        Change::ChargerAmps { most_a, .. } => {
            format!("A stronger charger: {}", f.with_unit(most_a, "A"))
        }
        Change::FullAtStart => "The bank full at the start".into(),
        Change::SetPoint { set_point_c } => {
            format!("A set point of {}", f.temperature(set_point_c))
        }
        Change::LowerMode { unit, mode, lower } => format!(
            "{} instead of {}",
            full_mode_name(f, plan, unit, lower),
            full_mode_name(f, plan, unit, mode)
        ),
        Change::Covers { covers } => format!("Before the windows: {}", covers_name(f, covers)),
        Change::Shade { shade_percent } => format!(
            "Parked in the shade: {} of the sun kept off, panels and all",
            f.percent(shade_percent)
        ),
        Change::Insulation { insulation } => {
            format!("Insulation: {}", insulation_name(f, insulation))
        }
        Change::Colour { colour } => format!("A {} outside", colour_name(f, colour)),
        Change::LoadOff { load } => {
            let name = plan.loads.get(load).map_or("", |load| load.name.trim());
            if name.is_empty() {
                format!("Without load {}", load + 1)
            } else {
                format!("Without “{name}”")
            }
        }
    }
}

/// What a change gains, and what it weighs and costs where that is known.
#[must_use]
pub fn change_gain(f: Formatter, plan: &Plan, all: &MoreHours, one: &RankedChange) -> String {
    let mut said = vec![gain(f, all, one)];
    if let (Some(now), Some(then)) = (all.now.chances, one.worth.chances)
        && (then.lasting_percent - now.lasting_percent).abs() >= 5.0
    {
        said.push(format!(
            "lasting the night {}, now {}",
            chance(f, then.lasting_percent),
            chance(f, now.lasting_percent)
        ));
    }
    let warmer_k = one.worth.warmest_c - all.now.warmest_c;
    if warmer_k.abs() >= 0.5 && one.worth.warmest_c > crate::answer::day::COLDEST_C {
        said.push(format!(
            "the cabin {} at the warmest",
            f.temperature(one.worth.warmest_c)
        ));
    }
    if let Some(kg) = one.mass_kg.filter(|&kg| kg >= 0.5) {
        said.push(format!("about {} more to carry", mass(f, plan, kg)));
    }
    if let Some(cost) = one.cost_number {
        said.push(format!("for {} by your price", f.with_unit(cost, "")));
    }
    said.join("; ")
}

/// Whole kilograms or pounds.
fn mass(f: Formatter, _plan: &Plan, kg: f64) -> String {
    let mass = shown(kg, Unit::Kilogram, f.units);
    f.with_unit(mass.round(), f.sign(Unit::Kilogram))
}

fn gain(f: Formatter, all: &MoreHours, one: &RankedChange) -> String {
    let never_empty = one.worth.hours_h >= all.span_h;
    if one.gained_h >= LEAST_H && never_empty {
        format!("not empty in all {} days tried", day_number(all.span_h) - 1)
    } else if one.gained_h >= LEAST_H {
        format!("{} more until empty", f.duration(one.gained_h))
    } else if one.gained_h <= -LEAST_H {
        format!("{} less until empty", f.duration(-one.gained_h))
    } else if one.gained_holding_h >= LEAST_H {
        format!(
            "the set point held {} longer",
            f.duration(one.gained_holding_h)
        )
    } else if one.gained_spare_wh >= LEAST_WH {
        format!(
            "{} more to spare at the lowest",
            f.energy(one.gained_spare_wh)
        )
    } else if one.gained_spare_wh <= -LEAST_WH {
        format!(
            "{} less to spare at the lowest",
            f.energy(-one.gained_spare_wh)
        )
    } else {
        "nothing to speak of".into()
    }
}

/// What pressing its button does.
#[must_use]
pub fn try_change(_f: Formatter, what: &str) -> String {
    format!("Try it in the plan: {what}")
}

/// The bedtime lines, strong modes first. Where nothing needs changing it is said
/// once.
#[must_use]
pub fn bedtime_sentences(
    f: Formatter,
    plan: &Plan,
    day: &DayAnswer,
    lines: &[BedtimeLine],
) -> Vec<String> {
    let until = until_wanted(f, day);
    let mode = |at: ModeAt| full_mode_name(f, plan, at.unit, at.mode);
    let no_need = lines
        .iter()
        .find(|line| matches!(line.latest, Latest::NoNeed { .. }));
    if let Some(line) = no_need {
        return vec![format!(
            "No need to change down: with {} all along at least nine nights in ten last {until}.",
            mode(line.from)
        )];
    }
    let said = lines.iter().map(|line| {
        let change = match line.to {
            Some(to) => format!("Change from {} to {}", mode(line.from), mode(to)),
            None => format!("Turn {} off", mode(line.from)),
        };
        match line.latest {
            Latest::By { clock_min, .. } => format!(
                "{change} by {} at the latest: then nine nights in ten last {until}.",
                f.clock(f64::from(clock_min))
            ),
            Latest::TooLate { lasting_percent } | Latest::NoNeed { lasting_percent } => format!(
                "{change} at the start and lasting {until} is still {}.",
                chance(f, lasting_percent)
            ),
        }
    });
    said.collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::day::{bedtime_lines, day, more_hours};

    #[test]
    fn a_small_bank_hears_of_hours_and_a_big_one_of_spare() {
        let mut plan = Plan::demo();
        let all = more_hours(&plan).unwrap();
        let best = change_gain(Formatter::ENGLISH, &plan, &all, &all.changes[0]);
        assert!(best.contains("to spare at the lowest"), "{best}");
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 15.0;
        plan.day.days_count = Some(1);
        let all = more_hours(&plan).unwrap();
        let best = change_gain(Formatter::ENGLISH, &plan, &all, &all.changes[0]);
        assert!(
            best.contains("until empty") || best.contains("not empty"),
            "{best}"
        );
    }

    #[test]
    fn the_bedtime_line_is_a_clock_time() {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        let say = |plan: &Plan| {
            let lines = bedtime_lines(plan).unwrap();
            bedtime_sentences(Formatter::ENGLISH, plan, &day(plan).unwrap(), &lines)
        };
        assert!(say(&plan)[0].starts_with("No need"), "{:?}", say(&plan));
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 22.0;
        let said = say(&plan);
        assert!(said.iter().any(|text| text.contains("Hush")), "{said:?}");
        assert!(
            said.iter().any(|text| text.starts_with("Turn Hold off")),
            "{said:?}"
        );
    }
}
