//! Words of what is handed on: tables, figures, the report, the section itself.

use super::{
    bank_in_words, full_mode_name, labels, number::day_after, run_detail, run_sentence, unit_name,
    words,
};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{
        RunAnswer,
        claims::{ClaimAnswer, ClaimVerdict},
    },
    plan::{Feed, Figure, Path, Plan, claims::Claimed},
    range::Unit,
    text::value::Text,
};

/// Heads of the table of runs.
pub const RUN_HEADS: [&str; 14] = [
    "Mode",
    "Cooling unit",
    "Bank",
    "Hours, likely (h)",
    "Hours, low (h)",
    "Hours, high (h)",
    "Until about",
    "It ends",
    "Mean power at the bank (W)",
    "Mean current (A)",
    "Drawn from the bank (Ah)",
    "Drawn from the bank (Wh)",
    "Reaching the unit (Wh)",
    "Lost in the bank (Wh)",
];

/// Heads of the table of runs in the report, where room is short.
pub const REPORT_RUN_HEADS: [&str; 5] = ["Mode", "Hours", "From, to", "Until about", "It ends"];

/// What stands in a head for the unit of temperatures.
const CELSIUS: &str = "°C";

/// Heads of the day's table.
pub const MOMENT_HEADS: [&str; 14] = [
    "Hours after the start (h)",
    "Clock",
    "State of charge (%)",
    "Terminal voltage (V)",
    "Current out of the bank (A)",
    "Cabin (°C)",
    "Outdoors (°C)",
    "Humidity in the cabin (%)",
    "From the panels (W)",
    "From chargers (W)",
    "Loads (W)",
    "Cooling unit (W)",
    "Cooling given (W)",
    "Mode",
];

/// Heads of the table of days.
pub const DAY_HEADS: [&str; 11] = [
    "Day",
    "From the panels (Wh)",
    "From chargers (Wh)",
    "Loads (Wh)",
    "Cooling unit (Wh)",
    "Least charge (%)",
    "Charge at the end (%)",
    "Warmest cabin with a mode planned (°C)",
    "Without current (h)",
    "Unit alone stopped (h)",
    "Above the set point (h)",
];

/// Heads of the tables of the air side and of the price.
pub const ROW_HEADS: [&str; 4] = ["What", "Value", "Unit", "Uncertainty, k about 2"];

/// Heads of the table of claims.
pub const CLAIM_HEADS: [&str; 9] = [
    "Claim",
    "About",
    "Claimed",
    "Claimed at most",
    "Measured",
    "Uncertainty, k about 2",
    "Measured of claimed (%)",
    "Verdict",
    "Why there is no uncertainty",
];

/// What a claim is about, with its unit.
#[must_use]
pub fn claimed_name(f: Formatter, about: Claimed) -> String {
    let unit = about.range().unit;
    let what = match about {
        Claimed::Charge => "charge",
        Claimed::Energy => "energy",
        Claimed::Draw => "draw",
        Claimed::Airflow => "airflow",
        Claimed::Temperature => "temperature",
        Claimed::Cooling => "cooling",
        Claimed::Eer => return "energy efficiency ratio (BTU/Wh)".into(),
    };
    format!("{what} ({})", f.sign(unit))
}

/// Heads of a table whose temperatures are in the units shown.
#[must_use]
pub fn heads_in<const N: usize>(f: Formatter, heads: [&str; N]) -> [String; N] {
    heads.map(|head| head.replace(CELSIUS, f.sign(Unit::Celsius)))
}

/// A verdict, word for word, or why there is none.
#[must_use]
pub fn verdict_text(f: Formatter, judged: &ClaimAnswer) -> String {
    match judged.verdict {
        ClaimVerdict::BeatsIt => "beats it",
        ClaimVerdict::FallsShort => "falls short",
        ClaimVerdict::BearsItOut => "bears it out",
        ClaimVerdict::TooCloseToCall => "too close to call",
        ClaimVerdict::NotJudged => return super::claims::not_judged(f, judged.missing),
        ClaimVerdict::Inside => "inside",
        ClaimVerdict::OutsideBelow => "outside, below",
        ClaimVerdict::OutsideAbove => "outside, above",
    }
    .into()
}

/// Heads of the table of what was asked.
pub const SIZE_HEADS: [&str; 6] = ["Bank", "Mode", "Hours wanted (h)", "What", "Value", "Unit"];
pub const SIZE_BANK: [&str; 7] = [
    "just enough, new",
    "just enough, new",
    "with ageing and margin",
    "with ageing and margin",
    "batteries",
    "they run when new",
    "they run when aged",
];

/// Heads of the plan's table.
pub const PLAN_HEADS: [&str; 8] = [
    "Of",
    "What",
    "Value",
    "Unit",
    "Comes from",
    "Spread (%)",
    "Stated",
    "Key",
];

/// Who worked it out, and by which version of the method.
#[must_use]
pub fn made_with(f: Formatter, method: &str) -> String {
    format!(
        "{}, method {method}. Estimates are not guarantees.",
        f.say(m::NameOfPage)
    )
}

/// A column's name: hours along a night are counted, not told by the clock.
#[must_use]
pub fn column(f: Formatter, label: &str, text: Text) -> String {
    match text {
        Text::Hours | Text::Clock { .. } | Text::DayClock(_) if label == f.say(m::AxisClock) => {
            "Hours after the start (h)".into()
        }
        _ => label.into(),
    }
}

/// The run that leads, as a sentence that stands alone in any post.
#[must_use]
pub fn sentence(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let depth = plan.number(Path::Bank(
        run.bank,
        crate::plan::path::BankField::DepthPercent,
    ));
    let down = depth.map_or_else(String::new, |depth| format!(", {} down", f.percent(depth)));
    let bank = bank_in_words(f, plan, run.bank);
    let chemistry = plan.banks.get(run.bank).map_or("", |bank| {
        let name = labels::chemistry_name(f, bank.chemistry);
        name.split(" (").next().unwrap_or(name)
    });
    let runs = run_sentence(f, plan, run);
    let runs = runs.trim_end_matches('.');
    let detail = run_detail(f, run);
    format!("{runs}, on {bank} ({chemistry}){down}. {detail}")
        .trim_end()
        .into()
}

/// The clock time at which a run is over, and the day where it is not plain.
#[must_use]
pub fn until(f: Formatter, plan: &Plan, run: &RunAnswer) -> String {
    let (start, hours) = (plan.night.start_clock_min, run.hours_h.likely);
    let clock = f.clock_after(start, hours);
    if hours < super::WITHIN_A_DAY_H {
        clock
    } else {
        format!("{clock}, {}", day_after(start, hours))
    }
}

/// From the low to the high end of the spread.
#[must_use]
pub fn from_to(f: Formatter, run: &RunAnswer) -> String {
    format!(
        "{} to {}",
        f.duration(run.hours_h.low),
        f.duration(run.hours_h.high)
    )
}

/// The length of a link, for those who paste it somewhere narrow.
#[must_use]
pub fn link_length(_f: Formatter, letters: usize) -> String {
    format!("The link in it has {letters} characters.")
}

/// What a file of this name and kind is called on its button, for those who do
/// not see what stands beside it.
#[must_use]
pub fn save_as(_f: Formatter, title: &str, kind: &str) -> String {
    format!("Save “{title}” as {kind}")
}

#[must_use]
pub fn saved(_f: Formatter, name: &str) -> String {
    format!("Handed to the browser as {name}.")
}

/// Which part of the plan a number belongs to.
#[must_use]
pub fn part_of(f: Formatter, plan: &Plan, path: Path) -> String {
    match path {
        Path::Bank(bank, _) | Path::OpenCircuit(bank) => bank_in_words(f, plan, bank),
        Path::Unit(unit, _) | Path::Modes(unit) | Path::Cooling(unit, _) => {
            unit_name(f, plan, unit)
        }
        Path::Mode(unit, mode, _) => full_mode_name(f, plan, unit, mode),
        Path::Load(load) => plan
            .loads
            .get(load)
            .map_or("", |load| load.name.trim())
            .into(),
        Path::Night(_) => "The night".into(),
        Path::Day(_) | Path::ModeRow(..) | Path::CheckIn(..) => f.say(m::QuestionDay).into(),
        Path::Cabin(_) => "The cabin".into(),
        Path::Array(array, _) => format!("Panels {}", array + 1),
        Path::Charger(charger, _) => format!("Charger {}", charger + 1),
        Path::Supply(_) => "What feeds the bank".into(),
        Path::Claim(claim, _) => match plan.claims.get(claim).map(|claim| claim.name.trim()) {
            Some(name) if !name.is_empty() => name.into(),
            _ => format!("Claim {}", claim + 1),
        },
        Path::Air(_) => "The air side".into(),
        Path::Price(_) => "The price".into(),
        Path::Wiring(_) => f.say(m::QuestionWiring).into(),
        Path::Installation(circuit, _) => super::wiring::circuit_name(f, circuit).into(),
        _ => String::new(),
    }
}

/// A number of the plan with its unit, in the units that the plan is shown in.
#[must_use]
pub fn plan_value(f: Formatter, _plan: &Plan, unit: Unit, value: f64) -> String {
    super::stated_text(f, value, unit)
}

/// A field with its number and where that came from: `Health 95 % (measured ±3 %)`.
#[must_use]
pub fn plan_line(f: Formatter, plan: &Plan, path: Path, figure: Figure) -> String {
    let unit = path.range().map_or(Unit::Number, |range| range.unit);
    let label = super::field_label(f, path);
    let value = plan_value(f, plan, unit, figure.value);
    if plan.has_origin(path) {
        format!("{label} {value} ({})", labels::origin_mark(f, path, figure))
    } else {
        format!("{label} {value}")
    }
}

/// How a unit is fed.
#[must_use]
pub const fn feed_name(feed: &Feed) -> &'static str {
    words::FEEDS[match feed {
        Feed::Direct => 0,
        Feed::DcDc { .. } => 1,
        Feed::Inverter { .. } => 2,
    }]
}

/// The same as a line of the report.
#[must_use]
pub fn fed(f: Formatter, feed: &Feed) -> String {
    format!(
        "{} {}",
        f.say(m::Feed).to_ascii_lowercase(),
        feed_name(feed)
    )
}

/// A report's title: the plan's own, or what it is about.
#[must_use]
pub fn report_title(f: Formatter, plan: &Plan) -> String {
    match plan.title.trim() {
        "" => f.say(m::HandOnReportTitle).into(),
        title => title.into(),
    }
}
