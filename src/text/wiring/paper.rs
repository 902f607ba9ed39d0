//! The electrician's sheet: the same, as short as a table wants it.

use super::{
    circuit_name, place_name, rule_name,
    said::{amps, degrees, percent, size_text, volts},
    strands_name, take_off_name,
};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::wiring::{CircuitAnswer, CircuitNote, SizeFigures, WiringAnswer},
    plan::{
        Feed, Path, Plan,
        wiring::{Circuit, InstallationField as L, Strands},
    },
    range::Unit,
    text::{chemistry_name, hand_on::plan_value, unit_name},
};

/// What the wiring hangs on: bank, volts, chemistry, unit and how that is fed.
#[must_use]
pub fn system_on_paper(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(bank) = plan.banks.first() {
        let reading = bank.reading();
        let low = low_v(answer).map_or_else(String::new, |low_v| {
            format!(", {} at its lowest", volts(f, low_v))
        });
        lines.push(format!(
            "Bank: {}; {} in series, {} in parallel, each {} and {}; {} nominal, {} while charging{low}.",
            chemistry_name(f, bank.chemistry),
            bank.series_count,
            bank.parallel_count,
            f.with_unit(reading.volts, "V"),
            f.with_unit(bank.battery_rated_ah.value, "Ah"),
            f.with_unit(bank.nominal_v(), "V"),
            volts(f, answer.charge_v)
        ));
    }
    if let Some(unit) = plan.units.get(plan.night.asked_unit) {
        let rated = |limit: Option<String>| limit.unwrap_or_else(|| "rating not said".into());
        let fed = match unit.feed {
            Feed::Direct => "on the bank itself".to_owned(),
            Feed::DcDc {
                output_v, limit_a, ..
            } => format!(
                "through a DC-DC converter to {}, {}",
                f.with_unit(output_v, "V"),
                rated(limit_a.map(|limit| f.with_unit(limit.value, "A")))
            ),
            Feed::Inverter { limit_w, .. } => format!(
                "through an inverter, {}",
                rated(limit_w.map(|limit| f.with_unit(limit.value, "W")))
            ),
        };
        let unit = unit_name(f, plan, plan.night.asked_unit);
        lines.push(format!("Unit: {unit}, {fed}."));
    }
    lines
}

/// The lowest volts that a circuit from the bank is worked out at.
fn low_v(answer: &WiringAnswer) -> Option<f64> {
    let from_bank =
        |circuit: &&CircuitAnswer| matches!(circuit.circuit, Circuit::Distribution | Circuit::Unit);
    let first = answer.circuits.iter().find(from_bank);
    first.map(|circuit| circuit.source_low_v)
}

/// Marks what nobody has said.
fn assumed(f: Formatter, text: String, is_assumed: bool) -> String {
    if is_assumed {
        format!("{text} ({})", f.say(m::WiringAssumed))
    } else {
        text
    }
}

/// A circuit's name with its length, marked where that is assumed.
#[must_use]
pub fn circuit_on_paper(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    let is_taken = |note: &CircuitNote| matches!(note, CircuitNote::LengthTaken { .. });
    let length = plan_value(f, plan, Unit::Meter, circuit.length_m);
    let length = assumed(f, length, circuit.notes.iter().any(is_taken));
    format!("{}, {length}", circuit_name(f, circuit.circuit))
}

/// Currents: at nominal volts, at the lowest, at the start.
#[must_use]
pub fn amps_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let start = circuit
        .start_a
        .map_or_else(|| "–".into(), |start_a| amps(f, start_a));
    format!(
        "{} / {} / {start}",
        amps(f, circuit.continuous_a),
        amps(f, circuit.low_a)
    )
}

/// The rule that decided.
#[must_use]
pub fn decided_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let rule = circuit.needed.iter().find_map(|one| one.decided_by);
    rule.map_or_else(|| "nothing passes".into(), |rule| rule_name(f, rule).into())
}

fn judged(circuit: &CircuitAnswer) -> Option<&SizeFigures> {
    let smallest = || circuit.needed.iter().find_map(|one| one.smallest.as_ref());
    circuit.have.as_ref().or_else(smallest)
}

/// The drop through what is there, or through the smallest that passes.
#[must_use]
pub fn drop_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let loaded = judged(circuit).and_then(|figures| figures.loaded);
    loaded.map_or_else(
        || "–".into(),
        |loaded| {
            format!(
                "{} ({}) of {}",
                volts(f, loaded.hot_v),
                percent(f, loaded.hot_percent),
                volts(f, circuit.source_low_v)
            )
        },
    )
}

/// The fuse: recommended, what the conductor bears, what it must break, and the
/// one that is there.
#[must_use]
pub fn fuse_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(protection) = &circuit.protection else {
        return "–".into();
    };
    let named = protection
        .recommended_a
        .map_or_else(|| "none fits".into(), |rating_a| amps(f, rating_a));
    let there = protection.fitted_a.map_or_else(String::new, |fitted_a| {
        format!("; there now {}", amps(f, fitted_a))
    });
    let fault = if protection.fault_is_guess {
        f.say(m::WiringSheetFaultNotSaid).to_owned()
    } else {
        amps(f, protection.fault_a)
    };
    format!(
        "{named} (on {} at most {}), to break {fault} at {}{there}",
        size_text(f, &protection.conductor),
        amps(f, protection.most_a),
        volts(f, protection.charge_v)
    )
}

/// What was taken for granted, so that it can be checked on the spot; what nobody
/// has said is marked.
#[must_use]
pub fn taken_for(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<String> {
    let wiring = &plan.wiring;
    let place = assumed(
        f,
        place_name(f, wiring.place_taken()).into(),
        wiring.place.is_none(),
    );
    let take_off = assumed(
        f,
        take_off_name(f, wiring.take_off_taken()).into(),
        wiring.take_off.is_none(),
    );
    let mut lines = vec![format!(
        "The system is {place}; the cables leave the bank {take_off}; it charges up to {}.",
        volts(f, answer.charge_v)
    )];
    lines.extend(
        answer
            .circuits
            .iter()
            .map(|circuit| laid_on_paper(f, plan, circuit)),
    );
    lines
}

fn laid_on_paper(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    let laid = plan.wiring.installation(circuit.circuit);
    let marked = |field, text: &dyn Fn(f64) -> String| {
        let path = Path::Installation(circuit.circuit, field);
        let number = plan.number(path).unwrap_or_default();
        assumed(f, text(number), plan.stated(path).is_none())
    };
    let strands = assumed(
        f,
        strands_name(f, laid.strands.unwrap_or(Strands::Fine)).into(),
        laid.strands.is_none(),
    );
    let engine = if laid.engine_space {
        ", through an engine space"
    } else {
        ""
    };
    format!(
        "{}: insulation {}, lugs {}, air {}, {} in the bundle, {strands}{engine}.",
        circuit_name(f, circuit.circuit),
        marked(L::InsulationC, &|value| degrees(f, plan, value)),
        marked(L::TerminalC, &|value| degrees(f, plan, value)),
        marked(L::AirC, &|value| degrees(f, plan, value)),
        marked(L::BundledCount, &|count| format!(
            "{} conductors",
            f.fixed(count, 0)
        )),
    )
}
