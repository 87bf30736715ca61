//! The binder systems: the mill's own and typical ones to start from, one row each.

mod line;
mod liquids;
mod row;
mod save;

use crate::domain::recipe::binder_system::SystemKey;
use crate::record::content::binder_system::SystemRevision;
use crate::t;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::{typical_liquids, words};
use leptos::prelude::*;
use line::SystemLine;
use row::SystemRow;
use save::SaveSystem;

/// The tab.
#[component]
pub fn SystemsTab() -> impl IntoView {
    let state = expect_context::<State>();
    let own = Memo::new(move |_| {
        state.library.with(|library| {
            let line = |system: &&SystemRevision| {
                let content = system.content();
                SystemLine {
                    id: Some(system.system()),
                    name: content.name.clone(),
                    note: content.note.clone(),
                    saved: when(content.saved_at),
                    liquids: content.liquids.clone(),
                }
            };
            library.systems().iter().map(line).collect::<Vec<_>>()
        })
    });
    let typical = SystemKey::ALL.iter().map(|key| {
        let words = words::binder_system(*key);
        SystemLine {
            id: None,
            name: words.name.to_owned(),
            note: words.note.to_owned(),
            saved: String::new(),
            liquids: typical_liquids(*key),
        }
    });
    let typical = typical.map(|line| view! { <SystemRow line=line/> }).collect_view();
    let has_own = Memo::new(move |_| own.with(|own| !own.is_empty()));
    let key = |line: &SystemLine| format!("{:?} {} {} {:?}", line.id, line.name, line.note, line.liquids);
    view! {
        <section class="panel" aria-label=t!("library-systems")>
            <p class="note">{t!("library-systems-hint")}</p>
            <table class="grid library-table systems-table" aria-label=t!("library-systems")>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("library-name")}</th>
                        <th scope="col" class="l">{t!("library-liquids")}</th>
                        <th scope="col" class="l">{t!("library-saved")}</th>
                        <th scope="col" class="l"><span class="out-of-sight">{t!("library-use")}</span></th>
                        <th scope="col"><span class="out-of-sight">{t!("common-more")}</span></th>
                    </tr>
                </thead>
                <tbody class="own-systems">
                    <tr class="group"><th scope="rowgroup" colspan="5" class="l">{t!("library-own")}</th></tr>
                    <tr class="empty" hidden=move || has_own.get()><td colspan="5" class="l">{t!("library-no-own")}</td></tr>
                    <For each=move || own.get() key=key let:line><SystemRow line=line/></For>
                </tbody>
                <tbody>
                    <tr class="group"><th scope="rowgroup" colspan="5" class="l">{t!("library-typical")}</th></tr>
                    {typical}
                </tbody>
            </table>
        </section>
        <SaveSystem/>
    }
}
