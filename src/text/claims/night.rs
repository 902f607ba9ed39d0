//! What the log of one night says of the plan, in words.

use crate::{
    answer::log::{Ahead, Fitted, FittedFigure, FittedNight, LoggedNight, MOST_H, Untold},
    plan::{Plan, cabin::CabinField, path::Path},
    text::{Formatter, m},
};

/// A figure as a row: its name, assumed, fitted, and what the log says of it.
#[derive(Clone, Debug, PartialEq)]
pub struct FigureRow {
    pub name: String,
    pub before: String,
    pub after: String,
    pub told: &'static str,
}

/// Over the columns of [`night_rows`].
#[must_use]
pub fn night_heads(f: Formatter) -> [&'static str; 4] {
    [
        f.say(m::LogNightFigure),
        f.say(m::LogNightAssumed),
        f.say(m::LogNightFitted),
        f.say(m::LogNightTells),
    ]
}

/// Each figure before and after; none where nothing was fitted.
#[must_use]
pub fn night_rows(f: Formatter, night: &LoggedNight) -> Vec<FigureRow> {
    let LoggedNight::Fitted(night) = night else {
        return Vec::new();
    };
    let row = |figure: &FittedFigure| FigureRow {
        name: name(f, night, figure.what),
        before: with_spread(f, figure.what, figure.before, figure.before_half),
        after: with_spread(f, figure.what, figure.after, figure.after_half),
        told: figure
            .untold
            .map_or(f.say(m::LogNightTold), |why| untold(f, why)),
    };
    night.figures.iter().map(row).collect()
}

/// What keeps a log from being fitted; empty where nothing does.
#[must_use]
pub fn night_state(f: Formatter, night: &LoggedNight) -> String {
    match night {
        LoggedNight::PlanUnready => f.say(m::LogNightUnready).into(),
        LoggedNight::TooShort { covered_h, least_h } => f.say(m::LogNightShort {
            covered: f.duration_fine(*covered_h),
            least: f.duration(*least_h),
        }),
        LoggedNight::OtherVoltage { log_v, bank_v } => f.say(m::LogNightOtherVoltage {
            log: f.with_unit(*log_v, "V"),
            bank: f.with_unit(*bank_v, "V"),
        }),
        LoggedNight::Fitted(_) => String::new(),
    }
}

/// What is to be known of a fit: what the log lacks, how well the cabin fits, and what
/// was predicted.
#[must_use]
pub fn night_notes(f: Formatter, plan: &Plan, night: &LoggedNight) -> Vec<String> {
    let LoggedNight::Fitted(night) = night else {
        return Vec::new();
    };
    let mut notes = Vec::new();
    if !night.has_cabin {
        notes.push(f.say(m::LogNightNoCabin).into());
    }
    if !night.has_outdoors {
        notes.push(f.say(m::LogNightNoOutdoors).into());
    }
    if !night.has_clock {
        let clock = f.clock(f64::from(night.start_clock_min));
        notes.push(f.say(m::LogNightNoClock { clock }));
    }
    if night.span_h >= MOST_H - 1e-6 {
        let most = f.duration(MOST_H);
        notes.push(f.say(m::LogNightCut { most }));
    }
    if night.charged_percent >= CHARGED_PERCENT {
        let share = f.percent(night.charged_percent);
        notes.push(f.say(m::LogNightCharged { share }));
    }
    if let Some(misfit) = night.cabin_misfit_number.filter(|misfit| *misfit > MISFIT) {
        let times = f.plain(misfit);
        notes.push(f.say(m::LogNightMisfit { times }));
    }
    match &night.ahead {
        Some(ahead) => notes.extend(held(f, plan, ahead)),
        None => notes.push(f.say(m::LogNightNotAhead).into()),
    }
    notes
}

/// From this share on charging is said to be in the way.
const CHARGED_PERCENT: f64 = 5.0;
/// A thermostat this near to its set point holds it.
const HELD_K: f64 = 0.2;
/// Misses of so many times a thermometer's scatter are no scatter.
const MISFIT: f64 = 2.0;

fn held(f: Formatter, plan: &Plan, ahead: &Ahead) -> Option<String> {
    let held_c = ahead.held_c?;
    let set_c = plan.number(Path::Cabin(CabinField::SetPointC))?;
    if (held_c - set_c).abs() < HELD_K {
        return None;
    }
    Some(f.say(m::LogNightHeld {
        held: f.temperature(held_c),
        set: f.temperature(set_c),
    }))
}

/// How well the cabin was predicted; empty without a thermometer.
#[must_use]
pub fn night_cabin(f: Formatter, ahead: &Ahead) -> String {
    let kelvin = |width: f64| f.width(width, crate::range::Unit::Celsius);
    ahead.cabin_k.map_or_else(String::new, |miss| {
        f.say(m::LogNightCabinMiss {
            miss: kelvin(miss.root_mean_square),
            mean: kelvin(miss.mean),
            before: kelvin(miss.before_root_mean_square),
        })
    })
}

/// How well the charge used was predicted.
#[must_use]
pub fn night_used(f: Formatter, ahead: &Ahead) -> String {
    let used = ahead.used_ah;
    let charge = |ah: f64| f.with_unit(ah, "Ah");
    f.say(m::LogNightUsedMiss {
        hours: f.duration(ahead.to_h - ahead.from_h),
        measured: charge(used.measured),
        predicted: charge(used.predicted),
        miss: charge(used.predicted - used.measured),
        before: charge(used.before),
    })
}

/// How well the volts were predicted; empty where none were logged.
#[must_use]
pub fn night_volts(f: Formatter, ahead: &Ahead) -> String {
    ahead.volts_v.map_or_else(String::new, |miss| {
        f.say(m::LogNightVoltsMiss {
            miss: f.with_unit(miss.root_mean_square, "V"),
            before: f.with_unit(miss.before_root_mean_square, "V"),
        })
    })
}

fn name(f: Formatter, night: &FittedNight, what: Fitted) -> String {
    let weather = night.middle_c.map(|middle_c| f.temperature(middle_c));
    match (what, weather) {
        (Fitted::CabinLoss, _) => f.say(m::LogNightLoss).into(),
        (Fitted::CabinCapacity, _) => f.say(m::LogNightCapacity).into(),
        (Fitted::CoolingPerWatt, Some(weather)) => f.say(m::LogNightPerWattAt { weather }),
        (Fitted::CoolingPerWatt, None) => f.say(m::LogNightPerWatt).into(),
        (Fitted::Draw, Some(weather)) => f.say(m::LogNightDrawAt { weather }),
        (Fitted::Draw, None) => f.say(m::LogNightDraw).into(),
        (Fitted::DrawSlope, _) => f.say(m::LogNightSlope).into(),
        (Fitted::Usable, _) => f.say(m::LogNightUsable).into(),
    }
}

/// A figure and its half-width, as many decimals in both.
fn with_spread(f: Formatter, what: Fitted, value: f64, half: f64) -> String {
    let sign = match what {
        Fitted::CabinLoss => "W/K",
        Fitted::CabinCapacity => "kJ/K",
        Fitted::CoolingPerWatt => "W/W",
        Fitted::Draw => "W",
        Fitted::DrawSlope => "%/K",
        Fitted::Usable => "Wh",
    };
    let decimals = match half.abs() {
        half if half >= 10.0 => 0,
        half if half >= 1.0 => 1,
        _ => 2,
    };
    let both = format!("{} ± {}", f.exact(value, decimals), f.exact(half, decimals));
    crate::text::number::with_sign(both, sign)
}

fn untold(f: Formatter, why: Untold) -> &'static str {
    match why {
        Untold::TooLittle => f.say(m::LogNightTooLittle),
        Untold::NoThermometer => f.say(m::LogNightWithoutThermometer),
        Untold::NoOutdoors => f.say(m::LogNightWithoutOutdoors),
        Untold::SteadyWeather => f.say(m::LogNightSteadyWeather),
        Untold::UnitOff => f.say(m::LogNightUnitOff),
        Untold::RowsTooFarApart => f.say(m::LogNightRowsApart),
        Untold::FollowsLoad => f.say(m::LogNightFollowsLoad),
        Untold::OwnRuns => f.say(m::LogNightOwnRuns),
        Untold::NoVolts => f.say(m::LogNightWithoutVolts),
    }
}
