//! Where the days lead, everything as planned.

use super::{Course, DaysBalance};
use crate::{
    plan::Plan,
    simulate::day::{DayPoint, DaySum, How, Inputs, Outcome, Scene, Sink, run},
    simulate::held_span,
};

/// Days that are run before a course is drawn on.
const DAYS: usize = 7;
/// A change by the day that counts as none, per cent of the bank.
const LEVEL_PERCENT: f64 = 0.2;
/// Charge that counts as full, below what is asked for.
const FULL_WITHIN_PERCENT: f64 = 1.0;
/// Further than this no course is drawn.
const MOST_DAYS: f64 = 365.0;

/// Each day's highest charge after its lowest, and the first time that the
/// charge asked for was back.
struct Watch {
    to_percent: f64,
    lowest: (usize, f64),
    highest: [f64; DAYS],
    has_fallen: bool,
    full_h: Option<f64>,
}

impl Sink for Watch {
    fn point(&mut self, point: &DayPoint) {
        let day = ((point.hours_h - 1e-9).max(0.0) / 24.0) as usize;
        let Some(highest) = self.highest.get_mut(day) else {
            return;
        };
        let percent = point.charge_percent;
        if self.lowest.0 != day {
            self.lowest = (day, f64::INFINITY);
        }
        if percent <= self.lowest.1 {
            self.lowest.1 = percent;
            *highest = percent;
        }
        *highest = highest.max(percent);
        let is_full = percent >= self.to_percent - FULL_WITHIN_PERCENT;
        self.has_fallen |= !is_full;
        if is_full && self.has_fallen {
            self.full_h.get_or_insert(point.hours_h);
        }
    }
}

/// The week as planned, and where it leads; nothing where it cannot be run.
///
/// `to`: the share asked for, 0 to 1, that counts as full.
pub fn days_balance(plan: &Plan, to: f64) -> Option<DaysBalance> {
    let mut week = plan.clone();
    week.day.days_count = Some(DAYS as u32);
    let scene = Scene::coarse(&week)?;
    let inputs = Inputs::new(&scene, &week)?;
    let mut watch = Watch {
        to_percent: 100.0 * to,
        lowest: (0, f64::INFINITY),
        highest: [0.0; DAYS],
        has_fallen: false,
        full_h: None,
    };
    let outcome = run(&scene, &inputs, &How::default(), &mut watch)?;
    let end_percent: Vec<f64> = outcome
        .days
        .iter()
        .map(|day| day.end_charge_percent)
        .collect();
    let last = *end_percent.last()?;
    // Over the last two days: the first ones settle the cabin and the bank.
    let change_percent = (last - end_percent[DAYS.min(end_percent.len()) - 3]) / 2.0;
    let floor_percent = 100.0 * held_span(plan, 0)?.1;
    let (fed_wh, used_wh) = daily(&outcome);
    Some(DaysBalance {
        course: course(&outcome, &watch, last, change_percent, floor_percent),
        change_percent,
        fed_daily_wh: fed_wh,
        used_daily_wh: used_wh,
        end_percent,
    })
}

/// What comes in and goes out in a day, over the whole days before the bank is empty: a
/// dark day uses nothing, and would halve what the others need. Where the first day ends
/// it, that day up to there, drawn out to 24 h.
fn daily(outcome: &Outcome) -> (f64, f64) {
    let empty_h = outcome.empty.map_or(f64::INFINITY, |(hours_h, _)| hours_h);
    let whole = ((empty_h / 24.0) as usize).min(outcome.days.len());
    let (count, scale) = if whole > 0 {
        (whole, 1.0 / whole as f64)
    } else {
        (1, 24.0 / empty_h.max(1.0 / 60.0))
    };
    let sum = |part: fn(&DaySum) -> f64| outcome.days.iter().take(count).map(part).sum::<f64>();
    (
        scale * sum(|day| day.solar_wh + day.charger_wh),
        scale * sum(|day| day.loads_wh + day.unit_wh),
    )
}

/// Empty within the week comes first, then full on the last day; else the change of the last
/// two days is drawn on, a year at the most.
fn course(
    outcome: &Outcome,
    watch: &Watch,
    last: f64,
    change_percent: f64,
    floor_percent: f64,
) -> Course {
    if let Some((hours_h, by)) = outcome.empty {
        return Course::Empty {
            after_h: hours_h,
            by,
        };
    }
    let is_full_at_last = watch.highest[DAYS - 1] >= watch.to_percent - FULL_WITHIN_PERCENT;
    if let (Some(full_h), true) = (watch.full_h, is_full_at_last) {
        return Course::Full { after_h: full_h };
    }
    if change_percent.abs() < LEVEL_PERCENT {
        return Course::Level;
    }
    let days = DAYS as f64;
    let (after_days, is_rising) = if change_percent < 0.0 {
        (days + (last - floor_percent) / -change_percent, false)
    } else {
        (
            days + (watch.to_percent - last).max(0.0) / change_percent,
            true,
        )
    };
    let after_h = 24.0 * after_days;
    match (after_days <= MOST_DAYS, is_rising) {
        (true, false) => Course::Falling { after_h },
        (true, true) => Course::Rising { after_h },
        (false, _) => Course::Level,
    }
}
