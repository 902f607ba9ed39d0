//! Names of the fourth question's fields.

use super::{Words, plain};
use crate::plan::wiring::{InstallationField as L, WiringField as W};
use crate::text::Formatter;

pub(super) fn wiring(_f: Formatter, field: W) -> Words {
    match field {
        W::DistributionM => [
            "Cable, one way",
            "Left empty: the cables begin at the bank. Question 1 counts its copper too.",
        ],
        W::ChargerM | W::PanelM => plain("Cable, one way"),
        W::DistributionMm2 | W::ChargerMm2 | W::PanelMm2 => {
            ["Conductor", "“16”, “16 mm2” or “6 AWG”. Copper."]
        }
        W::StartA => plain("Surge when the unit starts"),
        W::StartMs => plain("The surge lasts"),
        W::InverterPeakW => plain("Inverter’s peak"),
        W::BatteryPeakA => [
            "Peak current of one battery",
            "Left empty: its continuous limit is held against the surge.",
        ],
        W::BatteryPeakMs => plain("It bears that peak for"),
        W::BatteryChargeA => plain("Max charge current of one battery"),
        W::ChargeLeastC => plain("Not charged below"),
        W::BatteryFaultA => [
            "Short-circuit current of one battery",
            "By its sheet. Left empty: volts over the lowest likely resistance.",
        ],
        W::LinkMohm => [
            "One link between batteries",
            "With its lugs; on bars, one lead.",
        ],
        W::MostSeriesCount => plain("Batteries in series the maker allows"),
        W::ColdestC => plain("Coldest morning of the year"),
    }
}

pub(super) fn installation(_f: Formatter, field: L) -> Words {
    match field {
        L::InsulationC => plain("Insulation rated for"),
        L::TerminalC => plain("Coolest lug or holder rated for"),
        L::AirC => plain("Air around it, at its hottest"),
        L::BundledCount => [
            "Conductors in the bundle",
            "That carry current, this circuit’s own two with them.",
        ],
        L::AllowedDropPercent => plain("Drop you allow"),
        L::FuseA => [
            "Fuse that is in it",
            "By its print. Left empty: one is named.",
        ],
        L::FuseAlongM => plain("Fuse sits from the source"),
    }
}
