//! Headings, labels and hints of the fifth question.

pub const LOG_METERS: [&str; 3] = ["a shunt of 100 A", "a shunt of 500 A", "a clamp meter"];
pub const REPORT_HEADS: [&str; 5] = ["Claim", "Claimed", "Measured", "Of the claim", "Verdict"];
pub const BASES: [&str; 3] = ["as it comes out", "as it goes in", "at standard density"];
pub const BUDGET_HEADS: [&str; 3] = ["Reading", "Makes ± (one sigma)", "Share"];
