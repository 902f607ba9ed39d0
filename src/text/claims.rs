//! Sentences of the fifth question: does it do what it claims?

mod beside;
mod figures;
mod log;
mod night;
mod report;
mod rows;
mod said;
pub mod words;

pub use beside::{
    air_refusal, air_sentence, budget_name, money_sentence, next_sentence, pocket_sentence,
};
pub use figures::is_typed;
pub use log::{
    column_title, edge_label, edge_step_h, end_sentence, fault_sentence, gap_sentence,
    hours_of_seconds, lasted_text, leave_out, log_meter_name, make_mode, make_noted, means_text,
    minutes_of, moment_of, note_label, note_trouble, note_unit, noted_sentence, offset_bad,
    offset_hint, offset_of, offset_sentence, place, reading_text, role_name, sampling_sentence,
    shortest_name, split_in_two, stretch_detail, stretch_text, total_text, unit_name, why_words,
};
pub use night::{
    FigureRow, night_cabin, night_heads, night_notes, night_rows, night_state, night_used,
    night_volts,
};
pub use report::{Row, air_detail, air_rows, money_rows, report_notes, report_row};
pub use rows::rows_text;
pub use said::{
    about_name, claim_number, claim_title, class_name, end_by_name, full_by_name, headline,
    list_bad, missing_sentence, plainly, verdict_text,
};
