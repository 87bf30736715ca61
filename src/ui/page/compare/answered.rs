//! A question that was asked, and its answer: on the page, on paper and in files alike.

use crate::browser::element::View;
use crate::domain::Grade;
use crate::ui::part::finding::told;
use crate::ui::text::Message;

/// A question and its answer.
pub struct Answered {
    /// How grave the answer is.
    pub grade: Grade,
    /// What was asked.
    pub question: String,
    /// What came of it.
    pub message: Message,
}

impl Answered {
    /// The answer on the page.
    pub fn view(self) -> View {
        told(self.grade, self.message)
    }
}
