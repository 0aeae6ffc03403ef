-- Who may sign in, and the settings that belong to no production.

CREATE TABLE meta (
    key TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
);

CREATE TABLE accounts (
    id BYTEA NOT NULL PRIMARY KEY,
    -- Lower-cased, so that one address is one account.
    email TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    password_hash TEXT NOT NULL,
    created_at BIGINT NOT NULL
);

-- One row for each refresh token ever given; a family is one sign-in and all that was refreshed from it.
CREATE TABLE sessions (
    id BYTEA NOT NULL PRIMARY KEY,
    family BYTEA NOT NULL,
    account BYTEA NOT NULL REFERENCES accounts (id),
    token_hash BYTEA NOT NULL UNIQUE,
    issued_at BIGINT NOT NULL,
    expires_at BIGINT NOT NULL,
    used_at BIGINT,
    revoked_at BIGINT
);
CREATE INDEX sessions_by_family ON sessions (family);
CREATE INDEX sessions_by_account ON sessions (account);

-- The first answer to each write that carried an idempotency key, to be given again to a repeat.
CREATE TABLE answers (
    account_key TEXT NOT NULL,
    key BYTEA NOT NULL,
    request_hash BYTEA NOT NULL,
    status BIGINT NOT NULL,
    content_type TEXT NOT NULL,
    location TEXT,
    etag TEXT,
    body BYTEA NOT NULL,
    created_at BIGINT NOT NULL,
    PRIMARY KEY (account_key, key)
);
CREATE INDEX answers_by_age ON answers (created_at);
