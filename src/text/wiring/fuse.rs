//! Sentences on the fuse of a cable.

use super::{
    fuse_kind_name,
    said::{THIN, amps, size_text, volts},
};
use crate::text::Formatter;
use crate::{
    answer::wiring::{CircuitAnswer, FaultFrom, FuseFault, KindFigures, Position, Protection},
    plan::{
        Path,
        wiring::{Circuit, WiringField},
    },
};

/// The fuse that is recommended.
#[must_use]
pub fn fuse_text(f: Formatter, protection: &Protection) -> String {
    let conductor = size_text(f, &protection.conductor);
    let least = format!("125 % of the current is {}", amps(f, protection.least_a));
    let most = format!("{conductor} may be fused at {}", amps(f, protection.most_a));
    match protection.recommended_a {
        Some(rating_a) => {
            let list = if protection.vehicle_size {
                "a size made for vehicles (common practice)"
            } else {
                "the next standard size"
            };
            format!(
                "{}: {least}, and {list}; {most} at the most.",
                amps(f, rating_a)
            )
        }
        None => format!(
            "None: {least}, and {most} at the most. The conductor must be thicker; a smaller fuse would open in use."
        ),
    }
}

/// A start above the fuse.
#[must_use]
pub fn start_above_text(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let protection = circuit.protection.as_ref()?;
    let start_a = circuit.start_a.filter(|_| protection.start_above)?;
    Some(format!(
        "The start, about {}, is above the fuse for a moment: a slow kind bears that, a fast one may open. Its sheet says how long.",
        amps(f, start_a)
    ))
}

/// Which end of a charger's cable is the source.
#[must_use]
pub fn source_text(_f: Formatter, circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Charger => {
            "The source is the bank, whichever way the current flows: its fuse sits at the bank’s end."
        }
        _ => "",
    }
}

/// What the law for boats would allow, as that.
#[must_use]
pub fn marine_text(f: Formatter, protection: &Protection) -> String {
    format!(
        "On boats the law would allow up to {} here (33 CFR 183.455(c)). It is shown, not recommended.",
        amps(f, protection.marine_most_a)
    )
}

/// The fuse that is there.
#[must_use]
pub fn fitted_text(f: Formatter, protection: &Protection) -> Option<String> {
    let fitted = protection.fitted_a.map(|fitted_a| amps(f, fitted_a));
    let faults: Vec<String> = protection
        .fitted_faults
        .iter()
        .map(|&fault| fuse_fault(f, fault))
        .collect();
    match (fitted, faults.is_empty()) {
        (Some(fitted), true) => Some(format!(
            "The {fitted} that is in it suits load and conductor."
        )),
        (Some(fitted), false) => Some(format!(
            "The {fitted} that is in it {}.",
            faults.join(", and ")
        )),
        (None, false) => Some(format!("The fuse {}.", faults.join(", and "))),
        (None, true) => None,
    }
}

pub(super) fn fuse_fault(f: Formatter, fault: FuseFault) -> String {
    match fault {
        FuseFault::AboveConductor { most_a } => {
            format!("is above what the conductor bears, {}", amps(f, most_a))
        }
        FuseFault::BelowLoad { least_a } => {
            format!("opens in use: it must be {} at least", amps(f, least_a))
        }
        FuseFault::TooFar { most_m } => format!(
            "sits too far from the source: within {} at the most",
            centimeters(f, most_m)
        ),
        FuseFault::WrongKind { kind } => format!(
            "is of a kind ({}) that does not break what may flow there",
            fuse_kind_name(f, kind)
        ),
    }
}

fn centimeters(f: Formatter, meters: f64) -> String {
    format!(
        "{}{THIN}cm ({}{THIN}in)",
        f.fixed(meters * 100.0, 0),
        f.fixed(meters / 0.0254, 0)
    )
}

/// Where the fuse sits.
#[must_use]
pub fn place_text(f: Formatter, protection: &Protection) -> String {
    let places = protection.positions.iter().map(|position| match position {
        Position::AtSource => "At the source itself".to_owned(),
        Position::Within { most_m } => {
            format!("where that cannot be, within {}", centimeters(f, *most_m))
        }
        Position::WithinIfEnclosed { most_m } => format!(
            "within {} if the conductor is sheathed or enclosed all the way",
            centimeters(f, *most_m)
        ),
        Position::AsCloseAsPracticable { most_m } => format!(
            "as close as can be, and no further than {}",
            centimeters(f, *most_m)
        ),
    });
    format!("{}.", places.collect::<Vec<_>>().join("; "))
}

/// What it must break.
#[must_use]
pub fn fault_text(f: Formatter, protection: &Protection) -> String {
    let from = match protection.fault_from {
        FaultFrom::Maker => "by the maker’s short-circuit current, all batteries together",
        FaultFrom::Resistance => {
            "by the lowest likely resistance of the batteries; a maker’s figure is better"
        }
        FaultFrom::Panels => "panels give little more than they always do",
    };
    if protection.fault_is_guess {
        return format!(
            "What it must break is not judged yet: by a guess of the resistance it could be {} at {} of direct voltage. Give “{}”.",
            amps(f, protection.fault_a),
            volts(f, protection.charge_v),
            crate::text::field_label(f, Path::Wiring(WiringField::BatteryFaultA))
        );
    }
    let far = protection.fault_far_a.map_or_else(String::new, |far_a| {
        format!(
            " A short circuit at the far end of this cable draws {}.",
            amps(f, far_a)
        )
    });
    format!(
        "It must break {} at {} of direct voltage: {from}.{far}",
        amps(f, protection.fault_a),
        volts(f, protection.charge_v)
    )
}

/// A kind of fuse at this place: what it breaks, and whether it will do.
#[must_use]
pub fn kind_text(
    f: Formatter,
    protection: &Protection,
    kind: &KindFigures,
) -> (String, &'static str) {
    let breaks = kind
        .interrupts_a
        .map_or_else(|| "not at these volts".into(), |least_a| amps(f, least_a));
    let breaks_fault = kind.breaks_fault || protection.fault_is_guess;
    let suits = match (kind.bears_voltage && breaks_fault, kind.made_in_rating) {
        (true, true) if protection.fault_is_guess => "not judged yet",
        (true, true) => "will do",
        (true, false) => "not made in that size",
        (false, _) => "no",
    };
    (breaks, suits)
}
