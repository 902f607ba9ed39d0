//! Short words of the fourth question.

pub const NO_ANSWER: &str = "No answer yet: mend the fields that are marked.";
pub const CIRCUITS: &str = "Cable by cable";
pub const CIRCUITS_HINT: &str = "Each opens to the rule that decided, and its source. Sizes are the smallest of either system that pass every rule.";
pub const RULE: &str = "Rule";
pub const SMALLEST: [&str; 2] = ["AWG", "mm²"];
pub const YOURS: &str = "Yours";
pub const PASSES: &str = "passes";
pub const FAILS: &str = "fails";
pub const DECIDES: &str = "decides";
pub const NONE: &str = "none";
pub const SOURCES: &str = "Where the rules come from";
pub const THE_FUSE: &str = "Its fuse";
pub const RECOMMENDED: &str = "Recommended";
pub const PLACE: &str = "Place";
pub const KIND: &str = "Kind";
pub const BREAKS: &str = "Breaks";
pub const HERE: &str = "Here";
pub const KINDS_SOURCE: &str =
    "What each kind breaks is the cautious end of common practice, from memory.";

pub const BATTERIES: &str = "The batteries";
pub const BURDEN_HEADS: [&str; 5] = ["When", "Whole bank", "Hardest battery", "It may", ""];
pub const FOR_HOURS: &str = "For hours";
pub const AT_START: &str = "At the start";
pub const ONE_OPEN: &str = "One string open";
pub const CHARGING: &str = "Charging";
pub const PANELS: &str = "The panels";
pub const CAUTIONS: &str = "Where it can hurt";

pub const FIELDS: &str = "Your cables";
pub const BANK_LIMITS: &str = "What the batteries bear, and the start";
pub const SUPPLY: &str = "What charges it";
pub const WHERE: &str = "The system is";
pub const TAKE_OFF: &str = "The two cables leave the bank";
pub const STRANDS: &str = "The conductor is made of";
pub const FUSE_KIND: &str = "Kind of main fuse";
pub const NOT_SAID: &str = "not said";
pub const ENGINE_SPACE: &str = "It passes an engine space";
pub const ENCLOSED: &str = "It runs inside a wall, conduit or duct";
pub const MIXED: &str = "Batteries of different age, make or use stand together";
pub const LAID: &str = "How it lies, and its fuse";

pub const SHEET: &str = "A page to take to an electrician";
pub const SHEET_PRINT: &str = "Print this page for an electrician";
pub const SHEET_TITLE: &str = "Wiring, for review by an electrician";
pub const SHEET_METHOD: &str = "Worked out by Till Morning from the figures below. Direct current, copper only. A starting point for someone licensed: local codes govern.";
pub const SHEET_HEADS: [&str; 7] = [
    "Cable, one way",
    "Amps: usual / lowest volts / start",
    "There now",
    "Smallest",
    "Decided by",
    "Drop, hot",
    "Fuse",
];
pub const SHEET_BATTERIES: &str = "Batteries";
pub const SHEET_TAKEN: &str = "Taken for it";
pub const ASSUMED: &str = "assumed";
pub const SHEET_FAULT_NOT_SAID: &str = "the battery’s short-circuit current, not said";
pub const SHEET_SIGN: &str = "Checked by, licence, date:";
