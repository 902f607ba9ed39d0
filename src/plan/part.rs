//! Parts of the plan in which everything may be left out.
//!
//! [`part!`] declares such a part once: the struct, the enum of its numbers
//! with key and accepted range, and the table from one to the other, which `slot`
//! and `check` use. Serde's derives read and write it. A number is an `Option` of a
//! [`Figure`] (origin and spread), of an `f64` (a choice) or of a `u32` (a count).

use super::{
    Figure,
    slot::{Place, PlaceMut},
};

/// A number with its origin that may be left out.
pub type MaybeFigure = Option<Figure>;
/// A plain number that may be left out.
pub type MaybeNumber = Option<f64>;
/// A count that may be left out.
pub type MaybeCount = Option<u32>;

/// What a number's place in a part can be.
pub(super) trait Holds {
    fn place(&self) -> Place<'_>;
    fn place_mut(&mut self) -> PlaceMut<'_>;
}

macro_rules! holds {
    ($($kind:ident)+) => { $(
        impl Holds for $kind {
            fn place(&self) -> Place<'_> {
                Place::$kind(self)
            }
            fn place_mut(&mut self) -> PlaceMut<'_> {
                PlaceMut::$kind(self)
            }
        }
    )+ };
}
holds! { MaybeFigure MaybeNumber MaybeCount }

/// Declares a part: numbers first, each with its address and range, then
/// choices, texts, lists and parts within it.
macro_rules! part {
    (
        $(#[$doc:meta])* $name:ident, $fields:ident {
            $($(#[$note:meta])* $slot:ident: $kind:ident = $field:ident, $range:ident;)+
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

        #[doc = concat!("The numbers of a [`", stringify!($name), "`].")]
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $fields { $($field,)+ }

        impl $fields {
            pub const ALL: &[Self] = &[$(Self::$field,)+];

            /// The JSON key, which ends in the unit.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$field => stringify!($slot),)+ }
            }
            /// The values that may be used.
            #[must_use]
            pub const fn range(self) -> crate::range::Range {
                match self { $(Self::$field => crate::range::$range,)+ }
            }
            pub(in crate::plan) fn of_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|field| field.key() == key)
            }
        }

        impl $name {
            pub(in crate::plan) fn place(&self, field: $fields) -> crate::plan::slot::Place<'_> {
                match field { $($fields::$field => crate::plan::part::Holds::place(&self.$slot),)+ }
            }
            pub(in crate::plan) fn place_mut(
                &mut self,
                field: $fields,
            ) -> crate::plan::slot::PlaceMut<'_> {
                match field {
                    $($fields::$field => crate::plan::part::Holds::place_mut(&mut self.$slot),)+
                }
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
