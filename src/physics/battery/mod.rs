//! The bank: chemistries, open-circuit voltage, resistance, Peukert, strings.
//!
//! This room knows nothing of draws, cables or plans. It says what a bank holds
//! and what voltage stands behind which resistance at which charge.

pub mod curve;
mod kinds;
pub mod kinetic;
pub mod nominal;
mod pack;
pub mod peukert;
pub mod polarisation;
mod store;
pub mod strings;
mod temperature;

pub use kinds::{Charging, Chemistry, Gassing, Kind, TemperatureResponse};
pub use pack::{Capacity, Pack};
pub use store::{Held, Store, Timed};
pub use temperature::TemperatureEffects;
