//! "Does it do what it claims?": a log, a report, and what to measure next.

mod air;
mod columns;
mod edges;
mod editor;
mod figures;
mod file;
mod into;
mod log_view;
mod notes;
mod report;

use super::{
    dom::{El, h, named_fold},
    field::number_field,
    reactive::*,
    state::State,
};
use crate::{
    answer::{
        claims::{self as answered, ClaimsAnswer},
        pocket::pocket,
    },
    plan::{Path, claims::PriceField},
    wording::claims::{self as say, words},
};

/// The claims' answer, worked out while the question is open.
pub type Answered = Memo<ClaimsAnswer>;

/// All that stands under the question.
pub fn claims(state: State) -> Vec<El> {
    let answer: Answered = Memo::new_with_compare(
        move |_| {
            state.with_answer(|night| state.with_plan(|plan| answered::claims(plan, &night.runs)))
        },
        |_, _| true,
    );
    let headline = move || state.with_plan(|plan| answer.with(|a| say::headline(plan, a)));
    let said = h("p", "answer")
        .attr("id", "claims-answer")
        .attr("role", "status")
        .live_text(headline);
    vec![
        said,
        report::report(state, answer),
        file::log(state),
        notes::notes(state),
        editor::editor(state),
        air::air(state, answer),
        price(state, answer),
        h("h3", "").text(words::NEXT),
        next(state, answer),
        named_fold("fold", words::POCKET, move || pockets(state)),
    ]
}

/// A list of sentences, kept true.
fn sentences(of: impl Fn() -> Vec<String> + Clone + Send + Sync + 'static) -> El {
    let key = of.clone();
    h("ul", "findings").live_children(
        move || key().join("\n"),
        move || of().iter().map(|text| h("li", "").text(text)).collect(),
    )
}

fn next(state: State, answer: Answered) -> El {
    sentences(move || {
        state.with_plan(|plan| {
            answer.with(|answer| {
                if answer.next.is_empty() {
                    return vec![words::NEXT_NONE.to_owned()];
                }
                let all = answer.next.iter();
                all.map(|next| say::next_sentence(plan, next)).collect()
            })
        })
    })
}

fn pockets(state: State) -> Vec<El> {
    let said = move || {
        state.with_plan(|plan| {
            pocket(plan)
                .iter()
                .map(|one| say::pocket_sentence(plan, one))
                .collect()
        })
    };
    vec![h("p", "hint").text(words::POCKET_HINT), sentences(said)]
}

fn price(state: State, answer: Answered) -> El {
    named_fold("fold", words::PRICE, move || {
        let said = move || answer.with(|a| a.money.as_ref().map(say::money_sentence));
        let fields = PriceField::ALL.iter();
        let fields = fields.map(|&field| number_field(state, Path::Price(field)));
        vec![
            h("div", "grid").children(fields),
            h("p", "detail").live_text(move || said().unwrap_or_default()),
        ]
    })
}
