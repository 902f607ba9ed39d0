//! Names of the fourth question's choices.

use crate::plan::wiring::{Circuit, FuseKind, Place, Strands, TakeOff};
use crate::text::Formatter;

/// A stretch of cable.
#[must_use]
pub fn circuit_name(_f: Formatter, circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Distribution => "Bank to distribution",
        Circuit::Unit => "To the unit",
        Circuit::Charger => "Charger to bank",
        Circuit::Panel => "Panels to controller",
    }
}

/// Where the system is.
#[must_use]
pub fn place_name(_f: Formatter, place: Place) -> &'static str {
    match place {
        Place::Vehicle => "in a vehicle",
        Place::Boat => "on a boat",
        Place::Cabin => "in a cabin or house",
    }
}

/// Where the cables leave the bank.
#[must_use]
pub fn take_off_name(_f: Formatter, take_off: TakeOff) -> &'static str {
    match take_off {
        TakeOff::SameEnd => "both from the first battery",
        TakeOff::Diagonal => "across: plus from the first, minus from the last",
        TakeOff::BusBar => "equal leads to bus bars",
    }
}

/// How a conductor is made.
#[must_use]
pub fn strands_name(_f: Formatter, strands: Strands) -> &'static str {
    match strands {
        Strands::Fine => "fine strands, bare",
        Strands::FineTinned => "fine strands, tinned",
        Strands::Few => "a few thick strands",
        Strands::Solid => "solid",
    }
}

/// A kind of fuse.
#[must_use]
pub fn fuse_kind_name(_f: Formatter, kind: FuseKind) -> &'static str {
    match kind {
        FuseKind::Blade => "blade fuse",
        FuseKind::Strip => "bolt-down strip fuse (ANL)",
        FuseKind::Post => "fuse on the terminal post (MRBF)",
        FuseKind::ClassT => "class T cartridge",
        FuseKind::Breaker => "DC circuit breaker",
    }
}
