//! From a log or a notebook to measured figures, and a verdict on each claim.
//!
//! The way through the rooms:
//!
//! 1. [`import`] reads a file into a [`log`]; what it guessed, dropped or
//!    turned round stands beside it. [`notebook`] takes figures noted by hand.
//! 2. [`offset`] takes off what a meter shows at rest.
//! 3. [`totals`] (a [`tally`] of each quantity) gives charge, energy and means, with the error of sampling,
//!    the bounds of the gaps, and the [`counters`] held against them.
//! 4. [`stretches`] finds the modes that were run, by [`pelt`]; [`run_end`]
//!    when the run ended and why.
//! 5. [`instrument`] says how well a meter reads, [`measured`] puts the parts of
//!    an uncertainty together; [`propagate`] and [`student`] are the arithmetic of it.
//! 6. [`lead_acid`] brings a capacity to its rated rate and temperature,
//!    [`claim`] gives the verdict and what would decide it, [`money`] the price
//!    of a watt-hour.
//!
//! Two rules run through all of it. Nothing is invented: a gap stays a gap with
//! a bound, and where the rows do not follow the load no accuracy is claimed.
//! Nothing fails in silence: a cell that cannot be read is refused by line and
//! column, and no figure is ever not a number.

pub mod claim;
pub mod counters;
pub mod import;
pub mod instrument;
pub mod lead_acid;
pub mod log;
pub mod measured;
pub mod money;
pub mod notebook;
pub mod offset;
pub mod pelt;
pub mod propagate;
pub mod run_end;
pub mod series;
pub mod stretches;
pub mod student;
pub mod tally;
pub mod totals;
