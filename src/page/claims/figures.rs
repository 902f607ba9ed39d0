//! The figures of the open log, worked out a piece at a time, so that the page stays
//! alive under a log of any size.

use super::file::Bench;
use crate::{
    answer::log::{self, Log, LogMeter, LogReport, StretchFigures, Summing, Sums},
    page::slices::{Lane, NO_REST, Superseded, Turn},
};
use leptos::prelude::*;
use std::sync::Arc;

/// From and to, in hours.
type Edge = (f64, f64);

/// What is known of the open log, and of its stretches.
#[derive(Clone, Copy)]
pub struct Figures {
    /// The log without what its meter shows at rest.
    rested: RwSignal<Option<Arc<Log>>>,
    sums: RwSignal<Option<Arc<Sums>>>,
    known: RwSignal<Known>,
    of_log: Lane,
    of_stretches: Lane,
}

/// Figures of stretches, and the log and meter that they are of.
#[derive(Clone, Default)]
struct Known {
    log: Option<Arc<Log>>,
    meter: LogMeter,
    stretches: Vec<(Edge, Option<StretchFigures>)>,
}

impl Known {
    /// What is known of a stretch of this log by this meter; nothing if it was never
    /// asked.
    fn of(&self, log: &Arc<Log>, meter: LogMeter, edge: Edge) -> Option<Option<StretchFigures>> {
        let same_log = self.log.as_ref().is_some_and(|own| Arc::ptr_eq(own, log));
        let mut all = self.stretches.iter();
        let one = all.find(|one| same_log && self.meter == meter && one.0 == edge);
        one.map(|one| one.1)
    }
}

impl Figures {
    pub fn new() -> Self {
        Self {
            rested: RwSignal::new(None),
            sums: RwSignal::new(None),
            known: RwSignal::new(Known::default()),
            of_log: Lane::new(),
            of_stretches: Lane::new(),
        }
    }

    /// Keeps them true for as long as the present owner lives.
    pub fn follow(self, bench: Bench) {
        Effect::new(move || {
            let (log, offset_a) = (bench.log.get(), bench.offset_a.get());
            self.of_log
                .begin_after(NO_REST, move |turn| self.sum(log, offset_a, turn));
        });
        Effect::new(move || {
            let (log, meter) = (self.rested.get(), bench.meter.get());
            let edges = bench.settled.get();
            self.of_stretches
                .begin_after(NO_REST, move |turn| self.look_into(log, meter, edges, turn));
        });
    }

    /// The figures of the whole log.
    pub fn report(self, bench: Bench) -> Memo<Option<LogReport>> {
        Memo::new(move |_| {
            let sums = self.sums.get();
            sums.map(|sums| log::report(&sums, bench.offset_a.get(), bench.meter.get()))
        })
    }

    /// The log without what its meter shows at rest, once there is one.
    pub fn rested(self) -> Option<Arc<Log>> {
        self.rested.get()
    }

    /// The stretches that have figures, with their places among the edges.
    pub fn stretches(self) -> Vec<(usize, StretchFigures)> {
        self.known.with(|known| {
            let all = known.stretches.iter().enumerate();
            all.filter_map(|(at, (_, figures))| Some((at, (*figures)?)))
                .collect()
        })
    }

    async fn sum(self, log: Option<Arc<Log>>, offset_a: f64, turn: Turn) -> Result<(), Superseded> {
        let Some(log) = log else {
            self.rested.set(None);
            self.sums.set(None);
            return Ok(());
        };
        let log = log::rested(&log, offset_a).map_or(log, Arc::new);
        self.rested.set(Some(log.clone()));
        let mut summing = Summing::new(&log);
        turn.run(1, || !summing.step(&log)).await?;
        self.sums.set(Some(Arc::new(summing.finish(&log))));
        Ok(())
    }

    /// One stretch after another; shown when all are there. What was worked out before
    /// is kept, where log and meter are the same.
    async fn look_into(
        self,
        log: Option<Arc<Log>>,
        meter: LogMeter,
        edges: Vec<Edge>,
        turn: Turn,
    ) -> Result<(), Superseded> {
        let before = self.known.get_untracked();
        let mut stretches = Vec::with_capacity(edges.len());
        for edge in edges {
            let mut figures = None;
            if let Some(log) = &log {
                match before.of(log, meter, edge) {
                    Some(known) => figures = known,
                    None => {
                        turn.rest().await?;
                        figures = log::stretch(log, edge, meter);
                    }
                }
            }
            stretches.push((edge, figures));
        }
        self.known.set(Known {
            log,
            meter,
            stretches,
        });
        Ok(())
    }
}
