//! The network behind [`Row`](super::Row): rungs between two rails, solved by
//! Kirchhoff's two laws.

use super::limits::{Input, Refusal};
use super::network::{Row, TakeOff};
use crate::{
    linear,
    quantity::{in_ohms, in_volts},
};

/// One battery that still carries current.
pub(super) struct Rung {
    /// Its place in the row, opened batteries counted.
    pub(super) place: usize,
    open_circuit_v: f64,
    resistance_ohm: f64,
}

/// The row as numbers: rungs between a positive and a negative rail.
pub(super) struct Ladder {
    pub(super) rungs: Vec<Rung>,
    /// Of one rail between neighbouring places.
    link_ohm: f64,
    take_off: TakeOff,
    /// Links of a rail in all.
    links: usize,
}

/// Currents of the rungs and the voltage between the cables.
pub(super) struct Flow {
    pub(super) currents_a: Vec<f64>,
    pub(super) terminal_v: f64,
}

impl Ladder {
    /// The row as given, or with one battery taken out.
    pub(super) fn of(row: &Row, opened: Option<usize>) -> Result<Self, Refusal> {
        Input::Batteries.check(row.batteries.len() as f64)?;
        let mut link_ohm = Input::Resistance.check(in_ohms(row.link))?;
        // A bus bar has no links between batteries: its leads belong to each.
        let mut lead_ohm = 0.0;
        if row.take_off == TakeOff::BusBar {
            lead_ohm = 2.0 * std::mem::take(&mut link_ohm);
        }
        let mut rungs = Vec::with_capacity(row.batteries.len());
        for (place, battery) in row.batteries.iter().enumerate() {
            let open_circuit_v = Input::Volts.check(in_volts(battery.open_circuit))?;
            let own_ohm = Input::SourceResistance.check(in_ohms(battery.resistance))?;
            if opened != Some(place) {
                rungs.push(Rung {
                    place,
                    open_circuit_v,
                    resistance_ohm: own_ohm + lead_ohm,
                });
            }
        }
        if rungs.is_empty() {
            return Err(Refusal::NoBatteryLeft);
        }
        Ok(Self {
            rungs,
            link_ohm,
            take_off: row.take_off,
            links: row.batteries.len() - 1,
        })
    }

    /// Currents at a total, with the batteries' voltages or without them.
    pub(super) fn flow(&self, with_voltages: bool, total_a: f64) -> Result<Flow, Refusal> {
        let voltage = |rung: &Rung| {
            if with_voltages {
                rung.open_circuit_v
            } else {
                0.0
            }
        };
        let count = self.rungs.len();
        let mut rows: Vec<Vec<f64>> = (1..count).map(|far| self.mesh(far)).collect();
        let rises_v = self.rungs.windows(2);
        let mut right: Vec<f64> = rises_v
            .map(|two| voltage(&two[1]) - voltage(&two[0]))
            .collect();
        rows.push(vec![1.0; count]);
        right.push(total_a);
        let currents_a = linear::solve(&rows, &right).ok_or(Refusal::NoBatteryLeft)?;
        let first = &self.rungs[0];
        let first_v = voltage(first) - first.resistance_ohm * currents_a[0];
        let terminal_v = first_v - self.lost_to_cables_v(&currents_a, total_a);
        Ok(Flow {
            currents_a,
            terminal_v,
        })
    }

    /// The voltage law around rung `far` and the one before it: what the links
    /// between them drop makes up the difference of the two.
    ///
    /// Seen from the positive cable, the positive links carry what the rungs
    /// from `far` on give. So do the negative ones when both cables leave at
    /// one end; from the other end they carry what the rungs before `far` take.
    fn mesh(&self, far: usize) -> Vec<f64> {
        let near = far - 1;
        let between_ohm = self.between_ohm(near);
        let (beyond_ohm, before_ohm) = match self.take_off {
            TakeOff::SameEnd | TakeOff::BusBar => (2.0 * between_ohm, 0.0),
            TakeOff::Diagonal => (between_ohm, -between_ohm),
        };
        let mut row: Vec<f64> = (0..self.rungs.len())
            .map(|rung| if rung >= far { beyond_ohm } else { before_ohm })
            .collect();
        row[near] -= self.rungs[near].resistance_ohm;
        row[far] += self.rungs[far].resistance_ohm;
        row
    }

    /// One rail between rung `near` and the next that carries current.
    fn between_ohm(&self, near: usize) -> f64 {
        self.link_ohm * (self.rungs[near + 1].place - self.rungs[near].place) as f64
    }

    /// Volts between the first rung's posts and the cables: along both rails
    /// up to it if batteries before it have opened, and along the whole negative
    /// rail when that cable leaves at the far end.
    fn lost_to_cables_v(&self, currents_a: &[f64], total_a: f64) -> f64 {
        let places_before = self.rungs[0].place as f64;
        let lead_in_v = self.link_ohm * places_before * total_a;
        if self.take_off != TakeOff::Diagonal {
            return 2.0 * lead_in_v;
        }
        let last_place = self.rungs[self.rungs.len() - 1].place;
        let mut taken_a = 0.0;
        let mut lost_v = lead_in_v;
        for (near, rung_a) in currents_a.iter().enumerate().take(self.rungs.len() - 1) {
            taken_a += rung_a;
            lost_v += self.between_ohm(near) * taken_a;
        }
        lost_v + self.link_ohm * (self.links - last_place) as f64 * total_a
    }
}
