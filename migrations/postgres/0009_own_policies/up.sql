-- Policies put in force, delegations, declines resolved in writing, photographs of sign-offs on paper.

-- Rows are never changed: a policy that was in force is a record.
CREATE TABLE policies (
    production BYTEA NOT NULL REFERENCES productions (id),
    version TEXT NOT NULL,
    -- JSON: the policy.
    document TEXT NOT NULL,
    person BYTEA NOT NULL REFERENCES people (id),
    note TEXT NOT NULL,
    at BIGINT NOT NULL,
    leaf BIGINT NOT NULL,
    PRIMARY KEY (production, version)
);

CREATE TABLE delegations (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    -- JSON: the delegation.
    document TEXT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX delegations_by_production ON delegations (production, leaf);

CREATE TABLE resolutions (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    gag BYTEA NOT NULL REFERENCES gags (id),
    signoff BYTEA NOT NULL UNIQUE REFERENCES signoffs (id),
    -- JSON: the resolution.
    document TEXT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX resolutions_by_production ON resolutions (production, leaf);

-- Personal: each can be deleted, and what was signed still verifies.
CREATE TABLE photographs (
    signoff BYTEA NOT NULL PRIMARY KEY REFERENCES signoffs (id),
    media_type TEXT NOT NULL,
    bytes BYTEA NOT NULL
);
