//! Beside the claims: the air side, the price, what to measure next, and a line for
//! paper.

use super::figures::{figure_text, uncertainty_text};
use crate::{
    answer::{
        NoPocket, Pocket, PocketOutcome,
        claims::{AirAnswer, AirRefusal, How, MoneyAnswer, ToMeasure, air::AirInputRead},
    },
    plan::{Plan, claims::Claimed},
    text::{
        Formatter, field_label, full_mode_name, labels::chemistry_short, m, mode_in_sentence,
        number::with_sign,
    },
};

/// Cooling from the air side.
#[must_use]
pub fn air_sentence(f: Formatter, air: &AirAnswer) -> String {
    let cooling = figure_text(f, Claimed::Cooling, air.cooling_w);
    let expanded = uncertainty_text(f, Claimed::Cooling, air.expanded_w);
    let mut sentences = vec![if air.sensible_only {
        f.say(m::ClaimsAirSensible { cooling, expanded })
    } else {
        f.say(m::ClaimsAirTotal { cooling, expanded })
    }];
    sentences.extend(air.cop.zip(air.btu_per_wh).map(|(cop, eer)| {
        f.say(m::ClaimsAirEfficiency {
            cop: f.fixed(cop, 2),
            eer: f.fixed(eer, 1),
        })
    }));
    sentences.extend(air.budget.first().map(|row| {
        f.say(m::ClaimsAirLimited {
            reading: budget_name(f, row.by),
            share: f.percent(row.share_percent),
        })
    }));
    sentences.join(" ")
}

/// A reading of the air side.
#[must_use]
pub fn budget_name(f: Formatter, by: AirInputRead) -> &'static str {
    match by {
        AirInputRead::Flow => f.say(m::ClaimsReadFlow),
        AirInputRead::FreeArea => f.say(m::ClaimsReadFreeArea),
        AirInputRead::InletTemperature => f.say(m::ClaimsReadInletTemperature),
        AirInputRead::InletHumidity => f.say(m::ClaimsReadInletHumidity),
        AirInputRead::OutletTemperature => f.say(m::ClaimsReadOutletTemperature),
        AirInputRead::OutletHumidity => f.say(m::ClaimsReadOutletHumidity),
        AirInputRead::Pressure => f.say(m::ClaimsReadPressure),
    }
}

/// Why the air side gives nothing.
#[must_use]
pub fn air_refusal(f: Formatter, refusal: AirRefusal) -> &'static str {
    match refusal {
        AirRefusal::NoTemperatures => f.say(m::ClaimsAirNoTemperatures),
        AirRefusal::NoFlow => f.say(m::ClaimsAirNoFlow),
        AirRefusal::OutOfRange => f.say(m::ClaimsAirOutOfRange),
        AirRefusal::TooWet => f.say(m::ClaimsAirTooWet),
    }
}

/// What a watt-hour cost.
#[must_use]
pub fn money_sentence(f: Formatter, money: &MoneyAnswer) -> String {
    let price = f.say(m::ClaimsMoney {
        measured: f.fixed(money.per_wh, 3),
        usable: f.fixed(money.per_usable_wh, 3),
    });
    match (money.lifetime_kwh, money.per_lifetime_kwh) {
        (Some(kwh), Some(per)) => {
            let life = f.say(m::ClaimsMoneyLife {
                energy: with_sign(f.fixed(kwh, 0), "kWh"),
                price: f.fixed(per, 2),
            });
            format!("{price} {life}")
        }
        _ => price,
    }
}

/// One thing to measure, what it takes and what it brings; nothing where the range stays
/// as it is shown.
#[must_use]
pub fn next_sentence(f: Formatter, plan: &Plan, next: &ToMeasure) -> Option<String> {
    let (now, then) = (f.duration(next.band_now_h), f.duration(next.band_then_h));
    if now == then {
        return None;
    }
    let left = next.band_then_h / next.band_now_h;
    let brings = if left <= 0.35 {
        "two-thirds"
    } else if left <= 0.6 {
        "half"
    } else if left <= 0.85 {
        "quarter"
    } else {
        "little"
    };
    Some(f.say(m::ClaimsNextOne {
        field: field_label(f, next.field),
        share: f.percent(next.share_percent),
        mode: mode_in_sentence(f, plan, next.unit, next.mode),
        how: how_text(f, next),
        brings,
        now,
        then,
    }))
}

fn how_text(f: Formatter, next: &ToMeasure) -> String {
    let duration = next.takes_min.map(|min| f.duration(min / 60.0));
    let duration = duration.unwrap_or_default();
    match next.how {
        How::ClampReadings => f.say(m::ClaimsHowClamp { duration }),
        How::WholeRun => f.say(m::ClaimsHowWholeRun { duration }),
        How::TwoLoads => f.say(m::ClaimsHowTwoLoads).into(),
        How::VoltsAtStop => f.say(m::ClaimsHowVoltsAtStop).into(),
        How::FillFirst => f.say(m::ClaimsHowFillFirst).into(),
        How::BothSides => f.say(m::ClaimsHowBothSides { duration }),
    }
}

/// The pocket formula of a mode, or why it has none.
#[must_use]
pub fn pocket_sentence(f: Formatter, plan: &Plan, pocket: &Pocket) -> String {
    let mode = full_mode_name(f, plan, pocket.unit, pocket.mode);
    match pocket.outcome {
        PocketOutcome::Holds(line) => {
            let bank = plan.banks.get(pocket.bank);
            f.say(m::ClaimsPocketHolds {
                mode,
                per_wh: f.fixed(line.hours_per_wh, 5),
                per_ah: f.fixed(line.hours_per_ah, 4),
                volts: f.with_unit(line.nominal_v, "V"),
                chemistry: bank.map_or("", |bank| chemistry_short(f, bank.chemistry)),
                low: f.plain(line.least_wh),
                high: f.plain(line.most_wh),
                error: with_sign(f.fixed(line.worst_error_percent, 1), "%"),
            })
        }
        PocketOutcome::Refused { because, .. } => match because {
            NoPocket::LeadAcid => f.say(m::ClaimsPocketLeadAcid { mode }),
            NoPocket::FixedStartCharge => f.say(m::ClaimsPocketFixedStart { mode }),
            NoPocket::Sun => f.say(m::ClaimsPocketSun { mode }),
            NoPocket::Limits => f.say(m::ClaimsPocketLimits { mode }),
            NoPocket::NothingUsable => f.say(m::ClaimsPocketNothing { mode }),
        },
    }
}
