//! Words of what is handed on: tables, figures, the report, the section itself.

use super::{
    Formatter, bank_in_words, full_mode_name, labels, m, run_detail, run_sentence, unit_name,
};
use crate::{
    answer::RunAnswer,
    plan::{Feed, Figure, Path, Plan, Provenance, claims::Claimed},
    range::Unit,
    text::value::Text,
};

/// Heads of the table of runs.
#[must_use]
pub fn run_heads(f: Formatter) -> [&'static str; 14] {
    [
        f.say(m::HandOnHeadMode),
        f.say(m::HandOnHeadUnitName),
        f.say(m::HandOnHeadBank),
        f.say(m::HandOnHeadLikely),
        f.say(m::HandOnHeadLow),
        f.say(m::HandOnHeadHigh),
        f.say(m::HandOnHeadUntil),
        f.say(m::HandOnHeadEnd),
        f.say(m::HandOnHeadMeanPower),
        f.say(m::HandOnHeadMeanCurrent),
        f.say(m::HandOnHeadDrawnAh),
        f.say(m::HandOnHeadDrawnWh),
        f.say(m::HandOnHeadUnitWh),
        f.say(m::HandOnHeadLostWh),
    ]
}

/// Heads of the table of runs in the report, where room is short.
#[must_use]
pub fn report_run_heads(f: Formatter) -> [&'static str; 5] {
    [
        f.say(m::HandOnHeadMode),
        f.say(m::HandOnHeadHours),
        f.say(m::HandOnHeadRange),
        f.say(m::HandOnHeadUntil),
        f.say(m::HandOnHeadEnd),
    ]
}

/// Heads of the day's table.
#[must_use]
pub fn moment_heads(f: Formatter) -> [String; 14] {
    let unit = f.sign(Unit::Celsius);
    [
        f.say(m::HandOnHeadAfterStart).into(),
        f.say(m::HandOnHeadClock).into(),
        f.say(m::HandOnHeadCharge).into(),
        f.say(m::HandOnHeadVolts).into(),
        f.say(m::HandOnHeadAmpsOut).into(),
        f.say(m::HandOnHeadCabin { unit }),
        f.say(m::HandOnHeadOutdoors { unit }),
        f.say(m::HandOnHeadHumidity).into(),
        f.say(m::HandOnHeadPanels).into(),
        f.say(m::HandOnHeadChargers).into(),
        f.say(m::HandOnHeadLoads).into(),
        f.say(m::HandOnHeadUnitPower).into(),
        f.say(m::HandOnHeadCooling).into(),
        f.say(m::HandOnHeadMode).into(),
    ]
}

/// Heads of the table of days.
#[must_use]
pub fn day_heads(f: Formatter) -> [String; 11] {
    let unit = f.sign(Unit::Celsius);
    [
        f.say(m::HandOnHeadDay).into(),
        f.say(m::HandOnHeadDayPanels).into(),
        f.say(m::HandOnHeadDayChargers).into(),
        f.say(m::HandOnHeadDayLoads).into(),
        f.say(m::HandOnHeadDayUnit).into(),
        f.say(m::HandOnHeadLeast).into(),
        f.say(m::HandOnHeadAtEnd).into(),
        f.say(m::HandOnHeadWarmest { unit }),
        f.say(m::HandOnHeadOff).into(),
        f.say(m::HandOnHeadUnitOff).into(),
        f.say(m::HandOnHeadAbove).into(),
    ]
}

/// Heads of the tables of the air side and of the price.
#[must_use]
pub fn row_heads(f: Formatter) -> [&'static str; 4] {
    [
        f.say(m::HandOnHeadWhat),
        f.say(m::HandOnHeadValue),
        f.say(m::HandOnHeadUnit),
        f.say(m::HandOnHeadUncertainty),
    ]
}

/// Heads of the table of claims.
#[must_use]
pub fn claim_heads(f: Formatter) -> [&'static str; 9] {
    [
        f.say(m::HandOnHeadClaim),
        f.say(m::HandOnHeadAbout),
        f.say(m::HandOnHeadClaimed),
        f.say(m::HandOnHeadClaimedMost),
        f.say(m::HandOnHeadMeasured),
        f.say(m::HandOnHeadUncertainty),
        f.say(m::HandOnHeadShare),
        f.say(m::HandOnHeadVerdict),
        f.say(m::HandOnHeadWhyNone),
    ]
}

/// Heads of the table of what was asked.
#[must_use]
pub fn size_heads(f: Formatter) -> [&'static str; 6] {
    [
        f.say(m::HandOnHeadBank),
        f.say(m::HandOnHeadMode),
        f.say(m::HandOnHeadWanted),
        f.say(m::HandOnHeadWhat),
        f.say(m::HandOnHeadValue),
        f.say(m::HandOnHeadUnit),
    ]
}

/// Heads of the plan's table.
#[must_use]
pub fn plan_heads(f: Formatter) -> [&'static str; 8] {
    [
        f.say(m::HandOnHeadPart),
        f.say(m::HandOnHeadWhat),
        f.say(m::HandOnHeadValue),
        f.say(m::HandOnHeadUnit),
        f.say(m::HandOnHeadOrigin),
        f.say(m::HandOnHeadSpread),
        f.say(m::HandOnHeadStated),
        f.say(m::HandOnHeadKey),
    ]
}

/// What a claim is about, with its unit.
#[must_use]
pub fn claimed_name(f: Formatter, about: Claimed) -> String {
    let unit = f.sign(about.range().unit);
    match about {
        Claimed::Charge => f.say(m::HandOnClaimedCharge { unit }),
        Claimed::Energy => f.say(m::HandOnClaimedEnergy { unit }),
        Claimed::Draw => f.say(m::HandOnClaimedDraw { unit }),
        Claimed::Airflow => f.say(m::HandOnClaimedAirflow { unit }),
        Claimed::Temperature => f.say(m::HandOnClaimedTemperature { unit }),
        Claimed::Cooling => f.say(m::HandOnClaimedCooling { unit }),
        Claimed::Eer => f.say(m::HandOnClaimedEer).into(),
    }
}

/// Who worked it out, and by which version of the method.
#[must_use]
pub fn made_with(f: Formatter, method: &str) -> String {
    f.say(m::HandOnMadeWith {
        page: f.say(m::NameOfPage),
        method,
    })
}

/// A column's name: hours along a night are counted, not told by the clock.
#[must_use]
pub fn column(f: Formatter, label: &str, text: Text) -> String {
    match text {
        Text::Hours | Text::Clock { .. } | Text::DayClock(_) if label == f.say(m::AxisClock) => {
            f.say(m::HandOnHeadAfterStart).into()
        }
        _ => label.into(),
    }
}

/// The run that leads, in sentences that stand alone in any post.
#[must_use]
pub fn sentence(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let depth = plan.number(Path::Bank(
        run.bank,
        crate::plan::path::BankField::DepthPercent,
    ));
    let bank = bank_in_words(f, plan, run.bank);
    let chemistry = plan.banks.get(run.bank).map_or("", |bank| {
        let name = labels::chemistry_name(f, bank.chemistry);
        name.split(" (").next().unwrap_or(name)
    });
    let run_text = run_sentence(f, plan, run);
    let detail = run_detail(f, run);
    let said = match depth {
        Some(depth) => f.say(m::HandOnSentence {
            run: run_text,
            bank,
            chemistry,
            depth: f.percent(depth),
            detail,
        }),
        None => f.say(m::HandOnSentenceNoDepth {
            run: run_text,
            bank,
            chemistry,
            detail,
        }),
    };
    said.trim_end().into()
}

/// The clock time at which a run is over, and the day where it is not plain.
#[must_use]
pub fn until(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let (start, hours) = (plan.night.start_clock_min, run.hours_h.likely);
    let clock = f.clock_after(start, hours);
    if hours < super::WITHIN_A_DAY_H {
        return clock;
    }
    // The day of the time that is shown: to ten minutes.
    let minutes = ((f64::from(start) + hours * 60.0) / 10.0).round() * 10.0;
    f.say(m::HandOnUntil {
        days: (minutes / 1440.0).floor(),
        clock,
    })
}

/// From the low to the high end of the spread.
#[must_use]
pub fn from_to(f: Formatter, run: &RunAnswer) -> String {
    let (low, high) = f.duration_range(run.hours_h.low, run.hours_h.high);
    f.say(m::HandOnFromTo { low, high })
}

/// The length of a link, for those who paste it somewhere narrow.
#[must_use]
pub fn link_length(f: Formatter, characters: usize) -> String {
    f.say(m::HandOnLinkLength { characters })
}

/// What a file of this name and kind is called on its button, for those who do
/// not see what stands beside it.
#[must_use]
pub fn save_as(f: Formatter, title: &str, kind: &str) -> String {
    f.say(m::HandOnSaveAs { title, kind })
}

#[must_use]
pub fn saved(f: Formatter, name: &str) -> String {
    f.say(m::HandOnSaved { name })
}

/// Which part of the plan a number belongs to.
#[must_use]
pub fn part_of(f: Formatter, plan: &Plan, path: Path) -> String {
    let numbered = |at: usize| (at + 1).to_string();
    match path {
        Path::Bank(bank, _) | Path::OpenCircuit(bank) => bank_in_words(f, plan, bank),
        Path::Unit(unit, _)
        | Path::Modes(unit)
        | Path::Cooling(unit, _)
        | Path::UnitMap(unit)
        | Path::MapRow(unit, ..) => unit_name(f, plan, unit),
        Path::Mode(unit, mode, _) => full_mode_name(f, plan, unit, mode),
        Path::Load(load) => plan
            .loads
            .get(load)
            .map_or("", |load| load.name.trim())
            .into(),
        Path::Night(_) => f.say(m::HandOnPartNight).into(),
        Path::Day(_) | Path::ModeRow(..) | Path::CheckIn(..) => f.say(m::QuestionDay).into(),
        Path::Cabin(_) => f.say(m::HandOnPartCabin).into(),
        Path::Array(array, _) => f.say(m::HandOnPartPanels {
            number: numbered(array),
        }),
        Path::Charger(charger, _) => f.say(m::HandOnPartCharger {
            number: numbered(charger),
        }),
        Path::Supply(_) => f.say(m::HandOnPartSupply).into(),
        Path::Claim(claim, _) => match plan.claims.get(claim).map(|claim| claim.name.trim()) {
            Some(name) if !name.is_empty() => name.into(),
            _ => f.say(m::HandOnPartClaim {
                number: numbered(claim),
            }),
        },
        Path::Air(_) => f.say(m::HandOnPartAir).into(),
        Path::Price(_) => f.say(m::HandOnPartPrice).into(),
        Path::Wiring(_) => f.say(m::QuestionWiring).into(),
        Path::Installation(circuit, _) => super::wiring::circuit_name(f, circuit).into(),
        _ => String::new(),
    }
}

/// A field with its number and where that came from: `Health 95 % (measured ±3 %)`.
#[must_use]
pub fn plan_line(f: Formatter, plan: &Plan, path: Path, figure: Figure) -> String {
    let unit = path.range().map_or(Unit::Number, |range| range.unit);
    let label = super::field_label(f, path);
    // No finer than it is known.
    let is_rough = matches!(figure.from, Provenance::Guess | Provenance::Assumed);
    let value = match unit {
        Unit::Count | Unit::Number | Unit::ClockMinute | Unit::Hour => {
            f.stated_value(figure.value, unit)
        }
        _ if is_rough && figure.value.abs() >= 0.1 => f.value(figure.value, unit),
        _ => f.stated_value(figure.value, unit),
    };
    if plan.has_origin(path) {
        format!("{label} {value} ({})", labels::origin_mark(f, path, figure))
    } else {
        format!("{label} {value}")
    }
}

/// How a unit is fed.
#[must_use]
pub fn feed_name(f: Formatter, feed: &Feed) -> &'static str {
    match feed {
        Feed::Direct => f.say(m::HandOnFeedDirect),
        Feed::DcDc { .. } => f.say(m::HandOnFeedDc),
        Feed::Inverter { .. } => f.say(m::HandOnFeedInverter),
    }
}

/// The same as a line of the report.
#[must_use]
pub fn fed(f: Formatter, feed: &Feed) -> String {
    f.say(m::HandOnFed {
        how: feed_name(f, feed),
    })
}

/// A report's title: the plan's own, or what it is about.
#[must_use]
pub fn report_title(f: Formatter, plan: &Plan) -> String {
    match plan.title.trim() {
        "" => f.say(m::HandOnReportTitle).into(),
        title => title.into(),
    }
}
