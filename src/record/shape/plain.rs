//! The values that all others are made of.

use super::{Named, Part, Room, Shape, Whole};
use crate::quantity::Unit;
use crate::record::id::{CheckId, Id, RecipeId, RevisionId, SystemId, TrialId};
use serde_json::Value;

impl Shape for String {
    fn blank() -> Self {
        Self::new()
    }

    fn open(&mut self) -> Part<'_> {
        Part::Text(self)
    }
}

impl Shape for bool {
    fn blank() -> Self {
        false
    }

    fn open(&mut self) -> Part<'_> {
        Part::Flag(self)
    }
}

macro_rules! whole {
    ($($kind:ty = $variant:ident),*) => {$(
        impl Shape for $kind {
            fn blank() -> Self {
                0
            }

            fn open(&mut self) -> Part<'_> {
                Part::Whole(Whole::$variant(self))
            }
        }
    )*};
}

whole!(u8 = U8, u16 = U16, u32 = U32, u64 = U64);

impl Shape for Value {
    fn blank() -> Self {
        Self::Null
    }

    fn open(&mut self) -> Part<'_> {
        Part::Any(self)
    }
}

impl<T: Shape> Shape for Vec<T> {
    fn blank() -> Self {
        Self::new()
    }

    fn reset(&mut self) {
        self.clear();
    }

    fn open(&mut self) -> Part<'_> {
        Part::List(self)
    }
}

impl<T: Shape> Room for Vec<T> {
    fn add(&mut self) {
        self.push(T::blank());
    }

    fn at(&mut self, place: usize) -> Option<&mut dyn Shape> {
        Some(self.get_mut(place)?)
    }
}

impl<T: Shape> Shape for Option<T> {
    fn blank() -> Self {
        None
    }

    fn reset(&mut self) {
        *self = None;
    }

    fn open(&mut self) -> Part<'_> {
        Part::Maybe(self)
    }
}

impl<T: Shape> Room for Option<T> {
    fn add(&mut self) {
        *self = Some(T::blank());
    }

    fn at(&mut self, place: usize) -> Option<&mut dyn Shape> {
        if place == 0 { Some(self.as_mut()?) } else { None }
    }
}

impl Shape for Unit {
    fn blank() -> Self {
        Self::One
    }

    fn open(&mut self) -> Part<'_> {
        Part::Named(self)
    }
}

impl Named for Unit {
    /// Its symbol, so that a file says in plain text what its numbers mean.
    fn name(&self) -> String {
        self.symbol().to_owned()
    }

    fn set_name(&mut self, name: &str) -> Result<(), String> {
        *self = Self::from_symbol(name).ok_or_else(|| format!("no unit `{name}`"))?;
        Ok(())
    }
}

impl Shape for Id {
    fn blank() -> Self {
        Self::default()
    }

    fn open(&mut self) -> Part<'_> {
        Part::Named(self)
    }
}

impl Named for Id {
    fn name(&self) -> String {
        self.to_string()
    }

    fn set_name(&mut self, name: &str) -> Result<(), String> {
        *self = Self::parse(name).ok_or("an id has 32 hexadecimal digits")?;
        Ok(())
    }
}

super::through!(RevisionId 0, RecipeId 0, SystemId 0, CheckId 0, TrialId 0);
