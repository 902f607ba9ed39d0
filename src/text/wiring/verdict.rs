//! How a circuit fares: one wording for its row, the diagram and the sentence above them.

use super::{
    circuit_name,
    fuse::fuse_fault,
    said::percent,
    sizes::{both_sizes, none_passes, size_text},
};
use crate::{
    answer::wiring::{CircuitAnswer, Open, RuleName, SizeFigures, Verdict},
    plan::{Path, part::Choice, wiring::Circuit},
    text::{Formatter, field_label, m},
};

/// How many of the missing inputs a line names; the others are counted.
const NAMED_IN_A_ROW: usize = 3;
const NAMED_IN_A_PICTURE: usize = 1;

/// A circuit in one line: what is there and how it fares.
#[must_use]
pub fn circuit_line(f: Formatter, circuit: &CircuitAnswer) -> String {
    let verdict = verdict_with(f, circuit, |open| open_names(f, open));
    match &circuit.have {
        Some(have) => f.say(m::WiringLine {
            size: size_text(f, &have.size),
            verdict,
        }),
        None => verdict,
    }
}

/// How a circuit fares, where its name and conductor stand beside it.
#[must_use]
pub fn circuit_verdict(f: Formatter, circuit: &CircuitAnswer) -> String {
    let names = |open: &[Open]| names_of(f, open, NAMED_IN_A_PICTURE, field_name);
    verdict_with(f, circuit, names)
}

fn verdict_with(
    f: Formatter,
    circuit: &CircuitAnswer,
    names: impl Fn(&[Open]) -> String,
) -> String {
    let Some(have) = &circuit.have else {
        if none_passes(circuit) {
            return f.say(m::WiringNeedsNoSize).into();
        }
        return f.say(m::WiringNeedsSizes {
            sizes: both_sizes(f, circuit),
        });
    };
    match circuit.verdict {
        Verdict::Carries => f.say(m::WiringCarries).into(),
        Verdict::Fails => trouble(f, circuit, have).map_or_else(
            || f.say(m::WiringFails).into(),
            |why| f.say(m::WiringFailsBecause { why }),
        ),
        Verdict::NotSaid | Verdict::NotJudged if circuit.open.is_empty() => {
            f.say(m::WiringNotJudgedYet).into()
        }
        Verdict::NotSaid | Verdict::NotJudged => f.say(m::WiringWaitsFor {
            names: names(&circuit.open),
        }),
    }
}

/// What is wrong with the conductor or its fuse, in a few words.
fn trouble(f: Formatter, circuit: &CircuitAnswer, have: &SizeFigures) -> Option<String> {
    let Some(loaded) = have.loaded else {
        return Some(f.say(m::WiringShortPower).into());
    };
    let short = |rule: &RuleName| match rule {
        RuleName::Ampacity => f.say(m::WiringShortAmpacity).to_owned(),
        RuleName::FuseFit => f.say(m::WiringShortFuseFit).into(),
        RuleName::Drop => f.say(m::WiringShortDrop {
            drop: percent(f, loaded.hot_percent),
        }),
        RuleName::MechanicalMinimum => f.say(m::WiringShortMinimum).into(),
    };
    if !have.fails.is_empty() {
        let all: Vec<String> = have.fails.iter().map(short).collect();
        return Some(all.join("; "));
    }
    let fault = circuit.protection.as_ref()?.fitted_faults.first()?;
    Some(f.say(m::WiringShortFuse {
        fault: fuse_fault(f, *fault),
    }))
}

/// The fields that a verdict waits for, by name: three of them, the rest by number.
#[must_use]
pub fn open_names(f: Formatter, open: &[Open]) -> String {
    names_of(f, open, NAMED_IN_A_ROW, open_name)
}

fn names_of(
    f: Formatter,
    open: &[Open],
    most: usize,
    name: impl Fn(Formatter, Open) -> String,
) -> String {
    let quoted = |&one: &Open| f.say(m::WiringQuoted { name: name(f, one) });
    let named: Vec<String> = open.iter().take(most).map(quoted).collect();
    let names = named.join(", ");
    match open.len().saturating_sub(most) {
        0 => names,
        count => f.say(m::WiringNamesAndMore { names, count }),
    }
}

/// What is missing, as its field calls it.
fn field_name(f: Formatter, open: Open) -> String {
    match open {
        Open::FuseKind => f.say(m::WiringFuseKind).into(),
        Open::Field(path) => field_label(f, path).into(),
    }
}

/// The same, with the cable where several have such a field.
#[must_use]
pub fn open_name(f: Formatter, open: Open) -> String {
    let label = field_name(f, open);
    let Open::Field(path) = open else {
        return label;
    };
    let is_of = |circuit: Circuit| {
        matches!(path, Path::Installation(of, _) if of == circuit)
            || circuit.run_paths(0).contains(&path)
    };
    let circuit = Circuit::ALL.iter().find(|&&circuit| is_of(circuit));
    match circuit {
        Some(&circuit) => format!("{label} ({})", circuit_name(f, circuit)),
        None => label,
    }
}
