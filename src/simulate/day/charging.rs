//! What a bank may be charged with.

use crate::{
    physics::battery::Chemistry,
    physics::solar::charger::{LEAD_ACID_END_SHARE, USUAL_END_SHARE},
};

/// What a bank may be charged with, by its chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charging {
    /// Terminal volts that chargers hold at the end.
    pub hold_v: f64,
    /// Bank temperatures at which it may be charged at all.
    pub between_c: (f64, f64),
    /// Of the charge put in, what can be drawn again.
    pub kept: f64,
    /// The bank's current at which it is called full, of the amps that would fill
    /// it in an hour.
    pub end_share: f64,
}

impl Charging {
    /// What is usual for a chemistry and so many cells in series: common
    /// practice, no source. Lithium is not charged below freezing.
    #[must_use]
    pub fn usual(chemistry: Chemistry, cells: f64) -> Self {
        use Chemistry as K;
        let (cell_v, between_c, kept) = match chemistry {
            K::Lfp => (3.55, (0.0, 55.0), 0.995),
            K::Nmc => (4.15, (0.0, 45.0), 0.995),
            K::SodiumIon => (3.9, (-10.0, 50.0), 0.99),
            K::Agm | K::Gel | K::Flooded => (2.40, (-20.0, 50.0), 0.9),
        };
        Self {
            hold_v: cell_v * cells,
            between_c,
            kept,
            end_share: if chemistry.is_lead_acid() {
                LEAD_ACID_END_SHARE
            } else {
                USUAL_END_SHARE
            },
        }
    }
}
