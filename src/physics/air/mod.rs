//! Moist air, what a cooler does to it, and what a unit gives away from its rating.
//!
//! - [`moist`]: states of moist air by the ASHRAE Handbook of Fundamentals, ch. 1.
//! - [`flow`]: airflow from a volume flow on a stated basis or from a vane traverse.
//! - [`capacity`]: total, sensible and latent cooling from inlet, outlet and flow.
//! - [`partial`]: how each of those figures moves with each reading.
//! - [`coil`]: apparatus dew point and bypass factor.
//! - [`unit`]: published curves for capacity and power by wet bulb and outdoors.
//!
//! Nothing here knows a cabin, a bank or the time of day.
//!
//! ```
//! use till_morning::physics::air::{Humidity, MoistAir, pressure_at_altitude};
//! use till_morning::quantity::{celsius, in_celsius, meters};
//!
//! let pressure = pressure_at_altitude(meters(0.0))?;
//! let room = MoistAir::new(pressure, celsius(27.0), Humidity::WetBulb(celsius(19.0)))?;
//! assert!((room.relative_humidity() - 0.469).abs() < 0.001);
//! assert!((in_celsius(room.dew_point()?) - 14.7).abs() < 0.1);
//!
//! // Air cannot be wetter than saturated: a typed refusal, never a NaN.
//! assert!(MoistAir::new(pressure, celsius(27.0), Humidity::WetBulb(celsius(28.0))).is_err());
//! # Ok::<(), till_morning::physics::air::AirError>(())
//! ```

pub mod capacity;
pub mod coil;
mod error;
pub mod flow;
pub mod moist;
mod own_map;
pub mod partial;
pub mod saturation;
pub mod unit;
mod wet_bulb;

pub use capacity::{AirSide, Efficiency, Point, Reading, Scope, cooling};
pub use coil::Coil;
pub use error::{AirError, AirInput};
pub use flow::{Airflow, Face, FlowBasis, Traverse};
pub use moist::{Humidity, MoistAir, pressure_at_altitude};
pub use own_map::{OwnMap, SettledRun};
pub use partial::{Partial, partials};
pub use saturation::{saturation_pressure, saturation_temperature};
pub use unit::{CurveSet, Performance, Unit};
