//! The recipe on the page as a link.

/// A link with what it was made of: it comes a moment after the recipe, since the browser packs it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RecipeLink {
    /// The address.
    pub address: String,
    /// The recipe's text that is in it.
    pub text: String,
}
