//! What happens on the days: events, what the charts show, what to know first.

use super::{ONE_DAY_H, all_days, moment};
use crate::text::Formatter;
use crate::{
    answer::day::{DayAnswer, DayEvent, Happening, ModeAt},
    plan::{Path, Plan, day::DayField},
    text::{full_mode_name, stop_phrase},
};

/// An event beside its line in a chart: short.
#[must_use]
pub fn event_label(f: Formatter, plan: &Plan, event: &DayEvent) -> String {
    match event.what {
        Happening::Empty { .. } => "empty".into(),
        Happening::BackOn => "back on".into(),
        Happening::Full => "full".into(),
        Happening::UnitStopped { .. } => "unit stops".into(),
        Happening::SetPointLost => "too warm".into(),
        Happening::SetPointRegained => "held again".into(),
        Happening::ModeChanged { mode } => mode_label(f, plan, mode),
        Happening::ChargingRefused { .. } => "no charging".into(),
        Happening::ChargingResumed => "charging again".into(),
        Happening::FuelGone { .. } => "fuel gone".into(),
    }
}

fn mode_label(f: Formatter, plan: &Plan, mode: Option<ModeAt>) -> String {
    mode.map_or_else(
        || "unit off".into(),
        |at| full_mode_name(f, plan, at.unit, at.mode),
    )
}

/// An event as a sentence of its own, after its clock time.
#[must_use]
pub fn event_sentence(f: Formatter, plan: &Plan, event: &DayEvent) -> String {
    match event.what {
        Happening::Empty {
            stop,
            starting: None,
        } => format!(
            "Everything on the bank is off: it ends {}.",
            stop_phrase(f, &stop)
        ),
        Happening::Empty {
            stop,
            starting: Some(at),
        } => format!(
            "Everything on the bank is off: the start of {} ends it {}. The loads alone would be carried.",
            full_mode_name(f, plan, at.unit, at.mode),
            stop_phrase(f, &stop)
        ),
        Happening::BackOn => {
            "The bank is charged far enough again: loads and unit come back.".into()
        }
        Happening::Full => "The bank is as full as it gets.".into(),
        Happening::UnitStopped { stop } => {
            format!("The cooling unit alone stops, {}.", stop_phrase(f, &stop))
        }
        Happening::SetPointLost => "The cabin is warmer than the set point and its band.".into(),
        Happening::SetPointRegained => "The cabin is back at its set point.".into(),
        Happening::ModeChanged { mode: Some(at) } => {
            format!("{} begins.", full_mode_name(f, plan, at.unit, at.mode))
        }
        Happening::ModeChanged { mode: None } => {
            "The cooling unit is off by the plan; doors and roof light are open.".into()
        }
        Happening::ChargingRefused { bank_c } => format!(
            "The bank is at {} and takes no charge: lithium is charged neither below freezing nor hot.",
            f.temperature(bank_c)
        ),
        Happening::ChargingResumed => "The bank takes charge again.".into(),
        Happening::FuelGone { .. } => "The generator’s fuel is used up.".into(),
    }
}

/// What the temperatures show.
#[must_use]
pub fn temperature_takeaway(f: Formatter, _plan: &Plan, day: &DayAnswer) -> String {
    let outdoor = day.trace.iter().map(|point| point.outdoor_c);
    let (low, high) = span_of(outdoor);
    let idle = day.trace.iter().filter(|point| point.mode.is_none());
    let (_, hottest) = span_of(idle.map(|point| point.cabin_c));
    let mut text = format!(
        "Outdoors goes from {} to {}.",
        f.temperature(low),
        f.temperature(high)
    );
    if hottest.is_finite() && hottest > day.warmest_c {
        text += &format!(
            " With the unit off the cabin reaches {}: this is no place to leave anyone.",
            f.temperature(hottest)
        );
    }
    text
}

/// What the charge shows.
#[must_use]
pub fn charge_takeaway(f: Formatter, day: &DayAnswer) -> String {
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
        f.percent(day.least_charge_percent),
        moment(f, day, least.hours_h),
        f.percent(end)
    )
}

/// What the power shows: the energy book in a sentence.
#[must_use]
pub fn power_takeaway(f: Formatter, day: &DayAnswer) -> String {
    let book = &day.energy;
    let mut ways_in = vec![format!("the panels {}", f.energy(book.solar_wh))];
    if book.charger_wh > 0.0 {
        ways_in.push(format!("chargers {}", f.energy(book.charger_wh)));
    }
    if book.from_store_wh > 0.0 {
        ways_in.push(format!("the bank’s store {}", f.energy(book.from_store_wh)));
    }
    format!(
        "In {}: {}. Out: the unit {}, loads {}.",
        all_days(f, day),
        ways_in.join(", "),
        f.energy(book.unit_wh),
        f.energy(book.loads_wh)
    )
}

/// For how long the unit alone is stopped, and by what first; nothing if it never is.
pub(super) fn unit_off_sentence(f: Formatter, day: &DayAnswer) -> Option<String> {
    let off_h: f64 = day.days.iter().map(|sum| sum.unit_off_h).sum();
    let stop = day.events.iter().find_map(|event| match event.what {
        Happening::UnitStopped { stop } => Some(stop),
        _ => None,
    })?;
    (off_h > 0.0).then(|| {
        format!(
            "The cooling unit is stopped for {} with a mode planned, {}; everything else runs on.",
            f.duration(off_h),
            stop_phrase(f, &stop)
        )
    })
}

fn span_of(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// The first things that anyone should know of these days, most pressing first.
#[must_use]
pub fn first_things(f: Formatter, plan: &Plan, day: &DayAnswer) -> Vec<String> {
    let mut things = Vec::new();
    let dark_h: f64 = day.days.iter().map(|sum| sum.dark_h).sum();
    if dark_h > 0.0 {
        things.push(format!(
            "Everything electric is off for {} of these days: lamps, fan and fridge too.",
            f.duration(dark_h)
        ));
    }
    let lost_h: f64 = day.days.iter().map(|sum| sum.lost_h).sum();
    if lost_h > 0.0 {
        things.push(format!(
            "For {} with a mode planned the cabin is above {} and its band.",
            f.duration(lost_h),
            f.temperature(day.set_point_c)
        ));
    }
    let days = day.span_h / ONE_DAY_H;
    if days > 1.5 && day.energy.from_store_wh > 0.0 {
        things.push(format!(
            "Each day takes about {} more out of the bank than comes in.",
            f.energy(day.energy.from_store_wh / days)
        ));
    }
    if day.energy.spilled_wh > 0.1 * (day.energy.solar_wh + day.energy.spilled_wh) {
        things.push(format!(
            "The panels offer {} that nothing takes: the bank is full by then.",
            f.energy(day.energy.spilled_wh)
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
