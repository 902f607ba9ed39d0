//! How well the figure of a claim was read.

use super::verdict::Missing;
use crate::{
    physics::bench::{
        instrument::{Instrument, Kind},
        measured::{Part, Source},
    },
    plan::{
        Claim, Plan,
        claims::{Claimed, MeterClass},
    },
    quantity::{cubic_meters_per_second, in_cubic_meters_per_hour},
};

/// A shunt's rating where none is stated: common practice, no source.
const USUAL_SHUNT_A: f64 = 500.0;

/// The parts of a figure's uncertainty that its meters make, at `value` in the claim's unit.
///
/// # Errors
/// What is missing before any can be given.
pub fn parts(plan: &Plan, claim: &Claim, value: f64) -> Result<Vec<Part>, Missing> {
    match claim.meter {
        None => by_spread(claim, value),
        Some(class) => by_class(plan, claim, class, value),
    }
}

/// No meter named: the spread of the measured figure, at k = 2.
fn by_spread(claim: &Claim, value: f64) -> Result<Vec<Part>, Missing> {
    let spread = super::verdict::measured_figure(claim).and_then(|figure| figure.spread_percent);
    let percent = spread.ok_or(Missing::Meter)?;
    let standard = (value * percent / 200.0).abs();
    Ok(vec![Part::fixed(Source::Meter, standard)])
}

/// By the kind of meter: its usual limits, or those stated for a sheet, at `value` in the
/// claim's unit.
///
/// A charge or an energy by a clamp or shunt is as sure as its mean current, so it takes a
/// current or a length of the run.
///
/// # Errors
/// What is missing; [`Missing::MeterOfThatKind`] for a meter that does not read it.
pub fn by_class(
    plan: &Plan,
    claim: &Claim,
    class: MeterClass,
    value: f64,
) -> Result<Vec<Part>, Missing> {
    let about = claim.about_taken();
    let kind = match class {
        MeterClass::Sheet => {
            let meter = sheet(claim).ok_or(Missing::Limits)?;
            return Ok(vec![Part::fixed(Source::Meter, meter.standard(value))]);
        }
        MeterClass::Clamp => Kind::ClampMeter,
        MeterClass::Shunt => Kind::ShuntMonitor,
        MeterClass::Multimeter => Kind::Multimeter,
        MeterClass::WattMeter => Kind::PlugInWattMeter,
        MeterClass::Vane => Kind::VaneMeter,
        MeterClass::Thermometer => Kind::Thermometer,
        MeterClass::Hygrometer => Kind::Hygrometer,
    };
    let meter = kind.usual(claim.full_scale_number.unwrap_or(USUAL_SHUNT_A));
    let only = |standard: f64| Ok(vec![Part::fixed(Source::Meter, standard)]);
    match (about, kind) {
        (Claimed::Charge, Kind::ClampMeter | Kind::ShuntMonitor) => {
            let amps = mean_amps(claim, value).ok_or(Missing::RateOrMinutes)?;
            only(value * relative(&meter, amps))
        }
        (Claimed::Energy | Claimed::Draw, Kind::ClampMeter | Kind::ShuntMonitor) => {
            let volts = plan.banks.get(claim.bank).ok_or(Missing::Bank)?.nominal_v();
            let amps = amps_of_energy(claim, value, volts).ok_or(Missing::RateOrMinutes)?;
            let of_volts = relative(&Kind::Multimeter.usual(0.0), volts);
            Ok(vec![
                Part::fixed(Source::Meter, value * relative(&meter, amps)),
                Part::fixed(Source::VoltMeter, value * of_volts),
            ])
        }
        (Claimed::Draw, Kind::PlugInWattMeter) | (Claimed::Temperature, Kind::Thermometer) => {
            only(meter.standard(value))
        }
        (Claimed::Energy, Kind::PlugInWattMeter) => {
            let minutes = claim.measured_min.ok_or(Missing::RateOrMinutes)?;
            only(value * relative(&meter, value / (minutes / 60.0)))
        }
        (Claimed::Airflow, Kind::VaneMeter) => {
            let area_m2 = claim.grille_m2.ok_or(Missing::FreeArea)?;
            let per_m_s = in_cubic_meters_per_hour(cubic_meters_per_second(area_m2));
            only(meter.times(per_m_s).standard(value))
        }
        _ => Err(Missing::MeterOfThatKind),
    }
}

/// The standard uncertainty as a share of the reading.
fn relative(meter: &Instrument, reading: f64) -> f64 {
    meter.standard(reading) / reading.abs().max(f64::MIN_POSITIVE)
}

fn hours(claim: &Claim) -> Option<f64> {
    claim.measured_min.map(|minutes| minutes / 60.0)
}

/// Stated, or by the length of the run.
fn mean_amps(claim: &Claim, ah: f64) -> Option<f64> {
    claim.rate_a.or_else(|| hours(claim).map(|h| ah / h))
}

/// Stated, or by the length of the run; a draw is its own watts.
fn amps_of_energy(claim: &Claim, value: f64, volts: f64) -> Option<f64> {
    let by_time = || match claim.about_taken() {
        Claimed::Draw => Some(value / volts),
        _ => hours(claim).map(|h| value / h / volts),
    };
    claim.rate_a.or_else(by_time)
}

/// The limits typed; none where not one of them is.
fn sheet(claim: &Claim) -> Option<Instrument> {
    let share = |percent: Option<f64>| percent.unwrap_or(0.0) / 100.0;
    let any = claim.of_reading_percent.is_some()
        || (claim.of_full_scale_percent.is_some() && claim.full_scale_number.is_some())
        || (claim.counts_number.is_some() && claim.one_count_number.is_some());
    any.then(|| Instrument {
        of_reading: share(claim.of_reading_percent),
        of_full_scale: share(claim.of_full_scale_percent),
        full_scale: claim.full_scale_number.unwrap_or(0.0),
        counts: claim.counts_number.unwrap_or(0.0),
        count: claim.one_count_number.unwrap_or(0.0),
    })
}
