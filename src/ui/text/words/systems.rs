//! The binder systems.

use crate::ui::text::SystemsPage;

pub(super) const SYSTEMS: SystemsPage = SystemsPage {
    saved: |name| format!("“{name}” saved as own system."),
    replaced: |name| format!("“{name}” replaced."),
    renamed: |from, to| format!("“{from}” renamed “{to}”."),
    removed: |name| format!("“{name}” deleted."),
};
