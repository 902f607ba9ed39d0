//! The wires from a solar array: current to design for, cold-morning voltage,
//! string fuses.

use super::fuse::CONTINUOUS_SHARE;
use super::fuse_place::{Parallel, fuse_each};
use super::limits::{Input, Refusal};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ThermodynamicTemperature, amps, in_amps, in_celsius,
    in_volts, volts,
};

/// Current of panels under sun brighter than the standard, to their short-circuit
/// current (NFPA 70 section 690.8(A), from memory).
pub const BRIGHT_SUN_SHARE: f64 = 1.25;

/// Current to size the wire and fuse of `strings` parallel strings for (1 to
/// 64), from one string's short-circuit current (0.01 to 200 A): 1.25 for sun
/// brighter than the standard, times 1.25 for hours on end.
///
/// NFPA 70 section 690.8(A) and (B), from memory: 1.5625 Isc. The second 1.25
/// is inside: do not add another for the fuse.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn array_current(
    short_circuit: ElectricCurrent,
    strings: u32,
) -> Result<ElectricCurrent, Refusal> {
    let string_a = Input::ShortCircuitCurrent.check(in_amps(short_circuit))?;
    let count = Input::Batteries.check(f64::from(strings))?;
    Ok(amps(BRIGHT_SUN_SHARE * CONTINUOUS_SHARE * string_a * count))
}

/// Whether each of so many parallel strings (1 to 64) needs its own fuse: from
/// three up, see [`fuse_each`].
///
/// # Errors
/// [`Refusal::OutOfRange`] for a count outside that.
pub fn string_fuses(strings: u32) -> Result<bool, Refusal> {
    fuse_each(Parallel::SolarStrings, strings)
}

/// Modules in series, as the label gives them at 25 C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ModuleString {
    /// Open-circuit voltage of one module, 1 to 1000 V.
    pub open_circuit: ElectricPotential,
    /// Its change per kelvin as a share, -0.01 to 0 (a label's -0.28 %/K is
    /// -0.0028).
    pub per_kelvin: f64,
    /// How many in series, 1 to 100.
    pub in_series: u32,
}

/// The voltage on the coldest morning, against what the controller bears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ColdMorning {
    /// Open-circuit voltage of the string then.
    pub open_circuit: ElectricPotential,
    /// The controller's limit less that; negative when it is exceeded, and an
    /// excess of a moment can destroy the controller.
    pub margin: ElectricPotential,
    /// Whether it stays at or below the limit.
    pub within: bool,
}

/// Open-circuit voltage at the coldest module temperature expected (-60 to
/// 85 C): n Voc (1 + beta (Tmin - 25)) (NFPA 70 section 690.7(A), from
/// memory), against the controller's limit (1 to 1000 V). Above 25 C the
/// label's voltage stands: heat earns no margin.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn cold_morning(
    string: &ModuleString,
    coldest: ThermodynamicTemperature,
    controller_limit: ElectricPotential,
) -> Result<ColdMorning, Refusal> {
    let module_v = Input::Volts.check(in_volts(string.open_circuit))?;
    let per_kelvin = Input::VoltageCoefficient.check(string.per_kelvin)?;
    let count = Input::Modules.check(f64::from(string.in_series))?;
    let coldest_c = Input::ModuleTemperature.check(in_celsius(coldest))?;
    let limit_v = Input::Volts.check(in_volts(controller_limit))?;
    let growth = (1.0 + per_kelvin * (coldest_c - 25.0)).max(1.0);
    let string_v = count * module_v * growth;
    Ok(ColdMorning {
        open_circuit: volts(string_v),
        margin: volts(limit_v - string_v),
        within: string_v <= limit_v,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::celsius;

    #[test]
    fn frost_raises_and_heat_earns_nothing() {
        let string = ModuleString {
            open_circuit: volts(22.0),
            per_kelvin: -0.003,
            in_series: 2,
        };
        let at = |coldest_c| cold_morning(&string, celsius(coldest_c), volts(50.0)).unwrap();
        assert!((in_volts(at(-25.0).open_circuit) - 50.6).abs() < 1e-9);
        assert!(!at(-25.0).within && in_volts(at(-25.0).margin) < 0.0);
        assert!((in_volts(at(40.0).open_circuit) - 44.0).abs() < 1e-9);
    }

    #[test]
    fn a_coefficient_in_per_cent_is_refused() {
        let string = ModuleString {
            open_circuit: volts(22.0),
            per_kelvin: -0.28,
            in_series: 1,
        };
        assert!(cold_morning(&string, celsius(0.0), volts(50.0)).is_err());
    }
}
