//! Parts of the plan in which everything may be left out.
//!
//! [`part!`] declares such a part once: the struct, the enum of its numbers
//! with key and accepted range, the table from one to the other, which `slot` and
//! `check` use, and the [`Part`] that is read and written by its keys. A number is an `Option` of a [`Figure`]
//! (origin and spread), of an `f64` (a choice) or of a `u32` (a count).

use super::{
    Figure, Path, Reader,
    read::Object,
    slot::{Place, PlaceMut},
};
use serde::{
    Serialize, Serializer,
    ser::{SerializeMap, SerializeSeq},
};

/// A number with its origin that may be left out.
pub type MaybeFigure = Option<Figure>;
/// A plain number that may be left out.
pub type MaybeNumber = Option<f64>;
/// A count that may be left out.
pub type MaybeCount = Option<u32>;

/// Something of keys as its reader sees it. One compiled body reads them all.
pub(super) trait Keyed {
    /// A new one, before anything of it is read.
    fn unread() -> Self
    where
        Self: Sized;
    /// Takes the shape that is said, and tells the keys that it must have; or the
    /// key that names no shape, and what is expected there.
    fn begin(&mut self, _said: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&[])
    }
    /// What stands under a key; nothing if there is no such key.
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>>;
}

/// A part as its writer sees it. One compiled body writes them all.
pub(super) trait Part {
    /// All that may stand in it, in the order in which it is written.
    fn each(&self, visit: &mut dyn FnMut(&'static str, Held<'_>));
}

/// What stands under a key.
pub(super) enum Held<'a> {
    Number(Place<'a>),
    /// The name of a choice.
    Name(Option<&'static str>),
    Text(&'a str),
    Flag(bool),
    /// A place in a list.
    Index(Option<usize>),
    Numbers(&'a [f64]),
    Part(&'a dyn Part),
    Rows(&'a dyn Rows),
}

/// The same, to write to.
pub(super) enum HeldMut<'a> {
    Number(PlaceMut<'a>),
    Choice(&'a mut dyn Chosen),
    Text(&'a mut String),
    Flag(&'a mut bool),
    Index(&'a mut usize),
    MaybeIndex(&'a mut Option<usize>),
    Numbers(&'a mut Vec<f64>),
    Part(&'a mut dyn Keyed),
    Rows(&'a mut dyn Grows),
    /// Addresses left open to a reader.
    Open(&'a mut Vec<Path>),
    Reader(&'a mut Option<Reader>),
    /// Read before.
    Known,
}

/// A choice as its reader sees it.
pub(super) trait Chosen {
    /// Takes the one of that name; whether there is one.
    fn choose(&mut self, name: &str) -> bool;
    /// Whether it may be left out.
    fn is_optional(&self) -> bool {
        false
    }
}

/// A list of parts.
pub(super) trait Rows {
    fn row(&self, at: usize) -> Option<&dyn Part>;
}

/// A list that is read.
pub(super) trait Grows {
    /// A new one at its end.
    fn add(&mut self) -> &mut dyn Keyed;
}

/// What a number's place in a part can be.
pub(super) trait Holds {
    fn place(&self) -> Place<'_>;
    fn place_mut(&mut self) -> PlaceMut<'_>;
}

/// What else can stand in a part.
pub(super) trait Stands {
    fn held(&self) -> Held<'_>;
    fn held_mut(&mut self) -> HeldMut<'_>;
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

macro_rules! stands {
    ($($(@[$($bound:tt)+])? $kind:ty: |$this:ident| $held:ident($of:expr), $held_mut:ident;)+) => { $(
        impl $(<$($bound)+>)? Stands for $kind {
            fn held(&self) -> Held<'_> {
                let $this = self;
                Held::$held($of)
            }
            fn held_mut(&mut self) -> HeldMut<'_> {
                HeldMut::$held_mut(self)
            }
        }
    )+ };
}
stands! {
    @[T: Choice] Option<T>: |this| Name(this.map(T::key)), Choice;
    @[P: Part + Keyed] P: |this| Part(this), Part;
    @[P: Part + Keyed] Vec<P>: |this| Rows(this), Rows;
    String: |this| Text(this), Text;
    bool: |this| Flag(*this), Flag;
    // The first is as if nothing were said.
    usize: |this| Index(Some(*this).filter(|&at| at > 0)), Index;
    Option<usize>: |this| Index(*this), MaybeIndex;
    Vec<f64>: |this| Numbers(this), Numbers;
}

impl<T: Choice> Chosen for Option<T> {
    fn choose(&mut self, name: &str) -> bool {
        *self = T::of_key(name);
        self.is_some()
    }
    fn is_optional(&self) -> bool {
        true
    }
}

impl<P: Part> Rows for Vec<P> {
    fn row(&self, at: usize) -> Option<&dyn Part> {
        self.get(at).map(|row| row as &dyn Part)
    }
}

impl<P: Keyed> Grows for Vec<P> {
    fn add(&mut self) -> &mut dyn Keyed {
        self.push(P::unread());
        let last = self.len() - 1;
        &mut self[last]
    }
}

/// Whether nothing is said in a part.
pub(super) fn is_blank<P: Part>(part: &P) -> bool {
    says_nothing(part)
}

fn says_nothing(part: &dyn Part) -> bool {
    let mut nothing = true;
    part.each(&mut |_, held| nothing &= held.is_blank());
    nothing
}

impl Held<'_> {
    fn is_blank(&self) -> bool {
        match self {
            Self::Number(Place::MaybeFigure(figure)) => figure.is_none(),
            Self::Number(Place::MaybeNumber(number)) => number.is_none(),
            Self::Number(Place::MaybeCount(count)) => count.is_none(),
            Self::Number(_) => false,
            Self::Name(name) => name.is_none(),
            Self::Text(text) => text.is_empty(),
            Self::Flag(flag) => !flag,
            Self::Index(at) => at.is_none(),
            Self::Numbers(numbers) => numbers.is_empty(),
            Self::Part(part) => says_nothing(*part),
            Self::Rows(rows) => rows.row(0).is_none(),
        }
    }
}

/// Writes what is said in a part, and nothing of the rest.
pub(super) fn write<S: Serializer>(part: &dyn Part, to: S) -> Result<S::Ok, S::Error> {
    let mut map = to.serialize_map(None)?;
    let mut done = Ok(());
    part.each(&mut |key, held| {
        if done.is_ok() && !held.is_blank() {
            done = map.serialize_entry(key, &held);
        }
    });
    done?;
    map.end()
}

impl Serialize for Held<'_> {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Number(place) => place.serialize(to),
            Self::Name(name) => name.serialize(to),
            Self::Text(text) => to.serialize_str(text),
            Self::Flag(flag) => to.serialize_bool(*flag),
            Self::Index(at) => at.serialize(to),
            Self::Numbers(numbers) => numbers.serialize(to),
            Self::Part(part) => write(*part, to),
            Self::Rows(rows) => {
                let mut list = to.serialize_seq(None)?;
                let mut at = 0;
                while let Some(row) = rows.row(at) {
                    list.serialize_element(&Held::Part(row))?;
                    at += 1;
                }
                list.end()
            }
        }
    }
}

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
        #[derive(Debug, Default, PartialEq)]
        #[cfg_attr(
            feature = "schema",
            derive(schemars::JsonSchema),
            serde(deny_unknown_fields, default)
        )]
        pub struct $name {
            $($(#[$note])*
            #[cfg_attr(feature = "schema", serde(skip_serializing_if = "Option::is_none"))]
            pub $slot: crate::plan::part::$kind,)+
            $($(#[$other_note])*
            #[cfg_attr(feature = "schema", serde(skip_serializing_if = "crate::plan::is_default"))]
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

        impl crate::plan::part::Part for $name {
            fn each(&self, visit: &mut dyn FnMut(&'static str, crate::plan::part::Held<'_>)) {
                for &field in $fields::ALL {
                    visit(field.key(), crate::plan::part::Held::Number(self.place(field)));
                }
                $(visit(stringify!($other), crate::plan::part::Stands::held(&self.$other));)*
            }
        }

        impl crate::plan::part::Keyed for $name {
            fn unread() -> Self {
                Self::default()
            }
            fn at(&mut self, key: &str) -> Option<crate::plan::part::HeldMut<'_>> {
                $(if key == stringify!($other) {
                    return Some(crate::plan::part::Stands::held_mut(&mut self.$other));
                })*
                let field = $fields::of_key(key)?;
                Some(crate::plan::part::HeldMut::Number(self.place_mut(field)))
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                crate::plan::part::write(self, to)
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

/// What stands under a part's keys, where each key is the name of its place.
macro_rules! at_own_names {
    ($($slot:ident: $held:path),+ $(,)?) => {
        fn at(&mut self, key: &str) -> Option<crate::plan::part::HeldMut<'_>> {
            $(if key == stringify!($slot) {
                return Some($held(&mut self.$slot));
            })+
            None
        }
    };
}
pub(super) use at_own_names;

/// Clones what owns memory, named here, and copies the rest. Derived, each number
/// that may be left out would be asked whether it is there: a plan's clone would be
/// three times its size.
macro_rules! clones {
    ($($name:ident { $($owner:ident),+ })+) => { $(
        impl Clone for $name {
            fn clone(&self) -> Self {
                Self { $($owner: self.$owner.clone(),)+ ..*self }
            }
        }
    )+ };
}
pub(super) use clones;

/// The same of parts: their numbers go over by the table.
macro_rules! part_clones {
    ($($name:ident, $fields:ident { $($owner:ident),+; $($copied:ident),+ })+) => { $(
        impl Clone for $name {
            fn clone(&self) -> Self {
                let mut clone = Self {
                    $($owner: self.$owner.clone(),)+
                    $($copied: self.$copied,)*
                    ..Self::default()
                };
                for &field in $fields::ALL {
                    clone.place_mut(field).copy(&self.place(field));
                }
                clone
            }
        }
    )+ };
}
pub(super) use part_clones;

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
