// The shapes the server speaks, as TypeScript. Values only: no rule of the trade belongs here.

export type Facet =
  | 'setting'
  | 'action'
  | 'rigging'
  | 'effects'
  | 'vehicles'
  | 'cast'
  | 'medical'
  | 'camera'
  | 'conditions'
  | 'rehearsals';

/** In the order that plans are hashed and printed. */
export const FACETS: readonly Facet[] = [
  'setting',
  'action',
  'rigging',
  'effects',
  'vehicles',
  'cast',
  'medical',
  'camera',
  'conditions',
  'rehearsals',
];

export type Quantity =
  | 'length'
  | 'mass'
  | 'time'
  | 'speed'
  | 'acceleration'
  | 'force'
  | 'pressure'
  | 'temperature'
  | 'energy'
  | 'heat_flux'
  | 'angle'
  | 'stiffness'
  | 'volume'
  | 'area'
  | 'areal_density'
  | 'conductance'
  | 'ratio'
  | 'count';

export type Hazard =
  | 'height'
  | 'line'
  | 'gas'
  | 'fire'
  | 'charge'
  | 'glass'
  | 'vehicle'
  | 'weapon'
  | 'water'
  | 'animal'
  | 'minor'
  | 'lock_off';

export const HAZARDS: readonly Hazard[] = [
  'height',
  'line',
  'gas',
  'fire',
  'charge',
  'glass',
  'vehicle',
  'weapon',
  'water',
  'animal',
  'minor',
  'lock_off',
];

export type Role =
  | 'coordinator'
  | 'performer'
  | 'rigging'
  | 'effects'
  | 'fire'
  | 'medic'
  | 'first_ad'
  | 'vehicles'
  | 'armourer'
  | 'marine'
  | 'animals'
  | 'camera'
  | 'engineer'
  | 'guardian'
  | 'production'
  | 'observer';

// Mechanics

export type InputValue = { value: number; tolerance?: number } | string;
export type Inputs = Record<string, InputValue>;

export type ParameterKind =
  | {
      kind: 'number';
      quantity: Quantity;
      default: number | null;
      min: number;
      max: number;
      tolerance: number;
    }
  | { kind: 'choice'; options: { name: string; title: string }[]; default: string | null };

export interface Parameter {
  name: string;
  title: string;
  facet: Facet;
  kind: ParameterKind;
  help: string;
}

export interface TechniqueDescription {
  name: string;
  title: string;
  summary: string;
  parameters: Parameter[];
  figures: { name: string; title: string; quantity: Quantity; help: string }[];
}

export type Status = 'within' | 'marginal' | 'unknown' | 'exceeded';

export interface Figure {
  name: string;
  title: string;
  quantity: Quantity;
  value: number;
  low: number;
  high: number;
}

export interface Check {
  name: string;
  title: string;
  figure: string | null;
  value: number | null;
  low: number | null;
  high: number | null;
  limit: { bound: 'at_most' | 'at_least'; value: number; quantity: Quantity };
  source: {
    document: string;
    clause: string | null;
    jurisdiction: string | null;
    standing: 'published' | 'from_memory' | 'common_practice';
  };
  status: Status;
  blocking: boolean;
  detail: string;
}

export interface Series {
  title: string;
  quantity: Quantity;
  values: number[];
}

export interface Trace {
  name: string;
  title: string;
  x: Series;
  y: Series[];
}

export type Shape =
  | { kind: 'ellipse'; x: number; y: number; half_x: number; half_y: number }
  | { kind: 'rectangle'; x0: number; x1: number; y0: number; y1: number };

export interface Zone {
  name: string;
  title: string;
  shape: Shape;
  reason: string;
}

export interface Assessment {
  technique: string;
  figures: Figure[];
  checks: Check[];
  traces: Trace[];
  zones: Zone[];
  cautions: { name: string; text: string }[];
}

// Casting

export type Measurement =
  | 'height'
  | 'mass'
  | 'chest'
  | 'waist'
  | 'hip'
  | 'inseam'
  | 'sleeve'
  | 'neck'
  | 'shoulder'
  | 'head'
  | 'shoe';

export type Requirement =
  | { kind: 'skill'; name: string; level: number; within_days: number | null }
  | { kind: 'certificate'; any_of: string[]; category?: string | null; cover_days?: number }
  | { kind: 'measurement'; of: Measurement; target: number; tolerance: number }
  | { kind: 'kitted_mass'; min: number; max: number }
  | { kind: 'age'; min?: number | null; max?: number | null }
  | { kind: 'medical_clearance' }
  | { kind: 'availability' }
  | { kind: 'rest'; hours: number }
  | { kind: 'daily_exposure'; exposure: string; adds: number; max: number }
  | { kind: 'consent' };

export interface Slot {
  id: string;
  name: string;
  requirements: Requirement[];
  person?: string | null;
  kit_mass?: number;
}

export type Outcome = 'qualified' | 'conditional' | 'not_qualified';

export interface Finding {
  requirement: Requirement;
  standing: 'met' | 'curable' | 'not_met';
  reason: string;
  cure?: { what: string; by: string } | null;
}

export interface Verdict {
  slot: string;
  person: string;
  outcome: Outcome;
  fit: number;
  findings: Finding[];
}

/** What casting knows of each kind of certificate and each skill; more than forms show stays in the core. */
export interface Catalogue {
  certificates: {
    kind: string;
    title: string;
    scheme: string;
    validity: { months: number } | 'no_expiry' | 'as_printed';
    categories: string[];
  }[];
  skills: { name: string; title: string; group: string; recency_days: number }[];
}

export interface Certificate {
  id: string;
  kind: string;
  category?: string | null;
  number?: string | null;
  issuer?: string | null;
  issued: string;
  expires?: string | null;
  last_used?: string | null;
  checked?: { by: string; on: string; method: string } | null;
  withdrawn?: string | null;
}

export interface Skill {
  name: string;
  level: number;
  assessed_by?: string | null;
  assessed_on?: string | null;
  last_used?: string | null;
}

export interface Person {
  id: string;
  code: string;
  name: string;
  occupation: string;
  performs: boolean;
  email?: string | null;
  born?: string | null;
  measurements?: Partial<Record<Measurement, { value: number; on: string; by?: string | null }>>;
  certificates?: Certificate[];
  skills?: Skill[];
  availability?: { from: string; to: string; available: boolean }[];
  medically_clear_until?: string | null;
  last_wrap?: string | null;
  exposures?: { kind: string; on: string; count: number }[];
  consents?: { gag: string; revision: number; withdrawn?: string | null }[];
}

// Plans

export type Parameters = Record<string, InputValue>;

export interface Band {
  reading: ReadingKind;
  min?: number | null;
  max?: number | null;
  max_age_minutes: number;
}

export interface Equipment {
  name: string;
  serial: string;
  working_load?: number | null;
  inspected_until?: string | null;
}

export interface GivenCharge {
  name: string;
  count: number;
  lead_seconds: number;
  stand_off: number;
  given_by: string;
}

export interface Rung {
  name: string;
  what: string;
  good_runs: number;
}

export interface Facets {
  setting: {
    scene: string;
    location: string;
    unit?: string;
    day?: string | null;
    call?: string | null;
    light?: string;
    parameters?: Parameters;
  };
  action: {
    summary: string;
    steps?: string[];
    hazards?: Hazard[];
    abort?: string;
    parameters?: Parameters;
  };
  rigging: {
    method: string;
    equipment?: Equipment[];
    rescue?: { method: string; limit_seconds?: number | null; drilled_seconds?: number | null };
    parameters?: Parameters;
  };
  effects: { method: string; charges?: GivenCharge[]; suppression?: string; parameters?: Parameters };
  vehicles: { method: string; parameters?: Parameters };
  cast: { slots?: Slot[]; parameters?: Parameters };
  medical: { cover: string; ambulance?: string; hospital?: string; parameters?: Parameters };
  camera: {
    positions?: { name: string; place: string; lens?: string }[];
    notes?: string;
    parameters?: Parameters;
  };
  conditions: { bands?: Band[]; stop_on?: string[]; parameters?: Parameters };
  rehearsals: { rungs?: Rung[] };
}

export interface Plan {
  gag: string;
  revision: number;
  technique: string;
  facets: Facets;
  policy: string;
  author: string;
  written_at: string;
  note?: string;
}

export type FacetHashes = Partial<Record<Facet, string>>;

export interface Policy {
  version: string;
  roles: {
    role: Role;
    title: string;
    covers: Facet[];
    required: { always: boolean; hazards: Hazard[]; doubtful_check: boolean };
    attestation: { id: string; text: string };
    good_for_hours?: number | null;
    certificates?: string[][];
  }[];
  techniques: Record<string, { hazards: Hazard[]; requirements: Requirement[]; rungs: Rung[] }>;
  separate: [Role, Role][];
  owners: Partial<Record<Hazard, Role>>;
  final_say: Role[];
}

// Sign-offs, holds, the day

export type Decision = 'approve' | 'approve_with_conditions' | 'decline';

export interface Statement {
  kind: string;
  id: string;
  production: string;
  gag: string;
  revision: number;
  plan_digest: string;
  facets: FacetHashes;
  role: Role;
  slot?: string;
  decision: Decision;
  conditions?: string[];
  reason?: string;
  attestation: string;
  signer: string;
  device: string;
  signed_at: string;
  good_until?: string;
}

export interface SignOff {
  jws: string;
  received_at: string;
  leaf: number;
  met?: { condition: string; by: string; at: string }[];
}

export interface PublicKey {
  kty: string;
  crv: string;
  x: string;
  y: string;
}

export interface Device {
  id: string;
  person: string;
  name: string;
  key: PublicKey;
  registered_at: string;
  revoked_at?: string | null;
}

export interface Hold {
  id: string;
  gag?: string | null;
  raised_at: string;
  raised_by?: string | null;
  reason?: string;
  hazard?: Hazard | null;
  agreements?: { role: Role; person: string; at: string; cause: string }[];
  released_at?: string | null;
}

export type ReadingKind = 'wind' | 'gust' | 'air_temperature' | 'water_temperature' | 'light';

export interface Reading {
  id: string;
  kind: ReadingKind;
  value: number;
  at: string;
  by: string;
  place?: string;
}

export interface RehearsalRun {
  id: string;
  rung: string;
  facets: FacetHashes;
  good: boolean;
  note?: string;
  at: string;
  by: string;
}

export interface Case {
  production: string;
  plan: Plan;
  signoffs: SignOff[];
  holds: Hold[];
  readings: Reading[];
  runs: RehearsalRun[];
  people: Person[];
  members: { person: string; name: string; roles: Role[]; certificates?: Certificate[] }[];
  devices: Device[];
  policy: Policy;
}

export type ClearanceState = 'cleared' | 'not_asked' | 'waiting' | 'lapsed' | 'blocked' | 'held';
export type RoleState = 'standing' | 'conditional' | 'missing' | 'lapsed' | 'declined';

export interface RoleStanding {
  role: Role;
  title: string;
  slot?: string | null;
  because: string;
  state: RoleState;
  signoff?: string | null;
  signer?: string | null;
  received_at?: string | null;
  revision?: number | null;
  reasons?: string[];
  changed?: Facet[];
  open_conditions?: string[];
}

export interface Block {
  kind: string;
  about: string;
  reason: string;
  remedy: string;
}

export interface Clearance {
  gag: string;
  revision: number;
  plan_digest: string;
  facets: FacetHashes;
  state: ClearanceState;
  roles: RoleStanding[];
  slots: { slot: string; name: string; person: string | null; verdict: Verdict | null }[];
  blocks: Block[];
  assessment: Assessment | null;
  hazards: Hazard[];
}

// Answers of the server

export interface ServerStatus {
  version: string;
  demo: boolean;
  needs_setup: boolean;
  now: string;
  database: string;
  demo_sign_ins?: { email: string; password: string; name: string; occupation: string; roles: Role[] }[];
}

export interface Membership {
  production: { id: string; name: string; demo: boolean; time_zone: string };
  person: { id: string; name: string; code: string };
  roles: Role[];
}

export interface Session {
  access_token: string;
  expires_at: string;
  account: { id: string; name: string; email: string };
  memberships: Membership[];
}

export type Permission =
  | 'read_production'
  | 'read_personal'
  | 'read_medical'
  | 'edit_people'
  | 'edit_plans'
  | 'sign_off'
  | 'raise_hold'
  | 'release_hold'
  | 'log_day'
  | 'manage_members'
  | 'read_trail';

export interface ProductionPage {
  id: string;
  name: string;
  demo: boolean;
  time_zone: string;
  hold_code?: string | null;
  policy: Policy;
  members: { person: string; name: string; code: string; roles: Role[]; has_account: boolean }[];
  me: { person: string; roles: Role[]; permissions: Permission[] };
  trail_size: number;
}

export interface GagSummary {
  id: string;
  code: string;
  title: string;
  technique: string;
  technique_title: string;
  scene: string;
  location: string;
  unit: string;
  day?: string | null;
  revision: number;
  state: ClearanceState;
  roles_needed: number;
  roles_standing: number;
  worst_check?: Status | null;
  top_block?: string | null;
  open_holds: number;
}

export interface Today {
  now: string;
  to_sign: {
    gag: { id: string; code: string; title: string };
    role: Role;
    role_title: string;
    slot?: string | null;
    state: RoleState;
    why: string;
  }[];
  held: { hold: Hold; gag?: { id: string; code: string; title: string } | null; needs: Role[] }[];
  next: GagSummary[];
  lapsing_certificates: {
    person: { id: string; name: string };
    certificate: { kind: string; expires: string };
    before_day: string;
  }[];
}

export interface GagPage {
  gag: { id: string; code: string; title: string; production: string };
  plan: Plan;
  case: Case;
  clearance: Clearance;
  history: {
    revision: number;
    author: { id: string; name: string };
    written_at: string;
    note: string;
    digest: string;
    leaf: number;
    changed: Facet[];
  }[];
  names: Record<string, string>;
  packet_url: string;
  trail: { size: number; leaf: number };
}

export interface Candidate {
  person: { id: string; name: string; code: string; occupation: string };
  verdict: Verdict;
}

export interface Matches {
  slot: Slot;
  day?: string | null;
  items: Candidate[];
}

export interface FacetChange {
  facet: Facet;
  fields: { pointer: string; before?: unknown; after?: unknown }[];
}

export interface Draft {
  statement: Statement;
  attestation: { id: string; text: string };
  covers: Facet[];
  previous?: { signoff: string; revision: number; signed_at: string } | null;
  changes: FacetChange[];
}

export interface PersonSummary {
  id: string;
  code: string;
  name: string;
  occupation: string;
  performs: boolean;
  roles: Role[];
  skills: { name: string; level: number }[];
  certificates: number;
  next_expiry?: string | null;
}

export interface PersonPage {
  person: Person;
  version: number;
  roles: Role[];
  devices: Device[];
  visible: { personal: boolean; medical: boolean };
}

export interface ImportReport {
  table: string;
  created: number;
  updated: number;
  unchanged: number;
  removed: number;
}

export interface TrailItem {
  entry: {
    index: number;
    at: string;
    kind: string;
    production: string;
    gag?: string;
    actor?: string;
    facts: Record<string, unknown>;
    commitment?: string;
  };
  hash: string;
  actor_name?: string | null;
  sentence: string;
}

export interface TrailPage {
  size: number;
  root: string;
  items: TrailItem[];
}

export interface InclusionProof {
  leaf: number;
  size: number;
  root: string;
  path: string[];
}

export interface Items<T> {
  items: T[];
}

export interface ProblemBody {
  type?: string;
  title: string;
  status: number;
  detail?: string;
  code?: string;
  errors?: {
    pointer?: string;
    row?: number;
    column?: string | number;
    problem: string;
    fix?: string;
  }[];
  // stale_plan
  expected?: number;
  current?: Plan;
  changed_theirs?: Facet[];
  changed_yours?: Facet[];
}
