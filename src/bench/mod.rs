//! From a log or a notebook to measured figures, and a verdict on each claim.

pub mod import;
pub mod log;
pub mod series;
pub mod totals;
