//! Identifiers of the things clearance adds to casting's.

use gagwright_casting::identifier;

identifier!(
    /// A device that holds a signing key.
    DeviceId
);
identifier!(
    /// A sign-off; minted by the device that signs.
    SignOffId
);
identifier!(
    /// A hold.
    HoldId
);
identifier!(
    /// A reading, a rehearsal run or a test shot.
    RecordId
);
