//! What is printed next, for a button that prints less than the page.

use crate::browser::print;
use leptos::prelude::*;

/// How much of a page is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PrintScope {
    /// All of the page and tab that is open.
    Page,
    /// The settings table alone.
    SettingsTable,
}

/// What is printed next: the page, unless a button says otherwise.
#[derive(Clone, Copy)]
pub struct NextPrint(StoredValue<PrintScope>);

impl NextPrint {
    /// The page.
    pub fn new() -> Self {
        Self(StoredValue::new(PrintScope::Page))
    }

    /// Prints the settings table alone; `false` where the browser cannot print.
    #[must_use]
    pub fn settings_table(self) -> bool {
        self.0.set_value(PrintScope::SettingsTable);
        let is_printed = print::print();
        if !is_printed {
            self.0.set_value(PrintScope::Page);
        }
        is_printed
    }

    /// What is printed now. After it comes the page again.
    pub fn take(self) -> PrintScope {
        let scope = self.0.get_value();
        self.0.set_value(PrintScope::Page);
        scope
    }
}
