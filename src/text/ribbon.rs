//! The words of the night ribbon.

use super::Formatter;
use crate::{
    answer::{Answer, RunAnswer},
    plan::Plan,
};

/// The words of a ribbon, in one language.
pub struct RibbonWords {
    /// What it is, for those who do not see it.
    pub label: fn(Formatter) -> &'static str,
    /// A run's name.
    pub title: fn(Formatter, &Plan, &Answer, &RunAnswer) -> String,
    /// Its hours, in short.
    pub short: fn(Formatter, &Plan, &RunAnswer) -> String,
}
