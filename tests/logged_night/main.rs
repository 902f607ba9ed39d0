//! What the log of one night says of a plan.

#[path = "../support/vectors.rs"]
mod vectors;

mod any;
mod drawn;
mod measured;
mod nights;
mod said;
