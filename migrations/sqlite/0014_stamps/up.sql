-- A random mark that is replaced whenever anything is written that the cases of a production share: whoever
-- remembers what they read knows by it whether that still stands, whichever process wrote. A write that is undone
-- gives the old mark back with everything else.

CREATE TABLE stamps (
    -- There is one.
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    -- 16 random bytes, never two alike.
    mark BLOB NOT NULL
) STRICT;

INSERT INTO stamps (one, mark) VALUES (1, randomblob(16));

CREATE TRIGGER productions_stamped_on_insert AFTER INSERT ON productions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER productions_stamped_on_update AFTER UPDATE ON productions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER productions_stamped_on_delete AFTER DELETE ON productions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER people_stamped_on_insert AFTER INSERT ON people
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER people_stamped_on_update AFTER UPDATE ON people
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER people_stamped_on_delete AFTER DELETE ON people
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER members_stamped_on_insert AFTER INSERT ON members
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER members_stamped_on_update AFTER UPDATE ON members
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER members_stamped_on_delete AFTER DELETE ON members
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER devices_stamped_on_insert AFTER INSERT ON devices
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER devices_stamped_on_update AFTER UPDATE ON devices
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER devices_stamped_on_delete AFTER DELETE ON devices
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER gags_stamped_on_insert AFTER INSERT ON gags
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER gags_stamped_on_update AFTER UPDATE ON gags
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER gags_stamped_on_delete AFTER DELETE ON gags
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER plans_stamped_on_insert AFTER INSERT ON plans
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER plans_stamped_on_update AFTER UPDATE ON plans
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER plans_stamped_on_delete AFTER DELETE ON plans
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER holds_stamped_on_insert AFTER INSERT ON holds
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER holds_stamped_on_update AFTER UPDATE ON holds
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER holds_stamped_on_delete AFTER DELETE ON holds
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER day_records_stamped_on_insert AFTER INSERT ON day_records
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER day_records_stamped_on_update AFTER UPDATE ON day_records
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER day_records_stamped_on_delete AFTER DELETE ON day_records
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER delegations_stamped_on_insert AFTER INSERT ON delegations
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER delegations_stamped_on_update AFTER UPDATE ON delegations
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER delegations_stamped_on_delete AFTER DELETE ON delegations
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER resolutions_stamped_on_insert AFTER INSERT ON resolutions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER resolutions_stamped_on_update AFTER UPDATE ON resolutions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;

CREATE TRIGGER resolutions_stamped_on_delete AFTER DELETE ON resolutions
BEGIN
    UPDATE stamps SET mark = randomblob(16);
END;
