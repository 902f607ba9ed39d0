//! The third question's own words: headings, buttons, axes, names of choices.

use crate::{
    plan::{
        cabin::{BodyKind, Colour, Covers, Glazing, Insulation},
        cooling::Control,
        supply::{BankPlace, ChargerKind, ControllerKind, Mounting},
    },
    weather::place::Climate,
};

pub const TEMPERATURES: &str = "Cabin and outdoors";
pub const CHARGE: &str = "State of charge";
pub const POWER: &str = "Power in and out of the bank’s bars";
pub const AXIS_CELSIUS: &str = "°C";
pub const AXIS_FAHRENHEIT: &str = "°F";
pub const AXIS_CHARGE: &str = "%";
pub const AXIS_POWER: &str = "W, in above the line and out below";
pub const AXIS_CLOCK: &str = super::words::AXIS_CLOCK;
pub const CABIN: &str = "Cabin";
pub const OUTDOORS: &str = "Outdoors";
pub const SET_POINT: &str = "Set point";
pub const CHARGE_SHORT: &str = "Charge";
pub const SUN_IN: &str = "Panels";
pub const CHARGER_IN: &str = "Chargers";
pub const LOADS_OUT: &str = "Loads";
pub const UNIT_OUT: &str = "Unit";

pub const CHARTS_HINT: &str = "Dark stretches lie between sunset and sunrise. A band holds 19 of 20 drawn days; the line is the plan’s own numbers.";
pub const BAND_COMING: &str = "Drawing the band…";
pub const BAND_STALE: &str = "The band is still that of the numbers before.";
pub const BAND_NONE: &str = "No band: the plan asks for none to be drawn.";
pub const NO_ANSWER: &str = "No answer for these days yet: mend the fields named below.";
pub const EVENTS: &str = "What happens, and when";
pub const BY_DAY: &str = "Day by day";
pub const BOOKS: &str = "Show the working";
pub const ENERGY_BOOK: &str = "Where the energy comes from and goes";
pub const HEAT_BOOK: &str = "Where the cabin’s heat comes from and goes";
pub const METHOD: &str = "The sun’s place by Meeus, Astronomical Algorithms (2nd ed.); clear sky by Ineichen and Perez (Solar Energy 73, 2002) with the Linke turbidity given; the day’s temperatures by the hourly fractions of the ASHRAE Handbook of Fundamentals (2009 and later); heat by two stores, air and shell, with sun on the outside by that handbook’s sol-air form; the unit’s capacity and draw by published laboratory curves of room units. Between switches the cabin is exact, and switches, empty and cut-offs are located in time.";

/// Heads of the table of days.
pub const BY_DAY_HEADS: [&str; 7] = [
    "Day",
    "Panels",
    "Chargers",
    "Unit",
    "Loads",
    "Least charge",
    "At the end",
];

/// A type of country, as people would say it.
#[must_use]
pub const fn climate_name(climate: Climate) -> &'static str {
    match climate {
        Climate::SaltLakePlain => "High plain round a salt lake, 38° north",
        Climate::LowDesert => "Low stony desert, 33° north",
        Climate::HighPlateau => "High dry plateau, 36° north",
        Climate::GulfCoast => "Warm moist gulf coast, 29° north",
        Climate::HumidForest => "Humid forest inland, 34° north",
        Climate::InlandValley => "Dry inland valley, 37° north",
        Climate::SouthernRiverPlain => "River plain of a mild sea, 38° north",
        Climate::MildSeaShore => "Shore of a mild sea, 36° north",
        Climate::NorthernHeatWave => "Northern river plain in a heat wave, 50° north",
        Climate::DustySteppe => "Dusty steppe before the rains, 27° north",
        Climate::RedInlandPlain => "Red inland plain, 24° south",
        Climate::TropicalCoast => "Tropical coast between rains, 17° south",
    }
}

#[must_use]
pub const fn body_name(kind: BodyKind) -> &'static str {
    match kind {
        BodyKind::Van => "panel van",
        BodyKind::Trailer => "trailer",
        BodyKind::TentCabin => "tent or canvas cabin",
        BodyKind::Boat => "boat cabin",
        BodyKind::SmallCabin => "small hut",
    }
}

#[must_use]
pub const fn insulation_name(one: Insulation) -> &'static str {
    match one {
        Insulation::Bare => "bare metal or cloth",
        Insulation::Partial => "here and there, ribs bare",
        Insulation::Normal => "all round, some 30 mm",
        Insulation::Heavy => "thick, no bare ribs",
    }
}

#[must_use]
pub const fn colour_name(one: Colour) -> &'static str {
    match one {
        Colour::Light => "light",
        Colour::Medium => "medium",
        Colour::Dark => "dark",
    }
}

#[must_use]
pub const fn glazing_name(one: Glazing) -> &'static str {
    match one {
        Glazing::Single => "single",
        Glazing::Double => "double",
    }
}

#[must_use]
pub const fn covers_name(one: Covers) -> &'static str {
    match one {
        Covers::None => "nothing",
        Covers::Curtains => "curtains",
        Covers::InsideMats => "reflecting mats inside",
        Covers::OutsideCovers => "covers outside",
    }
}

#[must_use]
pub const fn control_name(one: Control) -> &'static str {
    match one {
        Control::Thermostat => "on and off about the set point",
        Control::Modulating => "slower and faster, down to a floor",
    }
}

#[must_use]
pub const fn mounting_name(one: Mounting) -> &'static str {
    match one {
        Mounting::FlatOnRoof => "flat on the roof, back shut off",
        Mounting::StoodOff => "on legs or a rack, air behind",
    }
}

#[must_use]
pub const fn controller_name(one: ControllerKind) -> &'static str {
    match one {
        ControllerKind::Tracking => "tracking (MPPT)",
        ControllerKind::Direct => "direct (PWM): panels tied to the bank",
    }
}

#[must_use]
pub const fn charger_name(one: ChargerKind) -> &'static str {
    match one {
        ChargerKind::Shore => "shore power",
        ChargerKind::Engine => "the engine",
        ChargerKind::Generator => "a generator",
    }
}

#[must_use]
pub const fn bank_place_name(one: BankPlace) -> &'static str {
    match one {
        BankPlace::Cabin => "in the cabin",
        BankPlace::Locker => "in a locker, under seat or floor",
        BankPlace::Outside => "outside",
    }
}
