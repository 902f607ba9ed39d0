//! The third question's own words: headings, buttons, axes, names of choices.

use crate::text::Formatter;
use crate::text::m;
use crate::{
    physics::weather::place::Climate,
    plan::{
        cabin::{BodyKind, Colour, Covers, Glazing, Insulation},
        cooling::Control,
        supply::{BankPlace, ChargerKind, ControllerKind, Mounting},
    },
};

pub const STRETCHES: [&str; 2] = ["the hottest", "from the date above on"];
pub const STAMPS: [&str; 3] = ["of the hour before", "about it", "of the hour after"];

/// A choice that nobody made.
#[must_use]
pub fn assumed_choice(f: Formatter, name: &str) -> String {
    format!("{name} ({})", f.say(m::AssumedMark))
}

/// What to mind with a charger of a kind.
#[must_use]
pub fn charger_hint(_f: Formatter, kind: ChargerKind) -> &'static str {
    match kind {
        ChargerKind::Shore => "Left without hours it is on all day.",
        ChargerKind::Engine => {
            "Left without hours it never runs. No engine runs while people sleep."
        }
        ChargerKind::Generator => {
            "Left without hours it never runs. A generator stands outside, 20 ft (6 m) away and downwind (CPSC), and never runs while people sleep beside it."
        }
    }
}

/// A type of country, as people would say it.
#[must_use]
pub fn climate_name(_f: Formatter, climate: Climate) -> &'static str {
    match climate {
        Climate::SaltLakePlain => "Salt lake plain, 38° N",
        Climate::LowDesert => "Low stony desert, 33° N",
        Climate::HighPlateau => "High dry plateau, 36° N",
        Climate::GulfCoast => "Moist gulf coast, 29° N",
        Climate::HumidForest => "Humid forest, 34° N",
        Climate::InlandValley => "Dry inland valley, 37° N",
        Climate::SouthernRiverPlain => "Southern river plain, 38° N",
        Climate::MildSeaShore => "Mild sea shore, 36° N",
        Climate::NorthernHeatWave => "Northern heat wave, 50° N",
        Climate::DustySteppe => "Dusty steppe, 27° N",
        Climate::RedInlandPlain => "Red inland plain, 24° S",
        Climate::TropicalCoast => "Tropical coast, 17° S",
    }
}

#[must_use]
pub fn body_name(_f: Formatter, kind: BodyKind) -> &'static str {
    match kind {
        BodyKind::Van => "panel van",
        BodyKind::Trailer => "trailer",
        BodyKind::TentCabin => "tent or canvas cabin",
        BodyKind::Boat => "boat cabin",
        BodyKind::SmallCabin => "small hut",
    }
}

#[must_use]
pub fn insulation_name(_f: Formatter, one: Insulation) -> &'static str {
    match one {
        Insulation::Bare => "bare metal or cloth",
        Insulation::Partial => "in parts, ribs bare",
        Insulation::Normal => "all round, some 30 mm",
        Insulation::Heavy => "thick, no bare ribs",
    }
}

#[must_use]
pub fn colour_name(_f: Formatter, one: Colour) -> &'static str {
    match one {
        Colour::Light => "light",
        Colour::Medium => "medium",
        Colour::Dark => "dark",
    }
}

#[must_use]
pub fn glazing_name(_f: Formatter, one: Glazing) -> &'static str {
    match one {
        Glazing::Single => "single",
        Glazing::Double => "double",
    }
}

#[must_use]
pub fn covers_name(_f: Formatter, one: Covers) -> &'static str {
    match one {
        Covers::None => "nothing",
        Covers::Curtains => "curtains",
        Covers::InsideMats => "reflecting mats inside",
        Covers::OutsideCovers => "covers outside",
    }
}

#[must_use]
pub fn control_name(_f: Formatter, one: Control) -> &'static str {
    match one {
        Control::Thermostat => "on and off (thermostat)",
        Control::Modulating => "variable speed, with a floor",
    }
}

#[must_use]
pub fn mounting_name(_f: Formatter, one: Mounting) -> &'static str {
    match one {
        Mounting::FlatOnRoof => "flat on the roof",
        Mounting::StoodOff => "stood off, air behind",
    }
}

#[must_use]
pub fn controller_name(_f: Formatter, one: ControllerKind) -> &'static str {
    match one {
        ControllerKind::Tracking => "tracking (MPPT)",
        ControllerKind::Direct => "direct (PWM), tied to the bank",
    }
}

#[must_use]
pub fn charger_name(_f: Formatter, one: ChargerKind) -> &'static str {
    match one {
        ChargerKind::Shore => "shore power",
        ChargerKind::Engine => "the engine",
        ChargerKind::Generator => "a generator",
    }
}

#[must_use]
pub fn bank_place_name(_f: Formatter, one: BankPlace) -> &'static str {
    match one {
        BankPlace::Cabin => "in the cabin",
        BankPlace::Locker => "in a locker, under seat or floor",
        BankPlace::Outside => "outside",
    }
}
