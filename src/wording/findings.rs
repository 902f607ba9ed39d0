//! Findings in words.

use super::{
    labels::{field_label, unit_sign},
    number::{clock, duration, duration_fine, plain, stated, with_sign, with_unit},
};
use crate::{
    finding::{Finding, Matter},
    plan::{Path, day::SunParts},
    range::Unit,
};

/// A finding as one sentence that names the field and says what to do.
#[must_use]
pub fn finding_sentence(finding: &Finding) -> String {
    let name = finding.field.map_or("The plan", field_label);
    match &finding.matter {
        Matter::OutOfRange { value, min, max, unit } => format!(
            "{name}: {} is outside what can be answered. Give {}.",
            value_text(*value, *unit),
            interval(*min, *max, *unit)
        ),
        Matter::NotANumber { min, max, unit } => {
            format!("{name}: give a number, {}.", interval(*min, *max, *unit))
        }
        Matter::TooMany { count, most } => {
            format!("{name}: {count} are listed, and up to {most} are answered.")
        }
        Matter::NoneGiven => format!("{name}: add at least one."),
        Matter::NominalReading { stated_v, taken_v, cells, wh } => format!(
            "“{}\u{202f}V” is read as {cells} cells, {}: {} a block.",
            plain(*stated_v),
            with_unit(*taken_v, "V"),
            with_unit(*wh, "Wh")
        ),
        Matter::BadTable { row } => format!(
            "{name}: row {} is out of order. Charge must rise from row to row, volts must not fall, and there must be two rows or more.",
            row + 1
        ),
        Matter::AmpsAtOtherVoltage { measured_at_v, bank_v, taken_w } => format!(
            "Amps measured at {} do not carry over to a {} bank: the same power, {}, is taken.",
            with_unit(*measured_at_v, "V"),
            with_unit(*bank_v, "V"),
            with_unit(*taken_w, "W")
        ),
        Matter::AmpsBehindConverter { taken_w } => format!(
            "Amps behind a converter or inverter are taken as power: {}.",
            with_unit(*taken_w, "W")
        ),
        Matter::SupplyMismatch { supply_v, bank_v } => format!(
            "The unit wants {} and the bank gives {}: change the blocks in series, or put a converter between.",
            with_unit(*supply_v, "V"),
            with_unit(*bank_v, "V")
        ),
        Matter::MeasuredImplausible { mean_v, expected_v } => format!(
            "Measured Wh over measured Ah is {} on average, where this bank would show about {}: check both, and the blocks in series. The Wh are left out.",
            with_unit(*mean_v, "V"),
            with_unit(*expected_v, "V")
        ),
        Matter::MeasuredLoadTaken { load_w } => format!(
            "The measurement states no load: its rated current, {}, is taken.",
            with_unit(*load_w, "W")
        ),
        Matter::DepthBeyondStart { start_percent, floor_percent } => format!(
            "The bank starts at {} and {} is kept back: there is nothing to use.",
            with_unit(*start_percent, "%"),
            with_unit(*floor_percent, "%")
        ),
        Matter::TypicalCurve => "The voltage curve of this chemistry is a typical one: hours by voltage cut-offs are less sure.".into(),
        Matter::EqualSharing { parallel } => format!(
            "{parallel} strings are taken to share the current equally: bus bars, or equal cables and a diagonal take-off."
        ),
        Matter::DeepLeadAcid { depth_percent } => format!(
            "Lead-acid taken {} down wears out early: half is usual.",
            with_unit(*depth_percent, "%")
        ),
        Matter::LowAboveHigh { high_c, low_c } => format!(
            "The low, {}, is above the high, {}: they are taken the other way round.",
            with_unit(*low_c, "°C"),
            with_unit(*high_c, "°C")
        ),
        Matter::NoSuchMode => format!("{name}: this row of the mode plan names a mode that is not listed."),
        Matter::BadImport { row } => format!(
            "{name}: hour {} is out of range, or the lists are of unlike length. Each hour needs a temperature from −50 to 60\u{202f}°C and an irradiance from 0 to 1500\u{202f}W/m².",
            row + 1
        ),
        Matter::ImportedSun { parts } => sun_parts_sentence(*parts).into(),
        Matter::StandbyAboveDraw { standby_w, draw_w } => format!(
            "{name}: {} is above the {} drawn while on. Check both: standby is what the unit takes between its compressor’s runs.",
            with_unit(*standby_w, "W"),
            with_unit(*draw_w, "W")
        ),
        Matter::NoSuchCoil { airflow_m3_h, sensible_percent } => format!(
            "{name}: no coil gives this unit’s cooling on {} with {} of it sensible. Check the three; that share is kept in all air.",
            with_unit(*airflow_m3_h, "m³/h"),
            with_unit(*sensible_percent, "%")
        ),
        Matter::OpenBelowBest { open_v, best_v } => format!(
            "{name}: Voc, {}, is below Vmp, {}: no panel has that. Check both; {} is taken for Voc.",
            with_unit(*open_v, "V"),
            with_unit(*best_v, "V"),
            with_unit(*best_v, "V")
        ),
        Matter::NoSuchDay { stated_number, taken_number } => format!(
            "{name}: the month has no day {stated_number}. Its last, {taken_number}, is taken."
        ),
        Matter::WantedBeyondSpan { wanted_h, span_h } => format!(
            "{name}: {} are wanted, and the hot day is worked out for {} at most: what is said of it is said of these.",
            duration(*wanted_h),
            duration(*span_h)
        ),
        Matter::Unreachable { min, max, unit } => {
            format!("{name}: nothing {} gives those hours.", interval(*min, *max, *unit))
        }
    }
}

/// Where direct and diffuse sun of imported hours come from.
#[must_use]
pub const fn sun_parts_sentence(parts: SunParts) -> &'static str {
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

/// An accepted range in words.
fn interval(min: f64, max: f64, unit: Unit) -> String {
    match unit {
        Unit::Count => format!("a whole number from {} to {}", plain(min), plain(max)),
        Unit::ClockMinute => "a clock time from 00:00 to 23:59".into(),
        _ => format!("from {} to {}", plain(min), value_text(max, unit)),
    }
}

/// A value with its unit.
#[must_use]
pub fn value_text(value: f64, unit: Unit) -> String {
    match unit {
        Unit::ClockMinute => clock(value),
        Unit::Hour if value < 100.0 => duration(value),
        _ => with_unit(value, unit_sign(unit, false)),
    }
}

/// A value that somebody stated, with its unit: nothing of it is rounded off.
#[must_use]
pub fn stated_text(value: f64, unit: Unit) -> String {
    match unit {
        Unit::ClockMinute => clock(value),
        Unit::Hour if (1.0 / 60.0..100.0).contains(&value) => duration_fine(value),
        _ => with_sign(stated(value), unit_sign(unit, false)),
    }
}

/// The accepted range of a field in words, if it holds a number.
pub(super) fn accepted(path: Path) -> String {
    path.range().map_or_else(String::new, |range| {
        interval(range.min, range.max, range.unit)
    })
}
