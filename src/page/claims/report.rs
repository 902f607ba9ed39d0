//! The verdicts as a lab report has them: a table, and beneath each row what it
//! rests on.

use super::Answered;
use crate::{
    answer::claims::ClaimAnswer,
    page::{
        dom::{El, h},
        reactive::*,
        state::State,
    },
    plan::Plan,
    wording::claims::{self as say, words},
};

/// The table, hidden while nothing is claimed.
pub fn report(state: State, answer: Answered) -> El {
    let texts = move || {
        state.with_plan(|plan| {
            answer.with(|answer| {
                let all = answer.claims.iter();
                all.map(|claim| row_texts(plan, claim)).collect::<Vec<_>>()
            })
        })
    };
    let key = move || {
        let all = texts();
        let all: Vec<String> = all.iter().map(|row| row.join("\n")).collect();
        all.join("\n\n")
    };
    h("div", "bench-report").live_children(key, move || {
        let rows = texts();
        if rows.is_empty() {
            Vec::new()
        } else {
            built(rows)
        }
    })
}

/// Name, claimed, measured, share, verdict; then notes.
fn row_texts(plan: &Plan, answer: &ClaimAnswer) -> Vec<String> {
    let row = say::report_row(plan, answer).into_iter();
    row.chain(say::report_notes(plan, answer)).collect()
}

fn built(rows: Vec<Vec<String>>) -> Vec<El> {
    let heads = words::REPORT_HEADS;
    let head = h("tr", "").children(
        heads
            .iter()
            .map(|text| h("th", "").attr("scope", "col").text(text)),
    );
    let bodies = rows.iter().map(|row| {
        let cells = row.iter().zip(heads).take(heads.len()).enumerate();
        let cells = cells.map(|(at, (text, head))| match at {
            0 => h("th", "").attr("scope", "row").text(text),
            4 => h("td", "verdict").attr("data-head", head).text(text),
            _ => h("td", "").attr("data-head", head).text(text),
        });
        let notes = row.iter().skip(heads.len());
        let notes = notes.map(|text| h("p", "").text(text));
        let notes = h("td", "conditions").attr("colspan", "5").children(notes);
        h("tbody", "")
            .child(h("tr", "").children(cells))
            .child(h("tr", "").child(notes))
    });
    vec![
        h("h3", "").text(words::REPORT),
        h("table", "verdicts")
            .child(h("thead", "").child(head))
            .children(bodies),
        h("p", "source").text(words::REPORT_NOTE),
    ]
}
