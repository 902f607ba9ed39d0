//! Labels at the ends of lines: beside the plot, or inside it on a phone.

use super::axis::text_px;
use super::frame::{GAP_EM, LINE_EM, Rect};
use super::labels::{Wish, place};
use super::path::Path;
use super::scale::{Scale, tenth};
use super::series::{Cut, Series};
use super::thin::Px;

/// The place of a label at a line's end.
#[derive(Clone, Debug, PartialEq)]
pub struct EndLabel {
    /// Where the text starts, or ends when `inside`, px.
    pub x: f64,
    /// The middle of the text, px.
    pub y: f64,
    /// Whether the text ends here and lies within the plot, for want of room beside it.
    pub inside: bool,
    /// A thin line from the line's end to the label; empty where none is needed.
    pub leader: String,
}

/// Labels for the series that want one, moved apart, and whether they are crowded.
///
/// `style` is the letter size, px, and whether labels go inside the plot.
#[must_use]
pub fn end_labels(
    series: &[Series],
    cuts: &[Cut],
    scales: (Scale, Scale),
    plot: Rect,
    style: (f64, bool),
) -> (Vec<Option<EndLabel>>, bool) {
    let ends: Vec<Option<Px>> = series
        .iter()
        .zip(cuts)
        .map(|(s, cut)| end(cut, scales, plot).filter(|_| s.label_chars > 0))
        .collect();
    let wishes: Vec<Wish> = ends.iter().map(|end| wish(*end, style)).collect();
    // Beside the plot a label may hang half a line over its lower corner, as it
    // may over the upper; inside, the axis is in the way.
    let over = if style.1 {
        0.0
    } else {
        style.0 * LINE_EM / 2.0
    };
    let placement = place(&wishes, 0.0, plot.bottom + over);
    let labels = series
        .iter()
        .zip(ends)
        .zip(placement.labels)
        .map(|((s, end), placed)| {
            let (end, placed) = (end?, placed?);
            let (x, to) = foot(end, text_px(s.label_chars, style.0), plot, style);
            let far = !style.1 && end.0 < plot.right - style.0 * GAP_EM;
            let mut leader = Path::default();
            if placed.moved || far {
                leader.segment(end, (to, placed.y));
            }
            Some(EndLabel {
                x: tenth(x),
                y: tenth(placed.y),
                inside: style.1,
                leader: leader.finish(),
            })
        })
        .collect();
    (labels, placement.crowded)
}

/// Level with the line's end beside the plot; just above the line inside it.
fn wish(end: Option<Px>, (font_px, inside): (f64, bool)) -> Wish {
    let lift = if inside {
        font_px * (LINE_EM + GAP_EM) / 2.0
    } else {
        0.0
    };
    Wish {
        y: end.map_or(f64::NAN, |end| end.1 - lift),
        height: font_px * LINE_EM,
    }
}

/// Where the text starts or ends along x, and where a leader meets it.
fn foot(end: Px, text: f64, plot: Rect, (font_px, inside): (f64, bool)) -> (f64, f64) {
    if inside {
        let x = end.0.max(plot.left + text).min(plot.right);
        (x, x)
    } else {
        let gap = font_px * GAP_EM;
        (plot.right + gap, plot.right + gap / 2.0)
    }
}

/// The last point of a curve that is in view from left to right.
fn end(cut: &Cut, (x, y): (Scale, Scale), plot: Rect) -> Option<Px> {
    let points = cut.line.iter().rev().flat_map(|run| run.iter().rev());
    points
        .map(|(at, value)| (x.px_of_drawable(*at), y.px_of_drawable(*value)))
        .find(|point| point.0 <= plot.right + 0.05)
        .filter(|point| point.0 >= plot.left - 0.05)
}
