//! The charge at the surface of the cells' grains, and the charge they hold.
//!
//! Under a current the surface has less left than the mean, and the voltage goes by the
//! surface ([`Polarisation`](crate::physics::battery::polarisation::Polarisation)). A
//! run is followed along the surface: there each current is that of one open-circuit
//! voltage, and the charge held follows without a search.

use super::job::{BothStates, Job};
use crate::{physics::battery::Pack, search::bisect};

/// A pack under a job, by the charge at the surface.
///
/// Charge is that of the cells, 0 empty to 1 full, as the curve counts it
/// ([`Pack::charge_at`] makes it of a share held).
pub struct Lag<'a> {
    pack: &'a Pack,
    job: &'a Job,
    per_a: f64,
}

/// Passes in which the surface is mostly found, and how closely.
const PASSES: usize = 12;
const SAME: f64 = 1e-14;
/// No surface lies deeper below the mean than this.
const DEEPEST: f64 = 1.0;

impl<'a> Lag<'a> {
    /// Without polarisation nothing lags.
    pub fn new(pack: &'a Pack, job: &'a Job) -> Self {
        let per_a = pack.polarisation.map_or(0.0, |it| it.lag_per_a);
        Self { pack, job, per_a }
    }

    /// Whether the surface lags at all; if not, surface and charge held are one number.
    pub fn is_any(&self) -> bool {
        self.per_a > 0.0
    }

    /// The charge held where the surface has so much and the job stands so.
    pub fn held(&self, surface: f64, at: &BothStates) -> f64 {
        surface + self.per_a * self.job.mean_amps(at).0
    }

    /// By how much the charge held falls with the surface's, on a piece of the curve
    /// that rises so steeply. Not below nothing: there the voltage collapses at once.
    ///
    /// `volts_per_charge` is the slope of the open-circuit curve, V for a charge of 0 to 1.
    pub fn held_per_surface(&self, volts_per_charge: f64, at: &BothStates) -> f64 {
        (1.0 + self.per_a * volts_per_charge * self.job.mean_amps(at).1).max(0.0)
    }

    /// The surface's charge where the cells hold so much.
    ///
    /// # Errors
    /// A charge at the surface at which the job no longer stands, where it falls before
    /// the cells hold as little as that.
    pub fn surface(&self, charge: f64) -> Result<f64, f64> {
        if self.per_a <= 0.0 {
            return Ok(charge);
        }
        // The charge held falls with the surface's nearly one for one; from the second
        // pass on as it did between the last two.
        let mut surface = charge;
        let mut last = None;
        for _ in 0..PASSES {
            let Some(held) = self.held_at(surface) else {
                break;
            };
            let miss = charge - held;
            let per_held = match last.replace((surface, held)) {
                Some((surface_then, held_then)) if held != held_then => {
                    ((surface - surface_then) / (held - held_then)).clamp(0.25, 4.0)
                }
                _ => 1.0,
            };
            surface += per_held * miss;
            if miss.abs() < SAME {
                return Ok(surface);
            }
        }
        let is_above = |surface: f64| self.held_at(surface).is_some_and(|held| held > charge);
        if !is_above(charge) {
            return Err(charge);
        }
        let (below, surface) = bisect(is_above, charge - DEEPEST, charge, SAME);
        match self.held_at(below) {
            Some(_) => Ok(surface),
            None => Err(below),
        }
    }

    fn held_at(&self, surface: f64) -> Option<f64> {
        let at = self.job.standing(self.pack, self.pack.curve.at(surface));
        at.ok().map(|at| self.held(surface, &at))
    }
}
