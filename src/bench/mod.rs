//! From a log or a notebook to measured figures, and a verdict on each claim.

pub mod claim;
pub mod import;
pub mod instrument;
pub mod lead_acid;
pub mod line;
pub mod log;
pub mod measured;
pub mod money;
pub mod propagate;
pub mod sample;
pub mod series;
pub mod student;
pub mod totals;
