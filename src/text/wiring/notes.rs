//! What is to be known of the fourth question's numbers, each with its source.

use super::{
    circuit_name,
    said::{amps, percent, volts},
};
use crate::answer::wiring::WiringNote;
use crate::text::Formatter;

/// A caution that applies, as a sentence and its source.
#[must_use]
pub fn note(f: Formatter, note: &WiringNote) -> (String, &'static str) {
    match *note {
        WiringNote::CircuitBeyondTables { circuit } => (
            format!(
                "{}: a number lies beyond what the tables cover, so nothing is said of it.",
                circuit_name(f, circuit)
            ),
            "",
        ),
        WiringNote::NoKindSuits { circuit, fault_a } => (
            format!(
                "{}: no kind of fuse listed here is made in that size and breaks the {} that may flow. Give each string its own class T fuse, and ask the makers of battery and fuse for their figures.",
                circuit_name(f, circuit),
                amps(f, fault_a)
            ),
            "breaking capacities: common practice, from memory",
        ),
        WiringNote::OneOpens { worst_a, limit_a } => (
            format!(
                "If one string switches itself off, another is left with {} and may give {}: it will switch off too, and all goes dark.",
                amps(f, worst_a),
                amps(f, limit_a)
            ),
            "Kirchhoff’s laws",
        ),
        WiringNote::FuseEachString { parallel_count } => (
            format!(
                "{parallel_count} strings in parallel: each needs its own fuse at its post, as the others feed a fault in it with all they have."
            ),
            "common practice",
        ),
        WiringNote::UnequalShares { worst_a, even_a } => (
            format!(
                "By where the cables leave, one battery works harder than its share: {} instead of {}. Cables across the corners even it out, equal leads to bus bars fully.",
                amps(f, worst_a),
                amps(f, even_a)
            ),
            "Kirchhoff’s laws",
        ),
        WiringNote::MixedBatteries => (
            "Batteries of different age, make or use share neither current nor charge as reckoned here: the old one sets the end, and the new one wears. Do not mix them.".into(),
            "common practice",
        ),
        WiringNote::Precharge => (
            "An inverter or converter draws a rush when it is connected, which can open the battery’s electronics and burn contacts: fill its capacitors through a resistor first.".into(),
            "common practice",
        ),
        WiringNote::InverterPeak { peak_w, start_w } => (
            format!(
                "The unit’s start takes about {} and the inverter gives {} for a moment: it may not start.",
                f.with_unit(start_w, "W"),
                f.with_unit(peak_w, "W")
            ),
            "",
        ),
        WiringNote::BehindConverter => (
            "The cable from the converter or inverter to the unit is not judged here. Behind an inverter it is house wiring, with a house’s dangers.".into(),
            "",
        ),
        WiringNote::DropsTogether { dropped_percent } => (
            format!(
                "Along both cables {} is lost before the unit: 5 % is the usual most.",
                percent(f, dropped_percent)
            ),
            "informational note to NFPA 70 section 210.19(A), from memory",
        ),
        WiringNote::ColdPanels { open_v, limit_v } => (
            format!(
                "On the coldest morning the panels stand at {} and the controller bears {}: a moment of it can destroy the controller. Fewer in series.",
                volts(f, open_v),
                volts(f, limit_v)
            ),
            "NFPA 70 section 690.7, from memory",
        ),
        WiringNote::ControllerNotSaid { open_v } => (
            format!(
                "The panels reach {} on the coldest morning: see that the controller bears more than that.",
                volts(f, open_v)
            ),
            "NFPA 70 section 690.7, from memory",
        ),
        WiringNote::PanelsBelowBank { best_v, charge_v } => (
            format!(
                "Hot in the sun the panels stand at {}, and the bank charges up to {}: only a controller that raises volts fills it.",
                volts(f, best_v),
                volts(f, charge_v)
            ),
            "",
        ),
        WiringNote::FuseEachPanelString { strings_count } => (
            format!(
                "{strings_count} strings of panels in parallel: each needs its own fuse, as the others can overload one that is shorted."
            ),
            "NFPA 70 section 690.9(A), from memory",
        ),
    }
}
