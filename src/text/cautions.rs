//! Cautions that the page shows where they apply: each sentence and source once.

use super::{
    Formatter, Locale, bank_in_words, m,
    wiring::{amps, circuit_name},
};
use crate::{
    answer::cautions::Caution,
    plan::{Plan, reader::Language},
    quantity::{in_square_inches, in_square_meters, square_millimeters},
    range::Unit,
};

/// A caution as it is shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CautionText {
    pub text: String,
    /// The same in English, beside a translation: no speaker of the trade has read those
    /// yet, and nobody shall come to harm by a wrong word.
    pub english: Option<String>,
    /// Where it comes from; empty where there is nothing to name.
    pub source: &'static str,
}

/// A caution with its source and, where it is translated, its English.
#[must_use]
pub fn caution_text(f: Formatter, plan: &Plan, one: Caution) -> CautionText {
    CautionText {
        source: caution_source(f, one),
        ..with_english(f, |f| caution(f, plan, one))
    }
}

/// The same on the electrician's sheet: nobody is sent there who is there.
#[must_use]
pub fn caution_on_sheet(f: Formatter, plan: &Plan, one: Caution) -> CautionText {
    match one {
        Caution::LocalCodes => with_english(f, |f| f.say(m::CautionCodesGovern).into()),
        one => caution_text(f, plan, one),
    }
}

/// What is said on every reader's page, of plans in which it is not worked out too.
#[must_use]
pub fn usual_cautions(f: Formatter) -> [CautionText; 2] {
    [
        with_english(f, |f| f.say(m::CautionEstimates).into()),
        with_english(f, |f| f.say(m::CautionNeverLeave).into()),
    ]
}

fn with_english(f: Formatter, say: impl Fn(Formatter) -> String) -> CautionText {
    let text = say(f);
    let english = say(Formatter::new(Locale::usual(Language::English), f.units));
    CautionText {
        english: (f.language() != Language::English && english != text).then_some(english),
        text,
        source: "",
    }
}

/// A caution as a sentence.
#[must_use]
pub fn caution(f: Formatter, plan: &Plan, caution: Caution) -> String {
    let degrees = |celsius: f64| f.stated_value(celsius.round(), Unit::Celsius);
    let text = match caution {
        Caution::HeatUnattended { cabin_c } => f.say(m::CautionHeatUnattended {
            temperature: degrees(cabin_c),
        }),
        Caution::BeyondFiftyVolts { charge_v, .. } => f.say(m::CautionBeyondFiftyVolts {
            volts: f.volts(charge_v),
        }),
        Caution::Generator { at_night } => asleep(f, f.say(m::CautionGenerator), at_night),
        Caution::Engine { at_night } => asleep(f, f.say(m::CautionEngine), at_night),
        Caution::ChargedCold {
            least_c, coldest_c, ..
        } => f.say(m::CautionChargedCold {
            least: degrees(least_c),
            coldest: degrees(coldest_c),
        }),
        Caution::LeadAcidGas {
            air_m3_h,
            opening_mm2,
            ..
        } => f.say(m::CautionLeadAcidGas {
            air: f.value(air_m3_h, Unit::CubicMeter),
            opening: opening(f, opening_mm2),
        }),
        Caution::PathWithoutFuse { circuit, current_a } => f.say(m::CautionPathWithoutFuse {
            circuit: circuit_name(f, circuit),
            current: amps(f, current_a),
        }),
        Caution::AlternatorLeftOpen { .. } => f.say(m::CautionAlternator).into(),
        Caution::SeriesBeyondMaker {
            series_count,
            most_count,
            ..
        } => f.say(m::CautionSeriesBeyondMaker {
            count: f.number(f64::from(series_count)),
            most: f.number(f64::from(most_count)),
        }),
        Caution::SeriesAsAllowed { series_count, .. } => f.say(m::CautionSeriesAsAllowed {
            count: f.number(f64::from(series_count)),
        }),
        Caution::ParallelAsAllowed { parallel_count, .. } => f.say(m::CautionParallelAsAllowed {
            count: f.number(f64::from(parallel_count)),
        }),
        Caution::BmsIsNoFuse => f.say(m::CautionBmsIsNoFuse).into(),
        Caution::FuseAtSource => f.say(m::CautionFuseAtSource).into(),
        Caution::CopperOnly => f.say(m::CautionCopperOnly).into(),
        Caution::AutomotiveGauge => f.say(m::CautionAutomotiveGauge).into(),
        Caution::PrintedRatingDecides => f.say(m::CautionPrintedRatingDecides).into(),
        Caution::LocalCodes => f.say(m::CautionLocalCodes).into(),
        Caution::Estimates => f.say(m::CautionEstimates).into(),
    };
    match bank_of(caution) {
        Some(bank) if plan.banks.len() > 1 => f.say(m::CautionOfBank {
            bank: bank_in_words(f, plan, bank),
            caution: text,
        }),
        _ => text,
    }
}

/// Which bank a caution is of.
const fn bank_of(caution: Caution) -> Option<usize> {
    match caution {
        Caution::BeyondFiftyVolts { bank, .. }
        | Caution::ChargedCold { bank, .. }
        | Caution::LeadAcidGas { bank, .. }
        | Caution::AlternatorLeftOpen { bank }
        | Caution::SeriesBeyondMaker { bank, .. }
        | Caution::SeriesAsAllowed { bank, .. }
        | Caution::ParallelAsAllowed { bank, .. } => Some(bank),
        _ => None,
    }
}

/// Where a caution comes from.
#[must_use]
pub fn caution_source(f: Formatter, caution: Caution) -> &'static str {
    match caution {
        Caution::HeatUnattended { .. } => f.say(m::CautionSourceHeat),
        Caution::BeyondFiftyVolts { .. } => f.say(m::CautionSourceFiftyVolts),
        Caution::Generator { .. } => f.say(m::CautionSourceGenerator),
        Caution::Engine { .. } => f.say(m::CautionSourceEngine),
        Caution::ChargedCold { .. } => f.say(m::CautionSourceCold),
        Caution::LeadAcidGas { .. } => f.say(m::CautionSourceGas),
        Caution::PathWithoutFuse { .. } | Caution::FuseAtSource => f.say(m::CautionSourceFuse),
        Caution::SeriesBeyondMaker { .. } => f.say(m::CautionSourceMaker),
        Caution::AutomotiveGauge => f.say(m::CautionSourceGauge),
        Caution::AlternatorLeftOpen { .. }
        | Caution::SeriesAsAllowed { .. }
        | Caution::ParallelAsAllowed { .. }
        | Caution::BmsIsNoFuse
        | Caution::CopperOnly
        | Caution::PrintedRatingDecides => f.say(m::CautionSourcePractice),
        Caution::LocalCodes | Caution::Estimates => "",
    }
}

fn asleep(f: Formatter, text: &str, at_night: bool) -> String {
    if at_night {
        format!("{text} {}", f.say(m::CautionRunsAtNight))
    } else {
        text.into()
    }
}

/// The size of an opening in square centimetres, or in square inches.
fn opening(f: Formatter, mm2: f64) -> String {
    let area = square_millimeters(mm2);
    if f.units.us_units {
        format!("{}\u{202f}in²", f.fixed(in_square_inches(area).ceil(), 0))
    } else {
        format!("{}\u{202f}cm²", f.fixed(in_square_meters(area) * 1e4, 0))
    }
}
