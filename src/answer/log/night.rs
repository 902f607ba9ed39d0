//! One night's log held against the plan.

use super::LogMeter;
use crate::{
    physics::bench::{instrument::Kind, log::Log},
    plan::Plan,
    study::logged::{LoggedNightWork, MeterSd},
};

/// The fit of a plan to a log that was read off by this meter, to be made in steps.
#[must_use]
pub fn night(plan: &Plan, log: &Log, meter: LogMeter) -> LoggedNightWork {
    LoggedNightWork::new(plan, log, meter_sd(log, meter))
}

/// Above this share of the greatest reading the unit is on.
const LOADED: f64 = 0.5;
/// Of next to nothing any meter is off by all of it.
const MOST_SD: f64 = 0.5;

/// By the meter's usual limits at the mean reading, and at the mean of those with the unit
/// on; of watts by a plug-in meter's.
fn meter_sd(log: &Log, meter: LogMeter) -> MeterSd {
    let amps: Vec<f64> = log.samples.iter().filter_map(|s| s.amps).collect();
    let watts: Vec<f64> = log.samples.iter().filter_map(|s| s.watts).collect();
    let (readings, instrument) = if amps.is_empty() {
        (watts, Kind::PlugInWattMeter.usual(0.0))
    } else {
        (amps, meter.amps())
    };
    let greatest = readings.iter().fold(0.0_f64, |most, x| most.max(x.abs()));
    let share = |least: f64| {
        let all = readings.iter().map(|x| x.abs()).filter(|x| *x >= least);
        let (sum, count) = all.fold((0.0, 0.0), |(sum, count), x| (sum + x, count + 1.0));
        let mean = if count > 0.0 { sum / count } else { 0.0 };
        if mean > 0.0 {
            (instrument.standard(mean) / mean).min(MOST_SD)
        } else {
            MOST_SD
        }
    };
    MeterSd {
        charge: share(0.0),
        draw: share(LOADED * greatest),
    }
}
