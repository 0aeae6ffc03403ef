// What is said of the trail, in English.

import { plural } from './plural.ts';

export const trail = {
  title: 'Trail',
  lead: (size: number) => `${plural(size, 'entry', 'entries')}, none ever changed or removed.`,
  verify: 'Check the proof',
  checking: 'Checking …',
  holds: 'The proof holds: this entry is in the tree with this root.',
  fails: (why: string) => `The proof does not hold: ${why}`,
  newest: 'To the newest',
  older: 'Older entries',
  export: 'Export the trail',
  root: 'Root',
  hash: 'Leaf hash',
  entry: (n: number) => `Entry ${n}`,
  facts: 'What the entry says',
  empty: 'Nothing has happened yet.',
  checkAll: 'Proofs are checked on this device, not by the server.',
};
