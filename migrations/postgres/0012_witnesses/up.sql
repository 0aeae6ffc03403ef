-- Witnesses of a production's trail, and what they cosigned. A cosignature that comes in gets no leaf: it would
-- grow the very tree that was cosigned.
CREATE TABLE witnesses (
    production BYTEA NOT NULL REFERENCES productions (id),
    -- The leaf that added it.
    leaf BIGINT NOT NULL,
    name TEXT NOT NULL,
    -- name+hash+base64, as C2SP writes it.
    key TEXT NOT NULL,
    added_at BIGINT NOT NULL,
    removed_at BIGINT,
    PRIMARY KEY (production, leaf)
);
CREATE UNIQUE INDEX witnesses_by_name ON witnesses (production, name) WHERE removed_at IS NULL;

CREATE TABLE cosignatures (
    production BYTEA NOT NULL REFERENCES productions (id),
    tree_size BIGINT NOT NULL,
    -- The key it verifies with; one key cosigns one size once.
    key TEXT NOT NULL,
    name TEXT NOT NULL,
    -- The signature line of the note, without its line end.
    line TEXT NOT NULL,
    -- When, in seconds since 1970 by the witness's clock.
    seconds BIGINT NOT NULL,
    received_at BIGINT NOT NULL,
    PRIMARY KEY (production, tree_size, key)
);
