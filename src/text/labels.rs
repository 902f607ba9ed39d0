//! Names of units, chemistries and origins.

use crate::text::{Formatter, m};
use crate::{
    physics::battery::Chemistry,
    plan::{Figure, Path, Provenance, Show},
    range::Unit,
    study::spread,
};

/// The sign after a number, in the units shown: the same in every language. Those that
/// read better as words are in the catalogues (see [`Formatter::sign`]).
#[must_use]
pub(super) const fn unit_sign(unit: Unit, units: Show) -> &'static str {
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
        Unit::PercentPerKilowatt => "%/kW",
        Unit::Hour => "h",
        Unit::ClockMinute | Unit::Count | Unit::Number => "",
        Unit::Meter => "m",
        Unit::SquareMillimeter => "mm²",
        // A difference too: nobody reads kelvin off a thermostat.
        Unit::Celsius | Unit::Kelvin => "°C",
        Unit::Kilogram => "kg",
        Unit::Degree => "°",
        Unit::Minute => "min",
        Unit::Millisecond => "ms",
        Unit::SquareMeter => "m²",
        Unit::CubicMeter => "m³",
        Unit::CubicMeterPerHour => "m³/h",
        Unit::MeterPerSecond | Unit::FaceVelocity => "m/s",
        Unit::PerHour => "1/h",
        Unit::PercentPerKelvin => "%/K",
        Unit::WattPerSquareMeter => "W/m²",
        Unit::WattPerSquareMeterKelvin => "W/(m²\u{202f}K)",
        Unit::KilojoulePerKelvin => "kJ/K",
        Unit::Liter => "l",
        Unit::LiterPerKilowattHour => "l/kWh",
    }
}

/// A chemistry's name.
#[must_use]
pub fn chemistry_name(f: Formatter, chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => f.say(m::ChemistryLfp),
        Chemistry::Nmc => f.say(m::ChemistryNmc),
        Chemistry::SodiumIon => f.say(m::ChemistrySodiumIon),
        Chemistry::Agm => f.say(m::ChemistryAgm),
        Chemistry::Gel => f.say(m::ChemistryGel),
        Chemistry::Flooded => f.say(m::ChemistryFlooded),
    }
}

/// The same without what its letters stand for, within a sentence.
#[must_use]
pub fn chemistry_short(f: Formatter, chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => f.say(m::ChemistryLfpShort),
        Chemistry::Nmc => f.say(m::ChemistryNmcShort),
        Chemistry::SodiumIon => f.say(m::ChemistrySodiumIonShort),
        Chemistry::Agm => f.say(m::ChemistryAgmShort),
        Chemistry::Gel => f.say(m::ChemistryGelShort),
        Chemistry::Flooded => f.say(m::ChemistryFloodedShort),
    }
}

/// An origin's name.
#[must_use]
pub fn origin_name(f: Formatter, from: Provenance) -> &'static str {
    match from {
        Provenance::Label => f.say(m::OriginLabel),
        Provenance::Measured => f.say(m::OriginMeasured),
        Provenance::Guess => f.say(m::OriginGuess),
        Provenance::Assumed => f.say(m::OriginAssumed),
    }
}

/// An origin with its spread, as the mark beside a number: `guess ±20 %`.
#[must_use]
pub fn origin_mark(f: Formatter, path: Path, figure: Figure) -> String {
    let origin = origin_name(f, figure.from);
    let percent = spread::percent_of(path, figure);
    let half = spread::half_width(path, figure);
    // Temperatures and shares of nothing: in the number's own unit.
    if figure.spread_percent.is_none() && percent == 0.0 && half > 0.0 {
        let unit = path.range().map_or(Unit::Number, |range| range.unit);
        format!("{origin} ±{}", f.width(half, unit))
    } else if percent > 0.0 {
        format!("{origin} ±{}", f.with_unit(percent, "%"))
    } else {
        origin.into()
    }
}

/// The question that the origin's choice answers.
#[must_use]
pub fn origin_question(f: Formatter, path: Path) -> String {
    f.say(m::OriginQuestion {
        field: super::field_label(f, path),
    })
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
