-- What is kept beside the leaves of the trail, part by part, so that one person's parts can be erased and
-- everybody else's stay. A leaf holds only salted commitments to its parts, so every proof stays valid.
CREATE TABLE trail_parts (
    production BYTEA NOT NULL,
    position BIGINT NOT NULL,
    -- The part's name, as in the leaf's commitments.
    name TEXT NOT NULL,
    -- The person it is about, whose erasure takes it away; none: it stays.
    about BYTEA,
    salt BYTEA NOT NULL,
    -- JSON in RFC 8785 form.
    said TEXT NOT NULL,
    PRIMARY KEY (production, position, name),
    FOREIGN KEY (production, position) REFERENCES trail_entries (production, position)
);
CREATE INDEX trail_parts_by_person ON trail_parts (production, about);

ALTER TABLE trail_entries DROP COLUMN salt;
ALTER TABLE trail_entries DROP COLUMN personal;

-- The texts that a sign-off commits to, conditions and a reason, each with its salt. Erasing the signer
-- takes them away; the commitments stand in what was signed.
CREATE TABLE signoff_openings (
    signoff BYTEA NOT NULL PRIMARY KEY REFERENCES signoffs (id),
    -- JSON: the openings.
    document TEXT NOT NULL
);
