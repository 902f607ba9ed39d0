//! What would buy more hours, and the bedtime line, in words.

use super::{ONE_DAY_H, chance, until_wanted};
use crate::text::{Formatter, m};
use crate::{
    answer::day::{
        BedtimeLine, COLDEST_C, Change, DayAnswer, Latest, ModeAt, MoreHours, RankedChange,
    },
    plan::{Path, Plan, entry::shown, supply::ArrayField},
    range::Unit,
    text::{
        day_words::{colour_name, covers_name, insulation_name},
        full_mode_name, mode_in_sentence,
    },
};

/// Gains below these are none to speak of.
const LEAST_H: f64 = 0.1;
const LEAST_WH: f64 = 20.0;

/// A change, as one would make it.
#[must_use]
pub fn change_name(f: Formatter, plan: &Plan, change: &Change) -> String {
    let name = |unit, mode| full_mode_name(f, plan, unit, mode);
    match *change {
        Change::OneMoreString { parallel_count } => f.say(m::DayChangeString {
            kind: if plan.banks.first().is_some_and(|bank| bank.series_count > 1) {
                "string"
            } else {
                "battery"
            },
            count: parallel_count,
        }),
        Change::PanelWatts { array, rated_w } => panel_watts(f, plan, array, rated_w),
        Change::PanelsInTheOpen { .. } => f.say(m::DayChangePanelsInOpen).into(),
        Change::ChargerAmps { most_a, .. } => f.say(m::DayChangeCharger {
            current: f.with_unit(most_a, "A"),
        }),
        Change::FullAtStart => f.say(m::DayChangeFullAtStart).into(),
        Change::SetPoint { set_point_c } => f.say(m::DayChangeSetPoint {
            temperature: f.temperature(set_point_c),
        }),
        Change::LowerMode { unit, mode, lower } => f.say(m::DayChangeLowerMode {
            lower: name(unit, lower),
            mode: name(unit, mode),
        }),
        Change::Covers { covers } => f.say(m::DayChangeCovers {
            covers: covers_name(f, covers),
        }),
        Change::Shade { shade_percent } => f.say(m::DayChangeShade {
            share: f.percent(shade_percent),
        }),
        Change::Insulation { insulation } => f.say(m::DayChangeInsulation {
            insulation: insulation_name(f, insulation),
        }),
        Change::Colour { colour } => f.say(m::DayChangeColour {
            colour: colour_name(f, colour),
        }),
        Change::LoadOff { load } => {
            let name = plan.loads.get(load).map_or("", |load| load.name.trim());
            if name.is_empty() {
                f.say(m::DayChangeLoadNumber {
                    number: f.number(load as f64 + 1.0),
                })
            } else {
                f.say(m::DayChangeLoad { name })
            }
        }
    }
}

fn panel_watts(f: Formatter, plan: &Plan, array: usize, rated_w: f64) -> String {
    let now_w = plan
        .number(Path::Array(array, ArrayField::RatedW))
        .filter(|_| array < plan.supply.arrays.len())
        .unwrap_or(0.0);
    let more = f.with_unit((rated_w - now_w).max(0.0), "W");
    if now_w > 0.0 {
        let all = f.with_unit(rated_w, "W");
        f.say(m::DayChangeMorePanels { more, all })
    } else {
        f.say(m::DayChangePanels { power: more })
    }
}

/// What a change gains, and what it weighs and costs where that is known.
#[must_use]
pub fn change_gain(f: Formatter, all: &MoreHours, one: &RankedChange) -> String {
    let mut said = vec![gain(f, all, one)];
    let is_worse = one.gained_h <= -LEAST_H
        || one.gained_h < LEAST_H
            && one.gained_holding_h < LEAST_H
            && one.gained_spare_wh <= -LEAST_WH;
    if is_worse && matches!(one.change, Change::Insulation { .. }) {
        said.push(f.say(m::DayGainKeepsHeat).into());
    }
    if let (Some(now), Some(then)) = (all.now.chances, one.worth.chances)
        && (then.lasting_percent - now.lasting_percent).abs() >= 5.0
    {
        said.push(f.say(m::DayGainChance {
            then: chance(f, then.lasting_percent),
            now: chance(f, now.lasting_percent),
        }));
    }
    let warmer_k = one.worth.warmest_c - all.now.warmest_c;
    if warmer_k.abs() >= 0.5 && one.worth.warmest_c > COLDEST_C {
        said.push(f.say(m::DayGainWarmest {
            temperature: f.temperature(one.worth.warmest_c),
        }));
    }
    if let Some(kg) = one.mass_kg.filter(|&kg| kg >= 0.5) {
        said.push(f.say(m::DayGainMass { mass: mass(f, kg) }));
    }
    if let Some(cost) = one.cost_number {
        said.push(f.say(m::DayGainCost {
            cost: f.plain(cost),
        }));
    }
    said.join("; ")
}

/// Whole kilograms or pounds.
fn mass(f: Formatter, kg: f64) -> String {
    let mass = shown(kg, Unit::Kilogram, f.units);
    f.with_unit(mass.round(), f.sign(Unit::Kilogram))
}

fn gain(f: Formatter, all: &MoreHours, one: &RankedChange) -> String {
    let never_empty = one.worth.hours_h >= all.span_h;
    let duration = |hours_h: f64| f.duration(hours_h.abs());
    let energy = |wh: f64| f.energy(wh.abs());
    // The days tried, three at least, may be more than the plan's own.
    let tried = (all.span_h / ONE_DAY_H).round();
    let days = || {
        f.say(m::DurationDays {
            count: tried,
            days: f.number(tried),
        })
    };
    if one.gained_h >= LEAST_H && never_empty {
        f.say(m::DayGainNeverEmpty { count: tried })
    } else if one.gained_h >= LEAST_H {
        f.say(m::DayGainHours {
            duration: duration(one.gained_h),
            days: days(),
        })
    } else if one.gained_h <= -LEAST_H {
        f.say(m::DayGainFewerHours {
            duration: duration(one.gained_h),
            days: days(),
        })
    } else if one.gained_holding_h >= LEAST_H {
        f.say(m::DayGainHolding {
            duration: duration(one.gained_holding_h),
            days: days(),
        })
    } else if one.gained_spare_wh >= LEAST_WH {
        f.say(m::DayGainSpare {
            energy: energy(one.gained_spare_wh),
        })
    } else if one.gained_spare_wh <= -LEAST_WH {
        f.say(m::DayGainLessSpare {
            energy: energy(one.gained_spare_wh),
        })
    } else {
        f.say(m::DayGainNone).into()
    }
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
    let mode = |at: ModeAt| mode_in_sentence(f, plan, at.unit, at.mode);
    let no_need = lines
        .iter()
        .find(|line| matches!(line.latest, Latest::NoNeed { .. }));
    if let Some(line) = no_need {
        let mode = mode(line.from);
        return vec![f.say(m::DayBedtimeNoNeed { mode, until })];
    }
    let said = lines.iter().map(|line| {
        let (until, lower) = (&until, line.to.map(mode));
        let mode = mode(line.from);
        match line.latest {
            Latest::By { clock_min, .. } => {
                let clock = f.clock(f64::from(clock_min));
                match lower {
                    Some(lower) => f.say(m::DayBedtimeChange {
                        mode,
                        lower,
                        clock,
                        until,
                    }),
                    None => f.say(m::DayBedtimeOff { mode, clock, until }),
                }
            }
            Latest::TooLate { lasting_percent } | Latest::NoNeed { lasting_percent } => {
                let chance = chance(f, lasting_percent);
                match lower {
                    Some(lower) => f.say(m::DayBedtimeChangeLate {
                        mode,
                        lower,
                        until,
                        chance,
                    }),
                    None => f.say(m::DayBedtimeOffLate {
                        mode,
                        until,
                        chance,
                    }),
                }
            }
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
        let best = change_gain(Formatter::ENGLISH, &all, &all.changes[0]);
        assert!(best.contains("left at the lowest point"), "{best}");
        plan.banks[0].parallel_count = 1;
        plan.banks[0].battery_rated_ah.value = 15.0;
        plan.day.days_count = Some(1);
        let all = more_hours(&plan).unwrap();
        let best = change_gain(Formatter::ENGLISH, &all, &all.changes[0]);
        assert!(
            best.contains("until empty") || best.contains("lasts all 3 days"),
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
