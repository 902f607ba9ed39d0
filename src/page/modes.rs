//! Modes of the cooling unit, and the other loads: rows to add and remove.

use super::{
    dom::{El, button, h},
    field::{name_field, number_field, row_field, tick},
    state::State,
};
use crate::{
    plan::{
        Draw, Figure, Load, Mode, Plan,
        check::{MOST_LOADS, MOST_MODES},
        path::{ModeField as M, Path},
    },
    wording::{self, words},
};

/// The modes of every unit, with their draws.
pub fn modes(state: State) -> El {
    let units = move || state.with_plan(|plan| plan.units.len());
    h("div", "").live_children(
        move || units().to_string(),
        move || {
            (0..units())
                .map(|unit| unit_modes(state, unit, units()))
                .collect()
        },
    )
}

fn mode_mut(plan: &mut Plan, unit: usize, mode: usize) -> Option<&mut Mode> {
    plan.units.get_mut(unit)?.modes.get_mut(mode)
}

fn unit_modes(state: State, unit: usize, units: usize) -> El {
    let count =
        move || state.with_plan(|plan| plan.units.get(unit).map_or(0, |unit| unit.modes.len()));
    let key = move || count().to_string();
    let rows = move || {
        let rows = (0..count()).map(|mode| mode_row(state, unit, mode, count()));
        let add = (count() < MOST_MODES).then(|| {
            button("quiet", words::ADD_MODE, move || {
                state.edit(|plan| add_mode(plan, unit))
            })
        });
        rows.chain(add).collect()
    };
    let title = if units > 1 { words::UNIT } else { words::MODES };
    h("fieldset", "card")
        .child(h("legend", "").text(&wording::numbered(title, unit, units)))
        .child(h("div", "").live_children(key, rows))
}

fn add_mode(plan: &mut Plan, unit: usize) {
    if let Some(unit) = plan.units.get_mut(unit) {
        let like = unit.modes.last().cloned();
        let like = like.unwrap_or_else(|| Mode::of_power("", Figure::guess(300.0)));
        unit.modes.push(Mode {
            name: String::new(),
            ..like
        });
    }
}

fn mode_row(state: State, unit: usize, mode: usize, count: usize) -> El {
    let name = name_field(
        state,
        &format!("mode-name-{unit}-{mode}"),
        words::MODE_NAME,
        move |plan| mode_mut(plan, unit, mode).map(|mode| &mut mode.name),
    );
    // One field for watts and amps: it stays while one becomes the other in it.
    let draw = row_field(state, Path::Mode(unit, mode, M::PowerW));
    let remove =
        (count > 1).then(|| remove_button(state, words::REMOVE_MODE, Path::Modes(unit), mode));
    h("div", "row").child(name).child(draw).children(remove)
}

fn remove_button(state: State, words: &str, list: Path, row: usize) -> El {
    button("remove", "×", move || {
        state.change(|draft| draft.remove(list, row))
    })
    .attr("aria-label", words)
    .attr("title", words)
}

/// Everything else about a mode, for *What was assumed*.
pub fn mode_rest(state: State, unit: usize, mode: usize) -> Vec<El> {
    let path = move |field| Path::Mode(unit, mode, field);
    let is_current = move || {
        state.with_plan(|plan| {
            plan.mode(unit, mode)
                .is_some_and(|m| matches!(m.draw, Draw::Current { .. }))
        })
    };
    let switch = move || {
        state.edit(|plan| {
            let nominal_v = plan.banks.first().map_or(12.0, |bank| bank.nominal_v());
            if let Some(mode) = mode_mut(plan, unit, mode) {
                mode.draw = mode.draw.switched(nominal_v);
            }
        });
    };
    vec![
        h("div", "grid")
            .child(number_field(state, path(M::DutyPercent)))
            .child(number_field(state, path(M::StandbyW))),
        h("div", "").live_children(
            move || is_current().to_string(),
            move || {
                is_current()
                    .then(|| number_field(state, path(M::MeasuredAtV)))
                    .into_iter()
                    .collect()
            },
        ),
        tick(
            &format!("amps-{unit}-{mode}"),
            words::AMPS_STAY,
            is_current,
            switch,
        ),
    ]
}

/// Other loads that run all night.
pub fn loads(state: State) -> El {
    let count = move || state.with_plan(|plan| plan.loads.len());
    let rows = move || {
        let rows = (0..count()).map(|load| {
            let name = name_field(
                state,
                &format!("load-name-{load}"),
                words::LOAD_NAME,
                move |plan| plan.loads.get_mut(load).map(|load| &mut load.name),
            );
            h("div", "row")
                .child(name)
                .child(row_field(state, Path::Load(load)))
                .child(remove_button(state, words::REMOVE_LOAD, Path::Loads, load))
        });
        let add = (count() < MOST_LOADS).then(|| {
            button("quiet", words::ADD_LOAD, move || {
                let load = Load {
                    name: String::new(),
                    power_w: Figure::guess(20.0),
                };
                state.edit(|plan| plan.loads.push(load.clone()));
            })
        });
        rows.chain(add).collect()
    };
    h("div", "").live_children(move || count().to_string(), rows)
}
