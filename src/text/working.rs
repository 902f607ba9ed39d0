//! The working behind a number, written out.

use crate::text::{Formatter, m};
use crate::{
    answer::{Formula, Term, TermName},
    range::Unit,
};

/// The formula as people write it.
#[must_use]
pub fn formula_text(f: Formatter, formula: Formula) -> &'static str {
    match formula {
        Formula::ChargeOverCurrent => f.say(m::FormulaCharge),
        Formula::ChargeOverCurrentPeukert => f.say(m::FormulaPeukert),
    }
}

/// Where the formula comes from.
#[must_use]
pub fn source_text(f: Formatter, formula: Formula) -> &'static str {
    match formula {
        Formula::ChargeOverCurrent => f.say(m::FormulaChargeSource),
        Formula::ChargeOverCurrentPeukert => f.say(m::FormulaPeukertSource),
    }
}

/// What a term is called.
#[must_use]
pub fn term_label(f: Formatter, name: TermName) -> &'static str {
    match name {
        TermName::HeldAh => f.say(m::TermHeldAh),
        TermName::StartPercent => f.say(m::TermStartPercent),
        TermName::EndPercent => f.say(m::TermEndPercent),
        TermName::UsedAh => f.say(m::TermUsedAh),
        TermName::OpenCircuitStartV => f.say(m::TermOpenCircuitStartV),
        TermName::OpenCircuitEndV => f.say(m::TermOpenCircuitEndV),
        TermName::BankResistance => f.say(m::TermBankResistance),
        TermName::FirstAmps => f.say(m::TermFirstAmps),
        TermName::LastAmps => f.say(m::TermLastAmps),
        TermName::MeanAmps => f.say(m::TermMeanAmps),
        TermName::MeanVolts => f.say(m::TermMeanVolts),
        TermName::PeukertExponent => f.say(m::TermPeukertExponent),
        TermName::RatedAmps => f.say(m::TermRatedAmps),
        TermName::Hours => f.say(m::TermHours),
        TermName::QuickHours => f.say(m::TermQuickHours),
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
