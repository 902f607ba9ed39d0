//! Findings in words.

use super::{
    fields::field_label,
    number::{ENGLISH, Format, with_sign},
};
use crate::text::Formatter;
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
    let name = finding
        .field
        .map_or("The plan", |field| field_label(f, field));
    match &finding.matter {
        Matter::OutOfRange { value, min, max, unit } => format!(
            "{name}: {} is outside what can be answered. Give {}.",
            f.value(*value, *unit),
            f.accepted(Range { min: *min, max: *max, unit: *unit })
        ),
        Matter::NotANumber { min, max, unit } => {
            format!(
                "{name}: give a number, {}.",
                f.accepted(Range { min: *min, max: *max, unit: *unit })
            )
        }
        Matter::TooMany { count, most } => {
            format!("{name}: {count} are listed, and up to {most} are answered.")
        }
        Matter::NoneGiven => format!("{name}: add at least one."),
        Matter::NominalReading { stated_v, taken_v, cells, wh } => format!(
            "“{}\u{202f}V” is read as {cells} cells, {}: {} a battery.",
            f.plain(*stated_v),
            f.with_unit(*taken_v, "V"),
            f.with_unit(*wh, "Wh")
        ),
        Matter::BadTable { row } => format!(
            "{name}: row {} is out of order. Charge must rise from row to row, volts must not fall, and there must be two rows or more.",
            row + 1
        ),
        Matter::AmpsAtOtherVoltage { measured_at_v, bank_v, taken_w } => format!(
            "Amps measured at {} do not carry over to a {} bank: the same power, {}, is taken.",
            f.with_unit(*measured_at_v, "V"),
            f.with_unit(*bank_v, "V"),
            f.with_unit(*taken_w, "W")
        ),
        Matter::AmpsBehindConverter { taken_w } => format!(
            "Amps behind a converter or inverter are taken as power: {}.",
            f.with_unit(*taken_w, "W")
        ),
        Matter::SupplyMismatch { supply_v, bank_v } => format!(
            "The unit wants {} and the bank gives {}: change the batteries in series, or put a converter between.",
            f.with_unit(*supply_v, "V"),
            f.with_unit(*bank_v, "V")
        ),
        Matter::MeasuredImplausible { mean_v, expected_v } => format!(
            "Measured Wh over measured Ah is {} on average, where this bank would show about {}: check both, and the batteries in series. The Wh are left out.",
            f.with_unit(*mean_v, "V"),
            f.with_unit(*expected_v, "V")
        ),
        Matter::MeasuredLoadTaken { load_w } => format!(
            "The measurement states no load: its rated current, {}, is taken.",
            f.with_unit(*load_w, "W")
        ),
        Matter::DepthBeyondStart { start_percent, floor_percent } => format!(
            "The bank starts at {} and {} is kept back: there is nothing to use.",
            f.with_unit(*start_percent, "%"),
            f.with_unit(*floor_percent, "%")
        ),
        Matter::TypicalCurve => "The voltage curve of this chemistry is a typical one: hours by voltage cut-offs are less sure.".into(),
        Matter::EqualSharing { parallel } => format!(
            "{parallel} strings are taken to share the current equally: bus bars, or equal cables and a diagonal take-off."
        ),
        Matter::DeepLeadAcid { depth_percent } => format!(
            "Lead-acid taken {} down wears out early: half is usual.",
            f.with_unit(*depth_percent, "%")
        ),
        Matter::LowAboveHigh { high_c, low_c } => format!(
            "The low, {}, is above the high, {}: they are taken the other way round.",
            f.value(*low_c, Unit::Celsius),
            f.value(*high_c, Unit::Celsius)
        ),
        Matter::NoSuchMode => format!("{name}: this row of the mode plan names a mode that is not listed."),
        Matter::BadImport { row } => format!(
            "{name}: hour {} is out of range, or the lists are of unlike length. Each hour needs a temperature {} and an irradiance {}.",
            row + 1,
            f.accepted(range::OUTDOOR_C),
            f.accepted(range::GLOBAL_W_M2)
        ),
        Matter::ImportedSun { parts } => sun_parts_sentence(f, *parts).into(),
        Matter::StandbyAboveDraw { standby_w, draw_w } => format!(
            "{name}: {} is above the {} drawn while on. Check both: standby is what the unit takes between its compressor’s runs.",
            f.with_unit(*standby_w, "W"),
            f.with_unit(*draw_w, "W")
        ),
        Matter::NoSuchCoil { airflow_m3_h, sensible_percent } => format!(
            "{name}: no coil gives this unit’s cooling on {} with {} of it sensible. Check the three; that share is kept in all air.",
            f.value(*airflow_m3_h, Unit::CubicMeterPerHour),
            f.with_unit(*sensible_percent, "%")
        ),
        Matter::OpenBelowBest { open_v, best_v } => format!(
            "{name}: Voc, {}, is below Vmp, {}: no panel has that. Check both; {} is taken for Voc.",
            f.with_unit(*open_v, "V"),
            f.with_unit(*best_v, "V"),
            f.with_unit(*best_v, "V")
        ),
        Matter::NoSuchDay { stated_number, taken_number } => format!(
            "{name}: the month has no day {stated_number}. Its last, {taken_number}, is taken."
        ),
        Matter::WantedBeyondSpan { wanted_h, span_h } => format!(
            "{name}: {} are wanted, and the hot day is worked out for {} at most: what is said of it is said of these.",
            f.duration(*wanted_h),
            f.duration(*span_h)
        ),
        Matter::Unreachable { min, max, unit } => {
            format!(
                "{name}: nothing {} gives those hours.",
                f.accepted(Range { min: *min, max: *max, unit: *unit })
            )
        }
    }
}

/// Where direct and diffuse sun of imported hours come from.
#[must_use]
pub fn sun_parts_sentence(_f: Formatter, parts: SunParts) -> &'static str {
    match parts {
        SunParts::File => "Direct and diffuse sun are the weather file’s own.",
        SunParts::OneOfFile => {
            "The weather file has one of direct and diffuse sun: the other is what is left of its total."
        }
        SunParts::Estimated => {
            "The weather file has the total sun alone: direct and diffuse are estimated from it (Erbs, Klein and Duffie 1982), and the diffuse may be a third off."
        }
    }
}

/// An accepted range in words, in the units shown.
#[must_use]
pub fn accepted(f: Formatter, range: Range) -> String {
    let Range { min, max, unit } = range;
    match unit {
        Unit::Count => format!("a whole number from {} to {}", f.plain(min), f.plain(max)),
        Unit::ClockMinute => "a clock time from 00:00 to 23:59".into(),
        _ => {
            let [min, max] = ends(range, f.units, ENGLISH);
            let sign = f.sign(unit);
            let space = if sign.is_empty() { "" } else { "\u{202f}" };
            format!("from {min} to {max}{space}{sign}")
        }
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

/// A value with its unit, in the units shown.
#[must_use]
pub fn value_text(f: Formatter, value: f64, unit: Unit) -> String {
    match unit {
        Unit::ClockMinute => f.clock(value),
        Unit::Hour if value < 100.0 => f.duration(value),
        _ => f.with_unit(shown(value, unit, f.units), f.sign(unit)),
    }
}

/// A value that somebody stated, with its unit: nothing of it is rounded off.
#[must_use]
pub fn stated_text(f: Formatter, value: f64, unit: Unit) -> String {
    match unit {
        // In other f.units as the field would have it: four digits.
        _ if is_converted(unit, f.units) => {
            with_sign(ENGLISH.grouped(&show(value, unit, f.units)), f.sign(unit))
        }
        Unit::ClockMinute => f.clock(value),
        Unit::Hour if (1.0 / 60.0..100.0).contains(&value) => f.duration_fine(value),
        _ => with_sign(f.stated(value), f.sign(unit)),
    }
}
