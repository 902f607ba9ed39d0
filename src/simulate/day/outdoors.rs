//! Weather as it acts on cabin and panels.

use crate::{
    physics::cabin::Figures,
    physics::solar,
    physics::weather::{clear_sky::Sky, day::DayProfile},
    quantity::{celsius, watts_per_square_meter},
};

/// The figures of a run's weather.
#[derive(Clone, Debug, PartialEq)]
pub struct Weather {
    /// A day's temperatures by the clock, where no hours are imported.
    pub profile: DayProfile,
    /// Added to imported temperatures, which are exact but for this, K.
    pub warmer_k: f64,
    /// Through all the days, Celsius; the air's own temperature where that is lower, and
    /// imported hours where they have one.
    pub dew_point_c: f64,
    /// Humidity ratio at that dew point, kg/kg.
    pub dew_ratio: f64,
    /// How clear it is, where no hours are imported.
    pub sky: Sky,
    /// Share of light that the ground throws back, 0 to 1.
    pub albedo: f64,
    /// Over the panels, m/s.
    pub wind_m_s: f64,
}

impl Weather {
    /// Humidity ratio outdoors; the constant dew point's is known beforehand.
    pub(super) fn ratio(&self, pressure_pa: f64, dew_c: f64, outdoor_c: f64) -> f64 {
        if dew_c == self.dew_point_c && dew_c < outdoor_c {
            self.dew_ratio
        } else {
            ratio_at_dew_point(pressure_pa, dew_c)
        }
    }
}

/// Humidity ratio of air with this dew point (Celsius, Pa), kg/kg; 0 where there is no
/// such air.
#[must_use]
pub fn ratio_at_dew_point(pressure_pa: f64, dew_c: f64) -> f64 {
    let pressure = crate::quantity::pascals(pressure_pa);
    crate::physics::air::MoistAir::saturated(pressure, celsius(dew_c))
        .map_or(0.0, |air| air.humidity_ratio())
}

/// What acts on cabin and panels at a step's edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// Dry bulb outdoors.
    pub outdoor_c: f64,
    /// Humidity ratio outdoors, kg/kg.
    pub outdoor_ratio: f64,
    /// Irradiance on the level ground.
    pub global_w_m2: f64,
    /// Sun through the cabin's glass.
    pub sun_glass_w: f64,
    /// Sun on the shell as it reaches it, less what the roof radiates to the sky: so it may be
    /// below 0.
    pub sun_shell_w: f64,
    /// What the panels hold out; no power without panels or sun.
    pub offer: solar::Offer,
}

impl Air {
    /// So far on the way to the next edge: 0 here, 1 there.
    #[must_use]
    pub fn towards(&self, next: &Self, share: f64) -> Self {
        let mix = |a: f64, b: f64| a + share * (b - a);
        Self {
            outdoor_c: mix(self.outdoor_c, next.outdoor_c),
            outdoor_ratio: mix(self.outdoor_ratio, next.outdoor_ratio),
            global_w_m2: mix(self.global_w_m2, next.global_w_m2),
            sun_glass_w: mix(self.sun_glass_w, next.sun_glass_w),
            sun_shell_w: mix(self.sun_shell_w, next.sun_shell_w),
            offer: solar::Offer {
                power: self.offer.power + share * (next.offer.power - self.offer.power),
                cell: celsius(mix(
                    crate::quantity::in_celsius(self.offer.cell),
                    crate::quantity::in_celsius(next.offer.cell),
                )),
                warmth_factor: mix(self.offer.warmth_factor, next.offer.warmth_factor),
            },
        }
    }
}

/// [`Figures::sun`] is linear in both irradiances: its slopes, once.
pub(super) struct SunShare {
    glass_by_roof: f64,
    glass_by_wall: f64,
    shell_by_roof: f64,
    shell_by_wall: f64,
    /// What the shell loses to the sky disconnected.
    pub dark_shell_w: f64,
}

impl SunShare {
    /// Tried at three points: none, 1 kW/m² on the roof, 1 kW/m² on the walls.
    pub(super) fn of(figures: &Figures) -> Self {
        let at = |roof: f64, wall: f64| {
            figures
                .sun(watts_per_square_meter(roof), watts_per_square_meter(wall))
                .map_or((0.0, 0.0), |gain| {
                    use crate::quantity::in_watts;
                    (in_watts(gain.glass), in_watts(gain.shell))
                })
        };
        let (dark, roof, wall) = (at(0.0, 0.0), at(1000.0, 0.0), at(0.0, 1000.0));
        Self {
            glass_by_roof: (roof.0 - dark.0) / 1000.0,
            glass_by_wall: (wall.0 - dark.0) / 1000.0,
            shell_by_roof: (roof.1 - dark.1) / 1000.0,
            shell_by_wall: (wall.1 - dark.1) / 1000.0,
            dark_shell_w: dark.1,
        }
    }

    /// W through glass, by irradiance on the roof and the mean of the four walls.
    pub(super) fn glass_w(&self, roof_w_m2: f64, wall_w_m2: f64) -> f64 {
        self.glass_by_roof * roof_w_m2 + self.glass_by_wall * wall_w_m2
    }

    /// W into the shell, by the same two; at none of both what it loses to the sky.
    pub(super) fn shell_w(&self, roof_w_m2: f64, wall_w_m2: f64) -> f64 {
        self.dark_shell_w + self.shell_by_roof * roof_w_m2 + self.shell_by_wall * wall_w_m2
    }
}
