//! Lithium nickel manganese cobalt oxide on graphite.

use super::{Charging, Kind, TemperatureResponse};

/// All of it common practice, no source; Peukert's exponent near 1 by Doerffel &
/// Sharkh 2006.
pub const KIND: Kind = Kind {
    is_lead_acid: false,
    cell_nominal_v: 3.6,
    system_cells: [3, 7, 10, 14],
    rated_hours: 5.0,
    peukert_exponent: 1.0,
    cell_cutoff_v: 3.0,
    usual_depth_percent: 80.0,
    cell_milliohm_ah: 60.0,
    battery_extra_milliohm: 2.0,
    parasitic_w: 0.5,
    cell_open_circuit: OPEN_CIRCUIT,
    curve_is_measured: false,
    temperature: TemperatureResponse::NotMeasured,
    charging: Charging {
        hold_cell_v: 4.15,
        most_cell_v: 4.2,
        between_c: (0.0, 45.0),
        usual_rate: 0.5,
        kept: 0.995,
        end_share: super::LITHIUM_END_SHARE,
    },
    gassing: None,
    wh_per_kg: 150.0,
};

/// A typical curve, from memory.
const OPEN_CIRCUIT: &[(f64, f64)] = &[
    (0.0, 3.00),
    (0.05, 3.40),
    (0.1, 3.48),
    (0.2, 3.56),
    (0.3, 3.61),
    (0.4, 3.65),
    (0.5, 3.70),
    (0.6, 3.79),
    (0.7, 3.89),
    (0.8, 3.98),
    (0.9, 4.07),
    (1.0, 4.18),
];
