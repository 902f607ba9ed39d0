//! The answer as a sentence, and how numbers are written.

use super::{
    fuse::fuse_fault,
    open_names,
    sizes::{both_sizes, none_passes, size_text},
};
use crate::{
    answer::wiring::{BankLimits, CircuitAnswer, RuleName, Verdict, WiringAnswer, is_beyond_fifty},
    plan::{part::Choice, wiring::Circuit},
    range::Unit,
    text::{Formatter, m, number::with_sign},
};

/// Amps, from a thousand up as kiloamps.
#[must_use]
pub fn amps(f: Formatter, value: f64) -> String {
    if value >= 1000.0 {
        f.with_unit(value / 1000.0, "kA")
    } else {
        f.with_unit(value, "A")
    }
}

/// Volts to the hundredth, without zeros at the end.
pub(super) fn volts(f: Formatter, value: f64) -> String {
    with_sign(f.fixed(value, 2), "V")
}

pub(super) fn percent(f: Formatter, value: f64) -> String {
    with_sign(f.fixed(value, usize::from(value < 10.0)), "%")
}

pub(super) fn degrees(f: Formatter, celsius: f64) -> String {
    f.stated_value(celsius.round(), Unit::Celsius)
}

/// What the page answers, as a sentence; two where a cable is still missing.
#[must_use]
pub fn headline(f: Formatter, answer: &WiringAnswer) -> String {
    let troubles = troubles(f, answer);
    if !troubles.is_empty() {
        return f.say(m::WiringHeadlineFails {
            troubles: listed(f, &troubles),
        });
    }
    let mut circuits = answer.circuits.iter();
    let Some(circuit) = circuits.find(|circuit| circuit.circuit == Circuit::Unit) else {
        return f.say(m::WiringHeadlineBeyond).into();
    };
    let Some(have) = &circuit.have else {
        return unnamed(f, circuit);
    };
    let (Verdict::Carries, Some(hot)) = (answer.verdict, have.loaded) else {
        return f.say(m::WiringHeadlineOpen {
            names: open_names(f, &answer.open),
        });
    };
    let (current, drop) = (amps(f, hot.current_a), percent(f, hot.hot_percent));
    let yes = if is_beyond_fifty(answer.charge_v) {
        f.say(m::WiringHeadlineFifty { current, drop })
    } else {
        f.say(m::WiringHeadlineYes { current, drop })
    };
    match missing_cables(answer) {
        0 => yes,
        count => format!("{yes} {}", f.say(m::WiringMoreCables { count })),
    }
}

/// The cable to the unit has no conductor yet.
fn unnamed(f: Formatter, circuit: &CircuitAnswer) -> String {
    if none_passes(circuit) {
        f.say(m::WiringHeadlineNoSize {
            current: amps(f, circuit.low_a),
            length: f.stated_value(circuit.length_m, Unit::Meter),
        })
    } else {
        f.say(m::WiringHeadlineUnnamed {
            sizes: both_sizes(f, circuit),
        })
    }
}

/// Cables of which nothing is entered yet.
fn missing_cables(answer: &WiringAnswer) -> usize {
    let circuits = answer.circuits.iter();
    circuits
        .filter(|circuit| circuit.verdict == Verdict::NotSaid)
        .count()
}

/// Two of them in full, the rest by number.
fn listed(f: Formatter, troubles: &[String]) -> String {
    match troubles {
        [first, second, rest @ ..] if !rest.is_empty() => f.say(m::WiringMoreTroubles {
            troubles: format!("{first}; {second}"),
            count: rest.len(),
        }),
        all => all.join("; "),
    }
}

/// All that fails, a clause each.
fn troubles(f: Formatter, answer: &WiringAnswer) -> Vec<String> {
    let circuits = answer.circuits.iter();
    let failing = circuits.filter(|circuit| circuit.verdict == Verdict::Fails);
    let mut all: Vec<String> = failing
        .flat_map(|one| troubles_of_circuit(f, one))
        .collect();
    all.extend(
        answer
            .bank
            .iter()
            .flat_map(|bank| troubles_of_bank(f, bank)),
    );
    let solar = answer.solar.map(|side| side.verdict);
    if solar == Some(Verdict::Fails) {
        all.push(f.say(m::WiringTroublePanels).into());
    }
    all
}

fn troubles_of_bank(f: Formatter, bank: &BankLimits) -> Vec<String> {
    let burdens = [(bank.continuous, "hours"), (bank.start, "start")];
    let failing = burdens
        .into_iter()
        .filter(|(burden, _)| burden.verdict == Verdict::Fails);
    let discharging = failing.map(|(burden, when)| {
        f.say(m::WiringTroubleBattery {
            current: amps(f, burden.worst_a),
            when,
            limit: amps(f, burden.limit_a.unwrap_or_default()),
        })
    });
    let charge = bank.charge.filter(|one| one.verdict == Verdict::Fails);
    let charging = charge.map(|charge| {
        f.say(m::WiringTroubleCharging {
            current: amps(f, charge.worst_a),
            limit: amps(f, charge.limit_a.unwrap_or_default()),
        })
    });
    discharging.chain(charging).collect()
}

/// All that is wrong with a circuit, a clause each; nothing if it carries.
fn troubles_of_circuit(f: Formatter, answer: &CircuitAnswer) -> Vec<String> {
    let circuit = answer.circuit.key();
    let Some(have) = &answer.have else {
        return Vec::new();
    };
    let Some(hot) = have.loaded else {
        return vec![f.say(m::WiringTroublePower { circuit })];
    };
    let broken = |rule: &RuleName| match rule {
        RuleName::Ampacity => f.say(m::WiringTroubleAmpacity {
            circuit,
            size: size_text(f, &have.size),
            current: amps(f, hot.current_a),
        }),
        RuleName::Drop => f.say(m::WiringTroubleDrop {
            circuit,
            drop: percent(f, hot.hot_percent),
        }),
        RuleName::FuseFit => f.say(m::WiringTroubleFuseFit {
            circuit,
            size: size_text(f, &have.size),
        }),
        RuleName::MechanicalMinimum => f.say(m::WiringTroubleMinimum { circuit }),
    };
    if !have.fails.is_empty() {
        return have.fails.iter().map(broken).collect();
    }
    let fault = answer
        .protection
        .as_ref()
        .and_then(|one| one.fitted_faults.first());
    let faulty = fault.map(|&fault| {
        f.say(m::WiringTroubleFuse {
            circuit,
            fault: fuse_fault(f, fault),
        })
    });
    faulty.into_iter().collect()
}
