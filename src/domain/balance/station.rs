//! The stations in the material's order.

/// A station of the line, as inputs, figures and findings are grouped.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Station {
    /// Fibre as it comes.
    Fibre,
    /// Liquids and blender.
    Blender,
    /// Sifter, former and mat.
    Mat,
    /// Press.
    Press,
    /// Board: sander, saw, stack.
    Board,
}

impl Station {
    /// All stations, in the material's order.
    pub const ALL: &'static [Station] = &[Self::Fibre, Self::Blender, Self::Mat, Self::Press, Self::Board];

    /// The stable key of the station, in addresses and on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fibre => "fibre",
            Self::Blender => "blender",
            Self::Mat => "mat",
            Self::Press => "press",
            Self::Board => "board",
        }
    }
}
