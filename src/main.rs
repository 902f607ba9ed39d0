//! Starts the page.

/// The words of each language, in sections of their own: no part of the running program.
/// The build takes them out and makes files of them (`.tools/finish/parts.mjs`).
#[cfg(feature = "split")]
mod words {
    macro_rules! section {
        ($name:ident, $section:literal, $file:literal) => {
            #[used]
            #[unsafe(link_section = $section)]
            static $name: [u8; include_bytes!(concat!(env!("OUT_DIR"), $file)).len()] =
                *include_bytes!(concat!(env!("OUT_DIR"), $file));
        };
    }

    section!(ENGLISH, "words-en", "/words-en.txt");
    section!(GERMAN, "words-de", "/words-de.txt");
    section!(SPANISH, "words-es", "/words-es.txt");
}

fn main() {
    till_morning::page::start();
}
