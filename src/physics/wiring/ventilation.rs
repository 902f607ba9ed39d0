//! Air for lead-acid batteries: hydrogen must leave before it gathers.
//!
//! Lithium batteries do not gas in use; a sealed lead-acid one does when
//! overcharged.

use super::limits::{Input, Refusal};
use crate::quantity::{
    Area, ElectricCharge, hours, in_amp_hours, meters, square_meters, square_millimeters,
};
use uom::si::f64::VolumeRate;

/// An opening of 28 cm2 for each cubic metre an hour, in mm2.
const OPENING_MM2_PER_M3_H: f64 = 2800.0;

/// How the battery is built and charged, which says how much it gasses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Gassing {
    /// Flooded cells, charger that holds its voltage at most 2.4 V a cell.
    VentedHeldVoltage,
    /// Sealed cells (gel, mat) on the same charger.
    SealedHeldVoltage,
    /// Flooded cells, charger that ends at constant current.
    VentedFinalCurrent,
    /// Sealed cells on such a charger.
    SealedFinalCurrent,
}

impl Gassing {
    /// Gassing current, A per 100 Ah: 2 and 1 on a held voltage (IU), at most
    /// 6 and 1.5 with a final constant current (IUI). EN 50272-3 / IEC
    /// 62485-3, table on the gassing current.
    const fn amps_per_100_ah(self) -> f64 {
        match self {
            Self::VentedHeldVoltage => 2.0,
            Self::SealedHeldVoltage => 1.0,
            Self::VentedFinalCurrent => 6.0,
            Self::SealedFinalCurrent => 1.5,
        }
    }
}

/// The air a battery compartment needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ventilation {
    /// Air change by volume.
    pub air: VolumeRate,
    /// Free area of the inlet, and again of the outlet, for still air to do
    /// it.
    pub opening: Area,
}

/// Air and openings for cells in series (1 to 400) of a capacity (0.1 to
/// 20 000 Ah): Q = 0.05 n Igas C/100 m3/h, A = 28 Q cm2 (EN 50272-3 / IEC
/// 62485-3; a newer edition rounds the constant to 0.055, 10 % more). Strings
/// in parallel add: give the bank's Ah.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn ventilation(
    cells: u32,
    capacity: ElectricCharge,
    gassing: Gassing,
) -> Result<Ventilation, Refusal> {
    let cells = Input::Cells.check(f64::from(cells))?;
    let capacity_ah = Input::Capacity.check(in_amp_hours(capacity))?;
    let air_m3_per_h = 0.05 * cells * gassing.amps_per_100_ah() * capacity_ah / 100.0;
    Ok(Ventilation {
        air: square_meters(1.0) * meters(air_m3_per_h) / hours(1.0),
        opening: square_millimeters(OPENING_MM2_PER_M3_H * air_m3_per_h),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::amp_hours;

    #[test]
    fn no_cells_or_no_capacity_is_refused() {
        let sealed = Gassing::SealedHeldVoltage;
        assert!(ventilation(0, amp_hours(100.0), sealed).is_err());
        assert!(ventilation(6, amp_hours(f64::NAN), sealed).is_err());
    }
}
