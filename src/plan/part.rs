//! Parts of the plan in which everything may be left out.
//!
//! [`part!`] declares such a part once: the struct, and the rows of its numbers
//! (see `fields`), whose places are its own. Serde's derives read and write it. A
//! number is an `Option` of a [`Figure`] (origin and spread), of an `f64` (a choice)
//! or of a `u32` (a count).

use super::Figure;

/// A number with its origin that may be left out.
pub type MaybeFigure = Option<Figure>;
/// A plain number that may be left out.
pub type MaybeNumber = Option<f64>;
/// A count that may be left out.
pub type MaybeCount = Option<u32>;

/// Declares a part: its numbers first, a row each, then choices, texts, lists and
/// parts within it.
macro_rules! part {
    (
        $(#[$doc:meta])* $name:ident, $fields:ident, default by $by:ty {
            $($(#[$note:meta])* $slot:ident: $kind:ident = $field:ident, $range:ident, $assumed:expr, $width:expr;)+
        } with {
            $($(#[$other_note:meta])* $other:ident: $other_kind:ty,)*
        }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Debug, Default, PartialEq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(deny_unknown_fields, default)]
        pub struct $name {
            $($(#[$note])*
            #[serde(skip_serializing_if = "Option::is_none")]
            pub $slot: crate::plan::part::$kind,)+
            $($(#[$other_note])*
            #[serde(skip_serializing_if = "crate::plan::is_default")]
            pub $other: $other_kind,)*
        }

        crate::plan::fields::fields! {
            #[doc = concat!("The numbers of a [`", stringify!($name), "`].")]
            $fields of $name, default by $by {
                $($field = ($slot), $range, $assumed, $width;)+
            }
        }
    };
}
pub(super) use part;

/// Declares a choice between a few, each with its JSON name.
macro_rules! choice {
    ($($(#[$doc:meta])* $name:ident { $($(#[$note:meta])* $one:ident = $key:literal,)+ })+) => { $(
        $(#[$doc])*
        #[derive(
            Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash,
            serde::Serialize, serde::Deserialize,
        )]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name { $($(#[$note])* #[serde(rename = $key)] $one,)+ }

        impl crate::plan::part::Choice for $name {
            const ALL: &[Self] = &[$(Self::$one,)+];
            fn key(self) -> &'static str {
                match self { $(Self::$one => $key,)+ }
            }
        }
    )+ };
}
pub(super) use choice;

/// A choice between a few, by its JSON name.
pub trait Choice: Copy + PartialEq + 'static {
    const ALL: &[Self];
    /// As JSON writes it.
    fn key(self) -> &'static str;
    /// The one of that name.
    fn of_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|one| one.key() == key)
    }
}
