// What is said of today and the list of gags, in English.

import { plural } from './plural.ts';

export const today = {
  title: 'Today',
  sign: (n: number) => plural(n, 'thing to sign', 'things to sign'),
  nothingToSign: 'Nothing to sign',
  toSign: 'Yours to sign',
  nothingLong: 'Nobody is waiting for your signature.',
  held: 'Held',
  heldCount: (n: number) => plural(n, 'hold is open', 'holds are open'),
  everything: 'Everything',
  release: 'See the hold',
  next: 'Next',
  noNext: 'No gag is planned yet.',
  firstGag: 'Plan the first gag',
  certificates: 'Certificates that lapse first',
  lapses: (kind: string, on: string, before: string) => `${kind} ends ${on}, before ${before}`,
  myParts: 'Where you are cast',
  noParts: 'You are not cast in anything that comes next.',
  myCertificates: 'Your certificates',
  allOfMe: 'All that is recorded of you',
  nextDay: (day: string) => `Next shooting day: ${day}`,
  clearedOf: (cleared: number, all: number) => `Cleared: ${cleared} of ${all}`,
  medical: 'Medical cover ahead',
  wholePlan: 'The whole plan',
  handedHold: (name: string) => `Raised by ${name} and handed over. The server does not know of it yet.`,
  unsigned: 'Who has not signed',
  noDay: 'No day set',
};

export const gags = {
  title: 'Gags',
  search: 'Search code, title, place',
  all: 'All',
  filter: 'Show by state',
  none: 'No gag fits the search.',
  empty: 'No gag is planned yet.',
  new: 'New gag',
  signed: (have: number, need: number) => `${have} of ${need} signed`,
  scene: (scene: string) => `Scene ${scene}`,
  revision: (n: number) => `Revision ${n}`,
  count: (shown: number, all: number) =>
    shown === all ? plural(all, 'gag', 'gags') : `${shown} of ${plural(all, 'gag', 'gags')}`,
};

export const newGag = {
  title: 'New gag',
  code: 'Code',
  codeHelp: 'Short enough to say over a radio, for example G07.',
  name: 'Title',
  technique: 'How it is done',
  techniqueHelp: 'Tap to choose from the groups, or type the beginning of a word.',
  go: 'Create the gag',
};
