//! Lead-acid with gelled electrolyte.

use super::{Kind, lead_acid::COMMON};

/// Peukert's exponent: the middle of 1.1 to 1.25, in common encyclopaedias. The
/// resistance is common practice, no source.
pub const KIND: Kind = Kind {
    peukert_exponent: 1.15,
    cell_milliohm_ah: 110.0,
    cell_open_circuit: OPEN_CIRCUIT,
    ..COMMON
};

/// Specific gravity about 1.295 when full.
const OPEN_CIRCUIT: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.140)];
