// What is said of hazards weighed, in English. The levels themselves are the core's.

import type { ControlKind, Probability, RiskLevel, Severity } from '../../api/types.ts';

const severity: Record<Severity, string> = {
  catastrophic: 'Catastrophic',
  critical: 'Critical',
  marginal: 'Marginal',
  negligible: 'Negligible',
};

/** What each could do to a body, for choosing. */
const severityHelp: Record<Severity, string> = {
  catastrophic: 'somebody could die, or never work again',
  critical: 'lasting injury, or several people in hospital',
  marginal: 'an injury that costs days of work',
  negligible: 'an injury that costs no day of work',
};

const probability: Record<Probability, string> = {
  frequent: 'Frequent',
  probable: 'Probable',
  occasional: 'Occasional',
  remote: 'Remote',
  improbable: 'Improbable',
  eliminated: 'Eliminated',
};

const probabilityHelp: Record<Probability, string> = {
  frequent: 'to be expected often',
  probable: 'will happen several times',
  occasional: 'will happen some time',
  remote: 'unlikely, and possible',
  improbable: 'may be assumed not to happen',
  eliminated: 'cannot happen: the hazard is gone',
};

const level: Record<RiskLevel, string> = {
  high: 'High',
  serious: 'Serious',
  medium: 'Medium',
  low: 'Low',
  eliminated: 'Eliminated',
};

const control: Record<ControlKind, string> = {
  remove: 'Remove',
  substitute: 'Substitute',
  engineer: 'Engineer',
  organise: 'Organise',
  protect: 'Protective equipment',
};

export const risk = {
  severity,
  severityHelp,
  probability,
  probabilityHelp,
  level,
  control,
  prompt: 'A score is a prompt, never a permit.',
  source: 'Levels by MIL-STD-882E, table III.',
  before: 'With nothing done',
  after: 'With the controls',
  howBad: 'How bad',
  howLikely: 'How likely',
  answers: 'Answers for it',
  add: 'Add a risk',
  addControl: 'Add a control',
  kind: 'Kind of control',
  order: 'Saving puts controls in order, the strongest kind first.',
  noEvent: 'A risk nobody named yet',
};
