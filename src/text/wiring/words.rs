//! Short words of the fourth question.

pub const SMALLEST: [&str; 2] = ["AWG", "mm²"];

pub const BURDEN_HEADS: [&str; 5] = ["When", "Whole bank", "Hardest battery", "It may", ""];

pub const SHEET_HEADS: [&str; 7] = [
    "Cable, one way",
    "Amps: usual / lowest volts / start",
    "There now",
    "Smallest",
    "Decided by",
    "Drop, hot",
    "Fuse",
];
