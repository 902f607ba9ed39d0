//! What would buy more hours: changes tried one by one on the plan's own days.

use super::{
    change::Change,
    trial::{Chances, SearchScenario, Tally, nights_of},
};
use crate::{
    plan::Plan,
    simulate::held_span,
    simulate::{assemble, day::Outcome},
    study::spread::Draws,
};
use serde::{Deserialize, Serialize};

/// What a plan comes to over the days tried.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Worth {
    /// Until the bank is first empty, h from the start; the whole span if it never is.
    pub hours_h: f64,
    /// Until the bank is empty or the set point lost.
    pub holding_h: f64,
    /// Days of the span without a dark or a lost hour.
    pub whole_days_count: u32,
    /// Least share of what the bank holds, 0 to 100.
    pub least_charge_percent: f64,
    /// Watt-hours above the plan's floor at that moment, at nominal volts: what
    /// the days leave to spare.
    pub spare_wh: f64,
    /// Warmest cabin until the wanted hour, a mode planned.
    pub warmest_c: f64,
    /// Over drawn nights, up to the wanted hour; absent before any was drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chances: Option<Chances>,
}

/// A change and what it is worth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RankedChange {
    /// What is changed; [`Change::applied_to`] makes the plan.
    #[serde(flatten)]
    pub change: Change,
    /// Of the plan with it.
    pub worth: Worth,
    /// More hours until the bank is empty; below 0 where it costs some.
    pub gained_h: f64,
    /// More hours until it is empty or the set point lost.
    pub gained_holding_h: f64,
    /// More watt-hours to spare at the least.
    pub gained_spare_wh: f64,
    /// Kilograms that it adds, by usual figures.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mass_kg: Option<f64>,
    /// In the currency of the plan's price, where it follows from that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cost_number: Option<f64>,
}

/// Changes to a plan, best first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MoreHours {
    /// Hours that the days tried last: nothing can gain beyond.
    pub span_h: f64,
    /// The plan as it is.
    pub now: Worth,
    /// Best first; empty where nothing applies.
    pub changes: Vec<RankedChange>,
}

/// Days tried at least: what lasts one night may fail in the next.
const LEAST_DAYS: u32 = 3;
/// Days of drawn nights in one slice of the work, worth about a run of the long
/// days.
const DAYS_AT_ONCE: f64 = 6.0;
/// Hours that count as the same when ranking, so that a touch of a key does not
/// shuffle the list. (Ours.)
const SAME_H: f64 = 0.1;
/// The same of watt-hours to spare.
const SAME_WH: f64 = 20.0;

/// Tries changes, a slice of the work at a time.
///
/// ```
/// use till_morning::{answer::day::Ranker, plan::Plan};
/// let mut ranker = Ranker::new(&Plan::demo()).unwrap();
/// while !ranker.step(8) {}
/// let best = ranker.finish().unwrap().changes[0];
/// assert!(best.gained_h > 0.0 || best.gained_spare_wh > 0.0);
/// let changed = best.change.applied_to(&Plan::demo());
/// assert_ne!(changed, Plan::demo());
/// ```
#[derive(Clone, Debug)]
pub struct Ranker {
    plan: Plan,
    days: SearchScenario,
    night: SearchScenario,
    tried: Vec<Tried>,
    /// Slices done, of one run or a few nights each.
    done: u32,
}

/// The plan as it is, or with one change.
#[derive(Clone, Debug)]
struct Tried {
    /// The plan as it is has none.
    change: Option<Change>,
    plan: Plan,
    draws: Draws,
    outcome: Option<Outcome>,
    tally: Tally,
}

impl Ranker {
    /// Ready to try changes to a plan; nothing where it cannot be run.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        let changes = Change::all_for(plan).into_iter().map(Some);
        let tried = [None].into_iter().chain(changes).map(|change| {
            let changed = change.map_or_else(|| plan.clone(), |it| it.applied_to(plan));
            Tried {
                change,
                draws: Draws::new(&changed),
                plan: changed,
                outcome: None,
                tally: Tally::default(),
            }
        });
        Some(Self {
            days: SearchScenario::days(plan, LEAST_DAYS)?,
            night: SearchScenario::night(plan)?,
            tried: tried.collect(),
            plan: plan.clone(),
            done: 0,
        })
    }

    /// Does so many more slices, about a millisecond each at the most on a week.
    /// Returns whether all is done. Hours come first, odds after.
    pub fn step(&mut self, slices: u32) -> bool {
        let plans = self.tried.len() as u32;
        let wanted_h = self.night.scene.wanted_h;
        let most = nights_of(wanted_h);
        let at_once = (DAYS_AT_ONCE / (wanted_h / 24.0).max(1.0)).max(1.0) as u32;
        let all = plans * (1 + most.div_ceil(at_once));
        for _ in 0..slices {
            if self.done >= all {
                return true;
            }
            let tried = &mut self.tried[(self.done % plans) as usize];
            match (self.done / plans).checked_sub(1) {
                None => tried.outcome = self.days.outcome(&tried.plan),
                Some(slice) => {
                    let first = slice * at_once;
                    let nights = first..(first + at_once).min(most);
                    tried.tally.draw(&self.night, &tried.draws, nights);
                }
            }
            self.done += 1;
        }
        self.done >= all
    }

    /// The changes tried so far, best first; nothing before the plan itself was
    /// run, or where it cannot be.
    ///
    /// By hours gained until empty, then until the set point is lost, then by the
    /// watt-hours to spare, each in coarse steps; then in the order of
    /// [`Change::all_for`]. Odds do not move a change, so the order stands as
    /// soon as the hours are there.
    #[must_use]
    pub fn finish(&self) -> Option<MoreHours> {
        let span_h = self.days.scene.span_h;
        let now = self.tried.first()?.worth(span_h)?;
        let mut changes: Vec<RankedChange> = self
            .tried
            .iter()
            .filter_map(|tried| {
                let change = tried.change?;
                let worth = tried.worth(span_h)?;
                Some(RankedChange {
                    change,
                    worth,
                    gained_h: worth.hours_h - now.hours_h,
                    gained_holding_h: worth.holding_h - now.holding_h,
                    gained_spare_wh: worth.spare_wh - now.spare_wh,
                    mass_kg: change.mass_kg(&self.plan),
                    cost_number: change.cost(&self.plan),
                })
            })
            .collect();
        // Stable: what is worth the same stays in the order it was tried in.
        changes.sort_by_key(|change| change.rank());
        Some(MoreHours {
            span_h,
            now,
            changes,
        })
    }
}

impl Tried {
    /// Nothing before it was run.
    fn worth(&self, span_h: f64) -> Option<Worth> {
        let outcome = self.outcome.as_ref()?;
        let hours_h = outcome.hours(span_h);
        let is_whole = |day: &&crate::simulate::day::DaySum| day.dark_h + day.lost_h <= 0.0;
        let bank = self.plan.banks.first()?;
        let held_wh = assemble::pack(&self.plan, 0)?.pack.held_ah() * bank.nominal_v();
        let floor_percent = 100.0 * held_span(&self.plan, 0)?.1;
        let spare_percent = (outcome.least_charge_percent - floor_percent).max(0.0);
        Some(Worth {
            hours_h,
            spare_wh: spare_percent / 100.0 * held_wh,
            holding_h: outcome.lost_h.map_or(hours_h, |lost_h| lost_h.min(hours_h)),
            whole_days_count: outcome.days.iter().filter(is_whole).count() as u32,
            least_charge_percent: outcome.least_charge_percent,
            warmest_c: outcome.warmest_c,
            chances: self.tally.chances(),
        })
    }
}

impl RankedChange {
    /// Less is better. Casts saturate.
    fn rank(&self) -> [i64; 3] {
        let steps = |value: f64, step: f64| -((value / step).round() as i64);
        [
            steps(self.gained_h, SAME_H),
            steps(self.gained_holding_h, SAME_H),
            steps(self.gained_spare_wh, SAME_WH),
        ]
    }
}

/// All changes with hours and odds at once; in slices: [`Ranker`].
/// Nothing where the plan cannot be run.
#[must_use]
pub fn more_hours(plan: &Plan) -> Option<MoreHours> {
    let mut ranker = Ranker::new(plan)?;
    while !ranker.step(u32::MAX) {}
    ranker.finish()
}
