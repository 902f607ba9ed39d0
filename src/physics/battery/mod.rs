//! The bank: chemistries, open-circuit voltage, resistance, Peukert, strings.
//!
//! This room knows nothing of draws, cables or plans. It says what a bank holds
//! and what voltage stands behind which resistance at which charge.

mod chemistry;
pub mod curve;
pub mod kinetic;
pub mod nominal;
mod pack;
pub mod peukert;
mod store;
pub mod strings;
mod tables;
mod temperature;

pub use chemistry::{Chemistry, Kind};
pub use pack::{Capacity, Pack};
pub use store::{Held, Store, Timed};
pub use temperature::TemperatureEffects;
