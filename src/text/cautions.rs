//! Cautions that the page shows where they apply: each sentence and source once.

use super::{
    bank_in_words,
    hand_on::plan_value,
    wiring::{amps, circuit_name},
};
use crate::text::Formatter;
use crate::{
    answer::cautions::Caution,
    plan::Plan,
    quantity::{in_square_inches, in_square_meters, square_millimeters},
    range::Unit,
};

/// Said of every closed cabin that gets hot, and on every reader's page.
pub const NEVER_LEAVE: &str = "Never leave children, animals or anyone who cannot get out, unattended, to a battery-run cooler. \
    A closed vehicle climbs about 3.2 °F (1.8 °C) each 5 minutes, and most of the rise comes in the first 30.";
pub const ESTIMATES: &str =
    "This does not replace local codes or a licensed electrician. Estimates are not guarantees.";

/// A caution as a sentence.
#[must_use]
pub fn caution(f: Formatter, plan: &Plan, caution: Caution) -> String {
    let degrees = |celsius: f64| plan_value(f, plan, Unit::Celsius, celsius.round());
    match caution {
        Caution::HeatUnattended { cabin_c } => format!(
            "{NEVER_LEAVE} In this plan’s weather the closed cabin reaches {} with nothing to cool it.",
            degrees(cabin_c)
        ),
        Caution::BeyondFiftyVolts { bank, charge_v } => format!(
            "{}While it charges the bank stands at {}. The cable table and the fuse rule used here are made for less than 50 V: above that other rules apply, and direct current kills and keeps arcing. This is work for a licensed electrician.",
            of_bank(f, plan, bank),
            f.volts(charge_v)
        ),
        Caution::Generator { at_night } => format!(
            "A generator stands outside, 20 ft (6 m) away from every opening, exhaust turned away: its carbon monoxide kills unnoticed.{}",
            asleep(f, at_night)
        ),
        Caution::Engine { at_night } => format!(
            "No engine runs while people sleep, nor in a closed space: its carbon monoxide kills unnoticed. Fit an alarm for it.{}",
            asleep(f, at_night)
        ),
        Caution::ChargedCold {
            bank,
            least_c,
            coldest_c,
        } => format!(
            "{}Lithium is not charged below {}, and this bank may be as cold as {}: every charger and the panels must be kept off until it is warm. Charging frozen cells plates metal and can start a fire.",
            of_bank(f, plan, bank),
            degrees(least_c),
            degrees(coldest_c)
        ),
        Caution::LeadAcidGas {
            bank,
            air_m3_h,
            opening_mm2,
        } => format!(
            "{}Lead-acid gives off hydrogen while it charges. Its compartment needs {} of air an hour, to the outside: an opening of {} low and another high.",
            of_bank(f, plan, bank),
            f.value(air_m3_h, Unit::CubicMeter),
            opening(f, plan, opening_mm2)
        ),
        Caution::PathWithoutFuse { circuit, current_a } => format!(
            "{}: {} and no fuse is named for it. Without one a short circuit heats the cable until it burns.",
            circuit_name(f, circuit),
            amps(f, current_a)
        ),
        Caution::AlternatorLeftOpen { bank } => format!(
            "{}If the BMS opens while the engine charges, the alternator’s voltage leaps and can destroy it and the vehicle’s electronics. Use a charger made for that between them.",
            of_bank(f, plan, bank)
        ),
        Caution::SeriesBeyondMaker {
            bank,
            series_count,
            most_count,
        } => format!(
            "{}{series_count} batteries in series, and the maker allows {most_count}: do not.",
            of_bank(f, plan, bank)
        ),
        Caution::SeriesAsAllowed { bank, series_count } => format!(
            "{}{series_count} batteries in series: only if the maker allows so many. The BMS of each must stand the whole bank’s volts when it opens.",
            of_bank(f, plan, bank)
        ),
        Caution::ParallelAsAllowed {
            bank,
            parallel_count,
        } => format!(
            "{}{parallel_count} strings in parallel: only as the maker of the battery allows.",
            of_bank(f, plan, bank)
        ),
        Caution::BmsIsNoFuse => {
            "The battery’s own electronics (BMS) are no fuse: they may fail closed.".into()
        }
        Caution::FuseAtSource => {
            "The fuse sits at the source of the current, as near the battery as can be and before the first branch.".into()
        }
        Caution::CopperOnly => {
            "Copper only. Copper-clad aluminium of the same size resists about 1.6 times as much and carries less: do not use it here.".into()
        }
        Caution::AutomotiveGauge => {
            "Cable sold by an automotive gauge holds less copper than the American gauge of that number.".into()
        }
        Caution::PrintedRatingDecides => {
            "What is printed on the fuse for direct current, volts and interrupting rating, decides over any table.".into()
        }
        Caution::LocalCodes => {
            "Local codes and licensed practice govern, and may ask for more. Take the printed page to an electrician before you buy or lay anything.".into()
        }
        Caution::Estimates => ESTIMATES.into(),
    }
}

/// Where a caution comes from.
#[must_use]
pub fn caution_source(_f: Formatter, caution: Caution) -> &'static str {
    match caution {
        Caution::HeatUnattended { .. } => "McLaren, Null & Quinn, Pediatrics 116 (2005) e109",
        Caution::BeyondFiftyVolts { .. } => {
            "scope of 33 CFR 183.425 and 183.455; NFPA 70 chapter 4 and article 480, from memory"
        }
        Caution::Generator { .. } => "US Consumer Product Safety Commission",
        Caution::Engine { .. } => {
            "US Consumer Product Safety Commission on carbon monoxide, from memory"
        }
        Caution::ChargedCold { .. } => "cell makers’ usual limit",
        Caution::LeadAcidGas { .. } => "33 CFR 183.420; EN 50272-3 / IEC 62485-3",
        Caution::PathWithoutFuse { .. } => "33 CFR 183.455; NFPA 70 section 240.21, from memory",
        Caution::FuseAtSource => "33 CFR 183.455; NFPA 70 section 240.21, from memory",
        Caution::SeriesBeyondMaker { .. } => "the maker’s figure, as typed",
        Caution::AutomotiveGauge => "SAE against ASTM B258 areas; common practice",
        Caution::AlternatorLeftOpen { .. }
        | Caution::SeriesAsAllowed { .. }
        | Caution::ParallelAsAllowed { .. }
        | Caution::BmsIsNoFuse
        | Caution::CopperOnly
        | Caution::PrintedRatingDecides => "common practice",
        Caution::LocalCodes | Caution::Estimates => "",
    }
}

fn asleep(_f: Formatter, at_night: bool) -> &'static str {
    if at_night {
        " By the clock it is on in the night of this plan: do not sleep beside it."
    } else {
        ""
    }
}

/// Which bank, where there are several.
fn of_bank(f: Formatter, plan: &Plan, bank: usize) -> String {
    if plan.banks.len() > 1 {
        format!("{}: ", bank_in_words(f, plan, bank))
    } else {
        String::new()
    }
}

/// The size of an opening in square centimetres, or in square inches.
fn opening(f: Formatter, _plan: &Plan, mm2: f64) -> String {
    let area = square_millimeters(mm2);
    if f.units.us_units {
        format!("{}\u{202f}in²", f.fixed(in_square_inches(area).ceil(), 0))
    } else {
        format!("{}\u{202f}cm²", f.fixed(in_square_meters(area) * 1e4, 0))
    }
}
