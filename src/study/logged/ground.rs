//! A logged night made ready: what was measured, on the steps of the plan's own day.

use super::{
    bins::{Bin, Bins},
    unit::UnitSeen,
};
use crate::{
    physics::bench::{
        log::Log,
        run_end::{Cause, run_end},
    },
    plan::{
        Plan,
        day::DayField as D,
        path::{BankField as B, Path},
    },
    quantity::in_hours,
    range,
    simulate::day::{Inputs, STEPS_PER_HOUR, Scene, can_be_run},
};

/// Hours of a log that are read; a longer one is cut there.
pub const MOST_H: f64 = 36.0;

/// What was measured, step by step, and the day that it is held against.
#[derive(Clone, Debug)]
pub(super) struct Ground {
    /// The plan on the log's own clock and hours.
    pub plan: Plan,
    /// Its days, as long as the log.
    pub scene: Scene,
    /// The log in steps; the lists below have as many.
    pub bins: Bins,
    /// Length of a step, h.
    pub step_h: f64,
    /// What the unit did.
    pub unit: UnitSeen,
    /// Out of the bank; 0 throughout where none were logged.
    pub amps: Vec<f64>,
    /// Filled; absent where fewer than half of the steps have it.
    pub cabin_c: Option<Vec<f64>>,
    /// The same.
    pub outdoor_c: Option<Vec<f64>>,
    /// The battery's own electronics ended the run, at this step.
    pub cut_off_at: Option<usize>,
    /// Share of the steps in which the bank was charged, 0 to 1.
    pub charged_share: f64,
}

impl Ground {
    /// Nothing where the plan cannot be run.
    pub(super) fn new(plan: &Plan, log: &Log) -> Option<Self> {
        if !can_be_run(plan) {
            return None;
        }
        let nominal_v = plan.banks.first()?.nominal_v();
        let utc_offset_min = plan.number(Path::Day(D::UtcOffsetMin))?;
        let step_h = 1.0 / STEPS_PER_HOUR as f64;
        let bins = Bins::of(log, step_h, MOST_H, nominal_v, utc_offset_min);
        let plan = on_log(plan, &bins, step_h);
        let scene = Scene::new(&plan)?;
        let inputs = Inputs::new(&scene, &plan)?;
        let steps = bins.all.len();
        let amps = bins.filled(|bin| bin.amps).unwrap_or(vec![0.0; steps]);
        let mut ground = Self {
            cabin_c: bins
                .filled(|bin| bin.cabin_c)
                .filter(|_| bins.has(|bin| bin.cabin_c)),
            outdoor_c: bins
                .filled(|bin| bin.outdoor_c)
                .filter(|_| bins.has(|bin| bin.outdoor_c)),
            cut_off_at: cut_off_at(log, step_h, steps),
            charged_share: share_of(&amps, |amps| amps < 0.0),
            plan,
            scene,
            step_h,
            unit: UnitSeen::default(),
            amps,
            bins,
        };
        ground.unit = UnitSeen::of(&ground, &inputs, nominal_v);
        Some(ground)
    }

    /// The plan's inputs under the weather that was measured, `warmer_k` added: what
    /// two thermometers differ by.
    pub(super) fn inputs(&self, plan: &Plan, warmer_k: f64) -> Option<Inputs> {
        let mut inputs = Inputs::new(&self.scene, plan)?;
        self.put_weather(&mut inputs, warmer_k);
        Some(inputs)
    }

    /// The weather that was measured in the place of the plan's, `warmer_k` added to either;
    /// and what the log shows to be drawn beside the unit.
    pub(super) fn put_weather(&self, inputs: &mut Inputs, warmer_k: f64) {
        let last = self.bins.all.len().saturating_sub(1);
        for (edge, air) in inputs.air.iter_mut().enumerate() {
            if let Some(outdoor) = self.outdoor_c.as_ref().filter(|all| !all.is_empty()) {
                // At an edge, the mean of the steps on both sides.
                let (before, after) = (edge.saturating_sub(1).min(last), edge.min(last));
                air.outdoor_c = 0.5 * (outdoor[before] + outdoor[after]);
            }
            air.outdoor_c += warmer_k;
        }
        if let Some(beside_w) = self.unit.beside_w {
            inputs.bus_w = beside_w;
        }
    }
}

/// The plan on the clock of the log, as long as that; a plan without a mode plan has
/// its one mode on all along.
fn on_log(plan: &Plan, bins: &Bins, step_h: f64) -> Plan {
    let mut plan = plan.clone();
    let span_h = bins.all.len() as f64 * step_h;
    if let Some(start_min) = bins.start_min {
        plan.night.start_clock_min = start_min;
    }
    if plan.mode_plan.is_empty() {
        let wanted_h = plan.night.wanted_h.max(span_h.ceil() + 1.0);
        plan.night.wanted_h = wanted_h.min(range::WANTED_H.max);
    }
    plan.day.days_count = Some((span_h / 24.0).ceil().max(1.0) as u32);
    plan
}

/// The step in which the battery's own electronics ended the run, if they did.
fn cut_off_at(log: &Log, step_h: f64, steps: usize) -> Option<usize> {
    let end = run_end(log, None).filter(|end| end.cause == Cause::BatteryCutOff)?;
    let at = (in_hours(end.at) / step_h) as usize;
    (at < steps).then_some(at)
}

fn share_of(all: &[f64], is: impl Fn(f64) -> bool) -> f64 {
    all.iter().filter(|one| is(**one)).count() as f64 / all.len().max(1) as f64
}

/// The one in the middle; 0 of none.
pub(super) fn middle(mut all: Vec<f64>) -> f64 {
    all.sort_unstable_by(f64::total_cmp);
    all.get(all.len() / 2).copied().unwrap_or(0.0)
}

/// Share of the bank at the start, 0 to 1, by the plan.
pub(super) fn start_share(plan: &Plan) -> f64 {
    let percent = plan.number(Path::Bank(0, B::StartChargePercent));
    percent.unwrap_or(100.0) / 100.0
}

/// The steps that have a reading of their own.
pub(super) fn own(bins: &Bins, part: fn(&Bin) -> Option<f64>) -> Vec<usize> {
    let all = bins.all.iter().enumerate();
    all.filter(|(_, bin)| part(bin).is_some())
        .map(|(at, _)| at)
        .collect()
}
