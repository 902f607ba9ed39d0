//! One sheet of paper for an electrician: shown as it prints, and printed alone.

use super::{Answered, cautions, of_answer, table};
use crate::{
    answer::wiring::{LegAnswer, WiringAnswer},
    page::{
        browser::window,
        dom::{El, button, h, set_class},
        state::State,
    },
    plan::Plan,
    wording::carry::{self as say, words},
};

/// A fold with the sheet in it, and the button that prints it. Printing from the
/// browser's own menu prints the page.
pub fn sheet(state: State, answer: Answered) -> El {
    let paper = of_answer(state, answer, |plan, answer| vec![article(plan, answer)]);
    let fold = h("details", "fold")
        .attr("id", "electrician")
        .child(h("summary", "").text(words::SHEET))
        .child(h("div", "fold-body").child(paper));
    let root = fold.0.clone();
    let print = move || {
        // Only while it prints: style/carry.css leaves nothing else on the paper.
        let body = root.owner_document().and_then(|document| document.body());
        let Some(body) = body else { return };
        let was_open = root.has_attribute("open");
        let _ = root.set_attribute("open", "");
        set_class(&body, "for-electrician", true);
        let _ = window().print();
        set_class(&body, "for-electrician", false);
        if !was_open {
            let _ = root.remove_attribute("open");
        }
    };
    h("div", "")
        .child(button("print-sheet", words::SHEET_PRINT, print))
        .child(fold)
}

fn article(plan: &Plan, answer: &WiringAnswer) -> El {
    let title = plan.title.trim();
    let named = (!title.is_empty()).then(|| h("p", "").text(title));
    let legs = answer.legs.iter().map(|leg| leg_row(plan, leg)).collect();
    let bank = answer.bank.as_ref();
    let blocks = bank.map(|bank| {
        let lines = [
            Some(say::blocks_line(bank)),
            say::take_off_line(bank),
            say::string_fuse_line(bank),
        ];
        let lines = lines
            .into_iter()
            .flatten()
            .map(|text| h("li", "").text(&text));
        h("ul", "").children(lines)
    });
    let taken = say::taken_for(plan, answer);
    let taken = taken.iter().map(|text| h("li", "").text(text));
    let panels = answer.solar.as_ref().map(|side| {
        let lines = say::solar_lines(plan, side);
        h("ul", "").children(lines.iter().map(|text| h("li", "").text(text)))
    });
    let system = say::system_on_paper(plan, answer);
    let system = system.iter().map(|text| h("p", "system").text(text));
    h("article", "sheet")
        .child(h("h1", "").text(words::SHEET_TITLE))
        .children(named)
        .children(system)
        .child(h("p", "method").text(words::SHEET_METHOD))
        .child(h("p", "said-first").text(&say::headline(answer)))
        .child(table("sheet-legs", &words::SHEET_HEADS, legs))
        .child(h("h2", "").text(words::SHEET_BLOCKS))
        .children(blocks)
        .children(panels)
        .child(h("h2", "").text(words::SHEET_TAKEN))
        .child(h("ul", "").children(taken))
        .child(h("h2", "").text(words::CAUTIONS))
        .child(cautions::list(plan, answer))
        .child(h("p", "sign").text(words::SHEET_SIGN))
}

fn leg_row(plan: &Plan, leg: &LegAnswer) -> Vec<String> {
    vec![
        say::leg_on_paper(plan, leg),
        say::amps_on_paper(leg),
        leg.have
            .as_ref()
            .map_or_else(|| words::NOT_SAID.into(), |have| say::size_text(&have.size)),
        say::both_sizes(&leg.needed),
        say::decided_on_paper(leg),
        say::drop_on_paper(leg),
        say::fuse_on_paper(leg),
    ]
}
