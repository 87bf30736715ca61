//! What is said of revisions, releases, and before a save.

use super::WORDS;
use std::fmt::Write as _;

#[test]
fn versions() {
    let words = &WORDS.versions;
    let mut text = String::new();
    let mut say = |line: String| writeln!(text, "{line}").unwrap();
    let three = (words.revision)(3);
    let twin = (words.twin)(&three, "JK", "2026-03-09 10:42:07");
    say(twin.clone());
    say((words.twin)(&three, "", "2026-03-09 10:42:07"));
    for (author, date) in [("JK", "2026-03-09"), ("", "2026-03-09")] {
        say(format!("{three} {}", (words.released_by)(author, date)));
        say(format!("{three} {}", (words.withdrawn_by)(author, date)));
    }
    say((words.released)(&three, "Straw 15 mm"));
    say((words.withdrawn)(&three, "Straw 15 mm"));
    let four = (words.revision)(4);
    for message in
        [(words.behind)(&four, &three), (words.ask_behind)(&four, &twin), (words.ask_binders)("pMDI", "UF resin")]
    {
        say(format!("{} {}", message.what, message.fix));
    }
    for button in [(words.open)(&four), (words.save_on_top)(&four), (words.compare)(&four)] {
        say(button);
    }
    say((words.saved_as_new)("Copy of Straw 15 mm"));
    say((words.replaced)("Binder"));
    insta::assert_snapshot!(text, @"
    Revision 3 (JK, 2026-03-09 10:42:07)
    Revision 3 (2026-03-09 10:42:07)
    Revision 3 released by JK, 2026-03-09
    Revision 3 release withdrawn by JK, 2026-03-09
    Revision 3 released, 2026-03-09
    Revision 3 release withdrawn, 2026-03-09
    Revision 3 of “Straw 15 mm” is released for the line.
    Release of “Straw 15 mm”, Revision 3, withdrawn.
    Revision 4 was saved after Revision 3. This page still shows Revision 3.
    Not saved: Revision 4 was saved after Revision 3 (JK, 2026-03-09 10:42:07), which this page started from. Saving on top keeps that revision in the history, but not what it changed.
    Not saved: the binder is now UF resin, not pMDI. Save it as a new recipe, or as the next revision of this one.
    Open Revision 4
    Save on top of Revision 4
    Compare with Revision 4
    “Copy of Straw 15 mm” saved as a new recipe.
    Binder, replaced
    ");
}
