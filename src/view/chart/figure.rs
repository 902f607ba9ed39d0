//! A whole chart as geometry: what the page draws, element for element.

use super::axis::{AxisTick, clock_axis, number_axis, text_px};
use super::ends::{EndLabel, end_labels};
use super::frame::{Frame, Rect, XKind, YRange, range};
use super::path::Path;
use super::scale::{Domain, Scale};
use super::series::{Cut, Series};
use super::thin::{Px, thin, thin_band};
use super::ticks::{NiceStep, intervals, number_chars};

/// The least distance between two y ticks, in font sizes.
const Y_APART_EM: f64 = 2.5;

/// A chart, ready to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// Whole width, px.
    pub width: f64,
    /// Whole height, px.
    pub height: f64,
    /// Where the curves are. Curves may run out of it when a range is fixed: clip to it.
    pub plot: Rect,
    /// The map of x, for pointers.
    pub x: Scale,
    /// The map of y.
    pub y: Scale,
    /// Ticks along the bottom.
    pub x_ticks: Vec<AxisTick>,
    /// Ticks along the left.
    pub y_ticks: Vec<AxisTick>,
    /// All horizontal gridlines, one path.
    pub grid: String,
    /// All midnight lines, one path; empty unless x is a clock.
    pub midnights: String,
    /// One per series, in order.
    pub curves: Vec<Curve>,
    /// Whether end labels are too many for the height and overlap.
    pub crowded: bool,
}

/// One series, drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// The curve's path; empty without samples.
    pub line: String,
    /// The spread's closed path; empty without one.
    pub band: String,
    /// The label at its end, if it has one and ends in view.
    pub label: Option<EndLabel>,
}

/// Draws series into a frame.
///
/// Never fails: without a sample there are axes and empty paths.
///
/// ```
/// use till_morning::view::chart::{figure::figure, frame::Frame, series::{Sample, Series}};
/// let samples = vec![Sample { x: 0.0, y: Some(1.0) }, Sample { x: 1.0, y: Some(3.0) }];
/// let good = figure(Frame::default(), &[Series { samples, ..Series::default() }]);
/// assert!(good.curves[0].line.starts_with('M'));
/// let empty = figure(Frame::default(), &[Series::default()]);
/// assert_eq!(empty.curves[0].line, "");
/// ```
#[must_use]
pub fn figure(frame: Frame, series: &[Series]) -> Figure {
    let frame = frame.held();
    let cuts: Vec<Cut> = series.iter().map(Series::cut).collect();

    let (top, bottom) = frame.rows();
    let (y_domain, y_step) = y_axis(&frame, &cuts, bottom - top);
    let y = Scale::new(y_domain, bottom, top);
    let y_ticks = number_axis(y, y_step);

    let longest = series.iter().map(|s| s.label_chars).max().unwrap_or(0);
    let (right, inside) = frame.right(longest);
    let plot = Rect {
        left: frame.left(&y_ticks),
        top,
        right,
        bottom,
    };
    let x = Scale::new(x_domain(&frame, &cuts), plot.left, plot.right);
    let x_ticks = x_axis(&frame, x, plot);

    let (labels, crowded) = end_labels(series, &cuts, (x, y), plot, (frame.font_px, inside));
    let curves = cuts
        .iter()
        .zip(labels)
        .map(|(cut, label)| curve(cut, x, y, label))
        .collect();

    Figure {
        width: frame.width,
        height: frame.height,
        grid: grid(&y_ticks, plot),
        midnights: midnights(&x_ticks, plot),
        plot,
        x,
        y,
        x_ticks,
        y_ticks,
        curves,
        crowded,
    }
}

/// The y domain and its step: the step follows from the height, the loose ends from the step.
fn y_axis(frame: &Frame, cuts: &[Cut], height_px: f64) -> (Domain, NiceStep) {
    let count = intervals(height_px, Y_APART_EM * frame.font_px);
    let fixed = match frame.y_range {
        YRange::Fixed(from, to) => range((from, to)),
        _ => None,
    };
    if let Some(domain) = fixed {
        return (domain, NiceStep::of(domain, count));
    }
    let ys = || cuts.iter().flat_map(Cut::ys);
    let data = match frame.y_range {
        // Nothing but zeros: a flat line along the bottom, not in mid-air.
        YRange::WithZero if ys().all(|y| y == 0.0) => Domain::of([0.0, 1.0]),
        YRange::WithZero => Domain::of(ys().chain([0.0])),
        _ => Domain::of(ys()),
    };
    let step = NiceStep::of(data, count);
    (step.loosen(data), step)
}

/// The span of x: as asked, else as far as curves and spreads go.
fn x_domain(frame: &Frame, cuts: &[Cut]) -> Domain {
    let asked = frame.x_range.and_then(range);
    asked.unwrap_or_else(|| Domain::of(cuts.iter().flat_map(Cut::xs)))
}

/// Ticks along the bottom.
fn x_axis(frame: &Frame, x: Scale, plot: Rect) -> Vec<AxisTick> {
    if let XKind::Clock { start_min } = frame.x_kind {
        return clock_axis(x, start_min, plot.width(), frame.font_px);
    }
    let domain = x.domain();
    // Room for the longer end and one decimal: the step, and so the decimals,
    // are not known before the room is.
    let chars = number_chars(domain.low(), 1).max(number_chars(domain.high(), 1));
    let apart_px = text_px(chars, frame.font_px) + frame.font_px;
    number_axis(x, NiceStep::of(domain, intervals(plot.width(), apart_px)))
}

/// The paths of one series, thinned to what the pixels can show.
fn curve(cut: &Cut, x: Scale, y: Scale, label: Option<EndLabel>) -> Curve {
    let (px, py) = (|v| x.px_of_drawable(v), |v| y.px_of_drawable(v));
    let mut line = Path::default();
    for run in &cut.line {
        let points: Vec<Px> = run.iter().map(|(at, v)| (px(*at), py(*v))).collect();
        line.run(&thin(&points), cut.shape);
    }
    let mut band = Path::default();
    for run in &cut.band {
        let points: Vec<(f64, Px)> = run
            .iter()
            .map(|(at, (low, high))| (px(*at), (py(*low), py(*high))))
            .collect();
        band.area(&thin_band(&points), cut.shape);
    }
    Curve {
        line: line.finish(),
        band: band.finish(),
        label,
    }
}

fn grid(y_ticks: &[AxisTick], plot: Rect) -> String {
    let mut path = Path::default();
    for tick in y_ticks {
        path.segment((plot.left, tick.at), (plot.right, tick.at));
    }
    path.finish()
}

fn midnights(x_ticks: &[AxisTick], plot: Rect) -> String {
    let mut path = Path::default();
    for tick in x_ticks.iter().filter(|tick| tick.is_midnight()) {
        path.segment((tick.at, plot.top), (tick.at, plot.bottom));
    }
    path.finish()
}
