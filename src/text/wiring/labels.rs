//! Names of the fourth question's fields and choices.

use crate::plan::{
    Path,
    wiring::{
        Circuit, FuseKind, InstallationField as L, Place, Strands, TakeOff, WiringField as W,
    },
};

/// What a field of the wiring is called.
#[must_use]
pub const fn label(path: Path) -> &'static str {
    match path {
        Path::Wiring(field) => wiring(field),
        Path::Installation(_, field) => installation(field),
        _ => "",
    }
}

const fn wiring(field: W) -> &'static str {
    match field {
        W::DistributionM | W::ChargerM | W::PanelM => "Cable, one way",
        W::DistributionMm2 | W::ChargerMm2 | W::PanelMm2 => "Conductor",
        W::StartA => "Surge when the unit starts",
        W::StartMs => "The surge lasts",
        W::InverterPeakW => "Inverter’s peak",
        W::BatteryPeakA => "Peak current of one battery",
        W::BatteryPeakMs => "It bears that peak for",
        W::BatteryChargeA => "Max charge current of one battery",
        W::ChargeLeastC => "Not charged below",
        W::BatteryFaultA => "Short-circuit current of one battery",
        W::LinkMohm => "One link between batteries",
        W::MostSeriesCount => "Batteries in series the maker allows",
        W::ColdestC => "Coldest morning of the year",
    }
}

const fn installation(field: L) -> &'static str {
    match field {
        L::InsulationC => "Insulation rated for",
        L::TerminalC => "Coolest lug or holder rated for",
        L::AirC => "Air around it, at its hottest",
        L::BundledCount => "Conductors in the bundle",
        L::AllowedDropPercent => "Drop you allow",
        L::FuseA => "Fuse that is in it",
        L::FuseAlongM => "Fuse sits from the source",
    }
}

/// A line under the field, where the label alone may be misread.
#[must_use]
pub const fn hint(path: Path) -> &'static str {
    match path {
        Path::Wiring(W::DistributionMm2 | W::ChargerMm2 | W::PanelMm2) => {
            "“16”, “16 mm2” or “6 AWG”. Copper."
        }
        Path::Wiring(W::DistributionM) => {
            "Left empty: the cables begin at the bank. Question 1 counts its copper too."
        }
        Path::Wiring(W::BatteryPeakA) => {
            "Left empty: its continuous limit is held against the surge."
        }
        Path::Wiring(W::BatteryFaultA) => {
            "By its sheet. Left empty: volts over the lowest likely resistance."
        }
        Path::Wiring(W::LinkMohm) => "With its lugs; on bars, one lead.",
        Path::Installation(_, L::BundledCount) => {
            "That carry current, this circuit’s own two with them."
        }
        Path::Installation(_, L::FuseA) => "By its print. Left empty: one is named.",
        _ => "",
    }
}

/// A stretch of cable.
#[must_use]
pub const fn circuit_name(circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Distribution => "Bank to distribution",
        Circuit::Unit => "To the unit",
        Circuit::Charger => "Charger to bank",
        Circuit::Panel => "Panels to controller",
    }
}

/// Where the system is.
#[must_use]
pub const fn place_name(place: Place) -> &'static str {
    match place {
        Place::Vehicle => "in a vehicle",
        Place::Boat => "on a boat",
        Place::Cabin => "in a cabin or house",
    }
}

/// Where the cables leave the bank.
#[must_use]
pub const fn take_off_name(take_off: TakeOff) -> &'static str {
    match take_off {
        TakeOff::SameEnd => "both from the first battery",
        TakeOff::Diagonal => "across: plus from the first, minus from the last",
        TakeOff::BusBar => "equal leads to bus bars",
    }
}

/// How a conductor is made.
#[must_use]
pub const fn strands_name(strands: Strands) -> &'static str {
    match strands {
        Strands::Fine => "fine strands, bare",
        Strands::FineTinned => "fine strands, tinned",
        Strands::Few => "a few thick strands",
        Strands::Solid => "solid",
    }
}

/// A kind of fuse.
#[must_use]
pub const fn fuse_kind_name(kind: FuseKind) -> &'static str {
    match kind {
        FuseKind::Blade => "blade fuse",
        FuseKind::Strip => "bolt-down strip fuse (ANL)",
        FuseKind::Post => "fuse on the terminal post (MRBF)",
        FuseKind::ClassT => "class T cartridge",
        FuseKind::Breaker => "DC circuit breaker",
    }
}
