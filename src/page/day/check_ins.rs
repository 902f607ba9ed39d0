//! What was read off in the night: clock, monitor, thermometer.

use super::{El, State, forms::grid, h};
use crate::{
    page::{dom::button, field::number_field},
    plan::{CheckIn, Path, check::MOST_CHECK_INS, day::CheckInField as I},
    wording::{self, day_words as words},
};

/// The readings, a card each.
pub fn check_ins(state: State) -> Vec<El> {
    let count = move || state.with_plan(|plan| plan.check_ins.len());
    let cards = move || {
        let cards = (0..count()).map(|at| card(state, at, count()));
        let add = (count() < MOST_CHECK_INS).then(|| {
            button("quiet", words::ADD_CHECK_IN, move || {
                let now = js_sys::Date::new_0();
                let clock_min = 60 * now.get_hours() + now.get_minutes();
                state.edit(|plan| {
                    plan.check_ins.push(CheckIn {
                        clock_min: Some(clock_min),
                        ..CheckIn::default()
                    });
                });
            })
        });
        cards.chain(add).collect()
    };
    vec![
        h("p", "hint").text(words::CHECK_IN_HINT),
        h("div", "").live_children(move || count().to_string(), cards),
    ]
}

fn card(state: State, at: usize, count: usize) -> El {
    let fields = [I::ClockMin, I::ChargePercent, I::CabinC, I::DayCount];
    let fields = fields.map(|field| number_field(state, Path::CheckIn(at, field)));
    h("fieldset", "card")
        .child(h("legend", "").text(&wording::numbered(words::CHECK_IN, at, count)))
        .child(grid(fields))
        .child(button("quiet", words::REMOVE_CHECK_IN, move || {
            state.change(|draft| draft.remove(Path::CheckIns, at));
        }))
}
