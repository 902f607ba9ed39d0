//! What is taken where the plan says nothing.
//!
//! Every default stands in its number's row, or in the chemistry's own data, so that
//! the page can list them all under *What was assumed*.

use super::{
    Bank, Draw, Figure, Plan,
    demo::{USUAL_DRAW_W, USUAL_SYSTEM_V},
    path::{LoadField, Path},
};
use crate::physics::battery::nominal::Reading;

impl Plan {
    /// The figure at `path`: stated, or else the default; nothing where a
    /// number is absent by nature (no current limit, no cut-off of the unit).
    #[must_use]
    pub fn figure(&self, path: Path) -> Option<Figure> {
        self.stated(path).or_else(|| self.assumed(path))
    }

    /// The default at `path`, stated or not.
    #[must_use]
    pub fn assumed(&self, path: Path) -> Option<Figure> {
        match path {
            Path::Bank(bank, field) => field.assumed().figure(self.banks.get(bank)?, self),
            Path::Unit(unit, field) => field.assumed().figure(self.units.get(unit)?, self),
            Path::Mode(unit, mode, field) => field.assumed().figure(&(unit, mode), self),
            Path::Load(load) => LoadField::PowerW
                .assumed()
                .figure(self.loads.get(load)?, self),
            Path::Night(field) => field.assumed().figure(&self.night, self),
            Path::Day(field) => field.assumed().figure(&self.day, self),
            Path::Cabin(field) => field.assumed().figure(&self.cabin, self),
            Path::Cooling(unit, field) => field.assumed().figure(self.units.get(unit)?, self),
            Path::Supply(field) => field.assumed().figure(&self.supply, self),
            Path::Array(at, field) => field.assumed().figure(self.supply.arrays.get(at)?, self),
            Path::Charger(at, field) => field.assumed().figure(self.supply.chargers.get(at)?, self),
            Path::ModeRow(at, field) => field.assumed().figure(self.mode_plan.get(at)?, self),
            Path::CheckIn(at, field) => field.assumed().figure(self.check_ins.get(at)?, self),
            Path::MapRow(unit, row, field) => {
                let unit = self.units.get(unit)?;
                field
                    .assumed()
                    .figure(unit.cooling.unit_map.get(row)?, self)
            }
            Path::Claim(at, field) => field.assumed().figure(self.claims.get(at)?, self),
            Path::Air(field) => field.assumed().figure(&self.air, self),
            Path::Price(field) => field.assumed().figure(&self.price, self),
            Path::Wiring(field) => field.assumed().figure(&self.wiring, self),
            Path::Installation(circuit, field) => field.assumed().figure(&circuit, self),
            Path::Banks
            | Path::Chemistry(_)
            | Path::OpenCircuit(_)
            | Path::UnitMap(_)
            | Path::Units
            | Path::Modes(_)
            | Path::Loads
            | Path::Imported
            | Path::Arrays
            | Path::Chargers
            | Path::ModePlan
            | Path::CheckIns
            | Path::Claims => None,
        }
    }

    /// What stands in for a draw in watts that nobody has said.
    pub(super) fn usual_draw_w(&self, unit: usize, mode: usize) -> Option<Figure> {
        match self.mode(unit, mode)?.draw {
            Draw::Power { .. } => Some(Figure::guess(USUAL_DRAW_W)),
            Draw::Current { .. } => None,
        }
    }

    /// The same in amps.
    pub(super) fn usual_draw_a(&self, unit: usize, mode: usize) -> Option<Figure> {
        match self.mode(unit, mode)?.draw {
            Draw::Power { .. } => None,
            Draw::Current { measured_at_v, .. } => {
                Some(Figure::guess(USUAL_DRAW_W / measured_at_v))
            }
        }
    }

    /// Watts of the other loads.
    pub(super) fn loads_w(&self) -> f64 {
        self.loads.iter().map(|load| load.power_w.value).sum()
    }
}

impl Bank {
    /// How the battery's nominal volts are read.
    #[must_use]
    pub fn reading(&self) -> Reading {
        Reading::of(self.chemistry, self.stated_v())
    }

    /// Whether a run of the whole bank says what it holds.
    #[must_use]
    pub fn is_measured(&self) -> bool {
        self.measured.measured_ah.is_some() || self.measured.measured_wh.is_some()
    }

    /// Nominal volts of one battery as somebody says them, or as is usual.
    #[must_use]
    pub fn stated_v(&self) -> f64 {
        self.battery_nominal_v.unwrap_or(USUAL_SYSTEM_V)
    }

    /// Nominal volts of the whole bank, by the reading taken.
    #[must_use]
    pub fn nominal_v(&self) -> f64 {
        self.reading().volts * f64::from(self.series_count)
    }

    pub(super) fn usual_cutoff_v(&self) -> Figure {
        let cells = f64::from(self.reading().cells) * f64::from(self.series_count);
        Figure::guess(self.chemistry.data().cell_cutoff_v * cells)
    }

    /// All that is usual, also beside a resistance that is stated: a label's or a
    /// meter's is an AC or short-pulse value, with no charge transfer or diffusion in
    /// it. Peukert's law has all of lead-acid's.
    pub(super) fn usual_polarisation_percent(&self) -> Option<Figure> {
        (!self.chemistry.is_lead_acid()).then(|| Figure::guess(100.0))
    }

    /// Of one battery, where a fault is reckoned and no resistance is stated.
    #[must_use]
    pub fn least_resistance_mohm(&self) -> f64 {
        let (cells, ah) = (self.reading().cells, self.battery_rated_ah.value);
        self.chemistry.data().least_milliohm(cells, ah)
    }

    pub(super) fn usual_resistance_mohm(&self) -> Figure {
        let (cells, ah) = (self.reading().cells, self.battery_rated_ah.value);
        Figure::guess(self.chemistry.data().battery_milliohm(cells, ah))
    }
}
