// Made from openapi.json by `npm run api`. Changes belong in the server, which describes itself.

export interface paths {
    "/api/v1/gags/{gag}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a gag
         * @description Needs `read_production`. The plan, all that bears on it, and the judge's answer, in one request. The
         *     ETag is the revision, for `If-Match` when revising.
         */
        get: operations["read_gag"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/briefings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record a briefing
         * @description Needs `log_day`. Absentees are briefed by another one, for the same day and place.
         */
        post: operations["hold_briefing"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/day-signoff-draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Draft a mark for the day
         * @description Needs `sign_off`, and the hat itself or a delegation from somebody who holds it. A witness of a mark on paper names
         *     its `signer`, and adds `ink` and its `kind`. The device fills in `id`, `device`, `signed_at` and the
         *     decision, then signs the statement's RFC 8785 bytes.
         */
        get: operations["draft_day_signoff"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/day-signoffs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Hand in a mark for the day
         * @description Needs to be a member of the production: the device's key says who signed, so anyone on it may carry one
         *     here. Refused with `sign_off_refused` unless the signature verifies with that key, the signer holds the
         *     hat, and the statement is for what the gag is now. One that was taken before counts once.
         */
        post: operations["submit_day_signoff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/debriefs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record a debrief
         * @description Needs `log_day`. What went as planned and what did not, what changes next time, and which skills each performer used: these count as recent practice.
         */
        post: operations["hold_debrief"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/looks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record the medic's look
         * @description Needs the hat of the medic. Says fit, unfit or limits, and never why.
         */
        post: operations["record_look"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/matches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Match people to a slot
         * @description Needs `read_production`. Everyone who performs, ranked, with the reasons. Reasons that tell of a body or
         *     of health need `read_personal` or `read_medical`, and are withheld from others.
         */
        get: operations["match_slot"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/packet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Print a gag's packet
         * @description Needs `read_production`. A PDF with the plan, its figures, its cast, its sign-offs and their
         *     proof. Masses, measurements, ages and medical dates are on it only for those who may read them.
         */
        get: operations["print_packet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Revise a plan
         * @description Needs `edit_plans`, and `If-Match` with the revision in hand. When the plan has moved on, the refusal
         *     shows both sides by facet and nothing is merged.
         */
        post: operations["revise_plan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/plans/{revision}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one revision of a plan
         * @description Needs `read_production`.
         */
        get: operations["read_plan"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Log a reading
         * @description Needs `log_day`.
         */
        post: operations["log_reading"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/runs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Log a rehearsal run
         * @description Needs `log_day`. It counts while the action, rigging, effects and vehicles rehearsed are unchanged.
         */
        post: operations["log_run"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/signoff-draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Draft a sign-off
         * @description Needs `sign_off`, and the hat itself or a delegation from somebody who holds it. A witness of a sign-off on
         *     paper names its `signer`, and adds `ink` and its `kind`. The device fills in `id`, `device`, `signed_at` and the
         *     decision, then signs the statement's RFC 8785 bytes.
         */
        get: operations["draft_signoff"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/signoffs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Hand in a sign-off
         * @description Needs to be a member of the production: the device's key says who signed, so anyone on it may carry one
         *     here. Refused with `sign_off_refused` unless the signature verifies with that key, the signer holds the
         *     hat and the statement is for the gag's current content. One that was taken before counts once.
         */
        post: operations["submit_signoff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/takes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Call a go
         * @description Needs a hat that the policy lets call one. Good for one take, and recorded whenever it arrives, with whether it stood.
         */
        post: operations["call_go"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/takes/{take}/outcome": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record how a take ended
         * @description Needs `log_day`.
         */
        post: operations["end_take"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/gags/{gag}/test-shots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List a gag's test shots
         * @description Needs `read_production`. In the order they were logged; the gag's page has them as well.
         */
        get: operations["list_test_shots"];
        put?: never;
        /**
         * Log a test shot
         * @description Needs `log_day`. What a rig did with a bag or a person at given settings: what the calibration of the
         *     technique's coefficients is made from.
         */
        post: operations["log_test_shot"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/handed": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring what somebody else asked
         * @description Needs to be a member of the production. A hold, an agreement to release, a reading, a rehearsal run, a test shot, a
         *     plan revision, an incident, a stand-down, a piece of equipment set aside or shock-loaded, a briefing, a mark for the
         *     day, a go or how a take ended, that its author signed with their device, travels from phone to phone, and whoever has
         *     signal first brings it. It is done as the author, under their account and their key, so that it is
         *     done once whoever brings it and whether or not the author's own phone sends it too; no Idempotency-Key
         *     is needed here. The answer is that of the request itself, as the carrier may read it. Refused with
         *     `handed_refused` unless the signature verifies, the device is not revoked and the author may still ask
         *     it, and otherwise as the request itself would be.
         */
        post: operations["bring_handed"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/hold-codes/{code}/holds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Raise a hold with the code on the brief
         * @description Needs no account and no permission. Nothing that is mistyped stands in the way of it: a gag code that is not
         *     known holds everything, and stands in the reason.
         */
        post: operations["raise_hold_by_code"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/holds/{hold}/agreements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Agree to release a hold
         * @description Needs `release_hold`, and the hat itself. Released once the coordinator and the hazard's owner agree.
         */
        post: operations["agree_to_release"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitations/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Accept an invitation
         * @description Makes the account, or adds the production to the one the address has, whose password is then asked
         *     for. Works once per link; a repeat says to sign in.
         */
        post: operations["accept_invitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Change one's own password
         * @description Ends every session of the account and starts a new one in the caller's browser, whose refresh cookie comes
         *     with the answer.
         */
        put: operations["change_password"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a production
         * @description Needs `read_production`. Its rules, its members and what the caller may do on it.
         */
        get: operations["read_production"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read what changed
         * @description Needs `read_production`. At most 500 leaves, oldest first; ask again until `size` is reached.
         */
        get: operations["read_changes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/day": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the day at a glance
         * @description Needs `read_production`. The register of equipment, who is stood down, near misses and incidents.
         */
        get: operations["read_day"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/delegations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List delegations
         * @description Needs `read_production`. Newest first, those that have ended or run out included.
         */
        get: operations["list_delegations"];
        put?: never;
        /**
         * Let somebody sign in your stead
         * @description Needs `sign_off`, and the role itself: a delegate cannot hand on what was lent to them. The policy says
         *     which roles may, and for how long at most.
         */
        post: operations["make_delegation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/delegations/{delegation}/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End a delegation
         * @description Needs `sign_off`; for whoever made it, and the coordinator. What was signed under it lapses, saying so.
         */
        post: operations["end_delegation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/devices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List devices
         * @description Needs `read_production` for one's own devices; those with `manage_members` get everybody's, for they may
         *     revoke them.
         */
        get: operations["list_devices"];
        put?: never;
        /**
         * Register a device
         * @description Needs `sign_off`. The key was made on the device and its private half never leaves it.
         */
        post: operations["register_device"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/devices/{device}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Revoke a device
         * @description Needs `read_production` for one's own device and `manage_members` for anyone else's. What it signed
         *     before stays good. Revoked by somebody else, its owner's sessions end too.
         */
        delete: operations["revoke_device"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/equipment": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Enter a piece of equipment
         * @description Needs `log_day`. The same id again changes the entry; what befell the piece stays.
         */
        post: operations["put_equipment"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/equipment/{item}/quarantine": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Set a piece of equipment aside
         * @description Needs `log_day`. Nothing that uses it may be performed until it is released.
         */
        post: operations["quarantine_equipment"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/equipment/{item}/release": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a piece of equipment back into use
         * @description Needs `log_day` and a hat of those who build with it, or the engineer's; after an inspection.
         */
        post: operations["release_equipment"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/equipment/{item}/shock-loads": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record a shock load
         * @description Needs `log_day`. Sets the piece aside, and lapses what the policy says.
         */
        post: operations["record_shock_load"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Listen for changes
         * @description Needs `read_production`. Server-Sent Events: `event: change` with a `ChangeItem`, as the feed of changes
         *     gives it, for each leaf from now on, or after `Last-Event-ID`. A hold says which gag and who raised it, so
         *     that a phone can make itself heard before it has read anything more. The access token may stand in the
         *     query here, and only here, because a browser's event stream sends no headers. The stream ends with the
         *     token's life, when one connects again with the next one, and when the listener may not read the production
         *     any more.
         */
        get: operations["listen"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/gags": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List gags
         * @description Needs `read_production`. Each with its answer in a word and the first thing that stops it.
         */
        get: operations["list_gags"];
        put?: never;
        /**
         * Create a gag
         * @description Needs `edit_plans`. Facets that are left out start from the policy's defaults for the technique.
         */
        post: operations["create_gag"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/gags/{gag}/at": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a gag as it stood
         * @description Needs `read_trail`. Rebuilt from the trail alone, using no leaf that came later: the answer then, who had signed
         *     what they had read, readings, runs and holds; and which leaves about it came after. Where something was erased since,
         *     it says what cannot be known any more, and `certain` is false when the answer depends on it.
         */
        get: operations["read_gag_at"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/holds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List holds
         * @description Needs `read_production`. Released ones too, in the order they were raised.
         */
        get: operations["list_holds"];
        put?: never;
        /**
         * Raise a hold
         * @description Needs `raise_hold`, which every member has. Nobody has to say why.
         */
        post: operations["raise_hold"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/incidents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Report a near miss or an incident
         * @description Needs `raise_hold`, which every member has. Freezes the gag named, or everything, until it is closed.
         */
        post: operations["report_incident"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/incidents/{incident}/closings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say what was done about an incident
         * @description Needs `release_hold`, and the hat of the coordinator or the production. Closed once both have, by two people, and everybody was told.
         */
        post: operations["close_incident"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/incidents/{incident}/told": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record that somebody was told
         * @description Needs `log_day`.
         */
        post: operations["tell_of_incident"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List open invitations
         * @description Needs `manage_members`. Those that can still be accepted; of several to one person only the newest is
         *     good.
         */
        get: operations["list_invitations"];
        put?: never;
        /**
         * Invite somebody on the roster
         * @description Needs `manage_members`. The link goes to the address on the roster and works once, for a week.
         */
        post: operations["invite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/invitations/{invitation}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Withdraw an invitation
         * @description Needs `manage_members`. The link in its letter no longer works.
         */
        delete: operations["withdraw_invitation"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/members": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List members
         * @description Needs `manage_members`. Everyone who has a hat, an account or an invitation.
         */
        get: operations["list_members"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/members/{person}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Set a person's roles
         * @description Needs `manage_members`. What they signed under a hat they lose lapses.
         */
        put: operations["set_roles"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List people
         * @description Needs `read_production`.
         */
        get: operations["list_people"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/people/{person}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a person
         * @description Needs `read_production`; personal data needs `read_personal`, medical data `read_medical`, and
         *     everyone may read all of themselves. The ETag is the version, for `If-Match` when writing.
         */
        get: operations["read_person"];
        /**
         * Write a person
         * @description Needs `edit_people`, and `If-Match` with the version in hand, or `If-None-Match: *` for somebody new.
         */
        put: operations["put_person"];
        post?: never;
        /**
         * Erase a person
         * @description Needs the role `production`. Takes away what the roster says of them, what they wrote, the marks they drew,
         *     photographs of paper with their ink or witnessed by them, what a medic found in them, the skills they used, their
         *     devices' names, their seat and, where it is no other production's, their account; with the salts of the trail's
         *     commitments to it, so that nobody can guess at it. Every leaf, proof and signature stays valid. Plans stay as they
         *     are.
         */
        delete: operations["erase_person"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/policies/{version}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a policy that was in force
         * @description Needs `read_production`.
         */
        get: operations["read_policy_version"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/policy": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the policy in force
         * @description Needs `read_production`. The ETag is the version, for `If-Match` when putting another in force.
         */
        get: operations["read_policy"];
        /**
         * Put a policy in force
         * @description Needs `change_policy`, and `If-Match` with the version in force. Sign-offs are judged by it from then on:
         *     those that no longer meet it lapse and say why, and no others.
         */
        put: operations["put_policy"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/policy-preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Preview a policy
         * @description Needs `read_production`. Stores nothing: every problem of the policy sent, and what it would change now on
         *     every gag.
         */
        post: operations["preview_policy"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/roster/{table}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Export a roster table
         * @description Needs `edit_people`, which carries the right to read all of it. CSV whose cells no spreadsheet takes
         *     for formulas; importing it again changes nothing.
         */
        get: operations["export_roster"];
        put?: never;
        /**
         * Import a roster table
         * @description Needs `edit_people`. CSV, UTF-8, at most 2 MiB. All rows or none: `roster_refused` lists every wrong
         *     cell by row and column with its fix. Importing again updates.
         */
        post: operations["import_roster"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/stand-downs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Stand somebody down
         * @description Needs `raise_hold` for oneself, and the hat of the coordinator, the medic, the production or the guardian for others. Nobody says why.
         */
        post: operations["stand_down"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/stand-downs/{stand_down}/return": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring somebody back
         * @description Needs to be the medic, or whoever stood them down.
         */
        post: operations["bring_back"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/today": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read today
         * @description Needs `read_production`. What the caller is asked to sign, what is held, what comes next and which
         *     certificates lapse too early.
         */
        get: operations["read_today"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the trail
         * @description Needs `read_trail`. Newest first, each leaf with its hash and told in a sentence.
         */
        get: operations["read_trail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/checkpoint": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the signed checkpoint
         * @description Needs `read_trail`. A C2SP signed note over the trail's size and root, with the lines of the witnesses that
         *     cosigned it; keep it, and a later trail can be proved to contain all of today's.
         */
        get: operations["read_checkpoint"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/consistency": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Prove that the trail only grew
         * @description Needs `read_trail`.
         */
        get: operations["prove_growth"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/cosignatures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring a cosignature
         * @description Needs `read_trail`: it proves itself, whoever brings it. It is checked against the keys of this production's
         *     witnesses and against the checkpoint that this server signs for that size. It appends no entry, which would grow
         *     the very tree that was cosigned; the checkpoint and the export carry it. Bringing it again changes nothing.
         */
        post: operations["bring_cosignature"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Export the trail
         * @description Needs `read_trail`. Personal parts stay here: the file carries commitments to them. With `parts=true`, which
         *     needs `read_personal` and `read_medical` too, they go with it, and `gagwright audit` rebuilds any gag at any
         *     moment from the file. `gagwright verify` checks it with no server.
         */
        get: operations["export_trail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/proof": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Prove a leaf
         * @description Needs `read_trail`.
         */
        get: operations["prove_leaf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/witnesses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List witnesses
         * @description Needs `read_trail`. In the order they were added, those that were removed included, each with the sizes of the
         *     trail that it cosigned.
         */
        get: operations["list_witnesses"];
        put?: never;
        /**
         * Add a witness
         * @description Needs `change_policy`. A witness is somebody outside who looks at the trail's checkpoints from time to time and
         *     signs that each continues the last one it saw. Its key is of the C2SP form for cosignatures.
         */
        post: operations["add_witness"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/productions/{production}/trail/witnesses/{witness}/remove": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Remove a witness
         * @description Needs `change_policy`. What it cosigned stays and is exported as before; what it cosigns from now on is refused.
         */
        post: operations["remove_witness"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List one's own sign-ins
         * @description The one used last comes first. The refresh cookie, where it is sent along, tells which one is asking.
         */
        get: operations["list_sign_ins"];
        put?: never;
        /**
         * Sign in
         * @description Answers an access token for 15 minutes and sets the cookie `gagwright_refresh`, which is good once.
         */
        post: operations["sign_in"];
        /**
         * Sign out
         * @description Revokes the cookie's whole family and makes the browser forget it. Signing out twice is no failure.
         */
        delete: operations["sign_out"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions/others": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * End all of one's other sign-ins
         * @description Takes the refresh cookie, which tells the one that stays.
         */
        delete: operations["end_other_sign_ins"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions/refresh": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Get the next access token
         * @description Takes the cookie `gagwright_refresh` and sets the next one. If that answer was lost, the same cookie may
         *     be sent again, as long as nothing was done with what followed. Two copies of a session that are both
         *     used give themselves away: the whole family is revoked, and signing in is needed.
         */
        post: operations["refresh_session"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions/{session}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * End one of one's own sign-ins
         * @description It is asked for its password again within a quarter of an hour, when its access token runs out. One that has
         *     ended already is no failure.
         */
        delete: operations["end_sign_in"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/setup": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Set the server up
         * @description Works once, with the token of the link that the server prints while nobody has an account.
         */
        post: operations["set_up"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/signoffs/{signoff}/conditions-met": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say that a condition is met
         * @description Needs `sign_off`, and the hat that set the condition.
         */
        post: operations["meet_condition"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/signoffs/{signoff}/photograph": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * See the photograph of a sign-off on paper
         * @description For its signer, its witness, and those with `read_personal`.
         */
        get: operations["read_photograph"];
        /**
         * Keep the photograph of a sign-off on paper
         * @description Needs to be a member of the production: its witness signed for its SHA-256, so anyone on it may bring it.
         *     A JPEG or PNG of at most 4 MiB. None is kept once its signer or its witness was erased.
         */
        put: operations["keep_photograph"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/signoffs/{signoff}/resolutions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Resolve a decline in writing
         * @description Needs `sign_off`, and a role that the policy names for it. The decline stays on the record; anyone who
         *     holds the role it was made under may sign again.
         */
        post: operations["resolve_decline"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/status": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the server is */
        get: operations["read_status"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List techniques
         * @description Needs a signed-in account. Forms, tables and plots are drawn from these descriptions.
         */
        get: operations["list_techniques"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{name}/assessment": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Assess a technique
         * @description Needs a signed-in account. Computes and stores nothing, so it takes no idempotency key.
         */
        post: operations["assess_technique"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/calibrate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What test shots teach, and what the next shot may do
         * @description Needs a signed-in account. Fits the technique's coefficients to at most 200 shots. Refused, saying
         *     which shot is missing, when the shots cannot settle a coefficient. Computes and stores nothing, so it
         *     takes no idempotency key.
         */
        post: operations["calibrate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/compare": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What a change of plan changes
         * @description Needs a signed-in account. Both plans are of this technique. Computes and stores nothing, so it takes
         *     no idempotency key.
         */
        post: operations["compare"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/limits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List a technique's limits of habit
         * @description Needs a signed-in account. Each with its value, why it is what it is, and who says so.
         */
        get: operations["list_limits"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/sensitivity": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Which inputs move a figure most
         * @description Needs a signed-in account. Moves each input alone to the ends of its tolerance. Computes and stores
         *     nothing, so it takes no idempotency key.
         */
        post: operations["sensitivity"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/solve": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Which value of an input gives a wanted figure
         * @description Needs a signed-in account. Gives every value in the range, or says why there is none. Computes and
         *     stores nothing, so it takes no idempotency key.
         */
        post: operations["solve"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/techniques/{technique}/spread": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * How a technique's figures spread
         * @description Needs a signed-in account. Draws states within the inputs' tolerances, at most 100,000, the same for
         *     the same seed. Computes and stores nothing, so it takes no idempotency key.
         */
        post: operations["spread"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description The link's token, and the account to make. */
        Accept: {
            /** @description What stands after the `#` of the link. */
            token: string;
            /** @description Name. */
            name: string;
            /** @description A password of at least 12 characters; where the address has an account already, its password. */
            password: string;
        };
        /** @description How far one parameter, or every parameter of one quantity, may move before a role signs again. */
        AcceptedBand: {
            /** @description The role that accepts it. */
            role: components["schemas"]["Role"];
            /** @description The parameter, by its machine name in whichever technique has it. */
            parameter?: string;
            /** @description Or every parameter of this quantity. */
            quantity?: components["schemas"]["Quantity"];
            /** @description Where the number comes from: "common practice", or whoever set it. */
            because?: string;
            /**
             * Format: double
             * @description Up to this share of the value signed: 0.02 is two per cent.
             */
            relative?: number;
            /**
             * Format: double
             * @description Or up to this much, SI.
             */
            absolute?: number;
        };
        /** @description An account by its names. */
        AccountRef: {
            /**
             * Format: uuid
             * @description Which.
             */
            id: string;
            /** @description Name. */
            name: string;
            /** @description Address. */
            email: string;
        };
        /** @description What happens. */
        Action: {
            /** @description One paragraph. */
            summary: string;
            /** @description The steps in order, with cues. */
            steps?: string[];
            /** @description Hazards beyond those the technique always brings. */
            hazards?: components["schemas"]["Hazard"][];
            /** @description Hazards weighed. A hazard weighed here is one the gag has. */
            risks?: components["schemas"]["Risk"][];
            /** @description What makes anyone stop: the abort word, the bail. */
            abort?: string;
            /** @description The technique's parameters about the action. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description What follows a take. */
        AfterTake: {
            /** @description Whether the medic looks at everyone who performed before the next go, whatever the gag. */
            look_always: boolean;
            /** @description Gags on which the medic does all the same, by hazard. */
            look_hazards: components["schemas"]["Hazard"][];
            /**
             * Format: int32
             * @description Days that a head impact keeps a performer from performing, that day included.
             */
            head_impact_days: number;
        };
        /** @description A leaf that came after. */
        AfterThen: {
            /**
             * Format: int64
             * @description Which.
             */
            leaf: number;
            /** @description When it was received. */
            at: string;
            /** @description What it says happened. */
            sentence: string;
        };
        /** @description Under which hat, and what was the cause. */
        Agree: {
            /** @description The hat. */
            role: components["schemas"]["Role"];
            /** @description The cause and what was done about it. */
            cause: string;
        };
        /** @description One agreement to release a hold. */
        Agreement: {
            /** @description The hat. */
            role: components["schemas"]["Role"];
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description The cause and what was done, said aloud and written. */
            cause: string;
        };
        /** @description Everything a technique has to say about one set of inputs. */
        Assessment: {
            /** @description The technique's name, for example `high-fall`. */
            technique: string;
            /** @description Computed numbers, the most telling first. */
            figures: components["schemas"]["Figure"][];
            /** @description Figures held against limits. */
            checks: components["schemas"]["Check"][];
            /** @description Time series for plotting. */
            traces: components["schemas"]["Trace"][];
            /** @description Ground that must be clear. */
            zones: components["schemas"]["Zone"][];
            /** @description What a reader must know about this very result. */
            cautions: components["schemas"]["Caution"][];
        };
        /** @description What a signer puts their name to. */
        Attestation: {
            /** @description Versioned id. */
            id: string;
            /** @description The words, in English. */
            text: string;
            /** @description The same words in other languages, by language code (RFC 5646). */
            texts?: {
                [key: string]: string;
            };
        };
        /** @description A run of days on which someone can or cannot work. */
        Availability: {
            /**
             * Format: date
             * @description First day.
             */
            from: string;
            /**
             * Format: date
             * @description Last day.
             */
            to: string;
            /** @description Whether they can work. */
            available: boolean;
        };
        /** @description Taking a piece of equipment back into use. */
        BackInUse: {
            /** @description What the inspection found. */
            found: string;
            /**
             * Format: date
             * @description Last day the new inspection counts.
             */
            inspected_until: string;
            /**
             * Format: date-time
             * @description When it was inspected, at most five minutes ahead of the server's clock: what befell the piece after that is
             *     not settled by it.
             */
            at: string;
        };
        /** @description A band that a reading must stay inside. */
        Band: {
            /** @description What is read. */
            reading: components["schemas"]["ReadingKind"];
            /**
             * Format: double
             * @description Least allowed, SI.
             */
            min?: number | null;
            /**
             * Format: double
             * @description Most allowed, SI.
             */
            max?: number | null;
            /**
             * Format: int32
             * @description How long a reading inside the band may be leaned on before the next one, minutes. A reading
             *     outside stops the gag until a newer one is inside, however old it grows.
             */
            max_age_minutes: number;
        };
        /** @description How far one input's tolerance moves a figure. */
        Bar: {
            /** @description The input's machine name. */
            parameter: string;
            /** @description The input's title. */
            title: string;
            /**
             * Format: double
             * @description The figure with the input at the low end of its tolerance; none when it is not given there.
             */
            at_low: number | null;
            /**
             * Format: double
             * @description The figure with the input at the high end.
             */
            at_high: number | null;
            /**
             * Format: double
             * @description From the lowest to the highest of these and the stated value.
             */
            swing: number;
            /**
             * Format: double
             * @description Its part in the sum of all squared swings.
             */
            share: number;
        };
        /** @description One thing that stops a gag. */
        Block: {
            /** @description What kind of thing. */
            kind: components["schemas"]["BlockKind"];
            /** @description The role, check, slot, hold, band or rung it is about, by machine name or id. */
            about: string;
            /** @description What is wrong, in a sentence. */
            reason: string;
            /** @description What would put it right, in a sentence. */
            remedy: string;
        };
        /**
         * @description What kind of thing stops a gag, worst first.
         * @enum {string}
         */
        BlockKind: "hold" | "incident" | "check" | "inputs" | "performer" | "condition" | "equipment" | "decline" | "separation" | "lapsed" | "unsigned" | "open_condition" | "uncast" | "undated" | "rehearsal";
        /**
         * @description Which side of a limit is allowed.
         * @enum {string}
         */
        Bound: "at_most" | "at_least";
        /** @description A briefing on the spot. */
        Briefing: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /**
             * Format: date
             * @description The day it is for.
             */
            day: string;
            /** @description Where. */
            place: string;
            /**
             * Format: int32
             * @description The revision that people were told of.
             */
            revision: number;
            /** @description What was briefed, as in the plan then current: a briefing counts while these are unchanged. */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", string>>;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who led it. */
            by: components["schemas"]["PersonId"];
            /** @description Who was there. */
            attended: components["schemas"]["PersonId"][];
            /** @description What was said beyond the plan: deviations, the abort word, who may call a stop. */
            points?: string;
        };
        /** @description Who must be briefed. */
        BriefingPolicy: {
            /** @description Whether everyone cast must have been there. */
            cast: boolean;
            /** @description Whether everyone must whose mark for the day stands. */
            signers: boolean;
        };
        /** @description Who was briefed. */
        BriefingStanding: {
            /** @description Whether the policy asks for one. */
            asked: boolean;
            /**
             * Format: date-time
             * @description When the last that counts was held; none: none was.
             */
            at?: string | null;
            /** @description Whether one was held for this day and place that the plan has since left behind. */
            outdated: boolean;
            /** @description Who was there, over every briefing that counts. */
            attended: components["schemas"]["PersonId"][];
            /** @description Who must be and was not. */
            missed: components["schemas"]["PersonId"][];
        };
        /** @description What to learn, and for which shot. */
        CalibrateRequest: {
            /** @description The next shot's inputs. */
            inputs: components["schemas"]["Inputs"];
            /** @description The shots so far. */
            shots: components["schemas"]["MeasuredShot"][];
            /** @description Which coefficients to fit; all of the technique's when left out. */
            coefficients?: string[];
            /**
             * Format: double
             * @description How sure the intervals are to be, from 0.5 to 0.999.
             */
            confidence?: number;
        };
        /** @description What was learned. */
        Calibration: {
            /** @description The technique's name. */
            technique: string;
            /**
             * Format: double
             * @description How sure the intervals are.
             */
            confidence: number;
            /** @description The coefficients. */
            coefficients: components["schemas"]["Coefficient"][];
            /** @description Every measurement beside the fit, in the order of the shots. */
            shots: components["schemas"]["ShotRow"][];
            /** @description How far single measurements of a figure stray from the fit (standard deviation). */
            deviation: components["schemas"]["Deviation"][];
            /** @description What the next shot may do, for each figure that was measured. */
            prediction: components["schemas"]["Prediction"][];
        };
        /** @description Camera positions. */
        Camera: {
            /** @description Each camera. */
            positions?: components["schemas"]["CameraPosition"][];
            /** @description What the shot must sell. */
            notes?: string;
            /** @description The technique's parameters about cameras. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description One camera. */
        CameraPosition: {
            /** @description Letter or name. */
            name: string;
            /** @description Where it stands. */
            place: string;
            /** @description Lens and frame rate. */
            lens?: string;
        };
        /** @description One person held against a slot. */
        Candidate: {
            /** @description Who. */
            person: components["schemas"]["CandidatePerson"];
            /** @description How they stand, requirement by requirement. */
            verdict: components["schemas"]["Verdict"];
        };
        /** @description A candidate by their names. */
        CandidatePerson: {
            /** @description Who. */
            id: components["schemas"]["PersonId"];
            /** @description Name. */
            name: string;
            /** @description The production's code for them. */
            code: string;
            /** @description What they are called for. */
            occupation: string;
        };
        /** @description Everything that bears on one gag. Owned, so that it travels as one JSON value to a phone. */
        Case: {
            /** @description The production. */
            production: components["schemas"]["ProductionId"];
            /** @description The current revision. */
            plan: components["schemas"]["Plan"];
            /** @description Every sign-off ever made on this gag, any revision, in trail order. */
            signoffs: components["schemas"]["SignOff"][];
            /** @description Holds on this gag or on the whole production. */
            holds: components["schemas"]["Hold"][];
            /** @description Readings of the conditions. */
            readings: components["schemas"]["Reading"][];
            /** @description Rehearsal runs logged on this gag. */
            runs: components["schemas"]["RehearsalRun"][];
            /** @description The people cast in the plan's slots. */
            people: components["schemas"]["Person"][];
            /** @description Who holds which hats. */
            members: components["schemas"]["Member"][];
            /** @description Devices of those who signed. */
            devices: components["schemas"]["Device"][];
            /** @description The policy the plan is judged by. */
            policy: components["schemas"]["Policy"];
            /** @description What happened on the day. */
            day?: components["schemas"]["DayLog"];
            /** @description What earlier revisions said, as far as sign-offs on them need. */
            earlier?: components["schemas"]["EarlierFacets"][];
            /** @description Who may sign in whose stead. */
            delegations?: components["schemas"]["Delegation"][];
            /** @description Declines on this gag that were resolved in writing. */
            resolutions?: components["schemas"]["Resolution"][];
        };
        /** @description Who performs. */
        Cast: {
            /** @description One for each performer. */
            slots?: components["schemas"]["Slot"][];
            /** @description The technique's parameters about bodies. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description A sentence a reader must see beside this result. */
        Caution: {
            /** @description Machine name. */
            name: string;
            /** @description The sentence, specific to the result. */
            text: string;
        };
        /** @description One thing wrong with one cell of a roster, and how to put it right. */
        CellProblem: {
            /**
             * Format: int64
             * @description Line of the file, counting the header as 1; 0 when it is about the whole file.
             */
            row: number;
            /** @description The column's name; empty when it is about the whole row. */
            column: string;
            /** @description What is wrong. */
            problem: string;
            /** @description How to put it right. */
            fix: string;
        };
        /** @description A dated, scoped proof from an issuer. */
        Certificate: {
            /** @description Which one. */
            id: components["schemas"]["CertificateId"];
            /** @description Kind from the catalogue, for example `rope_access_3`. */
            kind: string;
            /** @description Category or class inside the kind, where it has them. */
            category?: string | null;
            /** @description The number on it. */
            number?: string | null;
            /** @description Who issued it. */
            issuer?: string | null;
            /**
             * Format: date
             * @description First day it counts.
             */
            issued: string;
            /**
             * Format: date
             * @description Last day it counts; none where the scheme has no expiry.
             */
            expires?: string | null;
            /**
             * Format: date
             * @description Last time the work it covers was done, for schemes whose clock runs on use.
             */
            last_used?: string | null;
            checked?: components["schemas"]["EvidenceCheck"] | null;
            /**
             * Format: date
             * @description When it was withdrawn, if it was.
             */
            withdrawn?: string | null;
        };
        /** @description A certificate's kind and last day. */
        CertificateExpiry: {
            /** @description Kind from the catalogue. */
            kind: string;
            /**
             * Format: date
             * @description Last day it counts.
             */
            expires: string;
        };
        /**
         * Format: uuid
         * @description A certificate held by a person.
         */
        CertificateId: string;
        /** @description One kind of certificate. */
        CertificateKind: {
            /** @description Machine name, for example `rope_access_3`. */
            kind: string;
            /** @description What people read, in running text. */
            title: string;
            /** @description The scheme it belongs to, described. */
            scheme: string;
            /** @description How long it counts. */
            validity: components["schemas"]["Validity"];
            /**
             * Format: int32
             * @description Days a renewal usually takes; none: it cannot be renewed, only earned again.
             */
            renewal_lead_days: number | null;
            use_clock: components["schemas"]["UseClock"] | null;
            /** @description Lower kinds it stands in for. */
            satisfies: string[];
            /** @description Categories or classes it comes in; empty where it has none or they are free. */
            categories: string[];
            /** @description What else to know. */
            note: string | null;
            /** @description Where the rule comes from. */
            standing: components["schemas"]["RuleStanding"];
            /** @description The document, or that it is common practice. */
            source: string;
        };
        /** @description An input that differs. */
        Change: {
            /** @description The parameter's machine name. */
            name: string;
            /** @description Its title. */
            title: string;
            quantity: components["schemas"]["Quantity"] | null;
            before: components["schemas"]["InputValue"] | null;
            after: components["schemas"]["InputValue"] | null;
        };
        /** @description One leaf in the feed of changes. */
        ChangeItem: {
            /**
             * Format: int64
             * @description Position in the trail.
             */
            index: number;
            /** @description When. */
            at: string;
            /** @description What kind of command. */
            kind: string;
            /** @description The gag, where it is about one. */
            gag: string | null;
            /** @description Who did it. */
            actor: string | null;
            /** @description Their name, where they are still on the roster. */
            actor_name: string | null;
            /** @description The hold, where it is about one. */
            hold?: string | null;
            /** @description The near miss or incident, where it is about one. */
            incident?: string | null;
            /** @description The gag's code, where it is about one: a phone that hears of a hold says at once what is held. */
            code?: string | null;
        };
        /** @description The password that is, and the one that shall be. */
        ChangePassword: {
            /** @description The password signed in with until now. */
            current: string;
            /** @description A password of at least 12 characters. */
            new: string;
        };
        /** @description The feed after a position. */
        Changes: {
            /**
             * Format: int64
             * @description Leaves in the trail.
             */
            size: number;
            /** @description Those after the position asked for, oldest first. */
            items: components["schemas"]["ChangeItem"][];
        };
        /** @description A limit held against a figure. */
        Check: {
            /** @description Machine name, unique in the assessment. */
            name: string;
            /** @description What people read: what is being held against what. */
            title: string;
            /** @description The figure's name, where the check is about one figure. */
            figure: string | null;
            /** @description The parameter's name, where the check is about an input itself. */
            input?: string;
            /**
             * Format: double
             * @description The figure's value when it was checked, SI; none when an input it needs is unknown.
             */
            value: number | null;
            /**
             * Format: double
             * @description Low end of the figure's interval, SI.
             */
            low: number | null;
            /**
             * Format: double
             * @description High end of the figure's interval, SI.
             */
            high: number | null;
            /** @description The limit. */
            limit: components["schemas"]["Limit"];
            /** @description Who says so. */
            source: components["schemas"]["Source"];
            /** @description The outcome. */
            status: components["schemas"]["Status"];
            /** @description Whether exceeding it stops the gag (true) or is a caution for those who sign (false). */
            blocking: boolean;
            /** @description One sentence for a person: what was found, and what would change it. */
            detail: string;
        };
        /** @description What becomes of one check, where the policy sets a limit. */
        CheckEffect: {
            /** @description The check's machine name. */
            check: string;
            /** @description What people read. */
            title: string;
            /** @description How it stands now. */
            before: components["schemas"]["Status"];
            /** @description How it would stand. */
            after: components["schemas"]["Status"];
        };
        /** @description One option of a choice parameter. */
        Choice: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
        };
        /** @description The answer. */
        Clearance: {
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /**
             * Format: int32
             * @description The revision judged.
             */
            revision: number;
            /** @description Its digest. */
            plan_digest: string;
            /** @description Each facet's hash. */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", string>>;
            /** @description The answer in a word. */
            state: components["schemas"]["ClearanceState"];
            /** @description Every role that must sign and how it stands. */
            roles: components["schemas"]["RoleStanding"][];
            /** @description Every slot, who is cast and whether they may. */
            slots: components["schemas"]["SlotStanding"][];
            /** @description Everything that stops it, worst first. Empty exactly when `state` is `cleared`. */
            blocks: components["schemas"]["Block"][];
            assessment: components["schemas"]["Assessment"] | null;
            /** @description Hazards present. */
            hazards: components["schemas"]["Hazard"][];
            /** @description How the day stands. `state` and `blocks` are the plan's answer alone. */
            day: components["schemas"]["DayStanding"];
            /** @description Whether a go may be called: the plan cleared, the day standing, and nothing in between. */
            go: components["schemas"]["GoStanding"];
            /** @description The plan's risks with the levels of the matrix, in the plan's order. */
            risks: components["schemas"]["RiskStanding"][];
        };
        /**
         * @description The answer in a word, best first; the worst that applies is given.
         * @enum {string}
         */
        ClearanceState: "cleared" | "not_asked" | "waiting" | "lapsed" | "blocked" | "held";
        /** @description One name under what was done so that it does not happen again. */
        Closing: {
            /** @description The hat. */
            role: components["schemas"]["Role"];
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description What was done. */
            action: string;
        };
        /**
         * @description Every code the API refuses with. Clients switch on these, so they never change meaning.
         * @enum {string}
         */
        Code: "malformed_json" | "invalid_input" | "unknown_id" | "no_such_route" | "method_not_allowed" | "not_signed_in" | "token_expired" | "forbidden" | "stale_plan" | "precondition_required" | "conflict" | "key_reused" | "sign_off_refused" | "handed_refused" | "body_too_large" | "unsupported_media" | "roster_refused" | "rate_limited" | "unavailable" | "storage_full" | "internal";
        /** @description A fitted coefficient, SI. */
        Coefficient: {
            /** @description The parameter's machine name. */
            name: string;
            /** @description Its title. */
            title: string;
            /** @description Its kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description What the plan states.
             */
            stated: number;
            /**
             * Format: double
             * @description What the shots say.
             */
            value: number;
            /**
             * Format: double
             * @description Its standard error.
             */
            error: number;
            /**
             * Format: double
             * @description Low end of its interval.
             */
            low: number;
            /**
             * Format: double
             * @description High end of its interval.
             */
            high: number;
        };
        /** @description Two plans of one technique. */
        CompareRequest: {
            /** @description The inputs of the earlier plan. */
            before: components["schemas"]["Inputs"];
            /** @description The inputs of the later plan. */
            after: components["schemas"]["Inputs"];
        };
        /** @description What changed. */
        Comparison: {
            /** @description The technique's name. */
            technique: string;
            /** @description The inputs that differ, in the order of the form; an input left out counts as its default. */
            inputs: components["schemas"]["Change"][];
            /** @description Every figure that either plan gives. */
            figures: components["schemas"]["MovedFigure"][];
            /** @description Every check that either plan has. */
            checks: components["schemas"]["MovedCheck"][];
        };
        /** @description A condition that was met. */
        ConditionMet: {
            /** @description The commitment to the condition's text, as signed. */
            condition: string;
            /** @description Who says it is met: only a holder of the role that set it. */
            by: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
        };
        /** @description Limits on the day's conditions. */
        Conditions: {
            /** @description Bands for readings. */
            bands?: components["schemas"]["Band"][];
            /** @description Anything else that stops work. */
            stop_on?: string[];
            /** @description The technique's parameters about conditions. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description Agreement to perform one revision of a gag. */
        Consent: {
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /**
             * Format: int32
             * @description The revision agreed to.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was withdrawn, if it was.
             */
            withdrawn?: string | null;
        };
        /** @description An RFC 6962 consistency proof (section 2.1.2). */
        ConsistencyProof: {
            /**
             * Format: int64
             * @description Leaves in the smaller tree.
             */
            from: number;
            /**
             * Format: int64
             * @description Leaves in the larger tree.
             */
            to: number;
            /** @description The path, hex. */
            path: string[];
        };
        /** @description One thing done against a risk. */
        Control: {
            /** @description What kind of thing. */
            kind: components["schemas"]["ControlKind"];
            /** @description What is done. */
            what: string;
        };
        /**
         * @description The hierarchy of controls, the strongest first (ISO 45001 clause 8.1.2; from memory).
         * @enum {string}
         */
        ControlKind: "remove" | "substitute" | "engineer" | "organise" | "protect";
        /** @description A checkpoint that a witness cosigned. */
        CosignedView: {
            /** @description The witness's name. */
            name: string;
            /**
             * Format: int64
             * @description How many entries the trail had.
             */
            size: number;
            /**
             * Format: date-time
             * @description When, by the witness's clock.
             */
            at: string;
            /**
             * Format: date-time
             * @description When it came here.
             */
            received_at: string;
        };
        /** @description How often a limit was crossed. */
        Crossing: {
            /** @description The check's name. */
            check: string;
            /** @description The check's title. */
            title: string;
            /** @description Whether crossing it stops the gag. */
            blocking: boolean;
            /**
             * Format: double
             * @description Share of the draws that gave a value and lie outside the limit; none when no draw gave one.
             */
            share: number | null;
            /**
             * Format: double
             * @description Share of the draws that gave no value.
             */
            unknown: number;
        };
        /** @description What would cure an unmet requirement. */
        Cure: {
            /** @description What to do: "check-ride before the shooting day". */
            what: string;
            /**
             * Format: date
             * @description The last day on which doing it still helps.
             */
            by: string;
        };
        /** @description One thing that the day or a go waits for. */
        DayBlock: {
            /** @description What kind of thing. */
            kind: components["schemas"]["DayBlockKind"];
            /** @description The role, slot, serial, reading, person or take it is about, by machine name or id. */
            about: string;
            /** @description What is wrong, in a sentence. */
            reason: string;
            /** @description What would put it right, in a sentence. */
            remedy: string;
        };
        /**
         * @description What kind of thing the day or a go waits for.
         * @enum {string}
         */
        DayBlockKind: "plan" | "not_today" | "briefing" | "reading" | "equipment" | "stood_down" | "performer" | "decline" | "lapsed" | "unsigned" | "open_take" | "look";
        /** @description The production's day at a glance. */
        DayBook: {
            /** @description The register of equipment, by serial. */
            equipment: components["schemas"]["RegisteredItem"][];
            /** @description How each piece stands today. */
            equipment_states: {
                [key: string]: components["schemas"]["EquipmentState"];
            };
            /** @description Takes that were called and have not ended, the oldest first. */
            open_takes: components["schemas"]["OpenTakeOf"][];
            /** @description Stand-downs that hold now. */
            stand_downs: components["schemas"]["StandDown"][];
            /** @description Those of them that the reader may end. */
            may_bring_back: components["schemas"]["RecordId"][];
            /** @description Near misses and incidents, the newest first. */
            incidents: components["schemas"]["IncidentStanding"][];
            /** @description Names of everyone mentioned. */
            names: {
                [key: string]: string;
            };
        };
        /** @description Everything recorded on the day that bears on one gag. */
        DayLog: {
            /**
             * @description The production's register, as far as this gag's plan names what is in it.
             * @default []
             */
            equipment: components["schemas"]["RegisteredItem"][];
            /**
             * @description Briefings on this gag.
             * @default []
             */
            briefings: components["schemas"]["Briefing"][];
            /**
             * @description Every mark for a day ever made on this gag, in trail order.
             * @default []
             */
            signoffs: components["schemas"]["DaySignOff"][];
            /**
             * @description Takes of this gag.
             * @default []
             */
            takes: components["schemas"]["Take"][];
            /**
             * @description Debriefs after takes of this gag.
             * @default []
             */
            debriefs: components["schemas"]["Debrief"][];
            /**
             * @description The medic's looks at the people cast, whichever gag each followed.
             * @default []
             */
            looks: components["schemas"]["Look"][];
            /**
             * @description Stand-downs of the people cast.
             * @default []
             */
            stand_downs: components["schemas"]["StandDown"][];
            /**
             * @description Near misses and incidents on this gag or on the whole production.
             * @default []
             */
            incidents: components["schemas"]["Incident"][];
            /**
             * @description Takes of other gags with somebody or something of this one in them.
             * @default []
             */
            elsewhere: components["schemas"]["TakeElsewhere"][];
            /**
             * @description What the people cast have taken in the takes of other gags.
             * @default []
             */
            taken: components["schemas"]["Taken"][];
            /**
             * @description The skills the people cast have used in the takes of other gags.
             * @default []
             */
            practised: components["schemas"]["Practised"][];
        };
        /** @description What the day needs. */
        DayPolicy: {
            /** @description Who signs the day, of those who must sign the plan, and under which words. */
            roles: components["schemas"]["DayRole"][];
            /**
             * Format: int32
             * @description Hours a mark for the day counts; it never outlasts the day itself.
             */
            good_for_hours: number;
            /** @description Readings that are asked for whatever bands the plan has. */
            readings: components["schemas"]["DayReading"][];
            /** @description Who must be briefed on the spot. */
            briefing: components["schemas"]["BriefingPolicy"];
            /** @description Hats that may call a go. */
            go: components["schemas"]["Role"][];
        };
        /** @description A statement about a day made ready, with the words its signer is shown. */
        DayPrepared: {
            /** @description What would be signed. */
            statement: components["schemas"]["DayStatement"];
            /** @description The words that are put a name to. */
            attestation: components["schemas"]["Attestation"];
            /** @description The place as people call it. */
            place: string;
        };
        /** @description A reading that is asked for. */
        DayReading: {
            /** @description What is read. */
            kind: components["schemas"]["ReadingKind"];
            /**
             * Format: int32
             * @description The greatest age, minutes; a band of the plan may ask for less.
             */
            max_age_minutes: number;
            /** @description On gags with any of these hazards; none named: on every gag. */
            hazards: components["schemas"]["Hazard"][];
        };
        /** @description A role that signs the day. */
        DayRole: {
            /** @description The role. */
            role: components["schemas"]["Role"];
            /** @description The words and their id (`medic/day/1`). */
            attestation: components["schemas"]["Attestation"];
        };
        /** @description A mark for the day as received. */
        DaySignOff: {
            /** @description The compact JWS exactly as the device made it. */
            jws: string;
            /**
             * Format: date-time
             * @description When the server received it.
             */
            received_at: string;
            /**
             * Format: int64
             * @description Its leaf in the trail.
             */
            leaf: number;
        };
        /** @description How the day stands, beside the plan. */
        DayStanding: {
            /**
             * Format: date
             * @description The day judged: the one briefed for, the plan's while it is to come or is now, or today.
             */
            day: string;
            /** @description The place: the one briefed at, or the plan's. */
            place: string;
            /** @description Whether everything of the day stands. Says nothing of the plan. */
            stands: boolean;
            /** @description Every role that must sign the day, and how it stands. */
            marks: components["schemas"]["RoleStanding"][];
            /** @description The briefing. */
            briefing: components["schemas"]["BriefingStanding"];
            /** @description What must be read. */
            readings: components["schemas"]["ReadingStanding"][];
            /** @description What the plan is built from. */
            equipment: components["schemas"]["EquipmentStanding"][];
            /** @description Who performs. */
            people: components["schemas"]["PersonStanding"][];
            /** @description Everything that the day waits for, in the order of the list above. Empty exactly when it stands. */
            blocks: components["schemas"]["DayBlock"][];
        };
        /** @description What is signed for a day. Its RFC 8785 bytes are the JWS payload. */
        DayStatement: {
            /** @description [`DayStatement::KIND`] or, with `ink`, [`DayStatement::INK`]. */
            kind: string;
            /** @description This mark; minted by the device, so a replay is seen. */
            id: components["schemas"]["SignOffId"];
            /** @description The production. */
            production: components["schemas"]["ProductionId"];
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /**
             * Format: int32
             * @description The revision that will be performed.
             */
            revision: number;
            /** @description RFC 6962 root over its facets in table order, hex. */
            plan_digest: string;
            /** @description Hashes of the facets the role answers for. */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", string>>;
            /** @description The hat it is signed under. */
            role: components["schemas"]["Role"];
            /** @description The performer's slot; only with [`Role::Performer`]. */
            slot?: components["schemas"]["SlotId"];
            /** @description The delegation under which a delegate signs; none: the signer holds the hat themselves. */
            delegation?: components["schemas"]["RecordId"];
            /** @description Yes or no; a day is never approved with conditions, and nobody has to say why not. */
            decision: components["schemas"]["Decision"];
            /** @description Id of the attestation text shown. */
            attestation: string;
            /**
             * Format: date
             * @description The day.
             */
            day: string;
            /** @description The place: see [`place_hash`]. It may be somebody's address, so it is not signed in the clear. */
            place: string;
            /** @description Serial numbers of the equipment, sorted. */
            serials: string[];
            /** @description Who is cast in which slot. */
            cast: {
                [key: string]: components["schemas"]["PersonId"];
            };
            /** @description The readings that were shown. */
            readings?: components["schemas"]["LeanedOn"][];
            /** @description Who signs. */
            signer: components["schemas"]["PersonId"];
            /** @description The device whose key signs. */
            device: components["schemas"]["DeviceId"];
            /**
             * Format: date-time
             * @description When, by the device's clock: shown, never trusted for order.
             */
            signed_at: string;
            /**
             * Format: date-time
             * @description Until when it counts.
             */
            good_until: string;
            /** @description SHA-256, lower-case hex, of the mark the signer drew; none: they only confirmed. */
            mark?: string;
            /** @description Who saw it signed on paper; only with [`DayStatement::INK`], and then `device` is theirs. */
            ink?: components["schemas"]["Ink"];
        };
        /** @description What was said after the takes of a day. */
        Debrief: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /**
             * Format: date
             * @description The day it looks back on.
             */
            day: string;
            /** @description Where. */
            place: string;
            /**
             * Format: int32
             * @description The revision performed.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who led it. */
            led_by: components["schemas"]["PersonId"];
            /** @description Who wrote it down. */
            by: components["schemas"]["PersonId"];
            /** @description Who was there. */
            attended: components["schemas"]["PersonId"][];
            /** @description What went as planned. */
            as_planned?: string;
            /** @description What went differently. */
            differently?: string;
            /** @description What changes next time. */
            next_time?: string;
            /** @description What each performer used; of whoever is not named here, what their slot asks for counts. */
            used?: components["schemas"]["Used"][];
        };
        /**
         * @description Yes, yes if, or no.
         * @enum {string}
         */
        Decision: "approve" | "approve_with_conditions" | "decline";
        /** @description One delegation: `to` may sign as `role` in the stead of `from`. */
        Delegation: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description The holder of the role. */
            from: components["schemas"]["PersonId"];
            /** @description Who signs in their stead. */
            to: components["schemas"]["PersonId"];
            /** @description The role. */
            role: components["schemas"]["Role"];
            /** @description The gags it is for; empty: all of them. */
            gags?: string[];
            /**
             * Format: date-time
             * @description From when, by the server's clock: what arrives before does not count, whenever it was signed.
             */
            starts: string;
            /**
             * Format: date-time
             * @description Until when.
             */
            until: string;
            /** @description Its limits in words: "the night unit only". */
            limits?: string;
            /**
             * Format: date-time
             * @description When it was made, server time.
             */
            made_at: string;
            /**
             * Format: date-time
             * @description When it was ended before its time, if it was.
             */
            ended_at?: string | null;
        };
        /** @description What the policy allows the holders of one role to hand on. */
        DelegationRule: {
            /**
             * Format: int32
             * @description The longest that one delegation may run, days.
             */
            longest_days: number;
            /** @description Whether the delegate needs the certificates that the role asks for. */
            certificates: boolean;
        };
        /** @description How somebody signs in to the demo. */
        DemoSignIn: {
            /** @description Address. */
            email: string;
            /** @description Password, which everybody knows. */
            password: string;
            /** @description Name. */
            name: string;
            /** @description What they are called for. */
            occupation: string;
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
        };
        /** @description How far a figure's measurements stray. */
        Deviation: {
            /** @description The figure's name. */
            figure: string;
            /**
             * Format: double
             * @description Standard deviation, SI.
             */
            value: number;
        };
        /** @description A device's public key (JWK, RFC 7517) and its life. */
        Device: {
            /** @description Which. */
            id: components["schemas"]["DeviceId"];
            /** @description Whose. */
            person: components["schemas"]["PersonId"];
            /** @description What its owner calls it. */
            name: string;
            /** @description P-256 public key, base64url coordinates. */
            key: components["schemas"]["PublicKey"];
            /**
             * Format: date-time
             * @description When it was registered.
             */
            registered_at: string;
            /**
             * Format: date-time
             * @description When it was revoked, if it was.
             */
            revoked_at?: string | null;
        };
        /**
         * Format: uuid
         * @description A device that holds a signing key.
         */
        DeviceId: string;
        /** @description A device that signs, or signed. */
        DeviceSummary: {
            /** @description Which. */
            id: components["schemas"]["DeviceId"];
            /** @description What its owner calls it. */
            name: string;
            /** @description Whose it is. */
            owner: components["schemas"]["PersonRef"];
            /**
             * Format: date-time
             * @description When it was registered.
             */
            registered_at: string;
            /**
             * Format: date-time
             * @description When it was revoked, if it was.
             */
            revoked_at: string | null;
            /**
             * Format: date-time
             * @description When the last sign-off made on it was received.
             */
            last_signed_at: string | null;
        };
        /**
         * @description A statement made ready for signing; the device fills in `id`, `device`, `signed_at` and the
         *     decision with its conditions or reason, then signs its canonical bytes.
         */
        Draft: {
            /** @description What would be signed. */
            statement: components["schemas"]["Statement"];
            /** @description The words the signer puts their name to. */
            attestation: components["schemas"]["Attestation"];
            /** @description The facets it covers. */
            covers: components["schemas"]["Facet"][];
            previous: components["schemas"]["PreviousSignOff"] | null;
            /** @description What changed in the covered facets since then. */
            changes: components["schemas"]["FacetChange"][];
        };
        /**
         * @description Strokes in the order they were drawn, each the points x, y, x, y ... from the top left corner of a box of
         *     1000 by 1000. A stroke of one point is a dot.
         */
        Drawing: number[][];
        /** @description Facets of one earlier revision. */
        EarlierFacets: {
            /**
             * Format: int32
             * @description The revision.
             */
            revision: number;
            /** @description Its contents, only those that the plan no longer has. */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", unknown>>;
        };
        /** @description Fire, glass and charges. */
        Effects: {
            /** @description What burns, breaks or bangs. */
            method: string;
            /** @description Charges as the licensed operator gives them. */
            charges?: components["schemas"]["GivenCharge"][];
            /** @description Who puts it out, with what. */
            suppression?: string;
            /** @description The technique's parameters about the effect. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description One accepted command, as the tree records it. The leaf's bytes are the entry's RFC 8785 form. */
        Entry: {
            /**
             * Format: int64
             * @description Position in the tree, from 0; as a number below 2^53.
             */
            index: number;
            /** @description When the server accepted it, RFC 3339 UTC. */
            at: string;
            /** @description What kind of command: `gag.created`, `plan.revised`, `signoff.made`, `hold.raised` ... */
            kind: string;
            /** @description The production. */
            production: string;
            /** @description The gag, where it is about one. */
            gag?: string;
            /** @description Id of the person who did it; none when nobody was signed in. */
            actor?: string;
            /** @description Facts that may stand in the clear: ids, revisions, hashes, roles, the JWS of a sign-off. */
            facts: {
                [key: string]: unknown;
            };
            /** @description `SHA-256(salt || canonical bytes)` of each part kept beside the leaf, hex, by the part's name. */
            commitments?: {
                [key: string]: string;
            };
        };
        /** @description One piece of equipment. */
        Equipment: {
            /** @description What it is. */
            name: string;
            /** @description Serial number. */
            serial: string;
            /**
             * Format: double
             * @description Stated safe working load, newtons.
             */
            working_load?: number | null;
            /**
             * Format: date
             * @description Last day its inspection counts.
             */
            inspected_until?: string | null;
        };
        /** @description How one piece of equipment stands. */
        EquipmentStanding: {
            /** @description Its serial number. */
            serial: string;
            /** @description What it is. */
            name: string;
            item?: components["schemas"]["RecordId"] | null;
            /**
             * Format: double
             * @description Stated safe working load, newtons.
             */
            working_load?: number | null;
            /**
             * Format: date
             * @description Last day its inspection counts.
             */
            inspected_until?: string | null;
            /** @description How it stands. */
            state: components["schemas"]["EquipmentState"];
            /** @description Why it does not, in a sentence. */
            reason?: string;
        };
        /**
         * @description How a piece of equipment stands, best first.
         * @enum {string}
         */
        EquipmentState: "ready" | "uninspected" | "quarantined";
        /** @description What was taken away, and what stays. */
        ErasedPerson: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: int64
             * @description The leaf that says so.
             */
            leaf: number;
            /**
             * Format: int32
             * @description Parts taken away from beside leaves of the trail.
             */
            parts: number;
            /**
             * Format: int32
             * @description Sign-offs whose texts were taken away; their commitments stand.
             */
            openings: number;
            /**
             * Format: int32
             * @description Drawn marks taken away.
             */
            marks: number;
            /**
             * @description Codes of gags whose current plan still casts them or names them in its inputs: plans are the production's
             *     record and stay; revise these to put somebody else in.
             */
            cast_in: string[];
        };
        /** @description Who looked at a certificate's evidence. */
        EvidenceCheck: {
            /** @description Who looked. */
            by: string;
            /**
             * Format: date
             * @description When.
             */
            on: string;
            /** @description How: register, telephone, sight of original. */
            method: string;
        };
        /** @description What a body took on a day. */
        Exposure: {
            /** @description `full_burn`, `partial_burn`, `head_impact`, `high_fall`, `ratchet_pull` ... */
            kind: string;
            /**
             * Format: date
             * @description The day.
             */
            on: string;
            /**
             * Format: int32
             * @description How many.
             */
            count: number;
        };
        /**
         * @description A named part of a plan, in the order that plans are hashed and printed.
         * @enum {string}
         */
        Facet: "setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals";
        /** @description What differs in one facet. */
        FacetChange: {
            /** @description The facet. */
            facet: components["schemas"]["Facet"];
            /** @description What differs in it; never empty. */
            fields: components["schemas"]["FieldChange"][];
        };
        /** @description The ten facets. */
        Facets: {
            /**
             * @default {
             *       "call": null,
             *       "day": null,
             *       "light": "",
             *       "location": "",
             *       "parameters": {},
             *       "scene": "",
             *       "unit": ""
             *     }
             */
            setting: components["schemas"]["Setting"];
            /**
             * @default {
             *       "abort": "",
             *       "hazards": [],
             *       "parameters": {},
             *       "steps": [],
             *       "summary": ""
             *     }
             */
            action: components["schemas"]["Action"];
            /**
             * @default {
             *       "equipment": [],
             *       "method": "",
             *       "parameters": {},
             *       "rescue": {
             *         "drilled_seconds": null,
             *         "limit_seconds": null,
             *         "method": ""
             *       }
             *     }
             */
            rigging: components["schemas"]["Rigging"];
            /**
             * @default {
             *       "charges": [],
             *       "method": "",
             *       "parameters": {},
             *       "suppression": ""
             *     }
             */
            effects: components["schemas"]["Effects"];
            /**
             * @default {
             *       "method": "",
             *       "parameters": {}
             *     }
             */
            vehicles: components["schemas"]["Vehicles"];
            /**
             * @default {
             *       "parameters": {},
             *       "slots": []
             *     }
             */
            cast: components["schemas"]["Cast"];
            /**
             * @default {
             *       "ambulance": "",
             *       "cover": "",
             *       "hospital": "",
             *       "parameters": {}
             *     }
             */
            medical: components["schemas"]["Medical"];
            /**
             * @default {
             *       "notes": "",
             *       "parameters": {},
             *       "positions": []
             *     }
             */
            camera: components["schemas"]["Camera"];
            /**
             * @default {
             *       "bands": [],
             *       "parameters": {},
             *       "stop_on": []
             *     }
             */
            conditions: components["schemas"]["Conditions"];
            /**
             * @default {
             *       "rungs": []
             *     }
             */
            rehearsals: components["schemas"]["Rehearsals"];
        };
        /** @description One value before and after. */
        FieldChange: {
            /** @description JSON pointer inside the facet: in the new contents, or in the old for what was removed. */
            pointer: string;
            /** @description What it was; none: it is new. */
            before?: unknown;
            /** @description What it is; none: it was removed. */
            after?: unknown;
        };
        /** @description One thing wrong with what was given, and how to put it right. */
        FieldProblem: {
            /** @description JSON pointer (RFC 6901) to the field. */
            pointer: string;
            /** @description What is wrong. */
            problem: string;
            /** @description How to put it right. */
            fix: string;
        };
        /** @description One computed number with its interval. */
        Figure: {
            /** @description Machine name, unique in the assessment, for example `impact_speed`. */
            name: string;
            /** @description What people read, for example "Impact speed". */
            title: string;
            /** @description What kind of quantity, which fixes the SI unit of the numbers. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description The value, SI.
             */
            value: number;
            /**
             * Format: double
             * @description Lower end of the interval that the inputs' tolerances span, SI.
             */
            low: number;
            /**
             * Format: double
             * @description Upper end of that interval, SI.
             */
            high: number;
        };
        /** @description What one figure is. */
        FigureDescription: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description The kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /** @description What it means, in a sentence. */
            help: string;
        };
        /** @description What was found for one requirement. */
        Finding: {
            /** @description The requirement. */
            requirement: components["schemas"]["Requirement"];
            /** @description Met, curable or not met. */
            standing: components["schemas"]["FindingStanding"];
            /** @description One sentence with the margin: "level 4 where 3 is needed, last used 41 days before". */
            reason: string;
            cure?: components["schemas"]["Cure"] | null;
        };
        /**
         * @description How a requirement stands.
         * @enum {string}
         */
        FindingStanding: "met" | "curable" | "not_met";
        /**
         * @description What the medic says to the others.
         * @enum {string}
         */
        Fitness: "fit" | "limits" | "unfit";
        /** @description What another policy would change on one gag. */
        GagEffects: {
            /** @description The gag. */
            gag: components["schemas"]["GagRef"];
            /** @description What would change on it. */
            effects: components["schemas"]["PolicyEffects"];
        };
        /** @description Which gag a page is about. */
        GagHead: {
            /** @description Which. */
            id: components["schemas"]["GagId"];
            /** @description Its short code. */
            code: string;
            /** @description Its title. */
            title: string;
            /** @description The production. */
            production: components["schemas"]["ProductionId"];
        };
        /**
         * Format: uuid
         * @description A gag.
         */
        GagId: string;
        /** @description Everything about one gag, in one answer. */
        GagPage: {
            /** @description Which. */
            gag: components["schemas"]["GagHead"];
            /** @description The current plan. */
            plan: components["schemas"]["Plan"];
            /**
             * @description All that bears on it, people cut down to what the reader may see. A phone judges from this and
             *     comes to the same answer as the server.
             */
            case: components["schemas"]["Case"];
            /** @description The judge's answer, from that very case. */
            clearance: components["schemas"]["Clearance"];
            /** @description Every revision, newest first. */
            history: components["schemas"]["PlanRevision"][];
            /** @description The marks drawn beside sign-offs, by sign-off; one that only confirmed has none. */
            marks: {
                [key: string]: components["schemas"]["Drawing"];
            };
            /**
             * @description Test shots logged on the gag, in the order of the trail. They bear on no clearance, so the judge
             *     is not given them.
             */
            test_shots: components["schemas"]["TestShot"][];
            /** @description Names of everyone the page mentions. */
            names: {
                [key: string]: string;
            };
            /** @description Where the printed packet is. */
            packet_url: string;
            /** @description Where it stands in the trail. */
            trail: components["schemas"]["TrailPlace"];
        };
        /** @description A gag by its names. */
        GagRef: {
            /** @description Which. */
            id: components["schemas"]["GagId"];
            /** @description The short code said over a radio, for example `G07`. */
            code: string;
            /** @description What people call it. */
            title: string;
        };
        /** @description One gag in a list. */
        GagSummary: {
            /** @description Which. */
            id: components["schemas"]["GagId"];
            /** @description Its short code. */
            code: string;
            /** @description Its title. */
            title: string;
            /** @description The technique's machine name. */
            technique: string;
            /** @description The technique as people read it. */
            technique_title: string;
            /** @description Scene number. */
            scene: string;
            /** @description The place. */
            location: string;
            /** @description The unit that shoots it. */
            unit: string;
            /**
             * Format: date
             * @description The shooting day.
             */
            day: string | null;
            /**
             * Format: int32
             * @description The current revision.
             */
            revision: number;
            /** @description The answer in a word. */
            state: components["schemas"]["ClearanceState"];
            /**
             * Format: int32
             * @description How many sign-offs it needs.
             */
            roles_needed: number;
            /**
             * Format: int32
             * @description How many of them stand.
             */
            roles_standing: number;
            worst_check: components["schemas"]["Status"] | null;
            /** @description The first thing that stops it, in a sentence. */
            top_block: string | null;
            /**
             * Format: int32
             * @description Holds not yet released, those on the whole production included.
             */
            open_holds: number;
        };
        /** @description A gag as it stood. */
        GagThen: {
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /** @description Its code. */
            code: string;
            /** @description Its title; none when it cannot be known any more. */
            title: string | null;
            /**
             * Format: int64
             * @description The last leaf that was used.
             */
            leaf: number;
            /**
             * Format: date-time
             * @description When that leaf was received.
             */
            received_at: string;
            /**
             * Format: date-time
             * @description The moment it was judged for.
             */
            judged_at: string;
            /**
             * Format: int32
             * @description The revision of the plan that was current.
             */
            revision: number;
            /** @description Whether everything that the answer depends on is known still. */
            certain: boolean;
            /** @description What cannot be known any more, in sentences. */
            unknown: string[];
            clearance: components["schemas"]["Clearance"] | null;
            /** @description Everyone who had signed, in the order of the leaves. */
            signed: components["schemas"]["SignedThen"][];
            /** @description What had been read of the conditions, in the order of the leaves. */
            readings: components["schemas"]["Reading"][];
            /** @description Runs logged, in the order of the leaves. */
            runs: components["schemas"]["RehearsalRun"][];
            /** @description Holds on it or on the whole production, in the order of the leaves. */
            holds: components["schemas"]["Hold"][];
            /** @description Briefings held, in the order of the leaves. */
            briefings: components["schemas"]["Briefing"][];
            /** @description Takes, in the order of the leaves, each as it had ended by then. */
            takes: components["schemas"]["Take"][];
            /** @description Debriefs after its takes, in the order of the leaves. */
            debriefs: components["schemas"]["Debrief"][];
            /** @description Leaves about it or about the whole production that came after, oldest first; at most 200. */
            after: components["schemas"]["AfterThen"][];
            /** @description Names of the people in it. */
            names: {
                [key: string]: string;
            };
        };
        /** @description A charge exactly as the licensed operator gives it. Nothing here is ever computed. */
        GivenCharge: {
            /** @description What the operator calls it. */
            name: string;
            /**
             * Format: int32
             * @description How many.
             */
            count: number;
            /**
             * Format: double
             * @description Lead time before the action, seconds, as given.
             */
            lead_seconds: number;
            /**
             * Format: double
             * @description Stand-off, metres, as given.
             */
            stand_off: number;
            /** @description The operator who gave the values. */
            given_by: string;
        };
        /** @description How a go was judged when it reached the server: recorded either way, for what was done was done. */
        GoJudged: {
            /** @description Whether it stood. */
            stood: boolean;
            /** @description Why not, in sentences. */
            why_not?: string[];
        };
        /** @description Whether a go may be called. */
        GoStanding: {
            /** @description Whether it may, now. */
            may: boolean;
            /** @description Why not. Empty exactly when it may. */
            why_not: components["schemas"]["DayBlock"][];
            open?: components["schemas"]["OpenTake"] | null;
            /**
             * Format: int32
             * @description The number of the take that the next go is for.
             */
            next: number;
            /** @description Hats that may call it. */
            callers: components["schemas"]["Role"][];
        };
        /** @description A request as its author signed it. */
        Handed: {
            /**
             * @description Compact JWS with header `{"alg":"ES256","typ":"gagwright-handed+jws","kid":"<device id>"}` over
             *     the RFC 8785 bytes of a `HandedRequest`.
             */
            jws: string;
        };
        /** @description A request as its author signed it. Its RFC 8785 bytes are the JWS payload. */
        HandedRequest: {
            /** @description The production. */
            production: components["schemas"]["ProductionId"];
            /** @description Who asks. */
            person: components["schemas"]["PersonId"];
            /** @description The device whose key signs. */
            device: components["schemas"]["DeviceId"];
            /**
             * Format: date-time
             * @description When, by the device's clock.
             */
            made_at: string;
            /**
             * Format: uuid
             * @description The request's Idempotency-Key: the author's own phone sends the same request under the same key.
             */
            key: string;
            /** @description Always `POST`. */
            method: string;
            /** @description The address under `/api/v1`. */
            path: string;
            /** @description The request's If-Match, as it stands in the header; only with a plan revision. */
            if_match?: string | null;
            /** @description The request's body. */
            body: unknown;
        };
        /** @description A person's hats, all of them. */
        Hats: {
            /** @description The hats. */
            roles: components["schemas"]["Role"][];
        };
        /**
         * @description What can hurt people in a gag; decides who must sign.
         * @enum {string}
         */
        Hazard: "height" | "line" | "gas" | "fire" | "charge" | "glass" | "vehicle" | "weapon" | "water" | "animal" | "minor" | "lock_off";
        /** @description That it is held, and nothing else about the production. */
        HeldByCode: {
            /**
             * Format: uuid
             * @description The hold.
             */
            id: string;
            /**
             * Format: date-time
             * @description When.
             */
            raised_at: string;
            /** @description The code of the gag that is held; none: everything is. */
            gag_code?: string | null;
        };
        /** @description A hold that is open. */
        HeldItem: {
            /** @description The hold. */
            hold: components["schemas"]["Hold"];
            gag: components["schemas"]["GagRef"] | null;
            /** @description Who still has to agree before it is released, by hat. */
            needs: components["schemas"]["Role"][];
        };
        /** @description A stop anyone may raise. */
        Hold: {
            /** @description Which. */
            id: components["schemas"]["HoldId"];
            gag?: components["schemas"]["GagId"] | null;
            /**
             * Format: date-time
             * @description When it was raised, server time.
             */
            raised_at: string;
            raised_by?: components["schemas"]["PersonId"] | null;
            /** @description Why; nobody has to say. */
            reason?: string;
            hazard?: components["schemas"]["Hazard"] | null;
            /** @description Agreements to release. Released when the coordinator and the hazard's owner have agreed. */
            agreements?: components["schemas"]["Agreement"][];
            /**
             * Format: date-time
             * @description When the last agreement needed arrived, server time; none: it still holds. Kept, because those
             *     who agreed may later leave the production, and a stop that they lifted stays lifted.
             */
            released_at?: string | null;
        };
        /** @description What is held. */
        HoldByCode: {
            /**
             * Format: uuid
             * @description Minted by whoever raises it (UUIDv7).
             */
            id: string;
            /** @description The gag's short code; left out, or no code of this production: everything is held. */
            gag_code?: string | null;
            /** @description Why, if they care to say. */
            reason?: string;
        };
        /**
         * Format: uuid
         * @description A hold.
         */
        HoldId: string;
        /** @description What an import did. */
        ImportReport: {
            /** @description Which table: `people`, `certificates`, `skills` or `availability`. */
            table: string;
            /**
             * Format: int32
             * @description Rows that were new.
             */
            created: number;
            /**
             * Format: int32
             * @description Rows that changed something.
             */
            updated: number;
            /**
             * Format: int32
             * @description Rows that said what was known already.
             */
            unchanged: number;
            /**
             * Format: int32
             * @description Runs of days taken off record because the newer table does not have them.
             */
            removed: number;
        };
        /** @description Something that hurt somebody, or could have. */
        Incident: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description Whether there was harm. */
            kind: components["schemas"]["IncidentKind"];
            gag?: components["schemas"]["GagId"] | null;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who reports it. */
            by: components["schemas"]["PersonId"];
            /** @description What happened. */
            what?: string;
            /** @description Who has been told. */
            told?: components["schemas"]["Told"][];
            /** @description Corrective actions put a name to. */
            closings?: components["schemas"]["Closing"][];
            /**
             * Format: date-time
             * @description When it was closed, server time. Kept, because those who closed it may later leave the production.
             */
            closed_at?: string | null;
        };
        /**
         * @description Harm, or nearly.
         * @enum {string}
         */
        IncidentKind: "near_miss" | "incident";
        /** @description An incident and what it waits for. */
        IncidentStanding: {
            /** @description The incident. */
            incident: components["schemas"]["Incident"];
            /** @description Who has yet to be told: roles by machine name, others as the policy names them. */
            untold: string[];
            /** @description Hats that have yet to say what was done. */
            closers: components["schemas"]["Role"][];
        };
        /** @description An RFC 6962 audit path (section 2.1.1). */
        InclusionProof: {
            /**
             * Format: int64
             * @description The leaf's index.
             */
            leaf: number;
            /**
             * Format: int64
             * @description Leaves in the tree.
             */
            size: number;
            /** @description The tree's root, hex. */
            root: string;
            /** @description The path, hex, from the leaf up. */
            path: string[];
        };
        /** @description What a witness signs for. */
        Ink: {
            /** @description Who saw it signed. */
            witness: components["schemas"]["PersonId"];
            /** @description SHA-256 of the photograph of the page, lower-case hex. */
            photograph: string;
        };
        /** @description One entered value: `{"value": 30.0, "tolerance": 0.2}` or the name of an option. */
        InputValue: {
            /**
             * Format: double
             * @description The value.
             */
            value: number;
            /**
             * Format: double
             * @description Plus or minus; the parameter's own default when left out.
             */
            tolerance?: number;
        } | string;
        /** @description Named inputs, SI. */
        Inputs: {
            [key: string]: components["schemas"]["InputValue"];
        };
        /** @description A value with its interval, SI. */
        Interval: {
            /**
             * Format: double
             * @description The value.
             */
            value: number;
            /**
             * Format: double
             * @description The low end.
             */
            low: number;
            /**
             * Format: double
             * @description The high end.
             */
            high: number;
        };
        /** @description Whom to invite, and as what. */
        Invite: {
            /**
             * Format: uuid
             * @description Somebody on the roster who has an address.
             */
            person: string;
            /** @description The hats they are to have. */
            roles: components["schemas"]["Role"][];
        };
        /** @description Until when the invitation can be accepted. Its link goes to the person by mail alone. */
        Invited: {
            /**
             * Format: date-time
             * @description Until when.
             */
            expires_at: string;
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_CosignedView: {
            /** @description The list. */
            items: {
                /** @description The witness's name. */
                name: string;
                /**
                 * Format: int64
                 * @description How many entries the trail had.
                 */
                size: number;
                /**
                 * Format: date-time
                 * @description When, by the witness's clock.
                 */
                at: string;
                /**
                 * Format: date-time
                 * @description When it came here.
                 */
                received_at: string;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_Delegation: {
            /** @description The list. */
            items: {
                /** @description Which. */
                id: components["schemas"]["RecordId"];
                /** @description The holder of the role. */
                from: components["schemas"]["PersonId"];
                /** @description Who signs in their stead. */
                to: components["schemas"]["PersonId"];
                /** @description The role. */
                role: components["schemas"]["Role"];
                /** @description The gags it is for; empty: all of them. */
                gags?: string[];
                /**
                 * Format: date-time
                 * @description From when, by the server's clock: what arrives before does not count, whenever it was signed.
                 */
                starts: string;
                /**
                 * Format: date-time
                 * @description Until when.
                 */
                until: string;
                /** @description Its limits in words: "the night unit only". */
                limits?: string;
                /**
                 * Format: date-time
                 * @description When it was made, server time.
                 */
                made_at: string;
                /**
                 * Format: date-time
                 * @description When it was ended before its time, if it was.
                 */
                ended_at?: string | null;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_DeviceSummary: {
            /** @description The list. */
            items: {
                /** @description Which. */
                id: components["schemas"]["DeviceId"];
                /** @description What its owner calls it. */
                name: string;
                /** @description Whose it is. */
                owner: components["schemas"]["PersonRef"];
                /**
                 * Format: date-time
                 * @description When it was registered.
                 */
                registered_at: string;
                /**
                 * Format: date-time
                 * @description When it was revoked, if it was.
                 */
                revoked_at: string | null;
                /**
                 * Format: date-time
                 * @description When the last sign-off made on it was received.
                 */
                last_signed_at: string | null;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_GagSummary: {
            /** @description The list. */
            items: {
                /** @description Which. */
                id: components["schemas"]["GagId"];
                /** @description Its short code. */
                code: string;
                /** @description Its title. */
                title: string;
                /** @description The technique's machine name. */
                technique: string;
                /** @description The technique as people read it. */
                technique_title: string;
                /** @description Scene number. */
                scene: string;
                /** @description The place. */
                location: string;
                /** @description The unit that shoots it. */
                unit: string;
                /**
                 * Format: date
                 * @description The shooting day.
                 */
                day: string | null;
                /**
                 * Format: int32
                 * @description The current revision.
                 */
                revision: number;
                /** @description The answer in a word. */
                state: components["schemas"]["ClearanceState"];
                /**
                 * Format: int32
                 * @description How many sign-offs it needs.
                 */
                roles_needed: number;
                /**
                 * Format: int32
                 * @description How many of them stand.
                 */
                roles_standing: number;
                worst_check: components["schemas"]["Status"] | null;
                /** @description The first thing that stops it, in a sentence. */
                top_block: string | null;
                /**
                 * Format: int32
                 * @description Holds not yet released, those on the whole production included.
                 */
                open_holds: number;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_Hold: {
            /** @description The list. */
            items: {
                /** @description Which. */
                id: components["schemas"]["HoldId"];
                gag?: components["schemas"]["GagId"] | null;
                /**
                 * Format: date-time
                 * @description When it was raised, server time.
                 */
                raised_at: string;
                raised_by?: components["schemas"]["PersonId"] | null;
                /** @description Why; nobody has to say. */
                reason?: string;
                hazard?: components["schemas"]["Hazard"] | null;
                /** @description Agreements to release. Released when the coordinator and the hazard's owner have agreed. */
                agreements?: components["schemas"]["Agreement"][];
                /**
                 * Format: date-time
                 * @description When the last agreement needed arrived, server time; none: it still holds. Kept, because those
                 *     who agreed may later leave the production, and a stop that they lifted stays lifted.
                 */
                released_at?: string | null;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_MemberAccount: {
            /** @description The list. */
            items: {
                /** @description Who. */
                person: components["schemas"]["PersonRef"];
                /** @description What they are called for. */
                occupation: string;
                /** @description Their hats. */
                roles: components["schemas"]["Role"][];
                /** @description Whether they can sign in. */
                has_account: boolean;
                /** @description Their address on the roster; without one they cannot be invited. */
                email: string | null;
                invitation: components["schemas"]["OpenInvitation"] | null;
                /**
                 * Format: int32
                 * @description How many of their devices can sign.
                 */
                devices: number;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_OpenInvitation: {
            /** @description The list. */
            items: {
                /**
                 * Format: uuid
                 * @description Which.
                 */
                id: string;
                /** @description Whom it invites. */
                person: components["schemas"]["PersonRef"];
                /** @description Where the letter went. */
                email: string;
                /** @description The hats it promises. */
                roles: components["schemas"]["Role"][];
                /**
                 * Format: date-time
                 * @description Until when it can be accepted.
                 */
                expires_at: string;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_OwnSignIn: {
            /** @description The list. */
            items: {
                /**
                 * Format: uuid
                 * @description Which.
                 */
                id: string;
                /** @description Whether it is the one that asks. */
                current: boolean;
                /**
                 * Format: date-time
                 * @description When it began, as far back as is kept.
                 */
                started_at: string;
                /**
                 * Format: date-time
                 * @description When it was last renewed; one that is in use is renewed every quarter of an hour.
                 */
                last_used_at: string;
                /**
                 * Format: date-time
                 * @description Until when it lasts if it is not used again.
                 */
                expires_at: string;
                /** @description The browser it was last used with; none where it did not say. */
                browser: string | null;
                /** @description The system it was last used on; none where it did not say. */
                system: string | null;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_PersonSummary: {
            /** @description The list. */
            items: {
                /** @description Who. */
                id: components["schemas"]["PersonId"];
                /** @description The production's code for them. */
                code: string;
                /** @description Name. */
                name: string;
                /** @description What they are called for. */
                occupation: string;
                /** @description Whether they may be cast. */
                performs: boolean;
                /** @description Their hats. */
                roles: components["schemas"]["Role"][];
                /** @description Their skills by name and level. */
                skills: components["schemas"]["SkillLevel"][];
                /**
                 * Format: int32
                 * @description How many certificates they hold.
                 */
                certificates: number;
                /**
                 * Format: date
                 * @description The next day one of them runs out.
                 */
                next_expiry: string | null;
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_Policy: {
            /** @description The list. */
            items: {
                /** @description The name of the check that it limits. */
                name: string;
                /** @description The kind of quantity. */
                quantity: components["schemas"]["Quantity"];
                /**
                 * Format: double
                 * @description The limit, SI.
                 */
                value: number;
                /** @description Why it is what it is, in a sentence. */
                why: string;
                /** @description Who set it: the program's own habit of the trade until a production says otherwise. */
                source?: components["schemas"]["Source"];
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_TechniqueDescription: {
            /** @description The list. */
            items: {
                /** @description Machine name, for example `high-fall`. */
                name: string;
                /** @description What people read. */
                title: string;
                /** @description What the model covers and leaves out. */
                summary: string;
                /** @description The inputs, in the order a person fills them in. */
                parameters: components["schemas"]["Parameter"][];
                /** @description The figures it gives, the most telling first. */
                figures: components["schemas"]["FigureDescription"][];
                /** @description The inputs that logged test shots can settle. */
                coefficients: string[];
            }[];
        };
        /** @description A list, always in an object so that members can be added beside it later. */
        Items_TestShot: {
            /** @description The list. */
            items: {
                /** @description Which. */
                id: components["schemas"]["RecordId"];
                /** @description The gag it was shot for. */
                gag: components["schemas"]["GagId"];
                /** @description The technique's machine name; often the plan's, though a gag may test another first. */
                technique: string;
                /** @description The technique's inputs as they were set for this shot, SI. */
                inputs: components["schemas"]["Inputs"];
                /** @description What was measured, by the figure's machine name, SI. */
                measured: {
                    [key: string]: number;
                };
                /** @description What was shot. */
                load: components["schemas"]["Load"];
                /** @description What was seen. */
                note?: string;
                /**
                 * Format: date-time
                 * @description When it was shot, by the clock of whoever logged it.
                 */
                shot_at: string;
                /** @description Who logged it. */
                recorded_by: components["schemas"]["PersonId"];
                /**
                 * Format: date-time
                 * @description When it was logged, server time.
                 */
                recorded_at: string;
            }[];
        };
        /**
         * @description Something after which marks made before it no longer count.
         * @enum {string}
         */
        LapseEvent: "equipment_swap" | "shock_load" | "performer_swap" | "new_day" | "new_site" | "out_of_band" | "head_impact" | "certificate" | "device_revoked";
        /** @description What one event voids. */
        LapseRow: {
            /** @description The event. */
            event: components["schemas"]["LapseEvent"];
            /** @description Whose plan marks. */
            plan: components["schemas"]["Role"][];
            /** @description Whose marks for the day. */
            day: components["schemas"]["Role"][];
            /** @description Whether a go called before it. */
            go: boolean;
        };
        /** @description A certificate that runs out before a day it is needed on. */
        LapsingCertificate: {
            /** @description Whose. */
            person: components["schemas"]["PersonRef"];
            /** @description Which. */
            certificate: components["schemas"]["CertificateExpiry"];
            /**
             * Format: date
             * @description The last shooting day they are cast for or sign for.
             */
            before_day: string;
        };
        /** @description A reading as the signer saw it. */
        LeanedOn: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description Of what. */
            kind: components["schemas"]["ReadingKind"];
            /**
             * Format: double
             * @description The value, SI.
             */
            value: number;
        };
        /** @description A bound on a quantity, SI. */
        Limit: {
            /** @description Which side is allowed. */
            bound: components["schemas"]["Bound"];
            /**
             * Format: double
             * @description The limit's value, SI.
             */
            value: number;
            /** @description The kind of quantity. */
            quantity: components["schemas"]["Quantity"];
        };
        /**
         * @description What was on the line, in the catcher or in the seat.
         * @enum {string}
         */
        Load: "bag" | "person";
        /** @description The medic's look at one performer: what others need to know, and never why. */
        Look: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            take?: components["schemas"]["RecordId"] | null;
            /** @description Who was looked at. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date
             * @description The day it counts for.
             */
            day: string;
            /** @description Fit, fit within limits, or not. */
            fitness: components["schemas"]["Fitness"];
            /** @description Whether the head was struck or shaken. */
            head_impact: boolean;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description The medic. */
            by: components["schemas"]["PersonId"];
        };
        /** @description Everyone who performs, held against one slot, best first. */
        Matches: {
            /** @description The slot. */
            slot: components["schemas"]["Slot"];
            /**
             * Format: date
             * @description The shooting day judged for.
             */
            day: string | null;
            /** @description The candidates. */
            items: components["schemas"]["Candidate"][];
        };
        /** @description The reader, on this production. */
        Me: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
            /** @description What they may do. */
            permissions: components["schemas"]["Permission"][];
        };
        /** @description One measurement, and who took it when. */
        Measured: {
            /**
             * Format: double
             * @description SI (shoe: EU size).
             */
            value: number;
            /**
             * Format: date
             * @description When it was taken.
             */
            on: string;
            /** @description Who took it. */
            by?: string | null;
        };
        /** @description A logged test shot. */
        MeasuredShot: {
            /** @description What was set. */
            inputs: components["schemas"]["Inputs"];
            /** @description What was measured: figures by name, SI. */
            measured: {
                [key: string]: number;
            };
        };
        /**
         * @description What is measured on a body. Lengths in metres, masses in kilograms, shoe in Paris points (EU size).
         * @enum {string}
         */
        Measurement: "height" | "mass" | "chest" | "waist" | "hip" | "inseam" | "sleeve" | "neck" | "shoulder" | "head" | "shoe";
        /** @description Cover on the day. */
        Medical: {
            /** @description Who stands where with what. */
            cover: string;
            /** @description Ambulance and its alternate. */
            ambulance?: string;
            /** @description Receiving hospital and the route. */
            hospital?: string;
            /** @description The technique's parameters about medical cover. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description Who holds which hats on the production, with what the policy asks of them. */
        Member: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description Name, for reasons that people read. */
            name: string;
            /** @description The hats. */
            roles: components["schemas"]["Role"][];
            /** @description Their certificates. */
            certificates?: components["schemas"]["Certificate"][];
        };
        /** @description One member and how they come in. */
        MemberAccount: {
            /** @description Who. */
            person: components["schemas"]["PersonRef"];
            /** @description What they are called for. */
            occupation: string;
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
            /** @description Whether they can sign in. */
            has_account: boolean;
            /** @description Their address on the roster; without one they cannot be invited. */
            email: string | null;
            invitation: components["schemas"]["OpenInvitation"] | null;
            /**
             * Format: int32
             * @description How many of their devices can sign.
             */
            devices: number;
        };
        /** @description One member of a production. */
        MemberSummary: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description Name. */
            name: string;
            /** @description The production's code for them. */
            code: string;
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
            /** @description Whether they can sign in. */
            has_account: boolean;
        };
        /** @description A place on a production. */
        Membership: {
            /** @description The production. */
            production: components["schemas"]["ProductionRef"];
            /** @description The person on its roster. */
            person: components["schemas"]["PersonRef"];
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
        };
        /** @description Which condition. */
        Met: {
            /** @description The condition's text, as signed. */
            condition: string;
        };
        /** @description One check before and after. */
        MovedCheck: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
            before: components["schemas"]["Status"] | null;
            after: components["schemas"]["Status"] | null;
            /** @description Whether the outcome differs. */
            moved: boolean;
        };
        /** @description One figure before and after. */
        MovedFigure: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description The kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            before: components["schemas"]["Interval"] | null;
            after: components["schemas"]["Interval"] | null;
            /** @description Whether value or interval differ. */
            moved: boolean;
        };
        /** @description A briefing. */
        NewBriefing: {
            /** @description Minted by whoever records it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /**
             * Format: date
             * @description The day it is for, as the people there would name it.
             */
            day: string;
            /** @description Where. */
            place: string;
            /**
             * Format: int32
             * @description The revision that was briefed.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
            /** @description Who was there, besides whoever records it. */
            attended: components["schemas"]["PersonId"][];
            /** @description What was said beyond the plan. */
            points?: string;
        };
        /** @description A name under what was done about an incident. */
        NewClosing: {
            /** @description The hat: coordinator or production. */
            role: components["schemas"]["Role"];
            /** @description What was done so that it does not happen again. */
            action: string;
        };
        /** @description What a witness cosigned, as it came in. */
        NewCosignature: {
            /** @description The checkpoint with the witness's line in it, or the line alone. */
            cosigned: string;
            /**
             * Format: int64
             * @description With a line alone: how many entries the checkpoint had. Left out: as many as the trail has now.
             */
            size?: number | null;
        };
        /** @description A debrief after the takes of a day. */
        NewDebrief: {
            /** @description Minted by whoever records it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /**
             * Format: date
             * @description The day it looks back on, as the people there would name it.
             */
            day: string;
            /** @description Where. */
            place: string;
            /**
             * Format: int32
             * @description The revision performed.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
            /** @description Who led it. */
            led_by: components["schemas"]["PersonId"];
            /** @description Who was there. */
            attended: components["schemas"]["PersonId"][];
            /** @description What went as planned. */
            as_planned?: string;
            /** @description What went differently. */
            differently?: string;
            /** @description What changes next time. */
            next_time?: string;
            /** @description The skills that performers used, of those that their slots ask for. Of whoever is not named, all of these count. */
            used?: components["schemas"]["Used"][];
        };
        /** @description A delegation to be made. */
        NewDelegation: {
            /** @description Which; minted by the device. */
            id: components["schemas"]["RecordId"];
            /** @description Who signs in the caller's stead. */
            to: components["schemas"]["PersonId"];
            /** @description The role, which the caller holds. */
            role: components["schemas"]["Role"];
            /** @description The gags it is for; empty: all of them. */
            gags?: string[];
            /**
             * Format: date-time
             * @description From when, by the server's clock: what arrives before does not count, whenever it was signed.
             */
            starts: string;
            /**
             * Format: date-time
             * @description Until when.
             */
            until: string;
            /** @description Its limits in words. */
            limits?: string;
        };
        /** @description A device that will sign. */
        NewDevice: {
            /** @description Minted by the device (UUIDv7). */
            id: components["schemas"]["DeviceId"];
            /** @description What its owner calls it. */
            name: string;
            /** @description Its public key; the private half never leaves the device. */
            key: components["schemas"]["PublicKey"];
        };
        /** @description What a new gag is made of. */
        NewGag: {
            /** @description Minted by whoever creates it (UUIDv7). */
            id: components["schemas"]["GagId"];
            /** @description Short code, unique in the production. */
            code: string;
            /** @description Title. */
            title: string;
            /** @description The technique's machine name. */
            technique: string;
            facets?: components["schemas"]["Facets"] | null;
            /** @description Why. */
            note?: string;
        };
        /** @description A go. */
        NewGo: {
            /** @description Minted by whoever calls it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /**
             * Format: int32
             * @description The take it is for.
             */
            number: number;
            /**
             * Format: date-time
             * @description When it was called, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
            /**
             * Format: int32
             * @description The revision performed.
             */
            revision: number;
            /** @description Its digest, as whoever called the go saw it. */
            plan_digest: string;
            /**
             * Format: date
             * @description The day.
             */
            day: string;
            /** @description Where. */
            place?: string;
        };
        /** @description What a hold is made of. Nobody has to say why. */
        NewHold: {
            /** @description Minted by whoever raises it (UUIDv7). */
            id: components["schemas"]["HoldId"];
            gag?: components["schemas"]["GagId"] | null;
            /** @description Why, if they care to say. */
            reason?: string;
            hazard?: components["schemas"]["Hazard"] | null;
        };
        /** @description A near miss or an incident. */
        NewIncident: {
            /** @description Minted by whoever reports it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description Whether there was harm. */
            kind: components["schemas"]["IncidentKind"];
            gag?: components["schemas"]["GagId"] | null;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
            /** @description What happened, if there is time to say. */
            what?: string;
        };
        /** @description The medic's look at one performer. */
        NewLook: {
            /** @description Minted by the medic's phone (UUIDv7). */
            id: components["schemas"]["RecordId"];
            take?: components["schemas"]["RecordId"] | null;
            /** @description Who was looked at. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date
             * @description The day it counts for.
             */
            day: string;
            /** @description Fit, fit within limits, or not; never why. */
            fitness: components["schemas"]["Fitness"];
            /** @description Whether the head was struck or shaken. */
            head_impact: boolean;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description How a take ended. */
        NewOutcome: {
            /** @description In a word. */
            result: components["schemas"]["TakeResult"];
            /** @description What was seen. */
            note?: string;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description Another policy, and why. */
        NewPolicy: {
            /** @description The whole policy, under a version that no policy had. */
            policy: components["schemas"]["Policy"];
            /** @description Why it changes. */
            note?: string;
        };
        /** @description A reading of the conditions. */
        NewReading: {
            /** @description Minted by whoever logs it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description Of what. */
            kind: components["schemas"]["ReadingKind"];
            /**
             * Format: double
             * @description The value, SI.
             */
            value: number;
            /**
             * Format: date-time
             * @description When it was read: at most five minutes ahead of the server's clock.
             */
            at: string;
            /** @description Where. */
            place?: string;
        };
        /** @description What was agreed about a decline. */
        NewResolution: {
            /** @description Which; minted by the device. */
            id: components["schemas"]["RecordId"];
            /** @description What was agreed, in words. */
            text: string;
        };
        /** @description What a new revision is made of. */
        NewRevision: {
            /** @description The technique's machine name. */
            technique: string;
            /** @description The whole contents. */
            facets: components["schemas"]["Facets"];
            /** @description Why it differs from the revision before. */
            note?: string;
        };
        /** @description One run on a rung of the rehearsal ladder. */
        NewRun: {
            /** @description Minted by whoever logs it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description The rung's machine name. */
            rung: string;
            /** @description Whether it went as planned. */
            good: boolean;
            /** @description What was seen. */
            note?: string;
            /**
             * Format: int32
             * @description The revision that was rehearsed.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description A shock load on a piece of equipment. */
        NewShockLoad: {
            /** @description Minted by whoever records it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description What happened. */
            what: string;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description Standing somebody down. Nobody says why. */
        NewStandDown: {
            /** @description Minted by whoever records it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description From when, by the device's clock: taken as of its arrival at the latest.
             */
            from: string;
            /**
             * Format: date-time
             * @description Until when; none: until someone entitled says otherwise.
             */
            until?: string | null;
        };
        /** @description One test shot: the settings, and what the rig then did. */
        NewTestShot: {
            /** @description Minted by whoever logs it (UUIDv7). */
            id: components["schemas"]["RecordId"];
            /** @description The technique's machine name; any there is, the plan's most often. */
            technique: string;
            /** @description The technique's inputs as they were set, SI. */
            inputs: components["schemas"]["Inputs"];
            /** @description What was measured, by the figure's machine name, SI; at least one. */
            measured: {
                [key: string]: number;
            };
            /** @description What was shot. */
            load: components["schemas"]["Load"];
            /** @description What was seen. */
            note?: string;
            /**
             * Format: date-time
             * @description When it was shot, by the device's clock: taken as of its arrival at the latest.
             */
            shot_at: string;
        };
        /** @description That somebody has been told. */
        NewTold: {
            /** @description A role by machine name, or somebody outside as the policy names them. */
            who: string;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description A witness to be added. */
        NewWitness: {
            /**
             * @description Its public key, `name+hash+base64`, as `gagwright witness key` prints it (C2SP tlog-cosignature). The name
             *     stands in the trail for ever: an organisation's or a machine's, not a person's.
             */
            key: string;
        };
        /** @description An invitation that can still be accepted. */
        OpenInvitation: {
            /**
             * Format: uuid
             * @description Which.
             */
            id: string;
            /** @description Whom it invites. */
            person: components["schemas"]["PersonRef"];
            /** @description Where the letter went. */
            email: string;
            /** @description The hats it promises. */
            roles: components["schemas"]["Role"][];
            /**
             * Format: date-time
             * @description Until when it can be accepted.
             */
            expires_at: string;
        };
        /** @description A go that was called and whose take has not ended. */
        OpenTake: {
            /** @description Which. */
            take: components["schemas"]["RecordId"];
            /**
             * Format: int32
             * @description Its number.
             */
            number: number;
            /** @description Who called the go. */
            called_by: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When.
             */
            called_at: string;
            /** @description Why the go no longer stands; empty: it does. */
            lapsed: string[];
        };
        /** @description A take that has not ended, and of which gag. */
        OpenTakeOf: {
            /** @description The gag. */
            gag: components["schemas"]["GagRef"];
            /** @description The take. */
            take: components["schemas"]["Take"];
        };
        /** @description A text and the salt of its commitment. It travels beside the sign-off, never in it. */
        Opening: {
            /** @description 32 random bytes of the device, lower-case hex. */
            salt: string;
            /** @description The text, as its signer wrote it. */
            text: string;
        };
        /**
         * @description The answer in a word.
         * @enum {string}
         */
        Outcome: "qualified" | "conditional" | "not_qualified";
        /** @description A mark that a person may make. */
        Owed: {
            /** @description The hat they would sign under. */
            role: components["schemas"]["Role"];
            /** @description The hat as people read it. */
            title: string;
            slot?: components["schemas"]["SlotId"] | null;
            /** @description How it stands now; never `standing`. */
            state: components["schemas"]["RoleState"];
            /**
             * @description Whether the gag waits for it to be signed: it is missing or has lapsed. One that was declined or
             *     set conditions has been answered, and may be answered again.
             */
            asked: boolean;
            /** @description Why, in a sentence or two. */
            why: string;
        };
        /** @description A production's own value for one limit. */
        OwnLimit: {
            /**
             * Format: double
             * @description The value, SI.
             */
            value: number;
            /** @description Why the production sets another, in a sentence. */
            because: string;
            /** @description Who set it; the server fills it in when the policy comes into force. */
            by?: components["schemas"]["PersonId"];
        };
        /** @description One sign-in that still counts. */
        OwnSignIn: {
            /**
             * Format: uuid
             * @description Which.
             */
            id: string;
            /** @description Whether it is the one that asks. */
            current: boolean;
            /**
             * Format: date-time
             * @description When it began, as far back as is kept.
             */
            started_at: string;
            /**
             * Format: date-time
             * @description When it was last renewed; one that is in use is renewed every quarter of an hour.
             */
            last_used_at: string;
            /**
             * Format: date-time
             * @description Until when it lasts if it is not used again.
             */
            expires_at: string;
            /** @description The browser it was last used with; none where it did not say. */
            browser: string | null;
            /** @description The system it was last used on; none where it did not say. */
            system: string | null;
        };
        /** @description One input of a technique. */
        Parameter: {
            /** @description Machine name in snake case, for example `drop_height`. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description The part of the plan it belongs to: who must sign again when it changes follows from this. */
            facet: components["schemas"]["Facet"];
            /** @description What may be entered. */
            kind: components["schemas"]["ParameterKind"];
            /** @description What to measure and how, in a sentence or two. */
            help: string;
        };
        /** @description What may be entered for a parameter. All numbers SI. */
        ParameterKind: {
            /** @description The kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description The default; none where guessing would be dangerous.
             */
            default: number | null;
            /**
             * Format: double
             * @description Smallest value accepted.
             */
            min: number;
            /**
             * Format: double
             * @description Largest value accepted.
             */
            max: number;
            /**
             * Format: double
             * @description Default tolerance, plus or minus, same unit.
             */
            tolerance: number;
            /** @enum {string} */
            kind: "number";
        } | {
            /** @description The options. */
            options: components["schemas"]["Choice"][];
            /** @description The default's name; none where guessing would be dangerous. */
            default: string | null;
            /** @enum {string} */
            kind: "choice";
        };
        /**
         * @description Something a person may be allowed to do on one production.
         * @enum {string}
         */
        Permission: "read_production" | "read_personal" | "read_medical" | "edit_people" | "edit_plans" | "sign_off" | "raise_hold" | "release_hold" | "log_day" | "manage_members" | "read_trail" | "change_policy";
        /** @description A performer or crew member. */
        Person: {
            /** @description Who. */
            id: components["schemas"]["PersonId"];
            /**
             * @description The short code the production knows them by, unique in it, for example `P07`; import updates
             *     by this.
             */
            code: string;
            /** @description Name as they write it, any script, NFC. */
            name: string;
            /** @description What they are called for: "performer", "key rigger", "medic" ... free text. */
            occupation: string;
            /** @description Whether they may be cast in slots. */
            performs: boolean;
            /** @description Address for invitations; none when they have no account. */
            email?: string | null;
            /**
             * Format: date
             * @description Birthday, where it matters (minors, insurance).
             */
            born?: string | null;
            /** @description Body measurements. */
            measurements?: Partial<Record<"height" | "mass" | "chest" | "waist" | "hip" | "inseam" | "sleeve" | "neck" | "shoulder" | "head" | "shoe", components["schemas"]["Measured"]>>;
            /** @description Dated proofs. */
            certificates?: components["schemas"]["Certificate"][];
            /** @description Graded competences. */
            skills?: components["schemas"]["Skill"][];
            /** @description When they can and cannot work. Days not covered are unknown. */
            availability?: components["schemas"]["Availability"][];
            /**
             * Format: date
             * @description Fit to perform through this day, as the medic says. A date, never a diagnosis.
             */
            medically_clear_until?: string | null;
            /**
             * Format: date-time
             * @description When they last wrapped, for rest before the next call.
             */
            last_wrap?: string | null;
            /** @description What their body has taken on which day. */
            exposures?: components["schemas"]["Exposure"][];
            /** @description Revisions of gags they have agreed to perform. */
            consents?: components["schemas"]["Consent"][];
        };
        /**
         * Format: uuid
         * @description A performer or crew member.
         */
        PersonId: string;
        /** @description One person, cut down to what the reader may see. */
        PersonPage: {
            /** @description The person. */
            person: components["schemas"]["Person"];
            /**
             * Format: int64
             * @description The version to give back when writing.
             */
            version: number;
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
            /** @description Their devices. */
            devices: components["schemas"]["Device"][];
            /** @description What was left in. */
            visible: components["schemas"]["Visible"];
        };
        /** @description A person by their names. */
        PersonRef: {
            /** @description Who. */
            id: components["schemas"]["PersonId"];
            /** @description Name as they write it. */
            name: string;
            /** @description The production's short code for them. */
            code: string;
        };
        /** @description How one performer stands on the day. */
        PersonStanding: {
            /** @description The slot. */
            slot: components["schemas"]["SlotId"];
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description Why they do not perform, in a sentence without a cause; none: they may. */
            stood_down?: string | null;
            /**
             * Format: date-time
             * @description Until when; none: until someone entitled says otherwise, or they are not stood down.
             */
            until?: string | null;
            /** @description Whether the medic still has to look at them after the last take. */
            look_owed: boolean;
        };
        /** @description One person in a list. */
        PersonSummary: {
            /** @description Who. */
            id: components["schemas"]["PersonId"];
            /** @description The production's code for them. */
            code: string;
            /** @description Name. */
            name: string;
            /** @description What they are called for. */
            occupation: string;
            /** @description Whether they may be cast. */
            performs: boolean;
            /** @description Their hats. */
            roles: components["schemas"]["Role"][];
            /** @description Their skills by name and level. */
            skills: components["schemas"]["SkillLevel"][];
            /**
             * Format: int32
             * @description How many certificates they hold.
             */
            certificates: number;
            /**
             * Format: date
             * @description The next day one of them runs out.
             */
            next_expiry: string | null;
        };
        /** @description One revision of a gag's plan. */
        Plan: {
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /**
             * Format: int32
             * @description 1, 2, 3 ...
             */
            revision: number;
            /** @description The technique's machine name. */
            technique: string;
            /** @description The contents. */
            facets: components["schemas"]["Facets"];
            /** @description The policy version it is judged by. */
            policy: string;
            /** @description Who wrote it. */
            author: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When.
             */
            written_at: string;
            /** @description Why it differs from the one before. */
            note?: string;
        };
        /** @description One revision in a gag's history. */
        PlanRevision: {
            /**
             * Format: int32
             * @description Which.
             */
            revision: number;
            /** @description Who wrote it. */
            author: components["schemas"]["PersonRef"];
            /**
             * Format: date-time
             * @description When.
             */
            written_at: string;
            /** @description Why it differs from the one before. */
            note: string;
            /** @description Its digest, hex. */
            digest: string;
            /**
             * Format: int64
             * @description Its leaf in the trail.
             */
            leaf: number;
            /** @description Facets that differ from the revision before; all of them in the first. */
            changed: components["schemas"]["Facet"][];
        };
        /** @description The whole policy. */
        Policy: {
            /** @description Version, for example `2026.1`. */
            version: string;
            /** @description Who answers for what. */
            roles: components["schemas"]["RolePolicy"][];
            /** @description What each technique brings: hazards, requirements of a slot, a ladder to rehearse. */
            techniques: {
                [key: string]: components["schemas"]["TechniquePolicy"];
            };
            /** @description Pairs that one person may not sign on the same revision. */
            separate: [
                "coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer",
                "coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer"
            ][];
            /** @description Which role owns which hazard, for releasing holds. */
            owners: Partial<Record<"height" | "line" | "gas" | "fire" | "charge" | "glass" | "vehicle" | "weapon" | "water" | "animal" | "minor" | "lock_off", components["schemas"]["Role"]>>;
            /** @description Roles whose decline nobody, the coordinator included, can overrule. */
            final_say: components["schemas"]["Role"][];
            /** @description Which event of the day voids whose marks. */
            lapses: components["schemas"]["LapseRow"][];
            /** @description What the day needs beyond the plan. */
            day: components["schemas"]["DayPolicy"];
            /** @description What follows a take. */
            after_take: components["schemas"]["AfterTake"];
            /** @description Who must be told of what went wrong. */
            tell: components["schemas"]["Tell"][];
            /** @description Which roles may let somebody sign in their stead, and how. */
            delegation?: Partial<Record<"coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer", components["schemas"]["DelegationRule"]>>;
            /** @description Small changes that a role accepts in advance. */
            bands?: components["schemas"]["AcceptedBand"][];
            /** @description What settles a role's decline or its conditions. */
            settling?: Partial<Record<"coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer", components["schemas"]["Settling"]>>;
            /** @description The production's own values for limits of habit. */
            limits?: {
                [key: string]: {
                    [key: string]: components["schemas"]["OwnLimit"];
                };
            };
        };
        /** @description What becomes of one sign-off, or of the need for one. */
        PolicyEffect: {
            /** @description The role. */
            role: components["schemas"]["Role"];
            /** @description What people read for it. */
            title: string;
            slot?: components["schemas"]["SlotId"] | null;
            before?: components["schemas"]["RoleState"] | null;
            after?: components["schemas"]["RoleState"] | null;
            signer?: components["schemas"]["PersonId"] | null;
            /** @description Why it would not stand, in sentences. */
            reasons: string[];
        };
        /** @description What a policy would change on one gag. */
        PolicyEffects: {
            /** @description Sign-offs, in the judge's order. */
            roles: components["schemas"]["PolicyEffect"][];
            /** @description Checks. */
            checks: components["schemas"]["CheckEffect"][];
        };
        /** @description The policy in force. */
        PolicyPage: {
            /** @description The policy. */
            policy: components["schemas"]["Policy"];
            /** @description Every version that was in force, newest first. */
            versions: components["schemas"]["PolicyVersion"][];
            /** @description Whether the reader may put another in force. */
            may_change: boolean;
        };
        /** @description A policy looked at before it comes into force. */
        PolicyPreview: {
            /** @description What keeps it from coming into force; pointers into the policy. */
            problems: components["schemas"]["FieldProblem"][];
            /** @description What it would change now, gag by gag. */
            gags: components["schemas"]["GagEffects"][];
        };
        /** @description A policy that was put in force. */
        PolicyVersion: {
            /** @description Its version. */
            version: string;
            by: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description When.
             */
            at: string | null;
            /** @description Why. */
            note: string;
            /**
             * Format: int64
             * @description Its leaf in the trail.
             */
            leaf: number | null;
            /**
             * Format: int32
             * @description How many gags have a plan that was written under it.
             */
            plans: number;
        };
        /** @description A skill that a take called for, and who used it. */
        Practised: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description The skill, by its name in the catalogue. */
            skill: string;
            /**
             * Format: date
             * @description The day.
             */
            on: string;
        };
        /** @description What the next shot may do. */
        Prediction: {
            /** @description The figure's name. */
            figure: string;
            /** @description Its title. */
            title: string;
            /** @description Its kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description What the model gives with the coefficients the plan states; none when it gives nothing.
             */
            stated: number | null;
            /**
             * Format: double
             * @description What it gives with the fitted ones.
             */
            value: number;
            /**
             * Format: double
             * @description Low end of the interval for one new shot.
             */
            low: number;
            /**
             * Format: double
             * @description High end.
             */
            high: number;
        };
        /** @description A statement made ready, with what its signer is shown beside it. */
        Prepared: {
            /** @description What would be signed. */
            statement: components["schemas"]["Statement"];
            /** @description The words that are put a name to. */
            attestation: components["schemas"]["Attestation"];
            /** @description The facets covered. */
            covers: components["schemas"]["Facet"][];
            previous?: components["schemas"]["PreviousSignOff"] | null;
        };
        /** @description The sign-off one role made last on a gag. */
        PreviousSignOff: {
            /** @description Which. */
            signoff: components["schemas"]["SignOffId"];
            /**
             * Format: int32
             * @description On which revision.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When, by the device's clock.
             */
            signed_at: string;
        };
        /**
         * @description How likely that outcome is: probability levels A to F of MIL-STD-882E, table II.
         * @enum {string}
         */
        Probability: "frequent" | "probable" | "occasional" | "remote" | "improbable" | "eliminated";
        /** @description The document's shape, for the API's description. */
        Problem: {
            /** @description `/problems/` and the code. */
            type: string;
            /** @description The same for every occurrence of the code. */
            title: string;
            /**
             * Format: int32
             * @description The HTTP status.
             */
            status: number;
            /** @description What is wrong this time, and what to do. */
            detail: string;
            /** @description The stable code. */
            code: components["schemas"]["Code"];
            /** @description Each field that is wrong, with its fix. Rosters give `row` and `column` instead of `pointer`. */
            errors?: components["schemas"]["ProblemError"][];
            /** @description With `forbidden`: the permission that is needed. */
            permission?: components["schemas"]["Permission"];
            /**
             * Format: uuid
             * @description With `internal`: what the log has the cause under.
             */
            incident?: string;
            /**
             * Format: int32
             * @description With `stale_plan`: the revision the change was made from.
             */
            expected?: number;
            /** @description With `stale_plan`: the plan as it is now. */
            current?: components["schemas"]["Plan"];
            /** @description With `stale_plan`: the contents that were refused. */
            yours?: components["schemas"]["Facets"];
            /** @description With `stale_plan`: the facets that others changed since. */
            changed_theirs?: components["schemas"]["Facet"][];
            /** @description With `stale_plan`: the facets that the refused change changes. */
            changed_yours?: components["schemas"]["Facet"][];
        };
        /** @description One thing wrong inside the request. */
        ProblemError: components["schemas"]["FieldProblem"] | components["schemas"]["CellProblem"];
        /**
         * Format: uuid
         * @description A production.
         */
        ProductionId: string;
        /** @description A production, its people and its rules. */
        ProductionPage: {
            /** @description Which. */
            id: components["schemas"]["ProductionId"];
            /** @description Its name. */
            name: string;
            /** @description Whether it is the demo, with invented people and public passwords. */
            demo: boolean;
            /** @description IANA time zone of its call times. */
            time_zone: string;
            /** @description The code printed on the brief, for those who may print it. */
            hold_code: string | null;
            /** @description Who must sign what. */
            policy: components["schemas"]["Policy"];
            /** @description Everyone with a hat or an account. */
            members: components["schemas"]["MemberSummary"][];
            /** @description Every device that signs here, so that a phone with no network can check what another hands it. */
            devices: components["schemas"]["Device"][];
            /** @description The reader. */
            me: components["schemas"]["Me"];
            /**
             * Format: int64
             * @description Leaves in the trail.
             */
            trail_size: number;
        };
        /** @description A production by its name. */
        ProductionRef: {
            /** @description Which. */
            id: components["schemas"]["ProductionId"];
            /** @description Its name. */
            name: string;
            /** @description Whether it is the demo, with invented people and public passwords. */
            demo: boolean;
            /** @description IANA time zone of its call times. */
            time_zone: string;
        };
        /** @description An EC JWK for ES256: `{"kty":"EC","crv":"P-256","x":...,"y":...}`. */
        PublicKey: {
            /** @description Always `EC`. */
            kty: string;
            /** @description Always `P-256`. */
            crv: string;
            /** @description Base64url, 32 bytes. */
            x: string;
            /** @description Base64url, 32 bytes. */
            y: string;
        };
        /** @description A piece of equipment as it is to stand on the register. */
        PutItem: {
            /** @description Minted by whoever enters it (UUIDv7); the same again changes the entry. */
            id: components["schemas"]["RecordId"];
            /** @description Serial number, unique on the production. */
            serial: string;
            /** @description What it is. */
            name: string;
            /**
             * Format: double
             * @description Stated safe working load, newtons.
             */
            working_load?: number | null;
            /** @description What it is rated or approved for. */
            rating?: string;
            /**
             * Format: date
             * @description Last day its inspection counts.
             */
            inspected_until?: string | null;
        };
        /**
         * @description A kind of quantity. Its SI unit is what every number in this crate is in.
         * @enum {string}
         */
        Quantity: "length" | "mass" | "time" | "speed" | "acceleration" | "force" | "pressure" | "temperature" | "energy" | "heat_flux" | "angle" | "stiffness" | "volume" | "area" | "areal_density" | "conductance" | "rotation" | "torque" | "power" | "pixels" | "ratio" | "count";
        /** @description Why nobody may use a piece of equipment. */
        Quarantine: {
            /**
             * Format: date-time
             * @description Since when.
             */
            since: string;
            /** @description Why. */
            reason: string;
            /** @description Who set it aside. */
            by: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When it was last set aside once more; an inspection from before has not seen why.
             */
            again_at?: string | null;
        };
        /** @description What to assess. */
        Question: {
            /** @description Values by parameter name, SI; what is left out takes the parameter's default. */
            inputs: components["schemas"]["Inputs"];
        };
        /** @description How bad and how likely. The level follows, and is nowhere typed. */
        Rating: {
            /** @description How bad. */
            severity: components["schemas"]["Severity"];
            /** @description How likely. */
            probability: components["schemas"]["Probability"];
        };
        /** @description One reading. */
        Reading: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description Of what. */
            kind: components["schemas"]["ReadingKind"];
            /**
             * Format: double
             * @description The value, SI.
             */
            value: number;
            /**
             * Format: date-time
             * @description When it was read.
             */
            at: string;
            /** @description Who read it. */
            by: components["schemas"]["PersonId"];
            /** @description Where. */
            place?: string;
        };
        /**
         * @description What is read on the day.
         * @enum {string}
         */
        ReadingKind: "wind" | "gust" | "air_temperature" | "water_temperature" | "light";
        /** @description How one kind of reading stands. */
        ReadingStanding: {
            /** @description What is read. */
            kind: components["schemas"]["ReadingKind"];
            /** @description How it stands. */
            state: components["schemas"]["ReadingState"];
            reading?: components["schemas"]["RecordId"] | null;
            /**
             * Format: double
             * @description Its value, SI.
             */
            value?: number | null;
            /**
             * Format: date-time
             * @description When it was read.
             */
            at?: string | null;
            /**
             * Format: date-time
             * @description Until when it may be leaned on.
             */
            good_until?: string | null;
            /**
             * Format: int32
             * @description The greatest age it may have, minutes.
             */
            max_age_minutes: number;
            /**
             * Format: double
             * @description Least allowed, SI.
             */
            min?: number | null;
            /**
             * Format: double
             * @description Most allowed, SI.
             */
            max?: number | null;
        };
        /**
         * @description How a reading stands, best first.
         * @enum {string}
         */
        ReadingState: "good" | "old" | "missing" | "outside";
        /**
         * Format: uuid
         * @description A reading, a rehearsal run or a test shot.
         */
        RecordId: string;
        /** @description One piece of equipment on the production's register. */
        RegisteredItem: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description Serial number, unique on the production. */
            serial: string;
            /** @description What it is. */
            name: string;
            /**
             * Format: double
             * @description Stated safe working load, newtons.
             */
            working_load?: number | null;
            /** @description What it is rated or approved for, as its plate or certificate says. */
            rating?: string;
            /**
             * Format: date
             * @description Last day its inspection counts.
             */
            inspected_until?: string | null;
            quarantined?: components["schemas"]["Quarantine"] | null;
            /** @description Every time it took a shock load. */
            shock_loads?: components["schemas"]["ShockLoad"][];
        };
        /** @description One run on a rung of the ladder. */
        RehearsalRun: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description The rung's machine name. */
            rung: string;
            /**
             * @description Hash of the action, rigging, effects and vehicles facets rehearsed, as in the plan then
             *     current: a run counts while the facets it rehearsed are unchanged.
             */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", string>>;
            /** @description Whether it went as planned. */
            good: boolean;
            /** @description What was seen. */
            note?: string;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who logged it. */
            by: components["schemas"]["PersonId"];
        };
        /** @description The ladder from weight bag to take. */
        Rehearsals: {
            /** @description In order; each must be passed before the gag can be cleared. */
            rungs?: components["schemas"]["Rung"][];
        };
        /** @description When a role must sign. */
        Required: {
            /**
             * @description Every gag.
             * @default false
             */
            always: boolean;
            /**
             * @description Gags with any of these hazards.
             * @default []
             */
            hazards: components["schemas"]["Hazard"][];
            /**
             * @description Gags with a check that is marginal, unknown or exceeded.
             * @default false
             */
            doubtful_check: boolean;
            /** @default null */
            risk_from?: components["schemas"]["RiskLevel"] | null;
        };
        /** @description One thing a slot needs. */
        Requirement: {
            /** @description Name from the catalogue. */
            name: string;
            /**
             * Format: int32
             * @description Least level, 0 to 5.
             */
            level: number;
            /**
             * Format: int32
             * @description Used or assessed at most this many days before the shooting day; none: recency not asked.
             */
            within_days?: number | null;
            /** @enum {string} */
            kind: "skill";
        } | {
            /** @description Kinds that satisfy it, any one. */
            any_of: string[];
            /** @description Category it must carry. */
            category?: string | null;
            /**
             * Format: int32
             * @description Days after the shooting day through which it must still be valid.
             */
            cover_days?: number;
            /** @enum {string} */
            kind: "certificate";
        } | {
            /** @description Which. */
            of: components["schemas"]["Measurement"];
            /**
             * Format: double
             * @description The actor's value, SI.
             */
            target: number;
            /**
             * Format: double
             * @description Plus or minus, SI.
             */
            tolerance: number;
            /** @enum {string} */
            kind: "measurement";
        } | {
            /**
             * Format: double
             * @description Least.
             */
            min: number;
            /**
             * Format: double
             * @description Most.
             */
            max: number;
            /** @enum {string} */
            kind: "kitted_mass";
        } | {
            /**
             * Format: int32
             * @description Least.
             */
            min?: number | null;
            /**
             * Format: int32
             * @description Most.
             */
            max?: number | null;
            /** @enum {string} */
            kind: "age";
        } | {
            /** @enum {string} */
            kind: "medical_clearance";
        } | {
            /** @enum {string} */
            kind: "availability";
        } | {
            /**
             * Format: double
             * @description Least hours.
             */
            hours: number;
            /** @enum {string} */
            kind: "rest";
        } | {
            /** @description `full_burn`, `high_fall` ... */
            exposure: string;
            /**
             * Format: int32
             * @description How many this gag adds.
             */
            adds: number;
            /**
             * Format: int32
             * @description The most allowed in a day.
             */
            max: number;
            /** @enum {string} */
            kind: "daily_exposure";
        } | {
            /** @enum {string} */
            kind: "consent";
        };
        /** @description How someone is brought down or out. */
        Rescue: {
            /** @description Who leads and what they do. */
            method: string;
            /**
             * Format: double
             * @description Longest time allowed, seconds.
             */
            limit_seconds?: number | null;
            /**
             * Format: double
             * @description Time of the last drill, seconds.
             */
            drilled_seconds?: number | null;
        };
        /** @description A decline resolved in writing. */
        Resolution: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description The decline. */
            signoff: components["schemas"]["SignOffId"];
            /** @description Who resolved it. */
            by: components["schemas"]["PersonId"];
            /** @description Under which hat. */
            role: components["schemas"]["Role"];
            /** @description What was agreed, in words. */
            text: string;
            /**
             * Format: date-time
             * @description When, server time.
             */
            at: string;
        };
        /** @description That somebody stood down may perform again. */
        Returned: {
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who says so. */
            by: components["schemas"]["PersonId"];
        };
        /** @description Lines, anchors, catchers, equipment, rescue. */
        Rigging: {
            /** @description How it is built. */
            method: string;
            /** @description What it is built from. */
            equipment?: components["schemas"]["Equipment"][];
            /** @description The way down or out. */
            rescue?: components["schemas"]["Rescue"];
            /** @description The technique's parameters about the rig. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description One way in which a hazard can hurt somebody. */
        Risk: {
            /** @description The hazard it comes from. */
            hazard: components["schemas"]["Hazard"];
            /** @description What could happen, and to whom; its own in the plan. */
            event: string;
            /** @description As it would be with nothing done. */
            before: components["schemas"]["Rating"];
            /** @description What is done, the strongest kind first. */
            controls?: components["schemas"]["Control"][];
            /** @description As it is with all of that done. */
            after: components["schemas"]["Rating"];
            /** @description Who answers for the controls. */
            owner: components["schemas"]["Role"];
        };
        /**
         * @description What the matrix answers, the least first.
         * @enum {string}
         */
        RiskLevel: "eliminated" | "low" | "medium" | "serious" | "high";
        /** @description One risk with its levels. */
        RiskStanding: {
            /** @description The hazard. */
            hazard: components["schemas"]["Hazard"];
            /** @description What could happen. */
            event: string;
            /** @description The level with nothing done. */
            before: components["schemas"]["RiskLevel"];
            /** @description The level with the controls. */
            after: components["schemas"]["RiskLevel"];
            /** @description What whoever reads it must know, in a sentence; none where nothing stands out. */
            caution: string | null;
        };
        /**
         * @description A hat someone wears on a production. One person may wear several, each said aloud.
         * @enum {string}
         */
        Role: "coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer";
        /** @description What one role answers for. */
        RolePolicy: {
            /** @description The role. */
            role: components["schemas"]["Role"];
            /** @description What people read. */
            title: string;
            /** @description Facets it answers for: a change in any makes its sign-off lapse. */
            covers: components["schemas"]["Facet"][];
            /** @description When its sign-off is required. */
            required: components["schemas"]["Required"];
            /** @description The attestation text and its id (`coordinator/1`). */
            attestation: components["schemas"]["Attestation"];
            /**
             * Format: int32
             * @description Hours a sign-off stays good; none: until something changes.
             */
            good_for_hours?: number | null;
            /** @description Certificates the signer must hold in date, any one of each group. */
            certificates?: string[][];
        };
        /** @description How one role stands. */
        RoleStanding: {
            /** @description The role. */
            role: components["schemas"]["Role"];
            /** @description What people read. */
            title: string;
            slot?: components["schemas"]["SlotId"] | null;
            /** @description Why it must sign: "every gag", "fire", "a check is marginal". */
            because: string;
            /** @description How it stands. */
            state: components["schemas"]["RoleState"];
            signoff?: components["schemas"]["SignOffId"] | null;
            signer?: components["schemas"]["PersonId"] | null;
            /**
             * Format: date-time
             * @description When it was received.
             */
            received_at?: string | null;
            /**
             * Format: int32
             * @description The revision it was signed on.
             */
            revision?: number | null;
            /** @description Why it does not stand, in sentences. */
            reasons?: string[];
            /** @description Facets it covers that changed since it was signed. */
            changed?: components["schemas"]["Facet"][];
            /** @description Conditions not met yet. */
            open_conditions?: string[];
            /** @description Whom the signer deputised for. */
            signed_for?: components["schemas"]["PersonId"];
            /** @description Who saw it signed on paper; none: it was signed on the signer's own device. */
            witness?: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description Until when it is good, if it runs out by itself.
             */
            good_until?: string;
            /**
             * @description What else is to be known, in sentences: changes the role accepted in advance, dissent that was
             *     resolved.
             */
            notes?: string[];
        };
        /**
         * @description How a role's sign-off stands.
         * @enum {string}
         */
        RoleState: "standing" | "conditional" | "missing" | "lapsed" | "declined";
        /**
         * @description One of the four tables.
         * @enum {string}
         */
        RosterTable: "people" | "certificates" | "skills" | "availability";
        /**
         * @description Whether a rule was read in a public text or is habit.
         * @enum {string}
         */
        RuleStanding: "public_text" | "common_practice";
        /** @description One step of the rehearsal ladder. */
        Rung: {
            /** @description Short machine name, unique in the ladder. */
            name: string;
            /** @description What is done: "weight bag 80 kg, full height, three good runs". */
            what: string;
            /**
             * Format: int32
             * @description Good runs needed before the next rung.
             */
            good_runs: number;
        };
        /** @description What moves a figure, most first. */
        Sensitivity: {
            /** @description The technique's name. */
            technique: string;
            /** @description The figure's name. */
            figure: string;
            /** @description The figure's title. */
            title: string;
            /** @description Its kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description Its value at the stated inputs, SI; none when they do not give it.
             */
            value: number | null;
            /** @description One bar for each input that moves it, the longest first. */
            bars: components["schemas"]["Bar"][];
        };
        /** @description Which figure to explain. */
        SensitivityRequest: {
            /** @description The plan's inputs. */
            inputs: components["schemas"]["Inputs"];
            /** @description The figure's machine name. */
            figure: string;
        };
        /** @description A named run of numbers. */
        Series: {
            /** @description What people read. */
            title: string;
            /** @description The kind of quantity of the numbers. */
            quantity: components["schemas"]["Quantity"];
            /** @description The numbers, SI. At most 400 points, so that a phone can plot and keep them. */
            values: number[];
        };
        /** @description What the server is. */
        ServerStatus: {
            /** @description Version of the program. */
            version: string;
            /** @description Whether the database is the demo, with invented people and public passwords. */
            demo: boolean;
            /** @description Whether nobody has an account yet. */
            needs_setup: boolean;
            /**
             * Format: date-time
             * @description The server's clock.
             */
            now: string;
            /** @description What it keeps its data in: SQLite or PostgreSQL. */
            database: string;
            /** @description How to sign in to the demo; only in a database marked as demo. */
            demo_sign_ins?: components["schemas"]["DemoSignIn"][];
        };
        /** @description What signing in answers. */
        Session: {
            /** @description For `Authorization: Bearer`. */
            access_token: string;
            /**
             * Format: date-time
             * @description When the access token stops being good.
             */
            expires_at: string;
            /** @description Who signed in. */
            account: components["schemas"]["AccountRef"];
            /** @description The productions they are on, and as whom. */
            memberships: components["schemas"]["Membership"][];
        };
        /** @description Setting a piece of equipment aside. */
        SetAside: {
            /** @description Why. */
            reason: string;
            /**
             * Format: date-time
             * @description When, by the device's clock: taken as of its arrival at the latest.
             */
            at: string;
        };
        /** @description Where and when. */
        Setting: {
            /** @description Scene number as the script has it. */
            scene: string;
            /** @description The place. */
            location: string;
            /** @description The unit that shoots it. */
            unit?: string;
            /**
             * Format: date
             * @description The shooting day.
             */
            day?: string | null;
            /**
             * Format: date-time
             * @description Call on that day.
             */
            call?: string | null;
            /** @description Light: "day", "night, two balloon lights" ... */
            light?: string;
            /** @description The technique's parameters about the place. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description Who may settle what one role said. */
        Settling: {
            /**
             * @description Roles whose holders may resolve a decline in writing, after which anyone who holds the role may
             *     sign. Empty: only whoever declined can say otherwise.
             * @default []
             */
            declines: components["schemas"]["Role"][];
            /**
             * @description Roles whose holders may say that a condition is met, beside the role that set it.
             * @default []
             */
            conditions: components["schemas"]["Role"][];
        };
        /** @description The first account and production. */
        Setup: {
            /** @description What stands after the `#` of the printed link. */
            token: string;
            /** @description The first person's name. */
            name: string;
            /** @description Their address. */
            email: string;
            /** @description Their password, at least 12 characters. */
            password: string;
            /** @description The production's name. */
            production_name: string;
            /** @description IANA time zone of its call times, for example Europe/Lisbon. */
            time_zone: string;
        };
        /**
         * @description How bad the worst credible outcome is: severity categories 1 to 4 of MIL-STD-882E, table I.
         * @enum {string}
         */
        Severity: "catastrophic" | "critical" | "marginal" | "negligible";
        /** @description An outline on the ground, metres. */
        Shape: {
            /**
             * Format: double
             * @description Centre, along the action.
             */
            x: number;
            /**
             * Format: double
             * @description Centre, across it.
             */
            y: number;
            /**
             * Format: double
             * @description Half axis along.
             */
            half_x: number;
            /**
             * Format: double
             * @description Half axis across.
             */
            half_y: number;
            /** @enum {string} */
            kind: "ellipse";
        } | {
            /**
             * Format: double
             * @description Near edge.
             */
            x0: number;
            /**
             * Format: double
             * @description Far edge.
             */
            x1: number;
            /**
             * Format: double
             * @description Left edge.
             */
            y0: number;
            /**
             * Format: double
             * @description Right edge.
             */
            y1: number;
            /** @enum {string} */
            kind: "rectangle";
        };
        /** @description A brief overload, which nobody can see from outside. */
        ShockLoad: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description What happened. */
            what: string;
            /** @description Who recorded it. */
            by: components["schemas"]["PersonId"];
        };
        /** @description One measurement beside the fit. */
        ShotRow: {
            /** @description Which shot, from 1. */
            shot: number;
            /** @description The figure's name. */
            figure: string;
            /**
             * Format: double
             * @description What was measured.
             */
            measured: number;
            /**
             * Format: double
             * @description What the fitted model gives.
             */
            fitted: number;
        };
        /** @description Who signs in. */
        SignIn: {
            /** @description Address. */
            email: string;
            /** @description Password. */
            password: string;
        };
        /** @description A sign-off as received. */
        SignOff: {
            /** @description The compact JWS exactly as the device made it. */
            jws: string;
            /**
             * Format: date-time
             * @description When the server received it.
             */
            received_at: string;
            /**
             * Format: int64
             * @description Its leaf in the trail.
             */
            leaf: number;
            /** @description Conditions that have been met since, by commitment, and who said so. */
            met?: components["schemas"]["ConditionMet"][];
            /** @description The texts it commits to, each with its salt; none where there are none or they were erased. */
            openings?: components["schemas"]["Opening"][];
        };
        /**
         * Format: uuid
         * @description A sign-off; minted by the device that signs.
         */
        SignOffId: string;
        /** @description What a signer gets back. */
        SignOffReceipt: {
            /** @description The sign-off. */
            id: components["schemas"]["SignOffId"];
            /**
             * Format: int64
             * @description Its leaf in the trail.
             */
            leaf: number;
            /** @description How the role stands now. */
            standing: components["schemas"]["RoleStanding"];
            /** @description How the gag stands now. */
            clearance: components["schemas"]["ClearanceState"];
        };
        /** @description A signed statement. */
        Signed: {
            /**
             * @description Compact JWS with header `{"alg":"ES256","typ":"gagwright-signoff+jws","kid":"<device id>"}` over
             *     the statement's RFC 8785 bytes.
             */
            jws: string;
            /**
             * @description The texts it commits to, conditions and a reason, each with its salt: they travel beside the sign-off
             *     and can be erased.
             */
            openings?: components["schemas"]["Opening"][];
            /**
             * @description The mark the signer drew, whose hash the statement has in its `mark`. A sign-off that was carried here
             *     without it counts all the same; the drawing may follow with the same sign-off.
             */
            mark?: components["schemas"]["Drawing"];
        };
        /** @description A signed statement about a day. */
        SignedDay: {
            /**
             * @description Compact JWS with header `{"alg":"ES256","typ":"gagwright-day-signoff+jws","kid":"<device id>"}`
             *     over the statement's RFC 8785 bytes.
             */
            jws: string;
        };
        /** @description A sign-off as it had been received, and what its signer had read. */
        SignedThen: {
            /** @description Which. */
            signoff: components["schemas"]["SignOffId"];
            /**
             * Format: int64
             * @description Its leaf, which alone says what came before what.
             */
            leaf: number;
            /**
             * Format: date-time
             * @description When it was received, by the server's clock.
             */
            received_at: string;
            /**
             * Format: date-time
             * @description When it was made, by the device's clock.
             */
            signed_at: string;
            /**
             * Format: int64
             * @description Seconds that the device's clock was ahead of the server's when the sign-off was received; none when it was
             *     behind, because a sign-off made with no signal waits, and that is no fault of a clock.
             */
            ahead_seconds: number | null;
            /** @description Who signed. */
            signer: components["schemas"]["PersonId"];
            /** @description Under which hat. */
            role: components["schemas"]["Role"];
            slot: components["schemas"]["SlotId"] | null;
            /** @description What they decided. */
            decision: components["schemas"]["Decision"];
            /**
             * Format: int32
             * @description The revision they had read.
             */
            revision: number;
            /** @description The facets of it that they signed for. */
            covers: components["schemas"]["Facet"][];
            /** @description Conditions and a reason in their own words, while these are kept. */
            texts: string[];
        };
        /** @description A graded competence. Grade, certificate and recency are three separate facts. */
        Skill: {
            /** @description Name from the catalogue, for example `high_fall`. */
            name: string;
            /**
             * Format: int32
             * @description 0 untested; 1 trained, closely supervised; 2 performs known versions with supervision; 3
             *     performs independently and adapts; 4 designs and leads; 5 assesses others.
             */
            level: number;
            /** @description Who assessed it. */
            assessed_by?: string | null;
            /**
             * Format: date
             * @description When it was assessed.
             */
            assessed_on?: string | null;
            /**
             * Format: date
             * @description When it was last used.
             */
            last_used?: string | null;
        };
        /** @description One skill. */
        SkillKind: {
            /** @description Machine name, for example `high_fall`. */
            name: string;
            /** @description What people read, in running text. */
            title: string;
            /** @description Group in the trade's taxonomy: body, heights, vehicles ... */
            group: string;
            /**
             * Format: int32
             * @description Default longest gap between last use or assessment and the shooting day.
             */
            recency_days: number;
            /** @description Whether a mistake in it is likely to be grave. */
            high_consequence: boolean;
            /** @description Where `recency_days` comes from. */
            standing: components["schemas"]["RuleStanding"];
        };
        /** @description A skill and its level. */
        SkillLevel: {
            /** @description Name from the catalogue. */
            name: string;
            /**
             * Format: int32
             * @description 0 to 5.
             */
            level: number;
        };
        /** @description One performer's place in a gag: what it needs and whom it doubles. */
        Slot: {
            /** @description Which slot. */
            id: components["schemas"]["SlotId"];
            /** @description What people call it, for example "Double for Ines". */
            name: string;
            /** @description What it needs. */
            requirements: components["schemas"]["Requirement"][];
            person?: components["schemas"]["PersonId"] | null;
            /**
             * Format: double
             * @description Mass of costume, kit and harness worn on top of the body, kilograms.
             */
            kit_mass?: number;
        };
        /**
         * Format: uuid
         * @description One performer's place in a gag.
         */
        SlotId: string;
        /** @description How one slot stands. */
        SlotStanding: {
            /** @description The slot. */
            slot: components["schemas"]["SlotId"];
            /** @description Its name. */
            name: string;
            person: components["schemas"]["PersonId"] | null;
            verdict: components["schemas"]["Verdict"] | null;
        };
        /** @description The inputs that give it. */
        Solution: {
            /** @description The technique's name. */
            technique: string;
            /** @description The input that moved. */
            parameter: string;
            /** @description The figure. */
            figure: string;
            /**
             * Format: double
             * @description Its wanted value, SI.
             */
            wanted: number;
            /**
             * Format: double
             * @description The start of the range that was searched.
             */
            from: number;
            /**
             * Format: double
             * @description Its end.
             */
            to: number;
            /** @description Every value of the input in the range that gives the wanted figure, ascending. */
            roots: number[];
            /**
             * Format: double
             * @description The least that the figure was over the range; none when it was never given.
             */
            lowest: number | null;
            /**
             * Format: double
             * @description The most.
             */
            highest: number | null;
            /** @description Why there is no root; empty when there is one. */
            note: string;
        };
        /** @description What is wanted. */
        SolveRequest: {
            /** @description The plan's inputs. */
            inputs: components["schemas"]["Inputs"];
            /** @description The input that may move. */
            parameter: string;
            /** @description The figure that is wanted. */
            figure: string;
            /**
             * Format: double
             * @description Its wanted value, SI.
             */
            wanted: number;
            /**
             * Format: double
             * @description The least the input may be; its own least when left out.
             */
            from?: number;
            /**
             * Format: double
             * @description The most the input may be; its own most when left out.
             */
            to?: number;
        };
        /** @description Where a limit comes from. */
        Source: {
            /** @description The document, or "common practice". */
            document: string;
            /** @description Clause, table or section, where one is known. */
            clause: string | null;
            /** @description Where it applies, if anywhere in particular. */
            jurisdiction: string | null;
            /** @description How far the value can be leaned on. */
            standing: components["schemas"]["Standing"];
        };
        /** @description How figures spread. */
        Spread: {
            /** @description The technique's name. */
            technique: string;
            /**
             * Format: int32
             * @description How many states were drawn.
             */
            draws: number;
            /**
             * Format: int32
             * @description The seed.
             */
            seed: number;
            /** @description Each figure over the draws, in the order of the descriptions. */
            figures: components["schemas"]["SpreadFigure"][];
            /** @description Each limit, and how often it was crossed. */
            crossings: components["schemas"]["Crossing"][];
        };
        /** @description One figure over the draws. */
        SpreadFigure: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description The kind of quantity. */
            quantity: components["schemas"]["Quantity"];
            /**
             * Format: double
             * @description The value at the stated inputs, SI.
             */
            value: number;
            /**
             * Format: double
             * @description The mean of the draws.
             */
            mean: number;
            /**
             * Format: double
             * @description Their standard deviation.
             */
            deviation: number;
            /**
             * Format: double
             * @description One draw in twenty is lower.
             */
            low: number;
            /**
             * Format: double
             * @description Half of the draws are lower.
             */
            median: number;
            /**
             * Format: double
             * @description One draw in twenty is higher.
             */
            high: number;
            /**
             * Format: double
             * @description Share of the draws that gave the figure at all.
             */
            share: number;
        };
        /** @description What to draw. */
        SpreadRequest: {
            /** @description The plan's inputs. */
            inputs: components["schemas"]["Inputs"];
            /**
             * Format: int32
             * @description How many states to draw, from 100 to 100,000.
             */
            draws?: number;
            /**
             * Format: int32
             * @description The same seed gives the same draws, everywhere.
             */
            seed?: number;
        };
        /** @description Somebody who does not perform for a while. Never says why. */
        StandDown: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description From when.
             */
            from: string;
            /**
             * Format: date-time
             * @description Until when; none: until someone entitled says otherwise.
             */
            until?: string | null;
            /** @description Who stood them down; themselves, often. */
            by: components["schemas"]["PersonId"];
            returned?: components["schemas"]["Returned"] | null;
            /**
             * @description Whether it stands for a look of the medic's that keeps them from performing, for those who do not
             *     read what was found. Nobody comes back from it early.
             */
            after_look?: boolean;
        };
        /**
         * @description How far a limit's value can be leaned on.
         * @enum {string}
         */
        Standing: "published" | "from_memory" | "common_practice" | "production" | "plan";
        /** @description What is signed. Its RFC 8785 bytes are the JWS payload. */
        Statement: {
            /** @description [`Statement::KIND`] or, with `ink`, [`Statement::INK`]. */
            kind: string;
            /** @description This sign-off; minted by the device, so a replay is seen. */
            id: components["schemas"]["SignOffId"];
            /** @description The production. */
            production: components["schemas"]["ProductionId"];
            /** @description The gag. */
            gag: components["schemas"]["GagId"];
            /**
             * Format: int32
             * @description The revision signed.
             */
            revision: number;
            /** @description RFC 6962 root over the facets in table order, hex. */
            plan_digest: string;
            /** @description The technique's machine name: the same contents mean something else under another. */
            technique: string;
            /** @description Hashes of the facets covered. */
            facets: Partial<Record<"setting" | "action" | "rigging" | "effects" | "vehicles" | "cast" | "medical" | "camera" | "conditions" | "rehearsals", string>>;
            /** @description The hat it is signed under. */
            role: components["schemas"]["Role"];
            /** @description The performer's slot; only with [`Role::Performer`]. */
            slot?: components["schemas"]["SlotId"];
            /** @description The decision. */
            decision: components["schemas"]["Decision"];
            /**
             * @description What must be met first, with `approve_with_conditions`: a commitment to each condition's text (see
             *     [`Opening`]), lower-case hex.
             */
            conditions?: string[];
            /** @description Why, with `decline`: a commitment to the text, lower-case hex. */
            reason?: string;
            /** @description Id of the attestation text shown. */
            attestation: string;
            /** @description The language it was shown in; none: English. */
            language?: string;
            /** @description The delegation under which a delegate signs; none: the signer holds the hat themselves. */
            delegation?: components["schemas"]["RecordId"];
            /** @description Who saw it signed on paper; only with [`Statement::INK`], and then `device` is theirs. */
            ink?: components["schemas"]["Ink"];
            /** @description Who signs. */
            signer: components["schemas"]["PersonId"];
            /** @description The device whose key signs. */
            device: components["schemas"]["DeviceId"];
            /**
             * Format: date-time
             * @description When, by the device's clock: shown, never trusted for order.
             */
            signed_at: string;
            /**
             * Format: date-time
             * @description Until when it counts.
             */
            good_until?: string;
            /**
             * @description SHA-256, lower-case hex, of the mark the signer drew (see [`crate::Drawing`]); none: they only
             *     confirmed.
             */
            mark?: string;
        };
        /**
         * @description The outcome of a check. Missing evidence is never `Within`.
         * @enum {string}
         */
        Status: "within" | "marginal" | "unknown" | "exceeded";
        /** @description A go and the take it was good for. */
        Take: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /**
             * Format: int32
             * @description 1, 2, 3 ... on this gag.
             */
            number: number;
            /**
             * Format: date-time
             * @description When the go was called.
             */
            called_at: string;
            /** @description Who called it. */
            called_by: components["schemas"]["PersonId"];
            /**
             * Format: int32
             * @description The revision performed.
             */
            revision: number;
            /** @description Its digest. */
            plan_digest: string;
            /**
             * Format: date
             * @description The day.
             */
            day: string;
            /** @description Where. */
            place?: string;
            /** @description Who performed in which slot. */
            cast?: {
                [key: string]: components["schemas"]["PersonId"];
            };
            judged?: components["schemas"]["GoJudged"] | null;
            outcome?: components["schemas"]["TakeOutcome"] | null;
        };
        /**
         * @description A take of another gag that has somebody or something of this one in it: one that is open, or one after
         *     which the medic looks at somebody.
         */
        TakeElsewhere: {
            /**
             * Format: uuid
             * @description Of which gag.
             */
            gag: string;
            /** @description The gag's code. */
            code: string;
            /** @description Which take. */
            take: components["schemas"]["RecordId"];
            /**
             * Format: int32
             * @description Its number.
             */
            number: number;
            /**
             * Format: date
             * @description The shooting day.
             */
            day: string;
            /**
             * Format: date-time
             * @description When its go was called.
             */
            called_at: string;
            /**
             * Format: date-time
             * @description When it ended; none: it is open.
             */
            ended_at?: string | null;
            /** @description Who of this gag's cast is in it. */
            people: components["schemas"]["PersonId"][];
            /** @description Serial numbers of this gag's equipment that it uses, while it is open. */
            serials: string[];
            /** @description Whether the medic looks at whoever was in it. */
            look: boolean;
        };
        /** @description How a take ended. */
        TakeOutcome: {
            /** @description In a word. */
            result: components["schemas"]["TakeResult"];
            /** @description What was seen. */
            note?: string;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who says so. */
            by: components["schemas"]["PersonId"];
        };
        /**
         * @description How a take ended, in a word.
         * @enum {string}
         */
        TakeResult: "good" | "not_good" | "stopped";
        /** @description What one body took elsewhere. */
        Taken: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description What, on which day, how often. */
            exposure: components["schemas"]["Exposure"];
        };
        /** @description Everything there is to know about a technique before any number is entered. */
        TechniqueDescription: {
            /** @description Machine name, for example `high-fall`. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description What the model covers and leaves out. */
            summary: string;
            /** @description The inputs, in the order a person fills them in. */
            parameters: components["schemas"]["Parameter"][];
            /** @description The figures it gives, the most telling first. */
            figures: components["schemas"]["FigureDescription"][];
            /** @description The inputs that logged test shots can settle. */
            coefficients: string[];
        };
        /** @description What a technique brings with it. */
        TechniquePolicy: {
            /**
             * @description Hazards it always has.
             * @default []
             */
            hazards: components["schemas"]["Hazard"][];
            /**
             * @description Roles that must sign it whatever its hazards.
             * @default []
             */
            roles?: components["schemas"]["Role"][];
            /**
             * @description What a slot needs unless the plan says otherwise.
             * @default []
             */
            requirements: components["schemas"]["Requirement"][];
            /**
             * @description The ladder a new plan starts with.
             * @default []
             */
            rungs: components["schemas"]["Rung"][];
        };
        /** @description Who must be told. */
        Tell: {
            /** @description Of what. */
            kind: components["schemas"]["IncidentKind"];
            /** @description Roles on the production. */
            roles: components["schemas"]["Role"][];
            /** @description Others, as people call them: the insurer, the authority. */
            others: string[];
        };
        /** @description One test shot as it was logged. Never changed and never taken back: a later one simply adds to it. */
        TestShot: {
            /** @description Which. */
            id: components["schemas"]["RecordId"];
            /** @description The gag it was shot for. */
            gag: components["schemas"]["GagId"];
            /** @description The technique's machine name; often the plan's, though a gag may test another first. */
            technique: string;
            /** @description The technique's inputs as they were set for this shot, SI. */
            inputs: components["schemas"]["Inputs"];
            /** @description What was measured, by the figure's machine name, SI. */
            measured: {
                [key: string]: number;
            };
            /** @description What was shot. */
            load: components["schemas"]["Load"];
            /** @description What was seen. */
            note?: string;
            /**
             * Format: date-time
             * @description When it was shot, by the clock of whoever logged it.
             */
            shot_at: string;
            /** @description Who logged it. */
            recorded_by: components["schemas"]["PersonId"];
            /**
             * Format: date-time
             * @description When it was logged, server time.
             */
            recorded_at: string;
        };
        /** @description A signature someone is asked for. */
        ToSign: {
            /** @description The gag. */
            gag: components["schemas"]["GagRef"];
            /** @description The hat. */
            role: components["schemas"]["Role"];
            /** @description The hat as people read it. */
            role_title: string;
            slot: components["schemas"]["SlotId"] | null;
            /** @description How the role stands now. */
            state: components["schemas"]["RoleState"];
            /** @description Why it is asked, in a sentence. */
            why: string;
            /**
             * Format: date
             * @description The day it is a mark for; none: it is for the plan.
             */
            day: string | null;
        };
        /** @description What one person has to know today. */
        Today: {
            /**
             * Format: date-time
             * @description When this was put together.
             */
            now: string;
            /** @description What the reader is asked to sign. */
            to_sign: components["schemas"]["ToSign"][];
            /** @description What is held. */
            held: components["schemas"]["HeldItem"][];
            /** @description The gags that come next, by shooting day. */
            next: components["schemas"]["GagSummary"][];
            /** @description Certificates that run out before they are needed. */
            lapsing_certificates: components["schemas"]["LapsingCertificate"][];
        };
        /** @description That somebody has been told of an incident. */
        Told: {
            /** @description A role by machine name, or somebody outside as the policy names them. */
            who: string;
            /**
             * Format: date-time
             * @description When.
             */
            at: string;
            /** @description Who told them. */
            by: components["schemas"]["PersonId"];
        };
        /** @description Curves over one axis, for plotting. */
        Trace: {
            /** @description Machine name. */
            name: string;
            /** @description What people read. */
            title: string;
            /** @description The axis, usually time or distance. */
            x: components["schemas"]["Series"];
            /** @description One or more curves, each as long as `x`. */
            y: components["schemas"]["Series"][];
        };
        /** @description One leaf, told in words. */
        TrailItem: {
            /** @description The leaf. */
            entry: components["schemas"]["Entry"];
            /** @description Its hash, hex. */
            hash: string;
            /** @description Who did it, where they are still on the roster. */
            actor_name: string | null;
            /** @description What happened, in a sentence. */
            sentence: string;
        };
        /** @description A page of the trail, newest first. */
        TrailPage: {
            /**
             * Format: int64
             * @description Leaves in the tree.
             */
            size: number;
            /** @description Its root, hex. */
            root: string;
            /** @description The page. */
            items: components["schemas"]["TrailItem"][];
        };
        /** @description Where a gag stands in the trail. */
        TrailPlace: {
            /**
             * Format: int64
             * @description Leaves in the production's tree now.
             */
            size: number;
            /**
             * Format: int64
             * @description The leaf that recorded the current revision.
             */
            leaf: number;
        };
        /** @description A clock that runs on use: after so many unused months the holder needs something more. */
        UseClock: {
            /**
             * Format: int32
             * @description Longest gap in whole months; exactly this many is still in time.
             */
            unused_months: number;
            /** @description What starts the clock again, as a noun phrase. */
            cure: string;
            /**
             * Format: int32
             * @description Days that takes to arrange.
             */
            lead_days: number;
            /** @description Where the rule comes from. */
            standing: components["schemas"]["RuleStanding"];
            /** @description The document, or that it is common practice. */
            source: string;
        };
        /** @description The skills that one performer used in the takes of the day. */
        Used: {
            /** @description Who. */
            person: components["schemas"]["PersonId"];
            /** @description Skills by their names in the catalogue; none of them: they used none. */
            skills: string[];
        };
        /** @description How long a certificate counts when the document itself carries no date. */
        Validity: {
            /**
             * Format: int32
             * @description So many months from issue.
             */
            months: number;
        } | "no_expiry" | "as_printed";
        /** @description Cars, motorcycles, tow rigs. */
        Vehicles: {
            /** @description What drives, and what was done to it. */
            method: string;
            /** @description The technique's parameters about vehicles. */
            parameters?: {
                [key: string]: components["schemas"]["InputValue"];
            };
        };
        /** @description The answer for one person in one slot, listing every requirement. */
        Verdict: {
            /** @description The slot. */
            slot: components["schemas"]["SlotId"];
            /** @description The person. */
            person: components["schemas"]["PersonId"];
            /** @description The worst of the findings decides. */
            outcome: components["schemas"]["Outcome"];
            /**
             * Format: double
             * @description How well they fit beyond qualifying, 0 to 1, for ranking.
             */
            fit: number;
            /** @description One finding for each requirement, in the slot's order. */
            findings: components["schemas"]["Finding"][];
        };
        /** @description What of a person the reader may see. */
        Visible: {
            /** @description Birthday, measurements, address, certificate numbers. */
            personal: boolean;
            /** @description Medical date and exposures. */
            medical: boolean;
        };
        /** @description A witness of the production. */
        WitnessView: {
            /**
             * Format: int64
             * @description The entry that added it, by which it is removed.
             */
            id: number;
            /** @description The name it signs under. */
            name: string;
            /** @description Its public key, `name+hash+base64`. */
            key: string;
            /**
             * Format: date-time
             * @description Since when.
             */
            added_at: string;
            /**
             * Format: date-time
             * @description Until when, where it was removed.
             */
            removed_at?: string | null;
            /** @description What it cosigned, the newest first. */
            cosigned: components["schemas"]["CosignedView"][];
        };
        /** @description The production's witnesses. */
        Witnesses: {
            /**
             * Format: int64
             * @description How many entries the trail has now.
             */
            size: number;
            /** @description In the order they were added, those that were removed included. */
            items: components["schemas"]["WitnessView"][];
        };
        /** @description Ground that must be clear. Metres, in the plane of the ground; x points along the action. */
        Zone: {
            /** @description Machine name. */
            name: string;
            /** @description What people read, for example "Landing ellipse, 99 %". */
            title: string;
            /** @description The outline. */
            shape: components["schemas"]["Shape"];
            /** @description Why it must be clear. */
            reason: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    read_gag: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The gag */
            200: {
                headers: {
                    /** @description The revision, in quotes */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GagPage"];
                };
            };
        };
    };
    hold_briefing: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewBriefing"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Briefing"];
                };
            };
        };
    };
    draft_day_signoff: {
        parameters: {
            query: {
                /** @description The hat. */
                role: "coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer";
                /** @description The performer's slot; only with `performer`. */
                slot?: string;
                /** @description Who signs on paper, when the caller is their witness. */
                signer?: string;
            };
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The draft */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DayPrepared"];
                };
            };
        };
    };
    submit_day_signoff: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignedDay"];
            };
        };
        responses: {
            /** @description Taken before; how the role stands now */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoleStanding"];
                };
            };
            /** @description Taken */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoleStanding"];
                };
            };
        };
    };
    hold_debrief: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDebrief"];
            };
        };
        responses: {
            /** @description Recorded before */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Debrief"];
                };
            };
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Debrief"];
                };
            };
        };
    };
    record_look: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLook"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Look"];
                };
            };
        };
    };
    match_slot: {
        parameters: {
            query: {
                /** @description The slot, as the plan's cast facet has it. */
                slot: string;
            };
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The candidates, best first */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Matches"];
                };
            };
        };
    };
    print_packet: {
        parameters: {
            query?: {
                /** @description `a4` (unless given) or `letter`. */
                paper?: "a4" | "letter";
            };
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The packet */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": number[];
                };
            };
        };
    };
    revise_plan: {
        parameters: {
            query?: never;
            header: {
                /** @description The revision in hand, in quotes */
                "If-Match": string;
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewRevision"];
            };
        };
        responses: {
            /** @description The gag with its new revision */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GagPage"];
                };
            };
        };
    };
    read_plan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
                /** @description The revision, from 1 */
                revision: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The plan */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Plan"];
                };
            };
        };
    };
    log_reading: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewReading"];
            };
        };
        responses: {
            /** @description Logged */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reading"];
                };
            };
        };
    };
    log_run: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewRun"];
            };
        };
        responses: {
            /** @description Logged */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RehearsalRun"];
                };
            };
        };
    };
    draft_signoff: {
        parameters: {
            query: {
                /** @description The hat. */
                role: "coordinator" | "performer" | "rigging" | "effects" | "fire" | "medic" | "first_ad" | "vehicles" | "armourer" | "marine" | "animals" | "camera" | "engineer" | "guardian" | "production" | "observer";
                /** @description The performer's slot; only with `performer`. */
                slot?: string;
                /** @description Who signs on paper, when the caller is their witness. */
                signer?: string;
            };
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The draft */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Draft"];
                };
            };
        };
    };
    submit_signoff: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Signed"];
            };
        };
        responses: {
            /** @description Taken before; how the role stands now */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignOffReceipt"];
                };
            };
            /** @description Taken */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignOffReceipt"];
                };
            };
        };
    };
    call_go: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewGo"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Take"];
                };
            };
        };
    };
    end_take: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
                /** @description The take */
                take: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOutcome"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Take"];
                };
            };
        };
    };
    list_test_shots: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All of them */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_TestShot"];
                };
            };
        };
    };
    log_test_shot: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewTestShot"];
            };
        };
        responses: {
            /** @description Logged */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestShot"];
                };
            };
        };
    };
    bring_handed: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Handed"];
            };
        };
        responses: {
            /** @description Done, now or before: what the request's own address answers */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": unknown;
                };
            };
        };
    };
    raise_hold_by_code: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The code printed on the day's brief */
                code: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["HoldByCode"];
            };
        };
        responses: {
            /** @description Held already, by this code and with no more to say */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HeldByCode"];
                };
            };
            /** @description Held */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HeldByCode"];
                };
            };
        };
    };
    agree_to_release: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The hold */
                hold: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Agree"];
            };
        };
        responses: {
            /** @description The hold now */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Hold"];
                };
            };
        };
    };
    accept_invitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Accept"];
            };
        };
        responses: {
            /** @description Signed in */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
        };
    };
    change_password: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePassword"];
            };
        };
        responses: {
            /** @description Changed */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    read_production: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The production */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductionPage"];
                };
            };
        };
    };
    read_changes: {
        parameters: {
            query?: {
                /** @description How many leaves the caller has: the `size` of the last answer; 0 to begin with. */
                after?: number;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What changed */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Changes"];
                };
            };
        };
    };
    read_day: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The day */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DayBook"];
                };
            };
        };
    };
    list_delegations: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The delegations */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_Delegation"];
                };
            };
        };
    };
    make_delegation: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDelegation"];
            };
        };
        responses: {
            /** @description The delegation */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Delegation"];
                };
            };
        };
    };
    end_delegation: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The delegation */
                delegation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The delegation, ended */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Delegation"];
                };
            };
        };
    };
    list_devices: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The devices */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_DeviceSummary"];
                };
            };
        };
    };
    register_device: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDevice"];
            };
        };
        responses: {
            /** @description Registered */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Device"];
                };
            };
        };
    };
    revoke_device: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The device */
                device: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Revoked */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    put_equipment: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PutItem"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisteredItem"];
                };
            };
        };
    };
    quarantine_equipment: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The piece */
                item: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetAside"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisteredItem"];
                };
            };
        };
    };
    release_equipment: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The piece */
                item: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BackInUse"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisteredItem"];
                };
            };
        };
    };
    record_shock_load: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The piece */
                item: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewShockLoad"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisteredItem"];
                };
            };
        };
    };
    listen: {
        parameters: {
            query?: {
                /** @description In place of the Authorization header */
                access_token?: string;
            };
            header?: {
                /** @description Index of the last change heard */
                "Last-Event-ID"?: number | null;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The stream */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
        };
    };
    list_gags: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The gags */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_GagSummary"];
                };
            };
        };
    };
    create_gag: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewGag"];
            };
        };
        responses: {
            /** @description The new gag */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GagPage"];
                };
            };
        };
    };
    read_gag_at: {
        parameters: {
            query?: {
                /** @description After this leaf, judged when it was received. */
                leaf?: number;
                /** @description At this moment, RFC 3339: after the last leaf received by then. */
                at?: string;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
                /** @description The gag */
                gag: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The gag then */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GagThen"];
                };
            };
        };
    };
    list_holds: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The holds */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_Hold"];
                };
            };
        };
    };
    raise_hold: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewHold"];
            };
        };
        responses: {
            /** @description Held */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Hold"];
                };
            };
        };
    };
    report_incident: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewIncident"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Incident"];
                };
            };
        };
    };
    close_incident: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The incident */
                incident: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewClosing"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Incident"];
                };
            };
        };
    };
    tell_of_incident: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The incident */
                incident: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewTold"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Incident"];
                };
            };
        };
    };
    list_invitations: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The open invitations */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_OpenInvitation"];
                };
            };
        };
    };
    invite: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Invite"];
            };
        };
        responses: {
            /** @description Invited */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invited"];
                };
            };
        };
    };
    withdraw_invitation: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The invitation */
                invitation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Withdrawn */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    list_members: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The members */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_MemberAccount"];
                };
            };
        };
    };
    set_roles: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The person */
                person: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Hats"];
            };
        };
        responses: {
            /** @description Their roles now */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Hats"];
                };
            };
        };
    };
    list_people: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The roster */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_PersonSummary"];
                };
            };
        };
    };
    read_person: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
                /** @description The person */
                person: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The person */
            200: {
                headers: {
                    /** @description The version, in quotes */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonPage"];
                };
            };
        };
    };
    put_person: {
        parameters: {
            query?: never;
            header: {
                /** @description The version in hand, in quotes */
                "If-Match"?: string | null;
                /** @description `*`, for somebody new */
                "If-None-Match"?: string | null;
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The person */
                person: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Person"];
            };
        };
        responses: {
            /** @description Written */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonPage"];
                };
            };
            /** @description New on the roster */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonPage"];
                };
            };
        };
    };
    erase_person: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The person */
                person: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Erased */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasedPerson"];
                };
            };
        };
    };
    read_policy_version: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
                /** @description The policy's version */
                version: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The policy */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Policy"];
                };
            };
        };
    };
    read_policy: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The policy */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PolicyPage"];
                };
            };
        };
    };
    put_policy: {
        parameters: {
            query?: never;
            header: {
                /** @description The version in force, in quotes */
                "If-Match": string;
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPolicy"];
            };
        };
        responses: {
            /** @description The policy, now in force */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PolicyPage"];
                };
            };
        };
    };
    preview_policy: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Policy"];
            };
        };
        responses: {
            /** @description What it would change */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PolicyPreview"];
                };
            };
        };
    };
    export_roster: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
                /** @description Which table */
                table: components["schemas"]["RosterTable"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The table */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
        };
    };
    import_roster: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description Which table */
                table: components["schemas"]["RosterTable"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "text/csv": string;
            };
        };
        responses: {
            /** @description What it did */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportReport"];
                };
            };
        };
    };
    stand_down: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewStandDown"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandDown"];
                };
            };
        };
    };
    bring_back: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The stand-down */
                stand_down: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Back */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandDown"];
                };
            };
        };
    };
    read_today: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Today */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Today"];
                };
            };
        };
    };
    read_trail: {
        parameters: {
            query?: {
                /** @description Leaves below this index; left out: the newest. */
                before?: number;
                /** @description How many, at most 500; 50 unless given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The page */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrailPage"];
                };
            };
        };
    };
    read_checkpoint: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The note */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
        };
    };
    prove_growth: {
        parameters: {
            query: {
                /** @description The smaller tree. */
                from: number;
                /** @description The larger tree; left out: the tree as it is now. */
                to?: number;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The proof */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ConsistencyProof"];
                };
            };
        };
    };
    bring_cosignature: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewCosignature"];
            };
        };
        responses: {
            /** @description What was taken in */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_CosignedView"];
                };
            };
        };
    };
    export_trail: {
        parameters: {
            query?: {
                /** @description Whether the personal parts go with it; they stay here unless asked for. */
                parts?: boolean;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/jsonl": string;
                };
            };
        };
    };
    prove_leaf: {
        parameters: {
            query: {
                /** @description Its index. */
                leaf: number;
            };
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The proof */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InclusionProof"];
                };
            };
        };
    };
    list_witnesses: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The witnesses */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Witnesses"];
                };
            };
        };
    };
    add_witness: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewWitness"];
            };
        };
        responses: {
            /** @description The witness */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WitnessView"];
                };
            };
        };
    };
    remove_witness: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The production */
                production: string;
                /** @description The entry that added it */
                witness: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The witness, removed */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WitnessView"];
                };
            };
        };
    };
    list_sign_ins: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sign-ins */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_OwnSignIn"];
                };
            };
        };
    };
    sign_in: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignIn"];
            };
        };
        responses: {
            /** @description Signed in */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
        };
    };
    sign_out: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Signed out */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    end_other_sign_ins: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ended */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    refresh_session: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Still signed in */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
        };
    };
    end_sign_in: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The sign-in */
                session: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ended */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    set_up: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Setup"];
            };
        };
        responses: {
            /** @description The first account, signed in as coordinator */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
        };
    };
    meet_condition: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The sign-off that set it */
                signoff: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Met"];
            };
        };
        responses: {
            /** @description How the role stands now */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoleStanding"];
                };
            };
        };
    };
    read_photograph: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The sign-off */
                signoff: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The photograph, JPEG or PNG */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": unknown;
                };
            };
        };
    };
    keep_photograph: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The sign-off */
                signoff: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/octet-stream": number[];
            };
        };
        responses: {
            /** @description Kept */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    resolve_decline: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description A fresh UUID for each write, and the same one when that write is sent again. The first answer is
                 *     kept and given again with `Idempotency-Replayed: true`.
                 */
                "Idempotency-Key": string;
            };
            path: {
                /** @description The decline */
                signoff: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewResolution"];
            };
        };
        responses: {
            /** @description How the role stands now */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoleStanding"];
                };
            };
        };
    };
    read_status: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the server is */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServerStatus"];
                };
            };
        };
    };
    list_techniques: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All of them */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_TechniqueDescription"];
                };
            };
        };
    };
    assess_technique: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                name: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Question"];
            };
        };
        responses: {
            /** @description What it comes to */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Assessment"];
                };
            };
        };
    };
    calibrate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CalibrateRequest"];
            };
        };
        responses: {
            /** @description The coefficients and the prediction */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Calibration"];
                };
            };
        };
    };
    compare: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CompareRequest"];
            };
        };
        responses: {
            /** @description What moved */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Comparison"];
                };
            };
        };
    };
    list_limits: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All of them, by check */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Items_Policy"];
                };
            };
        };
    };
    sensitivity: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SensitivityRequest"];
            };
        };
        responses: {
            /** @description The inputs, the most telling first */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Sensitivity"];
                };
            };
        };
    };
    solve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SolveRequest"];
            };
        };
        responses: {
            /** @description The values */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Solution"];
                };
            };
        };
    };
    spread: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The technique's machine name */
                technique: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SpreadRequest"];
            };
        };
        responses: {
            /** @description The spread of each figure */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Spread"];
                };
            };
        };
    };
}
