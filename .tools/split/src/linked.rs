//! The program as the linker left it, read as far as its references need it.

use std::collections::BTreeMap;
use std::ops::Range;
use wasmparser::{
    CustomSectionReader, Data, DataKind, Element, ElementItems, ElementKind, ExternalKind,
    KnownCustom, Linking, Parser, Payload, RelocSectionReader, SymbolInfo, SymbolInfoMap, TypeRef,
};

use crate::{
    Fault, constant,
    doors::{Doors, Found},
};

/// A symbol of the linker's table.
pub enum Symbol {
    Function(u32),
    /// Addresses; empty for one that is not defined.
    Data(Range<u32>),
    Other,
}

#[derive(Default)]
pub struct Linked<'a> {
    functions_imported: u32,
    /// Where each function's code is in the file.
    bodies: Vec<Range<u64>>,
    /// Where each data segment is in the file, and its address.
    segments: Vec<(Range<u64>, u32)>,
    pub symbols: Vec<Symbol>,
    found: Found,
    pub doors: BTreeMap<u32, usize>,
    /// Functions called from outside.
    pub exported: Vec<u32>,
    /// Who is where in the function table.
    pub slots: BTreeMap<u32, u32>,
    /// Where each section's content begins in the file.
    pub sections: Vec<u64>,
    pub relocs: Vec<RelocSectionReader<'a>>,
    /// Which of the sections hold code and data.
    pub code: Option<u32>,
    pub data: Option<u32>,
}

impl<'a> Linked<'a> {
    pub fn read(wasm: &'a [u8], doors: &Doors) -> Result<Self, Fault> {
        let mut linked = Self::default();
        for payload in Parser::new(0).parse_all(wasm) {
            let payload = payload?;
            if let Some((_, range)) = payload.as_section() {
                linked.sections.push(range.start);
            }
            linked.payload(payload, doors)?;
        }
        linked.doors = doors.all(&linked.found, "linked")?;
        Ok(linked)
    }

    fn payload(&mut self, payload: Payload<'a>, doors: &Doors) -> Result<(), Fault> {
        let here = (self.sections.len() as u32).checked_sub(1);
        match payload {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    let is_function = matches!(import?.ty, TypeRef::Func(_));
                    self.functions_imported += u32::from(is_function);
                }
            }
            Payload::ExportSection(exports) => {
                for export in exports {
                    let export = export?;
                    if export.kind == ExternalKind::Func {
                        self.exported.push(export.index);
                    }
                }
            }
            Payload::StartSection { func, .. } => self.exported.push(func),
            Payload::ElementSection(elements) => {
                elements
                    .into_iter()
                    .try_for_each(|one| self.element(one?))?;
            }
            Payload::CodeSectionStart { .. } => self.code = here,
            Payload::CodeSectionEntry(body) => self.bodies.push(body.range()),
            Payload::DataSection(segments) => {
                self.data = here;
                segments
                    .into_iter()
                    .try_for_each(|one| self.segment(one?))?;
            }
            Payload::CustomSection(custom) => self.custom(&custom, doors)?,
            _ => {}
        }
        Ok(())
    }

    fn custom(&mut self, custom: &CustomSectionReader<'a>, doors: &Doors) -> Result<(), Fault> {
        match custom.as_known() {
            KnownCustom::Reloc(relocs) => self.relocs.push(relocs),
            KnownCustom::Linking(linking) => {
                for part in linking.subsections() {
                    if let Linking::SymbolTable(symbols) = part? {
                        self.symbols(symbols, doors)?;
                    }
                }
            }
            _ => {}
        }
        Ok(())
    }

    fn element(&mut self, element: Element) -> Result<(), Fault> {
        let (ElementKind::Active { offset_expr, .. }, ElementItems::Functions(functions)) =
            (element.kind, element.items)
        else {
            return Err("an element segment that is no plain list".into());
        };
        for (slot, function) in (constant(&offset_expr)?..).zip(functions) {
            self.slots.insert(slot, function?);
        }
        Ok(())
    }

    fn segment(&mut self, segment: Data) -> Result<(), Fault> {
        let DataKind::Active { offset_expr, .. } = segment.kind else {
            return Err("a passive data segment".into());
        };
        let place = segment.range.end - segment.data.len() as u64..segment.range.end;
        self.segments.push((place, constant(&offset_expr)?));
        Ok(())
    }

    fn symbols(&mut self, symbols: SymbolInfoMap, doors: &Doors) -> Result<(), Fault> {
        for symbol in symbols {
            let symbol = match symbol? {
                SymbolInfo::Func { index, name, .. } => {
                    if let Some(place) = name.and_then(|name| doors.place(name)) {
                        self.found.insert((place, index));
                    }
                    Symbol::Function(index)
                }
                SymbolInfo::Data {
                    symbol: Some(at), ..
                } => {
                    let segment = self.segments.get(at.index as usize);
                    let start = segment.ok_or("a symbol in no segment")?.1 + at.offset;
                    Symbol::Data(start..start + at.size)
                }
                SymbolInfo::Data { symbol: None, .. } => Symbol::Data(0..0),
                _ => Symbol::Other,
            };
            self.symbols.push(symbol);
        }
        Ok(())
    }

    /// The function whose code holds this place of the file.
    pub fn function_at(&self, place: u64) -> Option<u32> {
        let at = self.bodies.partition_point(|body| body.end <= place);
        let body = self.bodies.get(at)?;
        body.contains(&place)
            .then(|| self.functions_imported + at as u32)
    }

    /// The address of this place of the file.
    pub fn address_at(&self, place: u64) -> Option<u32> {
        let (at, start) = self.segments.iter().find(|(at, _)| at.contains(&place))?;
        Some(start + (place - at.start) as u32)
    }
}
