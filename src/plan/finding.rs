//! What the engine has to say beside the numbers: typed, with no sentences.
//!
//! `text` makes the sentences. A finding never blocks what can be answered.

use crate::{
    plan::{day::SunParts, path::Path},
    range::{Range, Unit},
};
use serde::{Deserialize, Serialize};

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// A reading taken or a default chosen; nothing is wrong.
    Note,
    /// The answer stands, and something about it may hurt or mislead.
    Caution,
    /// A part of the plan cannot be answered until this is mended.
    Error,
}

/// One thing to know about a plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Finding {
    pub severity: Severity,
    /// The field it speaks of, as a path into the plan.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub field: Option<Path>,
    #[serde(flatten)]
    pub matter: Matter,
}

/// What a finding is about, with its numbers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "matter", rename_all = "snake_case")]
pub enum Matter {
    /// The value lies outside what the engine answers.
    OutOfRange {
        value: f64,
        min: f64,
        max: f64,
        unit: Unit,
    },
    /// The value is not a finite number.
    NotANumber {
        min: f64,
        max: f64,
        unit: Unit,
    },
    /// The plan lists none where one is needed, or more than are answered.
    TooMany {
        count: usize,
        most: usize,
    },
    NoneGiven,
    /// A battery's nominal volts were read as so many cells.
    NominalReading {
        stated_v: f64,
        taken_v: f64,
        cells: u32,
        wh: f64,
    },
    /// An own open-circuit table that is too short, unsorted or falls with charge.
    BadTable {
        row: usize,
    },
    /// Amps measured at one system voltage, used at another: taken as power.
    AmpsAtOtherVoltage {
        measured_at_v: f64,
        bank_v: f64,
        taken_w: f64,
    },
    /// Amps behind a converter or inverter: taken as power.
    AmpsBehindConverter {
        measured_at_v: f64,
        taken_w: f64,
    },
    /// A direct unit whose supply voltage is not the bank's.
    SupplyMismatch {
        supply_v: f64,
        bank_v: f64,
    },
    /// The measured run cannot be brought into agreement with the chemistry.
    MeasuredImplausible {
        mean_v: f64,
        expected_v: f64,
    },
    /// The measured capacity states no load; this one was taken.
    MeasuredLoadTaken {
        load_w: f64,
    },
    /// The start's charge is at or below what the depth keeps back.
    DepthBeyondStart {
        start_percent: f64,
        floor_percent: f64,
    },
    /// A chemistry whose open-circuit curve is a typical one, from memory.
    TypicalCurve,
    /// Drawn faster than its cells were measured (0: at no rate): what they drop then is
    /// not known, and the range is wider. Rates in amps over rated Ah.
    RateNotMeasured {
        rate_per_h: f64,
        measured_per_h: f64,
    },
    /// Lead-acid drawn faster than its usual Peukert exponent is good for, amps over
    /// rated Ah: it is likely empty earlier.
    FastLeadAcid {
        rate_per_h: f64,
    },
    /// Batteries in parallel: equal sharing is assumed (bus bars, equal cables).
    EqualSharing {
        parallel: u32,
    },
    /// Lead-acid taken deeper than half: wear.
    DeepLeadAcid {
        depth_percent: f64,
    },
    /// The night's low is above the day's high: they are taken the other way round.
    LowAboveHigh {
        high_c: f64,
        low_c: f64,
    },
    /// A row of the mode plan names a unit or mode that is not there.
    NoSuchMode,
    /// Imported hours out of range, or lists of unlike length.
    BadImport {
        row: usize,
    },
    /// Where direct and diffuse sun of the imported hours come from.
    ImportedSun {
        parts: SunParts,
    },
    /// A mode draws more while its compressor rests than while it runs.
    StandbyAboveDraw {
        standby_w: f64,
        draw_w: f64,
    },
    /// A row of a unit's map is missing or lacks a number, and is left out: its place
    /// from 0.
    BadMap {
        row: usize,
    },
    /// More than a tenth of the unit's cooling is lost at its starts.
    StartsCost {
        starts_count: u32,
        lost_percent: f64,
    },
    /// No coil splits that much cooling so between sensible and latent on that
    /// airflow; the stated sensible share is kept in all air.
    NoSuchCoil {
        airflow_m3_h: f64,
        sensible_percent: f64,
    },
    /// Open volts of a panel below its volts at most power: no panel has that.
    OpenBelowBest {
        open_v: f64,
        best_v: f64,
    },
    /// A day of the month that the month has not: its last is taken.
    NoSuchDay {
        stated_number: u32,
        taken_number: u32,
    },
    /// More hours are wanted than a day's answer covers.
    WantedBeyondSpan {
        wanted_h: f64,
        span_h: f64,
    },
    /// The search found no value within the accepted range that does it.
    Unreachable {
        min: f64,
        max: f64,
        unit: Unit,
    },
}

impl Finding {
    #[must_use]
    pub fn note(field: Option<Path>, matter: Matter) -> Self {
        Self {
            severity: Severity::Note,
            field,
            matter,
        }
    }
    #[must_use]
    pub fn caution(field: Option<Path>, matter: Matter) -> Self {
        Self {
            severity: Severity::Caution,
            field,
            matter,
        }
    }
    #[must_use]
    pub fn error(field: Option<Path>, matter: Matter) -> Self {
        Self {
            severity: Severity::Error,
            field,
            matter,
        }
    }

    /// The finding for a value that its range does not accept, if so.
    #[must_use]
    pub fn of_value(field: Path, value: f64, range: Range) -> Option<Self> {
        if range.accepts(value) {
            return None;
        }
        let Range { min, max, unit } = range;
        Some(Self::error(
            Some(field),
            if value.is_finite() {
                Matter::OutOfRange {
                    value,
                    min,
                    max,
                    unit,
                }
            } else {
                Matter::NotANumber { min, max, unit }
            },
        ))
    }
}
