//! What belongs to the laboratory and not to one trial: balances, blender, spray, overage. It stays from one trial to the next.

use crate::domain::trial::weigh_sheet::draft::SheetDraft;
use crate::domain::trial::weigh_sheet::field::{WeighField, WeighSection};

impl WeighField {
    /// Whether it belongs to the laboratory.
    #[must_use]
    pub const fn is_of_lab(self) -> bool {
        matches!(self.place(), WeighSection::Overage | WeighSection::Balances)
            || matches!(self, Self::DryingLoss | Self::SprayVolume | Self::SprayMass)
    }

    /// Whether it says how large the mats are and how many.
    #[must_use]
    pub const fn is_of_mat(self) -> bool {
        matches!(self, Self::MatLength | Self::MatWidth | Self::Boards)
    }
}

impl SheetDraft {
    /// A blank sheet with the laboratory of this one.
    #[must_use]
    pub fn lab_setup(&self) -> Self {
        let mut lab = Self::default();
        lab.use_lab(self);
        lab
    }

    /// Takes over the laboratory of another sheet.
    pub fn use_lab(&mut self, other: &Self) {
        self.overage_of = other.overage_of;
        self.overage_on = other.overage_on;
        self.water_place = other.water_place;
        self.spray_way = other.spray_way;
        self.take(other, WeighField::is_of_lab);
    }

    /// The sheet of the next trial: the same mats and boards, nothing in place of the recipe's values, the laboratory of `lab`.
    #[must_use]
    pub fn of_next_trial(&self, lab: &Self) -> Self {
        let mut next = Self::default();
        next.use_lab(lab);
        next.take(self, WeighField::is_of_mat);
        next
    }

    fn take(&mut self, other: &Self, which: impl Fn(WeighField) -> bool) {
        for field in WeighField::ALL.iter().copied().filter(|field| which(*field)) {
            self.entry_mut(field).clone_from(other.entry(field));
        }
    }
}
