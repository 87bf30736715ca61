//! Which text is said when, with which numbers: plain functions over the resources.

mod balance;
pub mod bench;
mod caution;
pub mod compare;
mod field;
mod figure;
mod finding;
pub mod library;
pub mod line;
mod make_up;
mod name;
mod record;
mod system;
pub mod versions;

pub use balance::{constant, ground};
pub use caution::{caution, caution_title};
pub use field::{field, field_name};
pub use figure::figure;
pub use finding::{finding, loose_entry};
pub use make_up::{glue, make_up};
pub use name::{
    board_kind, dose_way, faces, feed_way, furnish, grade, liquid, machine, role, solute, source, station, substance,
    system, water_way,
};
pub use record::{refusal, store, unread, unsaved};
pub use system::binder_system;
