//! One chart: geometry from `chart`, drawn; a table behind it; keys and pointer.

use super::{kit::Fold, state::State};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    view::chart::scrub::{Reading, Scrubber, Step},
    view::drawing::{Drawing, Titles, lay_out, markup},
};
use leptos::{ev, prelude::*};
use std::sync::Arc;

/// A chart in the page: its words, and its drawing at present; reads signals.
#[derive(Clone)]
pub struct Plot {
    pub titles: Titles,
    pub draw: Arc<dyn Fn() -> Drawing + Send + Sync>,
}

/// Where a chart is being read: a place among the stops of its series.
type Stop = RwSignal<Option<usize>>;

/// Rows of a table: hundreds are no help.
const MOST_ROWS: usize = 24;

/// A chart with its table.
#[component]
pub fn ChartView(plot: Plot) -> impl IntoView {
    let titles = plot.titles;
    let stop = Stop::new(None);
    let reading = reading(plot.clone(), stop);
    let takeaway = {
        let draw = plot.draw.clone();
        move || draw().takeaway
    };
    let read_out = move || {
        reading.with(|reading| {
            let text = &reading.text;
            if text.is_empty() { say(m::Scrub) } else { text }.to_owned()
        })
    };
    view! {
        <figure class="chart">
            <h3>{titles.title}</h3>
            <p class="axis-name">{titles.y_label}</p>
            <Canvas plot=plot.clone() stop=stop reading=reading />
            <p class="axis-name under">{titles.x_label}</p>
            <p class="read-out" aria-hidden="true">
                {read_out}
            </p>
            <figcaption>{takeaway}</figcaption>
            <Fold class="fold small" title=|| say(m::Table)>
                <Table plot=plot.clone() />
            </Fold>
        </figure>
    }
}

/// Several charts one above another, read at one stop: one word on how to read
/// them, one fold with their tables.
#[component]
pub fn ChartColumn(plots: Vec<Plot>, hint: &'static str) -> impl IntoView {
    let stop = Stop::new(None);
    let tables = plots.clone();
    let charts = plots
        .into_iter()
        .map(|plot| view! { <ColumnChart plot=plot stop=stop /> });
    let tables = move || {
        let tables = tables.iter().map(|plot| {
            view! {
                <div>
                    <h4>{plot.titles.title}</h4>
                    <Table plot=plot.clone() />
                </div>
            }
        });
        tables.collect_view()
    };
    view! {
        {charts.collect_view()}
        <p class="hint">{hint}</p>
        <Fold class="fold small" title=|| say(m::Tables)>
            {tables()}
        </Fold>
    }
}

#[component]
fn ColumnChart(plot: Plot, stop: Stop) -> impl IntoView {
    let reading = reading(plot.clone(), stop);
    let takeaway = {
        let draw = plot.draw.clone();
        move || draw().takeaway
    };
    view! {
        <figure class="chart">
            <h3>
                {plot.titles.title}
                <span class="axis-name">{plot.titles.y_label}</span>
            </h3>
            <Canvas plot=plot stop=stop reading=reading />
            <p class="read-out" aria-hidden="true">
                {move || reading.with(|reading| reading.text.clone())}
            </p>
            <figcaption>{takeaway}</figcaption>
        </figure>
    }
}

/// What a chart says at its stop.
#[derive(Clone, Debug, PartialEq)]
struct Said {
    /// Empty where nothing is being read.
    text: String,
    at: usize,
    last: usize,
}

fn reading(plot: Plot, stop: Stop) -> Memo<Said> {
    Memo::new(move |_| {
        let drawing = (plot.draw)();
        let scrubber = Scrubber::new(&drawing.series);
        let at = stop.get();
        let reading = at.and_then(|at| scrubber.read(at));
        Said {
            text: reading.map_or_else(String::new, |reading| {
                reading_text(plot.titles, &drawing, &reading)
            }),
            at: at.unwrap_or(0),
            last: scrubber.len().saturating_sub(1),
        }
    })
}

/// The drawing itself: a slider over its stops, for keys and screen readers.
#[component]
fn Canvas(plot: Plot, stop: Stop, reading: Memo<Said>) -> impl IntoView {
    let state = State::here();
    let Plot { titles, draw } = plot;
    let drawn = {
        let draw = draw.clone();
        Memo::new(move |_| {
            let drawing = draw();
            let laid = lay_out(&drawing, state.width.get());
            let at = stop.get();
            let reading = at.and_then(|at| Scrubber::new(&drawing.series).read(at));
            markup(
                formatter(),
                &drawing,
                &laid,
                reading.as_ref(),
                r#"aria-hidden="true""#,
            )
        })
    };
    let on_key = {
        let draw = draw.clone();
        move |event: ev::KeyboardEvent| {
            if let Some(step) = step_of(&event.key()) {
                event.prevent_default();
                stop.set(Some(stepped(
                    &untrack(|| draw()),
                    stop.get_untracked(),
                    step,
                )));
            }
        }
    };
    let point = move |event: ev::PointerEvent| {
        let drawing = untrack(|| draw());
        let laid = lay_out(&drawing, state.width.get_untracked());
        let x = laid.x.value(f64::from(event.offset_x()));
        stop.set(Scrubber::new(&drawing.series).nearest(x));
    };
    let said = move || {
        reading.with(|reading| {
            let text = &reading.text;
            if text.is_empty() { say(m::Scrub) } else { text }.to_owned()
        })
    };
    view! {
        <div
            class="canvas"
            tabindex="0"
            role="slider"
            aria-label=titles.title
            aria-valuemin="0"
            aria-valuemax=move || reading.with(|reading| reading.last.to_string())
            aria-valuenow=move || reading.with(|reading| reading.at.to_string())
            aria-valuetext=said
            on:keydown=on_key
            on:pointermove=point.clone()
            on:pointerdown=point
            // Its texts are escaped by the drawing.
            inner_html=move || drawn.get()
        ></div>
    }
}

/// Where a step leads from a stop; the first of any kind begins at the start.
fn stepped(drawing: &Drawing, from: Option<usize>, step: Step) -> usize {
    let scrubber = Scrubber::new(&drawing.series);
    let first = if step == Step::Last {
        step
    } else {
        Step::First
    };
    from.map_or_else(
        || scrubber.moved(0, first),
        |from| scrubber.moved(from, step),
    )
}

fn reading_text(titles: Titles, drawing: &Drawing, reading: &Reading) -> String {
    let values: Vec<String> = drawing
        .names
        .iter()
        .zip(drawing.values(reading))
        .filter_map(|(name, value)| {
            Some(format!("{name} {}", titles.y_text.of(formatter(), value?)))
        })
        .collect();
    format!(
        "{}: {}",
        titles.x_text.of(formatter(), reading.x),
        values.join(", ")
    )
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

/// The numbers behind the curves, spread evenly; the heads first, each row with its
/// stop first.
fn cells(titles: Titles, drawing: &Drawing) -> Vec<Vec<String>> {
    let scrubber = Scrubber::new(&drawing.series);
    let names = drawing.names.iter().map(ToString::to_string);
    let heads = std::iter::once(titles.x_label.to_owned()).chain(names);
    let every = scrubber.len().div_ceil(MOST_ROWS).max(1);
    let stops = (0..scrubber.len()).step_by(every);
    let rows = stops.filter_map(|stop| scrubber.read(stop)).map(|reading| {
        let text = |value: Option<f64>| {
            value.map_or_else(String::new, |y| titles.y_text.of(formatter(), y))
        };
        let values = drawing.values(&reading).into_iter().map(text);
        let first = std::iter::once(titles.x_text.of(formatter(), reading.x));
        first.chain(values).collect()
    });
    std::iter::once(heads.collect()).chain(rows).collect()
}

#[component]
fn Table(plot: Plot) -> impl IntoView {
    let titles = plot.titles;
    // By what it shows: an answer that comes late comes without a turn of the draft.
    let cells = Memo::new(move |_| cells(titles, &(plot.draw)()));
    let heads = move || {
        let heads = cells.get().into_iter().next().unwrap_or_default();
        let head = |text| view! { <th scope="col">{text}</th> };
        heads.into_iter().map(head).collect_view()
    };
    let rows = move || {
        let rows = cells.get().into_iter().skip(1).map(|row| {
            let mut row = row.into_iter();
            let first = row.next();
            view! {
                <tr>
                    <th scope="row">{first}</th>
                    {row.map(|text| view! { <td>{text}</td> }).collect_view()}
                </tr>
            }
        });
        rows.collect_view()
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=titles.title>
            <table>
                <thead>
                    <tr>{heads}</tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}
