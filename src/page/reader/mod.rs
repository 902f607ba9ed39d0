//! The reader's page: an author's plan with one to four numbers of one's own.
//!
//! The same page and the same wasm, by a link whose plan has a `reader`. Answer
//! first, then the fields, the ribbon and the line for paper.

mod field;

use super::{
    app::follow_width,
    browser::{document, listen, window},
    keep,
    kit::{Fold, Press, Sentences},
    locale::{self, formatter, say},
    margin::caution_view,
    part,
    state::State,
};
use crate::{
    answer::{RunAnswer, pocket::pocket},
    plan::finding::{Finding, Severity},
    plan::{
        Plan,
        draft::Draft,
        part::Choice,
        reader::{Language, Theme},
    },
    text::{self, Locale, m},
    view::drawing,
};
use field::OpenField;
use leptos::{ev, prelude::*};

/// What all parts of the page read.
#[derive(Clone, Copy)]
pub struct Open {
    state: State,
    /// The plan as it was published.
    author: StoredValue<Plan>,
}

impl Open {
    /// That of the page that a component stands in.
    fn here() -> Self {
        expect_context()
    }
}

/// The language that the author chose for the reader's page, if the address brings one.
pub fn language() -> Option<Language> {
    let reader = keep::linked().ok()?.reader?;
    Some(locale_of(reader.language).language)
}

/// The reader's page, if the address brings one.
pub fn page() -> Option<AnyView> {
    let plan = keep::linked().ok()?;
    let reader = plan.reader.clone()?;
    let author = plan.published();
    let state = State::new(Draft::of_open_fields(author.clone()));
    let locale = locale_of(reader.language);
    locale::speak(locale, state);
    let title = match reader.title.trim() {
        "" => say(m::QuestionRun).to_owned(),
        title => title.to_owned(),
    };
    dress(&title, locale.language, reader.theme);
    follow_width(state);
    let open = Open {
        state,
        author: StoredValue::new(author),
    };
    follow_address(open);
    provide_context(state);
    provide_context(open);
    let note = reader.note.trim().to_owned();
    let note = (!note.is_empty()).then(|| view! { <p class="strap">{note}</p> });
    Some(
        view! {
            <header class="masthead">
                <h1>{title}</h1>
                {note}
            </header>
            <main class="reader">
                // No section: its heading comes with the last part, and may not come at all.
                <div class="question">
                    <Outcome />
                    <LastPart />
                </div>
            </main>
            <Foot />
        }
        .into_any(),
    )
}

#[component]
fn Outcome() -> impl IntoView {
    let Open { state, .. } = Open::here();
    let sentence = move || {
        lead(state, |plan, run| {
            text::run_sentence(formatter(), plan, run)
        })
        .unwrap_or_else(|| say(m::NoAnswer).into())
    };
    let detail =
        move || lead(state, |_, run| text::run_detail(formatter(), run)).unwrap_or_default();
    let stale = move || {
        if state.is_stale() { say(m::Stale) } else { "" }
    };
    view! {
        <div class="outcome" class:stale=move || state.is_stale()>
            <div role="status" aria-live="polite">
                <p class="answer" id="answer">
                    {sentence}
                </p>
                <p class="detail">{detail}</p>
                <p class="stale-mark">{stale}</p>
            </div>
            <Fields />
            <Ribbon />
            <Findings notes=false />
            <Readings />
        </div>
    }
}

/// Something of the run that the author asks for.
fn lead(state: State, of: impl Fn(&Plan, &RunAnswer) -> String) -> Option<String> {
    state.with_plan(|plan| {
        state.with_answer(|answer| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            let run = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
            run.or(answer.runs.first()).map(|run| of(plan, run))
        })
    })
}

/// The reader's numbers, and the way back to the author's.
#[component]
fn Fields() -> impl IntoView {
    let Open { state, author } = Open::here();
    let fields = author.with_value(Plan::open_fields).into_iter();
    let fields = fields.map(|path| view! { <OpenField path=path /> });
    let of_author = Signal::derive(move || {
        let same = |draft: &Draft| author.with_value(|author| draft.plan == *author);
        state.with_draft(same) && !state.is_stale()
    });
    let back = move || {
        let author = author.get_value();
        state.change(|draft| *draft = Draft::of_open_fields(author));
    };
    let differs = move |differs: fn(&Plan, &Plan) -> bool, words: &'static str| {
        let differs = state.with_plan(|plan| author.with_value(|then| differs(plan, then)));
        if differs { words } else { "" }
    };
    view! {
        <fieldset class="card">
            <legend>{say(m::ReaderYours)}</legend>
            <div class="grid start">{fields.collect_view()}</div>
            <p class="hint" role="status">
                {move || differs(Plan::is_other_voltage, say(m::ReaderOtherVoltage))}
            </p>
            <p class="hint" id="not-measured" role="status">
                {move || differs(Plan::lost_measurement, say(m::ReaderNotTheMeasured))}
            </p>
            <Press class="quiet" words=say(m::ReaderBack) hidden=of_author press=back />
        </fieldset>
    }
}

#[component]
fn Ribbon() -> impl IntoView {
    let Open { state, .. } = Open::here();
    let drawn = Memo::new(move |_| {
        let width = state.width.get();
        state.with_plan(|plan| {
            state.with_answer(|answer| drawing::night_ribbon(formatter(), plan, answer, width))
        })
    });
    view! {
        <figure class="ribbon">
            <div inner_html=move || drawn.get()></div>
            <figcaption>{say(m::RibbonCaption)}</figcaption>
        </figure>
    }
}

fn of_this_page(finding: &Finding, notes: bool) -> bool {
    Plan::is_of_the_night(finding) && (finding.severity == Severity::Note) == notes
}

#[component]
fn Findings(notes: bool) -> impl IntoView {
    let Open { state, .. } = Open::here();
    let said = move || {
        state.with_answer(|answer| {
            let findings = answer.findings.iter();
            let wanted = findings.filter(|one| of_this_page(one, notes));
            wanted
                .map(|one| text::finding_sentence(formatter(), one))
                .collect()
        })
    };
    let class = if notes {
        "findings"
    } else {
        "findings cautions-now"
    };
    view! { <Sentences class=class all=said /> }
}

#[component]
fn Readings() -> impl IntoView {
    let Open { state, .. } = Open::here();
    let none = Signal::derive(move || {
        let is_note = |finding: &Finding| of_this_page(finding, true);
        !state.with_answer(|answer| answer.findings.iter().any(is_note))
    });
    view! {
        <Fold class="fold small" title=move || say(m::Readings) hidden=none>
            <Findings notes=true />
        </Fold>
    }
}

/// What stands in the last part of the wasm, once that is there.
#[component]
fn LastPart() -> impl IntoView {
    let open = Open::here();
    part::extra(move |later| (later.on_paper)(open))
}

/// The pocket formula of each mode, which runs the engine over many banks: in the part
/// that comes last.
pub fn on_paper(open: Open) -> AnyView {
    let Open { state, .. } = open;
    let lines = move || {
        state.with_plan(|plan| {
            let all = pocket(plan);
            let lines = all
                .iter()
                .map(|one| text::claims::pocket_sentence(formatter(), plan, one));
            lines.collect()
        })
    };
    view! {
        <h2>{say(m::ReaderOnPaper)}</h2>
        <p class="hint">{say(m::ReaderOnPaperHint)}</p>
        <Sentences class="pocket" all=lines />
    }
    .into_any()
}

#[component]
fn Foot() -> impl IntoView {
    let Open { state, .. } = Open::here();
    let address = move || keep::address_of(&state.with_plan(keep::link_of));
    let open_in_full = move |event: ev::MouseEvent| {
        // Around a frame stands somebody's page: the whole plan gets a window of
        // its own, unless the frame may open none.
        if keep::is_framed() {
            let opened = window().open_with_url_and_target(&untrack(address), "_blank");
            if matches!(opened, Ok(Some(_))) {
                event.prevent_default();
            }
        }
    };
    let foot = say(m::ReaderFoot {
        page: say(m::NameOfPage),
    });
    let cautions =
        text::usual_cautions(formatter()).map(|one| view! { <p>{caution_view(one)}</p> });
    view! {
        <footer class="foot">
            <p>
                <a id="in-full" href=address on:click=open_in_full>
                    {say(m::ReaderInFull)}
                </a>
            </p>
            <p class="hint">{say(m::ReaderInFullHint)}</p>
            {cautions.collect_view()}
            <p>{foot}</p>
        </footer>
    }
}

/// The author's language, or the browser's; numbers and clock as the browser has them
/// where that is its language too.
fn locale_of(wanted: Option<Language>) -> Locale {
    let browser = locale::of_browser();
    match wanted {
        Some(language) if language != browser.language => Locale::usual(language),
        _ => browser,
    }
}

/// Title, language and looks of the whole page.
fn dress(title: &str, language: Language, theme: Option<Theme>) {
    document().set_title(title);
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("lang", language.tag());
        let _ = match theme {
            Some(theme) => root.set_attribute("data-theme", theme.key()),
            None => root.remove_attribute("data-theme"),
        };
    }
}

/// The address follows the reader's numbers; a link opened in this tab is another
/// page.
fn follow_address(open: Open) {
    let plan = move || {
        let reader = open.author.with_value(|author| author.reader.clone());
        Plan {
            reader,
            ..open.state.plan.get()
        }
    };
    keep::follow(plan, open.author.with_value(Clone::clone));
    listen("hashchange", || {
        let _ = window().location().reload();
    });
}
