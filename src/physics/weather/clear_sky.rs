//! Sunshine on the ground: a clear sky, then clouds.
//!
//! The clear sky is Ineichen and Perez (2002), from the sun's height, the
//! altitude and one number for haze, the Linke turbidity. Clouds take away by
//! Kasten and Czeplak (1980); what is left is split into beam and diffuse by
//! Erbs, Klein and Duffie (1982).

use super::{Input, OutOfRange, within};

/// Irradiance outside the air at the earth's mean distance, W/m2.
///
/// 1366.1 (ASTM E490-00) rather than the 1361 of later satellites: the models
/// here were fitted to it.
const SOLAR_CONSTANT_W_M2: f64 = 1_366.1;

/// Irradiance by its three usual parts, W/m2.
///
/// `ghi = dni * sin(elevation) + dhi`, by construction for every model here.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Irradiance {
    /// Global, on the horizontal.
    pub ghi_w_m2: f64,
    /// Beam, on a plane facing the sun.
    pub dni_w_m2: f64,
    /// Diffuse, on the horizontal.
    pub dhi_w_m2: f64,
}

/// The state of the sky over a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sky {
    linke_turbidity: f64,
    cloud_share: f64,
}

impl Sky {
    /// A sky.
    ///
    /// - `linke_turbidity`: 1 to 10. How many clean dry atmospheres would dim the
    ///   beam as much: 2 clean cold air, 3 clean warm air, 4 to 6 moist or
    ///   dusty, 7 polluted (the ranges of Remund et al., ISES 2003)
    /// - `cloud_share`: 0 (clear) to 1 (overcast)
    ///
    /// # Errors
    /// The first number out of its range.
    pub fn new(linke_turbidity: f64, cloud_share: f64) -> Result<Self, OutOfRange> {
        Ok(Self {
            linke_turbidity: within(Input::Turbidity, linke_turbidity, 1.0, 10.0)?,
            cloud_share: within(Input::CloudShare, cloud_share, 0.0, 1.0)?,
        })
    }

    /// Irradiance under this sky.
    ///
    /// - `apparent_elevation_deg`: with refraction; at zero or below all is zero
    /// - `extraterrestrial_w_m2`: see [`extraterrestrial_w_m2`]
    /// - `altitude_m`, `pressure_pa`: the site's
    #[must_use]
    pub fn irradiance(
        &self,
        apparent_elevation_deg: f64,
        extraterrestrial_w_m2: f64,
        altitude_m: f64,
        pressure_pa: f64,
    ) -> Irradiance {
        if !(apparent_elevation_deg > 0.0 && extraterrestrial_w_m2 > 0.0) {
            return Irradiance::default();
        }
        let air_mass = relative_air_mass(apparent_elevation_deg) * pressure_pa / 101_325.0;
        let sin_elevation = apparent_elevation_deg.to_radians().sin();
        let clear = ineichen_perez(
            sin_elevation,
            air_mass,
            extraterrestrial_w_m2,
            altitude_m,
            self.linke_turbidity,
        );
        under_cloud(
            clear,
            self.cloud_share,
            sin_elevation,
            extraterrestrial_w_m2,
        )
    }
}

/// Irradiance outside the air on a plane facing the sun, W/m2, at a distance
/// in astronomical units.
#[must_use]
pub fn extraterrestrial_w_m2(distance_au: f64) -> f64 {
    SOLAR_CONSTANT_W_M2 / (distance_au * distance_au)
}

/// How many vertical atmospheres the beam passes, at sea-level pressure; for
/// apparent elevations above zero.
///
/// Source: Kasten and Young, Applied Optics 28 (1989) 4735.
fn relative_air_mass(apparent_elevation_deg: f64) -> f64 {
    let sine = apparent_elevation_deg.to_radians().sin();
    1.0 / (sine + 0.505_72 * (apparent_elevation_deg + 6.079_95).powf(-1.636_4))
}

/// Clear-sky irradiance.
///
/// Source: Ineichen and Perez, Solar Energy 73 (2002) 151, with the global
/// formula as corrected in Perez et al., Solar Energy 73 (2002) 307, without
/// the latter's enhancement for very long paths. The beam is the lesser of the
/// two there given.
fn ineichen_perez(
    sin_elevation: f64,
    air_mass: f64,
    extraterrestrial_w_m2: f64,
    altitude_m: f64,
    linke_turbidity: f64,
) -> Irradiance {
    let low_scale = (-altitude_m / 8_000.0).exp();
    let haze_scale = (-altitude_m / 1_250.0).exp();
    let gain = 5.09e-5 * altitude_m + 0.868;
    let loss = 3.92e-5 * altitude_m + 0.038_7;
    let through = (-loss * air_mass * (low_scale + haze_scale * (linke_turbidity - 1.0))).exp();
    let ghi = gain * extraterrestrial_w_m2 * sin_elevation * through;

    let beam = (0.664 + 0.163 / low_scale)
        * extraterrestrial_w_m2
        * (-0.09 * air_mass * (linke_turbidity - 1.0)).exp();
    let most_share = 1.0 - (0.1 - 0.2 * (-linke_turbidity).exp()) / (0.1 + 0.882 / low_scale);
    let dni = beam.min(ghi * most_share / sin_elevation);
    Irradiance {
        ghi_w_m2: ghi,
        dni_w_m2: dni,
        dhi_w_m2: (ghi - dni * sin_elevation).max(0.0),
    }
}

/// A clear sky's irradiance with a share of it under cloud.
///
/// Global falls to `1 - 0.75 N^3.4` (Kasten and Czeplak, Solar Energy 24 (1980)
/// 177). The beam falls by the ratio of what [`split`] gives for the cloudy and
/// the clear global: the joining is ours, so that no cloud leaves the clear
/// sky's own split untouched.
fn under_cloud(
    clear: Irradiance,
    cloud_share: f64,
    sin_elevation: f64,
    extraterrestrial_w_m2: f64,
) -> Irradiance {
    if cloud_share <= 0.0 {
        return clear;
    }
    let left = 1.0 - 0.75 * cloud_share.powf(3.4);
    let ghi = clear.ghi_w_m2 * left;
    let clear_beam = split(clear.ghi_w_m2, sin_elevation, extraterrestrial_w_m2).dni_w_m2;
    let cloudy_beam = split(ghi, sin_elevation, extraterrestrial_w_m2).dni_w_m2;
    // Where the split sees no beam at all the sun is within 3 degrees of the
    // horizon. Clouds never favour the beam: hence `min`.
    let beam_left = if clear_beam > 0.0 {
        (cloudy_beam / clear_beam).min(left)
    } else {
        left
    };
    let dni = clear.dni_w_m2 * beam_left;
    Irradiance {
        ghi_w_m2: ghi,
        dni_w_m2: dni,
        dhi_w_m2: (ghi - dni * sin_elevation).max(0.0),
    }
}

/// Global irradiance split into beam and diffuse by its share of what arrives
/// outside the air.
///
/// All diffuse within 3 degrees of the horizon, where the share means little.
/// Good to about a tenth of the diffuse as an hourly mean, less at an instant.
///
/// - `ghi_w_m2`: zero or more; else all is zero
/// - `sin_elevation`: of the sun, for the middle of the time averaged over
///
/// Source: Erbs, Klein and Duffie, Solar Energy 28 (1982) 293, equation 1.
#[must_use]
pub fn split(ghi_w_m2: f64, sin_elevation: f64, extraterrestrial_w_m2: f64) -> Irradiance {
    if !(ghi_w_m2 > 0.0 && ghi_w_m2.is_finite()) {
        return Irradiance::default();
    }
    let lowest = 3.0_f64.to_radians().sin();
    if !(sin_elevation >= lowest && extraterrestrial_w_m2 > 0.0) {
        return Irradiance {
            ghi_w_m2,
            dni_w_m2: 0.0,
            dhi_w_m2: ghi_w_m2,
        };
    }
    // Near the horizon the share is taken against a sun a little higher: 0.065,
    // the floor that pvlib puts there.
    let clearness = ghi_w_m2 / (extraterrestrial_w_m2 * sin_elevation.max(0.065));
    let dhi_w_m2 = ghi_w_m2 * diffuse_share(clearness.min(1.0));
    Irradiance {
        ghi_w_m2,
        dni_w_m2: (ghi_w_m2 - dhi_w_m2) / sin_elevation,
        dhi_w_m2,
    }
}

/// Diffuse share of the global at a clearness. Erbs et al., equation 1.
fn diffuse_share(clearness: f64) -> f64 {
    let k = clearness;
    if k <= 0.22 {
        1.0 - 0.09 * k
    } else if k <= 0.8 {
        0.951_1 + k * (-0.160_4 + k * (4.388 + k * (-16.638 + k * 12.336)))
    } else {
        0.165
    }
}
