//! The page: a face on [`crate::answer`] and nothing more.
//!
//! It does no arithmetic on quantities and holds no sentence of physics: texts
//! go into a [`crate::plan::draft::Draft`], its plan into `answer`, and what is
//! shown comes from `wording` and `chart`.

mod app;
mod assumed;
mod banks;
mod browser;
mod carry;
mod chart;
mod choose;
mod claims;
mod curves;
mod day;
mod dom;
mod field;
mod files;
mod hand_on;
mod keep;
mod keeping;
mod later;
mod margin;
mod modes;
mod needed;
mod outcome;
mod part;
mod reactive;
mod reader;
mod ribbon;
mod slices;
mod state;
mod supply;
mod turns;
mod units;

use browser::document;
use reactive::Owner;

/// Starts the page in place of its static shell.
pub fn start() {
    // The page is written not to panic; if it does, the console says where.
    std::panic::set_hook(Box::new(|panic| {
        web_sys::console::error_1(&panic.to_string().into());
    }));
    turns::set_up();
    let owner = Owner::new();
    // A plan of one's own takes a later part to read, which is on its way already:
    // better a moment's wait than another plan's answer first. Where it does not come,
    // the example stands.
    owner.with(|| {
        if keep::has_something() {
            part::once_settled(show);
        } else {
            show();
        }
    });
    // The page lives as long as the tab.
    std::mem::forget(owner);
}

/// Puts the page where the shell was.
fn show() {
    // A link may bring a reader's page. A door is called by name, so no `map`.
    let read = match part::there() {
        Some(there) => reader::page(there),
        None => None,
    };
    let parts = read.unwrap_or_else(app::app);
    let Some(body) = document().body() else {
        return;
    };
    let shell = document().get_element_by_id("shell");
    for part in parts {
        let _ = body.append_child(&part.0);
    }
    // The shell goes only when the page stands: no empty moment between.
    if let Some(shell) = shell {
        shell.remove();
    }
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-ready", "");
    }
}
