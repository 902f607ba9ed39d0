//! The physics, a room for each idea. None of them knows a plan, and none imports
//! another: they meet in [`crate::simulate`].

pub mod air;
pub mod battery;
pub mod bench;
pub mod cabin;
pub mod circuit;
pub mod feed;
pub mod solar;
pub mod weather;
pub mod wiring;
