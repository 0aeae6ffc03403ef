// What is said of a gag at a past moment, in English.

export const past = {
  title: 'Who knew what when',
  lead: 'A gag as it stood at a past moment, rebuilt from the trail alone. Nothing that came later is used.',
  gag: 'Gag',
  chooseGag: 'Choose a gag',
  moment: 'The moment, on this device’s clock',
  afterEntry: (n: number) => `After entry ${n}`,
  byTime: 'Choose a time instead',
  here: 'A gag as it stood here',
  look: 'Show it',
  looking: 'Rebuilding …',
  answer: 'As it stood',
  stood: (code: string, leaf: number, at: string, revision: number) =>
    `${code} after entry ${leaf}, received ${at}: revision ${revision}`,
  unknown: (things: number) => `${things} things that are not known`,
  notKnown: 'Not known any more',
  signed: 'Who had signed, and what they had read',
  nobody: 'Nobody had signed.',
  hadRead: (revision: number, facets: string) => `Had read revision ${revision}: ${facets}`,
  received: (at: string) => `received ${at}`,
  byDevice: (at: string) => `signed ${at} by their device’s clock`,
  ahead: (minutes: number) => `their clock was ${minutes} min ahead`,
  known: 'What was known',
  hold: (raised: string, released: string) =>
    released ? `Hold raised ${raised}, released ${released}.` : `Hold raised ${raised}, still held.`,
  nothing: 'No hold, no reading and no run.',
  after: 'What came after',
  nothingAfter: 'Nothing since.',
};
