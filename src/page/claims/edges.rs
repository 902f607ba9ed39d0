//! The draw along the log with its stretches, their edges to drag or to move by
//! keys, and what each stretch is.

use super::{file::Bench, into::ModeButtons};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{self, StretchFigures},
    page::{
        field::Choice,
        kit::{Press, anew},
        state::State,
    },
    text::claims as say,
    view::chart::{
        frame::{XKind, YRange},
        scale::Scale,
    },
    view::drawing::{self, Drawing, lay_out, markup},
};
use leptos::{ev, prelude::*};
use wasm_bindgen::JsCast;

/// Half the width of a handle, which is centred on its edge.
const HALF_PX: f64 = 12.0;
/// Pieces of the log that the chart shows: two dots each.
const PIECES: usize = 300;

/// The chart and the handles over it.
#[component]
pub fn StretchChart() -> impl IntoView {
    let (state, bench) = (State::here(), Bench::here());
    let curve = Memo::new(move |_| {
        let series = bench.log.get().map(|log| drawing::log::drawn(&log, PIECES));
        series.unwrap_or_default()
    });
    let drawing = move |shades| Drawing {
        names: vec![say(m::LogDraw).into()],
        series: vec![curve.get()],
        x_kind: XKind::Number,
        y_range: YRange::WithZero,
        shades,
        ..Drawing::default()
    };
    let picture = Memo::new(move |_| {
        let drawing = drawing(bench.edges.get());
        let laid = lay_out(&drawing, state.width.get());
        markup(formatter(), &drawing, &laid, None, r#"aria-hidden="true""#)
    });
    // The same however the edges lie.
    let scale = XScale::new_with_compare(
        move |_| lay_out(&drawing(Vec::new()), state.width.get()).x,
        |_, _| true,
    );
    let axis = move || {
        let log = bench.log.get();
        let in_watts = log.is_none_or(|log| drawing::log::is_in_watts(&log));
        if in_watts {
            say(m::LogAxisWatts)
        } else {
            say(m::LogAxisAmps)
        }
    };
    let handles = move |count: usize| {
        let both = (0..count).flat_map(|at| [(at, false), (at, true)]);
        let both = both.map(|(at, is_end)| view! { <Handle scale=scale at=at is_end=is_end /> });
        let numbers = (0..count).map(|at| view! { <StretchNumber scale=scale at=at /> });
        view! {
            {both.collect_view()}
            {numbers.collect_view()}
        }
        .into_any()
    };
    view! {
        <figure class="chart log-chart" aria-label=say(m::LogChartLabel)>
            <p class="axis-name">{axis}</p>
            <div class="with-handles">
                <div inner_html=move || picture.get()></div>
                <div class="handles">{anew(move || bench.edges.with(Vec::len), handles)}</div>
            </div>
            <p class="axis-name under">{say(m::LogAxisHours)}</p>
        </figure>
    }
}

type XScale = Memo<Scale>;

fn span_h(bench: Bench) -> f64 {
    let log = bench.log.get_untracked();
    log.map_or(0.0, |log| say::hours_of_seconds(log.span_s()))
}

fn edge_of(bench: Bench, at: usize, is_end: bool) -> f64 {
    let edge = bench.edges.with(|edges| edges.get(at).copied());
    edge.map_or(0.0, |(from, to)| if is_end { to } else { from })
}

fn move_to(bench: Bench, at: usize, is_end: bool, hours: f64) {
    let span_h = span_h(bench);
    bench
        .edges
        .update(|edges| log::move_edge(edges, at, is_end, hours, span_h));
}

fn settle(bench: Bench) {
    bench.settled.set(bench.edges.get_untracked());
}

fn px_of(scale: XScale, hours: f64) -> f64 {
    scale.get().px(hours).unwrap_or(0.0)
}

/// One edge: a slider by role, for keys and screen readers.
#[component]
fn Handle(scale: XScale, at: usize, is_end: bool) -> impl IntoView {
    let bench = Bench::here();
    let now = move || untrack(|| edge_of(bench, at, is_end));
    let hours = Memo::new(move |_| edge_of(bench, at, is_end));
    let on_key = move |event: ev::KeyboardEvent| {
        if let Some(step_h) = say::edge_step_h(&event.key()) {
            event.prevent_default();
            move_to(bench, at, is_end, now() + step_h);
            settle(bench);
        }
    };
    let on_move = move |event: ev::PointerEvent| {
        if event.buttons() & 1 == 0 {
            return;
        }
        let scale = scale.get_untracked();
        let px = scale.px(now()).unwrap_or(0.0) - HALF_PX + f64::from(event.offset_x());
        move_to(bench, at, is_end, scale.value(px));
    };
    let left = move || {
        let px = px_of(scale, hours.get()) - HALF_PX;
        format!("left:{}px", say::plainly(px))
    };
    let last = move || {
        bench.log.track();
        say::minutes_of(span_h(bench))
    };
    view! {
        <div
            class=if is_end { "edge to" } else { "edge from" }
            role="slider"
            tabindex="0"
            aria-label=say::edge_label(formatter(), at, is_end)
            aria-valuemin="0"
            aria-valuemax=last
            aria-valuenow=move || say::minutes_of(hours.get())
            aria-valuetext=move || say::moment_of(formatter(), hours.get())
            // As a property: a strict policy refuses the attribute.
            prop:style=left
            on:keydown=on_key
            on:pointerdown=capture
            on:pointermove=on_move
            on:pointerup=move |_| settle(bench)
            on:pointercancel=move |_| settle(bench)
        ></div>
    }
}

/// The pointer is followed wherever it goes, until it is let go.
fn capture(event: ev::PointerEvent) {
    let target = event.target();
    if let Some(target) = target.and_then(|it| it.dyn_into::<web_sys::Element>().ok()) {
        let _ = target.set_pointer_capture(event.pointer_id());
    }
}

/// The number of a stretch, over its middle.
#[component]
fn StretchNumber(scale: XScale, at: usize) -> impl IntoView {
    let bench = Bench::here();
    let left = move || {
        let px = |is_end| px_of(scale, edge_of(bench, at, is_end));
        format!("left:{}px", say::plainly(0.5 * (px(false) + px(true))))
    };
    view! {
        <span class="stretch-number" aria-hidden="true" prop:style=left>
            {say::place(at)}
        </span>
    }
}

/// Each stretch with its draw, and the modes it can become.
#[component]
pub fn Stretches() -> impl IntoView {
    let bench = Bench::here();
    let all = Memo::new(move |_| bench.figures.stretches());
    let rows = move || {
        let all = all.get().into_iter();
        all.map(|(at, figures)| view! { <StretchRow at=at figures=figures /> })
            .collect_view()
    };
    view! {
        <div>
            <h4>{say(m::LogStretches)}</h4>
            <p class="hint">{say(m::LogStretchesHint)}</p>
            <div class="stretches">{rows}</div>
            <Shortest />
            <Press class="quiet" words=say(m::LogFindAgain) press=move || bench.find() />
        </div>
    }
}

/// How long a stretch has to be; a change looks anew.
#[component]
fn Shortest() -> impl IntoView {
    let bench = Bench::here();
    let all = log::SHORTEST_MIN;
    let chosen = move || {
        let now = bench.shortest_min.get();
        all.iter().position(|min| *min == now).unwrap_or(0)
    };
    let choose = move |at: usize| {
        bench
            .shortest_min
            .set(all.get(at).copied().unwrap_or(all[0]));
        bench.find();
    };
    view! {
        <Choice
            id="log-shortest"
            label=say(m::LogShortest)
            names=move || all.map(|one| say::shortest_name(formatter(), one)).to_vec()
            chosen=chosen
            choose=choose
        />
        <p class="hint">{say(m::LogShortestHint)}</p>
    }
}

#[component]
fn StretchRow(at: usize, figures: StretchFigures) -> impl IntoView {
    let bench = Bench::here();
    let edit = move |change: fn(&mut Vec<(f64, f64)>, usize)| {
        let mut edges = bench.edges.get_untracked();
        change(&mut edges, at);
        bench.set_edges(edges);
    };
    let leave_out = move || {
        edit(|edges, at| {
            edges.remove(at);
        });
    };
    view! {
        <div class="stretch">
            <p>{say::stretch_text(formatter(), at, &figures)}</p>
            <p class="detail">{say::stretch_detail(formatter(), &figures)}</p>
            <ModeButtons
                figures=move || Some(figures)
                words=move |name| say::make_mode(formatter(), at, name)
                said=bench.said
            />
            <div class="buttons">
                <Press
                    class="quiet"
                    words=say(m::LogSplit)
                    label=say::split_in_two(formatter(), at)
                    press=move || edit(log::cut_in_two)
                />
                <Press
                    class="quiet"
                    words=say(m::LogLeaveOut)
                    label=say::leave_out(formatter(), at)
                    press=leave_out
                />
            </div>
        </div>
    }
}
