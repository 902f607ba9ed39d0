//! The bank: the numbers to start from, and the rest behind a fold.

use super::{
    field::{Choice, NumberField, TextField},
    kit::{Press, anew},
    start::BankStart,
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    physics::battery::Chemistry,
    plan::{
        check::MOST_BANKS,
        path::{BankField as B, Path},
    },
    text::{self},
};
use leptos::prelude::*;

/// All banks, one under another.
///
/// Rows hold no state of their own, everything in them is derived from the
/// draft by place: they are built anew only when their number changes.
#[component]
pub fn Banks() -> impl IntoView {
    let state = State::here();
    let count = move || state.with_plan(|plan| plan.banks.len());
    let add = move || state.edit(|plan| plan.banks.extend(plan.banks.last().cloned()));
    let cards = move |count: usize| {
        let cards = (0..count)
            .map(|bank| view! { <BankCard bank=bank count=count /> })
            .collect_view();
        view! {
            {cards}
            {(count < MOST_BANKS)
                .then(|| view! { <Press class="quiet" words=say(m::AddBank) press=add /> })}
        }
        .into_any()
    };
    view! { <div>{anew(count, cards)}</div> }
}

#[component]
fn BankCard(bank: usize, count: usize) -> impl IntoView {
    let state = State::here();
    let path = move |field| Path::Bank(bank, field);
    let facts = move || {
        state.with_answer(|answer| {
            let facts = answer.banks.iter().find(|facts| facts.bank == bank);
            facts.map_or_else(String::new, |facts| text::bank_sentence(formatter(), facts))
        })
    };
    let remove = move || state.change(|draft| draft.remove(Path::Banks, bank));
    let several = (count > 1).then(|| {
        view! {
            <div>
                <TextField
                    id=format!("bank-name-{bank}")
                    label=say(m::Name)
                    place=move |plan| plan.banks.get_mut(bank).map(|bank| &mut bank.name)
                />
                <Press class="quiet" words=say(m::RemoveBank) press=remove />
            </div>
        }
    });
    view! {
        <fieldset class="card">
            <legend>{text::numbered(say(m::Bank), bank, count)}</legend>
            {(bank > 0).then(|| view! { <BankStart bank=bank /> })}
            <div class="grid">
                <ChemistryChoice bank=bank />
                <NumberField path=path(B::DepthPercent) />
                <NumberField path=path(B::SeriesCount) />
                <NumberField path=path(B::ParallelCount) />
            </div>
            <p class="facts">{facts}</p>
            {several}
        </fieldset>
    }
}

#[component]
fn ChemistryChoice(bank: usize) -> impl IntoView {
    let state = State::here();
    let names = || {
        let names = Chemistry::ALL.map(|kind| text::chemistry_name(formatter(), kind));
        names.map(str::to_owned).to_vec()
    };
    let chosen = move || {
        let kind = state.with_plan(|plan| plan.banks.get(bank).map(|bank| bank.chemistry));
        let place = Chemistry::ALL.iter().position(|&one| Some(one) == kind);
        place.unwrap_or(0)
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let (Some(bank), Some(&kind)) = (plan.banks.get_mut(bank), Chemistry::ALL.get(index))
            {
                bank.chemistry = kind;
            }
        });
    };
    view! {
        <Choice
            id=format!("chemistry-{bank}")
            label=say(m::Chemistry)
            names=names
            chosen=chosen
            choose=choose
        />
    }
}

/// Everything else about a bank, for *What was assumed*.
#[component]
pub fn BankRest(bank: usize) -> impl IntoView {
    let state = State::here();
    let field = move |field| view! { <NumberField path=Path::Bank(bank, field) /> };
    let is_lead = move || {
        state.with_plan(|plan| {
            let bank = plan.banks.get(bank);
            bank.is_some_and(|bank| bank.chemistry.is_lead_acid())
        })
    };
    let rates = move |is_lead: bool| {
        let fields = || {
            [B::RatedHoursH, B::PeukertExponent]
                .map(field)
                .collect_view()
        };
        is_lead
            .then(|| view! { <div class="grid">{fields()}</div> })
            .into_any()
    };
    let general = [
        B::StartChargePercent,
        B::HealthPercent,
        B::CutoffV,
        B::BatteryCurrentLimitA,
        B::BatteryResistanceMohm,
        B::ParasiticW,
    ];
    let measured = [B::MeasuredAh, B::MeasuredWh, B::MeasuredLoadW];
    view! {
        <div class="grid">{general.map(field).collect_view()}</div>
        <div>{anew(is_lead, rates)}</div>
        <h3>{say(m::MeasuredTitle)}</h3>
        <div class="grid">{measured.map(field).collect_view()}</div>
    }
}
