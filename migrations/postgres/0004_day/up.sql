-- Holds, readings and rehearsal runs: what is only ever added.

CREATE TABLE holds (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    -- None: the hold is on everything.
    gag BYTEA REFERENCES gags (id),
    -- JSON: the hold with its agreements.
    document TEXT NOT NULL,
    raised_at BIGINT NOT NULL,
    released_at BIGINT,
    leaf BIGINT NOT NULL
);
CREATE INDEX holds_by_production ON holds (production, leaf);
CREATE INDEX holds_by_gag ON holds (gag);

CREATE TABLE readings (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    -- None: the reading counts for every gag.
    gag BYTEA REFERENCES gags (id),
    -- JSON: the reading.
    document TEXT NOT NULL,
    at BIGINT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX readings_by_production ON readings (production, leaf);
CREATE INDEX readings_by_gag ON readings (gag);

CREATE TABLE runs (
    id BYTEA NOT NULL PRIMARY KEY,
    gag BYTEA NOT NULL REFERENCES gags (id),
    -- JSON: the run.
    document TEXT NOT NULL,
    at BIGINT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX runs_by_gag ON runs (gag, leaf);
