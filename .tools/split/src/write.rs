//! The parts, written.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use wasm_encoder::{
    CodeSection, ConstExpr, DataSection, ElementSection, Elements, EntityType, ExportKind,
    ExportSection, FunctionSection, GlobalSection, ImportSection, Instruction, MemorySection,
    Module, RawSection, SectionId, StartSection, TableSection, TypeSection,
    reencode::{Error, Reencode},
};
use wasmparser::{Operator, Parser};

use crate::{
    Fault,
    cut::{Cut, Piece},
    module::Whole,
};

/// The name of all parts before in a later one's imports.
const BEFORE: &str = "f";

/// Indices of the whole, as they are in one part.
#[derive(Default)]
struct Part {
    functions: BTreeMap<u32, u32>,
    globals: BTreeMap<u32, u32>,
    tables: BTreeMap<u32, u32>,
}

impl Part {
    fn lacks(&self, function: u32) -> bool {
        !self.functions.contains_key(&function)
    }
}

/// What an index was that this part does not know.
#[derive(Debug)]
struct Unknown(&'static str, u32);

impl std::fmt::Display for Unknown {
    fn fmt(&self, f: &mut std::fmt::Formatter) -> std::fmt::Result {
        write!(f, "{} {} is not in this part", self.0, self.1)
    }
}
impl std::error::Error for Unknown {}

fn look_up(
    what: &'static str,
    map: &BTreeMap<u32, u32>,
    index: u32,
) -> Result<u32, Error<Unknown>> {
    map.get(&index)
        .copied()
        .ok_or(Error::UserError(Unknown(what, index)))
}

impl Reencode for Part {
    type Error = Unknown;
    fn function_index(&mut self, index: u32) -> Result<u32, Error<Unknown>> {
        look_up("function", &self.functions, index)
    }
    fn global_index(&mut self, index: u32) -> Result<u32, Error<Unknown>> {
        look_up("global", &self.globals, index)
    }
    fn table_index(&mut self, index: u32) -> Result<u32, Error<Unknown>> {
        look_up("table", &self.tables, index)
    }
}

fn renumbered(indices: impl IntoIterator<Item = u32>) -> BTreeMap<u32, u32> {
    indices.into_iter().zip(0..).collect()
}

/// Starts as the whole would, and lends the later parts what they take.
pub fn first(whole: &Whole, cut: &Cut) -> Result<Vec<u8>, Fault> {
    let piece = &cut.parts[0];
    let mut part = Part {
        functions: renumbered((0..whole.functions_imported).chain(piece.functions.iter().copied())),
        globals: renumbered(0..whole.globals.len() as u32),
        tables: renumbered(0..whole.tables.len() as u32),
    };
    let mut module = Module::new();
    module.section(&types(whole, &mut part)?);
    let mut imports = ImportSection::new();
    for import in &whole.imports {
        imports.import(import.module, import.name, part.entity_type(import.ty)?);
    }
    module.section(&imports);
    module.section(&functions(whole, &piece.functions));
    let mut tables = TableSection::new();
    for table in 0..whole.tables.len() as u32 {
        tables.table(table_type(whole, table, &mut part)?);
    }
    module.section(&tables);
    let mut memories = MemorySection::new();
    memories.memory(part.memory_type(whole.memories[0])?);
    module.section(&memories);
    if let Some(section) = &whole.globals_section {
        let mut globals = GlobalSection::new();
        part.parse_global_section(&mut globals, section.clone())?;
        module.section(&globals);
    }
    let mut exports = ExportSection::new();
    for export in &whole.exports {
        part.parse_export(&mut exports, *export)?;
    }
    for (name, (kind, index)) in lent(cut) {
        if kind != ExportKind::Func {
            exports.export(&name, kind, index);
        } else if let Some(&own) = part.functions.get(&index) {
            exports.export(&name, kind, own);
        }
    }
    module.section(&exports);
    if let Some(start) = whole.start {
        module.section(&StartSection {
            function_index: part.functions[&start],
        });
    }
    let own = whole
        .slots
        .iter()
        .filter(|(_, f)| part.functions.contains_key(f));
    let own = own.map(|(&slot, &function)| (slot, function)).collect();
    module.section(&elements(whole, &own, &mut part)?);
    module.section(&code(whole, piece, cut, &mut part)?);
    module.section(&data(&piece.data));
    Ok(module.finish())
}

/// Takes what it needs from the parts before, hangs its own in the table, and lends
/// to those after.
pub fn later(whole: &Whole, cut: &Cut, piece: &Piece) -> Result<Vec<u8>, Fault> {
    let taken = &piece.taken;
    let mut part = Part {
        functions: renumbered(taken.functions.iter().chain(&piece.functions).copied()),
        globals: renumbered(taken.globals.iter().copied()),
        tables: renumbered(taken.tables.iter().copied()),
    };
    let mut module = Module::new();
    module.section(&types(whole, &mut part)?);
    let (mut imports, mut exports) = (ImportSection::new(), ExportSection::new());
    for (name, (kind, index)) in lent(cut) {
        let at = index as usize;
        let entity: EntityType = match kind {
            ExportKind::Func if piece.functions.contains(&index) => {
                exports.export(&name, kind, part.functions[&index]);
                continue;
            }
            ExportKind::Func if !taken.functions.contains(&index) => continue,
            ExportKind::Table if !taken.tables.contains(&index) => continue,
            ExportKind::Global if !taken.globals.contains(&index) => continue,
            ExportKind::Func => EntityType::Function(whole.functions[at]),
            ExportKind::Table => table_type(whole, index, &mut part)?.into(),
            ExportKind::Memory => part.memory_type(whole.memories[at])?.into(),
            _ => part.global_type(whole.globals[at])?.into(),
        };
        imports.import(BEFORE, &name, entity);
    }
    module.section(&imports);
    module.section(&functions(whole, &piece.functions));
    module.section(&exports);
    let is_own = |f: &u32| piece.functions.contains(f);
    let own = whole.slots.iter().filter(|(_, f)| is_own(f));
    let mut own: BTreeMap<u32, u32> = own.map(|(&slot, &function)| (slot, function)).collect();
    let doors = cut.doors.iter().filter(|(door, _)| is_own(door));
    own.extend(doors.map(|(&door, &slot)| (slot, door)));
    module.section(&elements(whole, &own, &mut part)?);
    module.section(&code(whole, piece, cut, &mut part)?);
    module.section(&data(&piece.data));
    Ok(module.finish())
}

/// The same module without names, relocations and what else is no program.
pub fn bare(wasm: &[u8]) -> Result<Vec<u8>, Fault> {
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(wasm) {
        if let Some((id, range)) = payload?.as_section()
            && id != SectionId::Custom as u8
        {
            let data = &wasm[usize::try_from(range.start)?..usize::try_from(range.end)?];
            module.section(&RawSection { id, data });
        }
    }
    Ok(module.finish())
}

/// What goes from a part to those after it: the same order and names for all.
fn lent(cut: &Cut) -> Vec<(String, (ExportKind, u32))> {
    let mut all = BTreeSet::new();
    let (mut tables, mut globals) = (BTreeSet::new(), BTreeSet::new());
    for piece in &cut.parts {
        all.extend(&piece.taken.functions);
        tables.extend(&piece.taken.tables);
        globals.extend(&piece.taken.globals);
    }
    let functions = all.into_iter().map(|index| (ExportKind::Func, index));
    let tables = tables.into_iter().map(|index| (ExportKind::Table, index));
    let globals = globals.into_iter().map(|index| (ExportKind::Global, index));
    let memory = [(ExportKind::Memory, 0)];
    let all = functions.chain(tables).chain(memory).chain(globals);
    all.enumerate()
        .map(|(at, what)| (at.to_string(), what))
        .collect()
}

fn types(whole: &Whole, part: &mut Part) -> Result<TypeSection, Fault> {
    let mut types = TypeSection::new();
    part.parse_type_section(&mut types, whole.types.clone().ok_or("no types")?)?;
    Ok(types)
}

/// A table as the whole has it; the functions' with room for the doors.
fn table_type(
    whole: &Whole,
    table: u32,
    part: &mut Part,
) -> Result<wasm_encoder::TableType, Fault> {
    let mut kind = whole.tables[table as usize];
    if table == whole.table {
        let doors = whole.doors.len() as u64;
        kind.initial += doors;
        kind.maximum = kind.maximum.map(|most| most + doors);
    }
    Ok(part.table_type(kind)?)
}

fn functions(whole: &Whole, own: &BTreeSet<u32>) -> FunctionSection {
    let mut section = FunctionSection::new();
    for &function in own {
        section.function(whole.functions[function as usize]);
    }
    section
}

/// One segment for each run of places in the table.
fn elements(
    whole: &Whole,
    own: &BTreeMap<u32, u32>,
    part: &mut Part,
) -> Result<ElementSection, Fault> {
    let mut runs: Vec<(u32, Vec<u32>)> = Vec::new();
    for (&slot, &function) in own {
        let index = part.function_index(function)?;
        match runs.last_mut() {
            Some((start, run)) if *start + run.len() as u32 == slot => run.push(index),
            _ => runs.push((slot, vec![index])),
        }
    }
    let table = Some(part.table_index(whole.table)?).filter(|&table| table != 0);
    let mut section = ElementSection::new();
    for (start, run) in runs {
        let offset = ConstExpr::i32_const(start.cast_signed());
        section.active(table, &offset, Elements::Functions(Cow::Owned(run)));
    }
    Ok(section)
}

fn code(whole: &Whole, piece: &Piece, cut: &Cut, part: &mut Part) -> Result<CodeSection, Fault> {
    let mut section = CodeSection::new();
    for &function in &piece.functions {
        let body = whole.body(function).ok_or("a function without code")?;
        let mut written = part.new_function_with_parsed_locals(body)?;
        for operator in body.get_operators_reader()? {
            match operator? {
                // A door to a part after this one is gone through by the table.
                Operator::Call {
                    function_index: door,
                } if part.lacks(door) && cut.doors.contains_key(&door) => {
                    written.instruction(&Instruction::I32Const(cut.doors[&door].cast_signed()));
                    written.instruction(&Instruction::CallIndirect {
                        type_index: whole.functions[door as usize],
                        table_index: part.table_index(whole.table)?,
                    });
                }
                operator => {
                    written.instruction(&part.instruction(operator)?);
                }
            }
        }
        section.function(&written);
    }
    Ok(section)
}

fn data(segments: &[(u32, &[u8])]) -> DataSection {
    let mut section = DataSection::new();
    for &(start, bytes) in segments {
        let offset = ConstExpr::i32_const(start.cast_signed());
        section.active(0, &offset, bytes.iter().copied());
    }
    section
}
