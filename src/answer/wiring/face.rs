//! A leg by the figures as they stand, guesses and all.

use super::{
    asks,
    leg::{self, LegAnswer},
};
use crate::plan::{Plan, wiring::Leg};

/// A leg that the plan has; nothing where a number lies beyond the tables.
pub(super) fn leg(plan: &Plan, leg: Leg) -> Option<LegAnswer> {
    leg::leg(plan, &asks::ask(plan, leg)?, upstream_v(plan, leg))
}

/// Volts that the cable before a leg drops.
pub(super) fn upstream_v(plan: &Plan, of: Leg) -> f64 {
    if of != Leg::Unit {
        return 0.0;
    }
    let before = leg(plan, Leg::Distribution);
    before.as_ref().map_or(0.0, leg::dropped_v)
}
