//! What drawn days are counted and ordered to.

use super::Band;
use serde::{Deserialize, Serialize};

/// Counted over the drawn nights. Raw shares: to be rounded where they are said.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Odds {
    /// Nights that were drawn and could be run.
    pub samples_count: u32,
    /// Of the bank not being empty before the wanted hour, 0 to 100.
    pub lasting_percent: f64,
    /// Of that, and the set point held wherever a mode was planned.
    pub holding_percent: f64,
    /// Of the bank not being empty in the whole span.
    pub never_empty_percent: f64,
    /// Hours until empty, never more than the span: 2.5, 50 and 97.5 % of the nights.
    pub hours_h: Band,
    /// Warmest cabin until the wanted hour, a mode planned.
    pub warmest_c: Band,
}

/// Low (2.5 %), middle and high (97.5 %) of the drawn nights at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BandPoint {
    /// From the plan's start.
    pub hours_h: f64,
    /// Share of what the bank holds, 0 to 100.
    pub charge_percent: Band,
    /// The cabin's air.
    pub cabin_c: Band,
    /// Dry bulb outdoors.
    pub outdoor_c: Band,
    /// From the panels, past the controller, as far as it was taken.
    pub solar_w: Band,
    /// The unit with its feed and cable.
    pub unit_w: Band,
}
