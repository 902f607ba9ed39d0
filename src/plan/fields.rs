//! Tables of fields: for each number its JSON key and its accepted range.

/// Declares an enum of fields with, for each, its JSON key and accepted range.
macro_rules! fields {
    ($(#[$doc:meta])* $name:ident { $($field:ident = $key:literal, $range:ident;)+ }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($field,)+ }

        impl $name {
            pub const ALL: &[Self] = &[$(Self::$field,)+];

            /// The JSON key, which ends in the unit.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$field => $key,)+ }
            }
            /// The values that may be used.
            #[must_use]
            pub const fn range(self) -> crate::range::Range {
                match self { $(Self::$field => crate::range::$range,)+ }
            }
            pub(in crate::plan) fn of_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|field| field.key() == key)
            }
        }
    };
}
pub(super) use fields;
