//! The page's state: one draft, and everything else derived from it.

use super::reactive::*;
use crate::{
    answer::{Answer, answer},
    plan::{Path, Plan, draft::Draft},
    wording::Notice,
};

/// Steps back that are kept.
const MOST_STEPS: usize = 100;

/// Signals that every part of the page reads. Copied freely.
#[derive(Clone, Copy)]
pub struct State {
    pub draft: RwSignal<Draft>,
    pub plan: Memo<Plan>,
    pub answer: Memo<Answer>,
    /// A field's text is not in the plan: the answer is of the last good numbers.
    pub stale: Memo<bool>,
    pub notice: RwSignal<Option<Notice>>,
    /// A newer version of the page waits.
    pub update: RwSignal<bool>,
    /// Width of the column in pixels.
    pub width: RwSignal<f64>,
    past: RwSignal<Vec<Draft>>,
    /// The field that was changed last: typing on in it is one step.
    last: StoredValue<Option<Path>>,
}

/// Uses up a change.
fn take<T>(change: &mut Option<impl FnOnce(&mut T)>, on: &mut T) {
    if let Some(change) = change.take() {
        change(on);
    }
}

impl State {
    pub fn new(draft: Draft, notice: Option<Notice>) -> Self {
        let draft = RwSignal::new(draft);
        let plan = Memo::new(move |_| draft.with(|draft| draft.plan.clone()));
        Self {
            draft,
            plan,
            answer: Memo::new(move |_| plan.with(answer)),
            stale: Memo::new(move |_| draft.with(|draft| !draft.troubled().is_empty())),
            notice: RwSignal::new(notice),
            update: RwSignal::new(false),
            width: RwSignal::new(360.0),
            past: RwSignal::new(Vec::new()),
            last: StoredValue::new(None),
        }
    }

    /// What stands in a field now.
    pub fn type_text(self, path: Path, text: &str) {
        if self.last.get_value() != Some(path) {
            self.remember();
            self.last.set_value(Some(path));
        }
        self.draft.update(|draft| draft.type_text(path, text));
    }

    /// A field is left.
    pub fn settle(self, path: Path) {
        if self.draft.with_untracked(|draft| draft.is_typing(path)) {
            self.draft.update(|draft| draft.settle(path));
        }
        self.last.set_value(None);
    }

    /// A name is typed: no step of its own.
    pub fn rename(self, change: impl FnOnce(&mut Plan)) {
        let mut change = Some(change);
        self.update(&mut |draft| draft.edit(|plan| take(&mut change, plan)));
    }

    /// Any other change of the plan: one step back.
    pub fn edit(self, change: impl FnOnce(&mut Plan)) {
        let mut change = Some(change);
        self.step(&mut |draft| draft.edit(|plan| take(&mut change, plan)));
    }

    /// Any other change of the draft: one step back.
    pub fn change(self, change: impl FnOnce(&mut Draft)) {
        let mut change = Some(change);
        self.step(&mut |draft| take(&mut change, draft));
    }

    // One compiled body each for all the changes there are.

    #[inline(never)]
    fn step(self, change: &mut dyn FnMut(&mut Draft)) {
        self.remember();
        self.last.set_value(None);
        self.update(change);
    }

    #[inline(never)]
    fn update(self, change: &mut dyn FnMut(&mut Draft)) {
        self.draft.update(change);
    }

    /// Another plan altogether, with a word about where it came from.
    pub fn replace(self, draft: Draft, notice: Notice) {
        self.change(|present| *present = draft);
        self.notice.set(Some(notice));
    }

    pub fn can_undo(self) -> bool {
        self.past.with(|past| !past.is_empty())
    }

    pub fn undo(self) {
        if let Some(before) = self.past.try_update(Vec::pop).flatten() {
            self.draft.set(before);
            self.notice.set(None);
            self.last.set_value(None);
        }
    }

    /// A draft to come back to that was never shown: the reader's own, when the
    /// page was opened by a link.
    pub fn remember_other(self, draft: Draft) {
        self.past.update(|past| past.push(draft));
    }

    fn remember(self) {
        let present = self.draft.get_untracked();
        self.past.update(|past| {
            if past.last() != Some(&present) {
                past.push(present);
            }
            if past.len() > MOST_STEPS {
                past.remove(0);
            }
        });
    }
}
