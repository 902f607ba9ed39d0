//! Events along x, and stretches of it that are darkened.

use super::axis::text_px;
use super::frame::{GAP_EM, Rect};
use super::path::Path;
use super::scale::Scale;

/// Rows of labels that may be stacked; what finds no room has a line and no label.
pub const MOST_ROWS: usize = 4;

/// Something that happens at a place along x.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// Where, in the axis' own numbers.
    pub x: f64,
    /// Characters of its label.
    pub chars: usize,
}

/// The place of an event's label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlacedMark {
    /// Which of the marks given.
    pub mark: usize,
    /// The event itself, px along x.
    pub at: f64,
    /// The row of its label, counted upward from the plot.
    pub row: usize,
    /// The label ends at the event, for want of room to its right.
    pub flush_right: bool,
}

/// Gives each event in view the lowest row in which its label touches no other.
///
/// `font_px` is the letter size. Events out of view, and those beyond
/// [`MOST_ROWS`], are left out.
///
/// ```
/// use till_morning::view::chart::{frame::Rect, marks::{Mark, place}, scale::{Domain, Scale}};
/// let plot = Rect { left: 0.0, top: 0.0, right: 100.0, bottom: 50.0 };
/// let x = Scale::new(Domain::of([0.0, 10.0]), plot.left, plot.right);
/// let mark = |x| Mark { x, chars: 4 };
/// let rows: Vec<_> = place(&[mark(1.0), mark(1.5), mark(6.0)], x, plot, 12.0)
///     .iter().map(|placed| placed.row).collect();
/// assert_eq!(rows, [0, 1, 0]);
/// ```
#[must_use]
pub fn place(marks: &[Mark], x: Scale, plot: Rect, font_px: f64) -> Vec<PlacedMark> {
    let mut taken: Vec<(usize, f64, f64)> = Vec::new();
    let mut placed = Vec::new();
    for (mark, wish) in marks.iter().enumerate() {
        let Some(at) = x
            .px(wish.x)
            .filter(|at| plot.left <= *at && *at <= plot.right)
        else {
            continue;
        };
        let width = text_px(wish.chars, font_px) + 2.0 * GAP_EM * font_px;
        let flush_right = at + width > plot.right;
        let (from, to) = if flush_right {
            (at - width, at)
        } else {
            (at, at + width)
        };
        let free = |row: &usize| {
            let mut others = taken.iter().filter(|(other, ..)| other == row);
            !others.any(|(_, left, right)| *left < to && from < *right)
        };
        if let Some(row) = (0..MOST_ROWS).find(free) {
            taken.push((row, from, to));
            placed.push(PlacedMark {
                mark,
                at,
                row,
                flush_right,
            });
        }
    }
    placed
}

/// Stretches along x as one path of rectangles between two heights, held to the view.
#[must_use]
pub fn shades(stretches: &[(f64, f64)], x: Scale, (top, bottom): (f64, f64)) -> String {
    let mut path = Path::default();
    let (low, high) = (x.domain().low(), x.domain().high());
    for (from, to) in stretches {
        let (from, to) = (from.max(low), to.min(high));
        if let (true, Some(left), Some(right)) = (from < to, x.px(from), x.px(to)) {
            path.area(
                &[(left, (top, bottom)), (right, (top, bottom))],
                super::series::Shape::Line,
            );
        }
    }
    path.finish()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::view::chart::scale::Domain;

    fn plot() -> (Rect, Scale) {
        let plot = Rect {
            left: 10.0,
            top: 5.0,
            right: 110.0,
            bottom: 55.0,
        };
        (plot, Scale::new(Domain::of([0.0, 10.0]), 10.0, 110.0))
    }

    #[test]
    fn a_label_turns_left_at_the_right_edge() {
        let (plot, x) = plot();
        let at = |x: f64| Mark { x, chars: 5 };
        let placed = place(&[at(1.0), at(9.5)], x, plot, 10.0);
        assert!(!placed[0].flush_right && placed[1].flush_right);
    }

    #[test]
    fn what_is_out_of_view_or_no_number_is_left_out() {
        let (plot, x) = plot();
        let marks = [-1.0, 11.0, f64::NAN].map(|x| Mark { x, chars: 1 });
        assert_eq!(place(&marks, x, plot, 10.0), []);
    }

    #[test]
    fn stretches_are_held_to_the_view() {
        let (_, x) = plot();
        let d = shades(&[(-5.0, 2.0), (8.0, f64::NAN), (4.0, 3.0)], x, (5.0, 55.0));
        assert_eq!(d, "M10 5H30V55H10ZM90 5H110V55H90Z");
    }
}
