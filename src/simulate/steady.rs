//! A run at a steady job, integrated in charge.
//!
//! Time is no step here: between two charges the current is a smooth function
//! of the open-circuit voltage, so hours are the integral of capacity over
//! current. Gauss-Legendre with three points on pieces between the knots of the
//! curve (at most 5 % of charge each) is exact to better than 1e-9 of the hours,
//! also near the voltage below which no current carries the power (see
//! [`super::pieces`]) and where Peukert's law sets in.
//! Energy divided by power would be up to a quarter too long: voltage sags.

use super::{
    job::{BothStates, Job, Stop, UNIT},
    pieces::{NEAR, pieces, summit_v},
};
use crate::{physics::battery::Pack, search::bisect};

/// The state at one charge along a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Knot {
    pub hours: f64,
    /// Share left of what the bank holds, 0 to 1.
    pub held: f64,
    /// Terminal volts and bank amps while the unit is on.
    pub volts: f64,
    pub amps: f64,
}

/// What a run gave, and how it ended.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    pub hours: f64,
    pub ah: f64,
    /// At the bank's terminals.
    pub wh: f64,
    /// At the unit, or at the input of its converter or inverter.
    pub unit_wh: f64,
    /// Left in the bank's resistance.
    pub lost_wh: f64,
    pub stop: Stop,
    /// From the start to the end; a single one if the run cannot start.
    pub knots: Vec<Knot>,
}

/// Nodes and weights of the three-point Gauss-Legendre rule on (0, 1).
const NODES: [(f64, f64); 3] = [
    (0.112_701_665_379_258_3, 5.0 / 18.0),
    (0.5, 8.0 / 18.0),
    (0.887_298_334_620_741_7, 5.0 / 18.0),
];
/// Parts of a piece that is near it.
const PARTS: u32 = 2;

/// Runs `job` on `pack` from one share held down to another.
///
/// Ends earlier at the first level that the job does not keep; every level
/// tightens as charge falls, so the first is found by halving.
#[must_use]
pub fn run_down(pack: &Pack, job: &Job, from_held: f64, to_held: f64) -> Run {
    let (from, floor) = (pack.charge_at(from_held), pack.charge_at(to_held));
    let at = |charge: f64| job.standing(pack, pack.curve.at(charge));
    let kept = Stop::ChargeFloor {
        kept_percent: to_held * 100.0,
    };
    let mut tally = Tally::new(pack, job);
    match at(from) {
        Err(stop) => return tally.finish(stop),
        Ok(_) if from <= floor => return tally.finish(kept),
        Ok(standing) => tally.mark(from, &standing),
    }
    let (end, stop) = match at(floor) {
        Ok(_) => (floor, kept),
        Err(_) => first_stop(at, from, floor),
    };
    let summit_v = summit_v(pack, job, end);
    let mut high = from;
    for low in pieces(pack, job, from, end) {
        tally.piece(high, low, summit_v);
        if let Ok(standing) = at(low) {
            tally.mark(low, &standing);
        }
        high = low;
    }
    tally.finish(stop)
}

/// The lowest charge that still stands, and what stops the run below it.
fn first_stop(
    at: impl Fn(f64) -> Result<BothStates, Stop>,
    stands: f64,
    falls: f64,
) -> (f64, Stop) {
    let (falls, stands) = bisect(|charge| at(charge).is_ok(), falls, stands, 0.0);
    (stands, at(falls).err().unwrap_or(Stop::NoCurrentCarriesIt))
}

/// The running sums of a run.
struct Tally<'a> {
    pack: &'a Pack,
    job: &'a Job,
    hours: f64,
    ah: f64,
    wh: f64,
    unit_wh: f64,
    lost_wh: f64,
    knots: Vec<Knot>,
}

impl<'a> Tally<'a> {
    fn new(pack: &'a Pack, job: &'a Job) -> Self {
        let knots = Vec::with_capacity(96);
        Self {
            pack,
            job,
            hours: 0.0,
            ah: 0.0,
            wh: 0.0,
            unit_wh: 0.0,
            lost_wh: 0.0,
            knots,
        }
    }

    /// Adds the piece from `high` down to `low`, on which the curve is straight.
    ///
    /// Near the summit the variable is the root of the charge above the place
    /// where this straight line would meet it.
    fn piece(&mut self, high: f64, low: f64, summit_v: Option<f64>) {
        let (high_v, low_v) = (self.pack.curve.at(high), self.pack.curve.at(low));
        let per_charge = (high_v - low_v) / (high - low);
        let above = match summit_v {
            Some(summit_v) if per_charge > 0.0 && low_v < NEAR * summit_v => {
                ((low_v - summit_v) / per_charge).max(0.0)
            }
            _ => {
                for (node, weight) in NODES {
                    self.node(low + (high - low) * node, (high - low) * weight);
                }
                return;
            }
        };
        let from = above.sqrt();
        let width = (high - low) / (from + (high - low + above).sqrt()) / f64::from(PARTS);
        for part in 0..PARTS {
            for (node, weight) in NODES {
                let up = width * (f64::from(part) + node);
                let charge = low + up * (2.0 * from + up);
                self.node(charge, 2.0 * (from + up) * width * weight);
            }
        }
    }

    /// Adds one node: a charge, and the width of charge it stands for.
    fn node(&mut self, charge: f64, width: f64) {
        let Ok(BothStates { on, off }) = self.job.standing(self.pack, self.pack.curve.at(charge))
        else {
            // Rounding at the very end of a run.
            return;
        };
        let mean_a = self.job.mean(on.amps, off.amps);
        let ah = self.pack.capacity.ah_at(mean_a) * width;
        let hours = ah / mean_a;
        let unit_w =
            |bar_v, branches: &[crate::physics::circuit::Branch; 2]| branches[UNIT].taker_w(bar_v);
        self.hours += hours;
        self.ah += ah;
        self.wh += hours * self.job.mean(on.bar_v * on.amps, off.bar_v * off.amps);
        self.lost_wh +=
            hours * self.pack.ohm * self.job.mean(on.amps * on.amps, off.amps * off.amps);
        self.unit_wh += hours
            * self.job.mean(
                unit_w(on.bar_v, &self.job.on),
                unit_w(off.bar_v, &self.job.off),
            );
    }

    fn mark(&mut self, charge: f64, standing: &BothStates) {
        self.knots.push(Knot {
            hours: self.hours,
            held: self.pack.soc(charge),
            volts: standing.on.bar_v,
            amps: standing.on.amps,
        });
    }

    fn finish(self, stop: Stop) -> Run {
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
            lost_wh,
            stop,
            knots,
        }
    }
}

impl Run {
    /// Hours until a share held is reached; the whole run if it never is.
    /// Exact at every twentieth, linear between marks.
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
