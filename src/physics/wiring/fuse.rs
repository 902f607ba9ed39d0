//! What rating of fuse a conductor takes.
//!
//! A fuse protects the conductor, not the load and not the battery, so the one
//! recommended here never exceeds what the conductor may carry. A battery's
//! own electronics are no fuse.

use super::ampacity::{Ampacity, beyond_scope};
use super::limits::{Input, Refusal};
use super::size::Awg;
use crate::quantity::{ElectricCurrent, ElectricPotential, amps, in_amps};

/// Where a rating in the list comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RatingSource {
    /// NFPA 70 section 240.6(A), standard ampere ratings; of its additional
    /// fuse ratings those of 1, 3, 6 and 10 A.
    Nfpa70,
    /// Sizes blade fuses for vehicles are sold in. Common practice, no source.
    VehiclePractice,
}

/// A rating that fuses are made in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// The current it carries.
    pub current: ElectricCurrent,
    /// Whose list it is from.
    pub source: RatingSource,
}

/// NFPA 70 section 240.6(A): 15 A and up as listed there, below that those of
/// its additional fuse ratings that are whole steps.
const NFPA_70_A: [f64; 41] = [
    1.0, 3.0, 6.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0,
    100.0, 110.0, 125.0, 150.0, 175.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0,
    600.0, 700.0, 800.0, 1000.0, 1200.0, 1600.0, 2000.0, 2500.0, 3000.0, 4000.0, 5000.0, 6000.0,
];

/// Sizes of vehicle fuses missing above. Those from 10 A up (blade 10 to 40,
/// bolt-down 50 to 500) are all there.
const VEHICLE_A: [f64; 4] = [2.0, 4.0, 5.0, 7.5];

/// All ratings in the list, growing.
#[must_use]
pub fn ratings() -> Vec<Rating> {
    let from = |list: &[f64], source| {
        let rating = |current_a: &f64| Rating {
            current: amps(*current_a),
            source,
        };
        list.iter().map(rating).collect::<Vec<_>>()
    };
    let mut all = from(&NFPA_70_A, RatingSource::Nfpa70);
    all.extend(from(&VEHICLE_A, RatingSource::VehiclePractice));
    all.sort_by(|a, b| in_amps(a.current).total_cmp(&in_amps(b.current)));
    all
}

/// Share of the continuous current a fuse must at least be rated for
/// (NFPA 70 sections 210.20(A) and 215.3: three hours or more count as
/// continuous, and a cooling unit runs all night).
pub const CONTINUOUS_SHARE: f64 = 1.25;

/// Where the system is. It decides where the fuse sits and how the smallest
/// conductors are fused.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// Afloat.
    Boat,
    /// On wheels.
    Vehicle,
    /// On the ground.
    Cabin,
}

/// The most a conductor of that gauge may be fused at, whatever its ampacity;
/// `None` where no such cap is known.
///
/// Vehicle: NFPA 70 table 552.10(E)(1), low-voltage conductors of park
/// trailers (from memory: 18 6 A, 16 8 A, 14 15 A, 12 20 A, 10 30 A). Cabin:
/// the same; section 240.4(D) for premises has the same three for 14 to 10 and
/// slightly more below (from memory). Boats follow table 5 alone.
#[must_use]
pub fn small_conductor_cap(place: Place, gauge: Awg) -> Option<ElectricCurrent> {
    if place == Place::Boat {
        return None;
    }
    match gauge.number() {
        18 => Some(amps(6.0)),
        16 => Some(amps(8.0)),
        14 => Some(amps(15.0)),
        12 => Some(amps(20.0)),
        10 => Some(amps(30.0)),
        _ => None,
    }
}

/// The most a fuse on this conductor may be rated at: its ampacity, or the cap
/// of [`small_conductor_cap`] if lower.
#[must_use]
pub fn fuse_ceiling(place: Place, ampacity: &Ampacity) -> ElectricCurrent {
    match small_conductor_cap(place, ampacity.gauge) {
        Some(cap) if cap < ampacity.allowed => cap,
        _ => ampacity.allowed,
    }
}

/// What fuse a continuous current takes, held against a conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FuseAdvice {
    /// This one, and the conductor carries it.
    Use(Rating),
    /// The next rating up exceeds what the conductor may be fused at: the
    /// conductor must grow. A smaller fuse would blow in use.
    ConductorMustGrow {
        /// The rating the load needs.
        needs: Rating,
        /// The most this conductor may be fused at.
        ceiling: ElectricCurrent,
    },
    /// No listed rating is large enough.
    BeyondList,
}

/// 125 % of a continuous current (up to 5000 A) and the next listed rating,
/// held against the most the conductor may be fused at (0 to 10 000 A).
///
/// # Errors
/// [`Refusal::OutOfRange`] naming the input.
pub fn recommend(
    continuous: ElectricCurrent,
    ceiling: ElectricCurrent,
) -> Result<FuseAdvice, Refusal> {
    let least_a = CONTINUOUS_SHARE * Input::Current.check(in_amps(continuous))?;
    Input::Ampacity.check(in_amps(ceiling))?;
    // The nudge keeps 125 % of 24 A at the 30 A it is on paper.
    let carries = |rating: &Rating| in_amps(rating.current) >= least_a * (1.0 - 1e-12);
    Ok(match ratings().into_iter().find(carries) {
        None => FuseAdvice::BeyondList,
        Some(needs) if needs.current > ceiling => FuseAdvice::ConductorMustGrow { needs, ceiling },
        Some(fits) => FuseAdvice::Use(fits),
    })
}

/// The most that the law for boats allows, to be shown as that and not
/// recommended.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MarineAllowance {
    /// Highest rating allowed for the conductor.
    pub highest: ElectricCurrent,
    /// From 50 V up: where that value is no standard rating the next one may
    /// be taken, up to 150 %.
    pub next_size_up: bool,
}

/// 33 CFR 183.455(c): 150 % of the value in table 5 below 50 V, 100 % (or the
/// next standard rating) from 50 V up. The lower of the printed value and of
/// the value after reductions is taken, though the law names the former.
///
/// # Errors
/// [`Refusal::OutOfRange`] for a voltage outside 1 to 1000 V.
pub fn marine_allowance(
    ampacity: &Ampacity,
    charge: ElectricPotential,
) -> Result<MarineAllowance, Refusal> {
    let next_size_up = beyond_scope(charge)?;
    let share = if next_size_up { 1.0 } else { 1.5 };
    Ok(MarineAllowance {
        highest: ampacity.allowed * share,
        next_size_up,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn list_grows_and_names_none_twice() {
        assert!(ratings().is_sorted_by(|a, b| a.current < b.current));
    }

    #[test]
    fn a_fuse_that_would_exceed_the_conductor_is_not_recommended() {
        let advice = recommend(amps(30.0), amps(35.0)).unwrap();
        let FuseAdvice::ConductorMustGrow { needs, ceiling } = advice else {
            panic!("{advice:?}");
        };
        assert_eq!((needs.current, ceiling), (amps(40.0), amps(35.0)));
        assert_eq!(
            recommend(amps(4900.0), amps(10_000.0)),
            Ok(FuseAdvice::BeyondList)
        );
    }
}
