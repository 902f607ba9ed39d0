//! The figures of a cabin, and what the kernel needs made of them.

use super::error::{CabinError, CabinInput, within};
use super::moisture::MoistStore;
use super::stores::Stores;
use super::sun::{Face, IRRADIANCE_W_M2, OUTSIDE_FILM_W_M2_K};
use crate::quantity::{
    Area, HeatCapacity, HeatFluxDensity, HeatTransfer, MassRate, Power, Volume, in_cubic_meters,
    in_square_meters, in_watts_per_square_meter, in_watts_per_square_meter_kelvin, kilograms,
    kilograms_per_second, watts, watts_per_kelvin,
};

/// Thermal resistance of the inside air film, m² K/W (ISO 6946, horizontal
/// flow, from memory).
const INSIDE_FILM_M2_K_W: f64 = 0.13;
/// Areas accepted, m².
const AREA_M2: (f64, f64) = (0.0, 1_000.0);
/// Volumes accepted, m³.
const VOLUME_M3: (f64, f64) = (0.1, 5_000.0);
/// Coefficients accepted for the shell, W/(m² K): no better than a thick cold
/// store, no worse than the inside film leaves room for.
const SHELL_W_M2_K: (f64, f64) = (0.05, 7.0);
/// Coefficients accepted for glass, W/(m² K).
const GLASS_W_M2_K: (f64, f64) = (0.1, 10.0);
/// Air changes accepted, an hour.
const CHANGES_H: (f64, f64) = (0.0, 200.0);
/// Densities accepted, kg/m³.
const DENSITY_KG_M3: (f64, f64) = (0.4, 1.6);
/// Buffers accepted, multiples of the air's own water.
const BUFFER: (f64, f64) = (1.0, 100.0);

/// Everything derived from the answers, to be looked at and replaced.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// Floor inside; it conducts like the rest of the shell and sees no sun.
    pub floor: Area,
    /// Air inside.
    pub volume: Volume,
    /// Roof without its glass.
    pub roof: Area,
    /// Walls without their glass.
    pub walls: Area,
    /// Windows.
    pub wall_glass: Area,
    /// Roof lights.
    pub roof_glass: Area,
    /// Share of the walls the sun can reach.
    pub lit_walls: f64,
    /// Shell, air to air.
    pub shell_coefficient: HeatTransfer,
    /// Glass with its covers, air to air.
    pub glass_coefficient: HeatTransfer,
    /// Share of the sun that glass and covers let in.
    pub glass_gain: f64,
    /// Share of the sun the outside absorbs.
    pub absorptance: f64,
    /// Share of the sun kept off by trees or awnings.
    pub shade: f64,
    /// Heat taken up by air and contents: 10 kJ/K a square metre of floor (ISO
    /// 52016-1, air and furniture, from memory).
    pub air_capacity: HeatCapacity,
    /// Heat taken up by lining and frame.
    pub shell_capacity: HeatCapacity,
    /// Air changes an hour, closed up.
    pub air_changes_per_hour: f64,
    /// Density of the air exchanged; less at altitude.
    pub air_density_kg_m3: f64,
    /// Water that lining, bedding and clothes take up with the air, in
    /// multiples of the air's own: a guess.
    pub moisture_buffer: f64,
}

/// Sun on its way in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunGain {
    /// Through glass, into air and contents.
    pub glass: Power,
    /// On the shell, as it reaches the shell store; below zero when a roof
    /// radiates more to the sky than it gets.
    pub shell: Power,
}

impl Figures {
    /// The stores of heat and their paths.
    ///
    /// The shell store sits between the inside film and everything outside of
    /// it, so both together give the shell's coefficient back.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`] for a figure.
    pub fn stores(&self) -> Result<Stores, CabinError> {
        let glass_m2 = area_m2(self.wall_glass)? + area_m2(self.roof_glass)?;
        let glass_u = within(
            CabinInput::HeatTransfer,
            in_watts_per_square_meter_kelvin(self.glass_coefficient),
            GLASS_W_M2_K,
        )?;
        Ok(Stores {
            air: self.air_capacity,
            shell: self.shell_capacity,
            glass: watts_per_kelvin(glass_u * glass_m2),
            air_change: self.air_change()?,
            air_to_shell: watts_per_kelvin(self.shell_m2()? / INSIDE_FILM_M2_K_W),
            shell_to_outside: watts_per_kelvin(self.outer_w_m2_k()? * self.shell_m2()?),
        })
    }

    /// The store of water.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`] for a figure.
    pub fn moist_store(&self) -> Result<MoistStore, CabinError> {
        let buffer = within(CabinInput::DryAir, self.moisture_buffer, BUFFER)?;
        Ok(MoistStore {
            dry_air: kilograms(self.air_kg()? * buffer),
            air_change: self.air_change()?,
        })
    }

    /// Mass flow of the air change.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`] for a figure.
    pub fn air_change(&self) -> Result<MassRate, CabinError> {
        let per_hour = within(
            CabinInput::AirChangesPerHour,
            self.air_changes_per_hour,
            CHANGES_H,
        )?;
        Ok(kilograms_per_second(self.air_kg()? * per_hour / 3_600.0))
    }

    /// Sun through glass and on the shell, from the irradiance of a horizontal
    /// face and the mean over the four walls (each 0 to 1 500 W/m²).
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    ///
    /// Source: ASHRAE Handbook of Fundamentals (2017), ch. 18, sol-air temperature:
    /// its excess over the air, (absorptance x irradiance - sky loss) / h, at the
    /// outside of the shell's insulation, roof and lit walls by their areas.
    pub fn sun(
        &self,
        on_roof: HeatFluxDensity,
        on_walls: HeatFluxDensity,
    ) -> Result<SunGain, CabinError> {
        let irradiance = |of: HeatFluxDensity| {
            within(
                CabinInput::Irradiance,
                in_watts_per_square_meter(of),
                IRRADIANCE_W_M2,
            )
        };
        let share = |of: f64| within(CabinInput::Share, of, (0.0, 1.0));
        let (roof_w_m2, wall_w_m2) = (irradiance(on_roof)?, irradiance(on_walls)?);
        let open = 1.0 - share(self.shade)?;
        let let_in = share(self.glass_gain)? * open;
        let absorbed = share(self.absorptance)?;
        let glass_w = let_in
            * (area_m2(self.wall_glass)? * wall_w_m2 * share(self.lit_walls)?
                + area_m2(self.roof_glass)? * roof_w_m2);
        let face_w = |m2: f64, w_m2: f64, face: Face| {
            m2 * open * (absorbed * w_m2 - face.sky_loss_w_m2()) / OUTSIDE_FILM_W_M2_K
        };
        let excess_m2_k = face_w(area_m2(self.roof)?, roof_w_m2, Face::Horizontal)
            + face_w(
                area_m2(self.walls)? * share(self.lit_walls)?,
                wall_w_m2,
                Face::Vertical,
            );
        Ok(SunGain {
            glass: watts(glass_w),
            shell: watts(self.outer_w_m2_k()? * excess_m2_k),
        })
    }

    /// Shell area: floor, roof and walls without glass, m².
    fn shell_m2(&self) -> Result<f64, CabinError> {
        Ok(area_m2(self.floor)? + area_m2(self.roof)? + area_m2(self.walls)?)
    }

    /// Coefficient from the shell store outwards: what is left of the shell's
    /// resistance when the inside film is taken off.
    fn outer_w_m2_k(&self) -> Result<f64, CabinError> {
        let u = within(
            CabinInput::HeatTransfer,
            in_watts_per_square_meter_kelvin(self.shell_coefficient),
            SHELL_W_M2_K,
        )?;
        Ok(1.0 / (1.0 / u - INSIDE_FILM_M2_K_W))
    }

    /// Dry air inside, kg.
    fn air_kg(&self) -> Result<f64, CabinError> {
        let m3 = within(CabinInput::Volume, in_cubic_meters(self.volume), VOLUME_M3)?;
        let kg_m3 = within(CabinInput::Density, self.air_density_kg_m3, DENSITY_KG_M3)?;
        Ok(m3 * kg_m3)
    }
}

/// An area in plain numbers.
fn area_m2(area: Area) -> Result<f64, CabinError> {
    within(CabinInput::Area, in_square_meters(area), AREA_M2)
}
