//! One chart: geometry from `chart`, drawn; a table behind it; keys and pointer.

use super::reactive::*;
use super::{
    dom::{El, always, h, named_fold, set_attr, set_text},
    state::State,
};
use crate::{
    chart::scrub::{Reading, Scrubber, Step},
    drawing::{Drawing, Titles, lay_out, markup},
    wording::words,
};
use std::{cell::RefCell, rc::Rc};
use wasm_bindgen::JsCast;

/// A chart in the page: its words, and its drawing at present; reads signals.
#[derive(Clone)]
pub struct Plot {
    pub titles: Titles,
    pub draw: Rc<dyn Fn() -> Drawing>,
}

/// Rows of a table: hundreds are no help.
const MOST_ROWS: usize = 24;

/// A chart with its table.
pub fn chart_view(state: State, plot: Plot) -> El {
    chart_at(state, plot, RwSignal::new(None))
}

/// Several charts one above another, read at one stop: one word on how to read
/// them, one fold with their tables.
pub fn chart_column(state: State, plots: Vec<Plot>, hint: &str) -> Vec<El> {
    let stop = RwSignal::new(None);
    let tables = plots.clone();
    let views = plots.into_iter().map(|plot| {
        let canvas = canvas(state, plot.clone(), stop);
        let read_out = h("p", "read-out").attr("aria-hidden", "true");
        show_reading(
            plot.clone(),
            (stop, ""),
            canvas.0.clone(),
            read_out.0.clone(),
        );
        let caption = h("figcaption", "").live_text({
            let draw = plot.draw.clone();
            move || draw().takeaway
        });
        let head = h("h3", "")
            .text(plot.titles.title)
            .child(h("span", "axis-name").text(plot.titles.y_label));
        h("figure", "chart")
            .child(head)
            .child(canvas)
            .child(read_out)
            .child(caption)
    });
    let table = named_fold("fold small", words::TABLES, move || {
        let tables = tables.iter().map(|plot| {
            h("div", "")
                .child(h("h4", "").text(plot.titles.title))
                .child(table(plot.clone()))
        });
        tables.collect()
    });
    let hint = h("p", "hint").text(hint);
    views.chain([hint, table]).collect()
}

fn chart_at(state: State, plot: Plot, stop: RwSignal<Option<usize>>) -> El {
    let canvas = canvas(state, plot.clone(), stop);
    let read_out = h("p", "read-out").attr("aria-hidden", "true");
    let takeaway = h("figcaption", "");
    let read = (stop, words::SCRUB);
    show_reading(plot.clone(), read, canvas.0.clone(), read_out.0.clone());
    let caption = takeaway.0.clone();
    let draw = plot.draw.clone();
    always(move || set_text(&caption, &draw().takeaway));
    let titles = plot.titles;
    h("figure", "chart")
        .child(h("h3", "").text(titles.title))
        .child(h("p", "axis-name").text(titles.y_label))
        .child(canvas)
        .child(h("p", "axis-name under").text(titles.x_label))
        .child(read_out)
        .child(takeaway)
        .child(named_fold("fold small", words::TABLE, move || {
            vec![table(plot.clone())]
        }))
}

/// The drawing itself: a slider over its stops, for keys and screen readers.
fn canvas(state: State, plot: Plot, stop: RwSignal<Option<usize>>) -> El {
    let (draw, title) = (plot.draw, plot.titles.title);
    let (at_key, at_pointer) = (draw.clone(), draw.clone());
    let on_key = move |event: web_sys::Event| {
        let Some(step) = event
            .dyn_ref::<web_sys::KeyboardEvent>()
            .and_then(|e| step_of(&e.key()))
        else {
            return;
        };
        event.prevent_default();
        let scrubber = Scrubber::new(&untrack(|| at_key()).series);
        let first = if step == Step::Last {
            step
        } else {
            Step::First
        };
        let to = stop
            .get_untracked()
            .map_or_else(|| scrubber.moved(0, first), |at| scrubber.moved(at, step));
        stop.set(Some(to));
    };
    let on_point: Rc<dyn Fn(web_sys::Event)> = Rc::new(move |event: web_sys::Event| {
        let Some(event) = event.dyn_ref::<web_sys::MouseEvent>() else {
            return;
        };
        let drawing = untrack(|| at_pointer());
        let laid = lay_out(&drawing, state.width.get_untracked());
        let x = laid.x.value(f64::from(event.offset_x()));
        stop.set(Scrubber::new(&drawing.series).nearest(x));
    });
    let on_move = on_point.clone();
    h("div", "canvas")
        .attr("tabindex", "0")
        .attr("role", "slider")
        .attr("aria-label", title)
        .attr("aria-valuemin", "0")
        .live_markup(move || {
            let drawing = draw();
            let laid = lay_out(&drawing, state.width.get());
            let reading = stop
                .get()
                .and_then(|at| Scrubber::new(&drawing.series).read(at));
            markup(&drawing, &laid, reading.as_ref(), r#"aria-hidden="true""#)
        })
        .on("keydown", on_key)
        .on("pointermove", move |event| on_move(event))
        .on("pointerdown", move |event| on_point(event))
}

/// Keeps what the slider says in step with the stop.
fn show_reading(
    plot: Plot,
    (stop, unread): (RwSignal<Option<usize>>, &'static str),
    canvas: web_sys::Element,
    read_out: web_sys::Element,
) {
    always(move || {
        let drawing = (plot.draw)();
        let scrubber = Scrubber::new(&drawing.series);
        let at = stop.get();
        let text = at.and_then(|at| scrubber.read(at)).map_or_else(
            || unread.to_owned(),
            |reading| reading_text(plot.titles, &drawing, &reading),
        );
        set_text(&read_out, &text);
        let said = if text.is_empty() { words::SCRUB } else { &text };
        set_attr(&canvas, "aria-valuetext", Some(said));
        set_attr(&canvas, "aria-valuenow", Some(&at.unwrap_or(0).to_string()));
        set_attr(
            &canvas,
            "aria-valuemax",
            Some(&scrubber.len().saturating_sub(1).to_string()),
        );
    });
}

fn reading_text(titles: Titles, drawing: &Drawing, reading: &Reading) -> String {
    let values: Vec<String> = drawing
        .names
        .iter()
        .zip(drawing.values(reading))
        .filter_map(|(name, value)| Some(format!("{name} {}", titles.y_text.of(value?))))
        .collect();
    format!("{}: {}", titles.x_text.of(reading.x), values.join(", "))
}

fn step_of(key: &str) -> Option<Step> {
    Some(match key {
        "ArrowLeft" | "ArrowDown" => Step::Back,
        "ArrowRight" | "ArrowUp" => Step::On,
        "PageDown" => Step::FarBack,
        "PageUp" => Step::FarOn,
        "Home" => Step::First,
        "End" => Step::Last,
        _ => return None,
    })
}

/// The numbers behind the curves, spread evenly.
fn table(plot: Plot) -> El {
    let titles = plot.titles;
    // The heads, then the rows, each with its stop first.
    let cells = move || {
        let drawing = (plot.draw)();
        let scrubber = Scrubber::new(&drawing.series);
        let first = std::iter::once(titles.x_label.to_owned());
        let heads = first.chain(drawing.names.iter().cloned()).collect();
        let every = scrubber.len().div_ceil(MOST_ROWS).max(1);
        let rows = (0..scrubber.len())
            .step_by(every)
            .filter_map(|stop| scrubber.read(stop))
            .map(|reading| {
                let values = drawing.values(&reading).into_iter();
                let text = |y| titles.y_text.of(y);
                let values = values.map(|value| value.map_or_else(String::new, text));
                std::iter::once(titles.x_text.of(reading.x))
                    .chain(values)
                    .collect::<Vec<_>>()
            });
        std::iter::once(heads).chain(rows).collect::<Vec<_>>()
    };
    let rows_of = |cells: &[Vec<String>]| {
        let row = |(at, row): (usize, &Vec<String>)| {
            let cells = row
                .iter()
                .enumerate()
                .map(|(column, text)| match (at, column) {
                    (0, _) => h("th", "").attr("scope", "col").text(text),
                    (_, 0) => h("th", "").attr("scope", "row").text(text),
                    _ => h("td", "").text(text),
                });
            h("tr", "").children(cells)
        };
        let mut rows = cells.iter().enumerate().map(row);
        let heads = h("thead", "").children(rows.next());
        [heads, h("tbody", "").children(rows)]
    };
    let table = h("table", "");
    let (element, shown) = (table.0.clone(), RefCell::new(Vec::new()));
    // By what it shows: an answer that comes late comes without a turn of the draft.
    always(move || {
        let now = cells();
        if now == *shown.borrow() {
            return;
        }
        element.set_text_content(None);
        for part in rows_of(&now) {
            let _ = element.append_child(&part.0);
        }
        shown.replace(now);
    });
    h("div", "scroll")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", titles.title)
        .child(table)
}
