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
        Plan, Show,
        claims::Claimed,
        entry::{shown, width_shown},
    },
    range::Unit,
    text::{
        number::{fixed, with_unit},
        unit_sign,
    },
};

/// A row of the bench report, under [`super::words::REPORT_HEADS`].
#[must_use]
pub fn report_row(plan: &Plan, answer: &ClaimAnswer) -> [String; 5] {
    [
        claim_title(plan, answer),
        claimed_text(answer, plan.show),
        measured_text(plan, answer),
        answer.share_percent.map_or_else(|| "—".into(), share_text),
        verdict_text(answer),
    ]
}

/// What a row of the bench report rests on, and what would decide it.
#[must_use]
pub fn report_notes(plan: &Plan, answer: &ClaimAnswer) -> Vec<String> {
    let Some(claim) = plan.claims.get(answer.claim) else {
        return Vec::new();
    };
    let mut notes = vec![
        conditions(claim, answer, plan.show),
        answer.missing.map_or("", missing_sentence).to_owned(),
        limited_sentence(claim, answer),
        decisive_sentence(answer, plan.show),
    ];
    notes.retain(|note| !note.is_empty());
    notes
}

/// A share of a claim.
#[must_use]
pub fn share_text(percent: f64) -> String {
    format!("{}\u{202f}%", fixed(percent, 1))
}

/// A figure worked out beside the claims: what, how much, in which unit, and its
/// expanded uncertainty where there is one.
pub type Row = (&'static str, f64, &'static str, Option<f64>);

/// All that the air side gives.
#[must_use]
pub fn air_rows(air: &AirAnswer, units: Show) -> Vec<Row> {
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
            .map(|rate| ("Condensate", of_water(rate, units), water_sign(units), None)),
    );
    let unit = Unit::CubicMeterPerHour;
    let flow = width_shown(air.airflow_expanded_m3_h, unit, units);
    rows.push((
        "Airflow",
        shown(air.airflow_m3_h, unit, units),
        unit_sign(unit, units),
        Some(flow),
    ));
    rows.extend(air.cop.map(|cop| ("COP", cop, "", air.cop_expanded)));
    rows.extend(air.btu_per_wh.map(|eer| ("EER", eer, "Btu/Wh", None)));
    rows
}

/// Water a coil sheds in an hour.
fn of_water(kg_per_h: f64, units: Show) -> f64 {
    shown(kg_per_h, Unit::Kilogram, units)
}

const fn water_sign(units: Show) -> &'static str {
    if units.us_units { "lb/h" } else { "kg/h" }
}

/// The parts of the cooling and the airflow, beside [`super::air_sentence`].
#[must_use]
pub fn air_detail(air: &AirAnswer, units: Show) -> String {
    let mut parts = Vec::new();
    if let Some(latent) = air.latent_w {
        parts.push(format!(
            "sensible {}, latent {}",
            figure_text(Claimed::Cooling, air.sensible_w, units),
            figure_text(Claimed::Cooling, latent, units),
        ));
    }
    parts.extend(air.condensate_kg_per_h.map(|rate| {
        format!(
            "condensate {}",
            with_unit(of_water(rate, units), water_sign(units))
        )
    }));
    parts.push(format!(
        "airflow {} ±{}",
        figure_text(Claimed::Airflow, air.airflow_m3_h, units),
        uncertainty_text(Claimed::Airflow, air.airflow_expanded_m3_h, units),
    ));
    parts.extend(
        air.cop
            .zip(air.cop_expanded)
            .map(|(cop, expanded)| format!("COP {} ±{}", fixed(cop, 2), fixed(expanded, 2))),
    );
    format!(
        "In it: {}. Uncertainties are expanded, k = 2.",
        parts.join("; ")
    )
}

/// What the energy cost, in the currency of the price paid.
#[must_use]
pub fn money_rows(money: &MoneyAnswer) -> Vec<Row> {
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
