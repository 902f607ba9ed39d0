//! Lead-acid with liquid electrolyte.

use super::{Charging, Gassing, Kind, lead_acid::COMMON};

/// Peukert's exponent: the middle of 1.1 to 1.3, called typical of 1.2 to 1.6, in common encyclopaedias. The
/// resistance is common practice, no source.
pub const KIND: Kind = Kind {
    peukert_exponent: 1.20,
    cell_milliohm_ah: 130.0,
    cell_open_circuit: OPEN_CIRCUIT,
    charging: Charging {
        // While it is equalised.
        most_cell_v: 2.6,
        ..COMMON.charging
    },
    gassing: Some(Gassing::Vented),
    ..COMMON
};

/// Specific gravity 1.280 when full, 1.120 when empty.
const OPEN_CIRCUIT: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.125)];
