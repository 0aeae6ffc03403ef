// What a browser has and the test environment lacks: web locks, enough of them for one page.

import 'fake-indexeddb/auto';

const queues = new Map<string, Promise<unknown>>();

const locks = {
  request<T>(name: string, work: () => Promise<T>): Promise<T> {
    const run = (queues.get(name) ?? Promise.resolve()).then(work);
    queues.set(
      name,
      run.catch(() => undefined),
    );
    return run;
  },
};

Object.defineProperty(navigator, 'locks', { value: locks, configurable: true });
