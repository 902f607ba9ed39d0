//! What is to be known of the fourth question's numbers, each with its source.

use super::{
    circuit_name,
    said::{amps, percent, volts},
};
use crate::{
    answer::wiring::WiringNote as N,
    text::{Formatter, m},
};

/// A caution that applies, as a sentence and its source.
#[must_use]
pub fn note(f: Formatter, note: &N) -> (String, &'static str) {
    (sentence(f, note), source(f, note))
}

fn sentence(f: Formatter, note: &N) -> String {
    match *note {
        N::CircuitBeyondTables { circuit } => f.say(m::WiringBeyondTables {
            circuit: circuit_name(f, circuit),
        }),
        N::NoKindSuits { circuit, fault_a } => f.say(m::WiringNoKind {
            circuit: circuit_name(f, circuit),
            current: amps(f, fault_a),
        }),
        N::OneOpens { worst_a, limit_a } => f.say(m::WiringOneOpens {
            current: amps(f, worst_a),
            limit: amps(f, limit_a),
        }),
        N::FuseEachString { parallel_count } => f.say(m::WiringFuseEach {
            count: parallel_count,
        }),
        N::UnequalShares { worst_a, even_a } => f.say(m::WiringUnequal {
            current: amps(f, worst_a),
            even: amps(f, even_a),
        }),
        N::MixedBatteries => f.say(m::WiringMixedNote).into(),
        N::Precharge => f.say(m::WiringPrecharge).into(),
        N::InverterPeak { peak_w, start_w } => f.say(m::WiringInverterPeak {
            peak: f.with_unit(peak_w, "W"),
            start: f.with_unit(start_w, "W"),
        }),
        N::BehindConverter => f.say(m::WiringBehindConverter).into(),
        N::DropsTogether { dropped_percent } => f.say(m::WiringDropsTogether {
            drop: percent(f, dropped_percent),
        }),
        N::ColdPanels { open_v, limit_v } => f.say(m::WiringColdPanels {
            volts: volts(f, open_v),
            limit: volts(f, limit_v),
        }),
        N::ControllerNotSaid { open_v } => f.say(m::WiringControllerOpen {
            volts: volts(f, open_v),
        }),
        N::PanelsBelowBank { best_v, charge_v } => f.say(m::WiringPanelsBelow {
            best: volts(f, best_v),
            charging: volts(f, charge_v),
        }),
        N::FuseEachPanelString { strings_count } => f.say(m::WiringFusePanelStrings {
            count: strings_count,
        }),
    }
}

/// Empty where the sentence says all there is.
fn source(f: Formatter, note: &N) -> &'static str {
    match note {
        N::NoKindSuits { .. } => f.say(m::WiringSourceInterrupting),
        N::OneOpens { .. } | N::UnequalShares { .. } => f.say(m::WiringSourceKirchhoff),
        N::FuseEachString { .. } | N::MixedBatteries | N::Precharge => {
            f.say(m::WiringSourcePractice)
        }
        N::DropsTogether { .. } => f.say(m::WiringSourceDrop),
        N::ColdPanels { .. } | N::ControllerNotSaid { .. } => f.say(m::WiringSourceCold),
        N::FuseEachPanelString { .. } => f.say(m::WiringSourceStrings),
        N::CircuitBeyondTables { .. }
        | N::InverterPeak { .. }
        | N::BehindConverter
        | N::PanelsBelowBank { .. } => "",
    }
}
