//! Rows of the plan's lists, each known by a number of its own.
//!
//! A field's address is its place in the list: a row that moves up is built anew, with
//! its texts moved by the draft. One that stays where it is stays as it was built, with
//! the cursor and whatever is open in it, while others come and go.

use super::{
    kit::{Press, anew},
    state::State,
};
use crate::{
    plan::{Path, Plan, part::Choice},
    text,
};
use leptos::prelude::*;
use std::sync::Arc;

/// A row as it is built: another one wherever any of this differs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Row {
    id: u32,
    /// Its place in the list.
    pub at: usize,
    /// Titles have numbers, and a row may be taken out.
    pub has_others: bool,
    /// What decides which fields it has; 0 where all rows have the same.
    pub kind: usize,
}

impl Row {
    /// A title with the row's number where there are several.
    pub fn title(self, title: &str) -> String {
        text::numbered(title, self.at, 1 + usize::from(self.has_others))
    }
}

/// The rows of a list, a kind each.
pub fn rows(
    list: Path,
    kinds: impl Fn(&Plan) -> Vec<usize> + Send + Sync + 'static,
    row: impl Fn(Row) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let state = State::here();
    let all = Memo::new(move |_| {
        let kinds = state.with_plan(|plan| kinds(plan));
        let has_others = kinds.len() > 1;
        let ids = state.row_ids(list, kinds.len());
        let rows = ids.into_iter().zip(kinds).enumerate();
        rows.map(|(at, (id, kind))| Row {
            id,
            at,
            has_others,
            kind,
        })
        .collect::<Vec<_>>()
    });
    // Of one type for all lists, so that what builds rows is compiled once.
    built(all, Arc::new(row))
}

fn built(all: Memo<Vec<Row>>, row: Arc<dyn Fn(Row) -> AnyView + Send + Sync>) -> AnyView {
    let build = move |one: Row| untrack(|| row(one));
    view! { <For each=move || all.get() key=|row| *row children=build /> }.into_any()
}

/// So many rows of one kind.
pub fn alike(count: usize) -> Vec<usize> {
    vec![0; count]
}

/// The button for another row, as long as there is room for one.
#[component]
pub fn AddRow(
    #[prop(into)] words: String,
    has_room: impl Fn(&Plan) -> bool + Send + Sync + 'static,
    press: impl Fn() + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let room = move || state.with_plan(|plan| has_room(plan));
    let button = move |room: bool| {
        let words = words.clone();
        room.then(|| view! { <Press class="quiet" words=words press=press /> })
            .into_any()
    };
    view! { <div class="add-row">{anew(room, button)}</div> }
}

/// The place of a choice among all there are: the kind of its row.
pub fn place_of<C: Choice>(choice: C) -> usize {
    C::ALL.iter().position(|&one| one == choice).unwrap_or(0)
}

/// The choice at such a place.
pub fn of_place<C: Choice>(place: usize) -> C {
    C::ALL[place.min(C::ALL.len() - 1)]
}
