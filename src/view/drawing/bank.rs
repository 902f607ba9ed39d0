//! The bank as its batteries, with the one that gives most.

use super::{Shown, wiring::standing};
use crate::{
    answer::wiring::{BankLimits, Verdict, WiringAnswer},
    plan::{Plan, wiring::TakeOff},
    text::{Formatter, m, pictures as say},
    view::diagram::bank::{Bank, Leave, bank},
};

/// The bank of a wiring's answer at a width in pixels; nothing where it has none.
#[must_use]
pub fn bank_diagram(f: Formatter, plan: &Plan, answer: &WiringAnswer, width: f64) -> Option<Shown> {
    let drawn = of_answer(f, plan, answer.bank.as_ref()?);
    let told = drawn.verdicts.iter().map(|(_, text)| text.clone());
    let told: Vec<String> = std::iter::once(drawn.most.1.clone())
        .chain(told)
        .chain(drawn.lines.clone())
        .collect();
    Some(Shown {
        title: f.say(m::PictureTheBank),
        caption: f.say(m::PictureTheBankCaption).into(),
        told: say::told(f.say(m::PictureTheBank), &told),
        picture: bank(&drawn, width),
    })
}

/// Where the cables leave, as a layout has it.
#[must_use]
pub const fn leave(take_off: TakeOff) -> Leave {
    match take_off {
        TakeOff::SameEnd => Leave::First,
        TakeOff::Diagonal => Leave::Across,
        TakeOff::BusBar => Leave::Bars,
    }
}

fn of_answer(f: Formatter, plan: &Plan, limits: &BankLimits) -> Bank {
    let burdens = say::burdens(f, limits).into_iter();
    let judged = burdens.filter(|(verdict, _)| *verdict != Verdict::NotSaid);
    let lines = [
        say::bank(f, plan),
        Some(say::bank_counts(f, limits)),
        say::leaves(f, plan, limits),
        say::string_fuse(f, limits),
    ];
    Bank {
        in_series: limits.series_count,
        in_parallel: limits.parallel_count,
        leave: leave(limits.take_off),
        has_fuses: limits.fuse_each,
        most: (
            standing(limits.continuous.verdict),
            say::most_loaded(f, limits),
        ),
        more_in_series: f.say(m::PictureMany {
            count: f.number(f64::from(limits.series_count)),
        }),
        more_in_parallel: f.say(m::PictureStrings {
            count: f.number(f64::from(limits.parallel_count)),
        }),
        verdicts: judged
            .map(|(verdict, text)| (standing(verdict), text))
            .collect(),
        lines: lines.into_iter().flatten().collect(),
    }
}
