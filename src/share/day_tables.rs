//! Tables of the hot day and of the claims: numbers as the answer has them.

use super::table::{Cell, Table};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{Answer, DayAnswer},
    plan::{
        Path, Plan,
        entry::{shown, width_shown},
    },
    range::Unit,
    text::{self, claims as say, hand_on as words},
};

/// The day moment by moment, then summed up by days.
pub fn day(f: Formatter, plan: &Plan, day: &DayAnswer) -> [Table; 2] {
    let warm = |value_c| shown(value_c, Unit::Celsius, f.units);
    let moments = day.trace.iter().map(|point| {
        let mode = point.mode.map_or(Cell::Empty, |at| {
            text::full_mode_name(f, plan, at.unit, at.mode).into()
        });
        let clock = f64::from(day.start_clock_min) + 60.0 * point.hours_h;
        let mut row: Vec<Cell> = vec![point.hours_h.into(), f.clock(clock).into()];
        let values = [
            point.charge_percent,
            point.terminal_v,
            point.bank_a,
            warm(point.cabin_c),
            warm(point.outdoor_c),
            point.humidity_percent,
            point.solar_w,
            point.charger_w,
            point.loads_w,
            point.unit_w,
            point.cooling_w,
        ];
        row.extend(values.map(Cell::from));
        row.push(mode);
        row
    });
    let days = day.days.iter().enumerate().map(|(index, sum)| {
        let values = [
            index as f64 + 1.0,
            sum.solar_wh,
            sum.charger_wh,
            sum.loads_wh,
            sum.unit_wh,
            sum.least_charge_percent,
            sum.end_charge_percent,
            warm(sum.warmest_c),
            sum.dark_h,
            sum.unit_off_h,
            sum.lost_h,
        ];
        values.map(Cell::from).into()
    });
    [
        table(
            f.say(m::HandOnTableMoments),
            words::moment_heads(f),
            moments,
        ),
        table(f.say(m::HandOnTableDays), words::day_heads(f), days),
    ]
}

/// What was measured against what is claimed.
pub fn claims(f: Formatter, plan: &Plan, answer: &Answer) -> Table {
    let rows = answer.claims.claims.iter().map(|judged| {
        let unit = judged.about.range().unit;
        let figure = |value| shown(value, unit, f.units);
        let width = |width| width_shown(width, unit, f.units);
        let measured = figure(judged.measured);
        let measured = if say::is_typed(plan, judged) {
            Cell::Stated(measured)
        } else {
            measured.into()
        };
        let [low, ..] = judged.about.fields();
        let most = judged.claimed_most.map(figure);
        vec![
            words::part_of(f, plan, Path::Claim(judged.claim, low)).into(),
            words::claimed_name(f, judged.about).into(),
            Cell::Stated(figure(judged.claimed)),
            most.map_or(Cell::Empty, Cell::Stated),
            measured,
            judged.expanded.map(width).into(),
            judged.share_percent.into(),
            say::verdict_text(f, judged).into(),
            judged.missing.map_or(Cell::Empty, |missing| {
                say::missing_sentence(f, missing).into()
            }),
        ]
    });
    table(
        f.say(m::HandOnTableClaims),
        words::claim_heads(f).map(String::from),
        rows,
    )
}

/// Cooling from the air side, and what the measured energy cost.
pub fn beside_claims(f: Formatter, _plan: &Plan, answer: &Answer) -> [Table; 2] {
    let air = answer.claims.air.as_ref();
    let air = air.map(|air| say::air_rows(f, air));
    let money = answer
        .claims
        .money
        .as_ref()
        .map(|money| say::money_rows(f, money));
    let row = |(what, value, unit, expanded): say::Row| {
        vec![what.into(), value.into(), unit.into(), expanded.into()]
    };
    let of = |title, rows: Option<Vec<say::Row>>| {
        table(
            title,
            words::row_heads(f).map(String::from),
            rows.into_iter().flatten().map(row),
        )
    };
    [
        of(f.say(m::HandOnTableAir), air),
        of(f.say(m::HandOnTablePrice), money),
    ]
}

fn table<const N: usize>(
    title: &str,
    heads: [String; N],
    rows: impl Iterator<Item = Vec<Cell>>,
) -> Table {
    Table {
        title: title.into(),
        heads: heads.into(),
        rows: rows.collect(),
    }
}
