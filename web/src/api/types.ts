// The shapes the server speaks, under the names that screens use. All are made from the server's own
// description (see schema.d.ts); nothing is written by hand here, so nothing here can be wrong about it.

import type { components } from './schema.d.ts';

export { CONTROL_KINDS, FACETS, HAZARDS, PERMISSIONS, PROBABILITIES, ROLES, SEVERITIES } from './values.ts';

type Shapes = components['schemas'];

// Mechanics
export type Assessment = Shapes['Assessment'];
export type Attestation = Shapes['Attestation'];
export type Check = Shapes['Check'];
export type Figure = Shapes['Figure'];
export type InputValue = Shapes['InputValue'];
export type Inputs = Shapes['Inputs'];
export type Parameter = Shapes['Parameter'];
export type ParameterKind = Shapes['ParameterKind'];
/** A technique's inputs as one facet of a plan keeps them. */
export type Parameters = Inputs;
export type Quantity = Shapes['Quantity'];
export type Series = Shapes['Series'];
export type Shape = Shapes['Shape'];
export type Status = Shapes['Status'];
export type TechniqueDescription = Shapes['TechniqueDescription'];
export type Trace = Shapes['Trace'];
export type Zone = Shapes['Zone'];

// The day
export type DayBook = Shapes['DayBook'];
export type DayLog = Shapes['DayLog'];
export type DayPrepared = Shapes['DayPrepared'];
export type Briefing = Shapes['Briefing'];
export type EquipmentStanding = Shapes['EquipmentStanding'];
export type ReadingStanding = Shapes['ReadingStanding'];
export type Debrief = Shapes['Debrief'];
export type DayStanding = Shapes['DayStanding'];
export type DayStatement = Shapes['DayStatement'];
export type EquipmentState = Shapes['EquipmentState'];
export type Fitness = Shapes['Fitness'];
export type Incident = Shapes['Incident'];
export type ReadingState = Shapes['ReadingState'];
export type RegisteredItem = Shapes['RegisteredItem'];
export type Take = Shapes['Take'];
export type TakeResult = Shapes['TakeResult'];

// The tools that work on every technique
export type Bar = Shapes['Bar'];
export type CalibrateRequest = Shapes['CalibrateRequest'];
export type Calibration = Shapes['Calibration'];
export type CompareRequest = Shapes['CompareRequest'];
export type Comparison = Shapes['Comparison'];
export type Crossing = Shapes['Crossing'];
export type Interval = Shapes['Interval'];
export type MovedFigure = Shapes['MovedFigure'];
export type Sensitivity = Shapes['Sensitivity'];
export type SensitivityRequest = Shapes['SensitivityRequest'];
export type ShotRow = Shapes['ShotRow'];
export type Solution = Shapes['Solution'];
export type SolveRequest = Shapes['SolveRequest'];
export type Spread = Shapes['Spread'];
export type SpreadRequest = Shapes['SpreadRequest'];

// Casting
/** What casting knows of each kind of certificate and each skill, as the core gives it. */
export interface Catalogue {
  certificates: Shapes['CertificateKind'][];
  skills: Shapes['SkillKind'][];
}
export type Candidate = Shapes['Candidate'];
export type Certificate = Shapes['Certificate'];
export type Finding = Shapes['Finding'];
export type Matches = Shapes['Matches'];
export type Measurement = Shapes['Measurement'];
export type Outcome = Shapes['Outcome'];
export type Person = Shapes['Person'];
export type PersonPage = Shapes['PersonPage'];
export type PersonSummary = Shapes['PersonSummary'];
export type Requirement = Shapes['Requirement'];
export type Skill = Shapes['Skill'];
export type Slot = Shapes['Slot'];
export type Used = Shapes['Used'];
export type Verdict = Shapes['Verdict'];

// Plans
export type Band = Shapes['Band'];
export type Equipment = Shapes['Equipment'];
export type Facet = Shapes['Facet'];
export type FacetChange = Shapes['FacetChange'];
export type Facets = Shapes['Facets'];
export type FacetHashes = Statement['facets'];
export type GivenCharge = Shapes['GivenCharge'];
export type Hazard = Shapes['Hazard'];
export type Plan = Shapes['Plan'];
export type Load = Shapes['Load'];
export type Policy = Shapes['Policy'];
export type Role = Shapes['Role'];
export type Control = Shapes['Control'];
export type ControlKind = Shapes['ControlKind'];
export type Probability = Shapes['Probability'];
export type Rating = Shapes['Rating'];
export type Risk = Shapes['Risk'];
export type RiskLevel = Shapes['RiskLevel'];
export type Severity = Shapes['Severity'];
export type Rung = Shapes['Rung'];

// Sign-offs, holds, the day
export type Block = Shapes['Block'];
export type Case = Shapes['Case'];
export type Clearance = Shapes['Clearance'];
export type ClearanceState = Shapes['ClearanceState'];
export type Decision = Shapes['Decision'];
export type Device = Shapes['Device'];
export type DeviceSummary = Shapes['DeviceSummary'];
export type Draft = Shapes['Draft'];
export type HandedRequest = Shapes['HandedRequest'];
export type Owed = Shapes['Owed'];
export type Prepared = Shapes['Prepared'];
export type HeldByCode = Shapes['HeldByCode'];
export type Hold = Shapes['Hold'];
export type PublicKey = Shapes['PublicKey'];
export type Reading = Shapes['Reading'];
export type ReadingKind = Shapes['ReadingKind'];
export type RehearsalRun = Shapes['RehearsalRun'];
export type RoleStanding = Shapes['RoleStanding'];
export type RoleState = Shapes['RoleState'];
export type SignOff = Shapes['SignOff'];
export type Statement = Shapes['Statement'];

// Pages
export type GagPage = Shapes['GagPage'];
export type GagSummary = Shapes['GagSummary'];
export type GagThen = Shapes['GagThen'];
export type SignedThen = Shapes['SignedThen'];
export type ImportReport = Shapes['ImportReport'];
export type ConsistencyProof = Shapes['ConsistencyProof'];
export type InclusionProof = Shapes['InclusionProof'];
export type MemberAccount = Shapes['MemberAccount'];
export type Membership = Shapes['Membership'];
export type OpenInvitation = Shapes['OpenInvitation'];
export type OwnSignIn = Shapes['OwnSignIn'];
export type Permission = Shapes['Permission'];
export type Delegation = Shapes['Delegation'];
export type PolicyPage = Shapes['PolicyPage'];
export type PolicyPreview = Shapes['PolicyPreview'];
export type RolePolicy = Shapes['RolePolicy'];
export type ProductionPage = Shapes['ProductionPage'];
export type ServerStatus = Shapes['ServerStatus'];
export type Session = Shapes['Session'];
export type TestShot = Shapes['TestShot'];
export type Today = Shapes['Today'];
export type TrailItem = Shapes['TrailItem'];
export type TrailPage = Shapes['TrailPage'];
export type NewCosignature = Shapes['NewCosignature'];
export type Witnesses = Shapes['Witnesses'];
export type WitnessView = Shapes['WitnessView'];

/** A list, which always stands in an object. */
export interface Items<T> {
  items: T[];
}

/** A refusal: the server's, which has all of it, or the app's own, which has a title alone (status 0). */
export type ProblemBody = Pick<Shapes['Problem'], 'title' | 'status'> &
  Partial<Omit<Shapes['Problem'], 'code' | 'errors'>> & {
    /** The server's, or the app's own for what never reached the server. */
    code?: Shapes['Problem']['code'] | 'built_on_refused' | 'not_kept';
    /** A field's, with its pointer, or a roster cell's, with its row and column. */
    errors?: (Pick<Shapes['FieldProblem'], 'problem'> &
      Partial<Shapes['FieldProblem'] & Shapes['CellProblem']>)[];
  };
