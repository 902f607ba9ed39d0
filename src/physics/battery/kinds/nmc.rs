//! Lithium nickel manganese cobalt oxide on graphite.

use super::{Charging, Kind, Rates, TemperatureResponse};
use crate::physics::battery::polarisation::CellPolarisation;

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
    battery_extra_milliohm: 2.5,
    battery_least_milliohm: 2.0,
    rates: RATES,
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

/// A 12.5 Ah pouch cell discharged at C/20, C/2, 1C and 2C, 25 °C (About:Energy's BPX
/// parameterisation, `NMC/data/validation`, CC BY-SA 4.0). Between the rates its curve
/// falls by 65, 56 and 100 mV (mean of 10 to 80 % drawn): these figures give 65, 61
/// and 100. The lag is by its charge to 3.0 V.
const RATES: Rates = Rates::Measured(CellPolarisation {
    gap_v: 0.0,
    exchange_per_h: 0.6,
    milliohm_ah: 7.0,
    lag_h: 0.01,
    to_per_h: 2.0,
});

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
