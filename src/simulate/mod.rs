//! Where bank, draw and circuit meet in time.

pub mod assemble;
mod calibrate;
pub mod charge;
pub mod day;
mod hours;
pub mod job;
mod lag;
mod pieces;
pub mod steady;

pub(crate) use hours::{held_span, hours, hours_on};
pub use job::{Job, Stop};
pub use steady::{Knot, Run, hours_down, run_down};
