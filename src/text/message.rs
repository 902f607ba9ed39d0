//! The messages: a type each, made from the catalogues when this is built.
//!
//! `f.say(m::UnderAMinute)` is the sentence in the language of the [`Formatter`] `f`. A
//! message with something to put in has a field for each; one that is left out or
//! misnamed does not compile, in whatever order a language puts them.

use super::formatter::Formatter;

/// Something to say, with all that goes into it.
pub trait Message {
    /// `&'static str` for a fixed text, else a `String`.
    type Text;
    fn in_language(self, to: Formatter) -> Self::Text;
}

/// A number that decides a plural, written by the language's rules.
pub trait Counted: Copy {
    fn count(self) -> f64;
}

macro_rules! counted {
    ($($kind:ty),+) => { $(
        impl Counted for $kind {
            fn count(self) -> f64 {
                self as f64
            }
        }
    )+ };
}

counted!(u8, u32, u64, i32, usize, f64);

/// All messages. Their ids are those of the catalogues.
#[allow(unused_imports, clippy::all, clippy::pedantic)]
pub mod m {
    use super::{Counted, Message};
    use crate::text::{
        formatter::Formatter,
        patterns::{Given, filled, pattern},
    };

    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}
