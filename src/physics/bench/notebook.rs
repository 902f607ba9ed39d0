//! A run noted by hand: start, end, average, minutes.

use super::instrument::Instrument;
use super::measured::{Measured, Part, Source};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Power, Time, in_amps, in_hours, in_volts, in_watts,
};

/// What was noted of one quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Noted<Q> {
    /// At the start.
    pub start: Option<Q>,
    /// At the end.
    pub end: Option<Q>,
    /// Over the run.
    pub average: Option<Q>,
}

impl<Q> Default for Noted<Q> {
    fn default() -> Self {
        Self {
            start: None,
            end: None,
            average: None,
        }
    }
}

/// A run as noted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entry {
    /// How long it ran, above zero.
    pub lasted: Time,
    /// How well that is known: the limit either way.
    pub lasted_limit: Time,
    /// Volts.
    pub volts: Noted<ElectricPotential>,
    /// Amperes.
    pub amps: Noted<ElectricCurrent>,
    /// Watts.
    pub watts: Noted<Power>,
}

/// The meters it was read from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meters {
    /// Volts.
    pub volts: Instrument,
    /// Amperes.
    pub amps: Instrument,
    /// Watts.
    pub watts: Instrument,
}

/// The figures of a noted run; each with its uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct Figures {
    /// Mean volts.
    pub volts: Option<Measured>,
    /// Mean amperes.
    pub amps: Option<Measured>,
    /// Mean watts: as noted, else volts times amperes.
    pub watts: Option<Measured>,
    /// Charge in ampere-hours.
    pub charge_ah: Option<Measured>,
    /// Energy in watt-hours.
    pub energy_wh: Option<Measured>,
}

/// The figures of a noted run; `None` of a time that is not above zero.
///
/// Where only the start and the end are noted, their middle is taken, and half
/// their difference as the limit of what the average may be off by: the true
/// course between them is not known. A start alone, or an end, is no average.
#[must_use]
pub fn figures(entry: &Entry, meters: &Meters) -> Option<Figures> {
    let hours = in_hours(entry.lasted);
    if !(hours > 0.0 && hours.is_finite()) {
        return None;
    }
    let share = (in_hours(entry.lasted_limit).abs() / hours) / 3f64.sqrt();
    let share = if share.is_finite() { share } else { 0.0 };
    let volts = mean(&entry.volts, in_volts, &meters.volts);
    let amps = mean(&entry.amps, in_amps, &meters.amps);
    let product = || Some(times(volts.as_ref()?, amps.as_ref()?));
    let watts = mean(&entry.watts, in_watts, &meters.watts).or_else(product);
    let over_time = |m: &Measured| {
        let mut total = scaled(m, hours, Source::Meter);
        total
            .parts
            .push(Part::fixed(Source::Timing, (total.value * share).abs()));
        total.lasted = Some(entry.lasted);
        total
    };
    Some(Figures {
        charge_ah: amps.as_ref().map(over_time),
        energy_wh: watts.as_ref().map(over_time),
        volts,
        amps,
        watts,
    })
}

/// The average as noted, else the middle of start and end with its limit.
fn mean<Q: Copy>(noted: &Noted<Q>, number: fn(Q) -> f64, meter: &Instrument) -> Option<Measured> {
    if let Some(average) = noted.average.map(number) {
        return Some(Measured::read_once(average, meter)).filter(|m| m.value.is_finite());
    }
    let (start, end) = (number(noted.start?), number(noted.end?));
    let mut middle = Measured::read_once(0.5 * (start + end), meter);
    let drift = 0.5 * (start - end).abs() / 3f64.sqrt();
    middle.parts.push(Part::fixed(Source::Sampling, drift));
    (start.is_finite() && end.is_finite()).then_some(middle)
}

/// A figure times an exact factor, its meter's part renamed.
fn scaled(measured: &Measured, factor: f64, meter: Source) -> Measured {
    let mut scaled = measured.clone();
    scaled.value *= factor;
    for part in &mut scaled.parts {
        part.standard *= factor.abs();
        if part.source == Source::Meter {
            part.source = meter;
        }
    }
    scaled
}

/// Volts times amperes: relative uncertainties add in squares.
fn times(volts: &Measured, amps: &Measured) -> Measured {
    let mut product = scaled(amps, volts.value, Source::Meter);
    product
        .parts
        .extend(scaled(volts, amps.value, Source::VoltMeter).parts);
    product
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{amps, hours, minutes, volts, watts};

    fn meters() -> Meters {
        let good = Instrument::of_reading(0.01);
        Meters {
            volts: good,
            amps: good,
            watts: good,
        }
    }

    fn entry() -> Entry {
        Entry {
            lasted: hours(2.0),
            lasted_limit: minutes(0.0),
            volts: Noted {
                start: Some(volts(13.3)),
                end: Some(volts(12.7)),
                average: None,
            },
            amps: Noted {
                average: Some(amps(20.0)),
                ..Noted::default()
            },
            watts: Noted::default(),
        }
    }

    #[test]
    fn volts_amperes_and_hours_make_energy() {
        let out = figures(&entry(), &meters()).unwrap();
        assert_eq!(out.charge_ah.as_ref().unwrap().value, 40.0);
        let energy = out.energy_wh.unwrap();
        assert!((energy.value - 520.0).abs() < 1e-9);
        // 1 % of volts and of amperes within root 3, and 0.3 V of drift.
        let want = 520.0 * (2.0 * 1e-4 + (0.3f64 / 13.0).powi(2)).sqrt() / 3f64.sqrt();
        assert!((energy.standard() - want).abs() < 1e-9);
    }

    #[test]
    fn noted_watts_outrank_the_product_and_time_has_its_part() {
        let noted = Entry {
            watts: Noted {
                average: Some(watts(250.0)),
                ..Noted::default()
            },
            lasted_limit: minutes(6.0),
            ..entry()
        };
        let energy = figures(&noted, &meters()).unwrap().energy_wh.unwrap();
        assert_eq!(energy.value, 500.0);
        let want = 500.0 * (1e-4 + 0.05f64.powi(2)).sqrt() / 3f64.sqrt();
        assert!((energy.standard() - want).abs() < 1e-9);
    }

    #[test]
    fn half_a_note_gives_half_the_figures() {
        let no_amps = Entry {
            amps: Noted {
                start: Some(amps(20.0)),
                ..Noted::default()
            },
            ..entry()
        };
        let out = figures(&no_amps, &meters()).unwrap();
        assert!(out.volts.is_some() && out.charge_ah.is_none() && out.energy_wh.is_none());
        let never = Entry {
            lasted: hours(0.0),
            ..entry()
        };
        assert_eq!(figures(&never, &meters()), None);
        let odd = Entry {
            amps: Noted {
                average: Some(amps(f64::NAN)),
                ..Noted::default()
            },
            ..entry()
        };
        assert_eq!(figures(&odd, &meters()).unwrap().amps, None);
    }
}
