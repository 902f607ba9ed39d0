//! Measured values with their uncertainty beside what was claimed: each row has a scale
//! of its own, as each is about something else.

use super::{
    Face, LINE_PX, Picture,
    badge::{RADIUS, Standing, badge},
    pen::Pen,
    prose::{in_lines, wrapped},
};
use crate::view::chart::{
    scale::{Domain, Scale, drawable},
    svg::Anchor,
};

/// The strip that marks stand on, px.
const STRIP_PX: f64 = 40.0;
const BETWEEN_PX: f64 = 16.0;
/// Free of marks at both ends of a strip, as a share of what they span.
const PAD: f64 = 0.14;

/// One measured value and its claim.
#[derive(Clone, Debug, PartialEq)]
pub struct Interval {
    pub name: String,
    pub verdict: (Standing, String),
    pub measured: f64,
    /// Its expanded uncertainty, where it has one.
    pub off: Option<f64>,
    /// The value claimed, or the lower end of a range; and the upper.
    pub claimed: f64,
    pub claimed_most: Option<f64>,
    /// What the claim itself may be off by.
    pub tolerance: Option<f64>,
    /// Both in words.
    pub measured_text: String,
    pub claimed_text: String,
}

/// Where the marks of a row stand along x, px.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Places {
    pub measured: f64,
    pub from: f64,
    pub to: f64,
    pub claimed: f64,
    pub claimed_most: Option<f64>,
    pub tolerance: Option<(f64, f64)>,
}

impl Interval {
    /// From and to of what its claim may be off by.
    fn band(&self) -> Option<(f64, f64)> {
        let tolerance = self.tolerance.filter(|one| drawable(*one) && *one > 0.0)?;
        Some((self.claimed - tolerance, self.claimed + tolerance))
    }

    /// The marks along a strip of a width; nothing where a value is no number.
    #[must_use]
    pub fn places(&self, width: f64) -> Option<Places> {
        let off = self.off.filter(|off| drawable(*off)).unwrap_or(0.0);
        let (from, to) = (self.measured - off, self.measured + off);
        let band = self.band();
        let ends = band.map_or([self.claimed; 2], |(low, high)| [low, high]);
        let most = self.claimed_most.unwrap_or(self.claimed);
        let all = [from, to, self.claimed, most, ends[0], ends[1]];
        if !all.into_iter().all(drawable) {
            return None;
        }
        let (low, high) = all
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), &x| {
                (a.min(x), b.max(x))
            });
        let pad = (PAD * (high - low)).max(0.005 * high.abs()).max(1e-6);
        let scale = Scale::new(Domain::of([low - pad, high + pad]), RADIUS, width - RADIUS);
        let px = |value: f64| scale.px(value);
        let pair = |(a, b)| Some((px(a)?, px(b)?));
        Some(Places {
            measured: px(self.measured)?,
            from: px(from)?,
            to: px(to)?,
            claimed: px(self.claimed)?,
            claimed_most: self.claimed_most.and_then(px),
            tolerance: band.and_then(pair),
        })
    }
}

/// Lays out rows at a width in pixels.
#[must_use]
pub fn intervals(rows: &[Interval], width: f64) -> Picture {
    let mut picture = Picture {
        width,
        ..Picture::default()
    };
    let mut y = 0.0;
    for row in rows {
        y = draw(&mut picture, row, y, width) + BETWEEN_PX;
    }
    picture.height = (y - BETWEEN_PX).max(1.0);
    picture
}

/// One row from a height down; gives its lower edge.
fn draw(picture: &mut Picture, row: &Interval, top: f64, width: f64) -> f64 {
    let mut y = top + 13.0;
    let name = in_lines(&row.name, Face::Title.chars(width), 2);
    y = picture.lines(Face::Title, (0.0, y), Anchor::Start, name);
    let indent = 2.0 * RADIUS + 8.0;
    let face = row.verdict.0.face();
    let said = wrapped(&row.verdict.1, face.chars(width - indent));
    badge(picture, row.verdict.0, (RADIUS + 1.0, y - 4.0));
    y = picture.lines(face, (indent, y), Anchor::Start, said);
    let strip = y - LINE_PX + 4.0 + STRIP_PX / 2.0;
    if let Some(places) = row.places(width) {
        strip_of(picture, places, row.off.is_some(), strip, width);
    }
    y = strip + STRIP_PX / 2.0 + 10.0;
    for (text, key) in [
        (
            &row.measured_text,
            measured_key as fn(&mut Picture, f64, f64),
        ),
        (&row.claimed_text, claimed_key),
    ] {
        key(picture, RADIUS + 1.0, y - 4.0);
        let lines = wrapped(text, Face::Line.chars(width - indent));
        y = picture.lines(Face::Line, (indent, y), Anchor::Start, lines);
    }
    y - LINE_PX + 4.0
}

/// The claim as an upright, a range or a band about it; the measured value as a dot with
/// its whisker.
fn strip_of(picture: &mut Picture, places: Places, has_off: bool, y: f64, width: f64) {
    let mut axis = Pen::new();
    axis.segment((0.0, y), (width, y));
    picture.path("pic-axis", axis.finish());
    let half = STRIP_PX / 2.0 - 4.0;
    if let Some((from, to)) = places.tolerance {
        let d = Pen::new()
            .rect(((from + to) / 2.0, y), (to - from, 2.0 * half - 8.0))
            .finish();
        picture.path("pic-tolerance", d);
    }
    let mut claim = Pen::new();
    claim.segment((places.claimed, y - half), (places.claimed, y + half));
    if let Some(most) = places.claimed_most {
        let d = Pen::new()
            .rect(
                ((places.claimed + most) / 2.0, y),
                (most - places.claimed, 2.0 * half),
            )
            .finish();
        picture.path("pic-tolerance", d);
        claim.segment((most, y - half), (most, y + half));
    }
    picture.path("pic-claimed", claim.finish());
    if has_off {
        let mut whisker = Pen::new();
        whisker.segment((places.from, y), (places.to, y));
        for x in [places.from, places.to] {
            whisker.segment((x, y - 6.0), (x, y + 6.0));
        }
        picture.path("pic-whisker", whisker.finish());
    }
    dot(picture, (places.measured, y), has_off);
}

/// Full with an uncertainty, hollow without.
fn dot(picture: &mut Picture, at: (f64, f64), has_off: bool) {
    let class = if has_off {
        "pic-measured"
    } else {
        "pic-measured hollow"
    };
    picture.path(class, Pen::new().circle(at, 5.0).finish());
}

fn measured_key(picture: &mut Picture, x: f64, y: f64) {
    picture.path("pic-measured", Pen::new().circle((x, y), 4.0).finish());
}

fn claimed_key(picture: &mut Picture, x: f64, y: f64) {
    picture.path(
        "pic-claimed",
        Pen::new().segment((x, y - 6.0), (x, y + 6.0)).finish(),
    );
}
