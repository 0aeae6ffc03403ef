//! Plays a script by running the very commands that people run, with real keys: whatever stands at the
//! end stands because the commands, the judge and the trail say so.

use std::collections::BTreeMap;

use gagwright_casting::{PersonId, ProductionId, SlotId};
use gagwright_clearance::{
    Case, Clearance, Decision, DeviceId, GagId, Hold, HoldId, Opening, Plan, RecordId, Role,
    RoleState, SignOffId, judge::missing_agreements, signoff,
};
use gagwright_store::{Connection, StoreError};
use jiff::{SignedDuration, Timestamp};
use p256::ecdsa::SigningKey;

use super::{
    ladder,
    script::{GagScript, ScriptError, Step, merged, put_inputs},
};
use crate::{
    commands::{
        self, Actor, CommandError, NewDevice, NewGag, NewHold, NewReading, NewRevision, NewRun,
        NewTestShot, record,
    },
    remembered::clearance,
    views::{SignOffReceipt, gathering},
};

impl From<ScriptError> for CommandError {
    fn from(error: ScriptError) -> Self {
        CommandError::Store(StoreError::Internal(error.to_string()))
    }
}

/// Where random bytes come from while a stage is played.
pub(crate) type OwnedEntropy = Box<dyn FnMut(&mut [u8]) + Send>;

/// A production being played.
pub(crate) struct Stage {
    pub(crate) production: ProductionId,
    /// People by code.
    pub(crate) people: BTreeMap<String, PersonId>,
    /// What each person signs with.
    pub(crate) keys: BTreeMap<PersonId, (DeviceId, SigningKey)>,
    pub(crate) now: Timestamp,
    /// How far the clock moves with each thing that happens.
    pub(crate) step: SignedDuration,
    pub(crate) entropy: OwnedEntropy,
}

impl Stage {
    /// The next moment.
    pub(crate) fn tick(&mut self) -> Timestamp {
        self.now = self.now.saturating_add(self.step).unwrap_or(self.now);
        self.now
    }

    /// A fresh id.
    pub(crate) fn mint(&mut self) -> uuid::Uuid {
        record::mint(self.now, &mut *self.entropy)
    }

    /// The person with a code.
    pub(crate) fn person(&self, code: &str) -> Result<PersonId, CommandError> {
        self.people
            .get(code)
            .copied()
            .ok_or_else(|| CommandError::NotFound {
                what: "person",
                id: code.to_owned(),
            })
    }

    /// Reads who is on the roster.
    pub(crate) fn meet_people(&mut self, conn: &mut Connection) -> Result<(), CommandError> {
        self.people = gagwright_store::people::list(conn, self.production)?
            .into_iter()
            .map(|stored| (stored.person.code, stored.person.id))
            .collect();
        Ok(())
    }

    /// Somebody as an actor, with the hats they hold now.
    pub(crate) fn actor(
        &self,
        conn: &mut Connection,
        person: PersonId,
    ) -> Result<Actor, CommandError> {
        let member =
            gagwright_store::members::get(conn, self.production, person)?.ok_or_else(|| {
                CommandError::NotFound {
                    what: "member",
                    id: person.to_string(),
                }
            })?;
        Ok(Actor {
            account: member.account,
            production: self.production,
            person,
            roles: member.roles,
            carried_by: None,
        })
    }

    /// Somebody by code, as an actor.
    pub(crate) fn by_code(&self, conn: &mut Connection, code: &str) -> Result<Actor, CommandError> {
        self.actor(conn, self.person(code)?)
    }

    /// Makes a key on a person's device and registers its public half.
    pub(crate) fn register_device(
        &mut self,
        conn: &mut Connection,
        person: PersonId,
        name: &str,
    ) -> Result<(), CommandError> {
        let actor = self.actor(conn, person)?;
        let key = self.fresh_key();
        let id = DeviceId(self.mint());
        let now = self.tick();
        let device = NewDevice {
            id,
            name: name.to_owned(),
            key: key.verifying_key().into(),
        };
        commands::devices::register(conn, &actor, now, device, &mut *self.entropy)?;
        self.keys.insert(person, (id, key));
        Ok(())
    }

    fn fresh_key(&mut self) -> SigningKey {
        loop {
            let mut bytes = [0u8; 32];
            (self.entropy)(&mut bytes);
            // Fails only for zero and for numbers beyond the curve's order: one in 2^32.
            if let Ok(key) = SigningKey::from_slice(&bytes) {
                return key;
            }
        }
    }

    /// Adds a gag.
    pub(crate) fn create(
        &mut self,
        conn: &mut Connection,
        by: &str,
        gag: &GagScript,
    ) -> Result<Plan, CommandError> {
        let actor = self.by_code(conn, by)?;
        let policy = record::policy(conn, self.production)?;
        let id = GagId(self.mint());
        let now = self.tick();
        let entropy = &mut self.entropy;
        let facets = gag.facets(&policy, &self.people, &mut || {
            record::mint(now, &mut **entropy)
        })?;
        let new = NewGag {
            id,
            code: gag.code.clone(),
            title: gag.title.clone(),
            technique: gag.technique.clone(),
            facets: Some(facets),
            note: gag.note.clone(),
        };
        commands::gags::create(conn, &actor, now, new, &mut *self.entropy)
    }

    /// Plays a gag's steps.
    pub(crate) fn play(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        steps: &[Step],
    ) -> Result<(), CommandError> {
        for step in steps {
            self.one(conn, gag, step)?;
        }
        Ok(())
    }

    fn one(&mut self, conn: &mut Connection, gag: GagId, step: &Step) -> Result<(), CommandError> {
        match step {
            Step::Rehearse { by, rungs } => self.rehearse(conn, gag, by, rungs.as_deref()),
            Step::SignAll { except } => self
                .sign_all(conn, gag, |role| !except.contains(&role))
                .map(|_| ()),
            Step::Sign {
                role,
                by,
                decision,
                conditions,
                reason,
            } => {
                let person = self.person(by)?;
                let word = Word {
                    decision: *decision,
                    conditions: conditions.clone(),
                    reason: reason.clone(),
                };
                self.sign(conn, gag, *role, person, word).map(|_| ())
            }
            Step::Revise {
                by,
                note,
                inputs,
                facets,
            } => {
                let actor = self.by_code(conn, by)?;
                let plan = gagwright_store::plans::current(conn, gag)?;
                let mut next = merged(&plan.facets, facets)?;
                put_inputs(&mut next, &plan.technique, inputs)?;
                let now = self.tick();
                let revision = NewRevision {
                    technique: plan.technique,
                    facets: next,
                    note: note.clone(),
                };
                commands::plans::revise(
                    conn,
                    &actor,
                    now,
                    gag,
                    plan.revision,
                    revision,
                    &mut *self.entropy,
                )
                .map(|_| ())
            }
            Step::Hold { by, reason, hazard } => {
                let actor = match by {
                    Some(code) => Some(self.by_code(conn, code)?),
                    None => None,
                };
                let id = HoldId(self.mint());
                let now = self.tick();
                let new = NewHold {
                    id,
                    gag: Some(gag),
                    reason: reason.clone(),
                    hazard: *hazard,
                };
                let entropy = &mut *self.entropy;
                commands::holds::raise(conn, actor.as_ref(), self.production, now, new, entropy)
                    .map(|_| ())
            }
            Step::Agree { by, role, cause } => {
                let actor = self.by_code(conn, by)?;
                let hold = self.open_hold(conn, gag)?;
                let now = self.tick();
                let entropy = &mut *self.entropy;
                commands::holds::agree(conn, &actor, now, hold.id, *role, cause.clone(), entropy)
                    .map(|_| ())
            }
            Step::TestShot { by, .. } => self.test_shot(conn, gag, by, step),
            Step::Read {
                by,
                kind,
                value,
                place,
            } => {
                let actor = self.by_code(conn, by)?;
                let id = RecordId(self.mint());
                let now = self.tick();
                let new = NewReading {
                    id,
                    kind: *kind,
                    value: *value,
                    at: now,
                    place: place.clone(),
                };
                commands::day::log_reading(conn, &actor, now, gag, new, &mut *self.entropy)
                    .map(|_| ())
            }
        }
    }

    /// Logs a test shot of an invented rig.
    fn test_shot(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        by: &str,
        step: &Step,
    ) -> Result<(), CommandError> {
        let plan = gagwright_store::plans::current(conn, gag)?;
        let stated = plan
            .inputs()
            .map_err(|error| ScriptError(error.to_string()))?;
        let Some(shot) = ladder::shot(&plan.technique, &stated, step)? else {
            return Ok(());
        };
        let actor = self.by_code(conn, by)?;
        let id = RecordId(self.mint());
        let now = self.tick();
        let new = NewTestShot {
            id,
            technique: plan.technique,
            inputs: shot.inputs,
            measured: shot.measured,
            load: shot.load,
            note: shot.note,
            shot_at: now,
        };
        commands::test_shots::log_test_shot(conn, &actor, now, gag, new, &mut *self.entropy)
            .map(|_| ())
    }

    fn open_hold(&self, conn: &mut Connection, gag: GagId) -> Result<Hold, CommandError> {
        let case = gathering::case(conn, self.production, gag)?;
        case.holds
            .iter()
            .find(|hold| !missing_agreements(hold, &case.policy, &case.members).is_empty())
            .cloned()
            .ok_or_else(|| CommandError::NotFound {
                what: "open hold",
                id: gag.to_string(),
            })
    }

    /// Logs the good runs that the ladder, or some of its rungs, ask for.
    pub(crate) fn rehearse(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        by: &str,
        rungs: Option<&[String]>,
    ) -> Result<(), CommandError> {
        let actor = self.by_code(conn, by)?;
        let plan = gagwright_store::plans::current(conn, gag)?;
        let revision = plan.revision;
        for rung in plan.facets.rehearsals.rungs {
            if rungs.is_some_and(|wanted| !wanted.contains(&rung.name)) {
                continue;
            }
            for _ in 0..rung.good_runs {
                let id = RecordId(self.mint());
                let now = self.tick();
                let new = NewRun {
                    id,
                    rung: rung.name.clone(),
                    good: true,
                    note: String::new(),
                    revision,
                    at: now,
                };
                commands::day::log_run(conn, &actor, now, gag, new, &mut *self.entropy)?;
            }
        }
        Ok(())
    }

    /// The case and the judge's answer now.
    pub(crate) fn judge(
        &self,
        conn: &mut Connection,
        gag: GagId,
    ) -> Result<(Case, Clearance), CommandError> {
        let case = gathering::case(conn, self.production, gag)?;
        let answer = clearance(&case, self.now);
        Ok((case, answer))
    }

    /// Has everyone sign who must, is wanted, and does not stand; gives what was signed.
    pub(crate) fn sign_all(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        wanted: impl Fn(Role) -> bool,
    ) -> Result<Vec<SignOffReceipt>, CommandError> {
        let (case, answer) = self.judge(conn, gag)?;
        let mut receipts = Vec::new();
        for role in answer.roles {
            if role.state == RoleState::Standing || !wanted(role.role) {
                continue;
            }
            let signer = self.signer(&case, role.role, role.slot)?;
            receipts.push(self.sign(conn, gag, role.role, signer, Word::yes())?);
        }
        Ok(receipts)
    }

    /// Who would sign: the performer cast in the slot, or the first who wears the hat.
    pub(crate) fn signer(
        &self,
        case: &Case,
        role: Role,
        slot: Option<SlotId>,
    ) -> Result<PersonId, CommandError> {
        let signer = match role {
            Role::Performer => case
                .plan
                .facets
                .cast
                .slots
                .iter()
                .find(|one| Some(one.id) == slot)
                .and_then(|one| one.person),
            hat => case
                .members
                .iter()
                .find(|member| member.roles.contains(&hat))
                .map(|member| member.person),
        };
        signer.ok_or_else(|| CommandError::NotFound {
            what: "holder of the role",
            id: role.name().to_owned(),
        })
    }

    /// Registers a phone for whoever has none yet.
    pub(crate) fn has_device(
        &mut self,
        conn: &mut Connection,
        signer: PersonId,
    ) -> Result<(), CommandError> {
        if self.keys.contains_key(&signer) {
            return Ok(());
        }
        self.register_device(conn, signer, "Phone")
    }

    /// What somebody signs with.
    pub(crate) fn key(&self, signer: PersonId) -> Result<&(DeviceId, SigningKey), CommandError> {
        self.keys
            .get(&signer)
            .ok_or_else(|| CommandError::NotFound {
                what: "device",
                id: signer.to_string(),
            })
    }

    /// Has one person sign: reads the draft, signs its canonical bytes with their key, hands it in.
    pub(crate) fn sign(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        role: Role,
        signer: PersonId,
        word: Word,
    ) -> Result<SignOffReceipt, CommandError> {
        let actor = self.actor(conn, signer)?;
        self.has_device(conn, signer)?;
        let now = self.tick();
        let draft = commands::signoffs::draft(conn, &actor, now, gag, role, None, None)?;
        let id = SignOffId(self.mint());
        let (device, key) = self.key(signer)?.clone();
        let mut statement = draft.statement;
        statement.id = id;
        statement.device = device;
        statement.signed_at = now;
        statement.decision = word.decision;
        let mut openings = Vec::new();
        let mut committed = |text: String, entropy: &mut OwnedEntropy| {
            let mut salt = [0u8; 32];
            entropy(&mut salt);
            let opening = Opening::new(&salt, text);
            let commitment = opening.commitment().unwrap_or_default();
            openings.push(opening);
            commitment
        };
        for text in word.conditions {
            let commitment = committed(text, &mut self.entropy);
            statement.conditions.push(commitment);
        }
        statement.reason = word.reason.map(|text| committed(text, &mut self.entropy));
        let jws = signoff::sign(&statement, &key)?;
        let entropy = &mut *self.entropy;
        let taken = commands::signoffs::submit(conn, &actor, now, gag, &jws, openings, entropy)?;
        Ok(taken.receipt())
    }
}

/// What a signer says.
pub(crate) struct Word {
    pub(crate) decision: Decision,
    pub(crate) conditions: Vec<String>,
    pub(crate) reason: Option<String>,
}

impl Word {
    /// Yes, and nothing else.
    pub(crate) fn yes() -> Self {
        Self {
            decision: Decision::Approve,
            conditions: Vec::new(),
            reason: None,
        }
    }
}
