//! The bench under every shape of file and figure: a table or a typed line and
//! column, never a panic, never a wrong total.

#[path = "bench/broken.rs"]
mod broken;
#[path = "bench/dressed.rs"]
mod dressed;
#[path = "bench/figures.rs"]
mod figures;
#[path = "bench/random.rs"]
mod random;
#[path = "bench/truth.rs"]
mod truth;
#[path = "bench/verdicts.rs"]
mod verdicts;
