//! Brings a lead-acid capacity to the rate and temperature it was rated at.

use super::measured::Measured;
use crate::quantity::{
    ElectricCharge, ElectricCurrent, ThermodynamicTemperature, Time, amp_hours, in_amp_hours,
    in_amps, in_celsius, in_hours,
};

/// What a lead-acid rating stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// The run that the rated charge was given for, often 20 h.
    pub over: Time,
    /// The temperature of the rating, often 20 or 25 C.
    pub at: ThermodynamicTemperature,
    /// Peukert's exponent, from 1 to 1.6.
    pub peukert: f64,
}

/// What a capacity was measured under.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Mean current.
    pub current: ElectricCurrent,
    /// Temperature of the battery at the start.
    pub temperature: ThermodynamicTemperature,
}

/// A corrected capacity and the steps to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corrected {
    /// At the rated rate and temperature.
    pub charge: ElectricCharge,
    /// Capacity change per kelvin that was used.
    pub per_kelvin: f64,
    /// What the temperature multiplied it by.
    pub by_temperature: f64,
    /// What the rate multiplied it by.
    pub by_rate: f64,
}

/// Slow and fast tests, per kelvin: IEC 60896-11:2002, clause 14 (from memory).
/// The tests named are 20 h and 10 h, and 3 h and 1 h; the line between is
/// drawn at 3 h.
const SLOW_PER_KELVIN: f64 = 0.006;
/// The same for fast tests.
const FAST_PER_KELVIN: f64 = 0.010;
/// Tests of this length and shorter are fast.
const FAST_HOURS: f64 = 3.0;

/// Corrects a measured lead-acid capacity, temperature first, then rate.
///
/// Temperature: `C = C_measured / (1 + lambda (T - T_rated))`. Rate: Peukert's
/// law in the rated-hour form, `t = H (C / (I H))^k` solved for C; below the
/// rated current nothing is added.
///
/// - current: above 0 A
/// - charge: above 0 Ah
/// - temperatures: from -20 to 60 C
/// - exponent: from 1 to 1.6
///
/// `None` outside these.
///
/// ```
/// use till_morning::physics::bench::lead_acid::{Conditions, Rating, correct};
/// use till_morning::quantity::{amp_hours, amps, celsius, hours, in_amp_hours};
/// // 84.1 Ah at 10 A from a battery rated over 20 h: its 100 Ah, at k = 1.25.
/// let rating = Rating { over: hours(20.0), at: celsius(25.0), peukert: 1.25 };
/// let under = Conditions { current: amps(10.0), temperature: celsius(25.0) };
/// let out = correct(amp_hours(84.09), &under, &rating).unwrap();
/// assert!((in_amp_hours(out.charge) - 100.0).abs() < 0.01);
/// ```
#[must_use]
pub fn correct(measured: ElectricCharge, under: &Conditions, rating: &Rating) -> Option<Corrected> {
    let (ah, amps) = (in_amp_hours(measured), in_amps(under.current));
    let (hours, kelvins) = (
        in_hours(rating.over),
        in_celsius(under.temperature) - in_celsius(rating.at),
    );
    let temperate = |t: ThermodynamicTemperature| (-20.0..=60.0).contains(&in_celsius(t));
    let positive = |x: f64| x > 0.0 && x.is_finite();
    let sound = [ah, amps, hours].into_iter().all(positive)
        && temperate(under.temperature)
        && temperate(rating.at)
        && (1.0..=1.6).contains(&rating.peukert);
    if !sound {
        return None;
    }
    let per_kelvin = if ah / amps <= FAST_HOURS {
        FAST_PER_KELVIN
    } else {
        SLOW_PER_KELVIN
    };
    let divisor = 1.0 + per_kelvin * kelvins;
    let at_rated_temperature = ah / divisor;
    let ran_hours = at_rated_temperature / amps;
    let by_rate = if ran_hours < hours {
        // I H (t/H)^(1/k) over I t.
        (hours / ran_hours).powf(1.0 - 1.0 / rating.peukert)
    } else {
        1.0
    };
    let corrected = at_rated_temperature * by_rate;
    (divisor > 0.0 && corrected.is_finite()).then_some(Corrected {
        charge: amp_hours(corrected),
        per_kelvin,
        by_temperature: 1.0 / divisor,
        by_rate,
    })
}

/// Carries a measured figure through a correction: the value and every part of
/// its uncertainty by the same factor.
#[must_use]
pub fn scale(measured: &Measured, corrected: &Corrected) -> Measured {
    let factor = corrected.by_temperature * corrected.by_rate;
    let mut scaled = measured.clone();
    scaled.value *= factor;
    scaled.unseen = (scaled.unseen.0 * factor, scaled.unseen.1 * factor);
    for part in &mut scaled.parts {
        part.standard *= factor;
    }
    scaled
}
