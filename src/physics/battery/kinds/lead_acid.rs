//! What all lead-acid batteries have in common: no kind of its own.

use super::{Charging, Gassing, Kind, Rates, TemperatureResponse};

/// Cut-off, depth, charging and energy by mass are common practice, no source.
///
/// Open-circuit volts are the electrolyte's specific gravity plus about 0.845 (common
/// practice, no source), and fall in step with the charge. Specific gravity of flooded
/// cells at full and at a quarter: 1.280 and 1.160, in US Army TM 10-6140-200-14,
/// table 1-1; sealed cells are filled stronger.
pub const COMMON: Kind = Kind {
    is_lead_acid: true,
    cell_nominal_v: 2.0,
    system_cells: [6, 12, 18, 24],
    rated_hours: 20.0,
    peukert_exponent: 1.0,
    cell_cutoff_v: 1.75,
    usual_depth_percent: 50.0,
    cell_milliohm_ah: 0.0,
    battery_extra_milliohm: 0.5,
    battery_least_milliohm: 0.5,
    rates: Rates::Peukert,
    parasitic_w: 0.2,
    cell_open_circuit: &[],
    curve_is_measured: false,
    temperature: TemperatureResponse::LeadAcid,
    charging: Charging {
        hold_cell_v: 2.40,
        most_cell_v: 2.45,
        between_c: (-20.0, 50.0),
        // More makes it gas.
        usual_rate: 0.2,
        kept: 0.9,
        // It is held until hardly anything goes in: between half a hundredth and two.
        end_share: 0.005,
    },
    gassing: Some(Gassing::Sealed),
    wh_per_kg: 38.0,
};
