//! The contract for scripts of others: nothing here but the door.
//!
//! `make module` packs this program's wasm with a small loader and its types.
//! Texts go in and come out; see [`till_morning::share::contract`].

// Called, never run: a `main` would bring along what a started program needs.
#![no_main]

use till_morning::share::contract;
use wasm_bindgen::prelude::wasm_bindgen;

#[global_allocator]
static MEMORY: rlsf::SmallGlobalTlsf = rlsf::SmallGlobalTlsf::new();

/// See [`contract::answer`]; in the small one [`contract::night`].
#[wasm_bindgen]
pub fn answer(plan: &str) -> String {
    if cfg!(feature = "module-night") {
        contract::night(plan)
    } else {
        contract::answer(plan)
    }
}

/// See [`contract::plan_of_link`].
#[wasm_bindgen]
pub fn plan_from_link(link: &str) -> String {
    contract::plan_of_link(link)
}

/// See [`contract::link_of_plan`].
#[wasm_bindgen]
pub fn link_from_plan(plan: &str) -> String {
    contract::link_of_plan(plan)
}
