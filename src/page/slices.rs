//! Long work in slices, between which the page breathes.
//!
//! Work is an async function that takes its steps through a [`Turn`], which rests
//! between two slices and ends the work when something newer was begun. No worker:
//! the page also runs as one file and in frames that forbid workers.

use crate::page::{browser::later, turns::spawn};
use leptos::prelude::*;
use std::{future::poll_fn, sync::Arc, task::Poll, time::Duration};

/// How long the page may be held up by a slice.
const SLICE_MS: f64 = 12.0;
/// Rest after a key, so that fast typing does not start what it throws away.
const REST: Duration = Duration::from_millis(40);
/// For what no key begins.
pub const NO_REST: Duration = Duration::ZERO;

/// A lane of work: what is begun anew ends what was going on in it.
#[derive(Clone, Copy)]
pub struct Lane {
    turn: StoredValue<usize>,
}

/// The work that is going on in a lane, for as long as it is.
#[derive(Clone, Copy)]
pub struct Turn {
    lane: Lane,
    turn: usize,
}

/// Something newer was begun.
#[derive(Clone, Copy, Debug)]
pub struct Superseded;

impl Lane {
    pub fn new() -> Self {
        Self {
            turn: StoredValue::new(0),
        }
    }

    /// Ends what is going on, and begins after a short rest.
    pub fn begin<W: Future + 'static>(self, work: impl FnOnce(Turn) -> W + 'static) {
        self.begin_after(REST, work);
    }

    /// The same after another rest: a longer one for what cannot be sliced.
    pub fn begin_after<W: Future + 'static>(
        self,
        rest: Duration,
        work: impl FnOnce(Turn) -> W + 'static,
    ) {
        let turn = self.turn.get_value() + 1;
        self.turn.set_value(turn);
        let turn = Turn { lane: self, turn };
        later(rest, move || {
            if turn.is_present() {
                spawn(async move {
                    work(turn).await;
                });
            }
        });
    }
}

impl Turn {
    fn is_present(self) -> bool {
        // A lane that is gone with its part of the page has no work going on.
        self.lane.turn.try_get_value() == Some(self.turn)
    }

    /// Lets the page breathe: for work that comes in pieces of its own.
    ///
    /// # Errors
    /// When something newer was begun in between.
    pub async fn rest(self) -> Result<(), Superseded> {
        breathe().await;
        if self.is_present() {
            Ok(())
        } else {
            Err(Superseded)
        }
    }

    /// Calls `step` until it says that all is done. `at_most` is how many steps a slice
    /// may have whatever the clock says: some clocks are coarse.
    ///
    /// # Errors
    /// When something newer was begun in between; `step` is not called after that.
    pub async fn run(self, at_most: u32, mut step: impl FnMut() -> bool) -> Result<(), Superseded> {
        self.slices(at_most, &mut step).await
    }

    async fn slices(self, at_most: u32, step: &mut dyn FnMut() -> bool) -> Result<(), Superseded> {
        loop {
            self.rest().await?;
            let since = js_sys::Date::now();
            for _ in 0..at_most.max(1) {
                if step() {
                    return Ok(());
                }
                if js_sys::Date::now() - since >= SLICE_MS {
                    break;
                }
            }
        }
    }
}

/// Lets everything else that waits have its turn first.
async fn breathe() {
    let mut has_rested = false;
    poll_fn(move |context| {
        if has_rested {
            return Poll::Ready(());
        }
        has_rested = true;
        context.waker().wake_by_ref();
        Poll::Pending
    })
    .await;
}

/// What such work came to: that of the numbers before stays until it is there.
pub struct Late<T: Send + Sync + 'static> {
    value: RwSignal<Option<Arc<T>>>,
    is_coming: RwSignal<bool>,
}

impl<T: Send + Sync + 'static> Clone for Late<T> {
    fn clone(&self) -> Self {
        *self
    }
}
impl<T: Send + Sync + 'static> Copy for Late<T> {}

impl<T: Send + Sync + 'static> Late<T> {
    pub fn new() -> Self {
        Self {
            value: RwSignal::new(None),
            is_coming: RwSignal::new(true),
        }
    }

    pub fn expect(self) {
        if !self.is_coming.get_untracked() {
            self.is_coming.set(true);
        }
    }

    pub fn put(self, value: Option<T>) {
        self.is_coming.set(false);
        self.value.set(value.map(Arc::new));
    }

    pub fn get(self) -> Option<Arc<T>> {
        self.value.get()
    }

    /// The same without following it: for a press.
    pub fn get_now(self) -> Option<Arc<T>> {
        self.value.get_untracked()
    }

    pub fn is_coming(self) -> bool {
        self.is_coming.get()
    }

    /// Whether what is shown is of the numbers before.
    pub fn is_behind(self) -> bool {
        self.is_coming() && self.value.with(Option::is_some)
    }
}
