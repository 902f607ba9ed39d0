//! How numbers, units, times and lists are written for a person: everything that depends
//! on the language, the units and the habits of the place. No other file chooses a unit,
//! a decimal mark or a clock.

use super::{
    message::{Message, m},
    number::{self, Format, Span},
};
use crate::{
    plan::{
        Show,
        entry::{is_converted, show, shown, width_shown},
        reader::Language,
    },
    quantity,
    range::{Range, Unit},
};
use intl_pluralrules::{PluralCategory, PluralRuleType, PluralRules};
use serde::{Deserialize, Serialize};
use unic_langid::LanguageIdentifier;

/// A narrow no-break space: between a number and its unit.
const THIN: char = '\u{202f}';

/// What the person's own device says of language and habits. Not part of a plan: whoever
/// opens a link reads it in a language and a clock of their own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Locale {
    pub language: Language,
    /// `1,5` for one and a half.
    pub decimal_comma: bool,
    /// `9:30 pm` for 21:30.
    pub clock_12h: bool,
}

impl Locale {
    /// What is usual where a language is spoken most: for those who have no browser to
    /// ask.
    #[must_use]
    pub const fn usual(language: Language) -> Self {
        Self {
            language,
            decimal_comma: !matches!(language, Language::English),
            clock_12h: false,
        }
    }
}

/// Writes for a person: a [`Locale`] and the plan's own choice of units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Formatter {
    pub locale: Locale,
    pub units: Show,
}

impl Formatter {
    /// English, metric, as files for other programs have it.
    pub const ENGLISH: Self = Self {
        locale: Locale::usual(Language::English),
        units: Show::METRIC,
    };

    #[must_use]
    pub const fn new(locale: Locale, units: Show) -> Self {
        Self { locale, units }
    }

    #[must_use]
    pub const fn language(self) -> Language {
        self.locale.language
    }

    /// A message in this language.
    pub fn say<M: Message>(self, message: M) -> M::Text {
        message.in_language(self)
    }

    /// How numbers are written.
    #[must_use]
    pub const fn format(self) -> Format {
        Format {
            decimal: if self.locale.decimal_comma { ',' } else { '.' },
            group: THIN,
            group_from: 5,
        }
    }

    // Numbers.

    /// A count as it stands in a sentence.
    #[must_use]
    pub fn number(self, value: f64) -> String {
        self.format().stated(value)
    }

    /// At most three significant digits.
    #[must_use]
    pub fn plain(self, value: f64) -> String {
        self.format().plain(value)
    }

    /// A number that somebody stated: nothing of it is rounded off.
    #[must_use]
    pub fn stated(self, value: f64) -> String {
        self.format().stated(value)
    }

    /// So many decimals at the most: trailing zeros go.
    #[must_use]
    pub fn fixed(self, value: f64, decimals: usize) -> String {
        self.format().fixed(value, decimals)
    }

    /// Exactly so many decimals, as axes and tables want it.
    #[must_use]
    pub fn exact(self, value: f64, decimals: usize) -> String {
        self.format().exact(value, decimals)
    }

    /// CLDR's plural category of a number as it is written here.
    #[must_use]
    pub fn plural(self, value: f64) -> PluralCategory {
        let rules = self
            .language()
            .tag()
            .parse::<LanguageIdentifier>()
            .ok()
            .and_then(|tag| PluralRules::create(tag, PluralRuleType::CARDINAL).ok());
        let category = rules.and_then(|rules| rules.select(value).ok());
        category.unwrap_or(PluralCategory::OTHER)
    }

    // Units.

    /// A number and a sign that is the same in every language.
    #[must_use]
    pub fn with_unit(self, value: f64, sign: &str) -> String {
        number::with_sign(self.plain(value), sign)
    }

    /// A share in whole per cent.
    #[must_use]
    pub fn percent(self, value: f64) -> String {
        number::with_sign(self.fixed(value, 0), "%")
    }

    /// Volts to the hundredth, as a meter shows them.
    #[must_use]
    pub fn volts(self, value: f64) -> String {
        number::with_sign(self.exact(value, 2), "V")
    }

    /// Watt-hours, from ten thousand on in kilowatt-hours.
    #[must_use]
    pub fn energy(self, wh: f64) -> String {
        if wh.abs() >= 10_000.0 {
            self.with_unit(wh / 1000.0, "kWh")
        } else {
            self.with_unit(wh.round(), "Wh")
        }
    }

    /// A temperature to a tenth of a degree.
    #[must_use]
    pub fn temperature(self, value_c: f64) -> String {
        let value = shown(value_c, Unit::Celsius, self.units);
        number::with_sign(self.fixed(value, 1), self.sign(Unit::Celsius))
    }

    /// A value with its unit, in the units shown.
    #[must_use]
    pub fn value(self, value: f64, unit: Unit) -> String {
        match unit {
            Unit::ClockMinute => self.clock(value),
            Unit::Hour if value < 100.0 => self.duration(value),
            _ => self.with_unit(shown(value, unit, self.units), self.sign(unit)),
        }
    }

    /// A value that somebody stated, with its unit: nothing of it is rounded off.
    #[must_use]
    pub fn stated_value(self, value: f64, unit: Unit) -> String {
        match unit {
            // In other units as the field would have it: four digits.
            _ if is_converted(unit, self.units) => number::with_sign(
                self.format().grouped(&show(value, unit, self.units)),
                self.sign(unit),
            ),
            Unit::ClockMinute => self.clock(value),
            Unit::Hour if (1.0 / 60.0..100.0).contains(&value) => self.duration_fine(value),
            _ => number::with_sign(self.stated(value), self.sign(unit)),
        }
    }

    /// A difference of two numbers with its unit.
    #[must_use]
    pub fn width(self, width: f64, unit: Unit) -> String {
        let of = match unit {
            Unit::Celsius => Unit::Kelvin,
            unit => unit,
        };
        self.with_unit(width_shown(width, unit, self.units), self.sign(of))
    }

    /// A temperature that stands in Fahrenheit already.
    #[must_use]
    pub fn fahrenheit(self, value_c: f64) -> String {
        self.with_unit(quantity::in_fahrenheit(quantity::celsius(value_c)), "°F")
    }

    /// The sign after a number, in the units shown; empty where it has none.
    #[must_use]
    pub fn sign(self, unit: Unit) -> &'static str {
        match unit {
            Unit::PerHour => self.say(m::SignPerHour),
            Unit::PercentPerKelvin => self.say(m::SignPercentPerKelvin),
            Unit::PercentPerKilowatt => self.say(m::SignPercentPerKilowatt),
            _ => super::labels::unit_sign(unit, self.units),
        }
    }

    /// An accepted range in words, in the units shown.
    #[must_use]
    pub fn accepted(self, range: Range) -> String {
        let Range { min, max, unit } = range;
        match unit {
            Unit::Count => self.say(m::AcceptedCount {
                min: self.plain(min),
                max: self.plain(max),
            }),
            Unit::ClockMinute => self.say(m::AcceptedClock {
                first: self.clock(0.0),
                last: self.clock(1439.0),
            }),
            _ => {
                let [min, max] = super::findings::ends(range, self.units, self.format());
                let max = number::with_sign(max, self.sign(unit));
                self.say(m::AcceptedRange { min, max })
            }
        }
    }

    /// What a field takes, after "enter": "a number from 0 to 10 A".
    #[must_use]
    pub fn number_accepted(self, range: Range) -> String {
        let accepted = self.accepted(range);
        match range.unit {
            Unit::Count | Unit::ClockMinute => accepted,
            _ => self.say(m::AcceptedNumber { range: accepted }),
        }
    }

    // Times.

    /// Hours as hours and minutes: `9 h 50 min`, `40 min`; days from three on.
    #[must_use]
    pub fn duration(self, hours: f64) -> String {
        self.span(number::span(hours))
    }

    /// Both ends of a band, in days where the high one is told in days.
    #[must_use]
    pub fn duration_range(self, low: f64, high: f64) -> (String, String) {
        let (low, high) = number::span_range(low, high);
        (self.span(low), self.span(high))
    }

    fn span(self, span: Span) -> String {
        match span {
            Span::Nothing => format!("0{THIN}min"),
            Span::UnderAMinute => self.say(m::UnderAMinute).into(),
            Span::Clocked(hours, minutes) => number::join(60 * hours + minutes),
            Span::Days(days, decimals) => {
                let shown = self.fixed(days, decimals);
                // Counted as it is written: 1.04 days are 1 day.
                let scale = 10f64.powi(i32::try_from(decimals).unwrap_or(0));
                self.say(m::DurationDays {
                    count: (days * scale).round() / scale,
                    days: shown,
                })
            }
        }
    }

    /// Hours and minutes to the minute, for tables.
    #[must_use]
    pub fn duration_fine(self, hours: f64) -> String {
        if hours >= 240.0 {
            self.duration(hours)
        } else {
            number::join((hours * 60.0).round() as u64)
        }
    }

    /// A clock time from minutes after midnight, of any day: `06:50`, `6:50 am`.
    #[must_use]
    pub fn clock(self, minutes: f64) -> String {
        let minute = minutes.rem_euclid(1440.0).floor() as u32 % 1440;
        let (hour, minute) = (minute / 60, minute % 60);
        if !self.locale.clock_12h {
            return format!("{hour:02}:{minute:02}");
        }
        let time = format!("{}:{minute:02}", (hour + 11) % 12 + 1);
        if hour < 12 {
            self.say(m::ClockAm { time })
        } else {
            self.say(m::ClockPm { time })
        }
    }

    /// A clock time so many hours after a clock minute, to ten minutes.
    #[must_use]
    pub fn clock_after(self, start_min: u32, hours: f64) -> String {
        let minutes = f64::from(start_min) + hours * 60.0;
        self.clock((minutes / 10.0).round() * 10.0)
    }

    // Lists.

    /// `a`, `a and b`, `a, b and c`.
    #[must_use]
    pub fn all_of<S: AsRef<str>>(self, items: &[S]) -> String {
        self.list(items, |first, last| self.say(m::ListAnd { first, last }))
    }

    /// `a`, `a or b`, `a, b or c`.
    #[must_use]
    pub fn one_of<S: AsRef<str>>(self, items: &[S]) -> String {
        self.list(items, |first, last| self.say(m::ListOr { first, last }))
    }

    fn list<S: AsRef<str>>(self, items: &[S], join: impl Fn(String, &str) -> String) -> String {
        match items {
            [] => String::new(),
            [one] => one.as_ref().into(),
            [first @ .., last] => {
                let first: Vec<&str> = first.iter().map(AsRef::as_ref).collect();
                join(first.join(", "), last.as_ref())
            }
        }
    }
}
