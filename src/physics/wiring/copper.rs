//! What a length of copper resists, cold and hot.
//!
//! Copper only. Copper-clad aluminium of the same size resists about 1.6 times
//! as much (common practice, no source) and none of these numbers hold for it.

use super::limits::{Input, Refusal};
use super::size::{Size, System};
use crate::quantity::{
    Area, ElectricCurrent, ElectricalResistance, Length, ThermodynamicTemperature, celsius,
    in_amps, in_celsius, in_meters, in_square_meters, in_square_millimeters, ohms,
};

/// Resistivity of annealed copper at 20 C, ohm metre: 100 % IACS, the
/// international standard of 1913 (IEC 60028).
const RESISTIVITY_20C_OHM_M: f64 = 1.7241e-8;

/// Growth of that resistance per kelvin, referred to 20 C (IEC 60028). The
/// form (234.5 + T)/254.5 found in cable standards is the same law rounded
/// elsewhere; the two lie within 3 parts in 100 000 at 75 C.
const GROWTH_PER_K: f64 = 0.00393;

/// How the conductor is made, which says how much more than solid copper of
/// its size it may resist.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Build {
    /// One solid wire. Here to check against tables; it cracks where things
    /// shake, and 33 CFR 183.425(a) forbids it on boats.
    Solid,
    /// A few thick strands, bare copper.
    Stranded,
    /// Many fine strands, bare copper: what most battery cable is.
    Flexible,
    /// Many fine strands, each tinned: what marine cable is.
    FlexibleTinned,
}

impl Build {
    /// Greatest resistance over that of solid copper of the named area.
    ///
    /// Metric sizes name an area the maker need not fill: the standard binds
    /// the resistance. These factors are the worst size's, rounded up, of the
    /// maxima of IEC 60228:2004 (classes 1, 2, 5 bare and 5 tinned) over
    /// 17.241 / area, so no size resists more than computed here.
    ///
    /// Gauge sizes: 2 % for the lay of a stranded wire (ASTM B8, from memory;
    /// NFPA 70 chapter 9 table 8 bears it out); 15 % for fine tinned strands
    /// with their tolerances (the maxima of FAA AC 43.13-1B table 11-9 over
    /// its own areas, gauges 18 to 4); 10 % for the same without the tin.
    #[must_use]
    pub fn allowance(self, system: System) -> f64 {
        match (system, self) {
            (System::Awg, Self::Solid) => 1.00,
            (System::Awg, Self::Stranded) => 1.02,
            (System::Awg, Self::Flexible) => 1.10,
            (System::Awg, Self::FlexibleTinned) => 1.15,
            (System::Metric, Self::Solid) => 1.075,
            (System::Metric, Self::Stranded) => 1.123,
            (System::Metric, Self::Flexible) => 1.16,
            (System::Metric, Self::FlexibleTinned) => 1.20,
        }
    }
}

/// Resistance over that at 20 C, of copper at `temperature`: -60 to 250 C.
///
/// # Errors
/// [`Refusal::OutOfRange`] for a temperature outside that.
pub fn hot_factor(temperature: ThermodynamicTemperature) -> Result<f64, Refusal> {
    let conductor_c = Input::ConductorTemperature.check(in_celsius(temperature))?;
    Ok(1.0 + GROWTH_PER_K * (conductor_c - 20.0))
}

/// Resistance of one solid conductor of that area (0.05 to 1000 mm2), that
/// long (0 to 500 m), that warm (-60 to 250 C): R = rho l / A (IEC 60028).
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn solid(
    area: Area,
    length: Length,
    temperature: ThermodynamicTemperature,
) -> Result<ElectricalResistance, Refusal> {
    Input::Area.check(in_square_millimeters(area))?;
    let length_m = Input::Length.check(in_meters(length))?;
    let ohm_20c = RESISTIVITY_20C_OHM_M * length_m / in_square_meters(area);
    Ok(ohms(ohm_20c * hot_factor(temperature)?))
}

/// Resistance of one conductor of a size and build; see [`solid`] for the
/// ranges and [`Build::allowance`] for what is added.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn resistance(
    size: Size,
    build: Build,
    length: Length,
    temperature: ThermodynamicTemperature,
) -> Result<ElectricalResistance, Refusal> {
    Ok(solid(size.area(), length, temperature)? * build.allowance(size.system()))
}

/// How warm a conductor gets: T2 = T1 + (TR - T1) sqrt(I / Imax), where Imax
/// is what would bring it to its rating TR in air at T1 (FAA AC 43.13-1B,
/// paragraph 11-66d(6), which calls it quite conservative: heat goes with the
/// square of current, so the true rise is less). A current above Imax counts
/// as Imax; an ambient above the rating is returned as it is.
///
/// # Errors
/// [`Refusal::OutOfRange`]: ambient -60 to 120 C, rating 60 to 500 C, current
/// up to 5000 A, allowed current up to 10 000 A.
pub fn estimated_temperature(
    ambient: ThermodynamicTemperature,
    rating: ThermodynamicTemperature,
    current: ElectricCurrent,
    allowed: ElectricCurrent,
) -> Result<ThermodynamicTemperature, Refusal> {
    let ambient_c = Input::Ambient.check(in_celsius(ambient))?;
    let rating_c = Input::TemperatureRating.check(in_celsius(rating))?;
    let current_a = Input::Current.check(in_amps(current))?;
    let allowed_a = Input::Ampacity.check(in_amps(allowed))?;
    // A ratio of at most 1 keeps the case of no allowed current finite.
    let loading = current_a / allowed_a.max(current_a);
    let rise_c = (rating_c - ambient_c).max(0.0) * loading.sqrt();
    Ok(celsius(ambient_c + rise_c))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{amps, in_ohms, meters, square_millimeters};

    #[test]
    fn a_flexible_wire_never_resists_less_than_a_stiffer_one() {
        let rising = [
            Build::Solid,
            Build::Stranded,
            Build::Flexible,
            Build::FlexibleTinned,
        ];
        for system in [System::Awg, System::Metric] {
            assert!(rising.is_sorted_by(|a, b| a.allowance(system) < b.allowance(system)));
        }
    }

    #[test]
    fn no_allowed_current_means_the_rating_and_not_an_infinity() {
        let hot = estimated_temperature(celsius(40.0), celsius(75.0), amps(5.0), amps(0.0));
        assert_eq!(hot.map(in_celsius), Ok(in_celsius(celsius(75.0))));
    }

    #[test]
    fn bad_inputs_are_named() {
        let refused = solid(square_millimeters(4.0), meters(f64::NAN), celsius(20.0));
        assert!(matches!(
            refused,
            Err(Refusal::OutOfRange {
                input: Input::Length,
                ..
            })
        ));
        let none = solid(square_millimeters(4.0), meters(0.0), celsius(20.0));
        assert_eq!(none.map(in_ohms), Ok(0.0));
    }
}
