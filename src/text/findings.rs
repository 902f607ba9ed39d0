//! Findings in words.

use super::{fields::field_label, number::Format};
use crate::text::{Formatter, m};
use crate::{
    plan::finding::{Finding, Matter},
    plan::{
        Show,
        day::SunParts,
        entry::{is_converted, show, shown},
    },
    range::{self, Range, Unit},
};

/// A finding as one sentence that names the field and says what to do.
#[must_use]
pub fn finding_sentence(f: Formatter, finding: &Finding) -> String {
    let field = finding
        .field
        .map_or_else(|| f.say(m::FindingPlan), |field| field_label(f, field));
    wrong_number(f, field, &finding.matter)
        .or_else(|| wrong_list(f, field, &finding.matter))
        .or_else(|| what_was_taken(f, &finding.matter))
        .unwrap_or_default()
}

/// A number that is out of range, or that another of the plan contradicts.
fn wrong_number(f: Formatter, field: &str, matter: &Matter) -> Option<String> {
    Some(match *matter {
        Matter::OutOfRange {
            value,
            min,
            max,
            unit,
        } => f.say(m::FindingOutOfRange {
            field,
            value: f.value(value, unit),
            range: f.accepted(Range { min, max, unit }),
        }),
        Matter::NotANumber { min, max, unit } => f.say(m::FindingNotANumber {
            field,
            range: f.accepted(Range { min, max, unit }),
        }),
        Matter::Unreachable { min, max, unit } => f.say(m::FindingUnreachable {
            field,
            range: f.accepted(Range { min, max, unit }),
        }),
        Matter::StandbyAboveDraw { standby_w, draw_w } => f.say(m::FindingStandbyAboveDraw {
            field,
            standby: f.with_unit(standby_w, "W"),
            draw: f.with_unit(draw_w, "W"),
        }),
        Matter::NoSuchCoil {
            airflow_m3_h,
            sensible_percent,
        } => f.say(m::FindingNoSuchCoil {
            field,
            airflow: f.value(airflow_m3_h, Unit::CubicMeterPerHour),
            share: f.with_unit(sensible_percent, "%"),
        }),
        Matter::StartsCost {
            starts_count,
            lost_percent,
        } => f.say(m::FindingStartsCost {
            starts: starts_count,
            lost: f.with_unit(lost_percent, "%"),
        }),
        Matter::OpenBelowBest { open_v, best_v } => f.say(m::FindingOpenBelowBest {
            field,
            open: f.with_unit(open_v, "V"),
            best: f.with_unit(best_v, "V"),
        }),
        Matter::NoSuchDay {
            stated_number,
            taken_number,
        } => f.say(m::FindingNoSuchDay {
            field,
            stated: stated_number,
            taken: taken_number,
        }),
        Matter::WantedBeyondSpan { wanted_h, span_h } => f.say(m::FindingWantedBeyondSpan {
            field,
            wanted: f.duration(wanted_h),
            span: f.duration(span_h),
        }),
        _ => return None,
    })
}

/// A list or a table that cannot be used as it stands.
fn wrong_list(f: Formatter, field: &str, matter: &Matter) -> Option<String> {
    Some(match *matter {
        Matter::TooMany { count, most } => f.say(m::FindingTooMany { field, count, most }),
        Matter::NoneGiven => f.say(m::FindingNoneGiven { field }),
        Matter::BadTable { row } => f.say(m::FindingBadTable {
            field,
            row: row + 1,
        }),
        Matter::BadMap { row } => f.say(m::FindingBadMap {
            field,
            row: row + 1,
        }),
        Matter::NoSuchMode => f.say(m::FindingNoSuchMode { field }),
        Matter::BadImport { row } => f.say(m::FindingBadImport {
            field,
            row: row + 1,
            temperature: f.accepted(range::OUTDOOR_C),
            irradiance: f.accepted(range::GLOBAL_W_M2),
        }),
        _ => return None,
    })
}

/// What was read, assumed or left out. It lists what the others say, so that a new
/// matter without a sentence does not compile.
fn what_was_taken(f: Formatter, matter: &Matter) -> Option<String> {
    let volts = |value| f.with_unit(value, "V");
    let watts = |value| f.with_unit(value, "W");
    let percent = |value| f.with_unit(value, "%");
    Some(match *matter {
        Matter::NominalReading {
            stated_v,
            taken_v,
            cells,
            wh,
        } => f.say(m::FindingNominalReading {
            stated: volts(stated_v),
            cells,
            taken: volts(taken_v),
            energy: f.with_unit(wh, "Wh"),
        }),
        Matter::AmpsAtOtherVoltage {
            measured_at_v,
            bank_v,
            taken_w,
        } => f.say(m::FindingAmpsAtOtherVoltage {
            measured: volts(measured_at_v),
            bank: volts(bank_v),
            power: watts(taken_w),
        }),
        Matter::AmpsBehindConverter {
            measured_at_v,
            taken_w,
        } => f.say(m::FindingAmpsBehindConverter {
            measured: volts(measured_at_v),
            power: watts(taken_w),
        }),
        Matter::SupplyMismatch { supply_v, bank_v } => f.say(m::FindingSupplyMismatch {
            supply: volts(supply_v),
            bank: volts(bank_v),
        }),
        Matter::MeasuredImplausible { mean_v, expected_v } => {
            f.say(m::FindingMeasuredImplausible {
                mean: volts(mean_v),
                expected: volts(expected_v),
            })
        }
        Matter::MeasuredLoadTaken { load_w } => f.say(m::FindingMeasuredLoadTaken {
            load: watts(load_w),
        }),
        Matter::DepthBeyondStart {
            start_percent,
            floor_percent,
        } => f.say(m::FindingDepthBeyondStart {
            start: percent(start_percent),
            floor: percent(floor_percent),
        }),
        Matter::TypicalCurve => f.say(m::FindingTypicalCurve).into(),
        Matter::EqualSharing { parallel } => f.say(m::FindingEqualSharing { parallel }),
        Matter::RateNotMeasured { measured_per_h, .. } if measured_per_h <= 0.0 => {
            f.say(m::FindingNoRateMeasured).into()
        }
        Matter::RateNotMeasured {
            rate_per_h,
            measured_per_h,
        } => f.say(m::FindingRateNotMeasured {
            rate: f.plain(rate_per_h),
            measured: f.plain(measured_per_h),
        }),
        Matter::FastLeadAcid { rate_per_h } => f.say(m::FindingFastLeadAcid {
            rate: f.plain(rate_per_h),
        }),
        Matter::DeepLeadAcid { depth_percent } => f.say(m::FindingDeepLeadAcid {
            depth: percent(depth_percent),
        }),
        Matter::LowAboveHigh { high_c, low_c } => f.say(m::FindingLowAboveHigh {
            low: f.value(low_c, Unit::Celsius),
            high: f.value(high_c, Unit::Celsius),
        }),
        Matter::ImportedSun { parts } => sun_parts_sentence(f, parts).into(),
        Matter::OutOfRange { .. }
        | Matter::NotANumber { .. }
        | Matter::Unreachable { .. }
        | Matter::StandbyAboveDraw { .. }
        | Matter::NoSuchCoil { .. }
        | Matter::StartsCost { .. }
        | Matter::OpenBelowBest { .. }
        | Matter::NoSuchDay { .. }
        | Matter::WantedBeyondSpan { .. }
        | Matter::TooMany { .. }
        | Matter::NoneGiven
        | Matter::BadTable { .. }
        | Matter::BadMap { .. }
        | Matter::NoSuchMode
        | Matter::BadImport { .. } => return None,
    })
}

/// Where direct and diffuse sun of imported hours come from.
#[must_use]
pub fn sun_parts_sentence(f: Formatter, parts: SunParts) -> &'static str {
    match parts {
        SunParts::File => f.say(m::SunPartsFile),
        SunParts::OneOfFile => f.say(m::SunPartsOneOfFile),
        SunParts::Estimated => f.say(m::SunPartsEstimated),
    }
}

/// Both ends of a range as a language writes them. In other units than the plan's
/// they are rounded inwards: what is said to be accepted is.
pub(super) fn ends(range: Range, units: Show, format: Format) -> [String; 2] {
    let Range { min, max, unit } = range;
    if !is_converted(unit, units) {
        return [min, max].map(|end| format.grouped(&show(end, unit, Show::METRIC)));
    }
    let in_parts = |value: f64, whole: fn(f64, f64) -> f64| {
        let value = shown(value, unit, units);
        let size = value.abs().max(1e-9).log10().floor() as i32 + 1;
        let decimals = (3 - size).clamp(0, 9);
        let parts = 10f64.powi(decimals);
        // A hair's room, so that 140 is not taken for 139.999 999.
        let hair = 1e-9 * (value * parts).abs();
        format.fixed(whole(value * parts, hair) / parts, decimals as usize)
    };
    [
        in_parts(min, |value, hair| (value - hair).ceil()),
        in_parts(max, |value, hair| (value + hair).floor()),
    ]
}
