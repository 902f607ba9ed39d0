//! Labels at the ends of lines: beside the plot, or inside it on a phone.

use super::axis::text_px;
use super::frame::{GAP_EM, LINE_EM, Rect};
use super::labels::{Placed, Wish, place};
use super::path::Path;
use super::scale::{Scale, tenth};
use super::series::{Cut, Series};
use super::thin::Px;

/// The place of a label at a line's end.
#[derive(Clone, Debug, PartialEq)]
pub struct EndLabel {
    /// Where the text starts, or ends when `flush_right`, px.
    pub x: f64,
    /// The middle of the text, px.
    pub y: f64,
    /// Whether the text ends at `x` and lies above its line, for want of room beside it.
    pub flush_right: bool,
    /// A thin line from the line's end to a label that had to move; else empty.
    pub leader: String,
}

/// Where a label wants to be, before labels are moved apart.
#[derive(Clone, Copy)]
struct Want {
    end: Px,
    x: f64,
    y: f64,
    flush_right: bool,
}

/// Labels for the series that want one, moved apart, and whether they are crowded.
///
/// `style` is the letter size, px, and whether labels go inside the plot.
/// All labels are kept apart in height, even those that are apart in width:
/// simpler, and a reader can run down them as down a list.
#[must_use]
pub fn end_labels(
    series: &[Series],
    cuts: &[Cut],
    scales: (Scale, Scale),
    plot: Rect,
    style: (f64, bool),
) -> (Vec<Option<EndLabel>>, bool) {
    let height = style.0 * LINE_EM;
    let wants: Vec<Option<Want>> = series
        .iter()
        .zip(cuts)
        .map(|(s, cut)| {
            let end = end(cut, scales, plot).filter(|_| s.label_chars > 0)?;
            Some(want(end, text_px(s.label_chars, style.0), plot, style))
        })
        .collect();
    let wish = |want: &Option<Want>| Wish {
        y: want.map_or(f64::NAN, |want| want.y),
        height,
    };
    let wishes: Vec<Wish> = wants.iter().map(wish).collect();
    // Beside the plot a label may hang half a line over its lower corner, as it
    // may over the upper; inside, the axis is in the way.
    let over = if style.1 { 0.0 } else { height / 2.0 };
    let placement = place(&wishes, 0.0, plot.bottom + over);
    let labels = wants
        .into_iter()
        .zip(placement.labels)
        .map(|(want, placed)| Some(end_label(want?, placed?, style.0)))
        .collect();
    (labels, placement.crowded)
}

/// Right of the line's end where the text has room there, else above the line
/// with its end at the line's end.
fn want(end: Px, text: f64, plot: Rect, (font_px, inside): (f64, bool)) -> Want {
    let gap = font_px * GAP_EM;
    if !inside || end.0 + gap + text <= plot.right {
        return Want {
            end,
            x: end.0 + gap,
            y: end.1,
            flush_right: false,
        };
    }
    Want {
        end,
        x: end.0.max(plot.left + text).min(plot.right),
        y: end.1 - font_px * (LINE_EM + GAP_EM) / 2.0,
        flush_right: true,
    }
}

fn end_label(want: Want, placed: Placed, font_px: f64) -> EndLabel {
    let mut leader = Path::default();
    if placed.moved {
        let back = if want.flush_right {
            0.0
        } else {
            font_px * GAP_EM / 2.0
        };
        leader.segment(want.end, (want.x - back, placed.y));
    }
    EndLabel {
        x: tenth(want.x),
        y: tenth(placed.y),
        flush_right: want.flush_right,
        leader: leader.finish(),
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
