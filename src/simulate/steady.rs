//! A run at a steady job, integrated in charge.
//!
//! Time is no step here: between two charges the current is a smooth function
//! of the open-circuit voltage, so hours are the integral of capacity over
//! current. Gauss-Legendre with three points on pieces between the knots of the
//! curve (at most 5 % of charge each) is exact to better than 1e-9 of the hours,
//! near the voltage below which no current carries the power too (see
//! [`super::pieces`]), where Peukert's law sets in, and along the charge at the cells'
//! surface where that lags ([`Lag`]).
//! Energy divided by power would be up to a quarter too long: voltage sags.

use super::{
    job::{BothStates, Job, Stop, UNIT},
    lag::Lag,
    pieces::{Marks, NEAR, pieces, summit_v},
};
use crate::{physics::battery::Pack, physics::circuit::Point, search::bisect};

/// The state at one charge along a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Knot {
    /// From the start.
    pub hours: f64,
    /// Share left of what the bank holds, 0 to 1.
    pub held: f64,
    /// At the bank's terminals while the unit is on.
    pub volts: f64,
    /// Out of the bank while the unit is on.
    pub amps: f64,
}

/// What a run gave, and how it ended.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// From the start to the stop; 0 where it cannot start.
    pub hours: f64,
    /// Out of the bank. Above its rated current lead-acid gives fewer than it loses, by
    /// Peukert's law.
    pub ah: f64,
    /// At the bank's terminals.
    pub wh: f64,
    /// At the unit, or at the input of its converter or inverter.
    pub unit_wh: f64,
    /// Left in the bank's resistance.
    pub lost_wh: f64,
    /// What ended it, also where it did not start.
    pub stop: Stop,
    /// From the start to the end, at the ends of the pieces it was cut into. Empty if the run
    /// cannot start, or starts at the charge that is kept back; one if it stops at once.
    pub knots: Vec<Knot>,
}

/// Nodes and weights of the three-point Gauss-Legendre rule on (0, 1).
const NODES: [(f64, f64); 3] = [
    (0.112_701_665_379_258_3, 5.0 / 18.0),
    (0.5, 8.0 / 18.0),
    (0.887_298_334_620_741_7, 5.0 / 18.0),
];
/// A run over less of the charge than this is none: rounding.
const LEAST: f64 = 1e-13;
/// Parts that a piece near the summit has for each twentieth of the charge or less.
const PARTS: f64 = 2.0;
const TWENTIETH: f64 = 0.05;

/// Runs `job` on `pack` from one share held down to another.
///
/// Ends earlier at the first level that the job does not keep; every level
/// tightens as charge falls, so the first is found by halving.
///
/// Both are shares of what the bank holds, 0 to 1; the second is the charge that is kept
/// back, and ends the run as [`Stop::ChargeFloor`]. Total: what cannot start comes back
/// as a run of no hours with its stop.
#[must_use]
pub fn run_down(pack: &Pack, job: &Job, from_held: f64, to_held: f64) -> Run {
    run_with(pack, job, (from_held, to_held), Marks::Twentieths)
}

/// The hours of [`run_down`] alone, in half its time: the same to 1e-9 of them,
/// to 1e-7 close above the voltage below which no current carries the power.
#[must_use]
pub fn hours_down(pack: &Pack, job: &Job, from_held: f64, to_held: f64) -> f64 {
    run_with(pack, job, (from_held, to_held), Marks::None).hours
}

fn run_with(pack: &Pack, job: &Job, (from_held, to_held): (f64, f64), marks: Marks) -> Run {
    let lag = Lag::new(pack, job);
    let at = |charge: f64| job.standing(pack, pack.curve.at(charge));
    let kept = Stop::ChargeFloor {
        kept_percent: to_held * 100.0,
    };
    let mut tally = Tally::new(pack, job, &lag);
    let from = match lag.surface(pack.charge_at(from_held)) {
        Ok(from) => from,
        Err(falls) => return tally.finish(at(falls).err().unwrap_or(Stop::NoCurrentCarriesIt)),
    };
    let floor = lag.surface(pack.charge_at(to_held));
    let floor = floor.unwrap_or_else(|falls| falls);
    let mut at_high = match at(from) {
        Err(stop) => return tally.finish(stop),
        Ok(_) if from_held <= to_held || from <= floor => return tally.finish(kept),
        Ok(standing) => Some(standing),
    };
    tally.mark(from, at_high);
    let (end, stop) = match at(floor) {
        Ok(_) => (floor, kept),
        Err(_) => first_stop(at, from, floor),
    };
    if from - end < LEAST {
        return tally.finish(stop);
    }
    let summit_v = summit_v(pack, job, end);
    let mut high = from;
    for low in pieces(pack, job, &lag, (from, end), marks) {
        let at_low = at(low).ok();
        tally.piece((high, at_high), (low, at_low), summit_v);
        tally.mark(low, at_low);
        (high, at_high) = (low, at_low);
    }
    tally.finish(stop)
}

/// The lowest charge that still stands, and what stops the run below it.
/// `stands` is a charge at which the job stands and `falls` a lower one at which it does
/// not.
fn first_stop(
    at: impl Fn(f64) -> Result<BothStates, Stop>,
    stands: f64,
    falls: f64,
) -> (f64, Stop) {
    let (falls, stands) = bisect(|charge| at(charge).is_ok(), falls, stands, 0.0);
    (stands, at(falls).err().unwrap_or(Stop::NoCurrentCarriesIt))
}

/// An end of a piece, and how the job stands there; nothing where it does not by
/// rounding.
type End = (f64, Option<BothStates>);

/// The running sums of a run.
struct Tally<'a> {
    pack: &'a Pack,
    job: &'a Job,
    lag: &'a Lag<'a>,
    hours: f64,
    ah: f64,
    wh: f64,
    unit_wh: f64,
    lost_wh: f64,
    /// What was drawn, by the open-circuit volts of the surface.
    surface_wh: f64,
    /// The least charge held so far.
    least_held: f64,
    knots: Vec<Knot>,
}

impl<'a> Tally<'a> {
    fn new(pack: &'a Pack, job: &'a Job, lag: &'a Lag<'a>) -> Self {
        let knots = Vec::with_capacity(96);
        Self {
            pack,
            job,
            lag,
            hours: 0.0,
            ah: 0.0,
            wh: 0.0,
            unit_wh: 0.0,
            lost_wh: 0.0,
            surface_wh: 0.0,
            least_held: f64::INFINITY,
            knots,
        }
    }

    /// Adds the piece from `high` down to `low`, on which the curve is straight; each end
    /// with how the job stands there.
    fn piece(&mut self, (high, at_high): End, (low, at_low): End, summit_v: Option<f64>) {
        let per_charge = (self.pack.curve.at(high) - self.pack.curve.at(low)) / (high - low);
        let nodes: Vec<_> = self
            .nodes(high, low, per_charge, summit_v)
            .into_iter()
            .filter_map(|(charge, width)| {
                // Nothing by rounding at the very end of a run.
                let at = self.standing(charge)?;
                let held = width * self.lag.held_per_surface(per_charge, &at);
                Some((charge, held, at))
            })
            .collect();
        let held: f64 = nodes.iter().map(|node| node.1).sum();
        // What the cells give over a piece is known at its ends; the nodes share it.
        let share = match at_high.zip(at_low) {
            Some((at_high, at_low)) if self.lag.is_any() && held > 0.0 => {
                let from = self.least_held.min(self.lag.held(high, &at_high));
                (from - self.lag.held(low, &at_low)).max(0.0) / held
            }
            _ => 1.0,
        };
        for (charge, width, at) in nodes {
            self.node(charge, share * width, at);
        }
    }

    /// The operating points at a charge of the surface; nothing where the job does not stand.
    fn standing(&self, charge: f64) -> Option<BothStates> {
        self.job
            .standing(self.pack, self.pack.curve.at(charge))
            .ok()
    }

    /// Charges at the surface along a piece, and the width that each stands for.
    ///
    /// Near the summit the variable is the root of the charge above the place
    /// where this straight line would meet it.
    fn nodes(
        &self,
        high: f64,
        low: f64,
        per_charge: f64,
        summit_v: Option<f64>,
    ) -> Vec<(f64, f64)> {
        let low_v = self.pack.curve.at(low);
        let above = match summit_v {
            Some(summit_v) if per_charge > 0.0 && low_v < NEAR * summit_v => {
                ((low_v - summit_v) / per_charge).max(0.0)
            }
            _ => {
                let straight = |(node, weight)| (low + (high - low) * node, (high - low) * weight);
                return NODES.map(straight).into();
            }
        };
        let from = above.sqrt();
        let parts = PARTS * ((high - low) / TWENTIETH).ceil();
        let width = (high - low) / (from + (high - low + above).sqrt()) / parts;
        let of_part = |part: u32| {
            NODES.map(|(node, weight)| {
                let up = width * (f64::from(part) + node);
                let charge = low + up * (2.0 * from + up);
                (charge, 2.0 * (from + up) * width * weight)
            })
        };
        (0..parts as u32).flat_map(of_part).collect()
    }

    /// Adds one node: a charge at the surface and the charge given that it stands for.
    fn node(&mut self, charge: f64, width: f64, at: BothStates) {
        let ocv_v = self.pack.curve.at(charge);
        let BothStates { on, off } = at;
        let mean_a = self.job.mean(on.amps, off.amps);
        let ah = self.pack.capacity.ah_at(mean_a) * width;
        let hours = ah / mean_a;
        let unit_w =
            |bar_v, branches: &[crate::physics::circuit::Branch; 2]| branches[UNIT].taker_w(bar_v);
        self.hours += hours;
        self.ah += ah;
        self.wh += hours * self.job.mean(on.bar_v * on.amps, off.bar_v * off.amps);
        let lost_w = |point: Point| (ocv_v - point.bar_v) * point.amps;
        self.lost_wh += hours * self.job.mean(lost_w(on), lost_w(off));
        self.surface_wh += ah * ocv_v;
        self.unit_wh += hours
            * self.job.mean(
                unit_w(on.bar_v, &self.job.on),
                unit_w(off.bar_v, &self.job.off),
            );
    }

    /// A knot at a charge of the surface, with the sums up to here.
    fn mark(&mut self, charge: f64, standing: Option<BothStates>) {
        let Some(standing) = standing else {
            return;
        };
        // Where the voltage collapses the surface falls and the cells give nothing.
        self.least_held = self.least_held.min(self.lag.held(charge, &standing));
        self.knots.push(Knot {
            hours: self.hours,
            held: self.pack.soc(self.least_held),
            volts: standing.on.bar_v,
            amps: standing.on.amps,
        });
    }

    /// What the lag of the surface loses: by the cells' charge more was behind it.
    fn lag_loss_wh(&self) -> f64 {
        let (Some(first), Some(last)) = (self.knots.first(), self.knots.last()) else {
            return 0.0;
        };
        if self.pack.polarisation.is_none() {
            return 0.0;
        }
        let (high, low) = (
            self.pack.charge_at(first.held),
            self.pack.charge_at(last.held),
        );
        self.ah * self.pack.curve.mean_between(low, high) - self.surface_wh
    }

    /// What the surface's lag loses goes to what is lost in the bank.
    fn finish(self, stop: Stop) -> Run {
        let lag_loss_wh = self.lag_loss_wh();
        let Self {
            hours,
            ah,
            wh,
            unit_wh,
            lost_wh,
            knots,
            ..
        } = self;
        Run {
            hours,
            ah,
            wh,
            unit_wh,
            lost_wh: lost_wh + lag_loss_wh,
            stop,
            knots,
        }
    }
}

impl Run {
    /// Hours until a share held is reached; the whole run if it never is.
    /// Exact at every twentieth, linear between marks.
    ///
    /// `held` is a share of what the bank holds; 0 hours for one at or above the start.
    #[must_use]
    pub fn hours_to(&self, held: f64) -> f64 {
        let below = self.knots.iter().position(|knot| knot.held <= held + 1e-12);
        match below {
            None => self.hours,
            Some(0) => 0.0,
            Some(at) => {
                let (a, b) = (self.knots[at - 1], self.knots[at]);
                let share = ((a.held - held) / (a.held - b.held)).clamp(0.0, 1.0);
                a.hours + share * (b.hours - a.hours)
            }
        }
    }

    /// Share held after so many hours; what is left at the end once it is over.
    /// Linear between marks. Nothing where it could not even start.
    ///
    /// The start's share for 0 hours and less.
    #[must_use]
    pub fn held_after(&self, hours: f64) -> Option<f64> {
        let last = self.knots.last()?;
        Some(
            match self.knots.iter().position(|knot| knot.hours >= hours) {
                None => last.held,
                Some(0) => self.knots[0].held,
                Some(at) => {
                    let (a, b) = (self.knots[at - 1], self.knots[at]);
                    let share = (hours - a.hours) / (b.hours - a.hours);
                    a.held + share * (b.held - a.held)
                }
            },
        )
    }
}
