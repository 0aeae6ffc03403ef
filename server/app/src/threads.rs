//! All cores at work on one long computation. The pure crates start no threads; they are handed this.

use std::{
    sync::atomic::{AtomicUsize, Ordering},
    thread,
};

use gagwright_mechanics::tools::Runner;

/// Runs blocks on as many threads as the machine has cores, for as long as the computation lasts.
pub struct AllCores;

impl Runner for AllCores {
    fn width(&self) -> usize {
        thread::available_parallelism().map_or(1, usize::from)
    }

    fn run(&self, count: usize, block: &(dyn Fn(usize) + Sync)) {
        let next = AtomicUsize::new(0);
        let work = || {
            loop {
                let mine = next.fetch_add(1, Ordering::Relaxed);
                if mine >= count {
                    break;
                }
                block(mine);
            }
        };
        thread::scope(|scope| {
            // This thread works too.
            for _ in 1..self.width().min(count) {
                scope.spawn(work);
            }
            work();
        });
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Mutex;

    use gagwright_mechanics::tools::Runner;

    use super::AllCores;

    #[test]
    fn every_block_is_run_once() {
        for count in [0, 1, 2, 97] {
            let seen = Mutex::new(Vec::new());
            AllCores.run(count, &|block| seen.lock().unwrap().push(block));
            let mut seen = seen.into_inner().unwrap();
            seen.sort_unstable();
            assert_eq!(seen, (0..count).collect::<Vec<_>>());
        }
    }
}
