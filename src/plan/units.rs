//! Signs of units as people type them, and what makes of them the plan's units.

use super::entry::Shown;
use crate::{
    quantity::{
        btu_per_hour, celsius, cubic_feet_per_minute, fahrenheit, feet, in_celsius,
        in_cubic_meters_per_hour, in_fahrenheit, in_feet, in_hours, in_meters, in_watts, inches,
        meters, minutes,
    },
    range::Unit,
};

/// From the unit typed to the plan's: `value · factor + offset`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    factor: f64,
    offset: f64,
}

impl Scale {
    pub const SAME: Self = Self::of(1.0);

    const fn of(factor: f64) -> Self {
        Self {
            factor,
            offset: 0.0,
        }
    }
    pub fn apply(self, value: f64) -> f64 {
        value * self.factor + self.offset
    }
    pub fn undo(self, value: f64) -> f64 {
        (value - self.offset) / self.factor
    }
}

/// The scale of a bare number in a field.
pub fn bare(shown: Shown) -> Scale {
    match shown {
        Shown::AsIs => Scale::SAME,
        Shown::Feet => Scale::of(1.0 / in_feet(meters(1.0))),
        Shown::Fahrenheit => from_fahrenheit(),
    }
}

fn from_fahrenheit() -> Scale {
    let offset = in_celsius(fahrenheit(0.0));
    debug_assert!((in_fahrenheit(celsius(offset))).abs() < 1e-9);
    Scale {
        factor: in_celsius(fahrenheit(1.0)) - offset,
        offset,
    }
}

/// American gauges as they are written, with their copper in mm² (ASTM B258,
/// rounded to the thousandth: what a plan holds for a conductor typed so).
const GAUGES: [(&str, f64); 15] = [
    ("18", 0.823),
    ("16", 1.309),
    ("14", 2.081),
    ("12", 3.309),
    ("10", 5.261),
    ("8", 8.366),
    ("6", 13.302),
    ("4", 21.151),
    ("3", 26.67),
    ("2", 33.631),
    ("1", 42.408),
    ("1/0", 53.475),
    ("2/0", 67.431),
    ("3/0", 85.029),
    ("4/0", 107.219),
];

/// The area of a gauge: `6 awg`, `awg 6`, `2/0`; nothing if it is not written so.
pub fn of_gauge(text: &str) -> Option<f64> {
    let bare = text
        .strip_suffix("awg")
        .or_else(|| text.strip_prefix("awg"));
    // A bare 6 is 6 mm²; a bare 2/0 can be a gauge only.
    let name = match bare {
        Some(name) => name.trim(),
        None => text.ends_with("/0").then_some(text)?,
    };
    let row = GAUGES.iter().find(|(written, _)| *written == name)?;
    Some(row.1)
}

/// How a gauge of exactly that area is written.
pub fn gauge_name(area_mm2: f64) -> Option<&'static str> {
    let row = GAUGES.iter().find(|(_, mm2)| *mm2 == area_mm2)?;
    Some(row.0)
}

/// What a sign in lower case means; `wanted` settles signs of two meanings.
pub fn of_sign(sign: &str, wanted: Unit) -> Option<(Unit, Scale)> {
    let same = |unit| Some((unit, Scale::SAME));
    let times = |unit, factor| Some((unit, Scale::of(factor)));
    match sign.trim_end_matches('.') {
        "v" | "volt" | "volts" => same(Unit::Volt),
        "mv" => times(Unit::Volt, 1e-3),
        "a" | "amp" | "amps" => same(Unit::Amp),
        "ma" => times(Unit::Amp, 1e-3),
        "ah" => same(Unit::AmpHour),
        "mah" => times(Unit::AmpHour, 1e-3),
        "w" | "watt" | "watts" => same(Unit::Watt),
        "kw" => times(Unit::Watt, 1e3),
        "wh" => same(Unit::WattHour),
        "kwh" => times(Unit::WattHour, 1e3),
        "mω" | "mohm" | "mohms" => same(Unit::Milliohm),
        "ω" | "ohm" | "ohms" => times(Unit::Milliohm, 1e3),
        "%" | "percent" => same(if wanted == Unit::PercentPerKilowatt {
            wanted
        } else {
            Unit::Percent
        }),
        "h" | "hr" | "hrs" | "hour" | "hours" => same(Unit::Hour),
        "min" if wanted == Unit::Minute => same(wanted),
        "min" | "minutes" => times(Unit::Hour, in_hours(minutes(1.0))),
        "d" | "day" | "days" => times(Unit::Hour, 24.0),
        "m" if wanted == Unit::Meter => same(Unit::Meter),
        "metre" | "metres" | "meter" | "meters" => same(Unit::Meter),
        "cm" => times(Unit::Meter, 1e-2),
        "ft" | "foot" | "feet" | "'" => times(Unit::Meter, in_meters(feet(1.0))),
        "in" | "inch" | "inches" | "\"" => times(Unit::Meter, in_meters(inches(1.0))),
        "mm2" | "mm²" | "mm^2" | "sqmm" => same(Unit::SquareMillimeter),
        "c" | "°c" => same(Unit::Celsius),
        "f" | "°f" => Some((Unit::Celsius, from_fahrenheit())),
        "k" => same(Unit::Kelvin),
        "kg" => same(Unit::Kilogram),
        "°" | "deg" => same(Unit::Degree),
        "m2" | "m²" => same(Unit::SquareMeter),
        "m3" | "m³" => same(Unit::CubicMeter),
        "l" => same(Unit::Liter),
        "cm2" | "cm²" => times(Unit::SquareMeter, 1e-4),
        "in2" | "in²" | "sqin" => times(Unit::SquareMeter, in_meters(inches(1.0)).powi(2)),
        "ft2" | "ft²" | "sqft" => times(Unit::SquareMeter, in_meters(feet(1.0)).powi(2)),
        "m3/h" | "m³/h" => same(Unit::CubicMeterPerHour),
        "cfm" => times(
            Unit::CubicMeterPerHour,
            in_cubic_meters_per_hour(cubic_feet_per_minute(1.0)),
        ),
        "btu/h" | "btuh" => times(Unit::Watt, in_watts(btu_per_hour(1.0))),
        "m/s" => same(Unit::MeterPerSecond),
        "km/h" => times(Unit::MeterPerSecond, 1.0 / 3.6),
        "fpm" | "ft/min" => times(Unit::MeterPerSecond, in_meters(feet(1.0)) / 60.0),
        "blocks" | "block" | "strings" | "string" => same(Unit::Count),
        _ => None,
    }
}
