//! One chart: geometry from `chart`, drawn; a table behind it; keys and pointer.

use super::state::State;
use crate::{
    chart::{
        axis::{AxisTick, TickLabel},
        figure::{Figure, figure},
        frame::{Frame, XKind, YRange},
        scrub::{Scrubber, Step},
        series::Series,
    },
    wording,
};
use leptos::prelude::*;

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
#[derive(Clone, PartialEq)]
pub struct Drawing {
    pub title: &'static str,
    pub takeaway: String,
    pub names: Vec<String>,
    pub series: Vec<Series>,
    pub x_kind: XKind,
    pub y_range: YRange,
    pub x_label: &'static str,
    pub y_label: &'static str,
    /// How a value along x and along y is written.
    pub x_text: Text,
    pub y_text: Text,
}

const FONT_PX: f64 = 12.0;
/// Wide charts may be taller, up to a limit.
const HEIGHT_SHARE: f64 = 0.6;
const HEIGHT_PX: (f64, f64) = (200.0, 320.0);
/// Styles by place; the style sheet has as many.
const STYLES: usize = 4;

/// A chart with its table.
#[component]
pub fn ChartView(drawing: Memo<Option<Drawing>>) -> impl IntoView {
    let state = State::get();
    let stop = RwSignal::new(None::<usize>);
    move || {
        let width = state.width.get();
        drawing
            .get()
            .map(|drawing| draw(drawing, width, stop).into_any())
    }
}

fn draw(drawing: Drawing, width: f64, stop: RwSignal<Option<usize>>) -> impl IntoView {
    let height = (width * HEIGHT_SHARE).clamp(HEIGHT_PX.0, HEIGHT_PX.1);
    let frame = Frame {
        width,
        height,
        font_px: FONT_PX,
        x_kind: drawing.x_kind,
        x_range: None,
        y_range: drawing.y_range,
    };
    let laid = figure(frame, &drawing.series);
    let scrubber = StoredValue::new(Scrubber::new(&drawing.series));
    let (x, y, plot) = (laid.x, laid.y, laid.plot);
    let names = StoredValue::new(drawing.names.clone());
    let (x_text, y_text) = (drawing.x_text, drawing.y_text);
    let read = Memo::new(move |_| {
        stop.get()
            .and_then(|stop| scrubber.with_value(|s| s.read(stop)))
    });
    let read_out = move || {
        read.get().map(|reading| {
            let values = names.with_value(|names| {
                names
                    .iter()
                    .zip(&reading.values)
                    .filter_map(|(name, value)| value.y.map(|y| format!("{name} {}", y_text.of(y))))
                    .collect::<Vec<_>>()
            });
            format!("{}: {}", x_text.of(reading.x), values.join(", "))
        })
    };
    let on_key = move |event: web_sys::KeyboardEvent| {
        let Some(step) = step_of(&event.key()) else {
            return;
        };
        event.prevent_default();
        let from = stop.get_untracked();
        let to = scrubber.with_value(|scrubber| match from {
            Some(from) => scrubber.moved(from, step),
            None => scrubber.moved(
                0,
                if step == Step::Last {
                    step
                } else {
                    Step::First
                },
            ),
        });
        stop.set(Some(to));
    };
    let on_point = move |event: web_sys::PointerEvent| {
        stop.set(scrubber.with_value(|s| s.nearest(x.value(f64::from(event.offset_x())))));
    };
    let cursor = move || {
        read.get().and_then(|reading| x.px(reading.x)).map(|at| {
            view! {
                <line class="cursor" x1=at x2=at y1=plot.top y2=plot.bottom/>
            }
        })
    };
    let dots = move || {
        read.get().map(|reading| {
        let at = x.px(reading.x);
        reading.values.iter().enumerate().filter_map(|(index, value)| {
            let (at, up) = (at?, y.px(value.y?)?);
            Some(view! { <circle class=format!("dot style-{}", index % STYLES) cx=at cy=up r="4"/> })
        }).collect_view()
    })
    };
    view! {
        <figure class="chart">
            <h3>{drawing.title}</h3>
            <p class="axis-name">{drawing.y_label}</p>
            <svg width=width height=height viewBox=format!("0 0 {width} {height}")
                tabindex="0" role="slider"
                aria-label=format!("{}. {}", drawing.title, drawing.takeaway)
                aria-valuemin="0"
                aria-valuemax=move || scrubber.with_value(|s| s.len().saturating_sub(1)).to_string()
                aria-valuenow=move || stop.get().unwrap_or(0).to_string()
                aria-valuetext=move || read_out().unwrap_or_else(|| wording::words::SCRUB.into())
                on:keydown=on_key
                on:pointermove=on_point
                on:pointerdown=on_point>
                {axes(&laid)}
                {curves(&laid, &drawing.names)}
                {cursor}
                {dots}
            </svg>
            <p class="axis-name under">{drawing.x_label}</p>
            <p class="read-out" aria-hidden="true">{move || read_out().unwrap_or_else(|| wording::words::SCRUB.into())}</p>
            <figcaption>{drawing.takeaway.clone()}</figcaption>
            <Table drawing/>
        </figure>
    }
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

fn axes(laid: &Figure) -> impl IntoView + use<> {
    let plot = laid.plot;
    let text = |tick: &AxisTick| match tick.label {
        TickLabel::Number { value, decimals } => wording::number::exact(value, decimals),
        TickLabel::Clock { minute, .. } => wording::number::clock(f64::from(minute)),
    };
    let x_ticks = laid.x_ticks.iter().map(|tick| view! {
        <text class="tick" x=tick.at y=plot.bottom + 16.0 text-anchor="middle">{text(tick)}</text>
    }).collect_view();
    let y_ticks = laid.y_ticks.iter().map(|tick| view! {
        <text class="tick" x=plot.left - 3.0 y=tick.at + 4.0 text-anchor="end">{text(tick)}</text>
    }).collect_view();
    view! {
        <path class="grid" d=laid.grid.clone()/>
        <path class="axis" d=format!("M{} {}H{}", plot.left, plot.bottom, plot.right)/>
        {x_ticks}
        {y_ticks}
    }
}

fn curves(laid: &Figure, names: &[String]) -> impl IntoView + use<> {
    laid.curves.iter().zip(names).enumerate().map(|(index, (curve, name))| {
        let style = index % STYLES;
        let label = curve.label.clone().map(|label| {
            let anchor = if label.flush_right { "end" } else { "start" };
            view! {
                <path class="leader" d=label.leader/>
                <text class=format!("end-label style-{style}") x=label.x y=label.y + 4.0 text-anchor=anchor>
                    {name.clone()}
                </text>
            }
        });
        view! {
            <path class=format!("curve style-{style}") d=curve.line.clone()/>
            {label}
        }
    }).collect_view()
}

/// The numbers behind the curves.
#[component]
fn Table(drawing: Drawing) -> impl IntoView {
    let open = RwSignal::new(false);
    let drawing = StoredValue::new(drawing);
    let rows = move || {
        drawing.with_value(|drawing| {
            let scrubber = Scrubber::new(&drawing.series);
            // A table of hundreds of rows is no help: at most two dozen, spread evenly.
            let every = scrubber.len().div_ceil(24).max(1);
            (0..scrubber.len())
                .step_by(every)
                .filter_map(|stop| scrubber.read(stop))
                .map(|reading| {
                    let cells = reading
                        .values
                        .iter()
                        .map(|value| {
                            view! {
                                <td>{value.y.map(|y| drawing.y_text.of(y))}</td>
                            }
                        })
                        .collect_view();
                    view! { <tr><th scope="row">{drawing.x_text.of(reading.x)}</th>{cells}</tr> }
                })
                .collect_view()
        })
    };
    let heads = move || {
        drawing.with_value(|drawing| {
            drawing
                .names
                .iter()
                .map(|name| view! { <th scope="col">{name.clone()}</th> })
                .collect_view()
        })
    };
    let x_label = drawing.with_value(|drawing| drawing.x_label);
    view! {
        <details class="fold small" on:toggle=move |event| open.set(super::outcome::is_open(&event))>
            <summary>{wording::words::TABLE}</summary>
            {move || open.get().then(|| view! {
                <div class="scroll" tabindex="0" role="region" aria-label=x_label>
                    <table>
                        <thead><tr><th scope="col">{x_label}</th>{heads()}</tr></thead>
                        <tbody>{rows()}</tbody>
                    </table>
                </div>
            })}
        </details>
    }
}
