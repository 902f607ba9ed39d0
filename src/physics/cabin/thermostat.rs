//! How the unit is told to run.

use super::error::{CabinError, CabinInput, within};
use super::state::RANGE_C;
use crate::quantity::{
    TemperatureInterval, ThermodynamicTemperature, celsius, in_celsius, in_kelvin_steps,
    kelvin_steps,
};

/// Dead bands accepted, K.
pub const BAND_K: (f64, f64) = (0.05, 20.0);
/// Shares of full capacity accepted as a floor.
pub const FLOOR: (f64, f64) = (0.0, 0.99);
/// Hair by which a modulating unit's temperature passes the set point before
/// it counts as passed, K. Keeps two states from handing over for ever.
pub(super) const HAIR_K: f64 = 1e-9;
/// The same for a load passing a capacity, W.
pub(super) const HAIR_W: f64 = 1e-6;
/// How far from the set point still counts as holding it, K.
const HOLDING_K: f64 = 1e-6;

/// What the unit does when.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Thermostat {
    /// Never runs.
    Off,
    /// Runs at full capacity whatever the temperature.
    RunsOn,
    /// On and off: starts at `on_above`, stops at `off_below`.
    Cycling {
        /// The air at which it stops.
        off_below: ThermodynamicTemperature,
        /// The air at which it starts.
        on_above: ThermodynamicTemperature,
    },
    /// Follows the load between a floor and full capacity and so holds the set
    /// point; below the floor it cycles about it within the band.
    Modulating {
        /// The air it holds.
        set: ThermodynamicTemperature,
        /// Whole width of the band it cycles in when the load is too small.
        band: TemperatureInterval,
        /// Least capacity over full capacity.
        floor: f64,
    },
}

/// What the unit is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Running {
    /// Not cooling.
    #[default]
    Off,
    /// On, drawing, and not cooling yet: thousandths of a second until it does.
    Starting { left_ms: u32 },
    /// At full capacity.
    Full,
    /// At its floor: the load is smaller still.
    Floor,
    /// Matching the load, the air at the set point.
    Hold,
}

impl Running {
    /// Whether the unit cools at all.
    #[must_use]
    pub fn is_on(self) -> bool {
        self != Self::Off
    }
}

/// A thermostat, checked and in plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Rule {
    pub off_c: f64,
    pub on_c: f64,
    /// The set point of a modulating unit.
    pub set_c: Option<f64>,
    pub floor: f64,
    pub kind: Kind,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Never,
    Always,
    ByAir,
}

impl Thermostat {
    /// The same thermostat with its cycles smoothed out: the air rests at the
    /// middle of the band and the unit takes exactly what comes in.
    ///
    /// For sampling many runs: it costs five to ten times less, keeps the
    /// energy within 0.5 %, and has no starts to count. Take power from
    /// [`super::Step::full_s`], not from the running time.
    #[must_use]
    pub fn averaged(self) -> Self {
        match self {
            Self::Off | Self::RunsOn => self,
            Self::Cycling {
                off_below,
                on_above,
            } => {
                let band_k = in_celsius(on_above) - in_celsius(off_below);
                Self::Modulating {
                    set: celsius(in_celsius(off_below) + 0.5 * band_k),
                    band: kelvin_steps(band_k),
                    floor: 0.0,
                }
            }
            Self::Modulating { set, band, .. } => Self::Modulating {
                set,
                band,
                floor: 0.0,
            },
        }
    }

    /// The thermostat in plain numbers.
    ///
    /// Range: temperatures -100 to 150 °C, dead band 0.05 to 20 K, floor 0 to 0.99.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn rule(self) -> Result<Rule, CabinError> {
        let plain = |kind| Rule {
            off_c: 0.0,
            on_c: 0.0,
            set_c: None,
            floor: 1.0,
            kind,
        };
        let temperature = |t| within(CabinInput::Temperature, in_celsius(t), RANGE_C);
        match self {
            Self::Off => Ok(plain(Kind::Never)),
            Self::RunsOn => Ok(plain(Kind::Always)),
            Self::Cycling {
                off_below,
                on_above,
            } => {
                let (off_c, on_c) = (temperature(off_below)?, temperature(on_above)?);
                within(CabinInput::Band, on_c - off_c, BAND_K)?;
                Ok(Rule {
                    off_c,
                    on_c,
                    ..plain(Kind::ByAir)
                })
            }
            Self::Modulating { set, band, floor } => {
                let set_c = temperature(set)?;
                let band_k = within(CabinInput::Band, in_kelvin_steps(band), BAND_K)?;
                Ok(Rule {
                    off_c: set_c - 0.5 * band_k,
                    on_c: set_c + 0.5 * band_k,
                    set_c: Some(set_c),
                    floor: within(CabinInput::Floor, floor, FLOOR)?,
                    kind: Kind::ByAir,
                })
            }
        }
    }
}

impl Rule {
    /// What the unit does at the start of a step, given what it did and how
    /// warm it is: capacities may have changed between steps.
    pub(super) fn begin(&self, was: Running, air_c: f64, available: bool) -> Running {
        match self.kind {
            _ if !available => Running::Off,
            Kind::Never => Running::Off,
            Kind::Always => Running::Full,
            Kind::ByAir => match self.set_c {
                None if matches!(was, Running::Starting { .. }) => was,
                None if was.is_on() => Running::Full,
                None => Running::Off,
                Some(set_c) => begin_modulating(was, air_c - set_c),
            },
        }
    }
}

/// The same for a modulating unit that stands so far above its set point.
fn begin_modulating(was: Running, above_k: f64) -> Running {
    match was {
        Running::Off => Running::Off,
        Running::Hold if above_k.abs() <= HOLDING_K => Running::Hold,
        _ if above_k > HOLDING_K => Running::Full,
        _ if above_k < -HOLDING_K => Running::Floor,
        // At the set point to a hair: keep going until it leaves.
        other => other,
    }
}
