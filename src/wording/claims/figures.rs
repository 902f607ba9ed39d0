//! Figures of a claim with their units: as they were typed, or with the digits
//! that their uncertainty allows.

use super::words;
use crate::{
    answer::claims::ClaimAnswer,
    plan::{Plan, claims::Claimed, entry::decimals_of},
    quantity::{cubic_meters_per_hour, in_btu_per_hour, in_cubic_feet_per_minute, watts},
    wording::number::{fixed, plain, stated, with_sign, with_unit},
};

/// A figure that was worked out, with its unit; with the other unit people use.
#[must_use]
pub fn figure_text(about: Claimed, value: f64) -> String {
    with_sign_of(about, value, plain(value))
}

/// A figure that somebody stated: nothing of it is rounded off.
#[must_use]
pub fn stated_text(about: Claimed, value: f64) -> String {
    with_sign_of(about, value, stated(value))
}

fn with_sign_of(about: Claimed, value: f64, number: String) -> String {
    let other = match about {
        Claimed::Airflow => with_unit(
            in_cubic_feet_per_minute(cubic_meters_per_hour(value)),
            "cfm",
        ),
        Claimed::Cooling => with_unit(in_btu_per_hour(watts(value)), "Btu/h"),
        _ => String::new(),
    };
    let text = with_sign(number, sign_of(about));
    if other.is_empty() {
        text
    } else {
        format!("{text} ({other})")
    }
}

const fn sign_of(about: Claimed) -> &'static str {
    match about {
        Claimed::Charge => "Ah",
        Claimed::Energy => "Wh",
        Claimed::Draw => "W",
        Claimed::Airflow => "m³/h",
        Claimed::Temperature => "°C",
        Claimed::Cooling => "W",
        Claimed::Eer => "",
    }
}

/// What is claimed: a figure, or a range.
#[must_use]
pub fn claimed_text(answer: &ClaimAnswer) -> String {
    let text = |value| stated_text(answer.about, value);
    match answer.claimed_most {
        Some(most) => format!("{} to {}", text(answer.claimed), text(most)),
        None => text(answer.claimed),
    }
}

/// The measured figure alone. One that was typed stands as it was typed; one that
/// was worked out has as many digits as its uncertainty allows.
#[must_use]
pub fn measured_alone(plan: &Plan, answer: &ClaimAnswer) -> String {
    if is_typed(plan, answer) {
        return stated_text(answer.about, answer.measured);
    }
    let decimals = match answer.expanded {
        Some(expanded) if expanded > 0.0 => decimals_of(expanded, UNCERTAINTY_DIGITS),
        _ => decimals_of(answer.measured, 4),
    };
    with_sign_of(
        answer.about,
        answer.measured,
        fixed(answer.measured, decimals),
    )
}

/// Whether the figure that was judged is one that somebody wrote down.
#[must_use]
pub fn is_typed(plan: &Plan, answer: &ClaimAnswer) -> bool {
    let runs = plan.claims.get(answer.claim).map_or(0, |c| c.runs.len());
    !answer.from_air && answer.corrected.is_none() && runs < 2
}

/// The measured figure with its expanded uncertainty, or the word that there is
/// none.
#[must_use]
pub fn measured_text(plan: &Plan, answer: &ClaimAnswer) -> String {
    let measured = measured_alone(plan, answer);
    match answer.expanded {
        Some(expanded) => format!("{measured} ±{}", uncertainty_text(answer.about, expanded)),
        None => format!("{measured}, {}", words::NO_ACCURACY),
    }
}

/// Digits of an uncertainty: two at most usually suffice (JCGM 100:2008, 7.2.6).
const UNCERTAINTY_DIGITS: i32 = 2;

/// An expanded uncertainty with its unit.
#[must_use]
pub fn uncertainty_text(about: Claimed, expanded: f64) -> String {
    let number = fixed(expanded, decimals_of(expanded, UNCERTAINTY_DIGITS));
    with_sign_of(about, expanded, number)
}
