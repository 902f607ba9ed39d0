//! Verdicts, in words, and what they rest on.

use super::{
    figures::{measured_alone, stated_text, uncertainty_text},
    report::share_text,
};
use crate::{
    answer::claims::{
        ClaimAnswer, ClaimVerdict, ClaimsAnswer, Missing,
        verdict::{Remedy, measured_value},
    },
    physics::bench::measured::Source,
    plan::{
        Claim, Path, Plan,
        claims::{Claimed, EndBy, FullBy, MeterClass},
    },
    range::{Range, Unit},
    text::{Formatter, m},
};

/// What a claim is about.
#[must_use]
pub fn about_name(f: Formatter, about: Claimed) -> &'static str {
    match about {
        Claimed::Charge => f.say(m::ClaimsAboutCharge),
        Claimed::Energy => f.say(m::ClaimsAboutEnergy),
        Claimed::Draw => f.say(m::ClaimsAboutDraw),
        Claimed::Airflow => f.say(m::ClaimsAboutAirflow),
        Claimed::Temperature => f.say(m::ClaimsAboutTemperature),
        Claimed::Cooling => f.say(m::ClaimsAboutCooling),
        Claimed::Eer => f.say(m::ClaimsAboutEer),
    }
}

/// A verdict in our words, or why there is none.
#[must_use]
pub fn verdict_text(f: Formatter, answer: &ClaimAnswer) -> String {
    match answer.verdict {
        ClaimVerdict::BeatsIt => f.say(m::ClaimsBeatsIt),
        ClaimVerdict::FallsShort => f.say(m::ClaimsFallsShort),
        ClaimVerdict::MeetsIt => f.say(m::ClaimsMeetsIt),
        ClaimVerdict::TooCloseToCall => f.say(m::ClaimsTooClose),
        ClaimVerdict::NotJudged => return not_judged(f, answer.missing),
        ClaimVerdict::Inside => f.say(m::ClaimsInside),
        ClaimVerdict::OutsideBelow => f.say(m::ClaimsBelow),
        ClaimVerdict::OutsideAbove => f.say(m::ClaimsAbove),
    }
    .into()
}

/// That there is no verdict, and why in a few words.
fn not_judged(f: Formatter, missing: Option<Missing>) -> String {
    let why = match missing {
        None => return f.say(m::ClaimsNotJudged).into(),
        Some(Missing::Meter) => f.say(m::ClaimsLacksMeter),
        Some(Missing::Limits) => f.say(m::ClaimsLacksLimits),
        Some(Missing::RateOrMinutes) => f.say(m::ClaimsLacksRate),
        Some(Missing::FreeArea) => f.say(m::ClaimsLacksFreeArea),
        Some(Missing::MeterOfThatKind) => f.say(m::ClaimsLacksRightMeter),
        Some(Missing::Bank) => f.say(m::ClaimsLacksBank),
        Some(Missing::LeadAcidConditions) => f.say(m::ClaimsLacksConditions),
    };
    f.say(m::ClaimsNotJudgedBecause { why })
}

/// What to enter, so that there is a verdict.
#[must_use]
pub fn missing_sentence(f: Formatter, missing: Missing) -> &'static str {
    match missing {
        Missing::Meter => f.say(m::ClaimsLacksMeterAdvice),
        Missing::Limits => f.say(m::ClaimsLacksLimitsAdvice),
        Missing::RateOrMinutes => f.say(m::ClaimsLacksRateAdvice),
        Missing::FreeArea => f.say(m::ClaimsLacksFreeAreaAdvice),
        Missing::MeterOfThatKind => f.say(m::ClaimsLacksRightMeterAdvice),
        Missing::Bank => f.say(m::ClaimsLacksBankAdvice),
        Missing::LeadAcidConditions => f.say(m::ClaimsLacksConditionsAdvice),
    }
}

/// A kind of meter.
#[must_use]
pub fn class_name(f: Formatter, class: MeterClass) -> &'static str {
    match class {
        MeterClass::Clamp => f.say(m::ClaimsClassClamp),
        MeterClass::Shunt => f.say(m::ClaimsClassShunt),
        MeterClass::Multimeter => f.say(m::ClaimsClassMultimeter),
        MeterClass::WattMeter => f.say(m::ClaimsClassWattMeter),
        MeterClass::Vane => f.say(m::ClaimsClassVane),
        MeterClass::Thermometer => f.say(m::ClaimsClassThermometer),
        MeterClass::Hygrometer => f.say(m::ClaimsClassHygrometer),
        MeterClass::Sheet => f.say(m::ClaimsClassSheet),
    }
}

/// By what the bank was called full.
#[must_use]
pub fn full_by_name(f: Formatter, full: FullBy) -> &'static str {
    match full {
        FullBy::ChargerDone => f.say(m::ClaimsFullCharger),
        FullBy::VoltsHeld => f.say(m::ClaimsFullVolts),
        FullBy::MonitorSaid => f.say(m::ClaimsFullMonitor),
    }
}

/// What ended the run.
#[must_use]
pub fn end_by_name(f: Formatter, end: EndBy) -> &'static str {
    match end {
        EndBy::BatteryCutOff => f.say(m::ClaimsEndBms),
        EndBy::UnitCutOff => f.say(m::ClaimsEndUnit),
        EndBy::VoltsReached => f.say(m::ClaimsEndVolts),
        EndBy::ByHand => f.say(m::ClaimsEndHand),
    }
}

/// The answer in one sentence, or two where there are several claims.
#[must_use]
pub fn headline(f: Formatter, plan: &Plan, answer: &ClaimsAnswer) -> String {
    let Some(first) = answer.claims.first() else {
        return not_yet(f, plan);
    };
    let claim = claim_title(f, plan, first);
    let measured = measured_alone(f, plan, first);
    let verdict = verdict_text(f, first);
    let one = match first.share_percent {
        Some(share) => f.say(m::ClaimsAnswerShare {
            claim,
            measured,
            share: share_text(f, share),
            verdict,
        }),
        None => f.say(m::ClaimsAnswer {
            claim,
            measured,
            verdict,
        }),
    };
    let count = answer.claims.len();
    if count == 1 {
        return one;
    }
    let all = count.to_string();
    let decided = answer.claims.iter().filter(|claim| is_decided(claim));
    let how_many = match decided.count() {
        0 => f.say(m::ClaimsDecidedNone { all }),
        decided => f.say(m::ClaimsDecided { decided, all }),
    };
    format!("{one} {how_many}")
}

fn is_decided(claim: &ClaimAnswer) -> bool {
    !matches!(
        claim.verdict,
        ClaimVerdict::TooCloseToCall | ClaimVerdict::NotJudged
    )
}

/// What to do next where no claim can be held against a figure yet.
fn not_yet(f: Formatter, plan: &Plan) -> String {
    let Some(claim) = plan.claims.first() else {
        return f.say(m::ClaimsNone).into();
    };
    let [low, high, _] = claim.about_taken().fields();
    let claimed = [low, high].map(|field| plan.stated(Path::Claim(0, field)));
    let claimed = claimed.iter().any(Option::is_some);
    let has_measured = measured_value(claim).is_some();
    let claim = claim_number(f, 0);
    match (claimed, has_measured) {
        (false, false) => f.say(m::ClaimsEnterBoth { claim }),
        (false, true) => f.say(m::ClaimsEnterClaimed { claim }),
        (true, false) => f.say(m::ClaimsEnterMeasured { claim }),
        (true, true) => f.say(m::ClaimsEnterValid { claim }),
    }
}

/// A claim's own name, and what it is about.
#[must_use]
pub fn claim_title(f: Formatter, plan: &Plan, answer: &ClaimAnswer) -> String {
    match plan.claims.get(answer.claim) {
        Some(claim) if !claim.name.is_empty() => {
            format!("{} ({})", claim.name, about_name(f, answer.about))
        }
        _ => about_name(f, answer.about).into(),
    }
}

/// The conditions of the test, as a lab report has them.
#[must_use]
pub fn conditions(f: Formatter, claim: &Claim, answer: &ClaimAnswer) -> String {
    let mut all = Vec::new();
    if answer.from_air {
        all.push(f.say(m::ClaimsFromAir).into());
    }
    let count = claim.runs.len();
    if count > 1 {
        all.push(f.say(m::ClaimsMeanOfRuns { count }));
    }
    all.extend(claim.measured_min.map(|min| {
        let duration = f.duration(min / 60.0);
        f.say(m::ClaimsForDuration { duration })
    }));
    all.extend(claim.rate_a.map(|amps| {
        let current = f.with_unit(amps, "A");
        f.say(m::ClaimsAtCurrent { current })
    }));
    all.extend(claim.test_c.map(|at_c| {
        let temperature = f.value(at_c, Unit::Celsius);
        f.say(m::ClaimsAtTemperature { temperature })
    }));
    all.extend(claim.full_by.map(|full| {
        let by = full_by_name(f, full);
        f.say(m::ClaimsFullCharge { by })
    }));
    all.extend(claim.end_by.map(|end| {
        let by = end_by_name(f, end);
        f.say(m::ClaimsRunEnd { by })
    }));
    all.extend(claim.meter.map(|class| {
        let meter = class_name(f, class);
        f.say(m::ClaimsReadWith { meter })
    }));
    all.extend(answer.corrected.map(|by| {
        f.say(m::ClaimsCorrected {
            measured: stated_text(f, answer.about, by.as_measured),
            temperature: f.fixed(by.by_temperature, 3),
            rate: f.fixed(by.by_rate, 3),
        })
    }));
    if all.is_empty() {
        return f.say(m::ClaimsNoConditions).into();
    }
    let conditions = all.join("; ");
    f.say(m::ClaimsConditions { conditions })
}

/// What limits a figure most.
#[must_use]
pub fn limited_sentence(f: Formatter, claim: &Claim, answer: &ClaimAnswer) -> Option<String> {
    let first = answer.limited_by.first()?;
    let source = match first.source {
        Source::Meter if claim.meter.is_none() => f.say(m::ClaimsSourceStated),
        Source::Meter => f.say(m::ClaimsSourceMeter),
        Source::VoltMeter => f.say(m::ClaimsSourceVoltmeter),
        Source::Sampling => f.say(m::ClaimsSourceSampling),
        Source::Scatter => f.say(m::ClaimsSourceScatter),
        Source::Timing => f.say(m::ClaimsSourceTiming),
        Source::Correction => f.say(m::ClaimsSourceCorrection),
    };
    Some(f.say(m::ClaimsLimited {
        k: f.fixed(answer.coverage, 1),
        source,
        share: f.percent(first.share_percent),
    }))
}

/// What would decide it.
#[must_use]
pub fn decisive_sentence(f: Formatter, answer: &ClaimAnswer) -> Option<String> {
    let remedy = answer.decisive.as_ref()?;
    let below = uncertainty_text(f, answer.about, remedy.expanded);
    let ways = ways(f, answer.about, remedy);
    Some(if ways.is_empty() {
        f.say(m::ClaimsDecidedNotAlone { below })
    } else {
        let ways = f.one_of(&ways);
        f.say(m::ClaimsDecidedBelow { below, ways })
    })
}

/// Each that is enough by itself.
fn ways(f: Formatter, about: Claimed, remedy: &Remedy) -> Vec<String> {
    let mut ways = Vec::new();
    ways.extend(remedy.total_min.map(|min| {
        let duration = f.duration(min / 60.0);
        f.say(m::ClaimsWayTime { duration })
    }));
    ways.extend(
        remedy
            .meter_limit
            .map(|limit| match remedy.classes.first() {
                Some(class) => {
                    let meter = class_name(f, *class);
                    f.say(m::ClaimsWayClass { meter })
                }
                None => {
                    let limit = uncertainty_text(f, about, limit);
                    f.say(m::ClaimsWayLimit { limit })
                }
            }),
    );
    ways
}

/// The heading of a claim's card.
#[must_use]
pub fn claim_number(f: Formatter, at: usize) -> String {
    f.say(m::ClaimsNumber {
        number: super::place(at),
    })
}

/// Why several numbers in one text are not taken.
#[must_use]
pub fn list_bad(f: Formatter, range: Range) -> String {
    let accepted = f.accepted(range);
    f.say(m::ClaimsListBad { accepted })
}

/// A number as it may be typed back.
#[must_use]
pub fn plainly(value: f64) -> String {
    let text = crate::plan::entry::fixed(value, 4);
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').into(),
        false => text,
    }
}
