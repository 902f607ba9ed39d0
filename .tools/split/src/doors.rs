//! The functions that lead to the later part, by name.

use std::collections::BTreeSet;

use crate::Fault;

/// The paths of the doors.
pub struct Doors(Vec<String>);

/// Functions found to be doors: the name's place in the list, the function.
pub type Found = BTreeSet<(usize, u32)>;

impl Doors {
    /// From paths with commas between.
    pub fn named(paths: &str) -> Self {
        Self(paths.split(',').map(str::to_owned).collect())
    }

    /// Which door a function is, whatever the compiler has added to its name.
    pub fn place(&self, name: &str) -> Option<usize> {
        let plain = format!("{:#}", rustc_demangle::demangle(name));
        self.0.iter().position(|door| *door == plain)
    }

    /// The doors' functions, if each was found, and once.
    pub fn all(&self, found: &Found, program: &str) -> Result<BTreeSet<u32>, Fault> {
        for (place, door) in self.0.iter().enumerate() {
            let times = found.iter().filter(|one| one.0 == place).count();
            if times != 1 {
                return Err(format!("{door}: found {times} times in the {program} wasm").into());
            }
        }
        Ok(found.iter().map(|one| one.1).collect())
    }
}
