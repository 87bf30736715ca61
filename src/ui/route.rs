//! Where in the app one is: a hash behind the address, so that it works from any folder and from a
//! file.

/// A page of the app.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Page {
    /// What is wanted and what it takes.
    #[default]
    Recipe,
    /// Pump settings, and what really runs.
    Line,
    /// Trial boards.
    Bench,
    /// Binder systems side by side.
    Compare,
    /// Solutions and glue batches made up.
    Mixing,
    /// The library's tab of binder systems.
    Systems,
    /// Saved recipes.
    Library,
    /// The library's tab of trials.
    Trials,
    /// What the app does, its words and its shortcuts.
    Help,
}

impl Page {
    /// All pages that have an address, those of the bar in its order.
    pub const ALL: &'static [Page] = &[
        Self::Recipe,
        Self::Line,
        Self::Bench,
        Self::Compare,
        Self::Mixing,
        Self::Library,
        Self::Systems,
        Self::Trials,
        Self::Help,
    ];

    /// The page of the bar that it is a part of.
    #[must_use]
    pub const fn in_bar(self) -> Self {
        match self {
            Self::Systems | Self::Trials => Self::Library,
            page => page,
        }
    }

    /// The hash, without the `#`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Recipe => "recipe",
            Self::Line => "line",
            Self::Bench => "bench",
            Self::Compare => "compare",
            Self::Mixing => "mixing",
            Self::Systems => "systems",
            Self::Trials => "trials",
            Self::Library => "library",
            Self::Help => "help",
        }
    }

    /// The page of a hash, with or without the `#`. One that means nothing here is the recipe.
    #[must_use]
    pub fn of(hash: &str) -> Self {
        let hash = hash.trim_start_matches('#');
        Self::ALL.iter().copied().find(|page| page.key() == hash).unwrap_or_default()
    }

    /// The link to the page.
    #[must_use]
    pub fn link(self) -> String {
        format!("#{}", self.key())
    }
}

#[cfg(test)]
mod tests {
    use super::Page;

    #[test]
    fn a_hash_names_its_page_and_any_other_the_recipe() {
        for page in Page::ALL {
            assert_eq!(Page::of(&page.link()), *page);
        }
        for strange in ["", "#", "#nowhere", "#Recipe/", "library/x"] {
            assert_eq!(Page::of(strange), Page::Recipe);
        }
    }
}
