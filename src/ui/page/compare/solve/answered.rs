//! A question and its answer.

use crate::domain::Grade;
use crate::ui::page::compare::message::GradedMessage;
use crate::ui::text::Message;
use leptos::prelude::*;

/// A question that was asked, and its answer: on the page, on paper and in files alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Answered {
    /// How grave the answer is.
    pub grade: Grade,
    /// What was asked.
    pub question: String,
    /// What came of it.
    pub message: Message,
}

/// The answer on the page: its first sentence large, the rest below.
#[component]
pub fn AnswerLines(
    /// The answer.
    answered: Answered,
) -> impl IntoView {
    let Answered { grade, message, .. } = answered;
    if grade == Grade::Note {
        view! { <p class="lead">{message.what}</p><p class="note">{message.fix}</p> }.into_any()
    } else {
        view! { <GradedMessage grade=grade message=message/> }.into_any()
    }
}
