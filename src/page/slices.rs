//! Long work in slices, between which the page breathes.
//!
//! No worker: the page also runs as one file and in frames that forbid workers.

use crate::page::{browser::later, reactive::*, turns::soon};
use std::{sync::Arc, time::Duration};

/// How long the page may be held up by a slice.
const SLICE_MS: f64 = 12.0;
/// Rest after a key, so that fast typing does not start what it throws away.
const REST: Duration = Duration::from_millis(40);

/// One line of work: what is begun anew stops what was there before.
#[derive(Clone, Copy)]
pub struct Line {
    turn: StoredValue<usize>,
}

/// A place in that line.
#[derive(Clone, Copy)]
pub struct Turn {
    line: Line,
    turn: usize,
}

impl Line {
    pub fn new() -> Self {
        Self {
            turn: StoredValue::new(0),
        }
    }

    /// Stops what is going on, and begins after a short rest.
    pub fn begin(self, work: impl FnOnce(Turn) + 'static) {
        self.begin_after(REST, work);
    }

    /// The same after another rest: a longer one for what cannot be sliced.
    pub fn begin_after(self, rest: Duration, work: impl FnOnce(Turn) + 'static) {
        let turn = self.turn.get_value() + 1;
        self.turn.set_value(turn);
        let turn = Turn { line: self, turn };
        later(rest, move || {
            if turn.is_present() {
                work(turn);
            }
        });
    }
}

impl Turn {
    fn is_present(self) -> bool {
        self.line.turn.get_value() == self.turn
    }

    /// Calls `step` until it says that all is done, and then `done`. `at_most` is how
    /// many steps a slice may have whatever the clock says: some clocks are coarse.
    pub fn run(
        self,
        at_most: u32,
        step: impl FnMut() -> bool + 'static,
        done: impl FnOnce() + 'static,
    ) {
        self.slice(at_most, Box::new(step), Box::new(done));
    }

    #[inline(never)]
    fn slice(self, at_most: u32, mut step: Box<dyn FnMut() -> bool>, done: Box<dyn FnOnce()>) {
        soon(move || {
            if !self.is_present() {
                return;
            }
            let since = js_sys::Date::now();
            let mut left = at_most.max(1);
            loop {
                if step() {
                    return done();
                }
                left -= 1;
                if left == 0 || js_sys::Date::now() - since >= SLICE_MS {
                    break;
                }
            }
            self.slice(at_most, step, done);
        });
    }
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

    pub fn is_coming(self) -> bool {
        self.is_coming.get()
    }

    /// Whether what is shown is of the numbers before.
    pub fn is_behind(self) -> bool {
        self.is_coming() && self.value.with(Option::is_some)
    }
}
