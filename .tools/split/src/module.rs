//! The finished wasm, read as far as the cut needs it.

use std::collections::BTreeMap;
use wasmparser::{
    DataKind, ElementItems, ElementKind, Export, ExternalKind, FunctionBody, GlobalType, Import,
    KnownCustom, MemoryType, Name, Operator, Parser, Payload, TableType, TypeRef,
    TypeSectionReader,
};

use crate::{
    Fault, constant,
    doors::{Doors, Found},
};

/// A module with its parts by index.
#[derive(Default)]
pub struct Whole<'a> {
    pub types: Option<TypeSectionReader<'a>>,
    pub imports: Vec<Import<'a>>,
    /// The type of each function, the imported ones first.
    pub functions: Vec<u32>,
    pub functions_imported: u32,
    pub tables: Vec<TableType>,
    pub memories: Vec<MemoryType>,
    pub globals: Vec<GlobalType>,
    pub globals_section: Option<wasmparser::GlobalSectionReader<'a>>,
    pub exports: Vec<Export<'a>>,
    pub start: Option<u32>,
    /// The table that functions are called through, and who is where in it.
    pub table: u32,
    pub slots: BTreeMap<u32, u32>,
    pub bodies: Vec<FunctionBody<'a>>,
    /// Address and bytes.
    pub data: Vec<(u32, &'a [u8])>,
    /// Each with the part it leads to.
    pub doors: BTreeMap<u32, usize>,
    pub names: BTreeMap<u32, &'a str>,
}

impl<'a> Whole<'a> {
    pub fn read(wasm: &'a [u8], doors: &Doors) -> Result<Self, Fault> {
        let mut whole = Self::default();
        let mut found = Found::new();
        for payload in Parser::new(0).parse_all(wasm) {
            match payload? {
                Payload::TypeSection(types) => whole.types = Some(types),
                Payload::ImportSection(imports) => {
                    for import in imports.into_imports() {
                        whole.import(import?)?;
                    }
                }
                Payload::FunctionSection(types) => {
                    for kind in types {
                        whole.functions.push(kind?);
                    }
                }
                Payload::TableSection(tables) => {
                    for table in tables {
                        whole.tables.push(table?.ty);
                    }
                }
                Payload::MemorySection(memories) => {
                    for memory in memories {
                        whole.memories.push(memory?);
                    }
                }
                Payload::GlobalSection(globals) => {
                    whole.globals_section = Some(globals.clone());
                    for global in globals {
                        whole.globals.push(global?.ty);
                    }
                }
                Payload::ExportSection(exports) => {
                    for export in exports {
                        whole.exports.push(export?);
                    }
                }
                Payload::StartSection { func, .. } => whole.start = Some(func),
                Payload::ElementSection(elements) => {
                    for element in elements {
                        whole.element(element?)?;
                    }
                }
                Payload::CodeSectionEntry(body) => whole.bodies.push(body),
                Payload::DataSection(segments) => {
                    for segment in segments {
                        let segment = segment?;
                        let DataKind::Active {
                            memory_index: 0,
                            offset_expr,
                        } = segment.kind
                        else {
                            return Err(
                                "a data segment that is not put in place at the start".into()
                            );
                        };
                        whole.data.push((constant(&offset_expr)?, segment.data));
                    }
                }
                Payload::CustomSection(custom) => {
                    if let KnownCustom::Name(names) = custom.as_known() {
                        for part in names {
                            let Name::Function(names) = part? else {
                                continue;
                            };
                            for naming in names {
                                let naming = naming?;
                                whole.names.insert(naming.index, naming.name);
                                if let Some(place) = doors.place(naming.name) {
                                    found.insert((place, naming.index));
                                }
                            }
                        }
                    }
                }
                Payload::TagSection(_) => return Err("exceptions are not expected".into()),
                _ => {}
            }
        }
        whole.doors = doors.all(&found, "finished")?;
        if whole.memories.len() != 1 {
            return Err("one memory is expected".into());
        }
        Ok(whole)
    }

    fn import(&mut self, import: Import<'a>) -> Result<(), Fault> {
        match import.ty {
            TypeRef::Func(kind) => {
                self.functions.push(kind);
                self.functions_imported += 1;
            }
            _ => return Err(format!("an import that is no function: {}", import.name).into()),
        }
        self.imports.push(import);
        Ok(())
    }

    fn element(&mut self, element: wasmparser::Element) -> Result<(), Fault> {
        let ElementKind::Active {
            table_index,
            offset_expr,
        } = element.kind
        else {
            return Err("an element segment that is not put in place at the start".into());
        };
        let table = table_index.unwrap_or(0);
        if !self.slots.is_empty() && table != self.table {
            return Err("functions in two tables".into());
        }
        self.table = table;
        let ElementItems::Functions(functions) = element.items else {
            return Err("an element segment that is no plain list".into());
        };
        for (slot, function) in (constant(&offset_expr)?..).zip(functions) {
            self.slots.insert(slot, function?);
        }
        Ok(())
    }

    /// The code of a function that is defined here.
    pub fn body(&self, function: u32) -> Option<&FunctionBody<'a>> {
        let at = function.checked_sub(self.functions_imported)?;
        self.bodies.get(at as usize)
    }

    /// What one function's code names.
    pub fn named_by(&self, function: u32) -> Result<Named, Fault> {
        let mut named = Named::default();
        let Some(body) = self.body(function) else {
            return Ok(named);
        };
        for operator in body.get_operators_reader()? {
            match operator? {
                Operator::Call { function_index } | Operator::ReturnCall { function_index } => {
                    named.functions.push(function_index);
                }
                Operator::GlobalGet { global_index } | Operator::GlobalSet { global_index } => {
                    named.globals.push(global_index);
                }
                Operator::CallIndirect {
                    table_index: table, ..
                }
                | Operator::ReturnCallIndirect {
                    table_index: table, ..
                }
                | Operator::TableGet { table }
                | Operator::TableSet { table }
                | Operator::TableGrow { table }
                | Operator::TableSize { table }
                | Operator::TableFill { table } => named.tables.push(table),
                Operator::TableCopy {
                    dst_table,
                    src_table,
                } => {
                    named.tables.extend([dst_table, src_table]);
                }
                other @ (Operator::RefFunc { .. }
                | Operator::TableInit { .. }
                | Operator::ElemDrop { .. }
                | Operator::MemoryInit { .. }
                | Operator::DataDrop { .. }) => {
                    return Err(format!("an operator that is not expected: {other:?}").into());
                }
                _ => {}
            }
        }
        Ok(named)
    }

    /// Functions that are called from outside.
    pub fn called_from_outside(&self) -> impl Iterator<Item = u32> {
        let exported = self
            .exports
            .iter()
            .filter(|export| export.kind == ExternalKind::Func);
        exported.map(|export| export.index).chain(self.start)
    }
}

/// Indices, as they come and more than once.
#[derive(Default)]
pub struct Named {
    pub functions: Vec<u32>,
    pub globals: Vec<u32>,
    pub tables: Vec<u32>,
}
