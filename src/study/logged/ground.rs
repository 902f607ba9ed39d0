//! A logged night made ready: what was measured, on the steps of the plan's own day.

use super::bins::{Bin, Bins, Row};
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
    simulate::day::{
        Inputs, STEPS_PER_HOUR, Scene, UnitDid, cabin_at, can_be_run, extra_on_w, off_w,
    },
};

/// Hours of a log that are read; a longer one is cut there.
pub const MOST_H: f64 = 36.0;
/// Rows that are no further apart show whether the unit was on: its cycles last some
/// minutes (common practice, no source).
pub(super) const FINE_S: f64 = 180.0;
/// Above this share of what a mode draws, it is on: between a fan and a unit that
/// draws far less than its label.
const ON_SHARE: f64 = 0.35;
/// Less than this share of what a mode draws is no unit.
const STRAY: f64 = 0.05;
/// Rows with the unit off, and their share of all, that show what else is drawn.
const OFF_ROWS: (usize, f64) = (5, 0.05);

/// What was measured, step by step, and the day that it is held against.
#[derive(Clone, Debug)]
pub(super) struct Ground {
    /// The plan on the log's own clock and hours.
    pub plan: Plan,
    pub scene: Scene,
    pub bins: Bins,
    pub step_h: f64,
    /// What the unit did in each step.
    pub did: Vec<UnitDid>,
    /// Share of the time on, by what was drawn.
    pub on_share: Vec<f64>,
    pub amps: Vec<f64>,
    pub cabin_c: Option<Vec<f64>>,
    pub outdoor_c: Option<Vec<f64>>,
    /// What rows drew with a mode on over what that mode draws by the plan's curves,
    /// outdoor temperature beside it: a mean for each step.
    pub draws: Vec<Drawn>,
    /// On the bars beside the unit, W, where the log shows it.
    pub beside_w: Option<f64>,
    /// The battery's own electronics ended the run, at this step.
    pub cut_off_at: Option<usize>,
    /// The unit was never on.
    pub never_on: bool,
    /// Share of the steps in which the bank was charged.
    pub charged_share: f64,
}

/// What was drawn with a mode on, over the plan's own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Drawn {
    pub outdoor_c: f64,
    pub ratio: f64,
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
            did: Vec::new(),
            on_share: Vec::new(),
            amps,
            draws: Vec::new(),
            beside_w: None,
            never_on: true,
            bins,
        };
        ground.look_at_unit(&inputs, nominal_v);
        Some(ground)
    }

    /// The plan's inputs under the weather that was measured, `warmer_k` added: what
    /// two thermometers differ by.
    pub(super) fn inputs(&self, plan: &Plan, warmer_k: f64) -> Option<Inputs> {
        let mut inputs = Inputs::new(&self.scene, plan)?;
        self.put_weather(&mut inputs, warmer_k);
        Some(inputs)
    }

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
        if let Some(beside_w) = self.beside_w {
            inputs.bus_w = beside_w;
        }
    }

    /// What the unit did: on where a row is well above what else is drawn.
    fn look_at_unit(&mut self, inputs: &Inputs, nominal_v: f64) {
        let steps = self.bins.all.len();
        let mut planned = vec![None; steps];
        for slot in &inputs.timeline.slots {
            if let Some(place) = planned.get_mut(slot.step) {
                *place = slot.rig.or(*place);
            }
        }
        let volts = self.bins.filled(|bin| bin.volts);
        let watts = self
            .bins
            .filled(|bin| bin.watts)
            .unwrap_or(vec![0.0; steps]);
        let mut weathered = inputs.clone();
        self.put_weather(&mut weathered, 0.0);
        let states: Vec<Step> = (0..steps)
            .map(|at| {
                let bar_v = volts.as_ref().map_or(nominal_v, |all| all[at].max(1.0));
                let outdoor_c = weathered.air.get(at).map_or(0.0, |air| air.outdoor_c);
                Step::new(self, &weathered, planned[at], at, bar_v, outdoor_c)
            })
            .collect();
        let known_w = inputs.bus_w;
        let is_on = |row: &Row| {
            let step = &states[row.bin];
            let over_w = row.watts - known_w - step.off_w(row.watts - known_w);
            step.mode(over_w)
                .is_some_and(|(_, on_w)| over_w > ON_SHARE * on_w)
        };
        let on: Vec<bool> = self.bins.rows.iter().map(is_on).collect();
        let off_rows: Vec<f64> = self
            .bins
            .rows
            .iter()
            .zip(&on)
            .filter(|(_, on)| !**on)
            .map(|(row, _)| row.watts)
            .collect();
        let shows_off = off_rows.len() >= OFF_ROWS.0
            && off_rows.len() as f64 >= OFF_ROWS.1 * self.bins.rows.len() as f64;
        let standby_w = states.first().map_or(0.0, |step| step.off_w(0.0));
        let base_w = if shows_off {
            middle(off_rows).max(0.0)
        } else {
            known_w + standby_w
        };
        self.beside_w = shows_off.then(|| (base_w - standby_w).max(0.0));
        self.never_on = !on.contains(&true);
        let is_fine = self.bins.usual_step_s <= FINE_S;
        let starts = starts(&self.bins.rows, &on, steps);
        self.did = (0..steps)
            .map(|at| {
                let extra_w = (watts[at] - base_w).max(0.0);
                // Doors are open while no mode is planned and none is on.
                let mode = states[at].mode(extra_w).filter(|(_, on_w)| {
                    !self.never_on && (planned[at].is_some() || extra_w > STRAY * on_w)
                });
                UnitDid {
                    rig: mode.map(|mode| mode.0),
                    extra_w,
                    bar_v: states[at].bar_v,
                    starts: is_fine.then_some(starts[at]),
                }
            })
            .collect();
        let share = |(did, step): (&UnitDid, &Step)| {
            let mode = step.mode(did.extra_w);
            mode.map_or(0.0, |(_, on_w)| did.extra_w / on_w)
        };
        self.on_share = self.did.iter().zip(&states).map(share).collect();
        if is_fine {
            self.draws = drawn(&self.bins.rows, &on, &states, base_w);
        }
    }
}

/// What the plan has for one step.
struct Step {
    bar_v: f64,
    outdoor_c: f64,
    /// Each mode with what it draws on above its off-time, and in it.
    modes: Vec<(usize, f64, f64)>,
}

impl Step {
    fn new(
        ground: &Ground,
        inputs: &Inputs,
        planned: Option<usize>,
        at: usize,
        bar_v: f64,
        outdoor_c: f64,
    ) -> Self {
        let air_c = ground.cabin_c.as_ref().map_or(inputs.set_c, |all| all[at]);
        let cabin = cabin_at(inputs, air_c, air_c);
        let all = 0..inputs.rigs.len();
        let asked: Vec<usize> = planned.map_or(all.collect(), |rig| vec![rig]);
        let modes = asked.into_iter().filter_map(|rig| {
            let on_w = extra_on_w(&ground.scene, inputs, rig, &cabin, outdoor_c, bar_v)?;
            Some((rig, on_w, off_w(inputs, rig, bar_v)))
        });
        Self {
            bar_v,
            outdoor_c,
            modes: modes.collect(),
        }
    }

    /// The mode that draws most nearly so much: the planned one, where one is.
    fn nearest(&self, over_w: f64) -> Option<&(usize, f64, f64)> {
        let far = |on_w: f64| (over_w - on_w).abs();
        self.modes
            .iter()
            .min_by(|a, b| far(a.1).total_cmp(&far(b.1)))
    }

    fn mode(&self, over_w: f64) -> Option<(usize, f64)> {
        self.nearest(over_w).map(|mode| (mode.0, mode.1))
    }

    fn off_w(&self, over_w: f64) -> f64 {
        self.nearest(over_w).map_or(0.0, |mode| mode.2)
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

fn cut_off_at(log: &Log, step_h: f64, steps: usize) -> Option<usize> {
    let end = run_end(log, None).filter(|end| end.cause == Cause::BatteryCutOff)?;
    let at = (in_hours(end.at) / step_h) as usize;
    (at < steps).then_some(at)
}

/// Starts in each step.
fn starts(rows: &[Row], on: &[bool], steps: usize) -> Vec<f64> {
    let mut starts = vec![0.0; steps];
    for at in 1..rows.len() {
        if on[at] && !on[at - 1] && rows[at].follows {
            starts[rows[at].bin] += 1.0;
        }
    }
    starts
}

/// A mean for each step of the rows with a mode on, its neighbours on as well: a row
/// at a switch may be a mean over both.
fn drawn(rows: &[Row], on: &[bool], states: &[Step], base_w: f64) -> Vec<Drawn> {
    let whole = |at: usize| {
        let before = at > 0 && on[at - 1] && rows[at].follows;
        let after = on.get(at + 1).is_some_and(|on| *on) && rows[at + 1].follows;
        on[at] && before && after
    };
    let places: Vec<usize> = (0..rows.len()).filter(|&at| whole(at)).collect();
    let groups = places.chunk_by(|a, b| rows[*a].bin == rows[*b].bin);
    groups
        .filter_map(|group| {
            let mean_w = group.iter().map(|&at| rows[at].watts).sum::<f64>() / group.len() as f64;
            let step = &states[rows[group[0]].bin];
            let (_, on_w, off_w) = *step.nearest(mean_w - base_w)?;
            Some(Drawn {
                outdoor_c: step.outdoor_c,
                ratio: (mean_w - base_w + off_w) / (on_w + off_w),
            })
        })
        .filter(|drawn| drawn.ratio.is_finite() && drawn.ratio > 0.0)
        .collect()
}

fn share_of(all: &[f64], is: impl Fn(f64) -> bool) -> f64 {
    all.iter().filter(|one| is(**one)).count() as f64 / all.len().max(1) as f64
}

/// The one in the middle; 0 of none.
pub(super) fn middle(mut all: Vec<f64>) -> f64 {
    all.sort_unstable_by(f64::total_cmp);
    all.get(all.len() / 2).copied().unwrap_or(0.0)
}

/// Share of the bank at the start, by the plan.
pub(super) fn start_share(plan: &Plan) -> f64 {
    let percent = plan.number(Path::Bank(0, B::StartChargePercent));
    percent.unwrap_or(100.0) / 100.0
}

/// Whether the step has a reading of its own.
pub(super) fn own(bins: &Bins, part: fn(&Bin) -> Option<f64>) -> Vec<usize> {
    let all = bins.all.iter().enumerate();
    all.filter(|(_, bin)| part(bin).is_some())
        .map(|(at, _)| at)
        .collect()
}
