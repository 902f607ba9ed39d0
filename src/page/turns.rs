//! What is to be done next, a few milliseconds of it at a time.
//!
//! Every effect is a small task in one line, in the order in which they were woken.
//! They run in turns, called by a message to oneself: the browser may paint the key
//! first, and between two turns it hears the next one. What two keys touch meanwhile
//! is worked out once.

use any_spawner::{CustomExecutor, Executor, PinnedFuture, PinnedLocalFuture};
use async_task::Runnable;
use std::{
    cell::{Cell, RefCell},
    collections::VecDeque,
};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// How long a turn may have lasted when another task is begun.
const TURN_MS: f64 = 16.0;

thread_local! {
    static QUEUE: TaskQueue = TaskQueue::new();
}

/// Makes effects, and everything spawned, stand in the line.
pub fn set_up() {
    let _ = Executor::init_custom_executor(InLine);
}

/// Does `work` when everything before it in the line is done; it may wait for the browser
/// in between.
pub fn spawn(work: impl Future<Output = ()> + 'static) {
    InLine.spawn_local(Box::pin(work));
}

struct InLine;

impl CustomExecutor for InLine {
    fn spawn(&self, task: PinnedFuture<()>) {
        self.spawn_local(task);
    }

    fn spawn_local(&self, task: PinnedLocalFuture<()>) {
        let stand = |task| QUEUE.with(|line| line.stand(task));
        let (runnable, task) = async_task::spawn_local(task, stand);
        task.detach();
        runnable.schedule();
    }

    fn poll_local(&self) {}
}

struct TaskQueue {
    tasks: RefCell<VecDeque<Runnable>>,
    /// Whether a turn is going on, or called for.
    is_moving: Cell<bool>,
    /// Calls for a turn: no timer's least delay, and frames of every kind allow it.
    channel: web_sys::MessageChannel,
}

impl TaskQueue {
    fn new() -> Self {
        let turn: Box<dyn FnMut()> = Box::new(|| QUEUE.with(Self::turn));
        let turn = Closure::wrap(turn);
        let channel = web_sys::MessageChannel::new().expect("a channel to oneself");
        // It is heard for as long as the tab lives.
        let heard = turn.into_js_value();
        channel.port1().set_onmessage(Some(heard.unchecked_ref()));
        Self {
            tasks: RefCell::default(),
            is_moving: Cell::new(false),
            channel,
        }
    }

    fn stand(&self, task: Runnable) {
        self.tasks.borrow_mut().push_back(task);
        if !self.is_moving.replace(true) {
            self.call();
        }
    }

    fn call(&self) {
        let _ = self.channel.port2().post_message(&JsValue::NULL);
    }

    fn turn(&self) {
        let until = js_sys::Date::now() + TURN_MS;
        loop {
            let Some(task) = self.tasks.borrow_mut().pop_front() else {
                return self.is_moving.set(false);
            };
            task.run();
            if js_sys::Date::now() >= until {
                break;
            }
        }
        self.call();
    }
}
