//! The one table of the plan's numbers.
//!
//! A row is all that is said of a number: its place and with it its JSON key, its
//! accepted range, what is taken where it is left out, and what it is usually off
//! by. A row without one of them does not compile. Its words are in `text::fields`,
//! which does not compile without a line for each either.

use super::{Figure, Plan};
use crate::range::Range;

/// What is so of a number in every plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// The JSON key, which ends in the unit.
    pub key: &'static str,
    /// The values that may be used.
    pub range: Range,
    pub width: Width,
}

/// What is taken where a number is left out. `T` is what the default hangs on.
#[derive(Clone, Copy)]
pub enum Assumed<T> {
    /// The number is always stated, or absent by nature.
    Nothing,
    /// A choice, with no spread.
    Exact(f64),
    Guess(f64),
    /// By other numbers and choices.
    Of(fn(&T, &Plan) -> Option<Figure>),
}

impl<T> Assumed<T> {
    pub(super) fn figure(self, of: &T, plan: &Plan) -> Option<Figure> {
        match self {
            Self::Nothing => None,
            Self::Exact(value) => Some(Figure::exact(value)),
            Self::Guess(value) => Some(Figure::guess(value)),
            Self::Of(figure) => figure(of, plan),
        }
    }
}

/// What a number is usually off by, at two standard deviations: half-widths by the
/// label, measured and guessed.
///
/// All of it is our judgement (common practice, no source), to be replaced by a
/// spread of one's own on any number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Width {
    /// As a share of the value, per cent.
    Share(f64, f64, f64),
    /// In the unit of the number: temperatures have no shares.
    Units(f64, f64, f64),
    NoSpread,
}

/// Declares the numbers of something, a row each:
///
/// ```text
/// Field = (place), RANGE, assumed, width;
/// ```
///
/// The place is what follows `self.`, and the key is the same. In an enum a number
/// is there in some kinds only: `(feed: feed.output_v)` asks `self.feed` for it.
/// `default by` names what [`Assumed::Of`] is given.
macro_rules! fields {
    (
        $(#[$doc:meta])* $name:ident of $owner:ident, default by $by:ty {
            $($field:ident = $place:tt, $range:ident, $assumed:expr, $width:expr;)+
        }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($field,)+ }

        impl $name {
            pub const ALL: &[Self] = &[$(Self::$field,)+];

            /// What is so of it in every plan.
            #[must_use]
            pub const fn row(self) -> crate::plan::fields::Row {
                #[allow(unused_imports)]
                use crate::plan::fields::Width::*;
                match self {
                    $(Self::$field => crate::plan::fields::Row {
                        key: crate::plan::fields::key!($place),
                        range: crate::range::$range,
                        width: $width,
                    },)+
                }
            }
            /// What is taken where it is left out.
            #[must_use]
            pub const fn assumed(self) -> crate::plan::fields::Assumed<$by> {
                #[allow(unused_imports)]
                use crate::plan::fields::Assumed::*;
                match self { $(Self::$field => $assumed,)+ }
            }
            /// The JSON key, which ends in the unit.
            #[must_use]
            pub const fn key(self) -> &'static str {
                self.row().key
            }
            /// The values that may be used.
            #[must_use]
            pub const fn range(self) -> crate::range::Range {
                self.row().range
            }
            pub(in crate::plan) fn of_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|field| field.key() == key)
            }
        }

        impl $owner {
            pub(in crate::plan) fn place(&self, field: $name) -> Option<crate::plan::slot::Place<'_>> {
                #[allow(unused_imports)]
                use crate::plan::slot::Holds as _;
                match field {
                    $($name::$field => crate::plan::fields::place!(self, $name::$field, place, $place),)+
                }
            }
            pub(in crate::plan) fn place_mut(
                &mut self,
                field: $name,
            ) -> Option<crate::plan::slot::PlaceMut<'_>> {
                #[allow(unused_imports)]
                use crate::plan::slot::Holds as _;
                match field {
                    $($name::$field => {
                        crate::plan::fields::place!(self, $name::$field, place_mut, $place)
                    })+
                }
            }
        }
    };
}
pub(super) use fields;

/// The JSON key of a place.
macro_rules! key {
    (($by_hand:ident: $($key:tt)+)) => { concat!($(stringify!($key)),+) };
    (($($key:tt)+)) => { concat!($(stringify!($key)),+) };
}
pub(super) use key;

/// The place itself.
macro_rules! place {
    ($this:ident, $field:expr, $method:ident, ($by_hand:ident: $($key:tt)+)) => {
        $this.$by_hand.$method($field)
    };
    ($this:ident, $field:expr, $method:ident, ($($at:tt)+)) => {
        Some($this.$($at)+.$method())
    };
}
pub(super) use place;
