//! What a field's term means: one plain sentence for who does not know it.

use crate::plan::{
    Path,
    cabin::CabinField as C,
    claims::{AirField as A, ClaimField as J, PriceField as P},
    cooling::CoolingField as Q,
    day::{CheckInField as I, DayField as D},
    path::{BankField as B, ModeField as M, UnitField as U},
    supply::{ArrayField as Y, ChargerField as G, SupplyField as S},
    wiring::{InstallationField as L, WiringField as W},
};
use crate::text::{Formatter, m};

/// The sentence, where the field's name is a term that a camper may not know.
#[must_use]
pub fn field_meaning(f: Formatter, path: Path) -> Option<&'static str> {
    Some(match path {
        Path::Bank(_, field) => bank(f, field)?,
        Path::Unit(_, field) => unit(f, field)?,
        Path::Mode(_, _, M::DutyPercent) => f.say(m::MeaningDutyCycle),
        Path::Day(field) => day(f, field)?,
        Path::Cabin(field) => cabin(f, field)?,
        Path::Cooling(_, field) => cooling(f, field)?,
        Path::Supply(S::PanelPowerPercentPerK | S::PanelVoltsPercentPerK) => {
            f.say(m::MeaningTemperatureCoefficient)
        }
        Path::Array(_, Y::PanelBestV) => f.say(m::MeaningVmp),
        Path::Array(_, Y::PanelOpenV) => f.say(m::MeaningVoc),
        Path::Array(_, Y::PanelShortA) => f.say(m::MeaningIsc),
        Path::Charger(_, G::HoldV) => f.say(m::MeaningAbsorption),
        Path::CheckIn(_, I::ChargePercent) => f.say(m::MeaningStateOfCharge),
        Path::Claim(_, J::OfReadingPercent) => f.say(m::MeaningOfReading),
        Path::Claim(_, J::OfFullScalePercent) => f.say(m::MeaningOfFullScale),
        Path::Claim(_, J::CountsNumber) => f.say(m::MeaningCounts),
        Path::Air(A::InletHumidityPercent | A::OutletHumidityPercent) => {
            f.say(m::MeaningRelativeHumidity)
        }
        Path::Price(P::CycleDepthPercent) => f.say(m::MeaningDepthOfDischarge),
        Path::Wiring(field) => wiring(f, field)?,
        Path::Installation(_, L::AllowedDropPercent) => f.say(m::MeaningVoltageDrop),
        _ => return None,
    })
}

fn bank(f: Formatter, field: B) -> Option<&'static str> {
    Some(match field {
        B::RatedHoursH => f.say(m::MeaningHourRate),
        B::HealthPercent => f.say(m::MeaningStateOfHealth),
        B::StartChargePercent => f.say(m::MeaningStateOfCharge),
        B::DepthPercent => f.say(m::MeaningDepthOfDischarge),
        B::CutoffV => f.say(m::MeaningBatteryCutOff),
        B::BatteryCurrentLimitA => f.say(m::MeaningBatteryLimit),
        B::ParasiticW => f.say(m::MeaningParasitic),
        B::BatteryResistanceMohm => f.say(m::MeaningInternalResistance),
        B::PeukertExponent => f.say(m::MeaningPeukert),
        _ => return None,
    })
}

fn unit(f: Formatter, field: U) -> Option<&'static str> {
    Some(match field {
        U::CutoffV | U::InverterCutoffV => f.say(m::MeaningCutOff),
        U::CableAreaMm2 => f.say(m::MeaningConductor),
        U::IdleW | U::NoLoadW => f.say(m::MeaningNoLoad),
        _ => return None,
    })
}

fn day(f: Formatter, field: D) -> Option<&'static str> {
    Some(match field {
        D::DewPointC => f.say(m::MeaningDewPoint),
        D::HumidityPercent => f.say(m::MeaningRelativeHumidity),
        D::LinkeTurbidity => f.say(m::MeaningTurbidity),
        D::GroundAlbedoPercent => f.say(m::MeaningAlbedo),
        _ => return None,
    })
}

fn cabin(f: Formatter, field: C) -> Option<&'static str> {
    Some(match field {
        C::AirChangesPerH | C::AiredChangesPerH => f.say(m::MeaningAirChanges),
        C::SetPointC => f.say(m::MeaningSetPoint),
        C::DeadBandK => f.say(m::MeaningDeadBand),
        C::ShellWM2K | C::GlassWM2K => f.say(m::MeaningUValue),
        C::GlassGainPercent => f.say(m::MeaningShgc),
        C::AbsorptancePercent => f.say(m::MeaningAbsorptance),
        C::AirCapacityKjK | C::ShellCapacityKjK => f.say(m::MeaningHeatCapacity),
        _ => return None,
    })
}

fn cooling(f: Formatter, field: Q) -> Option<&'static str> {
    Some(match field {
        Q::Cop => f.say(m::MeaningCop),
        Q::RatedWetBulbC => f.say(m::MeaningWetBulb),
        Q::SensiblePercent => f.say(m::MeaningSensible),
        _ => return None,
    })
}

fn wiring(f: Formatter, field: W) -> Option<&'static str> {
    Some(match field {
        W::DistributionMm2 | W::ChargerMm2 | W::PanelMm2 => f.say(m::MeaningConductor),
        W::StartA => f.say(m::MeaningSurge),
        W::InverterPeakW => f.say(m::MeaningInverterPeak),
        W::BatteryPeakA => f.say(m::MeaningBatteryPeak),
        W::ChargeLeastC => f.say(m::MeaningBms),
        W::BatteryFaultA => f.say(m::MeaningFaultCurrent),
        _ => return None,
    })
}
