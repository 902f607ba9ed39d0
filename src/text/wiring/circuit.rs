//! Sentences on one cable: the rule that decided, and the numbers behind it.

use super::said::{amps, both_sizes, degrees, percent, size_text, volts};
use crate::text::Formatter;
use crate::{
    answer::wiring::{
        AskedBy, CircuitAnswer, CircuitNote, LoadedFigures, Remedy, RuleName, SizeFigures,
    },
    plan::Plan,
    range::Unit,
    text::{full_mode_name, hand_on::plan_value, unit_name},
};

/// The rule that decided, with both sizes.
#[must_use]
pub fn deciding(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(rule) = circuit.needed.iter().find_map(|one| one.decided_by) else {
        return "No size in either system passes.".into();
    };
    format!(
        "It must be {} at least. {}",
        both_sizes(f, &circuit.needed),
        match rule {
            RuleName::Ampacity =>
                "What decides is the current that a conductor may carry for hours.",
            RuleName::FuseFit =>
                "What decides is the fuse: it must bear the load, and the conductor must bear the fuse.",
            RuleName::Drop => "What decides is the drop you allow.",
            RuleName::MechanicalMinimum => "What decides is the thinnest wire that may be laid.",
        }
    )
}

/// What would help, where the cable fails or no size passes.
#[must_use]
pub fn remedies_text(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> Option<String> {
    let none_passes = circuit.needed.iter().all(|one| one.smallest.is_none());
    let fails = circuit
        .have
        .as_ref()
        .is_some_and(|have| !have.fails.is_empty());
    let ways: Vec<String> = circuit
        .remedies
        .iter()
        .map(|&remedy| remedy_text(f, plan, remedy))
        .collect();
    match (ways.is_empty(), none_passes, fails) {
        (false, true, _) => Some(format!("Any of these would help: {}.", ways.join("; "))),
        (false, false, _) => Some(format!(
            "A thicker conductor would help, or one of these with yours: {}.",
            ways.join("; ")
        )),
        (true, true, _) => Some("Only a lighter load or a bank of more volts would help.".into()),
        (true, false, true) => Some("Only a thicker conductor would help.".into()),
        (true, false, false) => None,
    }
}

fn remedy_text(f: Formatter, plan: &Plan, remedy: Remedy) -> String {
    match remedy {
        Remedy::Ratings {
            insulation,
            terminals,
            to_c,
        } => {
            let what = match (insulation, terminals) {
                (true, true) => "insulation, lugs and holders",
                (true, false) => "insulation",
                (false, _) => "lugs and holders",
            };
            format!("{what} rated for {}", degrees(f, plan, to_c))
        }
        Remedy::CoolerAir { to_c } => {
            format!(
                "a place where the air stays below {}",
                degrees(f, plan, to_c)
            )
        }
        Remedy::OutOfBundle => "its own pair alone, out of the bundle".into(),
        Remedy::ShorterRun { to_m } => format!(
            "a shorter run, such as {}",
            plan_value(f, plan, Unit::Meter, to_m)
        ),
        Remedy::HigherCutOff { to_v } => format!(
            "a low-voltage cut-off at {} or above, as fewer amps flow then",
            volts(f, to_v)
        ),
        Remedy::TwoRuns => "two runs, each with a fuse of its own".into(),
    }
}

/// A rule as a row's name.
#[must_use]
pub fn rule_name(_f: Formatter, rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => "Current for hours",
        RuleName::FuseFit => "A fuse that fits",
        RuleName::Drop => "Drop, hot",
        RuleName::MechanicalMinimum => "Thinnest laid",
    }
}

/// Where a rule comes from.
#[must_use]
pub fn rule_source(_f: Formatter, rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => {
            "33 CFR 183.425 table 5 with its notes; heat by the equation of NFPA 70 section 310.15(B), from memory"
        }
        RuleName::FuseFit => {
            "NFPA 70 sections 210.20(A) and 240.6(A); small conductors in vehicles and cabins by its table 552.10(E)(1), from memory"
        }
        RuleName::Drop => {
            "Ohm’s law; copper by IEC 60028, strands by IEC 60228 and ASTM B8; the limit is yours (3 % is usual, no source)"
        }
        RuleName::MechanicalMinimum => "33 CFR 183.425(d) and (e)",
    }
}

/// Whose current a circuit was sized for.
#[must_use]
pub fn asked_by(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    let who = match circuit.asked_by {
        AskedBy::Mode { unit, mode } => {
            format!(
                "Sized for {}, the strongest mode",
                full_mode_name(f, plan, unit, mode)
            )
        }
        AskedBy::Rating { unit } => format!(
            "Sized for all that {} is rated for: anything may be put on it",
            feed_of(f, plan, unit)
        ),
        AskedBy::Everything => "Sized for the unit and everything else that runs".into(),
        AskedBy::Charger { charger } => {
            format!("Sized for charger {}, the strongest", charger + 1)
        }
        AskedBy::Controller => "Sized for the panels’ controller".into(),
        AskedBy::Panels => {
            return format!(
                "Sized for {} of short-circuit current, times 1.25 for bright sun: {}. The fuse’s 125 % is the code’s second 1.25.",
                amps(f, circuit.continuous_a),
                amps(f, circuit.low_a)
            );
        }
    };
    let start = circuit.start_a.map_or_else(String::new, |start_a| {
        format!("; about {} for a moment when it starts", amps(f, start_a))
    });
    let low = if circuit.low_a > circuit.continuous_a * 1.001 {
        format!(
            ": {} at nominal volts, {} when the source is down to {}, which counts",
            amps(f, circuit.continuous_a),
            amps(f, circuit.low_a),
            volts(f, circuit.source_low_v)
        )
    } else {
        format!(": {}", amps(f, circuit.low_a))
    };
    format!("{who}{low}{start}.")
}

fn feed_of(f: Formatter, plan: &Plan, unit: usize) -> String {
    format!("the converter or inverter of {}", unit_name(f, plan, unit))
}

/// How the rating of a conductor came about.
#[must_use]
pub fn ampacity_text(
    f: Formatter,
    plan: &Plan,
    circuit: &CircuitAnswer,
    figures: &SizeFigures,
) -> String {
    let Some(ampacity) = &figures.ampacity else {
        return format!(
            "{} is thinner than the table: no rating.",
            size_text(f, &figures.size)
        );
    };
    let row = if ampacity.row == figures.size {
        String::new()
    } else {
        format!(
            ", read as {}, the next gauge down",
            size_text(f, &ampacity.row)
        )
    };
    let factor = |percent: f64, why: String| {
        (percent < 99.95).then(|| format!(" × {} for {why}", f.fixed(percent / 100.0, 2)))
    };
    let factors = [
        factor(
            ampacity.heat_percent,
            format!("air at {}", degrees(f, plan, circuit.air_c)),
        ),
        factor(ampacity.bundle_percent, "the bundle".into()),
        factor(ampacity.enclosure_percent, "being shut in".into()),
    ];
    format!(
        "{}{row}: {} in the column for {}{} = {} for hours.",
        size_text(f, &figures.size),
        amps(f, ampacity.table_a),
        degrees(f, plan, ampacity.column_c),
        factors.into_iter().flatten().collect::<String>(),
        amps(f, ampacity.allowed_a)
    )
}

/// What a conductor drops, cold and hot.
#[must_use]
pub fn drop_text(
    f: Formatter,
    plan: &Plan,
    circuit: &CircuitAnswer,
    loaded: &LoadedFigures,
) -> String {
    format!(
        "{} each way: {} ({}) with the copper cold, {} ({}) as hot as it gets, {}. You allow {} of {}.",
        plan_value(f, plan, Unit::Meter, circuit.length_m),
        volts(f, loaded.cold_v),
        percent(f, loaded.cold_percent),
        volts(f, loaded.hot_v),
        percent(f, loaded.hot_percent),
        degrees(f, plan, loaded.conductor_c),
        percent(f, circuit.allowed_drop_percent),
        volts(f, circuit.source_low_v)
    )
}

/// A note on a circuit.
#[must_use]
pub fn circuit_note(f: Formatter, plan: &Plan, note: &CircuitNote) -> String {
    match note {
        CircuitNote::NoRoomForHeat { air_c, rating_c } => format!(
            "The air, {}, is as hot as the cooler of insulation and lugs may be, {}: nothing may flow.",
            degrees(f, plan, *air_c),
            degrees(f, plan, *rating_c)
        ),
        CircuitNote::NoGaugePasses => "No gauge up to 4/0 passes.".into(),
        CircuitNote::NoMetricPasses => "No metric size up to 120 mm² passes.".into(),
        CircuitNote::NoCurrentCarries => {
            "No current carries that power from those volts, whatever the size.".into()
        }
        CircuitNote::SolidWire => {
            "Solid wire cracks where things shake, and is forbidden on boats (33 CFR 183.425(a))."
                .into()
        }
        CircuitNote::ReadAsThinner { stated_mm2 } => format!(
            "{} is between two sizes, and counts as the thinner.",
            f.with_unit(*stated_mm2, "mm²")
        ),
        CircuitNote::LengthTaken { taken_m } => format!(
            "No length is given: {} was taken.",
            plan_value(f, plan, Unit::Meter, *taken_m)
        ),
        CircuitNote::Connections { lost_v } => format!(
            "Lugs, switches and fuse holders lose {} more, which the cable may not.",
            volts(f, *lost_v)
        ),
        CircuitNote::ShutIn => {
            "Rated as shut in a wall or conduit: in a building nobody can see where it runs.".into()
        }
    }
}
