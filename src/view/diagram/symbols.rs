//! General circuit symbols by IEC 60617, each about its middle in a square of
//! [`SIZE`] pixels: from memory of the standard, in hairlines as it draws them.

use super::{Picture, pen::Pen};
use crate::view::chart::thin::Px;

/// Width and height of a symbol, px.
pub const SIZE: f64 = 36.0;
/// A fuse lies along its wire, px.
pub const FUSE_PX: (f64, f64) = (28.0, 11.0);

/// A piece of a circuit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Symbol {
    /// Plates long and short, two cells.
    Battery,
    /// Direct to direct current.
    DcConverter,
    /// Direct to alternating current.
    Inverter,
    /// Alternating to direct current.
    Rectifier,
    /// A photovoltaic cell in its frame, light falling on it.
    Panel,
    /// A machine that is driven, by direct or by alternating current.
    Motor,
    AcMotor,
    /// A machine that drives: an engine's or a generator's.
    Generator,
    /// Anything that takes current.
    Load,
}

/// Draws it.
pub fn symbol(picture: &mut Picture, symbol: Symbol, at: Px) {
    let mut line = Pen::new();
    match symbol {
        Symbol::Battery => return battery(picture, at, SIZE),
        Symbol::DcConverter => converter(&mut line, at, direct, direct),
        Symbol::Inverter => converter(&mut line, at, direct, alternating),
        Symbol::Rectifier => converter(&mut line, at, alternating, direct),
        Symbol::Panel => panel(&mut line, at),
        Symbol::Motor => machine(&mut line, at, letter_m, direct),
        Symbol::AcMotor => machine(&mut line, at, letter_m, alternating),
        Symbol::Generator => machine(&mut line, at, letter_g, direct),
        Symbol::Load => {
            line.rect(at, (SIZE, 14.0));
        }
    }
    picture.path("pic-symbol", line.finish());
}

/// Two cells along a level wire, as wide and high as `size`: a long thin plate is plus,
/// a short thick one minus.
pub fn battery(picture: &mut Picture, (x, y): Px, size: f64) {
    let (mut thin, mut thick) = (Pen::new(), Pen::new());
    let step = size / 8.0;
    thin.segment((x - size / 2.0, y), (x - 1.5 * step, y));
    thin.segment((x + 1.5 * step, y), (x + size / 2.0, y));
    for plus in [x - 1.5 * step, x + 0.5 * step] {
        thin.segment((plus, y - 0.42 * size), (plus, y + 0.42 * size));
        thick.segment((plus + step, y - 0.2 * size), (plus + step, y + 0.2 * size));
    }
    picture.path("pic-symbol", thin.finish());
    picture.path("pic-plate", thick.finish());
}

/// A fuse along a wire: a box with the wire going through it.
pub fn fuse(picture: &mut Picture, (x, y): Px, is_upright: bool, is_there: bool) {
    let (long, wide) = FUSE_PX;
    let size = if is_upright {
        (wide, long)
    } else {
        (long, wide)
    };
    let class = if is_there {
        "pic-fuse"
    } else {
        "pic-fuse missing"
    };
    picture.path(class, Pen::new().rect((x, y), size).finish());
    let (dx, dy) = if is_upright {
        (0.0, long / 2.0)
    } else {
        (long / 2.0, 0.0)
    };
    if is_there {
        let mut through = Pen::new();
        through.segment((x - dx, y - dy), (x + dx, y + dy));
        picture.path("pic-symbol", through.finish());
    }
}

type Sign = fn(&mut Pen, Px);

/// A square cut in two from corner to corner, what goes in above, what comes out below.
fn converter(line: &mut Pen, (x, y): Px, from: Sign, to: Sign) {
    let half = SIZE / 2.0;
    line.rect((x, y), (SIZE, SIZE));
    line.segment((x - half, y + half), (x + half, y - half));
    from(line, (x - 8.0, y - 9.0));
    to(line, (x + 8.0, y + 9.0));
}

/// A line above a broken one.
fn direct(line: &mut Pen, (x, y): Px) {
    line.segment((x - 6.0, y - 1.8), (x + 6.0, y - 1.8));
    for from in [-6.0, -1.5, 3.0] {
        line.segment((x + from, y + 1.8), (x + from + 3.0, y + 1.8));
    }
}

/// One wave.
fn alternating(line: &mut Pen, (x, y): Px) {
    line.go((x - 6.0, y));
    line.curve((x - 4.0, y - 5.0), (x - 2.0, y - 5.0), (x, y));
    line.curve((x + 2.0, y + 5.0), (x + 4.0, y + 5.0), (x + 6.0, y));
}

/// A circle with its letter, and its kind of current beneath.
fn machine(line: &mut Pen, (x, y): Px, letter: Sign, current: Sign) {
    line.circle((x, y), SIZE / 2.0);
    letter(line, (x, y - 4.0));
    current(line, (x, y + 9.0));
}

fn letter_m(line: &mut Pen, (x, y): Px) {
    line.go((x - 5.5, y + 6.0)).line((x - 5.5, y - 6.0));
    line.line((x, y + 1.5))
        .line((x + 5.5, y - 6.0))
        .line((x + 5.5, y + 6.0));
}

fn letter_g(line: &mut Pen, (x, y): Px) {
    line.go((x + 4.5, y - 4.0));
    line.curve((x + 2.0, y - 7.0), (x - 5.5, y - 7.0), (x - 5.5, y));
    line.curve((x - 5.5, y + 7.5), (x + 5.0, y + 7.0), (x + 5.0, y + 2.0));
    line.line((x + 5.0, y + 0.5)).line((x + 0.5, y + 0.5));
}

/// A cell's plates in a frame, and two arrows of light.
fn panel(line: &mut Pen, (x, y): Px) {
    line.rect((x, y), (SIZE, SIZE));
    line.segment((x - 12.0, y + 7.0), (x - 2.0, y + 7.0));
    line.segment((x - 2.0, y - 1.0), (x - 2.0, y + 15.0));
    line.segment((x + 3.0, y + 3.0), (x + 3.0, y + 11.0));
    line.segment((x + 3.0, y + 7.0), (x + 12.0, y + 7.0));
    for left in [-13.0, -5.0] {
        let tip = (x + left + 8.0, y - 5.0);
        line.segment((tip.0 - 8.0, tip.1 - 9.0), tip);
        line.segment((tip.0 - 4.5, tip.1 - 1.0), tip);
        line.segment((tip.0 - 0.5, tip.1 - 4.5), tip);
    }
}
