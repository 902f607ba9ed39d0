//! Makes typed Rust of the message catalogues (src/text/catalogue, Fluent files in a
//! folder a language), and a text of each language's words: a missing message, an unknown
//! one or a wrong argument does not build. And tells the linker what the page's parts are
//! worked out from.

use std::{env, fs, path::Path, process};

#[path = ".tools/messages/generate.rs"]
mod generate;
#[path = ".tools/messages/parts.rs"]
mod parts;

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    // Which function and which constant names which: the splitter reads it.
    if env::var("CARGO_CFG_TARGET_ARCH").is_ok_and(|arch| arch == "wasm32") {
        println!("cargo::rustc-link-arg-bin=till-morning-page=--emit-relocs");
    }
    println!("cargo::rerun-if-changed=.tools/messages");
    println!("cargo::rerun-if-changed={}", parts::FOLDER);
    println!("cargo::rerun-if-changed=src/text/signs.rs");
    let catalogues = generate::LANGUAGES.map(|tag| (tag, parts::whole(tag)));
    match generate::generate(&catalogues) {
        Ok(generated) => {
            let out = env::var("OUT_DIR").expect("cargo names a folder");
            let write = |name: &str, text: &str| {
                fs::write(Path::new(&out).join(name), text).expect("it can be written");
            };
            write("messages.rs", &generated.code);
            for (tag, words) in generate::LANGUAGES.iter().zip(&generated.words) {
                write(&format!("words-{tag}.txt"), words);
            }
        }
        Err(faults) => {
            for fault in faults {
                println!("cargo::error={fault}");
            }
            process::exit(1);
        }
    }
}
