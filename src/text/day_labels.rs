//! Names of the hot day's fields.

use crate::plan::{
    Path,
    cabin::CabinField as C,
    cooling::CoolingField as U,
    day::{CheckInField as I, DayField as D},
    supply::{ArrayField as A, ChargerField as G, SupplyField as S},
};

/// What a field of the third question is called.
#[must_use]
pub const fn label(path: Path) -> &'static str {
    match path {
        Path::Day(field) => day(field),
        Path::Imported => "Hours from a weather file",
        Path::Cabin(field) => cabin(field),
        Path::Cooling(_, field) => cooling(field),
        Path::Supply(field) => supply(field),
        Path::Arrays => "Panels",
        Path::Array(_, field) => array(field),
        Path::Chargers => "Chargers",
        Path::Charger(_, field) => charger(field),
        Path::ModePlan => "Mode plan",
        Path::ModeRow(..) => "From",
        Path::CheckIns => "Read off in the night",
        Path::CheckIn(_, field) => match field {
            I::ClockMin => "At",
            I::DayCount => "Nights before that one",
            I::ChargePercent => "The monitor says",
            I::CabinC => "In the cabin",
        },
        _ => "",
    }
}

const fn day(field: D) -> &'static str {
    match field {
        D::DaysCount => "Days",
        D::Year => "Year",
        D::Month => "Month",
        D::DayOfMonth => "Day of the month",
        D::UtcOffsetMin => "Clock ahead of UTC",
        D::LatitudeDeg => "Latitude, north positive",
        D::LongitudeDeg => "Longitude, east positive",
        D::AltitudeM => "Height above the sea",
        D::HighC => "High of the day",
        D::LowC => "Low of the night",
        D::DewPointC => "Dew point outdoors",
        D::HumidityPercent => "Humidity at the high",
        D::CloudPercent => "Sky under cloud",
        D::LinkeTurbidity => "Haze (Linke turbidity)",
        D::WindMS => "Wind",
        D::GroundAlbedoPercent => "Light thrown back by the ground",
        D::SamplesCount => "Nights drawn for the band",
        D::SeedNumber => "Row of chances",
    }
}

const fn cabin(field: C) -> &'static str {
    match field {
        C::InsideLengthM => "Length inside",
        C::ShadePercent => "Shade",
        C::PeopleCount => "People",
        C::AnimalsCount => "Animals",
        C::AnimalKg => "Each animal",
        C::AwayFromClockMin => "Everyone is out from",
        C::AwayUntilClockMin => "Back at",
        C::AirChangesPerH => "Air change",
        C::AiredChangesPerH => "Air change with everything open",
        C::SetPointC => "Set point",
        C::DeadBandK => "Dead band, whole width",
        C::StartC => "In the cabin at the start",
        C::GainsW => "Other heat inside",
        C::FloorM2 => "Floor",
        C::VolumeM3 => "Air inside",
        C::RoofM2 => "Roof",
        C::WallsM2 => "Walls",
        C::WallGlassM2 => "Windows",
        C::RoofGlassM2 => "Roof lights",
        C::LitWallsPercent => "Walls that the sun can reach",
        C::ShellWM2K => "Heat through the shell",
        C::GlassWM2K => "Heat through glass",
        C::GlassGainPercent => "Sun let in by glass",
        C::AbsorptancePercent => "Sun taken up outside",
        C::AirCapacityKjK => "Heat held by air and contents",
        C::ShellCapacityKjK => "Heat held by the shell",
        C::MoistureBuffer => "Water held by lining and bedding",
    }
}

const fn cooling(field: U) -> &'static str {
    match field {
        U::CoolingW => "Cooling at its strongest",
        U::Cop => "Cooling for each watt",
        U::RatedOutdoorC => "Rated with outdoors at",
        U::RatedWetBulbC => "Rated with a wet bulb of",
        U::FloorPercent => "Least cooling",
        U::AirflowM3H => "Air through the coil",
        U::SensiblePercent => "Sensible share",
        U::IntakeRiseK => "Its intake is hotter by",
    }
}

const fn supply(field: S) -> &'static str {
    match field {
        S::ControllerLimitA => "Controller limit",
        S::ControllerLimitV => "Controller’s most volts in",
        S::ControllerEfficiencyPercent => "Controller efficiency",
        S::PanelPowerPercentPerK => "Panel power by heat",
        S::PanelVoltsPercentPerK => "Panel volts by heat",
        S::ArrayLossPercent => "Lost to dust, cable and age",
        S::BankC => "Bank temperature",
        S::RefillFromPercent => "Fill it up from",
        S::RefillToPercent => "Fill it up to",
        S::FuelPricePerL => "Price of a litre of fuel",
        S::ShorePricePerKwh => "Price of a kWh from shore",
    }
}

const fn array(field: A) -> &'static str {
    match field {
        A::RatedW => "Panels, all together",
        A::TiltDeg => "Tilt",
        A::AzimuthDeg => "Facing, clockwise from north",
        A::ShadingPercent => "Lost to shade",
        A::PanelsSeriesCount => "Panels in series",
        A::PanelsParallelCount => "Strings of panels",
        A::PanelBestV => "One panel at its best",
        A::PanelOpenV => "One panel, open",
        A::PanelShortA => "One panel, shorted",
    }
}

const fn charger(field: G) -> &'static str {
    match field {
        G::MostA => "Charger",
        G::EfficiencyPercent => "Charger efficiency",
        G::HoldV => "Holds at the end",
        G::FromClockMin => "On from",
        G::UntilClockMin => "On until",
        G::SourceW => "What feeds it gives",
        G::FuelL => "Fuel at hand",
        G::FuelLPerKwh => "Fuel for each kWh",
    }
}
