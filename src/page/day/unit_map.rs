//! A unit's own readings of draw and capacity in different air, a row each.

use super::State;
use crate::{
    page::{
        field::{Look, NumberField},
        kit::{Fold, Press, anew},
        locale::{formatter, say},
    },
    plan::{
        Path,
        cooling::{MAP_ROWS, MapField, MapRow},
    },
    text::{self, m},
};
use leptos::prelude::*;

/// The rows, and what adds one.
#[component]
pub fn UnitMap(unit: usize) -> impl IntoView {
    let state = State::here();
    let count = move || {
        state.with_plan(|plan| {
            let unit = plan.units.get(unit);
            unit.map_or(0, |unit| unit.cooling.unit_map.len())
        })
    };
    let add = move || {
        state.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                unit.cooling.unit_map.push(MapRow::default());
            }
        });
    };
    let rows = move |count: usize| {
        let rows = (0..count).map(|row| view! { <Reading unit=unit row=row count=count /> });
        view! {
            {rows.collect_view()}
            {(count < MAP_ROWS.1)
                .then(|| view! { <Press class="quiet" words=say(m::DayAddMapRow) press=add /> })}
        }
        .into_any()
    };
    let path = Path::UnitMap(unit);
    view! {
        <Fold class="fold small" title=move || text::field_label(formatter(), path)>
            <p class="hint">{text::field_hint(formatter(), path)}</p>
            <div>{anew(count, rows)}</div>
        </Fold>
    }
}

#[component]
fn Reading(unit: usize, row: usize, count: usize) -> impl IntoView {
    let state = State::here();
    let field =
        |field| view! { <NumberField path=Path::MapRow(unit, row, field) look=Look::Row /> };
    let fields = MapField::ALL.iter().copied().map(field);
    let remove = move || state.change(|draft| draft.remove(Path::UnitMap(unit), row));
    view! {
        <div class="mode-cooling">
            <p class="row-title">{text::numbered(say(m::DayMapRow), row, count)}</p>
            <div class="grid">{fields.collect_view()}</div>
            <Press class="quiet" words=say(m::DayRemoveMapRow) press=remove />
        </div>
    }
}
