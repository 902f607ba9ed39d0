//! Cuts the page's wasm in parts at its doors.
//!
//! ```text
//! till-morning-split LINKED FINISHED DOOR[,DOOR][/DOOR[,DOOR]] FOLDER
//! ```
//!
//! LINKED is the program as the linker leaves it, with its relocations; FINISHED
//! the same after wasm-bindgen and wasm-opt, with its names; DOOR the path of a
//! function that leads to what may come later: before the slash to the second part,
//! after it to the third. Into FOLDER go
//!
//! - `0.wasm`, which starts as FINISHED would;
//! - `1.wasm`, `2.wasm`: what only doors to it, or to parts after it, reach. Each takes
//!   memory, table and functions from the parts before it (the exports of their
//!   instances together, as module `f`) and hangs its own into the table. Before that
//!   no door to it must be passed: it traps there;
//! - `whole.wasm`: FINISHED without names and what else is no program, for a page that
//!   takes all at once;
//! - `functions.txt`: of each function how many bytes it has, in which part, largest
//!   first: where to look when a part grows.

mod cut;
mod doors;
mod linked;
mod module;
mod origin;
mod write;

use doors::Doors;
use std::{fs, path::Path, process::ExitCode};
use wasmparser::{ConstExpr, Operator, Validator};

/// Why it cannot be done.
pub type Fault = Box<dyn std::error::Error>;

fn main() -> ExitCode {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let [linked, finished, doors, folder] = given.as_slice() else {
        eprintln!("usage: till-morning-split LINKED FINISHED DOOR[,DOOR][/DOOR] FOLDER");
        return ExitCode::from(2);
    };
    match split(linked, finished, &Doors::named(doors), Path::new(folder)) {
        Ok(line) => {
            println!("{line}");
            ExitCode::SUCCESS
        }
        Err(fault) => {
            eprintln!("till-morning-split: {fault}");
            ExitCode::FAILURE
        }
    }
}

/// Writes all; gives a line that says how they came out.
fn split(linked: &str, finished: &str, doors: &Doors, folder: &Path) -> Result<String, Fault> {
    let behind = origin::behind(&fs::read(linked)?, doors)?;
    let finished = fs::read(finished)?;
    let whole = module::Whole::read(&finished, doors)?;
    let cut = cut::Cut::of(&whole, &behind)?;
    let mut line = String::from("cut in parts:");
    for (at, piece) in cut.parts.iter().enumerate() {
        let wasm = match at {
            0 => write::first(&whole, &cut)?,
            _ => write::later(&whole, &cut, piece)?,
        };
        Validator::new().validate_all(&wasm)?;
        line += &format!(
            " {} bytes, {} functions;",
            wasm.len(),
            piece.functions.len()
        );
        fs::write(folder.join(format!("{at}.wasm")), wasm)?;
    }
    fs::write(folder.join("whole.wasm"), write::bare(&finished)?)?;
    fs::write(folder.join("functions.txt"), list(&whole, &cut))?;
    Ok(line)
}

/// A line for each function: bytes, part, name.
fn list(whole: &module::Whole, cut: &cut::Cut) -> String {
    let mut lines: Vec<_> = (whole.functions_imported..)
        .zip(&whole.bodies)
        .map(|(function, body)| {
            let mut parts = cut.parts.iter();
            let part = parts.position(|piece| piece.functions.contains(&function));
            let name = whole.names.get(&function).copied().unwrap_or("?");
            let plain = format!("{:#}", rustc_demangle::demangle(name));
            (body.as_bytes().len(), part.unwrap_or_default(), plain)
        })
        .collect();
    lines.sort_by(|a, b| b.cmp(a));
    lines
        .iter()
        .map(|(bytes, part, name)| format!("{bytes:7} {part} {name}\n"))
        .collect()
}

/// The number that an offset is.
pub fn constant(offset: &ConstExpr) -> Result<u32, Fault> {
    let mut operators = offset.get_operators_reader();
    match (operators.read()?, operators.read()?) {
        (Operator::I32Const { value }, Operator::End) => Ok(value.cast_unsigned()),
        other => Err(format!("an offset that is no number: {other:?}").into()),
    }
}
