//! What is printed next: the documents of the page that is open, or less of them for a button that says so.

use crate::browser::print;
use crate::ui::state::State;
use leptos::prelude::*;

/// How much of a page is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PrintScope {
    /// All of the page and tab that is open.
    Page,
    /// The settings table alone.
    SettingsTable,
}

/// Makes the documents of a page.
pub type PageDocuments = fn(State, PrintScope) -> AnyView;

/// What is printed next: the page, unless a button says otherwise.
#[derive(Clone, Copy)]
pub struct NextPrint {
    scope: StoredValue<PrintScope>,
    documents: StoredValue<Option<PageDocuments>>,
}

impl NextPrint {
    /// All of the page. As long as no page says which documents it has, it prints as it is.
    pub fn new() -> Self {
        Self { scope: StoredValue::new(PrintScope::Page), documents: StoredValue::new(None) }
    }

    /// Which documents the page has.
    pub fn set_documents(self, documents: Option<PageDocuments>) {
        self.documents.set_value(documents);
    }

    /// What makes them.
    pub fn documents(self) -> Option<PageDocuments> {
        self.documents.get_value()
    }

    /// Prints the settings table alone; `false` where the browser cannot print.
    #[must_use]
    pub fn settings_table(self) -> bool {
        self.scope.set_value(PrintScope::SettingsTable);
        let is_printed = print::print();
        if !is_printed {
            self.scope.set_value(PrintScope::Page);
        }
        is_printed
    }

    /// What is printed now. After it comes the page again.
    pub fn take(self) -> PrintScope {
        let scope = self.scope.get_value();
        self.scope.set_value(PrintScope::Page);
        scope
    }
}
