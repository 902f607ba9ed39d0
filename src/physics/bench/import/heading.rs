//! What a column's heading says about it.

use super::unit::{Role, Unit, is_foreign, spelled};

/// Why a column is read as it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// The caller said so.
    Given,
    /// The heading names the unit.
    UnitInHeading,
    /// The heading names the quantity; the unit is assumed to be the plain one.
    NameOnly,
    /// The cells carry the unit, or can only be times.
    Cells,
    /// Nothing fits, or another column fits better.
    NothingFits,
}

/// A reading of one heading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guess {
    /// What the column holds.
    pub role: Role,
    /// Its unit, if named.
    pub unit: Option<Unit>,
    /// How well it fits: higher wins among columns of one role.
    pub weight: i32,
}

/// Names of the quantities, also in the languages that write decimal commas.
/// Order counts where a heading names two: the flow goes before its count.
const WORDS: [(Role, &[&str]); 8] = [
    (
        Role::Volts,
        &[
            "voltage", "volt", "volts", "spannung", "tension", "voltaje", "tensione",
        ],
    ),
    (
        Role::Amps,
        &[
            "current",
            "amperage",
            "amps",
            "strom",
            "courant",
            "corriente",
            "corrente",
        ],
    ),
    (
        Role::Watts,
        &[
            "power",
            "watts",
            "wattage",
            "leistung",
            "puissance",
            "potencia",
            "potenza",
        ],
    ),
    (
        Role::Time,
        &[
            "time",
            "timestamp",
            "datetime",
            "elapsed",
            "duration",
            "clock",
            "zeit",
            "heure",
            "hora",
            "uhrzeit",
            "tiempo",
            "epoch",
            "when",
        ],
    ),
    (Role::Date, &["date", "datum", "fecha", "day"]),
    (
        Role::Temperature,
        &["temperature", "temp", "temperatur", "temperatura"],
    ),
    (Role::AmpHours, &["charge", "capacity", "coulombs"]),
    (Role::WattHours, &["energy", "energie", "energia"]),
];

/// Formula letters, as in `U/V` or `i [A]`; only at the front.
const LETTERS: [(&str, Role); 5] = [
    ("u", Role::Volts),
    ("v", Role::Volts),
    ("i", Role::Amps),
    ("p", Role::Watts),
    ("t", Role::Time),
];

/// Words that speak for a column: it is about the battery, or what leaves it.
const NEAR: [&str; 13] = [
    "battery", "batt", "bat", "bank", "bus", "dc", "load", "out", "output", "total", "main",
    "shunt", "elapsed",
];

/// Words that speak against a column: another circuit, a setting, or an extreme
/// rather than a reading.
const FAR: [&str; 24] = [
    "pv",
    "solar",
    "panel",
    "array",
    "cell",
    "input",
    "in",
    "max",
    "min",
    "peak",
    "aux",
    "starter",
    "set",
    "setpoint",
    "limit",
    "threshold",
    "ripple",
    "remaining",
    "go",
    "left",
    "delta",
    "low",
    "high",
    "step",
];

/// Words by which a thermometer hangs outdoors, also in the languages that write
/// decimal commas.
const OUTDOORS: [&str; 16] = [
    "outdoor",
    "outdoors",
    "outside",
    "out",
    "ambient",
    "exterior",
    "external",
    "ext",
    "weather",
    "aussen",
    "außen",
    "draussen",
    "draußen",
    "fuera",
    "esterno",
    "exterieur",
];

/// Words by which a thermometer is on a battery or in a device: it tells nothing
/// of the cabin.
const DEVICE: [&str; 12] = [
    "battery", "batt", "bat", "batterie", "bateria", "batería", "cell", "zelle", "mosfet", "shunt",
    "bms", "fridge",
];

/// Words by which a thermometer hangs in the cabin.
const INDOORS: [&str; 13] = [
    "cabin",
    "indoor",
    "indoors",
    "inside",
    "room",
    "interior",
    "van",
    "innen",
    "kabine",
    "raum",
    "cabina",
    "dentro",
    "habitaculo",
];

/// Reads a heading; `None` when it names nothing that is read here.
///
/// The order of trust: a unit in brackets or behind a stroke, a unit as the last
/// word that agrees with the name, the name alone. A unit alone, such as `V`, is
/// a heading too.
///
/// Good: `Bank current (mA)` is amperes in milli. Bad: `Charge level [%]` is
/// nothing, for the bracket outranks the word.
#[must_use]
pub fn read(heading: &str) -> Option<Guess> {
    let lower = heading.to_lowercase();
    let tokens: Vec<&str> = lower
        .split(|c: char| !c.is_alphanumeric() && !matches!(c, '%' | '°'))
        .filter(|t| !t.is_empty())
        .collect();
    let last = tokens.last()?;
    let marked = marked_unit(heading);
    if is_foreign(marked.unwrap_or(last)) {
        return None;
    }
    let guess = quantity(heading, &tokens, marked)?;
    Some(match guess.role {
        Role::Temperature => thermometer(guess, &tokens)?,
        _ => guess,
    })
}

/// Where a thermometer hangs; `None` of one on a battery.
fn thermometer(guess: Guess, tokens: &[&str]) -> Option<Guess> {
    let says = |words: &[&str]| tokens.iter().any(|token| words.contains(token));
    if says(&DEVICE) {
        return None;
    }
    let (role, extra) = match () {
        () if says(&OUTDOORS) => (Role::Outdoors, 0),
        () if says(&INDOORS) => (Role::Temperature, 2),
        () => (Role::Temperature, 0),
    };
    let weight = guess.weight + extra;
    Some(Guess {
        role,
        weight,
        ..guess
    })
}

/// The quantity and unit that a heading names.
fn quantity(heading: &str, tokens: &[&str], marked: Option<&str>) -> Option<Guess> {
    let word = named(tokens);
    let bracket = marked.and_then(spelled);
    let weight = leaning(tokens);
    if let Some((role, unit)) = bracket {
        return Some(Guess {
            role,
            unit: Some(unit),
            weight: weight + 8,
        });
    }
    // A bare last word is a unit if it agrees with the name, or if no name is.
    let tail =
        spelled(last_as_written(heading)).filter(|(role, _)| word.is_none_or(|w| w == *role));
    let any = || {
        tokens
            .iter()
            .filter_map(|t| spelled(t))
            .find(|(role, _)| word == Some(*role))
    };
    match (tail.or_else(any), word) {
        (Some((role, unit)), _) => Some(Guess {
            role,
            unit: Some(unit),
            weight: weight + 6,
        }),
        (None, Some(role)) => Some(Guess {
            role,
            unit: None,
            weight: weight + 4,
        }),
        (None, None) => None,
    }
}

/// Text in brackets, or behind a stroke or comma: where units are put.
fn marked_unit(heading: &str) -> Option<&str> {
    let close = heading.trim_end();
    if close.ends_with([')', ']']) {
        let open = close.rfind(['(', '['])?;
        return close.get(open + 1..close.len() - 1);
    }
    let at = close.rfind(['/', ','])?;
    let behind = close.get(at + 1..)?.trim();
    (spelled(behind).is_some() || is_foreign(behind)).then_some(behind)
}

/// The last word of a heading with its capitals, which tell `mW` from `MW`.
fn last_as_written(heading: &str) -> &str {
    heading
        .split(|c: char| !c.is_alphanumeric() && c != '°')
        .rfind(|t| !t.is_empty())
        .unwrap_or("")
}

/// The quantity named in words. A rate outranks its count: `charge current`
/// is a current.
fn named(tokens: &[&str]) -> Option<Role> {
    let word = WORDS
        .iter()
        .find(|(_, names)| tokens.iter().any(|t| names.contains(t)))
        .map(|&(role, _)| role);
    let letter = || {
        let first = tokens.first()?;
        let rest_is_more = tokens.len() > 1;
        LETTERS
            .iter()
            .find(|(letter, _)| rest_is_more && letter == first)
            .map(|&(_, role)| role)
    };
    word.or_else(letter)
}

/// How well a heading suits among others of its role: words that speak for it
/// count once, words against it twice each.
fn leaning(tokens: &[&str]) -> i32 {
    let count = |list: &[&str]| tokens.iter().filter(|t| list.contains(t)).count() as i32;
    count(&NEAR).min(1) - 2 * count(&FAR)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(heading: &str, want: Option<(Role, Option<Unit>)>) {
        assert_eq!(read(heading).map(|g| (g.role, g.unit)), want, "{heading}");
    }

    #[test]
    fn headings_in_many_spellings() {
        use Role::*;
        check("V", Some((Volts, Some(Unit::Plain))));
        check("volts", Some((Volts, Some(Unit::Plain))));
        check("Voltage (V)", Some((Volts, Some(Unit::Plain))));
        check("bank_mv", Some((Volts, Some(Unit::Milli))));
        check("Strom [A]", Some((Amps, Some(Unit::Plain))));
        check("U/V", Some((Volts, Some(Unit::Plain))));
        check("i_a_chg_positive", Some((Amps, Some(Unit::Plain))));
        check("charge current (mA)", Some((Amps, Some(Unit::Milli))));
        check("Power, kW", Some((Watts, Some(Unit::Kilo))));
        check("Power", Some((Watts, None)));
        check("t_s", Some((Time, Some(Unit::Seconds))));
        check("Elapsed time [min]", Some((Time, Some(Unit::Minutes))));
        check("Drawn Wh", Some((WattHours, Some(Unit::Plain))));
        check(
            "locker temp °F",
            Some((Temperature, Some(Unit::Fahrenheit))),
        );
        check("Cabin °C", Some((Temperature, Some(Unit::Celsius))));
        check("outdoor temp (°C)", Some((Outdoors, Some(Unit::Celsius))));
        check("Außen Temperatur", Some((Outdoors, None)));
        // A cell's warmth is not the cabin's.
        check("battery temp °C", None);
    }

    #[test]
    fn other_columns_are_left_alone() {
        for heading in [
            "Charge level [%]",
            "Remark",
            "Row",
            "soc_pct",
            "",
            "Internal R (mOhm)",
        ] {
            check(heading, None);
        }
        // The smallest voltage is a voltage, not a minute; but a worse one.
        check("Voltage min", Some((Role::Volts, None)));
        assert!(read("Bank V").unwrap().weight > read("PV V").unwrap().weight);
    }
}
