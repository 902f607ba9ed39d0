//! What there is to know beside a charger's hours, typed.

use super::{ChargerRefill, RefillMatter as R};
use crate::{
    plan::finding::Severity,
    plan::{
        Plan,
        path::{BankField as B, Path},
        supply::ChargerField as G,
    },
    simulate::charge::FillEnd,
};

/// What there is to know of one charger, `air_c` about it; in no order of weight.
pub fn notes(plan: &Plan, refill: &ChargerRefill, air_c: f64) -> Vec<(Severity, R)> {
    let charger = refill.charger;
    let number = |field| plan.number(Path::Charger(charger, field));
    let idle = &refill.idle;
    let mut notes = Vec::new();
    match idle.end {
        FillEnd::TooWeak => {
            let last = idle.curve.last();
            let (charger_a, bank_a) = last.map_or((0.0, 0.0), |at| (at.charger_a, at.bank_a));
            let beside_a = charger_a - bank_a;
            let matter = R::TooWeak {
                charger,
                charger_a,
                beside_a,
            };
            notes.push((Severity::Error, matter));
        }
        FillEnd::TooLong => notes.push((Severity::Error, R::TakesTooLong { charger })),
        FillEnd::CalledFull if !idle.is_filled => {
            let reached_percent = idle.reached_percent;
            let matter = R::EndsBelow {
                charger,
                reached_percent,
            };
            notes.push((Severity::Caution, matter));
        }
        FillEnd::CalledFull | FillEnd::Reached | FillEnd::Refused => {}
    }
    let with_unit = refill.cooling.as_ref();
    // That the bank itself refuses is said once for all of them.
    if let (true, Some(fill)) = (idle.is_filled, with_unit.filter(|fill| !fill.is_filled)) {
        let matter = R::TooWeakForCooling {
            charger,
            reached_percent: fill.reached_percent,
        };
        notes.push((Severity::Caution, matter));
    }
    if let (Some(needed_l), Some(at_hand_l)) = (idle.fuel_l, number(G::FuelL))
        && needed_l > at_hand_l
    {
        let matter = R::FuelRunsOut {
            charger,
            needed_l,
            at_hand_l,
        };
        notes.push((Severity::Caution, matter));
    }
    if refill.hot_percent < 100.0 {
        let matter = R::Derated {
            charger,
            air_c,
            left_percent: refill.hot_percent,
        };
        notes.push((Severity::Note, matter));
    }
    notes.extend(source_note(plan, refill).map(|matter| (Severity::Note, matter)));
    notes.extend(window_note(plan, refill).map(|matter| (Severity::Note, matter)));
    let limit_a = plan
        .number(Path::Bank(0, B::BatteryCurrentLimitA))
        .zip(plan.banks.first())
        .map(|(battery_a, bank)| battery_a * f64::from(bank.parallel_count));
    if let Some(limit_a) = limit_a.filter(|&limit_a| refill.most_a > limit_a) {
        let matter = R::AboveBankLimit {
            charger,
            most_a: refill.most_a,
            limit_a,
        };
        notes.push((Severity::Caution, matter));
    }
    notes
}

/// The source gives less than the charger could pass on.
fn source_note(plan: &Plan, refill: &ChargerRefill) -> Option<R> {
    let charger = refill.charger;
    let source_w = plan.number(Path::Charger(charger, G::SourceW))?;
    let most_a = refill.idle.curve.iter().map(|at| at.charger_a);
    let amps = most_a.fold(0.0, f64::max);
    (amps < refill.most_a * 0.999 && amps > 0.0).then_some(R::SourceLimits {
        charger,
        source_w,
        charger_a: amps,
    })
}

/// On by the clock for less than it takes.
fn window_note(plan: &Plan, refill: &ChargerRefill) -> Option<R> {
    let charger = refill.charger;
    let clock = |field| plan.number(Path::Charger(charger, field));
    let (from, until) = (clock(G::FromClockMin)?, clock(G::UntilClockMin)?);
    let day_min = 1440.0;
    let on_min = if until > from {
        until - from
    } else {
        until - from + day_min
    };
    let (a_day_h, hours) = (on_min / 60.0, refill.idle.hours_h.likely);
    (refill.idle.is_filled && hours > a_day_h).then_some(R::WindowTooShort {
        charger,
        daily_h: a_day_h,
        needed_h: hours,
    })
}
