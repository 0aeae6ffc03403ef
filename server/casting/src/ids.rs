//! Identifiers: one newtype for each kind of thing, each a UUIDv7 minted by whoever creates the thing,
//! so that a phone with no signal can name what it makes.

/// Declares an identifier newtype that reads and writes as a plain UUID string.
#[macro_export]
macro_rules! identifier {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
        #[serde(transparent)]
        pub struct $name(pub uuid::Uuid);

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                self.0.fmt(f)
            }
        }

        impl std::str::FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                text.parse().map(Self)
            }
        }
    };
}

identifier!(
    /// A production.
    ProductionId
);
identifier!(
    /// A performer or crew member.
    PersonId
);
identifier!(
    /// A gag.
    GagId
);
identifier!(
    /// One performer's place in a gag.
    SlotId
);
identifier!(
    /// A certificate held by a person.
    CertificateId
);
