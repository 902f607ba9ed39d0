//! The page's own words: headings, buttons, axes, short texts.

pub const FEEDS: [&str; 3] = [
    "directly from the bank",
    "through a DC-DC converter",
    "through an inverter",
];

pub const UNKNOWNS: [&str; 4] = [
    "the bank",
    "the hours",
    "the most it may draw",
    "how far down it goes",
];
