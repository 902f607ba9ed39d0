//! "Will it last a hot day?": a sentence with its odds, three charts on one
//! clock, what happens and when, and everything it rests on.

mod band;
mod changes;
mod charts;
mod check_ins;
mod enough;
mod forms;
mod import;
mod modes;
mod told;
mod weather;
mod working;

use super::{
    dom::{El, h, named_fold},
    state::State,
};
use crate::wording::day_words as words;
use told::Told;

/// All that stands under the question.
pub fn day(state: State) -> Vec<El> {
    let told = Told::new(state);
    let sentence = told::told(state, told);
    told.follow_fold(&sentence);
    let answered = [
        sentence,
        check_ins::checked(state, told),
        named_fold("fold", words::CHECK_INS, move || {
            check_ins::check_ins(state)
        }),
        forms::start(state),
        charts::charts(state, told),
        changes::changes(state, told),
        changes::bedtime(state, told),
        enough::longest(state, told),
        named_fold("fold", words::ENOUGH, move || enough::enough(state, told)),
        working::events(state, told),
        working::by_day(state, told),
        working::books(state, told),
        h("h3", "").text(words::RESTS_ON),
    ];
    answered.into_iter().chain(forms::forms(state)).collect()
}
