//! A bank as its batteries: strings side by side, each of batteries in series, and
//! where the two main cables leave. What is more than fits is broken off and counted.

use super::{
    FONT_PX, Face, LINE_PX, Label, Picture,
    badge::{RADIUS, Standing, badge},
    pen::Pen,
    prose::wrapped,
    symbols,
};
use crate::view::chart::svg::Anchor;

/// A battery, and what it takes along its string, px.
const BATTERY_PX: f64 = 30.0;
const CELL_PX: f64 = 46.0;
/// From one string to the next, without words beneath it.
const ROW_PX: f64 = 46.0;
/// From a side to the rail that joins the strings: the cable and its sign.
const SIDE_PX: f64 = 46.0;
const FUSE_ROOM_PX: f64 = 40.0;
/// Between the rails there is room for words of so much, where the width has it.
const WORDS_PX: f64 = 330.0;
/// Strings that are all drawn; of more, the first two and the last.
const MOST_ROWS: u32 = 4;

/// Where the two main cables leave the strings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leave {
    /// Both from the first.
    First,
    /// Plus from the first, minus from the last.
    Across,
    /// From bars that all are joined to alike.
    Bars,
}

impl Leave {
    /// Whether a string of so many is one that gives most.
    #[must_use]
    pub const fn is_most_loaded(self, string: u32, of: u32) -> bool {
        match self {
            Self::First => string == 0,
            Self::Across => string == 0 || string + 1 == of,
            Self::Bars => true,
        }
    }
}

/// A bank and its words.
#[derive(Clone, Debug, PartialEq)]
pub struct Bank {
    pub in_series: u32,
    pub in_parallel: u32,
    pub leave: Leave,
    /// Each string has a fuse of its own.
    pub has_fuses: bool,
    /// Under a string that gives most.
    pub most: (Standing, String),
    /// What is left out of a string, and how many strings are: in words.
    pub more_in_series: String,
    pub more_in_parallel: String,
    /// Beneath it all.
    pub verdicts: Vec<(Standing, String)>,
    pub lines: Vec<String>,
}

/// Places along a string: batteries by number, and the break.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    At(u32),
    Break,
}

/// Which of so many are drawn where so many have room; at least three.
#[must_use]
pub fn condensed(count: u32, room: u32) -> Vec<Place> {
    let room = room.max(3);
    if count <= room {
        return (0..count).map(Place::At).collect();
    }
    let first = (0..room - 2).map(Place::At);
    first.chain([Place::Break, Place::At(count - 1)]).collect()
}

/// Lays out a bank at a width in pixels.
#[must_use]
pub fn bank(bank: &Bank, width: f64) -> Picture {
    let mut picture = Picture {
        width,
        ..Picture::default()
    };
    let fuses = if bank.has_fuses { FUSE_ROOM_PX } else { 0.0 };
    let free = width - 2.0 * SIDE_PX - fuses;
    // Three at least, closer together on the narrowest phone.
    let cell = CELL_PX.min(free / 3.0);
    let room = (free / cell).floor().max(3.0) as u32;
    let places = condensed(bank.in_series, room);
    let is_one = bank.in_parallel == 1;
    let needed = SIDE_PX + fuses + cell * places.len() as f64;
    // Words stand between the rails.
    let words = if is_one { 0.0 } else { WORDS_PX };
    let right = needed.max((SIDE_PX + words).min(width - SIDE_PX));
    let rails = (SIDE_PX, right);
    let mut y = ROW_PX / 2.0;
    let mut middles = Vec::new();
    for row in condensed(bank.in_parallel, MOST_ROWS) {
        match row {
            Place::At(string) => {
                middles.push(y);
                draw_string(&mut picture, bank, (&places, cell), (rails, y));
                if !is_one && bank.leave.is_most_loaded(string, bank.in_parallel) {
                    y += said(&mut picture, &bank.most, (SIDE_PX + 10.0, y), right - 10.0);
                }
                y += ROW_PX;
            }
            Place::Break => {
                broken_rails(&mut picture, rails, y - 10.0);
                let at = ((rails.0 + rails.1) / 2.0, y - 6.0);
                let text = bank.more_in_parallel.clone();
                picture.text(Label::new(Face::Strong, at, Anchor::Middle, text));
                y += ROW_PX / 2.0;
            }
        }
    }
    leads(&mut picture, bank, rails, &middles);
    y -= ROW_PX / 2.0 - 12.0;
    let all = is_one
        .then_some(&bank.most)
        .into_iter()
        .chain(&bank.verdicts);
    for verdict in all {
        y += said(&mut picture, verdict, (0.0, y - 22.0), width);
    }
    for text in &bank.lines {
        let lines = wrapped(text, Face::Line.chars(width));
        y = picture.lines(Face::Line, (0.0, y + FONT_PX), Anchor::Start, lines) - FONT_PX;
    }
    picture.height = y + 4.0;
    picture
}

/// One string: its fuse, its batteries, and the break where some are left out.
fn draw_string(
    picture: &mut Picture,
    bank: &Bank,
    (places, cell): (&[Place], f64),
    ((left, right), y): ((f64, f64), f64),
) {
    let mut wire = Pen::new();
    let mut x = left;
    if bank.has_fuses {
        let middle = left + FUSE_ROOM_PX / 2.0;
        wire.segment((left, y), (left + FUSE_ROOM_PX, y));
        picture.path("pic-symbol", wire.finish());
        symbols::fuse(picture, (middle, y), false, true);
        x += FUSE_ROOM_PX;
    }
    for place in places {
        let middle = x + cell / 2.0;
        match place {
            Place::At(_) => {
                wire.segment((x, y), (middle - BATTERY_PX / 2.0, y));
                wire.segment((middle + BATTERY_PX / 2.0, y), (x + cell, y));
                symbols::battery(picture, (middle, y), BATTERY_PX);
            }
            Place::Break => {
                wire.segment((x, y), (x + 12.0, y));
                wire.segment((x + cell - 12.0, y), (x + cell, y));
                slashes(&mut wire, (middle, y));
                let at = (middle, y - 10.0);
                let text = bank.more_in_series.clone();
                picture.text(Label::new(Face::Strong, at, Anchor::Middle, text));
            }
        }
        x += cell;
    }
    wire.segment((x, y), (right, y));
    picture.path("pic-symbol", wire.finish());
}

/// Where something is left out: two strokes across.
fn slashes(pen: &mut Pen, (x, y): (f64, f64)) {
    for dx in [-4.0, 4.0] {
        pen.segment((x + dx - 4.0, y + 7.0), (x + dx + 4.0, y - 7.0));
    }
}

fn broken_rails(picture: &mut Picture, rails: (f64, f64), y: f64) {
    let mut pen = Pen::new();
    for x in [rails.0, rails.1] {
        pen.segment((x - 7.0, y + 1.0), (x + 7.0, y - 7.0));
        pen.segment((x - 7.0, y + 9.0), (x + 7.0, y + 1.0));
    }
    picture.path("pic-symbol", pen.finish());
}

/// Words under a string, with their shape; gives the room they take.
fn said(
    picture: &mut Picture,
    (standing, text): &(Standing, String),
    (x, y): (f64, f64),
    width: f64,
) -> f64 {
    let face = standing.face();
    let indent = 2.0 * RADIUS + 6.0;
    let top = y + 22.0 + FONT_PX;
    let lines = wrapped(text, face.chars(width - x - indent));
    badge(picture, *standing, (x + RADIUS + 1.0, top - 4.0));
    let end = picture.lines(face, (x + indent, top), Anchor::Start, lines);
    end - top + 4.0
}

/// Rails between the strings, and the main cables with their signs.
fn leads(picture: &mut Picture, bank: &Bank, (left, right): (f64, f64), rows: &[f64]) {
    let (Some(&first), Some(&last)) = (rows.first(), rows.last()) else {
        return;
    };
    let mut rail = Pen::new();
    if first < last {
        rail.segment((left, first), (left, last));
        rail.segment((right, first), (right, last));
    }
    let is_bar = bank.leave == Leave::Bars && first < last;
    let class = if is_bar { "pic-bus" } else { "pic-wire" };
    picture.path(class, rail.finish());
    let (plus, minus) = match bank.leave {
        Leave::First => (first, first),
        Leave::Across => (first, last),
        Leave::Bars => ((first + last) / 2.0, (first + last) / 2.0),
    };
    let (from, to) = (left - SIDE_PX + 16.0, right + SIDE_PX - 16.0);
    let mut cable = Pen::new();
    cable.segment((from, plus), (left, plus));
    cable.segment((right, minus), (to, minus));
    picture.path("pic-cable", cable.finish());
    for (x, y, sign) in [(from - 9.0, plus, "+"), (to + 9.0, minus, "−")] {
        picture.text(Label::new(Face::Title, (x, y + 4.5), Anchor::Middle, sign));
    }
}

/// The letters' own height is what a line takes.
const _: () = assert!(LINE_PX > FONT_PX);
