//! What a cooler takes out of the air that passes it.

use super::error::{AirError, AirInput, within};
use super::flow::Airflow;
use super::moist::{Humidity, MoistAir, enthalpy_j_kg};
use crate::quantity::{
    MassRate, Power, Pressure, ThermodynamicTemperature, in_btu_per_hour, in_watts,
    kilograms_per_second, watts,
};

/// Specific heat of liquid water, J/(kg K).
const CP_WATER_J_KG_K: f64 = 4_190.0;
/// Relative humidity taken at the inlet when none was measured. It moves a
/// sensible figure by under 2 %: it only sets density and specific heat.
pub const ASSUMED_HUMIDITY: f64 = 0.5;
/// Electrical powers accepted, W.
const POWER_W: (f64, f64) = (0.1, 50_000.0);

/// One place measured: inlet or outlet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Dry bulb.
    pub dry_bulb: ThermodynamicTemperature,
    /// Humidity, if it was measured.
    pub humidity: Option<Humidity>,
}

/// One steady reading of a cooler from its air side.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Barometric pressure (see [`super::pressure_at_altitude`]).
    pub pressure: Pressure,
    /// Air going in.
    pub inlet: Point,
    /// Air coming out.
    pub outlet: Point,
    /// How much of it.
    pub airflow: Airflow,
    /// Electrical power drawn, for efficiency.
    pub power: Option<Power>,
}

/// What the capacity covers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scope {
    /// Sensible and latent: humidity was measured at both faces.
    Total,
    /// Sensible only. On a wet coil this misses up to two thirds of the whole.
    SensibleOnly,
}

/// Cooling for each watt of electricity, over the reading's [`Scope`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Efficiency {
    /// Watts of cooling a watt.
    pub cop: f64,
    /// Btu of cooling a watt-hour: 3.412 142 times the COP.
    pub eer_btu_wh: f64,
}

/// The cooling a reading shows. Negative figures mean heat or water was added.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AirSide {
    /// What is covered.
    pub scope: Scope,
    /// Air at the inlet, with the humidity assumed if none was measured.
    pub inlet: MoistAir,
    /// Air at the outlet, likewise.
    pub outlet: MoistAir,
    /// Mass flow of dry air.
    pub dry_air: MassRate,
    /// Total cooling, condensate's own heat not taken off; `None` if sensible only.
    pub total: Option<Power>,
    /// Sensible cooling, at the humidity of the outlet.
    pub sensible: Power,
    /// Latent cooling; `None` if sensible only.
    pub latent: Option<Power>,
    /// Total less the heat the condensate carries off as water at outlet temperature.
    pub total_less_condensate: Option<Power>,
    /// Water shed; `None` if sensible only. Never negative.
    pub condensate: Option<MassRate>,
    /// Sensible over total; `None` if sensible only or nothing was cooled.
    pub sensible_share: Option<f64>,
    /// COP and EER, if electrical power was given.
    pub efficiency: Option<Efficiency>,
}

/// Cooling capacity from the air side.
///
/// Total = dry-air mass flow x (enthalpy in - enthalpy out); sensible is the
/// part at the outlet's humidity; latent the rest.
///
/// # Errors
/// Any [`AirError`] of the states, the flow or the electrical power.
///
/// Source: ASHRAE Handbook of Fundamentals (2017), ch. 1, "moist air cooling
/// and dehumidification", eqs. 41 and 42.
///
/// ```
/// use till_morning::physics::air::*;
/// use till_morning::quantity::*;
///
/// let mut reading = Reading {
///     pressure: pressure_at_altitude(meters(0.0))?,
///     inlet: Point { dry_bulb: celsius(26.7), humidity: Some(Humidity::Relative(0.5)) },
///     outlet: Point { dry_bulb: celsius(10.0), humidity: Some(Humidity::Relative(0.95)) },
///     airflow: Airflow::Volume {
///         rate: cubic_meters_per_hour(150.0),
///         basis: FlowBasis::Actual(Face::Inlet),
///     },
///     power: Some(watts(420.0)),
/// };
/// assert_eq!(cooling(&reading)?.scope, Scope::Total);
///
/// // Without an outlet humidity the latent part cannot be known, and is not made up.
/// reading.outlet.humidity = None;
/// let dry = cooling(&reading)?;
/// assert_eq!((dry.scope, dry.total), (Scope::SensibleOnly, None));
/// # Ok::<(), AirError>(())
/// ```
pub fn cooling(reading: &Reading) -> Result<AirSide, AirError> {
    let (inlet, outlet, scope) = states(reading)?;
    let dry_air_kg_s = reading.airflow.dry_air_kg_s(&inlet, &outlet)?;
    let total_w = dry_air_kg_s * (inlet.h_j_kg() - outlet.h_j_kg());
    let sensible_w =
        dry_air_kg_s * (enthalpy_j_kg(inlet.t_c(), outlet.humidity_ratio()) - outlet.h_j_kg());
    let water_kg_s = (dry_air_kg_s * (inlet.humidity_ratio() - outlet.humidity_ratio())).max(0.0);
    let carried_w = water_kg_s * CP_WATER_J_KG_K * outlet.t_c();
    let known = |value: f64| (scope == Scope::Total).then_some(value);
    let counted_w = known(total_w).unwrap_or(sensible_w);
    Ok(AirSide {
        scope,
        inlet,
        outlet,
        dry_air: kilograms_per_second(dry_air_kg_s),
        total: known(total_w).map(watts),
        sensible: watts(sensible_w),
        latent: known(total_w - sensible_w).map(watts),
        total_less_condensate: known(total_w - carried_w).map(watts),
        condensate: known(water_kg_s).map(kilograms_per_second),
        sensible_share: known(sensible_w / total_w).filter(|_| total_w > 0.0),
        efficiency: reading
            .power
            .map(|power| efficiency(watts(counted_w), power))
            .transpose()?,
    })
}

/// COP and EER of a capacity at an electrical power (0.1 W to 50 kW).
///
/// # Errors
/// [`AirError::OutOfRange`] or [`AirError::NotANumber`] for the power.
pub fn efficiency(capacity: Power, power: Power) -> Result<Efficiency, AirError> {
    let power_w = within(
        AirInput::ElectricalPower,
        in_watts(power),
        POWER_W.0,
        POWER_W.1,
    )?;
    Ok(Efficiency {
        cop: in_watts(capacity) / power_w,
        eer_btu_wh: in_btu_per_hour(capacity) / power_w,
    })
}

/// Both states, and whether both humidities were measured.
///
/// A missing humidity is filled so that no water is shed: air keeps its water
/// from one face to the other, as far as the colder face can hold it.
fn states(reading: &Reading) -> Result<(MoistAir, MoistAir, Scope), AirError> {
    let (inlet, outlet) = (reading.inlet, reading.outlet);
    let state = |point: Point, humidity| MoistAir::new(reading.pressure, point.dry_bulb, humidity);
    Ok(match (inlet.humidity, outlet.humidity) {
        (Some(wet_in), Some(wet_out)) => {
            (state(inlet, wet_in)?, state(outlet, wet_out)?, Scope::Total)
        }
        (None, Some(wet_out)) => {
            let out = state(outlet, wet_out)?;
            (out.at_dry_bulb(inlet.dry_bulb)?, out, Scope::SensibleOnly)
        }
        (wet_in, None) => {
            let wet_in = wet_in.unwrap_or(Humidity::Relative(ASSUMED_HUMIDITY));
            let into = state(inlet, wet_in)?;
            (
                into,
                into.at_dry_bulb(outlet.dry_bulb)?,
                Scope::SensibleOnly,
            )
        }
    })
}
