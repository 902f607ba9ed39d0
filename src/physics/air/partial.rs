//! How capacity moves with each reading: the sensitivities an uncertainty
//! budget needs. The budget itself is made elsewhere.

use super::capacity::{AirSide, Point, Reading, cooling};
use super::error::AirError;
use super::flow::Airflow;
use super::moist::Humidity;
use crate::quantity::{
    ThermodynamicTemperature, celsius, in_celsius, in_pascals, in_square_meters, in_watts, pascals,
    square_meters, watts,
};

/// A reading that can be off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Partial {
    /// Volume flow or mean velocity, as a share of itself: watts per 1.
    Flow,
    /// Free area, per square metre. Zero for a volume flow.
    FreeArea,
    /// Inlet dry bulb, per kelvin, the humidity reading held.
    InletDryBulb,
    /// Inlet humidity, per kelvin (wet bulb, dew point) or per 1 (others).
    InletHumidity,
    /// Outlet dry bulb, per kelvin, the humidity reading held.
    OutletDryBulb,
    /// Outlet humidity, likewise.
    OutletHumidity,
    /// Barometric pressure, per pascal.
    Pressure,
    /// Electrical power, per watt.
    Power,
}

impl Partial {
    /// All of them, in the order [`partials`] gives them.
    pub const ALL: [Self; 8] = [
        Self::Flow,
        Self::FreeArea,
        Self::InletDryBulb,
        Self::InletHumidity,
        Self::OutletDryBulb,
        Self::OutletHumidity,
        Self::Pressure,
        Self::Power,
    ];
}

/// Partial derivatives by one reading, in watts (or 1, for the COP) per unit
/// named at [`Partial`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// Which reading.
    pub by: Partial,
    /// Of the total; `None` where the reading is sensible only.
    pub total_w: Option<f64>,
    /// Of the sensible part.
    pub sensible_w: f64,
    /// Of the COP; `None` without an electrical power.
    pub cop: Option<f64>,
}

/// Sensitivity of capacity and COP to each reading, by central differences;
/// one-sided where the other side would be impossible air (at saturation).
///
/// # Errors
/// As [`cooling`].
///
/// Source: GUM (JCGM 100:2008) 5.1.3, sensitivity coefficients.
pub fn partials(reading: &Reading) -> Result<[Slope; 8], AirError> {
    let here = cooling(reading)?;
    Ok(Partial::ALL.map(|by| slope(reading, &here, by)))
}

/// Derivatives by one reading about a reading already worked out.
fn slope(reading: &Reading, here: &AirSide, by: Partial) -> Slope {
    let step = step_of(reading, by);
    let shifted = |by_how_much: f64| cooling(&nudged(reading, by, by_how_much)).ok();
    let (up, down) = (shifted(step), shifted(-step));
    let span = step * (f64::from(u8::from(up.is_some())) + f64::from(u8::from(down.is_some())));
    let (up, down) = (up.unwrap_or(*here), down.unwrap_or(*here));
    let rate = |high: f64, low: f64| if span > 0.0 { (high - low) / span } else { 0.0 };
    Slope {
        by,
        total_w: up
            .total
            .zip(down.total)
            .map(|(high, low)| rate(in_watts(high), in_watts(low))),
        sensible_w: rate(in_watts(up.sensible), in_watts(down.sensible)),
        cop: up
            .efficiency
            .zip(down.efficiency)
            .map(|(high, low)| rate(high.cop, low.cop)),
    }
}

/// A step small against what an instrument is off by, large against rounding.
fn step_of(reading: &Reading, by: Partial) -> f64 {
    let humidity_step = |point: Point| match point.humidity {
        Some(Humidity::Relative(_)) => 1e-4,
        Some(Humidity::Ratio(_)) => 1e-6,
        _ => 1e-3,
    };
    match by {
        Partial::Flow => 1e-4,
        Partial::FreeArea => match &reading.airflow {
            Airflow::Vane { free_area, .. } => 1e-4 * in_square_meters(*free_area),
            Airflow::Volume { .. } => 1.0,
        },
        Partial::InletDryBulb | Partial::OutletDryBulb => 1e-3,
        Partial::InletHumidity => humidity_step(reading.inlet),
        Partial::OutletHumidity => humidity_step(reading.outlet),
        Partial::Pressure => 1.0,
        Partial::Power => 1e-4 * reading.power.map_or(1.0, in_watts),
    }
}

/// The reading with one of its numbers moved.
fn nudged(reading: &Reading, by: Partial, step: f64) -> Reading {
    let mut moved = reading.clone();
    match by {
        Partial::Flow => match &mut moved.airflow {
            Airflow::Volume { rate, .. } => *rate *= 1.0 + step,
            Airflow::Vane { points, .. } => points.iter_mut().for_each(|p| *p *= 1.0 + step),
        },
        Partial::FreeArea => {
            if let Airflow::Vane { free_area, .. } = &mut moved.airflow {
                *free_area = square_meters(in_square_meters(*free_area) + step);
            }
        }
        Partial::InletDryBulb => moved.inlet.dry_bulb = warmer(moved.inlet.dry_bulb, step),
        Partial::OutletDryBulb => moved.outlet.dry_bulb = warmer(moved.outlet.dry_bulb, step),
        Partial::InletHumidity => {
            moved.inlet.humidity = moved.inlet.humidity.map(|h| wetter(h, step))
        }
        Partial::OutletHumidity => {
            moved.outlet.humidity = moved.outlet.humidity.map(|h| wetter(h, step));
        }
        Partial::Pressure => moved.pressure = pascals(in_pascals(moved.pressure) + step),
        Partial::Power => moved.power = moved.power.map(|p| watts(in_watts(p) + step)),
    }
    moved
}

/// A temperature moved by kelvins.
fn warmer(t: ThermodynamicTemperature, by_k: f64) -> ThermodynamicTemperature {
    celsius(in_celsius(t) + by_k)
}

/// A humidity moved in its own unit.
fn wetter(humidity: Humidity, by: f64) -> Humidity {
    match humidity {
        Humidity::Relative(rh) => Humidity::Relative(rh + by),
        Humidity::WetBulb(t) => Humidity::WetBulb(warmer(t, by)),
        Humidity::DewPoint(t) => Humidity::DewPoint(warmer(t, by)),
        Humidity::Ratio(w) => Humidity::Ratio(w + by),
    }
}
