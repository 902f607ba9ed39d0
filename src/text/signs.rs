//! The signs by which a message's pattern says more than its words: control characters,
//! which no catalogue has. The build writes them (`.tools/messages`), [`super::patterns`]
//! reads them.
//!
//! A pattern is text with variables and choices in it. A variable is [`VARIABLE`] and its
//! place; a choice is [`CHOICE`], the place of what it goes by, its cases and [`END`]; a
//! case is [`CASE`], its key, [`THEN`] and a pattern. The case without a key comes last
//! and takes what no other did.

/// Between two messages of a catalogue.
pub const NEXT: char = '\0';
pub const VARIABLE: char = '\u{1}';
pub const CHOICE: char = '\u{2}';
pub const CASE: char = '\u{3}';
pub const THEN: char = '\u{4}';
pub const END: char = '\u{5}';

/// The place of the first thing that a message takes; the next one's is the character
/// after it.
pub const FIRST_PLACE: char = ' ';
