//! Points to an SVG `d` string, with curves and closed shapes.

use crate::view::chart::{svg::px, thin::Px};
use std::fmt::Write;

/// A path being written; coordinates are rounded to a tenth of a pixel.
#[derive(Clone, Debug, Default)]
pub struct Pen {
    d: String,
}

impl Pen {
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Lifts the pen and sets it down.
    pub fn go(&mut self, (x, y): Px) -> &mut Self {
        let _ = write!(self.d, "M{} {}", px(x), px(y));
        self
    }

    /// A straight line on from where it is.
    pub fn line(&mut self, (x, y): Px) -> &mut Self {
        let _ = write!(self.d, "L{} {}", px(x), px(y));
        self
    }

    /// A cubic curve on from where it is.
    pub fn curve(&mut self, a: Px, b: Px, to: Px) -> &mut Self {
        let _ = write!(
            self.d,
            "C{} {} {} {} {} {}",
            px(a.0),
            px(a.1),
            px(b.0),
            px(b.1),
            px(to.0),
            px(to.1)
        );
        self
    }

    pub fn close(&mut self) -> &mut Self {
        self.d.push('Z');
        self
    }

    /// A line between two points.
    pub fn segment(&mut self, from: Px, to: Px) -> &mut Self {
        self.go(from).line(to)
    }

    /// A rectangle about its middle.
    pub fn rect(&mut self, (x, y): Px, (width, height): (f64, f64)) -> &mut Self {
        let (w, h) = (width / 2.0, height / 2.0);
        self.polygon(&[
            (x - w, y - h),
            (x + w, y - h),
            (x + w, y + h),
            (x - w, y + h),
        ])
    }

    /// A closed shape through points.
    pub fn polygon(&mut self, points: &[Px]) -> &mut Self {
        let Some((first, rest)) = points.split_first() else {
            return self;
        };
        self.go(*first);
        for point in rest {
            self.line(*point);
        }
        self.close()
    }

    /// A circle about its middle.
    pub fn circle(&mut self, (x, y): Px, radius: f64) -> &mut Self {
        let r = px(radius);
        let _ = write!(
            self.d,
            "M{} {}a{r} {r} 0 1 0 {} 0a{r} {r} 0 1 0 {} 0Z",
            px(x - radius),
            px(y),
            px(2.0 * radius),
            px(-2.0 * radius)
        );
        self
    }

    #[must_use]
    pub fn finish(&mut self) -> String {
        std::mem::take(&mut self.d)
    }
}
