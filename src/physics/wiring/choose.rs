//! The smallest conductor that passes every rule, in each size system, and the
//! whole table of sizes so that a reader sees why.

use super::ampacity::beyond_scope;
use super::copper::Build;
use super::fuse::{FuseAdvice, Place, Rating};
use super::limits::{Input, Refusal};
use super::size::{Size, System};
use super::trial::{Path, Rule, Trial, trial};
use crate::quantity::{
    ElectricPotential, ThermodynamicTemperature, in_celsius, in_meters, in_volts,
};

/// The size chosen in one system.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chosen {
    /// The smallest that passes all rules.
    pub size: Size,
    /// The rule that forbade the next smaller one; for the thinnest size of
    /// all, [`Rule::MechanicalMinimum`].
    pub decided_by: Rule,
    /// The fuse for it.
    pub fuse: Rating,
}

/// What a reader must know beside the sizes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Finding {
    /// The system reaches 50 V while charging: the table and the fuse rule are
    /// made for less, and other law applies.
    BeyondTableScope {
        /// Its charge voltage.
        charge: ElectricPotential,
    },
    /// The air is as hot as the coolest of insulation and terminals may be, so
    /// no size may carry anything.
    NoRoomForHeat {
        /// The air reckoned with.
        ambient: ThermodynamicTemperature,
        /// The rating that governs.
        rating: ThermodynamicTemperature,
    },
    /// No size of that system passes: shorter, more volts, or two runs each
    /// with its own fuse.
    NothingPasses(System),
    /// No size of either system lets any current carry the power.
    NoCurrentCarries,
    /// The rating is for open runs; inside a wall or conduit of a cabin it is
    /// about a third less, see [`Surroundings::enclosed`](super::Surroundings).
    RatedForOpenRun,
    /// Solid wire cracks where things shake; 33 CFR 183.425(a) forbids it on
    /// boats.
    SolidWire,
}

/// What came of choosing.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// Smallest gauge that passes.
    pub awg: Option<Chosen>,
    /// Smallest metric size that passes.
    pub metric: Option<Chosen>,
    /// Every gauge, thinnest first, then every metric size.
    pub trials: Vec<Trial>,
    /// What to say beside it.
    pub findings: Vec<Finding>,
}

/// Choose the conductor for a path.
///
/// Rules, each in the cautious reading: the drop is taken hot; a constant
/// power draws what it takes through this very size at its hottest;
/// the rating is read in the cooler column and reduced for heat and bundle;
/// the fuse never exceeds the conductor.
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input. A path that nothing carries is no
/// error: it comes back with findings and the table.
pub fn choose(path: &Path) -> Result<Choice, Refusal> {
    Input::Volts.check(in_volts(path.source_at_cut_off))?;
    Input::Length.check(in_meters(path.one_way))?;
    Input::AllowedDrop.check(path.allowed_drop)?;
    let beyond = beyond_scope(path.charge)?;
    let gauges = trials(path, System::Awg)?;
    let metrics = trials(path, System::Metric)?;
    let (awg, metric) = (smallest(&gauges), smallest(&metrics));
    let mut findings = path_findings(path, beyond)?;
    if gauges
        .iter()
        .chain(&metrics)
        .all(|trial| trial.loaded.is_none())
    {
        findings.push(Finding::NoCurrentCarries);
    }
    for (chosen, system) in [(awg, System::Awg), (metric, System::Metric)] {
        if chosen.is_none() {
            findings.push(Finding::NothingPasses(system));
        }
    }
    Ok(Choice {
        awg,
        metric,
        trials: gauges.into_iter().chain(metrics).collect(),
        findings,
    })
}

fn path_findings(path: &Path, beyond_scope: bool) -> Result<Vec<Finding>, Refusal> {
    let mut findings = Vec::new();
    if beyond_scope {
        findings.push(Finding::BeyondTableScope {
            charge: path.charge,
        });
    }
    let ambient = path.surroundings.reckoned_ambient()?;
    let rating = path.surroundings.column().rating();
    if in_celsius(ambient) >= in_celsius(rating) {
        findings.push(Finding::NoRoomForHeat { ambient, rating });
    }
    if path.place == Place::Cabin && !path.surroundings.enclosed {
        findings.push(Finding::RatedForOpenRun);
    }
    if path.build == Build::Solid {
        findings.push(Finding::SolidWire);
    }
    Ok(findings)
}

fn trials(path: &Path, system: System) -> Result<Vec<Trial>, Refusal> {
    let sizes = system.sizes();
    sizes.into_iter().map(|size| trial(path, size)).collect()
}

/// The first size from which on every larger one passes too, and the rule that
/// asked for the most.
fn smallest(trials: &[Trial]) -> Option<Chosen> {
    let first_passing = |rule: Rule| {
        let failing = trials.iter().rposition(|trial| !trial.passes(rule));
        failing.map_or(0, |place| place + 1)
    };
    let place = Rule::ALL.into_iter().map(first_passing).max()?;
    let trial = trials.get(place)?;
    let asks_most = |rule: &Rule| place > 0 && first_passing(*rule) == place;
    let decided_by = Rule::ALL.into_iter().find(asks_most);
    match trial.fuse {
        Some(FuseAdvice::Use(fuse)) => Some(Chosen {
            size: trial.size,
            decided_by: decided_by.unwrap_or(Rule::MechanicalMinimum),
            fuse,
        }),
        _ => None,
    }
}
