//! The volts a cable keeps for itself, and the current a load then draws.
//!
//! A run is named by its one-way length; the current goes out and comes back,
//! so twice that length resists.

use super::copper::{self, Build};
use super::limits::{Input, Refusal};
use super::size::Size;
use crate::quantity::{
    Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Power,
    ThermodynamicTemperature, amps, in_amps, in_ohms, in_volts, in_watts, watts,
};

/// A pair of conductors, out and back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// Size of each of the two.
    pub size: Size,
    /// How both are made.
    pub build: Build,
    /// From source to load, once: 0 to 500 m.
    pub one_way: Length,
}

impl Run {
    /// Resistance of both conductors together at that temperature
    /// (-60 to 250 C).
    ///
    /// Joints, lugs and fuse holders are not in it: a poor one adds more than
    /// metres of cable.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] naming the input.
    pub fn loop_resistance(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<ElectricalResistance, Refusal> {
        let allowance = self.build.allowance(self.size.system());
        loop_resistance(self.size.area(), allowance, self.one_way, temperature)
    }

    /// Drop along both conductors at that temperature; see [`drop_over`].
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] naming the input.
    pub fn drop(
        &self,
        current: ElectricCurrent,
        source: ElectricPotential,
        temperature: ThermodynamicTemperature,
    ) -> Result<Drop, Refusal> {
        drop_over(self.loop_resistance(temperature)?, current, source)
    }
}

/// Resistance of a pair of conductors of any area (0.05 to 1000 mm2), so long
/// one way (0 to 500 m), so warm (-60 to 250 C), and resisting `allowance` times
/// what solid copper does ([`Build::allowance`], or 1).
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn loop_resistance(
    area: Area,
    allowance: f64,
    one_way: Length,
    temperature: ThermodynamicTemperature,
) -> Result<ElectricalResistance, Refusal> {
    Ok(copper::solid(area, one_way, temperature)? * (2.0 * allowance))
}

/// A voltage drop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drop {
    /// Volts lost along the way.
    pub volts: ElectricPotential,
    /// The same as a share of the source volts; above 1 the current asked for
    /// cannot flow at all.
    pub share: f64,
}

/// Drop over a resistance (0 to 100 ohm) at a current (up to 5000 A), as
/// volts and as a share of the source volts (1 to 1000 V). Ohm's law.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn drop_over(
    path: ElectricalResistance,
    current: ElectricCurrent,
    source: ElectricPotential,
) -> Result<Drop, Refusal> {
    let path_ohm = Input::Resistance.check(in_ohms(path))?;
    let current_a = Input::Current.check(in_amps(current))?;
    let source_v = Input::Volts.check(in_volts(source))?;
    Ok(Drop {
        volts: current * path,
        share: path_ohm * current_a / source_v,
    })
}

/// What a load asks of its path while it is on (its on-power, not its mean:
/// wires and fuses heat at the peaks).
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Demand {
    /// A known current, up to 5000 A.
    Current(ElectricCurrent),
    /// A power (0.001 W to 100 kW) behind something that passes on a share of
    /// what it takes (0.05 to 1; 1 for a direct connection).
    Power {
        /// Power the load draws while on.
        power: Power,
        /// Efficiency of the inverter or converter in between.
        efficiency: f64,
    },
}

/// The current to design for: the load's own, or what its power takes when
/// the source stands at its lowest (`source_at_cut_off`) and the path resists.
///
/// A constant power P behind efficiency e solves (V - I R) I = P / e; of the
/// two roots the smaller current is the one that settles,
/// I = 2 P' / (V + sqrt(V^2 - 4 R P')) (maximum-power-transfer theorem).
///
/// ```
/// use till_morning::quantity::{amps, in_amps, ohms, volts, watts};
/// use till_morning::physics::wiring::{Demand, design_current};
///
/// let load = Demand::Power { power: watts(900.0), efficiency: 0.9 };
/// let current = design_current(load, volts(10.0), ohms(0.009)).unwrap();
/// assert!((in_amps(current) - 111.1111).abs() < 1e-3); // not 1000 W / 10 V
/// assert!(design_current(load, volts(10.0), ohms(0.03)).is_err()); // none carries it
/// ```
///
/// # Errors
/// [`Refusal::NoCurrentCarries`] when 4 R P' exceeds V^2, with the most power
/// at the far end any current could carry; [`Refusal::OutOfRange`] naming the
/// input, or the current when the power takes more than 5000 A.
pub fn design_current(
    demand: Demand,
    source_at_cut_off: ElectricPotential,
    path: ElectricalResistance,
) -> Result<ElectricCurrent, Refusal> {
    let source_v = Input::Volts.check(in_volts(source_at_cut_off))?;
    let path_ohm = Input::Resistance.check(in_ohms(path))?;
    let (power, efficiency) = match demand {
        Demand::Current(current) => {
            return Input::Current.check(in_amps(current)).map(amps);
        }
        Demand::Power { power, efficiency } => (power, efficiency),
    };
    let taken_w = Input::Power.check(in_watts(power))? / Input::Efficiency.check(efficiency)?;
    let square = source_v * source_v - 4.0 * path_ohm * taken_w;
    if square < 0.0 {
        let most_w = source_v * source_v / (4.0 * path_ohm);
        return Err(Refusal::NoCurrentCarries {
            most: watts(most_w * efficiency),
        });
    }
    let current_a = 2.0 * taken_w / (source_v + square.sqrt());
    Input::Current.check(current_a).map(amps)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{ohms, volts};

    #[test]
    fn the_current_found_carries_the_power() {
        let demand = Demand::Power {
            power: watts(1200.0),
            efficiency: 0.88,
        };
        let (source, path) = (volts(24.0), ohms(0.02));
        let current = design_current(demand, source, path).unwrap();
        let arrives = (source - current * path) * current;
        assert!((in_watts(arrives) - 1200.0 / 0.88).abs() < 1e-9);
    }

    #[test]
    fn the_most_that_can_be_carried_is_stated_and_holds() {
        let ask = |w| Demand::Power {
            power: watts(w),
            efficiency: 0.8,
        };
        let Err(Refusal::NoCurrentCarries { most }) =
            design_current(ask(500.0), volts(12.0), ohms(0.1))
        else {
            panic!("500 W through 0.1 ohm from 12 V was accepted");
        };
        assert!((in_watts(most) - 288.0).abs() < 1e-9); // 0.8 * 144 / 0.4
        assert!(design_current(ask(287.99), volts(12.0), ohms(0.1)).is_ok());
    }
}
