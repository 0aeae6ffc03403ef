-- Test shots: what a rig did at which settings. Only ever added, like readings and runs.

CREATE TABLE test_shots (
    id BYTEA NOT NULL PRIMARY KEY,
    gag BYTEA NOT NULL REFERENCES gags (id),
    -- JSON: the shot.
    document TEXT NOT NULL,
    at BIGINT NOT NULL,
    leaf BIGINT NOT NULL
);
CREATE INDEX test_shots_by_gag ON test_shots (gag, leaf);
