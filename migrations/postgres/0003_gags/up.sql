-- Gags, the revisions of their plans, and the sign-offs on those.

CREATE TABLE gags (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    code TEXT COLLATE "C" NOT NULL,
    title TEXT NOT NULL,
    -- 0 until the first plan is written, in the same transaction.
    current_revision BIGINT NOT NULL,
    created_at BIGINT NOT NULL,
    UNIQUE (production, code)
);

-- Rows are never changed: a revision is a new row.
CREATE TABLE plans (
    gag BYTEA NOT NULL REFERENCES gags (id),
    revision BIGINT NOT NULL,
    -- JSON in RFC 8785 form: what the digest and the facet hashes were made of.
    document TEXT NOT NULL,
    author BYTEA NOT NULL REFERENCES people (id),
    written_at BIGINT NOT NULL,
    note TEXT NOT NULL,
    digest TEXT NOT NULL,
    -- JSON: each facet's hash, so that a history shows what changed without reading every plan.
    facets TEXT NOT NULL,
    leaf BIGINT NOT NULL,
    PRIMARY KEY (gag, revision)
);

-- Rows are never changed: the signed statement is the record.
CREATE TABLE signoffs (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    gag BYTEA NOT NULL REFERENCES gags (id),
    revision BIGINT NOT NULL,
    role TEXT NOT NULL,
    slot BYTEA,
    signer BYTEA NOT NULL REFERENCES people (id),
    device BYTEA NOT NULL REFERENCES devices (id),
    jws TEXT NOT NULL,
    received_at BIGINT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX signoffs_by_gag ON signoffs (gag, leaf);
CREATE INDEX signoffs_by_production ON signoffs (production, leaf);

CREATE TABLE conditions_met (
    signoff BYTEA NOT NULL REFERENCES signoffs (id),
    condition TEXT NOT NULL,
    person BYTEA NOT NULL REFERENCES people (id),
    at BIGINT NOT NULL,
    PRIMARY KEY (signoff, condition)
);
