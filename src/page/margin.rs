//! What stands beside the questions: notices and cautions.

use super::{browser::window, reactive::*};
use super::{
    dom::{El, button, h},
    state::State,
};
use crate::wording::{self, CAUTIONS, words};

/// What happened to the document, and the way to a newer version.
pub fn notices(state: State) -> El {
    let happened = move || {
        let notice = state.notice.get()?;
        let dismiss = button("quiet", words::DISMISS, move || state.notice.set(None));
        Some(
            h("p", "notice")
                .attr("id", "notice")
                .text(wording::notice_sentence(notice))
                .child(dismiss),
        )
    };
    let update = move || {
        let reload = || {
            if let Ok(event) = web_sys::Event::new("till-morning-reload") {
                let _ = window().dispatch_event(&event);
            }
        };
        let news = || {
            h("p", "notice")
                .attr("id", "update-notice")
                .text(words::UPDATE_WAITS)
        };
        state
            .update
            .get()
            .then(|| news().child(button("", words::RELOAD, reload)))
    };
    h("div", "")
        .attr("role", "status")
        .attr("aria-live", "polite")
        .live_children(
            move || {
                format!(
                    "{}{}",
                    state.notice.get().map_or("", wording::notice_sentence),
                    state.update.get()
                )
            },
            move || happened().into_iter().chain(update()).collect(),
        )
}

/// Cautions with their sources.
pub fn cautions() -> El {
    h("ul", "cautions").children(CAUTIONS.iter().map(|caution| {
        let item = h("li", "").text(caution.text);
        if caution.source.is_empty() {
            return item;
        }
        item.child(h("cite", "").text(&wording::in_brackets(caution.source)))
    }))
}
