//! Names of choices, in the order in which the page lists them.

use super::{Formatter, m};

/// How a unit may be fed.
#[must_use]
pub fn feeds(f: Formatter) -> [&'static str; 3] {
    [
        f.say(m::FeedDirect),
        f.say(m::FeedDcDc),
        f.say(m::FeedInverter),
    ]
}

/// What may be asked for.
#[must_use]
pub fn unknowns(f: Formatter) -> [&'static str; 4] {
    [
        f.say(m::UnknownBank),
        f.say(m::UnknownHours),
        f.say(m::UnknownDraw),
        f.say(m::UnknownDepth),
    ]
}
