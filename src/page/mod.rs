//! The page: a face on [`crate::answer`] and nothing more.
//!
//! It does no arithmetic on quantities and holds no sentence of physics: texts
//! go into a [`crate::plan::draft::Draft`], its plan into `answer`, and what is
//! shown comes from `text` and `chart`.

mod app;
mod assumed;
mod banks;
mod below;
mod browser;
mod chart;
mod choose;
mod claims;
mod curves;
mod day;
mod diagram;
mod field;
mod files;
mod hand_on;
mod keep;
mod keeping;
mod kit;
mod later;
mod locale;
mod margin;
mod modes;
mod needed;
mod outcome;
mod part;
mod questions;
mod reader;
mod ribbon;
mod rows;
mod slices;
mod start;
mod state;
mod supply;
mod taps;
mod turns;
mod units;
mod wiring;
mod words;

use app::App;
use browser::document;
use leptos::{mount::mount_to_body, prelude::*};

/// Starts the page in place of its static shell.
pub fn start() {
    // The page is written not to panic; if it does, the console says where.
    std::panic::set_hook(Box::new(|panic| {
        web_sys::console::error_1(&panic.to_string().into());
    }));
    turns::set_up();
    turns::spawn(async {
        // A plan of one's own takes a later part to read, which is on its way already:
        // better a moment's wait than another plan's answer first. Where it does not
        // come, an empty plan stands.
        part::set_up(keep::has_something()).await;
        let asked = part::keeping().and_then(|keeping| (keeping.language)());
        if words::bring(asked.unwrap_or_else(|| locale::of_page().language)).await {
            show();
        } else if let Some(root) = document().document_element() {
            // The shell says so (offline/outcome.js).
            let _ = root.set_attribute("data-failed", "");
        }
    });
}

/// Puts the page where the shell was.
fn show() {
    let shell = document().get_element_by_id("shell");
    mount_to_body(|| {
        // A link may bring a reader's page.
        let read = part::keeping().and_then(|keeping| (keeping.reader_page)());
        read.unwrap_or_else(|| view! { <App /> }.into_any())
    });
    part::bring_soon();
    // The shell goes only when the page stands: no empty moment between.
    if let Some(shell) = shell {
        shell.remove();
    }
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-ready", "");
    }
}
