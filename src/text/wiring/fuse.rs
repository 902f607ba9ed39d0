//! Sentences on the fuse of a cable.

use super::{
    fuse_kind_name,
    said::{amps, volts},
    sizes::size_text,
};
use crate::{
    answer::wiring::{CircuitAnswer, FaultFrom, FuseFault, KindFigures, Position, Protection},
    plan::{
        Path,
        wiring::{Circuit, WiringField},
    },
    text::{Formatter, field_label, m, number::with_sign},
};

/// The fuse that is recommended.
#[must_use]
pub fn fuse_text(f: Formatter, protection: &Protection) -> String {
    let conductor = size_text(f, &protection.conductor);
    let least = amps(f, protection.least_a);
    let most = amps(f, protection.most_a);
    match protection.recommended_a {
        Some(rating_a) => f.say(m::WiringFuse {
            rating: amps(f, rating_a),
            least,
            list: if protection.vehicle_size {
                "vehicle"
            } else {
                "standard"
            },
            conductor,
            most,
        }),
        None => f.say(m::WiringFuseNone {
            least,
            conductor,
            most,
        }),
    }
}

/// A start-up current above the fuse.
#[must_use]
pub fn start_above_text(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let protection = circuit.protection.as_ref()?;
    let start_a = circuit.start_a.filter(|_| protection.start_above)?;
    let current = amps(f, start_a);
    Some(f.say(m::WiringFuseStart { current }))
}

/// Which end of a charger's cable is the source.
#[must_use]
pub fn source_text(f: Formatter, circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Charger => f.say(m::WiringFuseSourceBank),
        _ => "",
    }
}

/// What the law for boats would allow, as that.
#[must_use]
pub fn marine_text(f: Formatter, protection: &Protection) -> String {
    let most = amps(f, protection.marine_most_a);
    f.say(m::WiringFuseMarine { most })
}

/// The fuse that is there.
#[must_use]
pub fn fitted_text(f: Formatter, protection: &Protection) -> Option<String> {
    let rating = protection.fitted_a.map(|fitted_a| amps(f, fitted_a));
    let faults = protection.fitted_faults.iter();
    let faults: Vec<String> = faults.map(|&fault| fuse_fault(f, fault)).collect();
    let is_good = faults.is_empty();
    let faults = faults.join("; ");
    match (rating, is_good) {
        (Some(rating), true) => Some(f.say(m::WiringFittedGood {
            rating,
            least: amps(f, protection.least_a),
            most: amps(f, protection.most_a),
        })),
        (Some(rating), false) => Some(f.say(m::WiringFittedWrong { rating, faults })),
        (None, false) => Some(f.say(m::WiringFittedKind { faults })),
        (None, true) => None,
    }
}

/// What is wrong with a fuse, after the word for it.
pub(super) fn fuse_fault(f: Formatter, fault: FuseFault) -> String {
    match fault {
        FuseFault::AboveConductor { most_a } => f.say(m::WiringFaultAbove {
            most: amps(f, most_a),
        }),
        FuseFault::BelowLoad { least_a } => f.say(m::WiringFaultBelow {
            least: amps(f, least_a),
        }),
        FuseFault::TooFar { most_m } => f.say(m::WiringFaultFar {
            most: centimeters(f, most_m),
        }),
        FuseFault::WrongKind { kind } => f.say(m::WiringFaultKind {
            kind: fuse_kind_name(f, kind),
        }),
    }
}

/// Short lengths in both units, as the rules give them.
fn centimeters(f: Formatter, meters: f64) -> String {
    format!(
        "{} ({})",
        with_sign(f.fixed(meters * 100.0, 0), "cm"),
        with_sign(f.fixed(meters / 0.0254, 0), "in")
    )
}

/// Where the fuse goes.
#[must_use]
pub fn place_text(f: Formatter, protection: &Protection) -> String {
    let within = |most_m: f64| centimeters(f, most_m);
    let places = protection.positions.iter().map(|position| match *position {
        Position::AtSource => f.say(m::WiringPlaceSource).to_owned(),
        Position::Within { most_m } => f.say(m::WiringPlaceWithin {
            distance: within(most_m),
        }),
        Position::WithinIfEnclosed { most_m } => f.say(m::WiringPlaceEnclosed {
            distance: within(most_m),
        }),
        Position::AsCloseAsPracticable { most_m } => f.say(m::WiringPlaceClose {
            distance: within(most_m),
        }),
    });
    let places = places.collect::<Vec<_>>().join("; ");
    f.say(m::WiringPlace { places })
}

/// What it must interrupt.
#[must_use]
pub fn fault_text(f: Formatter, protection: &Protection) -> String {
    let current = amps(f, protection.fault_a);
    let volts = volts(f, protection.charge_v);
    if protection.fault_is_guess {
        let label = field_label(f, Path::Wiring(WiringField::BatteryFaultA));
        let field = f.say(m::WiringQuoted { name: label });
        return f.say(m::WiringInterruptGuess {
            current,
            volts,
            field,
        });
    }
    let must = match protection.fault_from {
        FaultFrom::Maker => f.say(m::WiringInterruptMaker { current, volts }),
        FaultFrom::Resistance => f.say(m::WiringInterruptResistance { current, volts }),
        FaultFrom::Panels => f.say(m::WiringInterruptPanels { current, volts }),
    };
    match protection.fault_far_a {
        Some(far_a) => {
            let current = amps(f, far_a);
            format!("{must} {}", f.say(m::WiringInterruptFar { current }))
        }
        None => must,
    }
}

/// A type of fuse at this place: what it interrupts, and whether it is suitable.
#[must_use]
pub fn kind_text(
    f: Formatter,
    protection: &Protection,
    kind: &KindFigures,
) -> (String, &'static str) {
    let breaks = kind.interrupts_a.map_or_else(
        || f.say(m::WiringKindNotAtVolts).into(),
        |least_a| amps(f, least_a),
    );
    let breaks_fault = kind.breaks_fault || protection.fault_is_guess;
    let suits = match (kind.bears_voltage && breaks_fault, kind.made_in_rating) {
        (true, true) if protection.fault_is_guess => f.say(m::WiringNotJudgedYet),
        (true, true) => f.say(m::WiringKindSuits),
        (true, false) => f.say(m::WiringKindNoSize),
        (false, _) => f.say(m::WiringKindUnsuitable),
    };
    (breaks, suits)
}
