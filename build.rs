//! Tells the linker what the page's cut into two parts is worked out from.

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    // Which function and which constant names which: .tools/split reads it.
    if std::env::var("CARGO_CFG_TARGET_ARCH").is_ok_and(|arch| arch == "wasm32") {
        println!("cargo::rustc-link-arg-bin=till-morning-page=--emit-relocs");
    }
}
