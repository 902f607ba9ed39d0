//! What stands beside the questions: notices and cautions.

use super::{browser::window, reactive::*};
use super::{
    dom::{El, button, h},
    state::{Shall, State},
};
use crate::{
    answer::{self, Caution},
    wording::{self, words},
};

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
    let other_tab = move || {
        let shall = |words, shall| button("", words, move || state.shall.set(Some(shall)));
        state.other_tab.get().then(|| {
            h("p", "notice")
                .attr("id", "other-tab")
                .text(words::OTHER_TAB)
                .child(shall(words::USE_OTHER_TAB, Shall::Other))
                .child(shall(words::KEEP_THIS_TAB, Shall::This))
        })
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
                    "{}{}{}",
                    state.notice.get().map_or("", wording::notice_sentence),
                    state.other_tab.get(),
                    state.update.get()
                )
            },
            move || {
                let all = [happened(), other_tab(), update()];
                all.into_iter().flatten().collect()
            },
        )
}

/// Those of this plan, each with its source. What always holds stands beside them
/// before the later part is there.
pub fn cautions(state: State) -> Vec<El> {
    let said = move || {
        state.with_plan(|plan| {
            let all = answer::cautions(plan).into_iter();
            let all = all.filter(|&one| one != Caution::Estimates);
            all.map(|one| (wording::caution(plan, one), wording::caution_source(one)))
                .collect::<Vec<_>>()
        })
    };
    let list = h("ul", "cautions").live_children(
        move || format!("{:?}", said()),
        move || {
            let all = said().into_iter();
            all.map(|(text, source)| {
                let item = h("li", "").text(&text);
                if source.is_empty() {
                    return item;
                }
                item.child(h("cite", "").text(&wording::in_brackets(source)))
            })
            .collect()
        },
    );
    vec![list]
}
