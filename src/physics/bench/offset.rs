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

/// The charge that an offset feigns over a time.
///
/// ```
/// use till_morning::{physics::bench::offset::effect, quantity::{amps, hours, in_amp_hours}};
/// // A tenth of an ampere over twelve hours.
/// assert!((in_amp_hours(effect(amps(0.1), hours(12.0))) - 1.2).abs() < 1e-12);
/// ```
#[must_use]
pub fn effect(offset: ElectricCurrent, over: Time) -> ElectricCharge {
    amp_hours(in_amps(offset) * in_hours(over))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::bench::log::{Notes, Sample, Sense};
    use crate::physics::bench::totals::totals;
    use crate::quantity::{in_amp_hours, in_watt_hours, minutes};

    #[test]
    fn the_offset_at_rest_comes_off_the_whole_run() {
        // Half an hour at rest, then 11.5 h at 10 A; the meter adds 0.1 A.
        let sample = |k: usize| Sample {
            time_s: 60.0 * k as f64,
            volts: Some(12.5),
            amps: Some(if k < 30 { 0.1 } else { 10.1 }),
            ..Sample::default()
        };
        let samples = (0..=720).map(sample).collect();
        let log = Log::new(samples, None, Sense::Positive, Notes::default()).unwrap();
        let offset = at_rest(&log, minutes(0.0), minutes(29.0)).unwrap();
        assert_eq!(offset.readings, 30);
        assert!((in_amps(offset.current) - 0.1).abs() < 1e-12);
        let clean = log.less_amps(in_amps(offset.current));
        assert!((in_amp_hours(effect(offset.current, minutes(720.0))) - 1.2).abs() < 1e-9);
        let of = |log: &Log| totals(log);
        let (before, after) = (of(&log), of(&clean));
        let charge = in_amp_hours(before.charge.unwrap().net - after.charge.unwrap().net);
        assert!((charge - 1.2).abs() < 1e-9);
        // Watts made of volts and amperes follow.
        let energy = in_watt_hours(before.energy.unwrap().net - after.energy.unwrap().net);
        assert!((energy - 15.0).abs() < 1e-9);
        assert_eq!(at_rest(&log, minutes(1.0), minutes(1.5)), None);
    }
}
