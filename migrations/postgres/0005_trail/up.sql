-- The append-only record of each production.

-- Rows are never changed, but for one thing: erasing a person empties salt and personal part. The
-- leaf holds only a commitment to them, so every proof stays valid.
CREATE TABLE trail_entries (
    production BYTEA NOT NULL REFERENCES productions (id),
    position BIGINT NOT NULL,
    -- JSON in RFC 8785 form: the leaf's bytes.
    bytes TEXT NOT NULL,
    salt BYTEA,
    personal TEXT,
    PRIMARY KEY (production, position)
);

-- Hashes of complete subtrees of the RFC 6962 tree: level 0 are leaves, and the node at a level and
-- position covers 2^level leaves from position * 2^level. Never changed.
CREATE TABLE trail_nodes (
    production BYTEA NOT NULL REFERENCES productions (id),
    level BIGINT NOT NULL,
    position BIGINT NOT NULL,
    hash BYTEA NOT NULL,
    PRIMARY KEY (production, level, position)
);
