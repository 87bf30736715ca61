//! Findings: what happened, and how to mend it.

use super::field::field_name;
use super::name;
use crate::domain::{Finding, Place};
use crate::ui::text::{Context, Message};

pub(super) fn finding(finding: &Finding, context: &Context<'_>) -> Message {
    let place = match finding.place {
        Place::Field(field) => field_name(field, context.draft),
        Place::Liquid(id) => context.draft.liquid(id).map_or_else(String::new, |l| name::liquid(l).into_owned()),
        Place::Station(station) => name::station(station).to_owned(),
    };
    Message { what: place, mend: String::new() }
}
