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

export const witnesses = {
  title: 'Witnesses',
  lead: 'Somebody outside who looks at the trail from time to time and signs that it only grew since. They see how long it is, and not a word of what is in it.',
  none: 'Nobody watches this trail yet.',
  saw: (size: number, when: string) => `Saw ${plural(size, 'entry', 'entries')}, signed ${when}`,
  earlier: (n: number) => `and ${plural(n, 'earlier one', 'earlier ones')}`,
  nothing: 'Has cosigned nothing yet.',
  since: (n: number) => `${plural(n, 'entry has', 'entries have')} been added since.`,
  removed: (when: string) => `Removed ${when}. What was cosigned stays.`,
  remove: 'Remove',
  removeAsk: (name: string) => `Nothing more that ${name} cosigns is taken. What was cosigned stays.`,
  removeYes: 'Yes, remove it',
  add: 'Add a witness',
  key: 'Name and key of the witness',
  keyHelp:
    'The line that “gagwright witness key” printed, name+hash+key. The name stays in the trail for ever: no person’s.',
  bring: 'Bring a cosignature',
  checkpoint: 'Save the checkpoint to be cosigned',
  cosigned: 'What the witness sent back',
  cosignedHelp: 'The whole note, or the witness’s line alone.',
  entries: 'With a line alone: for how many entries',
  taken: 'It is good, and kept with the trail.',
};
