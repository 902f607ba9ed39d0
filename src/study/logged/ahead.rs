//! The last third of a night predicted from the first two.

use super::{
    factors::Found,
    ground::{Ground, middle, own},
    part::PartFit,
};
use crate::{
    plan::Plan,
    simulate::day::{DayPoint, How, Inputs, Sink, Start, cabin_at, drive_cabin, run},
};

/// What was predicted of the last third, beside what was measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Ahead {
    /// Hours from the log's start to where the prediction begins.
    pub from_h: f64,
    /// Hours from the log's start to where it ends, with the log.
    pub to_h: f64,
    /// At what cabin temperature the thermostat was seen to hold by then, Celsius, the middle
    /// of the steps in which it was at work; absent: the plan's set point is taken.
    pub held_c: Option<f64>,
    /// Temperature of the cabin, K; nothing without a thermometer.
    pub cabin_k: Option<Miss>,
    /// Volts of the bank; nothing where none were logged in the last third.
    pub volts_v: Option<Miss>,
    /// Ah of the bank.
    pub used_ah: Used,
    /// Of the whole log, for a chart: one for each step of ten minutes.
    pub points: Vec<AheadPoint>,
}

/// Predicted less measured, over the last third's steps with a reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Miss {
    /// Above 0: predicted too high.
    pub mean: f64,
    /// Of the same misses, 0 or above.
    pub root_mean_square: f64,
    /// The same of the plan as it was before.
    pub before_root_mean_square: f64,
}

/// Charge that the bank gave over the last third, Ah; below 0 where it was charged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Used {
    /// By the meter.
    pub measured: f64,
    /// By the plan as fitted to the first two thirds.
    pub predicted: f64,
    /// By the plan as it was before.
    pub before: f64,
}

/// The middle of a step: measured, and predicted in the last third.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AheadPoint {
    /// From the log's start to the step's middle.
    pub hours_h: f64,
    /// By the thermometer, mean of the step; absent without a row in it.
    pub cabin_c: Option<f64>,
    /// Absent before the last third, and without a thermometer.
    pub predicted_c: Option<f64>,
    /// By the meter, mean of the step.
    pub volts: Option<f64>,
    /// Absent before the last third, and where the step has no volts.
    pub predicted_v: Option<f64>,
    /// Charge used since the log's start, up to the step's middle, Ah.
    pub used_ah: f64,
    /// The same, counted on by the prediction from where the last third begins.
    pub predicted_ah: Option<f64>,
}

/// Steps in which the thermostat was at work that show at what it holds.
const LEAST_HELD: usize = 6;
/// Shares of a step with the unit on that count as the thermostat at work.
const AT_WORK: (f64, f64) = (0.1, 0.9);

/// The test that a night allows of its own fit.
///
/// - `whole`: the whole log, and the weather of its last third
/// - `early`: its first two thirds, `fit` the fit to them alone
///
/// Nothing where there is no last third, or the day cannot be run on.
pub(super) fn ahead(whole: &Ground, early: &Ground, fit: &PartFit) -> Option<Ahead> {
    let steps = whole.bins.all.len();
    let from = early.bins.all.len().min(steps);
    if from == 0 || from >= steps {
        return None;
    }
    let held_c = held_c(early);
    let fitted = fit.taken_into(&whole.plan, early);
    let predicted = predict(whole, early, fit, &fitted, held_c)?;
    // The plan as it was, from the same start and under the same weather.
    let before = predict(whole, early, fit, &whole.plan, None)?;
    let mut points = measured(whole);
    let mut used_ah =
        points.get(from).map_or(0.0, |point| point.used_ah) - 0.5 * whole.amps[from] * whole.step_h;
    for (point, course) in points.iter_mut().skip(from).zip(&predicted) {
        point.predicted_ah = Some(used_ah + 0.5 * course.amps * whole.step_h);
        used_ah += course.amps * whole.step_h;
        point.predicted_c = whole.cabin_c.is_some().then_some(course.cabin_c);
        point.predicted_v = point.volts.map(|_| course.volts);
    }
    let sum = |all: &[Course]| all.iter().map(|one| one.amps).sum::<f64>() * whole.step_h;
    let miss = |places: Vec<usize>, measured: &dyn Fn(usize) -> f64, of: fn(&Course) -> f64| {
        let places: Vec<usize> = places.into_iter().filter(|&at| at >= from).collect();
        let misses = |all: &[Course]| -> Vec<f64> {
            let all = places
                .iter()
                .filter_map(|&at| Some((at, all.get(at - from)?)));
            all.map(|(at, course)| of(course) - measured(at)).collect()
        };
        miss_of(&misses(&predicted), &misses(&before))
    };
    let cabin = |at: usize| whole.bins.all[at].cabin_c.unwrap_or(0.0);
    let volts = |at: usize| whole.bins.all[at].volts.unwrap_or(0.0);
    Some(Ahead {
        from_h: from as f64 * whole.step_h,
        to_h: steps as f64 * whole.step_h,
        held_c,
        cabin_k: miss(own(&whole.bins, |bin| bin.cabin_c), &cabin, |one| {
            one.cabin_c
        })
        .filter(|_| whole.cabin_c.is_some()),
        volts_v: miss(own(&whole.bins, |bin| bin.volts), &volts, |one| one.volts),
        used_ah: Used {
            measured: whole.amps[from..].iter().sum::<f64>() * whole.step_h,
            predicted: sum(&predicted),
            before: sum(&before),
        },
        points,
    })
}

/// Means over one step of the run.
#[derive(Clone, Copy, Debug, Default)]
struct Course {
    cabin_c: f64,
    volts: f64,
    amps: f64,
}

/// The plan run through the last third, from where cabin and bank stand by the fit.
///
/// `held_c` in the place of the set point, where it is given.
fn predict(
    whole: &Ground,
    early: &Ground,
    fit: &PartFit,
    plan: &Plan,
    held_c: Option<f64>,
) -> Option<Vec<Course>> {
    let (from, steps) = (early.bins.all.len(), whole.bins.all.len());
    let mut inputs = Inputs::new(&whole.scene, plan)?;
    let warmer_k = fit.cabin.as_ref().map_or(0.0, |cabin| cabin.warmer_k());
    whole.put_weather(&mut inputs, warmer_k);
    // What else is drawn is known from the first two thirds alone.
    if let Some(beside_w) = early.unit.beside_w {
        inputs.bus_w = beside_w;
    }
    if let Some(held_c) = held_c {
        inputs.set_c = held_c;
    }
    let cabin = match fit.cabin_course(early) {
        Some(course) => course.last()?.end,
        None => unread_cabin(early, fit)?,
    };
    let share = fit.bank_course(early)?.last()?.share;
    let from_h = from as f64 * whole.step_h;
    let how = How {
        start: Some(Start {
            at_h: from_h,
            soc: share.clamp(0.0, 1.0),
            cabin,
        }),
        until_h: Some(steps as f64 * whole.step_h),
        ..How::default()
    };
    let mut tape = Tape {
        step_h: whole.step_h,
        from,
        last_h: from_h,
        sums: vec![(Course::default(), 0.0); steps - from],
    };
    run(&whole.scene, &inputs, &how, &mut tape)?;
    let higher_v = fit.bank.as_ref().map_or(0.0, |bank| bank.higher_v(early));
    let mean = |(sum, hours): (Course, f64)| {
        let over = 1.0 / hours.max(1e-9);
        Course {
            cabin_c: sum.cabin_c * over,
            volts: sum.volts * over + higher_v,
            amps: sum.amps * over,
        }
    };
    Some(tape.sums.into_iter().map(mean).collect())
}

/// Without a thermometer: the cabin as the plan has it under what the unit drew, from
/// its set point on.
fn unread_cabin(early: &Ground, fit: &PartFit) -> Option<crate::physics::cabin::State> {
    let inputs = early.inputs(&Found::default().on(&early.plan), 0.0)?;
    let start = cabin_at(&inputs, inputs.set_c, inputs.set_c);
    let factor = fit.found().factors().draw;
    let steps = drive_cabin(&early.scene, &inputs, start, &early.unit.did, 1.0 / factor)?;
    Some(steps.last()?.end)
}

/// Sums of what a run tells, by steps.
struct Tape {
    step_h: f64,
    from: usize,
    last_h: f64,
    sums: Vec<(Course, f64)>,
}

impl Sink for Tape {
    fn point(&mut self, point: &DayPoint) {
        let hours = point.hours_h - self.last_h;
        let middle = 0.5 * (point.hours_h + self.last_h);
        self.last_h = point.hours_h;
        let step = (middle / self.step_h) as usize;
        let place = step
            .checked_sub(self.from)
            .and_then(|at| self.sums.get_mut(at));
        if let Some((sum, over)) = place.filter(|_| hours > 0.0) {
            sum.cabin_c += point.cabin_c * hours;
            sum.volts += point.terminal_v * hours;
            sum.amps += point.bank_a * hours;
            *over += hours;
        }
    }
}

/// At what the thermostat holds the cabin's thermometer.
fn held_c(ground: &Ground) -> Option<f64> {
    let held: Vec<f64> = ground
        .bins
        .all
        .iter()
        .zip(&ground.unit.on_share)
        .filter(|(_, share)| (AT_WORK.0..=AT_WORK.1).contains(*share))
        .filter_map(|(bin, _)| bin.cabin_c)
        .collect();
    (held.len() >= LEAST_HELD && ground.cabin_c.is_some()).then(|| middle(held))
}

/// The points of the whole log, nothing predicted yet.
fn measured(whole: &Ground) -> Vec<AheadPoint> {
    let mut used_ah = 0.0;
    let all = whole.bins.all.iter().zip(&whole.amps).enumerate();
    let all = all.map(|(at, (bin, amps))| {
        let middle_ah = used_ah + 0.5 * amps * whole.step_h;
        used_ah += amps * whole.step_h;
        AheadPoint {
            hours_h: (at as f64 + 0.5) * whole.step_h,
            cabin_c: bin.cabin_c,
            volts: bin.volts,
            used_ah: middle_ah,
            ..AheadPoint::default()
        }
    });
    all.collect()
}

/// Nothing where there are no misses.
fn miss_of(misses: &[f64], before: &[f64]) -> Option<Miss> {
    if misses.is_empty() || misses.len() != before.len() {
        return None;
    }
    let count = misses.len() as f64;
    let square = |all: &[f64]| (all.iter().map(|miss| miss * miss).sum::<f64>() / count).sqrt();
    Some(Miss {
        mean: misses.iter().sum::<f64>() / count,
        root_mean_square: square(misses),
        before_root_mean_square: square(before),
    })
}
