//! The bank: the numbers to start from, and the rest behind a fold.

use super::{
    field::{Choice, NumberField, TextField},
    kit::{Press, anew},
    start::BankStart,
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::page::rows::{AddRow, Row, alike, rows};
use crate::plan::Plan;
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
/// Everything in a row is derived from the draft by place.
#[component]
pub fn Banks() -> impl IntoView {
    let state = State::here();
    let add = move || state.edit(|plan| plan.banks.extend(plan.banks.last().cloned()));
    let count = |plan: &Plan| plan.banks.len();
    let card = |row| view! { <BankCard row=row /> }.into_any();
    view! {
        <div>{rows(Path::Banks, move |plan| alike(count(plan)), card)}</div>
        <AddRow words=say(m::AddBank) has_room=move |plan| count(plan) < 2 press=add />
        <AddRow
            words=say(m::AddAnotherBank)
            has_room=move |plan| (2..MOST_BANKS).contains(&count(plan))
            press=add
        />
    }
}

#[component]
fn BankCard(row: Row) -> impl IntoView {
    let state = State::here();
    let bank = row.at;
    let path = move |field| Path::Bank(bank, field);
    let facts = move || {
        state.with_answer(|answer| {
            let facts = answer.banks.iter().find(|facts| facts.bank == bank);
            facts.map_or_else(String::new, |facts| text::bank_sentence(formatter(), facts))
        })
    };
    let remove = move || state.remove_row(Path::Banks, bank);
    let several = row.has_others.then(|| {
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
            <legend>{row.title(say(m::Bank))}</legend>
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
        if is_lead {
            view! { <div class="grid">{fields()}</div> }.into_any()
        } else {
            view! { <div class="grid">{field(B::PolarisationPercent)}</div> }.into_any()
        }
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
