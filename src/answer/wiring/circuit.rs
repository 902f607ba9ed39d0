//! One stretch of cable: what it is asked, what it must be, and the one there.

use super::{
    asks::{Ask, AskedBy},
    judge::Open,
    protection::{Protection, place, protection},
    remedy::Remedy,
    sizes::{Needed, SizeFigures, needed},
};
use crate::{
    physics::wiring::{
        self, Choice, Column, Demand, Finding, Size, Surroundings, Trial, choose, design_current,
    },
    plan::{
        Plan,
        path::{Path, UnitField as U},
        wiring::{Circuit, InstallationField as L, Place, Strands, USUAL_M},
    },
    quantity::{celsius, in_amps, in_celsius, meters, ohms, square_millimeters, volts},
    simulate::assemble,
};
use serde::{Deserialize, Serialize};

/// Whether something carries what is asked of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// It does.
    Carries,
    /// It does not.
    Fails,
    /// What would decide it was not said.
    NotSaid,
    /// It hangs on a guess, or on a part of it that was not said.
    NotJudged,
}

/// Something to know about a circuit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "matter", rename_all = "snake_case")]
pub enum CircuitNote {
    /// The air is as hot as the cooler of insulation and lugs may be.
    NoRoomForHeat { air_c: f64, rating_c: f64 },
    /// No gauge passes.
    NoGaugePasses,
    /// No metric size passes.
    NoMetricPasses,
    /// No current carries the power through any size.
    NoCurrentCarries,
    /// Solid wire cracks where things shake.
    SolidWire,
    /// The conductor stated lies between two sizes, and is read as the thinner.
    ReadAsThinner { stated_mm2: f64 },
    /// No length is given: this one was taken.
    LengthTaken { taken_m: f64 },
    /// Lugs, switches and fuse holders take a part of what may be dropped.
    Connections { lost_v: f64 },
    /// The rating is that of a cable shut in a wall or conduit.
    ShutIn,
}

/// One stretch of cable.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CircuitAnswer {
    /// Which stretch.
    pub circuit: Circuit,
    /// Whose current it was sized for.
    pub asked_by: AskedBy,
    /// For hours, at nominal volts.
    pub continuous_a: f64,
    /// At the source's lowest volts, through the conductor that is judged: what it is sized for.
    pub low_a: f64,
    /// When the unit starts; absent for circuits that do not feed it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start_a: Option<f64>,
    /// One way; as stated, or the one taken.
    pub length_m: f64,
    /// About the cable.
    pub air_c: f64,
    /// At the circuit's near end: the source's lowest, less what the cable before it drops.
    pub source_low_v: f64,
    /// Of these volts.
    pub allowed_drop_percent: f64,
    /// Of the conductor and fuse that are there; no guess decides it.
    pub verdict: Verdict,
    /// What the verdict waits for.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub open: Vec<Open>,
    /// What would help, where the conductor fails or no size passes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub remedies: Vec<Remedy>,
    /// The conductor that is there; absent where none is named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub have: Option<SizeFigures>,
    /// The smallest that passes: gauge first, then metric.
    pub needed: Vec<Needed>,
    /// Its fuse; absent where no conductor can be judged.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub protection: Option<Protection>,
    /// What there is to know of it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<CircuitNote>,
}

/// A circuit's answer; nothing where a number lies beyond what the tables reckon.
/// `upstream` are the volts that the cable before it drops.
pub(super) fn circuit(plan: &Plan, ask: &Ask, upstream_v: f64) -> Option<CircuitAnswer> {
    let mut notes = Vec::new();
    let low_v = (ask.low_v - upstream_v).max(1.0);
    let length_m = length_m(plan, ask.circuit, &mut notes)?;
    let path = path(plan, ask, low_v, length_m, &mut notes)?;
    let choice = choose(&path).ok()?;
    let have_trial = have(plan, ask.circuit, &choice, &mut notes);
    let gauge = choice.awg.or(choice.metric);
    let smallest = gauge.and_then(|chosen| trial_of(&choice, chosen.size));
    let judged = have_trial.or(smallest);
    // Where no conductor carries it: by the source's own volts, before any drop.
    let undropped = || design_current(ask.demand, volts(low_v), ohms(0.0)).ok();
    let low_a = judged
        .and_then(|trial| trial.loaded)
        .map(|loaded| loaded.current)
        .or_else(undropped)
        .map_or(ask.continuous_a, in_amps);
    let protection = judged.and_then(|trial| protection(plan, ask, trial, low_a));
    for finding in &choice.findings {
        notes.extend(note(finding));
    }
    if path.surroundings.enclosed {
        notes.push(CircuitNote::ShutIn);
    }
    let passes = have_trial.map(|trial| {
        let fused = protection
            .as_ref()
            .is_none_or(|one| one.fitted_faults.is_empty());
        trial.passes_all() && fused
    });
    Some(CircuitAnswer {
        circuit: ask.circuit,
        asked_by: ask.by,
        continuous_a: ask.continuous_a,
        low_a,
        start_a: ask.start_a,
        length_m,
        air_c: in_celsius(path.surroundings.ambient),
        source_low_v: low_v,
        allowed_drop_percent: plan
            .number(Path::Installation(ask.circuit, L::AllowedDropPercent))?,
        verdict: match passes {
            Some(true) => Verdict::Carries,
            Some(false) => Verdict::Fails,
            None => Verdict::NotSaid,
        },
        open: Vec::new(),
        remedies: Vec::new(),
        have: have_trial.map(SizeFigures::of),
        needed: needed(&choice),
        protection,
        notes,
    })
}

/// Every size was tried: the one that is asked for.
fn trial_of(choice: &Choice, size: Size) -> Option<&Trial> {
    choice.trials.iter().find(|trial| trial.size == size)
}

/// The stated length, or the usual one with a note.
fn length_m(plan: &Plan, circuit: Circuit, notes: &mut Vec<CircuitNote>) -> Option<f64> {
    let [length, _] = circuit.run_paths(plan.night.asked_unit);
    let stated = super::asks::stated(plan, length).filter(|&length_m| length_m > 0.0);
    if let Some(length_m) = stated {
        return Some(length_m);
    }
    let taken_m = length_taken_m(plan, circuit)?;
    notes.push(CircuitNote::LengthTaken { taken_m });
    Some(taken_m)
}

/// The length that is taken where none is given; nothing where one is.
pub(super) fn length_taken_m(plan: &Plan, circuit: Circuit) -> Option<f64> {
    let [length, _] = circuit.run_paths(plan.night.asked_unit);
    let stated = super::asks::stated(plan, length).filter(|&length_m| length_m > 0.0);
    let usual_m = || plan.assumed(length).map_or(USUAL_M, |figure| figure.value);
    stated.is_none().then(usual_m)
}

/// Whether the conductor that is there passes, or where none is named some size
/// does; of a plan and a demand that something was tried on.
pub(super) fn passes(plan: &Plan, ask: &Ask, upstream_v: f64, is_named: bool) -> bool {
    let (mut notes, low_v) = (Vec::new(), (ask.low_v - upstream_v).max(1.0));
    let choice = length_m(plan, ask.circuit, &mut notes)
        .and_then(|length_m| path(plan, ask, low_v, length_m, &mut notes))
        .and_then(|path| choose(&path).ok());
    choice.is_some_and(|choice| {
        if is_named {
            have(plan, ask.circuit, &choice, &mut notes).is_some_and(Trial::passes_all)
        } else {
            choice.awg.or(choice.metric).is_some()
        }
    })
}

/// The conductor that is there, held against its circuit.
fn have<'a>(
    plan: &Plan,
    circuit: Circuit,
    choice: &'a Choice,
    notes: &mut Vec<CircuitNote>,
) -> Option<&'a Trial> {
    let [length, conductor] = circuit.run_paths(plan.night.asked_unit);
    // With no length the unit's cable is not there, whatever its conductor.
    if circuit == Circuit::Unit && super::asks::stated(plan, length) == Some(0.0) {
        return None;
    }
    let stated_mm2 = super::asks::stated(plan, conductor)?;
    let size = Size::of_stated(square_millimeters(stated_mm2)).ok()?;
    let read_mm2 = crate::quantity::in_square_millimeters(size.area());
    if (read_mm2 / stated_mm2 - 1.0).abs() > 0.005 {
        notes.push(CircuitNote::ReadAsThinner { stated_mm2 });
    }
    trial_of(choice, size)
}

/// The circuit as the wiring room takes it.
fn path(
    plan: &Plan,
    ask: &Ask,
    low_v: f64,
    length_m: f64,
    notes: &mut Vec<CircuitNote>,
) -> Option<wiring::Path> {
    let circuit = ask.circuit;
    let number = |field| plan.number(Path::Installation(circuit, field));
    let laid = plan.wiring.installation(circuit);
    let column = |field| Column::for_rating(celsius(number(field)?)).ok();
    // What the lugs drop is no longer the cable's to drop.
    let lost_v = connections_v(plan, ask, low_v);
    if lost_v > 0.0 {
        notes.push(CircuitNote::Connections { lost_v });
    }
    let allowed = number(L::AllowedDropPercent)? / 100.0 - lost_v / low_v;
    Some(wiring::Path {
        demand: ask.demand,
        one_way: meters(length_m),
        source_at_cut_off: volts(low_v),
        charge: volts(ask.charge_v),
        allowed_drop: allowed.max(0.001),
        // Fine bare strands where nothing is said: most battery cable is.
        build: assemble::build(laid.strands.unwrap_or(Strands::Fine)),
        place: place(plan),
        surroundings: Surroundings {
            ambient: celsius(number(L::AirC)?),
            engine_space: laid.engine_space,
            bundled: number(L::BundledCount)? as u32,
            // Nobody can see into a wall: in a building it is taken to be in one.
            enclosed: laid.enclosed || plan.wiring.place_taken() == Place::Cabin,
            sheathed: false,
            insulation: column(L::InsulationC)?,
            terminals: column(L::TerminalC)?,
        },
    })
}

/// Volts lost in the unit's connections, which are stated for its own cable.
fn connections_v(plan: &Plan, ask: &Ask, low_v: f64) -> f64 {
    if ask.circuit != Circuit::Unit {
        return 0.0;
    }
    let path = Path::Unit(plan.night.asked_unit, U::ConnectionsMohm);
    let ohm = plan.number(path).unwrap_or(0.0) / 1000.0;
    let current = design_current(ask.demand, volts(low_v), ohms(ohm));
    current.map_or(0.0, |current| in_amps(current) * ohm)
}

/// Nothing for what is said elsewhere.
fn note(finding: &Finding) -> Option<CircuitNote> {
    Some(match finding {
        Finding::NoRoomForHeat { ambient, rating } => CircuitNote::NoRoomForHeat {
            air_c: in_celsius(*ambient),
            rating_c: in_celsius(*rating),
        },
        Finding::NothingPasses(wiring::System::Awg) => CircuitNote::NoGaugePasses,
        Finding::NothingPasses(wiring::System::Metric) => CircuitNote::NoMetricPasses,
        Finding::NoCurrentCarries => CircuitNote::NoCurrentCarries,
        Finding::SolidWire => CircuitNote::SolidWire,
        // Said once for the whole answer, or never true here.
        Finding::BeyondTableScope { .. } | Finding::RatedForOpenRun => return None,
    })
}

/// Volts that a circuit drops, hot, with the conductor that is there or the smallest
/// one that passes.
pub(super) fn dropped_v(answer: &CircuitAnswer) -> f64 {
    let smallest = answer.needed.iter().find_map(|one| one.smallest.as_ref());
    let judged = answer.have.as_ref().or(smallest);
    judged
        .and_then(|figures| figures.loaded)
        .map_or(0.0, |loaded| loaded.hot_v)
}

/// The current that a demand takes at these volts with no cable in its way.
pub(super) fn current_a(demand: Demand, low_v: f64) -> Option<f64> {
    design_current(demand, volts(low_v), ohms(0.0))
        .ok()
        .map(in_amps)
}
