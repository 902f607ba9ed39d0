//! What labels, instruments and guesses are usually worth.
//!
//! All of it is our judgement (common practice, no source), to be replaced by a
//! spread of one's own on any number.

use crate::plan::{
    Figure, Provenance,
    cabin::CabinField as C,
    cooling::CoolingField as K,
    day::{CheckInField as I, DayField as D},
    path::{BankField as B, ModeField as M, Path, UnitField as U},
    supply::{ArrayField as A, ChargerField as G, SupplyField as S},
};

/// Half-widths at two standard deviations: by the label, measured, guessed.
type Widths = (f64, f64, f64);

/// How a usual width is meant.
enum Usual {
    /// As a share of the value, per cent.
    Share(Widths),
    /// In the unit of the number: temperatures have no shares.
    Units(Widths),
    None,
}

fn of(widths: Widths, from: Provenance) -> f64 {
    match from {
        Provenance::Label => widths.0,
        Provenance::Measured => widths.1,
        Provenance::Guess => widths.2,
    }
}

/// Half-width of a figure in its own unit, at two standard deviations: its own
/// spread, or the usual for its kind and origin.
#[must_use]
pub fn half_width(path: Path, figure: Figure) -> f64 {
    let share = |percent: f64| percent / 100.0 * figure.value.abs();
    match (figure.spread_percent, usual(path)) {
        (Some(percent), _) => share(percent),
        (None, Usual::Share(widths)) => share(of(widths, figure.from)),
        (None, Usual::Units(widths)) => of(widths, figure.from),
        (None, Usual::None) => 0.0,
    }
}

/// The usual spread as a share of the value, where it is one.
pub(super) fn usual_percent(path: Path, from: Provenance) -> f64 {
    match usual(path) {
        Usual::Share(widths) => of(widths, from),
        Usual::Units(_) | Usual::None => 0.0,
    }
}

fn usual(path: Path) -> Usual {
    match path {
        Path::Bank(_, field) => bank(field),
        // A mode's draw wanders with the heat outside: a label says least of it.
        Path::Mode(_, _, M::PowerW | M::CurrentA) => Usual::Share((15.0, 4.0, 20.0)),
        Path::Mode(_, _, M::DutyPercent) => Usual::Share((15.0, 5.0, 25.0)),
        Path::Mode(_, _, M::StandbyW) | Path::Load(_) => Usual::Share((15.0, 4.0, 25.0)),
        Path::Mode(_, _, M::CoolingW) => Usual::Share((10.0, 5.0, 20.0)),
        Path::Unit(_, field) => unit(field),
        Path::Day(field) => day(field),
        Path::Cabin(field) => cabin(field),
        Path::Cooling(_, field) => cooling(field),
        Path::Supply(field) => supply(field),
        Path::Array(_, A::RatedW) => Usual::Share((5.0, 3.0, 10.0)),
        Path::Array(_, A::ShadingPercent) => Usual::Units((5.0, 3.0, 6.0)),
        Path::Charger(_, G::MostA) => Usual::Share((5.0, 2.0, 15.0)),
        Path::Charger(_, G::SourceW) => Usual::Share((5.0, 2.0, 15.0)),
        Path::Charger(_, G::EfficiencyPercent) => Usual::Share((3.0, 1.0, 5.0)),
        Path::Charger(_, G::FuelL) => Usual::Share((3.0, 2.0, 10.0)),
        Path::Charger(_, G::FuelLPerKwh) => Usual::Share((15.0, 5.0, 30.0)),
        Path::CheckIn(_, I::ChargePercent) => Usual::Units((3.0, 3.0, 10.0)),
        Path::CheckIn(_, I::CabinC) => Usual::Units((1.0, 1.0, 3.0)),
        _ => Usual::None,
    }
}

fn bank(field: B) -> Usual {
    Usual::Share(match field {
        B::BatteryRatedAh | B::MeasuredAh | B::MeasuredWh => (5.0, 2.0, 10.0),
        B::HealthPercent => (5.0, 3.0, 5.0),
        B::StartChargePercent => (3.0, 2.0, 3.0),
        B::BatteryResistanceMohm => (30.0, 15.0, 50.0),
        B::PeukertExponent => (4.0, 2.0, 5.0),
        B::ParasiticW => (30.0, 10.0, 80.0),
        B::CutoffV => (2.0, 1.0, 3.0),
        _ => return Usual::None,
    })
}

fn unit(field: U) -> Usual {
    Usual::Share(match field {
        // Named, it is that one.
        U::CableAreaMm2 => (0.0, 0.0, 50.0),
        U::EfficiencyPercent => (2.0, 1.0, 4.0),
        U::IdleW | U::NoLoadW => (20.0, 5.0, 50.0),
        U::ProportionalLossPercent | U::SquareLossPercentPerKw => (20.0, 10.0, 50.0),
        U::CutoffV | U::InverterCutoffV => (2.0, 1.0, 3.0),
        _ => return Usual::None,
    })
}

/// The label of a day is its forecast.
fn day(field: D) -> Usual {
    match field {
        D::HighC | D::LowC => Usual::Units((2.0, 0.5, 3.0)),
        D::DewPointC => Usual::Units((2.0, 1.0, 4.0)),
        D::HumidityPercent => Usual::Units((8.0, 4.0, 12.0)),
        D::CloudPercent => Usual::Units((25.0, 15.0, 30.0)),
        D::LinkeTurbidity => Usual::Share((20.0, 10.0, 30.0)),
        D::WindMS => Usual::Share((40.0, 20.0, 60.0)),
        _ => Usual::None,
    }
}

fn cabin(field: C) -> Usual {
    match field {
        C::ShadePercent => Usual::Units((10.0, 5.0, 10.0)),
        C::StartC => Usual::Units((2.0, 1.0, 4.0)),
        C::AnimalKg => Usual::Share((5.0, 2.0, 20.0)),
        C::AirChangesPerH | C::AiredChangesPerH => Usual::Share((30.0, 15.0, 50.0)),
        C::GainsW => Usual::Share((15.0, 5.0, 25.0)),
        C::FloorM2 | C::VolumeM3 | C::RoofM2 | C::WallsM2 => Usual::Share((3.0, 2.0, 8.0)),
        C::WallGlassM2 | C::RoofGlassM2 => Usual::Share((3.0, 2.0, 25.0)),
        C::LitWallsPercent => Usual::Share((10.0, 5.0, 15.0)),
        C::ShellWM2K => Usual::Share((15.0, 8.0, 30.0)),
        C::GlassWM2K => Usual::Share((10.0, 8.0, 20.0)),
        C::GlassGainPercent => Usual::Share((10.0, 8.0, 30.0)),
        C::AbsorptancePercent => Usual::Share((10.0, 5.0, 20.0)),
        C::AirCapacityKjK | C::ShellCapacityKjK => Usual::Share((20.0, 10.0, 40.0)),
        C::MoistureBuffer => Usual::Share((30.0, 20.0, 60.0)),
        _ => Usual::None,
    }
}

fn cooling(field: K) -> Usual {
    match field {
        // The mode's own cooling is spread; that of the unit is in it.
        K::FloorPercent => Usual::Share((10.0, 5.0, 30.0)),
        K::AirflowM3H => Usual::Share((15.0, 8.0, 25.0)),
        K::SensiblePercent => Usual::Share((5.0, 3.0, 8.0)),
        K::IntakeRiseK => Usual::Units((1.0, 0.5, 2.0)),
        _ => Usual::None,
    }
}

fn supply(field: S) -> Usual {
    match field {
        S::ControllerEfficiencyPercent => Usual::Share((2.0, 1.0, 3.0)),
        S::PanelPowerPercentPerK | S::PanelVoltsPercentPerK => Usual::Share((5.0, 3.0, 15.0)),
        S::ArrayLossPercent => Usual::Share((20.0, 15.0, 40.0)),
        S::BankC => Usual::Units((2.0, 1.0, 4.0)),
        S::RefillFromPercent => Usual::Units((3.0, 3.0, 10.0)),
        _ => Usual::None,
    }
}
