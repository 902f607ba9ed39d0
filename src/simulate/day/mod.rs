//! One to seven days of a plan: weather, cabin, unit, bank, panels and chargers
//! in time.
//!
//! ```text
//! Scene::new(&plan)           place, date and the sun: once
//!   Inputs::new(&scene, &plan)  every figure as a plain number: cheap, so vary
//!                               the plan (Plan::set_number) and ask again
//!     run(&inputs, &how, &mut sink) -> Outcome
//! ```
//!
//! Steps are of ten minutes (of twenty in [`Scene::coarse`]), cut where the plan changes by the clock
//! ([`timeline`]). Within one the weather runs straight, the unit's capacity and
//! draw stay, and the bank's current is its mean; the cabin is exact, with every
//! switch of the thermostat located, and so is the energy of the bank. Empty and
//! cut-off are located within their step and the step is run again up to there.
//!
//! - Who wants the curves passes a [`Record`]; samples and searches pass `()` and
//!   set [`How::is_quick`] and [`Scene::coarse`]: longer steps, currents found in two
//!   passes. The thermostat cycles in both: smoothed out it took 7 % more in the
//!   demo, whose nights end with the cabin adrift inside the band.
//! - Another mode plan: put a [`timeline::Timeline::of_rows`] into the inputs.
//! - From another state (a reading in the night): run up to there with
//!   [`How::until_h`], put what was read in the place of what the [`Outcome`] ends
//!   with (the shell's heat is known from nowhere else), and go on from
//!   [`How::start`].
//! - Vary and compare: [`outcome`]. Call it with the same scene as long as date,
//!   place, clock, wanted hour and days stay.

mod attempt;
mod bank;
mod bus_loads;
mod charging;
mod closed;
mod driven;
mod guess;
mod inputs;
mod keep;
mod legs;
mod outdoors;
mod piece;
mod ready;
mod record;
mod run;
mod scene;
mod setpoint_monitor;
mod sky;
mod source_currents;
mod state;
mod stops;
pub mod timeline;
mod unit;

pub use bank::{Bank, Charging};
pub use closed::{Closed, closed};
pub use driven::{
    DrivenBank, DrivenStep, UnitDid, cabin_at, drive_bank, drive_cabin, extra_on_w, off_w,
};
pub use inputs::{Inputs, figures};
pub use legs::{Leg, Legs, Mark};
pub use ready::can_be_run;
pub use record::{
    COLDEST_C, DayEvent, DayPoint, DaySum, EnergySum, Happening, HeatSum, ModeAt, Outcome, Record,
    Sink, Starts,
};
pub use run::{outcome, run};
pub use scene::Scene;
pub use sky::{COARSE_STEPS_PER_HOUR, STEPS_PER_HOUR};
pub use state::{How, Start};
pub use unit::UnitModel;
