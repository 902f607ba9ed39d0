//! One conductor size held against every rule of a path.

use super::ampacity::{Ampacity, ampacity};
use super::copper::{Build, estimated_temperature};
use super::drop::{Demand, Drop, Run, design_current};
use super::fuse::{FuseAdvice, Place, fuse_ceiling, recommend};
use super::limits::Refusal;
use super::size::{Awg, Size};
use super::surroundings::Surroundings;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Length, ThermodynamicTemperature, amps, celsius, in_celsius,
};

/// A pair of conductors to be chosen, and all that bears on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Path {
    /// What the load asks while it is on.
    pub demand: Demand,
    /// From source to load, once: 0 to 500 m.
    pub one_way: Length,
    /// Volts of the source at its lowest, 1 to 1000; the drop is a share of it.
    pub source_at_cut_off: ElectricPotential,
    /// Volts while charging, 1 to 1000.
    pub charge: ElectricPotential,
    /// Share of the source volts that may be lost, 0.001 to 0.5.
    pub allowed_drop: f64,
    /// How the conductors are made.
    pub build: Build,
    /// Boat, vehicle or cabin.
    pub place: Place,
    /// Air, bundle, insulation, terminals.
    pub surroundings: Surroundings,
}

/// A rule a conductor must pass.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Rule {
    /// It may carry the current for hours.
    Ampacity,
    /// A fuse of 125 % of the current exists that it may be fused at.
    FuseFit,
    /// What it drops, hot, is within what is allowed.
    Drop,
    /// It is not thinner than gauge 16 alone, 18 in a sheath (33 CFR
    /// 183.425(d) and (e)), however little it carries.
    MechanicalMinimum,
}

impl Rule {
    /// All rules. Where several demand the same size the first one is named.
    pub const ALL: [Self; 4] = [
        Self::Ampacity,
        Self::FuseFit,
        Self::Drop,
        Self::MechanicalMinimum,
    ];
}

/// What a size does with the load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loaded {
    /// The current to design for, with this size's own resistance hot.
    pub current: ElectricCurrent,
    /// Drop with the conductor at 20 C.
    pub cold: Drop,
    /// Drop with the conductor as warm as it gets: the one held to the limit.
    pub hot: Drop,
    /// How warm that is, see [`estimated_temperature`].
    pub conductor: ThermodynamicTemperature,
}

/// One size held against all rules.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// The size.
    pub size: Size,
    /// Its rating; `None` when it is smaller than the table.
    pub ampacity: Option<Ampacity>,
    /// `None` when no current carries the power through it.
    pub loaded: Option<Loaded>,
    /// The fuse, held against it; `None` when either of the above is.
    pub fuse: Option<FuseAdvice>,
    passes: [bool; 4],
}

impl Trial {
    /// Whether it passes one rule.
    #[must_use]
    pub fn passes(&self, rule: Rule) -> bool {
        self.passes[rule as usize]
    }

    /// Whether it passes all.
    #[must_use]
    pub fn passes_all(&self) -> bool {
        self.passes.iter().all(|passed| *passed)
    }
}

/// Hold one size against every rule.
pub(super) fn trial(path: &Path, size: Size) -> Result<Trial, Refusal> {
    let ampacity = match ampacity(size, &path.surroundings) {
        Ok(ampacity) => Some(ampacity),
        Err(Refusal::SmallerThanTable(_)) => None,
        Err(refusal) => return Err(refusal),
    };
    let loaded = load(path, size, ampacity)?;
    let fuse = match (loaded, ampacity) {
        (Some(loaded), Some(ampacity)) => Some(recommend(
            loaded.current,
            fuse_ceiling(path.place, &ampacity),
        )?),
        _ => None,
    };
    let carries = loaded
        .zip(ampacity)
        .is_some_and(|(loaded, ampacity)| loaded.current <= ampacity.allowed);
    let drops_little = loaded.is_some_and(|loaded| loaded.hot.share <= path.allowed_drop);
    Ok(Trial {
        size,
        ampacity,
        loaded,
        fuse,
        // In the order of `Rule`.
        passes: [
            carries,
            matches!(fuse, Some(FuseAdvice::Use(_))),
            drops_little,
            thick_enough(size, path.surroundings.sheathed),
        ],
    })
}

/// Current, drops and temperature of a size under the load; `None` when no
/// current carries it.
fn load(path: &Path, size: Size, ampacity: Option<Ampacity>) -> Result<Option<Loaded>, Refusal> {
    let run = Run {
        size,
        build: path.build,
        one_way: path.one_way,
    };
    let source = path.source_at_cut_off;
    let ambient = path.surroundings.reckoned_ambient()?;
    let rating = path.surroundings.column().rating();
    // Air hotter than the rating warms the copper too, though it then fails.
    let hottest = celsius(in_celsius(rating).max(in_celsius(ambient)));
    let at_hottest = run.loop_resistance(hottest)?;
    let current = match design_current(path.demand, source, at_hottest) {
        Ok(current) => current,
        Err(Refusal::NoCurrentCarries { .. }) => return Ok(None),
        Err(refusal) => return Err(refusal),
    };
    let allowed = ampacity.map_or(amps(0.0), |ampacity| ampacity.allowed);
    let conductor = estimated_temperature(ambient, rating, current, allowed)?;
    Ok(Some(Loaded {
        current,
        cold: run.drop(current, source, celsius(20.0))?,
        hot: run.drop(current, source, conductor)?,
        conductor,
    }))
}

/// Gauge 16 alone or 18 in a sheath; a metric size by the gauge it maps to.
fn thick_enough(size: Size, sheathed: bool) -> bool {
    let least = Awg::new(if sheathed { 18 } else { 16 });
    size.table_gauge().is_some_and(|gauge| Some(gauge) >= least)
}
