//! Can the wiring carry it: conductors, voltage drop, ampacity, fuses.
//!
//! A wrong number here hurts people, so of two readings the cautious one is
//! taken, every table names its source, and nothing here replaces the local
//! code or a licensed electrician. Copper only, direct current.
//!
//! ```text
//! size          gauges and mm2, each with its copper
//! copper        resistance cold and hot, what strands and tin add
//! drop          volts lost, the current a load draws through its cable
//! surroundings  air, bundle, insulation, terminals
//! ampacity      33 CFR 183.425 table 5 and its reductions
//! fuse          rating of the fuse
//! fuse_place    where it sits, and whether each part has its own
//! fault         short-circuit current, and what can break it
//! solar         array current, cold-morning voltage
//! network       how batteries in parallel share a current (ladder, linear)
//! trial         one size held against every rule
//! choose        the smallest that passes all, and why
//! ventilation   air for lead-acid
//! limits        accepted ranges and refusals
//! ```
//!
//! Nothing panics and nothing is NaN: an input outside its range comes back as
//! a [`Refusal`] that names it.

mod ampacity;
mod choose;
mod copper;
mod drop;
mod fault;
mod fuse;
mod fuse_place;
mod ladder;
mod limits;
mod network;
mod size;
mod solar;
mod surroundings;
mod trial;
mod ventilation;

pub use ampacity::{
    Ampacity, ampacity, beyond_scope, bundle_factor, heat_factor, scope_ends_at, table_5,
};
pub use choose::{Choice, Chosen, Finding, choose};
pub use copper::{Build, estimated_temperature, hot_factor, resistance, solid};
pub use drop::{Demand, Drop, Run, design_current, drop_over, loop_resistance};
pub use fault::{Family, Suitability, prospective_fault, suitability};
pub use fuse::{
    CONTINUOUS_SHARE, FuseAdvice, MarineAllowance, Place, Rating, RatingSource, fuse_ceiling,
    marine_allowance, ratings, recommend, small_conductor_cap,
};
pub use fuse_place::{FusePosition, Parallel, fuse_each, position_met, positions};
pub use limits::{Input, Refusal};
pub use network::{Battery, Row, Sharing, TakeOff};
pub use size::{Awg, Metric, Size, System};
pub use solar::{
    BRIGHT_SUN_SHARE, ColdMorning, ModuleString, array_current, cold_morning, string_fuses,
};
pub use surroundings::{Column, Surroundings};
pub use trial::{Loaded, Path, Rule, Trial};
pub use ventilation::{Gassing, Ventilation, ventilation};
