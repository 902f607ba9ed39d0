//! The verdicts as a lab report has them: a table, and beneath each row what it
//! rests on.

use super::Answered;
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::claims::ClaimAnswer,
    page::state::State,
    plan::Plan,
    text::claims::{self as say, words},
};
use leptos::prelude::*;

/// The table, hidden while nothing is claimed.
#[component]
pub fn ClaimReport(answer: Answered) -> impl IntoView {
    let state = State::here();
    let texts = Memo::new(move |_| {
        state.with_plan(|plan| {
            answer.with(|answer| {
                let all = answer.claims.iter();
                all.map(|claim| row_texts(plan, claim)).collect::<Vec<_>>()
            })
        })
    });
    let report = move || {
        let rows = texts.get();
        (!rows.is_empty()).then(|| view! { <Verdicts rows=rows /> })
    };
    view! { <div class="bench-report">{report}</div> }
}

/// Name, claimed, measured, share, verdict; then notes.
fn row_texts(plan: &Plan, answer: &ClaimAnswer) -> Vec<String> {
    let row = say::report_row(formatter(), plan, answer).into_iter();
    row.chain(say::report_notes(formatter(), plan, answer))
        .collect()
}

#[component]
fn Verdicts(rows: Vec<Vec<String>>) -> impl IntoView {
    let heads = words::report_heads(formatter());
    let head = heads.map(|text| view! { <th scope="col">{text}</th> });
    let rows = rows.into_iter().map(|row| view! { <Verdict row=row /> });
    view! {
        <h3>{say(m::ClaimsReport)}</h3>
        <table class="verdicts">
            <thead>
                <tr>{head.collect_view()}</tr>
            </thead>
            {rows.collect_view()}
        </table>
        <p class="source">{say(m::ClaimsReportNote)}</p>
    }
}

/// A row of the report, and what it rests on beneath it.
#[component]
fn Verdict(row: Vec<String>) -> impl IntoView {
    let heads = words::report_heads(formatter());
    let mut texts = row.into_iter();
    let name = texts.next();
    let cells = heads.into_iter().enumerate().skip(1);
    let cells = cells.map(|(at, head)| {
        let class = (at == VERDICT).then_some("verdict");
        view! {
            <td class=class data-head=head>
                {texts.next()}
            </td>
        }
    });
    let cells = cells.collect_view();
    let notes = texts.map(|text| view! { <p>{text}</p> });
    view! {
        <tbody>
            <tr>
                <th scope="row">{name}</th>
                {cells}
            </tr>
            <tr>
                <td class="conditions" colspan="5">
                    {notes.collect_view()}
                </td>
            </tr>
        </tbody>
    }
}

/// The column of the verdicts.
const VERDICT: usize = 4;
