-- The append-only record of each production.

-- Rows are never changed, but for one thing: erasing a person empties salt and personal part. The
-- leaf holds only a commitment to them, so every proof stays valid.
CREATE TABLE trail_entries (
    production BLOB NOT NULL REFERENCES productions (id),
    position INTEGER NOT NULL,
    -- JSON in RFC 8785 form: the leaf's bytes.
    bytes TEXT NOT NULL,
    salt BLOB,
    personal TEXT,
    PRIMARY KEY (production, position)
) STRICT;

-- Hashes of complete subtrees of the RFC 6962 tree: level 0 are leaves, and the node at a level and
-- position covers 2^level leaves from position * 2^level. Never changed.
CREATE TABLE trail_nodes (
    production BLOB NOT NULL REFERENCES productions (id),
    level INTEGER NOT NULL,
    position INTEGER NOT NULL,
    hash BLOB NOT NULL,
    PRIMARY KEY (production, level, position)
) STRICT;
