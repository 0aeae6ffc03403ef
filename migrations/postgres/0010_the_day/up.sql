-- What happens on the day: the register of equipment, briefings, marks for the day, takes, the medic's
-- looks, stand-downs, near misses and incidents.

CREATE TABLE day_records (
    id BYTEA NOT NULL PRIMARY KEY,
    production BYTEA NOT NULL REFERENCES productions (id),
    -- None: it is the whole production's.
    gag BYTEA REFERENCES gags (id),
    -- equipment, briefing, mark, take, look, stand_down, incident or debrief.
    kind TEXT NOT NULL,
    -- JSON: the record as it is now.
    document TEXT NOT NULL,
    -- The leaf it began with.
    leaf BIGINT NOT NULL
);
CREATE INDEX day_records_by_kind ON day_records (production, kind, leaf);
