//! Names of the fourth question's choices.

use crate::plan::wiring::{Circuit, FuseKind, Place, Strands, TakeOff};
use crate::text::{Formatter, m};

/// A stretch of cable.
#[must_use]
pub fn circuit_name(f: Formatter, circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Distribution => f.say(m::WiringCircuitDistribution),
        Circuit::Unit => f.say(m::WiringCircuitUnit),
        Circuit::Charger => f.say(m::WiringCircuitCharger),
        Circuit::Panel => f.say(m::WiringCircuitPanel),
    }
}

/// Where the system is.
#[must_use]
pub fn place_name(f: Formatter, place: Place) -> &'static str {
    match place {
        Place::Vehicle => f.say(m::WiringPlaceVehicle),
        Place::Boat => f.say(m::WiringPlaceBoat),
        Place::Cabin => f.say(m::WiringPlaceCabin),
    }
}

/// Where the main cables are connected to the bank.
#[must_use]
pub fn take_off_name(f: Formatter, take_off: TakeOff) -> &'static str {
    match take_off {
        TakeOff::SameEnd => f.say(m::WiringTakeOffSameEnd),
        TakeOff::Diagonal => f.say(m::WiringTakeOffDiagonal),
        TakeOff::BusBar => f.say(m::WiringTakeOffBusbar),
    }
}

/// How a conductor is made.
#[must_use]
pub fn strands_name(f: Formatter, strands: Strands) -> &'static str {
    match strands {
        Strands::Fine => f.say(m::WiringStrandsFine),
        Strands::FineTinned => f.say(m::WiringStrandsTinned),
        Strands::Few => f.say(m::WiringStrandsFew),
        Strands::Solid => f.say(m::WiringStrandsSolid),
    }
}

/// A type of fuse.
#[must_use]
pub fn fuse_kind_name(f: Formatter, kind: FuseKind) -> &'static str {
    match kind {
        FuseKind::Blade => f.say(m::WiringFuseBlade),
        FuseKind::Strip => f.say(m::WiringFuseStrip),
        FuseKind::Post => f.say(m::WiringFusePost),
        FuseKind::ClassT => f.say(m::WiringFuseClassT),
        FuseKind::Breaker => f.say(m::WiringFuseBreaker),
    }
}
