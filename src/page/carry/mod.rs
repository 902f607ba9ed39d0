//! "Can the wiring carry it, and can it be filled again?": cables, fuses and
//! what the blocks bear.

mod fields;
mod refill;

use super::{dom::El, state::State};

/// All that stands under the question.
pub fn carry(state: State) -> Vec<El> {
    vec![
        fields::cables(state),
        fields::blocks(state),
        refill::refill_part(state),
    ]
}
