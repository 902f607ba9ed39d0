//! Two tabs on one storage: whatever is typed where, in whatever order the
//! browser tells of it, nothing is lost in silence.

use proptest::{collection::vec, prelude::*};
use std::collections::HashSet;
use till_morning::plan::tabs::{Stored, Tab};

#[derive(Clone, Copy, Debug)]
enum Act {
    Type(usize),
    /// The browser tells this tab that the storage has changed.
    Hear(usize),
    Reload(usize),
    Take(usize),
    Keep(usize),
    Close(usize),
}

fn act() -> impl Strategy<Value = Act> {
    let tab = || 0..2_usize;
    prop_oneof![
        4 => tab().prop_map(Act::Type),
        3 => tab().prop_map(Act::Hear),
        1 => tab().prop_map(Act::Reload),
        1 => tab().prop_map(Act::Take),
        1 => tab().prop_map(Act::Keep),
        1 => tab().prop_map(Act::Close),
    ]
}

struct Open {
    tab: Tab,
    own: Option<String>,
}

/// A browser with two tabs, as the page uses it.
#[derive(Default)]
struct Browser {
    shared: Option<String>,
    aside: Option<String>,
    tabs: [Option<Open>; 2],
    /// Every text that somebody chose against, or typed over.
    given_up: HashSet<String>,
    typed: Vec<String>,
}

impl Browser {
    fn open(&self, own: Option<&str>) -> Open {
        let (tab, own) = Tab::open(Stored {
            own,
            shared: self.shared.as_deref(),
            aside: self.aside.as_deref(),
        });
        Open { tab, own }
    }

    fn write(&mut self, at: usize, text: String) {
        let Some(open) = &mut self.tabs[at] else {
            return;
        };
        if let Some(other) = open.tab.write(self.shared.as_deref(), &text) {
            self.aside = Some(other);
        }
        open.own = Some(text.clone());
        self.shared = Some(text);
    }

    fn decided(&mut self, on: &str) {
        self.aside = self.aside.take().filter(|text| text != on);
    }

    fn act(&mut self, act: Act) {
        match act {
            Act::Type(at) if self.tabs[at].is_some() => {
                let text = format!("{at}: {}", self.typed.len());
                let before = self.tabs[at].as_ref().and_then(|open| open.own.clone());
                self.given_up.extend(before);
                self.typed.push(text.clone());
                self.write(at, text);
            }
            Act::Hear(at) => {
                let shared = self.shared.clone();
                if let Some(Open { tab, own }) = &mut self.tabs[at] {
                    tab.hear(shared.as_deref(), own.as_deref().unwrap_or_default());
                }
            }
            Act::Reload(at) => {
                if let Some(own) = self.tabs[at].as_ref().map(|open| open.own.clone()) {
                    self.tabs[at] = Some(self.open(own.as_deref()));
                }
            }
            Act::Take(at) => {
                let Some(open) = &mut self.tabs[at] else {
                    return;
                };
                if let Some(other) = open.tab.take() {
                    let own = open.own.clone().unwrap_or_default();
                    self.decided(&own);
                    self.decided(&other);
                    self.given_up.insert(own);
                    self.write(at, other);
                }
            }
            Act::Keep(at) => {
                let Some(open) = &mut self.tabs[at] else {
                    return;
                };
                let own = open.own.clone().unwrap_or_default();
                if let Some(other) = open.tab.keep() {
                    self.decided(&other);
                    self.given_up.insert(other);
                    self.write(at, own);
                }
            }
            Act::Close(at) => self.tabs[at] = None,
            Act::Type(_) => {}
        }
    }

    /// Wherever a person could still get it.
    fn holds(&self, text: &str) -> bool {
        let is = |held: Option<&str>| held == Some(text);
        let open = |open: &Open| is(open.own.as_deref()) || is(open.tab.other());
        is(self.shared.as_deref())
            || is(self.aside.as_deref())
            || self.tabs.iter().flatten().any(open)
    }
}

proptest! {
    #[test]
    fn nothing_typed_is_lost_but_by_a_choice(acts in vec(act(), 0..40)) {
        let mut browser = Browser::default();
        browser.tabs = [Some(browser.open(None)), Some(browser.open(None))];
        for act in acts {
            browser.act(act);
            for text in &browser.typed {
                prop_assert!(
                    browser.holds(text) || browser.given_up.contains(text),
                    "{text} after {act:?}",
                );
            }
        }
    }

    #[test]
    fn whoever_shows_another_plan_than_is_kept_is_told(acts in vec(act(), 0..40)) {
        let mut browser = Browser::default();
        browser.tabs = [Some(browser.open(None)), Some(browser.open(None))];
        for act in acts {
            browser.act(act);
        }
        for at in 0..2 {
            browser.act(Act::Hear(at));
        }
        for open in browser.tabs.iter().flatten() {
            let is_kept = open.own == browser.shared;
            prop_assert!(is_kept || open.tab.other() == browser.shared.as_deref());
        }
    }

    /// One tab alone is never asked anything.
    #[test]
    fn a_tab_alone_is_left_in_peace(acts in vec(act(), 0..40)) {
        let mut browser = Browser::default();
        browser.tabs[0] = Some(browser.open(None));
        for act in acts {
            browser.act(act);
            if let Some(open) = &browser.tabs[0] {
                prop_assert_eq!(open.tab.other(), None);
            }
        }
    }
}
