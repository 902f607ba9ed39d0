//! The walk through the days.

use super::{
    bank::{Flow, Hanging},
    inputs::Inputs,
    keeper::Stretch,
    piece::{Piece, Sources},
    record::{DayPoint, Happening, ModeAt, Outcome, Sink},
    scene::Scene,
    sky::Air,
    state::{Books, How, Keep, Standing, Steppers, settled, stepper},
    timeline::Slot,
    unit::{Doing, cabin_air},
};
use crate::{
    cabin::{State, Step},
    simulate::Stop,
};

/// Runs the days of a scene with given inputs.
///
/// Nothing where the cabin's figures are beyond what its room answers.
pub fn run(scene: &Scene, inputs: &Inputs, how: &How, sink: &mut impl Sink) -> Option<Outcome> {
    let mut walk = Walk::new(scene, inputs, how, sink)?;
    let from_h = how.start.map_or(0.0, |start| start.at_h);
    let until_h = how.until_h.unwrap_or(scene.span_h);
    walk.first_point(from_h);
    for slot in &inputs.timeline.slots {
        let from = slot.from_h.max(from_h);
        let to = slot.to_h.min(until_h);
        if to - from > LEAST_H {
            walk.slot(slot, from, to);
        }
    }
    Some(walk.books.finish(inputs, &walk.standing))
}

/// Shorter stretches are passed over: a thirtieth of a second.
const LEAST_H: f64 = 1e-5;
/// Pieces that a slot may be cut into by events.
const MOST_PIECES: usize = 24;
/// Stretches tried before a shorter one is taken as it is.
const MOST_TRIES: usize = 4;

struct Walk<'a, S: Sink> {
    scene: &'a Scene,
    inputs: &'a Inputs,
    is_quick: bool,
    sink: &'a mut S,
    steppers: Steppers,
    standing: Standing,
    books: Books,
    pressure_pa: f64,
}

impl<'a, S: Sink> Walk<'a, S> {
    fn new(scene: &'a Scene, inputs: &'a Inputs, how: &How, sink: &'a mut S) -> Option<Self> {
        let pressure_pa = scene.heavens.pressure_pa();
        let (cabin, held) = match how.start {
            Some(start) => (start.cabin, inputs.bank.store.rested(start.held_share)),
            None => (start_cabin(inputs)?, inputs.start_held),
        };
        let days = (scene.span_h / 24.0).ceil() as usize;
        let share = inputs.bank.store.held_share(held);
        Some(Self {
            scene,
            inputs,
            is_quick: how.is_quick,
            sink,
            steppers: Steppers::new(inputs, how.is_quick)?,
            standing: Standing::new(inputs, cabin, held),
            books: Books::new(days, scene.wanted_h, share),
            pressure_pa,
        })
    }

    fn event(&mut self, at_h: f64, what: Happening) {
        self.books.note(at_h, what);
        self.sink.event(at_h, what);
    }

    fn slot(&mut self, slot: &Slot, from_h: f64, to_h: f64) {
        if slot.rig != self.standing.rig {
            self.standing.rig = slot.rig;
            let mode = slot.rig.map(|rig| self.mode_at(rig));
            self.event(from_h, Happening::ModeChanged { mode });
            // Another mode may be one that the bank still carries.
            self.standing.unit_off_until = None;
        }
        let mut from_h = from_h;
        for _ in 0..MOST_PIECES {
            if to_h - from_h <= LEAST_H {
                return;
            }
            self.come_back(from_h);
            from_h = self.piece(slot, from_h, to_h);
        }
        // So many events within ten minutes: the rest passes in the dark.
        if to_h - from_h > LEAST_H {
            self.standing.dark_until = Some(self.standing.back_at(&self.inputs.bank));
            self.piece(slot, from_h, to_h);
        }
    }

    fn mode_at(&self, rig: usize) -> ModeAt {
        let (unit, mode) = self.inputs.timeline.modes[rig];
        ModeAt { unit, mode }
    }

    /// What was stopped comes back once the bank has risen far enough.
    fn come_back(&mut self, at_h: f64) {
        let share = self.inputs.bank.store.held_share(self.standing.held);
        let risen = |until: Option<f64>| until.is_some_and(|until| share >= until);
        if risen(self.standing.dark_until) {
            self.standing.dark_until = None;
            self.event(at_h, Happening::BackOn);
        }
        if risen(self.standing.unit_off_until) {
            self.standing.unit_off_until = None;
        }
    }

    /// Runs on to the slot's end, or close to the event that comes before it.
    /// Returns where it came to.
    ///
    /// A stop is located by the mean current of the stretch, and what the unit
    /// does in a shorter one is not the same: so the walk goes up to there, looks
    /// again, and stops where there is no way left to go.
    fn piece(&mut self, slot: &Slot, from_h: f64, to_h: f64) -> f64 {
        let mut until_h = to_h;
        for _ in 0..MOST_TRIES {
            let piece = self.try_piece(slot, from_h, until_h);
            let Some(stop) = self.stop_in(&piece) else {
                self.commit(slot, &piece);
                return until_h;
            };
            until_h = self.locate(&piece, stop);
            if until_h - from_h <= LEAST_H {
                self.stop(from_h, stop);
                return from_h;
            }
        }
        let piece = self.try_piece(slot, from_h, until_h);
        self.commit(slot, &piece);
        until_h
    }

    fn stop(&mut self, at_h: f64, stop: Stop) {
        let until = Some(self.standing.back_at(&self.inputs.bank));
        if is_of_unit(stop) {
            self.standing.unit_off_until = until;
            self.event(at_h, Happening::UnitStopped { stop });
        } else {
            self.standing.dark_until = until;
            self.event(at_h, Happening::Empty { stop });
        }
    }

    /// What would happen over a stretch, nothing kept yet.
    fn try_piece(&self, slot: &Slot, from_h: f64, to_h: f64) -> Piece {
        let (start, end) = self.air(slot, from_h, to_h);
        let standing = &self.standing;
        let is_dark = standing.dark_until.is_some();
        let rig = slot
            .rig
            .filter(|_| !is_dark && standing.unit_off_until.is_none());
        let doing = rig.and_then(|rig| self.doing(rig, start.outdoor_c));
        let step = self.cabin_step(slot, (from_h, to_h), (&start, &end), rig, doing.as_ref());
        let hanging = self.hanging(is_dark, rig, doing.as_ref(), &step, to_h - from_h);
        let sources = self.sources(slot, &start.towards(&end, 0.5), to_h - from_h);
        let bank_c = self.bank_c(step.mean_air_c, 0.5 * (start.outdoor_c + end.outdoor_c));
        let flow = self.flow(&hanging, &sources, bank_c, to_h - from_h);
        Piece {
            from_h,
            to_h,
            rig,
            is_dark,
            step,
            hanging,
            sources,
            bank_c,
            flow,
            end,
        }
    }

    /// Weather at both ends of a stretch.
    fn air(&self, slot: &Slot, from_h: f64, to_h: f64) -> (Air, Air) {
        let rows = &self.inputs.air;
        let (first, next) = (&rows[slot.step], &rows[slot.step + 1]);
        let share = |at_h: f64| at_h / self.inputs.timeline.step_h - slot.step as f64;
        (
            first.towards(next, share(from_h)),
            first.towards(next, share(to_h)),
        )
    }

    fn doing(&self, rig: usize, outdoor_c: f64) -> Option<Doing> {
        let State {
            air_c,
            humidity_ratio,
            ..
        } = self.standing.cabin;
        let entering = cabin_air(self.pressure_pa, air_c, humidity_ratio)?;
        Some(self.inputs.rigs[rig].doing(&entering, outdoor_c))
    }

    fn cabin_step(
        &self,
        slot: &Slot,
        (from_h, to_h): (f64, f64),
        (start, end): (&Air, &Air),
        rig: Option<usize>,
        doing: Option<&Doing>,
    ) -> Step {
        let gains_w = if self.standing.dark_until.is_some() {
            0.0
        } else {
            self.inputs.gains_w
        };
        let cabin = &self.standing.cabin;
        let people = self.inputs.people(slot, cabin.air_c);
        let (start, end) = (start.drive(people, gains_w), end.drive(people, gains_w));
        let cooling = doing.map(|doing| &doing.cooling);
        let step_h = to_h - from_h;
        let own;
        let keep = match rig {
            Some(rig) => Keep::Cooled(rig),
            None if slot.rig.is_some() => Keep::Closed,
            None => Keep::Aired,
        };
        let stepper = match self.steppers.whole(keep, step_h) {
            Some((stepper, _)) => stepper,
            None => {
                own = stepper(self.inputs, keep, step_h, self.is_quick);
                match &own {
                    Some(stepper) => stepper,
                    None => return still(cabin),
                }
            }
        };
        stepper
            .step(cabin, &start, &end, cooling)
            // A unit far too large for its cabin and band: its cycles smoothed out.
            .or_else(|error| {
                self::stepper(self.inputs, keep, step_h, true)
                    .ok_or(error)?
                    .step(cabin, &start, &end, cooling)
            })
            .unwrap_or_else(|_| still(cabin))
    }

    fn hanging(
        &self,
        is_dark: bool,
        rig: Option<usize>,
        doing: Option<&Doing>,
        step: &Step,
        step_h: f64,
    ) -> Hanging {
        let bus_w = if is_dark { 0.0 } else { self.inputs.bus_w };
        let mut hanging = Hanging::bus(bus_w);
        if let (Some(rig), Some(doing)) = (rig, doing) {
            let rig = &self.inputs.rigs[rig];
            let share = rig.drawn_share(step.full_s / (3600.0 * step_h));
            if rig.modulating && share > 0.0 {
                hanging.on = doing.on.times(share);
                hanging.share = 1.0;
            } else {
                (hanging.on, hanging.share) = (doing.on, share);
            }
            hanging.off = rig.off();
        }
        hanging
    }

    fn sources(&self, slot: &Slot, air: &Air, step_h: f64) -> Sources {
        let mut charger_a = [0.0; super::piece::MOST_CHARGERS];
        for (at, charger) in self.inputs.chargers.iter().enumerate() {
            let is_on = slot.chargers & (1 << at) != 0;
            // Fuel for part of the step is fuel for part of the current.
            let most_a = match self.standing.fuel_l.get(at).copied().flatten() {
                Some(left_l) => {
                    let volts = self.inputs.bank.charging.hold_v;
                    charger
                        .most_a
                        .min(charger.amps_of_fuel(left_l, volts, step_h))
                }
                None => charger.most_a,
            };
            if let Some(place) = charger_a.get_mut(at) {
                *place = if is_on { most_a } else { 0.0 };
            }
        }
        Sources {
            offer: air.offer,
            controller: self.inputs.controller,
            charger_a,
        }
    }

    fn bank_c(&self, cabin_c: f64, outdoor_c: f64) -> f64 {
        self.inputs.bank_temperature_c(cabin_c, outdoor_c)
    }

    fn flow(&self, hanging: &Hanging, sources: &Sources, bank_c: f64, step_h: f64) -> Option<Flow> {
        let bank = &self.inputs.bank;
        let own;
        let lasting = match self.steppers.whole(Keep::Aired, step_h) {
            Some((_, lasting)) => lasting,
            None => {
                own = bank.lasting(step_h);
                &own
            }
        };
        bank.step(
            self.standing.held,
            hanging,
            |volts| sources.offered_a(volts),
            bank.may_charge(bank_c),
            lasting,
            self.is_quick,
        )
    }

    /// What would stop the unit or everything within a piece.
    fn stop_in(&self, piece: &Piece) -> Option<Stop> {
        if piece.is_dark {
            return None;
        }
        let bank = &self.inputs.bank;
        if let Some(rig) = piece.rig
            && let Some(overload) = self.inputs.rigs[rig].overload
        {
            return Some(overload);
        }
        let Some(flow) = &piece.flow else {
            return Some(Stop::NoCurrentCarriesIt);
        };
        if let Some(stop) = bank.stop_at(flow.held, &piece.hanging, flow.source_a) {
            return Some(stop);
        }
        let lasting = bank.lasting(piece.to_h - piece.from_h);
        if !bank.lasts(self.standing.held, flow.bank_a, &lasting) {
            return Some(Stop::ChargeFloor {
                kept_percent: 100.0 * bank.floor_share,
            });
        }
        self.unit_stop(piece, flow)
    }

    fn unit_stop(&self, piece: &Piece, flow: &Flow) -> Option<Stop> {
        let rig = &self.inputs.rigs[piece.rig?];
        let stop = rig.far_end?;
        let (Stop::UnitCutOff { cutoff_v } | Stop::InverterCutOff { cutoff_v }) = stop else {
            return None;
        };
        if piece.hanging.share <= 0.0 {
            return None;
        }
        let unit_v = self
            .inputs
            .bank
            .unit_v(flow.held, &piece.hanging, flow.source_a)?;
        (unit_v < cutoff_v).then_some(stop)
    }

    /// When a stop comes within a piece: by halving, its current held.
    fn locate(&self, piece: &Piece, stop: Stop) -> f64 {
        let Some(flow) = &piece.flow else {
            return piece.from_h;
        };
        if self.inputs.stops_at_once(piece, stop) {
            return piece.from_h;
        }
        let bank = &self.inputs.bank;
        let (mut stands_h, mut falls_h) = (0.0, piece.to_h - piece.from_h);
        for _ in 0..HALVINGS {
            let middle_h = 0.5 * (stands_h + falls_h);
            let lasting = bank.lasting(middle_h);
            let held = bank.after(self.standing.held, &lasting, flow.bank_a);
            let then = Flow { held, ..*flow };
            let fails = match stop {
                Stop::ChargeFloor { .. } => !bank.lasts(self.standing.held, flow.bank_a, &lasting),
                stop if is_of_unit(stop) => self.unit_stop(piece, &then).is_some(),
                _ => bank.stop_at(held, &piece.hanging, flow.source_a).is_some(),
            };
            if fails {
                falls_h = middle_h;
            } else {
                stands_h = middle_h;
            }
        }
        piece.from_h + stands_h
    }

    /// Keeps a piece: states move on, books and sink take it in.
    fn commit(&mut self, slot: &Slot, piece: &Piece) {
        let before = self.standing.cabin;
        self.standing.cabin = piece.step.state;
        let Some(flow) = piece.flow else {
            return;
        };
        self.standing.held = flow.held;
        let split = piece.sources.split(&flow);
        self.books.enter(self.inputs, piece, &flow, &split);
        self.burn(piece, &split);
        self.charging_events(piece, &flow);
        let stretch = Stretch {
            hours: (piece.from_h, piece.to_h),
            air_c: (before.air_c, piece.step.state.air_c),
        };
        if let Some((at_h, what)) = self.standing.keeper.watch(slot.rig.is_some(), &stretch) {
            self.event(at_h, what);
        }
        let keeper = &self.standing.keeper;
        self.books
            .warmth(piece, keeper.is_due(), keeper.is_lost(), slot.rig.is_some());
        let mode = piece.rig.map(|rig| self.mode_at(rig));
        let mut point = piece.point(self.inputs, &flow, &split, mode);
        point.humidity_percent = self.humidity_percent();
        self.sink.point(&point);
    }

    fn burn(&mut self, piece: &Piece, split: &super::piece::Split) {
        let volts = piece.flow.map_or(0.0, |flow| flow.bar_v);
        for at in 0..self.inputs.chargers.len().min(split.charger_a.len()) {
            let charger = &self.inputs.chargers[at];
            let litres = charger.litres(split.charger_a[at], volts, piece.to_h - piece.from_h);
            self.books.energy.fuel_l += litres;
            if let Some(Some(left_l)) = self.standing.fuel_l.get_mut(at)
                && *left_l > 0.0
            {
                *left_l -= litres;
                if *left_l <= 1e-9 {
                    *left_l = 0.0;
                    self.event(piece.to_h, Happening::FuelGone { charger: at });
                }
            }
        }
    }

    fn charging_events(&mut self, piece: &Piece, flow: &Flow) {
        let bank = &self.inputs.bank;
        let offered = piece.sources.offered_a(flow.bar_v) > 0.0;
        let refused = !bank.may_charge(piece.bank_c);
        if refused && offered && !self.standing.is_refused {
            self.standing.is_refused = true;
            let bank_c = piece.bank_c;
            self.event(piece.from_h, Happening::ChargingRefused { bank_c });
        } else if !refused && self.standing.is_refused {
            self.standing.is_refused = false;
            self.event(piece.from_h, Happening::ChargingResumed);
        }
        let share = bank.store.held_share(flow.held);
        if share >= 1.0 - 1e-6 && !self.standing.is_full && offered {
            self.standing.is_full = true;
            self.event(piece.to_h, Happening::Full);
        } else if share < FULL_AGAIN_BELOW {
            self.standing.is_full = false;
        }
    }

    fn humidity_percent(&self) -> f64 {
        if !S::WANTS_HUMIDITY {
            return 0.0;
        }
        let State {
            air_c,
            humidity_ratio,
            ..
        } = self.standing.cabin;
        cabin_air(self.pressure_pa, air_c, humidity_ratio)
            .map_or(0.0, |air| 100.0 * air.relative_humidity())
    }

    /// How things stand before the first step.
    fn first_point(&mut self, at_h: f64) {
        let row = ((at_h / self.inputs.timeline.step_h) as usize).min(self.scene.heavens.steps());
        let air = &self.inputs.air[row];
        let bank = &self.inputs.bank;
        let point = DayPoint {
            hours_h: at_h,
            charge_percent: 100.0 * bank.store.held_share(self.standing.held),
            terminal_v: bank.emf_v(self.standing.held),
            cabin_c: self.standing.cabin.air_c,
            outdoor_c: air.outdoor_c,
            humidity_percent: self.humidity_percent(),
            global_w_m2: air.global_w_m2,
            ..DayPoint::DARK
        };
        self.sink.point(&point);
    }
}

/// A bank counts as full again only after it was below this share.
const FULL_AGAIN_BELOW: f64 = 0.97;
/// Ten minutes halved so often are a few microseconds.
const HALVINGS: u32 = 28;

/// Whether it stops the unit alone.
pub(super) fn is_of_unit(stop: Stop) -> bool {
    matches!(
        stop,
        Stop::UnitCutOff { .. }
            | Stop::InverterCutOff { .. }
            | Stop::InverterLimit { .. }
            | Stop::ConverterLimit { .. }
    )
}

/// A step through which the cabin stays as it is: for figures beyond answering.
fn still(cabin: &State) -> Step {
    Step {
        state: *cabin,
        running_s: 0.0,
        full_s: 0.0,
        mean_air_c: cabin.air_c,
        switches: 0,
        heat: crate::cabin::HeatBook::default(),
        water: crate::cabin::WaterBook::default(),
    }
}

/// The cabin at the start: as stated, or as a day like the first without
/// cooling leaves it.
fn start_cabin(inputs: &Inputs) -> Option<State> {
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
