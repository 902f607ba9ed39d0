//! "Will it last a hot day?": a sentence with its odds, three charts on one
//! clock, what happens and when, and everything it rests on.

mod band;
mod charts;
mod forms;
mod import;
mod modes;
mod told;
mod weather;
mod working;

use super::{
    dom::{El, h},
    state::State,
};
use crate::wording::day_words as words;
use told::Told;

/// All that stands under the question.
pub fn day(state: State) -> Vec<El> {
    let told = Told::new(state);
    let answered = [
        told::told(state, told),
        forms::start(state),
        charts::charts(state, told),
        working::events(state, told),
        working::by_day(state, told),
        working::books(told),
        h("h3", "").text(words::RESTS_ON),
    ];
    answered.into_iter().chain(forms::forms(state)).collect()
}
