//! A circuit as a single-line diagram: branches on one bus, each a wire with its fuse,
//! the piece it leads to, and what is to be known of it in the room beneath the wire.
//!
//! Narrow, all branches go to the right of an upright bus, one below another; wide,
//! what gives stands to its left and what takes to its right. A piece that hangs on
//! another stands below it, on an upright wire.

use super::{
    FONT_PX, Face, LINE_PX, Label, Picture, Spot,
    badge::{RADIUS, Standing, badge},
    pen::Pen,
    prose::{in_lines, wrapped},
    symbols::{self, FUSE_PX, SIZE, Symbol},
};
use crate::view::chart::{frame::Rect, svg::Anchor};

/// From this width on the branches stand on both sides.
pub const WIDE_PX: f64 = 620.0;
/// A text in a phone's width says what it has to say in so many lines, or is cut.
const MOST_LINES: usize = 4;
/// Between a side of the picture, the bus, a piece and a text.
const GAP_PX: f64 = 8.0;
const BUS_PX: f64 = 16.0;
/// From the top of a branch to its wire: room for the fuse's words.
const WIRE_PX: f64 = 26.0;
/// Below a wire to the letters beneath it.
const BELOW_PX: f64 = 22.0;
const BETWEEN_PX: f64 = 14.0;

/// What hangs on the bus: a piece, and those that hang on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Branch {
    /// It gives current, rather than takes it.
    pub gives: bool,
    pub stages: Vec<Stage>,
}

/// A wire and the piece at its end.
#[derive(Clone, Debug, PartialEq)]
pub struct Stage {
    /// What opens at a tap: its key, and how it is read out.
    pub opens: Option<(String, String)>,
    pub symbol: Symbol,
    pub title: String,
    /// How it fares, in words; the worst of them is drawn on the wire.
    pub verdicts: Vec<(Standing, String)>,
    pub fuse: Option<FuseMark>,
    pub lines: Vec<String>,
}

/// A fuse in a wire.
#[derive(Clone, Debug, PartialEq)]
pub struct FuseMark {
    /// What stands above it.
    pub text: String,
    pub is_there: bool,
    /// At the piece rather than at the bus: nearest to what feeds a fault.
    pub at_piece: bool,
}

impl Stage {
    /// The worst of its verdicts.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let all = self.verdicts.iter().map(|(standing, _)| *standing);
        all.max().unwrap_or(Standing::Plain)
    }
}

/// Where a column of branches stands.
#[derive(Clone, Copy)]
struct Column {
    left: f64,
    right: f64,
    bus: f64,
    /// The bus is at its right.
    is_mirrored: bool,
}

impl Column {
    /// The middle of its pieces.
    fn piece(self) -> f64 {
        if self.is_mirrored {
            self.left + SIZE / 2.0 + 1.0
        } else {
            self.right - SIZE / 2.0 - 1.0
        }
    }

    /// +1 from bus to piece along x, or -1.
    fn away(self) -> f64 {
        if self.is_mirrored { -1.0 } else { 1.0 }
    }

    /// Left end and width of its texts.
    fn text(self) -> (f64, f64) {
        let inner = self.right - self.left - SIZE - GAP_PX - BUS_PX;
        if self.is_mirrored {
            (self.left + SIZE + GAP_PX + 2.0, inner - 2.0)
        } else {
            (self.bus + BUS_PX, inner - 2.0)
        }
    }
}

/// Lays out branches at a width in pixels; nothing for none.
#[must_use]
pub fn single_line(branches: &[Branch], width: f64) -> Picture {
    let mut picture = Picture {
        width,
        ..Picture::default()
    };
    let is_wide = width >= WIDE_PX;
    let bus = if is_wide { (width / 2.0).round() } else { 4.0 };
    let mut wires: Vec<f64> = Vec::new();
    let mut bottoms = [0.0; 2];
    for branch in branches {
        let is_left = is_wide && branch.gives;
        let (left, right) = match (is_wide, is_left) {
            (false, _) => (0.0, width),
            (true, true) => (0.0, bus),
            (true, false) => (bus, width),
        };
        let column = Column {
            left,
            right,
            bus,
            is_mirrored: is_left,
        };
        let bottom = &mut bottoms[usize::from(is_left)];
        if !branch.stages.is_empty() {
            wires.push(*bottom + WIRE_PX);
            *bottom = hang(&mut picture, branch, column, *bottom) + BETWEEN_PX;
        }
    }
    let top = wires.iter().copied().fold(f64::INFINITY, f64::min);
    let last = wires.iter().copied().fold(0.0, f64::max);
    if !wires.is_empty() {
        let ends = ((bus, top - 10.0), (bus, last + 10.0));
        picture.path("pic-bus", Pen::new().segment(ends.0, ends.1).finish());
    }
    picture.height = bottoms[0].max(bottoms[1]).max(1.0);
    picture
}

/// One branch from a height down; gives its lower edge.
fn hang(picture: &mut Picture, branch: &Branch, column: Column, top: f64) -> f64 {
    let mut from = top;
    let mut above: Option<f64> = None;
    for stage in &branch.stages {
        let (lower, wire) = match above {
            None => level(picture, stage, column, from),
            Some(above) => upright(picture, stage, column, (above, from)),
        };
        if let Some((key, name)) = &stage.opens {
            picture.spots.push(Spot {
                key: key.clone(),
                name: name.clone(),
                rect: Rect {
                    left: column.left,
                    right: column.right,
                    top: from,
                    bottom: lower,
                },
            });
        }
        above = Some(wire + SIZE / 2.0);
        from = lower + GAP_PX;
    }
    from - GAP_PX
}

/// The first piece: on a level wire from the bus. Gives its lower edge and the middle
/// of its symbol.
fn level(picture: &mut Picture, stage: &Stage, column: Column, top: f64) -> (f64, f64) {
    let (y, away) = (top + WIRE_PX, column.away());
    let piece = (column.piece(), y);
    let edge = piece.0 - away * SIZE / 2.0;
    wire(picture, stage.standing(), (column.bus, y), (edge, y));
    let mut middle = (column.bus + edge) / 2.0;
    if let Some(fuse) = &stage.fuse {
        let from = if fuse.at_piece {
            edge - away * (GAP_PX + FUSE_PX.0 / 2.0)
        } else {
            column.bus + away * (BUS_PX + FUSE_PX.0 / 2.0)
        };
        symbols::fuse(picture, (from, y), false, fuse.is_there);
        // The words go on over the wire, away from where the fuse sits.
        let starts_left = fuse.at_piece == column.is_mirrored;
        let (end, anchor) = if starts_left {
            (from - FUSE_PX.0 / 2.0, Anchor::Start)
        } else {
            (from + FUSE_PX.0 / 2.0, Anchor::End)
        };
        let most = Face::Line.chars((edge - column.bus).abs() - 2.0 * BUS_PX);
        let text = in_lines(&fuse.text, most, 1).concat();
        let at = (end, y - FUSE_PX.1 / 2.0 - 5.0);
        picture.text(Label::new(Face::Line, at, anchor, text));
        middle = (from + if fuse.at_piece { column.bus } else { edge }) / 2.0;
    }
    badge(picture, stage.standing(), (middle, y));
    symbols::symbol(picture, stage.symbol, piece);
    let (x, wide) = column.text();
    let lower = words(picture, stage, (x, y + BELOW_PX + 2.0), wide);
    (lower.max(y + SIZE / 2.0 + 4.0), y)
}

/// A piece below another: on an upright wire, with its words beside that. Gives its
/// lower edge and the middle of its symbol.
fn upright(
    picture: &mut Picture,
    stage: &Stage,
    column: Column,
    (above, top): (f64, f64),
) -> (f64, f64) {
    let (x, wide) = column.text();
    let lower = words(picture, stage, (x, top + FONT_PX), wide);
    let least = SIZE + 2.0 * (RADIUS + GAP_PX) + stage.fuse.as_ref().map_or(0.0, |_| FUSE_PX.0);
    let lower = lower.max(top + least);
    let piece = (column.piece(), lower - SIZE / 2.0 - 2.0);
    let edge = piece.1 - SIZE / 2.0;
    wire(picture, stage.standing(), (piece.0, above), (piece.0, edge));
    badge(picture, stage.standing(), (piece.0, top + RADIUS));
    if let Some(fuse) = &stage.fuse {
        let y = edge - GAP_PX / 2.0 - FUSE_PX.0 / 2.0;
        symbols::fuse(picture, (piece.0, y), true, fuse.is_there);
    }
    symbols::symbol(picture, stage.symbol, piece);
    (lower, piece.1)
}

fn wire(picture: &mut Picture, standing: Standing, from: (f64, f64), to: (f64, f64)) {
    let d = Pen::new().segment(from, to).finish();
    picture.path(&format!("pic-wire {}", standing.class()), d);
}

/// Title, verdicts and lines; gives the lower edge.
fn words(picture: &mut Picture, stage: &Stage, (x, mut y): (f64, f64), wide: f64) -> f64 {
    let fit = |face: Face, text: &str| in_lines(text, face.chars(wide), MOST_LINES);
    let title = fit(Face::Title, &stage.title);
    y = picture.lines(Face::Title, (x, y), Anchor::Start, title);
    let indent = 2.0 * RADIUS + 6.0;
    for (standing, text) in &stage.verdicts {
        let face = standing.face();
        badge(picture, *standing, (x + RADIUS + 1.0, y - 4.0));
        let lines = wrapped(text, face.chars(wide - indent));
        y = picture.lines(face, (x + indent, y), Anchor::Start, lines);
    }
    for text in &stage.lines {
        y = picture.lines(Face::Line, (x, y), Anchor::Start, fit(Face::Line, text));
    }
    y - LINE_PX + 4.0
}
