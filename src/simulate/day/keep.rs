//! Keeping a stretch: states move on, books and whoever listens take it in.

use super::{
    bank::Flow,
    piece::{Piece, Split},
    record::{Happening, Sink},
    run::Walk,
    setpoint_monitor::Stretch,
    timeline::Slot,
    unit::cabin_air,
};
use crate::physics::cabin::State;

/// A bank counts as full again only after it was below this share.
const FULL_AGAIN_BELOW: f64 = 0.97;

impl<S: Sink> Walk<'_, S> {
    /// Keeps a piece: states move on, books and sink take it in.
    pub(super) fn commit(&mut self, slot: &Slot, piece: &Piece) {
        let before = self.standing.cabin;
        self.standing.cabin = piece.step.state;
        if let Some(rig) = piece.rig {
            let step_h = piece.to_h - piece.from_h;
            self.books.starts.add(rig, &before, &piece.step);
            self.standing.on_share = piece.step.full_s / (3600.0 * step_h);
        }
        let Some(flow) = piece.flow else {
            return;
        };
        self.standing.holds(flow.held, &self.inputs.bank);
        self.standing.is_running = piece.rig.is_some() && piece.hanging.share > 0.0;
        let split = piece.sources.split(&flow);
        self.books.enter(self.inputs, piece, &flow, &split);
        self.burn(piece, &split);
        self.charging_events(piece, &flow);
        let stretch = Stretch {
            hours: (piece.from_h, piece.to_h),
            mean_c: piece.step.mean_air_c,
            end_c: piece.step.state.air_c,
        };
        let is_planned = slot.rig.is_some();
        if let Some(judged) = self.standing.keeper.watch(is_planned, &stretch) {
            if let Some(due_c) = judged.due_c {
                self.books.due(piece.to_h, due_c);
            }
            if let Some((at_h, what)) = judged.event {
                // The line between two means may pass before what was told since.
                self.event(at_h.max(self.books.told_h), what);
            }
        }
        let is_lost = self.standing.keeper.is_lost();
        self.books.warmth(piece, is_lost, is_planned);
        let mode = piece.rig.map(|rig| self.mode_at(rig));
        let mut point = piece.point(self.inputs, &flow, &split, mode);
        point.humidity_percent = self.humidity_percent();
        self.sink.point(&point);
    }

    /// Fuel of a piece's chargers out of their tanks, with the event where one runs dry.
    pub(super) fn burn(&mut self, piece: &Piece, split: &Split) {
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

    /// Tells where charging is refused by the temperature, taken up again, and where the bank
    /// is full: as full as it gets, or above 97 % and held with less than its end current.
    pub(super) fn charging_events(&mut self, piece: &Piece, flow: &Flow) {
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
        let share = bank.store.soc(flow.held);
        // Or held by its volts while next to nothing goes in, as monitors tell it.
        let is_tapered = flow.is_held
            && share > FULL_AGAIN_BELOW
            && -flow.bank_a < bank.charging.end_share * bank.store.cells_ah;
        let is_full = share >= 1.0 - 1e-6 || is_tapered;
        if is_full && !self.standing.is_full && offered {
            self.standing.is_full = true;
            self.event(piece.to_h, Happening::Full);
        } else if share < FULL_AGAIN_BELOW {
            self.standing.is_full = false;
        }
    }

    /// Relative humidity of the cabin's air; 0 where the sink does not want it.
    pub(super) fn humidity_percent(&self) -> f64 {
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
}
