//! What each number handed to this room may be, and how a bad one is refused.
//!
//! Ranges are written once, in [`Input::range`]; a check is one comparison
//! that NaN fails, so no later arithmetic meets one.

use super::size::Size;
use crate::quantity::Power;

/// Why this room gave no number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Refusal {
    /// An input lies outside its accepted range (ends included), or is no
    /// number at all. The unit is the one named at the [`Input`].
    OutOfRange {
        /// The input at fault.
        input: Input,
        /// Least accepted value.
        low: f64,
        /// Greatest accepted value.
        high: f64,
    },
    /// No current carries the power asked for through that resistance.
    NoCurrentCarries {
        /// The most that any current could carry: V^2 / 4R.
        most: Power,
    },
    /// The conductor is smaller than the least size of the ampacity table.
    SmallerThanTable(Size),
    /// No battery is left to carry current.
    NoBatteryLeft,
}

/// An input of this room, with the unit its range is given in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Input {
    /// Cross-section of copper, mm2.
    Area,
    /// One-way length of a run, m.
    Length,
    /// Temperature of a conductor, C.
    ConductorTemperature,
    /// Temperature of the air a conductor lies in, C.
    Ambient,
    /// Temperature rating of insulation or of a terminal, C.
    TemperatureRating,
    /// Current of a load, A.
    Current,
    /// Current out of (positive) or into (negative) a bank, A.
    BankCurrent,
    /// Ampacity of a conductor or rating of a fuse, A.
    Ampacity,
    /// Voltage of a source, V.
    Volts,
    /// Resistance of a path, ohm.
    Resistance,
    /// Inner resistance of a battery or bank, ohm. Never zero: a source without
    /// resistance has no fault current to hold a fuse against.
    SourceResistance,
    /// Power drawn by a load, W.
    Power,
    /// Efficiency of what feeds the load, as a share of 1.
    Efficiency,
    /// Allowed drop, as a share of the source volts.
    AllowedDrop,
    /// Conductors in one bundle that carry current, counted.
    BundledConductors,
    /// Batteries, or strings of batteries, in parallel, counted.
    Batteries,
    /// Place of one battery in its row, counted from 0.
    BatteryIndex,
    /// Solar modules in series or strings in parallel, counted.
    Modules,
    /// Short-circuit current of a solar string, A.
    ShortCircuitCurrent,
    /// Change of open-circuit voltage, per kelvin, as a share of that voltage.
    VoltageCoefficient,
    /// Coldest or hottest air a solar module meets, C.
    ModuleTemperature,
    /// Battery cells in series, counted.
    Cells,
    /// Rated capacity of a battery, Ah.
    Capacity,
}

/// Share of the end of a range that conversions may cost.
const ROUNDING: f64 = 1e-12;

impl Input {
    /// Least and greatest accepted value, ends included.
    #[must_use]
    pub const fn range(self) -> (f64, f64) {
        match self {
            Self::Area => (0.05, 1000.0),
            Self::Length => (0.0, 500.0),
            Self::ConductorTemperature => (-60.0, 250.0),
            Self::Ambient => (-60.0, 120.0),
            Self::TemperatureRating => (60.0, 500.0),
            Self::Current => (1e-7, 5000.0),
            Self::BankCurrent => (-5000.0, 5000.0),
            Self::Ampacity => (0.0, 10_000.0),
            Self::Volts => (1.0, 1000.0),
            Self::Resistance => (0.0, 100.0),
            Self::SourceResistance => (1e-9, 400.0),
            Self::Power => (0.001, 100_000.0),
            Self::Efficiency => (0.05, 1.0),
            Self::AllowedDrop => (0.001, 0.5),
            Self::BundledConductors => (1.0, 1000.0),
            Self::Batteries => (1.0, 64.0),
            Self::BatteryIndex => (0.0, 63.0),
            Self::Modules => (1.0, 100.0),
            Self::ShortCircuitCurrent => (0.01, 200.0),
            Self::VoltageCoefficient => (-0.01, 0.0),
            Self::ModuleTemperature => (-60.0, 85.0),
            Self::Cells => (1.0, 400.0),
            Self::Capacity => (0.1, 20_000.0),
        }
    }

    /// The value itself when it lies within the range; drawn to the end it
    /// misses by no more than rounding, as 120 C may on its way through
    /// kelvins.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] otherwise; NaN and infinities always.
    pub fn check(self, value: f64) -> Result<f64, Refusal> {
        let (low, high) = self.range();
        let rounding = |end: f64| ROUNDING * end.abs().max(1.0);
        if (low - rounding(low)..=high + rounding(high)).contains(&value) {
            // Not `clamp`: for ends it does not know it brings along the writing of floats.
            Ok(value.max(low).min(high))
        } else {
            Err(Refusal::OutOfRange {
                input: self,
                low,
                high,
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ends_are_in_and_what_lies_past_them_is_named() {
        let (low, high) = Input::Length.range();
        assert_eq!(Input::Ambient.check(120.000_000_000_05), Ok(120.0));
        assert_eq!(Input::Length.check(low), Ok(low));
        assert_eq!(Input::Length.check(high), Ok(high));
        let refusal = Err(Refusal::OutOfRange {
            input: Input::Length,
            low,
            high,
        });
        for bad in [-0.001, 500.001, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(Input::Length.check(bad), refusal);
        }
    }
}
