//! Names of the third question's fields.

use super::{Words, plain};
use crate::plan::{
    cabin::CabinField as C,
    cooling::CoolingField as U,
    day::{CheckInField as I, DayField as D, ModeRowField as R},
    supply::{ArrayField as A, ChargerField as G, SupplyField as S},
};
use crate::text::Formatter;

pub(super) fn day(_f: Formatter, field: D) -> Words {
    match field {
        D::DaysCount => plain("Days"),
        D::Year => plain("Year"),
        D::Month => plain("Month"),
        D::DayOfMonth => plain("Day of the month"),
        D::UtcOffsetMin => plain("Clock ahead of UTC"),
        D::LatitudeDeg => plain("Latitude, north positive"),
        D::LongitudeDeg => plain("Longitude, east positive"),
        D::AltitudeM => plain("Height above the sea"),
        D::HighC => plain("High of the day"),
        D::LowC => plain("Low of the night"),
        D::DewPointC => plain("Dew point outdoors"),
        D::HumidityPercent => plain("Humidity at the high"),
        D::CloudPercent => plain("Sky under cloud"),
        D::LinkeTurbidity => plain("Haze (Linke turbidity)"),
        D::WindMS => plain("Wind"),
        D::GroundAlbedoPercent => plain("Light thrown back by the ground"),
        D::SamplesCount => plain("Nights drawn for the band"),
        D::SeedNumber => plain("Row of chances"),
    }
}

pub(super) fn cabin(_f: Formatter, field: C) -> Words {
    match field {
        C::InsideLengthM => plain("Length inside"),
        C::ShadePercent => plain("Shade"),
        C::PeopleCount => plain("People"),
        C::AnimalsCount => plain("Animals"),
        C::AnimalKg => plain("Each animal"),
        C::AwayFromClockMin => plain("Everyone is out from"),
        C::AwayUntilClockMin => plain("Back at"),
        C::AirChangesPerH => plain("Air change"),
        C::AiredChangesPerH => plain("Air change with everything open"),
        C::SetPointC => plain("Set point"),
        C::DeadBandK => plain("Dead band, whole width"),
        C::StartC => plain("In the cabin at the start"),
        C::GainsW => plain("Other heat inside"),
        C::FloorM2 => plain("Floor"),
        C::VolumeM3 => plain("Air inside"),
        C::RoofM2 => plain("Roof"),
        C::WallsM2 => plain("Walls"),
        C::WallGlassM2 => plain("Windows"),
        C::RoofGlassM2 => plain("Roof lights"),
        C::LitWallsPercent => plain("Walls that the sun can reach"),
        C::ShellWM2K => plain("Heat through the shell"),
        C::GlassWM2K => plain("Heat through glass"),
        C::GlassGainPercent => plain("Sun let in by glass"),
        C::AbsorptancePercent => plain("Sun taken up outside"),
        C::AirCapacityKjK => plain("Heat held by air and contents"),
        C::ShellCapacityKjK => plain("Heat held by the shell"),
        C::MoistureBuffer => plain("Water held by lining and bedding"),
    }
}

pub(super) fn cooling(_f: Formatter, field: U) -> Words {
    match field {
        U::CoolingW => plain("Cooling at its strongest"),
        U::Cop => plain("Cooling for each watt"),
        U::RatedOutdoorC => plain("Rated with outdoors at"),
        U::RatedWetBulbC => plain("Rated with a wet bulb of"),
        U::FloorPercent => plain("Least cooling"),
        U::AirflowM3H => plain("Air through the coil"),
        U::SensiblePercent => plain("Sensible share"),
        U::IntakeRiseK => plain("Its intake is hotter by"),
    }
}

pub(super) fn supply(_f: Formatter, field: S) -> Words {
    match field {
        S::ControllerLimitA => plain("Controller limit"),
        S::ControllerLimitV => plain("Controller’s most volts in"),
        S::ControllerEfficiencyPercent => plain("Controller efficiency"),
        S::PanelPowerPercentPerK => plain("Panel power by heat"),
        S::PanelVoltsPercentPerK => plain("Panel volts by heat"),
        S::ArrayLossPercent => plain("Lost to dust, cable and age"),
        S::BankC => plain("Bank temperature"),
        S::RefillFromPercent => plain("Fill it up from"),
        S::RefillToPercent => plain("Fill it up to"),
        S::FuelPricePerL => plain("Price of a litre of fuel"),
        S::ShorePricePerKwh => plain("Price of a kWh from shore"),
    }
}

pub(super) fn array(_f: Formatter, field: A) -> Words {
    match field {
        A::RatedW => plain("Panels, all together"),
        A::TiltDeg => plain("Tilt"),
        A::AzimuthDeg => plain("Facing, clockwise from north"),
        A::ShadingPercent => plain("Lost to shade"),
        A::PanelsSeriesCount => plain("Panels in series"),
        A::PanelsParallelCount => plain("Strings of panels"),
        A::PanelBestV => plain("One panel at its best"),
        A::PanelOpenV => plain("One panel, open"),
        A::PanelShortA => plain("One panel, shorted"),
    }
}

pub(super) fn charger(_f: Formatter, field: G) -> Words {
    match field {
        G::MostA => plain("Charger"),
        G::EfficiencyPercent => plain("Charger efficiency"),
        G::HoldV => plain("Holds at the end"),
        G::FromClockMin => plain("On from"),
        G::UntilClockMin => plain("On until"),
        G::SourceW => plain("What feeds it gives"),
        G::FuelL => plain("Fuel at hand"),
        G::FuelLPerKwh => plain("Fuel for each kWh"),
    }
}

pub(super) fn mode_row(_f: Formatter, field: R) -> Words {
    match field {
        R::FromClockMin => plain("From"),
    }
}

pub(super) fn check_in(_f: Formatter, field: I) -> Words {
    match field {
        I::ClockMin => plain("At"),
        I::DayCount => plain("Nights before that one"),
        I::ChargePercent => plain("The monitor says"),
        I::CabinC => plain("In the cabin"),
    }
}
