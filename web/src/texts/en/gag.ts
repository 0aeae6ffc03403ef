// What is said of one gag: its answer, figures and cast, in English.

import { plural } from './plural.ts';

export const gag = {
  sections: 'Sections of this gag',
  answer: 'Answer',
  plan: 'Plan',
  figures: 'Figures',
  cast: 'Cast',
  signOffs: 'Signatures',
  day: 'Day',
  edit: 'Edit the plan',
  packet: 'Packet (PDF)',
  packetNeedsSignal: 'No connection. The packet is printed by the server: connect to get it.',
  preparing: 'Printing …',
  standing: (have: number, need: number) => `Signatures standing: ${have} of ${need}`,
  clearedLead: 'Every signature stands, no check stops it, nothing is held.',
  reasons: 'What stands in the way',
  apart: (from: number, now: number) =>
    `You wrote a revision here on revision ${from}, and it is not sent yet. The plan is at revision ${now} by now, so the server will refuse it as it is. You choose between both versions then.`,
  judgedHere: (at: string) => `Judged on this device at ${at}, with what it has kept.`,
  unjudged: (at: string) =>
    `This is what the server said at ${at}. This device could not judge it anew: call no go on it.`,
  pending: (n: number) => `${plural(n, 'entry', 'entries')} from this device not sent yet, counted here.`,
  hazards: 'Hazards',
  facts: 'Where and when',
  revisionBy: (n: number, who: string, when: string) => `Revision ${n} by ${who}, ${when}`,
  history: 'Revisions',
  changed: 'Changed:',
  digest: 'Plan digest',
  empty: 'Nothing written.',
  noAssessment: 'The figures could not be worked out from this plan.',
  moreReasons: (n: number) => `${plural(n, 'more reason', 'more reasons')}`,
};

export const figures = {
  lead: (n: number) =>
    n === 0 ? 'Every check is within its limit.' : `${plural(n, 'check needs', 'checks need')} attention.`,
  checks: 'Checks',
  figures: 'Figures',
  cautions: 'Cautions',
  zones: 'Ground to keep clear',
  plot: 'Plot',
  atMost: 'at most',
  atLeast: 'at least',
  interval: (low: string, high: string) => `${low} to ${high}`,
  between: (value: string, low: string, high: string) => `${value}, between ${low} and ${high}`,
  limit: (bound: string, value: string) => `limit ${bound} ${value}`,
  source: 'Source:',
  jurisdiction: 'Where it holds:',
  setBy: 'Standing:',
  aboutInput: (title: string) => `About an input: ${title}`,
  blocking: 'Stops the gag when exceeded',
  cautionOnly: 'A caution for those who sign',
  barAlt: (title: string, value: string, limit: string, status: string) =>
    `${title}: ${value}; ${limit}. ${status}.`,
  span: (title: string, low: string, high: string) => `${title} from ${low} to ${high}`,
  against: (title: string, limit: string, status: string) => `${title}, ${limit}: ${status}.`,
  intervalOf: (what: string) => `Within the tolerances: ${what}`,
  touch: 'Touch the plot, or use the arrow keys on it, to read values.',
  asTable: 'The plot as numbers',
  ellipse: (along: string, across: string) => `Ellipse, ${along} along, ${across} across`,
  rectangle: (along: string, across: string) => `Rectangle, ${along} along, ${across} across`,
};

export const cast = {
  uncast: 'Nobody cast',
  candidates: 'Who could do it',
  cure: (what: string, by: string) => `${what}, by ${by}`,
  noCandidates: 'No performers on the roster.',
  noSlots: 'The plan has no slot for a performer yet.',
  hidden: 'The verdict is not visible to your role.',
  kit: 'Kit worn',
  lead: (filled: number, all: number) => `Qualified: ${filled} of ${all}`,
  castIn: 'Cast in the plan editor',
};

export const requirement = {
  skill: (name: string, level: number, days: number | undefined) =>
    days === undefined ? `${name}, level ${level}` : `${name}, level ${level}, used within ${days} days`,
  certificate: (kinds: string[], category: string | undefined) =>
    `${kinds.join(' or ')}${category ? `, ${category}` : ''}`,
  measurement: (name: string, target: string, tolerance: string) => `${name} ${target} ± ${tolerance}`,
  kittedMass: (min: string, max: string) => `Kitted mass ${min} to ${max}`,
  age: (min: number | undefined, max: number | undefined) =>
    min === undefined
      ? `Age at most ${max ?? ''}`
      : max === undefined
        ? `Age at least ${min}`
        : `Age ${min} to ${max}`,
  medicalClearance: 'Medical clearance',
  availability: 'Available on the day',
  rest: (hours: number) => `${hours} hours of rest before the call`,
  dailyExposure: (name: string, max: number) => `${name}: at most ${max} in a day`,
  consent: 'Own consent to this revision',
};

export const signOffs = {
  lead: (have: number, need: number) => `Standing: ${have} of ${need}`,
  because: (why: string) => `Needed for: ${why}`,
  by: (who: string, when: string, revision: number) => `${who}, ${when}, on revision ${revision}`,
  changedSince: 'Changed since:',
  conditions: 'Conditions not met yet',
  met: 'Mark as met',
  sign: 'Read and sign',
  signAgain: 'Read and sign again',
  drawn: (who: string) => `Signature drawn by ${who}`,
  all: 'Every signature ever made',
  verified: 'Signature verified on this device',
  notVerified: (why: string) => `Signature does not verify: ${why}`,
  erased: 'The text was erased; its commitment stands.',
  unknownDevice: 'The device that signed is not in what this phone has.',
  signedFor: (who: string) => `Signed for ${who}`,
  whatChanged: (revision: number) => `What changed since revision ${revision}`,
  resolve: 'Resolve the decline in writing',
  resolved: 'Resolved in writing:',
  resolveText: 'What was agreed',
  resolveHelp: 'The decline stays on the record. Then the role signs again.',
  ink: 'Record a signature made on paper',
};
