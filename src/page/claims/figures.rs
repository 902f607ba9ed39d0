//! The figures of the open log, each piece of the work a task of its own, so that
//! the page stays alive under a log of any size.

use super::file::Bench;
use crate::{
    answer::log::{self, Log, LogMeter, LogReport, StretchFigures, Summing, Sums},
    page::{browser::later, dom::always, reactive::*},
};
use std::{sync::Arc, time::Duration};

/// From and to, in hours.
type Edge = (f64, f64);

/// What is known of the open log, and of its stretches.
#[derive(Clone, Copy)]
pub struct Figures {
    /// The log without what its meter shows at rest.
    rested: RwSignal<Option<Arc<Log>>>,
    sums: RwSignal<Option<Arc<Sums>>>,
    known: RwSignal<Known>,
    /// Which work is the present one; older work stops.
    turn: RwSignal<usize>,
    stretch_turn: RwSignal<usize>,
}

/// Figures of stretches, and the log and meter that they are of.
#[derive(Clone, Default)]
struct Known {
    log: Option<Arc<Log>>,
    meter: LogMeter,
    stretches: Vec<(Edge, Option<StretchFigures>)>,
}

impl Known {
    fn is_of(&self, log: &Arc<Log>, meter: LogMeter) -> bool {
        let same_log = self.log.as_ref().is_some_and(|own| Arc::ptr_eq(own, log));
        same_log && self.meter == meter
    }
}

impl Figures {
    pub fn new() -> Self {
        Self {
            rested: RwSignal::new(None),
            sums: RwSignal::new(None),
            known: RwSignal::new(Known::default()),
            turn: RwSignal::new(0),
            stretch_turn: RwSignal::new(0),
        }
    }

    /// Keeps them true for as long as the present owner lives.
    pub fn follow(self, bench: Bench) {
        always(move || self.rest(bench.log.get(), bench.offset_a.get()));
        always(move || {
            let (log, meter) = (self.rested.get(), bench.meter.get());
            self.look_into(log, meter, bench.settled.get());
        });
    }

    /// The figures of the whole log.
    pub fn report(self, bench: Bench) -> Memo<Option<LogReport>> {
        Memo::new(move |_| {
            let sums = self.sums.get();
            sums.map(|sums| log::report(&sums, bench.offset_a.get(), bench.meter.get()))
        })
    }

    /// The stretches that have figures, with their places among the edges.
    pub fn stretches(self) -> Vec<(usize, StretchFigures)> {
        self.known.with(|known| {
            let all = known.stretches.iter().enumerate();
            all.filter_map(|(at, (_, figures))| Some((at, (*figures)?)))
                .collect()
        })
    }

    fn rest(self, log: Option<Arc<Log>>, offset_a: f64) {
        let turn = next(self.turn);
        let Some(log) = log else {
            self.rested.set(None);
            self.sums.set(None);
            return;
        };
        later(Duration::ZERO, move || {
            if self.turn.get_untracked() == turn {
                let rested = log::rested(&log, offset_a).map_or(log, Arc::new);
                self.rested.set(Some(rested.clone()));
                self.sum(Summing::new(&rested), rested, turn);
            }
        });
    }

    fn sum(self, mut summing: Summing, log: Arc<Log>, turn: usize) {
        later(Duration::ZERO, move || {
            if self.turn.get_untracked() != turn {
                return;
            }
            if summing.step(&log) {
                self.sum(summing, log, turn);
            } else {
                self.sums.set(Some(Arc::new(summing.finish(&log))));
            }
        });
    }

    /// What was worked out before is kept, where log and meter are the same.
    fn look_into(self, log: Option<Arc<Log>>, meter: LogMeter, edges: Vec<Edge>) {
        let turn = next(self.stretch_turn);
        let before = self.known.get_untracked();
        let same = log.as_ref().is_some_and(|log| before.is_of(log, meter));
        let old = if same { before.stretches } else { Vec::new() };
        let of = |edge: &Edge| old.iter().find(|one| one.0 == *edge).map(|one| one.1);
        let found = edges.iter().map(of).collect();
        let wanted = Known {
            log,
            meter,
            stretches: edges.into_iter().map(|edge| (edge, None)).collect(),
        };
        self.fill(wanted, found, turn);
    }

    /// One stretch after another; shown when all are there.
    fn fill(self, wanted: Known, mut found: Vec<Option<Option<StretchFigures>>>, turn: usize) {
        let missing = found.iter().position(Option::is_none);
        let (Some(at), Some(log)) = (missing, wanted.log.clone()) else {
            let mut known = wanted;
            for (one, figures) in known.stretches.iter_mut().zip(found) {
                one.1 = figures.flatten();
            }
            self.known.set(known);
            return;
        };
        later(Duration::ZERO, move || {
            if self.stretch_turn.get_untracked() == turn {
                let edge = wanted.stretches[at].0;
                found[at] = Some(log::stretch(&log, edge, wanted.meter));
                self.fill(wanted, found, turn);
            }
        });
    }
}

fn next(turn: RwSignal<usize>) -> usize {
    turn.update(|turn| *turn += 1);
    turn.get_untracked()
}
