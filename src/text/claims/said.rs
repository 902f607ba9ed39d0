//! Verdicts, budgets and what to measure next, in words.

use crate::text::Formatter;
use crate::{
    answer::{
        NoPocket, Pocket, PocketOutcome,
        claims::{
            AirAnswer, AirRefusal, ClaimAnswer, ClaimVerdict, ClaimsAnswer, How, Missing,
            MoneyAnswer, ToMeasure, air::AirInputRead, verdict::measured_value,
        },
    },
    physics::bench::measured::Source,
    plan::{
        Claim, Path, Plan,
        claims::{Claimed, EndBy, FullBy, MeterClass},
    },
    range::{Range, Unit},
    text::{
        chemistry_name,
        claims::figures::{figure_text, measured_alone, stated_text, uncertainty_text},
        field_label, full_mode_name,
    },
};

/// What a claim is about.
#[must_use]
pub fn about_name(_f: Formatter, about: Claimed) -> &'static str {
    match about {
        Claimed::Charge => "Capacity in Ah",
        Claimed::Energy => "Energy in Wh",
        Claimed::Draw => "Draw",
        Claimed::Airflow => "Airflow",
        Claimed::Temperature => "Temperature",
        Claimed::Cooling => "Cooling",
        Claimed::Eer => "EER (Btu for each Wh)",
    }
}

/// A verdict in our words, or why there is none.
#[must_use]
pub fn verdict_text(f: Formatter, answer: &ClaimAnswer) -> String {
    match answer.verdict {
        ClaimVerdict::BeatsIt => "beats it",
        ClaimVerdict::FallsShort => "falls short",
        ClaimVerdict::BearsItOut => "bears it out",
        ClaimVerdict::TooCloseToCall => "too close to call",
        ClaimVerdict::NotJudged => return not_judged(f, answer.missing),
        ClaimVerdict::Inside => "inside the claimed range",
        ClaimVerdict::OutsideBelow => "below the claimed range",
        ClaimVerdict::OutsideAbove => "above the claimed range",
    }
    .into()
}

/// That there is no verdict, and why in a few words.
pub(in crate::text) fn not_judged(_f: Formatter, missing: Option<Missing>) -> String {
    let why = match missing {
        None => return "not judged".into(),
        Some(Missing::Meter) => "no meter named",
        Some(Missing::Limits) => "no limits of the meter given",
        Some(Missing::RateOrMinutes) => "neither current nor time of the run given",
        Some(Missing::FreeArea) => "free area of the grille not given",
        Some(Missing::MeterOfThatKind) => "that meter does not read this",
        Some(Missing::Bank) => "its bank is not in the plan",
        Some(Missing::LeadAcidConditions) => "current and temperature of the run not given",
    };
    format!("not judged: {why}")
}

/// A kind of meter.
#[must_use]
pub fn class_name(_f: Formatter, class: MeterClass) -> &'static str {
    match class {
        MeterClass::Clamp => "clamp meter",
        MeterClass::Shunt => "battery monitor with a shunt of class 0.5",
        MeterClass::Multimeter => "multimeter",
        MeterClass::WattMeter => "plug-in watt meter",
        MeterClass::Vane => "handheld vane meter",
        MeterClass::Thermometer => "thermometer",
        MeterClass::Hygrometer => "hygrometer",
        MeterClass::Sheet => "limits by its sheet",
    }
}

/// What was called full.
#[must_use]
pub fn full_by_name(_f: Formatter, full: FullBy) -> &'static str {
    match full {
        FullBy::ChargerDone => "full when the charger was done",
        FullBy::VoltsHeld => "full when the charging volts had been held",
        FullBy::MonitorSaid => "full by the monitor",
    }
}

/// What ended the run.
#[must_use]
pub fn end_by_name(_f: Formatter, end: EndBy) -> &'static str {
    match end {
        EndBy::BatteryCutOff => "until the battery’s own cut-off",
        EndBy::UnitCutOff => "until the unit’s cut-off",
        EndBy::VoltsReached => "until a set voltage",
        EndBy::ByHand => "stopped by hand",
    }
}

/// The answer in one sentence.
#[must_use]
pub fn headline(f: Formatter, plan: &Plan, answer: &ClaimsAnswer) -> String {
    let Some(first) = answer.claims.first() else {
        return not_yet(f, plan);
    };
    let decided = |c: &&ClaimAnswer| {
        !matches!(
            c.verdict,
            ClaimVerdict::TooCloseToCall | ClaimVerdict::NotJudged
        )
    };
    let share = first.share_percent.map_or_else(String::new, |share| {
        format!(", {}\u{202f}% of the claim", f.fixed(share, 1))
    });
    let one = format!(
        "{}: {} measured{share}: {}.",
        claim_title(f, plan, first),
        measured_alone(f, plan, first),
        verdict_text(f, first),
    );
    match answer.claims.len() {
        1 => one,
        all => match answer.claims.iter().filter(decided).count() {
            0 => format!("{one} None of the {all} claims can be called yet."),
            called => format!("{one} Of {all} claims, {called} can be called."),
        },
    }
}

/// What to do next where no claim can be held against a figure yet.
fn not_yet(f: Formatter, plan: &Plan) -> String {
    let Some(claim) = plan.claims.first() else {
        return "Nothing is claimed yet: drop a log here, or type a claim and what you measured."
            .into();
    };
    let [low, high, _] = claim.about_taken().fields();
    let claimed = [low, high].map(|field| plan.stated(Path::Claim(0, field)));
    let claimed = claimed.iter().any(Option::is_some);
    let missing = match (claimed, measured_value(claim).is_some()) {
        (false, false) => "what is claimed, and what you measured",
        (false, true) => "what is claimed",
        (true, false) => "what you measured",
        (true, true) => "numbers within their ranges",
    };
    format!("{}: type {missing}.", claim_number(f, 0))
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
        all.push("worked out from the air side below".into());
    }
    if claim.runs.len() > 1 {
        all.push(format!("mean of {} runs", claim.runs.len()));
    }
    all.extend(
        claim
            .measured_min
            .map(|min| format!("over {}", f.duration(min / 60.0))),
    );
    all.extend(claim.rate_a.map(|a| format!("at {}", f.with_unit(a, "A"))));
    all.extend(
        claim
            .test_c
            .map(|c| format!("at {}", f.value(c, Unit::Celsius))),
    );
    all.extend(claim.full_by.map(|full| full_by_name(f, full).to_owned()));
    all.extend(claim.end_by.map(|end| end_by_name(f, end).to_owned()));
    all.extend(claim.meter.map(|m| format!("read by {}", class_name(f, m))));
    if let Some(by) = answer.corrected {
        all.push(format!(
            "measured {}, corrected for temperature by {} and for rate by {}",
            stated_text(f, answer.about, by.as_measured),
            f.fixed(by.by_temperature, 3),
            f.fixed(by.by_rate, 3)
        ));
    }
    if all.is_empty() {
        return "No conditions are stated.".into();
    }
    let mut text = all.join(", ");
    text.push('.');
    if let Some(first) = text.get(..1) {
        text = format!("{}{}", first.to_ascii_uppercase(), &text[1..]);
    }
    text
}

/// Why no accuracy can be given.
#[must_use]
pub fn missing_sentence(_f: Formatter, missing: Missing) -> &'static str {
    match missing {
        Missing::Meter => "Say what it was read by: without a meter there is no verdict.",
        Missing::Limits => "Give at least one limit from the meter’s sheet.",
        Missing::RateOrMinutes => {
            "Give the mean current of the run or how long it took: the meter’s limits depend on it."
        }
        Missing::FreeArea => "Give the free area of the grille: the vane reads speed, not flow.",
        Missing::MeterOfThatKind => "That meter does not read this quantity. Pick another.",
        Missing::Bank => "The bank that it is of is not in the plan.",
        Missing::LeadAcidConditions => {
            "Lead-acid: give the mean current and the battery’s temperature, to bring it to its rated conditions first."
        }
    }
}

/// What limits a figure most.
#[must_use]
pub fn limited_sentence(f: Formatter, claim: &Claim, answer: &ClaimAnswer) -> String {
    let Some(first) = answer.limited_by.first() else {
        return String::new();
    };
    let what = match first.source {
        Source::Meter if claim.meter.is_none() => {
            "the spread stated with it (of a log: its meter, and what gaps may hold)"
        }
        Source::Meter => "the meter",
        Source::VoltMeter => "the meter of volts",
        Source::Sampling => "how seldom it was logged",
        Source::Scatter => "how the runs differ",
        Source::Timing => "when it began and ended",
        Source::Correction => "the correction to rated conditions",
    };
    format!(
        "Uncertainty (k = {}) comes {} from {what}.",
        f.fixed(answer.coverage, 1),
        if first.share_percent > 99.5 {
            "all".into()
        } else {
            f.percent(first.share_percent)
        }
    )
}

/// What would decide it.
#[must_use]
pub fn decisive_sentence(f: Formatter, answer: &ClaimAnswer) -> String {
    let Some(remedy) = &answer.decisive else {
        return String::new();
    };
    let mut ways = Vec::new();
    ways.extend(
        remedy
            .total_min
            .map(|min| format!("measuring {} in all", f.duration(min / 60.0))),
    );
    match (remedy.meter_limit, remedy.classes.first()) {
        (Some(_), Some(class)) => ways.push(format!("a {} read well", class_name(f, *class))),
        (Some(limit), None) => ways.push(format!(
            "a meter good to ±{}",
            uncertainty_text(f, answer.about, limit)
        )),
        (None, _) => {}
    }
    let below = uncertainty_text(f, answer.about, remedy.expanded);
    if ways.is_empty() {
        format!(
            "It would be decided below ±{below}; neither time nor a better meter alone does it."
        )
    } else {
        format!(
            "It would be decided below ±{below}: {} does it.",
            ways.join(", or ")
        )
    }
}

/// Cooling from the air side.
#[must_use]
pub fn air_sentence(f: Formatter, air: &AirAnswer) -> String {
    let what = if air.sensible_only {
        "Sensible cooling only (humidity was not read at both faces; on a wet coil this can miss more than half):"
    } else {
        "Total cooling:"
    };
    let efficiency = match (air.cop, air.btu_per_wh) {
        (Some(cop), Some(eer)) => {
            format!(" COP {}, EER {}.", f.fixed(cop, 2), f.fixed(eer, 1))
        }
        _ => String::new(),
    };
    let limit = air.budget.first().map_or_else(String::new, |row| {
        format!(
            " What limits it: {}, {} of the uncertainty.",
            budget_name(f, row.by),
            f.percent(row.share_percent)
        )
    });
    format!(
        "{what} {} ±{}.{efficiency}{limit}",
        figure_text(f, Claimed::Cooling, air.cooling_w),
        uncertainty_text(f, Claimed::Cooling, air.expanded_w),
    )
}

/// A reading of the air side.
#[must_use]
pub fn budget_name(_f: Formatter, by: AirInputRead) -> &'static str {
    match by {
        AirInputRead::Flow => "airflow",
        AirInputRead::FreeArea => "free area",
        AirInputRead::InletTemperature => "temperature going in",
        AirInputRead::InletHumidity => "humidity going in",
        AirInputRead::OutletTemperature => "temperature coming out",
        AirInputRead::OutletHumidity => "humidity coming out",
        AirInputRead::Pressure => "air pressure",
    }
}

/// Why the air side gives nothing.
#[must_use]
pub fn air_refusal(_f: Formatter, refusal: AirRefusal) -> &'static str {
    match refusal {
        AirRefusal::NoTemperatures => "Both temperatures are needed: going in and coming out.",
        AirRefusal::NoFlow => "An airflow is needed, or vane readings and the grille’s free area.",
        AirRefusal::OutOfRange => "One of these numbers is outside what can be answered.",
        AirRefusal::TooWet => "Air cannot hold that much water: look at humidity and temperature.",
    }
}

/// What a watt-hour cost.
#[must_use]
pub fn money_sentence(f: Formatter, money: &MoneyAnswer) -> String {
    let life = match (money.per_lifetime_kwh, money.lifetime_kwh) {
        (Some(per), Some(kwh)) => format!(
            " Over its cycle life it would pass {} kWh, at {} a kWh.",
            f.fixed(kwh, 0),
            f.fixed(per, 2)
        ),
        _ => String::new(),
    };
    format!(
        "{} a measured Wh, {} a usable Wh, in the currency of the price.{life}",
        f.fixed(money.per_wh, 3),
        f.fixed(money.per_usable_wh, 3)
    )
}

/// One thing to measure, what it takes and what it brings.
#[must_use]
pub fn next_sentence(f: Formatter, plan: &Plan, next: &ToMeasure) -> String {
    let mode = full_mode_name(f, plan, next.unit, next.mode);
    let time = match next.takes_min {
        Some(min) if (min - 30.0).abs() < 1e-9 => "Half an hour".to_owned(),
        Some(min) => f.duration(min / 60.0),
        None => String::new(),
    };
    let what = match next.how {
        How::ClampReadings => format!("{time} of clamp readings"),
        How::WholeRun => format!("One logged run from full to its own end (about {time})"),
        How::TwoLoads => "Volts at two loads".into(),
        How::VoltsAtStop => "Noting the volts as it stops".into(),
        How::FillFirst => "Filling it by the charger first".into(),
        How::BothSides => format!("{time} of watts before and behind it"),
    };
    let left = next.band_then_h / next.band_now_h;
    let brings = if left <= 0.35 {
        "takes more than two thirds off the spread"
    } else if left <= 0.6 {
        "about halves the spread"
    } else if left <= 0.85 {
        "narrows the spread by a quarter or so"
    } else {
        "narrows the spread a little"
    };
    format!(
        "{}: {} of the spread of {mode}. {what} {brings}, from {} to {}.",
        field_label(f, next.field),
        f.percent(next.share_percent),
        f.duration(next.band_now_h),
        f.duration(next.band_then_h),
    )
}

/// The pocket formula of a mode, or why it has none.
#[must_use]
pub fn pocket_sentence(f: Formatter, plan: &Plan, pocket: &Pocket) -> String {
    let mode = full_mode_name(f, plan, pocket.unit, pocket.mode);
    let chemistry = plan
        .banks
        .get(pocket.bank)
        .map_or("", |bank| chemistry_name(f, bank.chemistry));
    // Without what stands in brackets: it stands in some itself.
    let chemistry = chemistry.split(" (").next().unwrap_or_default();
    match pocket.outcome {
        PocketOutcome::Holds(line) => format!(
            "{mode}: hours = {} × usable Wh (= {} × usable Ah at {}, {chemistry}); from {} to {} usable Wh, within {}\u{202f}%.",
            f.fixed(line.hours_per_wh, 5),
            f.fixed(line.hours_per_ah, 4),
            f.with_unit(line.nominal_v, "V"),
            f.plain(line.least_wh),
            f.plain(line.most_wh),
            f.fixed(line.worst_error_percent, 1),
        ),
        PocketOutcome::Refused { because, .. } => {
            let why = match because {
                NoPocket::LeadAcid => {
                    "lead-acid gives more for each Ah from a larger bank, so one line cannot serve all sizes"
                }
                NoPocket::FixedStartCharge => "the bank does not start full",
                NoPocket::Sun => "the sun would give a share that hangs on the clock",
                NoPocket::Limits => "cut-offs or current limits end some sizes early",
                NoPocket::NothingUsable => "the bank has nothing to give",
            };
            format!("{mode}: no pocket formula, because {why}.")
        }
    }
}

/// A share in whole per cent.
#[must_use]
pub fn whole_percent(f: Formatter, share: f64) -> String {
    f.percent(share)
}

/// Watts.
#[must_use]
pub fn watts_text(f: Formatter, value: f64) -> String {
    f.with_unit(value, "W")
}

/// The heading of a claim's card.
#[must_use]
pub fn claim_number(_f: Formatter, at: usize) -> String {
    format!("Claim {}", at + 1)
}

/// Why several numbers in one text are not taken.
#[must_use]
pub fn list_bad(f: Formatter, range: Range) -> String {
    format!(
        "Give numbers with spaces between, each {}.",
        f.accepted(range)
    )
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
