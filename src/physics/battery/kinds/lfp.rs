//! Lithium iron phosphate.

use super::{Charging, Kind, Rates, TemperatureResponse};
use crate::physics::battery::polarisation::CellPolarisation;

/// Resistance from measured 1 s steps on a cell (9.8 mΩ at 2.06 Ah, 25 °C, an upper
/// estimate); cut-off, depth, charging and energy by mass are common practice, no
/// source. Peukert's exponent near 1 by Doerffel & Sharkh 2006.
pub const KIND: Kind = Kind {
    is_lead_acid: false,
    cell_nominal_v: 3.2,
    system_cells: [4, 8, 12, 16],
    rated_hours: 5.0,
    peukert_exponent: 1.0,
    cell_cutoff_v: 2.5,
    usual_depth_percent: 90.0,
    cell_milliohm_ah: 20.0,
    battery_extra_milliohm: 2.5,
    battery_least_milliohm: 2.0,
    rates: RATES,
    parasitic_w: 0.5,
    cell_open_circuit: OPEN_CIRCUIT,
    curve_is_measured: true,
    temperature: TemperatureResponse::Measured(TEMPERATURE),
    charging: Charging {
        hold_cell_v: 3.55,
        most_cell_v: 3.65,
        between_c: (0.0, 55.0),
        usual_rate: 0.5,
        kept: 0.995,
        end_share: super::LITHIUM_END_SHARE,
    },
    gassing: None,
    wh_per_kg: 110.0,
};

/// A 2 Ah 18650 cell discharged at C/20, C/2, 1C and 2C, 25 °C (About:Energy's BPX
/// parameterisation, `LFP/data/validation`, CC BY-SA 4.0). Between the rates its
/// plateau (10 to 60 % drawn) falls by 61, 50 and 85 mV, which sets exchange rate and
/// resistance; the lag is by its charge to 2.5 V. The gap is what a slow discharge lies
/// below the curve taken here, beyond those: 19 mV of the cell whose curve it is, 26 of
/// this one; their mean is taken. Whole batteries in use lay some 30 mV a cell lower
/// still (`tests/published/real_bank.rs` says what may be behind it): not taken.
const RATES: Rates = Rates::Measured(CellPolarisation {
    gap_v: 0.023,
    exchange_per_h: 0.5,
    milliohm_ah: 13.0,
    lag_h: 0.085,
    to_per_h: 2.0,
});

/// The mean of measured C/30 discharge and charge.
///
/// From a 2.3 Ah cell on a laboratory cycler, data set `A123_OCV_P25` of the
/// ESC toolbox (G. Plett, UCCS; MIT licence). The branches lie ±20 mV apart:
/// a resting voltage says little about the charge.
const OPEN_CIRCUIT: &[(f64, f64)] = &[
    (0.0, 2.16063),
    (0.01, 2.72518),
    (0.02, 2.85361),
    (0.03, 2.93326),
    (0.04, 2.9912),
    (0.05, 3.03731),
    (0.06, 3.07565),
    (0.07, 3.10829),
    (0.08, 3.13664),
    (0.09, 3.16166),
    (0.1, 3.18341),
    (0.12, 3.20907),
    (0.14, 3.21558),
    (0.16, 3.22285),
    (0.18, 3.23479),
    (0.2, 3.24498),
    (0.22, 3.25359),
    (0.24, 3.26094),
    (0.26, 3.26752),
    (0.28, 3.27409),
    (0.3, 3.2798),
    (0.32, 3.28444),
    (0.34, 3.28957),
    (0.36, 3.29376),
    (0.38, 3.29758),
    (0.4, 3.30163),
    (0.42, 3.30386),
    (0.44, 3.30511),
    (0.46, 3.30617),
    (0.48, 3.30704),
    (0.5, 3.30815),
    (0.52, 3.30922),
    (0.54, 3.31069),
    (0.56, 3.31238),
    (0.58, 3.31469),
    (0.6, 3.31681),
    (0.62, 3.31926),
    (0.64, 3.32163),
    (0.66, 3.324),
    (0.68, 3.32684),
    (0.7, 3.33034),
    (0.72, 3.33449),
    (0.74, 3.33914),
    (0.76, 3.34244),
    (0.78, 3.34438),
    (0.8, 3.34534),
    (0.82, 3.34641),
    (0.84, 3.34743),
    (0.86, 3.34851),
    (0.88, 3.34971),
    (0.9, 3.35177),
    (0.91, 3.35292),
    (0.92, 3.35484),
    (0.93, 3.3571),
    (0.94, 3.36062),
    (0.95, 3.3658),
    (0.96, 3.37419),
    (0.97, 3.38933),
    (0.98, 3.4182),
    (0.99, 3.4722),
    (1.0, 3.58999),
];

/// Temperature, Celsius, and the ratios of resistance and capacity to those at 25 °C.
///
/// Medians of 1 s steps (part of the fast polarisation is in them), and discharges
/// at C/30 to 2.0 V, of a 2.06 Ah cell: data sets `A123_DYN` and `A123_OCV` of the
/// ESC toolbox (G. Plett, UCCS; MIT licence).
const TEMPERATURE: &[(f64, f64, f64)] = &[
    (-25.0, 12.57, 0.982),
    (-15.0, 6.00, 0.989),
    (-5.0, 2.96, 0.987),
    (5.0, 1.78, 0.991),
    (15.0, 1.257, 0.998),
    (25.0, 1.0, 1.0),
    (35.0, 0.859, 1.002),
    (45.0, 0.771, 1.003),
];
