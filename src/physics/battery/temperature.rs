//! What warmth does to a bank: its resistance, and what it gives before it is empty.
//!
//! Ratios to the same bank at 25 °C (lead-acid capacity: at 20 °C). Where nothing
//! was measured on a chemistry the ratio is 1.

use super::{Chemistry, TemperatureResponse};

/// Resistance and capacity over those at the temperature they are stated for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureEffects {
    pub ohm_ratio: f64,
    pub capacity_ratio: f64,
}

/// Change of lead-acid's capacity by the kelvin from 20 °C: of slow discharges (10
/// hours and more), and of fast ones (3 hours and less). IEC 60896-11:2002, clause
/// 14, from memory; GB/T texts of the same family in print have it so.
const LEAD_PER_K: (f64, f64) = (0.006, 0.010);
const LEAD_HOURS: (f64, f64) = (10.0, 3.0);
/// Below this the standard's straight line, made to put tests in mild air right,
/// promises too much: from here on it falls as measured in the cold.
const LEAD_COLD_C: f64 = 0.0;
/// Of what is given at 0 °C, the share lost by the kelvin: 75 % of a warm battery's
/// capacity at 0 °C (32 °F) and 40 % at -17.8 °C (0 °F), at the 6-hour rate (US Army
/// TM 10-6140-200-14, 1-9).
const LEAD_COLD_PER_K: f64 = (1.0 - 40.0 / 75.0) / 17.8;
/// Less than this is not said of any cold.
const LEAST_CAPACITY: f64 = 0.3;

impl TemperatureEffects {
    /// As stated: nothing changes.
    pub const NONE: Self = Self {
        ohm_ratio: 1.0,
        capacity_ratio: 1.0,
    };

    /// Of a chemistry at a temperature (Celsius; beyond the tables, their end),
    /// for a discharge that takes so many hours from full to empty.
    #[must_use]
    pub fn of(chemistry: Chemistry, bank_c: f64, hours: f64) -> Self {
        match chemistry.data().temperature {
            TemperatureResponse::Measured(rows) => measured(rows, bank_c),
            TemperatureResponse::LeadAcid => Self {
                ohm_ratio: 1.0,
                capacity_ratio: lead_acid(bank_c, hours),
            },
            TemperatureResponse::NotMeasured => Self::NONE,
        }
    }
}

/// Between the rows the logarithm of the resistance is straight.
fn measured(rows: &[(f64, f64, f64)], bank_c: f64) -> TemperatureEffects {
    let upper = rows
        .partition_point(|row| row.0 < bank_c)
        .max(1)
        .min(rows.len() - 1);
    let (a, b) = (rows[upper - 1], rows[upper]);
    let share = ((bank_c - a.0) / (b.0 - a.0)).clamp(0.0, 1.0);
    TemperatureEffects {
        ohm_ratio: a.1 * (b.1 / a.1).powf(share),
        capacity_ratio: a.2 + share * (b.2 - a.2),
    }
}

/// Between the two rates by the logarithm of the hours.
fn lead_acid(bank_c: f64, hours: f64) -> f64 {
    let (slow, fast) = LEAD_HOURS;
    let hours = hours.max(fast).min(slow);
    let share = (slow / hours).ln() / (slow / fast).ln();
    let per_k = LEAD_PER_K.0 + share * (LEAD_PER_K.1 - LEAD_PER_K.0);
    let mild = 1.0 + per_k * (bank_c.max(LEAD_COLD_C) - 20.0);
    let colder_k = (LEAD_COLD_C - bank_c).max(0.0);
    (mild * (1.0 - LEAD_COLD_PER_K * colder_k)).max(LEAST_CAPACITY)
}
