//! Walks any serializable value and refuses the numbers that RFC 8785 cannot carry. It produces
//! nothing: JSON writers turn NaN into null and round large integers in silence, so they are looked for
//! before anything is written.

use std::fmt;

use serde::{Serialize, ser};

use crate::canonical::{CanonicalError, DEEPEST, LARGEST_INTEGER};

/// Refuses NaN, infinities, integers beyond 2^53 and nesting beyond [`DEEPEST`].
pub fn refuse_lossy<T: Serialize>(value: &T) -> Result<(), CanonicalError> {
    let mut path = Vec::new();
    value
        .serialize(Guard { path: &mut path })
        .map_err(|Refused(error)| error)
}

#[derive(Debug)]
struct Refused(CanonicalError);

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl std::error::Error for Refused {}

impl ser::Error for Refused {
    fn custom<T: fmt::Display>(problem: T) -> Refused {
        Refused(CanonicalError::Unrepresentable(problem.to_string()))
    }
}

/// The walker; the path is the JSON pointer's parts down to here.
struct Guard<'a> {
    path: &'a mut Vec<String>,
}

fn pointer(path: &[String]) -> String {
    let parts = path
        .iter()
        .map(|part| part.replace('~', "~0").replace('/', "~1"));
    parts.map(|part| format!("/{part}")).collect()
}

impl<'a> Guard<'a> {
    fn integer(self, size: u128, text: impl FnOnce() -> String) -> Result<(), Refused> {
        if size <= u128::from(LARGEST_INTEGER) {
            return Ok(());
        }
        Err(Refused(CanonicalError::LargeInteger {
            pointer: pointer(self.path),
            value: text(),
        }))
    }

    fn real(self, value: f64) -> Result<(), Refused> {
        if value.is_finite() {
            return Ok(());
        }
        Err(Refused(CanonicalError::NotFinite {
            pointer: pointer(self.path),
        }))
    }

    fn inside(self) -> Result<Walk<'a>, Refused> {
        if self.path.len() >= DEEPEST {
            return Err(Refused(CanonicalError::TooDeep {
                pointer: pointer(self.path),
            }));
        }
        Ok(Walk {
            path: self.path,
            next: 0,
            key: String::new(),
        })
    }
}

/// Inside an array or an object.
struct Walk<'a> {
    path: &'a mut Vec<String>,
    next: usize,
    key: String,
}

impl Walk<'_> {
    fn step<T: Serialize + ?Sized>(&mut self, part: String, value: &T) -> Result<(), Refused> {
        self.path.push(part);
        value.serialize(Guard { path: self.path })?;
        self.path.pop();
        Ok(())
    }

    fn item<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        let part = self.next.to_string();
        self.next += 1;
        self.step(part, value)
    }
}

impl<'a> ser::Serializer for Guard<'a> {
    type Ok = ();
    type Error = Refused;
    type SerializeSeq = Walk<'a>;
    type SerializeTuple = Walk<'a>;
    type SerializeTupleStruct = Walk<'a>;
    type SerializeTupleVariant = Walk<'a>;
    type SerializeMap = Walk<'a>;
    type SerializeStruct = Walk<'a>;
    type SerializeStructVariant = Walk<'a>;

    fn serialize_bool(self, _: bool) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_i8(self, _: i8) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_i16(self, _: i16) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_i32(self, _: i32) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_i64(self, value: i64) -> Result<(), Refused> {
        self.integer(value.unsigned_abs().into(), || value.to_string())
    }
    fn serialize_i128(self, value: i128) -> Result<(), Refused> {
        self.integer(value.unsigned_abs(), || value.to_string())
    }
    fn serialize_u8(self, _: u8) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_u16(self, _: u16) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_u32(self, _: u32) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_u64(self, value: u64) -> Result<(), Refused> {
        self.integer(value.into(), || value.to_string())
    }
    fn serialize_u128(self, value: u128) -> Result<(), Refused> {
        self.integer(value, || value.to_string())
    }
    fn serialize_f32(self, value: f32) -> Result<(), Refused> {
        self.real(value.into())
    }
    fn serialize_f64(self, value: f64) -> Result<(), Refused> {
        self.real(value)
    }
    fn serialize_char(self, _: char) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_str(self, _: &str) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_bytes(self, _: &[u8]) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_none(self) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Refused> {
        value.serialize(self)
    }
    fn serialize_unit(self) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_unit_struct(self, _: &'static str) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_unit_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
    ) -> Result<(), Refused> {
        Ok(())
    }
    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> Result<(), Refused> {
        value.serialize(self)
    }
    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Result<(), Refused> {
        self.inside()?.step(variant.to_owned(), value)
    }
    fn serialize_seq(self, _: Option<usize>) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_tuple(self, _: usize) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_map(self, _: Option<usize>) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Walk<'a>, Refused> {
        self.inside()
    }
}

impl ser::SerializeSeq for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        self.item(value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeTuple for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        self.item(value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeTupleStruct for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_field<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        self.item(value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeTupleVariant for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_field<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        self.item(value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeMap for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Refused> {
        self.key = match serde_json::to_value(key).map_err(ser::Error::custom)? {
            serde_json::Value::String(text) => text,
            other => other.to_string(),
        };
        Ok(())
    }
    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        let key = std::mem::take(&mut self.key);
        self.step(key, value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeStruct for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_field<T: Serialize + ?Sized>(
        &mut self,
        name: &'static str,
        value: &T,
    ) -> Result<(), Refused> {
        self.step(name.to_owned(), value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}

impl ser::SerializeStructVariant for Walk<'_> {
    type Ok = ();
    type Error = Refused;
    fn serialize_field<T: Serialize + ?Sized>(
        &mut self,
        name: &'static str,
        value: &T,
    ) -> Result<(), Refused> {
        self.step(name.to_owned(), value)
    }
    fn end(self) -> Result<(), Refused> {
        Ok(())
    }
}
