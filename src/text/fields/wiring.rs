//! Names of the fourth question's fields.

use super::{Words, plain};
use crate::plan::wiring::{InstallationField as L, WiringField as W};
use crate::text::{Formatter, m};

pub(super) fn wiring(f: Formatter, field: W) -> Words {
    match field {
        W::DistributionM => [
            f.say(m::WiringDistributionM),
            f.say(m::WiringDistributionMHint),
        ],
        W::ChargerM | W::PanelM => plain(f.say(m::WiringOneWayM)),
        W::DistributionMm2 | W::ChargerMm2 | W::PanelMm2 => [
            f.say(m::WiringConductorMm2),
            f.say(m::WiringConductorMm2Hint),
        ],
        W::StartA => plain(f.say(m::WiringStartA)),
        W::StartMs => plain(f.say(m::WiringStartMs)),
        W::InverterPeakW => plain(f.say(m::WiringInverterPeakW)),
        W::BatteryPeakA => [
            f.say(m::WiringBatteryPeakA),
            f.say(m::WiringBatteryPeakAHint),
        ],
        W::BatteryPeakMs => plain(f.say(m::WiringBatteryPeakMs)),
        W::BatteryChargeA => plain(f.say(m::WiringBatteryChargeA)),
        W::ChargeLeastC => plain(f.say(m::WiringChargeLeastC)),
        W::BatteryFaultA => [
            f.say(m::WiringBatteryFaultA),
            f.say(m::WiringBatteryFaultAHint),
        ],
        W::LinkMohm => [f.say(m::WiringLinkMohm), f.say(m::WiringLinkMohmHint)],
        W::MostSeriesCount => plain(f.say(m::WiringMostSeriesCount)),
        W::ColdestC => plain(f.say(m::WiringColdestC)),
    }
}

pub(super) fn installation(f: Formatter, field: L) -> Words {
    match field {
        L::InsulationC => plain(f.say(m::InstallationInsulationC)),
        L::TerminalC => plain(f.say(m::InstallationTerminalC)),
        L::AirC => plain(f.say(m::InstallationAirC)),
        L::BundledCount => [
            f.say(m::InstallationBundledCount),
            f.say(m::InstallationBundledCountHint),
        ],
        L::AllowedDropPercent => plain(f.say(m::InstallationAllowedDropPercent)),
        L::FuseA => [f.say(m::InstallationFuseA), f.say(m::InstallationFuseAHint)],
        L::FuseAlongM => plain(f.say(m::InstallationFuseAlongM)),
    }
}
