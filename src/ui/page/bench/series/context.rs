//! What the parts of the tab share beside the trial.

use crate::record::content::trial::progress::RunProgress;
use leptos::prelude::*;

/// How far each run has come.
#[derive(Clone, Copy)]
pub struct SeriesProgress(pub Memo<Vec<RunProgress>>);
