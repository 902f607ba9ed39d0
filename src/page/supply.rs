//! What feeds the bank: panels, their controller, chargers, and where the bank
//! stands. A form by itself: the questions of the day and of the wiring share it.

use super::{
    choose::{Chosen, OpenChoice},
    field::NumberField,
    kit::{Fold, Press, anew},
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
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
    text::{self, day_words as words},
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
    let count = move || state.with_plan(|plan| plan.supply.arrays.len());
    let add = move || state.edit(|plan| plan.supply.arrays.push(Array::default()));
    let cards = move |count: usize| {
        let cards = (0..count).map(|row| view! { <ArrayCard at=at row=row count=count /> });
        view! {
            {(count == 0).then(|| view! { <p class="hint">{say(m::DayNoArray)}</p> })}
            {cards.collect_view()}
            {(count < MOST_ARRAYS)
                .then(|| view! { <Press class="quiet" words=say(m::DayAddArray) press=add /> })}
        }
        .into_any()
    };
    view! { <div>{anew(count, cards)}</div> }
}

#[component]
fn ArrayCard(at: &'static str, row: usize, count: usize) -> impl IntoView {
    let state = State::here();
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
    let remove = move || state.change(|draft| draft.remove(Path::Arrays, row));
    view! {
        <fieldset class="card">
            <legend>{text::numbered(say(m::DayArray), row, count)}</legend>
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
    // The kind decides which fields a card has.
    let kinds = move || {
        state.with_plan(|plan| {
            let kinds = plan.supply.chargers.iter();
            kinds.map(Charger::kind_taken).collect::<Vec<_>>()
        })
    };
    let add = move || state.edit(|plan| plan.supply.chargers.push(Charger::default()));
    let cards = move |kinds: Vec<ChargerKind>| {
        let count = kinds.len();
        let cards = kinds.into_iter().enumerate();
        let card = |(row, kind)| view! { <ChargerCard at=at row=row count=count kind=kind /> };
        view! {
            {(count == 0).then(|| view! { <p class="hint">{say(m::DayNoCharger)}</p> })}
            {cards.map(card).collect_view()}
            {(count < MOST_CHARGERS)
                .then(|| view! { <Press class="quiet" words=say(m::DayAddCharger) press=add /> })}
        }
        .into_any()
    };
    view! { <div>{anew(kinds, cards)}</div> }
}

#[component]
fn ChargerCard(at: &'static str, row: usize, count: usize, kind: ChargerKind) -> impl IntoView {
    let state = State::here();
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
    let remove = move || state.change(|draft| draft.remove(Path::Chargers, row));
    view! {
        <fieldset class="card">
            <legend>{text::numbered(say(m::DayCharger), row, count)}</legend>
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
