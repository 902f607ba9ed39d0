//! Names of the plan's fields and lists: a line each.

use crate::plan::{
    Path,
    path::{BankField as B, ModeField as M, NightField as N, UnitField as U},
};
use crate::text::{Formatter, m};

mod claims;
mod day;
mod wiring;

/// What a field is called, and a line under it where that alone may be misread
/// (else empty).
type Words = [&'static str; 2];

const fn plain(label: &'static str) -> Words {
    [label, ""]
}

/// What a field is called.
#[must_use]
pub fn field_label(f: Formatter, path: Path) -> &'static str {
    words(f, path)[0]
}

/// A line under the field, where the label alone may be misread.
#[must_use]
pub fn field_hint(f: Formatter, path: Path) -> &'static str {
    words(f, path)[1]
}

fn words(f: Formatter, path: Path) -> Words {
    match path {
        Path::Bank(_, field) => bank(f, field),
        Path::Unit(_, field) => unit(f, field),
        Path::Mode(_, _, field) => mode(f, field),
        Path::Night(field) => night(f, field),
        Path::Load(_) => plain(f.say(m::LoadPowerW)),
        Path::Day(field) => day::day(f, field),
        Path::Cabin(field) => day::cabin(f, field),
        Path::Cooling(_, field) => day::cooling(f, field),
        Path::Supply(field) => day::supply(f, field),
        Path::Array(_, field) => day::array(f, field),
        Path::Charger(_, field) => day::charger(f, field),
        Path::ModeRow(_, field) => day::mode_row(f, field),
        Path::CheckIn(_, field) => day::check_in(f, field),
        Path::MapRow(_, _, field) => day::map_row(f, field),
        Path::Claim(_, field) => claims::claim(f, field),
        Path::Air(field) => claims::air(f, field),
        Path::Price(field) => claims::price(f, field),
        Path::Wiring(field) => wiring::wiring(f, field),
        Path::Installation(_, field) => wiring::installation(f, field),
        Path::Banks => plain(f.say(m::ListsBanks)),
        Path::Chemistry(_) => plain(f.say(m::Chemistry)),
        Path::OpenCircuit(_) => plain(f.say(m::ListsOpenCircuit)),
        Path::UnitMap(_) => [f.say(m::ListsUnitMap), f.say(m::ListsUnitMapHint)],
        Path::Units => plain(f.say(m::ListsUnits)),
        Path::Modes(_) => plain(f.say(m::ListsModes)),
        Path::Loads => plain(f.say(m::ListsLoads)),
        Path::Imported => plain(f.say(m::ListsImported)),
        Path::Arrays => plain(f.say(m::ListsArrays)),
        Path::Chargers => plain(f.say(m::ListsChargers)),
        Path::ModePlan => plain(f.say(m::ListsModePlan)),
        Path::CheckIns => plain(f.say(m::ListsCheckIns)),
        Path::Claims => plain(f.say(m::ListsClaims)),
    }
}

fn bank(f: Formatter, field: B) -> Words {
    match field {
        B::BatteryNominalV => plain(f.say(m::BankBatteryNominalV)),
        B::BatteryRatedAh => [
            f.say(m::BankBatteryRatedAh),
            f.say(m::BankBatteryRatedAhHint),
        ],
        B::RatedHoursH => [f.say(m::BankRatedHoursH), f.say(m::BankRatedHoursHHint)],
        B::SeriesCount => plain(f.say(m::BankSeriesCount)),
        B::ParallelCount => plain(f.say(m::BankParallelCount)),
        B::HealthPercent => plain(f.say(m::BankHealthPercent)),
        B::StartChargePercent => plain(f.say(m::BankStartChargePercent)),
        B::DepthPercent => [f.say(m::BankDepthPercent), f.say(m::BankDepthPercentHint)],
        B::CutoffV => [f.say(m::BankCutoffV), f.say(m::BankCutoffVHint)],
        B::BatteryCurrentLimitA => [
            f.say(m::BankBatteryCurrentLimitA),
            f.say(m::BankBatteryCurrentLimitAHint),
        ],
        B::BatteryResistanceMohm => plain(f.say(m::BankBatteryResistanceMohm)),
        B::PolarisationPercent => [
            f.say(m::BankPolarisationPercent),
            f.say(m::BankPolarisationPercentHint),
        ],
        B::PeukertExponent => plain(f.say(m::BankPeukertExponent)),
        B::ParasiticW => plain(f.say(m::BankParasiticW)),
        B::MeasuredAh => [f.say(m::BankMeasuredAh), f.say(m::BankMeasuredAhHint)],
        B::MeasuredWh => [f.say(m::BankMeasuredWh), f.say(m::BankMeasuredWhHint)],
        B::MeasuredLoadW => plain(f.say(m::BankMeasuredLoadW)),
    }
}

fn unit(f: Formatter, field: U) -> Words {
    match field {
        U::SupplyV => plain(f.say(m::UnitSupplyV)),
        U::CutoffV => [f.say(m::UnitCutoffV), f.say(m::UnitCutoffVHint)],
        U::CableLengthM => plain(f.say(m::UnitCableLengthM)),
        U::CableAreaMm2 => [f.say(m::UnitCableAreaMm2), f.say(m::UnitCableAreaMm2Hint)],
        U::CableTemperatureC => plain(f.say(m::UnitCableTemperatureC)),
        U::ConnectionsMohm => plain(f.say(m::UnitConnectionsMohm)),
        U::OutputV => plain(f.say(m::UnitOutputV)),
        U::EfficiencyPercent => plain(f.say(m::UnitEfficiencyPercent)),
        U::IdleW => plain(f.say(m::UnitIdleW)),
        U::LimitA => plain(f.say(m::UnitLimitA)),
        U::NoLoadW => plain(f.say(m::UnitNoLoadW)),
        U::ProportionalLossPercent => plain(f.say(m::UnitProportionalLossPercent)),
        U::SquareLossPercentPerKw => plain(f.say(m::UnitSquareLossPercentPerKw)),
        U::LimitW => plain(f.say(m::UnitLimitW)),
        U::InverterCutoffV => [
            f.say(m::UnitInverterCutoffV),
            f.say(m::UnitInverterCutoffVHint),
        ],
    }
}

fn mode(f: Formatter, field: M) -> Words {
    match field {
        M::PowerW => [f.say(m::ModePowerW), f.say(m::ModePowerWHint)],
        M::CurrentA => [f.say(m::ModeCurrentA), f.say(m::ModeCurrentAHint)],
        M::MeasuredAtV => plain(f.say(m::ModeMeasuredAtV)),
        M::DutyPercent => plain(f.say(m::ModeDutyPercent)),
        M::StandbyW => plain(f.say(m::ModeStandbyW)),
        M::CoolingW => plain(f.say(m::ModeCoolingW)),
    }
}

fn night(f: Formatter, field: N) -> Words {
    match field {
        N::StartClockMin => plain(f.say(m::NightStartClockMin)),
        N::WantedH => plain(f.say(m::NightWantedH)),
        N::AgeingPercent => [
            f.say(m::NightAgeingPercent),
            f.say(m::NightAgeingPercentHint),
        ],
        N::MarginPercent => plain(f.say(m::NightMarginPercent)),
    }
}
