//! What was read in the night: when, and the day put right by it.

use super::trial::SearchScenario;
use crate::{
    plan::{Plan, day::CheckInField as I, path::Path},
    simulate::day::{How, Inputs, Start, run},
    study::spread::{half_width, least::Known},
};

/// A reading that can be used: it says when, and the charge or the cabin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Reading {
    /// Hours after the plan's start.
    pub at_h: f64,
    /// Share of what the bank holds, 0 to 1.
    pub share: Option<Known>,
    /// The cabin's air, Celsius.
    pub cabin_c: Option<Known>,
}

impl Reading {
    /// All readings of a plan, in the order of time; two of one time count as the
    /// later in the list.
    pub(super) fn all(plan: &Plan) -> Vec<Self> {
        let mut all: Vec<Self> = (0..plan.check_ins.len())
            .filter_map(|at| Self::of(plan, at))
            .collect();
        all.sort_by(|a, b| a.at_h.total_cmp(&b.at_h));
        let mut kept: Vec<Self> = Vec::with_capacity(all.len());
        for reading in all {
            match kept.last_mut() {
                Some(last) if last.at_h == reading.at_h => *last = reading,
                _ => kept.push(reading),
            }
        }
        kept
    }

    /// Nothing of a row that says no time, or neither charge nor cabin.
    fn of(plan: &Plan, at: usize) -> Option<Self> {
        let number = |field| plan.number(Path::CheckIn(at, field));
        let known = |field, scale: f64| {
            let path = Path::CheckIn(at, field);
            let figure = plan.figure(path)?;
            let sd = 0.5 * half_width(path, figure) * scale;
            Some(Known {
                value: figure.value * scale,
                // What is stated without a spread was still read off something.
                sd: sd.max(1e-3),
            })
        };
        let start_min = f64::from(plan.night.start_clock_min % (24 * 60));
        let after_min = (number(I::ClockMin)? - start_min + 24.0 * 60.0) % (24.0 * 60.0);
        let (share, cabin_c) = (known(I::ChargePercent, 0.01), known(I::CabinC, 1.0));
        (share.is_some() || cabin_c.is_some()).then_some(Self {
            at_h: 24.0 * number(I::DayCount)? + after_min / 60.0,
            share,
            cabin_c,
        })
    }
}

/// A day brought up to a reading: what the plan made of it until then, and what
/// goes on from there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Anchor {
    /// Where it goes on from: as read, the rest as the run had it.
    pub start: Start,
    /// Share of what the bank holds to which the day, put right by the readings before, had
    /// come by then.
    pub expected_share: f64,
    /// The same of the cabin's air, Celsius.
    pub expected_c: f64,
    /// Share of what the bank holds that it gave from the reading before.
    pub expected_drop: f64,
    /// What it gave by what was read; absent where this reading or the one before has no charge.
    pub read_drop: Option<f64>,
}

impl Anchor {
    /// The day run from reading to reading, each put in the place of what the run
    /// came to. The shell's heat and the damp are known from nowhere but the run.
    ///
    /// Nothing where the cabin is beyond answering, or there is no reading.
    pub(super) fn of(
        ground: &SearchScenario,
        inputs: &Inputs,
        readings: &[Reading],
    ) -> Option<Self> {
        let mut anchor: Option<Self> = None;
        let mut before: Option<Reading> = None;
        for reading in readings {
            let how = How {
                is_quick: true,
                start: anchor.map(|anchor| anchor.start),
                until_h: Some(reading.at_h),
                ..How::default()
            };
            let run = run(&ground.scene, inputs, &how, &mut ())?;
            let from_share = anchor.map_or(inputs.start_share(), |it| it.start.soc);
            let mut cabin = run.end_cabin;
            cabin.air_c = reading.cabin_c.map_or(cabin.air_c, |known| known.value);
            let soc = reading.share.map_or(run.end_share, |known| known.value);
            let known_before = before.is_none_or(|before| before.share.is_some());
            anchor = Some(Self {
                start: Start {
                    at_h: reading.at_h,
                    soc,
                    cabin,
                },
                expected_share: run.end_share,
                expected_c: run.end_cabin.air_c,
                expected_drop: from_share - run.end_share,
                read_drop: reading
                    .share
                    .filter(|_| known_before)
                    .map(|known| from_share - known.value),
            });
            before = Some(*reading);
        }
        anchor
    }
}
