-- Marks drawn with a finger beside sign-offs. The signed text holds a drawing's hash; the drawing itself is
-- personal, lies here alone and may be deleted without touching any proof.

CREATE TABLE drawn_marks (
    signoff BLOB NOT NULL PRIMARY KEY REFERENCES signoffs (id),
    drawing TEXT NOT NULL
) STRICT;
