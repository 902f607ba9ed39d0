//! What the cooling unit asks of the bank's side of its feed.

mod feed;

pub use feed::{DcDc, Inverter};
