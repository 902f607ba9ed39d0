//! Passing a plan on: plan to text that travels, and back.
//!
//! What arrives was written by anyone. Every reader here is bounded before it
//! works and answers with a typed reason.

pub mod contract;
mod dictionary;
pub mod link;
pub mod table;

pub use link::{NotALink, TooLong, link_from_plan, plan_from_link};
