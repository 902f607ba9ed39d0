//! A meter that does not rest at zero, and what that does to the charge.

use super::log::Log;
use super::propagate::Input;
use crate::quantity::{
    ElectricCharge, ElectricCurrent, Time, amp_hours, amps, in_amps, in_hours, in_seconds,
};

/// The reading of a meter at rest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Offset {
    /// Mean of the readings; draw is positive.
    pub current: ElectricCurrent,
    /// Standard uncertainty of the mean.
    pub standard: ElectricCurrent,
    /// How many readings it rests on.
    pub readings: usize,
}

/// The offset from a part of the log in which nothing was drawn, its ends from
/// the start of the log. `None` of fewer than two readings there.
#[must_use]
pub fn at_rest(log: &Log, from: Time, to: Time) -> Option<Offset> {
    let start_s = log.samples.first()?.time_s;
    let within = |t_s: f64| (in_seconds(from)..=in_seconds(to)).contains(&(t_s - start_s));
    let readings: Vec<f64> = log
        .samples
        .iter()
        .filter(|s| within(s.time_s))
        .filter_map(|s| s.amps)
        .collect();
    let mean = Input::repeated(&readings)?;
    Some(Offset {
        current: amps(mean.value),
        standard: amps(mean.standard),
        readings: readings.len(),
    })
}

/// A log with the offset taken off, and what that takes off its charge.
///
/// `None` where the offset is not finite or the log has no amperes.
#[must_use]
pub fn remove(log: &Log, offset: ElectricCurrent) -> Option<(Log, ElectricCharge)> {
    let offset_a = in_amps(offset);
    let covered_s = log.series(|s| s.amps).covered_s();
    let has_amps = log.samples.iter().any(|s| s.amps.is_some());
    let effect = effect(offset, crate::quantity::seconds(covered_s));
    (offset_a.is_finite() && has_amps).then(|| (log.less_amps(offset_a), effect))
}

/// The charge that an offset feigns over a time.
///
/// ```
/// use till_morning::{bench::offset::effect, quantity::{amps, hours, in_amp_hours}};
/// // A tenth of an ampere over twelve hours.
/// assert!((in_amp_hours(effect(amps(0.1), hours(12.0))) - 1.2).abs() < 1e-12);
/// ```
#[must_use]
pub fn effect(offset: ElectricCurrent, over: Time) -> ElectricCharge {
    amp_hours(in_amps(offset) * in_hours(over))
}
