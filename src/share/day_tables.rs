//! Tables of the hot day and of the claims: numbers as the answer has them.

use super::table::{Cell, Table};
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
pub fn day(plan: &Plan, day: &DayAnswer) -> [Table; 2] {
    let warm = |value_c| shown(value_c, Unit::Celsius, plan.show);
    let moments = day.trace.iter().map(|point| {
        let mode = point.mode.map_or(Cell::Empty, |at| {
            text::full_mode_name(plan, at.unit, at.mode).into()
        });
        let clock = f64::from(day.start_clock_min) + 60.0 * point.hours_h;
        let mut row: Vec<Cell> = vec![point.hours_h.into(), text::number::clock(clock).into()];
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
            words::TABLE_MOMENTS,
            words::heads_in(words::MOMENT_HEADS, plan.show),
            moments,
        ),
        table(
            words::TABLE_DAYS,
            words::heads_in(words::DAY_HEADS, plan.show),
            days,
        ),
    ]
}

/// What was measured against what is claimed.
pub fn claims(plan: &Plan, answer: &Answer) -> Table {
    let rows = answer.claims.claims.iter().map(|judged| {
        let unit = judged.about.range().unit;
        let figure = |value| shown(value, unit, plan.show);
        let width = |width| width_shown(width, unit, plan.show);
        let measured = figure(judged.measured);
        let measured = if say::is_typed(plan, judged) {
            Cell::Stated(measured)
        } else {
            measured.into()
        };
        let [low, ..] = judged.about.fields();
        let most = judged.claimed_most.map(figure);
        vec![
            words::part_of(plan, Path::Claim(judged.claim, low)).into(),
            words::claimed_name(judged.about, plan.show).into(),
            Cell::Stated(figure(judged.claimed)),
            most.map_or(Cell::Empty, Cell::Stated),
            measured,
            judged.expanded.map(width).into(),
            judged.share_percent.into(),
            words::verdict_text(judged).into(),
            judged
                .missing
                .map_or(Cell::Empty, |missing| say::missing_sentence(missing).into()),
        ]
    });
    table(
        words::TABLE_CLAIMS,
        words::CLAIM_HEADS.map(String::from),
        rows,
    )
}

/// Cooling from the air side, and what the measured energy cost.
pub fn beside_claims(plan: &Plan, answer: &Answer) -> [Table; 2] {
    let air = answer.claims.air.as_ref();
    let air = air.map(|air| say::air_rows(air, plan.show));
    let money = answer.claims.money.as_ref().map(say::money_rows);
    let row = |(what, value, unit, expanded): say::Row| {
        vec![what.into(), value.into(), unit.into(), expanded.into()]
    };
    let of = |title, rows: Option<Vec<say::Row>>| {
        table(
            title,
            words::ROW_HEADS.map(String::from),
            rows.into_iter().flatten().map(row),
        )
    };
    [of(words::TABLE_AIR, air), of(words::TABLE_PRICE, money)]
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
