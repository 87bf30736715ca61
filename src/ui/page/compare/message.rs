//! A message with its grade, on the page.

use crate::domain::Grade;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::text::Message;
use leptos::prelude::*;

/// A grade in a word.
pub fn grade_word(grade: Grade) -> String {
    match grade {
        Grade::Stop => t!("common-error"),
        Grade::Unusual => t!("common-warning"),
        Grade::Note => t!("common-note"),
    }
}

/// What was found, and how to fix it.
#[component]
pub fn GradedMessage(
    /// How grave.
    grade: Grade,
    /// In words.
    message: Message,
) -> impl IntoView {
    let class = match grade {
        Grade::Stop => "finding stop",
        Grade::Unusual => "finding unusual",
        Grade::Note => "finding note",
    };
    view! {
        <p class=class><Mark grade=grade/> " " <strong>{grade_word(grade)}</strong> " " {message.what} " " {message.fix}</p>
    }
}
