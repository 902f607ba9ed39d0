//! Names of fields, units, chemistries and origins.

use crate::{
    physics::battery::Chemistry,
    plan::{
        Figure, Provenance, Show,
        entry::width_shown,
        path::{BankField as B, ModeField as M, NightField as N, Path, UnitField as U},
    },
    range::Unit,
    study::spread,
};

/// The sign after a number, in the units shown.
#[must_use]
pub const fn unit_sign(unit: Unit, units: Show) -> &'static str {
    match unit {
        Unit::Meter if units.us_units => "ft",
        Unit::Celsius | Unit::Kelvin if units.us_units => "°F",
        Unit::Kilogram if units.us_units => "lb",
        Unit::SquareMeter if units.us_units => "ft²",
        Unit::CubicMeter if units.us_units => "ft³",
        Unit::CubicMeterPerHour if units.us_units => "cfm",
        Unit::MeterPerSecond if units.us_units => "mph",
        Unit::FaceVelocity if units.us_units => "ft/min",
        Unit::WattPerSquareMeterKelvin if units.us_units => "Btu/(h·ft²·°F)",
        Unit::KilojoulePerKelvin if units.us_units => "Btu/°F",
        Unit::Liter if units.us_units => "gal",
        Unit::LiterPerKilowattHour if units.us_units => "gal/kWh",
        Unit::Volt => "V",
        Unit::Amp => "A",
        Unit::AmpHour => "Ah",
        Unit::Watt => "W",
        Unit::WattHour => "Wh",
        Unit::Milliohm => "mΩ",
        Unit::Percent => "%",
        Unit::PercentPerKilowatt => "% per kW",
        Unit::Hour => "h",
        Unit::ClockMinute | Unit::Count | Unit::Number => "",
        Unit::Meter => "m",
        Unit::SquareMillimeter => "mm²",
        Unit::Celsius => "°C",
        Unit::Kelvin => "K",
        Unit::Kilogram => "kg",
        Unit::Degree => "°",
        Unit::Minute => "min",
        Unit::Millisecond => "ms",
        Unit::SquareMeter => "m²",
        Unit::CubicMeter => "m³",
        Unit::CubicMeterPerHour => "m³/h",
        Unit::MeterPerSecond | Unit::FaceVelocity => "m/s",
        Unit::PerHour => "per h",
        Unit::PercentPerKelvin => "% per K",
        Unit::WattPerSquareMeter => "W/m²",
        Unit::WattPerSquareMeterKelvin => "W/(m²\u{202f}K)",
        Unit::KilojoulePerKelvin => "kJ/K",
        Unit::Liter => "l",
        Unit::LiterPerKilowattHour => "l/kWh",
    }
}

/// What a field is called.
#[must_use]
pub const fn field_label(path: Path) -> &'static str {
    match path {
        Path::Bank(_, field) => bank_label(field),
        Path::Unit(_, field) => unit_label(field),
        Path::Mode(_, _, field) => match field {
            M::PowerW => "Draw while on",
            M::CurrentA => "Current while on",
            M::MeasuredAtV => "Measured at",
            M::DutyPercent => "Share of time on",
            M::StandbyW => "Standby draw when off",
            M::CoolingW => "Cooling while on",
        },
        Path::Night(field) => match field {
            N::StartClockMin => "Starts at",
            N::WantedH => "Hours wanted",
            N::AgeingPercent => "Capacity left when aged",
            N::MarginPercent => "Margin on top",
        },
        Path::Load(_) => "Draw",
        Path::Banks => "Banks",
        Path::Chemistry(_) => super::words::CHEMISTRY,
        Path::OpenCircuit(_) => "Open-circuit table",
        Path::Units => "Cooling units",
        Path::Modes(_) => "Modes",
        Path::Loads => "Other loads",
        Path::Claims | Path::Claim(..) | Path::Air(_) | Path::Price(_) => {
            super::claims::label(path)
        }
        Path::Wiring(_) | Path::Installation(..) => super::wiring::label(path),
        _ => super::day_labels::label(path),
    }
}

const fn bank_label(field: B) -> &'static str {
    match field {
        B::BatteryNominalV => "Nominal voltage of one battery",
        B::BatteryRatedAh => "Capacity of one battery",
        B::RatedHoursH => "Rated over",
        B::SeriesCount => "Batteries in series",
        B::ParallelCount => "Strings in parallel",
        B::HealthPercent => "Health",
        B::StartChargePercent => "State of charge at the start",
        B::DepthPercent => "How far down",
        B::CutoffV => "Battery’s own cut-off",
        B::BatteryCurrentLimitA => "Continuous current of one battery",
        B::BatteryResistanceMohm => "Resistance of one battery",
        B::PeukertExponent => "Peukert exponent",
        B::ParasiticW => "Battery electronics and monitor",
        B::MeasuredAh => "Measured charge, whole bank",
        B::MeasuredWh => "Measured energy, whole bank",
        B::MeasuredLoadW => "Load of that measurement",
    }
}

const fn unit_label(field: U) -> &'static str {
    match field {
        U::SupplyV => "Supply it wants",
        U::CutoffV => "Unit’s own cut-off",
        U::CableLengthM => "Cable, one way",
        U::CableAreaMm2 => "Conductor",
        U::CableTemperatureC => "Conductor temperature",
        U::ConnectionsMohm => "Fuses, switches and lugs",
        U::OutputV => "Converter output",
        U::EfficiencyPercent => "Converter efficiency",
        U::IdleW => "Converter idle draw",
        U::LimitA => "Converter limit",
        U::NoLoadW => "Inverter no-load draw",
        U::ProportionalLossPercent => "Inverter proportional loss",
        U::SquareLossPercentPerKw => "Inverter square loss",
        U::LimitW => "Inverter limit",
        U::InverterCutoffV => "Inverter cut-off",
    }
}

/// A line under the field, where the label alone may be misread.
#[must_use]
pub const fn field_hint(path: Path) -> &'static str {
    match path {
        Path::Bank(_, B::BatteryRatedAh) => "As printed. “2x100” and “1280 Wh” are understood.",
        Path::Bank(_, B::DepthPercent) => {
            "Share of what the bank holds that you are willing to use."
        }
        Path::Bank(_, B::MeasuredAh) => {
            "From full to its own end. It replaces the label and the health."
        }
        Path::Bank(_, B::MeasuredWh) => "At the terminals, in the same run.",
        Path::Bank(_, B::CutoffV) => "At the bank’s terminals.",
        Path::Bank(_, B::BatteryCurrentLimitA) => "Left empty: no limit is watched.",
        Path::Unit(_, U::CutoffV) => "At the unit’s terminals, after the cable. Left empty: none.",
        Path::Unit(_, U::InverterCutoffV) => "At its input, after the cable. Left empty: none.",
        Path::Unit(_, U::CableAreaMm2) => {
            "“16”, “16 mm2” or “6 AWG”. Left empty: not judged, and hours count with 16 mm²."
        }
        Path::Mode(_, _, M::PowerW) => "Watts into the unit while it runs.",
        Path::Mode(_, _, M::CurrentA) => "Amps into the unit while it runs.",
        Path::Wiring(_) | Path::Installation(..) => super::wiring::hint(path),
        Path::Night(N::AgeingPercent) => "The bank is to be enough until only this is left.",
        _ => "",
    }
}

/// A chemistry's name.
#[must_use]
pub const fn chemistry_name(chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => "LFP (lithium iron phosphate)",
        Chemistry::Nmc => "NMC (lithium nickel manganese cobalt)",
        Chemistry::SodiumIon => "Sodium-ion",
        Chemistry::Agm => "AGM lead-acid",
        Chemistry::Gel => "Gel lead-acid",
        Chemistry::Flooded => "Flooded lead-acid",
    }
}

/// An origin's name.
#[must_use]
pub const fn origin_name(from: Provenance) -> &'static str {
    match from {
        Provenance::Label => "label",
        Provenance::Measured => "measured",
        Provenance::Guess => "guess",
    }
}

/// An origin with its spread, as the mark beside a number: `guess ±20 %`.
#[must_use]
pub fn origin_mark(path: Path, figure: Figure, units: Show) -> String {
    let percent = spread::percent_of(path, figure);
    let half = spread::half_width(path, figure);
    // Temperatures and shares of nothing: in the number's own unit.
    if figure.spread_percent.is_none() && percent == 0.0 && half > 0.0 {
        let unit = path.range().map_or(Unit::Number, |range| range.unit);
        format!(
            "{} ±{}",
            origin_name(figure.from),
            width_text(half, unit, units)
        )
    } else if percent > 0.0 {
        format!(
            "{} ±{}\u{202f}%",
            origin_name(figure.from),
            super::number::plain(percent)
        )
    } else {
        origin_name(figure.from).into()
    }
}

/// A difference of two numbers with its unit.
#[must_use]
pub fn width_text(width: f64, unit: Unit, units: Show) -> String {
    let of = match unit {
        Unit::Celsius => Unit::Kelvin,
        unit => unit,
    };
    super::number::with_unit(width_shown(width, unit, units), unit_sign(of, units))
}

/// The question that the origin's choice answers.
#[must_use]
pub fn origin_question(path: Path) -> String {
    format!("{}: where the number comes from", field_label(path))
}

/// The unit after a label, for those who do not see it beside the field.
#[must_use]
pub fn unit_in_label(sign: &str) -> String {
    if sign.is_empty() {
        String::new()
    } else {
        format!(" ({sign})")
    }
}
