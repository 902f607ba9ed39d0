//! Units as headings and cells spell them.

use crate::quantity;

/// What a column is read as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// The time of the row, alone or with [`Role::Date`].
    Time,
    /// The day, when the time column has the clock alone.
    Date,
    /// Voltage.
    Volts,
    /// Current, of either sign.
    Amps,
    /// Power, of either sign.
    Watts,
    /// The logger's own count of charge; kept beside our total.
    AmpHours,
    /// The logger's own count of energy; kept beside our total.
    WattHours,
    /// Temperature in the cabin.
    Temperature,
    /// Temperature outdoors.
    Outdoors,
    /// Not read.
    Ignored,
}

/// The unit of a column, or the form of its times.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Unit {
    /// Volts, amperes, watts, ampere-hours, watt-hours as they stand.
    Plain,
    /// A thousandth of that.
    Milli,
    /// A thousand of that.
    Kilo,
    /// Elapsed milliseconds.
    Milliseconds,
    /// Elapsed seconds.
    Seconds,
    /// Elapsed minutes.
    Minutes,
    /// Elapsed hours.
    Hours,
    /// Elapsed days.
    Days,
    /// Elapsed `h:mm` or `h:mm:ss`, hours past 24 allowed.
    HoursMinutes,
    /// Elapsed `m:ss`, or `h:mm:ss` past an hour.
    MinutesSeconds,
    /// Clock time of day, through midnight.
    Clock,
    /// Day and clock time.
    Calendar,
    /// Seconds since 1970.
    EpochSeconds,
    /// Milliseconds since 1970.
    EpochMilliseconds,
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// Nothing to scale: a date, or an unread column.
    None,
}

impl Role {
    /// The role whose units this one has.
    #[must_use]
    pub fn quantity(self) -> Self {
        match self {
            Self::Outdoors => Self::Temperature,
            other => other,
        }
    }
}

impl Unit {
    /// Whether a column of this role can be in this unit.
    #[must_use]
    pub fn fits(self, role: Role) -> bool {
        match role {
            Role::Volts | Role::Amps | Role::Watts | Role::AmpHours | Role::WattHours => {
                matches!(self, Unit::Plain | Unit::Milli | Unit::Kilo)
            }
            Role::Temperature | Role::Outdoors => {
                matches!(self, Unit::Celsius | Unit::Fahrenheit)
            }
            Role::Date | Role::Ignored => self == Unit::None,
            Role::Time => !matches!(
                self,
                Unit::Plain
                    | Unit::Milli
                    | Unit::Kilo
                    | Unit::Celsius
                    | Unit::Fahrenheit
                    | Unit::None
            ),
        }
    }

    /// A number of this unit in the base unit: volts, amperes, watts,
    /// ampere-hours, watt-hours, seconds or degrees Celsius.
    #[must_use]
    pub fn to_base(self, number: f64) -> f64 {
        let seconds = quantity::in_seconds;
        match self {
            Unit::Milli | Unit::Milliseconds | Unit::EpochMilliseconds => number / 1000.0,
            Unit::Kilo => number * 1000.0,
            Unit::Minutes => seconds(quantity::minutes(number)),
            Unit::Hours => seconds(quantity::hours(number)),
            Unit::Days => seconds(quantity::hours(24.0 * number)),
            Unit::Fahrenheit => quantity::in_celsius(quantity::fahrenheit(number)),
            _ => number,
        }
    }
}

/// The least and most accepted in a column of this role, in the base unit.
///
/// Wide enough for any bank a person can log; a value past them is a slip that
/// would swamp every total.
#[must_use]
pub fn accepted(role: Role) -> (f64, f64) {
    match role {
        Role::Volts => (-2_000.0, 2_000.0),
        Role::Amps => (-10_000.0, 10_000.0),
        Role::Watts => (-1e6, 1e6),
        Role::Temperature | Role::Outdoors => (-100.0, 300.0),
        _ => (-1e9, 1e9),
    }
}

/// The quantity and unit that a short piece of text names, such as `mA`,
/// `kilowatts`, `°F` or `Ah`.
#[must_use]
pub fn spelled(text: &str) -> Option<(Role, Unit)> {
    let text = text.trim();
    // Case counts in one place only: a megawatt is no reading of a bank.
    if matches!(text, "MW" | "MV" | "MA" | "MWh") {
        return None;
    }
    let mut word = text.to_lowercase();
    word.retain(|c| c.is_alphabetic() || c == '°' || c == 'º');
    for (role, names) in ELECTRIC {
        if let Some(unit) = scaled(&word, names) {
            return Some((role, unit));
        }
    }
    PLAIN
        .iter()
        .find(|(names, ..)| names.contains(&word.as_str()))
        .map(|&(_, role, unit)| (role, unit))
}

/// Whether a piece of text is a unit of something that is not read here.
#[must_use]
pub fn is_foreign(text: &str) -> bool {
    /// Per cent, ohms, turns: what would be misread as something else.
    const FOREIGN: [&str; 20] = [
        "%", "pct", "percent", "hz", "ohm", "ohms", "mohm", "ω", "mω", "rpm", "va", "kva", "var",
        "pf", "rh", "%rh", "pa", "hpa", "bar", "cfm",
    ];
    FOREIGN.contains(&text.trim().to_lowercase().as_str())
}

/// Ampere-hours before amperes and watt-hours before watts need no order: the
/// whole word must match.
const ELECTRIC: [(Role, &[&str]); 5] = [
    (Role::Volts, &["v", "vdc", "vac", "volt", "volts"]),
    (
        Role::Amps,
        &["a", "adc", "aac", "amp", "amps", "ampere", "amperes"],
    ),
    (Role::Watts, &["w", "wdc", "watt", "watts"]),
    (
        Role::AmpHours,
        &["ah", "amphour", "amphours", "amperehours"],
    ),
    (Role::WattHours, &["wh", "watthour", "watthours"]),
];

/// Spellings of one unit, in small letters.
type Spelling = (&'static [&'static str], Role, Unit);

/// Units that take no prefix here.
const PLAIN: [Spelling; 7] = [
    (
        &["ms", "msec", "millis", "millisecond", "milliseconds"],
        Role::Time,
        Unit::Milliseconds,
    ),
    (
        &["s", "sec", "secs", "second", "seconds", "sek"],
        Role::Time,
        Unit::Seconds,
    ),
    (
        &["min", "mins", "minute", "minutes"],
        Role::Time,
        Unit::Minutes,
    ),
    (
        &["h", "hr", "hrs", "hour", "hours", "std"],
        Role::Time,
        Unit::Hours,
    ),
    (&["d", "day", "days"], Role::Time, Unit::Days),
    (
        &["°c", "ºc", "c", "degc", "celsius"],
        Role::Temperature,
        Unit::Celsius,
    ),
    (
        &["°f", "ºf", "f", "degf", "fahrenheit"],
        Role::Temperature,
        Unit::Fahrenheit,
    ),
];

/// A unit with milli or kilo before it, written out or short.
fn scaled(word: &str, names: &[&str]) -> Option<Unit> {
    if names.contains(&word) {
        return Some(Unit::Plain);
    }
    let under = |long: &str, short: &str| {
        word.strip_prefix(long)
            .or_else(|| word.strip_prefix(short))
            .is_some_and(|rest| names.contains(&rest))
    };
    match () {
        () if under("milli", "m") => Some(Unit::Milli),
        () if under("kilo", "k") => Some(Unit::Kilo),
        () => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_in_many_spellings() {
        for (text, role, unit) in [
            ("V", Role::Volts, Unit::Plain),
            ("V DC", Role::Volts, Unit::Plain),
            ("millivolts", Role::Volts, Unit::Milli),
            ("mA", Role::Amps, Unit::Milli),
            ("Amperes", Role::Amps, Unit::Plain),
            ("kW", Role::Watts, Unit::Kilo),
            ("mAh", Role::AmpHours, Unit::Milli),
            ("amp-hours", Role::AmpHours, Unit::Plain),
            ("kWh", Role::WattHours, Unit::Kilo),
            ("mins", Role::Time, Unit::Minutes),
            ("ms", Role::Time, Unit::Milliseconds),
            ("°F", Role::Temperature, Unit::Fahrenheit),
        ] {
            assert_eq!(spelled(text), Some((role, unit)), "{text}");
            assert!(unit.fits(role));
        }
        for text in ["", "MW", "furlong", "%", "mm"] {
            assert_eq!(spelled(text), None, "{text}");
        }
    }
}
