//! From panels to bank: what the charge controller passes on.

use super::{Input, Offer, OutOfRange, RATED_C, within};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ThermodynamicTemperature, amps, in_amps, in_celsius,
    in_volts, in_watts,
};

/// The array's voltages from its panels' sheets, strings counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArrayVolts {
    at_most_power_v: f64,
    open_v: f64,
    open_per_kelvin: f64,
}

impl ArrayVolts {
    /// Voltages at standard test conditions.
    ///
    /// - `at_most_power`: 1 to 8,000 V: forty panels in series of the highest
    ///   voltage accepted
    /// - `open`: `at_most_power` to 8,000 V
    /// - `open_per_kelvin`: -0.01 to 0, as a share of `open`; crystalline silicon
    ///   about -0.003
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn new(
        at_most_power: ElectricPotential,
        open: ElectricPotential,
        open_per_kelvin: f64,
    ) -> Result<Self, OutOfRange> {
        let at_most_power_v = within(Input::ArrayVolts, in_volts(at_most_power), 1.0, MOST_V)?;
        Ok(Self {
            at_most_power_v,
            open_v: within(Input::ArrayVolts, in_volts(open), at_most_power_v, MOST_V)?,
            open_per_kelvin: within(Input::OpenVoltsPerKelvin, open_per_kelvin, -0.01, 0.0)?,
        })
    }

    /// Open-circuit voltage at a cell temperature, in full light.
    #[must_use]
    pub fn open(&self, cell: ThermodynamicTemperature) -> ElectricPotential {
        let warmer_k = in_celsius(cell) - RATED_C;
        crate::quantity::volts((self.open_v * (1.0 + self.open_per_kelvin * warmer_k)).max(0.0))
    }
}

/// A charge controller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Controller {
    kind: Kind,
    most_a: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Kind {
    Tracking { efficiency: f64 },
    Direct { volts: ArrayVolts },
}

/// Highest array voltage taken in.
const MOST_V: f64 = 8_000.0;
/// Largest current of a controller taken in, amperes; also the default limit.
const MOST_A: f64 = 1_000.0;

impl Controller {
    /// One that holds the panels at their best voltage and converts to the bank's.
    ///
    /// - `efficiency`: 0.3 to 1, 0.93 to 0.98 for most
    /// - `most`: its output limit, above 0 to 1,000 A
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn tracking(efficiency: f64, most: Option<ElectricCurrent>) -> Result<Self, OutOfRange> {
        let efficiency = within(Input::Efficiency, efficiency, 0.3, 1.0)?;
        Ok(Self {
            kind: Kind::Tracking { efficiency },
            most_a: limit(most)?,
        })
    }

    /// One that ties the panels to the bank (by pulses or by a relay), so that
    /// they work at the bank's voltage.
    ///
    /// - `most`: its limit, above 0 to 1,000 A
    ///
    /// # Errors
    /// The limit out of its range.
    pub fn direct(volts: ArrayVolts, most: Option<ElectricCurrent>) -> Result<Self, OutOfRange> {
        Ok(Self {
            kind: Kind::Direct { volts },
            most_a: limit(most)?,
        })
    }

    /// Current into the bank.
    ///
    /// - `offer`: from [`super::Array::offer`]; power below zero reads as none
    /// - `bank`: the bank's voltage; at zero or below nothing flows
    ///
    /// Tied to the bank, panels give their best current up to their best voltage
    /// and less from there to none at open circuit. We draw that shoulder as a
    /// straight line, below the true curve, and leave out the few per cent that
    /// current rises below the best voltage: both on the safe side. The best
    /// voltage falls with heat about as power does, as current hardly changes.
    #[must_use]
    pub fn current(&self, offer: &Offer, bank: ElectricPotential) -> ElectricCurrent {
        let (power_w, bank_v) = (in_watts(offer.power), in_volts(bank));
        if !(power_w > 0.0 && bank_v > 0.0) {
            return amps(0.0);
        }
        let current_a = match self.kind {
            Kind::Tracking { efficiency } => power_w * efficiency / bank_v,
            Kind::Direct { volts } => {
                let best_v = volts.at_most_power_v * offer.warmth_factor.max(0.0);
                let open_v = in_volts(volts.open(offer.cell)).max(best_v);
                power_w / best_v * shoulder(bank_v, best_v, open_v)
            }
        };
        // An infinite or undefined quotient only comes of inputs not finite, or
        // of cells so hot that nothing is left.
        let fit = if current_a.is_finite() {
            current_a
        } else {
            0.0
        };
        amps(fit.min(self.most_a))
    }
}

/// Share of the best current at a voltage.
fn shoulder(volts: f64, best_v: f64, open_v: f64) -> f64 {
    if volts <= best_v {
        1.0
    } else if volts >= open_v {
        0.0
    } else {
        (open_v - volts) / (open_v - best_v)
    }
}

/// A checked limit, or none.
fn limit(most: Option<ElectricCurrent>) -> Result<f64, OutOfRange> {
    most.map_or(Ok(MOST_A), |most| {
        within(Input::MostCurrent, in_amps(most), f64::MIN_POSITIVE, MOST_A)
    })
}
