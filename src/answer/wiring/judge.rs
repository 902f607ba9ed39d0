//! What a verdict may say: a guess decides none, in either direction.
//!
//! Every part is judged by the figures as they stand, and again with all guesses
//! at the kind and at the hard end of what they may be. It carries only if it does
//! at the hard end, and fails only if it does at the kind one; between them it is
//! not judged yet, and the fields that would settle it are named. Temperature ratings
//! are kind to one rule and hard on another, and are gone through one by one.

use super::{
    BankLimits, WiringAnswer, bank,
    circuit::{CircuitAnswer, Verdict},
    face,
    guesses::{Guess, guesses},
    protection, solar,
};
use crate::plan::{
    Path, Plan,
    wiring::{Circuit, InstallationField as L, WiringField as W},
};
use serde::{Deserialize, Serialize};

/// What a verdict waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Open {
    /// A number of the plan: not said, or a guess.
    Field(Path),
    /// The kind of the main fuse.
    FuseKind,
}

/// Something with a verdict of its own.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Part {
    Circuit(Circuit),
    Continuous,
    Start,
    Charge,
    /// The panels against their controller on the coldest morning.
    Cold,
}

/// Which end of all guesses.
#[derive(Clone, Copy, Debug, PartialEq)]
enum End {
    Kind,
    Hard,
}

/// Puts the verdicts in that the answer may give, and what they wait for.
pub(super) fn judge(plan: &Plan, answer: &mut WiringAnswer) {
    let guesses = guesses(plan);
    for at in 0..answer.circuits.len() {
        let part = Part::Circuit(answer.circuits[at].circuit);
        let (mut verdict, mut open) = settled(plan, part, answer.circuits[at].verdict, &guesses);
        let unsaid = unsaid(plan, &answer.circuits[at]);
        if verdict != Verdict::Fails && !unsaid.is_empty() {
            if verdict == Verdict::Carries {
                verdict = Verdict::NotJudged;
            }
            open.splice(0..0, unsaid);
        }
        answer.circuits[at].verdict = verdict;
        answer.circuits[at].open = open;
    }
    let mut of_rest = Vec::new();
    let mut settle = |part: Part, verdict: &mut Verdict| {
        let (found, open) = settled(plan, part, *verdict, &guesses);
        *verdict = found;
        of_rest.extend(open);
    };
    if let Some(bank) = &mut answer.bank {
        settle(Part::Continuous, &mut bank.continuous.verdict);
        settle(Part::Start, &mut bank.start.verdict);
        if let Some(charge) = &mut bank.charge {
            settle(Part::Charge, &mut charge.verdict);
        }
    }
    if let Some(side) = &mut answer.solar {
        settle(Part::Cold, &mut side.verdict);
    }
    answer.verdict = whole(answer);
    answer.open = first_of_each(answer, of_rest);
}

/// Anything that fails fails all; the unit's cable must have been said, and nothing
/// that was said may hang on a guess.
fn whole(answer: &WiringAnswer) -> Verdict {
    let all = verdicts(answer);
    let unit = answer
        .circuits
        .iter()
        .find(|circuit| circuit.circuit == Circuit::Unit);
    let unit = unit.map_or(Verdict::NotSaid, |circuit| circuit.verdict);
    if all.contains(&Verdict::Fails) {
        Verdict::Fails
    } else if unit == Verdict::Carries && all.contains(&Verdict::NotJudged) {
        Verdict::NotJudged
    } else {
        unit
    }
}

/// Of every part that has one, in the order of the answer.
fn verdicts(answer: &WiringAnswer) -> Vec<Verdict> {
    let of_bank = |bank: &BankLimits| {
        let held = [Some(bank.continuous), Some(bank.start), bank.charge];
        held.into_iter().flatten().map(|burden| burden.verdict)
    };
    let circuits = answer.circuits.iter().map(|circuit| circuit.verdict);
    let bank = answer.bank.iter().flat_map(of_bank);
    let solar = answer.solar.iter().map(|side| side.verdict);
    circuits.chain(bank).chain(solar).collect()
}

/// What all wait for: the unit's cable first, each once. A cable that nobody has
/// named holds up no other.
fn first_of_each(answer: &WiringAnswer, of_rest: Vec<Open>) -> Vec<Open> {
    let (unit, others): (Vec<_>, Vec<_>) = answer
        .circuits
        .iter()
        .partition(|circuit| circuit.circuit == Circuit::Unit);
    let others = others.into_iter().filter(|circuit| circuit.have.is_some());
    let of_circuits = unit
        .into_iter()
        .chain(others)
        .flat_map(|circuit| &circuit.open);
    let mut open: Vec<Open> = Vec::new();
    for &one in of_circuits.chain(&of_rest) {
        if !open.contains(&one) {
            open.push(one);
        }
    }
    open
}

/// What is missing beside the numbers that are guessed: the conductor, then its
/// fuse, the fuse's kind and what that must break.
fn unsaid(plan: &Plan, circuit: &CircuitAnswer) -> Vec<Open> {
    let [length, conductor] = circuit.circuit.run_paths(plan.night.asked_unit);
    if circuit.have.is_none() {
        // With no length there is no cable yet, whatever its conductor.
        let is_named = plan.stated(conductor).is_some();
        return vec![Open::Field(if is_named { length } else { conductor })];
    }
    // Panels give little more in a fault than they always do, and a few strings
    // need no fuse.
    if circuit.circuit == Circuit::Panel {
        return Vec::new();
    }
    let mut unsaid = Vec::new();
    let fuse = Path::Installation(circuit.circuit, L::FuseA);
    if plan.stated(fuse).is_none() {
        unsaid.push(Open::Field(fuse));
    }
    if protection::fault_is_guess(plan) {
        unsaid.push(Open::Field(Path::Wiring(W::BatteryFaultA)));
    }
    if plan.wiring.fuse_kind.is_none() {
        unsaid.push(Open::FuseKind);
    }
    unsaid
}

/// A part's verdict, and the guesses that keep it from one.
fn settled(plan: &Plan, part: Part, face: Verdict, guesses: &[Guess]) -> (Verdict, Vec<Open>) {
    let end = match face {
        Verdict::Carries => End::Hard,
        Verdict::Fails => End::Kind,
        Verdict::NotSaid | Verdict::NotJudged => return (face, Vec::new()),
    };
    let near: Vec<Guess> = guesses
        .iter()
        .copied()
        .filter(|one| matters(one, part))
        .collect();
    let is_other = |moved: &[Guess]| verdict_of(&with(plan, moved, end), part) != Some(face);
    let flips = |moved: &[Guess]| {
        let is_other_rated = |&rating_c: &f64| is_other(&rated(moved, rating_c));
        let has_rating = moved.iter().any(|one| is_rating(one.path));
        is_other(moved) || (has_rating && RATINGS_C.iter().any(is_other_rated))
    };
    if near.is_empty() || !flips(&near) {
        return (face, Vec::new());
    }
    let mut deciding: Vec<Guess> = near.iter().copied().filter(|&one| flips(&[one])).collect();
    if deciding.is_empty() {
        deciding = together(near, flips);
    }
    let open = deciding.iter().map(|one| Open::Field(one.path)).collect();
    (Verdict::NotJudged, open)
}

/// What cables and lugs are usually rated for, °C, a column of the tables each.
const RATINGS_C: [f64; 5] = [60.0, 75.0, 80.0, 90.0, 105.0];

const fn is_rating(path: Path) -> bool {
    matches!(path, Path::Installation(_, L::InsulationC | L::TerminalC))
}

/// The same guesses with their ratings at one temperature. A higher one carries more
/// and, being hotter, drops more: neither of its ends is the kind one for all rules.
fn rated(guesses: &[Guess], rating_c: f64) -> Vec<Guess> {
    let rated = guesses.iter().map(|&one| {
        if is_rating(one.path) {
            Guess {
                kind: rating_c,
                hard: rating_c,
                ..one
            }
        } else {
            one
        }
    });
    rated.collect()
}

/// Of guesses that only together change a verdict, as few as still do.
fn together(mut guesses: Vec<Guess>, flips: impl Fn(&[Guess]) -> bool) -> Vec<Guess> {
    let mut at = guesses.len();
    while at > 0 {
        at -= 1;
        let left_out = guesses.remove(at);
        if !flips(&guesses) {
            guesses.insert(at, left_out);
        }
    }
    guesses
}

/// Whether a guess may have a say in a part.
fn matters(guess: &Guess, part: Part) -> bool {
    match (guess.path, part) {
        // The unit's cable has what the one before it leaves.
        (Path::Installation(Circuit::Distribution, _), Part::Circuit(Circuit::Unit)) => true,
        (Path::Installation(circuit, _), Part::Circuit(of)) => circuit == of,
        (Path::Installation(..), _) => false,
        // A panel of more volts has fewer amps: kind to its cable, hard on the
        // controller, which has a guess of its own.
        (Path::Array(_, crate::plan::supply::ArrayField::PanelBestV), part) => {
            part == Part::Circuit(Circuit::Panel)
        }
        _ => true,
    }
}

/// The plan with all of these guesses at one end.
fn with(plan: &Plan, guesses: &[Guess], end: End) -> Plan {
    let mut plan = plan.clone();
    for guess in guesses {
        let value = match end {
            End::Kind => guess.kind,
            End::Hard => guess.hard,
        };
        plan.set_number(guess.path, value);
    }
    plan
}

/// A part's verdict by the figures of a plan as they stand.
fn verdict_of(plan: &Plan, part: Part) -> Option<Verdict> {
    match part {
        Part::Circuit(circuit) => face::circuit(plan, circuit).map(|circuit| circuit.verdict),
        Part::Continuous => Some(bank::bank_limits(plan)?.continuous.verdict),
        Part::Start => Some(bank::bank_limits(plan)?.start.verdict),
        Part::Charge => Some(bank::bank_limits(plan)?.charge?.verdict),
        Part::Cold => Some(solar::solar_side(plan)?.verdict),
    }
}
