//! The cooling coil as an apparatus dew point and a bypass factor.
//!
//! Part of the air touches the coil and leaves saturated at its temperature,
//! the rest passes by untouched. With the bypass factor known from one rated
//! point, total capacity and entering air give the split elsewhere.

use super::error::{AirError, AirInput, within};
use super::moist::{
    CP_DRY_J_KG_K, CP_VAPOUR_J_KG_K, Humidity, MoistAir, enthalpy_j_kg, saturation_ratio,
};
use crate::{
    quantity::{
        MassRate, Power, ThermodynamicTemperature, celsius, in_kilograms_per_second, in_watts,
        kilograms_per_second, watts,
    },
    search::root,
};

/// Coldest and warmest coil surface looked for, Celsius.
const SURFACE_C: (f64, f64) = (-40.0, 60.0);
/// Mass flows of dry air accepted, kg/s.
const FLOW_KG_S: (f64, f64) = (1e-6, 20.0);
/// Capacities accepted, W.
const CAPACITY_W: (f64, f64) = (0.0, 100_000.0);

/// A coil: the air it moves and the share that misses it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coil {
    dry_air_kg_s: f64,
    bypass: f64,
}

/// What a coil does to one entering state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilWork {
    /// Temperature of the surface.
    pub surface: ThermodynamicTemperature,
    /// Humidity ratio of air that touched it; that of the entering air when dry.
    pub surface_humidity_ratio: f64,
    /// Sensible cooling.
    pub sensible: Power,
    /// Latent cooling; zero on a dry coil.
    pub latent: Power,
    /// Water shed.
    pub condensate: MassRate,
}

/// Bypass factor from three enthalpies: leaving over entering, above the surface.
///
/// Any unit, the same for all. `None` unless entering > leaving >= surface.
#[must_use]
pub fn bypass_factor(h_in: f64, h_out: f64, h_surface: f64) -> Option<f64> {
    (h_in > h_out && h_out >= h_surface).then(|| (h_out - h_surface) / (h_in - h_surface))
}

impl Coil {
    /// A coil from its air and its bypass factor.
    ///
    /// Range: 1e-6 to 20 kg/s of dry air; bypass 0 to 0.9.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`] or [`AirError::NotANumber`].
    pub fn new(dry_air: MassRate, bypass: f64) -> Result<Self, AirError> {
        Ok(Self {
            dry_air_kg_s: within(
                AirInput::MassFlow,
                in_kilograms_per_second(dry_air),
                FLOW_KG_S.0,
                FLOW_KG_S.1,
            )?,
            bypass: within(AirInput::BypassFactor, bypass, 0.0, 0.9)?,
        })
    }

    /// The coil that shows this total and sensible share on this air.
    ///
    /// Range: share above 0.2, up to 1 (a dry coil: then the bypass is taken
    /// for a surface just at the dew point).
    ///
    /// # Errors
    /// [`AirError::CoilTooCold`] when no surface gives that split: the share is
    /// too low for the capacity and airflow. Others as [`Coil::new`].
    ///
    /// Source: ASHRAE Handbook of Fundamentals (2017), ch. 1, straight line on
    /// the psychrometric chart from entering to leaving to saturation.
    pub fn from_rating(
        entering: &MoistAir,
        total: Power,
        sensible_share: f64,
        dry_air: MassRate,
    ) -> Result<Self, AirError> {
        let coil = Self::new(dry_air, 0.0)?;
        let share = within(AirInput::SensibleShare, sensible_share, 0.2, 1.0)?;
        let drop_j_kg = coil.drop_j_kg(total)?;
        let leaving = leaving(entering, drop_j_kg, share)?;
        let surface_c = surface_on_line(entering, &leaving)?;
        let h_surface = enthalpy_j_kg(surface_c, saturation_ratio_at(entering, surface_c)?);
        let bypass = bypass_factor(entering.h_j_kg(), leaving.h_j_kg(), h_surface);
        Self::new(dry_air, bypass.unwrap_or(0.0).min(0.9))
    }

    /// Share of the air that misses the coil.
    #[must_use]
    pub fn bypass(&self) -> f64 {
        self.bypass
    }

    /// Air that passes the unit.
    #[must_use]
    pub fn dry_air(&self) -> MassRate {
        kilograms_per_second(self.dry_air_kg_s)
    }

    /// Sensible, latent and condensate at a total capacity on this air.
    ///
    /// A surface above the entering dew point is dry: all is sensible then.
    ///
    /// # Errors
    /// [`AirError::CoilTooCold`] when the capacity is more than this air can
    /// give; [`AirError::OutOfRange`] for the capacity.
    pub fn work(&self, entering: &MoistAir, total: Power) -> Result<CoilWork, AirError> {
        let contact_drop = self.drop_j_kg(total)? / (1.0 - self.bypass);
        let w_in = entering.humidity_ratio();
        let h_surface = entering.h_j_kg() - contact_drop;
        let surface_c = surface_of_enthalpy(entering, h_surface)?;
        let w_surface = saturation_ratio_at(entering, surface_c)?;
        if w_surface >= w_in {
            return Ok(self.dry_work(entering, contact_drop, total));
        }
        let contact_kg_s = self.dry_air_kg_s * (1.0 - self.bypass);
        let water_kg_s = contact_kg_s * (w_in - w_surface);
        let h_mid = enthalpy_j_kg(entering.t_c(), w_surface);
        let sensible_w = contact_kg_s * (h_mid - h_surface);
        Ok(CoilWork {
            surface: celsius(surface_c),
            surface_humidity_ratio: w_surface,
            sensible: watts(sensible_w),
            latent: watts(in_watts(total) - sensible_w),
            condensate: kilograms_per_second(water_kg_s),
        })
    }

    /// A coil that stays dry.
    fn dry_work(&self, entering: &MoistAir, contact_drop: f64, total: Power) -> CoilWork {
        let w = entering.humidity_ratio();
        let surface_c = entering.t_c() - contact_drop / (CP_DRY_J_KG_K + w * CP_VAPOUR_J_KG_K);
        CoilWork {
            surface: celsius(surface_c),
            surface_humidity_ratio: w,
            sensible: total,
            latent: watts(0.0),
            condensate: kilograms_per_second(0.0),
        }
    }

    /// Fall of enthalpy of all the air, J/kg.
    fn drop_j_kg(&self, total: Power) -> Result<f64, AirError> {
        let (low, high) = CAPACITY_W;
        Ok(within(AirInput::Capacity, in_watts(total), low, high)? / self.dry_air_kg_s)
    }
}

/// Leaving state for a fall of enthalpy of which `share` is sensible.
fn leaving(entering: &MoistAir, drop_j_kg: f64, share: f64) -> Result<MoistAir, AirError> {
    // Latent at the entering dry bulb: the sensible part lies at the leaving humidity.
    let (t_in, w_in) = (entering.t_c(), entering.humidity_ratio());
    let per_kg_water = enthalpy_j_kg(t_in, 1.0) - enthalpy_j_kg(t_in, 0.0);
    let w_out = w_in - (1.0 - share) * drop_j_kg / per_kg_water;
    if w_out < 0.0 {
        return Err(AirError::CoilTooCold);
    }
    let t_out = t_in - share * drop_j_kg / (CP_DRY_J_KG_K + w_out * CP_VAPOUR_J_KG_K);
    MoistAir::new(entering.pressure(), celsius(t_out), Humidity::Ratio(w_out))
        .map_err(|_| AirError::CoilTooCold)
}

/// Where the line from entering through leaving meets saturation, Celsius.
///
/// Straight in enthalpy and humidity ratio, the two that mixing conserves.
fn surface_on_line(entering: &MoistAir, leaving: &MoistAir) -> Result<f64, AirError> {
    let (h_in, w_in) = (entering.h_j_kg(), entering.humidity_ratio());
    let (fall_h, fall_w) = (h_in - leaving.h_j_kg(), w_in - leaving.humidity_ratio());
    if fall_h <= 0.0 {
        return Err(AirError::CoilTooCold);
    }
    // Above zero where the line lies beyond saturation, in fog.
    let fog = |t_c: f64| {
        saturation_ratio_at(entering, t_c)
            .map(|w| (w_in - w) * fall_h - (h_in - enthalpy_j_kg(t_c, w)) * fall_w)
    };
    // Saturation curves up from the line: from the leaving state down, the
    // first meeting is the surface. March, then halve.
    let mut high = leaving.t_c();
    let mut low = high;
    while fog(low)? < 0.0 {
        high = low;
        low -= 0.5;
        if low < SURFACE_C.0 {
            return Err(AirError::CoilTooCold);
        }
    }
    Ok(root(
        |t_c| fog(t_c).map_or(f64::INFINITY, |f| -f),
        low,
        high,
    ))
}

/// Temperature at which saturated air has this enthalpy, Celsius.
fn surface_of_enthalpy(like: &MoistAir, h_j_kg: f64) -> Result<f64, AirError> {
    let excess = |t_c: f64| saturation_ratio_at(like, t_c).map(|w| enthalpy_j_kg(t_c, w) - h_j_kg);
    let (low, high) = SURFACE_C;
    if excess(low)? > 0.0 {
        return Err(AirError::CoilTooCold);
    }
    // The surface is never warmer than the air it cools.
    let high = like.t_c().clamp(low, high);
    Ok(root(|t_c| excess(t_c).unwrap_or(f64::INFINITY), low, high))
}

/// Ratio of air saturated at `t_c` under the pressure of `like`.
fn saturation_ratio_at(like: &MoistAir, t_c: f64) -> Result<f64, AirError> {
    saturation_ratio(crate::quantity::in_pascals(like.pressure()), t_c)
}
