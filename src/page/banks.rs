//! The bank: the numbers to start from, and the rest behind a fold.

use super::{
    field::{Choice, NameField, NumberField},
    state::State,
};
use crate::{
    bank::Chemistry,
    plan::{
        check::MOST_BANKS,
        path::{BankField as B, Path},
    },
    wording::{self, words},
};
use leptos::prelude::*;

/// All banks, one under another.
#[component]
pub fn Banks() -> impl IntoView {
    let state = State::get();
    let count = Memo::new(move |_| state.plan.with(|plan| plan.banks.len()));
    view! {
        // Rows hold no state of their own, everything in them is derived from
        // the draft by place: so their place is their key.
        <For each=move || 0..count.get() key=|bank| *bank let:bank>
            <BankCard bank count/>
        </For>
        {move || (count.get() < MOST_BANKS).then(|| view! {
            <button type="button" class="quiet" on:click=move |_| add(state)>{words::ADD_BANK}</button>
        })}
    }
}

/// Another bank to lay beside: a copy of the last, to be changed.
fn add(state: State) {
    state.edit(|plan| {
        if let Some(last) = plan.banks.last().cloned() {
            plan.banks.push(last);
        }
    });
}

#[component]
fn BankCard(bank: usize, count: Memo<usize>) -> impl IntoView {
    let state = State::get();
    let path = move |field| Path::Bank(bank, field);
    let title = move || {
        if count.get() > 1 {
            format!("{} {}", words::BANK, bank + 1)
        } else {
            words::BANK.to_owned()
        }
    };
    let facts = move || {
        state.answer.with(|answer| {
            answer
                .banks
                .iter()
                .find(|facts| facts.bank == bank)
                .map(wording::bank_sentence)
        })
    };
    view! {
        <fieldset class="card">
            <legend>{title}</legend>
            <div class="grid start">
                <NumberField path=path(B::BlockRatedAh) large=true/>
                <NumberField path=path(B::DepthPercent) large=true/>
            </div>
            <div class="grid">
                <ChemistryChoice bank/>
                <NumberField path=path(B::BlockNominalV)/>
                <NumberField path=path(B::SeriesCount)/>
                <NumberField path=path(B::ParallelCount)/>
            </div>
            <p class="facts">{facts}</p>
            {move || (count.get() > 1).then(|| view! {
                <div class="grid">
                    <NameField
                        id=format!("bank-name-{bank}")
                        label=words::NAME
                        get=move |plan| plan.banks.get(bank).map_or_else(String::new, |bank| bank.name.clone())
                        set=move |plan, name| if let Some(bank) = plan.banks.get_mut(bank) { bank.name = name; }
                    />
                </div>
                <button type="button" class="quiet" on:click=move |_| state.change(|draft| draft.remove(Path::Banks, bank))>
                    {words::REMOVE_BANK}
                </button>
            })}
        </fieldset>
    }
}

#[component]
fn ChemistryChoice(bank: usize) -> impl IntoView {
    let state = State::get();
    let names = Chemistry::ALL
        .map(|kind| wording::chemistry_name(kind).to_owned())
        .to_vec();
    let chosen = Memo::new(move |_| {
        let kind = state
            .plan
            .with(|plan| plan.banks.get(bank).map(|bank| bank.chemistry));
        Chemistry::ALL
            .iter()
            .position(|&other| Some(other) == kind)
            .unwrap_or(0)
    });
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let (Some(bank), Some(&kind)) = (plan.banks.get_mut(bank), Chemistry::ALL.get(index))
            {
                bank.chemistry = kind;
            }
        });
    };
    view! {
        <Choice id=format!("chemistry-{bank}") label=words::CHEMISTRY options=names chosen on_choice=choose/>
    }
}

/// Everything else about a bank, for *What was assumed*.
#[component]
pub fn BankRest(bank: usize) -> impl IntoView {
    let state = State::get();
    let path = move |field| Path::Bank(bank, field);
    let lead = Memo::new(move |_| {
        state.plan.with(|plan| {
            plan.banks
                .get(bank)
                .is_some_and(|bank| bank.chemistry.is_lead_acid())
        })
    });
    view! {
        <div class="grid">
            <NumberField path=path(B::StartChargePercent)/>
            <NumberField path=path(B::HealthPercent)/>
            <NumberField path=path(B::CutoffV)/>
            <NumberField path=path(B::BlockCurrentLimitA)/>
            <NumberField path=path(B::BlockResistanceMohm)/>
            <NumberField path=path(B::AlwaysOnW)/>
            {move || lead.get().then(|| view! {
                <NumberField path=path(B::RatedHoursH)/>
                <NumberField path=path(B::PeukertExponent)/>
            })}
        </div>
        <h4>{words::MEASURED_TITLE}</h4>
        <div class="grid">
            <NumberField path=path(B::MeasuredAh)/>
            <NumberField path=path(B::MeasuredWh)/>
            <NumberField path=path(B::MeasuredLoadW)/>
        </div>
    }
}
