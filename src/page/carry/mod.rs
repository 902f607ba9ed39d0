//! "Can the wiring carry it, and can it be filled again?": cables, fuses and
//! what the blocks bear.

mod fields;

use super::{dom::El, state::State};

/// All that stands under the question.
pub fn carry(state: State) -> Vec<El> {
    vec![fields::cables(state), fields::blocks(state)]
}
