//! "Can the wiring carry it, and can it be filled again?": cables, fuses and
//! what the blocks bear; an answer first, then what it rests on.

mod blocks;
mod cautions;
mod fields;
mod legs;
mod refill;
mod sheet;

use super::{
    dom::{El, always, h, named_fold},
    field::number_field_at,
    outcome::said,
    reactive::*,
    state::State,
    supply,
};
use crate::{
    answer::wiring::{Open, WiringAnswer, wiring},
    plan::Path,
    wording::carry::{self as say, words},
};

/// The wiring's answer, worked out while the question is open.
pub type Answered = Memo<Option<WiringAnswer>>;

/// All that stands under the question.
pub fn carry(state: State) -> Vec<El> {
    let answer: Answered = Memo::new_with_compare(move |_| state.with_plan(wiring), |_, _| true);
    vec![
        outcome(state, answer),
        open_fields(state, answer),
        legs::legs(state, answer),
        fields::cables(state),
        blocks::blocks(state, answer),
        fields::blocks(state),
        blocks::panels(state, answer),
        refill::refill_part(state),
        named_fold("fold", words::SUPPLY, move || {
            supply::supply(state, "carry")
        }),
        cautions::cautions(state, answer),
        sheet::sheet(state, answer),
    ]
}

/// The sentence, and the blocks in a line.
fn outcome(state: State, answer: Answered) -> El {
    let sentence = move || {
        answer.with(|answer| {
            let said = answer.as_ref().map(say::headline);
            said.unwrap_or_else(|| words::NO_ANSWER.into())
        })
    };
    let line = move || {
        answer.with(|answer| {
            let bank = answer.as_ref().and_then(|answer| answer.bank.as_ref());
            bank.map(say::blocks_line).unwrap_or_default()
        })
    };
    said(
        state,
        "carry-answer",
        sentence,
        [h("p", "detail").live_text(line)],
    )
}

/// The fields that the verdict waits for, beside it. One that was shown stays while
/// it is typed into.
fn open_fields(state: State, answer: Answered) -> El {
    let shown = RwSignal::new(Vec::<Open>::new());
    always(move || {
        let open = answer.with(|answer| {
            let answer = answer.as_ref();
            answer.map_or_else(Vec::new, |answer| answer.open.clone())
        });
        let mut all = shown.get_untracked();
        let before = all.len();
        for one in open {
            if !all.contains(&one) {
                all.push(one);
            }
        }
        if all.len() > before {
            shown.set(all);
        }
    });
    h("div", "grid open-fields").live_children(
        move || format!("{:?}", shown.get()),
        move || {
            let all = shown.get_untracked();
            all.iter().map(|&open| open_field(state, open)).collect()
        },
    )
}

fn open_field(state: State, open: Open) -> El {
    match open {
        Open::FuseKind => fields::fuse_kind(state, "open-fuse-kind"),
        Open::Field(path @ Path::Laid(leg, _)) => h("div", "")
            .child(number_field_at(state, path, "open-"))
            .child(h("p", "hint").text(say::leg_name(leg))),
        Open::Field(path) => number_field_at(state, path, "open-"),
    }
}

/// What is built of the answer, anew whenever that changes.
fn of_answer(
    state: State,
    answer: Answered,
    build: impl Fn(&crate::plan::Plan, &WiringAnswer) -> Vec<El> + 'static,
) -> El {
    let key = move || {
        answer.with(|_| ());
        state.turn()
    };
    h("div", "").live_children(key, move || {
        state.with_plan(|plan| {
            answer.with(|answer| {
                let answer = answer.as_ref();
                answer.map_or_else(Vec::new, |answer| build(plan, answer))
            })
        })
    })
}

/// A table with its heads.
fn table(class: &str, heads: &[&str], rows: Vec<Vec<String>>) -> El {
    // A corner with nothing in it is no heading.
    let head = h("tr", "").children(heads.iter().map(|text| match *text {
        "" => h("td", ""),
        text => h("th", "").attr("scope", "col").text(text),
    }));
    let row = |cells: Vec<String>| {
        let cells = cells.into_iter().enumerate();
        h("tr", "").children(cells.map(|(at, text)| {
            if at == 0 {
                h("th", "").attr("scope", "row").text(&text)
            } else {
                h("td", "").text(&text)
            }
        }))
    };
    // What may be wider than a phone is reached by keys, under a name.
    let names = heads.iter().filter(|text| !text.is_empty());
    let name = names.copied().collect::<Vec<_>>().join(", ");
    h("div", "scroll")
        .attr("tabindex", "0")
        .attr("role", "group")
        .attr("aria-label", &name)
        .child(
            h("table", class)
                .child(h("thead", "").child(head))
                .child(h("tbody", "").children(rows.into_iter().map(row))),
        )
}
