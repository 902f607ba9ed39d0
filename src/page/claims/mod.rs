//! "Does it do what it claims?": a log, a report, and what to measure next.

mod air;
mod columns;
mod diagram;
mod edges;
mod editor;
mod figures;
mod file;
mod into;
mod log_view;
mod night;
mod notes;
mod report;

use super::{
    field::NumberField,
    kit::{Fold, Sentences},
    state::State,
};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::{
        claims::{self as answered, ClaimsAnswer},
        pocket::pocket,
    },
    plan::{Path, claims::PriceField},
    text::claims as say,
};
use air::Air;
use editor::ClaimEditor;
use file::LogDesk;
use leptos::prelude::*;
use notes::Notebook;
use report::ClaimReport;

/// The claims' answer, worked out while the question is open.
pub type Answered = Memo<ClaimsAnswer>;

/// All that stands under the question.
#[component]
pub fn ClaimsQuestion() -> impl IntoView {
    let state = State::here();
    let answer: Answered = Memo::new_with_compare(
        move |_| {
            state.with_answer(|night| state.with_plan(|plan| answered::claims(plan, &night.runs)))
        },
        |_, _| true,
    );
    let headline =
        move || state.with_plan(|plan| answer.with(|a| say::headline(formatter(), plan, a)));
    view! {
        <p class="answer" id="claims-answer" role="status">
            {headline}
        </p>
        <diagram::ClaimsDiagram answer=answer />
        <ClaimReport answer=answer />
        <LogDesk />
        <Notebook />
        <ClaimEditor />
        <Air answer=answer />
        <Fold title=|| say(m::ClaimsPrice)>
            <Price answer=answer />
        </Fold>
        <h3>{say(m::ClaimsNext)}</h3>
        <Sentences class="findings" all=move || next(state, answer) />
        <Fold title=|| say(m::ClaimsPocket)>
            <p class="hint">{say(m::ClaimsPocketHint)}</p>
            <Sentences class="findings" all=move || pockets(state) />
        </Fold>
    }
}

/// What to measure next.
fn next(state: State, answer: Answered) -> Vec<String> {
    state.with_plan(|plan| {
        answer.with(|answer| {
            let all = answer.next.iter();
            let all = all.filter_map(|next| say::next_sentence(formatter(), plan, next));
            let said: Vec<String> = all.collect();
            if said.is_empty() {
                return vec![say(m::ClaimsNextNone).to_owned()];
            }
            said
        })
    })
}

/// A line for paper for each mode.
fn pockets(state: State) -> Vec<String> {
    state.with_plan(|plan| {
        let all = pocket(plan);
        let all = all
            .iter()
            .map(|one| say::pocket_sentence(formatter(), plan, one));
        all.collect()
    })
}

#[component]
fn Price(answer: Answered) -> impl IntoView {
    let said = move || {
        answer.with(|a| {
            a.money
                .as_ref()
                .map(|money| say::money_sentence(formatter(), money))
        })
    };
    let fields = PriceField::ALL.iter();
    let fields = fields.map(|&field| view! { <NumberField path=Path::Price(field) /> });
    view! {
        <div class="grid">{fields.collect_view()}</div>
        <p class="detail">{move || said().unwrap_or_default()}</p>
    }
}
