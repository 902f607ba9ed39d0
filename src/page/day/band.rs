//! Odds and bands, drawn in slices between which the page breathes.
//!
//! No worker: the page also runs as one file and in frames that forbid workers.
//! The chances hang on the plan's seed alone, so a band that is drawn anew for the
//! same numbers is the same band.

use super::State;
use crate::{
    answer::day::{DayAnswer, Sampled, Sampler},
    page::{browser::later, reactive::*},
    plan::{Path, day::DayField},
    wording::day_words as words,
};
use std::{sync::Arc, time::Duration};

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

/// The band that is there, and whether it is of the present numbers.
#[derive(Clone, Copy)]
pub struct Bands {
    pub sampled: RwSignal<Option<Arc<Drawn>>>,
    stage: RwSignal<Stage>,
    /// Which drawing is the present one; older ones stop.
    turn: StoredValue<usize>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stage {
    Drawing,
    There,
    /// None is asked for, or there is no answer.
    None,
}

/// How long the page may be held up by a slice.
const SLICE_MS: f64 = 12.0;
/// Days in a slice at the most, whatever the clock says: some are coarse.
const SLICE_DAYS: f64 = 20.0;
/// Days drawn for the first band; it is refined to what the plan asks for.
const FIRST_DAYS: f64 = 300.0;
/// Fewest runs that a first band is made of.
const FEWEST: u32 = 40;
/// Rest after a key, so that fast typing does not start what it throws away.
const REST: Duration = Duration::from_millis(40);

/// How far one drawing goes.
#[derive(Clone, Copy)]
struct Task {
    turn: usize,
    /// Runs of the first band, of the last, and of a slice.
    first: u32,
    all: u32,
    slice: u32,
    clock: (f64, u32, f64),
}

impl Bands {
    pub fn new(state: State) -> Self {
        let bands = Self {
            sampled: RwSignal::new(None),
            stage: RwSignal::new(Stage::Drawing),
            turn: StoredValue::new(0),
        };
        crate::page::dom::always(move || {
            state.turn();
            bands.start(state);
        });
        bands
    }

    /// Whether the band shown is of the numbers before.
    pub fn is_behind(self) -> bool {
        self.stage.get() == Stage::Drawing && self.sampled.with(Option::is_some)
    }

    /// What stands where the odds will be.
    pub fn word(self) -> &'static str {
        match self.stage.get() {
            Stage::Drawing => words::BAND_COMING,
            Stage::There => "",
            Stage::None => words::BAND_NONE,
        }
    }

    fn start(self, state: State) {
        let turn = self.turn.get_value() + 1;
        self.turn.set_value(turn);
        untrack(|| self.stage.set(Stage::Drawing));
        later(REST, move || {
            if self.turn.get_value() == turn {
                self.begin(state, turn);
            }
        });
    }

    fn begin(self, state: State, turn: usize) {
        let begun = state.plan.with_untracked(|plan| {
            let all = plan.number(Path::Day(DayField::SamplesCount))?;
            let sampler = Sampler::new(plan).filter(|_| all >= 1.0)?;
            let days = sampler.span_h() / 24.0;
            let all = all as u32;
            let task = Task {
                turn,
                first: ((FIRST_DAYS / days) as u32).max(FEWEST).min(all),
                all,
                slice: (SLICE_DAYS / days).ceil() as u32,
                clock: (
                    sampler.span_h(),
                    plan.night.start_clock_min,
                    sampler.wanted_h(),
                ),
            };
            Some((sampler, task))
        });
        match begun {
            Some((sampler, task)) => self.slice(sampler, task),
            None => {
                self.sampled.set(None);
                self.stage.set(Stage::None);
            }
        }
    }

    /// One slice, and the next one after the page has breathed.
    fn slice(self, mut sampler: Sampler, task: Task) {
        later(Duration::ZERO, move || {
            if self.turn.get_value() != task.turn {
                return;
            }
            let before = sampler.step(0);
            let goal = if before < task.first {
                task.first
            } else {
                task.all
            };
            let since = js_sys::Date::now();
            let last = goal.min(before + task.slice);
            while sampler.step(1) < last && js_sys::Date::now() - since < SLICE_MS {}
            let runs = sampler.step(0);
            if runs >= goal {
                self.show(&sampler, task);
            }
            if runs < task.all {
                self.slice(sampler, task);
            }
        });
    }

    fn show(self, sampler: &Sampler, task: Task) {
        let (span_h, start_clock_min, wanted_h) = task.clock;
        let drawn = sampler.finish().map(|sampled| {
            Arc::new(Drawn {
                sampled,
                span_h,
                start_clock_min,
                wanted_h,
            })
        });
        self.stage.set(Stage::There);
        self.sampled.set(drawn);
    }
}
