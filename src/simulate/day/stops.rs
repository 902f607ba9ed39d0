//! What stops the unit or everything, and when.

use super::{bank::Flow, piece::Piece, record::Sink, run::Walk};
use crate::simulate::Stop;

/// Ten minutes halved so often are a few microseconds.
const HALVINGS: u32 = 28;

impl<S: Sink> Walk<'_, S> {
    /// What would stop the unit or everything within a piece.
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
        if let Some(stop) = bank.stop_at(flow.held, &piece.hanging, flow.source_a) {
            return Some(stop);
        }
        let lasting = bank.lasting(piece.to_h - piece.from_h);
        if !bank.lasts(self.standing.held, flow.bank_a, &lasting, piece.bank_c) {
            return Some(Stop::ChargeFloor {
                kept_percent: 100.0 * bank.floor_share,
            });
        }
        self.unit_stop(piece, flow)
    }

    pub(super) fn unit_stop(&self, piece: &Piece, flow: &Flow) -> Option<Stop> {
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
    pub(super) fn locate(&self, piece: &Piece, stop: Stop) -> f64 {
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
                Stop::ChargeFloor { .. } => {
                    !bank.lasts(self.standing.held, flow.bank_a, &lasting, piece.bank_c)
                }
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
}

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
