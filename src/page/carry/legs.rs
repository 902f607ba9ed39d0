//! The cables, each a row that opens to the rule that decided and its source.

use super::{Answered, of_answer, table};
use crate::{
    answer::wiring::{LegAnswer, Protection, RuleName, SizeFigures, Verdict},
    page::{
        dom::{El, h},
        reactive::*,
        state::State,
    },
    plan::{Plan, part::Choice, wiring::Leg},
    wording::carry::{self as say, words},
};

/// All cables that the plan has. A row stays as it is, open or shut, while the
/// numbers in it change.
pub fn legs(state: State, answer: Answered) -> El {
    h("div", "legs")
        .child(h("h3", "").text(words::LEGS))
        .child(h("p", "hint").text(words::LEGS_HINT))
        .children(Leg::ALL.iter().map(|&leg| row(state, answer, leg)))
}

fn of<R: Default>(answer: Answered, leg: Leg, read: impl FnOnce(&LegAnswer) -> R) -> R {
    answer.with(|answer| {
        let legs = answer.as_ref().map_or(&[][..], |answer| &answer.legs);
        let found = legs.iter().find(|one| one.leg == leg);
        found.map(read).unwrap_or_default()
    })
}

fn row(state: State, answer: Answered, leg: Leg) -> El {
    let line = move || of(answer, leg, say::leg_line);
    let is = move |verdict| of(answer, leg, |leg| leg.verdict == verdict);
    let summary = h("summary", "")
        .child(h("span", "leg-name").text(say::leg_name(leg)))
        .child(
            h("span", "leg-verdict")
                .live_class("fails", move || is(Verdict::Fails))
                .live_class("carries", move || is(Verdict::Carries))
                .live_text(line),
        );
    let body = of_answer(state, answer, move |plan, answer| {
        let found = answer.legs.iter().find(|one| one.leg == leg);
        found.map_or_else(Vec::new, |leg| inside(plan, leg))
    });
    h("details", "fold leg")
        .attr("id", &format!("leg-{}", leg.key()))
        .live_flag("hidden", move || line().is_empty())
        .child(summary)
        .child(h("div", "fold-body").child(body))
}

fn inside(plan: &Plan, leg: &LegAnswer) -> Vec<El> {
    let line = |text: &str| h("p", "").text(text);
    let smallest = leg.needed.iter().find_map(|one| one.smallest.as_ref());
    let judged = leg.have.as_ref().or(smallest);
    let help = say::remedies_text(plan, leg).map(|text| h("p", "remedies").text(&text));
    let mut all = vec![h("p", "deciding").text(&say::deciding(leg))];
    all.extend(help);
    all.push(rules(leg));
    all.push(line(&say::asked_by(plan, leg)));
    if let Some(figures) = judged {
        all.push(line(&say::ampacity_text(plan, leg, figures)));
        let drop = figures.loaded.as_ref();
        all.extend(drop.map(|loaded| line(&say::drop_text(plan, leg, loaded))));
    }
    let notes = leg.notes.iter().map(|note| say::leg_note(plan, note));
    let notes = notes.map(|text| h("li", "").text(&text));
    all.push(h("ul", "findings").children(notes));
    all.extend(leg.protection.iter().flat_map(|one| fuse(leg, one)));
    all.push(h("h4", "").text(words::SOURCES));
    let sources = RuleName::ALL.map(|rule| {
        h("li", "")
            .child(h("b", "").text(say::rule_name(rule)))
            .text(": ")
            .text(say::rule_source(rule))
    });
    all.push(h("ul", "sources").children(sources));
    all
}

/// Each rule: the smallest of both systems, and whether the one there passes.
fn rules(leg: &LegAnswer) -> El {
    let heads = [
        words::RULE,
        words::SMALLEST[0],
        words::SMALLEST[1],
        words::YOURS,
    ];
    let decided = leg.needed.iter().find_map(|one| one.decided_by);
    let rows = RuleName::ALL.map(|rule| {
        let by = leg.needed.iter().map(|one| {
            let row = one.by_rule.iter().find(|row| row.rule == rule);
            let size = row.and_then(|row| row.size.as_ref());
            size.map_or_else(|| words::NONE.to_owned(), say::size_text)
        });
        let name = say::rule_name(rule);
        let name = if decided == Some(rule) {
            format!("{name} ({})", words::DECIDES)
        } else {
            name.to_owned()
        };
        let yours = leg.have.as_ref().map_or("", |have| passes(have, rule));
        std::iter::once(name)
            .chain(by)
            .chain([yours.to_owned()])
            .collect()
    });
    table("rules", &heads, rows.into())
}

fn passes(have: &SizeFigures, rule: RuleName) -> &'static str {
    if have.fails.contains(&rule) {
        words::FAILS
    } else {
        words::PASSES
    }
}

fn fuse(leg: &LegAnswer, protection: &Protection) -> Vec<El> {
    let line = |text: &str| h("p", "").text(text);
    let rows = protection.kinds.iter().map(|kind| {
        let (breaks, suits) = say::kind_text(protection, kind);
        vec![
            say::fuse_kind_name(kind.kind).to_owned(),
            breaks,
            suits.to_owned(),
        ]
    });
    let fitted = say::fitted_text(protection);
    let class = if protection.fitted_faults.is_empty() {
        ""
    } else {
        "fuse-wrong"
    };
    let mut all = vec![h("h4", "").text(words::THE_FUSE)];
    all.extend(fitted.map(|text| h("p", class).text(&text)));
    all.extend(say::start_above_text(leg).map(|text| line(&text)));
    all.extend([
        line(&format!(
            "{}: {}",
            words::RECOMMENDED,
            say::fuse_text(protection)
        )),
        line(&format!(
            "{}: {}",
            words::PLACE,
            say::place_text(protection)
        ))
        .text(" ")
        .text(say::source_text(leg.leg)),
        line(&say::fault_text(protection)),
        table(
            "kinds-of-fuse",
            &[words::KIND, words::BREAKS, words::HERE],
            rows.collect(),
        ),
        h("p", "hint").text(words::KINDS_SOURCE),
        h("p", "hint").text(&say::marine_text(protection)),
    ]);
    all
}
