//! Signs of units as people type them, and what makes of them the plan's units.

use super::Show;
use crate::{
    quantity::{
        GALLON_L, btu_per_hour, celsius, cubic_feet_per_minute, fahrenheit, feet, feet_per_minute,
        in_celsius, in_cubic_meters_per_hour, in_fahrenheit, in_hours, in_kilograms, in_meters,
        in_meters_per_second, in_watts, inches, miles_per_hour, minutes, pounds,
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
    /// The same for a difference.
    pub fn undo_width(self, width: f64) -> f64 {
        width / self.factor
    }
}

/// What makes the plan's unit of a number as it is shown.
pub fn shown(unit: Unit, units: Show) -> Scale {
    if units.us_units {
        us_customary(unit)
    } else {
        Scale::SAME
    }
}

/// The same for what people with US units use. Volts, amps and watts are theirs
/// too, and so are per cent a kelvin on a panel's sheet and W/m² of sun.
fn us_customary(unit: Unit) -> Scale {
    let foot = in_meters(feet(1.0));
    let step = in_celsius(fahrenheit(1.0)) - in_celsius(fahrenheit(0.0));
    let btu_h = in_watts(btu_per_hour(1.0));
    Scale::of(match unit {
        Unit::Celsius => return from_fahrenheit(),
        Unit::Kelvin => step,
        Unit::Meter => foot,
        Unit::SquareMeter => foot.powi(2),
        Unit::CubicMeter => foot.powi(3),
        Unit::CubicMeterPerHour => in_cubic_meters_per_hour(cubic_feet_per_minute(1.0)),
        Unit::MeterPerSecond => in_meters_per_second(miles_per_hour(1.0)),
        Unit::FaceVelocity => in_meters_per_second(feet_per_minute(1.0)),
        Unit::Kilogram => in_kilograms(pounds(1.0)),
        Unit::Liter | Unit::LiterPerKilowattHour => GALLON_L,
        Unit::WattPerSquareMeterKelvin => btu_h / (foot.powi(2) * step),
        // A Btu/h for an hour is a Btu: 3.6 kJ a watt-hour.
        Unit::KilojoulePerKelvin => btu_h * 3.6 / step,
        _ => return Scale::SAME,
    })
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
    let us = |unit| Some((unit, us_customary(unit)));
    let speed = if wanted == Unit::FaceVelocity {
        wanted
    } else {
        Unit::MeterPerSecond
    };
    match sign.trim_end_matches('.') {
        "v" | "volt" | "volts" => same(Unit::Volt),
        "mv" => times(Unit::Volt, 1e-3),
        "a" | "amp" | "amps" | "ampere" | "amperes" => same(Unit::Amp),
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
        // A difference is said in degrees too.
        "c" | "°c" | "k" if wanted == Unit::Kelvin => same(wanted),
        "f" | "°f" if wanted == Unit::Kelvin => Some((wanted, us_customary(wanted))),
        "c" | "°c" => same(Unit::Celsius),
        "f" | "°f" => Some((Unit::Celsius, us_customary(Unit::Celsius))),
        "k" => same(Unit::Kelvin),
        "kg" => same(Unit::Kilogram),
        "g" => times(Unit::Kilogram, 1e-3),
        "lb" | "lbs" | "pound" | "pounds" => us(Unit::Kilogram),
        "°" | "deg" => same(Unit::Degree),
        "m2" | "m²" => same(Unit::SquareMeter),
        "m3" | "m³" => same(Unit::CubicMeter),
        "ft3" | "ft³" | "cuft" | "cu ft" => us(Unit::CubicMeter),
        "l" => same(Unit::Liter),
        "gal" | "gallon" | "gallons" => us(Unit::Liter),
        "l/kwh" => same(Unit::LiterPerKilowattHour),
        "gal/kwh" => us(Unit::LiterPerKilowattHour),
        "cm2" | "cm²" => times(Unit::SquareMeter, 1e-4),
        "in2" | "in²" | "sqin" => times(Unit::SquareMeter, in_meters(inches(1.0)).powi(2)),
        "ft2" | "ft²" | "sqft" => times(Unit::SquareMeter, in_meters(feet(1.0)).powi(2)),
        "m3/h" | "m³/h" => same(Unit::CubicMeterPerHour),
        "cfm" | "ft3/min" | "ft³/min" | "cu ft/min" => us(Unit::CubicMeterPerHour),
        "btu/h" | "btuh" => times(Unit::Watt, in_watts(btu_per_hour(1.0))),
        "m/s" => same(speed),
        "km/h" => times(speed, 1.0 / 3.6),
        "mph" => Some((speed, us_customary(Unit::MeterPerSecond))),
        "fpm" | "ft/min" => Some((speed, us_customary(Unit::FaceVelocity))),
        "w/m2k" | "w/m²k" | "w/(m²k)" | "w/(m² k)" => same(Unit::WattPerSquareMeterKelvin),
        "btu/(h·ft²·°f)" | "btu/h·ft²·°f" | "btu/hft2f" => {
            us(Unit::WattPerSquareMeterKelvin)
        }
        "kj/k" => same(Unit::KilojoulePerKelvin),
        "btu/°f" | "btu/f" => us(Unit::KilojoulePerKelvin),
        "batteries" | "battery" | "blocks" | "block" | "strings" | "string" => same(Unit::Count),
        _ => None,
    }
}
