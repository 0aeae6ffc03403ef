-- A random mark that is replaced whenever anything is written that the cases of a production share: whoever
-- remembers what they read knows by it whether that still stands, whichever process wrote. A write that is undone
-- gives the old mark back with everything else.

CREATE TABLE stamps (
    -- There is one.
    one BIGINT NOT NULL PRIMARY KEY CHECK (one = 1),
    -- 16 random bytes, never two alike.
    mark BYTEA NOT NULL
);

INSERT INTO stamps (one, mark) VALUES (1, uuid_send(gen_random_uuid()));

CREATE FUNCTION stamp() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    UPDATE stamps SET mark = uuid_send(gen_random_uuid());
    RETURN NULL;
END;
$$;

CREATE TRIGGER productions_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON productions
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER people_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON people
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER members_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON members
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER devices_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON devices
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER gags_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON gags
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER plans_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON plans
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER holds_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON holds
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER day_records_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON day_records
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER delegations_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON delegations
FOR EACH STATEMENT EXECUTE FUNCTION stamp();

CREATE TRIGGER resolutions_stamped AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON resolutions
FOR EACH STATEMENT EXECUTE FUNCTION stamp();
