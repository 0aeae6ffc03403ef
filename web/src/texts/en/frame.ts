// What is said of what stands around every screen, and what any of them may say, in English.

import { plural } from './plural.ts';

export const app = {
  name: 'Gagwright',
  demo: 'Demo',
  demoLong: 'Demo production: invented people, nothing here is real.',
  skip: 'Skip to the content',
  menu: 'Main',
  loading: 'Reading …',
  yes: 'Yes',
  no: 'No',
  close: 'Close',
  cancel: 'Cancel',
  remove: 'Remove',
  removed: (what: string) => `Removed: ${what}`,
  showAll: 'Show all',
  undo: 'Undo',
  none: 'None',
  unknown: 'not known',
  notFound: 'There is no such page here.',
  toToday: 'Go to today',
  planningAid:
    'A planning aid. Every figure has a source and a tolerance; local law and licensed people decide.',
  coreMissing: (why: string) =>
    `The figures cannot be worked out on this device yet: ${why}. Connect once and load the page again.`,
};

export const kept = {
  offline: (ago: string) => `No connection. Shown as this device last read it, ${ago}.`,
  never: 'No connection, and this device has not read this page before. Connect once to read it.',
  justNow: 'just now',
};

export const problem = {
  unreachable: 'The server did not answer. Check the connection; nothing was lost.',
  unexpected: (status: number) => `The server gave an answer this app does not know (${status}). Try again.`,
  fix: 'To put it right:',
  row: (row: number, column: string | number | undefined) =>
    column === undefined ? `Row ${row}` : `Row ${row}, ${column}`,
};

export const write = {
  sent: 'Saved.',
  waiting: 'Kept on this device. It goes to the server by itself when there is a connection.',
};

export const nav = {
  today: 'Today',
  gags: 'Gags',
  people: 'People',
  trail: 'Trail',
  hold: 'Hold',
  outbox: (n: number) => plural(n, 'entry to send', 'entries to send'),
  refused: (n: number) => `${n} refused`,
  open: (name: string) => `Settings and sign out, ${name}`,
};

export const device = { phone: 'Phone', tablet: 'Tablet', computer: 'Computer' };
