//! What the blocks are asked and bear; and the panels' side.

use super::{Answered, of_answer, table};
use crate::{
    answer::wiring::{BankLimits, Burden},
    page::{
        dom::{El, h},
        state::State,
    },
    wording::carry::{self as say, words},
};

/// The blocks, through series and parallel.
pub fn blocks(state: State, answer: Answered) -> El {
    of_answer(state, answer, |_, answer| {
        answer.bank.as_ref().map_or_else(Vec::new, of_bank)
    })
}

fn of_bank(bank: &BankLimits) -> Vec<El> {
    let row = |name: &str, burden: &Burden| {
        let name = std::iter::once(name.to_owned());
        name.chain(say::burden_row(burden)).collect::<Vec<_>>()
    };
    let rows = [
        (words::FOR_HOURS, Some(&bank.continuous)),
        (words::AT_START, Some(&bank.start)),
        (words::ONE_OPEN, bank.one_open.as_ref()),
        (words::CHARGING, bank.charge.as_ref()),
    ];
    let rows = rows
        .iter()
        .filter_map(|(name, burden)| Some(row(name, (*burden)?)));
    let lines = [
        say::start_line(bank),
        say::take_off_line(bank),
        say::string_fuse_line(bank),
    ];
    let lines = lines
        .into_iter()
        .flatten()
        .map(|text| h("p", "").text(&text));
    [
        h("h3", "").text(words::BLOCKS),
        table("burdens", &words::BURDEN_HEADS, rows.collect()),
    ]
    .into_iter()
    .chain(lines)
    .collect()
}

/// The panels, if there are any.
pub fn panels(state: State, answer: Answered) -> El {
    of_answer(state, answer, |plan, answer| {
        let Some(side) = &answer.solar else {
            return Vec::new();
        };
        let lines = say::solar_lines(plan, side);
        let lines = lines.iter().map(|text| h("p", "").text(text));
        std::iter::once(h("h3", "").text(words::PANELS))
            .chain(lines)
            .collect()
    })
}
