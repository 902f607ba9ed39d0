//! Each charger of the plan: from one charge to another.

use super::{ChargerRefill, Fill, FillPoint, setting::Setting};
use crate::{
    physics::circuit::Branch,
    physics::solar::charger::{Charger, hot_share},
    plan::{
        Plan,
        path::{BankField as B, Path},
        supply::{ChargerField as G, ChargerKind, SupplyField as S},
    },
    simulate::{
        assemble,
        charge::{FillEnd, Filled, Filling, MOST_H},
    },
    study::spread::{Band, Share},
};

/// A charger's own end of charging counts as filled when it is no further below
/// the charge asked for.
const NEAR_ENOUGH: f64 = 0.015;

/// A charger in the air around it.
pub struct Charging {
    /// Its amps as heat leaves them.
    pub charger: Charger,
    /// Share of its amps that heat leaves, 0 to 1.
    pub hot_share: f64,
}

/// The charger at a place of the plan, the air about it as warm as the bank at its warmest:
/// they are taken to stand together. Nothing where the plan says too little of it.
pub fn charger(plan: &Plan, at: usize, setting: &Setting, air_c: f64) -> Option<Charging> {
    let cool = assemble::charger(plan, at, setting.charging.hold_v, setting.end_a)?;
    Some(Charging {
        charger: cool.in_air(air_c),
        hot_share: hot_share(air_c),
    })
}

/// A filling with these loads, from a share of what the bank holds (0 to 1) to the one that
/// the plan asks for; refused where the bank is never warm enough.
pub fn fill(setting: &Setting, charger: Charger, loads: &[(f64, Branch)], from: f64) -> Filled {
    let filling = Filling {
        pack: &setting.pack,
        store: &setting.store,
        charger,
        loads,
    };
    if setting.may_charge {
        filling.run(from, setting.to)
    } else {
        filling.refused(from)
    }
}

/// Hours for a band: what does not get there counts as the longest that is
/// answered.
pub fn hours(setting: &Setting, filled: &Filled) -> f64 {
    if is_filled(setting, filled) {
        filled.hours.min(MOST_H)
    } else {
        MOST_H
    }
}

fn is_filled(setting: &Setting, filled: &Filled) -> bool {
    match filled.end {
        FillEnd::Reached => true,
        FillEnd::CalledFull => filled.held >= setting.to - NEAR_ENOUGH,
        FillEnd::TooWeak | FillEnd::TooLong | FillEnd::Refused => false,
    }
}

/// One charger's answer but for its bands, which [`with_bands`] puts in.
pub fn charger_refill(
    plan: &Plan,
    at: usize,
    setting: &Setting,
    from: f64,
    air_c: f64,
) -> Option<ChargerRefill> {
    let Charging { charger, hot_share } = charger(plan, at, setting, air_c)?;
    let kind = plan.supply.chargers[at].kind.unwrap_or(ChargerKind::Shore);
    let answered = |loads: &[(f64, Branch)]| {
        let filled = fill(setting, charger, loads, from);
        fill_answer(plan, at, setting, &charger, filled)
    };
    Some(ChargerRefill {
        charger: at,
        kind,
        most_a: charger.most_a,
        hot_percent: 100.0 * hot_share,
        hold_v: charger.hold_v,
        end_a: charger.end_a,
        efficiency_percent: 100.0 * charger.efficiency,
        idle: answered(&setting.idle),
        cooling: setting.cooling.as_deref().map(answered),
        spread_from: Vec::new(),
    })
}

/// Puts the bands in: of the idle hours, and of those with the unit running.
pub fn with_bands(refill: &mut ChargerRefill, idle: (Band, Vec<Share>), cooling: Band) {
    refill.spread_from = idle.1;
    banded(&mut refill.idle, idle.0);
    if let Some(fill) = &mut refill.cooling {
        banded(fill, cooling);
    }
}

/// A filling that does not get there has no band: its hours are those until it gives up.
fn banded(fill: &mut Fill, band: Band) {
    if fill.is_filled {
        fill.hours_h = Band {
            high: band.high.min(MOST_H),
            ..band
        };
    }
}

/// Fuel and price follow what the charger takes from its source, losses included.
fn fill_answer(
    plan: &Plan,
    at: usize,
    setting: &Setting,
    charger: &Charger,
    filled: Filled,
) -> Fill {
    let taken_wh = charger.taken_wh(filled.charger_wh);
    let fuel_l = plan
        .number(Path::Charger(at, G::FuelLPerKwh))
        .map(|per_kwh| per_kwh * taken_wh / 1000.0);
    let is_shore =
        plan.supply.chargers[at].kind.unwrap_or(ChargerKind::Shore) == ChargerKind::Shore;
    let number = |field| plan.number(Path::Supply(field));
    let price = if is_shore {
        number(S::ShorePricePerKwh).map(|each| each * taken_wh / 1000.0)
    } else {
        fuel_l
            .zip(number(S::FuelPricePerL))
            .map(|(l, each)| l * each)
    };
    Fill {
        is_filled: is_filled(setting, &filled),
        end: filled.end,
        hours_h: Band {
            low: filled.hours,
            likely: filled.hours,
            high: filled.hours,
        },
        reached_percent: 100.0 * filled.held,
        constant_current_h: filled.constant_current_h,
        into_ah: filled.into_ah,
        charger_wh: filled.charger_wh,
        loads_wh: filled.loads_wh,
        lost_wh: filled.lost_wh,
        taken_wh,
        fuel_l,
        price_number: price,
        curve: filled
            .marks
            .iter()
            .map(|mark| FillPoint {
                hours_h: mark.hours,
                charge_percent: 100.0 * mark.held,
                terminal_v: mark.bar_v,
                bank_a: mark.bank_a,
                charger_a: mark.charger_a,
            })
            .collect(),
    }
}

/// The addresses that a charger's hours hang on, besides the charge it starts from. Of all
/// chargers at once: one run of numbers answers for all of them.
pub fn paths(plan: &Plan) -> Vec<Path> {
    let mut paths = vec![
        Path::Bank(0, B::BatteryResistanceMohm),
        Path::Bank(0, B::ParasiticW),
    ];
    paths.extend((0..plan.loads.len()).map(Path::Load));
    for at in 0..plan.supply.chargers.len() {
        let fields = [G::MostA, G::SourceW, G::EfficiencyPercent];
        paths.extend(fields.map(|field| Path::Charger(at, field)));
    }
    paths
}
