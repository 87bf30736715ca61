//! Reading what lays its parts open.

use super::{Choice, Fields, Need, Part, Room, Shape, Whole};
use serde::Deserialize;
use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, Error, IgnoredAny, MapAccess, SeqAccess, Unexpected, VariantAccess,
    Visitor,
};
use serde_json::Value;
use std::fmt;

/// Reads a value from JSON.
///
/// # Errors
/// What is wrong in `text`, and where.
pub fn read<T: Shape>(text: &str) -> serde_json::Result<T> {
    let mut value = T::blank();
    read_over(&mut value, text)?;
    Ok(value)
}

fn read_over(value: &mut dyn Shape, text: &str) -> serde_json::Result<()> {
    let mut from = serde_json::Deserializer::from_str(text);
    Over(value).deserialize(&mut from)?;
    from.end()
}

/// What stands in the place of a whole number.
pub(super) const NOT_WHOLE: &str = "a fraction or an object";

/// The value to read over.
struct Over<'a>(&'a mut dyn Shape);

impl<'de> DeserializeSeed<'de> for Over<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        self.0.reset();
        let part = self.0.open();
        match part {
            Part::Text(_) | Part::Named(_) => from.deserialize_str(Opened(part)),
            Part::Flag(_) => from.deserialize_bool(Opened(part)),
            // Not deserialize_u64, which takes the powers of ten for floats into the download.
            Part::Whole(_) => from.deserialize_any(Opened(part)),
            Part::Choice(_) => from.deserialize_enum("", &[], Opened(part)),
            Part::Maybe(_) => from.deserialize_option(Opened(part)),
            Part::List(_) => from.deserialize_seq(Opened(part)),
            Part::Fields(_) => from.deserialize_map(Opened(part)),
            Part::Any(any) => {
                *any = Value::deserialize(from)?;
                Ok(())
            }
        }
    }
}

/// What is being read over.
struct Opened<'a>(Part<'a>);

impl<'de> Visitor<'de> for Opened<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self.0 {
            Part::Text(_) | Part::Named(_) => "a string",
            Part::Flag(_) => "a boolean",
            Part::Whole(Whole::U8(_)) => "u8",
            Part::Whole(Whole::U16(_)) => "u16",
            Part::Whole(Whole::U32(_)) => "u32",
            Part::Whole(Whole::U64(_)) => "u64",
            Part::Choice(_) => "a choice",
            Part::Maybe(_) => "option",
            Part::List(_) => "a sequence",
            Part::Fields(_) => "an object",
            Part::Any(_) => "any JSON value",
        })
    }

    fn visit_bool<E: Error>(self, flag: bool) -> Result<(), E> {
        match self.0 {
            Part::Flag(place) => *place = flag,
            _ => return Err(E::invalid_type(Unexpected::Bool(flag), &self)),
        }
        Ok(())
    }

    fn visit_i64<E: Error>(self, number: i64) -> Result<(), E> {
        Err(E::invalid_value(Unexpected::Signed(number), &self))
    }

    fn visit_u64<E: Error>(mut self, number: u64) -> Result<(), E> {
        if let Part::Whole(whole) = &mut self.0
            && whole.set(number).is_some()
        {
            return Ok(());
        }
        Err(E::invalid_value(Unexpected::Unsigned(number), &self))
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<(), E> {
        match self.0 {
            Part::Text(place) => text.clone_into(place),
            Part::Named(named) => named.set_name(text).map_err(E::custom)?,
            _ => return Err(E::invalid_type(Unexpected::Str(text), &self)),
        }
        Ok(())
    }

    fn visit_none<E: Error>(self) -> Result<(), E> {
        Ok(())
    }

    fn visit_unit<E: Error>(self) -> Result<(), E> {
        match self.0 {
            Part::Maybe(_) => Ok(()),
            _ => Err(E::invalid_type(Unexpected::Unit, &self)),
        }
    }

    fn visit_some<D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        if let Part::Maybe(room) = self.0 {
            room.add();
            if let Some(value) = room.at(0) {
                Over(value).deserialize(from)?;
            }
        }
        Ok(())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<(), A::Error> {
        let Part::List(room) = self.0 else { return Err(A::Error::invalid_type(Unexpected::Seq, &self)) };
        for place in 0.. {
            if list.next_element_seed(Next(room, place))?.is_none() {
                break;
            }
        }
        Ok(())
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        let Part::Fields(Fields { names, needs, mut fields }) = self.0 else {
            // A number that is not whole comes as a map too, of its digits.
            return Err(A::Error::invalid_type(Unexpected::Other(NOT_WHOLE), &self));
        };
        let mut seen = vec![false; names.len()];
        while let Some(place) = map.next_key_seed(Key(names))? {
            let (Some(name), Some(field), Some(seen)) = (names.get(place), fields.get_mut(place), seen.get_mut(place))
            else {
                map.next_value::<IgnoredAny>()?;
                continue;
            };
            if std::mem::replace(seen, true) {
                return Err(A::Error::duplicate_field(name));
            }
            map.next_value_seed(Over(&mut **field))?;
        }
        for ((name, need), seen) in names.iter().zip(needs).zip(seen) {
            if *need == Need::Must && !seen {
                return Err(A::Error::missing_field(name));
            }
        }
        Ok(())
    }

    fn visit_enum<A: EnumAccess<'de>>(self, access: A) -> Result<(), A::Error> {
        let Part::Choice(choice) = self.0 else { return Err(A::Error::invalid_type(Unexpected::Enum, &self)) };
        let ((), rest) = access.variant_seed(Word(choice))?;
        match choice.held() {
            None => rest.unit_variant(),
            Some(held) => rest.newtype_variant_seed(Over(held)),
        }
    }
}

impl Whole<'_> {
    /// Sets it; `None` where it is too large.
    fn set(&mut self, number: u64) -> Option<()> {
        match self {
            Self::U8(place) => **place = number.try_into().ok()?,
            Self::U16(place) => **place = number.try_into().ok()?,
            Self::U32(place) => **place = number.try_into().ok()?,
            Self::U64(place) => **place = number,
        }
        Some(())
    }
}

/// The next of a list, and its place.
struct Next<'a>(&'a mut dyn Room, usize);

impl<'de> DeserializeSeed<'de> for Next<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        self.0.add();
        match self.0.at(self.1) {
            Some(value) => Over(value).deserialize(from),
            None => Ok(()),
        }
    }
}

/// The name of a field: its place among those known, or one behind them.
struct Key(&'static [&'static str]);

impl<'de> DeserializeSeed<'de> for Key {
    type Value = usize;

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<usize, D::Error> {
        from.deserialize_identifier(self)
    }
}

impl Visitor<'_> for Key {
    type Value = usize;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("field identifier")
    }

    fn visit_str<E: Error>(self, name: &str) -> Result<usize, E> {
        Ok(self.0.iter().position(|known| *known == name).unwrap_or(self.0.len()))
    }
}

/// The word of a choice.
struct Word<'a>(&'a mut dyn Choice);

impl<'de> DeserializeSeed<'de> for Word<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        from.deserialize_identifier(self)
    }
}

impl Visitor<'_> for Word<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("variant identifier")
    }

    fn visit_str<E: Error>(self, word: &str) -> Result<(), E> {
        let words = self.0.words();
        let Some(place) = words.iter().position(|known| *known == word) else {
            return Err(E::unknown_variant(word, words));
        };
        self.0.choose(place);
        Ok(())
    }
}
