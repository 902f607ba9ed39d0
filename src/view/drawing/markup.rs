//! A drawing laid out, and as SVG markup.

use super::Drawing;
use crate::text::Formatter;
use crate::{
    text::day::Calendar,
    view::chart::{
        axis::{AxisTick, TickLabel},
        figure::{Figure, figure},
        frame::Frame,
        marks,
        scrub::Reading,
        svg::{Anchor, Svg},
    },
};

const FONT_PX: f64 = 12.0;
/// Wide charts may be taller, up to a limit.
const HEIGHT_SHARE: f64 = 0.6;
/// How much lower a low chart is: one of several, one above another.
const LOW: f64 = 0.8;
/// The least and the most height of a chart's plot.
pub const HEIGHT_PX: (f64, f64) = (200.0, 320.0);
/// A row of event labels above the plot.
const ROW_PX: f64 = 16.0;
/// Styles by place; the style sheet has as many.
const STYLES: usize = 4;

/// The geometry of a drawing at a width in pixels.
#[must_use]
pub fn lay_out(drawing: &Drawing, width: f64) -> Figure {
    let height = (width * HEIGHT_SHARE).clamp(HEIGHT_PX.0, HEIGHT_PX.1);
    let height = if drawing.is_low { height * LOW } else { height };
    figure(
        Frame {
            width,
            height,
            font_px: FONT_PX,
            x_kind: drawing.x_kind,
            x_range: None,
            y_range: drawing.y_range,
            least_chars: drawing.least_chars,
        },
        &drawing.series,
    )
}

/// The drawing as an SVG, with the reading under a pointer if there is one.
#[must_use]
pub fn markup(
    f: Formatter,
    drawing: &Drawing,
    laid: &Figure,
    reading: Option<&Reading>,
    attributes: &str,
) -> String {
    let mut svg = Svg::new();
    let above = events_px(drawing, laid);
    if above > 0.0 {
        svg.open_group(&format!("translate(0 {above})"));
    }
    svg.path(
        "shade",
        &marks::shades(&drawing.shades, laid.x, (laid.plot.top, laid.plot.bottom)),
    );
    axes(f, &mut svg, laid);
    if let Some(calendar) = drawing.calendar {
        days(f, &mut svg, laid, calendar);
    }
    curves(&mut svg, drawing, laid);
    events(&mut svg, drawing, laid);
    if let Some(reading) = reading {
        cursor(&mut svg, laid, reading);
    }
    if above > 0.0 {
        svg.close_group();
    }
    svg.finish((laid.width, laid.height + above), attributes)
}

/// How much room events take above the plot.
fn events_px(drawing: &Drawing, laid: &Figure) -> f64 {
    let wanted: Vec<_> = drawing.marks.iter().map(super::Event::mark).collect();
    let rows = marks::place(&wanted, laid.x, laid.plot, FONT_PX)
        .iter()
        .map(|placed| placed.row + 1)
        .max();
    rows.unwrap_or(0) as f64 * ROW_PX
}

fn axes(f: Formatter, svg: &mut Svg, laid: &Figure) {
    let plot = laid.plot;
    svg.path("grid", &laid.grid);
    svg.path("grid", &laid.midnights);
    svg.level("axis", plot.bottom, (plot.left, plot.right));
    for tick in &laid.x_ticks {
        let at = (tick.at, plot.bottom + 16.0);
        svg.text("tick", at, Anchor::Middle, &tick_text(f, tick));
    }
    for tick in &laid.y_ticks {
        let at = (plot.left - 4.0, tick.at + 4.0);
        svg.text("tick", at, Anchor::End, &tick_text(f, tick));
    }
}

/// Which day begins to be which at each midnight, under its clock time.
fn days(f: Formatter, svg: &mut Svg, laid: &Figure, calendar: Calendar) {
    for tick in laid.x_ticks.iter().filter(|tick| tick.is_midnight()) {
        let text = calendar.day(f, laid.x.value(tick.at));
        let at = (tick.at, laid.plot.bottom + 30.0);
        svg.text("tick", at, Anchor::Middle, &text);
    }
}

fn curves(svg: &mut Svg, drawing: &Drawing, laid: &Figure) {
    for (index, curve) in laid.curves.iter().enumerate() {
        let looks = if drawing.stacked { "layer" } else { "band" };
        svg.path(&format!("{looks} style-{}", index % STYLES), &curve.band);
    }
    for (index, (curve, name)) in laid.curves.iter().zip(&drawing.names).enumerate() {
        let style = index % STYLES;
        let looks = if drawing.stacked {
            "curve top"
        } else {
            "curve"
        };
        svg.path(&format!("{looks} style-{style}"), &curve.line);
        if let Some(label) = &curve.label {
            svg.path("leader", &label.leader);
            let anchor = if label.flush_right {
                Anchor::End
            } else {
                Anchor::Start
            };
            let at = (label.x, label.y + 4.0);
            svg.text(&format!("end-label style-{style}"), at, anchor, name);
        }
    }
}

fn events(svg: &mut Svg, drawing: &Drawing, laid: &Figure) {
    let wanted: Vec<_> = drawing.marks.iter().map(super::Event::mark).collect();
    for placed in marks::place(&wanted, laid.x, laid.plot, FONT_PX) {
        let top = laid.plot.top - ROW_PX * placed.row as f64;
        svg.upright("event", placed.at, (top - 4.0, laid.plot.bottom));
        let anchor = if placed.flush_right {
            Anchor::End
        } else {
            Anchor::Start
        };
        let x = placed.at + if placed.flush_right { -3.0 } else { 3.0 };
        let text = &drawing.marks[placed.mark].text;
        svg.text("event-label", (x, top - 4.0), anchor, text);
    }
}

fn cursor(svg: &mut Svg, laid: &Figure, reading: &Reading) {
    let Some(at) = laid.x.px(reading.x) else {
        return;
    };
    svg.upright("cursor", at, (laid.plot.top, laid.plot.bottom));
    for (index, value) in reading.values.iter().enumerate() {
        if let Some(up) = value.y.and_then(|y| laid.y.px(y)) {
            svg.dot(&format!("dot style-{}", index % STYLES), (at, up));
        }
    }
}

fn tick_text(f: Formatter, tick: &AxisTick) -> String {
    match tick.label {
        TickLabel::Number { value, decimals } => f.exact(value, decimals),
        TickLabel::Clock { minute, .. } => f.clock(f64::from(minute)),
    }
}
