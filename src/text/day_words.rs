//! The third question's own words: headings, buttons, axes, names of choices.

use crate::{
    physics::weather::place::Climate,
    plan::{
        cabin::{BodyKind, Colour, Covers, Glazing, Insulation},
        cooling::Control,
        supply::{BankPlace, ChargerKind, ControllerKind, Mounting},
    },
};

pub const TEMPERATURES: &str = "Cabin and outdoors";
pub const CHARGE: &str = "State of charge";
pub const POWER: &str = "Power in and out";
pub const AXIS_CELSIUS: &str = "°C";
pub const AXIS_FAHRENHEIT: &str = "°F";
pub const AXIS_CHARGE: &str = "%";
pub const AXIS_POWER: &str = "W: in above, out below";
pub const AXIS_CLOCK: &str = super::words::AXIS_CLOCK;
pub const CABIN: &str = "Cabin";
pub const OUTDOORS: &str = "Outdoors";
pub const SET_POINT: &str = "Set point";
pub const FROM_READING: &str = "From now";
pub const CHARGE_SHORT: &str = "Charge";
pub const SUN_IN: &str = "Panels";
pub const CHARGER_IN: &str = "Chargers";
pub const LOADS_OUT: &str = "Loads";
pub const UNIT_OUT: &str = "Unit";

pub const CHARTS_HINT: &str = "Touch a chart, or use the arrow keys, to read all three. Dark stretches lie between sunset and sunrise. A band holds 19 of 20 drawn days; the line is the plan’s own numbers.";
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

pub const START: &str = "These days";
pub const FROM_FILE: &str =
    "Each hour’s temperature and sun come from the weather file; the high here shifts them.";
pub const RESTS_ON: &str = "What it rests on";
pub const WEATHER: &str = "Place, date and weather";
pub const WEATHER_HINT: &str = "A type of country fills what is left empty: its figures are ours and invented. A forecast for your own place is better, a file better still.";
pub const CLIMATE: &str = "Type of country";
pub const MY_PLACE: &str = "Take my position";
pub const TODAY: &str = "Take today’s date";
pub const WEATHER_REST: &str = "Air and ground in full";
pub const PLACE_ASKED: &str = "Asking the device where it is…";
pub const PLACE_TAKEN: &str =
    "Latitude, longitude and the clock are taken from the device. Nothing is sent anywhere.";
pub const PLACE_REFUSED: &str = "The browser does not let the page know where it is. Type latitude and longitude, or take a type of country.";
pub const PLACE_MISSING: &str =
    "The device does not know where it is. Type latitude and longitude, or take a type of country.";
pub const WEATHER_FILE: &str = "Hours from a weather file";
pub const WEATHER_FILE_HINT: &str = "EPW, TMY2, TMY3, or a table with the headings hour, temperature and irradiance (W/m² on level ground), and dni and dhi where you have them (direct, facing the sun; diffuse). Drop it here or choose it; it is read on this device.";
pub const PICK_WEATHER: &str = "Choose a weather file";
pub const FORGET_WEATHER: &str = "Without the file again";
pub const STRETCH: &str = "Which days of it";
pub const STRETCHES: [&str; 2] = ["the hottest", "from the date above on"];
pub const STAMP: &str = "In a table, an hour’s sun is the mean";
pub const STAMPS: [&str; 3] = ["of the hour before", "about it", "of the hour after"];
pub const THE_CABIN: &str = "The cabin";
pub const BODY: &str = "What it is";
pub const INSULATION: &str = "Insulation";
pub const COLOUR: &str = "Colour outside";
pub const GLAZING: &str = "Windows";
pub const COVERS: &str = "Before the windows";
pub const DERIVED: &str = "The figures that follow, each to be replaced";
pub const DERIVED_HINT: &str = "Each shows in its empty field what follows from the answers above. A figure typed here takes its place.";
pub const THE_UNIT: &str = "What the cooling unit gives";
pub const UNIT_HINT: &str = "Left empty, a plain window unit’s cooling for each watt is taken. With the label’s cooling, or your own measurement, the answer is surer.";
pub const CONTROL: &str = "It keeps the set point";
pub const MODE_PLAN: &str = "Mode plan by the clock";
pub const MODE_PLAN_HINT: &str = "Every day alike: from each time on, the mode beside it. While nothing is on, doors and roof light are taken to stand open.";
pub const ADD_MODE_ROW: &str = "Add a time";
pub const CLEAR_MODE_PLAN: &str = "Without a plan again";
pub const REMOVE_MODE_ROW: &str = "Remove this time";
pub const MODE_ROW: &str = "Run";
pub const MODE_OFF: &str = "nothing";
pub const SUPPLY: &str = "What feeds the bank";
pub const DRAWN: &str = "How the band is drawn";
pub const DRAWN_HINT: &str = "More nights make the odds finer and take longer. Another row of chances shows how much of them is luck.";
pub const CHANGES: &str = "What would buy more hours";
pub const CHANGES_COMING: &str = "Trying changes one by one…";
pub const CHANGES_NONE: &str = "No change to try: the plan cannot be run.";
pub const CHANGES_REST: &str = "The others that were tried";
pub const CHANGES_HINT: &str = "Each by itself on these days, three at least; ranked by hours until empty, then by hours that the set point is held, then by what is left to spare. Weights by usual figures (common practice, no source).";
pub const TRY_CHANGE: &str = "Try it";
pub const BEDTIME: &str = "Bedtime line";
pub const BEDTIME_COMING: &str = "Looking for the latest time…";
pub const BEDTIME_NONE: &str =
    "No mode is planned before the wanted hour, so there is none to change.";
pub const LONGEST: &str = "The longest cool night";
pub const LONGEST_COMING: &str = "Looking through mode plans…";
pub const LONGEST_NONE: &str = "No mode is planned, or the plan cannot be run.";
pub const TAKE_LONGEST: &str = "Take it as the mode plan";
pub const ENOUGH: &str = "How much is enough?";
pub const ENOUGH_COMING: &str = "Looking for it…";
pub const ENOUGH_NONE: &str =
    "There is nothing to look for: the plan cannot be run, or has none of it.";
pub const TAKE_ENOUGH: &str = "Take it into the plan";
pub const CHECK_INS: &str = "It is night: read off monitor and thermometer";
pub const CHECKED: &str = "As it stands in the night";
pub const TAKE_FIT: &str = "Take the fitted figures into the plan";
pub const CHECK_IN: &str = "Reading";
pub const CHECK_IN_HINT: &str =
    "What the monitor and a thermometer say now, by the same clock as the start.";
pub const ADD_CHECK_IN: &str = "Add a reading, now";
pub const REMOVE_CHECK_IN: &str = "Remove this reading";
pub const PANELS: &str = "Panels";
pub const ARRAY: &str = "Panels that lie alike";
pub const ADD_ARRAY: &str = "Add panels";
pub const REMOVE_ARRAY: &str = "Remove these panels";
pub const NO_ARRAY: &str = "No panels feed the bank.";
pub const MOUNTING: &str = "They sit";
pub const PANEL_SHEET: &str = "From the panel’s sheet";
pub const CONTROLLER: &str = "Controller";
pub const CONTROLLER_REST: &str = "Controller and losses";
pub const CHARGERS: &str = "Chargers";
pub const CHARGER: &str = "Charger";
pub const ADD_CHARGER: &str = "Add a charger";
pub const REMOVE_CHARGER: &str = "Remove this charger";
pub const NO_CHARGER: &str = "No charger feeds the bank.";
pub const FED_BY: &str = "Fed by";
pub const BANK_WARMTH: &str = "How warm the bank gets";
pub const BANK_PLACE: &str = "The bank stands";

/// A choice that nobody made.
#[must_use]
pub fn assumed_choice(name: &str) -> String {
    format!("{name} ({})", super::words::ASSUMED_MARK)
}

/// What to mind with a charger of a kind.
#[must_use]
pub const fn charger_hint(kind: ChargerKind) -> &'static str {
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
pub const fn climate_name(climate: Climate) -> &'static str {
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
        Insulation::Partial => "in parts, ribs bare",
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
        Control::Thermostat => "on and off (thermostat)",
        Control::Modulating => "variable speed, with a floor",
    }
}

#[must_use]
pub const fn mounting_name(one: Mounting) -> &'static str {
    match one {
        Mounting::FlatOnRoof => "flat on the roof",
        Mounting::StoodOff => "stood off, air behind",
    }
}

#[must_use]
pub const fn controller_name(one: ControllerKind) -> &'static str {
    match one {
        ControllerKind::Tracking => "tracking (MPPT)",
        ControllerKind::Direct => "direct (PWM), tied to the bank",
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
