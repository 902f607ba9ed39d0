//! Light on a tilted plane.

use super::{Input, OutOfRange, within};

/// Largest irradiance taken in, W/m2: a little over the sun outside the air.
const MOST_W_M2: f64 = 2_000.0;

/// Least sine of the sun's height by which the sky's bright spot is scaled; the
/// sine of one degree, as in pvlib.
const LEAST_SINE: f64 = 0.017_45;

/// A direction to the sun: a unit vector east, north, up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sun {
    east: f64,
    north: f64,
    up: f64,
}

impl Sun {
    /// The sun at an elevation and an azimuth.
    ///
    /// - `elevation_deg`: -90 to 90, as seen through the air
    /// - `azimuth_deg`: -360 to 360, clockwise from north
    ///
    /// # Errors
    /// The first angle out of its range.
    pub fn from_angles(elevation_deg: f64, azimuth_deg: f64) -> Result<Self, OutOfRange> {
        let elevation = within(Input::Elevation, elevation_deg, -90.0, 90.0)?;
        let azimuth = within(Input::Azimuth, azimuth_deg, -360.0, 360.0)?;
        let (up, level) = elevation.to_radians().sin_cos();
        let (east, north) = azimuth.to_radians().sin_cos();
        Ok(Self {
            east: level * east,
            north: level * north,
            up,
        })
    }

    /// The sun in a direction given by parts east, north and up, of any length.
    ///
    /// # Errors
    /// A direction with no length, or one that is not finite.
    pub fn from_parts([east, north, up]: [f64; 3]) -> Result<Self, OutOfRange> {
        let length = (east * east + north * north + up * up).sqrt();
        within(Input::Direction, length, 1e-6, 1e6)?;
        Ok(Self {
            east: east / length,
            north: north / length,
            up: up / length,
        })
    }
}

/// Light to be shared out on planes, W/m2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Light {
    global_w_m2: f64,
    beam_w_m2: f64,
    diffuse_w_m2: f64,
    outside_w_m2: f64,
}

impl Light {
    /// Light, each part 0 to 2,000 W/m2.
    ///
    /// - `global_w_m2`, `diffuse_w_m2`: on the horizontal
    /// - `beam_w_m2`: facing the sun
    /// - `outside_w_m2`: facing the sun, outside the air
    ///
    /// # Errors
    /// A part out of range.
    pub fn new(
        global_w_m2: f64,
        beam_w_m2: f64,
        diffuse_w_m2: f64,
        outside_w_m2: f64,
    ) -> Result<Self, OutOfRange> {
        let part = |value| within(Input::Irradiance, value, 0.0, MOST_W_M2);
        Ok(Self {
            global_w_m2: part(global_w_m2)?,
            beam_w_m2: part(beam_w_m2)?,
            diffuse_w_m2: part(diffuse_w_m2)?,
            outside_w_m2: part(outside_w_m2)?,
        })
    }
}

/// How the sky's diffuse light is spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SkyModel {
    /// Evenly. Source: Liu and Jordan 1963; Duffie and Beckman, *Solar
    /// Engineering of Thermal Processes*, section 2.15.
    Isotropic,
    /// A share of it, the beam's share of the sun outside the air, comes from
    /// about the sun. Source: Hay and Davies 1980; Duffie and Beckman, 2.16.
    HayDavies,
}

/// Light on a plane by where it comes from, W/m2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlaneLight {
    /// Straight from the sun.
    pub beam_w_m2: f64,
    /// From the sky.
    pub sky_w_m2: f64,
    /// Thrown back by the ground.
    pub ground_w_m2: f64,
}

impl PlaneLight {
    /// All of it.
    #[must_use]
    pub fn total_w_m2(&self) -> f64 {
        self.beam_w_m2 + self.sky_w_m2 + self.ground_w_m2
    }
}

/// A plane: panel, wall or window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// Unit vector out of the plane: east, north, up.
    normal: [f64; 3],
}

impl Plane {
    /// A plane.
    ///
    /// - `tilt_deg`: 0 (lying face up) to 180 (face down)
    /// - `azimuth_deg`: -360 to 360, where it faces, clockwise from north
    ///
    /// # Errors
    /// The first angle out of its range.
    pub fn new(tilt_deg: f64, azimuth_deg: f64) -> Result<Self, OutOfRange> {
        let tilt = within(Input::Tilt, tilt_deg, 0.0, 180.0)?;
        let azimuth = within(Input::Azimuth, azimuth_deg, -360.0, 360.0)?;
        let (level, up) = tilt.to_radians().sin_cos();
        let (east, north) = azimuth.to_radians().sin_cos();
        Ok(Self {
            normal: [level * east, level * north, up],
        })
    }

    /// Cosine of the angle between the sun and the plane's normal; negative with
    /// the sun behind. The scalar product of the two.
    #[must_use]
    pub fn incidence_cosine(&self, sun: &Sun) -> f64 {
        let [east, north, up] = self.normal;
        (sun.east * east + sun.north * north + sun.up * up).clamp(-1.0, 1.0)
    }

    /// Light on the plane.
    ///
    /// - `ground_albedo`: taken as 0 to 1, the share of global light thrown back
    #[must_use]
    pub fn light(
        &self,
        sun: &Sun,
        light: &Light,
        ground_albedo: f64,
        model: SkyModel,
    ) -> PlaneLight {
        let facing = self.incidence_cosine(sun).max(0.0);
        let up = self.normal[2];
        let sky_seen = (1.0 + up) / 2.0;
        let about_sun = match model {
            SkyModel::HayDavies if light.outside_w_m2 > 0.0 => {
                (light.beam_w_m2 / light.outside_w_m2).min(1.0)
            }
            _ => 0.0,
        };
        let spot_factor = facing / sun.up.max(LEAST_SINE);
        let spread = about_sun * spot_factor + (1.0 - about_sun) * sky_seen;
        PlaneLight {
            beam_w_m2: light.beam_w_m2 * facing,
            sky_w_m2: light.diffuse_w_m2 * spread,
            ground_w_m2: light.global_w_m2 * ground_albedo.clamp(0.0, 1.0) * (1.0 - up) / 2.0,
        }
    }
}
