//! Charts as geometry: series of numbers in, coordinates and SVG path strings out.
//!
//! This room knows no plan, no browser, no colour and no words. It says *where*
//! things are; the page draws them and `text` writes the labels from the bare
//! numbers and clock minutes given here. That is why all of it runs in a native test.
//!
//! | module | idea |
//! |---|---|
//! | [`scale`] | a span of values and its straight map to pixels |
//! | [`ticks`] | round numbers along an axis |
//! | [`clock`] | whole clock times along an axis of hours |
//! | [`axis`] | ticks with their pixels |
//! | [`series`] | samples, spreads and the gaps between them |
//! | [`thin`] | fewer points where pixels cannot show them all |
//! | [`path`] | points to an SVG `d` string |
//! | [`labels`] | labels at line ends, moved apart |
//! | [`ends`] | those labels beside the plot or inside it |
//! | [`marks`] | events along x, and stretches of it darkened |
//! | [`stack`] | series that stand on one another |
//! | [`frame`] | what the page asks for, and the margins that follow |
//! | [`figure`] | all of the above put together |
//! | [`scrub`] | reading values under a pointer or by keys |
//! | [`ribbon`] | the night ribbon: one bar per mode along the clock |
//!
//! # Invariants
//! - Every number that comes out is finite, whatever goes in. A sample that is
//!   not finite, or beyond [`scale::LARGEST`], is a gap.
//! - A gap stays a gap: nothing draws or reads across it.
//! - The same input gives the same output, to the last digit of each path.

pub mod axis;
pub mod clock;
pub mod ends;
pub mod figure;
pub mod frame;
pub mod labels;
pub mod marks;
pub mod path;
pub mod ribbon;
pub mod scale;
pub mod scrub;
pub mod series;
pub mod stack;
pub mod svg;
pub mod thin;
pub mod ticks;
