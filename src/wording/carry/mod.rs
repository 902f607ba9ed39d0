//! Sentences of the fourth question: can the wiring carry it?

mod labels;
pub mod refill;
pub mod words;

pub use labels::{fuse_kind_name, hint, label, leg_name, place_name, strands_name, take_off_name};
