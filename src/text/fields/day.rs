//! Names of the third question's fields.

use super::{Words, plain};
use crate::plan::{
    cabin::CabinField as C,
    cooling::{CoolingField as U, MapField as M},
    day::{CheckInField as I, DayField as D, ModeRowField as R},
    supply::{ArrayField as A, ChargerField as G, SupplyField as S},
};
use crate::text::{Formatter, m};

pub(super) fn day(f: Formatter, field: D) -> Words {
    match field {
        D::DaysCount => plain(f.say(m::DayDaysCount)),
        D::Year => plain(f.say(m::DayYear)),
        D::Month => plain(f.say(m::DayMonth)),
        D::DayOfMonth => plain(f.say(m::DayDayOfMonth)),
        D::UtcOffsetMin => plain(f.say(m::DayUtcOffsetMin)),
        D::LatitudeDeg => plain(f.say(m::DayLatitudeDeg)),
        D::LongitudeDeg => plain(f.say(m::DayLongitudeDeg)),
        D::AltitudeM => plain(f.say(m::DayAltitudeM)),
        D::HighC => plain(f.say(m::DayHighC)),
        D::LowC => plain(f.say(m::DayLowC)),
        D::DewPointC => plain(f.say(m::DayDewPointC)),
        D::HumidityPercent => plain(f.say(m::DayHumidityPercent)),
        D::CloudPercent => plain(f.say(m::DayCloudPercent)),
        D::LinkeTurbidity => plain(f.say(m::DayLinkeTurbidity)),
        D::WindMS => plain(f.say(m::DayWindMS)),
        D::GroundAlbedoPercent => plain(f.say(m::DayGroundAlbedoPercent)),
        D::SamplesCount => plain(f.say(m::DaySamplesCount)),
        D::SeedNumber => plain(f.say(m::DaySeedNumber)),
    }
}

pub(super) fn cabin(f: Formatter, field: C) -> Words {
    match field {
        C::InsideLengthM => plain(f.say(m::CabinInsideLengthM)),
        C::ShadePercent => plain(f.say(m::CabinShadePercent)),
        C::PeopleCount => plain(f.say(m::CabinPeopleCount)),
        C::AnimalsCount => plain(f.say(m::CabinAnimalsCount)),
        C::AnimalKg => plain(f.say(m::CabinAnimalKg)),
        C::AwayFromClockMin => plain(f.say(m::CabinAwayFromClockMin)),
        C::AwayUntilClockMin => plain(f.say(m::CabinAwayUntilClockMin)),
        C::AirChangesPerH => plain(f.say(m::CabinAirChangesPerH)),
        C::AiredChangesPerH => plain(f.say(m::CabinAiredChangesPerH)),
        C::SetPointC => plain(f.say(m::CabinSetPointC)),
        C::DeadBandK => plain(f.say(m::CabinDeadBandK)),
        C::StartC => plain(f.say(m::CabinStartC)),
        C::GainsW => plain(f.say(m::CabinGainsW)),
        C::FloorM2 => plain(f.say(m::CabinFloorM2)),
        C::VolumeM3 => plain(f.say(m::CabinVolumeM3)),
        C::RoofM2 => plain(f.say(m::CabinRoofM2)),
        C::WallsM2 => plain(f.say(m::CabinWallsM2)),
        C::WallGlassM2 => plain(f.say(m::CabinWallGlassM2)),
        C::RoofGlassM2 => plain(f.say(m::CabinRoofGlassM2)),
        C::LitWallsPercent => plain(f.say(m::CabinLitWallsPercent)),
        C::ShellWM2K => plain(f.say(m::CabinShellWM2K)),
        C::GlassWM2K => plain(f.say(m::CabinGlassWM2K)),
        C::GlassGainPercent => plain(f.say(m::CabinGlassGainPercent)),
        C::AbsorptancePercent => plain(f.say(m::CabinAbsorptancePercent)),
        C::AirCapacityKjK => plain(f.say(m::CabinAirCapacityKjK)),
        C::ShellCapacityKjK => plain(f.say(m::CabinShellCapacityKjK)),
        C::MoistureBuffer => plain(f.say(m::CabinMoistureBuffer)),
    }
}

pub(super) fn cooling(f: Formatter, field: U) -> Words {
    match field {
        U::CoolingW => plain(f.say(m::CoolingCoolingW)),
        U::Cop => plain(f.say(m::CoolingCop)),
        U::RatedOutdoorC => plain(f.say(m::CoolingRatedOutdoorC)),
        U::RatedWetBulbC => plain(f.say(m::CoolingRatedWetBulbC)),
        U::FloorPercent => plain(f.say(m::CoolingFloorPercent)),
        U::AirflowM3H => plain(f.say(m::CoolingAirflowM3H)),
        U::SensiblePercent => plain(f.say(m::CoolingSensiblePercent)),
        U::IntakeRiseK => plain(f.say(m::CoolingIntakeRiseK)),
        U::StartLossMin => [
            f.say(m::CoolingStartLossMin),
            f.say(m::CoolingStartLossMinHint),
        ],
    }
}

pub(super) fn map_row(f: Formatter, field: M) -> Words {
    plain(match field {
        M::OutdoorC => f.say(m::MapOutdoorC),
        M::EnteringWetBulbC => f.say(m::MapEnteringWetBulbC),
        M::DrawW => f.say(m::MapDrawW),
        M::CoolingW => f.say(m::MapCoolingW),
    })
}

pub(super) fn supply(f: Formatter, field: S) -> Words {
    match field {
        S::ControllerLimitA => plain(f.say(m::SupplyControllerLimitA)),
        S::ControllerLimitV => plain(f.say(m::SupplyControllerLimitV)),
        S::ControllerEfficiencyPercent => plain(f.say(m::SupplyControllerEfficiencyPercent)),
        S::PanelPowerPercentPerK => plain(f.say(m::SupplyPanelPowerPercentPerK)),
        S::PanelVoltsPercentPerK => plain(f.say(m::SupplyPanelVoltsPercentPerK)),
        S::ArrayLossPercent => plain(f.say(m::SupplyArrayLossPercent)),
        S::BankC => plain(f.say(m::SupplyBankC)),
        S::RefillFromPercent => plain(f.say(m::SupplyRefillFromPercent)),
        S::RefillToPercent => plain(f.say(m::SupplyRefillToPercent)),
        S::FuelPricePerL => plain(f.say(m::SupplyFuelPricePerL)),
        S::ShorePricePerKwh => plain(f.say(m::SupplyShorePricePerKwh)),
    }
}

pub(super) fn array(f: Formatter, field: A) -> Words {
    match field {
        A::RatedW => plain(f.say(m::ArrayRatedW)),
        A::TiltDeg => plain(f.say(m::ArrayTiltDeg)),
        A::AzimuthDeg => plain(f.say(m::ArrayAzimuthDeg)),
        A::ShadingPercent => plain(f.say(m::ArrayShadingPercent)),
        A::PanelsSeriesCount => plain(f.say(m::ArrayPanelsSeriesCount)),
        A::PanelsParallelCount => plain(f.say(m::ArrayPanelsParallelCount)),
        A::PanelBestV => plain(f.say(m::ArrayPanelBestV)),
        A::PanelOpenV => plain(f.say(m::ArrayPanelOpenV)),
        A::PanelShortA => plain(f.say(m::ArrayPanelShortA)),
    }
}

pub(super) fn charger(f: Formatter, field: G) -> Words {
    match field {
        G::MostA => plain(f.say(m::ChargerMostA)),
        G::EfficiencyPercent => plain(f.say(m::ChargerEfficiencyPercent)),
        G::HoldV => plain(f.say(m::ChargerHoldV)),
        G::FromClockMin => plain(f.say(m::ChargerFromClockMin)),
        G::UntilClockMin => plain(f.say(m::ChargerUntilClockMin)),
        G::SourceW => plain(f.say(m::ChargerSourceW)),
        G::FuelL => plain(f.say(m::ChargerFuelL)),
        G::FuelLPerKwh => plain(f.say(m::ChargerFuelLPerKwh)),
    }
}

pub(super) fn mode_row(f: Formatter, field: R) -> Words {
    match field {
        R::FromClockMin => plain(f.say(m::ModeRowFromClockMin)),
    }
}

pub(super) fn check_in(f: Formatter, field: I) -> Words {
    match field {
        I::ClockMin => plain(f.say(m::CheckInClockMin)),
        I::DayCount => plain(f.say(m::CheckInDayCount)),
        I::ChargePercent => plain(f.say(m::CheckInChargePercent)),
        I::CabinC => plain(f.say(m::CheckInCabinC)),
    }
}
