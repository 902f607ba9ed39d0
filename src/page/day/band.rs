//! Readings, odds, bands, ranked changes and bedtime lines, the longest night: all
//! that takes longer than a key, one after the other.
//!
//! The chances hang on the plan's seed alone, so a band that is drawn anew for the
//! same numbers is the same band.

use super::State;
use crate::{
    answer::day::{
        Bedtime, BedtimeLine, CheckInAnswer, CheckInWork, DayAnswer, DaySizing, DayUnknown,
        Longest, LongestNight, MoreHours, Ranker, Sampled, Sampler, size_day,
    },
    page::{
        reactive::*,
        slices::{Late, Line, Turn},
    },
    plan::{Path, Plan, day::DayField},
    wording::day_words as words,
};
use std::{cell::RefCell, rc::Rc};

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
        let (line, search) = (Line::new(), Line::new());
        crate::page::dom::always(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            bands.drawn.expect();
            bands.check_in.expect();
            bands.changes.expect();
            bands.bedtime.expect();
            bands.longest.expect();
            line.begin(move |turn| bands.check(state.plan.get_untracked(), turn));
        });
        crate::page::dom::always(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            if let Some(unknown) = bands.asked.get() {
                bands.enough.expect();
                search.begin(move |_| {
                    bands
                        .enough
                        .put(state.plan_now(|plan| size_day(plan, unknown)));
                });
            }
        });
        bands
    }

    /// What stands where the odds will be.
    pub fn word(self) -> &'static str {
        if self.drawn.is_coming() {
            words::BAND_COMING
        } else if self.drawn.get().is_none() {
            words::BAND_NONE
        } else {
            ""
        }
    }

    /// Readings first: who made them stands in the dark and waits.
    fn check(self, plan: Plan, turn: Turn) {
        let Some(work) = CheckInWork::new(&plan) else {
            self.check_in.put(None);
            return self.draw(plan, turn);
        };
        let (work, checked) = both(work);
        turn.run(
            AT_ONCE,
            move || work.borrow_mut().step(1),
            move || {
                self.check_in.put(checked.borrow().finish());
                self.draw(plan, turn);
            },
        );
    }

    fn draw(self, plan: Plan, turn: Turn) {
        let all = plan.number(Path::Day(DayField::SamplesCount));
        let all = all.unwrap_or(0.0) as u32;
        let Some(sampler) = Sampler::new(&plan).filter(|_| all > 0) else {
            self.drawn.put(None);
            return self.rank(plan, turn);
        };
        let days = sampler.span_h() / 24.0;
        let first = ((FIRST_DAYS / days) as u32).max(FEWEST).min(all);
        let at_most = (SLICE_DAYS / days).ceil() as u32;
        let (sampler, more) = both(sampler);
        let (shown, clock) = (sampler.clone(), plan.night.start_clock_min);
        turn.run(
            at_most,
            move || sampler.borrow_mut().step(1) >= first,
            move || {
                self.show(&shown.borrow(), clock);
                turn.run(
                    at_most,
                    move || more.borrow_mut().step(u32::from(first < all)) >= all,
                    move || {
                        if first < all {
                            self.show(&shown.borrow(), clock);
                        }
                        self.rank(plan, turn);
                    },
                );
            },
        );
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

    fn rank(self, plan: Plan, turn: Turn) {
        let Some(ranker) = Ranker::new(&plan) else {
            self.changes.put(None);
            return self.lines(&plan, turn);
        };
        let (ranker, ranked) = both(ranker);
        turn.run(
            AT_ONCE,
            move || ranker.borrow_mut().step(1),
            move || {
                self.changes.put(ranked.borrow().finish());
                self.lines(&plan, turn);
            },
        );
    }

    fn lines(self, plan: &Plan, turn: Turn) {
        let next = Longest::new(plan);
        let Some(bedtime) = Bedtime::new(plan) else {
            self.bedtime.put(None);
            return self.look(next, turn);
        };
        let (bedtime, found) = both(bedtime);
        turn.run(
            AT_ONCE,
            move || bedtime.borrow_mut().step(1),
            move || {
                self.bedtime.put(found.borrow().finish());
                self.look(next, turn);
            },
        );
    }

    fn look(self, longest: Option<Longest>, turn: Turn) {
        let Some(longest) = longest else {
            return self.longest.put(None);
        };
        let (longest, found) = both(longest);
        turn.run(
            STEPS_AT_ONCE,
            move || longest.borrow_mut().step(1),
            move || self.longest.put(found.borrow().finish()),
        );
    }
}

/// A work for its steps and for its end.
fn both<T>(work: T) -> (Rc<RefCell<T>>, Rc<RefCell<T>>) {
    let work = Rc::new(RefCell::new(work));
    (work.clone(), work)
}
