//! What feeds the bank: panels, their controller, chargers, and where the bank
//! stands. A form by itself: the questions of the day and of the wiring share it.

use super::{
    choose::{Chosen, choose},
    dom::{El, button, h, named_fold},
    field::number_field_at,
    state::State,
};
use crate::{
    plan::{
        Path,
        check::{MOST_ARRAYS, MOST_CHARGERS},
        supply::{
            Array, ArrayField as A, BankPlace, Charger, ChargerField as G, ChargerKind,
            ControllerKind, Mounting, SupplyField as S,
        },
    },
    wording::{self, day_words as words},
};

/// The whole form. `at` keeps the ids of two forms on one page apart; it may be
/// empty in one of them.
pub fn supply(state: State, at: &'static str) -> Vec<El> {
    let controller = Chosen {
        label: words::CONTROLLER,
        name: words::controller_name,
        assumed: ControllerKind::Tracking,
    };
    let place = Chosen {
        label: words::BANK_PLACE,
        name: words::bank_place_name,
        assumed: BankPlace::Cabin,
    };
    let id = |what: &str| format!("{at}-{what}");
    let rest = move || {
        let fields = [
            S::ControllerLimitA,
            S::ControllerEfficiencyPercent,
            S::ControllerLimitV,
            S::ArrayLossPercent,
            S::PanelPowerPercentPerK,
            S::PanelVoltsPercentPerK,
        ];
        vec![grid(fields.map(|field| {
            number_field_at(state, Path::Supply(field), at)
        }))]
    };
    vec![
        h("h3", "").text(words::PANELS),
        arrays(state, at),
        grid([choose(state, &id("controller"), controller, |plan| {
            Some(&mut plan.supply.controller)
        })]),
        named_fold("fold small", words::CONTROLLER_REST, rest),
        h("h3", "").text(words::CHARGERS),
        chargers(state, at),
        h("h3", "").text(words::BANK_WARMTH),
        grid([
            choose(state, &id("bank-place"), place, |plan| {
                Some(&mut plan.supply.bank_place)
            }),
            number_field_at(state, Path::Supply(S::BankC), at),
        ]),
    ]
}

fn grid(fields: impl IntoIterator<Item = El>) -> El {
    h("div", "grid").children(fields)
}

/// Panels that lie alike, a card each.
fn arrays(state: State, at: &'static str) -> El {
    let count = move || state.with_plan(|plan| plan.supply.arrays.len());
    let cards = move || {
        let cards = (0..count()).map(|row| array(state, at, row, count()));
        let add = (count() < MOST_ARRAYS).then(|| {
            button("quiet", words::ADD_ARRAY, move || {
                state.edit(|plan| plan.supply.arrays.push(Array::default()));
            })
        });
        let none = (count() == 0).then(|| h("p", "hint").text(words::NO_ARRAY));
        none.into_iter().chain(cards).chain(add).collect()
    };
    h("div", "").live_children(move || count().to_string(), cards)
}

fn array(state: State, at: &'static str, row: usize, count: usize) -> El {
    let mounting = Chosen {
        label: words::MOUNTING,
        name: words::mounting_name,
        assumed: Mounting::FlatOnRoof,
    };
    let field = move |field| number_field_at(state, Path::Array(row, field), at);
    let rest = move || {
        let fields = [
            A::PanelsSeriesCount,
            A::PanelsParallelCount,
            A::PanelBestV,
            A::PanelOpenV,
            A::PanelShortA,
        ];
        vec![grid(fields.map(field))]
    };
    let slot = choose(
        state,
        &format!("{at}-mounting-{row}"),
        mounting,
        move |plan| plan.supply.arrays.get_mut(row).map(|one| &mut one.mounting),
    );
    card(&wording::numbered(words::ARRAY, row, count))
        .child(
            grid([A::RatedW, A::ShadingPercent, A::TiltDeg, A::AzimuthDeg].map(field)).child(slot),
        )
        .child(named_fold("fold small", words::PANEL_SHEET, rest))
        .child(button("quiet", words::REMOVE_ARRAY, move || {
            state.change(|draft| draft.remove(Path::Arrays, row));
        }))
}

fn card(title: &str) -> El {
    h("fieldset", "card").child(h("legend", "").text(title))
}

/// Shore, engine and generator.
fn chargers(state: State, at: &'static str) -> El {
    // The kind decides which fields a card has.
    let kinds = move || {
        state.with_plan(|plan| {
            let kinds = plan.supply.chargers.iter();
            kinds.map(Charger::kind_taken).collect::<Vec<_>>()
        })
    };
    let cards = move || {
        let all = kinds();
        let count = all.len();
        let cards = all
            .into_iter()
            .enumerate()
            .map(|(row, kind)| charger(state, at, (row, count), kind));
        let add = (count < MOST_CHARGERS).then(|| {
            button("quiet", words::ADD_CHARGER, move || {
                state.edit(|plan| plan.supply.chargers.push(Charger::default()));
            })
        });
        let none = (count == 0).then(|| h("p", "hint").text(words::NO_CHARGER));
        none.into_iter().chain(cards).chain(add).collect()
    };
    h("div", "").live_children(move || format!("{:?}", kinds()), cards)
}

fn charger(state: State, at: &'static str, (row, count): (usize, usize), kind: ChargerKind) -> El {
    let fed = Chosen {
        label: words::FED_BY,
        name: words::charger_name,
        assumed: ChargerKind::Shore,
    };
    let field = move |field| number_field_at(state, Path::Charger(row, field), at);
    let slot = choose(state, &format!("{at}-fed-{row}"), fed, move |plan| {
        plan.supply.chargers.get_mut(row).map(|one| &mut one.kind)
    });
    let fuel = (kind == ChargerKind::Generator).then(|| [G::FuelL, G::FuelLPerKwh].map(field));
    let fields = [
        G::MostA,
        G::SourceW,
        G::FromClockMin,
        G::UntilClockMin,
        G::EfficiencyPercent,
        G::HoldV,
    ];
    card(&wording::numbered(words::CHARGER, row, count))
        .child(
            grid([slot])
                .children(fields.map(field))
                .children(fuel.into_iter().flatten()),
        )
        .child(h("p", "hint").text(words::charger_hint(kind)))
        .child(button("quiet", words::REMOVE_CHARGER, move || {
            state.change(|draft| draft.remove(Path::Chargers, row));
        }))
}
