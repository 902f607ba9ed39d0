//! Lead-acid in absorbent glass mat.

use super::{Kind, lead_acid::COMMON};

/// Peukert's exponent: the middle of 1.05 to 1.15, in common encyclopaedias. The
/// resistance is common practice, no source.
pub const KIND: Kind = Kind {
    peukert_exponent: 1.10,
    cell_milliohm_ah: 80.0,
    cell_open_circuit: OPEN_CIRCUIT,
    ..COMMON
};

/// Specific gravity about 1.300 when full.
const OPEN_CIRCUIT: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.145)];
