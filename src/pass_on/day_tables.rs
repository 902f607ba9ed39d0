//! Tables of the hot day and of the claims: numbers as the answer has them.

use super::table::{Cell, Table};
use crate::{
    answer::{Answer, DayAnswer},
    plan::Plan,
    wording::{self, hand_on as words},
};

/// The day moment by moment, then summed up by days.
pub fn day(plan: &Plan, day: &DayAnswer) -> [Table; 2] {
    let moments = day.trace.iter().map(|point| {
        let mode = point.mode.map_or(Cell::Empty, |at| {
            wording::full_mode_name(plan, at.unit, at.mode).into()
        });
        let clock = f64::from(day.start_clock_min) + 60.0 * point.hours_h;
        let mut row: Vec<Cell> = vec![point.hours_h.into(), wording::number::clock(clock).into()];
        let values = [
            point.charge_percent,
            point.terminal_v,
            point.bank_a,
            point.cabin_c,
            point.outdoor_c,
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
            sum.warmest_c,
            sum.dark_h,
            sum.lost_h,
        ];
        values.map(Cell::from).into()
    });
    [
        table(words::TABLE_MOMENTS, &words::MOMENT_HEADS, moments),
        table(words::TABLE_DAYS, &words::DAY_HEADS, days),
    ]
}

/// What was measured against what is claimed.
pub fn claims(plan: &Plan, answer: &Answer) -> Table {
    let rows = answer.claims.claims.iter().map(|judged| {
        let name = plan.claims.get(judged.claim).map(|claim| claim.name.trim());
        vec![
            name.unwrap_or_default().into(),
            words::claimed_name(judged.about).into(),
            judged.claimed.into(),
            judged.claimed_most.into(),
            judged.measured.into(),
            judged.expanded.into(),
            judged.share_percent.into(),
            words::verdict_name(judged.verdict).into(),
        ]
    });
    table(words::TABLE_CLAIMS, &words::CLAIM_HEADS, rows)
}

fn table(title: &str, heads: &[&str], rows: impl Iterator<Item = Vec<Cell>>) -> Table {
    Table {
        title: title.into(),
        heads: heads.iter().map(|head| (*head).into()).collect(),
        rows: rows.collect(),
    }
}
