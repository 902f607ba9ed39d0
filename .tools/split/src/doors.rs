//! The functions that lead to the later parts, by name.

use std::collections::{BTreeMap, BTreeSet};

use crate::Fault;

/// The paths of the doors, each with the part it leads to: 1, 2 and on.
pub struct Doors(Vec<(String, usize)>);

/// Functions found to be doors: the name's place in the list, the function.
pub type Found = BTreeSet<(usize, u32)>;

impl Doors {
    /// From paths with commas between, those of one part and the next with a slash.
    pub fn named(paths: &str) -> Self {
        let of_part = |(paths, part): (&str, usize)| -> Vec<_> {
            let paths = paths.split(',');
            paths.map(|path| (path.to_owned(), part)).collect()
        };
        Self(paths.split('/').zip(1..).flat_map(of_part).collect())
    }

    /// How many parts there are besides the first.
    pub fn later_parts(&self) -> usize {
        self.0.iter().map(|door| door.1).max().unwrap_or(0)
    }

    /// Which door a function is, whatever the compiler has added to its name.
    pub fn place(&self, name: &str) -> Option<usize> {
        let plain = format!("{:#}", rustc_demangle::demangle(name));
        self.0.iter().position(|door| door.0 == plain)
    }

    /// The doors' functions and the parts they lead to, if each was found, and once.
    pub fn all(&self, found: &Found, program: &str) -> Result<BTreeMap<u32, usize>, Fault> {
        for (place, (door, _)) in self.0.iter().enumerate() {
            let times = found.iter().filter(|one| one.0 == place).count();
            if times != 1 {
                return Err(format!("{door}: found {times} times in the {program} wasm").into());
            }
        }
        Ok(found
            .iter()
            .map(|&(place, function)| (function, self.0[place].1))
            .collect())
    }
}
