//! What is said of revisions, releases, and before a save.

use haulm::ui::text::versions::{released_by, twin, withdrawn_by};
use haulm::{t, told};
use std::fmt::Write as _;

#[test]
fn versions() {
    let mut text = String::new();
    let mut say = |line: String| writeln!(text, "{line}").unwrap();
    let three = t!("record-revision", number = 3);
    let named = twin(&three, "AB", "2026-03-09 10:42:07");
    say(named.clone());
    say(twin(&three, "", "2026-03-09 10:42:07"));
    for (author, date) in [("AB", "2026-03-09"), ("", "2026-03-09")] {
        say(format!("{three} {}", released_by(author, date)));
        say(format!("{three} {}", withdrawn_by(author, date)));
    }
    say(t!("record-released", revision = &three, name = "Straw 15 mm"));
    say(t!("record-withdrawn", revision = &three, name = "Straw 15 mm"));
    let four = t!("record-revision", number = 4);
    for message in [
        told!("record-behind", newer = &four, shown = &three),
        told!("record-ask-behind", newer = &four, shown = &named),
        told!("record-ask-binders", before = "pMDI", now = "UF resin"),
    ] {
        say(format!("{} {}", message.what, message.fix));
    }
    say(t!("record-open-revision", revision = &four));
    say(t!("record-save-on-top", revision = &four));
    say(t!("record-compare-revision", revision = &four));
    say(t!("record-saved-as-new", name = "Copy of Straw 15 mm"));
    say(t!("record-replaced", role = "Binder"));
    insta::assert_snapshot!(text, @"
    Revision 3 (AB, 2026-03-09 10:42:07)
    Revision 3 (2026-03-09 10:42:07)
    Revision 3 released by AB, 2026-03-09
    Revision 3 release withdrawn by AB, 2026-03-09
    Revision 3 released, 2026-03-09
    Revision 3 release withdrawn, 2026-03-09
    Revision 3 of “Straw 15 mm” is released for the line.
    Release of “Straw 15 mm”, Revision 3, withdrawn.
    Revision 4 was saved after Revision 3. This page still shows Revision 3.
    Not saved: Revision 4 was saved after Revision 3 (AB, 2026-03-09 10:42:07), which this page started from. Saving on top keeps that revision in the history, but not what it changed.
    Not saved: the binder is now UF resin, not pMDI. Save it as a new recipe, or as the next revision of this one.
    Open Revision 4
    Save on top of Revision 4
    Compare with Revision 4
    “Copy of Straw 15 mm” saved as a new recipe.
    Binder, replaced
    ");
}
