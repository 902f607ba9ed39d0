//! The fourth question's cautions, each with its source.

use super::{
    leg_name,
    said::{amps, degrees, percent, volts},
};
use crate::{
    answer::wiring::CarryNote,
    plan::Plan,
    quantity::{in_square_inches, in_square_meters, square_millimeters},
    range::Unit,
    wording::{
        Caution,
        number::{fixed, with_unit},
        value_text,
    },
};

/// Said wherever cables and fuses are named.
pub const ALWAYS: [Caution; 6] = [
    Caution {
        text: "Local codes and licensed practice govern, and may ask for more. Take the printed page to an electrician before you buy or lay anything.",
        source: "",
    },
    Caution {
        text: "The fuse sits at the source of the current, before the first branch.",
        source: "33 CFR 183.455; NFPA 70 section 240.21, from memory",
    },
    Caution {
        text: "The battery’s own electronics are no fuse: they may fail closed.",
        source: "common practice",
    },
    Caution {
        text: "Copper only. Copper-clad aluminium of the same size resists about 1.6 times as much and carries less: do not use it here.",
        source: "common practice",
    },
    Caution {
        text: "Cable sold by an automotive gauge holds less copper than the American gauge of that number.",
        source: "SAE against ASTM B258 areas; common practice",
    },
    Caution {
        text: "What is printed on the fuse for direct current, volts and breaking capacity, decides over any table.",
        source: "common practice",
    },
];

/// A caution that applies, as a sentence and its source.
#[must_use]
pub fn note(plan: &Plan, note: &CarryNote) -> (String, &'static str) {
    match *note {
        CarryNote::BeyondFiftyVolts { charge_v } => (
            format!(
                "While it charges the bank stands at {}. The cable table and the fuse rule used here are made for less than 50 V: above that other rules apply, and direct current kills and keeps arcing. This is work for a licensed electrician.",
                volts(charge_v)
            ),
            "scope of 33 CFR 183.425 and 183.455; NFPA 70 chapter 4 and article 480, from memory",
        ),
        CarryNote::LegBeyondTables { leg } => (
            format!(
                "{}: a number lies beyond what the tables cover, so nothing is said of it.",
                leg_name(leg)
            ),
            "",
        ),
        CarryNote::NoKindSuits { leg, fault_a } => (
            format!(
                "{}: no kind of fuse listed here is made in that size and breaks the {} that may flow. Give each string its own class T fuse, and ask the makers of battery and fuse for their figures.",
                leg_name(leg),
                amps(fault_a)
            ),
            "breaking capacities: common practice, from memory",
        ),
        CarryNote::OneOpens { worst_a, limit_a } => (
            format!(
                "If one string switches itself off, another is left with {} and may give {}: it will switch off too, and all goes dark.",
                amps(worst_a),
                amps(limit_a)
            ),
            "Kirchhoff’s laws",
        ),
        CarryNote::FuseEachString { parallel_count } => (
            format!(
                "{parallel_count} strings in parallel: each needs its own fuse at its post, as the others feed a fault in it with all they have."
            ),
            "common practice",
        ),
        CarryNote::UnequalShares { worst_a, even_a } => (
            format!(
                "By where the cables leave, one block works harder than its share: {} instead of {}. Cables across the corners even it out, equal leads to bus bars fully.",
                amps(worst_a),
                amps(even_a)
            ),
            "Kirchhoff’s laws",
        ),
        CarryNote::MixedBlocks => (
            "Blocks of different age, make or use share neither current nor charge as reckoned here: the old one sets the end, and the new one wears. Do not mix them.".into(),
            "common practice",
        ),
        CarryNote::SeriesAsAllowed { series_count } => (
            format!(
                "{series_count} blocks in series: only if the maker allows so many. The electronics of a block must bear the whole bank’s volts when they open."
            ),
            "common practice",
        ),
        CarryNote::SeriesBeyondMaker { series_count, most_count } => (
            format!(
                "{series_count} blocks in series, and the maker allows {most_count}: do not."
            ),
            "the maker’s figure, as typed",
        ),
        CarryNote::LithiumCold { least_c, coldest_c } => (
            format!(
                "Not charged below {}: on a morning of {} every charger and the panels must be kept off until the blocks are warm. Charging frozen lithium cells plates metal and can start a fire.",
                degrees(plan, least_c),
                degrees(plan, coldest_c)
            ),
            "cell makers’ usual limit",
        ),
        CarryNote::EngineCharge => (
            "If the battery’s electronics open while the engine charges it, the alternator’s volts leap and can destroy it and the vehicle’s electronics. Use a charger made for that between them.".into(),
            "common practice",
        ),
        CarryNote::Precharge => (
            "An inverter or converter draws a rush when it is connected, which can open the battery’s electronics and burn contacts: fill its capacitors through a resistor first.".into(),
            "common practice",
        ),
        CarryNote::InverterPeak { peak_w, start_w } => (
            format!(
                "The unit’s start takes about {} and the inverter gives {} for a moment: it may not start.",
                with_unit(start_w, "W"),
                with_unit(peak_w, "W")
            ),
            "",
        ),
        CarryNote::BehindConverter => (
            "The cable from the converter or inverter to the unit is not judged here. Behind an inverter it is house wiring, with a house’s dangers.".into(),
            "",
        ),
        CarryNote::DropsTogether { dropped_percent } => (
            format!(
                "Along both cables {} is lost before the unit: 5 % is the usual most.",
                percent(dropped_percent)
            ),
            "informational note to NFPA 70 section 210.19(A), from memory",
        ),
        CarryNote::ColdPanels { open_v, limit_v } => (
            format!(
                "On the coldest morning the panels stand at {} and the controller bears {}: a moment of it can destroy the controller. Fewer in series.",
                volts(open_v),
                volts(limit_v)
            ),
            "NFPA 70 section 690.7, from memory",
        ),
        CarryNote::ControllerNotSaid { open_v } => (
            format!(
                "The panels reach {} on the coldest morning: see that the controller bears more than that.",
                volts(open_v)
            ),
            "NFPA 70 section 690.7, from memory",
        ),
        CarryNote::PanelsBelowBank { best_v, charge_v } => (
            format!(
                "Hot in the sun the panels stand at {}, and the bank charges up to {}: only a controller that raises volts fills it.",
                volts(best_v),
                volts(charge_v)
            ),
            "",
        ),
        CarryNote::FuseEachPanelString { strings_count } => (
            format!(
                "{strings_count} strings of panels in parallel: each needs its own fuse, as the others can overload one that is shorted."
            ),
            "NFPA 70 section 690.9(A), from memory",
        ),
        CarryNote::Ventilate { air_m3_h, opening_mm2 } => (
            format!(
                "Lead-acid gives off hydrogen while it charges. Its compartment needs {} of air an hour, to the outside: an opening of {} low and another high.",
                value_text(air_m3_h, Unit::CubicMeter, plan.show),
                opening(plan, opening_mm2)
            ),
            "EN 50272-3 / IEC 62485-3",
        ),
    }
}

/// The size of an opening in square centimetres, or in square inches.
fn opening(plan: &Plan, mm2: f64) -> String {
    let area = square_millimeters(mm2);
    if plan.show.us_units {
        format!("{}\u{202f}in²", fixed(in_square_inches(area).ceil(), 0))
    } else {
        format!("{}\u{202f}cm²", fixed(in_square_meters(area) * 1e4, 0))
    }
}
