//! Figures, tables and the whole answer, each with its buttons.

use super::{
    super::{
        dom::{El, button, h},
        reactive::untrack,
        state::State,
    },
    Said, opened, save,
};
use crate::{
    answer::{Answer, answer},
    pass_on::{
        figure::{Figure, figures as figures_of},
        name::file_name,
        table::Table,
        tables::tables as tables_of,
    },
    plan::open::indented,
    wording::hand_on as words,
};
use std::rc::Rc;

/// What spreadsheets need to read a file as UTF-8.
const BYTE_ORDER_MARK: &str = "\u{feff}";

/// A line for each picture: its name, SVG, PNG.
pub fn figures(state: State, said: Said) -> El {
    let inside = move |plan: &_, answer: &_| {
        let lines = figures_of(plan, answer).into_iter();
        listed(
            words::FIGURES_HINT,
            lines.map(|figure| figure_line(said, figure)),
        )
    };
    opened(words::FIGURES, inside, state)
}

fn figure_line(said: Said, figure: Figure) -> El {
    let figure = Rc::new(figure);
    let (title, other) = (figure.title.clone(), figure.clone());
    let as_svg = {
        let title = title.clone();
        move || save::text(said, file_name(&title, "svg"), save::SVG, &figure.svg())
    };
    let as_png = {
        let title = title.clone();
        move || save::png(said, file_name(&title, "png"), &other.svg())
    };
    line(
        &title,
        [("SVG", Box::new(as_svg)), ("PNG", Box::new(as_png))],
    )
}

/// A line for each table: its name, CSV, Markdown.
pub fn tables(state: State, said: Said) -> El {
    let inside = move |plan: &_, answer: &_| {
        let figures = figures_of(plan, answer);
        let lines = tables_of(plan, answer, &figures).into_iter();
        listed(
            words::TABLES_HINT,
            lines.map(|table| table_line(said, table)),
        )
    };
    opened(words::TABLES, inside, state)
}

fn table_line(said: Said, table: Table) -> El {
    let table = Rc::new(table);
    let (title, other) = (table.title.clone(), table.clone());
    let as_csv = {
        let title = title.clone();
        move || {
            let text = format!("{BYTE_ORDER_MARK}{}", table.csv());
            save::text(said, file_name(&title, "csv"), save::CSV, &text);
        }
    };
    let as_markdown = {
        let title = title.clone();
        move || {
            save::text(
                said,
                file_name(&title, "md"),
                save::MARKDOWN,
                &other.markdown(),
            )
        }
    };
    line(
        &title,
        [
            ("CSV", Box::new(as_csv)),
            ("Markdown", Box::new(as_markdown)),
        ],
    )
}

/// Everything that the engine says, for a program.
pub fn whole(state: State, said: Said) -> El {
    let save_it = move || {
        let text = untrack(|| state.with_plan(|plan| json(&answer(plan))));
        save::text(said, file_name("answer", "json"), save::JSON, &text);
    };
    h("div", "")
        .child(h("h3", "").text(words::WHOLE))
        .child(h("p", "hint").text(words::WHOLE_HINT))
        .child(h("div", "buttons").child(button("", words::SAVE_ANSWER, save_it)))
}

fn json(answer: &Answer) -> String {
    indented(&serde_json::to_string(answer).unwrap_or_default())
}

fn listed(hint: &str, lines: impl Iterator<Item = El>) -> Vec<El> {
    let list = h("ul", "hand-on-list").children(lines);
    let nothing = list.0.child_element_count() == 0;
    let hint = if nothing { words::NOTHING_YET } else { hint };
    vec![h("p", "hint").text(hint), list]
}

/// A kind of file, and what makes one.
type Kind = (&'static str, Box<dyn Fn()>);

/// A name and the kinds of file that it can be had as.
fn line(title: &str, kinds: [Kind; 2]) -> El {
    let buttons = kinds.map(|(kind, press)| {
        button("quiet", kind, press).attr("aria-label", &words::save_as(title, kind))
    });
    h("li", "")
        .child(h("span", "").text(title))
        .child(h("div", "kinds").children(buttons))
}
