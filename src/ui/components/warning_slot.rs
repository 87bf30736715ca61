//! The place for warnings at the top of a page. Its height is kept free, so that nothing moves when one comes or goes.

use super::Mark;
use crate::domain::Grade;
use crate::t;
use leptos::prelude::*;

/// One warning, error or note.
#[derive(Clone)]
pub struct SlotLine {
    /// How grave.
    pub grade: Grade,
    /// The grade in a word.
    pub word: String,
    /// What it is and what to do.
    pub words: String,
    /// Goes to where it is about.
    pub show: Option<Callback<()>>,
}

impl PartialEq for SlotLine {
    /// Lines of the same words lead to the same place.
    fn eq(&self, other: &Self) -> bool {
        (self.grade, &self.words) == (other.grade, &other.words)
    }
}

/// The gravest one and how many there are; all of them on demand.
#[component]
pub fn WarningSlot(
    /// All there is to say, in the order of its reading. The slot puts the gravest first.
    #[prop(into)]
    lines: Signal<Vec<SlotLine>>,
) -> impl IntoView {
    let lines = Memo::new(move |_| {
        let mut lines = lines.get();
        lines.sort_by_key(|line| line.grade);
        lines
    });
    let all = RwSignal::new(false);
    let count = Memo::new(move |_| lines.with(Vec::len));
    let class = move || match lines.with(|lines| lines.first().map(|line| line.grade)) {
        Some(Grade::Stop) => "slot stop",
        Some(Grade::Unusual) => "slot warn",
        _ => "slot",
    };
    let first = move || match lines.with(|lines| lines.first().cloned()) {
        Some(line) => view! { <SlotRow line=line/> }.into_any(),
        None => view! { <p>{t!("common-no-warnings")}</p> }.into_any(),
    };
    view! {
        <section class="warnings" aria-label=t!("common-warnings")>
            <div class=class>
                {first}
                <Show when=move || { count.get() > 1 }>
                    <button
                        type="button"
                        class="bare"
                        aria-expanded=move || if all.get() { "true" } else { "false" }
                        aria-controls="all-warnings"
                        on:click=move |_| all.update(|all| *all = !*all)
                    >
                        {move || t!("common-all-warnings", count = count.get())}
                    </button>
                </Show>
            </div>
            <ul id="all-warnings" class="all-warnings" hidden=move || !all.get() || count.get() < 2>
                <For each=move || lines.get().into_iter().skip(1) key=|line| line.words.clone() let:line>
                    <li><SlotRow line=line/></li>
                </For>
            </ul>
        </section>
    }
}

#[component]
fn SlotRow(
    /// What is said.
    line: SlotLine,
) -> impl IntoView {
    let show = line.show.map(|show| {
        view! { <button type="button" class="link" on:click=move |_| show.run(())>{t!("common-show")}</button> }
    });
    view! {
        <p class="slot-row"><Mark grade=line.grade/> <b>{line.word}</b> " " {line.words}</p>
        {show}
    }
}
