// What is said of packets, in English.

import { plural } from './plural.ts';

export const packets = {
  title: 'Packets',
  lead: 'The printed packet of each gag: the plan, its figures and the proof of who signed what.',
  none: 'No gag has a packet yet. Plan a gag first.',
  noDay: 'No day set',
  pick: (code: string) => `Choose ${code}`,
  all: 'Choose the whole day',
  keep: (n: number) => (n === 0 ? 'Keep on this phone' : `Keep ${n} on this phone`),
  print: (n: number) => (n < 2 ? 'Save as a file to print' : `Save ${n} files to print`),
  open: 'Open',
  forget: 'Remove from this phone',
  kept: (size: string, revision: number, when: string) => `Kept here: ${size}, revision ${revision}, ${when}`,
  old: (now: number) => `The plan is at revision ${now} by now: get it again.`,
  notKept: 'Not on this phone',
  total: (n: number, size: string) => `${plural(n, 'packet', 'packets')} on this phone, ${size}.`,
  fetching: (done: number, all: number) => `Getting ${done} of ${all} …`,
  needsSignal: 'No connection. The server makes packets; those kept here can be opened.',
};
