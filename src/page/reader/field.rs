//! A reader's number: a label, a text, its unit, and what is wrong.
//!
//! The author's page has fields of its own (`page/field.rs`), with origins.

use super::Open;
use crate::page::locale::formatter;
use crate::{
    page::field::{Entry, Shown, id_of},
    physics::battery::Chemistry,
    plan::{Path, Plan, draft::Draft},
    text::{self, reader as words},
};
use leptos::prelude::*;

/// What is open at an address: a number, or the chemistry.
#[component]
pub fn OpenField(path: Path) -> impl IntoView {
    match path {
        Path::Chemistry(bank) => view! { <ChemistryField path=path bank=bank /> }.into_any(),
        _ => view! { <NumberField path=path /> }.into_any(),
    }
}

#[component]
fn ChemistryField(path: Path, bank: usize) -> impl IntoView {
    let Open { state, author } = Open::here();
    let id = id_of(path);
    let chosen = move || state.with_plan(|plan| plan.banks[bank].chemistry);
    let choose = move |event| {
        let name = event_target_value(&event);
        let kind = Chemistry::ALL.into_iter().find(|kind| kind.key() == name);
        if let Some(kind) = kind {
            state.edit(|plan| {
                plan.banks[bank].chemistry = kind;
                author.with_value(|author| plan.follow(author));
            });
        }
    };
    let options = Chemistry::ALL.map(|kind| {
        view! {
            <option value=kind.key() selected=move || chosen() == kind>
                {text::chemistry_name(formatter(), kind)}
            </option>
        }
    });
    view! {
        <div class="field choice">
            <label for=id.clone()>{author.with_value(|author| words::label(formatter(), author, path))}</label>
            <select id=id prop:value=move || chosen().key() on:change=choose>
                {options.collect_view()}
            </select>
        </div>
    }
}

/// A field as the reader's language has it.
fn shown(draft: &Draft, label: &str, path: Path) -> Shown {
    let written = |text: String| {
        let is_clock = text.contains(':');
        if is_clock {
            text
        } else {
            formatter().format().typed(&text)
        }
    };
    let sign = draft.unit_beside(path);
    let troubled = draft.trouble(path).is_some();
    let echo = draft.echo(path);
    let echo = echo.map(|echo| text::echo_sentence(formatter(), echo));
    Shown {
        // What is typed stays as it is; what is settled is written as the language
        // has it.
        text: match draft.text(path) {
            text if draft.is_typing(path) => text,
            text => written(text),
        },
        placeholder: written(draft.default_text(path)),
        sign: sign.map_or("", |unit| formatter().sign(unit)),
        error: match draft.wanted(path) {
            Some(wanted) if troubled => words::trouble(formatter(), label, wanted),
            _ => String::new(),
        },
        echo: echo.unwrap_or_default(),
    }
}

#[component]
fn NumberField(path: Path) -> impl IntoView {
    let Open { state, author } = Open::here();
    let label = author.with_value(|author| words::label(formatter(), author, path));
    let name = label.clone();
    let shown = Memo::new(move |_| state.with_draft(|draft| shown(draft, &name, path)));
    // Takes the text, and what hangs on the number with it.
    let typed = move |text: String| {
        state.type_text(path, &text);
        state.rename(|plan: &mut Plan| author.with_value(|author| plan.follow(author)));
    };
    view! {
        <Entry
            path=path
            id=id_of(path)
            label=label
            hint=text::field_hint(formatter(), path)
            meaning=text::field_meaning(formatter(), path)
            is_large=true
            shown=shown
            typed=typed
        />
    }
}
