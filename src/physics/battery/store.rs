//! A bank in time: charge that goes in and out at changing currents.
//!
//! Lithium is one tank; lead-acid is two ([`kinetic`](super::kinetic)), fitted to
//! the same rates as the steady law. What a bank is promised to hold is its rated
//! charge in both: the tanks only say how much of it is at hand.

use super::{
    Pack,
    kinetic::{Kinetic, Stretch, Tanks},
};

/// What stays of a bank while time runs.
#[derive(Clone, Debug, PartialEq)]
pub struct Store {
    /// Ah between full and empty cells, at the rated current or slower.
    pub cells_ah: f64,
    /// Charge of the cells that counts as empty, 0 to 1 (see [`Pack`]).
    pub empty_charge: f64,
    /// Of the Ah that go in, those that stay.
    pub charge_efficiency: f64,
    kinetic: Option<Kinetic>,
}

/// The charge of a bank at a moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// Ah above empty cells.
    pub cells_ah: f64,
    /// The two tanks of lead-acid.
    tanks: Option<Tanks>,
}

/// A length of time, worked out once for all the steps that are as long.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timed {
    hours: f64,
    stretch: Option<Stretch>,
}

impl Store {
    /// A bank that keeps `charge_efficiency` (0 to 1] of the Ah put in.
    ///
    /// `rated_hours` of its label, for lead-acid's two tanks; with an exponent of
    /// 1, or one that no two tanks give, there is a single tank and no recovery.
    #[must_use]
    pub fn new(pack: &Pack, rated_hours: f64, charge_efficiency: f64) -> Self {
        let capacity = pack.capacity;
        Self {
            cells_ah: capacity.ah,
            empty_charge: pack.empty_charge,
            charge_efficiency,
            kinetic: Kinetic::fitted(capacity.ah, rated_hours, capacity.exponent),
        }
    }

    /// The bank with a share of what it holds (0 to 1), long at rest.
    #[must_use]
    pub fn rested(&self, soc: f64) -> Held {
        let charge = self.empty_charge + soc * (1.0 - self.empty_charge);
        let cells_ah = self.cells_ah * charge;
        // What the rating leaves behind is in the tanks as well.
        let tanks = self
            .kinetic
            .map(|kinetic| kinetic.rested(kinetic.total_ah - self.cells_ah + cells_ah));
        Held { cells_ah, tanks }
    }

    /// Charge of the cells, 0 to 1, for the open-circuit voltage.
    #[must_use]
    pub fn charge(&self, held: Held) -> f64 {
        held.cells_ah / self.cells_ah
    }

    /// Share of what the bank holds, 1 full, 0 empty.
    #[must_use]
    pub fn soc(&self, held: Held) -> f64 {
        (self.charge(held) - self.empty_charge) / (1.0 - self.empty_charge)
    }

    /// A step's length in hours, above 0.
    #[must_use]
    pub fn timed(&self, hours: f64) -> Timed {
        Timed {
            hours,
            stretch: self.kinetic.map(|kinetic| kinetic.stretch(hours)),
        }
    }

    /// The greatest steady current out of the bank that lasts the step: no less
    /// than `floor_share` of what it holds is left, and something is at hand.
    #[must_use]
    pub fn most_out_a(&self, held: Held, step: &Timed, floor_share: f64) -> f64 {
        let floor = self.empty_charge + floor_share * (1.0 - self.empty_charge);
        let by_floor = (held.cells_ah - self.cells_ah * floor) / step.hours;
        let by_hand = match (step.stretch, held.tanks) {
            (Some(stretch), Some(tanks)) => stretch.most_a(tanks),
            _ => f64::INFINITY,
        };
        by_floor.min(by_hand).max(0.0)
    }

    /// The greatest steady current into the bank that it takes over the step:
    /// until it is full, or until lead-acid's first tank is.
    #[must_use]
    pub fn most_in_a(&self, held: Held, step: &Timed) -> f64 {
        let kept = self.charge_efficiency;
        let by_full = (self.cells_ah - held.cells_ah) / step.hours / kept;
        let by_hand = match (self.kinetic, step.stretch, held.tanks) {
            (Some(kinetic), Some(stretch), Some(tanks)) => {
                stretch.most_into_a(tanks, kinetic.room_ah()) / kept
            }
            _ => f64::INFINITY,
        };
        by_full.min(by_hand).max(0.0)
    }

    /// What a current at the terminals, out of them positive, is in the store.
    #[must_use]
    pub fn cell_a(&self, amps: f64) -> f64 {
        if amps < 0.0 {
            amps * self.charge_efficiency
        } else {
            amps
        }
    }

    /// The bank after a step at a steady current: out of it positive.
    ///
    /// Exact, for any length; the caller keeps to the greatest currents.
    #[must_use]
    pub fn after(&self, held: Held, step: &Timed, amps: f64) -> Held {
        let cell_a = self.cell_a(amps);
        Held {
            cells_ah: held.cells_ah - cell_a * step.hours,
            tanks: step
                .stretch
                .zip(held.tanks)
                .map(|(stretch, tanks)| stretch.after(tanks, cell_a)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::battery::{Capacity, Chemistry};

    fn store(exponent: f64) -> Store {
        let pack = Pack {
            curve: Chemistry::Agm.data().curve(6.0),
            ohm: 0.01,
            polarisation: None,
            capacity: Capacity {
                ah: 100.0,
                rated_a: 5.0,
                exponent,
            },
            empty_charge: 0.0,
            cutoff_v: 10.5,
            limit_a: None,
            parasitic_w: 0.0,
        };
        Store::new(&pack, 20.0, 0.9)
    }

    #[test]
    fn the_rated_current_lasts_the_rated_hours() {
        for exponent in [1.0, 1.1, 1.3] {
            let store = store(exponent);
            let full = store.rested(1.0);
            let whole = store.timed(20.0);
            assert!(
                (store.most_out_a(full, &whole, 0.0) - 5.0).abs() < 1e-6,
                "{exponent}"
            );
            assert!(store.soc(store.after(full, &whole, 5.0)).abs() < 1e-12);
        }
    }

    #[test]
    fn rest_brings_back_what_is_at_hand_and_makes_no_charge() {
        let store = store(1.2);
        let hour = store.timed(1.0);
        let drawn = store.after(store.rested(1.0), &hour, 40.0);
        let rested = store.after(drawn, &hour, 0.0);
        assert!(store.most_out_a(rested, &hour, 0.0) > store.most_out_a(drawn, &hour, 0.0) + 1.0);
        assert_eq!(store.soc(rested), store.soc(drawn));
    }

    #[test]
    fn a_full_bank_takes_nothing_and_a_drawn_one_its_loss_on_top() {
        let store = store(1.0);
        let hour = store.timed(1.0);
        let full = store.rested(1.0);
        assert_eq!(store.most_in_a(full, &hour), 0.0);
        let drawn = store.after(full, &hour, 9.0);
        assert!((store.most_in_a(drawn, &hour) - 10.0).abs() < 1e-12);
    }
}
