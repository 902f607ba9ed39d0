//! The midnight check-in: the day put right by what was read, and what to switch
//! now to reach the wanted hour.

use super::{
    bedtime::NINE_IN_TEN,
    fit::{Fit, Fitting, LEAST_READINGS},
    readings::{Anchor, Reading},
    switching::Modes,
    trial::{Chances, SearchScenario, Tally},
};
use crate::{
    plan::Plan,
    simulate::day::{DayPoint, How, Inputs, ModeAt, Outcome, Record, Scene, Start, run},
    study::spread::{Draws, chance::place_of},
};
use serde::{Deserialize, Serialize};

/// What the last reading makes of the night.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CheckInAnswer {
    /// Hours from the plan's start to the last reading.
    pub at_h: f64,
    /// How many readings say when, and charge or cabin.
    pub readings_count: u32,
    /// Share of what the bank holds at the last reading, 0 to 100: as read, or where nothing
    /// was read, as the run had it.
    pub charge_percent: f64,
    /// The same of the cabin's air.
    pub cabin_c: f64,
    /// What the run, put right by the readings before, had come to.
    pub expected_charge_percent: f64,
    /// The same of the cabin's air.
    pub expected_cabin_c: f64,
    /// Charge that went since the reading before (or the start), over what was
    /// expected to go; absent where that is too little to tell.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub used_ratio_number: Option<f64>,
    /// The wanted hour that comes next, hours from the plan's start.
    pub goal_h: f64,
    /// From the reading on; hours from the plan's start.
    pub onward: Onward,
    /// Odds from the reading on, by the plan's own modes; absent before any was
    /// drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chances: Option<Chances>,
    /// What to switch now; absent until it is found.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub advice: Option<Advice>,
    /// What the readings say of cabin loss, draw and usable energy.
    pub fit: Fit,
}

/// How it goes on, by the plan as it stands after the readings; hours from the plan's start.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Onward {
    /// When the bank is first empty; absent: not within the days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub empty_h: Option<f64>,
    /// When the set point is first lost; absent: not within the days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost_h: Option<f64>,
    /// From the reading on, 0 to 100.
    pub least_charge_percent: f64,
    /// From the reading to the end of the days.
    pub trace: Vec<DayPoint>,
}

/// The least change of modes that reaches the wanted hour in nine of ten, with the odds by it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "advice", rename_all = "snake_case")]
pub enum Advice {
    /// The modes as planned.
    GoOn { chances: Chances },
    /// To this mode, or off, now and until the wanted hour.
    SwitchNow {
        #[serde(default, skip_serializing_if = "Option::is_none")]
        to: Option<ModeAt>,
        chances: Chances,
    },
    /// Not even with the unit off; the odds then.
    NothingReaches { chances: Chances },
}

/// Drawn nights for each mode tried.
const NIGHTS: u32 = 60;
/// Share of what the bank holds that must have gone before a ratio is told.
const LEAST_DROP: f64 = 0.02;

/// Works on a check-in, a slice at a time.
///
/// With three readings or more the plan is fitted to them first, and all that
/// follows is by the plan so fitted.
///
/// [`Self::step`] until it is true; [`Self::finish`] tells what is known at any time.
#[derive(Clone, Debug)]
pub struct CheckInWork {
    ground: SearchScenario,
    goal_h: f64,
    readings: Vec<Reading>,
    last: Reading,
    /// By the plan as it was before any fit.
    first_anchor: Anchor,
    fitting: Option<Fitting>,
    tail: Option<Tail>,
    plan: Plan,
}

/// What follows once the plan stands.
#[derive(Clone, Debug)]
struct Tail {
    plan: Plan,
    anchor: Anchor,
    draws: Draws,
    modes: Modes,
    /// What may be switched to: first nothing at all, then lower and lower.
    options: Vec<Switch>,
    at: usize,
    tally: Tally,
    chances: Option<Chances>,
    advice: Option<Advice>,
}

/// A change of modes, or none.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Switch {
    Stay,
    To(Option<usize>),
}

impl CheckInWork {
    /// Ready to work on a plan's readings; nothing without any that says when and
    /// charge or cabin, or where the plan cannot be run.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        let readings = Reading::all(plan);
        let last = *readings.last()?;
        let wanted_h = plan.night.wanted_h;
        let days = (((last.at_h - wanted_h) / 24.0).floor() + 1.0).max(0.0);
        let goal_h = wanted_h + 24.0 * days;
        // Whole days that hold the goal; the cast saturates.
        let ground = SearchScenario::days(plan, (goal_h / 24.0).ceil().min(7.0) as u32)?;
        let goal_h = goal_h.min(ground.scene.span_h);
        if last.at_h >= ground.scene.span_h {
            return None;
        }
        let inputs = Inputs::new(&ground.scene, plan)?;
        Some(Self {
            first_anchor: Anchor::of(&ground, &inputs, &readings)?,
            fitting: Fitting::new(&ground, plan, &readings),
            ground,
            goal_h,
            readings,
            last,
            tail: None,
            plan: plan.clone(),
        })
    }

    /// Does so many slices of the work, a few milliseconds each at the most.
    /// Returns whether all is done.
    pub fn step(&mut self, slices: u32) -> bool {
        for _ in 0..slices {
            if let Some(fitting) = self.fitting.as_mut()
                && self.tail.is_none()
                && !fitting.step()
            {
                continue;
            }
            if self.tail.is_none() {
                self.tail = self.begin();
            }
            let (goal_h, last) = (self.goal_h, self.last);
            match self.tail.as_mut() {
                Some(tail) if tail.advice.is_none() => {
                    tail.night(&self.ground.scene, goal_h, &last);
                }
                _ => return true,
            }
        }
        self.tail.as_ref().is_some_and(|tail| tail.advice.is_some())
    }

    /// The plan as fitted, and the day put right by it.
    fn begin(&self) -> Option<Tail> {
        let fitted = self.fit().applied_to(&self.plan);
        let plan = fitted.unwrap_or_else(|| self.plan.clone());
        let inputs = Inputs::new(&self.ground.scene, &plan)?;
        let modes = Modes::of(&plan);
        let (from_min, until_min) = span_min(self.last.at_h, self.goal_h);
        let strongest = modes.strongest_between(from_min, until_min);
        let below = strongest.map_or_else(Vec::new, |place| modes.below(place));
        let mut options = vec![Switch::Stay];
        options.extend(below.into_iter().map(|place| Switch::To(Some(place))));
        if strongest.is_some() {
            options.push(Switch::To(None));
        }
        Some(Tail {
            anchor: Anchor::of(&self.ground, &inputs, &self.readings)?,
            draws: modes.draws(&plan),
            modes,
            options,
            at: 0,
            tally: Tally::default(),
            chances: None,
            advice: None,
            plan,
        })
    }

    fn fit(&self) -> Fit {
        self.fitting.as_ref().map_or(
            Fit::TooFew {
                readings_count: self.readings.len() as u32,
                least_count: LEAST_READINGS as u32,
            },
            Fitting::finish,
        )
    }

    /// What is known so far; nothing where the day cannot go on from the reading.
    #[must_use]
    pub fn finish(&self) -> Option<CheckInAnswer> {
        let first = &self.first_anchor;
        let (plan, anchor) = match &self.tail {
            Some(tail) => (&tail.plan, &tail.anchor),
            None => (&self.plan, first),
        };
        let used = first
            .read_drop
            .filter(|_| first.expected_drop > LEAST_DROP)
            .map(|read| read / first.expected_drop);
        Some(CheckInAnswer {
            at_h: self.last.at_h,
            readings_count: self.readings.len() as u32,
            charge_percent: 100.0 * anchor.start.soc,
            cabin_c: anchor.start.cabin.air_c,
            expected_charge_percent: 100.0 * first.expected_share,
            expected_cabin_c: first.expected_c,
            used_ratio_number: used,
            goal_h: self.goal_h,
            onward: onward(plan, &self.ground.scene, anchor.start)?,
            chances: self.tail.as_ref().and_then(|tail| tail.chances),
            advice: self.tail.as_ref().and_then(|tail| tail.advice),
            fit: self.fit(),
        })
    }
}

/// The day from a reading on, to be drawn.
fn onward(plan: &Plan, scene: &Scene, start: Start) -> Option<Onward> {
    let mut record = Record::default();
    let how = How {
        start: Some(start),
        ..How::default()
    };
    let outcome: Outcome = run(scene, &Inputs::new(scene, plan)?, &how, &mut record)?;
    Some(Onward {
        empty_h: outcome.empty.map(|empty| empty.0),
        lost_h: outcome.lost_h,
        least_charge_percent: outcome.least_charge_percent,
        trace: record.points,
    })
}

/// From a reading to a goal, minutes within a day of the start and after it.
fn span_min(at_h: f64, goal_h: f64) -> (u32, u32) {
    let day_h = 24.0 * (at_h / 24.0).floor();
    // Casts saturate; both are within two days.
    let from_min = (60.0 * (at_h - day_h)).round() as u32;
    let until_min = (60.0 * (goal_h - day_h)).round() as u32;
    (from_min, until_min.min(from_min + 24 * 60))
}

impl Tail {
    /// One drawn night from the reading on, under the change being tried.
    fn night(&mut self, scene: &Scene, goal_h: f64, last: &Reading) {
        let run_number = self.tally.count() as u32;
        let outcome = self.drawn(run_number, scene, goal_h, last);
        self.tally.add(outcome.as_ref(), goal_h);
        if self.tally.count() < NIGHTS as usize {
            return;
        }
        let chances = std::mem::take(&mut self.tally)
            .chances()
            .unwrap_or_default();
        let switch = self.options[self.at];
        if switch == Switch::Stay {
            self.chances = Some(chances);
        }
        let does = chances.lasting_percent >= 100.0 * NINE_IN_TEN;
        self.advice = match switch {
            Switch::Stay if does => Some(Advice::GoOn { chances }),
            Switch::To(to) if does => Some(Advice::SwitchNow {
                to: to.map(|place| {
                    let (unit, mode) = self.modes.list[place];
                    ModeAt { unit, mode }
                }),
                chances,
            }),
            _ if self.at + 1 >= self.options.len() => Some(Advice::NothingReaches { chances }),
            _ => None,
        };
        self.at += 1;
    }

    /// The reading's own spread is drawn too: what was read off a monitor is no exact start.
    fn drawn(
        &self,
        run_number: u32,
        scene: &Scene,
        goal_h: f64,
        last: &Reading,
    ) -> Option<Outcome> {
        let plan = self.draws.plan(run_number);
        let (from_min, until_min) = span_min(last.at_h, goal_h);
        let rows = match self.options[self.at] {
            Switch::Stay => self.modes.switched(0, 0, None),
            Switch::To(to) => self.modes.switched(from_min, until_min, to),
        };
        let inputs = Inputs::of_rows(scene, &plan, self.modes.list.clone(), &rows)?;
        let mut start = self.anchor.start;
        let spread = |name: &str, sd: Option<f64>| {
            sd.unwrap_or(0.0) * self.draws.deviate(run_number, place_of(name))
        };
        let share_sd = last.share.map(|known| known.sd);
        start.soc += spread("check_in.charge_percent", share_sd);
        start.soc = start.soc.clamp(0.0, 1.0);
        start.cabin.air_c += spread("check_in.cabin_c", last.cabin_c.map(|known| known.sd));
        let how = How {
            is_quick: true,
            ends_when_empty: true,
            start: Some(start),
            until_h: Some(goal_h),
        };
        run(scene, &inputs, &how, &mut ())
    }
}

/// The check-in with its fit, odds and advice at once; in slices: [`CheckInWork`].
#[must_use]
pub fn check_in(plan: &Plan) -> Option<CheckInAnswer> {
    let mut work = CheckInWork::new(plan)?;
    while !work.step(u32::MAX) {}
    work.finish()
}
