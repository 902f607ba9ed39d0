//! Where fuses sit: how near the source, and whether each parallel part has its
//! own.

use super::fuse::Place;
use super::limits::{Input, Refusal};
use crate::quantity::{Length, in_inches, in_meters, inches};

/// A rule on where along the conductor the fuse sits, measured from the
/// source of power.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FusePosition {
    /// At the source itself.
    AtSource,
    /// Within that length, where the better position is impractical.
    Within(Length),
    /// Within that length, if the conductor is sheathed or enclosed all the
    /// way and the better positions are impractical.
    WithinIfEnclosed(Length),
    /// As close as can be, and at most that length.
    AsCloseAsPracticable(Length),
}

/// NFPA 70 section 552.10(E)(4): 18 in, 457 mm.
const VEHICLE_IN: f64 = 18.0;

/// The positions allowed, best first.
///
/// Boat: 33 CFR 183.455(b): at the source; else within 7 in; else within 40 in
/// wholly sheathed or enclosed. (A later section is laxer for battery leads;
/// not used.) Vehicle: within 18 in of where the supply connects (NFPA 70
/// section 552.10(E)(4)). Cabin: as close as practicable (common practice, no
/// source), bounded here by the vehicle's length for want of one of its own.
#[must_use]
pub fn positions(place: Place) -> Vec<FusePosition> {
    match place {
        Place::Boat => vec![
            FusePosition::AtSource,
            FusePosition::Within(inches(7.0)),
            FusePosition::WithinIfEnclosed(inches(40.0)),
        ],
        Place::Vehicle => vec![
            FusePosition::AtSource,
            FusePosition::Within(inches(VEHICLE_IN)),
        ],
        Place::Cabin => vec![
            FusePosition::AtSource,
            FusePosition::AsCloseAsPracticable(inches(VEHICLE_IN)),
        ],
    }
}

/// The best position of [`positions`] that a fuse `along` the conductor (0 to
/// 500 m) meets; `None` if it meets none and must move.
///
/// # Errors
/// [`Refusal::OutOfRange`] for a length outside that.
pub fn position_met(
    place: Place,
    along: Length,
    enclosed: bool,
) -> Result<Option<FusePosition>, Refusal> {
    Input::Length.check(in_meters(along))?;
    // Compared in inches so that a stated 7 in is 7 in.
    let within = |limit: Length| in_inches(along) <= in_inches(limit) + 1e-9;
    Ok(positions(place).into_iter().find(|rule| match rule {
        FusePosition::AtSource => in_inches(along) <= 0.0,
        FusePosition::Within(limit) | FusePosition::AsCloseAsPracticable(limit) => within(*limit),
        FusePosition::WithinIfEnclosed(limit) => enclosed && within(*limit),
    }))
}

/// What stands in parallel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Parallel {
    /// Battery batteries, or series strings of them.
    BatteryCases,
    /// Strings of solar modules.
    SolarStrings,
}

/// Whether each one in parallel needs its own fuse: batteries from two, as
/// either feeds a fault in the other with all it has; solar strings from
/// three, as one healthy string cannot overload another (the exception of
/// NFPA 70 section 690.9(A), from memory). Counted 1 to 64.
///
/// # Errors
/// [`Refusal::OutOfRange`] for a count outside that.
pub fn fuse_each(what: Parallel, count: u32) -> Result<bool, Refusal> {
    Input::Batteries.check(f64::from(count))?;
    Ok(match what {
        Parallel::BatteryCases => count >= 2,
        Parallel::SolarStrings => count >= 3,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bad_length_or_count_is_refused() {
        assert!(position_met(Place::Boat, inches(-1.0), true).is_err());
        assert!(fuse_each(Parallel::SolarStrings, 0).is_err());
    }
}
