//! From a log or a notebook to measured figures, and a verdict on each claim.

pub mod claim;
pub mod counters;
pub mod import;
pub mod instrument;
pub mod lead_acid;
pub mod line;
pub mod log;
pub mod measured;
pub mod money;
pub mod notebook;
pub mod offset;
pub mod pelt;
pub mod propagate;
pub mod run_end;
pub mod sample;
pub mod series;
pub mod stretches;
pub mod student;
pub mod totals;
