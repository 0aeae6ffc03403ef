-- Productions, their people, and who wears which hat.

CREATE TABLE productions (
    id BLOB NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    demo INTEGER NOT NULL,
    time_zone TEXT NOT NULL,
    -- JSON: the policy its gags are judged by.
    policy TEXT NOT NULL,
    -- Printed on the day's brief: whoever has it may raise a hold.
    hold_code TEXT NOT NULL UNIQUE,
    created_at INTEGER NOT NULL
) STRICT;

CREATE TABLE people (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    code TEXT NOT NULL,
    -- JSON: the whole person.
    document TEXT NOT NULL,
    -- Counts changes, so that two editors notice each other.
    version INTEGER NOT NULL,
    UNIQUE (production, code)
) STRICT;

CREATE TABLE members (
    production BLOB NOT NULL REFERENCES productions (id),
    person BLOB NOT NULL REFERENCES people (id),
    account BLOB REFERENCES accounts (id),
    -- JSON: the names of the hats.
    roles TEXT NOT NULL,
    PRIMARY KEY (production, person),
    UNIQUE (production, account)
) STRICT;
CREATE INDEX members_by_account ON members (account);

CREATE TABLE invitations (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    person BLOB NOT NULL REFERENCES people (id),
    email TEXT NOT NULL,
    token_hash BLOB NOT NULL UNIQUE,
    expires_at INTEGER NOT NULL,
    accepted_at INTEGER
) STRICT;
CREATE INDEX invitations_by_production ON invitations (production);

CREATE TABLE devices (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    person BLOB NOT NULL REFERENCES people (id),
    name TEXT NOT NULL,
    -- JSON Web Key.
    public_key TEXT NOT NULL,
    registered_at INTEGER NOT NULL,
    revoked_at INTEGER
) STRICT;
CREATE INDEX devices_by_person ON devices (production, person);
