//! Turns the message catalogues (src/text/catalogue, Fluent files in a folder a language)
//! into typed Rust: a missing message, an unknown one or a wrong argument does not build.

use std::{env, fs, path::Path, process};

mod generate;
mod parts;

fn main() {
    println!("cargo::rerun-if-changed=.tools/messages");
    println!("cargo::rerun-if-changed={}", parts::FOLDER);
    let catalogues = generate::LANGUAGES.map(|(tag, _)| (tag, parts::whole(tag)));
    match generate::generate(&catalogues) {
        Ok(code) => {
            let out = env::var("OUT_DIR").expect("cargo names a folder");
            fs::write(Path::new(&out).join("messages.rs"), code).expect("it can be written");
        }
        Err(faults) => {
            for fault in faults {
                println!("cargo::error={fault}");
            }
            process::exit(1);
        }
    }
}
