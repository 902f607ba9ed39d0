//! Leptos' reactive graph: what the page uses of it, in one place.
//!
//! The `leptos` crate itself brings the client half of its server functions
//! along, whose exports no linker may drop; its reactive core is a crate of its
//! own, and is all that a page without `view!` needs.

pub use reactive_graph::{
    computed::Memo,
    effect::RenderEffect,
    graph::untrack,
    owner::{Owner, StoredValue},
    signal::RwSignal,
    traits::{Get, GetUntracked, GetValue, Set, SetValue, Update, With, WithUntracked, WithValue},
};
