//! The page: a face on [`crate::answer`] and nothing more.
//!
//! It does no arithmetic on quantities and holds no sentence of physics: texts
//! go into a [`crate::plan::draft::Draft`], its plan into `answer`, and what is
//! shown comes from `wording` and `chart`.

mod app;
mod assumed;
mod banks;
mod chart;
mod curves;
mod field;
mod files;
mod keep;
mod keeping;
mod margin;
mod modes;
mod needed;
mod outcome;
mod ribbon;
mod state;
mod units;

pub use app::App;

use leptos::prelude::*;

/// Starts the page in place of its static shell.
pub fn start() {
    console_error_panic_hook::set_once();
    let shell = document().get_element_by_id("shell");
    mount_to_body(App);
    // The shell goes only when the page stands: no empty moment between.
    if let Some(shell) = shell {
        shell.remove();
    }
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-ready", "");
    }
}
