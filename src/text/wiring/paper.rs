//! The electrician's sheet: the same, as short as a table wants it.

use super::{
    circuit_name, place_name, rule_name,
    said::{amps, degrees, percent, volts},
    sizes::{decided_by, judged, size_text},
    strands_name, take_off_name,
};
use crate::{
    answer::wiring::{CircuitAnswer, CircuitNote, WiringAnswer},
    plan::{
        Bank, Feed, Path, Plan, Unit as CoolingUnit,
        wiring::{Circuit, InstallationField as L, Strands},
    },
    range::Unit,
    text::{Formatter, chemistry_name, m, unit_name},
};

/// Where a table has nothing to say.
const NOTHING: &str = "–";

/// What the wiring depends on: bank, volts, chemistry, unit and how that is fed.
#[must_use]
pub fn system_on_paper(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<String> {
    let asked = plan.night.asked_unit;
    let bank = plan.banks.first().map(|bank| bank_line(f, bank, answer));
    let unit = plan.units.get(asked);
    let unit = unit.map(|unit| unit_line(f, unit_name(f, plan, asked), unit));
    bank.into_iter().chain(unit).collect()
}

fn bank_line(f: Formatter, bank: &Bank, answer: &WiringAnswer) -> String {
    let chemistry = chemistry_name(f, bank.chemistry);
    let series = bank.series_count.to_string();
    let parallel = bank.parallel_count.to_string();
    let each = f.with_unit(bank.reading().volts, "V");
    let charge = f.with_unit(bank.battery_rated_ah.value, "Ah");
    let nominal = f.with_unit(bank.nominal_v(), "V");
    let charging = volts(f, answer.charge_v);
    match low_v(answer) {
        Some(low_v) => f.say(m::WiringPaperBankLowest {
            chemistry,
            series,
            parallel,
            volts: each,
            charge,
            nominal,
            charging,
            lowest: volts(f, low_v),
        }),
        None => f.say(m::WiringPaperBank {
            chemistry,
            series,
            parallel,
            volts: each,
            charge,
            nominal,
            charging,
        }),
    }
}

fn unit_line(f: Formatter, name: String, unit: &CoolingUnit) -> String {
    let rating =
        |limit: Option<String>| limit.unwrap_or_else(|| f.say(m::WiringRatingMissing).into());
    match unit.feed {
        Feed::Direct => f.say(m::WiringPaperUnit { unit: name }),
        Feed::DcDc {
            output_v, limit_a, ..
        } => f.say(m::WiringPaperUnitConverter {
            unit: name,
            volts: f.with_unit(output_v, "V"),
            rating: rating(limit_a.map(|limit| f.with_unit(limit.value, "A"))),
        }),
        Feed::Inverter { limit_w, .. } => f.say(m::WiringPaperUnitInverter {
            unit: name,
            rating: rating(limit_w.map(|limit| f.with_unit(limit.value, "W"))),
        }),
    }
}

/// The lowest volts that a circuit from the bank is worked out at.
fn low_v(answer: &WiringAnswer) -> Option<f64> {
    let from_bank =
        |circuit: &&CircuitAnswer| matches!(circuit.circuit, Circuit::Distribution | Circuit::Unit);
    let first = answer.circuits.iter().find(from_bank);
    first.map(|circuit| circuit.source_low_v)
}

/// Marks what nobody has entered.
fn assumed(f: Formatter, text: String, is_assumed: bool) -> String {
    if is_assumed {
        f.say(m::WiringAssumed { text })
    } else {
        text
    }
}

/// A circuit's name with its length, marked where that is assumed.
#[must_use]
pub fn circuit_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let is_taken = |note: &CircuitNote| matches!(note, CircuitNote::LengthTaken { .. });
    let length = f.stated_value(circuit.length_m, Unit::Meter);
    let length = assumed(f, length, circuit.notes.iter().any(is_taken));
    format!("{}, {length}", circuit_name(f, circuit.circuit))
}

/// Currents: at nominal volts, at the lowest, at start-up.
#[must_use]
pub fn amps_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let start = circuit
        .start_a
        .map_or_else(|| NOTHING.into(), |start_a| amps(f, start_a));
    format!(
        "{} / {} / {start}",
        amps(f, circuit.continuous_a),
        amps(f, circuit.low_a)
    )
}

/// The rule that decided.
#[must_use]
pub fn decided_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let rule = decided_by(f, circuit);
    let name = rule.map(|rule| rule_name(f, rule));
    name.unwrap_or_else(|| f.say(m::WiringNothingPasses)).into()
}

/// The drop through what is there, or through the smallest that passes.
#[must_use]
pub fn drop_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(loaded) = judged(f, circuit).and_then(|figures| figures.loaded) else {
        return NOTHING.into();
    };
    f.say(m::WiringPaperDrop {
        drop: volts(f, loaded.hot_v),
        percent: percent(f, loaded.hot_percent),
        volts: volts(f, circuit.source_low_v),
    })
}

/// The fuse: recommended, the most on that conductor, what it must interrupt, and the
/// one that is there.
#[must_use]
pub fn fuse_on_paper(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(protection) = &circuit.protection else {
        return NOTHING.into();
    };
    let rating = protection.recommended_a.map_or_else(
        || f.say(m::WiringNoneFits).into(),
        |rating_a| amps(f, rating_a),
    );
    let breaking = if protection.fault_is_guess {
        f.say(m::WiringSheetFaultNotEntered).to_owned()
    } else {
        f.say(m::WiringSheetFault {
            fault: amps(f, protection.fault_a),
            volts: volts(f, protection.charge_v),
        })
    };
    let most = amps(f, protection.most_a);
    let conductor = size_text(f, &protection.conductor);
    match protection.fitted_a {
        Some(fitted_a) => f.say(m::WiringPaperFuseFitted {
            rating,
            most,
            conductor,
            breaking,
            fitted: amps(f, fitted_a),
        }),
        None => f.say(m::WiringPaperFuse {
            rating,
            most,
            conductor,
            breaking,
        }),
    }
}

/// What it was worked out from, so that it can be checked on the spot; what nobody has
/// entered is marked.
#[must_use]
pub fn taken_for(f: Formatter, plan: &Plan, answer: &WiringAnswer) -> Vec<String> {
    let wiring = &plan.wiring;
    let place = place_name(f, wiring.place_taken());
    let take_off = take_off_name(f, wiring.take_off_taken());
    let system = f.say(m::WiringTakenSystem {
        place: assumed(f, place.into(), wiring.place.is_none()),
        take_off: assumed(f, take_off.into(), wiring.take_off.is_none()),
        volts: volts(f, answer.charge_v),
    });
    let circuits = answer.circuits.iter();
    let circuits = circuits.map(|circuit| laid_on_paper(f, plan, circuit));
    std::iter::once(system).chain(circuits).collect()
}

fn laid_on_paper(f: Formatter, plan: &Plan, answer: &CircuitAnswer) -> String {
    let laid = plan.wiring.installation(answer.circuit);
    let marked = |field, text: &dyn Fn(f64) -> String| {
        let path = Path::Installation(answer.circuit, field);
        let number = plan.number(path).unwrap_or_default();
        assumed(f, text(number), plan.stated(path).is_none())
    };
    let temperature = |field| marked(field, &|value| degrees(f, value));
    let circuit = circuit_name(f, answer.circuit);
    let insulation = temperature(L::InsulationC);
    let terminals = temperature(L::TerminalC);
    let air = temperature(L::AirC);
    let bundle = marked(L::BundledCount, &|count| f.say(m::WiringBundle { count }));
    let strands = strands_name(f, laid.strands.unwrap_or(Strands::Fine));
    let strands = assumed(f, strands.into(), laid.strands.is_none());
    if laid.engine_space {
        f.say(m::WiringTakenCableEngine {
            circuit,
            insulation,
            terminals,
            air,
            bundle,
            strands,
        })
    } else {
        f.say(m::WiringTakenCable {
            circuit,
            insulation,
            terminals,
            air,
            bundle,
            strands,
        })
    }
}
