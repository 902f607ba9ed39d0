//! Points to an SVG `d` string.
//!
//! Coordinates are rounded to 0.1 px and written in their shortest form. A point
//! that rounds onto the one before is dropped, so a path never repeats itself.

use super::scale::tenths;
use super::series::Shape;
use super::thin::Px;

/// A point in tenths of a pixel.
type Tenths = (i32, i32);

/// An SVG path being written.
#[derive(Clone, Debug, Default)]
pub struct Path {
    d: String,
    at: Tenths,
}

impl Path {
    /// The finished `d` attribute; empty when nothing was drawn.
    #[must_use]
    pub fn finish(self) -> String {
        self.d
    }

    /// One unbroken run. A run of one point becomes a line of no length, which
    /// shows as a dot under round line caps.
    pub fn run(&mut self, points: &[Px], shape: Shape) {
        let Some((first, rest)) = points.split_first() else {
            return;
        };
        self.move_to(round(*first));
        let start = self.d.len();
        for point in rest {
            let point = round(*point);
            if shape == Shape::Step {
                self.line_to((point.0, self.at.1));
            }
            self.line_to(point);
        }
        if self.d.len() == start {
            self.d.push_str("h0");
        }
    }

    /// A closed area: along the first ends, back along the second ends.
    pub fn area(&mut self, points: &[(f64, Px)], shape: Shape) {
        let Some((x, ends)) = points.first() else {
            return;
        };
        self.move_to(round((*x, ends.0)));
        for (x, ends) in &points[1..] {
            let point = round((*x, ends.0));
            if shape == Shape::Step {
                self.line_to((point.0, self.at.1));
            }
            self.line_to(point);
        }
        for (i, (x, ends)) in points.iter().enumerate().rev() {
            let point = round((*x, ends.1));
            // A held value reaches forward to the next sample, so on the way
            // back the level comes first and then the run to its left end.
            if shape == Shape::Step && i + 1 < points.len() {
                self.line_to((self.at.0, point.1));
            }
            self.line_to(point);
        }
        self.d.push('Z');
    }

    /// A straight line from one point to another: gridlines and leaders.
    pub fn segment(&mut self, from: Px, to: Px) {
        self.run(&[from, to], Shape::Line);
    }

    fn move_to(&mut self, to: Tenths) {
        self.d.push('M');
        self.number(to.0);
        self.separate(to.1);
        self.number(to.1);
        self.at = to;
    }

    fn line_to(&mut self, to: Tenths) {
        match (to.0 == self.at.0, to.1 == self.at.1) {
            (true, true) => return,
            (true, false) => {
                self.d.push('V');
                self.number(to.1);
            }
            (false, true) => {
                self.d.push('H');
                self.number(to.0);
            }
            (false, false) => {
                self.d.push('L');
                self.number(to.0);
                self.separate(to.1);
                self.number(to.1);
            }
        }
        self.at = to;
    }

    /// A minus sign separates two numbers by itself.
    fn separate(&mut self, next: i32) {
        if next >= 0 {
            self.d.push(' ');
        }
    }

    /// Tenths as the shortest decimal: `12`, `1.5`, `.5`, `-.5`.
    fn number(&mut self, tenths: i32) {
        use std::fmt::Write;
        if tenths < 0 {
            self.d.push('-');
        }
        let (whole, tenth) = (tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10);
        // Writing to a String cannot fail.
        if whole > 0 || tenth == 0 {
            let _ = write!(self.d, "{whole}");
        }
        if tenth > 0 {
            let _ = write!(self.d, ".{tenth}");
        }
    }
}

fn round(point: Px) -> Tenths {
    (tenths(point.0), tenths(point.1))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(points: &[Px], shape: Shape, expected: &str) {
        let mut path = Path::default();
        path.run(points, shape);
        assert_eq!(path.finish(), expected);
    }

    #[test]
    fn shortest_form() {
        check(
            &[(0.0, 0.04), (1.25, -0.5), (1.26, -7.0)],
            Shape::Line,
            "M0 0L1.3-.5V-7",
        );
        check(
            &[(0.0, 1.0), (5.0, 1.0), (5.01, 1.01)],
            Shape::Line,
            "M0 1H5",
        );
    }

    #[test]
    fn a_lone_point_is_a_dot() {
        check(&[(3.0, 4.5)], Shape::Line, "M3 4.5h0");
        check(&[(3.0, 4.5), (3.01, 4.5)], Shape::Line, "M3 4.5h0");
        check(&[], Shape::Line, "");
    }

    #[test]
    fn steps_hold_until_the_next_sample() {
        check(
            &[(0.0, 1.0), (10.0, 5.0), (20.0, 5.0)],
            Shape::Step,
            "M0 1H10V5H20",
        );
    }

    #[test]
    fn areas_close() {
        let band = [(0.0, (10.0, 4.0)), (8.0, (12.0, 2.0))];
        let draw = |shape| {
            let mut path = Path::default();
            path.area(&band, shape);
            path.finish()
        };
        assert_eq!(draw(Shape::Line), "M0 10L8 12V2L0 4Z");
        assert_eq!(draw(Shape::Step), "M0 10H8V12V2V4H0Z");
    }
}
