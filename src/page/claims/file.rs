//! A log from a file: dropped or picked, read in slices, columns corrected.

use super::{columns, figures::Figures, log_view};
use crate::{
    answer::log::{
        self, Column, Importer, Log, LogMeter, MOST_BYTES, Options, Ordered, Progress, Refusal,
        headings,
    },
    page::{
        browser::later,
        dom::{El, button, h},
        reactive::*,
        state::State,
        turns::spawn,
    },
    wording::claims::{self as say, words},
};
use std::{sync::Arc, time::Duration};
use wasm_bindgen::{JsCast, JsValue};

/// How far the reading of a file is.
#[derive(Clone, Debug, PartialEq)]
pub enum Stage {
    Nothing,
    Reading { share: f64 },
    Refused(Refusal),
    Open,
}

/// What is open: a file, its columns, its log, and what was said of it.
#[derive(Clone, Copy)]
pub struct Bench {
    pub stage: RwSignal<Stage>,
    bytes: RwSignal<Arc<Vec<u8>>>,
    pub columns: RwSignal<Vec<Column>>,
    pub log: RwSignal<Option<Arc<Log>>>,
    /// Edges of the stretches as they are dragged, and as they were let go.
    pub edges: RwSignal<Vec<(f64, f64)>>,
    pub settled: RwSignal<Vec<(f64, f64)>>,
    pub shortest_min: RwSignal<f64>,
    pub offset_a: RwSignal<f64>,
    pub meter: RwSignal<LogMeter>,
    pub figures: Figures,
    /// Which bank of the plan it is a log of.
    pub bank: RwSignal<usize>,
    pub said: RwSignal<&'static str>,
    /// Which reading is the present one; older ones stop.
    turn: RwSignal<usize>,
    /// The log is the demonstration's, and says so wherever it is shown.
    pub is_invented: RwSignal<bool>,
}

/// Lines that are read before the page may breathe: some 10 ms.
const SLICE: usize = 1000;

impl Bench {
    fn new() -> Self {
        Self {
            stage: RwSignal::new(Stage::Nothing),
            bytes: RwSignal::new(Arc::new(Vec::new())),
            columns: RwSignal::new(Vec::new()),
            log: RwSignal::new(None),
            edges: RwSignal::new(Vec::new()),
            settled: RwSignal::new(Vec::new()),
            shortest_min: RwSignal::new(log::SHORTEST_MIN[0]),
            offset_a: RwSignal::new(0.0),
            meter: RwSignal::new(LogMeter::default()),
            figures: Figures::new(),
            bank: RwSignal::new(0),
            said: RwSignal::new(""),
            turn: RwSignal::new(0),
            is_invented: RwSignal::new(false),
        }
    }

    fn open(self, bytes: Vec<u8>, is_invented: bool) {
        self.is_invented.set(is_invented);
        self.bytes.set(Arc::new(bytes));
        self.offset_a.set(0.0);
        self.read(Options::default());
    }

    /// Reads the file that is open, from its start.
    pub fn read(self, options: Options) {
        let turn = self.turn.get_untracked() + 1;
        self.turn.set(turn);
        self.log.set(None);
        self.said.set("");
        self.stage.set(Stage::Reading { share: 0.0 });
        later(Duration::ZERO, move || {
            let bytes = self.bytes.get_untracked();
            match Importer::new(&bytes, options.clone()) {
                Ok(importer) => {
                    self.columns.set(importer.layout().columns.clone());
                    self.step(importer, turn);
                }
                Err(refusal) => {
                    // Its headings at least, so that they can be spoken for.
                    if let Ok(columns) = headings(&bytes, &options) {
                        self.columns.set(columns);
                    }
                    self.stage.set(Stage::Refused(refusal));
                }
            }
        });
    }

    fn step(self, mut importer: Importer, turn: usize) {
        later(Duration::ZERO, move || {
            if self.turn.get_untracked() != turn {
                return;
            }
            match importer.step(SLICE) {
                Ok(Progress::More { share, .. }) => {
                    self.stage.set(Stage::Reading { share });
                    self.step(importer, turn);
                }
                Ok(Progress::Done) => self.finish(importer),
                Err(refusal) => self.stage.set(Stage::Refused(refusal)),
            }
        });
    }

    /// Order, signs and change points, each a task of its own.
    fn finish(self, importer: Importer) {
        later(Duration::ZERO, move || match importer.in_order() {
            Ok(ordered) => self.open_log(ordered),
            Err(refusal) => self.stage.set(Stage::Refused(refusal)),
        });
    }

    fn open_log(self, ordered: Ordered) {
        later(Duration::ZERO, move || match ordered.log() {
            Ok(log) => self.show(log),
            Err(refusal) => self.stage.set(Stage::Refused(refusal)),
        });
    }

    fn show(self, log: Log) {
        later(Duration::ZERO, move || {
            self.set_edges(Vec::new());
            self.log.set(Some(Arc::new(log)));
            self.stage.set(Stage::Open);
            self.shortest_min.set(log::SHORTEST_MIN[0]);
            self.find_few();
        });
    }

    /// Looks for the stretches anew, as long as asked.
    pub fn find(self) {
        later(Duration::ZERO, move || {
            if let Some(log) = self.log.get_untracked() {
                self.set_edges(log::found(&log, self.shortest_min.get_untracked()));
            }
        });
    }

    /// The same, longer ones while there are too many.
    fn find_few(self) {
        later(Duration::ZERO, move || {
            let Some(log) = self.log.get_untracked() else {
                return;
            };
            let shortest_min = self.shortest_min.get_untracked();
            let edges = log::found(&log, shortest_min);
            match log::coarser(edges.len(), shortest_min) {
                Some(longer) => {
                    self.shortest_min.set(longer);
                    self.find_few();
                }
                None => self.set_edges(edges),
            }
        });
    }

    pub fn set_edges(self, edges: Vec<(f64, f64)>) {
        self.edges.set(edges.clone());
        self.settled.set(edges);
    }
}

/// The fold with the file in it.
pub fn log(state: State) -> El {
    let bench = Bench::new();
    bench.figures.follow(bench);
    let input = h("input", "hidden")
        .attr("id", "log-file")
        .attr("type", "file")
        .attr("accept", ".csv,.txt,.tsv,text/csv,text/plain")
        .attr("aria-label", words::PICK_LOG)
        .attr("tabindex", "-1")
        .on("change", move |event| picked(bench, &event));
    let picker: web_sys::HtmlElement = input.0.clone().unchecked_into();
    let buttons = h("div", "buttons")
        .child(button("", words::PICK_LOG, move || picker.click()))
        .child(button("", words::TRY_LOG, move || {
            bench.open(log::invented().into_bytes(), true);
        }));
    let drop = h("div", "drop")
        .child(h("p", "hint").text(words::LOG_HINT))
        .child(buttons)
        .child(input)
        .on("dragover", |event| event.prevent_default())
        .on("drop", move |event| dropped(bench, &event));
    h("div", "")
        .child(h("h3", "").text(words::LOG_TITLE))
        .child(drop)
        .child(progress(bench))
        .child(columns::columns(bench))
        .child(log_view::log_view(state, bench))
}

fn progress(bench: Bench) -> El {
    let text = move || match bench.stage.get() {
        Stage::Reading { share } => say::reading_text(share),
        Stage::Refused(refusal) => say::fault_sentence(&refusal),
        Stage::Nothing | Stage::Open => String::new(),
    };
    h("p", "log-said")
        .attr("role", "status")
        .live_class("wrong-log", move || {
            matches!(bench.stage.get(), Stage::Refused(_))
        })
        .live_text(text)
}

fn picked(bench: Bench, event: &web_sys::Event) {
    let target = event.target();
    let Some(input) = target.and_then(|t| t.dyn_into::<web_sys::HtmlInputElement>().ok()) else {
        return;
    };
    let file = input.files().and_then(|files| files.get(0));
    // So that the same file, mended, can be chosen again.
    input.set_value("");
    take(bench, file);
}

fn dropped(bench: Bench, event: &web_sys::Event) {
    event.prevent_default();
    let get = |of: &JsValue, key: &str| js_sys::Reflect::get(of, &JsValue::from_str(key)).ok();
    let files = get(event, "dataTransfer").and_then(|data| get(&data, "files"));
    let files = files.and_then(|files| files.dyn_into::<web_sys::FileList>().ok());
    take(bench, files.and_then(|files| files.get(0)));
}

fn take(bench: Bench, file: Option<web_sys::File>) {
    let Some(file) = file else { return };
    // Read no more than would be refused for its size anyway.
    let most = MOST_BYTES as f64;
    let Ok(part) = file.slice_with_f64_and_f64(0.0, most + 1.0) else {
        return;
    };
    spawn(async move {
        let buffer = wasm_bindgen_futures::JsFuture::from(part.array_buffer()).await;
        if let Ok(buffer) = buffer {
            bench.open(js_sys::Uint8Array::new(&buffer).to_vec(), false);
        }
    });
}
