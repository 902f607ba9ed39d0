//! The electrician's sheet: the same, as short as a table wants it.

use super::{
    leg_name, place_name, rule_name,
    said::{amps, degrees, percent, size_text, volts},
    strands_name, take_off_name,
};
use crate::{
    answer::wiring::{LegAnswer, SizeFigures, WiringAnswer},
    plan::{
        Path, Plan,
        wiring::{LaidField as L, Strands},
    },
    range::Unit,
    wording::{hand_on::plan_value, number::fixed},
};

/// A leg's name with its length.
#[must_use]
pub fn leg_on_paper(plan: &Plan, leg: &LegAnswer) -> String {
    format!(
        "{}, {}",
        leg_name(leg.leg),
        plan_value(plan, Unit::Meter, leg.length_m)
    )
}

/// Currents: at nominal volts, at the lowest, at the start.
#[must_use]
pub fn amps_on_paper(leg: &LegAnswer) -> String {
    let start = leg.start_a.map_or_else(|| "–".into(), amps);
    format!("{} / {} / {start}", amps(leg.continuous_a), amps(leg.low_a))
}

/// The rule that decided.
#[must_use]
pub fn decided_on_paper(leg: &LegAnswer) -> String {
    let rule = leg.needed.iter().find_map(|one| one.decided_by);
    rule.map_or_else(|| "nothing passes".into(), |rule| rule_name(rule).into())
}

fn judged(leg: &LegAnswer) -> Option<&SizeFigures> {
    let smallest = || leg.needed.iter().find_map(|one| one.smallest.as_ref());
    leg.have.as_ref().or_else(smallest)
}

/// The drop through what is there, or through the smallest that passes.
#[must_use]
pub fn drop_on_paper(leg: &LegAnswer) -> String {
    let loaded = judged(leg).and_then(|figures| figures.loaded);
    loaded.map_or_else(
        || "–".into(),
        |loaded| {
            format!(
                "{} ({}) of {}",
                volts(loaded.hot_v),
                percent(loaded.hot_percent),
                volts(leg.source_low_v)
            )
        },
    )
}

/// The fuse: recommended, what the conductor bears, what it must break, and the
/// one that is there.
#[must_use]
pub fn fuse_on_paper(leg: &LegAnswer) -> String {
    let Some(protection) = &leg.protection else {
        return "–".into();
    };
    let named = protection
        .recommended_a
        .map_or_else(|| "none fits".into(), amps);
    let there = protection.fitted_a.map_or_else(String::new, |fitted_a| {
        format!("; there now {}", amps(fitted_a))
    });
    format!(
        "{named} (on {} at most {}), to break {} at {}{there}",
        size_text(&protection.conductor),
        amps(protection.most_a),
        amps(protection.fault_a),
        volts(protection.charge_v)
    )
}

/// What was taken for granted, so that it can be checked on the spot.
#[must_use]
pub fn taken_for(plan: &Plan, answer: &WiringAnswer) -> Vec<String> {
    let wiring = &plan.wiring;
    let mut lines = vec![format!(
        "The system is {}; the cables leave the bank {}; it charges up to {}.",
        place_name(wiring.place_taken()),
        take_off_name(wiring.take_off_taken()),
        volts(answer.charge_v)
    )];
    lines.extend(answer.legs.iter().map(|leg| {
        let number = |field| plan.number(Path::Laid(leg.leg, field)).unwrap_or_default();
        let laid = wiring.laid(leg.leg);
        let engine = if laid.engine_space {
            ", through an engine space"
        } else {
            ""
        };
        let strands = strands_name(laid.strands.unwrap_or(Strands::Fine));
        format!(
            "{}: insulation {}, lugs {}, air {}, {} conductors in the bundle, {strands}{engine}.",
            leg_name(leg.leg),
            degrees(plan, number(L::InsulationC)),
            degrees(plan, number(L::TerminalC)),
            degrees(plan, leg.air_c),
            fixed(number(L::BundledCount), 0)
        )
    }));
    lines
}
