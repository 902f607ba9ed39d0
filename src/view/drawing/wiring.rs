//! The wiring as a single-line diagram: every circuit of the answer, and what hangs on
//! it.

use super::Shown;
use crate::answer::wiring::AskedBy;
use crate::{
    answer::wiring::{CircuitAnswer, Verdict, WiringAnswer, WiringNote},
    plan::{
        Feed, Path, Plan,
        supply::{ChargerField, ChargerKind, SupplyField},
        wiring::Circuit,
    },
    text::{Formatter, m, pictures as say, wiring::circuit_verdict},
    view::diagram::{
        badge::Standing,
        single_line::{Branch, FuseMark, Stage, single_line},
        symbols::Symbol,
    },
};

/// The diagram of a wiring's answer at a width in pixels.
#[must_use]
pub fn wiring_diagram(f: Formatter, plan: &Plan, answer: &WiringAnswer, width: f64) -> Shown {
    let branches = branches(f, plan, answer);
    let stages = branches.iter().flat_map(|branch| &branch.stages);
    let parts: Vec<String> = stages.map(told).collect();
    Shown {
        title: f.say(m::PictureWiring),
        caption: f.say(m::PictureWiringCaption).into(),
        told: say::told(f.say(m::PictureWiring), &parts),
        picture: single_line(&branches, width),
    }
}

/// A piece for those who do not see it.
fn told(stage: &Stage) -> String {
    let verdicts = stage.verdicts.iter().map(|(_, text)| text.as_str());
    let fuse = stage.fuse.iter().map(|fuse| fuse.text.as_str());
    let lines = stage.lines.iter().map(String::as_str);
    let all: Vec<&str> = verdicts.chain(lines).chain(fuse).collect();
    format!("{}: {}", stage.title, all.join("; "))
}

/// What gives first: bank, chargers, panels; then what takes.
fn branches(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<Branch> {
    let gives = |stages| Branch {
        gives: true,
        stages,
    };
    let takes = |stages| Branch {
        gives: false,
        stages,
    };
    let mut all = vec![gives(vec![bank(f, plan, answer)])];
    let chargers = (0..plan.supply.chargers.len()).filter_map(|at| charger(f, plan, answer, at));
    all.extend(chargers.map(|stage| gives(vec![stage])));
    if !plan.supply.arrays.is_empty() {
        all.push(gives(vec![
            controller(f, plan, answer),
            panels(f, plan, answer),
        ]));
    }
    all.push(takes(unit(f, plan, answer)));
    if !plan.loads.is_empty() {
        let (names, watts) = say::loads(f, plan);
        let lines = [names, watts, f.say(m::PictureNotWorkedOut).into()];
        let mut loads = plain(Symbol::Load, f.say(m::PictureLoads).into());
        loads.lines = lines.into_iter().filter(|line| !line.is_empty()).collect();
        all.push(takes(vec![loads]));
    }
    all
}

fn plain(symbol: Symbol, title: String) -> Stage {
    Stage {
        opens: None,
        symbol,
        title,
        verdicts: Vec::new(),
        fuse: None,
        lines: Vec::new(),
    }
}

fn found(answer: &WiringAnswer, circuit: Circuit) -> Option<&CircuitAnswer> {
    answer.circuits.iter().find(|one| one.circuit == circuit)
}

/// How a verdict stands.
pub(super) const fn standing(verdict: Verdict) -> Standing {
    match verdict {
        Verdict::Carries => Standing::Good,
        Verdict::Fails => Standing::Bad,
        Verdict::NotSaid | Verdict::NotJudged => Standing::Open,
    }
}

/// A piece at the end of a circuit's cable, with all that the answer has of that.
fn at_circuit(f: Formatter, answer: &WiringAnswer, circuit: Circuit, symbol: Symbol) -> Stage {
    let title = say::circuit_title(f, circuit);
    let mut stage = plain(symbol, title.into());
    if let Some(one) = found(answer, circuit) {
        let verdict = circuit_verdict(f, one);
        stage.opens = Some((circuit_key(circuit), say::opens(f, title, &verdict)));
        stage.verdicts.push((standing(one.verdict), verdict));
        let fuse = say::wrong_fuse(f, one);
        stage
            .verdicts
            .extend(fuse.map(|text| (Standing::Bad, text)));
        stage
            .lines
            .extend([say::conductor(f, one), say::current(f, one)]);
        // Panels have theirs by the string.
        stage.fuse =
            say::fuse(f, one)
                .filter(|_| circuit != Circuit::Panel)
                .map(|(text, is_there)| FuseMark {
                    text,
                    is_there,
                    at_piece: circuit == Circuit::Distribution,
                });
        return stage;
    }
    let is_beyond = answer.notes.iter().any(
        |note| matches!(note, WiringNote::CircuitBeyondTables { circuit: of } if *of == circuit),
    );
    if is_beyond {
        let verdict = (Standing::Open, f.say(m::PictureBeyondTables).into());
        stage.verdicts.push(verdict);
    }
    stage
}

/// What a circuit goes by where it opens.
#[must_use]
pub fn circuit_key(circuit: Circuit) -> String {
    use crate::plan::part::Choice;
    circuit.key().to_owned()
}

fn bank(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Stage {
    let has_cable = plan.wiring.distribution_m.is_some();
    let mut stage = if has_cable {
        at_circuit(f, answer, Circuit::Distribution, Symbol::Battery)
    } else {
        plain(Symbol::Battery, f.say(m::PictureBank).into())
    };
    stage.lines.extend(say::bank(f, plan));
    if let Some(limits) = &answer.bank {
        stage.lines.extend(say::string_fuse(f, limits));
    }
    if !has_cable {
        stage.lines.push(f.say(m::PictureBeginAtBank).into());
    }
    stage
}

/// Whether the charger's cable that is worked out is this one's.
fn is_asked_by(answer: &WiringAnswer, by: AskedBy) -> bool {
    found(answer, Circuit::Charger).is_some_and(|one| one.asked_by == by)
}

fn charger(f: Formatter, plan: &Plan, answer: &WiringAnswer, at: usize) -> Option<Stage> {
    let most_a = plan.number(Path::Charger(at, ChargerField::MostA))?;
    let symbol = match plan.supply.chargers.get(at)?.kind_taken() {
        ChargerKind::Shore => Symbol::Rectifier,
        ChargerKind::Engine | ChargerKind::Generator => Symbol::Generator,
    };
    let (name, gives) = say::charger(f, plan, at, most_a);
    let by = AskedBy::Charger { charger: at };
    Some(charging(f, answer, by, symbol, [name, gives]))
}

/// A piece that charges: with the charger's circuit where that is its own.
fn charging(
    f: Formatter,
    answer: &WiringAnswer,
    by: AskedBy,
    symbol: Symbol,
    [name, gives]: [String; 2],
) -> Stage {
    if is_asked_by(answer, by) {
        let mut stage = at_circuit(f, answer, Circuit::Charger, symbol);
        stage.lines.insert(0, format!("{name}, {gives}"));
        return stage;
    }
    let mut stage = plain(symbol, name);
    stage.lines = vec![gives, f.say(m::PictureNotWorkedOut).into()];
    stage
}

fn controller(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Stage {
    let limit_a = plan.number(Path::Supply(SupplyField::ControllerLimitA));
    let name = f.say(m::PictureController).to_owned();
    let own = is_asked_by(answer, AskedBy::Controller);
    let most_a = match found(answer, Circuit::Charger) {
        Some(one) if own => Some(one.continuous_a),
        _ => limit_a,
    };
    let gives = most_a
        .map(|most_a| say::at_most(f, most_a))
        .unwrap_or_default();
    let mut stage = charging(
        f,
        answer,
        AskedBy::Controller,
        Symbol::DcConverter,
        [name, gives],
    );
    stage.lines.retain(|line| !line.is_empty());
    stage
}

fn panels(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Stage {
    let mut stage = at_circuit(f, answer, Circuit::Panel, Symbol::Panel);
    stage.lines.insert(0, say::panels(f, plan));
    if let Some(side) = &answer.solar {
        let text = say::cold_volts(f, side);
        if side.verdict == Verdict::Carries {
            stage.lines.push(text);
        } else {
            stage.verdicts.push((standing(side.verdict), text));
        }
        if let Some(text) = say::panel_fuses(f, side) {
            stage.fuse = Some(FuseMark {
                text: text.clone(),
                is_there: true,
                at_piece: true,
            });
            stage.lines.push(text);
        }
    }
    stage
}

/// The unit, behind what feeds it.
fn unit(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<Stage> {
    let at = plan.night.asked_unit;
    let feed = plan.units.get(at).map_or(Feed::Direct, |unit| unit.feed);
    let (first, motor) = match feed {
        Feed::Direct => (Symbol::Motor, Symbol::Motor),
        Feed::DcDc { .. } => (Symbol::DcConverter, Symbol::Motor),
        Feed::Inverter { .. } => (Symbol::Inverter, Symbol::AcMotor),
    };
    let mut stage = at_circuit(f, answer, Circuit::Unit, first);
    let sized = found(answer, Circuit::Unit).map(|one| say::sized_for(f, plan, one));
    let sized = sized.map_or_else(String::new, |text| format!(", {text}"));
    let name = say::unit(f, plan);
    let is_fed = say::feed(f, plan, at);
    stage
        .lines
        .insert(0, is_fed.as_ref().unwrap_or(&name).clone() + &sized);
    let unit = is_fed.map(|_| plain(motor, name));
    std::iter::once(stage).chain(unit).collect()
}
