//! The walk through the days.

use super::{
    inputs::Inputs,
    record::{DayPoint, Happening, ModeAt, Outcome, Sink},
    scene::Scene,
    state::{EnergyBalance, How, Keep, Off, SimState, Steppers, settled, stepper},
    timeline::Slot,
};
use crate::{physics::cabin::State, plan::Plan};

/// Runs the days of a scene with given inputs.
///
/// - `scene`, `inputs`: of one pace, which [`Inputs::new`] sees to
/// - `how`: where from and where to, and how closely
/// - `sink`: hears points and events; `&mut ()` for none
///
/// Nothing where the cabin's figures are beyond what its room answers.
pub fn run(scene: &Scene, inputs: &Inputs, how: &How, sink: &mut impl Sink) -> Option<Outcome> {
    let steppers = Steppers::new(inputs)?;
    let mut walk = Walk::new(scene, inputs, how, &steppers, sink)?;
    let from_h = how.start.map_or(0.0, |start| start.at_h);
    let until_h = how.until_h.unwrap_or(scene.span_h);
    walk.first_point(from_h);
    for slot in &inputs.timeline.slots {
        if how.ends_when_empty && walk.books.empty.is_some() {
            break;
        }
        let from = slot.from_h.max(from_h);
        let to = slot.to_h.min(until_h);
        if to - from > LEAST_H {
            walk.slot(slot, from, to);
        }
    }
    Some(walk.books.finish(inputs, &walk.standing))
}

/// What a plan comes to under a scene, quickly: for searches and rankings, which
/// vary a plan and compare. Nothing where it cannot be run.
///
/// ```
/// use till_morning::{plan::{Plan, path::Path, day::DayField}, simulate::day::{Scene, outcome}};
/// let mut plan = Plan::demo();
/// plan.day.days_count = Some(1);
/// let scene = Scene::coarse(&plan).unwrap();
/// let before = outcome(&scene, &plan).unwrap();
/// plan.set_number(Path::Day(DayField::HighC), 44.0);
/// let hotter = outcome(&scene, &plan).unwrap();
/// assert!(hotter.energy.unit_wh > before.energy.unit_wh);
/// ```
///
/// A coarse scene is what it is for ([`Scene::coarse`]); quick ([`How::is_quick`]).
#[must_use]
pub fn outcome(scene: &Scene, plan: &Plan) -> Option<Outcome> {
    let how = How {
        is_quick: true,
        ..How::default()
    };
    run(scene, &Inputs::new(scene, plan)?, &how, &mut ())
}

/// Shorter stretches are passed over: a thirtieth of a second.
pub(super) const LEAST_H: f64 = 1e-5;
/// Pieces that a slot may be cut into by events before each stop is taken where
/// the piece begins. What is stopped stays off longer than a slot lasts, so the
/// rest takes three at most.
const MOST_PIECES: usize = 24;
/// Stretches tried before a shorter one is taken as it is.
const MOST_TRIES: usize = 4;

/// A run under way: what it is made with, where it stands, and its books.
pub(super) struct Walk<'a, S: Sink> {
    pub(super) scene: &'a Scene,
    pub(super) inputs: &'a Inputs,
    pub(super) is_quick: bool,
    pub(super) sink: &'a mut S,
    /// Made once for all walks over the same inputs.
    pub(super) steppers: &'a Steppers,
    pub(super) standing: SimState,
    pub(super) books: EnergyBalance,
    /// Of the air, Pa; asked for at every piece.
    pub(super) pressure_pa: f64,
}

impl<'a, S: Sink> Walk<'a, S> {
    /// Where `how` says to start, or as the inputs say.
    fn new(
        scene: &'a Scene,
        inputs: &'a Inputs,
        how: &How,
        steppers: &'a Steppers,
        sink: &'a mut S,
    ) -> Option<Self> {
        let (cabin, held) = match how.start {
            Some(start) => (start.cabin, inputs.bank.store.rested(start.soc)),
            None => (start_cabin(inputs)?, inputs.start_held),
        };
        let standing = SimState::new(inputs, cabin, held);
        Some(Self::from(
            scene,
            inputs,
            how.is_quick,
            steppers,
            standing,
            sink,
        ))
    }

    /// Goes on from where another walk stood.
    /// Its books start anew there.
    pub(super) fn from(
        scene: &'a Scene,
        inputs: &'a Inputs,
        is_quick: bool,
        steppers: &'a Steppers,
        standing: SimState,
        sink: &'a mut S,
    ) -> Self {
        let days = (scene.span_h / 24.0).ceil() as usize;
        let share = inputs.bank.store.soc(standing.held);
        Self {
            scene,
            inputs,
            is_quick,
            sink,
            steppers,
            standing,
            books: EnergyBalance::new(days, scene.wanted_h, share),
            pressure_pa: scene.heavens.pressure_pa(),
        }
    }

    /// Tells the books and whoever listens.
    pub(super) fn event(&mut self, at_h: f64, what: Happening) {
        self.books.note(at_h, what);
        self.sink.event(at_h, what);
    }

    /// Walks through a slot, or a part of it, piece by piece.
    pub(super) fn slot(&mut self, slot: &Slot, from_h: f64, to_h: f64) {
        if slot.rig != self.standing.rig {
            self.standing.rig = slot.rig;
            let mode = slot.rig.map(|rig| self.mode_at(rig));
            self.event(from_h, Happening::ModeChanged { mode });
            // Another mode may be one that the bank still carries.
            self.standing.unit_off = None;
            self.standing.is_running = false;
            self.standing.on_share = 0.0;
        }
        let mut from_h = from_h;
        let mut pieces = 0;
        while to_h - from_h > LEAST_H {
            self.come_back(from_h);
            from_h = self.piece(slot, from_h, to_h, pieces >= MOST_PIECES);
            pieces += 1;
        }
    }

    /// The plan's name for a place among the inputs' modes.
    pub(super) fn mode_at(&self, rig: usize) -> ModeAt {
        let (unit, mode) = self.inputs.timeline.modes[rig];
        ModeAt { unit, mode }
    }

    /// What was stopped comes back once enough charge has come in.
    fn come_back(&mut self, at_h: f64) {
        let share = self.inputs.bank.store.soc(self.standing.held);
        let is_over = |off: Option<Off>| off.is_some_and(|off| off.is_over(share, at_h));
        if is_over(self.standing.all_off) {
            self.standing.all_off = None;
            self.event(at_h, Happening::BackOn);
        }
        if is_over(self.standing.unit_off) {
            self.standing.unit_off = None;
        }
    }

    /// Runs on to the slot's end, or close to the event that comes before it.
    /// Returns where it came to.
    ///
    /// A stop is located by the mean current of the stretch, and what the unit
    /// does in a shorter one is not the same: so the walk goes up to there, looks
    /// again, and stops where there is no way left to go. `is_hurried`: at once.
    fn piece(&mut self, slot: &Slot, from_h: f64, to_h: f64, is_hurried: bool) -> f64 {
        let mut until_h = to_h;
        for tries in 0.. {
            let piece = self.try_piece(slot, from_h, until_h);
            let stop = self.stop_in(&piece);
            let is_short_enough = tries >= MOST_TRIES && piece.flow.is_some();
            let Some(stop) = stop.filter(|_| !is_short_enough) else {
                self.commit(slot, &piece);
                return until_h;
            };
            until_h = self.locate(&piece, stop);
            if is_hurried || until_h - from_h <= LEAST_H {
                self.stop(&piece, stop);
                break;
            }
        }
        from_h
    }

    /// How things stand before the first step.
    fn first_point(&mut self, at_h: f64) {
        let row = ((at_h / self.inputs.timeline.step_h) as usize).min(self.scene.heavens.steps());
        let air = &self.inputs.air[row];
        let bank = &self.inputs.bank;
        let point = DayPoint {
            hours_h: at_h,
            charge_percent: 100.0 * bank.store.soc(self.standing.held),
            terminal_v: bank.ocv_v(self.standing.held),
            cabin_c: self.standing.cabin.air_c,
            outdoor_c: air.outdoor_c,
            humidity_percent: self.humidity_percent(),
            global_w_m2: air.global_w_m2,
            ..DayPoint::DARK
        };
        self.sink.point(&point);
    }
}

/// The cabin at the start: as stated, or as a day like the first without
/// cooling leaves it.
pub(super) fn start_cabin(inputs: &Inputs) -> Option<State> {
    let rows = &inputs.air;
    let first = rows.first()?;
    if let Some(start_c) = inputs.start_c {
        return Some(settled(start_c, first.outdoor_ratio));
    }
    let mut cabin = settled(first.outdoor_c, first.outdoor_ratio);
    let step_h = inputs.timeline.step_h;
    // At any pace the strides are of half an hour or the next longer.
    let stride = (0.5 / step_h).ceil() as usize;
    let day = (24.0 / step_h).round() as usize;
    let stepper = stepper(inputs, Keep::Aired, stride as f64 * step_h, true)?;
    for step in (0..day.min(rows.len() - 1)).step_by(stride) {
        let end = (step + stride).min(rows.len() - 1);
        let slot = inputs
            .timeline
            .slots
            .iter()
            .find(|slot| slot.step == step)?;
        let people = inputs.people(slot, cabin.air_c);
        let drive = |row: usize| rows[row].drive(people, inputs.gains_w);
        cabin = stepper
            .step(&cabin, &drive(step), &drive(end), None)
            .ok()?
            .state;
    }
    Some(cabin)
}
