//! A value of a chart, written out.

use super::day::Calendar;
use crate::text::Formatter;

/// How a value is written in a read-out and in a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Text {
    /// A duration in hours and minutes.
    Hours,
    AmpHours,
    Percent,
    Volts,
    Watts,
    Celsius,
    /// Degrees Fahrenheit of a value in Celsius.
    Fahrenheit,
    Amps,
    /// The clock time so many hours after a clock minute.
    Clock {
        start_min: f64,
    },
    /// The same with its day.
    DayClock(Calendar),
    /// What stands on a chart in Fahrenheit already.
    FahrenheitAsIs,
}

impl Text {
    /// A value with its unit.
    #[must_use]
    pub fn of(self, f: Formatter, value: f64) -> String {
        match self {
            Self::Hours => f.duration_fine(value),
            Self::AmpHours => f.with_unit(value, "Ah"),
            Self::Percent => f.percent(value),
            Self::Volts => f.volts(value),
            Self::Watts => f.with_unit(value, "W"),
            Self::Celsius => f.with_unit(value, "°C"),
            Self::Fahrenheit => {
                let temperature = crate::quantity::celsius(value);
                f.with_unit(crate::quantity::in_fahrenheit(temperature), "°F")
            }
            Self::Amps => f.with_unit(value, "A"),
            Self::Clock { start_min } => f.clock(start_min + 60.0 * value),
            Self::DayClock(calendar) => calendar.moment(f, value),
            Self::FahrenheitAsIs => f.with_unit(value, "°F"),
        }
    }
}
