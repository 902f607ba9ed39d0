//! What the hot day is asked beside its trace.

#[path = "../support/vectors.rs"]
mod vectors;

mod any;
mod bedtime;
mod changes;
mod chargers;
mod check_in;
mod longest;
mod said;
mod sizing;
mod warmth;
