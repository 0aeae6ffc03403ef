-- Who may sign in, and the settings that belong to no production.

CREATE TABLE meta (
    key TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;

CREATE TABLE accounts (
    id BLOB NOT NULL PRIMARY KEY,
    -- Lower-cased, so that one address is one account.
    email TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    password_hash TEXT NOT NULL,
    created_at INTEGER NOT NULL
) STRICT;

-- One row for each refresh token ever given; a family is one sign-in and all that was refreshed from it.
CREATE TABLE sessions (
    id BLOB NOT NULL PRIMARY KEY,
    family BLOB NOT NULL,
    account BLOB NOT NULL REFERENCES accounts (id),
    token_hash BLOB NOT NULL UNIQUE,
    issued_at INTEGER NOT NULL,
    expires_at INTEGER NOT NULL,
    used_at INTEGER,
    revoked_at INTEGER
) STRICT;
CREATE INDEX sessions_by_family ON sessions (family);
CREATE INDEX sessions_by_account ON sessions (account);

-- The first answer to each write that carried an idempotency key, to be given again to a repeat.
CREATE TABLE answers (
    account_key TEXT NOT NULL,
    key BLOB NOT NULL,
    request_hash BLOB NOT NULL,
    status INTEGER NOT NULL,
    content_type TEXT NOT NULL,
    location TEXT,
    etag TEXT,
    body BLOB NOT NULL,
    created_at INTEGER NOT NULL,
    PRIMARY KEY (account_key, key)
) STRICT;
CREATE INDEX answers_by_age ON answers (created_at);
