//! Names of the plan's fields and lists: a line each.

use crate::plan::{
    Path,
    path::{BankField as B, ModeField as M, NightField as N, UnitField as U},
};
use crate::text::Formatter;
use crate::text::m;

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
        Path::Load(_) => plain("Draw"),
        Path::Day(field) => day::day(f, field),
        Path::Cabin(field) => day::cabin(f, field),
        Path::Cooling(_, field) => day::cooling(f, field),
        Path::Supply(field) => day::supply(f, field),
        Path::Array(_, field) => day::array(f, field),
        Path::Charger(_, field) => day::charger(f, field),
        Path::ModeRow(_, field) => day::mode_row(f, field),
        Path::CheckIn(_, field) => day::check_in(f, field),
        Path::Claim(_, field) => claims::claim(f, field),
        Path::Air(field) => claims::air(f, field),
        Path::Price(field) => claims::price(f, field),
        Path::Wiring(field) => wiring::wiring(f, field),
        Path::Installation(_, field) => wiring::installation(f, field),
        Path::Banks => plain("Banks"),
        Path::Chemistry(_) => plain(f.say(m::Chemistry)),
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

fn bank(_f: Formatter, field: B) -> Words {
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

fn unit(_f: Formatter, field: U) -> Words {
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

fn mode(_f: Formatter, field: M) -> Words {
    match field {
        M::PowerW => ["Draw while on", "Watts into the unit while it runs."],
        M::CurrentA => ["Current while on", "Amps into the unit while it runs."],
        M::MeasuredAtV => plain("Measured at"),
        M::DutyPercent => plain("Share of time on"),
        M::StandbyW => plain("Standby draw when off"),
        M::CoolingW => plain("Cooling while on"),
    }
}

fn night(_f: Formatter, field: N) -> Words {
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
