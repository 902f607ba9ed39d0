//! Sizes of conductors, the reader's own system first.

use crate::{
    answer::wiring::{CircuitAnswer, Needed, RuleName, SizeFigures, SizeName, SizeSystem},
    text::{Formatter, m, number::with_sign},
};

/// A size as it is sold: `6 AWG` or `16 mm²`.
#[must_use]
pub fn size_text(f: Formatter, size: &SizeName) -> String {
    match size.system {
        SizeSystem::Awg => with_sign(size.gauge.clone(), system_sign(SizeSystem::Awg)),
        SizeSystem::Metric => f.with_unit(size.area_mm2, system_sign(SizeSystem::Metric)),
    }
}

/// How a system of sizes is written, in every language.
#[must_use]
pub const fn system_sign(system: SizeSystem) -> &'static str {
    match system {
        SizeSystem::Awg => "AWG",
        SizeSystem::Metric => "mm²",
    }
}

/// What is needed in both systems: gauges first for those who use US units.
#[must_use]
pub fn needed(f: Formatter, circuit: &CircuitAnswer) -> Vec<&Needed> {
    let own = if f.units.us_units {
        SizeSystem::Awg
    } else {
        SizeSystem::Metric
    };
    let mut both: Vec<&Needed> = circuit.needed.iter().collect();
    both.sort_by_key(|one| one.system != own);
    both
}

/// Both smallest sizes: `10 mm² or 8 AWG`.
#[must_use]
pub fn both_sizes(f: Formatter, circuit: &CircuitAnswer) -> String {
    let smallest = needed(f, circuit)
        .into_iter()
        .filter_map(|one| one.smallest.as_ref());
    let texts: Vec<String> = smallest.map(|one| size_text(f, &one.size)).collect();
    if texts.is_empty() {
        f.say(m::WiringNoSize).into()
    } else {
        f.one_of(&texts)
    }
}

/// Whether no size of either system would do.
#[must_use]
pub fn none_passes(circuit: &CircuitAnswer) -> bool {
    circuit.needed.iter().all(|one| one.smallest.is_none())
}

/// The rule that forbade the next thinner conductor; nothing where no size passes.
#[must_use]
pub fn decided_by(f: Formatter, circuit: &CircuitAnswer) -> Option<RuleName> {
    needed(f, circuit)
        .into_iter()
        .find_map(|one| one.decided_by)
}

/// The conductor that the figures are of: the one there, or the smallest that passes.
#[must_use]
pub fn judged(f: Formatter, circuit: &CircuitAnswer) -> Option<&SizeFigures> {
    let smallest = || {
        needed(f, circuit)
            .into_iter()
            .find_map(|one| one.smallest.as_ref())
    };
    circuit.have.as_ref().or_else(smallest)
}
