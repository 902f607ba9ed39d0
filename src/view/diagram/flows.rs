//! What comes in on the left and goes out on the right, as bands as wide as their
//! numbers. All bands have one scale; where they meet they stand one on another with
//! nothing between them, and outside each has the room that its words take.

use super::{
    FONT_PX, Face, LINE_PX, Label, Picture,
    pen::Pen,
    prose::{in_lines, wrapped},
};
use crate::view::chart::{svg::Anchor, thin::Px};

/// The height of all that comes in, one on another, px.
const STACK_PX: (f64, f64) = (150.0, 200.0);
/// The share of the width that words take at each side, and the most of it in px.
const WORDS_SHARE: f64 = 0.31;
const WORDS_PX: f64 = 190.0;
/// Lines of a name.
const NAME_LINES: usize = 3;
const GAP_PX: f64 = 10.0;
const NODE_PX: f64 = 8.0;
/// Above the bands: the sum.
const HEAD_PX: f64 = 22.0;

/// One flow.
#[derive(Clone, Debug, PartialEq)]
pub struct Flow {
    pub name: String,
    /// How much; below zero, or no number: none.
    pub value: f64,
    /// The same in words.
    pub text: String,
    /// Which of the looks it has.
    pub style: usize,
}

/// What a picture of flows shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Balance {
    pub ins: Vec<Flow>,
    pub outs: Vec<Flow>,
    /// Offered, and not taken: beside those that come in, and not among them.
    pub spilled: Option<Flow>,
    /// Above both sides.
    pub heads: [String; 2],
    /// The sum, above where all meet.
    pub sum: String,
}

/// A band as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    pub name: String,
    pub value: f64,
    /// How wide it is along all its way, px.
    pub width: f64,
    pub is_in: bool,
}

/// A picture with its bands.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    pub picture: Picture,
    pub bands: Vec<Band>,
}

/// A band's place: its outer and its inner middle.
struct Lane<'a> {
    flow: &'a Flow,
    words: Words,
    width: f64,
    /// What band and words take at the outside, px.
    room: f64,
    outer: f64,
    inner: f64,
}

/// From here on something flows: the smallest numbers there are would make a scale
/// without end.
const LEAST: f64 = 1e-9;

impl Flow {
    /// What counts of it.
    fn counted(&self) -> f64 {
        if self.value.is_finite() && self.value > LEAST {
            self.value
        } else {
            0.0
        }
    }
}

/// Lays out flows at a width in pixels; flows of nothing are left out.
#[must_use]
pub fn flows(balance: &Balance, width: f64) -> Drawn {
    let stack = (0.42 * width).clamp(STACK_PX.0, STACK_PX.1);
    let scale = scale(balance, stack);
    let words = (WORDS_SHARE * width).min(WORDS_PX);
    let mut ins = lanes(&balance.ins, scale, words);
    let mut outs = lanes(&balance.outs, scale, words);
    let height = outside(&ins).max(outside(&outs)).max(stack);
    settle(&mut ins, height);
    settle(&mut outs, height);
    let mut drawn = Drawn {
        picture: Picture {
            width,
            height: HEAD_PX + height + GAP_PX,
            ..Picture::default()
        },
        bands: Vec::new(),
    };
    let node = (width / 2.0 - NODE_PX / 2.0, width / 2.0 + NODE_PX / 2.0);
    let edges = (words + GAP_PX, width - words - GAP_PX);
    for lane in &ins {
        draw(&mut drawn, lane, (edges.0, node.0), true);
    }
    for lane in &outs {
        draw(&mut drawn, lane, (edges.1, node.1), false);
    }
    let joined = inside(&ins).max(inside(&outs));
    if joined > 0.0 {
        meeting(
            &mut drawn.picture,
            balance,
            (joined, HEAD_PX + height / 2.0),
        );
    }
    if let Some(flow) = balance.spilled.as_ref().filter(|flow| flow.counted() > 0.0) {
        spill(&mut drawn, flow, scale, (words, edges.0));
    }
    drawn
}

/// Pixels for each unit, so that the wider side fits; nothing where nothing flows.
fn scale(balance: &Balance, stack: f64) -> f64 {
    let total = |flows: &[Flow]| flows.iter().map(Flow::counted).sum::<f64>();
    let spilled = balance.spilled.as_ref().map_or(0.0, Flow::counted);
    let most = (total(&balance.ins) + spilled).max(total(&balance.outs));
    if most > 0.0 { stack / most } else { 0.0 }
}

/// Where all meet, with the sum and the names of the sides above.
fn meeting(picture: &mut Picture, balance: &Balance, (joined, middle): (f64, f64)) {
    let width = picture.width;
    let bar = Pen::new()
        .rect((width / 2.0, middle), (NODE_PX, joined))
        .finish();
    picture.path("pic-node", bar);
    let head = |face, x, anchor, text: &str| Label::new(face, (x, FONT_PX), anchor, text);
    let [left, right] = &balance.heads;
    picture.text(head(
        Face::Strong,
        width / 2.0,
        Anchor::Middle,
        &balance.sum,
    ));
    picture.text(head(Face::Line, 0.0, Anchor::Start, left));
    picture.text(head(Face::Line, width, Anchor::End, right));
}

/// A name and its number, in lines.
struct Words {
    name: Vec<String>,
    text: Vec<String>,
}

impl Words {
    fn of(flow: &Flow, px: f64) -> Self {
        Self {
            name: in_lines(&flow.name, Face::Line.chars(px), NAME_LINES),
            text: wrapped(&flow.text, Face::Strong.chars(px)),
        }
    }

    fn height(&self) -> f64 {
        LINE_PX * (self.name.len() + self.text.len()) as f64
    }

    /// Draws them about a height.
    fn draw(&self, picture: &mut Picture, (x, y): Px, anchor: Anchor) {
        let top = y - self.height() / 2.0 + FONT_PX;
        let name = self.name.iter().cloned();
        let end = picture.lines(Face::Line, (x, top), anchor, name);
        picture.lines(Face::Strong, (x, end), anchor, self.text.iter().cloned());
    }
}

/// Lanes in their order, with what each takes.
fn lanes<'a>(flows: &'a [Flow], scale: f64, words_px: f64) -> Vec<Lane<'a>> {
    let there = flows.iter().filter(|flow| flow.counted() > 0.0);
    let lane = |flow: &'a Flow| {
        let words = Words::of(flow, words_px);
        let width = flow.counted() * scale;
        Lane {
            flow,
            room: words.height().max(width) + GAP_PX,
            words,
            width,
            outer: 0.0,
            inner: 0.0,
        }
    };
    there.map(lane).collect()
}

/// What lanes take at their outside, and where they meet.
fn outside(lanes: &[Lane]) -> f64 {
    lanes.iter().map(|lane| lane.room).sum()
}

fn inside(lanes: &[Lane]) -> f64 {
    lanes.iter().map(|lane| lane.width).sum()
}

/// Gives each lane its place at both ends, about the middle of the height.
fn settle(lanes: &mut [Lane], height: f64) {
    let inside = inside(lanes);
    let mut outer = HEAD_PX + (height - outside(lanes)) / 2.0;
    let mut inner = HEAD_PX + (height - inside) / 2.0;
    for lane in lanes {
        lane.outer = outer + lane.room / 2.0;
        lane.inner = inner + lane.width / 2.0;
        outer += lane.room;
        inner += lane.width;
    }
}

fn draw(drawn: &mut Drawn, lane: &Lane, (outer, inner): (f64, f64), is_in: bool) {
    let d = band((outer, lane.outer), (inner, lane.inner), lane.width);
    let class = format!("pic-flow style-{}", lane.flow.style);
    drawn.picture.path(&class, d);
    let (x, anchor) = if is_in {
        (outer - GAP_PX, Anchor::End)
    } else {
        (outer + GAP_PX, Anchor::Start)
    };
    lane.words.draw(&mut drawn.picture, (x, lane.outer), anchor);
    drawn.bands.push(Band {
        name: lane.flow.name.clone(),
        value: lane.flow.value,
        width: lane.width,
        is_in,
    });
}

/// A band of one width from one point to another, level at both.
fn band(from: Px, to: Px, width: f64) -> String {
    let half = width / 2.0;
    let middle = (from.0 + to.0) / 2.0;
    let mut pen = Pen::new();
    pen.go((from.0, from.1 - half));
    pen.curve(
        (middle, from.1 - half),
        (middle, to.1 - half),
        (to.0, to.1 - half),
    );
    pen.line((to.0, to.1 + half));
    pen.curve(
        (middle, to.1 + half),
        (middle, from.1 + half),
        (from.0, from.1 + half),
    );
    pen.close();
    pen.finish()
}

/// What was offered and not taken: a band beneath that leads nowhere.
fn spill(drawn: &mut Drawn, flow: &Flow, scale: f64, (words_px, left): (f64, f64)) {
    let width = flow.counted() * scale;
    let words = Words::of(flow, words_px);
    let room = words.height().max(width);
    let y = drawn.picture.height + room / 2.0;
    let right = left + 0.16 * drawn.picture.width;
    let d = Pen::new()
        .rect(((left + right) / 2.0, y), (right - left, width))
        .finish();
    drawn.picture.path("pic-spilled", d);
    words.draw(&mut drawn.picture, (left - GAP_PX, y), Anchor::End);
    drawn.bands.push(Band {
        name: flow.name.clone(),
        value: flow.value,
        width,
        is_in: true,
    });
    drawn.picture.height += room + GAP_PX;
}
