//! The tables of an answer, in the order of the page.

use super::{
    day_tables,
    figure::Figure,
    table::{Cell, Table},
};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{Answer, RunAnswer},
    plan::{
        Figure as Number, Plan,
        path::{BankField as B, Path, UnitField as U},
        wiring::WiringField as W,
    },
    range::Unit,
    study::sizing::{Found, Sizing},
    study::spread,
    text::{self, hand_on},
};

/// Every table there is: runs, what was asked, the hot day, claims with air side and
/// price, the plan, and the numbers behind each figure.
#[must_use]
pub fn tables(f: Formatter, plan: &Plan, answer: &Answer, figures: &[Figure]) -> Vec<Table> {
    let curves = figures.iter().filter_map(|figure| figure.table(f));
    let days = answer.day.iter();
    let days = days.flat_map(|day| day_tables::day(f, plan, day));
    [runs(f, plan, answer), sizes(f, plan, answer)]
        .into_iter()
        .chain(days)
        .chain([day_tables::claims(f, plan, answer)])
        .chain(day_tables::beside_claims(f, plan, answer))
        .filter(|table| !table.rows.is_empty())
        .chain([plan_table(f, plan)])
        .chain(curves)
        .collect()
}

fn runs(f: Formatter, plan: &Plan, answer: &Answer) -> Table {
    Table {
        title: f.say(m::HandOnTableRuns).into(),
        heads: hand_on::run_heads(f).map(String::from).into(),
        rows: answer
            .runs
            .iter()
            .map(|run| run_row(f, plan, run))
            .collect(),
    }
}

fn run_row(f: Formatter, plan: &Plan, run: &RunAnswer) -> Vec<Cell> {
    vec![
        text::mode_name(f, plan, run.unit, run.mode).into(),
        text::unit_name(f, plan, run.unit).into(),
        text::bank_in_words(f, plan, run.bank).into(),
        run.hours_h.likely.into(),
        run.hours_h.low.into(),
        run.hours_h.high.into(),
        hand_on::until(f, plan, run).into(),
        text::stop_phrase(f, &run.stop).into(),
        run.mean_w.into(),
        run.mean_a.into(),
        run.drawn_ah.into(),
        run.drawn_wh.into(),
        run.unit_wh.into(),
        run.lost_wh.into(),
    ]
}

fn sizes(f: Formatter, plan: &Plan, answer: &Answer) -> Table {
    Table {
        title: f.say(m::HandOnTableSizes).into(),
        heads: hand_on::size_heads(f).map(String::from).into(),
        rows: answer
            .sizing
            .iter()
            .flat_map(|sizing| size_rows(f, plan, sizing))
            .collect(),
    }
}

/// A row for each number that was found.
fn size_rows(f: Formatter, plan: &Plan, sizing: &Sizing) -> Vec<Vec<Cell>> {
    let found: Vec<(&str, f64, &str)> = match &sizing.found {
        Found::Hours { hours_h } => vec![(f.say(m::HandOnSizeHours), *hours_h, "h")],
        Found::Draw { draw, unit } => {
            vec![(f.say(m::HandOnSizeDraw), *draw, f.sign(*unit))]
        }
        Found::Depth { depth_percent } => vec![(f.say(m::HandOnSizeDepth), *depth_percent, "%")],
        Found::Bank(needed) => {
            let (new, reserve) = (f.say(m::HandOnSizeNew), f.say(m::HandOnSizeReserve));
            let batteries = f64::from(needed.batteries_count);
            vec![
                (new, needed.needed_ah, "Ah"),
                (new, needed.needed_wh, "Wh"),
                (reserve, needed.with_reserve_ah, "Ah"),
                (reserve, needed.with_reserve_wh, "Wh"),
                (f.say(m::HandOnSizeBatteries), batteries, ""),
                (f.say(m::HandOnSizeRunsNew), needed.hours_new_h, "h"),
                (f.say(m::HandOnSizeRunsAged), needed.hours_aged_h, "h"),
            ]
        }
        Found::None => Vec::new(),
    };
    let row = |(what, value, sign): (&str, f64, &str)| {
        vec![
            text::bank_in_words(f, plan, sizing.bank).into(),
            text::full_mode_name(f, plan, sizing.unit, sizing.mode).into(),
            sizing.wanted_h.into(),
            what.into(),
            value.into(),
            sign.into(),
        ]
    };
    found.into_iter().map(row).collect()
}

/// Every number that the answer rests on, stated or assumed.
fn plan_table(f: Formatter, plan: &Plan) -> Table {
    let chemistries = plan.banks.iter().enumerate().map(|(bank, the_bank)| {
        let name = text::chemistry_name(f, the_bank.chemistry);
        let key = format!("banks[{bank}].chemistry");
        let of = text::bank_in_words(f, plan, bank);
        choice_row(f, of, f.say(m::Chemistry), name, key)
    });
    let feeds = plan.units.iter().enumerate().map(|(unit, the_unit)| {
        let key = format!("units[{unit}].feed.kind");
        let of = text::unit_name(f, plan, unit);
        choice_row(
            f,
            of,
            f.say(m::HandOnFeed),
            hand_on::feed_name(f, &the_unit.feed),
            key,
        )
    });
    let paths = plan.paths().into_iter().filter(|&path| counts(plan, path));
    let numbers = paths.filter_map(|path| {
        let figure = plan.figure(path)?;
        Some(number_row(f, plan, path, figure))
    });
    Table {
        title: f.say(m::HandOnTablePlan).into(),
        heads: hand_on::plan_heads(f).map(String::from).into(),
        rows: chemistries.chain(feeds).chain(numbers).collect(),
    }
}

/// Whether a number has a part in this plan's answer: no cable where none is.
pub(super) fn counts(plan: &Plan, path: Path) -> bool {
    match path {
        Path::Unit(unit, U::CableAreaMm2 | U::CableTemperatureC) => plan
            .number(Path::Unit(unit, U::CableLengthM))
            .is_some_and(|meters| meters > 0.0),
        Path::Bank(bank, B::PeukertExponent) => plan
            .banks
            .get(bank)
            .is_some_and(|bank| bank.chemistry.is_lead_acid()),
        // Assumed where its length says that it is there.
        Path::Wiring(W::DistributionMm2) => plan.wiring.distribution_m.is_some(),
        // Many, and of no part in hours or banks: those that are typed.
        Path::Wiring(_) | Path::Installation(..) => plan.stated(path).is_some(),
        _ => true,
    }
}

fn choice_row(f: Formatter, of: String, what: &str, choice: &str, key: String) -> Vec<Cell> {
    let empty = || Cell::Empty;
    let stated = f.say(m::HandOnStated).into();
    vec![
        of.into(),
        what.into(),
        choice.into(),
        empty(),
        empty(),
        empty(),
        stated,
        key.into(),
    ]
}

fn number_row(f: Formatter, plan: &Plan, path: Path, figure: Number) -> Vec<Cell> {
    let unit = path.range().map_or(Unit::Number, |range| range.unit);
    let is_stated = plan.stated(path).is_some();
    let stated = if is_stated {
        f.say(m::HandOnStated)
    } else {
        f.say(m::HandOnAssumed)
    };
    // A clock time is a text, so that no spreadsheet makes a date of its minutes.
    let value = match unit {
        Unit::ClockMinute => f.value(figure.value, unit).into(),
        _ if is_stated => Cell::Stated(figure.value),
        _ => figure.value.into(),
    };
    let has_origin = plan.has_origin(path);
    let origin = has_origin.then(|| text::origin_name(f, figure.from));
    let spread = has_origin.then(|| spread::percent_of(path, figure));
    vec![
        hand_on::part_of(f, plan, path).into(),
        text::field_label(f, path).into(),
        value,
        f.sign(unit).into(),
        origin.map_or(Cell::Empty, Cell::from),
        spread.into(),
        stated.into(),
        path.to_string().into(),
    ]
}
