//! A circuit by the figures as they stand, guesses and all.

use super::{
    asks,
    circuit::{self, CircuitAnswer},
};
use crate::plan::{Plan, wiring::Circuit};

/// A circuit that the plan has; nothing where a number lies beyond the tables.
pub(super) fn circuit(plan: &Plan, circuit: Circuit) -> Option<CircuitAnswer> {
    circuit::circuit(plan, &asks::ask(plan, circuit)?, upstream_v(plan, circuit))
}

/// Volts that the cable before a circuit drops.
pub(super) fn upstream_v(plan: &Plan, of: Circuit) -> f64 {
    if of != Circuit::Unit {
        return 0.0;
    }
    let before = circuit(plan, Circuit::Distribution);
    before.as_ref().map_or(0.0, circuit::dropped_v)
}
