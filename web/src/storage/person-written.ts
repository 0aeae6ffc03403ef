// A person as this phone has written them: what was read, and over it what waits to be sent. A pure function, so
// that a second entry made with no signal builds on the first.

import type { Person, PersonPage } from '../api/types.ts';
import type { QueuedWrite } from './database.ts';

export interface PersonWritten {
  person: Person;
  /** The version that the next write must say it builds on; 0 for somebody the server does not know. */
  version: number;
  waiting: number;
}

export function personWritten(
  page: PersonPage | undefined,
  writes: readonly QueuedWrite[],
  path: string,
): PersonWritten | undefined {
  const mine = writes.filter((one) => one.state === 'waiting' && one.method === 'PUT' && one.path === path);
  const person = (mine.at(-1)?.body as Person | undefined) ?? page?.person;
  if (!person) return undefined;
  // Each write that is accepted makes the next version.
  return { person, version: (page?.version ?? 0) + mine.length, waiting: mine.length };
}
