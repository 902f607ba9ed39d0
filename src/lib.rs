//! Till Morning: how long a cooling unit runs on a battery bank.

#![deny(unsafe_code)]

pub mod air;
pub mod answer;
pub mod bank;
pub mod bench;
pub mod cabin;
pub mod chart;
pub mod circuit;
pub mod draw;
pub mod drawing;
pub mod finding;
#[cfg(feature = "page")]
pub mod page;
pub mod pass_on;
pub mod plan;
pub mod quantity;
pub mod range;
pub mod search;
pub mod simulate;
pub mod sizing;
pub mod spread;
pub mod supply;
pub mod weather;
pub mod wiring;
pub mod wording;
