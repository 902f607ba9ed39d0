//! Passing a plan on: plan to text that travels, and back.
//!
//! What arrives was written by anyone. Every reader here is bounded before it
//! works and answers with a typed reason.

pub mod contract;
mod day_tables;
mod dictionary;
pub mod embed;
pub mod figure;
mod fragments;
pub mod link;
pub mod name;
pub mod qr;
pub mod report;
pub mod table;
pub mod tables;
mod tame;

pub use link::{NotALink, TooLong, link_from_plan, plan_from_link};
