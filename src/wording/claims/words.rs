//! Headings, labels and hints of the fifth question.

pub const LOG_TITLE: &str = "A log, or a day’s notes";
pub const LOG_HINT: &str = "Drop a CSV file of a monitor or logger here, or pick one. It is read on this device and goes nowhere.";
pub const PICK_LOG: &str = "Pick a log";
pub const TRY_LOG: &str = "Try the invented log";
pub const COLUMNS: &str = "How its columns are read";
pub const INVENTED: &str =
    "Invented for the demonstration: no such van, bank or cooler was measured.";
pub const INVENTED_NAME: &str = "From the invented log";
pub const READ_AS: &str = "Read as";
pub const IN_UNIT: &str = "In";
pub const READ_AGAIN: &str = "Read it again so";
pub const LOG_METER: &str = "Amps were logged by";
pub const LOG_METERS: [&str; 3] = ["a shunt of 100 A", "a shunt of 500 A", "a clamp meter"];
pub const LOG_BANK: &str = "It is a log of";
pub const OFFSET: &str = "Amps that the meter shows at rest";
pub const OFFSET_HINT: &str = "A tenth of an ampere over twelve hours feigns 1.2 Ah.";
pub const OFFSET_BAD: &str = "Give a number of amps from −50 to 50.";
pub const OFFSET_FROM_LOG: &str = "Read it off the log’s start";
pub const OFFSET_NONE: &str = "The log starts under load: there is no rest to read it from.";
pub const STRETCHES: &str = "Steady stretches";
pub const STRETCHES_HINT: &str = "Found by where the mean changes (PELT; Killick, Fearnhead and Eckley 2012). Drag the edges, or move them with the arrow keys, a minute at a time.";
pub const SHORTEST: &str = "The shortest to look for";
pub const SHORTEST_HINT: &str =
    "Longer than one on and off of the compressor: its mean then has its rests in it.";
pub const LEAVE_OUT: &str = "Leave out";
pub const CUT: &str = "Cut in two";
pub const AMPS_AXIS: &str = "Draw, A";
pub const FIND_AGAIN: &str = "Find them anew";
pub const MAKE_BANK: &str = "Take the totals as the measured bank";
pub const MAKE_CLAIMS: &str = "Hold the totals against the label";
pub const TAKEN: &str =
    "Taken into the plan, marked measured, with its spread. Undo takes it back.";
pub const NOT_TAKEN: &str =
    "Not taken: no accuracy can be claimed for it, or it is outside what the plan takes.";
pub const DRAW: &str = "Draw";
pub const CHART_LABEL: &str = "Draw along the log, its stretches shaded";
pub const CHARGE: &str = "Charge";
pub const ENERGY: &str = "Energy";
pub const LASTED: &str = "Logged";
pub const VOLTS: &str = "Volts";
pub const AMPS: &str = "Amps";
pub const WATTS: &str = "Watts";
pub const NO_ACCURACY: &str = "no accuracy claimed";
pub const INTO: &str = "Make it the draw of";
pub const REPORT: &str = "Bench report";
pub const REPORT_HEADS: [&str; 5] = ["Claim", "Claimed", "Measured", "Of the claim", "Verdict"];
pub const REPORT_NOTE: &str = "A verdict is given only where the whole interval agrees with it (JCGM 106:2012, guard bands as wide as the expanded uncertainty, 95 %).";
pub const CLAIMS: &str = "Claims";
pub const ADD_CLAIM: &str = "Add a claim";
pub const REMOVE_CLAIM: &str = "Remove this claim";
pub const CLAIM_NAME: &str = "Name, as it should stand in the report";
pub const ABOUT: &str = "About";
pub const CLAIM_BANK: &str = "Of the bank";
pub const METER: &str = "Read by";
pub const NO_METER: &str = "not said (its spread counts)";
pub const MORE: &str = "Limits, conditions and repeated runs";
pub const FULL_BY: &str = "Called full by";
pub const END_BY: &str = "Ended by";
pub const NOT_SAID: &str = "not said";
pub const RUNS: &str = "Figures of repeated runs";
pub const RUNS_HINT: &str = "With spaces between, as 4310 4325 4319. Two or more outrank the figure above; their scatter counts.";
pub const LIST_BAD: &str =
    "Numbers with spaces between, please, each within the range of its field.";
pub const AIR: &str = "Cooling, from the air side";
pub const AIR_HINT: &str = "Both faces at once, after ten steady minutes. Without both humidities only the sensible part can be known.";
pub const BASIS: &str = "The airflow counts air";
pub const BASES: [&str; 3] = ["as it comes out", "as it goes in", "at standard density"];
pub const VANE: &str = "Vane readings, m/s";
pub const VANE_HINT: &str =
    "One for each point of an even traverse, with spaces between. Used where no airflow is given.";
pub const BUDGET_HEADS: [&str; 3] = ["Reading", "Makes ± (one sigma)", "Share"];
pub const PRICE: &str = "What a watt-hour cost";
pub const NEXT: &str = "What to measure next";
pub const NEXT_NONE: &str = "Nothing that a usual meter could do better.";
pub const POCKET: &str = "Pocket formulas";
pub const POCKET_HINT: &str =
    "Usable Wh = nominal volts × Ah held × how far down. For nights without sun.";
pub const NOTES: &str = "Noted by hand";
pub const NOTES_HINT: &str = "Start, end or average, and minutes; the mode’s draw follows.";
pub const WATTS_AXIS: &str = "Draw, W";
pub const HOURS_AXIS: &str = "Hours from the log’s start";
