//! A unit's own readings of draw and capacity in different air, a row each.

use super::State;
use crate::{
    page::{
        field::{Look, NumberField},
        kit::{Fold, Press},
        locale::{formatter, say},
        rows::{AddRow, Row, alike, rows},
    },
    plan::{
        Path, Plan,
        cooling::{MAP_ROWS, MapField, MapRow},
    },
    text::{self, m},
};
use leptos::prelude::*;

/// The rows, and what adds one.
#[component]
pub fn UnitMap(unit: usize) -> impl IntoView {
    let state = State::here();
    let count = move |plan: &Plan| {
        let unit = plan.units.get(unit);
        unit.map_or(0, |unit| unit.cooling.unit_map.len())
    };
    let add = move || {
        state.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                unit.cooling.unit_map.push(MapRow::default());
            }
        });
    };
    let reading = move |row| view! { <Reading unit=unit row=row /> }.into_any();
    let has_room = move |plan: &Plan| count(plan) < MAP_ROWS.1;
    let path = Path::UnitMap(unit);
    view! {
        <Fold class="fold small" title=move || text::field_label(formatter(), path)>
            <p class="hint">{text::field_hint(formatter(), path)}</p>
            <div>{rows(path, move |plan| alike(count(plan)), reading)}</div>
            <AddRow words=say(m::DayAddMapRow) has_room=has_room press=add />
        </Fold>
    }
}

#[component]
fn Reading(unit: usize, row: Row) -> impl IntoView {
    let state = State::here();
    let title = row.title(say(m::DayMapRow));
    let row = row.at;
    let field =
        |field| view! { <NumberField path=Path::MapRow(unit, row, field) look=Look::Row /> };
    let fields = MapField::ALL.iter().copied().map(field);
    let remove = move || state.remove_row(Path::UnitMap(unit), row);
    view! {
        <div class="mode-cooling">
            <p class="row-title">{title}</p>
            <div class="grid">{fields.collect_view()}</div>
            <Press class="quiet" words=say(m::DayRemoveMapRow) press=remove />
        </div>
    }
}
