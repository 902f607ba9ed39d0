//! What a bank may be charged with.

use crate::physics::battery::Chemistry;

/// What a bank may be charged with, by its chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charging {
    /// Terminal volts of the whole bank that chargers hold at the end.
    pub hold_v: f64,
    /// Lowest and highest bank temperature at which it may be charged at all, Celsius.
    pub between_c: (f64, f64),
    /// Of the charge put in, what can be drawn again: above 0 to 1.
    pub kept: f64,
    /// The bank's current at which it is called full, of the amps that would fill
    /// it in an hour.
    pub end_share: f64,
}

impl Charging {
    /// What is usual for a chemistry and so many cells in series.
    #[must_use]
    pub fn usual(chemistry: Chemistry, cells: f64) -> Self {
        let usual = chemistry.data().charging;
        Self {
            hold_v: usual.hold_cell_v * cells,
            between_c: usual.between_c,
            kept: usual.kept,
            end_share: usual.end_share,
        }
    }
}
