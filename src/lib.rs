//! Till Morning: how long a cooling unit runs on a battery bank.

pub mod bench;
pub mod quantity;
