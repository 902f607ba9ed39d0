//! Words in and around the pictures: wiring, bank, flows, claims.

use super::{
    Formatter, chemistry_name,
    day::energy,
    day_words,
    hand_on::plan_value,
    mode_name, unit_name,
    wiring::{amps, circuit_name, fitted_text, size_text, take_off_name, verdict_name},
};
use crate::{
    answer::wiring::{
        AskedBy, BankLimits, Burden, CircuitAnswer, CircuitNote, SizeFigures, SizeName, SizeSystem,
        SolarSide, Verdict,
    },
    plan::{
        Feed, Plan,
        wiring::{Circuit, TakeOff},
    },
    range::Unit,
};

pub const WIRING: &str = "The wiring, as a single-line diagram";
pub const WIRING_HINT: &str = "Tap a cable for its rules and sources. A tick carries it, a cross fails, a diamond is not judged yet.";
pub const WIRING_CAPTION: &str = "One line stands for plus and minus. Symbols by IEC 60617: battery, fuse, converter, PV panel, motor.";
pub const BANK: &str = "Bank";
pub const BEGIN_AT_BANK: &str = "The cables begin at its terminals.";
pub const CONTROLLER: &str = "Solar charge controller";
pub const LOADS: &str = "Other loads";
pub const NOT_WORKED_OUT: &str = "Its cable is not worked out here.";
pub const BEYOND_TABLES: &str = "not judged: a number is beyond what the tables cover";

/// How a path is opened, as it is read out.
#[must_use]
pub fn opens(f: Formatter, title: &str, verdict: &str) -> String {
    format!("{title}: {verdict}. Show its rules.")
}

/// What is wrong with the fuse that is there, beside what is wrong with the conductor.
#[must_use]
pub fn wrong_fuse(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let protection = circuit.protection.as_ref()?;
    let conductor_fails = circuit
        .have
        .as_ref()
        .is_some_and(|have| !have.fails.is_empty());
    let is_wrong = conductor_fails && !protection.fitted_faults.is_empty();
    is_wrong.then(|| fitted_text(f, protection)).flatten()
}

/// A size in both systems: `16 mm² (counts as 6 AWG)`, `6 AWG (13.3 mm²)`.
#[must_use]
pub fn size_in_both(f: Formatter, figures: &SizeFigures) -> String {
    let size = size_text(f, &figures.size);
    let other = match figures.size.system {
        SizeSystem::Awg => Some(f.with_unit(figures.size.area_mm2, "mm²")),
        SizeSystem::Metric => figures.ampacity.as_ref().and_then(|ampacity| {
            let row: &SizeName = &ampacity.row;
            (*row != figures.size).then(|| format!("counts as {}", size_text(f, row)))
        }),
    };
    other.map_or(size.clone(), |other| format!("{size} ({other})"))
}

/// Conductor and length of a circuit.
#[must_use]
pub fn conductor(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    let is_taken = |note: &CircuitNote| matches!(note, CircuitNote::LengthTaken { .. });
    let length = plan_value(f, plan, Unit::Meter, circuit.length_m);
    let taken = if circuit.notes.iter().any(is_taken) {
        " (assumed)"
    } else {
        ""
    };
    let each_way = format!("{length} each way{taken}");
    match &circuit.have {
        Some(have) => format!("{}, {each_way}", size_in_both(f, have)),
        None => each_way,
    }
}

/// Current and drop of a circuit, through what is there or the smallest that passes.
#[must_use]
pub fn current(f: Formatter, circuit: &CircuitAnswer) -> String {
    let smallest = || circuit.needed.iter().find_map(|one| one.smallest.as_ref());
    let judged = circuit.have.as_ref().or_else(smallest);
    let flows = format!(
        "{} at {}",
        amps(f, circuit.low_a),
        volts(f, circuit.source_low_v)
    );
    let Some((figures, loaded)) = judged.and_then(|one| Some((one, one.loaded?))) else {
        return flows;
    };
    let drop = format!(
        "{} ({})",
        volts(f, loaded.hot_v),
        share(f, loaded.hot_percent)
    );
    if circuit.have.is_some() {
        format!("{flows}, drops {drop}")
    } else {
        format!("{flows}; {} would drop {drop}", size_text(f, &figures.size))
    }
}

/// Volts to the hundredth, without zeros at the end.
fn volts(f: Formatter, value: f64) -> String {
    format!("{}\u{202f}V", f.fixed(value, 2))
}

fn share(f: Formatter, percent: f64) -> String {
    let decimals = usize::from(percent < 10.0);
    format!("{}\u{202f}%", f.fixed(percent, decimals))
}

/// The fuse over its sign, and whether there is one.
#[must_use]
pub fn fuse(f: Formatter, circuit: &CircuitAnswer) -> Option<(String, bool)> {
    let protection = circuit.protection.as_ref()?;
    if let Some(fitted_a) = protection.fitted_a {
        return Some((format!("fuse {}", amps(f, fitted_a)), true));
    }
    let fits = protection
        .recommended_a
        .map_or_else(|| "none fits".into(), |a| format!("{} fits", amps(f, a)));
    Some((format!("fuse not said, {fits}"), false))
}

/// Fuses of strings of panels; nothing where none is needed.
#[must_use]
pub fn panel_fuses(f: Formatter, side: &SolarSide) -> Option<String> {
    let rating_a = side.string_fuse_a?;
    Some(format!(
        "{} strings, a fuse of {} in each",
        side.strings_count,
        amps(f, rating_a)
    ))
}

/// The panels' highest volts against the controller.
#[must_use]
pub fn cold_volts(f: Formatter, plan: &Plan, side: &SolarSide) -> String {
    let cold = format!(
        "{} open at {}",
        volts(f, side.cold_open_v),
        plan_value(f, plan, Unit::Celsius, side.coldest_c.round())
    );
    match side.controller_limit_v {
        Some(limit_v) if side.verdict == Verdict::Fails => {
            format!("fails: {cold}, the controller takes {}", volts(f, limit_v))
        }
        Some(limit_v) => format!("{cold}, the controller takes {}", volts(f, limit_v)),
        None => format!("{cold}; what the controller takes is not said"),
    }
}

/// The bank in a line: batteries, capacity, chemistry.
#[must_use]
pub fn bank(f: Formatter, plan: &Plan) -> Option<String> {
    let bank = plan.banks.first()?;
    let count = bank.series_count * bank.parallel_count;
    Some(format!(
        "{count} × {}, {}, {}",
        f.with_unit(bank.reading().volts, "V"),
        f.with_unit(bank.battery_rated_ah.value, "Ah"),
        short(chemistry_name(f, bank.chemistry))
    ))
}

/// A name without what stands in brackets behind it.
fn short(name: &str) -> &str {
    name.split(" (").next().unwrap_or(name)
}

/// The fuse of each string of batteries.
#[must_use]
pub fn string_fuse(f: Formatter, bank: &BankLimits) -> Option<String> {
    let rating_a = bank.string_fuse_a?;
    Some(format!(
        "Each string has its own fuse, {}",
        amps(f, rating_a)
    ))
}

/// What a converter or an inverter is.
#[must_use]
pub fn feed(f: Formatter, plan: &Plan, unit: usize) -> Option<String> {
    match plan.units.get(unit)?.feed {
        Feed::Direct => None,
        Feed::DcDc { output_v, .. } => {
            Some(format!("DC-DC converter to {}", f.with_unit(output_v, "V")))
        }
        Feed::Inverter { limit_w, .. } => Some(match limit_w {
            Some(limit) => format!("Inverter, {}", f.with_unit(limit.value, "W")),
            None => "Inverter".into(),
        }),
    }
}

/// Whose current a cable to the unit is sized for.
#[must_use]
pub fn sized_for(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    match circuit.asked_by {
        AskedBy::Mode { unit, mode } => {
            format!(
                "sized for {}, the strongest mode",
                mode_name(f, plan, unit, mode)
            )
        }
        _ => "sized for all it is rated for".into(),
    }
}

/// The unit by its name.
#[must_use]
pub fn unit(f: Formatter, plan: &Plan) -> String {
    unit_name(f, plan, plan.night.asked_unit)
}

/// A charger by its place and what feeds it, and what it gives at most.
#[must_use]
pub fn charger(f: Formatter, plan: &Plan, at: usize, most_a: f64) -> (String, String) {
    let kind = plan.supply.chargers.get(at).map(|one| one.kind_taken());
    let fed = kind.map_or("", |kind| day_words::charger_name(f, kind));
    (
        format!("Charger {}, from {fed}", at + 1),
        format!("{} at most", amps(f, most_a)),
    )
}

/// The controller's most.
#[must_use]
pub fn controller(f: Formatter, most_a: f64) -> String {
    format!("{} at most", amps(f, most_a))
}

/// Panels in a group: count and watts.
#[must_use]
pub fn panels(f: Formatter, plan: &Plan) -> String {
    let watts: f64 = (0..plan.supply.arrays.len())
        .filter_map(|at| {
            use crate::plan::{Path, supply::ArrayField};
            plan.number(Path::Array(at, ArrayField::RatedW))
        })
        .sum();
    let groups = plan.supply.arrays.len();
    let rated = f.with_unit(watts, "W");
    if groups > 1 {
        format!("Panels, {groups} groups, {rated}")
    } else {
        format!("Panels, {rated}")
    }
}

/// Names of all other loads, and their watts.
#[must_use]
pub fn loads(f: Formatter, plan: &Plan) -> (String, String) {
    let names = plan.loads.iter().map(|load| load.name.trim());
    let names: Vec<&str> = names.filter(|name| !name.is_empty()).collect();
    let watts: f64 = plan.loads.iter().map(|load| load.power_w.value).sum();
    (names.join(", "), f.with_unit(watts, "W"))
}

/// A circuit's title.
#[must_use]
pub fn circuit_title(f: Formatter, circuit: Circuit) -> &'static str {
    circuit_name(f, circuit)
}

/// A picture for those who do not see it: its parts in their order.
#[must_use]
pub fn told(f: Formatter, title: &str, parts: &[String]) -> String {
    format!("{title}. {}", parts.join(". "))
}

pub const THE_BANK: &str = "The bank, battery by battery";
pub const THE_BANK_CAPTION: &str = "Each sign is one battery, the long plate its plus. Strings side by side share the current by where the main cables leave (Kirchhoff’s laws).";
pub const ENERGY: &str = "Where the energy goes";
pub const ENERGY_CAPTION: &str =
    "Bands are as wide as their watt-hours; both sides add up to the same.";
pub const HEAT: &str = "Where the cabin’s heat comes from";
pub const HEAT_CAPTION: &str =
    "Sensible heat over the whole time; bands are as wide as their watt-hours.";
pub const CLAIMS: &str = "Claimed and measured";
pub const CLAIMS_CAPTION: &str = "The dot is what was measured, its whisker what that may be off (k about 2, 95 %). The upright is what was claimed.";
pub const FLOW_SIDES: [&str; 2] = ["comes in", "goes out"];
pub const FLOW_HEADS: [&str; 2] = ["What", "Energy (Wh)"];

/// How many batteries a break stands for.
#[must_use]
pub fn of_many(f: Formatter, count: u32) -> String {
    format!("× {count}")
}

/// How many strings a break stands for.
#[must_use]
pub fn strings(f: Formatter, count: u32) -> String {
    format!("× {count} strings")
}

/// What stands in series and parallel.
#[must_use]
pub fn counts(f: Formatter, bank: &BankLimits) -> String {
    format!(
        "{} in series, {} in parallel",
        bank.series_count, bank.parallel_count
    )
}

/// Where the main cables leave; nothing where there is but one string.
#[must_use]
pub fn leaves(f: Formatter, plan: &Plan, bank: &BankLimits) -> Option<String> {
    if bank.parallel_count < 2 {
        return None;
    }
    let assumed = if plan.wiring.take_off.is_none() {
        " (assumed)"
    } else {
        ""
    };
    Some(format!(
        "Main cables: {}{assumed}",
        take_off_name(f, bank.take_off)
    ))
}

/// What the most-loaded battery gives, against what it may.
#[must_use]
pub fn most_loaded(f: Formatter, bank: &BankLimits) -> String {
    let worst = amps(f, bank.continuous.worst_a);
    let what = match (bank.parallel_count, bank.take_off) {
        (1, _) => format!("Gives {worst} for hours"),
        (_, TakeOff::BusBar) => format!("All alike: {worst} each"),
        _ => format!("Most loaded: {worst}"),
    };
    format!("{what}{}", may(f, &bank.continuous))
}

/// What a battery may, and whether that is enough.
fn may(f: Formatter, burden: &Burden) -> String {
    let limit = match burden.limit_a {
        Some(limit_a) => format!(" of {} it may", amps(f, limit_a)),
        None => "; what it may is".into(),
    };
    let verdict = verdict_name(f, burden.verdict);
    match burden.limit_a {
        Some(_) => format!("{limit}: {verdict}"),
        None => format!("{limit} {verdict}"),
    }
}

/// The other currents that a battery is asked for.
#[must_use]
pub fn burdens(f: Formatter, bank: &BankLimits) -> Vec<(Verdict, String)> {
    let row = |what: &str, burden: &Burden| {
        let text = format!("{what} {}{}", amps(f, burden.worst_a), may(f, burden));
        (burden.verdict, text)
    };
    let mut all = vec![row("At the start", &bank.start)];
    all.extend(
        bank.one_open
            .iter()
            .map(|one| row("With one string open", one)),
    );
    all.extend(bank.charge.iter().map(|one| row("While charging", one)));
    all
}

/// The energy of a flow in words, and its share of all.
#[must_use]
pub fn flow(f: Formatter, wh: f64, of_wh: f64) -> String {
    let percent = 100.0 * wh / of_wh.max(f64::MIN_POSITIVE);
    let text = f.energy(wh);
    if percent < 0.5 {
        format!("{text}, <\u{202f}1\u{202f}%")
    } else {
        format!("{text}, {}\u{202f}%", f.fixed(percent, 0))
    }
}

/// All that came in.
#[must_use]
pub fn in_all(f: Formatter, wh: f64) -> String {
    format!("{} in all", f.energy(wh))
}

/// What the panels offered and nothing took: beside the book, and no share of it.
#[must_use]
pub fn not_taken(f: Formatter, wh: f64) -> String {
    f.energy(wh)
}

/// Names of the energy book's terms, in and out.
pub const FROM_PANELS: &str = "Panels";
pub const FROM_CHARGERS: &str = "Chargers";
pub const FROM_BANK: &str = "Out of the bank";
pub const TO_UNIT: &str = "Cooling unit, its feed and cable";
pub const TO_LOADS: &str = "Other loads";
pub const TO_LOSSES: &str = "Lost in the bank";
pub const TO_BANK: &str = "Into the bank";
pub const SPILLED: &str = "Offered by the panels, not taken";
pub const UNIT_HEAT: &str = "Cooling unit";

/// Names of the heat book's terms where heat comes in and where it goes out.
pub const HEAT_WAYS: [[&str; 2]; 7] = [
    ["Sun through glass", "Out through glass"],
    ["Sun on walls and roof", "Walls and roof to the sky"],
    ["Through glass", "Out through glass"],
    ["Through walls and roof", "Out through walls and roof"],
    ["Air that comes in", "Air that goes out"],
    ["People and animals", "People and animals"],
    ["Other things inside", "Other things inside"],
];
pub const HEAT_STORED: [&str; 2] = [
    "Out of air, contents and walls",
    "Stayed in air, contents and walls",
];

/// How a claim is measured, in words beside its dot.
#[must_use]
pub fn measured(f: Formatter, text: &str) -> String {
    format!("measured {text}")
}

/// What is claimed, with what the claim allows itself.
#[must_use]
pub fn claimed(f: Formatter, text: &str, tolerance_percent: Option<f64>) -> String {
    match tolerance_percent {
        Some(percent) => format!("claimed {text} ±{}\u{202f}%", f.fixed(percent, 1)),
        None => format!("claimed {text}"),
    }
}
