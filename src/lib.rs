//! Till Morning: how long a cooling unit runs on a battery bank.

#![deny(unsafe_code)]

pub mod answer;
pub mod linear;
#[cfg(feature = "page")]
pub mod page;
pub mod physics;
pub mod plan;
pub mod quantity;
pub mod range;
pub mod search;
pub mod share;
pub mod simulate;
pub mod study;
pub mod text;
pub mod view;
