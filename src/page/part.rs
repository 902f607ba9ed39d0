//! The later parts of the wasm: what is in them, how far they are, and waiting for them.
//!
//! What the first answer does without are two files by themselves: what reads and writes
//! plans, and the folded questions. Each part is a table of functions that the splitter
//! (`wasm_split`) hands out once the part is there; what only these reach is in its file.
//! Built without the feature `split`, as in tests, everything is there from the start.

use super::{
    browser::{document, listen},
    files, keep,
    kit::{Press, anew},
    later::{self, Question},
    reader,
    state::State,
    turns::spawn,
    words,
};
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::{Plan, reader::Language},
    text::Notice,
};
use leptos::prelude::*;
use std::{sync::LazyLock, time::Duration};

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

/// The part did not come.
struct Missing;

async fn bring_keeping() -> Result<Keeping, Missing> {
    const ALL: Keeping = Keeping {
        open: keep::open,
        link: keep::link_of,
        save: files::save,
        open_file: files::open,
        reader_page: reader::page,
        language: reader::language,
    };
    // What can hurt is said in English too, beside any other language.
    if !words::bring(Language::English).await {
        return Err(Missing);
    }
    #[cfg(feature = "split")]
    {
        #[allow(unsafe_code, reason = "the splitter's own calls between the parts")]
        #[wasm_split_helpers::wasm_split(keeping, fallible)]
        fn keeping() -> Result<Keeping, wasm_split_helpers::SplitLoaderError> {
            Ok(ALL)
        }
        keeping().await.map_err(|_| Missing)
    }
    #[cfg(not(feature = "split"))]
    Ok(ALL)
}

async fn bring_later() -> Result<Later, Missing> {
    const ALL: Later = Later {
        inside: later::inside,
        on_paper: reader::on_paper,
    };
    #[cfg(feature = "split")]
    {
        #[allow(unsafe_code, reason = "the splitter's own calls between the parts")]
        #[wasm_split_helpers::wasm_split(later, fallible)]
        fn later() -> Result<Later, wasm_split_helpers::SplitLoaderError> {
            Ok(ALL)
        }
        later().await.map_err(|_| Missing)
    }
    #[cfg(not(feature = "split"))]
    Ok(ALL)
}

/// How far a part is.
#[derive(Clone, Copy)]
enum Far<T> {
    Waits,
    Coming,
    There(T),
    Missing,
}

impl<T> Far<T> {
    fn there(self) -> Option<T> {
        match self {
            Self::There(part) => Some(part),
            _ => None,
        }
    }
}

static KEEPING: LazyLock<ArcRwSignal<Far<Keeping>>> =
    LazyLock::new(|| ArcRwSignal::new(Far::Waits));
static LATER: LazyLock<ArcRwSignal<Far<Later>>> = LazyLock::new(|| ArcRwSignal::new(Far::Waits));

/// Sets how far a part is, and says so on the page's root, for scripts around it.
fn set<T: Send + Sync + 'static>(part: &ArcRwSignal<Far<T>>, sign: &str, far: Far<T>) {
    let value = match far {
        Far::Waits | Far::Coming => Some("coming"),
        Far::Missing => Some("missing"),
        Far::There(_) => None,
    };
    if let Some(root) = document().document_element() {
        let _ = match value {
            Some(value) => root.set_attribute(sign, value),
            None => root.remove_attribute(sign),
        };
    }
    part.set(far);
}

/// Brings a part, unless it is there or on its way.
async fn need<T: Copy + Send + Sync + 'static>(
    part: &ArcRwSignal<Far<T>>,
    sign: &str,
    bring: impl Future<Output = Result<T, Missing>>,
) -> bool {
    if !matches!(part.get_untracked(), Far::There(_)) {
        set(part, sign, Far::Coming);
        let far = bring.await.map_or(Far::Missing, Far::There);
        // It may have been asked for twice; it is there once.
        if !matches!(part.get_untracked(), Far::There(_)) {
            set(part, sign, far);
        }
    }
    matches!(part.get_untracked(), Far::There(_))
}

async fn need_keeping() -> bool {
    need(&KEEPING, "data-keeping", bring_keeping()).await
}

async fn need_later() -> bool {
    need(&LATER, "data-later", bring_later()).await
}

/// Asks for all of it, now or again. One after the other: on a slow line two at a time
/// would keep the one that is waited for.
pub fn bring() {
    spawn(async {
        if need_keeping().await {
            need_later().await;
        } else {
            set(&LATER, "data-later", Far::Missing);
        }
    });
}

/// Rest after the first answer before the parts are fetched.
const REST: Duration = Duration::from_millis(200);

/// Brings all of it when the first answer stands, and again when the signal is back.
pub fn bring_soon() {
    super::browser::later(REST, bring);
    listen("online", || {
        if matches!(LATER.get_untracked(), Far::Missing) {
            bring();
        }
    });
}

/// Marks both parts as still to come, and, where `first` says that a plan may be waiting
/// to be read, waits until what reads it is there or has been given up.
pub async fn set_up(first: bool) {
    set(&KEEPING, "data-keeping", Far::Waits);
    set(&LATER, "data-later", Far::Waits);
    if first {
        need_keeping().await;
    }
}

/// What reads and writes plans, if it is there by now.
pub fn keeping() -> Option<Keeping> {
    KEEPING.get_untracked().there()
}

/// Calls `work` once: now, or when what reads and writes plans is there.
pub fn once_kept(work: impl Fn(Keeping) + 'static) {
    match keeping() {
        Some(keeping) => work(keeping),
        // It comes once, so this is done once, and what it makes lives with the page.
        None => {
            Effect::new(move || {
                if let Some(keeping) = KEEPING.get().there() {
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

/// What `build` builds of the folded questions; until then a line on how far they are.
pub fn place(build: impl Fn(Later) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    bring();
    let inside = move |_| match LATER.get_untracked() {
        Far::There(later) => build(later),
        Far::Missing => view! {
            <p class="hint" role="status">
                {say(m::PartMissing)}
            </p>
            <Press class="quiet" words=say(m::PartAgain) press=bring />
        }
        .into_any(),
        Far::Waits | Far::Coming => {
            view! { <p class="hint" role="status">{say(m::PartComing)}</p> }.into_any()
        }
    };
    view! { <div>{anew(step, inside)}</div> }.into_any()
}

/// What `build` builds of the folded questions' part, where the page is whole without it:
/// nothing until it is there.
pub fn extra(build: impl Fn(Later) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    let inside = move |_| {
        let there = LATER.get_untracked().there();
        there.map_or_else(|| ().into_any(), &build)
    };
    view! { <div>{anew(step, inside)}</div> }.into_any()
}

/// What is shown anew when it changes: how far the folded questions are.
fn step() -> u8 {
    match LATER.get() {
        Far::Waits | Far::Coming => 0,
        Far::There(_) => 1,
        Far::Missing => 2,
    }
}
