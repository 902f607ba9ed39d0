//! What a bank drops under a steady current beyond its resistance.
//!
//! Three parts, settled (minutes, not seconds), on discharge:
//!
//! - **charge transfer**, `2RT/F asinh(I / exchange current)`: the Butler-Volmer
//!   equation with a symmetry factor of a half (Newman & Balsara, *Electrochemical
//!   Systems*, 4th ed., chapter 8, from memory). Steep at small currents, nearly flat
//!   at large ones;
//! - **a gap** between slow discharge and the curve taken at rest, which is there at
//!   any current worth the name (hysteresis of lithium iron phosphate);
//! - **a lag**: at the surface of the grains less charge is left than in their mean, by
//!   as much as the current is large. The steady state of diffusion in a sphere. It
//!   takes from the capacity, as the cut-off is met earlier.
//!
//! Cold makes exchange and diffusion slower as it makes the resistance larger. Charging
//! is taken by the resistance alone.

/// Twice RT/F at 25 °C.
const TAFEL_V: f64 = 0.0514;
/// Current at which half of the gap is there, as a share of the exchange current.
const GAP_SHARE: f64 = 0.01;
/// Cold slows charge transfer by this power of what it makes the resistance larger: by
/// drops of a cell after 12 minutes at eight temperatures from -25 to 45 °C.
const EXCHANGE_POWER: f64 = 1.5;
/// Of chemistries without a measurement: as much of the measured ones' as the spread
/// goes above the likely.
const UNMEASURED_SLOPE: f64 = 2.5;

/// What a chemistry drops beyond its resistance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rates {
    /// As measured on a cell.
    Measured(CellPolarisation),
    /// Peukert's law has all of it.
    Peukert,
    /// Nothing is known: none is taken, and the spread makes room for it.
    NotMeasured,
}

/// Of one cell, by the hour-rate of its current.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CellPolarisation {
    pub gap_v: f64,
    /// Exchange current over the Ah of the cell.
    pub exchange_per_h: f64,
    /// Resistance that shows after seconds, times Ah.
    pub milliohm_ah: f64,
    /// Charge that the surface is short of, over the current: hours.
    pub lag_h: f64,
    /// Highest rate that was measured.
    pub to_per_h: f64,
}

/// What stands for a chemistry of which nothing was measured, above the likely: as much
/// as of lithium that was.
const UNMEASURED: CellPolarisation = CellPolarisation {
    gap_v: 0.023,
    exchange_per_h: 0.5,
    milliohm_ah: 30.0,
    lag_h: 0.085,
    to_per_h: 0.0,
};

/// Of a whole bank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Polarisation {
    pub ohm: f64,
    pub tafel_v: f64,
    pub exchange_a: f64,
    pub gap_v: f64,
    pub gap_a: f64,
    /// Share of the cells' charge that the surface is short of, for each ampere.
    pub lag_per_a: f64,
}

impl Rates {
    /// Of a bank of so many cells in series and rated Ah, with a share of what is
    /// usual; nothing where there is none.
    #[must_use]
    pub fn of_bank(&self, cells: f64, ah: f64, share: f64) -> Option<Polarisation> {
        let (cell, share) = match self {
            Self::Measured(cell) => (*cell, share),
            Self::Peukert => return None,
            Self::NotMeasured => (UNMEASURED, UNMEASURED_SLOPE * (share - 1.0).max(0.0)),
        };
        let exchange_a = cell.exchange_per_h * ah;
        (share > 0.0 && ah > 0.0).then_some(Polarisation {
            ohm: share * cells * cell.milliohm_ah / 1000.0 / ah,
            tafel_v: share * cells * TAFEL_V,
            exchange_a,
            gap_v: share * cells * cell.gap_v,
            gap_a: GAP_SHARE * exchange_a,
            lag_per_a: share * cell.lag_h / ah,
        })
    }

    /// Rate up to which something was measured, 1/h; nothing for Peukert's law.
    #[must_use]
    pub fn measured_to_per_h(&self) -> Option<f64> {
        match self {
            Self::Measured(cell) => Some(cell.to_per_h),
            Self::Peukert => None,
            Self::NotMeasured => Some(0.0),
        }
    }
}

impl Polarisation {
    /// Of so many times as many batteries side by side.
    #[must_use]
    pub fn times(self, strings: f64) -> Self {
        Self {
            ohm: self.ohm / strings,
            exchange_a: self.exchange_a * strings,
            gap_a: self.gap_a * strings,
            lag_per_a: self.lag_per_a / strings,
            ..self
        }
    }

    /// The same where the resistance is so many times as large, by the temperature.
    #[must_use]
    pub fn at_ohm_ratio(self, ratio: f64) -> Self {
        Self {
            ohm: self.ohm * ratio,
            exchange_a: self.exchange_a / ratio.powf(EXCHANGE_POWER),
            lag_per_a: self.lag_per_a * ratio,
            ..self
        }
    }
}
