//! How warm and how damp the cabin gets, and how long the unit runs for it.
//!
//! - [`body`]: a handful of answers (what body, how long, how insulated) made
//!   into figures, each returned and each replaceable ([`figures`]).
//! - [`stores`]: the two stores of heat and the paths between them.
//! - [`sun`], [`people`], [`moisture`]: what comes in besides conduction.
//! - [`thermostat`]: on and off with a dead band, or modulating with a floor.
//! - [`state`], [`step`]: exact stepping, events located. [`books`]: where the
//!   heat went.
//!
//! Nothing here knows the unit's curves or the weather: capacity and outdoor
//! air are numbers handed in step by step.
//!
//! ```
//! use till_morning::physics::cabin::*;
//! use till_morning::quantity::*;
//!
//! let answers = Body {
//!     kind: BodyKind::Van,
//!     inside_length: meters(3.6),
//!     insulation: Insulation::Partial,
//!     colour: Colour::Light,
//!     glazing: Glazing::Double,
//!     covers: Covers::None,
//!     shade: 0.0,
//! };
//! let figures = answers.figures()?;
//! let stepper = Stepper::new(
//!     &figures.stores()?,
//!     &figures.moist_store()?,
//!     Thermostat::Cycling { off_below: celsius(24.0), on_above: celsius(25.0) },
//!     minutes(5.0),
//! )?;
//! let drive = Drive { outdoor_c: 34.0, outdoor_ratio: 0.012, ..Drive::default() };
//! let cooling = Cooling { sensible_w: 1_200.0, coil: None };
//! let mut state = State { air_c: 34.0, shell_c: 34.0, humidity_ratio: 0.012, running: Running::Off };
//! for _ in 0..48 {
//!     state = stepper.step(&state, &drive, &drive, Some(&cooling))?.state;
//! }
//! assert!(state.air_c > 23.9 && state.air_c < 25.1);
//!
//! // A number that is none is refused, and named.
//! let bad = Drive { outdoor_c: f64::NAN, ..drive };
//! assert_eq!(
//!     stepper.step(&state, &bad, &drive, None),
//!     Err(CabinError::NotANumber(CabinInput::Temperature)),
//! );
//! # Ok::<(), CabinError>(())
//! ```

pub mod body;
pub mod books;
mod curve;
mod error;
mod exact;
pub mod figures;
mod leg;
pub mod moisture;
pub mod people;
pub mod state;
pub mod step;
pub mod stores;
pub mod sun;
pub mod thermostat;

pub use body::{Body, BodyKind, Colour, Covers, Glazing, Insulation};
pub use books::{HeatBook, WaterBook};
pub use error::{CabinError, CabinInput};
pub use figures::{Figures, SunGain};
pub use moisture::{MoistStore, WetCoil};
pub use people::{Activity, Gains, Occupant, gains};
pub use state::{Cooling, Drive, State, Step, Switch};
pub use step::Stepper;
pub use stores::Stores;
pub use sun::Face;
pub use thermostat::{Running, Thermostat};
