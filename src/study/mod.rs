//! Questions that take many runs: what size is enough, and how far a figure may be off.

pub mod logged;
pub mod night;
pub mod sizing;
pub mod spread;
