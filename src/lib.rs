//! Till Morning: how long a cooling unit runs on a battery bank.

pub mod quantity;

pub mod air;
pub mod cabin;
