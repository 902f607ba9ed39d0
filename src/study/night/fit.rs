//! What readings of a night say of cabin loss, draw and usable energy.
//!
//! Three factors on the plan's own figures, found by least squares together with
//! charge and cabin at the first reading; what the plan's spreads say of each
//! factor stands beside the readings as one more datum (see
//! [`crate::study::spread::least`]). A factor that the readings do not narrow is said to
//! be so: of charge alone, draw and usable energy tell no more than their ratio.

use super::{
    readings::{Anchor, Reading},
    trial::SearchScenario,
};
use crate::{
    plan::{
        Figure, Plan,
        cabin::CabinField as C,
        cooling::CoolingField as K,
        path::{BankField as B, ModeField as M, Path},
    },
    simulate::day::{DayPoint, How, Inputs, Sink, Start, run},
    study::spread::{
        half_width,
        least::{Known, Least},
    },
};
use serde::{Deserialize, Serialize};

/// A factor on a figure of the plan, before and after the readings.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FittedFactor {
    /// One standard deviation, by the plan's spreads; the factor before is 1.
    pub sd_before_number: f64,
    /// The factor that the readings make likeliest.
    pub after_number: f64,
    /// Standard error.
    pub sd_after_number: f64,
    /// Whether the readings narrow it by a good part.
    pub is_told: bool,
}

/// What the readings say of the plan.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "fit", rename_all = "snake_case")]
pub enum Fit {
    /// Fewer readings than it takes.
    /// How many there are, and how many it takes.
    TooFew {
        readings_count: u32,
        least_count: u32,
    },
    /// They tell at least one of the three.
    Fitted {
        /// Heat that comes in for each kelvin: shell, glass and air change.
        cabin_loss: FittedFactor,
        /// What the unit draws for the same cooling.
        draw: FittedFactor,
        /// What the bank gives from full to empty.
        usable: FittedFactor,
        /// Root mean square of the misses over their standard deviations: well
        /// above 1, the plan is wrong in something that is none of the three.
        misfit_number: f64,
        readings_count: u32,
    },
    /// They tell none of them.
    Untold {
        cabin_loss: FittedFactor,
        draw: FittedFactor,
        usable: FittedFactor,
        readings_count: u32,
    },
}

/// Readings that a fit takes.
pub const LEAST_READINGS: usize = 3;
/// A standard error of less than this share of what it was: told.
pub(in crate::study) const TOLD: f64 = 0.75;
/// Steps until the unknowns stand, at the most.
const MOST_STEPS: u32 = 12;
/// They stand when they move by less than this, in standard deviations.
const STANDS: f64 = 0.02;
/// Half-widths of the differences: three factors, share and K.
const NUDGES: [f64; 5] = [0.05, 0.05, 0.05, 0.01, 0.2];
/// Factors beyond these are not tried.
pub(in crate::study) const FACTORS: (f64, f64) = (0.2, 5.0);
/// A factor whose figures are exact may still be off by so much.
pub(in crate::study) const LEAST_SD: f64 = 1e-4;

/// A fit on its way.
#[derive(Clone, Debug)]
pub(super) struct Fitting {
    ground: SearchScenario,
    plan: Plan,
    readings: Vec<Reading>,
    first: Start,
    least: Least,
    before: [f64; 3],
    steps: u32,
    is_done: bool,
}

impl Fitting {
    /// Ready to fit; nothing with fewer than three readings.
    pub(super) fn new(ground: &SearchScenario, plan: &Plan, readings: &[Reading]) -> Option<Self> {
        if readings.len() < LEAST_READINGS {
            return None;
        }
        let inputs = Inputs::new(&ground.scene, plan)?;
        let first = Anchor::of(ground, &inputs, &readings[..1])?.start;
        let before = [loss_sd(plan), draw_sd(plan), usable_sd(plan)].map(|sd| sd.max(LEAST_SD));
        // Where the first reading says nothing, the run does, roughly.
        let share = readings[0].share.unwrap_or(Known {
            value: first.soc,
            sd: 0.05,
        });
        let cabin_c = readings[0].cabin_c.unwrap_or(Known {
            value: first.cabin.air_c,
            sd: 2.0,
        });
        let factors = before.iter().map(|&sd| Known { value: 1.0, sd });
        let later = &readings[1..];
        let data = later.iter().filter_map(|reading| reading.share);
        let data = data.chain(later.iter().filter_map(|reading| reading.cabin_c));
        Some(Self {
            least: Least::new(
                factors.chain([share, cabin_c]).collect(),
                NUDGES.to_vec(),
                data.collect(),
            ),
            ground: ground.clone(),
            plan: plan.clone(),
            readings: readings.to_vec(),
            first,
            before,
            steps: 0,
            is_done: false,
        })
    }

    /// One step of the fit, of about a dozen runs of the night. Returns whether it
    /// is done.
    pub(super) fn step(&mut self) -> bool {
        if !self.is_done {
            let Self {
                ground,
                plan,
                readings,
                first,
                least,
                ..
            } = self;
            let moved = least.step(|at| values(ground, plan, readings, first, at));
            self.steps += 1;
            self.is_done = self.steps >= MOST_STEPS || moved.is_none_or(|moved| moved < STANDS);
        }
        self.is_done
    }

    /// What it came to.
    pub(super) fn finish(&self) -> Fit {
        let after = self.least.after();
        let factor = |place: usize| FittedFactor {
            sd_before_number: self.before[place],
            after_number: after[place].value,
            sd_after_number: after[place].sd,
            is_told: after[place].sd < TOLD * self.before[place] && self.before[place] > LEAST_SD,
        };
        let (cabin_loss, draw, usable) = (factor(0), factor(1), factor(2));
        let readings_count = self.readings.len() as u32;
        if !(cabin_loss.is_told || draw.is_told || usable.is_told) {
            return Fit::Untold {
                cabin_loss,
                draw,
                usable,
                readings_count,
            };
        }
        let at = self.least.at();
        let there = values(&self.ground, &self.plan, &self.readings, &self.first, at);
        Fit::Fitted {
            cabin_loss,
            draw,
            usable,
            misfit_number: there.map_or(0.0, |values| self.least.misfit(&values)),
            readings_count,
        }
    }
}

impl Fit {
    /// The plan with the factors in it, their spreads narrowed as well; nothing
    /// where the readings told none.
    #[must_use]
    pub fn applied_to(&self, plan: &Plan) -> Option<Plan> {
        let Self::Fitted {
            cabin_loss,
            draw,
            usable,
            ..
        } = self
        else {
            return None;
        };
        let factors = [cabin_loss, draw, usable].map(|factor| factor.after_number);
        let mut plan = scaled(plan, factors);
        // Of draw and usable energy the readings fix the ratio far better than
        // either; spreads of both at once would undo that, so the tighter of the
        // two relative errors stands for both.
        let tighter = draw.sd_after_number.min(usable.sd_after_number);
        narrow(&mut plan, &loss_paths(), cabin_loss.sd_after_number);
        let draws = draw_paths(&plan);
        narrow(&mut plan, &draws, tighter);
        narrow(&mut plan, &usable_paths(), tighter);
        Some(plan)
    }
}

/// What the model reads where readings were taken: charges, then cabins, of all
/// but the first.
fn values(
    ground: &SearchScenario,
    plan: &Plan,
    readings: &[Reading],
    first: &Start,
    at: &[f64],
) -> Option<Vec<f64>> {
    let &[loss, draw, usable, share, cabin_c] = at else {
        return None;
    };
    let inputs = Inputs::new(&ground.scene, &scaled(plan, [loss, draw, usable]))?;
    let mut start = *first;
    start.soc = share.clamp(0.0, 1.0);
    start.cabin.air_c = cabin_c;
    let how = How {
        is_quick: true,
        start: Some(start),
        until_h: readings.last().map(|last| last.at_h + 1.0),
        ..How::default()
    };
    let mut tape = Tape::default();
    run(&ground.scene, &inputs, &how, &mut tape)?;
    let later = &readings[1..];
    let shares = later.iter().filter(|reading| reading.share.is_some());
    let cabins = later.iter().filter(|reading| reading.cabin_c.is_some());
    Some(
        shares
            .map(|reading| Tape::at(&tape.shares, reading.at_h))
            .chain(cabins.map(|reading| Tape::at(&tape.cabins, reading.at_h)))
            .collect(),
    )
}

/// Charge and cabin against time.
#[derive(Default)]
struct Tape {
    shares: Vec<(f64, f64)>,
    /// Means of steps, at their middles, so that a thermostat's cycles are out.
    cabins: Vec<(f64, f64)>,
}

impl Sink for Tape {
    fn point(&mut self, point: &DayPoint) {
        let from_h = self.shares.last().map_or(point.hours_h, |last| last.0);
        self.shares
            .push((point.hours_h, 0.01 * point.charge_percent));
        self.cabins
            .push((0.5 * (from_h + point.hours_h), point.cabin_c));
    }
}

impl Tape {
    /// By straight lines; beyond the ends, the end.
    fn at(curve: &[(f64, f64)], at_h: f64) -> f64 {
        let upper = curve.partition_point(|point| point.0 < at_h);
        match (
            upper.checked_sub(1).and_then(|at| curve.get(at)),
            curve.get(upper),
        ) {
            (Some(a), Some(b)) => a.1 + (b.1 - a.1) * (at_h - a.0) / (b.0 - a.0),
            (Some(end), None) | (None, Some(end)) => end.1,
            (None, None) => 0.0,
        }
    }
}

/// The figures by which heat comes in: all are multiplied together.
pub(in crate::study) fn loss_paths() -> [Path; 4] {
    [
        C::ShellWM2K,
        C::GlassWM2K,
        C::AirChangesPerH,
        C::AiredChangesPerH,
    ]
    .map(Path::Cabin)
}

/// The figures of the first bank that hold its energy; only stated ones are multiplied.
pub(in crate::study) fn usable_paths() -> [Path; 3] {
    [B::BatteryRatedAh, B::MeasuredAh, B::MeasuredWh].map(|field| Path::Bank(0, field))
}

/// The draw of every mode, in watts or amps as the plan states it.
pub(in crate::study) fn draw_paths(plan: &Plan) -> Vec<Path> {
    let mut paths = Vec::new();
    for (unit, the_unit) in plan.units.iter().enumerate() {
        paths.extend((0..the_unit.modes.len()).filter_map(|mode| plan.draw_path(unit, mode)));
    }
    paths
}

/// The plan with its figures times cabin loss, draw and usable energy.
pub(super) fn scaled(plan: &Plan, factors: [f64; 3]) -> Plan {
    let [loss, draw, usable] = factors.map(|factor| factor.max(FACTORS.0).min(FACTORS.1));
    let mut plan = plan.clone();
    hold_cooling(&mut plan);
    for path in loss_paths() {
        times(&mut plan, path, loss);
    }
    for path in draw_paths(&plan) {
        times(&mut plan, path, draw);
    }
    for path in usable_paths() {
        if plan.stated(path).is_some() {
            times(&mut plan, path, usable);
        }
    }
    plan
}

/// Cooling is stated before the draw it would follow from is changed.
pub(in crate::study) fn hold_cooling(plan: &mut Plan) {
    let mut held: Vec<(Path, Figure)> = Vec::new();
    for (unit, the_unit) in plan.units.iter().enumerate() {
        let modes = (0..the_unit.modes.len()).map(|mode| Path::Mode(unit, mode, M::CoolingW));
        let paths = modes.chain([Path::Cooling(unit, K::CoolingW)]);
        held.extend(paths.filter_map(|path| Some((path, plan.figure(path)?))));
    }
    for (path, figure) in held {
        plan.set_figure(path, figure);
    }
}

/// A figure times a factor, kept in its accepted range; it keeps origin and spread.
pub(in crate::study) fn times(plan: &mut Plan, path: Path, factor: f64) {
    let (Some(figure), Some(range)) = (plan.figure(path), path.range()) else {
        return;
    };
    let value = (figure.value * factor).max(range.min).min(range.max);
    plan.set_figure(path, figure.with(value));
}

/// No spread of the stated figures at `paths` is wider than the standard error says: `sd` as
/// a share of the value.
pub(in crate::study) fn narrow(plan: &mut Plan, paths: &[Path], sd: f64) {
    for &path in paths {
        let Some(figure) = plan.stated(path) else {
            continue;
        };
        let percent = 100.0 * half_width(path, figure) / figure.value.abs().max(1e-12);
        plan.set_figure(
            path,
            Figure {
                spread_percent: Some(percent.min(200.0 * sd)),
                ..figure
            },
        );
    }
}

/// One standard deviation of a figure as a share of it; 0 where there is none.
pub(in crate::study) fn share_sd(plan: &Plan, path: Path) -> f64 {
    plan.figure(path).map_or(0.0, |figure| {
        0.5 * half_width(path, figure) / figure.value.abs().max(1e-12)
    })
}

/// The wider of shell's and glass's, as a share, one standard deviation.
pub(in crate::study) fn loss_sd(plan: &Plan) -> f64 {
    share_sd(plan, Path::Cabin(C::ShellWM2K)).max(share_sd(plan, Path::Cabin(C::GlassWM2K)))
}

/// The widest of the modes that are planned, as a share, one standard deviation.
fn draw_sd(plan: &Plan) -> f64 {
    let rows = plan.mode_rows();
    let paths = rows
        .iter()
        .filter_map(|&(_, unit, mode)| plan.draw_path(unit, mode?));
    paths.map(|path| share_sd(plan, path)).fold(0.0, f64::max)
}

/// As a share, one standard deviation: of what was measured, else of rated Ah and state of
/// health together.
pub(in crate::study) fn usable_sd(plan: &Plan) -> f64 {
    let share = |field| share_sd(plan, Path::Bank(0, field));
    let measured = &plan.banks.first().map(|bank| bank.measured);
    match measured {
        Some(measured) if measured.measured_ah.is_some() => share(B::MeasuredAh),
        Some(measured) if measured.measured_wh.is_some() => share(B::MeasuredWh),
        _ => share(B::BatteryRatedAh).hypot(share(B::HealthPercent)),
    }
}
