//! The draw along the log with its stretches, their edges to drag or to move by
//! keys, and what each stretch is.

use super::{file::Bench, into};
use crate::{
    answer::log::{self, StretchFigures},
    chart::frame::{XKind, YRange},
    drawing::{Drawing, lay_out, markup},
    page::{
        dom::{El, always, button, h, set_attr},
        field::choice,
        reactive::*,
        state::State,
    },
    wording::claims::{self as say, words},
};
use wasm_bindgen::JsCast;

/// Half the width of a handle, which is centred on its edge.
const HALF_PX: f64 = 12.0;
/// Pieces of the log that the chart shows: two dots each.
const PIECES: usize = 300;

/// The chart and the handles over it.
pub fn chart(state: State, bench: Bench) -> El {
    let curve = Memo::new(move |_| {
        let series = bench.log.get().map(|log| log::drawn(&log, PIECES));
        series.unwrap_or_default()
    });
    let drawing = move || Drawing {
        names: vec![words::DRAW.into()],
        series: vec![curve.get()],
        x_kind: XKind::Number,
        y_range: YRange::WithZero,
        shades: bench.edges.get(),
        ..Drawing::default()
    };
    let picture = h("div", "").live_markup(move || {
        let drawing = drawing();
        let laid = lay_out(&drawing, state.width.get());
        markup(&drawing, &laid, None, r#"aria-hidden="true""#)
    });
    let scale = Memo::new_with_compare(
        move |_| {
            let shown = Drawing {
                series: vec![curve.get()],
                y_range: YRange::WithZero,
                names: vec![words::DRAW.into()],
                ..Drawing::default()
            };
            lay_out(&shown, state.width.get()).x
        },
        |_, _| true,
    );
    let count = move || bench.edges.with(Vec::len).to_string();
    let handles = h("div", "handles").live_children(count, move || {
        let count = bench.edges.with_untracked(Vec::len);
        let both = |at| {
            [
                handle(bench, scale, at, false),
                handle(bench, scale, at, true),
            ]
        };
        let numbers = (0..count).map(|at| number(bench, scale, at));
        (0..count).flat_map(both).chain(numbers).collect()
    });
    let axis = move || {
        let log = bench.log.get();
        let in_watts = log.is_none_or(|log| log::is_in_watts(&log));
        let words = if in_watts {
            words::WATTS_AXIS
        } else {
            words::AMPS_AXIS
        };
        words.into()
    };
    h("figure", "chart log-chart")
        .attr("aria-label", words::CHART_LABEL)
        .child(h("p", "axis-name").live_text(axis))
        .child(h("div", "with-handles").child(picture).child(handles))
        .child(h("p", "axis-name under").text(words::HOURS_AXIS))
}

type XScale = Memo<crate::chart::scale::Scale>;

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

/// One edge: a slider by role, for keys and screen readers.
fn handle(bench: Bench, scale: XScale, at: usize, is_end: bool) -> El {
    let now = move || untrack(|| edge_of(bench, at, is_end));
    let element = h("div", if is_end { "edge to" } else { "edge from" })
        .attr("role", "slider")
        .attr("tabindex", "0")
        .attr("aria-label", &say::edge_label(at, is_end))
        .attr("aria-valuemin", "0")
        .on("keydown", move |event| {
            let Some(step) = event
                .dyn_ref::<web_sys::KeyboardEvent>()
                .and_then(|event| say::edge_step_h(&event.key()))
            else {
                return;
            };
            event.prevent_default();
            move_to(bench, at, is_end, now() + step);
            settle(bench);
        })
        .on("pointerdown", |event| {
            let pointer = event.dyn_ref::<web_sys::PointerEvent>();
            let target = event
                .target()
                .and_then(|t| t.dyn_into::<web_sys::Element>().ok());
            if let (Some(pointer), Some(target)) = (pointer, target) {
                let _ = target.set_pointer_capture(pointer.pointer_id());
            }
        })
        .on("pointermove", move |event| {
            let Some(event) = event.dyn_ref::<web_sys::MouseEvent>() else {
                return;
            };
            if event.buttons() & 1 == 0 {
                return;
            }
            let scale = scale.get_untracked();
            let px = scale.px(now()).unwrap_or(0.0) - HALF_PX + f64::from(event.offset_x());
            move_to(bench, at, is_end, scale.value(px));
        })
        .on("pointerup", move |_| settle(bench))
        .on("pointercancel", move |_| settle(bench));
    let root = element.0.clone();
    always(move || {
        let hours = edge_of(bench, at, is_end);
        let px = scale.get().px(hours).unwrap_or(0.0) - HALF_PX;
        set_attr(
            &root,
            "style",
            Some(&format!("left:{}px", say::plainly(px))),
        );
        set_attr(&root, "aria-valuenow", Some(&say::minutes_of(hours)));
        set_attr(
            &root,
            "aria-valuemax",
            Some(&say::minutes_of(span_h(bench))),
        );
        set_attr(&root, "aria-valuetext", Some(&say::moment_of(hours)));
    });
    element
}

/// The number of a stretch, over its middle.
fn number(bench: Bench, scale: XScale, at: usize) -> El {
    let element = h("span", "stretch-number")
        .attr("aria-hidden", "true")
        .text(&say::place(at));
    let root = element.0.clone();
    always(move || {
        let px = |is_end| scale.get().px(edge_of(bench, at, is_end)).unwrap_or(0.0);
        let middle = say::plainly(0.5 * (px(false) + px(true)));
        set_attr(&root, "style", Some(&format!("left:{middle}px")));
    });
    element
}

/// Each stretch with its draw, and the modes it can become.
pub fn table(state: State, bench: Bench) -> El {
    let key = move || format!("{:?}", bench.figures.stretches());
    let rows = move || {
        let all = bench.figures.stretches().into_iter();
        all.map(|(at, figure)| row(state, bench, at, figure))
            .collect()
    };
    h("div", "")
        .child(h("h4", "").text(words::STRETCHES))
        .child(h("p", "hint").text(words::STRETCHES_HINT))
        .child(h("div", "stretches").live_children(key, rows))
        .child(shortest(bench))
        .child(button("quiet", words::FIND_AGAIN, move || bench.find()))
}

/// How long a stretch has to be; a change looks anew.
fn shortest(bench: Bench) -> El {
    let all = log::SHORTEST_MIN;
    let chosen = choice(
        "log-shortest",
        words::SHORTEST,
        move || all.map(say::shortest_name).to_vec(),
        move || {
            let now = bench.shortest_min.get();
            all.iter().position(|min| *min == now).unwrap_or(0)
        },
        move |at| {
            bench
                .shortest_min
                .set(all.get(at).copied().unwrap_or(all[0]));
            bench.find();
        },
    );
    chosen.child(h("p", "hint").text(words::SHORTEST_HINT))
}

fn row(state: State, bench: Bench, at: usize, figure: StretchFigures) -> El {
    let label = move |name: &str| say::make_mode(at, name);
    let edit = move |change: fn(&mut Vec<(f64, f64)>, usize)| {
        let mut edges = bench.edges.get_untracked();
        change(&mut edges, at);
        bench.set_edges(edges);
    };
    let cut = button("quiet", words::CUT, move || edit(log::cut_in_two));
    let out = button("quiet", words::LEAVE_OUT, move || {
        edit(|edges, at| {
            edges.remove(at);
        });
    });
    h("div", "stretch")
        .child(h("p", "").text(&say::stretch_text(at, &figure)))
        .child(h("p", "detail").text(&say::stretch_detail(&figure)))
        .child(h("p", "hint").text(words::INTO))
        .child(into::mode_buttons(
            state,
            move || Some(figure),
            label,
            bench.said,
        ))
        .child(
            h("div", "buttons")
                .child(cut.attr("aria-label", &say::cut_in_two(at)))
                .child(out.attr("aria-label", &say::leave_out(at))),
        )
}
