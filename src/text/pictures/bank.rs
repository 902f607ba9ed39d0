//! Words on the bank as it is drawn.

use crate::{
    answer::wiring::{BankLimits, Burden, Verdict},
    plan::{Plan, wiring::TakeOff},
    text::{
        Formatter, m,
        wiring::{amps, take_off_name, verdict_name},
    },
};

/// What stands in series and parallel.
#[must_use]
pub fn bank_counts(f: Formatter, bank: &BankLimits) -> String {
    f.say(m::PictureBankCounts {
        series: bank.series_count,
        parallel: bank.parallel_count,
    })
}

/// Where the main cables leave; nothing where there is but one string.
#[must_use]
pub fn leaves(f: Formatter, plan: &Plan, bank: &BankLimits) -> Option<String> {
    if bank.parallel_count < 2 {
        return None;
    }
    let place = take_off_name(f, bank.take_off);
    Some(if plan.wiring.take_off.is_none() {
        f.say(m::PictureMainCablesAssumed { place })
    } else {
        f.say(m::PictureMainCables { place })
    })
}

/// What the most-loaded battery gives, against its limit.
#[must_use]
pub fn most_loaded(f: Formatter, bank: &BankLimits) -> String {
    let current = amps(f, bank.continuous.worst_a);
    let what = match (bank.parallel_count, bank.take_off) {
        (1, _) => f.say(m::PictureBatteryGives { current }),
        (_, TakeOff::BusBar) => f.say(m::PictureBatteriesAlike { current }),
        _ => f.say(m::PictureMostLoaded { current }),
    };
    limited(f, what, &bank.continuous)
}

/// The same with what a battery is rated for, and whether that is enough.
fn limited(f: Formatter, what: String, burden: &Burden) -> String {
    let verdict = verdict_name(f, burden.verdict);
    match burden.limit_a {
        Some(limit_a) => f.say(m::PictureOfLimit {
            what,
            limit: amps(f, limit_a),
            verdict,
        }),
        None => f.say(m::PictureNoLimit { what }),
    }
}

/// The other currents that a battery is asked for.
#[must_use]
pub fn burdens(f: Formatter, bank: &BankLimits) -> Vec<(Verdict, String)> {
    let start = [&bank.start].into_iter();
    let start = start.map(|one| {
        let current = amps(f, one.worst_a);
        (one, f.say(m::PictureAtStart { current }))
    });
    let open = bank.one_open.iter().map(|one| {
        let current = amps(f, one.worst_a);
        (one, f.say(m::PictureOneOpen { current }))
    });
    let charge = bank.charge.iter().map(|one| {
        let current = amps(f, one.worst_a);
        (one, f.say(m::PictureWhileCharging { current }))
    });
    let all = start.chain(open).chain(charge);
    all.map(|(one, what)| (one.verdict, limited(f, what, one)))
        .collect()
}
