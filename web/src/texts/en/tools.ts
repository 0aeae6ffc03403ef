// What is said of the tools on a figure, of what moved between two plans, of test shots and of the handbook of
// techniques, in English.

import { plural } from './plural.ts';

export const tools = {
  open: 'What moves it, make it, how sure',
  about: (figure: string) => `About ${figure}`,
  part: 'What to look at',
  moves: 'What moves it',
  movesLead:
    'Each input by itself, from the low to the high end of its tolerance. The one that moves it most stands first.',
  movesNone: 'No input has a tolerance that moves it.',
  ends: (low: string, high: string) => `${low} at its low end, ${high} at its high end`,
  share: (percent: number) => (percent < 1 ? 'less than 1 % of the swing' : `${percent} % of the swing`),
  notGiven: 'not given',
  make: 'Make it …',
  makeLead: 'Which value of one input gives the figure you want, everything else as it is.',
  by: 'By changing',
  wanted: 'Wanted',
  find: 'Work it out',
  now: (value: string) => `It is ${value} now.`,
  notEntered: 'It is not entered yet.',
  roots: (title: string, wanted: string) => `${title} that gives ${wanted}`,
  range: (from: string, to: string) => `Looked for from ${from} to ${to}.`,
  reach: (low: string, high: string) => `Over that range the figure runs from ${low} to ${high}.`,
  never: 'Over that range the figure is never given.',
  take: (value: string) => `Put ${value} in the plan`,
  taken: (title: string, value: string) =>
    `${title} is ${value} in your draft now. Look at the other figures before you save.`,
  sure: 'How sure',
  sureLead:
    'Every input drawn at random within its tolerance, again and again, and the figure worked out each time.',
  low: '5 % are below',
  median: 'Half are below',
  high: '95 % are below',
  outside: (n: number, of: number) =>
    n === 0
      ? `Outside in none of ${of} draws.`
      : n === of
        ? `Outside in every one of ${of} draws.`
        : `Outside in ${n} of ${of} draws.`,
  outsideGiven: (n: number, of: number) =>
    n === 0
      ? `Outside in none of the ${of} draws that gave a value.`
      : n === of
        ? `Outside in every one of the ${of} draws that gave a value.`
        : `Of draws that gave a value, outside in ${n} of ${of}.`,
  noValue: (n: number, of: number) =>
    n === of ? 'No draw gave a value.' : `${n} of ${of} draws gave no value.`,
  otherLimits: 'The other limits',
  noLimit: 'No limit is held against this figure.',
  drawn: (draws: number, seed: number) =>
    `${draws} draws, seed ${seed}: the same draws come out the same on every device.`,
  moreDraws: (draws: number) => `Draw ${draws} times`,
  working: 'Working it out …',
  missing: 'This part of the app did not load. Load the page again when there is signal.',
};

export const moved = {
  title: 'What moved',
  none: 'No figure and no check moved.',
  otherTechnique: 'The technique itself changed, so figures cannot be set side by side.',
  was: (low: string, high: string) => `was ${low} to ${high}`,
  is: (low: string, high: string) => `now ${low} to ${high}`,
  unknown: 'not known',
  absent: 'not held',
  checks: 'Checks',
  figures: 'Figures',
  since: (n: number) => `What moved since revision ${n}`,
  yours: 'What moves if yours is taken for theirs',
  unread: 'The earlier revision is not on this device. Connect to see what moved.',
};

export const shots = {
  title: 'Test shots',
  lead: 'A bag first, at rising settings; then a person. What was measured settles what the model only assumes.',
  none: 'No test shot logged yet.',
  log: 'Log a test shot',
  load: 'What was shot',
  bag: 'Weight bag',
  person: 'Person',
  settings: 'As it was set',
  settingsHelp: 'Begins with what the plan says. Change what was set otherwise, such as the mass of the bag.',
  otherSettings: 'Other settings',
  measured: 'What was measured',
  figure: 'Figure',
  value: 'Measured',
  addMeasured: 'Another measured figure',
  dropMeasured: 'Leave this one out',
  needMeasured: 'Give at least one measured figure.',
  note: 'What was seen',
  go: 'Log the test shot',
  by: (who: string) => `by ${who}`,
  waiting: 'Waiting to be sent',
  refused: (n: number) => `${plural(n, 'test shot was', 'test shots were')} refused.`,
  seeEntries: 'See why',
  otherTechnique: (title: string) => `Shot for ${title}: not used here.`,
  differs: 'Set otherwise than the plan:',
  asPlanned: 'Set as the plan says.',
  calibrated: 'Calibrated by the test shots',
  coefficients: 'What the shots settle',
  which: 'Settle these; the others stay as assumed.',
  inFit: (n: number, of: number) => `Fitted to ${n} of ${plural(of, 'test shot', 'test shots')}`,
  leaveOut: 'Untick a shot that was mistyped or went wrong: it stays logged, and out of the fit.',
  newest: (most: number) => `No more than ${most} go into one fit: the newest of those ticked.`,
  noneIn: 'Tick at least one shot to fit to.',
  stated: 'assumed',
  fitted: 'from the shots',
  confidence: (percent: number) => `The ranges hold what is true in ${percent} of 100 such ladders.`,
  rows: 'Measured against the fitted model',
  shot: (n: number) => `Shot ${n}`,
  row: (measured: string, fitted: string) => `measured ${measured}, fitted ${fitted}`,
  prediction: 'The plan as it stands',
  model: 'model alone',
  nothing: 'This technique has no assumption that a test shot could settle.',
  notYet: 'Not settled yet',
};

export const handbook = {
  title: 'Handbook of techniques',
  lead: 'What each technique works out, what it asks for, and what a test shot can settle.',
  asks: 'What it asks for',
  gives: 'What it works out',
  settles: 'What a test shot can settle',
  settlesNone: 'Nothing here is assumed that a test shot could settle.',
  range: (min: string, max: string) => `${min} to ${max}`,
  standard: (value: string) => `taken as ${value} when left empty`,
  noDefault: 'never guessed',
  tolerance: (value: string) => `plus or minus ${value} unless stated`,
  options: 'One of:',
  part: (facet: string) => `in ${facet}`,
};

/** The groups that techniques are chosen from. */
export const groups = {
  falls: 'Falls and lines',
  pulls: 'Pulls and launches',
  wires: 'Wires and rigs',
  fire: 'Fire',
  blast: 'Glass, blast and blanks',
  vehicles: 'Vehicles',
  bodies: 'Bodies: fight, stairs, horse, water',
  camera: 'Camera',
  other: 'Other',
};
