//! The later parts of the wasm: what is in them, and when they are fetched.
//!
//! What the first answer does without are files by themselves: what stands below the
//! first screen, what reads and writes plans, and the folded questions. Each part is a
//! table of functions that the splitter (`wasm_split`) hands out once the part is there;
//! what only these reach is in its file. Built without the feature `split`, as in tests,
//! everything is there from the start.

mod far;

use super::{
    below::{self, Below},
    browser::listen,
    files, keep,
    later::{self, Question},
    reader,
    state::State,
    turns::spawn,
    words,
};
use crate::{
    plan::{Plan, reader::Language},
    text::Notice,
};
use far::{Far, Missing, Part};
use leptos::prelude::*;
use std::time::Duration;

/// What stands below the first screen.
#[derive(Clone, Copy)]
struct Rest {
    inside: fn(Below) -> AnyView,
}

/// What reads and writes plans.
#[derive(Clone, Copy)]
pub struct Keeping {
    /// Opens what is kept or linked in place of what a first visit sees, and keeps every
    /// change from then on.
    pub open: fn(State),
    /// The plan's link.
    pub link: fn(&Plan) -> String,
    /// Hands the plan to the browser as a file.
    pub save: fn(&Plan),
    /// Opens the file that was chosen.
    pub open_file: fn(State, &web_sys::Event),
    /// The reader's page, if the address brings one.
    pub reader_page: fn() -> Option<AnyView>,
    /// The language that its author chose for it.
    pub language: fn() -> Option<Language>,
}

/// The folded questions.
#[derive(Clone, Copy)]
pub struct Later {
    /// What stands under a question's title; the signal tells whether its fold is open.
    pub inside: fn(Question, RwSignal<bool>) -> AnyView,
    /// What a reader can note down on paper.
    pub on_paper: fn(reader::Open) -> AnyView,
}

/// A function that hands out a part: its file comes when it is called.
macro_rules! bring {
    ($bring:ident, $part:ident, $kind:ty, $all:expr) => {
        async fn $bring() -> Result<$kind, Missing> {
            #[cfg(feature = "split")]
            {
                #[allow(unsafe_code, reason = "the splitter's own calls between the parts")]
                #[wasm_split_helpers::wasm_split($part, fallible)]
                fn $part() -> Result<$kind, wasm_split_helpers::SplitLoaderError> {
                    Ok($all)
                }
                $part().await.map_err(|_| Missing)
            }
            #[cfg(not(feature = "split"))]
            Ok($all)
        }
    };
}

bring!(
    bring_rest,
    rest,
    Rest,
    Rest {
        inside: below::inside,
    }
);
bring!(
    bring_keeping,
    keeping,
    Keeping,
    Keeping {
        open: keep::open,
        link: keep::link_of,
        save: files::save,
        open_file: files::open,
        reader_page: reader::page,
        language: reader::language,
    }
);
bring!(
    bring_later,
    later,
    Later,
    Later {
        inside: later::inside,
        on_paper: reader::on_paper,
    }
);

static REST: Part<Rest> = Part::new("data-rest");
static KEEPING: Part<Keeping> = Part::new("data-keeping");
static LATER: Part<Later> = Part::new("data-later");

async fn need_keeping() -> bool {
    // What can hurt is said in English too, beside any other language.
    let bring = async {
        if words::bring(Language::English).await {
            bring_keeping().await
        } else {
            Err(Missing)
        }
    };
    KEEPING.need(bring).await
}

/// Asks for all of it, now or again. One after the other: on a slow line two at a time
/// would keep the one that is waited for.
pub fn bring() {
    spawn(async {
        REST.need(bring_rest()).await;
        if need_keeping().await {
            LATER.need(bring_later()).await;
        } else {
            LATER.set(Far::Missing);
        }
    });
}

/// Rest after the first answer before the parts are fetched.
const PAUSE: Duration = Duration::from_millis(200);

/// Brings all of it when the first answer stands, and again when the signal is back.
pub fn bring_soon() {
    super::browser::later(PAUSE, bring);
    listen("online", || {
        if REST.is_missing() || LATER.is_missing() {
            bring();
        }
    });
}

/// Marks all parts as still to come, and, where `first` says that a plan may be waiting
/// to be read, waits until what reads it is there or has been given up.
pub async fn set_up(first: bool) {
    REST.set(Far::Waits);
    KEEPING.set(Far::Waits);
    LATER.set(Far::Waits);
    if first {
        need_keeping().await;
    }
}

/// What reads and writes plans, if it is there by now.
pub fn keeping() -> Option<Keeping> {
    KEEPING.there()
}

/// Calls `work` once: now, or when what reads and writes plans is there.
pub fn once_kept(work: impl Fn(Keeping) + 'static) {
    match keeping() {
        Some(keeping) => work(keeping),
        // It comes once, so this is done once, and what it makes lives with the page.
        None => {
            Effect::new(move || {
                if let Some(keeping) = KEEPING.follow() {
                    untrack(|| work(keeping));
                }
            });
        }
    }
}

/// For a press that needs the part: where it is not there it is asked for, and said.
pub fn keeping_or_said(state: State) -> Option<Keeping> {
    let keeping = keeping();
    if keeping.is_none() {
        bring();
        state.notice.set(Some(Notice::PartNotThere));
    }
    keeping
}

/// What stands below the first screen, once it is there.
pub fn below(of: Below) -> AnyView {
    REST.place(bring, move |rest| (rest.inside)(of))
}

/// What `build` builds of the folded questions; until then a line on how far they are.
pub fn place(build: impl Fn(Later) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    bring();
    LATER.place(bring, build)
}

/// What `build` builds of the folded questions' part, where the page is whole without it.
pub fn extra(build: impl Fn(Later) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    LATER.extra(build)
}
