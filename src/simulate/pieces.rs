//! Where a run is cut, so that on each piece its current is smooth.

use super::{
    job::{Job, inner_of},
    lag::Lag,
};
use crate::{
    physics::battery::Pack,
    physics::circuit::settle,
    search::{Search, bisect, search},
};

/// Where a run leaves marks besides its ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Marks {
    /// At each twentieth of what the bank holds: for who follows the run.
    Twentieths,
    /// Nowhere: for who wants its hours alone, in half the time.
    None,
}

const TWENTIETHS: u32 = 20;
/// Widest piece of a run without marks, of the charge at the surface.
const WIDEST: f64 = 0.1;
/// Within this factor of the summit's voltage a run is near it.
pub const NEAR: f64 = 1.2;

/// The open-circuit voltage below which no current carries the power, if the run
/// comes near it.
///
/// There the current's slope grows without bound, as the inverse root of the
/// voltage above it: polynomials do not follow, and the root is integrated over.
///
/// `end` is the charge at the surface at which the run ends, 0 to 1. Nothing where the
/// power would be carried at a [`NEAR`]th of the volts there too.
pub fn summit_v(pack: &Pack, job: &Job, end: f64) -> Option<f64> {
    let inner = inner_of(pack, 1.0);
    let carries = |ocv_v: f64| settle(ocv_v, inner, &job.on).is_some();
    let end_v = pack.curve.at(end);
    let below_v = end_v / NEAR;
    if carries(below_v) {
        return None;
    }
    Some(bisect(carries, below_v, end_v, 0.0).1)
}

/// The charge at which the mean current passes the rated one: Peukert's law sets
/// in there, with a bend that no piece should have inside.
/// Nothing for an exponent of 1, and where the current stays on one side of it.
fn bend(pack: &Pack, job: &Job, from: f64, end: f64) -> Option<f64> {
    if pack.capacity.exponent <= 1.0 {
        return None;
    }
    let mean_a = |charge: f64| {
        let standing = job.standing(pack, pack.curve.at(charge));
        standing.map_or(f64::NAN, |at| job.mean(at.on.amps, at.off.amps))
    };
    match search(mean_a, end, from, pack.capacity.rated_a) {
        Search::Found(charge) => Some(charge),
        Search::Outside { .. } => None,
    }
}

/// The lower ends of the pieces from one charge at the surface down to another: the
/// curve's knots, the marks, and the bend.
///
/// From the highest down, `end` the last. Charges are of the cells, 0 to 1.
pub fn pieces(
    pack: &Pack,
    job: &Job,
    lag: &Lag,
    (from, end): (f64, f64),
    marks: Marks,
) -> Vec<f64> {
    let parts = match marks {
        Marks::Twentieths => TWENTIETHS,
        Marks::None => ((from - end) / WIDEST).ceil() as u32,
    };
    let mark = |part: u32| {
        let share = f64::from(part) / f64::from(parts);
        match marks {
            Marks::Twentieths => lag.surface(pack.charge_at(share)).ok(),
            Marks::None => Some(end + (from - end) * share),
        }
    };
    let mut grid = (0..=parts)
        .rev()
        .filter_map(mark)
        .filter(|&charge| charge < from && charge > end)
        .peekable();
    let mut knots = pack.curve.knots_down(from, end).peekable();
    let mut ends = Vec::with_capacity(96);
    // Both fall: merged, they fall.
    loop {
        let next = match (grid.peek(), knots.peek()) {
            (Some(&a), Some(&b)) if a >= b => grid.next(),
            (_, Some(_)) => knots.next(),
            (Some(_), None) => grid.next(),
            (None, None) => break,
        };
        let Some(next) = next else { break };
        // Knots that differ by rounding only make no piece between them.
        if next - end > 1e-12 && ends.last().is_none_or(|last| last - next > 1e-12) {
            ends.push(next);
        }
    }
    if let Some(bend) = bend(pack, job, from, end)
        && bend > end
        && bend < from
    {
        let place = ends.partition_point(|&above| above > bend);
        ends.insert(place, bend);
    }
    ends.push(end);
    ends
}
