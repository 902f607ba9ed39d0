//! The third question's own words: headings, buttons, axes, names of choices.

use crate::text::Formatter;
use crate::text::m;
use crate::{
    physics::weather::place::Climate,
    plan::{
        cabin::{BodyKind, Colour, Covers, Glazing, Insulation},
        cooling::{Control, UnitCurves},
        supply::{BankPlace, ChargerKind, ControllerKind, Mounting},
    },
};

/// Which days of a weather file.
#[must_use]
pub fn stretches(f: Formatter) -> [&'static str; 2] {
    [f.say(m::DayStretchHottest), f.say(m::DayStretchDate)]
}

/// What of an hour its sun is the mean of.
#[must_use]
pub fn stamps(f: Formatter) -> [&'static str; 3] {
    [
        f.say(m::DayStampBefore),
        f.say(m::DayStampAbout),
        f.say(m::DayStampAfter),
    ]
}

/// A choice that nobody made.
#[must_use]
pub fn assumed_choice(f: Formatter, name: &str) -> String {
    f.say(m::DayAssumedChoice {
        name,
        assumed: f.say(m::AssumedMark),
    })
}

/// What to mind with a charger of a kind.
#[must_use]
pub fn charger_hint(f: Formatter, kind: ChargerKind) -> &'static str {
    match kind {
        ChargerKind::Shore => f.say(m::DayChargerHintShore),
        ChargerKind::Engine => f.say(m::DayChargerHintEngine),
        ChargerKind::Generator => f.say(m::DayChargerHintGenerator),
    }
}

/// A climate, as people would say it.
#[must_use]
pub fn climate_name(f: Formatter, climate: Climate) -> &'static str {
    match climate {
        Climate::SaltLakePlain => f.say(m::DayClimateSaltLakePlain),
        Climate::LowDesert => f.say(m::DayClimateLowDesert),
        Climate::HighPlateau => f.say(m::DayClimateHighPlateau),
        Climate::GulfCoast => f.say(m::DayClimateGulfCoast),
        Climate::HumidForest => f.say(m::DayClimateHumidForest),
        Climate::InlandValley => f.say(m::DayClimateInlandValley),
        Climate::SouthernRiverPlain => f.say(m::DayClimateSouthernRiverPlain),
        Climate::MildSeaShore => f.say(m::DayClimateMildSeaShore),
        Climate::NorthernHeatWave => f.say(m::DayClimateNorthernHeatWave),
        Climate::DustySteppe => f.say(m::DayClimateDustySteppe),
        Climate::RedInlandPlain => f.say(m::DayClimateRedInlandPlain),
        Climate::TropicalCoast => f.say(m::DayClimateTropicalCoast),
    }
}

#[must_use]
pub fn body_name(f: Formatter, kind: BodyKind) -> &'static str {
    match kind {
        BodyKind::Van => f.say(m::DayBodyVan),
        BodyKind::Trailer => f.say(m::DayBodyTrailer),
        BodyKind::TentCabin => f.say(m::DayBodyTentCabin),
        BodyKind::Boat => f.say(m::DayBodyBoat),
        BodyKind::SmallCabin => f.say(m::DayBodySmallCabin),
    }
}

#[must_use]
pub fn insulation_name(f: Formatter, one: Insulation) -> &'static str {
    match one {
        Insulation::Bare => f.say(m::DayInsulationBare),
        Insulation::Partial => f.say(m::DayInsulationPartial),
        Insulation::Normal => f.say(m::DayInsulationNormal),
        Insulation::Heavy => f.say(m::DayInsulationHeavy),
    }
}

#[must_use]
pub fn colour_name(f: Formatter, one: Colour) -> &'static str {
    match one {
        Colour::Light => f.say(m::DayColourLight),
        Colour::Medium => f.say(m::DayColourMedium),
        Colour::Dark => f.say(m::DayColourDark),
    }
}

#[must_use]
pub fn glazing_name(f: Formatter, one: Glazing) -> &'static str {
    match one {
        Glazing::Single => f.say(m::DayGlazingSingle),
        Glazing::Double => f.say(m::DayGlazingDouble),
    }
}

#[must_use]
pub fn covers_name(f: Formatter, one: Covers) -> &'static str {
    match one {
        Covers::None => f.say(m::DayCoversNone),
        Covers::Curtains => f.say(m::DayCoversCurtains),
        Covers::InsideMats => f.say(m::DayCoversInsideMats),
        Covers::OutsideCovers => f.say(m::DayCoversOutsideCovers),
    }
}

#[must_use]
pub fn control_name(f: Formatter, one: Control) -> &'static str {
    match one {
        Control::Thermostat => f.say(m::DayControlThermostat),
        Control::Modulating => f.say(m::DayControlModulating),
    }
}

#[must_use]
pub fn curves_name(f: Formatter, one: UnitCurves) -> &'static str {
    match one {
        UnitCurves::WindowUnit => f.say(m::DayCurvesWindowUnit),
        UnitCurves::SingleSpeed => f.say(m::DayCurvesSingleSpeed),
        UnitCurves::TwoStage => f.say(m::DayCurvesTwoStage),
    }
}

#[must_use]
pub fn mounting_name(f: Formatter, one: Mounting) -> &'static str {
    match one {
        Mounting::FlatOnRoof => f.say(m::DayMountingFlatOnRoof),
        Mounting::StoodOff => f.say(m::DayMountingStoodOff),
    }
}

#[must_use]
pub fn controller_name(f: Formatter, one: ControllerKind) -> &'static str {
    match one {
        ControllerKind::Tracking => f.say(m::DayControllerTracking),
        ControllerKind::Direct => f.say(m::DayControllerDirect),
    }
}

#[must_use]
pub fn charger_name(f: Formatter, one: ChargerKind) -> &'static str {
    match one {
        ChargerKind::Shore => f.say(m::DayChargerShore),
        ChargerKind::Engine => f.say(m::DayChargerEngine),
        ChargerKind::Generator => f.say(m::DayChargerGenerator),
    }
}

#[must_use]
pub fn bank_place_name(f: Formatter, one: BankPlace) -> &'static str {
    match one {
        BankPlace::Cabin => f.say(m::DayBankPlaceCabin),
        BankPlace::Locker => f.say(m::DayBankPlaceLocker),
        BankPlace::Outside => f.say(m::DayBankPlaceOutside),
    }
}
