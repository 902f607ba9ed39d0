//! Where it can hurt: the cautions that apply, each with its source.

use super::{Answered, of_answer};
use crate::{
    answer::wiring::WiringAnswer,
    page::{
        dom::{El, h},
        state::State,
    },
    plan::Plan,
    wording::carry::{self as say, words},
};

pub fn cautions(state: State, answer: Answered) -> El {
    h("div", "")
        .child(h("h3", "").text(words::CAUTIONS))
        .child(of_answer(state, answer, |plan, answer| {
            vec![list(plan, answer)]
        }))
}

/// Those of this plan first, then those that always hold.
pub fn list(plan: &Plan, answer: &WiringAnswer) -> El {
    let one = |text: &str, source: &str| {
        let cite = (!source.is_empty()).then(|| h("cite", "").text(source));
        h("li", "").text(text).text(" ").children(cite)
    };
    let of_plan = answer.notes.iter().map(|note| {
        let (text, source) = say::note(plan, note);
        one(&text, source).attr("class", "caution")
    });
    let always = say::ALWAYS
        .iter()
        .map(|one_of| one(one_of.text, one_of.source));
    h("ul", "cautions carry-cautions")
        .children(of_plan)
        .children(always)
}
