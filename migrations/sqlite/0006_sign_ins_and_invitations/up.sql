-- What a sign-in was made with, so that its owner can tell their sign-ins apart; and when an invitation was
-- withdrawn.

ALTER TABLE sessions ADD COLUMN browser TEXT;
ALTER TABLE sessions ADD COLUMN system TEXT;
ALTER TABLE invitations ADD COLUMN withdrawn_at INTEGER;
