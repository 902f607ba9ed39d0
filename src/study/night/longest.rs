//! The longest cool night: the mode plan that holds the set point longest on this
//! bank.
//!
//! All plans are looked at that start in any mode of one unit, or with none, and
//! switch at most twice, at times on a grid of twenty minutes. They are walked
//! together, step by step, and one is given up when another, with no more
//! switches, has as much in the bank in as cool a cabin. Two that are closer than
//! [`NEAR`] count as alike, and no more than [`MOST_LABELS`] are kept: so it is
//! the best of those plans up to what such a difference is worth.

use super::{switching::Modes, trial::SearchScenario};
use crate::{
    plan::{ModeRow, Plan},
    simulate::day::{Inputs, Legs, Mark, ModeAt},
};
use serde::{Deserialize, Serialize};

/// From so many hours on, a mode or none.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ModeFrom {
    /// Minutes after midnight.
    pub clock_min: u32,
    /// From the plan's start.
    pub hours_h: f64,
    /// Absent: off, doors and roof light open.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mode: Option<ModeAt>,
}

/// A mode plan and how long it holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CoolPlan {
    /// In the order of time, the first at the start; no more switches than were looked at.
    pub modes: Vec<ModeFrom>,
    /// Until the cabin is too warm or the bank empty, h; 0 where it was never cool in time.
    pub held_h: f64,
    /// Left in the bank then, of what it holds, 0 to 100.
    pub charge_percent: f64,
}

/// The best plan found, and what one mode alone does.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LongestNight {
    /// The cabin's air is to stay at or below this: half a kelvin above the thermostat's band.
    pub limit_c: f64,
    /// How long it may take to get there first.
    pub pull_down_h: f64,
    /// The longest of all that were looked at.
    pub best: CoolPlan,
    /// Each mode alone, from the start on, strong ones first, and at last none.
    pub alone: Vec<CoolPlan>,
    /// Nothing longer was looked at, h.
    pub looked_h: f64,
    /// Plans with more were not looked at.
    pub most_switches_count: u32,
    /// Switches lie so far apart, or a multiple of it.
    pub grid_min: u32,
    /// Whether plans were given up for want of room.
    pub is_cut_short: bool,
}

/// Switches of a plan.
const MOST_SWITCHES: usize = 2;
/// Steps of the grid an hour: those of the scene that searches use.
const STEPS_PER_HOUR: usize = crate::simulate::day::COARSE_STEPS_PER_HOUR;
/// How long is looked ahead.
const LOOKED_H: f64 = 24.0;
/// How far above the band's top still counts as held, K: as the day counts it.
const LEEWAY_K: f64 = 0.5;
/// How long the cabin may take to get there, h: as the day counts it.
const PULL_DOWN_H: f64 = 2.0;
/// Modes that are looked at, strong ones first.
const MOST_MODES: usize = 6;
/// States that differ by less count as alike: share of the bank, K of the air and
/// of the shell (a thermostat's own swing is more), kg/kg of water.
pub const NEAR: [f64; 4] = [0.002, 0.25, 0.15, 0.0003];
/// Plans walked at once.
pub const MOST_LABELS: usize = 600;

/// Looks for the longest night, a step of the grid at a time.
///
/// [`Self::step`] until it is true, then [`Self::finish`].
#[derive(Clone, Debug)]
pub struct Longest {
    legs: Legs,
    modes: Modes,
    /// Places of the modes that are looked at, then none.
    options: Vec<Option<usize>>,
    limit_c: f64,
    open: Vec<Label>,
    best: Option<Label>,
    alone: Vec<Option<Label>>,
    step: usize,
    steps: usize,
    is_cut_short: bool,
}

/// A plan as far as it was walked.
#[derive(Clone, Debug, PartialEq)]
struct Label {
    mark: Mark,
    share: f64,
    /// From which step on which option; the first at 0.
    path: Vec<(usize, usize)>,
    /// Whether the cabin has been cool.
    is_cool: bool,
    /// How long it held, once that is known.
    held_h: f64,
}

impl Label {
    /// The place of the option it is on now.
    fn option(&self) -> usize {
        self.path.last().map_or(0, |at| at.1)
    }
    /// How often it has switched.
    fn switches(&self) -> usize {
        self.path.len().saturating_sub(1)
    }

    /// Whether whatever the other may still do, this may do as well.
    fn covers(&self, other: &Self) -> bool {
        // To do as the other does it may have to switch first.
        let extra = usize::from(self.option() != other.option());
        if self.switches() + extra > other.switches() || (other.is_cool && !self.is_cool) {
            return false;
        }
        // A unit that was stopped does nothing more in its mode.
        if self.mark.is_stopped() && !other.mark.is_stopped() {
            return false;
        }
        let (air, shell) = self.mark.cabin_c();
        let (other_air, other_shell) = other.mark.cabin_c();
        self.share >= other.share - NEAR[0]
            && air <= other_air + NEAR[1]
            && shell <= other_shell + NEAR[2]
            && self.mark.humidity_ratio() <= other.mark.humidity_ratio() + NEAR[3]
    }

    /// Longer first; then fewer switches, more left, and the weaker mode.
    fn is_better_than(&self, other: &Self) -> bool {
        let key = |label: &Self| {
            let first = label.path.first().map_or(0, |at| at.1);
            // Rounding decides nothing.
            let share = (1e3 * label.share).round();
            (label.held_h, -(label.switches() as f64), share, first)
        };
        key(self).partial_cmp(&key(other)) == Some(std::cmp::Ordering::Greater)
    }
}

impl Longest {
    /// Ready to look; nothing where the plan cannot be run or plans no mode.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        let mut a_day = plan.clone();
        a_day.day.days_count = Some(1);
        let ground = SearchScenario::days(&a_day, 1)?;
        let modes = Modes::of(plan);
        let strongest = modes.strongest_between(0, 24 * 60)?;
        let unit = modes.list[strongest].0;
        let of_unit = (0..modes.list.len()).filter(|&place| modes.list[place].0 == unit);
        let options: Vec<_> = of_unit.take(MOST_MODES).map(Some).chain([None]).collect();
        let rows = modes.switched(0, 0, None);
        let inputs = Inputs::of_rows(&ground.scene, plan, modes.list.clone(), &rows)?;
        let limit_c = inputs.set_c + 0.5 * inputs.band_k + LEEWAY_K;
        let legs = Legs::new(&ground.scene, inputs)?;
        let start = legs.start()?;
        let share = start.share(&legs);
        let first = |option| Label {
            mark: start.clone(),
            share,
            path: vec![(0, option)],
            is_cool: start.cabin_c().0 <= limit_c,
            held_h: 0.0,
        };
        Some(Self {
            open: (0..options.len()).map(first).collect(),
            alone: vec![None; options.len()],
            steps: (LOOKED_H.min(ground.scene.span_h) * STEPS_PER_HOUR as f64).round() as usize,
            best: None,
            step: 0,
            is_cut_short: false,
            limit_c,
            options,
            modes,
            legs,
        })
    }

    /// Walks so many steps of the grid further, a few milliseconds each at the
    /// most. Returns whether nothing is left to look at.
    pub fn step(&mut self, steps: u32) -> bool {
        for _ in 0..steps {
            if self.open.is_empty() {
                return true;
            }
            self.walk();
        }
        self.open.is_empty()
    }

    /// All open plans one step on, and those that switch there.
    fn walk(&mut self) {
        let mut next: Vec<Label> = Vec::with_capacity(self.open.len());
        for label in std::mem::take(&mut self.open) {
            for option in 0..self.options.len() {
                let switches = option != label.option();
                if switches && (self.step == 0 || label.switches() >= MOST_SWITCHES) {
                    continue;
                }
                let mut path = label.path.clone();
                if switches {
                    path.push((self.step, option));
                }
                self.leg(&label, path, &mut next);
            }
        }
        self.open = self.kept(next);
        self.step += 1;
    }

    /// One plan one step on: it holds, or how long it did is known.
    fn leg(&mut self, from: &Label, path: Vec<(usize, usize)>, next: &mut Vec<Label>) {
        let option = path.last().map_or(0, |at| at.1);
        let hours = |step: usize| step as f64 / STEPS_PER_HOUR as f64;
        let to_h = hours(self.step + 1);
        let leg = self.legs.go(&from.mark, to_h, self.options[option]);
        let mut label = Label {
            share: leg.mark.share(&self.legs),
            is_cool: from.is_cool,
            held_h: hours(self.step),
            mark: leg.mark,
            path,
        };
        let (air_c, _) = label.mark.cabin_c();
        let is_warm = leg.warmest_c > self.limit_c;
        let is_late = !from.is_cool && to_h > PULL_DOWN_H + 1e-9 && air_c > self.limit_c;
        if let Some(empty_h) = leg.empty_h {
            label.held_h = if is_warm && from.is_cool {
                label.held_h
            } else {
                empty_h
            };
            return self.end(label, from.share);
        }
        if is_late || (from.is_cool && is_warm) {
            // A night that was never cool held for no time at all.
            label.held_h = if from.is_cool { label.held_h } else { 0.0 };
            return self.end(label, from.share);
        }
        label.is_cool |= air_c <= self.limit_c;
        label.held_h = to_h;
        if self.step + 1 >= self.steps {
            let share = label.share;
            return self.end(label, share);
        }
        next.push(label);
    }

    /// Takes in a plan that came to its end.
    fn end(&mut self, mut label: Label, share: f64) {
        label.share = share;
        // A switch in the very step that fails is none.
        let last = label.path.last().copied();
        if label.path.len() > 1 && last.is_some_and(|at| at.0 == self.step) {
            return;
        }
        if label.path.len() == 1 {
            let option = label.option();
            self.alone[option] = Some(label.clone());
        }
        if self
            .best
            .as_ref()
            .is_none_or(|best| label.is_better_than(best))
        {
            self.best = Some(label);
        }
    }

    /// Those that no other covers. Each mode alone is walked to its own end.
    fn kept(&mut self, mut labels: Vec<Label>) -> Vec<Label> {
        labels.sort_by(|a, b| {
            let by_switches = a.switches().cmp(&b.switches());
            by_switches.then(b.share.total_cmp(&a.share))
        });
        let mut kept: Vec<Label> = Vec::with_capacity(labels.len());
        for label in labels {
            let is_alone = label.path.len() == 1;
            if !is_alone && kept.iter().any(|other| other.covers(&label)) {
                continue;
            }
            if kept.len() >= MOST_LABELS {
                self.is_cut_short = true;
                break;
            }
            kept.push(label);
        }
        kept
    }

    /// The best plan; nothing before all is looked at.
    #[must_use]
    pub fn finish(&self) -> Option<LongestNight> {
        let best = self.best.as_ref().filter(|_| self.open.is_empty())?;
        let alone = self.alone.iter().flatten();
        Some(LongestNight {
            limit_c: self.limit_c,
            pull_down_h: PULL_DOWN_H,
            best: self.told(best),
            alone: alone.map(|label| self.told(label)).collect(),
            looked_h: self.steps as f64 / STEPS_PER_HOUR as f64,
            most_switches_count: MOST_SWITCHES as u32,
            grid_min: 60 / STEPS_PER_HOUR as u32,
            is_cut_short: self.is_cut_short,
        })
    }

    /// A plan in the words of the answer.
    fn told(&self, label: &Label) -> CoolPlan {
        let minutes = |step: usize| (step * 60 / STEPS_PER_HOUR) as u32;
        let modes = label.path.iter().map(|&(step, option)| ModeFrom {
            clock_min: self.modes.clock_min(minutes(step)),
            hours_h: step as f64 / STEPS_PER_HOUR as f64,
            mode: self.options[option].map(|place| {
                let (unit, mode) = self.modes.list[place];
                ModeAt { unit, mode }
            }),
        });
        CoolPlan {
            modes: modes.collect(),
            held_h: label.held_h,
            charge_percent: 100.0 * label.share,
        }
    }
}

impl CoolPlan {
    /// The plan with these modes by the clock, and off when they have held.
    #[must_use]
    pub fn applied_to(&self, plan: &Plan) -> Plan {
        let mut plan = plan.clone();
        let unit = self
            .modes
            .iter()
            .find_map(|from| from.mode)
            .map_or(plan.night.asked_unit, |at| at.unit);
        let mut rows: Vec<ModeRow> = self
            .modes
            .iter()
            .map(|from| ModeRow {
                from_clock_min: Some(from.clock_min),
                unit,
                mode: from.mode.map(|at| at.mode),
            })
            .collect();
        // The cast saturates; a plan that holds all day needs no end.
        let held_min = (60.0 * self.held_h).floor() as u32;
        if let Some(first) = self.modes.first().filter(|_| held_min < 24 * 60) {
            rows.push(ModeRow {
                from_clock_min: Some((first.clock_min + held_min) % (24 * 60)),
                unit,
                mode: None,
            });
        }
        plan.mode_plan = rows;
        plan
    }
}

/// The longest cool night at once; in slices: [`Longest`].
///
/// ```
/// use till_morning::{answer::day::longest_night, plan::Plan};
/// let night = longest_night(&Plan::demo()).unwrap();
/// assert!(night.alone.iter().all(|alone| alone.held_h <= night.best.held_h));
/// ```
/// Nothing where the plan cannot be run or plans no mode.
#[must_use]
pub fn longest_night(plan: &Plan) -> Option<LongestNight> {
    let mut longest = Longest::new(plan)?;
    while !longest.step(u32::MAX) {}
    longest.finish()
}
