//! Sodium-ion: layered oxide on hard carbon.

use super::{Charging, Kind, Rates, TemperatureResponse};

/// All of it common practice, no source; Peukert's exponent near 1 by Doerffel &
/// Sharkh 2006.
pub const KIND: Kind = Kind {
    is_lead_acid: false,
    cell_nominal_v: 3.1,
    system_cells: [4, 8, 12, 16],
    rated_hours: 5.0,
    peukert_exponent: 1.0,
    cell_cutoff_v: 2.0,
    usual_depth_percent: 90.0,
    cell_milliohm_ah: 60.0,
    battery_extra_milliohm: 2.5,
    battery_least_milliohm: 2.0,
    rates: Rates::NotMeasured,
    parasitic_w: 0.5,
    cell_open_circuit: OPEN_CIRCUIT,
    curve_is_measured: false,
    temperature: TemperatureResponse::NotMeasured,
    charging: Charging {
        hold_cell_v: 3.9,
        most_cell_v: 4.0,
        between_c: (-10.0, 50.0),
        usual_rate: 0.5,
        kept: 0.99,
        end_share: super::LITHIUM_END_SHARE,
    },
    gassing: None,
    wh_per_kg: 110.0,
};

/// A typical curve, from memory.
const OPEN_CIRCUIT: &[(f64, f64)] = &[
    (0.0, 2.00),
    (0.05, 2.35),
    (0.1, 2.55),
    (0.2, 2.75),
    (0.3, 2.88),
    (0.4, 2.98),
    (0.5, 3.07),
    (0.6, 3.17),
    (0.7, 3.27),
    (0.8, 3.40),
    (0.9, 3.58),
    (1.0, 3.85),
];
