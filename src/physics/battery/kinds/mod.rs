//! The chemistries, a file of data for each.
//!
//! These are defaults for a bank that states no more than its chemistry. Each
//! can be replaced in the plan, down to the open-circuit table itself. A new one is a
//! file with a [`Kind`] and a line in the list below.

use super::{curve::Curve, polarisation::Rates};
use serde::{Deserialize, Serialize};

mod lead_acid;

/// Declares the list: a variant, its file (which is its name in JSON too), its words.
macro_rules! chemistries {
    ($($(#[$doc:meta])* $name:ident = $file:ident,)+) => {
        $(mod $file;)+

        /// What the cells are made of.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(rename_all = "snake_case")]
        pub enum Chemistry {
            $($(#[$doc])* $name,)+
        }

        impl Chemistry {
            pub const ALL: [Self; [$(stringify!($file)),+].len()] = [$(Self::$name),+];

            /// As JSON writes it.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self {
                    $(Self::$name => stringify!($file),)+
                }
            }

            /// What is said of it.
            #[must_use]
            pub const fn data(self) -> &'static Kind {
                match self {
                    $(Self::$name => &$file::KIND,)+
                }
            }
        }
    };
}

chemistries! {
    /// Lithium iron phosphate.
    Lfp = lfp,
    /// Lithium nickel manganese cobalt oxide.
    Nmc = nmc,
    SodiumIon = sodium_ion,
    /// Lead-acid in absorbent glass mat.
    Agm = agm,
    /// Lead-acid with gelled electrolyte.
    Gel = gel,
    /// Lead-acid with liquid electrolyte.
    Flooded = flooded,
}

/// What is usual for a chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kind {
    pub is_lead_acid: bool,
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
    /// Electronics, bars and terminals of a battery, and its leads to the common bar.
    /// A bare cell has none.
    battery_extra_milliohm: f64,
    /// The same at the least, where a fault is reckoned.
    battery_least_milliohm: f64,
    /// What it drops beyond its resistance, growing with the rate.
    pub rates: Rates,
    /// Electronics and monitor of a bank.
    pub parasitic_w: f64,
    /// Open-circuit volts of a cell against charge (0 to 1), at 25 °C, at rest.
    cell_open_circuit: &'static [(f64, f64)],
    /// Whether the table was measured on cells, rather than typical.
    pub curve_is_measured: bool,
    pub temperature: TemperatureResponse,
    pub charging: Charging,
    /// How it gasses while it is charged; lithium does not.
    pub gassing: Option<Gassing>,
    /// Watt-hours in a kilogram of batteries, case and electronics in it.
    pub wh_per_kg: f64,
}

/// What temperature does to a chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TemperatureResponse {
    /// Rows of Celsius, ratio of resistance and ratio of capacity.
    Measured(&'static [(f64, f64, f64)]),
    /// As the standards of lead-acid have it.
    LeadAcid,
    /// Nothing is known: nothing changes.
    NotMeasured,
}

/// How a chemistry is charged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charging {
    /// Volts a cell that chargers hold at the end.
    pub hold_cell_v: f64,
    /// Highest volts a cell sees.
    pub most_cell_v: f64,
    /// Temperatures at which it may be charged at all, Celsius.
    pub between_c: (f64, f64),
    /// Usual most current: of the amps that would fill it in an hour.
    pub usual_rate: f64,
    /// Of the charge put in, what can be drawn again.
    pub kept: f64,
    /// The bank's current at which it is called full, of the amps that would fill
    /// it in an hour.
    pub end_share: f64,
}

/// The end of charging of lithium and sodium: common practice, no source, between one
/// and five hundredths.
const LITHIUM_END_SHARE: f64 = 0.02;

/// How cells are closed, which says how much they gas.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gassing {
    Vented,
    Sealed,
}

impl Kind {
    /// Resistance of one battery in milliohms, from its cells and its Ah.
    #[must_use]
    pub fn battery_milliohm(&self, cells: u32, ah: f64) -> f64 {
        self.with_extra(cells, ah, self.battery_extra_milliohm)
    }

    /// The same between its own terminals and no more: what a fault current meets.
    #[must_use]
    pub fn least_milliohm(&self, cells: u32, ah: f64) -> f64 {
        self.with_extra(cells, ah, self.battery_least_milliohm)
    }

    fn with_extra(&self, cells: u32, ah: f64, extra_milliohm: f64) -> f64 {
        let extra = if cells > 1 { extra_milliohm } else { 0.0 };
        f64::from(cells) * self.cell_milliohm_ah / ah + extra
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
    #[must_use]
    pub const fn is_lead_acid(self) -> bool {
        self.data().is_lead_acid
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

    #[test]
    fn a_file_is_named_as_json_names_it() {
        for chemistry in Chemistry::ALL {
            let json = serde_json::to_value(chemistry).unwrap();
            assert_eq!(json, chemistry.key());
        }
    }
}
