-- Gags, the revisions of their plans, and the sign-offs on those.

CREATE TABLE gags (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    code TEXT NOT NULL,
    title TEXT NOT NULL,
    -- 0 until the first plan is written, in the same transaction.
    current_revision INTEGER NOT NULL,
    created_at INTEGER NOT NULL,
    UNIQUE (production, code)
) STRICT;

-- Rows are never changed: a revision is a new row.
CREATE TABLE plans (
    gag BLOB NOT NULL REFERENCES gags (id),
    revision INTEGER NOT NULL,
    -- JSON in RFC 8785 form: what the digest and the facet hashes were made of.
    document TEXT NOT NULL,
    author BLOB NOT NULL REFERENCES people (id),
    written_at INTEGER NOT NULL,
    note TEXT NOT NULL,
    digest TEXT NOT NULL,
    -- JSON: each facet's hash, so that a history shows what changed without reading every plan.
    facets TEXT NOT NULL,
    leaf INTEGER NOT NULL,
    PRIMARY KEY (gag, revision)
) STRICT;

-- Rows are never changed: the signed statement is the record.
CREATE TABLE signoffs (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    gag BLOB NOT NULL REFERENCES gags (id),
    revision INTEGER NOT NULL,
    role TEXT NOT NULL,
    slot BLOB,
    signer BLOB NOT NULL REFERENCES people (id),
    device BLOB NOT NULL REFERENCES devices (id),
    jws TEXT NOT NULL,
    received_at INTEGER NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX signoffs_by_gag ON signoffs (gag, leaf);
CREATE INDEX signoffs_by_production ON signoffs (production, leaf);

CREATE TABLE conditions_met (
    signoff BLOB NOT NULL REFERENCES signoffs (id),
    condition TEXT NOT NULL,
    person BLOB NOT NULL REFERENCES people (id),
    at INTEGER NOT NULL,
    PRIMARY KEY (signoff, condition)
) STRICT;
