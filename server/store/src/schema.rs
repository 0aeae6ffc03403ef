//! The tables as diesel sees them: one description for both databases. The migrations make them.

diesel::table! {
    meta (key) {
        key -> Text,
        value -> Text,
    }
}

diesel::table! {
    stamps (one) {
        one -> BigInt,
        mark -> Binary,
    }
}

diesel::table! {
    accounts (id) {
        id -> Binary,
        email -> Text,
        name -> Text,
        password_hash -> Text,
        created_at -> BigInt,
    }
}

diesel::table! {
    sessions (id) {
        id -> Binary,
        family -> Binary,
        account -> Binary,
        token_hash -> Binary,
        issued_at -> BigInt,
        expires_at -> BigInt,
        used_at -> Nullable<BigInt>,
        revoked_at -> Nullable<BigInt>,
        browser -> Nullable<Text>,
        system -> Nullable<Text>,
    }
}

diesel::table! {
    productions (id) {
        id -> Binary,
        name -> Text,
        demo -> Bool,
        time_zone -> Text,
        policy -> Text,
        hold_code -> Text,
        created_at -> BigInt,
    }
}

diesel::table! {
    people (id) {
        id -> Binary,
        production -> Binary,
        code -> Text,
        document -> Text,
        version -> BigInt,
    }
}

diesel::table! {
    members (production, person) {
        production -> Binary,
        person -> Binary,
        account -> Nullable<Binary>,
        roles -> Text,
    }
}

diesel::table! {
    invitations (id) {
        id -> Binary,
        production -> Binary,
        person -> Binary,
        email -> Text,
        token_hash -> Binary,
        expires_at -> BigInt,
        accepted_at -> Nullable<BigInt>,
        withdrawn_at -> Nullable<BigInt>,
    }
}

diesel::table! {
    devices (id) {
        id -> Binary,
        production -> Binary,
        person -> Binary,
        name -> Text,
        public_key -> Text,
        registered_at -> BigInt,
        revoked_at -> Nullable<BigInt>,
    }
}

diesel::table! {
    gags (id) {
        id -> Binary,
        production -> Binary,
        code -> Text,
        title -> Text,
        current_revision -> BigInt,
        created_at -> BigInt,
    }
}

diesel::table! {
    plans (gag, revision) {
        gag -> Binary,
        revision -> BigInt,
        document -> Text,
        author -> Binary,
        written_at -> BigInt,
        note -> Text,
        digest -> Text,
        facets -> Text,
        leaf -> BigInt,
    }
}

diesel::table! {
    signoffs (id) {
        id -> Binary,
        production -> Binary,
        gag -> Binary,
        revision -> BigInt,
        role -> Text,
        slot -> Nullable<Binary>,
        signer -> Binary,
        device -> Binary,
        jws -> Text,
        received_at -> BigInt,
        leaf -> BigInt,
    }
}

diesel::table! {
    signoff_openings (signoff) {
        signoff -> Binary,
        document -> Text,
    }
}

diesel::table! {
    drawn_marks (signoff) {
        signoff -> Binary,
        drawing -> Text,
    }
}

diesel::table! {
    conditions_met (signoff, condition) {
        signoff -> Binary,
        condition -> Text,
        person -> Binary,
        at -> BigInt,
    }
}

diesel::table! {
    holds (id) {
        id -> Binary,
        production -> Binary,
        gag -> Nullable<Binary>,
        document -> Text,
        raised_at -> BigInt,
        released_at -> Nullable<BigInt>,
        leaf -> BigInt,
    }
}

diesel::table! {
    readings (id) {
        id -> Binary,
        production -> Binary,
        gag -> Nullable<Binary>,
        document -> Text,
        at -> BigInt,
        leaf -> BigInt,
    }
}

diesel::table! {
    runs (id) {
        id -> Binary,
        gag -> Binary,
        document -> Text,
        at -> BigInt,
        leaf -> BigInt,
    }
}

diesel::table! {
    test_shots (id) {
        id -> Binary,
        gag -> Binary,
        document -> Text,
        at -> BigInt,
        leaf -> BigInt,
    }
}

diesel::table! {
    day_records (id) {
        id -> Binary,
        production -> Binary,
        gag -> Nullable<Binary>,
        kind -> Text,
        document -> Text,
        leaf -> BigInt,
    }
}

diesel::table! {
    policies (production, version) {
        production -> Binary,
        version -> Text,
        document -> Text,
        person -> Binary,
        note -> Text,
        at -> BigInt,
        leaf -> BigInt,
    }
}

diesel::table! {
    delegations (id) {
        id -> Binary,
        production -> Binary,
        document -> Text,
        leaf -> BigInt,
    }
}

diesel::table! {
    resolutions (id) {
        id -> Binary,
        production -> Binary,
        gag -> Binary,
        signoff -> Binary,
        document -> Text,
        leaf -> BigInt,
    }
}

diesel::table! {
    photographs (signoff) {
        signoff -> Binary,
        media_type -> Text,
        bytes -> Binary,
    }
}

diesel::table! {
    trail_entries (production, position) {
        production -> Binary,
        position -> BigInt,
        bytes -> Text,
    }
}

diesel::table! {
    trail_parts (production, position, name) {
        production -> Binary,
        position -> BigInt,
        name -> Text,
        about -> Nullable<Binary>,
        salt -> Binary,
        said -> Text,
    }
}

diesel::table! {
    trail_nodes (production, level, position) {
        production -> Binary,
        level -> BigInt,
        position -> BigInt,
        hash -> Binary,
    }
}

diesel::table! {
    witnesses (production, leaf) {
        production -> Binary,
        leaf -> BigInt,
        name -> Text,
        key -> Text,
        added_at -> BigInt,
        removed_at -> Nullable<BigInt>,
    }
}

diesel::table! {
    cosignatures (production, tree_size, key) {
        production -> Binary,
        tree_size -> BigInt,
        key -> Text,
        name -> Text,
        line -> Text,
        seconds -> BigInt,
        received_at -> BigInt,
    }
}

diesel::table! {
    answers (account_key, key) {
        account_key -> Text,
        key -> Binary,
        request_hash -> Binary,
        status -> BigInt,
        content_type -> Text,
        location -> Nullable<Text>,
        etag -> Nullable<Text>,
        body -> Binary,
        created_at -> BigInt,
    }
}

diesel::joinable!(plans -> gags (gag));
diesel::joinable!(runs -> gags (gag));
diesel::joinable!(conditions_met -> signoffs (signoff));
diesel::joinable!(drawn_marks -> signoffs (signoff));
diesel::joinable!(signoff_openings -> signoffs (signoff));
diesel::joinable!(members -> productions (production));

diesel::allow_tables_to_appear_in_same_query!(gags, plans, runs, test_shots);
diesel::allow_tables_to_appear_in_same_query!(
    signoffs,
    conditions_met,
    drawn_marks,
    signoff_openings
);
diesel::allow_tables_to_appear_in_same_query!(members, productions);
