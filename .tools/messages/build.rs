//! Turns the message catalogues (src/text/catalogue, a Fluent file a language) into typed
//! Rust: a missing message, an unknown one or a wrong argument does not build.

use std::{env, fs, path::Path, process};

mod generate;

fn main() {
    let catalogues = generate::LANGUAGES.map(|(tag, _)| {
        let file = format!("src/text/catalogue/{tag}.ftl");
        println!("cargo::rerun-if-changed={file}");
        let text = fs::read_to_string(&file);
        (tag, text.unwrap_or_else(|error| panic!("{file}: {error}")))
    });
    println!("cargo::rerun-if-changed=.tools/messages");
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
