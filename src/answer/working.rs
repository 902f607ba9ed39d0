//! The working behind a number: a formula, its terms, its source.

use crate::{
    physics::battery::Pack,
    range::Unit,
    simulate::{Run, Stop},
};
use serde::{Deserialize, Serialize};

/// Which formula was used. `text` writes it out and names its source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Formula {
    /// Hours as the integral of charge over current, sag inside.
    ChargeOverCurrent,
    /// The same with Peukert's law in the rated-hour form.
    ChargeOverCurrentPeukert,
}

/// A number in a formula, in the unit beside it, under a name that `text` explains.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Term {
    /// Which.
    pub name: TermName,
    /// In [`Self::unit`].
    pub value: f64,
    /// Of the value.
    pub unit: Unit,
}

/// The terms that a working may show.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum TermName {
    /// Ah from full to empty.
    HeldAh,
    /// Share of it at the start.
    StartPercent,
    /// Share of it at the end.
    EndPercent,
    /// Ah drawn.
    UsedAh,
    /// Volts at rest, of the charge at the start.
    OpenCircuitStartV,
    /// Volts at rest, of the charge at the end.
    OpenCircuitEndV,
    /// Of the whole bank.
    BankResistance,
    /// At the start, the unit on.
    FirstAmps,
    /// At the end, the unit on.
    LastAmps,
    /// Over the run, off-times included.
    MeanAmps,
    /// By charge, at the terminals.
    MeanVolts,
    /// Lead-acid alone.
    PeukertExponent,
    /// The current of the label's hour rate; lead-acid alone.
    RatedAmps,
    /// What all the others make.
    Hours,
    /// What energy over power would say, for comparison.
    QuickHours,
}

/// A formula with this plan's numbers in it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Working {
    /// Which was used.
    pub formula: Formula,
    /// In the order in which they are read, the hours near the end.
    pub terms: Vec<Term>,
}

/// The working of a run between two shares of what the bank holds, 0 to 1.
pub fn of_run(run: &Run, pack: &Pack, from: f64, to: f64) -> Working {
    use TermName as N;
    let peukert = pack.capacity.exponent > 1.0;
    let end = run.knots.last().map_or(from, |knot| knot.held);
    let emf = |held: f64| pack.curve.at(pack.charge_at(held));
    let mean_a = if run.hours > 0.0 {
        run.ah / run.hours
    } else {
        0.0
    };
    let mean_v = if run.ah > 0.0 { run.wh / run.ah } else { 0.0 };
    let mut terms = vec![
        term(N::HeldAh, pack.held_ah(), Unit::AmpHour),
        term(N::StartPercent, from * 100.0, Unit::Percent),
        term(N::EndPercent, end * 100.0, Unit::Percent),
        term(N::UsedAh, run.ah, Unit::AmpHour),
        term(N::OpenCircuitStartV, emf(from), Unit::Volt),
        term(N::OpenCircuitEndV, emf(end), Unit::Volt),
        term(N::BankResistance, pack.ohm * 1000.0, Unit::Milliohm),
        term(
            N::FirstAmps,
            run.knots.first().map_or(0.0, |knot| knot.amps),
            Unit::Amp,
        ),
        term(
            N::LastAmps,
            run.knots.last().map_or(0.0, |knot| knot.amps),
            Unit::Amp,
        ),
        term(N::MeanAmps, mean_a, Unit::Amp),
        term(N::MeanVolts, mean_v, Unit::Volt),
    ];
    if peukert {
        terms.push(term(
            N::PeukertExponent,
            pack.capacity.exponent,
            Unit::Number,
        ));
        terms.push(term(N::RatedAmps, pack.capacity.rated_a, Unit::Amp));
    }
    terms.push(term(N::Hours, run.hours, Unit::Hour));
    if matches!(run.stop, Stop::ChargeFloor { .. }) && run.hours > 0.0 {
        // Rated energy over first watts: what a quick estimate would divide.
        let first = run.knots[0];
        let rest_wh = pack.held_ah() * (from - to) * emf(from);
        terms.push(term(
            N::QuickHours,
            rest_wh / (first.volts * first.amps),
            Unit::Hour,
        ));
    }
    let formula = if peukert {
        Formula::ChargeOverCurrentPeukert
    } else {
        Formula::ChargeOverCurrent
    };
    Working { formula, terms }
}

fn term(name: TermName, value: f64, unit: Unit) -> Term {
    Term { name, value, unit }
}
