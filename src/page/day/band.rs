//! Readings, odds, bands, ranked changes and bedtime lines, the longest night: all
//! that takes longer than a key, one after the other.
//!
//! The chances hang on the plan's seed alone, so a band that is drawn anew for the
//! same numbers is the same band.

use super::State;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::day::{
        Bedtime, BedtimeLine, CheckInAnswer, CheckInWork, DayAnswer, DaySizing, DayUnknown,
        Longest, LongestNight, MoreHours, Ranker, Sampled, Sampler, size_day,
    },
    page::slices::{Lane, Late, Superseded, Turn},
    plan::{Path, Plan, day::DayField},
};
use leptos::prelude::*;

/// Drawn days, and what they are drawn for.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    pub sampled: Sampled,
    span_h: f64,
    start_clock_min: u32,
    wanted_h: f64,
}

impl Drawn {
    /// Whether the band lies on the same clock as an answer: an older one may then
    /// stand in for the one to come.
    pub fn fits(&self, day: &DayAnswer) -> bool {
        (self.span_h, self.start_clock_min, self.wanted_h)
            == (day.span_h, day.start_clock_min, day.wanted_h)
    }
}

/// Everything that comes late.
#[derive(Clone, Copy)]
pub struct Bands {
    pub drawn: Late<Drawn>,
    /// What the readings of the night make of it.
    pub check_in: Late<CheckInAnswer>,
    pub changes: Late<MoreHours>,
    pub bedtime: Late<Vec<BedtimeLine>>,
    pub longest: Late<LongestNight>,
    /// Of what is asked for, if anything is.
    pub enough: Late<DaySizing>,
    pub asked: RwSignal<Option<DayUnknown>>,
}

/// Days in a slice at the most, whatever the clock says.
const SLICE_DAYS: f64 = 8.0;
/// Days drawn for the first band; it is refined to what the plan asks for.
const FIRST_DAYS: f64 = 100.0;
/// Fewest runs that a first band is made of.
const FEWEST: u32 = 20;
/// Slices of the ranking, and nights of the bedtime lines, in a row.
const AT_ONCE: u32 = 12;
/// Steps of the search for the longest night in a row.
const STEPS_AT_ONCE: u32 = 3;

impl Bands {
    /// Begins anew at every change, while `is_open`.
    pub fn new(state: State, is_open: RwSignal<bool>) -> Self {
        let bands = Self {
            drawn: Late::new(),
            check_in: Late::new(),
            changes: Late::new(),
            bedtime: Late::new(),
            longest: Late::new(),
            enough: Late::new(),
            asked: RwSignal::new(None),
        };
        let (lane, search) = (Lane::new(), Lane::new());
        Effect::new(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            bands.drawn.expect();
            bands.check_in.expect();
            bands.changes.expect();
            bands.bedtime.expect();
            bands.longest.expect();
            lane.begin(move |turn| bands.work(state.plan.get_untracked(), turn));
        });
        Effect::new(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            if let Some(unknown) = bands.asked.get() {
                bands.enough.expect();
                search.begin(move |_| async move {
                    let sized = state.plan_now(|plan| size_day(plan, unknown));
                    bands.enough.put(sized);
                });
            }
        });
        bands
    }

    /// What stands where the odds will be.
    pub fn word(self) -> &'static str {
        if self.drawn.is_coming() {
            say(m::DayBandComing)
        } else if self.drawn.get().is_none() {
            say(m::DayBandNone)
        } else {
            ""
        }
    }

    /// Readings first: who made them is awake at night and waits.
    async fn work(self, plan: Plan, turn: Turn) -> Result<(), Superseded> {
        self.check(&plan, turn).await?;
        self.draw(&plan, turn).await?;
        self.rank(&plan, turn).await?;
        self.lines(&plan, turn).await?;
        self.look(&plan, turn).await
    }

    async fn check(self, plan: &Plan, turn: Turn) -> Result<(), Superseded> {
        let mut found = None;
        if let Some(mut work) = CheckInWork::new(plan) {
            turn.run(AT_ONCE, || work.step(1)).await?;
            found = work.finish();
        }
        self.check_in.put(found);
        Ok(())
    }

    async fn draw(self, plan: &Plan, turn: Turn) -> Result<(), Superseded> {
        let all = plan.number(Path::Day(DayField::SamplesCount));
        let all = all.unwrap_or(0.0) as u32;
        let Some(mut sampler) = Sampler::new(plan).filter(|_| all > 0) else {
            self.drawn.put(None);
            return Ok(());
        };
        let days = sampler.span_h() / 24.0;
        let first = ((FIRST_DAYS / days) as u32).max(FEWEST).min(all);
        let at_most = (SLICE_DAYS / days).ceil() as u32;
        let passes = if first < all {
            vec![first, all]
        } else {
            vec![all]
        };
        for wanted in passes {
            turn.run(at_most, || sampler.step(1) >= wanted).await?;
            self.show(&sampler, plan.night.start_clock_min);
        }
        Ok(())
    }

    fn show(self, sampler: &Sampler, start_clock_min: u32) {
        let drawn = sampler.finish().map(|sampled| Drawn {
            sampled,
            span_h: sampler.span_h(),
            start_clock_min,
            wanted_h: sampler.wanted_h(),
        });
        self.drawn.put(drawn);
    }

    async fn rank(self, plan: &Plan, turn: Turn) -> Result<(), Superseded> {
        let mut found = None;
        if let Some(mut ranker) = Ranker::new(plan) {
            turn.run(AT_ONCE, || ranker.step(1)).await?;
            found = ranker.finish();
        }
        self.changes.put(found);
        Ok(())
    }

    async fn lines(self, plan: &Plan, turn: Turn) -> Result<(), Superseded> {
        let mut found = None;
        if let Some(mut bedtime) = Bedtime::new(plan) {
            turn.run(AT_ONCE, || bedtime.step(1)).await?;
            found = bedtime.finish();
        }
        self.bedtime.put(found);
        Ok(())
    }

    async fn look(self, plan: &Plan, turn: Turn) -> Result<(), Superseded> {
        let mut found = None;
        if let Some(mut longest) = Longest::new(plan) {
            turn.run(STEPS_AT_ONCE, || longest.step(1)).await?;
            found = longest.finish();
        }
        self.longest.put(found);
        Ok(())
    }
}
