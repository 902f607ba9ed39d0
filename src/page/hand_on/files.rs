//! Figures, tables and the whole answer, each with its buttons.

use super::{MadeWhileOpen, Said, save};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::{Answer, answer},
    page::{kit::Press, state::State},
    plan::Plan,
    share::{
        figure::{Figure, figures as figures_of},
        name::file_name,
        table::Table,
        tables::tables as tables_of,
    },
    text::hand_on as words,
};
use leptos::prelude::*;
use std::sync::Arc;

/// What spreadsheets need to read a file as UTF-8.
const BYTE_ORDER_MARK: &str = "\u{feff}";

/// A line for each picture: its name, SVG, PNG.
#[component]
pub fn Figures(said: Said) -> impl IntoView {
    let make = move |plan: &Plan, answer: &Answer| {
        let figures = figures_of(formatter(), plan, answer).into_iter();
        let lines = figures.map(|figure| view! { <FigureLine said=said figure=figure /> });
        listed(
            say(m::HandOnFiguresHint),
            lines.map(IntoAny::into_any).collect(),
        )
    };
    view! { <MadeWhileOpen title=say(m::HandOnFigures) make=make /> }
}

#[component]
fn FigureLine(said: Said, figure: Figure) -> impl IntoView {
    let figure = Arc::new(figure);
    let title = figure.title.clone();
    let as_png = {
        let figure = figure.clone();
        move || {
            save::png(
                said,
                file_name(&figure.title, "png"),
                &figure.svg(formatter()),
            )
        }
    };
    let as_svg = move || {
        let name = file_name(&figure.title, "svg");
        save::text(said, name, save::SVG, &figure.svg(formatter()));
    };
    view! {
        <Line title=title.clone()>
            <SaveAs title=title.clone() kind="SVG" press=as_svg.clone() />
            <SaveAs title=title.clone() kind="PNG" press=as_png.clone() />
        </Line>
    }
}

/// A line for each table: its name, CSV, Markdown.
#[component]
pub fn Tables(said: Said) -> impl IntoView {
    let make = move |plan: &Plan, answer: &Answer| {
        let figures = figures_of(formatter(), plan, answer);
        let tables = tables_of(formatter(), plan, answer, &figures).into_iter();
        let lines = tables.map(|table| view! { <TableLine said=said table=table /> });
        listed(
            say(m::HandOnTablesHint),
            lines.map(IntoAny::into_any).collect(),
        )
    };
    view! { <MadeWhileOpen title=say(m::HandOnTables) make=make /> }
}

#[component]
fn TableLine(said: Said, table: Table) -> impl IntoView {
    let table = Arc::new(table);
    let title = table.title.clone();
    let as_csv = {
        let table = table.clone();
        move || {
            let text = format!("{BYTE_ORDER_MARK}{}", table.csv());
            save::text(said, file_name(&table.title, "csv"), save::CSV, &text);
        }
    };
    let as_markdown = move || {
        let name = file_name(&table.title, "md");
        save::text(said, name, save::MARKDOWN, &table.markdown(formatter()));
    };
    view! {
        <Line title=title.clone()>
            <SaveAs title=title.clone() kind="CSV" press=as_csv.clone() />
            <SaveAs title=title.clone() kind="Markdown" press=as_markdown.clone() />
        </Line>
    }
}

/// A name and the kinds of file that it can be had as.
#[component]
fn Line(title: String, children: Children) -> impl IntoView {
    view! {
        <li>
            <span>{title}</span>
            <div class="kinds">{children()}</div>
        </li>
    }
}

#[component]
fn SaveAs(
    title: String,
    kind: &'static str,
    press: impl Fn() + Send + Sync + 'static,
) -> impl IntoView {
    let label = words::save_as(formatter(), &title, kind);
    view! { <Press class="quiet" words=kind label=label press=press /> }
}

fn listed(hint: &'static str, lines: Vec<AnyView>) -> AnyView {
    let hint = if lines.is_empty() {
        say(m::HandOnNothingYet)
    } else {
        hint
    };
    view! {
        <p class="hint">{hint}</p>
        <ul class="hand-on-list">{lines}</ul>
    }
    .into_any()
}

/// Everything that the engine says, for a program.
#[component]
pub fn Whole(said: Said) -> impl IntoView {
    let state = State::here();
    let save_it = move || {
        let text = state.plan_now(|plan| json(&answer(plan)));
        save::text(said, file_name("answer", "json"), save::JSON, &text);
    };
    view! {
        <div>
            <h3>{say(m::HandOnWhole)}</h3>
            <p class="hint">{say(m::HandOnWholeHint)}</p>
            <div class="buttons">
                <Press words=say(m::HandOnSaveAnswer) press=save_it />
            </div>
        </div>
    }
}

fn json(answer: &Answer) -> String {
    serde_json::to_string_pretty(answer).unwrap_or_default()
}
