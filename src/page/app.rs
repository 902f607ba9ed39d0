//! The page from top to bottom: answer first, then what it rests on.

use super::{
    below::{Below, Place},
    browser::{document, language, listen, window},
    keep,
    kit::anew,
    later::{LaterQuestion, Question},
    locale::{self, LocaleChoice, formatter, say},
    margin::{Broken, ExampleBar, Notices, caution_view},
    outcome::{Outcome, OutcomeRest},
    part,
    questions::{self, Questions},
    start::Start,
    state::State,
};
use crate::text::m;
use crate::{
    plan::{Plan, Show, draft::Draft},
    text::{self, Notice},
};
use leptos::prelude::*;

/// The widest the column gets.
const COLUMN_PX: f64 = 720.0;
/// What the page keeps free at both sides together.
const SIDES_PX: f64 = 32.0;

/// What a first visit opens with: nothing said yet, in the units that the browser's
/// language asks for.
pub fn first_plan() -> Plan {
    Plan::fresh().shown_as(Show::of_tag(&language()))
}

/// The whole page: its state, and the words of it built anew in another language.
#[component]
pub fn App() -> impl IntoView {
    let state = State::new(Draft::of(first_plan()));
    provide_context(state);
    let locale = locale::set_up(state);
    part::once_kept(move |keeping| (keeping.open)(state));
    if part::keeping().is_none() && keep::has_something() {
        state.notice.set(Some(Notice::PartNotThere));
    }
    follow_width(state);
    follow_update(state);
    questions::follow(state);
    let page = |_| view! { <Page /> }.into_any();
    view! { <div class="page">{anew(move || locale.get(), page)}</div> }
}

#[component]
fn Page() -> impl IntoView {
    let later = Question::ALL.map(|question| view! { <LaterQuestion question=question /> });
    let [estimates, _] = text::usual_cautions(formatter());
    view! {
        <header class="masthead">
            <h1>{say(m::NameOfPage)}</h1>
            <p class="strap">{say(m::Strap)}</p>
            <LocaleChoice />
        </header>
        <Questions />
        <main>
            <Broken />
            <Notices />
            <ExampleBar />
            <Section id="question-1" title=say(m::QuestionRun)>
                <div class="first">
                    <Outcome />
                    <Start />
                    <OutcomeRest />
                    <div class="rest">
                        <Place of=Below::Numbers />
                    </div>
                </div>
            </Section>
            <Section id="question-2" title=say(m::QuestionBank)>
                <Place of=Below::Bank />
            </Section>
            {later.collect_view()}
            <Section id="assumed" title=say(m::Assumed)>
                <Place of=Below::Assumed />
            </Section>
            <Section id="keeping" title=say(m::Keeping)>
                <Place of=Below::Keeping />
            </Section>
            <Section id="cautions" title=say(m::CautionsTitle)>
                <p>{caution_view(estimates)}</p>
                {part::extra(|later| (later.inside)(Question::Cautions, RwSignal::new(true)))}
            </Section>
        </main>
        <footer class="foot">
            <p>{say(m::Foot)}</p>
        </footer>
    }
}

#[component]
fn Section(id: &'static str, title: &'static str, children: Children) -> impl IntoView {
    view! {
        <section class="question" aria-labelledby=id>
            <h2 id=id>{title}</h2>
            {children()}
        </section>
    }
}

/// Charts are drawn for the width there is.
pub(super) fn follow_width(state: State) {
    let measure = move || {
        let inner = window()
            .inner_width()
            .ok()
            .and_then(|width| width.as_f64())
            .unwrap_or(360.0);
        state.width.set((inner - SIDES_PX).clamp(240.0, COLUMN_PX));
    };
    measure();
    listen("resize", measure);
}

/// The service worker's sign that a newer version waits.
fn follow_update(state: State) {
    let waits = document()
        .document_element()
        .is_some_and(|root| root.has_attribute("data-update"));
    state.update.set(waits);
    listen("till-morning-update", move || state.update.set(true));
}
