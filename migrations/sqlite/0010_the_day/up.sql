-- What happens on the day: the register of equipment, briefings, marks for the day, takes, the medic's
-- looks, stand-downs, near misses and incidents.

CREATE TABLE day_records (
    id BLOB NOT NULL PRIMARY KEY,
    production BLOB NOT NULL REFERENCES productions (id),
    -- None: it is the whole production's.
    gag BLOB REFERENCES gags (id),
    -- equipment, briefing, mark, take, look, stand_down, incident or debrief.
    kind TEXT NOT NULL,
    -- JSON: the record as it is now.
    document TEXT NOT NULL,
    -- The leaf it began with.
    leaf INTEGER NOT NULL
) STRICT;
CREATE INDEX day_records_by_kind ON day_records (production, kind, leaf);
