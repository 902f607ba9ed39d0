//! The pocket formula: hours = b x usable Wh, one line to use on paper.
//!
//! Usable Wh are what a reader can work out from the labels of another bank of
//! the same chemistry and voltage: nominal volts x Ah held x how far down. The
//! engine runs a grid of such banks and depths; b is the factor whose worst
//! relative error over the grid is least, and the formula is given with that
//! error and with the range it was tried on. Past 5 % it is refused, with the
//! reason: a formula that looks exact and is not would be worse than none.

use crate::simulate::held_span;
use crate::{
    physics::battery::Pack,
    physics::weather::{
        date::{Date, Moment},
        site::Site,
        sun,
    },
    plan::{
        Path, Plan,
        day::DayField as D,
        path::BankField as B,
        supply::{Array, ArrayField as A},
    },
    simulate::{Job, assemble, run_down},
};
use serde::{Deserialize, Serialize};

/// The worst error that a pocket formula may have.
pub const MOST_ERROR_PERCENT: f64 = 5.0;

/// One mode's formula, or why there is none.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Pocket {
    /// Place of the bank in the plan.
    pub bank: usize,
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
    /// The formula, or why there is none.
    #[serde(flatten)]
    pub outcome: PocketOutcome,
}

/// A formula that holds, or the reason for none.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "pocket", rename_all = "snake_case")]
pub enum PocketOutcome {
    /// Within 5 % over the range that it names.
    Holds(PocketFormula),
    /// None holds within 5 %.
    Refused {
        because: NoPocket,
        /// The error that it would have had; absent where no grid could be run.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        worst_error_percent: Option<f64>,
    },
}

/// `hours = b x usable Wh`, and `a x usable Ah` at the bank's nominal volts.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PocketFormula {
    /// b: hours for each usable Wh.
    pub hours_per_wh: f64,
    /// a: hours for each usable Ah.
    pub hours_per_ah: f64,
    /// The nominal volts that a, and the usable Wh, are counted at.
    pub nominal_v: f64,
    /// The usable Wh that it was tried on, the least.
    pub least_wh: f64,
    /// The most.
    pub most_wh: f64,
    /// How far down it was tried, the least.
    pub least_depth_percent: f64,
    /// The most: down to what the plan keeps back, and 30 at the least.
    pub most_depth_percent: f64,
    /// The worst relative error against the full engine over that range, 0 to 5.
    pub worst_error_percent: f64,
}

/// Why a mode has no pocket formula.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum NoPocket {
    /// A larger lead-acid bank gives more for each Ah.
    LeadAcid,
    /// The bank does not start full: hours do not follow how far down it goes.
    FixedStartCharge,
    /// The sun gives a share that hangs on the clock, not on the bank.
    Sun,
    /// Cut-offs or current limits end the runs of some of the sizes early.
    Limits,
    /// The bank has nothing to give.
    NothingUsable,
}

/// Sizes as shares of the plan's bank, the widest range first. Each spans a
/// factor of four or more: a line that holds for one bank alone serves no other
/// reader. The last stops at the plan's own, for nights that end with the sun.
const SIZES: [&[f64]; 3] = [
    &[0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 4.0],
    &[0.5, 0.75, 1.0, 1.5, 2.0],
    &[0.25, 0.5, 0.75, 1.0],
];

/// The least share of a bank that counts as using it.
const LEAST_DEPTH: f64 = 0.3;

/// What the formula is tried on.
struct Trial {
    pack: Pack,
    job: Job,
    /// Share of what the bank holds at the start, 0 to 1.
    from: f64,
    /// Share that the plan keeps back.
    to: f64,
    nominal_v: f64,
    sunlight: Option<Sunlight>,
}

/// One bank and depth of the grid.
struct Tried {
    usable_wh: f64,
    hours: f64,
    /// The most that the sun can add, as a share of what was used.
    sun: f64,
}

/// The pocket formula of each bank, unit and mode of a plan, in that order.
///
/// Modes that cannot be answered are left out; `Plan::errors` says why.
#[must_use]
pub fn pocket(plan: &Plan) -> Vec<Pocket> {
    let errors = plan.errors();
    let sunlight = Sunlight::of(plan);
    let mut all = Vec::new();
    for bank in 0..plan.banks.len().min(crate::plan::check::MOST_BANKS) {
        for (unit, the_unit) in plan.units.iter().enumerate() {
            for mode in 0..the_unit.modes.len() {
                let blocked = errors.iter().any(|e| Plan::blocks(e, bank, unit, mode));
                let outcome = (!blocked).then(|| of_mode(plan, bank, unit, mode, &sunlight));
                all.extend(outcome.flatten().map(|outcome| Pocket {
                    bank,
                    unit,
                    mode,
                    outcome,
                }));
            }
        }
    }
    all
}

/// Tries the widest range of sizes first, then narrower ones.
fn of_mode(
    plan: &Plan,
    bank: usize,
    unit: usize,
    mode: usize,
    sunlight: &Option<Sunlight>,
) -> Option<PocketOutcome> {
    let pack = assemble::warm_pack(plan, bank)?.pack;
    let job = assemble::job(plan, bank, unit, mode, &pack)?.job;
    let (from, to) = held_span(plan, bank)?;
    let trial = Trial {
        pack,
        job,
        from,
        to,
        nominal_v: plan.banks[bank].nominal_v(),
        sunlight: sunlight.clone(),
    };
    let mut worst = None;
    for sizes in SIZES {
        let tried = trial.over(sizes);
        let Some((hours_per_wh, error)) = best_factor(&tried) else {
            continue;
        };
        worst = Some(100.0 * error);
        if 100.0 * error <= MOST_ERROR_PERCENT {
            return Some(PocketOutcome::Holds(trial.formula(
                &tried,
                hours_per_wh,
                error,
            )));
        }
    }
    Some(PocketOutcome::Refused {
        because: trial.reason(plan.number(Path::Bank(bank, B::PeukertExponent))),
        worst_error_percent: worst.filter(|percent| percent.is_finite()),
    })
}

impl Trial {
    /// Depths from the least worth trying to the plan's own.
    fn depths(&self) -> [f64; 4] {
        let most = (1.0 - self.to).max(LEAST_DEPTH);
        [0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0].map(|t| LEAST_DEPTH + t * (most - LEAST_DEPTH))
    }

    /// Every size at every depth.
    fn over(&self, sizes: &[f64]) -> Vec<Tried> {
        let mut all = Vec::with_capacity(sizes.len() * 4);
        for &size in sizes {
            let pack = self.pack.times(size);
            let held_wh = pack.held_ah() * self.nominal_v;
            for depth in self.depths() {
                let run = run_down(&pack, &self.job, self.from, (1.0 - depth).min(self.from));
                let sun_wh = |sun: &Sunlight| sun.most_wh(run.hours);
                all.push(Tried {
                    usable_wh: held_wh * depth,
                    hours: run.hours,
                    sun: self.sunlight.as_ref().map_or(0.0, sun_wh) / run.wh.max(1e-9),
                });
            }
        }
        all
    }

    fn formula(&self, tried: &[Tried], hours_per_wh: f64, error: f64) -> PocketFormula {
        let depths = self.depths();
        let wh = tried.iter().map(|one| one.usable_wh);
        PocketFormula {
            hours_per_wh,
            hours_per_ah: hours_per_wh * self.nominal_v,
            nominal_v: self.nominal_v,
            least_wh: wh.clone().fold(f64::MAX, f64::min),
            most_wh: wh.fold(0.0, f64::max),
            least_depth_percent: 100.0 * depths[0],
            most_depth_percent: 100.0 * depths[3],
            worst_error_percent: 100.0 * error,
        }
    }

    /// What stands in the way: tried again without each suspect in turn.
    fn reason(&self, peukert: Option<f64>) -> NoPocket {
        if self.from <= self.to {
            return NoPocket::NothingUsable;
        }
        if peukert.is_some_and(|exponent| exponent > 1.0) {
            return NoPocket::LeadAcid;
        }
        let narrow = SIZES[SIZES.len() - 1];
        let passes = |trial: &Self| {
            let error = best_factor(&trial.over(narrow)).map(|(_, error)| 100.0 * error);
            error.is_some_and(|percent| percent <= MOST_ERROR_PERCENT)
        };
        let without_sun = || Self {
            pack: self.pack.clone(),
            job: self.job,
            sunlight: None,
            ..*self
        };
        match () {
            () if passes(&without_sun()) => NoPocket::Sun,
            () if self.from < 1.0 => NoPocket::FixedStartCharge,
            () => NoPocket::Limits,
        }
    }
}

/// The factor of hours to usable Wh whose worst relative error is least, and
/// that error, the sun's share added. `None` where a run of the grid gives no
/// hours at all: no factor describes that.
///
/// Of ratios r the error |b / r - 1| is least in its worst at the middle of
/// 1/r: b = 2 / (1/least + 1/most), where it is (most - least) / (most + least).
fn best_factor(tried: &[Tried]) -> Option<(f64, f64)> {
    let ratios = tried.iter().map(|one| one.hours / one.usable_wh);
    let (least, most) = ratios.fold((f64::MAX, 0.0_f64), |(l, m), r| (l.min(r), m.max(r)));
    if !(least > 0.0 && most.is_finite() && !tried.is_empty()) {
        return None;
    }
    let factor = 2.0 / (1.0 / least + 1.0 / most);
    let error = tried.iter().fold(0.0_f64, |worst, one| {
        worst.max((factor * one.usable_wh / one.hours - 1.0).abs() + one.sun)
    });
    Some((factor, error))
}

/// What the panels could give at the very most, by the hours since the start.
#[derive(Clone)]
struct Sunlight {
    /// Watt-hours by the end of each quarter of an hour.
    wh: Vec<f64>,
}

impl Sunlight {
    /// Steps an hour.
    const STEPS: usize = 4;
    /// Past two days every run has seen the sun; more would change no verdict.
    const HOURS: usize = 48;
    /// Below this tilt a panel is lit as if it lay flat.
    const FLAT_DEG: f64 = 10.0;

    /// `None` without panels, or where the place cannot be read.
    ///
    /// An upper bound, not an estimate: label watts times the sine of the sun's
    /// height for flat panels, label watts while the sun is up for tilted ones.
    fn of(plan: &Plan) -> Option<Self> {
        let arrays = &plan.supply.arrays;
        let number = |field| plan.number(Path::Day(field));
        let site = Site::new(
            number(D::LatitudeDeg)?,
            number(D::LongitudeDeg)?,
            number(D::AltitudeM)?,
        );
        // The casts saturate; a date that is none is refused by `Date`.
        let date = Date::new(
            number(D::Year)? as i32,
            number(D::Month)? as u8,
            number(D::DayOfMonth)? as u8,
        );
        let start_h = f64::from(plan.night.start_clock_min) / 60.0;
        let offset_h = number(D::UtcOffsetMin)? / 60.0;
        let start = Moment::from_local(date.ok()?, start_h, offset_h).ok()?;
        let site = site.ok()?;
        let watts = |at: usize, array: &Array, height: f64| {
            let rated = array.rated_w.map_or(0.0, |figure| figure.value);
            let tilt = plan.number(Path::Array(at, A::TiltDeg)).unwrap_or(0.0);
            rated * if tilt > Self::FLAT_DEG { 1.0 } else { height }
        };
        if !arrays.iter().any(|array| array.rated_w.is_some()) {
            return None;
        }
        let mut sum = 0.0;
        let wh = (0..Self::STEPS * Self::HOURS)
            .map(|step| {
                let hours = (step as f64 + 0.5) / Self::STEPS as f64;
                let at = start.plus_hours(hours).unwrap_or(start);
                let height = sun::position(&site, at).elevation_deg.to_radians().sin();
                if height > 0.0 {
                    let all = arrays.iter().enumerate();
                    let all: f64 = all.map(|(at, array)| watts(at, array, height)).sum();
                    sum += all / Self::STEPS as f64;
                }
                sum
            })
            .collect();
        Some(Self { wh })
    }

    fn most_wh(&self, hours: f64) -> f64 {
        let step = (hours * Self::STEPS as f64).ceil() as usize;
        match step.min(self.wh.len()) {
            0 => 0.0,
            step => self.wh[step - 1],
        }
    }
}
