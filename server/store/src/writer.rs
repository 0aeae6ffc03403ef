//! The one writer: a thread with a connection of its own that takes queued writes, runs each in its
//! own savepoint, commits several together, and answers each only after the commit. One commit costs
//! one wait for the disk, however many writes share it. Must not know what is written.

use std::{
    any::Any,
    collections::VecDeque,
    panic::{AssertUnwindSafe, catch_unwind},
    sync::mpsc::{self, Receiver, SyncSender},
    thread::{self, JoinHandle, ThreadId},
};

use diesel::{connection::TransactionManager, result::Error as DieselError};

use crate::{
    address::Address,
    connection::{self, AnyConnection, Purpose},
    error::StoreError,
};

/// Most writes in one commit: enough to share the wait, few enough that the first is not kept waiting.
const GROUP: usize = 64;

/// Writes that may queue before callers wait to queue.
const QUEUE: usize = 1024;

/// The handle on the writer's thread. Dropping it lets the queue run out and waits for the thread.
pub(crate) struct Writer {
    queue: Option<SyncSender<Box<dyn Job>>>,
    thread: Option<JoinHandle<()>>,
    id: ThreadId,
}

impl Writer {
    /// Starts the thread with a connection already open.
    pub(crate) fn start(address: Address, connection: AnyConnection) -> Result<Writer, StoreError> {
        let (queue, jobs) = mpsc::sync_channel(QUEUE);
        let thread = thread::Builder::new()
            .name("gagwright-writer".to_owned())
            .spawn(move || {
                Loop {
                    address,
                    connection: Some(connection),
                }
                .run(&jobs)
            })
            .map_err(|error| {
                StoreError::Unavailable(format!("the writer's thread cannot be started: {error}"))
            })?;
        Ok(Writer {
            queue: Some(queue),
            id: thread.thread().id(),
            thread: Some(thread),
        })
    }

    /// Queues a write and waits for its commit.
    pub(crate) fn write<T, E>(
        &self,
        work: impl FnOnce(&mut AnyConnection) -> Result<T, E> + Send + 'static,
    ) -> Result<T, E>
    where
        T: Send + 'static,
        E: From<StoreError> + Send + 'static,
    {
        if thread::current().id() == self.id {
            // It would wait for itself for ever.
            return Err(StoreError::Internal(
                "a write was asked for from inside a write; use the connection it was given"
                    .to_owned(),
            )
            .into());
        }
        let stopped = || StoreError::Unavailable("the writer has stopped".to_owned());
        let (reply, answer) = mpsc::sync_channel(1);
        let job = Box::new(Queued {
            work: Some(work),
            outcome: None,
            blamed: false,
            reply,
        });
        self.queue
            .as_ref()
            .ok_or_else(stopped)?
            .send(job)
            .map_err(|_| stopped())?;
        answer.recv().map_err(|_| stopped())?
    }
}

impl Drop for Writer {
    fn drop(&mut self) {
        drop(self.queue.take());
        if let Some(thread) = self.thread.take()
            && thread::current().id() != self.id
            && thread.join().is_err()
        {
            tracing::error!("the writer's thread ended in a panic");
        }
    }
}

/// A queued write, its types hidden.
trait Job: Send {
    /// Runs it and says whether its savepoint is to be kept. Never unwinds.
    fn run(&mut self, connection: &mut AnyConnection) -> bool;
    /// Replaces the outcome of a write whose savepoint could not be kept after all.
    fn spoil(&mut self, error: StoreError);
    /// Says that the transaction was lost in this write: its own error, if it has one, is the cause.
    fn blame(&mut self);
    /// Tells the caller, after the group's fate is known.
    fn answer(self: Box<Self>, fate: Result<(), StoreError>);
}

struct Queued<T, E, F> {
    work: Option<F>,
    outcome: Option<Result<T, E>>,
    blamed: bool,
    reply: SyncSender<Result<T, E>>,
}

impl<T, E, F> Job for Queued<T, E, F>
where
    T: Send,
    E: From<StoreError> + Send,
    F: FnOnce(&mut AnyConnection) -> Result<T, E> + Send,
{
    fn run(&mut self, connection: &mut AnyConnection) -> bool {
        let Some(work) = self.work.take() else {
            return false;
        };
        // Unwind safety: after a panic the savepoint is rolled back, and the closure is gone with
        // whatever it held.
        let outcome = catch_unwind(AssertUnwindSafe(|| work(connection)))
            .unwrap_or_else(|panic| Err(StoreError::Internal(words(panic.as_ref())).into()));
        let keep = outcome.is_ok();
        self.outcome = Some(outcome);
        keep
    }

    fn spoil(&mut self, error: StoreError) {
        self.outcome = Some(Err(error.into()));
    }

    fn blame(&mut self) {
        self.blamed = true;
    }

    fn answer(self: Box<Self>, fate: Result<(), StoreError>) {
        // A refusal may rest on what an earlier write of the same group did, so it too holds only when
        // the group was committed.
        let answer = match (fate, self.outcome) {
            (Err(_), Some(Err(cause))) if self.blamed => Err(cause),
            (Err(error), _) => Err(error.into()),
            (Ok(()), Some(outcome)) => outcome,
            (Ok(()), None) => Err(StoreError::Internal("the write was not run".to_owned()).into()),
        };
        // Nobody waits for the answer when the caller's thread is gone; the write stands all the same.
        let _ = self.reply.send(answer);
    }
}

/// What a panic said.
fn words(panic: &(dyn Any + Send)) -> String {
    panic
        .downcast_ref::<&str>()
        .map(|text| (*text).to_owned())
        .or_else(|| panic.downcast_ref::<String>().cloned())
        .unwrap_or_else(|| "a panic without words".to_owned())
}

struct Loop {
    address: Address,
    connection: Option<AnyConnection>,
}

impl Loop {
    fn run(mut self, queue: &Receiver<Box<dyn Job>>) {
        while let Ok(first) = queue.recv() {
            let mut waiting = VecDeque::from([first]);
            waiting.extend(queue.try_iter().take(GROUP - 1));
            let mut done = Vec::with_capacity(waiting.len());
            let fate = self.commit_group(&mut waiting, &mut done, queue);
            if let Err(error) = &fate {
                tracing::error!(%error, writes = done.len() + waiting.len(), "a commit failed");
                // Whatever state the connection is in, the next group starts with a new one.
                self.connection = None;
            }
            for job in done.into_iter().chain(waiting) {
                job.answer(fate.clone());
            }
        }
    }

    fn commit_group(
        &mut self,
        waiting: &mut VecDeque<Box<dyn Job>>,
        done: &mut Vec<Box<dyn Job>>,
        queue: &Receiver<Box<dyn Job>>,
    ) -> Result<(), StoreError> {
        let connection = self.begin()?;
        loop {
            let next = waiting.pop_front();
            let late = || {
                if done.len() < GROUP {
                    queue.try_recv().ok()
                } else {
                    None
                }
            };
            let Some(mut job) = next.or_else(late) else {
                break;
            };
            if let Err(error) = run_in_savepoint(connection, job.as_mut()) {
                // On a full disk SQLite gives up the whole transaction. The write that met it knows the
                // cause and says so; the others learn that they were lost with it.
                job.blame();
                done.push(job);
                return Err(lost(error));
            }
            done.push(job);
        }
        AnyConnection::commit_transaction(connection).map_err(|error| lost(error.into()))
    }

    /// A connection with the group's transaction begun. A PostgreSQL server may have been restarted
    /// since the last group: as nothing has run yet, beginning once more on a new connection is safe.
    fn begin(&mut self) -> Result<&mut AnyConnection, StoreError> {
        let begun = match self.connection.as_mut() {
            Some(connection) => connection::begin_writing(connection).map_err(StoreError::from),
            None => Err(StoreError::Unavailable("not connected".to_owned())),
        };
        match (begun, &self.address) {
            (Ok(()), _) => {}
            // Another process is writing, and was waited for long enough already.
            (Err(error), Address::Sqlite(_)) if self.connection.is_some() => return Err(error),
            (Err(_), _) => {
                self.connection = None;
                let mut connection = connection::open(&self.address, Purpose::Writing)?;
                connection::begin_writing(&mut connection)?;
                self.connection = Some(connection);
            }
        }
        self.connection
            .as_mut()
            .ok_or_else(|| StoreError::Unavailable("not connected".to_owned()))
    }
}

/// What everyone of a group is told when its transaction did not hold.
fn lost(error: StoreError) -> StoreError {
    match error {
        StoreError::Database(why) => {
            StoreError::Unavailable(format!("the transaction did not hold: {why}"))
        }
        other => other,
    }
}

/// Runs one write in its own savepoint. An error here means the whole group is lost.
fn run_in_savepoint(connection: &mut AnyConnection, job: &mut dyn Job) -> Result<(), StoreError> {
    let lost = || StoreError::Unavailable("the connection was lost".to_owned());
    let outside = connection::depth(connection).ok_or_else(lost)?;
    AnyConnection::begin_transaction(connection)?;
    let keep = job.run(connection);
    // A write that panicked inside a transaction of its own left that open too.
    while connection::depth(connection).ok_or_else(lost)? > outside + 1 {
        AnyConnection::rollback_transaction(connection)?;
    }
    if !keep {
        return Ok(AnyConnection::rollback_transaction(connection)?);
    }
    match AnyConnection::commit_transaction(connection) {
        Ok(()) => Ok(()),
        Err(error @ DieselError::RollbackErrorOnCommit { .. }) => Err(error.into()),
        Err(error) => {
            // The write hid a failed statement and said all was well; PostgreSQL then refuses to
            // release the savepoint, and diesel has rolled it back. Only this write is lost.
            if connection::depth(connection) != Some(outside) {
                return Err(error.into());
            }
            job.spoil(error.into());
            Ok(())
        }
    }
}
