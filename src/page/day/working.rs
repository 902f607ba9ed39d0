//! What happens and when, day by day, and the books.

use super::{El, State, h, told::Told};
use crate::{
    page::dom::named_fold,
    plan::Show,
    wording::{day as say, day_words as words},
};

/// Every event, with its clock time.
pub fn events(state: State, told: Told) -> El {
    let rows = move || {
        told.of(state, |plan, day| {
            let events = day.events.iter();
            let rows = events.map(|event| {
                (
                    say::when(day, event.hours_h),
                    say::event_sentence(plan, event),
                )
            });
            rows.collect::<Vec<_>>()
        })
    };
    named_fold("fold", words::EVENTS, move || {
        let list = h("ol", "events").live_children(
            move || format!("{:?}", rows()),
            move || {
                let rows = rows().into_iter();
                rows.map(|(when, what)| {
                    h("li", "")
                        .child(h("span", "when").text(&when))
                        .child(h("span", "").text(&what))
                })
                .collect()
            },
        );
        vec![list]
    })
}

/// One row for each day.
pub fn by_day(state: State, told: Told) -> El {
    named_fold("fold", words::BY_DAY, move || {
        let build = move || {
            let rows = told.of(state, |_, day| say::day_rows(day));
            let mut rows = rows.into_iter();
            let head = |text: &String| h("th", "").attr("scope", "col").text(text);
            let heads = rows.next().unwrap_or_default();
            let rows = rows.map(|cells| {
                let cells = cells.iter().enumerate().map(|(at, cell)| match at {
                    0 => h("th", "").attr("scope", "row").text(cell),
                    _ => h("td", "").text(cell),
                });
                h("tr", "").children(cells)
            });
            vec![
                h("thead", "").child(h("tr", "").children(heads.iter().map(head))),
                h("tbody", "").children(rows),
            ]
        };
        let table = h("table", "days").live_children(move || state.turn(), build);
        let scroll = h("div", "scroll")
            .attr("tabindex", "0")
            .attr("role", "region")
            .attr("aria-label", words::BY_DAY);
        vec![scroll.child(table)]
    })
}

/// The energy book and the heat book, and what they were reckoned by.
pub fn books(state: State, told: Told) -> El {
    named_fold("fold", words::BOOKS, move || {
        let book = |of: fn(&crate::answer::DayAnswer, Show) -> Vec<say::BookRow>| {
            let rows = move || told.of(state, |plan, day| of(day, plan.show));
            h("table", "terms").live_children(
                move || format!("{:?}", rows()),
                move || {
                    let rows = rows().into_iter().map(|(what, much)| {
                        h("tr", "")
                            .child(h("th", "").attr("scope", "row").text(what))
                            .child(h("td", "").text(&much))
                    });
                    vec![h("tbody", "").children(rows)]
                },
            )
        };
        vec![
            h("h3", "").text(words::ENERGY_BOOK),
            book(say::energy_rows),
            h("h3", "").text(words::HEAT_BOOK),
            book(say::heat_rows),
            h("p", "source").text(words::METHOD),
        ]
    })
}
