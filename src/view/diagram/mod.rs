//! Diagrams as geometry: rows of a circuit, batteries, flows and intervals to lines and
//! texts with their places. Knows no plan and no words of its own.
//!
//! A layout gives a [`Picture`]; its looks come from classes, as a chart's do. What a
//! text takes up is known before it is drawn, so that a test can see whether two of
//! them overlap.

pub mod badge;
pub mod bank;
pub mod flows;
pub mod intervals;
pub mod pen;
pub mod prose;
pub mod single_line;
pub mod symbols;

use super::chart::{
    axis::text_px,
    frame::Rect,
    svg::{Anchor, Svg, px},
};

/// Letters of everything but titles, px: none is smaller.
pub const FONT_PX: f64 = 12.0;
/// From one line of text to the next, px.
pub const LINE_PX: f64 = 16.0;
/// What bold letters are wider than usual ones (common practice, no source).
const BOLD: f64 = 1.06;

/// A picture, ready to draw.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Picture {
    /// Whole width, px.
    pub width: f64,
    /// Whole height, px.
    pub height: f64,
    /// In the order in which they are drawn.
    pub marks: Vec<Mark>,
    /// What can be opened, and where.
    pub spots: Vec<Spot>,
}

/// A line, an area or a text.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    Path { class: String, d: String },
    Text(Label),
}

/// A text in one line.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    pub class: &'static str,
    /// Where its letters stand, px.
    pub at: (f64, f64),
    pub anchor: Anchor,
    pub text: String,
}

/// A part of the picture that something opens for.
#[derive(Clone, Debug, PartialEq)]
pub struct Spot {
    /// What it stands for.
    pub key: String,
    /// How it is read out.
    pub name: String,
    pub rect: Rect,
}

/// How letters look: their class, and whether they are wide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    Title,
    Line,
    /// As a line, and what it says matters most.
    Strong,
    /// The same, of something that fails.
    Wrong,
}

impl Face {
    const fn class(self) -> &'static str {
        match self {
            Self::Title => "pic-title",
            Self::Line => "pic-line",
            Self::Strong => "pic-line strong",
            Self::Wrong => "pic-line strong wrong",
        }
    }

    /// The usual width of a text in it, px.
    #[must_use]
    pub fn width(self, chars: usize) -> f64 {
        let usual = text_px(chars, FONT_PX);
        if self == Self::Line {
            usual
        } else {
            usual * BOLD
        }
    }

    /// How many letters fit into so many pixels; one at least.
    #[must_use]
    pub fn chars(self, px: f64) -> usize {
        ((px / self.width(1)).floor().max(1.0)) as usize
    }
}

impl Spot {
    /// Its place as shares of the picture's box: an inline style.
    #[must_use]
    pub fn style(&self, picture: &Picture) -> String {
        let percent = |part: f64, whole: f64| px(100.0 * part / whole.max(1.0));
        format!(
            "left:{}%;top:{}%;width:{}%;height:{}%",
            percent(self.rect.left, picture.width),
            percent(self.rect.top, picture.height),
            percent(self.rect.width(), picture.width),
            percent(self.rect.height(), picture.height)
        )
    }
}

impl Label {
    /// A text of a face.
    #[must_use]
    pub fn new(face: Face, at: (f64, f64), anchor: Anchor, text: impl Into<String>) -> Self {
        Self {
            class: face.class(),
            at,
            anchor,
            text: text.into(),
        }
    }

    /// What it takes up, px.
    #[must_use]
    pub fn rect(&self) -> Rect {
        let face = if self.class == Face::Line.class() {
            Face::Line
        } else {
            Face::Strong
        };
        let width = face.width(self.text.chars().count());
        let left = match self.anchor {
            Anchor::Start => self.at.0,
            Anchor::Middle => self.at.0 - width / 2.0,
            Anchor::End => self.at.0 - width,
        };
        Rect {
            left,
            right: left + width,
            top: self.at.1 - 0.8 * FONT_PX,
            bottom: self.at.1 + 0.2 * FONT_PX,
        }
    }
}

impl Picture {
    /// A path under a class; an empty one is left out.
    pub fn path(&mut self, class: &str, d: String) {
        if !d.is_empty() {
            self.marks.push(Mark::Path {
                class: class.to_owned(),
                d,
            });
        }
    }

    /// A text; an empty one is left out.
    pub fn text(&mut self, label: Label) {
        if !label.text.is_empty() {
            self.marks.push(Mark::Text(label));
        }
    }

    /// Texts one beneath another; the letters of the first stand at `at`. Gives where
    /// the next would.
    pub fn lines(
        &mut self,
        face: Face,
        at: (f64, f64),
        anchor: Anchor,
        lines: impl IntoIterator<Item = String>,
    ) -> f64 {
        let mut y = at.1;
        for line in lines {
            self.text(Label::new(face, (at.0, y), anchor, line));
            y += LINE_PX;
        }
        y
    }

    /// All its texts.
    pub fn labels(&self) -> impl Iterator<Item = &Label> {
        self.marks.iter().filter_map(|mark| match mark {
            Mark::Text(label) => Some(label),
            Mark::Path { .. } => None,
        })
    }

    /// The picture as an SVG, with attributes of its root (already escaped).
    #[must_use]
    pub fn markup(&self, attributes: &str) -> String {
        let mut svg = Svg::new();
        for mark in &self.marks {
            match mark {
                Mark::Path { class, d } => svg.path(class, d),
                Mark::Text(label) => svg.text(label.class, label.at, label.anchor, &label.text),
            }
        }
        svg.finish((self.width, self.height), attributes)
    }
}
