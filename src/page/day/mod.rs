//! "Will it last a hot day?": a sentence with its odds, three charts on one
//! clock, what happens and when, and everything it rests on.

mod band;
mod charts;
mod told;
mod working;

use super::{
    dom::{El, h},
    state::State,
};
use told::Told;

/// All that stands under the question.
pub fn day(state: State) -> Vec<El> {
    let told = Told::new(state);
    vec![
        told::told(state, told),
        charts::charts(state, told),
        working::events(state, told),
        working::by_day(state, told),
        working::books(told),
    ]
}
