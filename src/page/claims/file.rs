//! A log from a file: dropped or picked, read in slices, columns corrected.

use super::{columns::Columns, figures::Figures, log_view::LogView};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{
        self, Column, Importer, Log, LogMeter, MOST_BYTES, Options, Progress, Refusal, headings,
    },
    page::{
        kit::Press,
        slices::{Lane, NO_REST, Superseded, Turn},
        turns::spawn,
    },
    text::claims as say,
};
use leptos::{ev, html, prelude::*};
use std::sync::Arc;
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
    reading: Lane,
    finding: Lane,
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
            reading: Lane::new(),
            finding: Lane::new(),
            is_invented: RwSignal::new(false),
        }
    }

    /// That of the question that a component stands in.
    pub fn here() -> Self {
        expect_context()
    }

    fn open(self, bytes: Vec<u8>, is_invented: bool) {
        self.is_invented.set(is_invented);
        self.bytes.set(Arc::new(bytes));
        self.offset_a.set(0.0);
        self.read(Options::default());
    }

    /// Reads the file that is open, from its start.
    pub fn read(self, options: Options) {
        self.log.set(None);
        self.said.set("");
        self.stage.set(Stage::Reading { share: 0.0 });
        self.reading.begin_after(NO_REST, move |turn| async move {
            let bytes = self.bytes.get_untracked();
            match self.lines(&bytes, options, turn).await {
                Ok(log) => self.show(log),
                Err(Ended::Refused(refusal)) => self.stage.set(Stage::Refused(refusal)),
                Err(Ended::Superseded) => {}
            }
        });
    }

    /// Lines, order, signs: with a breath between them.
    async fn lines(self, bytes: &[u8], options: Options, turn: Turn) -> Result<Log, Ended> {
        let mut importer = Importer::new(bytes, options.clone()).inspect_err(|_| {
            // Its headings at least, so that they can be spoken for.
            if let Ok(columns) = headings(bytes, &options) {
                self.columns.set(columns);
            }
        })?;
        self.columns.set(importer.layout().columns.clone());
        loop {
            turn.rest().await?;
            match importer.step(SLICE)? {
                Progress::More { share, .. } => self.stage.set(Stage::Reading { share }),
                Progress::Done => break,
            }
        }
        turn.rest().await?;
        let ordered = importer.in_order()?;
        turn.rest().await?;
        Ok(ordered.log()?)
    }

    fn show(self, log: Log) {
        self.set_edges(Vec::new());
        self.log.set(Some(Arc::new(log)));
        self.stage.set(Stage::Open);
        self.shortest_min.set(log::SHORTEST_MIN[0]);
        self.finding
            .begin_after(NO_REST, move |turn| self.find_few(turn));
    }

    /// Looks for the stretches anew, as long as asked.
    pub fn find(self) {
        self.finding.begin_after(NO_REST, move |_| async move {
            if let Some(log) = self.log.get_untracked() {
                self.set_edges(log::found(&log, self.shortest_min.get_untracked()));
            }
        });
    }

    /// The same, longer ones while there are too many.
    async fn find_few(self, turn: Turn) -> Result<(), Superseded> {
        while let Some(log) = self.log.get_untracked() {
            let shortest_min = self.shortest_min.get_untracked();
            let edges = log::found(&log, shortest_min);
            let Some(longer) = log::coarser(edges.len(), shortest_min) else {
                self.set_edges(edges);
                break;
            };
            self.shortest_min.set(longer);
            turn.rest().await?;
        }
        Ok(())
    }

    pub fn set_edges(self, edges: Vec<(f64, f64)>) {
        self.edges.set(edges.clone());
        self.settled.set(edges);
    }
}

/// Why reading ended before there was a log.
enum Ended {
    Refused(Refusal),
    Superseded,
}

impl From<Refusal> for Ended {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
    }
}

impl From<Superseded> for Ended {
    fn from(_: Superseded) -> Self {
        Self::Superseded
    }
}

/// Where a log is dropped, and what is made of it.
#[component]
pub fn LogDesk() -> impl IntoView {
    let bench = Bench::new();
    bench.figures.follow(bench);
    provide_context(bench);
    let picker = NodeRef::<html::Input>::new();
    let pick = move || {
        if let Some(picker) = picker.get_untracked() {
            picker.click();
        }
    };
    let try_one = move || bench.open(log::invented().into_bytes(), true);
    let try_night = move || bench.open(log::invented_night().into_bytes(), true);
    view! {
        <div>
            <h3>{say(m::LogTitle)}</h3>
            <div
                class="drop"
                on:dragover=|event| event.prevent_default()
                on:drop=move |event| dropped(bench, &event)
            >
                <p class="hint">{say(m::LogHint)}</p>
                <div class="buttons">
                    <Press words=say(m::LogPick) press=pick />
                    <Press words=say(m::LogTry) press=try_one />
                    <Press words=say(m::LogNightTry) press=try_night />
                </div>
                <input
                    node_ref=picker
                    class="hidden"
                    id="log-file"
                    type="file"
                    accept=".csv,.txt,.tsv,text/csv,text/plain"
                    aria-label=say(m::LogPick)
                    tabindex="-1"
                    on:change=move |event| picked(bench, &event)
                />
            </div>
            <StageSaid />
            <Columns />
            <LogView />
        </div>
    }
}

#[component]
fn StageSaid() -> impl IntoView {
    let bench = Bench::here();
    let text = move || match bench.stage.get() {
        Stage::Reading { share } => say::reading_text(formatter(), share),
        Stage::Refused(refusal) => say::fault_sentence(formatter(), &refusal),
        Stage::Nothing | Stage::Open => String::new(),
    };
    let is_refused = move || bench.stage.with(|stage| matches!(stage, Stage::Refused(_)));
    view! {
        <p class="log-said" class:wrong-log=is_refused role="status">
            {text}
        </p>
    }
}

fn picked(bench: Bench, event: &ev::Event) {
    let target = event.target();
    let Some(input) = target.and_then(|t| t.dyn_into::<web_sys::HtmlInputElement>().ok()) else {
        return;
    };
    let file = input.files().and_then(|files| files.get(0));
    // So that the same file, corrected, can be chosen again.
    input.set_value("");
    take(bench, file);
}

fn dropped(bench: Bench, event: &ev::DragEvent) {
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
