-- Policies put in force, delegations, declines resolved in writing, photographs of sign-offs on paper.

-- Rows are never changed: a policy that was in force is a record.
CREATE TABLE policies (
    production BLOB NOT NULL REFERENCES productions (id),
    version TEXT NOT NULL,
    -- JSON: the policy.
    document TEXT NOT NULL,
    person BLOB NOT NULL REFERENCES people (id),
    note TEXT NOT NULL,
    at INTEGER NOT NULL,
    leaf INTEGER NOT NULL,
    PRIMARY KEY (production, version)
) STRICT;

CREATE TABLE delegations (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    -- JSON: the delegation.
    document TEXT NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX delegations_by_production ON delegations (production, leaf);

CREATE TABLE resolutions (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    gag BLOB NOT NULL REFERENCES gags (id),
    signoff BLOB NOT NULL UNIQUE REFERENCES signoffs (id),
    -- JSON: the resolution.
    document TEXT NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX resolutions_by_production ON resolutions (production, leaf);

-- Personal: each can be deleted, and what was signed still verifies.
CREATE TABLE photographs (
    signoff BLOB NOT NULL PRIMARY KEY REFERENCES signoffs (id),
    media_type TEXT NOT NULL,
    bytes BLOB NOT NULL
) STRICT;
