//! What feeds the bank: panels, their controller, chargers, and where the bank
//! stands. A form by itself: the questions of the day and of the wiring share it.

use super::{
    choose::{Chosen, OpenChoice},
    field::NumberField,
    kit::{Fold, Press},
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::page::rows::{AddRow, Row, alike, of_place, place_of, rows};
use crate::plan::Plan;
use crate::text::m;
use crate::{
    plan::{
        Path,
        check::{MOST_ARRAYS, MOST_CHARGERS},
        supply::{
            Array, ArrayField as A, BankPlace, Charger, ChargerField as G, ChargerKind,
            ControllerKind, Mounting, SupplyField as S,
        },
    },
    text::day_words as words,
};
use leptos::prelude::*;

const CONTROLLER: Chosen<ControllerKind> = Chosen {
    label: |f| f.say(m::DayController),
    name: words::controller_name,
    assumed: ControllerKind::Tracking,
};
const BANK_PLACE: Chosen<BankPlace> = Chosen {
    label: |f| f.say(m::DayBankPlace),
    name: words::bank_place_name,
    assumed: BankPlace::Cabin,
};
const MOUNTING: Chosen<Mounting> = Chosen {
    label: |f| f.say(m::DayMounting),
    name: words::mounting_name,
    assumed: Mounting::FlatOnRoof,
};
const FED_BY: Chosen<ChargerKind> = Chosen {
    label: |f| f.say(m::DayFedBy),
    name: words::charger_name,
    assumed: ChargerKind::Shore,
};

/// The whole form. `at` keeps the ids of two forms on one page apart; it may be
/// empty in one of them.
#[component]
pub fn SupplyForm(at: &'static str) -> impl IntoView {
    let field = move |field| view! { <NumberField path=Path::Supply(field) at=at /> };
    let rest = move || {
        let fields = [
            S::ControllerLimitA,
            S::ControllerEfficiencyPercent,
            S::ControllerLimitV,
            S::ArrayLossPercent,
            S::PanelPowerPercentPerK,
            S::PanelVoltsPercentPerK,
        ];
        fields.map(field).collect_view()
    };
    view! {
        <h3>{say(m::DayPanels)}</h3>
        <Arrays at=at />
        <div class="grid">
            <OpenChoice
                id=format!("{at}-controller")
                chosen=CONTROLLER
                place=|plan| Some(&mut plan.supply.controller)
            />
        </div>
        <Fold class="fold small" title=|| say(m::DayControllerRest)>
            <div class="grid">{rest()}</div>
        </Fold>
        <h3>{say(m::DayChargers)}</h3>
        <Chargers at=at />
        <h3>{say(m::DayBankWarmth)}</h3>
        <div class="grid">
            <OpenChoice
                id=format!("{at}-bank-place")
                chosen=BANK_PLACE
                place=|plan| Some(&mut plan.supply.bank_place)
            />
            {field(S::BankC)}
        </div>
    }
}

/// Panels that lie alike, a card each.
#[component]
fn Arrays(at: &'static str) -> impl IntoView {
    let state = State::here();
    let count = |plan: &Plan| plan.supply.arrays.len();
    let add = move || state.edit(|plan| plan.supply.arrays.push(Array::default()));
    let card = move |row| view! { <ArrayCard at=at row=row /> }.into_any();
    let has_none = move || state.with_plan(|plan| count(plan) == 0);
    let hint = move || has_none().then(|| view! { <p class="hint">{say(m::DayNoArray)}</p> });
    let has_room = move |plan: &Plan| count(plan) < MOST_ARRAYS;
    view! {
        {hint}
        <div>{rows(Path::Arrays, move |plan| alike(count(plan)), card)}</div>
        <AddRow words=say(m::DayAddArray) has_room=has_room press=add />
    }
}

#[component]
fn ArrayCard(at: &'static str, row: Row) -> impl IntoView {
    let state = State::here();
    let title = row.title(say(m::DayArray));
    let row = row.at;
    let field = move |field| view! { <NumberField path=Path::Array(row, field) at=at /> };
    let rest = move || {
        let fields = [
            A::PanelsSeriesCount,
            A::PanelsParallelCount,
            A::PanelBestV,
            A::PanelOpenV,
            A::PanelShortA,
        ];
        fields.map(field).collect_view()
    };
    let main = [A::RatedW, A::ShadingPercent, A::TiltDeg, A::AzimuthDeg];
    let remove = move || state.remove_row(Path::Arrays, row);
    view! {
        <fieldset class="card">
            <legend>{title}</legend>
            <div class="grid">
                {main.map(field).collect_view()}
                <OpenChoice
                    id=format!("{at}-mounting-{row}")
                    chosen=MOUNTING
                    place=move |plan| {
                        plan.supply.arrays.get_mut(row).map(|one| &mut one.mounting)
                    }
                />
            </div>
            <Fold class="fold small" title=|| say(m::DayPanelSheet)>
                <div class="grid">{rest()}</div>
            </Fold>
            <Press class="quiet" words=say(m::DayRemoveArray) press=remove />
        </fieldset>
    }
}

/// Shore, engine and generator.
#[component]
fn Chargers(at: &'static str) -> impl IntoView {
    let state = State::here();
    let add = move || state.edit(|plan| plan.supply.chargers.push(Charger::default()));
    let count = |plan: &Plan| plan.supply.chargers.len();
    // The kind decides which fields a card has.
    let kinds = |plan: &Plan| {
        let chargers = plan.supply.chargers.iter();
        chargers.map(|one| place_of(one.kind_taken())).collect()
    };
    let card = move |row| view! { <ChargerCard at=at row=row /> }.into_any();
    let has_none = move || state.with_plan(|plan| count(plan) == 0);
    let hint = move || has_none().then(|| view! { <p class="hint">{say(m::DayNoCharger)}</p> });
    let has_room = move |plan: &Plan| count(plan) < MOST_CHARGERS;
    view! {
        {hint}
        <div>{rows(Path::Chargers, kinds, card)}</div>
        <AddRow words=say(m::DayAddCharger) has_room=has_room press=add />
    }
}

#[component]
fn ChargerCard(at: &'static str, row: Row) -> impl IntoView {
    let state = State::here();
    let title = row.title(say(m::DayCharger));
    let kind: ChargerKind = of_place(row.kind);
    let row = row.at;
    let field = move |field| view! { <NumberField path=Path::Charger(row, field) at=at /> };
    let fields = [
        G::MostA,
        G::SourceW,
        G::FromClockMin,
        G::UntilClockMin,
        G::EfficiencyPercent,
        G::HoldV,
    ];
    let fuel = (kind == ChargerKind::Generator)
        .then(|| [G::FuelL, G::FuelLPerKwh].map(field).collect_view());
    let remove = move || state.remove_row(Path::Chargers, row);
    view! {
        <fieldset class="card">
            <legend>{title}</legend>
            <div class="grid">
                <OpenChoice
                    id=format!("{at}-fed-{row}")
                    chosen=FED_BY
                    place=move |plan| plan.supply.chargers.get_mut(row).map(|one| &mut one.kind)
                />
                {fields.map(field).collect_view()}
                {fuel}
            </div>
            <p class="hint">{words::charger_hint(formatter(), kind)}</p>
            <Press class="quiet" words=say(m::DayRemoveCharger) press=remove />
        </fieldset>
    }
}
