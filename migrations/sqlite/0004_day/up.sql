-- Holds, readings and rehearsal runs: what is only ever added.

CREATE TABLE holds (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    -- None: the hold is on everything.
    gag BLOB REFERENCES gags (id),
    -- JSON: the hold with its agreements.
    document TEXT NOT NULL,
    raised_at INTEGER NOT NULL,
    released_at INTEGER,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX holds_by_production ON holds (production, leaf);
CREATE INDEX holds_by_gag ON holds (gag);

CREATE TABLE readings (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    -- None: the reading counts for every gag.
    gag BLOB REFERENCES gags (id),
    -- JSON: the reading.
    document TEXT NOT NULL,
    at INTEGER NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX readings_by_production ON readings (production, leaf);
CREATE INDEX readings_by_gag ON readings (gag);

CREATE TABLE runs (
    id BLOB NOT NULL PRIMARY KEY,
    gag BLOB NOT NULL REFERENCES gags (id),
    -- JSON: the run.
    document TEXT NOT NULL,
    at INTEGER NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX runs_by_gag ON runs (gag, leaf);
