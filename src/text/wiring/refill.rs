//! Can it be recharged: in sentences.

use crate::{
    answer::{
        RefillAnswer,
        refill::{ChargerRefill, Course, DaysBalance, Fill, FilledFrom, SkyDay, SunRefill},
    },
    plan::{
        Plan,
        part::Choice,
        supply::{Charger, ChargerKind},
    },
    range::Unit,
    simulate::charge::{FillEnd, MOST_H},
    study::spread::{Band, Share},
    text::{CautionText, Formatter, caution_text, field_label, m, mode_in_sentence},
};
use std::iter;

mod notes;

pub use notes::{charger_of, note};

/// Heads of the table of skies.
#[must_use]
pub fn sky_heads(f: Formatter) -> [&'static str; 5] {
    [
        f.say(m::ChargingSky),
        f.say(m::ChargingSkyYield),
        f.say(m::ChargingSkyUsed),
        f.say(m::ChargingSkyLowest),
        f.say(m::ChargingSkyEnd),
    ]
}

/// What a charger is called, numbered where there are several of a kind.
#[must_use]
pub fn charger_name(f: Formatter, plan: &Plan, charger: &ChargerRefill) -> String {
    let name = match charger.kind {
        ChargerKind::Shore => f.say(m::ChargingShore),
        ChargerKind::Engine => f.say(m::ChargingEngine),
        ChargerKind::Generator => f.say(m::ChargingGenerator),
    };
    let kinds = plan.supply.chargers.iter().map(Charger::kind_taken);
    let alike = kinds.filter(|&kind| kind == charger.kind).count();
    if alike > 1 {
        f.say(m::ChargingNumbered {
            charger: name,
            number: (charger.charger + 1).to_string(),
        })
    } else {
        name.into()
    }
}

/// The answer: by the quickest charger, or what the night leaves; then by the sun.
#[must_use]
pub fn headline(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    if notes::is_without_source(answer) {
        return f.say(m::ChargingNothing).into();
    }
    let days = answer.days.as_ref().map(|days| days.course);
    let is_falling = matches!(days, Some(Course::Falling { .. } | Course::Empty { .. }));
    let sun = answer.sun.as_ref();
    let sun = sun.map(|sun| sun_sentence(f, plan, sun, is_falling));
    let first = charger_sentence(f, plan, answer).unwrap_or_else(|| start_sentence(f, answer));
    let sentences: Vec<String> = iter::once(first).chain(sun).collect();
    sentences.join(" ")
}

/// What is in the bank when charging begins.
fn start_sentence(f: Formatter, answer: &RefillAnswer) -> String {
    let from = f.percent(answer.from_percent.likely);
    match answer.from {
        FilledFrom::Stated => f.say(m::ChargingStarts { from }),
        FilledFrom::Night | FilledFrom::ConstantDraw => f.say(m::ChargingLeaves { from }),
    }
}

/// The quickest charger, or that none does it.
fn charger_sentence(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> Option<String> {
    let from = f.percent(answer.from_percent.likely);
    let goal = f.percent(answer.to_percent);
    let filled = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let quickest = filled.min_by(|a, b| a.idle.hours_h.likely.total_cmp(&b.idle.hours_h.likely));
    let Some(quickest) = quickest else {
        let has_any = !answer.chargers.is_empty();
        return has_any.then(|| f.say(m::ChargingByNone { from, goal }));
    };
    let hours = quickest.idle.hours_h.likely;
    Some(if hours <= 0.0 {
        f.say(m::ChargingFullAlready { from })
    } else {
        f.say(m::ChargingByCharger {
            charger: charger_name(f, plan, quickest),
            from,
            goal,
            time: f.duration(hours),
        })
    })
}

/// Whether tomorrow gives back what tonight takes. Where the days go down all the same,
/// what came back by the afternoon is used again before the next night.
fn sun_sentence(f: Formatter, plan: &Plan, sun: &SunRefill, is_falling: bool) -> String {
    let day = &sun.tomorrow;
    let at = |hours| f.clock_after(plan.night.start_clock_min, hours);
    match (day.repaid_h, day.empty_h) {
        (_, Some(empty_h)) => f.say(m::ChargingSunEmpty { clock: at(empty_h) }),
        (Some(_), None) if day.start_percent - day.lowest_percent < 0.5 => {
            f.say(m::ChargingSunKeepsUp).into()
        }
        (Some(_), None) if is_falling => f.say(m::ChargingSunAlmost).into(),
        (Some(at_h), None) => f.say(m::ChargingSunBy { clock: at(at_h) }),
        (None, None) if day.repaid_percent < 1.0 => f.say(m::ChargingSunNothing).into(),
        (None, None) => f.say(m::ChargingSunShare {
            share: f.percent(day.repaid_percent.min(99.0)),
        }),
    }
}

/// Where the charge to start from comes from, and what is missing.
#[must_use]
pub fn from_line(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    let Band { low, likely, high } = answer.from_percent;
    let likely = f.percent(likely);
    let from = match answer.from {
        FilledFrom::Stated => f.say(m::ChargingFromStated { likely }),
        FilledFrom::Night => f.say(m::ChargingFromNight {
            likely,
            low: f.percent(low),
            high: f.percent(high),
        }),
        FilledFrom::ConstantDraw => f.say(m::ChargingFromDraw {
            mode: asked_mode(f, plan),
            likely,
        }),
    };
    let missing = f.say(m::ChargingMissing {
        charge: f.with_unit(answer.missing_ah, "Ah"),
        power: f.with_unit(answer.beside_w, "W"),
    });
    format!("{from} {missing}")
}

/// The mode that the night asks for.
fn asked_mode(f: Formatter, plan: &Plan) -> String {
    mode_in_sentence(f, plan, plan.night.asked_unit, plan.night.asked_mode)
}

/// Where the days lead.
#[must_use]
pub fn course(f: Formatter, days: &DaysBalance, to_percent: f64) -> String {
    let fed = f.energy(days.fed_daily_wh);
    let used = f.energy(days.used_daily_wh);
    let goal = f.percent(to_percent);
    match days.course {
        Course::Empty { after_h, .. } => {
            let time = f.duration(after_h);
            f.say(m::ChargingDaysEmpty { fed, used, time })
        }
        Course::Falling { after_h } => {
            let time = f.duration(after_h);
            f.say(m::ChargingDaysFalling { fed, used, time })
        }
        Course::Full { after_h } => {
            let time = f.duration(after_h);
            f.say(m::ChargingDaysFull {
                fed,
                used,
                goal,
                time,
            })
        }
        Course::Rising { after_h } => {
            let time = f.duration(after_h);
            f.say(m::ChargingDaysRising {
                fed,
                used,
                goal,
                time,
            })
        }
        Course::Level => {
            let last = days.end_percent.last().copied().unwrap_or(0.0);
            let last = f.percent(last);
            f.say(m::ChargingDaysLevel { fed, used, last })
        }
    }
}

/// The right end of a charger's row.
#[must_use]
pub fn charger_verdict(f: Formatter, fill: &Fill) -> String {
    match (fill.is_filled, fill.end) {
        (true, _) => with_band(f, fill.hours_h),
        (false, FillEnd::TooWeak) => f.say(m::ChargingNever).into(),
        (false, FillEnd::TooLong) => f.say(m::ChargingTooLong {
            time: f.duration(MOST_H),
        }),
        (false, FillEnd::Refused) => f.say(m::ChargingRefused).into(),
        (false, _) => f.say(m::ChargingEndsAt {
            percent: f.percent(fill.reached_percent),
        }),
    }
}

fn with_band(f: Formatter, band: Band) -> String {
    let likely = f.duration(band.likely);
    let (low, high) = f.duration_range(band.low, band.high);
    if band.high - band.low < 0.02 * band.likely {
        likely
    } else if band.high >= MOST_H - 1e-9 {
        f.say(m::ChargingRangeOpen { likely, low })
    } else {
        f.say(m::ChargingRange { likely, low, high })
    }
}

/// What stands in a charger's row, line by line.
#[must_use]
pub fn charger_lines(f: Formatter, plan: &Plan, charger: &ChargerRefill) -> Vec<String> {
    let fill = &charger.idle;
    let mut lines = Vec::new();
    if fill.is_filled || fill.end == FillEnd::CalledFull {
        lines.push(phases(f, charger, fill));
    }
    let cooling = charger.cooling.as_ref();
    lines.extend(cooling.map(|with| cooling_line(f, plan, with)));
    if fill.charger_wh > 0.0 {
        lines.push(energy_line(f, charger, fill));
        lines.push(formula(f, charger, fill));
    }
    lines.extend(fuel_and_cost(f, fill));
    lines.extend(spread_line(f, &charger.spread_from));
    lines.push(f.say(m::ChargingMethod).into());
    lines
}

/// Constant current, then constant voltage.
fn phases(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    let first = fill.curve.first().map_or(0.0, |at| at.charger_a);
    let held_h = fill.hours_h.likely - fill.constant_current_h;
    let time = f.duration(fill.constant_current_h);
    let current = f.with_unit(first, "A");
    let volts = f.volts(charger.hold_v);
    let held = f.duration(held_h);
    if fill.end == FillEnd::CalledFull {
        return f.say(m::ChargingCalledFull {
            time,
            current,
            held,
            volts,
            end: f.with_unit(charger.end_a, "A"),
            percent: f.percent(fill.reached_percent),
        });
    }
    if held_h < 1.0 / 60.0 && fill.end == FillEnd::Reached {
        return f.say(m::ChargingOnePhase {
            time,
            current,
            volts,
        });
    }
    f.say(m::ChargingTwoPhases {
        time,
        current,
        held,
        volts,
    })
}

fn cooling_line(f: Formatter, plan: &Plan, fill: &Fill) -> String {
    let mode = asked_mode(f, plan);
    match (fill.is_filled, fill.end) {
        (true, _) => f.say(m::ChargingCooling {
            mode,
            time: with_band(f, fill.hours_h),
        }),
        (false, FillEnd::TooWeak) if fill.into_ah <= 0.0 => f.say(m::ChargingCoolingNot { mode }),
        (false, FillEnd::TooLong) => f.say(m::ChargingCoolingLong {
            mode,
            time: f.duration(MOST_H),
        }),
        (false, _) => f.say(m::ChargingCoolingBelow {
            mode,
            percent: f.percent(fill.reached_percent),
        }),
    }
}

fn energy_line(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    f.say(m::ChargingEnergy {
        taken: f.energy(fill.taken_wh),
        source: charger.kind.key(),
        efficiency: f.percent(charger.efficiency_percent),
        given: f.energy(fill.charger_wh),
        loads: f.energy(fill.loads_wh),
        lost: f.energy(fill.lost_wh),
    })
}

/// The rule of thumb with this plan's numbers in it.
fn formula(f: Formatter, charger: &ChargerRefill, fill: &Fill) -> String {
    let first = fill.curve.first();
    let (charger_a, bank_a) = first.map_or((0.0, 0.0), |at| (at.charger_a, at.bank_a));
    f.say(m::ChargingFormula {
        charge: f.with_unit(fill.into_ah, "Ah"),
        charger: f.with_unit(charger_a, "A"),
        loads: f.with_unit(charger_a - bank_a, "A"),
        time: f.duration(fill.into_ah / bank_a.max(1e-9)),
        volts: f.volts(charger.hold_v),
    })
}

fn fuel_and_cost(f: Formatter, fill: &Fill) -> impl Iterator<Item = String> {
    let fuel = fill.fuel_l.map(|liters| f.value(liters, Unit::Liter));
    let fuel = fuel.map(|fuel| f.say(m::ChargingFuel { fuel }));
    let price = fill.price_number.map(|price| f.plain(price));
    let cost = price.map(|price| f.say(m::ChargingCost { price }));
    fuel.into_iter().chain(cost)
}

/// The two inputs that make most of a band.
fn spread_line(f: Formatter, shares: &[Share]) -> Option<String> {
    let named: Vec<String> = shares
        .iter()
        .take(2)
        .filter(|share| share.share_percent >= 5.0)
        .map(|share| {
            let label = field_label(f, share.field);
            format!("{label} ({})", f.percent(share.share_percent))
        })
        .collect();
    let inputs = f.all_of(&named);
    (!named.is_empty()).then(|| f.say(m::ChargingSpread { inputs }))
}

/// The right end of the sun's row.
#[must_use]
pub fn sun_verdict(f: Formatter, plan: &Plan, sun: &SunRefill) -> String {
    let day = &sun.tomorrow;
    match (day.repaid_h, day.empty_h) {
        (_, Some(_)) => f.say(m::ChargingRunsEmpty).into(),
        (Some(at_h), _) => f.say(m::ChargingRechargedBy {
            clock: f.clock_after(plan.night.start_clock_min, at_h),
        }),
        _ => f.say(m::ChargingRechargedShare {
            share: f.percent(day.repaid_percent.min(99.0)),
        }),
    }
}

/// What stands in the sun's row, before its table.
#[must_use]
pub fn sun_lines(f: Formatter, plan: &Plan, answer: &RefillAnswer, sun: &SunRefill) -> Vec<String> {
    let day = &sun.tomorrow;
    let at = |hours| f.clock_after(plan.night.start_clock_min, hours);
    let end = sun.end_percent;
    let course = f.say(m::ChargingSunCourse {
        start: f.percent(day.start_percent),
        start_clock: at(0.0),
        lowest: f.percent(day.lowest_percent),
        lowest_clock: at(day.lowest_h),
        end: f.percent(end.likely),
        low: f.percent(end.low),
        high: f.percent(end.high),
    });
    let goal = f.percent(answer.to_percent);
    let idle = match sun.idle_h {
        Some(hours) => f.say(m::ChargingSunIdle {
            goal,
            time: f.duration(hours),
        }),
        None => f.say(m::ChargingSunIdleNever { goal }),
    };
    let unused = (day.spilled_wh >= 10.0).then(|| {
        f.say(m::ChargingSunUnused {
            energy: f.energy(day.spilled_wh),
        })
    });
    let more = unused.into_iter().chain(spread_line(f, &sun.spread_from));
    [course, idle].into_iter().chain(more).collect()
}

/// A row of the table of skies.
#[must_use]
pub fn sky_row(f: Formatter, plan: &Plan, sky: &SkyDay) -> Vec<String> {
    let name = match sky.cloud_percent {
        cloud if cloud < 5.0 => f.say(m::ChargingSkyClear).into(),
        cloud if cloud > 95.0 => f.say(m::ChargingSkyOvercast).into(),
        cloud => f.say(m::ChargingSkyCloud {
            share: f.percent(cloud),
        }),
    };
    let end = match sky.empty_h {
        Some(at_h) => f.say(m::ChargingEmptyAt {
            clock: f.clock_after(plan.night.start_clock_min, at_h),
        }),
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

/// The cautions of a kind of charger.
#[must_use]
pub fn cautions(f: Formatter, plan: &Plan, kind: ChargerKind) -> Vec<CautionText> {
    let all = crate::answer::cautions(plan).into_iter();
    all.filter(|one| one.is_of_charger(kind))
        .map(|one| caution_text(f, plan, one))
        .collect()
}

/// What the curve of charge shows.
#[must_use]
pub fn charge_takeaway(f: Formatter, plan: &Plan, answer: &RefillAnswer) -> String {
    let goal = f.percent(answer.to_percent);
    let filled = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let each = filled.map(|one| {
        f.say(m::ChargingItem {
            charger: charger_name(f, plan, one),
            time: f.duration(one.idle.hours_h.likely),
        })
    });
    let times = each.collect::<Vec<_>>().join(", ");
    if times.is_empty() {
        f.say(m::ChargingNoneFills { goal })
    } else {
        f.say(m::ChargingUntilFilled { goal, times })
    }
}

/// What the curve of current shows.
#[must_use]
pub fn amps_takeaway(f: Formatter, answer: &RefillAnswer) -> String {
    let filled = answer.chargers.iter().filter(|one| one.idle.is_filled);
    let held_h: f64 = filled
        .map(|one| one.idle.hours_h.likely - one.idle.constant_current_h)
        .fold(0.0, f64::max);
    if held_h < 1.0 / 60.0 {
        f.say(m::ChargingCurrentStays).into()
    } else {
        f.say(m::ChargingCurrentFalls {
            time: f.duration(held_h),
        })
    }
}
