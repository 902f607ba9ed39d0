//! The chemistries and what is usual for each.
//!
//! These are defaults for a bank that states no more than its chemistry. Each
//! can be replaced in the plan, down to the open-circuit table itself.

use super::curve::Curve;
use super::tables;
use serde::{Deserialize, Serialize};

/// What the cells are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Chemistry {
    /// Lithium iron phosphate.
    Lfp,
    /// Lithium nickel manganese cobalt oxide.
    Nmc,
    SodiumIon,
    /// Lead-acid in absorbent glass mat.
    Agm,
    /// Lead-acid with gelled electrolyte.
    Gel,
    /// Lead-acid with liquid electrolyte.
    Flooded,
}

/// What is usual for a chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kind {
    pub cell_nominal_v: f64,
    /// Cells that make a "12", "24", "36" and "48 V" system.
    pub system_cells: [u32; 4],
    /// The hours over which its makers count the rated Ah.
    pub rated_hours: f64,
    /// Peukert's exponent; 1 where capacity hardly depends on current.
    pub peukert_exponent: f64,
    /// Volts a cell at which its electronics open, or its rating ends.
    pub cell_cutoff_v: f64,
    /// How far down it is usually taken.
    pub usual_depth_percent: f64,
    /// Resistance of a cell times its Ah.
    cell_milliohm_ah: f64,
    /// Electronics, bars and terminals of a battery.
    battery_extra_milliohm: f64,
    /// Electronics and monitor of a bank.
    pub parasitic_w: f64,
    /// Open-circuit volts of a cell against charge.
    cell_open_circuit: &'static [(f64, f64)],
    /// Whether the table was measured on cells, rather than typical.
    pub curve_is_measured: bool,
}

impl Kind {
    /// Resistance of one battery in milliohms, from its cells and its Ah.
    #[must_use]
    pub fn battery_milliohm(&self, cells: u32, ah: f64) -> f64 {
        f64::from(cells) * self.cell_milliohm_ah / ah + self.battery_extra_milliohm
    }

    /// Open-circuit volts of so many cells in series.
    ///
    /// # Panics
    /// Never: the tables are checked by a test of this room.
    #[must_use]
    pub fn curve(&self, cells: f64) -> Curve {
        let cell = Curve::new(self.cell_open_circuit).expect("the tables are in order");
        cell.scaled(cells, 0.0)
    }
}

impl Chemistry {
    pub const ALL: [Self; 6] = [
        Self::Lfp,
        Self::Nmc,
        Self::SodiumIon,
        Self::Agm,
        Self::Gel,
        Self::Flooded,
    ];

    /// As JSON writes it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Lfp => "lfp",
            Self::Nmc => "nmc",
            Self::SodiumIon => "sodium_ion",
            Self::Agm => "agm",
            Self::Gel => "gel",
            Self::Flooded => "flooded",
        }
    }

    #[must_use]
    pub const fn is_lead_acid(self) -> bool {
        matches!(self, Self::Agm | Self::Gel | Self::Flooded)
    }

    /// What is usual for it.
    ///
    /// Sources: Peukert's exponents are the middles of the ranges in common
    /// encyclopaedias (AGM 1.05 to 1.15, gel 1.1 to 1.25, flooded 1.2 to 1.6
    /// with 1.1 to 1.3 called typical); lithium near 1 by Doerffel & Sharkh
    /// 2006. Resistances: LFP from measured 1 s steps on a cell (9.8 mΩ at
    /// 2.06 Ah, 25 °C, an upper estimate); the others, the cut-offs and the
    /// depths are common practice, no source.
    #[must_use]
    pub const fn data(self) -> Kind {
        match self {
            Self::Lfp => Kind {
                cell_nominal_v: 3.2,
                system_cells: [4, 8, 12, 16],
                rated_hours: 5.0,
                peukert_exponent: 1.0,
                cell_cutoff_v: 2.5,
                usual_depth_percent: 90.0,
                cell_milliohm_ah: 20.0,
                battery_extra_milliohm: 2.0,
                parasitic_w: 0.5,
                cell_open_circuit: tables::LFP,
                curve_is_measured: true,
            },
            Self::Nmc => Kind {
                cell_nominal_v: 3.6,
                system_cells: [3, 7, 10, 14],
                rated_hours: 5.0,
                peukert_exponent: 1.0,
                cell_cutoff_v: 3.0,
                usual_depth_percent: 80.0,
                cell_milliohm_ah: 60.0,
                battery_extra_milliohm: 2.0,
                parasitic_w: 0.5,
                cell_open_circuit: tables::NMC,
                curve_is_measured: false,
            },
            Self::SodiumIon => Kind {
                cell_nominal_v: 3.1,
                system_cells: [4, 8, 12, 16],
                rated_hours: 5.0,
                peukert_exponent: 1.0,
                cell_cutoff_v: 2.0,
                usual_depth_percent: 90.0,
                cell_milliohm_ah: 60.0,
                battery_extra_milliohm: 2.0,
                parasitic_w: 0.5,
                cell_open_circuit: tables::SODIUM_ION,
                curve_is_measured: false,
            },
            Self::Agm => lead_acid(1.10, 80.0, tables::AGM),
            Self::Gel => lead_acid(1.15, 110.0, tables::GEL),
            Self::Flooded => lead_acid(1.20, 130.0, tables::FLOODED),
        }
    }
}

const fn lead_acid(
    peukert_exponent: f64,
    cell_milliohm_ah: f64,
    cell_open_circuit: &'static [(f64, f64)],
) -> Kind {
    Kind {
        cell_nominal_v: 2.0,
        system_cells: [6, 12, 18, 24],
        rated_hours: 20.0,
        peukert_exponent,
        cell_cutoff_v: 1.75,
        usual_depth_percent: 50.0,
        cell_milliohm_ah,
        battery_extra_milliohm: 0.5,
        parasitic_w: 0.2,
        cell_open_circuit,
        curve_is_measured: false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_table_is_a_curve_above_its_cut_off_when_full() {
        for chemistry in Chemistry::ALL {
            let kind = chemistry.data();
            assert!(
                kind.curve(1.0).at(1.0) > kind.cell_cutoff_v,
                "{chemistry:?}"
            );
            assert!(
                kind.curve(1.0).at(0.5) > kind.cell_nominal_v * 0.95,
                "{chemistry:?}"
            );
        }
    }
}
