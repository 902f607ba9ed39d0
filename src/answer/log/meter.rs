//! What the amperes were logged by.

use crate::physics::bench::instrument::{Instrument, Kind};

/// The meter that the amperes were logged by: a shunt of this rating, or a clamp.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogMeter {
    /// A clamp; if not, a shunt.
    pub is_clamp: bool,
    /// The shunt's rating, of which its limits are a share; a clamp has none.
    pub shunt_a: f64,
}

impl Default for LogMeter {
    fn default() -> Self {
        Self {
            is_clamp: false,
            shunt_a: 100.0,
        }
    }
}

impl LogMeter {
    /// Its usual limits on amperes.
    #[must_use]
    pub fn amps(self) -> Instrument {
        if self.is_clamp {
            Kind::ClampMeter.usual(0.0)
        } else {
            Kind::ShuntMonitor.usual(self.shunt_a)
        }
    }
}
