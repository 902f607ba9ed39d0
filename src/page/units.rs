//! The cooling unit: what feeds it, and another to lay beside.

use super::{
    dom::{El, button, h},
    field::{choice, name_field, number_field},
    state::State,
};
use crate::{
    plan::{
        Feed,
        check::MOST_UNITS,
        path::{Path, UnitField as U},
    },
    wording::{self, words},
};

/// The button for another unit, and those to remove one.
pub fn units(state: State) -> El {
    let count = move || state.with_plan(|plan| plan.units.len());
    h("div", "").live_children(
        move || count().to_string(),
        move || {
            let add = (count() < MOST_UNITS).then(|| {
                button("quiet", words::ADD_UNIT, move || {
                    state.edit(|plan| plan.units.extend(plan.units.last().cloned()));
                })
            });
            let removable = if count() > 1 { count() } else { 0 };
            let remove = (0..removable).map(|unit| {
                button(
                    "quiet",
                    &wording::numbered(words::REMOVE_UNIT, unit, removable),
                    move || {
                        state.change(|draft| draft.remove(Path::Units, unit));
                    },
                )
            });
            add.into_iter().chain(remove).collect()
        },
    )
}

/// How a unit is fed, for *What was assumed*.
pub fn unit_rest(state: State, unit: usize) -> Vec<El> {
    let kind = move || {
        state.with_plan(|plan| match plan.units.get(unit).map(|unit| unit.feed) {
            Some(Feed::DcDc { .. }) => 1,
            Some(Feed::Inverter { .. }) => 2,
            _ => 0,
        })
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                unit.feed = match index {
                    1 => Feed::usual_dc_dc(),
                    2 => Feed::usual_inverter(),
                    _ => Feed::Direct,
                };
            }
        });
    };
    let fields = move |fields: &[U]| {
        fields
            .iter()
            .map(|&field| number_field(state, Path::Unit(unit, field)))
            .collect::<Vec<_>>()
    };
    let feeds = || words::FEEDS.map(str::to_owned).to_vec();
    vec![
        h("div", "grid")
            .child(name_field(
                state,
                &format!("unit-name-{unit}"),
                words::NAME,
                move |plan| plan.units.get_mut(unit).map(|unit| &mut unit.name),
            ))
            .child(choice(
                &format!("feed-{unit}"),
                words::FEED,
                feeds,
                kind,
                choose,
            )),
        h("div", "grid").live_children(
            move || kind().to_string(),
            move || match kind() {
                1 => fields(&[U::OutputV, U::EfficiencyPercent, U::IdleW, U::LimitA]),
                2 => fields(&[
                    U::NoLoadW,
                    U::ProportionalLossPercent,
                    U::SquareLossPercentPerKw,
                    U::LimitW,
                    U::InverterCutoffV,
                ]),
                _ => fields(&[U::SupplyV, U::CutoffV]),
            },
        ),
        h("div", "grid").children(fields(&[
            U::CableLengthM,
            U::CableAreaMm2,
            U::CableTemperatureC,
            U::ConnectionsMohm,
        ])),
    ]
}
