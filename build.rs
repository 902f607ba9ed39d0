//! Tells the linker what the page's parts are worked out from.

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    // Which function and which constant names which: the splitter reads it.
    if std::env::var("CARGO_CFG_TARGET_ARCH").is_ok_and(|arch| arch == "wasm32") {
        println!("cargo::rustc-link-arg-bin=till-morning-page=--emit-relocs");
    }
}
