//! Heads of the fourth question's tables.

use crate::text::{Formatter, m};

/// Of the table of the batteries' currents; the last column has the verdict.
#[must_use]
pub fn burden_heads(f: Formatter) -> [&'static str; 5] {
    [
        f.say(m::WiringWhen),
        f.say(m::WiringWholeBank),
        f.say(m::WiringMostLoaded),
        f.say(m::WiringLimit),
        "",
    ]
}

/// Of the circuits on the electrician's sheet.
#[must_use]
pub fn sheet_heads(f: Formatter) -> [&'static str; 7] {
    [
        f.say(m::WiringSheetCable),
        f.say(m::WiringSheetAmps),
        f.say(m::WiringSheetThere),
        f.say(m::WiringSheetSmallest),
        f.say(m::WiringSheetDecided),
        f.say(m::WiringSheetDrop),
        f.say(m::WiringTheFuse),
    ]
}
