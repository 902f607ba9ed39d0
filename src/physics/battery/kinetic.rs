//! The kinetic two-tank model of lead-acid: charge that is at hand, and charge
//! that has to seep back.
//!
//! A battery drawn hard seems empty early and recovers at rest. Two tanks beside
//! each other show both: the load drinks from the first, which holds the share
//! `c` when level; the second refills it at a rate in proportion to the
//! difference of their levels (Manwell & McGowan, *Solar Energy* 50(5), 1993,
//! 399-405). Between steps of constant current the answer is closed.
//!
//! Amps, ampere-hours and hours throughout.

use super::peukert;
use crate::search::{bisect, root};

/// How a bank's charge is divided, and how fast it seeps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kinetic {
    /// Charge of both tanks when full. More than the rated Ah: the rating counts
    /// what comes out in its own hours, and some stays behind.
    pub total_ah: f64,
    /// Share of the charge that is at hand when the levels are even, 0 to 1.
    pub at_hand_share: f64,
    /// The rate constant k' = k / (c (1 - c)).
    pub per_hour: f64,
}

/// Charge in both tanks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tanks {
    pub at_hand_ah: f64,
    pub bound_ah: f64,
}

impl Tanks {
    /// Charge of both.
    #[must_use]
    pub fn both_ah(self) -> f64 {
        self.at_hand_ah + self.bound_ah
    }
}

/// One stretch of constant current, worked out beforehand for its length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    hours: f64,
    /// Of what was at hand, what still is; of what was bound, what has come over.
    kept: f64,
    came: f64,
    /// Taken from the first tank by each ampere.
    drunk_ah_per_a: f64,
}

/// Rate constants looked at when fitting, over a range of ten thousand.
const SCAN: u32 = 48;
const SCAN_TO: f64 = 10_000.0;

impl Kinetic {
    /// The constants that give a bank's capacity at three rates: over its rated
    /// hours, a quarter and a twentieth of them, by Peukert's law in the
    /// rated-hour form.
    ///
    /// - `rated_ah`, `rated_hours`: the label's, both above 0
    /// - `exponent`: Peukert's, 1.02 to 1.6; nothing below, where two tanks would
    ///   be one, and nothing where no constants give the three
    ///
    /// Between those rates the two laws differ by 4 % at most up to an exponent of 1.2, by 5 % at 1.3.
    #[must_use]
    pub fn fitted(rated_ah: f64, rated_hours: f64, exponent: f64) -> Option<Self> {
        if !(1.02..=1.6).contains(&exponent) {
            return None;
        }
        let hours = [rated_hours, rated_hours / 4.0, rated_hours / 20.0];
        // Capacity over t hours as a share of the rated: I = C/H (H/t)^(1/k).
        let share = |over_h: f64| {
            let amps_ratio = (rated_hours / over_h).powf(1.0 / exponent);
            peukert::share_of_rated(amps_ratio, exponent)
        };
        let shares = [share(hours[1]), share(hours[2])];
        let misses = |per_hour: f64| {
            let of_share = at_hand_for(per_hour, hours, shares[1])?;
            let delivered = |over_h| delivered_share(per_hour, of_share, over_h);
            Some(delivered(hours[1]) / delivered(hours[0]) - shares[0])
        };
        // Looked for from slow exchange to fast; where no share at hand gives the
        // fastest rate there is nothing to compare.
        let grid =
            (0..=SCAN).map(|at| 0.05 / rated_hours * SCAN_TO.powf(f64::from(at) / f64::from(SCAN)));
        let known: Vec<(f64, f64)> = grid.filter_map(|k| Some((k, misses(k)?))).collect();
        let crossing = known
            .windows(2)
            .find(|two| (two[0].1 > 0.0) != (two[1].1 > 0.0))?;
        let (slow, fast) = (crossing[0].0, crossing[1].0);
        let above = crossing[0].1 > 0.0;
        let is_past = |k: f64| misses(k).is_none_or(|miss| (miss > 0.0) != above);
        let (per_hour, _) = bisect(is_past, slow, fast, 0.0);
        let at_hand_share = at_hand_for(per_hour, hours, shares[1])?;
        Some(Self {
            total_ah: rated_ah / delivered_share(per_hour, at_hand_share, rated_hours),
            at_hand_share,
            per_hour,
        })
    }

    /// Full, or a share of it, after a long rest: the levels are even.
    #[must_use]
    pub fn rested(&self, both_ah: f64) -> Tanks {
        Tanks {
            at_hand_ah: self.at_hand_share * both_ah,
            bound_ah: (1.0 - self.at_hand_share) * both_ah,
        }
    }

    /// What the first tank holds at most.
    #[must_use]
    pub fn room_ah(&self) -> f64 {
        self.at_hand_share * self.total_ah
    }

    /// A stretch of so many hours, 0 and above.
    #[must_use]
    pub fn stretch(&self, hours: f64) -> Stretch {
        let (c, x) = (self.at_hand_share, self.per_hour * hours);
        let evened = -(-x).exp_m1();
        Stretch {
            hours,
            kept: 1.0 - (1.0 - c) * evened,
            came: c * evened,
            drunk_ah_per_a: (evened + c * (x - evened)) / self.per_hour,
        }
    }

    /// Hours that a constant current runs from a state until nothing is at hand;
    /// infinite where it never gets there.
    #[must_use]
    pub fn hours_to_empty(&self, from: Tanks, amps: f64) -> f64 {
        if amps <= 0.0 {
            return f64::INFINITY;
        }
        // Both tanks together last at least as long as the first one alone.
        let missing_ah = |hours: f64| -self.stretch(hours).after(from, amps).at_hand_ah;
        root(missing_ah, 0.0, from.both_ah() / amps)
    }
}

impl Stretch {
    /// The tanks after it. Positive amps drink, negative ones fill.
    #[must_use]
    pub fn after(&self, from: Tanks, amps: f64) -> Tanks {
        let at_hand_ah =
            self.kept * from.at_hand_ah + self.came * from.bound_ah - self.drunk_ah_per_a * amps;
        Tanks {
            at_hand_ah,
            bound_ah: from.both_ah() - amps * self.hours - at_hand_ah,
        }
    }

    /// The greatest steady current at the end of which something is still at hand.
    #[must_use]
    pub fn most_a(&self, from: Tanks) -> f64 {
        (self.kept * from.at_hand_ah + self.came * from.bound_ah) / self.drunk_ah_per_a
    }

    /// The greatest steady current into the bank at the end of which the first
    /// tank, which holds `room_ah`, is just full: charge acceptance.
    #[must_use]
    pub fn most_into_a(&self, from: Tanks, room_ah: f64) -> f64 {
        let at_rest = self.kept * from.at_hand_ah + self.came * from.bound_ah;
        ((room_ah - at_rest) / self.drunk_ah_per_a).max(0.0)
    }
}

/// Charge that comes out of a full bank at a constant current over so many
/// hours, as a share of all it holds (eq. 12 of the paper, by its form in c and k').
fn delivered_share(per_hour: f64, at_hand_share: f64, over_h: f64) -> f64 {
    let (evened, lag) = evened_and_lag(per_hour * over_h);
    per_hour * at_hand_share * over_h / (evened + at_hand_share * lag)
}

/// The share at hand with which the fastest of three rates delivers `share` of
/// what the slowest does: linear in it. Nothing outside 0 to 1.
fn at_hand_for(per_hour: f64, hours: [f64; 3], share: f64) -> Option<f64> {
    let [slow_h, _, fast_h] = hours;
    let (slow, slow_lag) = evened_and_lag(per_hour * slow_h);
    let (fast, fast_lag) = evened_and_lag(per_hour * fast_h);
    let available =
        (fast_h * slow - share * slow_h * fast) / (share * slow_h * fast_lag - fast_h * slow_lag);
    (available > 0.0 && available < 1.0).then_some(available)
}

/// `1 - e^-x` and `x - (1 - e^-x)`.
fn evened_and_lag(x: f64) -> (f64, f64) {
    let evened = -(-x).exp_m1();
    (evened, x - evened)
}
