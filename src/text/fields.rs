//! Names of the plan's fields and lists: a line each.

use super::words::CHEMISTRY;
use crate::plan::{
    Path,
    path::{BankField as B, ModeField as M, NightField as N, UnitField as U},
};

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
pub const fn field_label(path: Path) -> &'static str {
    words(path)[0]
}

/// A line under the field, where the label alone may be misread.
#[must_use]
pub const fn field_hint(path: Path) -> &'static str {
    words(path)[1]
}

const fn words(path: Path) -> Words {
    match path {
        Path::Bank(_, field) => bank(field),
        Path::Unit(_, field) => unit(field),
        Path::Mode(_, _, field) => mode(field),
        Path::Night(field) => night(field),
        Path::Load(_) => plain("Draw"),
        Path::Day(field) => day::day(field),
        Path::Cabin(field) => day::cabin(field),
        Path::Cooling(_, field) => day::cooling(field),
        Path::Supply(field) => day::supply(field),
        Path::Array(_, field) => day::array(field),
        Path::Charger(_, field) => day::charger(field),
        Path::ModeRow(_, field) => day::mode_row(field),
        Path::CheckIn(_, field) => day::check_in(field),
        Path::Claim(_, field) => claims::claim(field),
        Path::Air(field) => claims::air(field),
        Path::Price(field) => claims::price(field),
        Path::Wiring(field) => wiring::wiring(field),
        Path::Installation(_, field) => wiring::installation(field),
        Path::Banks => plain("Banks"),
        Path::Chemistry(_) => plain(CHEMISTRY),
        Path::OpenCircuit(_) => plain("Open-circuit table"),
        Path::Units => plain("Cooling units"),
        Path::Modes(_) => plain("Modes"),
        Path::Loads => plain("Other loads"),
        Path::Imported => plain("Hours from a weather file"),
        Path::Arrays => plain("Panels"),
        Path::Chargers => plain("Chargers"),
        Path::ModePlan => plain("Mode plan"),
        Path::CheckIns => plain("Read off in the night"),
        Path::Claims => plain("Claims"),
    }
}

const fn bank(field: B) -> Words {
    match field {
        B::BatteryNominalV => plain("Nominal voltage of one battery"),
        B::BatteryRatedAh => [
            "Capacity of one battery",
            "As printed. “2x100” and “1280 Wh” are understood.",
        ],
        B::RatedHoursH => plain("Rated over"),
        B::SeriesCount => plain("Batteries in series"),
        B::ParallelCount => plain("Strings in parallel"),
        B::HealthPercent => plain("Health"),
        B::StartChargePercent => plain("State of charge at the start"),
        B::DepthPercent => [
            "How far down",
            "Share of what the bank holds that you are willing to use.",
        ],
        B::CutoffV => ["Battery’s own cut-off", "At the bank’s terminals."],
        B::BatteryCurrentLimitA => [
            "Continuous current of one battery",
            "Left empty: no limit is watched.",
        ],
        B::BatteryResistanceMohm => plain("Resistance of one battery"),
        B::PeukertExponent => plain("Peukert exponent"),
        B::ParasiticW => plain("Battery electronics and monitor"),
        B::MeasuredAh => [
            "Measured charge, whole bank",
            "From full to its own end. It replaces the label and the health.",
        ],
        B::MeasuredWh => [
            "Measured energy, whole bank",
            "At the terminals, in the same run.",
        ],
        B::MeasuredLoadW => plain("Load of that measurement"),
    }
}

const fn unit(field: U) -> Words {
    match field {
        U::SupplyV => plain("Supply it wants"),
        U::CutoffV => [
            "Unit’s own cut-off",
            "At the unit’s terminals, after the cable. Left empty: none.",
        ],
        U::CableLengthM => plain("Cable, one way"),
        U::CableAreaMm2 => [
            "Conductor",
            "“16”, “16 mm2” or “6 AWG”. Left empty: not judged, and hours count with 16 mm².",
        ],
        U::CableTemperatureC => plain("Conductor temperature"),
        U::ConnectionsMohm => plain("Fuses, switches and lugs"),
        U::OutputV => plain("Converter output"),
        U::EfficiencyPercent => plain("Converter efficiency"),
        U::IdleW => plain("Converter idle draw"),
        U::LimitA => plain("Converter limit"),
        U::NoLoadW => plain("Inverter no-load draw"),
        U::ProportionalLossPercent => plain("Inverter proportional loss"),
        U::SquareLossPercentPerKw => plain("Inverter square loss"),
        U::LimitW => plain("Inverter limit"),
        U::InverterCutoffV => [
            "Inverter cut-off",
            "At its input, after the cable. Left empty: none.",
        ],
    }
}

const fn mode(field: M) -> Words {
    match field {
        M::PowerW => ["Draw while on", "Watts into the unit while it runs."],
        M::CurrentA => ["Current while on", "Amps into the unit while it runs."],
        M::MeasuredAtV => plain("Measured at"),
        M::DutyPercent => plain("Share of time on"),
        M::StandbyW => plain("Standby draw when off"),
        M::CoolingW => plain("Cooling while on"),
    }
}

const fn night(field: N) -> Words {
    match field {
        N::StartClockMin => plain("Starts at"),
        N::WantedH => plain("Hours wanted"),
        N::AgeingPercent => [
            "Capacity left when aged",
            "The bank is to be enough until only this is left.",
        ],
        N::MarginPercent => plain("Margin on top"),
    }
}
