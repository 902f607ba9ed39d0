//! The current of a short circuit, and whether a fuse can break it.
//!
//! A fuse that cannot interrupt the fault bursts or keeps arcing. Lithium
//! banks have so little resistance that common vehicle fuses fail this test.

use super::limits::{Input, Refusal};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, amps, in_amps, in_ohms, in_volts,
};

/// Prospective fault current: source voltage (1 to 1000 V) over the
/// resistance of the bank (a nano-ohm to 400 ohm) and of the cable up to the
/// fault, there and back (0 to 100 ohm). Ohm's law.
///
/// Be cautious with what goes in: the highest voltage (while charging), the
/// lowest resistance (a warm bank, full; cold cable; none for a fault right at
/// the fuse). A bank's resistance is often a guess; a maker's own figure for
/// short-circuit current is better. Other sources add theirs.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn prospective_fault(
    source: ElectricPotential,
    bank: ElectricalResistance,
    cable: ElectricalResistance,
) -> Result<ElectricCurrent, Refusal> {
    let source_v = Input::Volts.check(in_volts(source))?;
    let bank_ohm = Input::SourceResistance.check(in_ohms(bank))?;
    let cable_ohm = Input::Resistance.check(in_ohms(cable))?;
    Ok(amps(source_v / (bank_ohm + cable_ohm)))
}

/// Kinds of direct-current protection found on battery systems, by their
/// trade terms.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Family {
    /// Plug-in blade fuse for vehicles.
    Blade,
    /// Bolt-down strip fuse.
    Anl,
    /// Square cube fuse on a terminal post.
    Mrbf,
    /// Sand-filled, current-limiting cartridge of class T.
    ClassT,
    /// Thermal circuit breaker for low-voltage direct current.
    Breaker,
}

impl Family {
    /// All kinds.
    pub const ALL: [Self; 5] = [
        Self::Blade,
        Self::Anl,
        Self::Mrbf,
        Self::ClassT,
        Self::Breaker,
    ];

    /// Up to which direct voltage it breaks which current, rising in volts.
    ///
    /// Common practice, from memory, and the cautious end of it: makers differ
    /// by half. What is printed on the device decides.
    const fn breaks(self) -> &'static [(f64, f64)] {
        match self {
            Self::Blade => &[(32.0, 1000.0)],
            Self::Anl => &[(32.0, 2700.0)],
            Self::Mrbf => &[(14.0, 10_000.0), (32.0, 5000.0), (58.0, 2000.0)],
            Self::ClassT => &[(125.0, 20_000.0)],
            Self::Breaker => &[(14.0, 3000.0), (32.0, 1500.0)],
        }
    }

    /// Least and greatest rating commonly sold, A. Common practice, from
    /// memory.
    const fn sold_a(self) -> (f64, f64) {
        match self {
            Self::Blade => (1.0, 40.0),
            Self::Anl => (35.0, 500.0),
            Self::Mrbf => (30.0, 300.0),
            Self::ClassT => (1.0, 400.0),
            Self::Breaker => (5.0, 200.0),
        }
    }

    /// The current it can break at that direct voltage; `None` where its
    /// voltage rating does not reach. The next rated voltage at or above
    /// counts, never one between.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] for a voltage outside 1 to 1000 V.
    pub fn interrupts_at(
        self,
        charge: ElectricPotential,
    ) -> Result<Option<ElectricCurrent>, Refusal> {
        let charge_v = Input::Volts.check(in_volts(charge))?;
        let step = self.breaks().iter().find(|(most_v, _)| charge_v <= *most_v);
        Ok(step.map(|(_, most_a)| amps(*most_a)))
    }
}

/// A kind of fuse held against a place in a circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suitability {
    /// The kind.
    pub family: Family,
    /// Its voltage rating reaches the charge voltage.
    pub bears_voltage: bool,
    /// What it can break at that voltage, if it bears it.
    pub interrupts: Option<ElectricCurrent>,
    /// That is at least the prospective fault.
    pub breaks_fault: bool,
    /// It is sold in that rating.
    pub made_in_rating: bool,
}

impl Suitability {
    /// All three hold.
    #[must_use]
    pub fn suits(&self) -> bool {
        self.bears_voltage && self.breaks_fault && self.made_in_rating
    }
}

/// Hold a kind of fuse against the charge voltage (1 to 1000 V; a fuse must
/// break the circuit while it charges), the prospective fault and the rating
/// wanted (up to 10 000 A).
///
/// A fault above every kind's limit suits none: then the bank is split, each
/// part behind its own fuse.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input. A fault of any positive size is
/// taken.
pub fn suitability(
    family: Family,
    charge: ElectricPotential,
    fault: ElectricCurrent,
    rating: ElectricCurrent,
) -> Result<Suitability, Refusal> {
    let interrupts = family.interrupts_at(charge)?;
    let rating_a = Input::Ampacity.check(in_amps(rating))?;
    let (least_a, most_a) = family.sold_a();
    Ok(Suitability {
        family,
        bears_voltage: interrupts.is_some(),
        interrupts,
        // NaN compares false: an unknown fault is never called broken.
        breaks_fault: interrupts.is_some_and(|most| fault <= most),
        made_in_rating: (least_a..=most_a).contains(&rating_a),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{ohms, volts};

    #[test]
    fn a_higher_voltage_is_never_easier_to_break() {
        for family in Family::ALL {
            let steps = family.breaks();
            assert!(steps.is_sorted_by(|a, b| a.0 < b.0 && a.1 > b.1));
        }
    }

    #[test]
    fn a_source_without_resistance_is_refused() {
        assert!(prospective_fault(volts(13.2), ohms(0.0), ohms(0.01)).is_err());
    }

    #[test]
    fn an_unknown_fault_is_not_called_broken() {
        let held = suitability(Family::ClassT, volts(14.6), amps(f64::NAN), amps(200.0)).unwrap();
        assert!(!held.suits() && held.bears_voltage);
    }
}
