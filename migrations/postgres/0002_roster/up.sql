-- Productions, their people, and who wears which hat.

CREATE TABLE productions (
    id BYTEA NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    demo BOOLEAN NOT NULL,
    time_zone TEXT NOT NULL,
    -- JSON: the policy its gags are judged by.
    policy TEXT NOT NULL,
    -- Printed on the day's brief: whoever has it may raise a hold.
    hold_code TEXT NOT NULL UNIQUE,
    created_at BIGINT NOT NULL
);

CREATE TABLE people (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    code TEXT COLLATE "C" NOT NULL,
    -- JSON: the whole person.
    document TEXT NOT NULL,
    -- Counts changes, so that two editors notice each other.
    version BIGINT NOT NULL,
    UNIQUE (production, code)
);

CREATE TABLE members (
    production BYTEA NOT NULL REFERENCES productions (id),
    person BYTEA NOT NULL REFERENCES people (id),
    account BYTEA REFERENCES accounts (id),
    -- JSON: the names of the hats.
    roles TEXT NOT NULL,
    PRIMARY KEY (production, person),
    UNIQUE (production, account)
);
CREATE INDEX members_by_account ON members (account);

CREATE TABLE invitations (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    person BYTEA NOT NULL REFERENCES people (id),
    email TEXT NOT NULL,
    token_hash BYTEA NOT NULL UNIQUE,
    expires_at BIGINT NOT NULL,
    accepted_at BIGINT
);
CREATE INDEX invitations_by_production ON invitations (production);

CREATE TABLE devices (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    person BYTEA NOT NULL REFERENCES people (id),
    name TEXT NOT NULL,
    -- JSON Web Key.
    public_key TEXT NOT NULL,
    registered_at BIGINT NOT NULL,
    revoked_at BIGINT
);
CREATE INDEX devices_by_person ON devices (production, person);
