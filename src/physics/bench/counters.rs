//! A log's totals against the counters that the logger kept itself.
//!
//! A logger counts every moment, its rows only some. Where both are there they
//! must agree; where they do not, pulses fell between the rows, even if the
//! rows look smooth.

use super::log::{CounterChange, Log};
use super::totals::{Flow, Totals};
use crate::quantity::{in_amp_hours, in_watt_hours};

/// How far the totals of a whole log lie from its counters, as a share of all
/// that flowed; the greater of charge and energy.
///
/// Two counters of a kind are taken as one for each direction and their
/// difference held against the net; a single one against the net or the drawn,
/// whichever is closer. `None` where there is nothing to compare: no counter,
/// one that ran both ways or was reset, more than two, or gaps in the log.
#[must_use]
pub fn disagreement(log: &Log, totals: &Totals) -> Option<f64> {
    if !totals.gaps.is_empty() {
        return None;
    }
    let charge = totals.charge.as_ref().map(|f| in_numbers(f, in_amp_hours));
    let energy = totals.energy.as_ref().map(|f| in_numbers(f, in_watt_hours));
    let of_charge = charge.and_then(|f| of_kind(&log.notes.counters, false, f));
    let of_energy = energy.and_then(|f| of_kind(&log.notes.counters, true, f));
    match (of_charge, of_energy) {
        (Some(a), Some(b)) => Some(a.max(b)),
        (a, b) => a.or(b),
    }
}

/// Drawn and returned.
fn in_numbers<Q: Copy>(flow: &Flow<Q>, number: fn(Q) -> f64) -> (f64, f64) {
    (number(flow.drawn), number(flow.returned))
}

/// The share by which the counters of one kind disagree with a flow.
/// `None` where they are none or more than two, or one of them cannot be told.
fn of_kind(counters: &[CounterChange], is_energy: bool, flow: (f64, f64)) -> Option<f64> {
    let changes: Vec<f64> = counters
        .iter()
        .filter(|c| c.is_energy == is_energy)
        .map(CounterChange::size)
        .collect::<Option<_>>()?;
    let (drawn, returned) = flow;
    let (off, all) = match changes[..] {
        [a, b] => (((a - b).abs() - (drawn - returned).abs()).abs(), a + b),
        [a] => (
            (a - drawn).abs().min((a - (drawn - returned).abs()).abs()),
            drawn + returned,
        ),
        _ => return None,
    };
    let share = off / all;
    share.is_finite().then_some(share)
}
