//! All cores at work on one long computation. The pure crates start no threads; they are handed this.

use std::{
    sync::atomic::{AtomicUsize, Ordering},
    thread,
};

use gagwright_mechanics::tools::{Dealer, Runner};

/// Works on as many threads as the machine has cores, for as long as the computation lasts.
pub struct AllCores;

impl Runner for AllCores {
    fn run(&self, parts: usize, worker: &(dyn Fn(&Dealer) + Sync)) {
        let dealt = AtomicUsize::new(0);
        let next = || Some(dealt.fetch_add(1, Ordering::Relaxed)).filter(|part| *part < parts);
        let cores = thread::available_parallelism().map_or(1, usize::from);
        thread::scope(|scope| {
            // This thread works too.
            for _ in 1..cores.min(parts) {
                scope.spawn(|| worker(&next));
            }
            worker(&next);
        });
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Mutex;

    use gagwright_mechanics::tools::Runner;

    use super::AllCores;

    #[test]
    fn every_part_is_dealt_once() {
        for parts in [0, 1, 2, 97] {
            let seen = Mutex::new(Vec::new());
            AllCores.run(parts, &|next| {
                while let Some(part) = next() {
                    seen.lock().unwrap().push(part);
                }
            });
            let mut seen = seen.into_inner().unwrap();
            seen.sort_unstable();
            assert_eq!(seen, (0..parts).collect::<Vec<_>>());
        }
    }
}
