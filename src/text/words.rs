//! The page's own words: headings, buttons, axes, short texts.

pub const NAME_OF_PAGE: &str = "Till Morning";
pub const STRAP: &str =
    "How long a cooling unit runs on a battery bank, worked out here, without a signal.";
pub const QUESTION_RUN: &str = "How long will it run?";
pub const QUESTION_BANK: &str = "How big a bank?";
pub const QUESTION_DAY: &str = "Will it last a hot day?";
pub const QUESTION_WIRING: &str = "Can the wiring carry it?";
pub const QUESTION_CLAIMS: &str = "Does it do what it claims?";
pub const QUESTION_HAND_ON: &str = "Pass it on";
pub const PART_COMING: &str = "Loading this part of the page…";
pub const PART_MISSING: &str = "This part of the page has not arrived. It needs a signal once, and is then kept. Where there is one and trying again does not help, reload the page.";
pub const PART_AGAIN: &str = "Try again";
pub const ASSUMED: &str = "What was assumed";
pub const ASSUMED_HINT: &str = "A field left empty takes the number shown in it. Each number is marked as from a label, measured, or a guess: the mark sets how far it may be off.";
pub const ASSUMED_MARK: &str = "assumed";
pub const KEEPING: &str = "Keep and share";
pub const CAUTIONS_TITLE: &str = "Before you rely on it";
pub const FOOT: &str = "Everything is worked out in this browser; nothing is sent anywhere. Estimates are not guarantees.";

pub const NO_ANSWER: &str = "No answer yet: mend the fields marked below.";
pub const STALE: &str = "This is the answer to the last good numbers: a field below needs mending.";
pub const READINGS: &str = "How the numbers were read";
pub const SHOW_WORKING: &str = "Show the working";
pub const SPREAD_FROM: &str = "What makes the answer unsure, largest first:";
pub const RIBBON: &str = "Night ribbon";
pub const RIBBON_LABEL: &str = "Night ribbon: how far along the clock each mode runs";
pub const RIBBON_CAPTION: &str = "Each bar runs from the start; its end fades from the early to the late end of the spread, with a line at the likely one.";

pub const CURVES: &str = "Curves";
pub const BY_BANK: &str = "Hours against the size of the bank";
pub const BY_DEPTH: &str = "Hours against how far down";
pub const CHARGE_ALONG: &str = "State of charge through the night";
pub const VOLTS_ALONG: &str = "Terminal voltage through the night, unit on";
pub const AXIS_BANK: &str = "Bank, Ah";
pub const AXIS_DEPTH: &str = "Depth of discharge, %";
pub const AXIS_HOURS: &str = "Hours";
pub const AXIS_CLOCK: &str = "Clock";
pub const AXIS_CHARGE: &str = "State of charge, %";
pub const AXIS_VOLTS: &str = "Volts";
pub const SCRUB: &str = "Touch the chart, or use the arrow keys, to read it.";
pub const TABLE: &str = "The numbers as a table";
pub const TABLES: &str = "The numbers as tables";

pub const BANK: &str = "Your bank";
pub const ADD_BANK: &str = "Lay another bank beside it";
pub const REMOVE_BANK: &str = "Remove this bank";
pub const CHEMISTRY: &str = "Chemistry";
pub const NAME: &str = "Name";
pub const MEASURED_TITLE: &str = "If you measured the bank";

pub const MODES: &str = "Your cooling unit";
pub const UNIT: &str = "Cooling unit";
pub const MODE_NAME: &str = "Mode";
pub const ADD_MODE: &str = "Add a mode";
pub const REMOVE_MODE: &str = "Remove this mode";
pub const AMPS_STAY: &str = "Its amps stay as the voltage falls (not usual for a compressor)";
pub const ADD_UNIT: &str = "Lay another cooling unit beside it";
pub const REMOVE_UNIT: &str = "Remove cooling unit";
pub const FEED: &str = "Fed";
pub const FEEDS: [&str; 3] = [
    "directly from the bank",
    "through a DC-DC converter",
    "through an inverter",
];

pub const LOADS: &str = "Other loads that run all night";
pub const LOAD_NAME: &str = "What";
pub const ADD_LOAD: &str = "Add a load";
pub const REMOVE_LOAD: &str = "Remove this load";

pub const ASK_FOR: &str = "I want to know";
pub const UNKNOWNS: [&str; 4] = [
    "the bank",
    "the hours",
    "the most it may draw",
    "how far down it goes",
];
pub const ASK_MODE: &str = "For the mode";
pub const JUST_ENOUGH: &str = "Just enough, new";
pub const WITH_RESERVE: &str = "With ageing and margin";
pub const BATTERIES: &str = "Whole batteries";
pub const THEY_RUN: &str = "They run";

pub const UNDO: &str = "Undo";
pub const COPY_LINK: &str = "Copy link";
pub const SAVE_FILE: &str = "Save as file";
pub const OPEN_FILE: &str = "Open a file";
pub const DEMO: &str = "Show the example";
pub const FRESH: &str = "Start fresh";
pub const LINK: &str = "Link to this plan";
pub const US_UNITS: &str = "US units (ft, °F, cfm)";
pub const DISMISS: &str = "Dismiss";
pub const OTHER_TAB: &str = "Another tab of this browser has a different plan: it was changed there after it was opened here. Nothing is lost until you choose.";
pub const USE_OTHER_TAB: &str = "Use the other tab’s plan";
pub const KEEP_THIS_TAB: &str = "Keep this one";
pub const UPDATE_WAITS: &str = "A newer version of this page is here.";
pub const RELOAD: &str = "Reload to update";
