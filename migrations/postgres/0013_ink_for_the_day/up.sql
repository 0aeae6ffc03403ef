-- The photograph of a mark for the day is kept as that of a sign-off is: its id may now be either's, a sign-off's or
-- that of a mark for the day (day_records).

ALTER TABLE photographs DROP CONSTRAINT photographs_signoff_fkey;
