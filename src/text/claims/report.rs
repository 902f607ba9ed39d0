//! The bench report: a row for each claim, what it rests on, the air side and the
//! price.

use super::{
    figures::{claimed_text, figure_text, measured_text, uncertainty_text},
    said::{
        claim_title, conditions, decisive_sentence, limited_sentence, missing_sentence,
        verdict_text,
    },
};
use crate::{
    answer::claims::{AirAnswer, ClaimAnswer, MoneyAnswer},
    plan::{
        Plan,
        claims::Claimed,
        entry::{shown, width_shown},
    },
    range::Unit,
    text::{Formatter, m, number::with_sign},
};

/// A row of the bench report, under [`super::words::report_heads`].
#[must_use]
pub fn report_row(f: Formatter, plan: &Plan, answer: &ClaimAnswer) -> [String; 5] {
    [
        claim_title(f, plan, answer),
        claimed_text(f, answer),
        measured_text(f, plan, answer),
        answer
            .share_percent
            .map_or_else(|| "—".into(), |share| share_text(f, share)),
        verdict_text(f, answer),
    ]
}

/// What a row of the bench report rests on, and what would decide it.
#[must_use]
pub fn report_notes(f: Formatter, plan: &Plan, answer: &ClaimAnswer) -> Vec<String> {
    let Some(claim) = plan.claims.get(answer.claim) else {
        return Vec::new();
    };
    let mut notes = vec![conditions(f, claim, answer)];
    notes.extend(
        answer
            .missing
            .map(|one| missing_sentence(f, one).to_owned()),
    );
    notes.extend(limited_sentence(f, claim, answer));
    notes.extend(decisive_sentence(f, answer));
    notes
}

/// A share of a claim.
#[must_use]
pub fn share_text(f: Formatter, percent: f64) -> String {
    with_sign(f.fixed(percent, 1), "%")
}

/// A figure worked out beside the claims: what, how much, in which unit, and its
/// expanded uncertainty where there is one.
pub type Row = (&'static str, f64, &'static str, Option<f64>);

/// All that the air side gives.
#[must_use]
pub fn air_rows(f: Formatter, air: &AirAnswer) -> Vec<Row> {
    let whole = if air.sensible_only {
        f.say(m::ClaimsRowSensibleOnly)
    } else {
        f.say(m::ClaimsRowTotal)
    };
    let parts = air.latent_w.map(|latent| {
        [
            (f.say(m::ClaimsRowSensible), air.sensible_w, "W", None),
            (f.say(m::ClaimsRowLatent), latent, "W", None),
        ]
    });
    let mut rows = vec![(whole, air.cooling_w, "W", Some(air.expanded_w))];
    rows.extend(parts.into_iter().flatten());
    rows.extend(air.condensate_kg_per_h.map(|rate| {
        let what = f.say(m::ClaimsRowCondensate);
        (what, of_water(f, rate), water_sign(f), None)
    }));
    let unit = Unit::CubicMeterPerHour;
    let flow = width_shown(air.airflow_expanded_m3_h, unit, f.units);
    rows.push((
        f.say(m::ClaimsRowAirflow),
        shown(air.airflow_m3_h, unit, f.units),
        f.sign(unit),
        Some(flow),
    ));
    let cop = air.cop;
    rows.extend(cop.map(|cop| (f.say(m::ClaimsRowCop), cop, "", air.cop_expanded)));
    let eer = air.btu_per_wh;
    rows.extend(eer.map(|eer| (f.say(m::ClaimsRowEer), eer, "Btu/Wh", None)));
    rows
}

/// Water a coil sheds in an hour.
fn of_water(f: Formatter, kg_per_h: f64) -> f64 {
    shown(kg_per_h, Unit::Kilogram, f.units)
}

fn water_sign(f: Formatter) -> &'static str {
    if f.units.us_units { "lb/h" } else { "kg/h" }
}

/// The parts of the cooling and the airflow, beside [`super::air_sentence`].
#[must_use]
pub fn air_detail(f: Formatter, air: &AirAnswer) -> String {
    let mut parts = Vec::new();
    parts.extend(air.latent_w.map(|latent| {
        f.say(m::ClaimsAirSplit {
            sensible: figure_text(f, Claimed::Cooling, air.sensible_w),
            latent: figure_text(f, Claimed::Cooling, latent),
        })
    }));
    parts.extend(air.condensate_kg_per_h.map(|rate| {
        let rate = f.with_unit(of_water(f, rate), water_sign(f));
        f.say(m::ClaimsAirCondensate { rate })
    }));
    parts.push(f.say(m::ClaimsAirFlow {
        flow: figure_text(f, Claimed::Airflow, air.airflow_m3_h),
        expanded: uncertainty_text(f, Claimed::Airflow, air.airflow_expanded_m3_h),
    }));
    let cop = air.cop.zip(air.cop_expanded);
    parts.extend(cop.map(|(cop, expanded)| {
        f.say(m::ClaimsAirCop {
            cop: f.fixed(cop, 2),
            expanded: f.fixed(expanded, 2),
        })
    }));
    let parts = parts.join("; ");
    f.say(m::ClaimsAirParts { parts })
}

/// What the energy cost, in the currency of the price paid.
#[must_use]
pub fn money_rows(f: Formatter, money: &MoneyAnswer) -> Vec<Row> {
    let per_wh = f.say(m::ClaimsPerWh);
    let what = f.say(m::ClaimsRowMeasuredEnergy);
    let mut rows: Vec<Row> = vec![(what, money.measured_wh, "Wh", None)];
    let what = f.say(m::ClaimsRowMeasuredPrice);
    rows.push((what, money.per_wh, per_wh, None));
    let what = f.say(m::ClaimsRowUsablePrice);
    rows.push((what, money.per_usable_wh, per_wh, None));
    let life = money.lifetime_kwh;
    rows.extend(life.map(|kwh| (f.say(m::ClaimsRowLifeEnergy), kwh, "kWh", None)));
    let (what, per_kwh) = (f.say(m::ClaimsRowLifePrice), f.say(m::ClaimsPerKwh));
    rows.extend(money.per_lifetime_kwh.map(|per| (what, per, per_kwh, None)));
    rows
}
