//! Sentences on the batteries and the panels.

use super::{
    fuse_kind_name,
    said::{amps, degrees, volts},
    take_off_name,
};
use crate::{
    answer::wiring::{BankLimits, Burden, SolarSide, Verdict},
    text::{Formatter, m},
};

/// The batteries in one line under the answer.
#[must_use]
pub fn batteries_line(f: Formatter, bank: &BankLimits) -> String {
    let current = amps(f, bank.continuous.worst_a);
    let limit = bank.continuous.limit_a.map(|limit_a| amps(f, limit_a));
    match (bank.parallel_count > 1, limit) {
        (true, Some(limit)) => f.say(m::WiringWorstBattery { current, limit }),
        (true, None) => f.say(m::WiringWorstBatteryOpen { current }),
        (false, Some(limit)) => f.say(m::WiringWorstBank { current, limit }),
        (false, None) => f.say(m::WiringWorstBankOpen { current }),
    }
}

/// A row of what the batteries are asked: the whole, the most-loaded, the limit.
#[must_use]
pub fn burden_row(f: Formatter, burden: &Burden) -> [String; 4] {
    let limit = burden.limit_a.map(|limit_a| amps(f, limit_a));
    [
        amps(f, burden.total_a),
        amps(f, burden.worst_a),
        limit.unwrap_or_else(|| f.say(m::WiringNotEntered).into()),
        verdict_name(f, burden.verdict).into(),
    ]
}

/// A verdict on a battery's limit.
#[must_use]
pub fn verdict_name(f: Formatter, verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Carries => f.say(m::WiringBurdenEnough),
        Verdict::Fails => f.say(m::WiringBurdenAbove),
        Verdict::NotSaid => f.say(m::WiringNotEntered),
        Verdict::NotJudged => f.say(m::WiringNotJudgedYet),
    }
}

/// How the most-loaded battery depends on the main cable connection.
#[must_use]
pub fn take_off_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    if bank.by_take_off.is_empty() {
        return None;
    }
    let each = bank.by_take_off.iter().map(|one| {
        let name = take_off_name(f, one.take_off);
        format!("{} ({name})", amps(f, one.worst_a))
    });
    let each = each.collect::<Vec<_>>().join("; ");
    let even_a = bank.continuous.total_a / f64::from(bank.parallel_count);
    let even = amps(f, even_a);
    Some(f.say(m::WiringShares { even, each }))
}

/// The fuse of each string of batteries.
#[must_use]
pub fn string_fuse_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    let own = f.say(m::WiringStringFuse {
        count: bank.parallel_count,
        rating: amps(f, bank.string_fuse_a?),
    });
    let Some(fault_a) = bank.string_fault_a else {
        return Some(own);
    };
    let current = amps(f, fault_a);
    let kinds = bank.string_kinds.iter().filter(|one| one.suits);
    let kinds: Vec<&str> = kinds.map(|one| fuse_kind_name(f, one.kind)).collect();
    let which = if kinds.is_empty() {
        f.say(m::WiringStringInterruptNone { current })
    } else {
        let kinds = kinds.join(", ");
        f.say(m::WiringStringInterrupt { current, kinds })
    };
    Some(format!("{own} {which}"))
}

/// What the start-up surge is compared with.
#[must_use]
pub fn start_line(f: Formatter, bank: &BankLimits) -> Option<String> {
    bank.start_by_continuous.then(|| {
        let time = f.with_unit(bank.start_ms, "ms");
        f.say(m::WiringSurgeHeld { time })
    })
}

/// The panels’ side, sentence by sentence.
#[must_use]
pub fn solar_lines(f: Formatter, side: &SolarSide) -> Vec<String> {
    let current = amps(f, side.short_circuit_a);
    let design = amps(f, side.design_a);
    let short = if side.short_circuit_stated {
        f.say(m::WiringSolarShort { current, design })
    } else {
        f.say(m::WiringSolarShortWatts { current, design })
    };
    let fuses = match side.string_fuse_a {
        Some(rating_a) => f.say(m::WiringSolarFuses {
            count: side.strings_count,
            rating: amps(f, rating_a),
        }),
        None => f.say(m::WiringSolarNoFuses).into(),
    };
    vec![short, cold_line(f, side), fuses]
}

/// The open-circuit voltage of a cold morning against the controller's limit.
fn cold_line(f: Formatter, side: &SolarSide) -> String {
    let temperature = degrees(f, side.coldest_c);
    let open = volts(f, side.cold_open_v);
    let limit = side.controller_limit_v.map(|limit_v| volts(f, limit_v));
    match (limit, side.within) {
        (Some(limit), Some(true)) => f.say(m::WiringSolarColdWithin {
            temperature,
            volts: open,
            limit,
        }),
        (Some(limit), _) => f.say(m::WiringSolarColdAbove {
            temperature,
            volts: open,
            limit,
        }),
        (None, _) => f.say(m::WiringSolarColdOpen {
            temperature,
            volts: open,
        }),
    }
}
