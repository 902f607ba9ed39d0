//! What the log of one night says of a plan, and how well it then predicts.
//!
//! From a log of volts, amperes and a thermometer are fitted: cabin loss and heat
//! capacity, cooling for each watt, the unit's draw and how it changes with the weather,
//! and the bank's usable energy. What the plan's spreads say of each stands beside the
//! readings as one more datum ([`crate::study::spread::least`]), so a figure that the
//! log does not tell stays as it was, with the spread it had, and is said to be so.
//!
//! Then the test that the night itself allows: fitted anew to its first two thirds, the
//! plan is run through the last one, under the weather that was measured and with the
//! temperature at which the thermostat was seen to hold; what it predicts is laid
//! beside what was measured.
//!
//! Source of the two-store cabin fitted to a house's own temperatures: Madsen and Holst,
//! *Estimation of continuous-time models for the heat dynamics of a building*, Energy and
//! Buildings 22 (1995), from memory. Ours has no noise in the states; what the model
//! misses widens the spreads instead ([`twice`]).

mod ahead;
mod bank;
mod bins;
mod cabin;
mod draw;
mod factors;
mod figures;
mod ground;
mod part;
mod twice;
mod unit;

pub use ahead::{Ahead, AheadPoint, Miss, Used};
pub use figures::{Fitted, FittedFigure, Untold};
pub use ground::MOST_H;

use crate::{physics::bench::log::Log, plan::Plan, simulate::assemble::SAME_SYSTEM};
use figures::figures;
use ground::Ground;
use part::PartFit;

/// Hours with rows that a log must have.
pub const LEAST_H: f64 = 3.0;

/// What the meter of the current may be off by, as shares, one standard deviation: of
/// the charge over the log, and of the draw with the unit on.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MeterSd {
    /// Of the charge over the log.
    pub charge: f64,
    /// Of the draw with the unit on.
    pub draw: f64,
}

/// What a log makes of the plan.
#[derive(Clone, Debug, PartialEq)]
pub enum LoggedNight {
    /// The plan has errors that keep its day from being run.
    PlanUnready,
    /// Fewer hours with rows than it takes.
    TooShort { covered_h: f64, least_h: f64 },
    /// The log's usual volts are not those of the plan's bank, by a quarter or more.
    OtherVoltage { log_v: f64, bank_v: f64 },
    /// It was fitted.
    Fitted(Box<FittedNight>),
}

/// What was fitted, and what it predicts.
#[derive(Clone, Debug, PartialEq)]
pub struct FittedNight {
    /// Hours of the log that were read, [`MOST_H`] at the most.
    pub span_h: f64,
    /// Of them those with rows.
    pub covered_h: f64,
    /// Clock at its start, minutes after midnight: the plan's own where the log has no
    /// clock.
    pub start_clock_min: u32,
    /// Whether the log says when it began.
    pub has_clock: bool,
    /// Whether half of the steps or more have a cabin temperature.
    pub has_cabin: bool,
    /// The same of outdoors.
    pub has_outdoors: bool,
    /// Share of the time in which the bank was charged, 0 to 100.
    pub charged_percent: f64,
    /// Weather in which draw and cooling for each watt are stated, Celsius; absent: that at the
    /// log's start.
    pub middle_c: Option<f64>,
    /// In the order of [`Fitted`], told or not.
    pub figures: Vec<FittedFigure>,
    /// Root mean square of the cabin's misses over the thermometer's scatter; absent without a
    /// thermometer. Well above 1: the cabin is not as the plan has it in something else.
    pub cabin_misfit_number: Option<f64>,
    /// The predicted last third; nothing where the plan's day could not be run on.
    pub ahead: Option<Ahead>,
    /// The plan that was fitted.
    pub of_plan: Box<Plan>,
    /// The same with the fitted figures in it; nothing where none was told.
    pub taken: Option<Box<Plan>>,
}

/// A fit on its way, in steps of about a dozen runs of the night.
///
/// [`Self::step`] until it is true, then [`Self::finish`]; or `finish` at once.
#[derive(Clone, Debug)]
pub struct LoggedNightWork {
    plan: Plan,
    parts: Option<Parts>,
    short: Option<LoggedNight>,
}

/// The whole log and its first two thirds.
#[derive(Clone, Debug)]
struct Parts {
    whole: Ground,
    whole_fit: PartFit,
    early: Option<(Ground, PartFit)>,
}

impl LoggedNightWork {
    /// A log read off by a meter.
    ///
    /// Nothing is run yet. What cannot be fitted is known here, and told by `finish`.
    #[must_use]
    pub fn new(plan: &Plan, log: &Log, meter: MeterSd) -> Self {
        let of = |short: Option<LoggedNight>, parts: Option<Parts>| Self {
            plan: plan.clone(),
            parts,
            short,
        };
        let Some(whole) = Ground::new(plan, log) else {
            return of(Some(LoggedNight::PlanUnready), None);
        };
        let covered_h = whole.bins.covered_h;
        // Sums of steps are rounded.
        if covered_h < LEAST_H - 1e-6 {
            let short = LoggedNight::TooShort {
                covered_h,
                least_h: LEAST_H,
            };
            return of(Some(short), None);
        }
        if let Some(other) = other_voltage(plan, log) {
            return of(Some(other), None);
        }
        let whole_fit = PartFit::new(&whole, meter);
        let early = Ground::new(plan, &first_two_thirds(log));
        let early = early.map(|early| {
            let fit = PartFit::new(&early, meter);
            (early, fit)
        });
        let parts = Parts {
            whole,
            whole_fit,
            early,
        };
        of(None, Some(parts))
    }

    /// One step; whether it is done.
    pub fn step(&mut self) -> bool {
        let Some(parts) = &mut self.parts else {
            return true;
        };
        if !parts.whole_fit.step(&parts.whole) {
            return false;
        }
        match &mut parts.early {
            Some((early, fit)) => fit.step(early),
            None => true,
        }
    }

    /// What it came to, whatever is left to do done at once.
    #[must_use]
    pub fn finish(mut self) -> LoggedNight {
        while !self.step() {}
        let Some(parts) = self.parts else {
            return self.short.unwrap_or(LoggedNight::PlanUnready);
        };
        let Parts {
            whole,
            whole_fit,
            early,
        } = &parts;
        let ahead = early
            .as_ref()
            .and_then(|(early, fit)| ahead::ahead(whole, early, fit));
        let figures = figures(whole, whole_fit);
        let is_told = figures.iter().any(|figure| figure.untold.is_none());
        let taken = is_told.then(|| whole_fit.taken_into(&self.plan, whole));
        LoggedNight::Fitted(Box::new(FittedNight {
            span_h: whole.bins.all.len() as f64 * whole.step_h,
            covered_h: whole.bins.covered_h,
            start_clock_min: whole.plan.night.start_clock_min,
            has_clock: whole.bins.start_min.is_some(),
            has_cabin: whole.cabin_c.is_some(),
            has_outdoors: whole.outdoor_c.is_some(),
            charged_percent: 100.0 * whole.charged_share,
            middle_c: whole_fit.draw.as_ref().map(|draw| draw.middle_c),
            figures,
            cabin_misfit_number: whole_fit.cabin_misfit(),
            ahead,
            of_plan: Box::new(self.plan),
            taken: taken.map(Box::new),
        }))
    }
}

/// A log of another system: what it tells is not of this plan.
fn other_voltage(plan: &Plan, log: &Log) -> Option<LoggedNight> {
    let bank_v = plan.banks.first()?.nominal_v();
    let volts: Vec<f64> = log.samples.iter().filter_map(|one| one.volts).collect();
    let log_v = (!volts.is_empty()).then(|| ground::middle(volts))?;
    let is_other = (log_v / bank_v - 1.0).abs() > SAME_SYSTEM;
    is_other.then_some(LoggedNight::OtherVoltage { log_v, bank_v })
}

/// By time, of what is read of it.
fn first_two_thirds(log: &Log) -> Log {
    let mut early = log.clone();
    let first_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let span_s = log.span_s().min(3600.0 * MOST_H);
    let until_s = first_s + span_s * 2.0 / 3.0;
    early.samples.retain(|sample| sample.time_s < until_s);
    early
}

/// What a log makes of a plan, at once; in slices: [`LoggedNightWork`].
#[must_use]
pub fn logged_night(plan: &Plan, log: &Log, meter: MeterSd) -> LoggedNight {
    LoggedNightWork::new(plan, log, meter).finish()
}
