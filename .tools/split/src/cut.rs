//! Where the finished wasm is cut.
//!
//! wasm-bindgen and wasm-opt have changed the functions since the linker: so what
//! stays is worked out anew by the calls that stand in the code now. Places in the
//! table and addresses are the linker's still, and so is what it knew of them.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use crate::{Fault, module::Whole, origin::Behind};

/// Shorter stretches of constants stay: a segment of their own would weigh as much.
const SHORTEST: u32 = 32;

pub struct Cut<'a> {
    /// Functions defined in the first part.
    pub first: BTreeSet<u32>,
    /// Functions defined in the later one.
    pub later: BTreeSet<u32>,
    /// What the later part takes from the first.
    pub taken: Taken,
    /// The doors' places in the table, after all others.
    pub doors: BTreeMap<u32, u32>,
    pub first_data: Vec<(u32, &'a [u8])>,
    pub later_data: Vec<(u32, &'a [u8])>,
}

/// By index in the whole, in order.
#[derive(Default)]
pub struct Taken {
    pub functions: BTreeSet<u32>,
    pub globals: BTreeSet<u32>,
    pub tables: BTreeSet<u32>,
}

impl<'a> Cut<'a> {
    pub fn of(whole: &Whole<'a>, behind: &Behind) -> Result<Self, Fault> {
        if !behind
            .slots
            .iter()
            .all(|slot| whole.slots.contains_key(slot))
        {
            return Err("the function table is not the linker's".into());
        }
        let first = reached(whole, behind)?;
        let all = whole.functions_imported..whole.functions.len() as u32;
        let later: BTreeSet<u32> = all.filter(|function| !first.contains(function)).collect();
        if !whole.doors.is_subset(&later) {
            return Err("a door itself is called from outside".into());
        }
        let table = whole
            .tables
            .get(whole.table as usize)
            .ok_or("no function table")?;
        let (first_data, later_data) = parted(&whole.data, &behind.data);
        Ok(Self {
            taken: taken(whole, &later)?,
            first: first
                .into_iter()
                .filter(|&f| f >= whole.functions_imported)
                .collect(),
            later,
            doors: whole
                .doors
                .iter()
                .copied()
                .zip(u32::try_from(table.initial)?..)
                .collect(),
            first_data,
            later_data,
        })
    }
}

/// All functions that the first part needs.
fn reached(whole: &Whole, behind: &Behind) -> Result<BTreeSet<u32>, Fault> {
    let in_table = whole
        .slots
        .iter()
        .filter(|(slot, _)| !behind.slots.contains(slot));
    let mut open: Vec<u32> = in_table.map(|(_, &function)| function).collect();
    open.extend(whole.called_from_outside());
    let mut reached = BTreeSet::new();
    while let Some(function) = open.pop() {
        if !whole.doors.contains(&function) && reached.insert(function) {
            open.extend(whole.named_by(function)?.functions);
        }
    }
    Ok(reached)
}

fn taken(whole: &Whole, later: &BTreeSet<u32>) -> Result<Taken, Fault> {
    let mut taken = Taken::default();
    taken.tables.insert(whole.table);
    for &function in later {
        let named = whole.named_by(function)?;
        taken
            .functions
            .extend(named.functions.iter().filter(|f| !later.contains(f)));
        taken.globals.extend(named.globals);
        taken.tables.extend(named.tables);
    }
    Ok(taken)
}

type Segments<'a> = Vec<(u32, &'a [u8])>;

/// The segments that stay, and those that go.
fn parted<'a>(segments: &[(u32, &'a [u8])], behind: &[Range<u32>]) -> (Segments<'a>, Segments<'a>) {
    let (mut first, mut later) = (Vec::new(), Vec::new());
    for &(start, bytes) in segments {
        let end = start + bytes.len() as u32;
        let piece =
            |from: u32, to: u32| (from, &bytes[(from - start) as usize..(to - start) as usize]);
        let mut at = start;
        for range in behind {
            let (from, to) = (range.start.max(start), range.end.min(end));
            if from < to && to - from >= SHORTEST {
                if at < from {
                    first.push(piece(at, from));
                }
                later.push(piece(from, to));
                at = to;
            }
        }
        if at < end {
            first.push(piece(at, end));
        }
    }
    (first, later)
}

#[cfg(test)]
mod tests {
    use super::parted;

    /// Cut as it may be, every byte is in one of the parts, at its own address.
    #[test]
    fn no_byte_is_lost_or_moved() {
        let bytes: Vec<u8> = (0..200).collect();
        let (start, all) = (1000, bytes.as_slice());
        for behind in [
            vec![],
            vec![1000..1100, 1100..1200],
            vec![900..1050, 1100..1110, 1150..1300],
        ] {
            let (first, later) = parted(&[(start, all)], &behind);
            let mut seen = vec![None; all.len()];
            for (at, piece) in first.iter().chain(&later) {
                for (place, byte) in (at - start..).zip(*piece) {
                    assert_eq!(seen[place as usize].replace(*byte), None);
                }
            }
            assert_eq!(seen.into_iter().flatten().collect::<Vec<_>>(), bytes);
        }
        let (first, later) = parted(&[(start, all)], &[900..1050, 1100..1110]);
        assert_eq!((first.len(), later.len()), (1, 1)); // ten bytes are not worth a segment
    }
}
