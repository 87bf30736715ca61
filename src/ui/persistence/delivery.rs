//! An accepted delivery: into the recipe that is open, the saved recipes selected, the tank and a running changeover.

use crate::browser::clock;
use crate::domain::line::Delivered;
use crate::record::content::revision::Stamp;
use crate::record::{RecipeId, RevisionId};
use crate::ui::state::State;
use crate::{label, t};
use leptos::prelude::*;

impl State {
    /// Accepts a delivery. Each saved recipe under `heads` gets a revision of its own.
    pub fn accept_delivery(&self, delivered: &Delivered, heads: &[RevisionId]) {
        let own = self.draft.get_untracked();
        let stamp = Stamp { remark: t!("line-delivery-remark"), ..self.stamp() };
        let saved = self.change_library(|library| library.enter_delivery(heads, delivered, &own, &stamp));
        let Some(saved) = saved else { return };
        if delivered.draft != own {
            self.edit(None, |open| open.clone_from(&delivered.draft));
        }
        self.follow_all(&saved);
        let (at, liquid) = (clock::now(), self.liquid_name(delivered.liquid));
        let step = self.line.change(|record| {
            delivered.fill(&mut record.book, at);
            record.note_delivery(at, liquid, delivered.tank);
            if let Some(planned) = &mut record.planned {
                for end in [&mut planned.from, &mut planned.to] {
                    if let Some(draft) = delivered.applied_to(&own, &end.draft) {
                        end.draft = draft;
                    }
                }
            }
        });
        let (state, delivered) = (*self, delivered.clone());
        self.tell_undo(t!("line-delivery-accepted", count = saved.len()), move || {
            if state.undo_deliveries(&saved) {
                state.edit(None, |open| delivered.take_out(&own, open));
                state.line.take_back(&step);
                state.tell(label!("line-delivery-undone"));
            }
        });
    }

    /// Each of those saved recipes says again what it said before; one that was saved since stays as it is. Whether that went well.
    fn undo_deliveries(&self, saved: &[(RevisionId, RevisionId)]) -> bool {
        let stamp = self.stamp();
        let undone = self.change_library(|library| {
            let mut undone = Vec::new();
            for (before, entered) in saved {
                let recipe = library.revision(*entered).map(|revision| revision.recipe());
                let is_head =
                    |recipe: RecipeId| library.recipe(recipe).is_some_and(|own| own.head.summary.id == *entered);
                if recipe.is_some_and(is_head) {
                    undone.push((*entered, library.restore(*before, *entered, stamp.clone())?));
                }
            }
            Ok(undone)
        });
        if let Some(undone) = &undone {
            self.follow_all(undone);
        }
        undone.is_some()
    }

    fn follow_all(&self, saved: &[(RevisionId, RevisionId)]) {
        for (_, new) in saved {
            let recipe = self.library.with_untracked(|library| library.revision(*new).map(|new| new.recipe()));
            if let Some(recipe) = recipe {
                self.follow(recipe);
            }
        }
    }
}
