//! The answer as a sentence, each cable as a line, and how numbers are written.

use super::{circuit_name, fuse::fuse_fault};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::wiring::{
        CircuitAnswer, Needed, Open, RuleName, SizeFigures, SizeName, SizeSystem, Verdict,
        WiringAnswer,
    },
    plan::{Path, Plan, part::Choice, wiring::Circuit},
    range::Unit,
    text::hand_on::plan_value,
};

/// A thin space before a unit.
pub(super) const THIN: char = '\u{202f}';

/// Amps, from a thousand up as kiloamps.
#[must_use]
pub fn amps(f: Formatter, value: f64) -> String {
    if value >= 1000.0 {
        f.with_unit(value / 1000.0, "kA")
    } else {
        f.with_unit(value, "A")
    }
}

pub(super) fn volts(f: Formatter, value: f64) -> String {
    format!("{}{THIN}V", f.fixed(value, 2))
}

pub(super) fn percent(f: Formatter, value: f64) -> String {
    let decimals = usize::from(value < 10.0);
    format!("{}{THIN}%", f.fixed(value, decimals))
}

pub(super) fn degrees(f: Formatter, plan: &Plan, celsius: f64) -> String {
    plan_value(f, plan, Unit::Celsius, celsius.round())
}

/// A size as it is sold: `6 AWG` or `16 mm²`.
#[must_use]
pub fn size_text(f: Formatter, size: &SizeName) -> String {
    match size.system {
        SizeSystem::Awg => format!("{}{THIN}AWG", size.gauge),
        SizeSystem::Metric => f.with_unit(size.area_mm2, "mm²"),
    }
}

/// Both smallest sizes: `8 AWG or 10 mm²`.
#[must_use]
pub fn both_sizes(f: Formatter, needed: &[Needed]) -> String {
    let smallest = needed.iter().filter_map(|one| one.smallest.as_ref());
    let texts: Vec<String> = smallest.map(|one| size_text(f, &one.size)).collect();
    match texts.as_slice() {
        [] => "no size there is".into(),
        texts => texts.join(" or "),
    }
}

/// The cable of a circuit within a sentence.
fn the_cable(_f: Formatter, circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Distribution => "the cable to the distribution",
        Circuit::Unit => "the cable to the unit",
        Circuit::Charger => "the charger’s cable",
        Circuit::Panel => "the panels’ cable",
    }
}

/// What is wrong with a circuit, in a few words; nothing if it carries.
fn trouble(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let cable = the_cable(f, circuit.circuit);
    let have = circuit.have.as_ref()?;
    let size = size_text(f, &have.size);
    if have.loaded.is_none() {
        return Some(format!("no current carries the power through {cable}"));
    }
    let hot = have.loaded?;
    if have.fails.contains(&RuleName::Ampacity) {
        return Some(format!(
            "{cable} ({size}) may not carry {} for hours",
            amps(f, hot.current_a)
        ));
    }
    if have.fails.contains(&RuleName::Drop) {
        return Some(format!("{cable} drops {}", percent(f, hot.hot_percent)));
    }
    if have.fails.contains(&RuleName::FuseFit) {
        return Some(format!(
            "no fuse that bears the load protects {cable} ({size})"
        ));
    }
    if have.fails.contains(&RuleName::MechanicalMinimum) {
        return Some(format!("{cable} is thinner than the law’s thinnest"));
    }
    let fault = circuit.protection.as_ref()?.fitted_faults.first()?;
    Some(format!(
        "{} in {cable} {}",
        "the fuse",
        fuse_fault(f, *fault)
    ))
}

/// What the page answers, as a sentence.
#[must_use]
pub fn headline(f: Formatter, answer: &WiringAnswer) -> String {
    let failing = answer
        .circuits
        .iter()
        .filter(|circuit| circuit.verdict == Verdict::Fails);
    let mut troubles: Vec<String> = failing.filter_map(|one| trouble(f, one)).collect();
    if let Some(bank) = &answer.bank {
        let burdens = [(bank.continuous, "for hours"), (bank.start, "at the start")];
        for (burden, when) in burdens {
            if burden.verdict == Verdict::Fails {
                troubles.push(format!(
                    "one battery is to give {} {when} and may give {}",
                    amps(f, burden.worst_a),
                    amps(f, burden.limit_a.unwrap_or_default())
                ));
            }
        }
        if let Some(charge) = bank.charge.filter(|one| one.verdict == Verdict::Fails) {
            troubles.push(format!(
                "one battery is charged with {} and bears {}",
                amps(f, charge.worst_a),
                amps(f, charge.limit_a.unwrap_or_default())
            ));
        }
    }
    if answer
        .solar
        .is_some_and(|side| side.verdict == Verdict::Fails)
    {
        troubles.push("the panels exceed the controller on the coldest morning".into());
    }
    if !troubles.is_empty() {
        return format!("Not as it stands: {}.", listed(f, &troubles));
    }
    let unit = answer
        .circuits
        .iter()
        .find(|circuit| circuit.circuit == Circuit::Unit);
    let Some(circuit) = unit else {
        return "Nothing is said of the cable to the unit: a number lies beyond what the tables cover.".into();
    };
    if circuit.have.is_none() {
        return format!(
            "Not judged yet: the cable to the unit is not named. It needs {}.",
            both_sizes(f, &circuit.needed)
        );
    }
    let (Verdict::Carries, Some(hot)) = (
        answer.verdict,
        circuit.have.as_ref().and_then(|have| have.loaded),
    ) else {
        return format!(
            "Not judged yet: it hangs on what is not said or only guessed. Give {}.",
            open_names(f, &answer.open)
        );
    };
    let yes = if crate::answer::wiring::is_beyond_fifty(answer.charge_v) {
        "Only by tables that end at 50 V, which this bank passes while it charges"
    } else {
        "Yes, as far as you said"
    };
    format!(
        "{yes}: the cable to the unit carries {} and drops {}{}.",
        amps(f, hot.current_a),
        percent(f, hot.hot_percent),
        open_ends(f, answer)
    )
}

/// The fields that a verdict waits for, by name: three of them, the rest by number.
#[must_use]
pub fn open_names(f: Formatter, open: &[Open]) -> String {
    let named: Vec<String> = open
        .iter()
        .take(3)
        .map(|&one| format!("“{}”", open_name(f, one)))
        .collect();
    match open.len().saturating_sub(3) {
        0 => named.join(", "),
        more => format!("{} and {more} more", named.join(", ")),
    }
}

/// What is to be said, as its field calls it, with the cable where several have it.
#[must_use]
pub fn open_name(f: Formatter, open: Open) -> String {
    match open {
        Open::FuseKind => f.say(m::WiringFuseKind).into(),
        Open::Field(path) => {
            let circuit = Circuit::ALL.iter().find(|&&circuit| {
                let of_circuit =
                    |at: Path| matches!(at, Path::Installation(of, _) if of == circuit);
                of_circuit(path) || circuit.run_paths(0).contains(&path)
            });
            let label = crate::text::field_label(f, path);
            circuit.map_or_else(
                || label.into(),
                |&circuit| format!("{label} ({})", circuit_name(f, circuit)),
            )
        }
    }
}

/// What was not said, after a yes.
fn open_ends(_f: Formatter, answer: &WiringAnswer) -> String {
    let circuits = answer.circuits.iter();
    match circuits
        .filter(|circuit| circuit.verdict == Verdict::NotSaid)
        .count()
    {
        0 => String::new(),
        1 => "; one more cable is not named yet".into(),
        several => format!("; {several} more cables are not named yet"),
    }
}

/// Two of them in full, the rest by number.
fn listed(_f: Formatter, troubles: &[String]) -> String {
    match troubles {
        [first, second, rest @ ..] if !rest.is_empty() => {
            format!("{first}; {second}; and {} more below", rest.len())
        }
        all => all.join("; and "),
    }
}

/// A circuit in one line: what is there and how it fares.
#[must_use]
pub fn circuit_line(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(have) = &circuit.have else {
        return format!("not named yet, needs {}", both_sizes(f, &circuit.needed));
    };
    let size = size_text(f, &have.size);
    match circuit.verdict {
        Verdict::Carries => format!("{size} carries it"),
        Verdict::Fails => match trouble_short(f, circuit, have) {
            Some(short) => format!("{size}: {short}"),
            None => size,
        },
        Verdict::NotSaid | Verdict::NotJudged => {
            format!(
                "{size}: not judged yet, give {}",
                open_names(f, &circuit.open)
            )
        }
    }
}

fn trouble_short(f: Formatter, circuit: &CircuitAnswer, have: &SizeFigures) -> Option<String> {
    let Some(hot) = have.loaded else {
        return Some("no current carries the power".into());
    };
    if let Some(rule) = have.fails.first() {
        return Some(match rule {
            RuleName::Ampacity => "too thin for the current".into(),
            RuleName::FuseFit => "no fuse fits it".into(),
            RuleName::Drop => format!("drops {}", percent(f, hot.hot_percent)),
            RuleName::MechanicalMinimum => "too thin to be laid".into(),
        });
    }
    let fault = circuit.protection.as_ref()?.fitted_faults.first()?;
    Some(format!("its fuse {}", fuse_fault(f, *fault)))
}
