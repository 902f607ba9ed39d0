//! One chart: geometry from `chart`, drawn; a table behind it; keys and pointer.

use super::reactive::*;
use super::{
    dom::{El, always, h, named_fold, set_attr, set_text},
    keep,
    state::State,
};
use crate::{
    chart::{
        axis::{AxisTick, TickLabel},
        figure::{Figure, figure},
        frame::{Frame, XKind, YRange},
        scrub::{Reading, Scrubber, Step},
        series::Series,
        svg::{Anchor, Svg},
    },
    wording::{self, words},
};
use wasm_bindgen::JsCast;

/// How a value is written in a read-out and in the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Text {
    Hours,
    AmpHours,
    Percent,
    Volts,
}

impl Text {
    fn of(self, value: f64) -> String {
        match self {
            Self::Hours => wording::number::duration_fine(value),
            Self::AmpHours => wording::number::with_unit(value, "Ah"),
            Self::Percent => wording::number::percent(value),
            Self::Volts => wording::number::volts(value),
        }
    }
}

/// What a chart shows: names and curves in the same order, and its words.
pub struct Drawing {
    pub takeaway: String,
    pub names: Vec<String>,
    pub series: Vec<Series>,
    pub x_kind: XKind,
    pub y_range: YRange,
}

/// What stays the same of a chart, whatever the plan.
#[derive(Clone, Copy)]
pub struct Plot {
    pub title: &'static str,
    pub x_label: &'static str,
    pub y_label: &'static str,
    pub x_text: Text,
    pub y_text: Text,
    /// The drawing of the present answer; reads the state.
    pub draw: fn(State) -> Drawing,
}

const FONT_PX: f64 = 12.0;
/// Wide charts may be taller, up to a limit.
const HEIGHT_SHARE: f64 = 0.6;
const HEIGHT_PX: (f64, f64) = (200.0, 320.0);
/// Styles by place; the style sheet has as many.
const STYLES: usize = 4;
/// Rows of a table: hundreds are no help.
const MOST_ROWS: usize = 24;

/// A chart with its table.
pub fn chart_view(state: State, plot: Plot) -> El {
    let stop = RwSignal::new(None::<usize>);
    let canvas = canvas(state, plot, stop);
    let read_out = h("p", "read-out").attr("aria-hidden", "true");
    let takeaway = h("figcaption", "");
    show_reading(state, plot, stop, canvas.0.clone(), read_out.0.clone());
    let caption = takeaway.0.clone();
    always(move || set_text(&caption, &(plot.draw)(state).takeaway));
    h("figure", "chart")
        .child(h("h3", "").text(plot.title))
        .child(h("p", "axis-name").text(plot.y_label))
        .child(canvas)
        .child(h("p", "axis-name under").text(plot.x_label))
        .child(read_out)
        .child(takeaway)
        .child(named_fold("fold small", words::TABLE, move || {
            vec![table(state, plot)]
        }))
}

/// The drawing itself: a slider over its stops, for keys and screen readers.
fn canvas(state: State, plot: Plot, stop: RwSignal<Option<usize>>) -> El {
    let on_key = move |event: web_sys::Event| {
        let Some(step) = event
            .dyn_ref::<web_sys::KeyboardEvent>()
            .and_then(|e| step_of(&e.key()))
        else {
            return;
        };
        event.prevent_default();
        let scrubber = Scrubber::new(&untrack(|| (plot.draw)(state)).series);
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
    let on_point = move |event: web_sys::Event| {
        let Some(event) = event.dyn_ref::<web_sys::MouseEvent>() else {
            return;
        };
        let drawing = untrack(|| (plot.draw)(state));
        let laid = lay_out(&drawing, state.width.get_untracked());
        let x = laid.x.value(f64::from(event.offset_x()));
        stop.set(Scrubber::new(&drawing.series).nearest(x));
    };
    h("div", "canvas")
        .attr("tabindex", "0")
        .attr("role", "slider")
        .attr("aria-label", plot.title)
        .attr("aria-valuemin", "0")
        .live_markup(move || {
            let drawing = (plot.draw)(state);
            let laid = lay_out(&drawing, state.width.get());
            let reading = stop
                .get()
                .and_then(|at| Scrubber::new(&drawing.series).read(at));
            markup(&drawing, &laid, reading.as_ref())
        })
        .on("keydown", on_key)
        .on("pointermove", on_point)
        .on("pointerdown", on_point)
}

/// Keeps what the slider says in step with the stop.
fn show_reading(
    state: State,
    plot: Plot,
    stop: RwSignal<Option<usize>>,
    canvas: web_sys::Element,
    read_out: web_sys::Element,
) {
    always(move || {
        let drawing = (plot.draw)(state);
        let scrubber = Scrubber::new(&drawing.series);
        let at = stop.get();
        let text = at.and_then(|at| scrubber.read(at)).map_or_else(
            || words::SCRUB.to_owned(),
            |reading| reading_text(plot, &drawing.names, &reading),
        );
        set_text(&read_out, &text);
        set_attr(&canvas, "aria-valuetext", Some(&text));
        set_attr(&canvas, "aria-valuenow", Some(&at.unwrap_or(0).to_string()));
        set_attr(
            &canvas,
            "aria-valuemax",
            Some(&scrubber.len().saturating_sub(1).to_string()),
        );
    });
}

fn reading_text(plot: Plot, names: &[String], reading: &Reading) -> String {
    let values: Vec<String> = names
        .iter()
        .zip(&reading.values)
        .filter_map(|(name, value)| value.y.map(|y| format!("{name} {}", plot.y_text.of(y))))
        .collect();
    format!("{}: {}", plot.x_text.of(reading.x), values.join(", "))
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

fn lay_out(drawing: &Drawing, width: f64) -> Figure {
    let height = (width * HEIGHT_SHARE).clamp(HEIGHT_PX.0, HEIGHT_PX.1);
    let Drawing {
        x_kind, y_range, ..
    } = *drawing;
    figure(
        Frame {
            width,
            height,
            font_px: FONT_PX,
            x_kind,
            x_range: None,
            y_range,
        },
        &drawing.series,
    )
}

fn markup(drawing: &Drawing, laid: &Figure, reading: Option<&Reading>) -> String {
    let plot = laid.plot;
    let mut svg = Svg::new();
    svg.path("grid", &laid.grid);
    svg.path("grid", &laid.midnights);
    svg.path(
        "axis",
        &format!("M{} {}H{}", plot.left, plot.bottom, plot.right),
    );
    for tick in &laid.x_ticks {
        svg.text(
            "tick",
            (tick.at, plot.bottom + 16.0),
            Anchor::Middle,
            &tick_text(tick),
        );
    }
    for tick in &laid.y_ticks {
        svg.text(
            "tick",
            (plot.left - 4.0, tick.at + 4.0),
            Anchor::End,
            &tick_text(tick),
        );
    }
    for (index, (curve, name)) in laid.curves.iter().zip(&drawing.names).enumerate() {
        let style = index % STYLES;
        svg.path(&format!("curve style-{style}"), &curve.line);
        if let Some(label) = &curve.label {
            svg.path("leader", &label.leader);
            let anchor = if label.flush_right {
                Anchor::End
            } else {
                Anchor::Start
            };
            svg.text(
                &format!("end-label style-{style}"),
                (label.x, label.y + 4.0),
                anchor,
                name,
            );
        }
    }
    if let Some((reading, at)) = reading.and_then(|reading| Some((reading, laid.x.px(reading.x)?)))
    {
        svg.upright("cursor", at, (plot.top, plot.bottom));
        for (index, value) in reading.values.iter().enumerate() {
            if let Some(up) = value.y.and_then(|y| laid.y.px(y)) {
                svg.dot(&format!("dot style-{}", index % STYLES), (at, up));
            }
        }
    }
    svg.finish((laid.width, laid.height), r#"aria-hidden="true""#)
}

fn tick_text(tick: &AxisTick) -> String {
    match tick.label {
        TickLabel::Number { value, decimals } => wording::number::exact(value, decimals),
        TickLabel::Clock { minute, .. } => wording::number::clock(f64::from(minute)),
    }
}

/// The numbers behind the curves, spread evenly.
fn table(state: State, plot: Plot) -> El {
    let build = move || {
        let drawing = (plot.draw)(state);
        let scrubber = Scrubber::new(&drawing.series);
        let heads = drawing
            .names
            .iter()
            .map(|name| h("th", "").attr("scope", "col").text(name));
        let every = scrubber.len().div_ceil(MOST_ROWS).max(1);
        let rows = (0..scrubber.len())
            .step_by(every)
            .filter_map(|stop| scrubber.read(stop))
            .map(|reading| {
                let cells = reading.values.iter().map(|value| {
                    h("td", "").text(&value.y.map_or_else(String::new, |y| plot.y_text.of(y)))
                });
                h("tr", "")
                    .child(
                        h("th", "")
                            .attr("scope", "row")
                            .text(&plot.x_text.of(reading.x)),
                    )
                    .children(cells)
            });
        let first = h("th", "").attr("scope", "col").text(plot.x_label);
        vec![
            h("thead", "").child(h("tr", "").child(first).children(heads)),
            h("tbody", "").children(rows),
        ]
    };
    let key = move || state.plan.with(keep::key_of);
    h("div", "scroll")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", plot.title)
        .child(h("table", "").live_children(key, build))
}
