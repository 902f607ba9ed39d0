//! The working behind a number, written out.

use crate::text::Formatter;
use crate::{
    answer::{Formula, Term, TermName},
    range::Unit,
};

/// The formula as people write it.
#[must_use]
pub fn formula_text(_f: Formatter, formula: Formula) -> &'static str {
    match formula {
        Formula::ChargeOverCurrent => {
            "hours = ∫ capacity ÷ current, from the start’s charge down to the end’s; \
             current I solves  E(charge) · I − R · I² = power, loads and cable inside"
        }
        Formula::ChargeOverCurrentPeukert => {
            "hours = ∫ capacity · (rated current ÷ current)^(k − 1) ÷ current, from the start’s \
             charge down to the end’s; current I solves  E(charge) · I − R · I² = power"
        }
    }
}

/// Where the formula comes from.
#[must_use]
pub fn source_text(_f: Formatter, formula: Formula) -> &'static str {
    match formula {
        Formula::ChargeOverCurrent => {
            "Charge balance and Ohm’s law, integrated in charge (three-point Gauss–Legendre between \
             the knots of the voltage curve). Energy divided by power alone would overlook the sag."
        }
        Formula::ChargeOverCurrentPeukert => {
            "Peukert’s law in the rated-hour form t = H · (C ÷ (I · H))^k, applied along the run; \
             below the rated current no more than the rated Ah."
        }
    }
}

/// What a term is called.
#[must_use]
pub fn term_label(_f: Formatter, name: TermName) -> &'static str {
    match name {
        TermName::HeldAh => "the bank holds",
        TermName::StartPercent => "charge at the start",
        TermName::EndPercent => "charge at the end",
        TermName::UsedAh => "charge drawn",
        TermName::OpenCircuitStartV => "open-circuit voltage at the start",
        TermName::OpenCircuitEndV => "open-circuit voltage at the end",
        TermName::BankResistance => "resistance of the bank, R",
        TermName::FirstAmps => "current while on, at the start",
        TermName::LastAmps => "current while on, at the end",
        TermName::MeanAmps => "mean current",
        TermName::MeanVolts => "mean terminal voltage",
        TermName::PeukertExponent => "Peukert exponent, k",
        TermName::RatedAmps => "rated current",
        TermName::Hours => "hours",
        TermName::QuickHours => "for comparison: resting energy ÷ first power",
    }
}

/// A term's number with its unit.
#[must_use]
pub fn working_value(f: Formatter, term: &Term) -> String {
    match term.unit {
        Unit::Hour => f.duration_fine(term.value),
        // Volts, amps and hours: the same in all units shown.
        unit => f.with_unit(term.value, f.sign(unit)),
    }
}
