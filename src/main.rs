//! Starts the page.

fn main() {
    till_morning::page::start();
}
