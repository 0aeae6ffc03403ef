-- Witnesses of a production's trail, and what they cosigned. A cosignature that comes in gets no leaf: it would
-- grow the very tree that was cosigned.
CREATE TABLE witnesses (
    production BLOB NOT NULL REFERENCES productions (id),
    -- The leaf that added it.
    leaf INTEGER NOT NULL,
    name TEXT NOT NULL,
    -- name+hash+base64, as C2SP writes it.
    key TEXT NOT NULL,
    added_at INTEGER NOT NULL,
    removed_at INTEGER,
    PRIMARY KEY (production, leaf)
) STRICT;
CREATE UNIQUE INDEX witnesses_by_name ON witnesses (production, name) WHERE removed_at IS NULL;

CREATE TABLE cosignatures (
    production BLOB NOT NULL REFERENCES productions (id),
    tree_size INTEGER NOT NULL,
    -- The key it verifies with; one key cosigns one size once.
    key TEXT NOT NULL,
    name TEXT NOT NULL,
    -- The signature line of the note, without its line end.
    line TEXT NOT NULL,
    -- When, in seconds since 1970 by the witness's clock.
    seconds INTEGER NOT NULL,
    received_at INTEGER NOT NULL,
    PRIMARY KEY (production, tree_size, key)
) STRICT;
