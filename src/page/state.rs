//! The page's state: one draft, and everything else derived from it.

use crate::{
    answer::{self, Answer, Curves},
    plan::{Path, Plan, draft::Draft, rows::RowIds},
    text::Notice,
};
use leptos::prelude::*;

/// Steps back that are kept.
const MOST_STEPS: usize = 100;

/// Signals that every part of the page reads. Copied freely.
#[derive(Clone, Copy)]
pub struct State {
    pub draft: RwSignal<Draft>,
    pub plan: Memo<Plan>,
    /// How often the plan has changed.
    turn: Memo<usize>,
    /// The first two questions; folded ones make their own memos when opened.
    pub answer: Memo<Answer>,
    /// The curves of the answer are looked at; unseen they are not worked out.
    pub curves: RwSignal<bool>,
    /// A field's text is not in the plan: the answer is of the last good numbers.
    pub stale: Memo<bool>,
    pub notice: RwSignal<Option<Notice>>,
    /// Another tab of this browser has another plan, and nobody has chosen yet.
    pub other_tab: RwSignal<bool>,
    /// What was chosen then.
    pub shall: RwSignal<Option<Shall>>,
    /// A newer version of the page waits.
    pub update: RwSignal<bool>,
    /// Width of the column in pixels.
    pub width: RwSignal<f64>,
    past: RwSignal<Vec<Draft>>,
    /// One's own draft and its steps back, while the example is looked at.
    own: RwSignal<Option<(Draft, Vec<Draft>)>>,
    /// The field that was changed last: typing on in it is one step.
    last: StoredValue<Option<Path>>,
    row_ids: StoredValue<RowIds>,
}

/// Which plan it shall be where two tabs have two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shall {
    This,
    Other,
}

/// Uses up a change.
fn take<T>(change: &mut Option<impl FnOnce(&mut T)>, on: &mut T) {
    if let Some(change) = change.take() {
        change(on);
    }
}

impl State {
    /// The state of the page that a component stands in.
    pub fn here() -> Self {
        leptos::context::use_context().expect("a state is provided at the page's root")
    }

    pub fn new(draft: Draft) -> Self {
        let (draft, curves) = (RwSignal::new(draft), RwSignal::new(false));
        let plan = Memo::new(move |_| draft.with(|draft| draft.plan.clone()));
        // A key in the hot day's numbers leaves the night's answer as it is.
        let of_the_night = Memo::new(move |_| plan.with(answer::of_the_night));
        Self {
            draft,
            plan,
            turn: Memo::new(move |last| {
                plan.with(|_| ());
                last.map_or(0, |turn: &usize| turn + 1)
            }),
            // Another plan is another answer: comparing two whole ones would cost
            // more than it saves.
            answer: Memo::new_with_compare(
                move |_| {
                    let curves = if curves.get() {
                        Curves::Drawn
                    } else {
                        Curves::Left
                    };
                    of_the_night.with(|plan| answer::night_with(plan, curves))
                },
                |_, _| true,
            ),
            curves,
            stale: Memo::new(move |_| draft.with(|draft| !draft.troubled().is_empty())),
            notice: RwSignal::new(None),
            other_tab: RwSignal::new(false),
            shall: RwSignal::new(None),
            update: RwSignal::new(false),
            width: RwSignal::new(360.0),
            past: RwSignal::new(Vec::new()),
            own: RwSignal::new(None),
            last: StoredValue::new(None),
            row_ids: StoredValue::new(RowIds::default()),
        }
    }

    // Reading, with one compiled body for each signal however many read it.

    pub fn with_plan<R>(self, of: impl FnOnce(&Plan) -> R) -> R {
        let (mut of, mut out) = (Some(of), None);
        self.read_plan(&mut |plan| out = of.take().map(|of| of(plan)));
        out.expect("a signal calls once")
    }

    #[inline(never)]
    fn read_plan(self, of: &mut dyn FnMut(&Plan)) {
        self.plan.with(|plan| of(plan));
    }

    /// The plan as it is, without following it.
    pub fn plan_now<R>(self, of: impl FnOnce(&Plan) -> R) -> R {
        self.plan.with_untracked(of)
    }

    /// A text that differs whenever the plan does: for what is built of all of it.
    pub fn turn(self) -> String {
        self.turn.get().to_string()
    }

    pub fn with_answer<R>(self, of: impl FnOnce(&Answer) -> R) -> R {
        let (mut of, mut out) = (Some(of), None);
        self.read_answer(&mut |answer| out = of.take().map(|of| of(answer)));
        out.expect("a signal calls once")
    }

    #[inline(never)]
    fn read_answer(self, of: &mut dyn FnMut(&Answer)) {
        self.answer.with(|answer| of(answer));
    }

    pub fn with_draft<R>(self, of: impl FnOnce(&Draft) -> R) -> R {
        let (mut of, mut out) = (Some(of), None);
        self.read_draft(&mut |draft| out = of.take().map(|of| of(draft)));
        out.expect("a signal calls once")
    }

    #[inline(never)]
    fn read_draft(self, of: &mut dyn FnMut(&Draft)) {
        self.draft.with(|draft| of(draft));
    }

    /// Whether the answer is of the last good numbers only.
    #[inline(never)]
    pub fn is_stale(self) -> bool {
        self.stale.get()
    }

    /// Whether the example is looked at: nothing of it is kept.
    pub fn is_example(self) -> bool {
        self.own.with(Option::is_some)
    }

    /// Shows the example; one's own plan waits beside it.
    pub fn show_example(self) {
        if self.own.with_untracked(Option::is_some) {
            return;
        }
        let units = self.plan_now(|plan| plan.show);
        let own = (self.draft.get_untracked(), self.past.get_untracked());
        self.own.set(Some(own));
        self.past.set(Vec::new());
        self.last.set_value(None);
        self.notice.set(None);
        self.draft.set(Draft::of(Plan::demo().shown_as(units)));
    }

    /// Back to one's own plan, as it was left.
    pub fn leave_example(self) {
        if let Some((draft, past)) = self.own.get_untracked() {
            self.past.set(past);
            self.last.set_value(None);
            self.draft.set(draft);
            self.own.set(None);
        }
    }

    /// Makes the example one's own plan: one step back from what was there.
    pub fn take_example(self) {
        if let Some((draft, mut past)) = self.own.get_untracked() {
            past.push(draft);
            self.past.set(past);
            self.own.set(None);
            // Kept from now on, and the address follows.
            self.draft.update(|_| ());
        }
    }

    /// The steps back, to keep them through a reload.
    pub fn steps(self) -> Vec<Draft> {
        self.past.get()
    }

    pub fn take_steps(self, steps: Vec<Draft>) {
        self.past
            .update(|past| past.splice(0..0, steps).for_each(drop));
    }

    /// What stands in a field now.
    #[inline(never)]
    pub fn type_text(self, path: Path, text: &str) {
        if self.last.get_value() != Some(path) {
            self.remember();
            self.last.set_value(Some(path));
        }
        self.draft.update(|draft| {
            draft.type_text(path, text);
            // The headline is about what was changed last.
            if let Path::Mode(unit, mode, _) = path {
                let night = &mut draft.plan.night;
                (night.asked_unit, night.asked_mode) = (unit, mode);
            }
        });
    }

    /// A field is left.
    #[inline(never)]
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

    /// Takes a row out of a list of the plan.
    #[inline(never)]
    pub fn remove_row(self, list: Path, row: usize) {
        self.row_ids.update_value(|ids| ids.remove(list, row));
        self.change(|draft| draft.remove(list, row));
    }

    /// The numbers that the rows of a list go by.
    pub fn row_ids(self, list: Path, count: usize) -> Vec<u32> {
        let ids = self.row_ids.try_update_value(|ids| ids.of(list, count));
        ids.unwrap_or_default()
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
    #[inline(never)]
    pub fn replace(self, draft: Draft, notice: Notice) {
        // What comes is one's own: the example goes, and is no step back.
        self.leave_example();
        self.change(|present| *present = draft);
        self.notice.set(Some(notice));
    }

    pub fn can_undo(self) -> bool {
        self.past.with(|past| !past.is_empty())
    }

    #[inline(never)]
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

    #[inline(never)]
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
