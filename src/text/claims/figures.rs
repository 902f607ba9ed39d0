//! Figures of a claim with their units: as they were typed, or with the digits
//! that their uncertainty allows.

use crate::{
    answer::claims::ClaimAnswer,
    plan::{
        Plan, Show,
        claims::Claimed,
        entry::{decimals_of, shown, width_shown},
    },
    quantity::{in_btu_per_hour, watts},
    range::Unit,
    text::{Formatter, m, number::with_sign},
};

/// A figure that was worked out, with its unit; with the other unit people use.
#[must_use]
pub fn figure_text(f: Formatter, about: Claimed, value: f64) -> String {
    in_units(
        f,
        about,
        |unit, units| shown(value, unit, units),
        |value| f.plain(value),
    )
}

/// A figure that somebody stated: nothing of it is rounded off.
#[must_use]
pub fn stated_text(f: Formatter, about: Claimed, value: f64) -> String {
    in_units(
        f,
        about,
        |unit, units| shown(value, unit, units),
        |value| f.stated(value),
    )
}

/// A number of a claim in the units shown, written as it is to be, and what it is in
/// the other unit that people use.
fn in_units(
    f: Formatter,
    about: Claimed,
    number: impl Fn(Unit, Show) -> f64,
    write: impl Fn(f64) -> String,
) -> String {
    let unit = about.range().unit;
    let text = with_sign(write(number(unit, f.units)), f.sign(unit));
    let other = match about {
        Claimed::Airflow => {
            let other = Show {
                us_units: !f.units.us_units,
            };
            f.with_unit(
                number(unit, other),
                Formatter::new(f.locale, other).sign(unit),
            )
        }
        Claimed::Cooling => f.with_unit(in_btu_per_hour(watts(number(unit, f.units))), "Btu/h"),
        _ => return text,
    };
    format!("{text} ({other})")
}

/// What is claimed: a figure, or a range.
#[must_use]
pub fn claimed_text(f: Formatter, answer: &ClaimAnswer) -> String {
    let text = |value| stated_text(f, answer.about, value);
    match answer.claimed_most {
        Some(most) => f.say(m::ClaimsRange {
            low: text(answer.claimed),
            high: text(most),
        }),
        None => text(answer.claimed),
    }
}

/// The measured figure alone. One that was typed stands as it was typed; one that
/// was worked out has as many digits as its uncertainty allows.
#[must_use]
pub fn measured_alone(f: Formatter, plan: &Plan, answer: &ClaimAnswer) -> String {
    if is_typed(plan, answer) {
        return stated_text(f, answer.about, answer.measured);
    }
    let unit = answer.about.range().unit;
    let decimals = match answer.expanded {
        Some(expanded) if expanded > 0.0 => {
            decimals_of(width_shown(expanded, unit, f.units), UNCERTAINTY_DIGITS)
        }
        _ => decimals_of(shown(answer.measured, unit, f.units), 4),
    };
    let number = |unit, units| shown(answer.measured, unit, units);
    in_units(f, answer.about, number, |value| f.fixed(value, decimals))
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
pub fn measured_text(f: Formatter, plan: &Plan, answer: &ClaimAnswer) -> String {
    let measured = measured_alone(f, plan, answer);
    match answer.expanded {
        Some(expanded) => format!(
            "{measured} ±{}",
            uncertainty_text(f, answer.about, expanded)
        ),
        None => f.say(m::ClaimsUncertaintyUnknown { figure: measured }),
    }
}

/// Digits of an uncertainty: two at most usually suffice (JCGM 100:2008, 7.2.6).
const UNCERTAINTY_DIGITS: i32 = 2;

/// An expanded uncertainty with its unit: a difference, with no zero of its own.
#[must_use]
pub fn uncertainty_text(f: Formatter, about: Claimed, expanded: f64) -> String {
    let number = |unit, units| width_shown(expanded, unit, units);
    in_units(f, about, number, |value| {
        f.fixed(value, decimals_of(value, UNCERTAINTY_DIGITS))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    // A step of 1 K is one of 1.8 °F; 400 m3/h are 235.4 cfm (NIST SP 811, appendix
    // B.8, from memory).
    #[test]
    fn figures_and_what_they_may_be_off_are_in_the_units_shown() {
        let warm = |units| {
            stated_text(
                Formatter::new(Formatter::ENGLISH.locale, units),
                Claimed::Temperature,
                10.0,
            )
        };
        assert_eq!(
            [Show::METRIC, Show::US].map(warm),
            ["10\u{202f}°C", "50\u{202f}°F"]
        );
        let off = |units| {
            uncertainty_text(
                Formatter::new(Formatter::ENGLISH.locale, units),
                Claimed::Temperature,
                1.0,
            )
        };
        assert_eq!(
            [Show::METRIC, Show::US].map(off),
            ["1\u{202f}°C", "1.8\u{202f}°F"]
        );
        let flow = |units| {
            figure_text(
                Formatter::new(Formatter::ENGLISH.locale, units),
                Claimed::Airflow,
                400.0,
            )
        };
        assert_eq!(flow(Show::METRIC), "400\u{202f}m³/h (235\u{202f}cfm)");
        assert_eq!(flow(Show::US), "235\u{202f}cfm (400\u{202f}m³/h)");
    }
}
