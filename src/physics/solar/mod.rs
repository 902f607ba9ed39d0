//! What feeds the bank: solar panels, from sunlight to current into the bank, and
//! chargers of other kinds.
//!
//! Pure functions of their arguments: the sun's direction and strength, the air's
//! temperature and the bank's voltage are handed in, so that this room knows
//! neither the weather nor the bank.
//!
//! The chain of the panels, one file a link: light on each [`plane`], the [`cell`]'s
//! temperature, what [`losses`] leave, and the [`controller`]. Power follows
//! light in proportion and falls with the cell's temperature; against a
//! one-diode model that reads true to 1 % from 600 W/m2 up, 2 % high at 400 and
//! 10 % high at 100 W/m2, where there is little to be had.

pub mod cell;
pub mod charger;
pub mod controller;
pub mod losses;
pub mod plane;

use crate::quantity::{Power, ThermodynamicTemperature, celsius, in_celsius, in_watts, watts};
use cell::Mounting;
use losses::Losses;
use plane::{Light, Plane, PlaneLight, SkyModel, Sun};

/// Most groups of panels in an array.
pub const MOST_GROUPS: usize = 8;

/// Irradiance at which panels are rated, W/m2 (IEC 61215, standard test
/// conditions).
const RATED_W_M2: f64 = 1_000.0;

/// Cell temperature at which panels are rated, degrees Celsius.
const RATED_C: f64 = 25.0;

/// An input of this room, to name it in an [`OutOfRange`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Input {
    /// Rated power of a group of panels, watts.
    RatedPower,
    /// Share of a group's output lost to shade.
    ShadedShare,
    /// How many groups an array has.
    Groups,
    /// Change of power by the kelvin, as a share.
    PowerPerKelvin,
    /// Change of open-circuit voltage by the kelvin, as a share.
    OpenVoltsPerKelvin,
    /// Voltage of the array at its most power, or at open circuit.
    ArrayVolts,
    /// Share of light that the ground throws back.
    GroundAlbedo,
    /// Tilt of a plane, degrees.
    Tilt,
    /// Azimuth of a plane or of the sun, degrees.
    Azimuth,
    /// Elevation of the sun, degrees.
    Elevation,
    /// A direction to the sun.
    Direction,
    /// An irradiance, W/m2.
    Irradiance,
    /// A share lost.
    LostShare,
    /// Efficiency of a controller.
    Efficiency,
    /// Most current of a controller, amperes.
    MostCurrent,
    /// Air temperature, degrees Celsius.
    AirTemperature,
    /// Wind speed, m/s.
    Wind,
}

/// An input outside its accepted range, or not a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    /// Which input.
    pub input: Input,
    /// The least accepted value, in the input's unit.
    pub least: f64,
    /// The greatest accepted value.
    pub most: f64,
}

/// `value` if it lies in `least..=most`; not-a-number never does.
fn within(input: Input, value: f64, least: f64, most: f64) -> Result<f64, OutOfRange> {
    if (least..=most).contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange { input, least, most })
    }
}

/// Panels that lie alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Group {
    rated_w: f64,
    plane: Plane,
    mounting: Mounting,
    shaded_share: f64,
}

impl Group {
    /// A group of panels.
    ///
    /// - `rated`: 0 to 20,000 W, the label's watts at standard test conditions
    /// - `shaded_share`: 0 to 1 of the output over the day lost to racks, trees and
    ///   vents. Counted here and nowhere else: [`Losses`] has no shade
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn new(
        rated: Power,
        plane: Plane,
        mounting: Mounting,
        shaded_share: f64,
    ) -> Result<Self, OutOfRange> {
        Ok(Self {
            rated_w: within(Input::RatedPower, in_watts(rated), 0.0, 20_000.0)?,
            plane,
            mounting,
            shaded_share: within(Input::ShadedShare, shaded_share, 0.0, 1.0)?,
        })
    }
}

/// All panels on one controller.
#[derive(Debug, Clone, PartialEq)]
pub struct Array {
    groups: Vec<Group>,
    power_per_kelvin: f64,
    kept: f64,
    ground_albedo: f64,
}

/// What the air does to the panels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    temperature_c: f64,
    wind_m_s: f64,
}

impl Air {
    /// Air over the panels.
    ///
    /// - `temperature`: -60 to 70 degrees Celsius
    /// - `wind_m_s`: 0 to 80 m/s as measured at 10 m height; in the lee of
    ///   anything, or parked on a still day, take 1
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn new(temperature: ThermodynamicTemperature, wind_m_s: f64) -> Result<Self, OutOfRange> {
        let temperature_c = within(Input::AirTemperature, in_celsius(temperature), -60.0, 70.0)?;
        Ok(Self {
            temperature_c,
            wind_m_s: within(Input::Wind, wind_m_s, 0.0, 80.0)?,
        })
    }
}

/// One group's state, for showing the working.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroupOutput {
    /// Light on its plane, before shade.
    pub light: PlaneLight,
    /// Temperature of its cells.
    pub cell: ThermodynamicTemperature,
    /// Power out of it, after shade and losses.
    pub power: Power,
}

/// What an array holds out to its controller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Offer {
    /// Power at its best voltage, after shade and losses.
    pub power: Power,
    /// Temperature of its cells: the groups' mean by power, or the air's in the
    /// dark.
    pub cell: ThermodynamicTemperature,
    /// Power at that temperature over power at the rated one.
    pub warmth_factor: f64,
}

impl Array {
    /// An array.
    ///
    /// - `groups`: 1 to 8
    /// - `power_per_kelvin`: -0.01 to 0, from the panel's sheet; crystalline silicon
    ///   loses 0.003 to 0.005 of its power by the kelvin
    /// - `ground_albedo`: 0 to 1; grass and soil 0.2, dry salt or snow 0.6 and more
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn new(
        groups: Vec<Group>,
        power_per_kelvin: f64,
        losses: &Losses,
        ground_albedo: f64,
    ) -> Result<Self, OutOfRange> {
        #[expect(clippy::cast_precision_loss, reason = "compared with 8")]
        within(Input::Groups, groups.len() as f64, 1.0, MOST_GROUPS as f64)?;
        Ok(Self {
            groups,
            power_per_kelvin: within(Input::PowerPerKelvin, power_per_kelvin, -0.01, 0.0)?,
            kept: losses.kept()?,
            ground_albedo: within(Input::GroundAlbedo, ground_albedo, 0.0, 1.0)?,
        })
    }

    /// What all groups offer together, each at its best: exact for groups that
    /// lie alike or have a controller each, a little high for others.
    ///
    /// Source of the proportion: Dobos, NREL/TP-6A20-62641 (2014), the array model.
    #[must_use]
    pub fn offer(&self, sun: &Sun, light: &Light, air: &Air) -> Offer {
        let (mut power_w, mut watts_by_celsius) = (0.0, 0.0);
        for group in self.outputs(sun, light, air) {
            let group_w = in_watts(group.power);
            power_w += group_w;
            watts_by_celsius += group_w * in_celsius(group.cell);
        }
        let cell = celsius(if power_w > 0.0 {
            watts_by_celsius / power_w
        } else {
            air.temperature_c
        });
        Offer {
            power: watts(power_w),
            cell,
            warmth_factor: self.warmth_factor(cell),
        }
    }

    /// Each group's state, in the order given.
    pub fn outputs(
        &self,
        sun: &Sun,
        light: &Light,
        air: &Air,
    ) -> impl Iterator<Item = GroupOutput> {
        self.groups
            .iter()
            .map(|group| self.output(group, sun, light, air))
    }

    fn output(&self, group: &Group, sun: &Sun, light: &Light, air: &Air) -> GroupOutput {
        let on_plane = group
            .plane
            .light(sun, light, self.ground_albedo, SkyModel::HayDavies);
        let light_w_m2 = on_plane.total_w_m2();
        let cell = group.mounting.cell_temperature(light_w_m2, air);
        let power_w = group.rated_w * light_w_m2 / RATED_W_M2
            * self.warmth_factor(cell)
            * self.kept
            * (1.0 - group.shaded_share);
        GroupOutput {
            light: on_plane,
            cell,
            power: watts(power_w),
        }
    }

    /// Power at a cell temperature over that at the rated one; never below zero.
    #[must_use]
    pub fn warmth_factor(&self, cell: ThermodynamicTemperature) -> f64 {
        (1.0 + self.power_per_kelvin * (in_celsius(cell) - RATED_C)).max(0.0)
    }
}
