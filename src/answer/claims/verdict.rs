//! A measured figure against its claim: share, interval, verdict, remedy.

use super::{air::AirAnswer, meter};
use crate::{
    physics::bench::{
        claim::{self, Better, Decisive, RangeVerdict, Verdict},
        lead_acid::{self, Conditions, Rating},
        measured::{Measured, Part, Source},
        propagate::Input,
    },
    plan::{
        Claim, Figure, Path, Plan,
        claims::{ClaimField as C, Claimed, MeterClass},
        part::Choice,
        path::BankField as B,
    },
    quantity::{amp_hours, amps, celsius, hours, minutes},
    study::spread,
};
use serde::{Deserialize, Serialize};

/// One claim, judged.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ClaimAnswer {
    /// Its place in the plan.
    pub claim: usize,
    /// What is claimed; it fixes the unit.
    pub about: Claimed,
    /// The figure that was judged, corrected where it had to be; in the unit
    /// of the claim, like all below.
    pub measured: f64,
    /// Worked out from the air side of the plan rather than typed.
    pub from_air: bool,
    /// As claimed; the lower end of a claimed range.
    pub claimed: f64,
    /// The upper end of a claimed range; absent: one figure is claimed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub claimed_most: Option<f64>,
    /// Measured over claimed; of a range none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub share_percent: Option<f64>,
    /// Expanded uncertainty, 95.45 %.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expanded: Option<f64>,
    /// The factor that it was expanded by: 2, or Student's for few runs.
    pub coverage: f64,
    /// What is said of it, by the whole interval and never by the figure alone.
    pub verdict: ClaimVerdict,
    /// Why no accuracy can be claimed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub missing: Option<Missing>,
    /// What was done to a lead-acid figure before it was judged.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub corrected: Option<Correction>,
    /// Shares of the squared uncertainty, largest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limited_by: Vec<PartShare>,
    /// What would decide it, where it is too close to call.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub decisive: Option<Remedy>,
}

/// What is said of a claim: of one figure the first four, of a range the last three or
/// [`Self::TooCloseToCall`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ClaimVerdict {
    /// All of the interval is better than claimed.
    BeatsIt,
    /// All of it is worse than claimed.
    FallsShort,
    /// All of it is within the tolerance of the claim.
    MeetsIt,
    /// The interval allows more than one of these.
    TooCloseToCall,
    /// No accuracy can be given; [`ClaimAnswer::missing`] says what is missing.
    NotJudged,
    /// All of the interval is inside the claimed range.
    Inside,
    /// All of it is below.
    OutsideBelow,
    /// All of it is above.
    OutsideAbove,
}

/// What is missing before an uncertainty can be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Missing {
    /// Neither a meter nor a spread is stated.
    Meter,
    /// The limits of the meter's sheet.
    Limits,
    /// The mean current or the length of the run.
    RateOrMinutes,
    /// The free area that the vane was read over.
    FreeArea,
    /// A meter of another quantity is named.
    MeterOfThatKind,
    /// The bank that it is of.
    Bank,
    /// Lead-acid: current and temperature of the run, to correct it by.
    LeadAcidConditions,
}

/// A lead-acid figure brought to its rated rate and temperature.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Correction {
    /// Before the correction, in the claim's unit.
    pub as_measured: f64,
    /// Multiplied by this to its rated temperature.
    pub by_temperature: f64,
    /// And by this to its rated rate, by Peukert's law.
    pub by_rate: f64,
}

/// One part of the uncertainty.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PartShare {
    /// What makes it.
    pub source: Source,
    /// Of the squared uncertainty; all parts make 100.
    pub share_percent: f64,
}

/// What would make the verdict decisive; each remedy alone is enough.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Remedy {
    /// Expanded uncertainty to get below, in the claim's unit.
    pub expanded: f64,
    /// Minutes in all, where time would do it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub total_min: Option<f64>,
    /// A meter with at most this limit, where a meter would do it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub meter_limit: Option<f64>,
    /// The classes that usually keep it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub classes: Vec<MeterClass>,
}

/// The figure typed for what a claim is about, in its unit.
pub fn measured_figure(claim: &Claim) -> Option<Figure> {
    match claim.about_taken() {
        Claimed::Charge => claim.measured_ah,
        Claimed::Energy => claim.measured_wh,
        Claimed::Draw => claim.measured_w,
        Claimed::Airflow => claim.measured_m3_h,
        Claimed::Temperature => claim.measured_c,
        Claimed::Cooling => claim.measured_cooling_w,
        Claimed::Eer => claim.measured_btu_per_wh,
    }
}

/// The figure: the mean of two runs or more, else the one typed, else the one run.
pub fn measured_value(claim: &Claim) -> Option<f64> {
    match Input::repeated(&claim.runs) {
        Some(mean) => Some(mean.value),
        None => measured_figure(claim)
            .map(|figure| figure.value)
            .or_else(|| claim.runs.first().copied()),
    }
}

/// Judges a claim, `at` its place in the plan; `None` where it says no claim or nothing was
/// measured.
///
/// `air` gives the figure where none was typed and the claim is of the air side. A
/// lead-acid capacity is first brought to its rated rate and temperature.
pub fn judged(plan: &Plan, at: usize, air: Option<&AirAnswer>) -> Option<ClaimAnswer> {
    let claim = plan.claims.get(at)?;
    let about = claim.about_taken();
    let [low, high, _] = about.fields();
    let stated = |field| plan.stated(Path::Claim(at, field)).map(|f| f.value);
    let (claimed, claimed_most) = match (stated(low), stated(high)) {
        (Some(low), high) => (low, high),
        (None, Some(high)) => (high, None),
        (None, None) => return None,
    };
    let (mut figure, from_air, mut missing) = figure(plan, claim, air)?;
    let mut corrected = None;
    if is_lead_acid(plan, claim) {
        match correction(plan, at, &figure) {
            Some((better, what)) => (figure, corrected) = (better, Some(what)),
            None => missing = missing.or(Some(Missing::LeadAcidConditions)),
        }
    }
    figure.resolved = missing.is_none();
    let (verdict, decisive) = match missing {
        None => verdict(about, &figure, claimed, claimed_most, claim),
        Some(_) => (ClaimVerdict::NotJudged, None),
    };
    Some(ClaimAnswer {
        claim: at,
        about,
        measured: figure.value,
        from_air,
        claimed,
        claimed_most,
        share_percent: claimed_most
            .is_none()
            .then(|| claim::share_of_claim(figure.value, claimed))
            .flatten()
            .map(|share| 100.0 * share),
        expanded: figure.expanded(),
        coverage: figure.coverage(),
        verdict,
        missing,
        corrected,
        limited_by: shares(&figure.parts),
        decisive: decisive.map(|wanted| remedy(plan, claim, &figure, wanted)),
    })
}

/// The figure with its uncertainty, whether the air side gave it, and what is
/// missing for its accuracy.
fn figure(
    plan: &Plan,
    claim: &Claim,
    air: Option<&AirAnswer>,
) -> Option<(Measured, bool, Option<Missing>)> {
    let Some(value) = measured_value(claim) else {
        let figure = air?.figure(claim.about_taken())?;
        return Some((figure, true, None));
    };
    let (parts, missing) = match meter::parts(plan, claim, value) {
        Ok(parts) => (parts, None),
        Err(missing) => (Vec::new(), Some(missing)),
    };
    let mut figure = Measured::known(value, 0.0);
    figure.parts = parts;
    figure.lasted = claim.measured_min.map(minutes);
    if let Some(mean) = Input::repeated(&claim.runs) {
        figure.parts.push(Part {
            freedom: mean.freedom,
            ..Part::fixed(Source::Scatter, mean.standard)
        });
    }
    Some((figure, false, missing))
}

/// A range has no better side; of one figure a draw is better lower, a temperature neither.
fn verdict(
    about: Claimed,
    figure: &Measured,
    claimed: f64,
    claimed_most: Option<f64>,
    claim: &Claim,
) -> (ClaimVerdict, Option<Decisive>) {
    if let Some(most) = claimed_most {
        let ends = (claimed, most);
        let verdict = match claim::judge_range(figure, ends).verdict {
            RangeVerdict::Inside => ClaimVerdict::Inside,
            RangeVerdict::OutsideBelow => ClaimVerdict::OutsideBelow,
            RangeVerdict::OutsideAbove => ClaimVerdict::OutsideAbove,
            RangeVerdict::TooCloseToCall => ClaimVerdict::TooCloseToCall,
        };
        return (verdict, claim::decisive_range(figure, ends));
    }
    let held = claim::Claim {
        value: claimed,
        tolerance: claim
            .tolerance_percent
            .map(|percent| claimed.abs() * percent / 100.0),
        better: match about {
            Claimed::Draw => Better::Lower,
            Claimed::Temperature => Better::Neither,
            _ => Better::Higher,
        },
    };
    let verdict = match claim::judge(figure, &held).verdict {
        Verdict::BeatsIt => ClaimVerdict::BeatsIt,
        Verdict::FallsShort => ClaimVerdict::FallsShort,
        Verdict::MeetsIt => ClaimVerdict::MeetsIt,
        Verdict::TooCloseToCall => ClaimVerdict::TooCloseToCall,
    };
    (verdict, claim::decisive(figure, &held))
}

/// None where there is no uncertainty at all.
fn shares(parts: &[Part]) -> Vec<PartShare> {
    let whole: f64 = parts.iter().map(|part| part.standard.powi(2)).sum();
    let mut shares: Vec<PartShare> = parts
        .iter()
        .filter(|_| whole > 0.0)
        .map(|part| PartShare {
            source: part.source,
            share_percent: 100.0 * part.standard.powi(2) / whole,
        })
        .collect();
    shares.sort_by(|a, b| b.share_percent.total_cmp(&a.share_percent));
    shares
}

/// The classes whose usual limit at this figure is small enough.
fn remedy(plan: &Plan, claim: &Claim, figure: &Measured, wanted: Decisive) -> Remedy {
    let enough = |class: &MeterClass| {
        let parts = meter::by_class(plan, claim, *class, figure.value).unwrap_or_default();
        let squares: f64 = parts.iter().map(|part| part.standard.powi(2)).sum();
        let limit = wanted.meter_limit.unwrap_or(0.0);
        !parts.is_empty() && (3.0 * squares).sqrt() <= limit
    };
    let classes = MeterClass::ALL.iter().copied();
    Remedy {
        expanded: wanted.expanded,
        total_min: wanted.minutes.filter(|minutes| *minutes < 1e5),
        meter_limit: wanted.meter_limit,
        classes: classes
            .filter(|class| *class != MeterClass::Sheet)
            // It reads alternating current: of use only where it was used.
            .filter(|class| *class != MeterClass::WattMeter || claim.meter == Some(*class))
            .filter(enough)
            .collect(),
    }
}

/// Of Ah and Wh alone: nothing else hangs on rate and temperature.
fn is_lead_acid(plan: &Plan, claim: &Claim) -> bool {
    let of_bank = matches!(claim.about_taken(), Claimed::Charge | Claimed::Energy);
    let bank = plan.banks.get(claim.bank);
    of_bank && bank.is_some_and(|bank| bank.chemistry.is_lead_acid())
}

/// A thermometer's limit on the battery, in kelvins: common practice, no source.
const TEST_LIMIT_K: f64 = 1.0;

/// A lead-acid figure at its rated rate and temperature, with the exponent's
/// and the thermometer's own spread among its parts.
fn correction(plan: &Plan, at: usize, figure: &Measured) -> Option<(Measured, Correction)> {
    let claim = &plan.claims[at];
    let bank = claim.bank;
    let exponent_path = Path::Bank(bank, B::PeukertExponent);
    let exponent = plan.figure(exponent_path)?;
    let rated_h = plan.number(Path::Bank(bank, B::RatedHoursH))?;
    let rating = Rating {
        over: hours(rated_h),
        at: celsius(plan.number(Path::Claim(at, C::RatedC))?),
        peukert: exponent.value,
    };
    let under = Conditions {
        current: amps(claim.rate_a?),
        temperature: celsius(claim.test_c?),
    };
    let ah = match claim.about_taken() {
        Claimed::Energy => figure.value / plan.banks[bank].nominal_v(),
        _ => figure.value,
    };
    let corrected = lead_acid::correct(amp_hours(ah), &under, &rating)?;
    let mut better = lead_acid::scale(figure, &corrected);
    // d ln(by_rate) / dk = ln(H / t) / k^2, and by_rate = (H / t)^(1 - 1/k).
    let k = exponent.value;
    let of_k = if k > 1.0 {
        corrected.by_rate.ln() / (k * (k - 1.0))
    } else {
        0.0
    };
    let spread_k = spread::percent_of(exponent_path, exponent) / 200.0 * k;
    let of_t = corrected.per_kelvin * corrected.by_temperature * TEST_LIMIT_K / 3f64.sqrt();
    for share in [of_k * spread_k, of_t] {
        let standard = (better.value * share).abs();
        better.parts.push(Part::fixed(Source::Correction, standard));
    }
    let what = Correction {
        as_measured: figure.value,
        by_temperature: corrected.by_temperature,
        by_rate: corrected.by_rate,
    };
    Some((better, what))
}
