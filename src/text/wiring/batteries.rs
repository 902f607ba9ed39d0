//! Sentences on the batteries and the panels.

use super::{
    fuse_kind_name,
    said::{THIN, amps, degrees, volts},
    take_off_name,
};
use crate::text::Formatter;
use crate::{
    answer::wiring::{BankLimits, Burden, SolarSide, Verdict},
    plan::Plan,
};

/// The batteries in one line under the answer.
#[must_use]
pub fn batteries_line(f: Formatter, bank: &BankLimits) -> String {
    let running = bank.continuous;
    let who = if bank.parallel_count > 1 {
        "The battery that works hardest gives"
    } else {
        "The bank gives"
    };
    let limit = match running.limit_a {
        Some(limit_a) => format!("of the {} it may", amps(f, limit_a)),
        None => "; how much it may was not said".into(),
    };
    let sep = if running.limit_a.is_some() { " " } else { "" };
    format!("{who} {}{sep}{limit}.", amps(f, running.worst_a))
}

/// A row of what the batteries are asked: the whole, the worst, the limit.
#[must_use]
pub fn burden_row(f: Formatter, burden: &Burden) -> [String; 4] {
    [
        amps(f, burden.total_a),
        amps(f, burden.worst_a),
        burden
            .limit_a
            .map_or_else(|| "not said".into(), |limit_a| amps(f, limit_a)),
        verdict_name(f, burden.verdict).into(),
    ]
}

/// A verdict on what a battery bears.
#[must_use]
pub fn verdict_name(_f: Formatter, verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Carries => "enough",
        Verdict::Fails => "too little",
        Verdict::NotSaid => "not said",
        Verdict::NotJudged => "not judged yet",
    }
}

/// How the burden hangs on the take-off.
#[must_use]
pub fn take_off_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    if bank.by_take_off.is_empty() {
        return None;
    }
    let each = bank.by_take_off.iter().map(|one| {
        format!(
            "{} with {}",
            amps(f, one.worst_a),
            take_off_name(f, one.take_off)
        )
    });
    let even_a = bank.continuous.total_a / f64::from(bank.parallel_count);
    Some(format!(
        "An even share is {}. The battery that works hardest gives {}. (Kirchhoff’s laws over batteries and links.)",
        amps(f, even_a),
        each.collect::<Vec<_>>().join(", ")
    ))
}

/// The fuse of each string of batteries.
#[must_use]
pub fn string_fuse_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    let rating_a = bank.string_fuse_a?;
    let fault = bank.string_fault_a.map_or_else(String::new, |fault_a| {
        let kinds = bank.string_kinds.iter().filter(|one| one.suits);
        let kinds: Vec<&str> = kinds.map(|one| fuse_kind_name(f, one.kind)).collect();
        let which = match kinds.as_slice() {
            [] => "no kind listed here breaks that: ask the maker".to_owned(),
            kinds => format!("{} will do", kinds.join(", ")),
        };
        format!(" It must break {}: {which}.", amps(f, fault_a))
    });
    Some(format!(
        "Each of the {} strings has its own fuse, {}, where its lead bears that.{fault}",
        bank.parallel_count,
        amps(f, rating_a)
    ))
}

/// How the start is held against the batteries.
#[must_use]
pub fn start_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    bank.start_by_continuous.then(|| {
        format!(
            "The surge of {}{THIN}ms is held against the continuous limit: no peak that lasts so long was said.",
            f.plain(bank.start_ms)
        )
    })
}

/// The panels’ side, sentence by sentence.
#[must_use]
pub fn solar_lines(f: Formatter, plan: &Plan, side: &SolarSide) -> Vec<String> {
    let from = if side.short_circuit_stated {
        "by their label"
    } else {
        "worked out from their watts, 8 % above the best current (common practice)"
    };
    let mut lines = vec![format!(
        "{} in short circuit, {from}: wire and fuse for 1.25 × 1.25 times that, {} (NFPA 70 section 690.8, from memory).",
        amps(f, side.short_circuit_a),
        amps(f, side.design_a)
    )];
    let limit = match (side.controller_limit_v, side.within) {
        (Some(limit_v), Some(true)) => format!("the controller bears {}", volts(f, limit_v)),
        (Some(limit_v), _) => format!(
            "the controller bears {} only, and a moment above it can destroy it",
            volts(f, limit_v)
        ),
        (None, _) => "what the controller bears was not said".into(),
    };
    lines.push(format!(
        "On a morning of {} the longest string stands at {} with no current; {limit} (NFPA 70 section 690.7, from memory).",
        degrees(f, plan, side.coldest_c),
        volts(f, side.cold_open_v)
    ));
    lines.push(match side.string_fuse_a {
        Some(rating_a) => format!(
            "{} strings in parallel: each with its own fuse, {}.",
            side.strings_count,
            amps(f, rating_a)
        ),
        None => "Fewer than three strings in parallel: none needs a fuse of its own (NFPA 70 section 690.9, from memory).".into(),
    });
    lines
}
