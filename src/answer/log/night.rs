//! One night's log held against the plan.

use super::LogMeter;
use crate::{
    physics::bench::{instrument::Kind, log::Log},
    plan::Plan,
    study::logged::LoggedNightWork,
};

/// The fit of a plan to a log that was read off by this meter, to be made in steps.
#[must_use]
pub fn night(plan: &Plan, log: &Log, meter: LogMeter) -> LoggedNightWork {
    LoggedNightWork::new(plan, log, meter_sd(log, meter))
}

/// What the meter may be off by at the log's mean, as a share, one standard deviation.
fn meter_sd(log: &Log, meter: LogMeter) -> f64 {
    let of = |part: fn(&crate::physics::bench::log::Sample) -> Option<f64>| {
        let all = log.samples.iter().filter_map(part);
        let (sum, count) = all.fold((0.0, 0.0), |(sum, count), x| (sum + x.abs(), count + 1.0));
        if count > 0.0 { sum / count } else { 0.0 }
    };
    let (amps, watts) = (of(|s| s.amps), of(|s| s.watts));
    let share = if amps > 0.0 {
        meter.amps().standard(amps) / amps
    } else if watts > 0.0 {
        Kind::PlugInWattMeter.usual(0.0).standard(watts) / watts
    } else {
        0.0
    };
    // Of next to nothing any meter is off by all of it.
    share.clamp(0.0, 0.5)
}
