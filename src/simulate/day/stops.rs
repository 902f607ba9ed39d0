//! What stops the unit or everything, and when.
//!
//! Two kinds of ends, and they are not the same to live with:
//!
//! - **The unit's own.** Its cut-off at its terminals, its inverter's or
//!   converter's, its feed's limit, or a power that no current carries to it. It
//!   stands still, everything else runs on, and it is tried again with another
//!   mode or once charge has come in ([`Off`]).
//! - **The bank's.** The charge that is kept back, the battery's cut-off, its
//!   current limit: whoever draws, everything on it goes off together. A BMS that
//!   has opened stays open, also where the unit's start alone tripped it and lamps
//!   and fridge would have been carried: nobody is up to switch the unit off and
//!   the BMS on again. The event then names the mode that was starting. (Lead-acid
//!   has no BMS; its end-of-discharge voltage is where its owner means it to end.)
//!
//! Where several are passed at once, the first to be met as the unit's draw comes
//! up from nothing is the one that acts: a unit that does not turn on for want of
//! volts never draws the current that would trip a BMS.

use super::{
    bank::{BusLoads, Flow},
    piece::Piece,
    record::{Happening, Sink},
    run::{LEAST_H, Walk},
    state::Off,
};
use crate::{search::bisect, simulate::Stop};

/// How closely a stop is located, as a share of the piece: of ten minutes a few
/// microseconds.
const WITHIN: f64 = 1.0 / (1 << 28) as f64;

/// Who goes off.
#[derive(Clone, Copy, Debug, PartialEq)]
enum End {
    /// The unit alone.
    OfUnit(Stop),
    /// Everything on the bank.
    OfBank(Stop),
}

impl<S: Sink> Walk<'_, S> {
    /// What would stop the unit or everything within a piece.
    ///
    /// Looked at where the piece ends: levels tighten as charge falls. What the feed cannot
    /// give comes first, then bank and unit, then the charge that is kept back.
    pub(super) fn stop_in(&self, piece: &Piece) -> Option<Stop> {
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
        if let Some(stop) = self.stop_at(piece.rig, &piece.hanging, flow) {
            return Some(stop);
        }
        let lasting = bank.lasting(piece.to_h - piece.from_h);
        if !bank.lasts(self.standing.held, flow.bank_a, &lasting, piece.bank_c) {
            return Some(Stop::ChargeFloor {
                kept_percent: 100.0 * bank.floor_share,
            });
        }
        None
    }

    /// The levels of bank and unit with so much held.
    fn stop_at(&self, rig: Option<usize>, hanging: &BusLoads, flow: &Flow) -> Option<Stop> {
        let of_bank = self.inputs.bank.stop_at(flow.held, hanging, flow.source_a);
        of_bank.or_else(|| self.unit_stop(rig?, hanging, flow))
    }

    /// The unit's own cut-off at the end of its cable, or its inverter's; nothing while it
    /// draws nothing.
    fn unit_stop(&self, rig: usize, hanging: &BusLoads, flow: &Flow) -> Option<Stop> {
        let stop = self.inputs.rigs[rig].far_end?;
        let (Stop::UnitCutOff { cutoff_v } | Stop::InverterCutOff { cutoff_v }) = stop else {
            return None;
        };
        if hanging.share <= 0.0 {
            return None;
        }
        let unit_v = self.inputs.bank.unit_v(flow.held, hanging, flow.source_a)?;
        (unit_v < cutoff_v).then_some(stop)
    }

    /// When a stop comes within a piece, hours from the plan's start: by halving, its current
    /// held. At the piece's start where it stands at any charge.
    pub(super) fn locate(&self, piece: &Piece, stop: Stop) -> f64 {
        let Some(flow) = &piece.flow else {
            return piece.from_h;
        };
        if self.inputs.stops_at_once(piece, stop) {
            return piece.from_h;
        }
        let bank = &self.inputs.bank;
        let fails = |after_h: f64| {
            let lasting = bank.lasting(after_h);
            let held = bank.after(self.standing.held, &lasting, flow.bank_a);
            let then = Flow { held, ..*flow };
            match stop {
                Stop::ChargeFloor { .. } => {
                    !bank.lasts(self.standing.held, flow.bank_a, &lasting, piece.bank_c)
                }
                _ => self.stop_at(piece.rig, &piece.hanging, &then).is_some(),
            }
        };
        let all_h = piece.to_h - piece.from_h;
        let (stands_h, _) = bisect(fails, 0.0, all_h, WITHIN * all_h);
        piece.from_h + stands_h
    }

    /// Takes a stop at a piece's start: the unit or everything is off from here.
    pub(super) fn stop(&mut self, piece: &Piece, found: Stop) {
        let at_h = piece.from_h;
        let off = Some(Off {
            since_h: at_h,
            least_share: self.inputs.bank.store.soc(self.standing.held),
        });
        let (end, starting) = self.first_met(piece, found);
        let was_running = std::mem::take(&mut self.standing.is_running);
        match end {
            End::OfUnit(stop) => {
                self.standing.unit_off = off;
                self.event(at_h, Happening::UnitStopped { stop });
            }
            End::OfBank(stop) => {
                self.standing.all_off = off;
                let starting = starting
                    .filter(|_| !was_running)
                    .map(|rig| self.mode_at(rig));
                self.event(at_h, Happening::Empty { stop, starting });
            }
        }
    }

    /// What acts first as the unit's draw comes up from nothing, and the mode where
    /// all was well before it began to draw.
    fn first_met(&self, piece: &Piece, found: Stop) -> (End, Option<usize>) {
        let Some(rig) = piece.rig else {
            return (End::OfBank(found), None);
        };
        // Known beforehand, or a matter of charge and not of draw.
        if self.inputs.rigs[rig].overload == Some(found) {
            return (End::OfUnit(found), None);
        }
        if matches!(found, Stop::ChargeFloor { .. }) {
            return (End::OfBank(found), None);
        }
        if let Some(stop) = self.stop_with(piece, 0.0) {
            let end = if is_of_unit(stop) {
                End::OfUnit(stop)
            } else {
                End::OfBank(stop)
            };
            return (end, None);
        }
        let fails = |share| self.stop_with(piece, share).is_some();
        let (_, falls) = bisect(fails, 0.0, 1.0, WITHIN);
        let stop = self.stop_with(piece, falls).unwrap_or(found);
        let end = if is_of_unit(stop) || stop == Stop::NoCurrentCarriesIt {
            End::OfUnit(stop)
        } else {
            End::OfBank(stop)
        };
        (end, Some(rig))
    }

    /// What stops a piece at its start with a share of the unit's draw.
    fn stop_with(&self, piece: &Piece, share: f64) -> Option<Stop> {
        let hanging = piece.hanging.with_unit_at(share);
        let Some(flow) = self.flow(&hanging, &piece.sources, piece.bank_c, LEAST_H) else {
            return Some(Stop::NoCurrentCarriesIt);
        };
        let held = self.standing.held;
        self.stop_at(piece.rig, &hanging, &Flow { held, ..flow })
    }
}

/// Whether it stops the unit alone, whatever else is on.
fn is_of_unit(stop: Stop) -> bool {
    matches!(
        stop,
        Stop::UnitCutOff { .. }
            | Stop::InverterCutOff { .. }
            | Stop::InverterLimit { .. }
            | Stop::ConverterLimit { .. }
    )
}
