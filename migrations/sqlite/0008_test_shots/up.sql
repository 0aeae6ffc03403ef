-- Test shots: what a rig did at which settings. Only ever added, like readings and runs.

CREATE TABLE test_shots (
    id BLOB NOT NULL PRIMARY KEY,
    gag BLOB NOT NULL REFERENCES gags (id),
    -- JSON: the shot.
    document TEXT NOT NULL,
    at INTEGER NOT NULL,
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX test_shots_by_gag ON test_shots (gag, leaf);
