//! What the linker knew: which function and which constant names which others.
//!
//! The linked program keeps its relocations (`--emit-relocs`), and they name every
//! reference there is: a call, a function's place in the table, an address of a
//! constant. So what cannot be reached without a door is known, not guessed;
//! in the finished wasm a place in the table is a number like any other.
//! Format: "Linking" of WebAssembly's tool conventions.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use wasmparser::RelocationType as Reloc;

use crate::{
    Fault,
    doors::Doors,
    linked::{Linked, Symbol},
};

/// What a part and those before it do without.
pub struct Behind {
    /// Places in the function table.
    pub slots: BTreeSet<u32>,
    /// Addresses of constants and first values, in order and apart.
    pub data: Vec<Range<u32>>,
}

/// A thing that refers and is referred to.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Node {
    Function(u32),
    /// By its place in the symbol table.
    Data(u32),
}

/// Reads the linked program and tells, for the first part and each but the last,
/// what only doors to parts after it reach.
pub fn behind(wasm: &[u8], doors: &Doors) -> Result<Vec<Behind>, Fault> {
    let linked = Linked::read(wasm, doors)?;
    if linked.relocs.is_empty() || linked.symbols.is_empty() {
        return Err("the linked wasm has no relocations: is build.rs in force?".into());
    }
    let graph = References::of(&linked)?;
    Ok((0..doors.later_parts())
        .map(|part| behind_part(&linked, &graph.reached(&linked, part)))
        .collect())
}

fn behind_part(linked: &Linked, reached: &BTreeSet<Node>) -> Behind {
    let slots = linked
        .slots
        .iter()
        .filter(|&(_, &f)| !reached.contains(&Node::Function(f)));
    let constants = (0u32..)
        .zip(&linked.symbols)
        .filter_map(|(at, symbol)| match symbol {
            Symbol::Data(range) => Some((range.clone(), reached.contains(&Node::Data(at)))),
            _ => None,
        });
    Behind {
        slots: slots.map(|(&slot, _)| slot).collect(),
        data: only_behind(constants),
    }
}

/// Who names whom.
#[derive(Default)]
struct References {
    from: BTreeMap<Node, Vec<Node>>,
    /// Named by what belongs to no symbol: always there.
    always: Vec<Node>,
}

impl References {
    fn of(linked: &Linked) -> Result<Self, Fault> {
        let owners = Owners::of(linked);
        let mut references = Self::default();
        for relocs in &linked.relocs {
            let section = relocs.section_index();
            let (code, data) = (Some(section) == linked.code, Some(section) == linked.data);
            if !code && !data {
                continue; // of names and lines
            }
            let start = *linked
                .sections
                .get(section as usize)
                .ok_or("no such section")?;
            for entry in relocs.entries() {
                let entry = entry?;
                let Some(targets) = targets(linked, &owners, &entry)? else {
                    continue;
                };
                let place = start + u64::from(entry.offset);
                let from = if code {
                    vec![Node::Function(
                        linked
                            .function_at(place)
                            .ok_or("a reference outside code")?,
                    )]
                } else {
                    owners.at(linked.address_at(place).ok_or("a reference outside data")?)
                };
                if from.is_empty() {
                    references.always.extend(&targets);
                }
                for from in from {
                    references.from.entry(from).or_default().extend(&targets);
                }
            }
        }
        Ok(references)
    }

    /// All that is reached from outside without passing a door to a part after `part`.
    fn reached(&self, linked: &Linked, part: usize) -> BTreeSet<Node> {
        let outside = linked
            .exported
            .iter()
            .map(|&function| Node::Function(function));
        let mut open: Vec<Node> = outside.chain(self.always.iter().copied()).collect();
        let mut reached = BTreeSet::new();
        while let Some(node) = open.pop() {
            let leads_on = match node {
                Node::Function(f) => linked.doors.get(&f).is_some_and(|&to| to > part),
                Node::Data(_) => false,
            };
            if !leads_on && reached.insert(node) {
                open.extend(self.from.get(&node).into_iter().flatten());
            }
        }
        reached
    }
}

/// What one relocation names; nothing where it names no function and no constant.
fn targets(
    linked: &Linked,
    owners: &Owners,
    entry: &wasmparser::RelocationEntry,
) -> Result<Option<Vec<Node>>, Fault> {
    let symbol = |index: u32| linked.symbols.get(index as usize).ok_or("no such symbol");
    Ok(match entry.ty {
        Reloc::FunctionIndexLeb => match symbol(entry.index)? {
            Symbol::Function(function) => Some(vec![Node::Function(*function)]),
            _ => return Err("a call of what is no function".into()),
        },
        Reloc::TableIndexSleb | Reloc::TableIndexI32 => match symbol(entry.index)? {
            Symbol::Function(function) if linked.doors.contains_key(function) => {
                return Err(
                    "a door is in the function table: it must be called by name only".into(),
                );
            }
            Symbol::Function(function) => Some(vec![Node::Function(*function)]),
            _ => return Err("a place in the table of what is no function".into()),
        },
        Reloc::MemoryAddrLeb | Reloc::MemoryAddrSleb | Reloc::MemoryAddrI32 => {
            let Symbol::Data(range) = symbol(entry.index)? else {
                return Err("an address of what is no constant".into());
            };
            // Beside the symbol itself, whatever the sum points into.
            let mut nodes = vec![Node::Data(entry.index)];
            nodes.extend(owners.at((i64::from(range.start) + entry.addend) as u32));
            Some(nodes)
        }
        Reloc::TypeIndexLeb | Reloc::GlobalIndexLeb | Reloc::TableNumberLeb => None,
        other => return Err(format!("a relocation that is not expected: {other:?}").into()),
    })
}

/// Which data symbols an address belongs to: several may share one.
struct Owners {
    /// Start, end, symbol; by start.
    ranges: Vec<(u32, u32, u32)>,
    longest: u32,
}

impl Owners {
    fn of(linked: &Linked) -> Self {
        let mut ranges: Vec<_> = (0u32..)
            .zip(&linked.symbols)
            .filter_map(|(at, symbol)| match symbol {
                Symbol::Data(range) if !range.is_empty() => Some((range.start, range.end, at)),
                _ => None,
            })
            .collect();
        ranges.sort_unstable();
        let longest = ranges
            .iter()
            .map(|(start, end, _)| end - start)
            .max()
            .unwrap_or(0);
        Self { ranges, longest }
    }

    fn at(&self, address: u32) -> Vec<Node> {
        let from = self
            .ranges
            .partition_point(|r| r.0 < address.saturating_sub(self.longest));
        let near = self.ranges[from..].iter().take_while(|r| r.0 <= address);
        near.filter(|r| address < r.1)
            .map(|r| Node::Data(r.2))
            .collect()
    }
}

/// Addresses that belong to a constant behind the door and to none that is needed
/// before; each constant with whether it is needed.
fn only_behind(constants: impl Iterator<Item = (Range<u32>, bool)>) -> Vec<Range<u32>> {
    let mut marks: Vec<(u32, i32, i32)> = Vec::new();
    for (range, is_needed) in constants {
        let (needed, behind) = (i32::from(is_needed), i32::from(!is_needed));
        marks.push((range.start, needed, behind));
        marks.push((range.end, -needed, -behind));
    }
    marks.sort_unstable();
    let (mut needed, mut behind, mut since) = (0, 0, 0);
    let mut ranges: Vec<Range<u32>> = Vec::new();
    for (address, more_needed, more_behind) in marks {
        if needed == 0 && behind > 0 && since < address {
            match ranges.last_mut() {
                Some(last) if last.end == since => last.end = address,
                _ => ranges.push(since..address),
            }
        }
        (needed, behind, since) = (needed + more_needed, behind + more_behind, address);
    }
    ranges
}

#[cfg(test)]
mod tests {
    use super::only_behind;

    #[test]
    fn what_two_constants_share_goes_only_if_neither_is_needed() {
        let of = |constants: &[_]| only_behind(constants.iter().cloned());
        assert_eq!(
            of(&[(10..20, false), (20..30, false), (40..50, false)]),
            [10..30, 40..50]
        );
        assert_eq!(of(&[(10..30, false), (15..20, true)]), [10..15, 20..30]);
        assert_eq!(of(&[(10..20, true), (12..18, false)]), []);
        assert_eq!(
            of(&[(10..20, false), (30..40, true), (50..60, false)]),
            [10..20, 50..60]
        );
    }
}
