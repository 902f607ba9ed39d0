//! What is taken where the plan says nothing.
//!
//! Every default stands here or in the chemistry's own data, so that the page
//! can list them all under *What was assumed*.

use super::{
    Bank, CheckIn, Figure, Plan, Supply,
    cabin::CabinField,
    path::{BankField as B, ModeField as M, Path, UnitField as U},
    wiring::USUAL_MM2,
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
            Path::Bank(bank, field) => self.banks.get(bank)?.assumed(field),
            // Left out they are no guess: a mode's watts are then its mean.
            Path::Mode(_, _, M::DutyPercent) => Some(Figure::exact(100.0)),
            Path::Mode(_, _, M::StandbyW) => Some(Figure::exact(0.0)),
            Path::Mode(unit, mode, M::CoolingW) => self
                .units
                .get(unit)?
                .assumed_mode_cooling_w(mode)
                .map(Figure::guess),
            Path::Day(field) => self.day.assumed(field),
            Path::Cabin(CabinField::GainsW) => Some(Figure::guess(
                self.loads.iter().map(|load| load.power_w.value).sum(),
            )),
            Path::Cabin(field) => self.cabin.assumed(field),
            Path::Cooling(unit, field) => self.units.get(unit)?.assumed_cooling(field),
            Path::Supply(field) => Supply::assumed(field),
            Path::Array(at, field) => self.supply.arrays.get(at)?.assumed(field),
            Path::Charger(at, field) => self.supply.chargers.get(at)?.assumed(field),
            Path::CheckIn(_, field) => CheckIn::assumed(field),
            Path::Claim(_, field) => super::Claim::assumed(field),
            Path::Price(field) => super::Price::assumed(field),
            Path::Wiring(field) => self.assumed_wiring(field),
            Path::Installation(circuit, field) => self.assumed_installation(circuit, field),
            Path::ModeRow(..) => Some(Figure::exact(f64::from(self.night.start_clock_min))),
            Path::Unit(unit, U::CableAreaMm2) => {
                self.units.get(unit)?;
                Some(Figure::guess(USUAL_MM2))
            }
            Path::Unit(unit, U::SupplyV) => {
                self.units.get(unit)?;
                self.banks
                    .first()
                    .map(|bank| Figure::guess(bank.nominal_v()))
            }
            _ => None,
        }
    }
}

impl Bank {
    /// How the battery's nominal volts are read.
    #[must_use]
    pub fn reading(&self) -> Reading {
        Reading::of(self.chemistry, self.battery_nominal_v)
    }

    /// Nominal volts of the whole bank, by the reading taken.
    #[must_use]
    pub fn nominal_v(&self) -> f64 {
        self.reading().volts * f64::from(self.series_count)
    }

    /// The default of one of the bank's numbers, by its chemistry.
    #[must_use]
    pub fn assumed(&self, field: B) -> Option<Figure> {
        let kind = self.chemistry.data();
        let cells = f64::from(self.reading().cells);
        Some(match field {
            B::RatedHoursH => Figure::label(kind.rated_hours),
            B::HealthPercent | B::StartChargePercent => Figure::guess(100.0),
            B::DepthPercent => Figure::label(kind.usual_depth_percent),
            B::CutoffV => Figure::guess(kind.cell_cutoff_v * cells * f64::from(self.series_count)),
            B::BatteryResistanceMohm => Figure::guess(
                kind.battery_milliohm(self.reading().cells, self.battery_rated_ah.value),
            ),
            B::PeukertExponent => Figure::guess(kind.peukert_exponent),
            B::ParasiticW => Figure::guess(kind.parasitic_w),
            _ => return None,
        })
    }
}
