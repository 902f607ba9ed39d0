//! One plan and several tabs: the last edit must not win in silence.
//!
//! All tabs of a browser share one storage. A tab knows what it has seen there. A
//! text there that it has not seen is another tab's: it is set aside before this
//! tab writes over it, and somebody is asked which of the two it shall be. Each
//! tab also keeps its own text to itself, so that a reload opens what the tab had
//! and not what another wrote meanwhile.
//!
//! Texts in, texts out: what keeps them is the page's.

/// What the storages hold as a tab opens.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Stored<'a> {
    /// The tab's own, from before a reload.
    pub own: Option<&'a str>,
    /// The one that all tabs share.
    pub shared: Option<&'a str>,
    /// What was set aside, and not yet decided on.
    pub aside: Option<&'a str>,
}

/// What one tab knows of the storage that it shares.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tab {
    seen: Option<String>,
    other: Option<String>,
}

impl Tab {
    /// A tab opens: with its own text, or else the shared one.
    #[must_use]
    pub fn open(stored: Stored<'_>) -> (Self, Option<String>) {
        let own = stored.own.or(stored.shared);
        let news = |text: &&str| Some(*text) != own;
        let other = stored.shared.filter(news).or(stored.aside.filter(news));
        let tab = Self {
            seen: own.map(String::from),
            other: other.map(String::from),
        };
        (tab, own.map(String::from))
    }

    /// The other tab's text, as long as it is not decided which it shall be.
    #[must_use]
    pub fn other(&self) -> Option<&str> {
        self.other.as_deref()
    }

    /// This tab is about to write its text where `shared` stands. Gives what is to
    /// be set aside first.
    pub fn write(&mut self, shared: Option<&str>, text: &str) -> Option<String> {
        let unseen = self.unseen(shared, text).map(String::from);
        if unseen.is_some() {
            self.other.clone_from(&unseen);
        }
        self.seen = Some(text.into());
        unseen
    }

    /// Another tab has written: `shared` stands there now, and `own` is this tab's.
    pub fn hear(&mut self, shared: Option<&str>, own: &str) {
        match self.unseen(shared, own) {
            Some(other) => self.other = Some(other.into()),
            // It took this tab's plan: there is nothing left to decide.
            None if shared == Some(own) => {
                self.seen = Some(own.into());
                self.other = None;
            }
            None => {}
        }
    }

    /// It shall be the other tab's. Gives its text.
    pub fn take(&mut self) -> Option<String> {
        self.other.take()
    }

    /// It shall be this tab's, which is to be written next. Gives the text that was
    /// decided against: what another tab has written since is asked about anew.
    pub fn keep(&mut self) -> Option<String> {
        let other = self.other.take()?;
        self.seen = Some(other.clone());
        Some(other)
    }

    /// What stands there and is neither seen nor this tab's own.
    fn unseen<'a>(&self, shared: Option<&'a str>, own: &str) -> Option<&'a str> {
        shared.filter(|&text| text != own && Some(text) != self.seen.as_deref())
    }
}
