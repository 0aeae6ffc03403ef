-- The photograph of a mark for the day is kept as that of a sign-off is: its id may now be either's.

CREATE TABLE photographs_of_paper (
    -- A sign-off, or a mark for the day (day_records).
    signoff BLOB NOT NULL PRIMARY KEY,
    media_type TEXT NOT NULL,
    bytes BLOB NOT NULL
) STRICT;

INSERT INTO photographs_of_paper (signoff, media_type, bytes)
SELECT signoff, media_type, bytes FROM photographs;

DROP TABLE photographs;

ALTER TABLE photographs_of_paper RENAME TO photographs;
