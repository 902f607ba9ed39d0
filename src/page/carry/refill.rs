//! Can it be filled again: a sentence, what fills it as rows that open to their
//! working, curves, and where the days lead.

use crate::{
    answer::{
        RefillAnswer,
        refill::{ChargerRefill, refill},
    },
    drawing::{Drawing, RefillChart},
    finding::Severity,
    page::{
        browser::{forget, later},
        chart::{Plot, chart_view},
        dom::{El, always, h, is_open, named_fold},
        field::number_field_at,
        outcome::stale_mark,
        reactive::*,
        state::State,
    },
    plan::{Path, Plan, supply::SupplyField as S},
    wording::carry::refill as say,
};
use std::{rc::Rc, sync::Arc, time::Duration};

/// The answer, worked out a moment after the keys rest: it runs a fortnight.
#[derive(Clone, Copy)]
struct Answered {
    answer: RwSignal<Option<Arc<RefillAnswer>>>,
    /// The numbers are of the plan before.
    is_behind: RwSignal<bool>,
}

/// How long the keys rest first.
const REST: Duration = Duration::from_millis(120);

impl Answered {
    fn new(state: State, is_open: RwSignal<bool>) -> Self {
        let answered = Self {
            answer: RwSignal::new(None),
            is_behind: RwSignal::new(true),
        };
        let timer = StoredValue::new(None::<i32>);
        always(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            answered.is_behind.set(true);
            if let Some(timer) = timer.get_value() {
                forget(timer);
            }
            timer.set_value(later(REST, move || {
                // The page may have dropped the question meanwhile.
                if answered.is_behind.try_get_untracked().is_some() {
                    answered.answer.set(state.plan_now(refill).map(Arc::new));
                    answered.is_behind.set(false);
                }
            }));
        });
        answered
    }

    fn of<R: Default>(self, state: State, of: impl FnOnce(&Plan, &RefillAnswer) -> R) -> R {
        let answer = self.answer.get();
        answer.map_or_else(R::default, |answer| {
            state.with_plan(|plan| of(plan, &answer))
        })
    }
}

/// The whole part.
pub fn refill_part(state: State) -> El {
    let open = RwSignal::new(true);
    let answered = Answered::new(state, open);
    let part = h("div", "refill");
    follow_fold(part.0.clone(), open);
    part.child(h("h3", "").attr("id", "refill").text(say::TITLE))
        .child(outcome(state, answered))
        .child(sources(state, answered))
        .child(named_fold("fold", say::CURVES, move || {
            let plots = RefillChart::ALL.into_iter();
            plots.map(|chart| plot(state, answered, chart)).collect()
        }))
        .child(named_fold("fold", say::FIELDS, move || {
            let fields = [
                S::RefillFromPercent,
                S::RefillToPercent,
                S::FuelPricePerL,
                S::ShorePricePerKwh,
            ];
            let fields = fields.map(|field| number_field_at(state, Path::Supply(field), "refill"));
            vec![h("div", "grid").children(fields)]
        }))
}

/// Nothing is worked out while the question is folded away.
fn follow_fold(inside: web_sys::Element, open: RwSignal<bool>) {
    later(Duration::ZERO, move || {
        if let Ok(Some(fold)) = inside.closest("details") {
            El(fold).on("toggle", move |event| {
                if event.target() == event.current_target() {
                    open.set(is_open(&event));
                }
            });
        }
    });
}

fn outcome(state: State, answered: Answered) -> El {
    let sentence = move || match (answered.answer.get(), answered.is_behind.get()) {
        (Some(answer), _) => state.with_plan(|plan| say::headline(plan, &answer)),
        (None, true) => say::WAITING.into(),
        (None, false) => say::NO_ANSWER.into(),
    };
    let from = move || answered.of(state, say::from_line);
    let course = move || {
        answered.of(state, |_, answer| {
            let days = answer.days.as_ref();
            days.map_or_else(String::new, |days| say::course(days, answer.to_percent))
        })
    };
    h("div", "outcome")
        .live_class("stale", move || state.is_stale())
        .live_class("behind", move || answered.is_behind.get())
        .child(
            h("div", "")
                .attr("role", "status")
                .attr("aria-live", "polite")
                .child(
                    h("p", "answer")
                        .attr("id", "refill-answer")
                        .live_text(sentence),
                )
                .child(h("p", "detail").live_text(course))
                .child(stale_mark(state)),
        )
        .child(notes(state, answered))
        .child(h("p", "hint").live_text(from))
}

/// What must be mended and what should be known first. Plain notes of a charger
/// stand in its row.
fn notes(state: State, answered: Answered) -> El {
    let sentences = move || {
        answered.of(state, |plan, answer| {
            let first = answer.notes.iter().filter(|note| {
                note.severity != Severity::Note || say::charger_of(&note.matter).is_none()
            });
            first
                .filter_map(|note| say::note(plan, answer, note))
                .collect::<Vec<_>>()
        })
    };
    h("ul", "findings").live_children(
        move || sentences().join("\n"),
        move || {
            let all = sentences();
            all.iter().map(|text| h("li", "").text(text)).collect()
        },
    )
}

/// A row for each charger, and one for the sun.
fn sources(state: State, answered: Answered) -> El {
    // Rows are built anew only when chargers come and go, so that an open one
    // stays open while its numbers change.
    let shape = move || {
        answered.of(state, |plan, answer| {
            let names = answer
                .chargers
                .iter()
                .map(|one| say::charger_name(plan, one));
            (names.collect::<Vec<_>>(), answer.sun.is_some())
        })
    };
    h("div", "sources-of-charge").live_children(
        move || format!("{:?}", shape()),
        move || {
            let (names, has_sun) = shape();
            let count = names.len();
            let rows = names
                .iter()
                .enumerate()
                .map(|(at, name)| charger_row(state, answered, at, name));
            let sun = has_sun.then(|| sun_row(state, answered));
            let title = (has_sun || count > 0).then(|| h("h4", "").text(say::SOURCES));
            title.into_iter().chain(rows).chain(sun).collect()
        },
    )
}

fn row(
    id: &str,
    name: &str,
    verdict: impl Fn() -> String + 'static,
    fails: impl Fn() -> bool + 'static,
    body: El,
) -> El {
    let summary = h("summary", "")
        .child(h("span", "source-name").text(name))
        .child(
            h("span", "source-verdict")
                .live_class("fails", fails)
                .live_text(verdict),
        );
    h("details", "fold source")
        .attr("id", id)
        .child(summary)
        .child(h("div", "fold-body").child(body))
}

fn charger_row(state: State, answered: Answered, at: usize, name: &str) -> El {
    fn of<R: Default>(answered: Answered, at: usize, read: impl FnOnce(&ChargerRefill) -> R) -> R {
        let answer = answered.answer.get();
        let found = answer.as_ref().and_then(|answer| answer.chargers.get(at));
        found.map(read).unwrap_or_default()
    }
    let lines = move || {
        answered.of(state, |plan, answer| {
            answer.chargers.get(at).map_or_else(Vec::new, |charger| {
                let mut lines = say::charger_lines(plan, charger);
                let own = answer.notes.iter().filter(|note| {
                    note.severity == Severity::Note
                        && say::charger_of(&note.matter) == Some(charger.charger)
                });
                lines.extend(own.filter_map(|note| say::note(plan, answer, note)));
                lines
            })
        })
    };
    let body = h("div", "").live_children(
        move || lines().join("\n"),
        move || {
            let said = lines();
            let said = said.iter().map(|text| h("p", "").text(text));
            let kind = of(answered, at, |one| Some(one.kind));
            let cautions = kind.map_or_else(Vec::new, say::cautions);
            let cautions = cautions.into_iter().map(|one| {
                h("p", "caution")
                    .text(one.text)
                    .text(" ")
                    .child(h("cite", "").text(one.source))
            });
            said.chain(cautions).collect()
        },
    );
    row(
        &format!("charger-{at}"),
        name,
        move || of(answered, at, |one| say::charger_verdict(&one.idle)),
        move || of(answered, at, |one| !one.idle.is_filled),
        body,
    )
}

fn sun_row(state: State, answered: Answered) -> El {
    let verdict = move || {
        answered.of(state, |plan, answer| {
            let sun = answer.sun.as_ref();
            sun.map_or_else(String::new, |sun| say::sun_verdict(plan, sun))
        })
    };
    let fails = move || {
        answered.of(state, |_, answer| {
            let sun = answer.sun.as_ref();
            sun.is_some_and(|sun| sun.tomorrow.repaid_h.is_none())
        })
    };
    let body = h("div", "").live_children(
        move || {
            answered.answer.with(|_| ());
            state.turn()
                + if answered.is_behind.get() {
                    "behind"
                } else {
                    ""
                }
        },
        move || {
            answered.of(state, |plan, answer| {
                answer.sun.as_ref().map_or_else(Vec::new, |sun| {
                    let lines = say::sun_lines(plan, answer, sun);
                    let lines = lines.iter().map(|text| h("p", "").text(text));
                    let skies = std::iter::once(&sun.tomorrow).chain(&sun.skies);
                    let rows = skies.map(|sky| say::sky_row(plan, sky)).collect();
                    lines.chain([skies_table(rows)]).collect()
                })
            })
        },
    );
    row("sun-alone", say::SUN, verdict, fails, body)
}

fn skies_table(rows: Vec<Vec<String>>) -> El {
    let heads = say::SKY_HEADS.map(|text| h("th", "").attr("scope", "col").text(text));
    let row = |cells: Vec<String>| {
        let cells = cells.iter().enumerate().map(|(at, text)| match at {
            0 => h("th", "").attr("scope", "row").text(text),
            _ => h("td", "").text(text),
        });
        h("tr", "").children(cells)
    };
    h("div", "scroll")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", say::SUN)
        .child(
            h("table", "")
                .child(h("thead", "").child(h("tr", "").children(heads)))
                .child(h("tbody", "").children(rows.into_iter().map(row))),
        )
}

fn plot(state: State, answered: Answered, chart: RefillChart) -> El {
    let draw = move || -> Drawing { answered.of(state, |plan, answer| chart.draw(plan, answer)) };
    chart_view(
        state,
        Plot {
            titles: chart.titles(),
            draw: Rc::new(draw),
        },
    )
}
