//! What feeds the bank.
//!
//! Pure functions of their arguments: the sun's direction and strength, the air's
//! temperature and the bank's voltage are handed in, so that this room knows
//! neither the weather nor the bank.

pub mod charger;
pub mod solar;
