//! What stands below the first screen: built when the first answer is there.
//!
//! All of it is reached through [`inside`] alone, which is in a part of the wasm that
//! comes after the first one.

use super::{
    assumed::Assumed, banks::Banks, curves::Curves, keeping::Keeping, modes::Modes, needed::Needed,
    outcome::Working, part, units::Units,
};
use leptos::prelude::*;

/// What is built later, at its place in the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Below {
    /// Banks, modes and units of the first question, and its curves.
    Numbers,
    /// How the first answer is worked out.
    Working,
    /// The second question.
    Bank,
    Assumed,
    Keeping,
}

/// Its place, with a line until it is there.
#[component]
pub fn Place(of: Below) -> impl IntoView {
    part::below(of)
}

/// What stands there.
pub fn inside(of: Below) -> AnyView {
    match of {
        Below::Numbers => view! {
            <Banks />
            <Modes />
            <Units />
            <Curves />
        }
        .into_any(),
        Below::Working => view! { <Working /> }.into_any(),
        Below::Bank => view! { <Needed /> }.into_any(),
        Below::Assumed => view! { <Assumed /> }.into_any(),
        Below::Keeping => view! { <Keeping /> }.into_any(),
    }
}
