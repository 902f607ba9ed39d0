//! What happens on the days: events, what the charts show, what to know first.

use super::{ONE_DAY_H, all_days, moments};
use crate::text::{Formatter, m};
use crate::{
    answer::day::{DayAnswer, DayEvent, Happening, ModeAt},
    plan::{Path, Plan, day::DayField},
    text::{full_mode_name, mode_in_sentence, stop_phrase},
};

/// An event beside its line in a chart: short.
#[must_use]
pub fn event_label(f: Formatter, plan: &Plan, event: &DayEvent) -> String {
    let fixed = match event.what {
        Happening::ModeChanged { mode: Some(at) } => {
            return full_mode_name(f, plan, at.unit, at.mode);
        }
        Happening::ModeChanged { mode: None } => f.say(m::DayMarkUnitOff),
        Happening::Empty { .. } => f.say(m::DayMarkEmpty),
        Happening::BackOn => f.say(m::DayMarkBackOn),
        Happening::Full => f.say(m::DayMarkFull),
        Happening::UnitStopped { .. } => f.say(m::DayMarkUnitStops),
        Happening::SetPointLost => f.say(m::DayMarkTooWarm),
        Happening::SetPointRegained => f.say(m::DayMarkCoolAgain),
        Happening::ChargingRefused { .. } => f.say(m::DayMarkNoCharging),
        Happening::ChargingResumed => f.say(m::DayMarkChargingAgain),
        Happening::FuelGone { .. } => f.say(m::DayMarkFuelGone),
    };
    fixed.into()
}

/// An event as a sentence of its own, after its clock time.
#[must_use]
pub fn event_sentence(f: Formatter, plan: &Plan, event: &DayEvent) -> String {
    let mode = |at: ModeAt| mode_in_sentence(f, plan, at.unit, at.mode);
    let fixed = match event.what {
        Happening::Empty { stop, starting } => {
            let stop = stop_phrase(f, &stop);
            return match starting {
                None => f.say(m::DayEventEmpty { stop }),
                Some(at) => f.say(m::DayEventEmptyAtStart {
                    mode: mode(at),
                    stop,
                }),
            };
        }
        Happening::UnitStopped { stop } => {
            return f.say(m::DayEventUnitStopped {
                stop: stop_phrase(f, &stop),
            });
        }
        Happening::ModeChanged { mode: Some(at) } => {
            return f.say(m::DayEventModeBegins { mode: mode(at) });
        }
        Happening::ChargingRefused { bank_c } => {
            return f.say(m::DayEventChargingRefused {
                temperature: f.temperature(bank_c),
            });
        }
        Happening::BackOn => f.say(m::DayEventBackOn),
        Happening::Full => f.say(m::DayEventFull),
        Happening::SetPointLost => f.say(m::DayEventTooWarm),
        Happening::SetPointRegained => f.say(m::DayEventCoolAgain),
        Happening::ModeChanged { mode: None } => f.say(m::DayEventUnitOff),
        Happening::ChargingResumed => f.say(m::DayEventChargingAgain),
        Happening::FuelGone { .. } => f.say(m::DayEventFuelGone),
    };
    fixed.into()
}

/// What the temperatures show.
#[must_use]
pub fn temperature_takeaway(f: Formatter, day: &DayAnswer) -> String {
    let outdoor = day.trace.iter().map(|point| point.outdoor_c);
    let (low, high) = span_of(outdoor);
    let idle = day.trace.iter().filter(|point| point.mode.is_none());
    let (_, hottest) = span_of(idle.map(|point| point.cabin_c));
    let outdoors = f.say(m::DayOutdoorsFromTo {
        low: f.temperature(low),
        high: f.temperature(high),
    });
    if hottest.is_finite() && hottest > day.warmest_c {
        let hot = f.say(m::DayUnitOffCabinHot {
            temperature: f.temperature(hottest),
        });
        format!("{outdoors} {hot}")
    } else {
        outdoors
    }
}

/// What the charge shows.
#[must_use]
pub fn charge_takeaway(f: Formatter, plan: &Plan, day: &DayAnswer) -> String {
    let least = day
        .trace
        .iter()
        .min_by(|a, b| a.charge_percent.total_cmp(&b.charge_percent));
    let end = day.days.last().map_or(0.0, |sum| sum.end_charge_percent);
    let Some(least) = least else {
        return String::new();
    };
    f.say(m::DayLowestCharge {
        least: f.percent(day.least_charge_percent),
        moment: moments::about(f, plan, least.hours_h),
        end: f.percent(end),
    })
}

/// What the power shows: the energy book in a sentence.
#[must_use]
pub fn power_takeaway(f: Formatter, day: &DayAnswer) -> String {
    let book = &day.energy;
    let mut ways_in = vec![f.say(m::DayInPanels {
        energy: f.energy(book.solar_wh),
    })];
    if book.charger_wh > 0.0 {
        ways_in.push(f.say(m::DayInChargers {
            energy: f.energy(book.charger_wh),
        }));
    }
    if book.from_store_wh > 0.0 {
        ways_in.push(f.say(m::DayInStore {
            energy: f.energy(book.from_store_wh),
        }));
    }
    f.say(m::DayInAndOut {
        days: all_days(f, day),
        ways_in: ways_in.join(", "),
        unit: f.energy(book.unit_wh),
        loads: f.energy(book.loads_wh),
    })
}

/// For how long the unit alone is stopped, and by what first; nothing if it never is.
pub(super) fn unit_off_sentence(f: Formatter, day: &DayAnswer) -> Option<String> {
    let off_h: f64 = day.days.iter().map(|sum| sum.unit_off_h).sum();
    let stop = day.events.iter().find_map(|event| match event.what {
        Happening::UnitStopped { stop } => Some(stop),
        _ => None,
    })?;
    (off_h > 0.0).then(|| {
        f.say(m::DayUnitStoppedFor {
            duration: f.duration(off_h),
            stop: stop_phrase(f, &stop),
        })
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
        things.push(f.say(m::DayAllOffFor {
            duration: f.duration(dark_h),
        }));
    }
    let lost_h: f64 = day.days.iter().map(|sum| sum.lost_h).sum();
    if lost_h > 0.0 {
        things.push(f.say(m::DayTooWarmFor {
            duration: f.duration(lost_h),
            set: f.temperature(day.set_point_c),
        }));
    }
    let days = day.span_h / ONE_DAY_H;
    if days > 1.5 && day.energy.from_store_wh > 0.0 {
        things.push(f.say(m::DayRunsDown {
            energy: f.energy(day.energy.from_store_wh / days),
        }));
    }
    if day.energy.spilled_wh > 0.1 * (day.energy.solar_wh + day.energy.spilled_wh) {
        things.push(f.say(m::DaySpilled {
            energy: f.energy(day.energy.spilled_wh),
        }));
    }
    if plan.day.climate.is_none()
        && plan.number(Path::Day(DayField::HighC)).is_some()
        && plan.day.high_c.is_none()
        && plan.day.imported.outdoor_c.is_empty()
    {
        things.push(f.say(m::DayNoWeather).into());
    }
    things
}
