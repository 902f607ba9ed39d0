//! What the hot day is asked beside its trace.

mod bedtime;
mod changes;
mod check_in;
mod longest;
mod sizing;
