// What the machine names of states, facets, roles and the rest are called on screen, in English.

import type {
  Check,
  ClearanceState,
  Decision,
  Facet,
  Hazard,
  Measurement,
  Outcome,
  ReadingKind,
  Role,
  RoleState,
  Status,
} from '../../api/types.ts';

const state: Record<ClearanceState, string> = {
  cleared: 'Cleared',
  not_asked: 'Not asked yet',
  waiting: 'Waiting',
  lapsed: 'Lapsed',
  blocked: 'Blocked',
  held: 'Held',
};

const roleState: Record<RoleState, string> = {
  standing: 'Stands',
  conditional: 'With conditions',
  missing: 'Not signed',
  lapsed: 'Lapsed',
  declined: 'Declined',
};

const status: Record<Status, string> = {
  within: 'Within',
  marginal: 'Marginal',
  unknown: 'Not known',
  exceeded: 'Exceeded',
};

const outcome: Record<Outcome, string> = {
  qualified: 'Qualified',
  conditional: 'Conditional',
  not_qualified: 'Not qualified',
};

const finding: Record<'met' | 'curable' | 'not_met', string> = {
  met: 'Met',
  curable: 'Can be cured',
  not_met: 'Not met',
};

const facet: Record<Facet, string> = {
  setting: 'Setting',
  action: 'Action',
  rigging: 'Rigging',
  effects: 'Effects',
  vehicles: 'Vehicles',
  cast: 'Cast',
  medical: 'Medical',
  camera: 'Camera',
  conditions: 'Conditions',
  rehearsals: 'Rehearsals',
};

/** For where no policy has been read: roles are called what the policy calls them. */
const role: Record<Role, string> = {
  coordinator: 'Stunt coordinator',
  performer: 'Performer',
  rigging: 'Key rigger',
  effects: 'Effects supervisor',
  fire: 'Fire safety officer',
  medic: 'Medic',
  first_ad: 'First assistant director',
  vehicles: 'Action vehicle supervisor',
  armourer: 'Armourer',
  marine: 'Marine and diving supervisor',
  animals: 'Animal handler',
  camera: 'Director of photography',
  engineer: 'Engineer',
  guardian: 'Guardian or studio teacher',
  production: 'Production manager',
  observer: 'Observer',
};

const hazard: Record<Hazard, string> = {
  height: 'Height',
  line: 'Loaded line',
  gas: 'Compressed gas',
  fire: 'Fire',
  charge: 'Pyrotechnic charge',
  glass: 'Glass',
  vehicle: 'Vehicle',
  weapon: 'Weapon',
  water: 'Water',
  animal: 'Animal',
  minor: 'A child',
  lock_off: 'Lock-off composite',
};

const reading: Record<ReadingKind, string> = {
  wind: 'Wind',
  gust: 'Gust',
  air_temperature: 'Air temperature',
  water_temperature: 'Water temperature',
  light: 'Light',
};

const measurement: Record<Measurement, string> = {
  height: 'Height',
  mass: 'Mass',
  chest: 'Chest',
  waist: 'Waist',
  hip: 'Hip',
  inseam: 'Inseam',
  sleeve: 'Sleeve',
  neck: 'Neck',
  shoulder: 'Shoulder',
  head: 'Head',
  shoe: 'Shoe (EU)',
};

const decision: Record<Decision, string> = {
  approve: 'Approve',
  approve_with_conditions: 'Approve with conditions',
  decline: 'Decline',
};

const standing: Record<Check['source']['standing'], string> = {
  published: 'published',
  from_memory: 'from memory, read it again before relying on it',
  common_practice: 'common practice',
  production: 'set by the production',
  plan: 'stated in the plan',
};

/** Skill levels, as graded. */
const level: readonly string[] = [
  'untested',
  'trained, closely supervised',
  'performs known versions with supervision',
  'performs independently and adapts',
  'designs and leads',
  'assesses others',
];

/** What each field of a facet is called; keyed by its machine name. */
const field: Record<string, string> = {
  scene: 'Scene',
  location: 'Place',
  unit: 'Unit',
  day: 'Shooting day',
  call: 'Call',
  light: 'Light',
  summary: 'What happens',
  steps: 'Steps',
  hazards: 'Further hazards',
  risks: 'Risks',
  hazard: 'Hazard',
  event: 'What could happen',
  before: 'With nothing done',
  after: 'With the controls',
  controls: 'Controls',
  owner: 'Answers for it',
  severity: 'How bad',
  probability: 'How likely',
  kind: 'Kind',
  abort: 'Abort word and bail',
  method: 'Method',
  equipment: 'Equipment',
  rescue: 'Rescue',
  limit_seconds: 'Longest time allowed, seconds',
  drilled_seconds: 'Last drill, seconds',
  serial: 'Serial',
  working_load: 'Safe working load',
  inspected_until: 'Inspected until',
  charges: 'Charges, as the licensed operator gives them',
  count: 'Count',
  lead_seconds: 'Lead time, seconds',
  stand_off: 'Stand-off',
  given_by: 'Given by',
  suppression: 'Suppression',
  slots: 'Slots',
  requirements: 'Requirements',
  person: 'Person',
  kit_mass: 'Kit mass',
  cover: 'Cover',
  ambulance: 'Ambulance',
  hospital: 'Receiving hospital',
  positions: 'Cameras',
  place: 'Where',
  lens: 'Lens',
  notes: 'Notes',
  bands: 'Limits on readings',
  reading: 'Reading',
  min: 'Least',
  max: 'Most',
  max_age_minutes: 'Good for, minutes',
  stop_on: 'Also stop on',
  rungs: 'Ladder',
  what: 'What is done',
  good_runs: 'Good runs needed',
  name: 'Name',
  parameters: 'Figures',
  tolerance: 'Tolerance',
  value: 'Value',
};

export const words = {
  state,
  roleState,
  status,
  outcome,
  finding,
  facet,
  role,
  hazard,
  reading,
  measurement,
  decision,
  standing,
  level,
  field,
};
