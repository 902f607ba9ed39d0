//! The bench report: a row for each claim, what it rests on, the air side and the
//! price.

use super::{
    figures::{claimed_text, figure_text, measured_text, uncertainty_text},
    said::{
        claim_title, conditions, decisive_sentence, limited_sentence, missing_sentence,
        verdict_text,
    },
};
use crate::text::Formatter;
use crate::{
    answer::claims::{AirAnswer, ClaimAnswer, MoneyAnswer},
    plan::{
        Plan,
        claims::Claimed,
        entry::{shown, width_shown},
    },
    range::Unit,
};

/// A row of the bench report, under [`super::words::REPORT_HEADS`].
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
    let mut notes = vec![
        conditions(f, claim, answer),
        answer
            .missing
            .map_or("", |one| missing_sentence(f, one))
            .to_owned(),
        limited_sentence(f, claim, answer),
        decisive_sentence(f, answer),
    ];
    notes.retain(|note| !note.is_empty());
    notes
}

/// A share of a claim.
#[must_use]
pub fn share_text(f: Formatter, percent: f64) -> String {
    format!("{}\u{202f}%", f.fixed(percent, 1))
}

/// A figure worked out beside the claims: what, how much, in which unit, and its
/// expanded uncertainty where there is one.
pub type Row = (&'static str, f64, &'static str, Option<f64>);

/// All that the air side gives.
#[must_use]
pub fn air_rows(f: Formatter, air: &AirAnswer) -> Vec<Row> {
    let whole = if air.sensible_only {
        "Sensible cooling only"
    } else {
        "Total cooling"
    };
    let parts = air.latent_w.map(|latent| {
        [
            ("Sensible cooling", air.sensible_w, "W", None),
            ("Latent cooling", latent, "W", None),
        ]
    });
    let mut rows = vec![(whole, air.cooling_w, "W", Some(air.expanded_w))];
    rows.extend(parts.into_iter().flatten());
    rows.extend(
        air.condensate_kg_per_h
            .map(|rate| ("Condensate", of_water(f, rate), water_sign(f), None)),
    );
    let unit = Unit::CubicMeterPerHour;
    let flow = width_shown(air.airflow_expanded_m3_h, unit, f.units);
    rows.push((
        "Airflow",
        shown(air.airflow_m3_h, unit, f.units),
        f.sign(unit),
        Some(flow),
    ));
    rows.extend(air.cop.map(|cop| ("COP", cop, "", air.cop_expanded)));
    rows.extend(air.btu_per_wh.map(|eer| ("EER", eer, "Btu/Wh", None)));
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
    if let Some(latent) = air.latent_w {
        parts.push(format!(
            "sensible {}, latent {}",
            figure_text(f, Claimed::Cooling, air.sensible_w),
            figure_text(f, Claimed::Cooling, latent),
        ));
    }
    parts.extend(air.condensate_kg_per_h.map(|rate| {
        format!(
            "condensate {}",
            f.with_unit(of_water(f, rate), water_sign(f))
        )
    }));
    parts.push(format!(
        "airflow {} ±{}",
        figure_text(f, Claimed::Airflow, air.airflow_m3_h),
        uncertainty_text(f, Claimed::Airflow, air.airflow_expanded_m3_h),
    ));
    parts.extend(
        air.cop
            .zip(air.cop_expanded)
            .map(|(cop, expanded)| format!("COP {} ±{}", f.fixed(cop, 2), f.fixed(expanded, 2))),
    );
    format!(
        "In it: {}. Uncertainties are expanded, k = 2.",
        parts.join("; ")
    )
}

/// What the energy cost, in the currency of the price paid.
#[must_use]
pub fn money_rows(_f: Formatter, money: &MoneyAnswer) -> Vec<Row> {
    let mut rows = vec![
        ("Measured energy", money.measured_wh, "Wh", None),
        ("Price of a measured Wh", money.per_wh, "per Wh", None),
        ("Price of a usable Wh", money.per_usable_wh, "per Wh", None),
    ];
    rows.extend(
        money
            .lifetime_kwh
            .map(|kwh| ("Energy over the cycle life", kwh, "kWh", None)),
    );
    rows.extend(
        money
            .per_lifetime_kwh
            .map(|per| ("Price over the cycle life", per, "per kWh", None)),
    );
    rows
}
