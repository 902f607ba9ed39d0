//! Trying a changed plan on the same days.

use crate::{
    plan::Plan,
    simulate::day::{How, Inputs, Outcome, Scene, can_be_run, run},
    study::spread::Draws,
};
use serde::{Deserialize, Serialize};

/// Days under which plans are tried, in the longer steps of searches.
#[derive(Clone, Debug, PartialEq)]
pub struct SearchScenario {
    /// In steps of 20 minutes.
    pub scene: Scene,
    /// Runs go no further, hours from the plan's start.
    pub until_h: f64,
    /// Nor past the first time that the bank is empty.
    pub ends_when_empty: bool,
}

impl SearchScenario {
    /// As many days as the plan covers, and no fewer than `least`. Nothing where
    /// the plan cannot be run.
    #[must_use]
    pub fn days(plan: &Plan, least: u32) -> Option<Self> {
        let mut longer = plan.clone();
        longer.day.days_count = Some(plan.day.days_count.unwrap_or(1).max(least));
        let scene = Scene::coarse(&longer).filter(|_| can_be_run(plan))?;
        Some(Self {
            until_h: scene.span_h,
            ends_when_empty: false,
            scene,
        })
    }

    /// Up to the wanted hour alone.
    #[must_use]
    pub fn night(plan: &Plan) -> Option<Self> {
        let mut short = plan.clone();
        short.day.days_count = Some(1);
        let scene = Scene::coarse(&short).filter(|_| can_be_run(plan))?;
        Some(Self {
            until_h: scene.wanted_h,
            ends_when_empty: true,
            scene,
        })
    }

    /// What a plan comes to here; nothing where it cannot be run. It may differ from the
    /// scenario's own in any figure but date, place, clock, days and wanted hour.
    #[must_use]
    pub fn outcome(&self, plan: &Plan) -> Option<Outcome> {
        self.outcome_of(&Inputs::new(&self.scene, plan)?)
    }

    /// The same from inputs at hand.
    #[must_use]
    pub fn outcome_of(&self, inputs: &Inputs) -> Option<Outcome> {
        let how = How {
            is_quick: true,
            ends_when_empty: self.ends_when_empty,
            until_h: Some(self.until_h),
            ..How::default()
        };
        run(&self.scene, inputs, &how, &mut ())
    }
}

/// Drawn nights behind odds that are said in tens of per cent.
const NIGHTS: u32 = 60;
/// The same of long nights, at the least.
const LEAST_NIGHTS: u32 = 20;

/// How many nights are drawn up to a wanted hour: sixty, and of nights longer than
/// a day as many as make sixty days, but twenty at least.
pub(super) fn nights_of(wanted_h: f64) -> u32 {
    // The cast saturates.
    let as_long = (f64::from(NIGHTS) * 24.0 / wanted_h.max(24.0)) as u32;
    as_long.clamp(LEAST_NIGHTS, NIGHTS)
}

/// Odds counted over drawn nights. Raw shares, as in [`super::Odds`].
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Chances {
    /// Nights drawn; those that could not be run count as not lasting.
    pub samples_count: u32,
    /// Of the bank not being empty before the wanted hour, 0 to 100.
    pub lasting_percent: f64,
    /// Of that, and the set point held wherever a mode was planned.
    pub holding_percent: f64,
}

/// Counts nights one after the other.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Tally {
    /// Nights taken in; those that could not be run count as not lasting.
    drawn: u32,
    lasting: u32,
    holding: u32,
}

impl Tally {
    /// Takes in what one drawn night came to.
    pub(super) fn add(&mut self, outcome: Option<&Outcome>, wanted_h: f64) {
        self.drawn += 1;
        self.lasting += u32::from(outcome.is_some_and(|it| it.lasts_to(wanted_h)));
        self.holding += u32::from(outcome.is_some_and(|it| it.holds_to(wanted_h)));
    }

    /// How many nights were taken in.
    pub(super) fn count(&self) -> usize {
        self.drawn as usize
    }

    /// Runs of drawn nights from one number on.
    pub(super) fn draw(
        &mut self,
        ground: &SearchScenario,
        draws: &Draws,
        runs: std::ops::Range<u32>,
    ) {
        for run_number in runs {
            let outcome = ground.outcome(&draws.plan(run_number));
            self.add(outcome.as_ref(), ground.scene.wanted_h);
        }
    }

    /// The odds so far; nothing before the first night.
    pub(super) fn chances(&self) -> Option<Chances> {
        let share = |count: u32| 100.0 * f64::from(count) / f64::from(self.drawn);
        (self.drawn > 0).then(|| Chances {
            samples_count: self.drawn,
            lasting_percent: share(self.lasting),
            holding_percent: share(self.holding),
        })
    }
}
