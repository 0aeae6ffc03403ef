// What is said of holds and the day, in English.

import { plural } from './plural.ts';

export const hold = {
  title: 'Hold',
  lead: 'Anyone may. No reason is needed.',
  gag: (code: string) => `Hold ${code}`,
  everything: 'Hold everything',
  another: 'Another gag',
  reason: 'Why, if you want to say',
  hazard: 'Hazard, if you want to name it',
  noHazard: 'Not named',
  raised: 'Held.',
  raisedWaiting: 'Held on this device. Say it aloud: the others learn of it when there is a connection.',
  list: 'Holds',
  needs: (roles: string) => `Held until these agree: ${roles}`,
  code: 'Code on the brief',
  codeHelp: 'Printed on today’s brief. No account is needed.',
  gagCode: 'Gag',
  gagCodeHelp: 'Its code, for example G07. Left empty, everything is held.',
  byCodeDone: 'Held. Say it aloud as well: HOLD.',
  byCodeAll: (code: string) => `No gag here is called ${code}, so everything is held.`,
  withCode: 'Hold with the code on the brief',
  released: 'Released',
  noneOpen: 'No hold is open.',
  by: (who: string) => `Raised by ${who}`,
  byCode: 'Raised with the code on the brief',
  noReason: 'No reason given.',
  agreements: 'Agreed to release',
  agreeTitle: 'Agree to release',
  agreeLead:
    'Say the cause aloud, then write it. The coordinator and the owner of the hazard must both agree.',
  role: 'Agree as',
  cause: 'The cause, and what was done',
  agree: 'Agree to release',
};

export const dayHelp = {
  wind: 'With its unit, for example 6 m/s or 14 mph.',
  gust: 'With its unit, for example 8 m/s or 18 mph.',
  air_temperature: 'With its unit, for example 21 °C or 70 °F.',
  water_temperature: 'With its unit, for example 18 °C or 64 °F.',
  light: 'In lux, for example 420.',
};

export const day = {
  readings: 'Readings',
  readingTitle: 'Log a reading',
  kind: 'What was read',
  value: 'Value',
  place: 'Where',
  go: 'Log the reading',
  lux: 'lux',
  none: 'No reading logged yet.',
  band: (min: string | undefined, max: string | undefined) =>
    min && max ? `${min} to ${max}` : min ? `at least ${min}` : `at most ${max ?? ''}`,
  goodFor: (minutes: number) => `a reading counts for ${plural(minutes, 'minute', 'minutes')}`,
  bands: 'Limits today',
  runs: 'Rehearsal ladder',
  runTitle: 'Log a run',
  rung: 'Rung',
  good: 'It went as planned',
  bad: 'It did not',
  note: 'What was seen',
  runGo: 'Log the run',
  needed: (n: number) => plural(n, 'good run needed', 'good runs needed'),
  noRungs: 'The plan has no ladder yet.',
  number: 'Write a number, for example 420.',
};
