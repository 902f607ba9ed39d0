//! The hand formulas of the trade, to check a figure against on paper.
//!
//! Sensible = 1.08 x cfm x °F, total = 4.5 x cfm x Btu/lb, latent = 0.68 x cfm
//! x grains. They hold for *standard* air at sea level; real hot air is
//! thinner, so they overshoot by 8 % and more. The engine does not use them.

use till_morning::physics::air::{AirSide, MoistAir};
use till_morning::quantity::*;

/// Standard air, lb/ft³, and minutes an hour: what all three constants share.
const LB_H_CFM: f64 = 60.0 * 0.075;
/// Specific heat of moist air, Btu/(lb °F).
const CP_BTU_LB_F: f64 = 0.24;
/// Heat to condense a pound of water, Btu, as the 0.68 has it.
const LATENT_BTU_LB: f64 = 1_061.0;
/// Grains in a pound.
const GRAINS_LB: f64 = 7_000.0;
/// One Btu/lb in J/kg.
const BTU_LB_J_KG: f64 = 2_326.0;

/// The three constants: 1.08, 4.5 and 0.68 at sea level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Constants {
    /// Btu/h per cfm and °F.
    pub sensible: f64,
    /// Btu/h per cfm and Btu/lb.
    pub total: f64,
    /// Btu/h per cfm and grain of water a pound.
    pub latent: f64,
}

impl Constants {
    /// The constants where air is `density_ratio` times as dense as at sea level.
    ///
    /// Source: ASHRAE Handbook of Fundamentals (2017), ch. 18, eqs. 8 to 11.
    #[must_use]
    pub fn at(density_ratio: f64) -> Self {
        let lb_h_cfm = LB_H_CFM * density_ratio;
        Self {
            sensible: lb_h_cfm * CP_BTU_LB_F,
            total: lb_h_cfm,
            latent: lb_h_cfm * LATENT_BTU_LB / GRAINS_LB,
        }
    }
}

/// A figure by hand: total, sensible, latent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ByHand {
    /// 4.5 x cfm x Btu/lb.
    pub total: Power,
    /// 1.08 x cfm x °F.
    pub sensible: Power,
    /// 0.68 x cfm x grains.
    pub latent: Power,
}

/// What the constants make of a volume flow between the states of a result.
#[must_use]
pub fn by_hand(flow: VolumeRate, between: &AirSide, constants: Constants) -> ByHand {
    let cfm = in_cubic_feet_per_minute(flow);
    let (inlet, outlet) = (&between.inlet, &between.outlet);
    let joules = |air: &MoistAir| in_joules_per_kilogram(air.enthalpy());
    let fall_f = 1.8 * (in_celsius(inlet.dry_bulb()) - in_celsius(outlet.dry_bulb()));
    let fall_btu_lb = (joules(inlet) - joules(outlet)) / BTU_LB_J_KG;
    let fall_grains = (inlet.humidity_ratio() - outlet.humidity_ratio()) * GRAINS_LB;
    ByHand {
        total: btu_per_hour(constants.total * cfm * fall_btu_lb),
        sensible: btu_per_hour(constants.sensible * cfm * fall_f),
        latent: btu_per_hour(constants.latent * cfm * fall_grains),
    }
}
