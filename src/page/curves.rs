//! Which charts the page shows of the first two questions.

use super::{
    chart::{Plot, chart_view},
    dom::{El, named_fold},
    reactive::*,
    state::State,
};
use crate::{drawing::NIGHT, wording::words};
use std::rc::Rc;

/// The four charts, behind a fold: the sentence and the ribbon come first.
pub fn curves(state: State) -> El {
    named_fold("fold", words::CURVES, move || {
        state.curves.set(true);
        let plots = NIGHT.iter().map(|chart| Plot {
            titles: chart.titles,
            draw: Rc::new(move || {
                state.with_plan(|plan| state.with_answer(|answer| chart.draw(plan, answer)))
            }),
        });
        plots.map(|plot| chart_view(state, plot)).collect()
    })
}
