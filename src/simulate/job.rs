//! What hangs on the bank during a run, and what ends the run.

use crate::{
    physics::battery::Pack,
    physics::circuit::{Branch, Inner, Point, Sag, settle},
};
use serde::{Deserialize, Serialize};

/// How a run ends, with the level that ended it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum Stop {
    /// The charge that the plan keeps back.
    /// `kept_percent`: share of what the bank holds that stays, 0 to 100.
    ChargeFloor { kept_percent: f64 },
    /// The battery's own electronics, at its terminals.
    /// `cutoff_v`: volts of the whole bank while it gives.
    OwnCutOff { cutoff_v: f64 },
    /// More than the bank may give continuously.
    /// `limit_a`: amps of the whole bank.
    CurrentLimit { limit_a: f64 },
    /// The unit stops itself, at its own terminals after the cable.
    UnitCutOff { cutoff_v: f64 },
    /// The inverter stops, at its input after the cable.
    InverterCutOff { cutoff_v: f64 },
    /// Asked for more than the inverter gives.
    /// `limit_w`: at its output, as it is rated.
    InverterLimit { limit_w: f64 },
    /// Asked for more than the converter gives.
    /// `limit_a`: at its output.
    ConverterLimit { limit_a: f64 },
    /// No current can carry the power through the resistance in the path.
    NoCurrentCarriesIt,
}

/// Levels watched besides the bank's own.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Limits {
    /// The level at the far end of the unit's cable, and who stops there.
    pub far_end: Option<Stop>,
    /// Power or current that the feed cannot give at any charge.
    pub overload: Option<Stop>,
}

/// The two states of a night: the unit on, and on standby.
///
/// Duty cycles are short beside the run, so a run sees their mean; limits see
/// the on-state, whose current is the larger.
///
/// [`UNIT`] is the unit's place in both lists; the other one is everything on the bus.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Job {
    /// Bus loads (at the terminals) and the unit (behind its cable).
    pub on: [Branch; 2],
    /// The same while the compressor rests: bus loads, and the unit's standby draw.
    pub off: [Branch; 2],
    /// Share of the time that the unit is on, above 0 to 1.
    pub duty: f64,
    /// What else ends a run, besides the pack's cut-off and current limit.
    pub limits: Limits,
}

/// The place of the unit among the branches.
pub const UNIT: usize = 1;

/// What stands between a pack's open-circuit volts and its terminals, where its
/// resistance is so many times as large as stated.
///
/// `ohm_ratio` is above 0: 1 as stated, more in the cold
/// ([`TemperatureEffects`](crate::physics::battery::TemperatureEffects)).
#[must_use]
pub fn inner_of(pack: &Pack, ohm_ratio: f64) -> Inner {
    let sag = pack.polarisation.map(|it| {
        let it = it.at_ohm_ratio(ohm_ratio);
        Sag {
            ohm: it.ohm,
            tafel_v: it.tafel_v,
            exchange_a: it.exchange_a,
            gap_v: it.gap_v,
            gap_a: it.gap_a,
        }
    });
    Inner {
        ohm: pack.ohm * ohm_ratio,
        sag,
    }
}

/// Both states at one charge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BothStates {
    /// The unit on: the heavier one, by which limits are judged.
    pub on: Point,
    /// The unit in its off-time; the same as `on` for a unit that never rests.
    pub off: Point,
}

/// Rounding that no limit should trip on.
const SLACK: f64 = 1e-9;

impl Job {
    /// The operating points at an open-circuit voltage, or what stops the run.
    ///
    /// # Errors
    /// The first level that the on-state does not keep.
    ///
    /// `ocv_v` is the open-circuit voltage of the whole pack. Of several levels the first in
    /// this order is named: what the feed cannot give, a power that no current carries, the
    /// battery's cut-off, its current limit, the cut-off at the end of the unit's cable.
    pub fn standing(&self, pack: &Pack, ocv_v: f64) -> Result<BothStates, Stop> {
        if let Some(overload) = self.limits.overload {
            return Err(overload);
        }
        let inner = inner_of(pack, 1.0);
        let on = settle(ocv_v, inner, &self.on).ok_or(Stop::NoCurrentCarriesIt)?;
        if on.bar_v < pack.cutoff_v - SLACK {
            return Err(Stop::OwnCutOff {
                cutoff_v: pack.cutoff_v,
            });
        }
        if let Some(limit_a) = pack.limit_a
            && on.amps > limit_a * (1.0 + SLACK)
        {
            return Err(Stop::CurrentLimit { limit_a });
        }
        if let Some(stop) = self.limits.far_end
            && let Stop::UnitCutOff { cutoff_v } | Stop::InverterCutOff { cutoff_v } = stop
            && self.on[UNIT].taker_v(on.bar_v) < cutoff_v - SLACK
        {
            return Err(stop);
        }
        let off = if self.duty < 1.0 {
            settle(ocv_v, inner, &self.off).ok_or(Stop::NoCurrentCarriesIt)?
        } else {
            on
        };
        Ok(BothStates { on, off })
    }

    /// Mean amps out of the bank, and how they change with its open-circuit volts.
    /// A and A/V; the second is 0 or below, as constant power draws less at more volts.
    #[must_use]
    pub fn mean_amps(&self, at: &BothStates) -> (f64, f64) {
        (
            self.mean(at.on.amps, at.off.amps),
            self.mean(at.on.amps_per_v, at.off.amps_per_v),
        )
    }

    /// The mean over both states of something of each.
    #[must_use]
    pub fn mean(&self, of_on: f64, of_off: f64) -> f64 {
        self.duty * of_on + (1.0 - self.duty) * of_off
    }
}
