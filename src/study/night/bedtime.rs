//! The bedtime line: the latest time to change to a lower mode and still reach
//! the wanted hour in nine nights of ten.

use super::{
    switching::Modes,
    trial::{Chances, SearchScenario, Tally, nights_of},
};
use crate::{
    plan::Plan,
    simulate::day::{Inputs, ModeAt},
    study::spread::Draws,
};
use serde::{Deserialize, Serialize};

/// When to change to one lower mode at the latest.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BedtimeLine {
    /// The strongest mode that the night has now.
    pub from: ModeAt,
    /// The lower mode; absent: everything off but the loads.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<ModeAt>,
    /// By when.
    #[serde(flatten)]
    pub latest: Latest,
    /// Nights drawn.
    pub samples_count: u32,
    /// Times tried are so far apart.
    pub resolution_min: u32,
}

/// The line, or why there is none. `lasting_percent` is the share of the drawn nights that
/// reach the wanted hour by it, 0 to 100.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "latest", rename_all = "snake_case")]
pub enum Latest {
    /// Nine nights in ten reach the wanted hour without any change.
    NoNeed { lasting_percent: f64 },
    /// By then at the latest; a step later fewer than nine in ten do. By the clock, minutes
    /// after midnight, and in hours from the plan's start.
    By {
        clock_min: u32,
        hours_h: f64,
        lasting_percent: f64,
    },
    /// Not even a change at the start is enough.
    TooLate { lasting_percent: f64 },
}

/// Nights that have to last, of all.
pub const NINE_IN_TEN: f64 = 0.9;
/// Times tried are so far apart, minutes.
const APART_MIN: u32 = 15;

/// Draws nights once, then looks for each lower mode's line by halving, some
/// nights at a time.
///
/// The halving takes for granted that later changes last less often. What is
/// found does not: there nine nights in ten were drawn that last, and a step
/// later fewer. (A single night may last by a later change and not by an earlier
/// one, where a stronger mode that cools the cabin in time rests for longer.)
///
/// [`Self::step`] until it is true, then [`Self::finish`].
#[derive(Clone, Debug)]
pub struct Bedtime {
    ground: SearchScenario,
    draws: Draws,
    modes: Modes,
    from: usize,
    /// Places on the grid of times, 0 the start; the last is never.
    last: u32,
    nights: Vec<Option<(Plan, Inputs)>>,
    /// How many are drawn.
    most: u32,
    lines: Vec<Line>,
}

/// The search for one line.
#[derive(Clone, Debug)]
struct Line {
    to: Option<usize>,
    /// The place being drawn, and what its nights came to so far.
    place: u32,
    tally: Tally,
    /// The latest place known to do, and the earliest known not to.
    soon: Option<(u32, Chances)>,
    late: Option<u32>,
    found: Option<Latest>,
}

impl Bedtime {
    /// Ready to draw; nothing where the plan cannot be run, or no mode is planned
    /// before the wanted hour.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        let ground = SearchScenario::night(plan)?;
        let modes = Modes::of(plan);
        // The cast saturates; a switch lies within a day, and recurs daily.
        let wanted_min = (60.0 * ground.scene.wanted_h).min(24.0 * 60.0) as u32;
        let from = modes.strongest_before(wanted_min.max(1))?;
        let last = wanted_min.div_ceil(APART_MIN);
        let below = modes.below(from).into_iter().map(Some);
        let lines = below.chain([None]).map(|to| Line {
            to,
            place: last,
            tally: Tally::default(),
            soon: None,
            late: None,
            found: None,
        });
        Some(Self {
            lines: lines.collect(),
            draws: modes.draws(plan),
            nights: Vec::new(),
            most: nights_of(ground.scene.wanted_h),
            last,
            ground,
            modes,
            from,
        })
    }

    /// Runs so many more nights, well under a millisecond each. Returns whether
    /// every line is found.
    pub fn step(&mut self, nights: u32) -> bool {
        for _ in 0..nights {
            if self.nights.len() < self.most as usize {
                self.draw();
            } else if !self.run() {
                return true;
            }
        }
        self.lines.iter().all(|line| line.found.is_some())
    }

    /// Draws one more night, to be tried at every line and place.
    fn draw(&mut self) {
        let plan = self.draws.plan(self.nights.len() as u32);
        let rows = self.modes.switched(0, 0, None);
        let list = self.modes.list.clone();
        let inputs = Inputs::of_rows(&self.ground.scene, &plan, list, &rows);
        self.nights.push(inputs.map(|inputs| (plan, inputs)));
    }

    /// Runs one night of the first line that is not found yet, if there is one.
    fn run(&mut self) -> bool {
        let Some(line) = self.lines.iter_mut().find(|line| line.found.is_none()) else {
            return false;
        };
        let wanted_h = self.ground.scene.wanted_h;
        let until_min = self.last * APART_MIN;
        let night = self.nights.get_mut(line.tally.count());
        let outcome = night.and_then(Option::as_mut).and_then(|(plan, inputs)| {
            let rows = self
                .modes
                .switched(line.place * APART_MIN, until_min, line.to);
            inputs.put_rows(&self.ground.scene, plan, &rows);
            self.ground.outcome_of(inputs)
        });
        line.tally.add(outcome.as_ref(), wanted_h);
        if line.tally.count() >= self.nights.len() {
            line.decide(self.last, &self.modes);
        }
        true
    }

    /// The lines, strong modes first and "everything off" last; nothing before all are found.
    #[must_use]
    pub fn finish(&self) -> Option<Vec<BedtimeLine>> {
        let mode_at = |place: usize| {
            let (unit, mode) = self.modes.list[place];
            ModeAt { unit, mode }
        };
        let lines = self.lines.iter().map(|line| {
            Some(BedtimeLine {
                from: mode_at(self.from),
                to: line.to.map(mode_at),
                latest: line.found?,
                samples_count: self.most,
                resolution_min: APART_MIN,
            })
        });
        lines.collect()
    }
}

impl Line {
    /// Takes in a place whose nights are all run, and goes on to the next.
    fn decide(&mut self, last: u32, modes: &Modes) {
        let chances = std::mem::take(&mut self.tally)
            .chances()
            .unwrap_or_default();
        let lasting_percent = chances.lasting_percent;
        let does = lasting_percent >= 100.0 * NINE_IN_TEN;
        match (does, self.place) {
            (true, place) if place == last => {
                self.found = Some(Latest::NoNeed { lasting_percent });
            }
            (true, place) => self.soon = Some((place, chances)),
            (false, 0) => self.found = Some(Latest::TooLate { lasting_percent }),
            (false, place) => self.late = Some(place),
        }
        let late = self.late.unwrap_or(last);
        self.place = match self.soon {
            // After the last, the first.
            None => 0,
            Some((soon, chances)) if late - soon <= 1 => {
                let after_min = soon * APART_MIN;
                self.found = self.found.or(Some(Latest::By {
                    clock_min: modes.clock_min(after_min),
                    hours_h: f64::from(after_min) / 60.0,
                    lasting_percent: chances.lasting_percent,
                }));
                soon
            }
            Some((soon, _)) => (soon + late) / 2,
        };
    }
}

/// All bedtime lines at once; in slices: [`Bedtime`]. Nothing where the plan cannot be run,
/// or no mode is planned before the wanted hour.
#[must_use]
pub fn bedtime_lines(plan: &Plan) -> Option<Vec<BedtimeLine>> {
    let mut bedtime = Bedtime::new(plan)?;
    while !bedtime.step(u32::MAX) {}
    bedtime.finish()
}
