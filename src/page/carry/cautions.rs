//! Where it can hurt: the cautions that apply, each with its source.

use super::{Answered, of_answer};
use crate::{
    answer::wiring::WiringAnswer,
    page::{
        dom::{El, h},
        state::State,
    },
    plan::Plan,
    wording::{
        self,
        carry::{self as say, words},
    },
};

pub fn cautions(state: State, answer: Answered) -> El {
    h("div", "")
        .child(h("h3", "").text(words::CAUTIONS))
        .child(of_answer(state, answer, |plan, answer| {
            vec![list(plan, answer)]
        }))
}

/// What follows from the numbers first, then what can hurt whatever they are.
pub fn list(plan: &Plan, answer: &WiringAnswer) -> El {
    let one = |text: &str, source: &str| {
        let cite = (!source.is_empty()).then(|| h("cite", "").text(source));
        h("li", "").text(text).text(" ").children(cite)
    };
    let of_numbers = answer.notes.iter().map(|note| {
        let (text, source) = say::note(note);
        one(&text, source).attr("class", "caution")
    });
    let all = crate::answer::cautions(plan).into_iter();
    let of_plan = all.filter(|caution| caution.is_of_wiring());
    let of_plan = of_plan.map(|caution| {
        let source = wording::caution_source(caution);
        one(&wording::caution(plan, caution), source)
    });
    h("ul", "cautions carry-cautions")
        .children(of_numbers)
        .children(of_plan)
}
