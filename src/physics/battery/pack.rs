//! A whole bank as the circuit sees it.

use super::{curve::Curve, peukert, polarisation::Polarisation};

/// How much a bank holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Capacity {
    /// Ah at or below `rated_a`.
    pub ah: f64,
    /// The current at which `ah` was counted.
    pub rated_a: f64,
    /// Peukert's exponent; 1 for lithium and sodium.
    pub exponent: f64,
}

impl Capacity {
    /// Ah that the bank gives at a steady current.
    #[must_use]
    pub fn ah_at(&self, amps: f64) -> f64 {
        self.ah * peukert::share_of_rated(amps / self.rated_a, self.exponent)
    }
}

/// Batteries in series and parallel, made one source.
#[derive(Clone, Debug, PartialEq)]
pub struct Pack {
    /// Open-circuit volts of the whole bank against the charge of its cells.
    pub curve: Curve,
    /// Of the whole bank.
    pub ohm: f64,
    /// What it drops beyond that while it gives.
    pub polarisation: Option<Polarisation>,
    pub capacity: Capacity,
    /// The charge that is called empty: 0, or for a measured bank the charge
    /// at which its own run ended.
    pub empty_charge: f64,
    /// Terminal volts at which the battery's own electronics open.
    pub cutoff_v: f64,
    /// Continuous amps, where a limit is stated.
    pub limit_a: Option<f64>,
    /// The battery's own electronics and monitor.
    pub parasitic_w: f64,
}

impl Pack {
    /// The charge of the cells when so much of what the bank holds is left.
    #[must_use]
    pub fn charge_at(&self, soc: f64) -> f64 {
        self.empty_charge + soc * (1.0 - self.empty_charge)
    }

    /// How much of what the bank holds is left at a charge of the cells.
    #[must_use]
    pub fn soc(&self, charge: f64) -> f64 {
        (charge - self.empty_charge) / (1.0 - self.empty_charge)
    }

    /// Ah from full to empty at or below the rated current.
    #[must_use]
    pub fn held_ah(&self) -> f64 {
        self.capacity.ah * (1.0 - self.empty_charge)
    }

    /// The same batteries, so many times as many side by side (also a part).
    #[must_use]
    pub fn times(&self, strings: f64) -> Self {
        let Capacity {
            ah,
            rated_a,
            exponent,
        } = self.capacity;
        Self {
            curve: self.curve.clone(),
            ohm: self.ohm / strings,
            polarisation: self.polarisation.map(|it| it.times(strings)),
            capacity: Capacity {
                ah: ah * strings,
                rated_a: rated_a * strings,
                exponent,
            },
            limit_a: self.limit_a.map(|limit_a| limit_a * strings),
            ..*self
        }
    }

    /// The same bank with a share of its capacity left.
    #[must_use]
    pub fn aged(&self, left: f64) -> Self {
        let capacity = Capacity {
            ah: self.capacity.ah * left,
            ..self.capacity
        };
        Self {
            curve: self.curve.clone(),
            capacity,
            ..*self
        }
    }
}
