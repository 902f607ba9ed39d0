//! What was read off in the night: clock, monitor, thermometer.

use super::{El, State, forms::grid, h, told::Told};
use crate::{
    page::{dom::button, field::number_field},
    plan::{CheckIn, Path, check::MOST_CHECK_INS, day::CheckInField as I},
    wording::{self, day as say, day_words as words},
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

/// What the readings make of the night; nothing before there is one.
pub fn checked(state: State, told: Told) -> El {
    let late = told.bands.check_in;
    let sentences = move || {
        late.get().map_or_else(Vec::new, |said| {
            state.with_plan(|plan| {
                let mut all = vec![say::check_in_sentence(plan, &said)];
                all.push(say::onward_sentence(plan, &said));
                all.extend(say::advice_sentence(plan, &said));
                all
            })
        })
    };
    let fit = move || {
        late.get()
            .map_or_else(Vec::new, |said| say::fit_sentences(&said.fit))
    };
    let take = button("quiet", words::TAKE_FIT, move || {
        let Some(said) = late.get() else { return };
        state.edit(|plan| {
            if let Some(fitted) = said.fit.applied_to(plan) {
                *plan = fitted;
            }
        });
    })
    .live_flag("hidden", move || {
        !late
            .get()
            .is_some_and(|said| state.with_plan(|plan| say::is_fitted(&said, plan)))
    });
    h("div", "checked")
        .live_class("behind", move || late.is_behind())
        .live_flag("hidden", move || late.get().is_none())
        .child(h("h3", "").text(words::CHECKED))
        .child(
            h("div", "")
                .attr("role", "status")
                .attr("id", "day-checked")
                .live_children(
                    move || sentences().join("\n"),
                    move || {
                        let all = sentences();
                        let last = all.len().saturating_sub(1);
                        let line = |(at, text): (usize, &String)| {
                            let class = if at == last {
                                "answer advice"
                            } else {
                                "detail"
                            };
                            h("p", class).text(text)
                        };
                        all.iter().enumerate().map(line).collect()
                    },
                ),
        )
        .child(h("ul", "findings").live_children(
            move || fit().join("\n"),
            move || fit().iter().map(|text| h("li", "").text(text)).collect(),
        ))
        .child(take)
}
